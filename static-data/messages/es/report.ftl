### El informe: escribirlo, la página como se imprime, lo que se entrega.
### Entre un número y su unidad va un espacio que no se parte.

## Escribir

report-write = Escribe tu informe
report-title = Título
report-claim = ¿Qué encontraste?
report-evidence = ¿Qué lecturas tuyas lo muestran?
report-reasoning = ¿Por qué lo muestran y con qué seguridad?
report-change = ¿Qué te haría cambiar de opinión?
report-start-claim-first = Nuestra agua tiene …
report-start-claim-then = Cambia más deprisa a …
report-start-evidence-first = Entre … y … m se enfría …
report-start-evidence-then = Por encima y por debajo …
report-start-reasoning-first = Esto lo muestra porque …
report-start-reasoning-then = Podría variar en … porque …
report-start-change-first = Cambiaríamos de opinión si …
report-start-change-then = La próxima vez …
report-put-in = Insertar:
report-begin = Empezar con:
report-some-covered = Los números que siguen tapados aparecerán aquí cuando los tengas.

## Los números del grupo

report-word-thermocline = termoclina { $depth } m
report-word-warms = se calienta más a { $depth } m
report-word-today = capa cálida de hoy { $depth } m
report-word-mixed = mezclada hasta { $depth } m
report-word-mixed-at-least = mezclada al menos hasta { $depth } m
report-word-deep = profunda desde { $depth } m
report-word-deep-at-least = cambio brusco al menos hasta { $depth } m
report-word-gradient = { $gradient } °C por metro
report-word-warmest = máxima { $temp } °C
report-word-coldest = mínima { $temp } °C
report-word-apart = bajar y subir: { $apart } °C
report-put-depth = { $depth } m ({ $range })
report-put-metres = { $depth } m
report-put-temp = { $temp } °C a { $depth } m
report-put-apart = { $apart } °C
report-about = { $first } { $second }
report-about-step = El tramo más brusco, { $range }
report-covered = tapado hasta que lo compruebes

## La lista

report-check-title = En tus palabras hay:
report-check-number = un número
report-check-unit = una unidad
report-check-two-depths = dos profundidades
report-check-range = un margen
report-check-there = sí
report-check-not = aún no
report-check-about = Esto solo mira si está, nunca si es correcto.

## Entregar

report-hand-in = Entregar
report-stand-questions = Preguntas resueltas
report-stand-cells = Dudas resueltas
report-stand-marks = Marcas puestas antes
report-stand-parts = Informe
report-of = { $done } de { $all }
report-marks-yes = sí
report-marks-not-checked = puestas, sin comprobar
report-marks-not-yet = aún no
report-codes-missing = Puedes entregar sin clase ni puesto. Con los dos códigos se sabe de quién es el trabajo.
report-codes-whole = Los códigos dicen de quién es el trabajo.
report-save = Guardar la entrega
report-copy = Copiar como texto
report-copy-about = ¿Este equipo no deja guardar? Cópialo como texto y pégalo donde tu profe recoge los trabajos. Lo contiene todo.
report-receipt = Recibo <b>{ $code }</b>. Cambia cuando cambia tu trabajo.
report-more = Para guardar o enviar:
report-save-page = todo en un archivo
report-save-table = lecturas (CSV)
report-save-sidecar = sus columnas (JSON)
report-save-quality = calidad (CSV)
report-save-svg = imagen (SVG)
report-save-png = imagen (PNG)
report-data = Esta página lleva sus propios datos. Como PDF o archivo se puede volver a abrir:
report-print = Imprimir, o guardar como PDF
report-no-names = Basta con la letra de tu grupo. No pongas nombres.

## La página

report-page = La página como se imprimirá
report-bed = { $depth } m de profundidad
report-class-or-seat = { $text }
report-code = cuaderno { $code }
report-date = fecha: . . . . . . . . . . . . .
report-no-title = Nuestra agua
report-caption =
    { $count ->
        [one] Una lectura.
       *[other] { $count } lecturas. Barras: °C que pierde por metro. Bordes suaves y corchetes: cuánto podría variar cada profundidad.
    }
report-caption-gained =
    { $count ->
        [one] Una lectura.
       *[other] { $count } lecturas. Barras: °C que gana por metro. Bordes suaves y corchetes: cuánto podría variar cada profundidad.
    }
report-caption-covered =
    { $count ->
        [one] Una lectura.
       *[other] { $count } lecturas. Lo que el grupo aún no ha destapado sigue tapado aquí.
    }
report-caption-marks = A rayas: donde lo marcamos primero.
report-head-found = Lo que encontraron las reglas
report-head-depth = Prof.
report-head-could-be = Podría ser
report-head-marked = Marca
report-rule-warming = Centro del tramo que más se calienta
report-rule-deep = Debajo de los tramos de al menos { $steep } °C por metro
report-agree =
    { $count ->
        [one] Bajar y subir coinciden en { $s } °C (desviación típica de una lectura, de una pareja).
       *[other] Bajar y subir coinciden en { $s } °C (desviación típica de una lectura, de { $count } parejas).
    }
report-decided = { $first }: { $second }.
report-open-doubts =
    { $count ->
        [one] Queda un lugar por mirar.
       *[other] Quedan { $count } lugares por mirar.
    }
report-how-work = { $done } de { $all } preguntas resueltas.
report-how-rules = Reglas: la termoclina es el centro del tramo más brusco; la capa mezclada acaba a { $drop } °C de la temperatura a { $reference } m; un tramo es brusco desde { $steep } °C por metro. Densidad del agua dulce según Tanaka y otros, 2001.
report-how-propagated = Márgenes: tramos que las lecturas no distinguen (desviación típica { $s } °C) y la ley de propagación de la incertidumbre.
report-how-trials = Márgenes: tramos que las lecturas no distinguen (desviación típica { $s } °C) y { $count } intentos con todo lo inseguro sorteado de nuevo.
report-credit = Hecho con Layercast. El mismo archivo da siempre esta página.
# Lo que se pensó antes de la primera lectura.
report-partner = Antes de comparar, alguien del grupo había marcado: final de la capa mezclada, { $mixed }; termoclina, { $thermocline }; comienzo de la capa profunda, { $deep }.
report-guess = Lo que pensábamos antes de la primera lectura { $second }: { $first }.
report-guess-line = (línea fina de trazos)
report-guess-point = { $temp } °C a { $depth } m
report-guess-and = { $first }; { $second }
