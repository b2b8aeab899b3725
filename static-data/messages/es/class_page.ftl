## La pantalla Clase

page-bar-class = Clase
class-picture-about = Una columna por grupo sobre un mismo eje de profundidad, con sus capas, su termoclina y el margen de su termoclina. La lista de al lado tiene los mismos números.
class-picture-name = La clase
class-picture-depth =
    Prof.,
    m
class-picture-temperature = Temperatura, °C
class-picture-none =
    aquí no
    hay
    termoclina
class-picture-none-short = no hay
class-picture-few =
    pocas
    lecturas
class-picture-fahrenheit =
    parecen
    °F
class-picture-middle = centro
class-picture-cannot-tell =
    no se
    sabe
class-picture-cannot-tell-short = ?
class-part-which = Imagen
class-part-layers = capas
class-part-curves = curvas
class-part-middle = centro y margen
class-head-group = Grupo
class-head-sheets = Hojas
class-head-depth = Termoclina, m
class-head-range = Margen
class-none = no hay
class-none-told = –
class-not-kept = Este navegador no guarda la clase. Guárdala en un archivo.
class-to-wall = Proyectar
class-to-add = Añadir entregas
class-to-answers = Respuestas
class-to-sheets = Hojas y arreglos
class-to-why = Por qué difieren
class-to-marks = Puntos
class-to-list = A la imagen
class-hide = Ocultar los nombres
class-hide-not = Mostrar los nombres
class-shuffle = Barajar
class-shuffle-not = En orden otra vez
class-wall-back = Atrás
class-wall-next = Siguiente
class-wall-leave = Cerrar
class-wall-keys = Flechas: atrás y siguiente · una letra: la curva de ese grupo · punto: oscuro · Esc: cerrar
class-wall-why = { $pair }. { $said }
class-wall-curves = Lo que leyó cada grupo
class-wall-marks = Dónde puso cada grupo la termoclina
class-wall-middle = El centro de la clase, y cuánto se separan los grupos
class-key-warm = epilimnion: cálida, mezclada
class-key-steep = metalimnion: cambio brusco
class-key-deep = hipolimnion: fría, profunda
class-key-line = termoclina y su margen
class-add-about = Suelta archivos, o el zip de tu plataforma, en cualquier lugar de esta pantalla. No importa cómo se llamen.
class-add-choose = Elegir archivos
class-add-folder = Elegir una carpeta
class-add-lines = O pega líneas
class-add-take = Tomar las líneas
class-add-pasted = pegado
class-counts = De { $all }. Nuevas: { $fresh }, repetidas: { $again }, más nuevas: { $newer }, por mirar: { $look }, no son de esta clase: { $other }.
class-outcome-new = nueva
class-outcome-same-again = repetida
class-outcome-newer-than = más nueva que la que estaba
class-outcome-needs-a-look = por mirar
class-outcome-not-ours = no es de esta clase
class-head-question = Pregunta
class-head-first = Bien a la primera
class-head-later = Después
class-head-not-yet = Aún no
class-head-blank = En blanco
class-idea = { $count }: { $said }
class-varies = A otros grupos se les preguntaron otros números.
class-idea-told = Se les dijo: «{ $said }»
class-told-right = Bien: { $said }.
class-told-tries = Intentos: { $tries }.
class-told-try = { $given }: { $taken }
class-told-try-idea = { $given }: { $taken } ({ $idea })
class-told-none = Sin intentos.
class-told-cannot = «No se puede saber»: { $taken }
class-code = Clase
class-head-seat = Puesto
class-head-right = Bien
class-head-points = Puntos
class-head-notes = Observaciones
class-unnamed = sin grupo
class-right-of = { $right } de { $asked }
class-points-of = { $points } de { $max }
class-of-max = de { $max }
class-points-not = «{ $text }» no es un número de puntos: quedan { $points }
class-sheet-title = { $who }: { $sum }
class-late = tarde
class-practice = práctica
class-why-points = Por qué
class-comment = Comentario para quien lo entregó
class-comment-put = Poner un comentario
class-comment-keep = Guardarlo para otros
class-comments-kept = Comentarios que guardas
class-comment-drop = Quitarlo
class-by-hand = de { $max }, puestos por ti
class-by-hand-over = de { $max }, puestos por ti: más del máximo
class-level = Nivel
class-level-none = sin calificar
class-level-0 = 0: nada de ello
class-level-1 = 1: empezado
class-level-2 = 2: casi todo
class-level-3 = 3: todo
class-head-cannot-tell = No se sabe
class-head-words = Calificadas
class-why-one = Grupo
class-why-other = frente a
class-why-minutes = Se leyó, si lo sabes,
class-why-when = Antes o después
class-why-later = minutos después
class-why-earlier = minutos antes
class-why-rest = el resto
class-marks-about = Una tabla para tu registro: una línea por puesto, o una por pregunta.
class-marks-students = Quién se sienta dónde
class-marks-students-about = Si quieres, pega tu lista: en cada línea un código de puesto y un nombre. Va al archivo que guardas y a ningún otro sitio.
class-marks-comma = comas decimales, punto y coma entre las casillas
class-marks-wide = Guardar una línea por puesto
class-marks-long = Guardar una línea por pregunta
class-marks-slips = Imprimir hojitas para los puestos
class-marks-slips-file = Comentarios en un archivo
class-marks-slips-zip = Un archivo por puesto
class-slip-comment = Tu profe: { $words }
class-save = Guardar la clase en un archivo
class-saved = Guardado como { $name }: { $what }.
class-saved-rows = { $rows ->
    [one] una fila
   *[other] { $rows } filas
}
class-saved-sheets = { $sheets ->
    [one] una hoja
   *[other] { $sheets } hojas
}
class-new = Otra clase …
class-new-ask = ¿Empezar una clase vacía?
class-new-text = Guarda antes esta en un archivo: nada la recupera.
class-new-no = Conservar esta
class-new-yes = Empezar una vacía

## La lección que se prepara, y la hoja para quien dé la clase

class-to-lesson = La lección
class-lesson-title = Nombre de la lección
class-lesson-more = Añadir una pregunta
class-lesson-add-own = Una pregunta propia
class-lesson-whole = Poner todas las preguntas
class-lesson-other = Otra medición
class-lesson-other-choose = Elegir su archivo
class-lesson-open = Abierto desde el principio
class-lesson-rules = Reglas de la clase
class-lesson-help = Ayuda
class-lesson-help-more = la primera pista está abierta
class-lesson-help-usual = las pistas se piden
class-lesson-help-less = sin el paso resuelto
class-lesson-language = Idioma
class-lesson-language-own = el de quien lee
class-lesson-note = Para la clase
class-lesson-run = Notas para quien dé la clase
class-lesson-save = Guardar la lección
class-lesson-print = Imprimir la hoja para quien dé la clase
class-lesson-choose = Abrir una lección
class-lesson-not-one = Este archivo no es una lección. Elige el archivo que dio «Guardar la lección».
class-lesson-not-whole = Aún no se guardó. Pregunta { $number }: { $why } Complétala o quítala.
class-lesson-points-not = «{ $text }» no es un número entero de 0 a 100. «{ $name }» conserva { $points }.
class-lesson-rubric = Cuatro niveles en palabras
class-lesson-use = Usarla con la clase abierta
class-lesson-up = Subir
class-lesson-down = Bajar
class-lesson-leave = Quitar
class-lesson-points-of = Puntos: { $name }
class-lesson-own-ask = Pregunta
class-lesson-own-hint = Pista
class-lesson-by = Cómo se contesta
class-lesson-by-words = con palabras
class-lesson-by-temp-at = la temperatura a una profundidad
class-lesson-by-apart = la diferencia entre las temperaturas a dos profundidades, °C
class-lesson-by-per-metre = °C por metro entre dos profundidades
class-lesson-by-depth-of = la profundidad de una temperatura
class-lesson-by-warmest = la lectura más cálida
class-lesson-by-coldest = la lectura más fría
class-lesson-by-warmest-coldest = máxima menos mínima
class-lesson-at = a, m
class-lesson-to = y, m
class-lesson-temp = °C
class-lesson-level-1 = Todos los puntos por
class-lesson-level-2 = Casi todos los puntos por
class-lesson-level-3 = Algunos puntos por
class-lesson-level-4 = Ningún punto por
class-run-before = Antes
class-run-plan = Reparto del tiempo
class-run-plan-row = { $name }: { $minutes } minutos
class-run-hints = Tus pistas
class-run-hint = { $name }: { $hint }
class-run-questions = Preguntas, en orden
class-run-after = Después
class-run-before-lines =
    Abre la página en cada portátil, desde el zip o la web: no necesita red.
    Cada grupo abre su cuaderno, o escribe sus lecturas, y pone el nombre del grupo.
    Reparte el archivo de la lección: Abrir un archivo y Trabajar con esta lección.
class-run-question = { $name } ({ $points })
class-run-after-lines =
    Informe: cada grupo escribe y guarda su entrega. Su recibo está en la página.
    Recoge los archivos. No importa cómo se llamen.
    En tu equipo: Clase, suéltalos todos y proyéctalos.

## Qué preguntar durante la proyección

class-to-notes = Qué preguntar
class-notes-about = Estas preguntas solo las ves tú, aquí y en papel. Las flechas van de paso en paso; sobre las curvas, una letra resalta su grupo y el punto oscurece la proyección.
class-notes-print = Imprimirlas
class-wall-guesses = Lo que supuso cada grupo antes de la primera lectura
class-note-guesses = Pregunta: ¿de dónde salió esa idea? Deja cada suposición como está; nadie las califica.
class-note-curves = Pregunta: ¿qué tienen en común todas las líneas? ¿Dónde se separan?
class-note-marks = Pide a dos grupos alejados que digan en qué se fijaron.
class-note-layers = Primero los márgenes, después las profundidades. Pregunta: ¿qué profundidad está en más márgenes?
class-note-middle = Pregunta: ¿a qué profundidad están menos seguros los grupos, y por qué ahí?
class-note-why = Pregunta: ¿qué veríamos si fuera otra cosa? Di lo que no se puede distinguir.

# A saved class that was dropped while another is open.
class-open-holds = Es una clase guardada, con { $sheets ->
    [one] una hoja
   *[other] { $sheets } hojas
}. ¿Abrirla?
class-open-text = Ocupará el lugar de la clase abierta. Guarda antes esa en un archivo: nada la trae de vuelta.
class-open-no = Dejarlo
class-open-yes = Abrirla

# Where nothing is drawn yet.
class-nothing = Aquí estarán los grupos, uno junto a otro.
class-nothing-years = Aquí estarán tus mediciones, una junto a otra, primero la más antigua.

# Over two answers side by side.
class-pair-right = acertada para su agua
class-pair-idea = con esta idea
