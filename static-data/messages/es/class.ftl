## La clase: entregas, la tabla de lo que llegó, la proyección, los puntos

class-why-empty = No hay nada dentro.
class-why-too-large = Es demasiado grande para ser una entrega.
class-why-unknown = No es una entrega de Layercast.
class-why-pdf = Es un PDF: una imagen de las páginas. Pide el archivo de la entrega o las líneas.
class-why-picture = Es una imagen. Pide el archivo de la entrega o las líneas.
class-why-page = Es una página web sin ninguna entrega dentro.
class-why-lesson = Es una lección, no una entrega.
class-why-cast = Es una medición sin respuestas.
class-why-class = Es una clase guardada. Suéltala sola y se abre.
class-why-cut-off = Es una entrega que se corta antes del final. Pídela otra vez.
class-why-damaged = Es una entrega, pero una parte no se puede leer. Pídela otra vez.
class-why-absurd = Es una entrega con algo que ninguna página de Layercast ha escrito.
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

class-file-none = Esto no es un archivo de clase.
class-file-newer = Guardado con un Layercast más nuevo (versión { $version }). Ábrelo con ese.
class-file-broken = Esta clase no se puede leer hasta el final.
class-why-newer = Se entregó desde un Layercast más nuevo (versión { $version }). Abre la clase con ese.
class-why-too-many = La clase está llena: no se toman más entregas.
class-why-zip-broken = Este zip, o un archivo dentro, está dañado. Descárgalo otra vez.
class-why-zip-empty = El zip está vacío.
class-why-zip-locked = Tiene contraseña. Descomprímelo antes.
class-why-zip-method = Está comprimido de un modo que aquí no se lee. Descomprímelo antes.
class-why-zip-too-much = Contiene demasiado.
class-why-zip-too-deep = Está dentro de demasiados zips.
class-why-zip-document = Es un documento de oficina. Copia las líneas y pégalas.
class-row-same = Ya está aquí.
class-row-same-work = Las mismas marcas, intentos y textos ya están aquí.
class-row-older = Una copia más antigua. Se queda la más nueva.
class-row-newer = Sigue donde acaba la copia de aquí y la sustituye.
class-row-beside = Este puesto ya tiene otra hoja, y ninguna contiene toda la otra. Elige una o deja las dos.
class-row-other-class = Dice clase { $code }.
class-row-other-lesson = Es de otra lección: { $lesson }.
class-look-no-seat = No tiene código de puesto.
class-look-edited = Algo de este archivo cambió después de guardarlo. Lo que cuenta se calcula con lo que dice ahora.
class-look-other-version = Se hizo con otra versión de esta lección. Se lee con la tuya.
class-look-example = Sus lecturas son un ejemplo: nadie las midió.
class-look-fahrenheit = ¿Agua a { $warmest } °C? Parecen °F.
class-look-feet = { $depth } m de fondo, donde los demás tienen { $usual } m: parecen pies.
class-look-station = { $depth } m de fondo, donde los demás tienen { $usual } m: quizá otro lugar.
class-look-near = Casi la medición de { $group }: { $count ->
    [one] difiere una lectura
   *[other] difieren { $count } lecturas
}. Una puede ser una copia con un despiste.
class-look-group-twice = Otros del grupo { $group } entregaron otra medición. ¿Es ese el grupo?
class-aside-class = de otra clase
class-aside-lesson = de otra lección
class-aside-beside = una segunda hoja de este puesto
class-aside-out = apartada por ti
class-way-take-in = Admitirla
class-way-take-out = Apartarla
class-way-keep-this = Dejar esta
class-way-keep-both = Dejar las dos
class-way-seen = Está bien así
class-way-feet = Leer en pies
class-way-fahrenheit = Leer en °F
class-way-station = Otro lugar
class-way-practice = Contarla como práctica
class-way-this-cast = Esta medición para las dos
class-way-that-cast = La otra para las dos
class-way-both-casts = Son dos
class-repaired-group = Grupo { $group }, corregido por ti
class-repaired-seat = Puesto { $seat }, corregido por ti
class-repaired-feet = Leída en pies
class-repaired-fahrenheit = Leída en °F
class-repaired-zero = Marcas leídas a { $height } sobre el agua
class-repaired-station = Otro lugar
class-undo = Deshacer
class-undo-import = Deshacer: entregas añadidas
class-undo-repair = Deshacer: el arreglo
class-undo-mark = Deshacer: los puntos
class-undo-taken-out = Deshacer: hoja apartada
class-undo-code = Deshacer: el código de la clase
class-undo-order = Deshacer: nombres y orden
class-title-empty = Tu clase
class-title = { $casts ->
    [one] Una medición
   *[other] { $casts } mediciones
}, { $sheets ->
    [one] una hoja
   *[other] { $sheets } hojas
}
class-cast-mixed = mezclada hasta el fondo
class-cast-none = no hay
class-cast-today = solo la capa cálida de hoy
class-cast-too-few = pocas lecturas
class-cast-fahrenheit = parecen °F
class-cast-unstable = agua más pesada arriba
class-wall-empty = Suelta entregas en cualquier lugar de esta pantalla, o una clase que guardaste.
class-wall-none = Ningún grupo encontró una termoclina.
class-wall-one = Solo { $group } encontró una termoclina.
class-wall-all-share = Los { $found } márgenes comparten { $range }. Los grupos no se contradicen.{ $none ->
    [0] {""}
    [one] {" "}Un grupo no tiene ninguno.
   *[other] {" "}{ $none } grupos no tienen ninguno.
}
class-wall-all-touch = Los { $found } márgenes comparten { $depth } m. Los grupos no se contradicen.{ $none ->
    [0] {""}
    [one] {" "}Un grupo no tiene ninguno.
   *[other] {" "}{ $none } grupos no tienen ninguno.
}
class-wall-some-share = { $most } de { $found } márgenes se solapan: { $range }.{ $none ->
    [0] {""}
    [one] {" "}Un grupo no tiene ninguno.
   *[other] {" "}{ $none } grupos no tienen ninguno.
}
class-wall-some-touch = { $most } de { $found } márgenes comparten { $depth } m.{ $none ->
    [0] {""}
    [one] {" "}Un grupo no tiene ninguno.
   *[other] {" "}{ $none } grupos no tienen ninguno.
}
class-wall-apart = Ningún par de los { $found } márgenes comparte una profundidad: los grupos encontraron profundidades distintas.{ $none ->
    [0] {""}
    [one] {" "}Un grupo no tiene ninguno.
   *[other] {" "}{ $none } grupos no tienen ninguno.
}
class-talk-station = <b>{ $group }</b> midió en otro lugar, de { $depth } m. Allí puede ser distinto.
class-talk-widest = <b>{ $group }</b> tiene el margen más ancho. Pregunta: ¿qué lo haría más estrecho?
class-talk-widest-apart = <b>{ $group }</b> difiere más entre bajar y subir; por eso su margen es el más ancho.
class-talk-deepest = <b>{ $group }</b> queda más profunda. Pregunta: ¿cable inclinado o bajó la capa?
class-right-first = bien a la primera
class-right-later = bien después
class-not-yet = todavía no
class-blank = en blanco
class-cannot-tell = no se puede saber
class-after-shown = después de mostrarse: sin puntos
class-unasked = Con las lecturas tal como se entregaron no se pudo hacer ninguna pregunta.
class-written = sin calificar
class-marked = calificada
class-try-right = bien
class-try-other-rule = bien por otra regla
class-try-close = cerca
class-try-free = no cuenta
class-try-words = con palabras
class-idea-count = { $students ->
    [one] un estudiante
   *[other] { $students } estudiantes
}, { $groups ->
    [one] un grupo
   *[other] { $groups } grupos
}
class-given = { $text }
class-report = Informe
class-report-text = { $name } { $text }
class-comment-unit = Escribe la unidad junto al número.
class-comment-depths = Nombra las dos profundidades que comparaste.
class-comment-range = Da un margen: ¿cuánto podría fallar?
class-comment-why = Tus números están. Escribe por qué lo muestran.
class-comment-rule = Di según qué regla.
class-comment-fits = Lo que dices concuerda con tus lecturas.
class-next-idea = Pregunta ahora: { $ask } { $students } respuestas muestran la misma idea. Pon dos juntas: ¿cuál encaja con el agua y en qué se ve?
class-next-not-yet = Pregunta ahora: { $ask } { $students ->
    [one] Uno no lo tuvo
   *[other] { $students } no lo tuvieron
} a la primera.
class-next-why = Pregunta ahora: ¿por qué difieren los grupos, y podría saberlo alguien?
class-note-late = Entregado tarde.
class-note-practice = Práctica.
class-why-title = { $one } y { $other }
class-why-group = { $group }
class-why-the-rest = el resto
class-why-too-few = Comparten muy pocas profundidades para compararlas.
class-why-too-little = Comparten muy poca agua para compararlas.
class-why-apart = Difieren { $apart } °C en el conjunto de profundidades.
class-why-chance = Basta el azar: lecturas de la misma agua difieren así.
class-why-none-alone = Difieren más que por azar, y ninguna causa sola lo explica.
class-why-cannot-be-told = Estas lecturas no lo distinguen de: { $cause }.
class-why-no-clock = Sin el tiempo que pasó entre ellas nadie puede decir si pudo ser el sol: escribe los minutos arriba.
class-why-no-clock-rest = Ponlo frente a un solo grupo y escribe los minutos entre los dos: entonces se puede decir si pudo ser el sol.
class-why-minutes-not = «{ $text }» no es un número de minutos dentro de una semana, así que el sol queda fuera. Escríbelo así: 45.
class-why-sun-could = El sol pudo hacerlo: { $power } W/m².
class-why-sun-cannot = El sol no pudo hacerlo: serían { $power } W/m².
class-why-sun-unsure = Si el sol pudo hacerlo está demasiado justo: { $power } W/m².
class-why-sun-cooled = La medición posterior tiene menos calor: eso no lo hace el sol.
class-why-sun-whole = Como calor ganado entre las dos harían falta { $power } W/m²: no pudo ser el sol.
class-why-not-even = El agua es demasiado uniforme para saberlo.
class-why-not-top = No se leyó nada cerca de la superficie.
class-why-not-layer = No hay capa que pueda moverse.
class-cause-offset = la sonda
class-cause-zero = el cero de las marcas
class-cause-stretch = un cable estirado o inclinado
class-cause-top = el sol entre medias
class-cause-moved = agua que se movió, u otro lugar
class-fit-offset-more = Si la sonda del grupo { $one } marcara { $size } °C más que { $other }, explicaría un { $explains } % de la diferencia.
class-fit-offset-less = Si la sonda del grupo { $one } marcara { $size } °C menos que { $other }, explicaría un { $explains } % de la diferencia.
class-fit-zero-deeper = Si, en la misma marca, la sonda del grupo { $one } colgara { $size } m más abajo que { $other }, explicaría un { $explains } % de la diferencia.
class-fit-zero-shallower = Si, en la misma marca, la sonda del grupo { $one } colgara { $size } m más arriba que { $other }, explicaría un { $explains } % de la diferencia.
class-fit-stretch-longer = Si, en las mismas marcas, el cable del grupo { $one } llegara un { $size } % más hondo que { $other }, explicaría un { $explains } % de la diferencia.
class-fit-stretch-shorter = Si, en las mismas marcas, el cable del grupo { $one } llegara un { $size } % menos hondo que { $other }, explicaría un { $explains } % de la diferencia.
class-fit-top-warmer = Si el grupo { $one } tuviera arriba el agua { $size } °C más cálida que { $other }, explicaría un { $explains } % de la diferencia.
class-fit-top-colder = Si el grupo { $one } tuviera arriba el agua { $size } °C más fría que { $other }, explicaría un { $explains } % de la diferencia.
class-fit-moved-deeper = Si la capa estuviera { $size } m más abajo en el grupo { $one } que en { $other }, explicaría un { $explains } % de la diferencia.
class-fit-moved-shallower = Si la capa estuviera { $size } m más arriba en el grupo { $one } que en { $other }, explicaría un { $explains } % de la diferencia.
class-fit-too-small = Sería menos de lo que se puede leer.
class-fit-group = el grupo { $group }
class-why-best = Lo que mejor encaja: { $cause }
class-why-overlap = Los márgenes de sus termoclinas comparten una profundidad: sobre la termoclina no se contradicen.
class-why-no-overlap = Los márgenes de sus termoclinas no comparten ninguna profundidad.
class-why-simpler = Explicaría más: { $cause }. No se nombra primero porque se adapta con más facilidad, o tendría que ser inusualmente grande.
class-why-station = { $group } midió en otro lugar. Allí el agua misma puede ser otra, y ninguna lectura tiene que estar mal.
