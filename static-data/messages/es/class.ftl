## La clase: entregas, la tabla de lo que llegó, la pared, notas

class-why-empty = No hay nada dentro.
class-why-too-large = Es demasiado grande para ser una entrega.
class-why-unknown = No es una entrega nuestra.
class-why-pdf = Es un PDF: una imagen de las páginas. Pide el archivo de la entrega o las líneas.
class-why-picture = Es una imagen. Pide el archivo de la entrega o las líneas.
class-why-page = Es una página web sin ninguna entrega dentro.
class-why-lesson = Es una lección, no una entrega.
class-why-cast = Es una medición sin respuestas.
class-why-class = Es una clase. Ábrela aparte.
class-why-cut-off = Es una entrega que se corta antes del final. Pídela otra vez.
class-why-damaged = Es una entrega, pero una parte no se puede leer. Pídela otra vez.
class-why-absurd = Es una entrega con algo que ninguna página nuestra ha escrito.
class-why-lines = De las { $of } líneas de { $name }, { $missing ->
    [0] { $wrong ->
        [one] una no está como se escribió: la línea { $numbers-wrong }.
       *[other] { $wrong } no están como se escribieron: las líneas { $numbers-wrong }.
    }
    [one] falta una: la línea { $numbers-missing }.{ $wrong ->
        [0] {""}
       *[other] {" "}No están como se escribieron: { $numbers-wrong }.
    }
   *[other] faltan { $missing }: las líneas { $numbers-missing }.{ $wrong ->
        [0] {""}
       *[other] {" "}No están como se escribieron: { $numbers-wrong }.
    }
} Cópialas otra vez, todas.
class-why-lines-unreadable = Están todas las líneas de { $name }, pero lo que contienen no se puede leer. Pídelas otra vez.
