### Registro: las lecturas, lo que se duda de ellas y la tabla que espera.
### Cada `<cell>` contiene lo que escribió una persona; entre número y unidad va un espacio de no separación.

## Títulos

log-title-empty = Encuentra las capas de tu lago
log-title-cells =
    { $count ->
        [1] Una casilla por mirar
        [2] Dos casillas por mirar
        [3] Tres casillas por mirar
        [4] Cuatro casillas por mirar
        [5] Cinco casillas por mirar
       *[other] { $count } casillas por mirar
    }
log-title-places =
    { $count ->
        [1] Un lugar por mirar
        [2] Dos lugares por mirar
        [3] Tres lugares por mirar
        [4] Cuatro lugares por mirar
        [5] Cinco lugares por mirar
       *[other] { $count } lugares por mirar
    }
log-title-settled =
    { $count ->
        [one] Una lectura, nada por decidir
       *[other] { $count } lecturas, nada por decidir
    }
log-title-not-yet = Todavía no hay nada que dibujar
log-title-one-temperature = Una temperatura en cada marca
log-title-question = Antes, una pregunta
log-title-fahrenheit = ¿Son °F?
log-title-table = Lo que hemos leído
log-title-no-table = Esto no es una tabla

log-example = Un ejemplo de un estanque inventado: nadie midió estas lecturas.

## Nada que dibujar

log-not-yet = Ninguna lectura tiene a la vez una profundidad y una temperatura que sirvan. Rellena una casilla o decide una de las que llevan interrogación.
log-no-questions-yet = Las preguntas tratan de tu propia agua, así que necesitan lecturas a dos profundidades o más. Escríbelas o pégalas antes en Registro.
log-lesson-on = Trabajas con la lección <b>{ $title }</b>: { $count ->
        [one] una pregunta llega
       *[other] { $count } preguntas llegan
    } cuando estén tus lecturas.
log-lesson-on-untitled = Trabajas con una lección de clase: { $count ->
        [one] una pregunta llega
       *[other] { $count } preguntas llegan
    } cuando estén tus lecturas.

log-word-apart = Difer.: al bajar menos al subir, en la misma marca.

## Deshacer

log-undo-paste = Deshacer el pegado
log-undo-file = Deshacer la apertura del archivo
log-undo-example = Quitar el ejemplo
log-leave-as-it-was = Dejarlo como estaba
log-undo-cell = Deshacer lo escrito
log-undo-settle = Deshacer la última decisión
log-undo-fahrenheit = Deshacer la lectura en °F
log-undo-change = Deshacer el último cambio

## En qué sentido se leyó una sola serie

log-leg-title = ¿Al bajar o al subir?
log-leg-text = No está escrito. Si no lo sabes, déjalo sin decidir: nada más depende de ello, y las lecturas se dibujan como círculos. Leído una vez: suponemos <b>± { $assumed } °C</b>. Dos lecturas en cada marca mostrarían lo buenas que son; por eso se omite la pregunta sobre cuánto coinciden bajar y subir.
log-leg-open = Dejarlo sin decidir
log-leg-down = Al bajar
log-leg-up = Al subir

## Dónde está la duda

log-place-down = { $depth } m, al bajar
log-place-up = { $depth } m, al subir
log-place-one = { $depth } m
log-place-both = { $depth } m, en los dos sentidos
log-place-two-depths = { $upper } m y { $lower } m
log-place-stretch = De { $from } a { $to } m
log-place-stretch-both = De { $from } a { $to } m, en los dos sentidos
log-place-line-depth = Línea { $line }, profundidad
log-place-line-down = Línea { $line }, al bajar
log-place-line-up = Línea { $line }, al subir
log-place-line-one = Línea { $line }, temperatura
log-place-no-depth = Una lectura sin profundidad
log-place-temps = De { $low } a { $high }
log-place-all-temps = Todas las temperaturas

## Por qué se duda

log-doubt-too-warm = Tienes <cell>{ $written }</cell>. El agua de un lago nunca está a { $temp } °C. { $ask }
log-doubt-too-warm-converted = Tienes <cell>{ $written }</cell>, es decir, { $temp } °C. El agua de un lago nunca está tan caliente. { $ask }
log-doubt-too-cold = Tienes <cell>{ $written }</cell>. El agua de un lago nunca está a { $temp } °C: se congela a 0 °C. { $ask }
log-doubt-too-cold-converted = Tienes <cell>{ $written }</cell>, es decir, { $temp } °C. El agua de un lago nunca está tan fría: se congela a 0 °C. { $ask }
log-doubt-very-warm = Tienes <cell>{ $written }</cell>. El agua de un lago casi nunca está a { $temp } °C. { $ask }
log-doubt-very-cold = Tienes <cell>{ $written }</cell>. El agua de un lago casi nunca está a { $temp } °C: se congela a 0 °C. { $ask }
log-ask-point-lost = ¿Se perdió la coma?
log-ask-what-was-it = ¿Qué marcaba la sonda?
log-doubt-spike = Tienes <cell>{ $written }</cell>. Las lecturas de al lado, en el mismo sentido, son <b>{ $above }</b> y <b>{ $below }</b>, así que esta sobresale.
log-doubt-spike-converted = Tienes <cell>{ $written }</cell>, es decir, { $temp } °C. Las lecturas de al lado, en el mismo sentido, son <b>{ $above } °C</b> y <b>{ $below } °C</b>, así que esta sobresale.
log-doubt-pair = Al bajar <cell>{ $down }</cell>, al subir <cell>{ $up }</cell>: { $apart } °C de diferencia en una misma marca. ¿Es un descuido alguna de las dos?
log-doubt-inversion = A { $upper } m tienes <b>{ $above } °C</b>, encima de <b>{ $below } °C</b> a { $lower } m. El agua de arriba pesaría más, y el agua que pesa más se hunde.
log-doubt-colder-on-top =
    { $marks ->
        [1] Una marca, { $difference } °C más fría que el agua de debajo. { $more }
        [2] Dos marcas, { $difference } °C más frías que el agua de debajo. { $more }
        [3] Tres marcas, { $difference } °C más frías que el agua de debajo. { $more }
        [4] Cuatro marcas, { $difference } °C más frías que el agua de debajo. { $more }
        [5] Cinco marcas, { $difference } °C más frías que el agua de debajo. { $more }
       *[other] { $marks } marcas, { $difference } °C más frías que el agua de debajo. { $more }
    }
log-doubt-warmer-on-top =
    { $marks ->
        [1] Una marca, { $difference } °C más caliente que el agua de debajo. En agua tan fría, la más cálida es la que pesa más. { $more }
        [2] Dos marcas, { $difference } °C más calientes que el agua de debajo. En agua tan fría, la más cálida es la que pesa más. { $more }
        [3] Tres marcas, { $difference } °C más calientes que el agua de debajo. En agua tan fría, la más cálida es la que pesa más. { $more }
        [4] Cuatro marcas, { $difference } °C más calientes que el agua de debajo. En agua tan fría, la más cálida es la que pesa más. { $more }
        [5] Cinco marcas, { $difference } °C más calientes que el agua de debajo. En agua tan fría, la más cálida es la que pesa más. { $more }
       *[other] { $marks } marcas, { $difference } °C más calientes que el agua de debajo. En agua tan fría, la más cálida es la que pesa más. { $more }
    }
log-both-ways-agree = Las lecturas al bajar y al subir coinciden, así que no es un solo descuido.
log-both-ways-differ = Al bajar y al subir no se leyó lo mismo allí, así que una de las dos puede ser un descuido.
log-one-way-only = Una segunda lectura allí diría si es un descuido.
log-doubt-fahrenheit = La mayoría parecen °F. El agua de un lago nunca está tan caliente; si son °F, van de { $low } a { $high } °C.

## Salidas

log-make-it = Poner { $value }
log-leave-it-out = Apartarla
log-leave-them-out = Apartarlas
log-leave-out-down = Apartar la de bajada
log-leave-out-up = Apartar la de subida
log-leave-out-upper = Apartar la de arriba
log-leave-out-lower = Apartar la de abajo
log-it-was-like-that = Era así
log-read-as-fahrenheit = Leerlas todas en °F
log-they-are-celsius = Son °C
log-look-at-the-table = Mirar la tabla
log-take-back = Volver atrás

## Lo decidido

log-settled-temp = en lugar de <cell>{ $was }</cell>, { $is }
log-settled-depth = profundidad: en lugar de <cell>{ $was }</cell>, { $is }
log-settled-added = añadido: { $is }
log-settled-out = <cell>{ $was }</cell>, apartada
log-settled-kept = <cell>{ $was }</cell>: era así
log-settled-fahrenheit = leídas en °F, y también lo que escribas aquí desde ahora
log-settled-celsius = leídas en °C

## Mediciones largas

log-rows-not-listed =
    { $count ->
        [one] Otra fila más se guarda y se dibuja, pero no aparece aquí.
       *[other] Otras { $count } filas se guardan y se dibujan, pero no aparecen aquí.
    }
log-doubts-not-listed =
    { $count ->
        [one] Después de estas, una más.
       *[other] Después de estas, { $count } más.
    }
log-settled-not-listed =
    { $count ->
        [one] Otra decisión más, que no aparece aquí.
       *[other] Otras { $count } decisiones, que no aparecen aquí.
    }

## La tabla que espera

log-pending-head =
    { $rows ->
        [one] Una fila. Estos encabezados los elegimos nosotros: cambia el que esté mal. Los números de línea son los de la tabla tal como llegó.
       *[other] { $rows } filas. Estos encabezados los elegimos nosotros: cambia el que esté mal. Los números de línea son los de la tabla tal como llegó.
    }
log-nothing-taken = No se tomó nada de ella. Lo que había antes en este cuaderno sigue como estaba.
log-skipped-title = un título, no una lectura
log-skipped-head = encabezados de las columnas
log-skipped-units = unidades
log-skipped-blank = vacía
log-skipped-total = un total o una media, no una lectura
log-more-rows =
    { $rows ->
        [one] Una fila más, hasta la línea { $line }
       *[other] { $rows } filas más, hasta la línea { $line }
    }
log-too-many-readings = Esta tabla contiene { $count } lecturas. Una medición puede tener { $most }: toma una de cada diez o divídela.
log-use-this-table = Usar esta tabla
log-use-waits = Podrás pulsar «Usar esta tabla» cuando respondas a la pregunta. No se borra nada.

## Correcciones

log-undo-correction = Deshacer la corrección
log-correct-remove = Quitarla
log-correct-zero = Dónde se leyeron las marcas
log-correct-zero-about = ¿Se leyeron en una baranda, un muelle o encima del hielo? ¿A qué altura sobre el agua?
log-correct-gap = Sensor y marca cero
log-correct-gap-about = ¿A qué distancia por debajo del cero de las marcas cuelga el sensor?
log-correct-tape = Cable con cinta métrica
log-correct-tape-about = Pon el cable, estirado, junto a una cinta métrica. ¿Cuánto mide un trozo largo según sus marcas y cuánto según la cinta?
log-correct-slant = Cable inclinado
log-correct-slant-about = ¿Se movió la barca? Di de qué marca a qué marca y cuánto se apartó el cable de la vertical.
log-correct-probe = Prueba de la sonda
log-correct-probe-about = Mantén la sonda en hielo que se derrite, hecho con agua limpia, y remueve, pero no con la sonda. Las dos últimas casillas pueden quedar vacías: son para agua templada, junto a un termómetro fiable.
log-correct-lag = Sonda sin estabilizar
log-correct-lag-about = Cuánto le faltaba a la sonda de cada cambio cuando se leyó, de 0 a 0,5. Se ve al comparar bajar y subir.

log-correct-field-ice = La sonda en agua con hielo, °C
log-correct-field-read = La sonda en la misma agua, °C
log-correct-field-true = Termómetro fiable en agua templada, °C
log-correct-field-above-water = Sobre el agua, m
log-correct-field-gap = Sensor bajo la marca cero, m
log-correct-field-marked = Según las marcas, m
log-correct-field-measured = Según la cinta, m
log-correct-field-from = Desde la marca, m
log-correct-field-to = Hasta la marca, m
log-correct-field-angle = Inclinación, grados
log-correct-field-share = Le faltaba

log-correct-example-temp = { $temp } °C
log-correct-example-depth = { $depth } m
log-correct-example-angle = 15°
log-correct-example-bare = { $value }
log-correct-missing = Aún sin aplicar: rellena «{ $field }».
log-correct-unreadable = Sin aplicar: en «{ $field }» pone <cell>{ $written }</cell>. Escríbelo así: { $example }.
log-correct-nothing = No cambia ninguna lectura.

log-corrected-ice-less = Todas las temperaturas, { $by } °C menos: la sonda marcó { $ice } °C en agua con hielo.
log-corrected-ice-more = Todas las temperaturas, { $by } °C más: la sonda marcó { $ice } °C en agua con hielo.
log-corrected-two-point = Todas las temperaturas ajustadas, { $most } °C como mucho: la sonda marcó { $ice } °C en agua con hielo y { $read } °C donde el agua tenía { $true } °C.
log-corrected-zero-above = Todas las profundidades, { $by } m menos: las marcas se leyeron { $by } m por encima del agua.
log-corrected-zero-below = Todas las profundidades, { $by } m más: las marcas se leyeron { $by } m por debajo del agua.
log-corrected-gap-below = Todas las profundidades, { $by } m más: el sensor cuelga { $by } m por debajo de la marca cero.
log-corrected-gap-above = Todas las profundidades, { $by } m menos: el sensor está { $by } m por encima de la marca cero.
log-corrected-tape = Todas las profundidades por { $factor }, { $most } m como mucho: { $marked } m según las marcas son { $measured } m según la cinta.
log-corrected-slant = Las marcas de { $from } a { $to } m están más arriba, { $most } m como mucho: el cable se inclinó { $angle }°.
log-corrected-lag = Todas las lecturas adelantadas, { $most } °C como mucho: a la sonda le faltaba aún el { $share } % de cada cambio.
log-correct-slant-steep = { $did } Un cable que se inclina más de 10° cuelga en curva: toma estas profundidades como aproximadas. La próxima vez ayuda más peso.
log-correct-above-water =
    { $count ->
        [one] Una lectura queda por encima del agua. Se guarda y se aparta.
       *[other] { $count } lecturas quedan por encima del agua. Se guardan y se apartan.
    }

log-refused-senseless = Sin aplicar: ningún cable ni ninguna sonda se desvía tanto. Mira otra vez el número.
log-refused-tape = Sin aplicar: las dos longitudes son demasiado distintas para ser el mismo trozo de cable. Mira otra vez las dos.
log-refused-slant = Sin aplicar: la primera marca va antes que la última, y un cable se inclina entre 0 y 60°. Mira otra vez los números.
log-refused-probe = Sin aplicar: ninguna sonda que aún funcione se desvía tanto. Mira otra vez los números o toma otra sonda.
log-refused-too-close = Las dos aguas se llevan menos de 5 °C: no dicen más que el agua con hielo. Por eso todas las temperaturas se ajustan solo con los { $ice } °C del agua con hielo.
log-refused-twice = Sin aplicar: arriba hay otra igual. Quita una de las dos.
log-refused-slant-twice = Sin aplicar: algunas de estas marcas ya están en otro tramo inclinado.
log-refused-no-pairs = Sin aplicar: ninguna marca se leyó en los dos sentidos, y así no se sabe cuánto se había estabilizado la sonda.
log-refused-wrong-sign = Sin aplicar: una sonda que aún no se ha estabilizado marca de más al bajar a agua más fría. La tuya no, así que otra cosa separa los dos sentidos.
log-refused-too-slow = Sin aplicar: a la sonda le faltaba más de la mitad de cada cambio. Calcularlo solo aumentaría los errores. La próxima vez, espera más.

log-correct-lag-offer = Al bajar y al subir hay { $apart } °C de diferencia, como los deja una sonda que no se había estabilizado: le faltaba cerca del { $share } % de cada cambio. ¿Corregirlo?
log-correct-lag-take = Corregirlo

## Oxígeno y disco de Secchi

log-secchi-depth = Profundidad de Secchi: { $depth } m.
log-secchi-odd = <cell>{ $written }</cell> no es una profundidad del disco de Secchi. Escríbela así: 3,2.
log-altitude-odd = <cell>{ $written }</cell> no es la altitud de un lago. Escríbela en metros sobre el mar, por ejemplo 420.
log-oxygen-at-sea = El oxígeno en tanto por ciento es el del agua dulce a la altura del mar. Si tu lago está más alto, escribe su altitud en «Oxígeno y Secchi».
log-oxygen-at-height = El oxígeno en tanto por ciento se calcula para agua dulce a { $height } m sobre el mar.

## Un cuaderno guardado que no se abre

log-file-broken = El archivo dice ser un cuaderno de Layercast, pero la línea { $line } no se puede leer. No se tomó nada de él y el archivo sigue como estaba. Abre una copia anterior o pega las lecturas.
log-file-too-large = El archivo es demasiado grande para ser un cuaderno de Layercast. No se tomó nada de él.
log-file-absurd-marks = El archivo dice ser un cuaderno de Layercast, pero su cable tiene marcas que ningún cable tiene. No se tomó nada de él.
log-file-absurd-sheets = El archivo dice ser un cuaderno de Layercast, pero sus respuestas no están en orden. No se tomó nada de él.
log-file-absurd-text = El archivo dice ser un cuaderno de Layercast, pero tiene un nombre demasiado largo. No se tomó nada de él.
log-file-absurd-numbers = El archivo dice ser un cuaderno de Layercast, pero tiene un número que no cabe en ningún lago. No se tomó nada de él.
log-file-absurd-readings = El archivo contiene más de { $most } lecturas. No se tomó nada de él.
# Another group's cast.
log-other-none = Todavía no hay otra medición.
log-other-group = La medición del grupo { $group }: { $count } lecturas, hasta { $last } m.
log-other = Otra medición: { $count } lecturas, hasta { $last } m.

# Three readings placed on the picture by hand.
log-by-hand-first = Primero coloca a mano tres de tus lecturas en la imagen. Después se dibuja el resto.
log-by-hand-alt = Los ejes de la imagen. Se colocan a mano tres lecturas antes de que se dibuje el resto.
log-by-hand-reading = { $temp } °C a { $depth } m
log-by-hand-placed = está en { $temp } °C y { $depth } m
log-by-hand-unplaced = aún no está en la imagen
log-by-hand-right = Correcto.
log-by-hand-depth-from-below = El 0 está arriba, como en el agua: cuenta { $depth } m <b>hacia abajo desde ahí</b>.
log-by-hand-warm-left = Lo más cálido queda más a la derecha. Ve de lado hasta { $temp } °C.
log-by-hand-other-depth = La temperatura es correcta. Su profundidad es { $depth } m, contada hacia abajo desde el 0.
log-by-hand-other-temp = La profundidad es correcta. Ahora ve de lado hasta { $temp } °C.
log-by-hand-elsewhere = Cuenta { $depth } m hacia abajo desde el 0 y ve de lado hasta { $temp } °C.
