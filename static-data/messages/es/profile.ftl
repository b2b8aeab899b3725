### Perfil: las marcas de quien aprende y lo que encontraron las reglas.
### `<mine>` es lo propio; entre número y unidad va un espacio de no separación.

## Las marcas

profile-hand-over = Tapar mis marcas: ahora marca otra persona del grupo
profile-hand-back = Recuperar mis marcas
profile-partner-covered = Las primeras marcas están tapadas. Pon las tuyas sin hablar; después se ven unas y otras.
profile-partner-mark = { $mark }: primero { $first }, después { $second }.
profile-partner-at = { $depth } m
profile-partner-none = no está
profile-mark-mixed = Final de la capa mezclada
profile-mark-thermocline = Termoclina
profile-mark-deep = Comienzo de la capa profunda
profile-word-thermocline = Termoclina, la parte de cambio más brusco: allí el agua cambia más deprisa.
profile-word-give = Más o menos: cuánto puede fallar tu marca. Puede quedar vacío.
profile-metres-deep = a { $depth } metros de profundidad
profile-not-placed = sin colocar todavía
profile-check = Comprobar mis marcas
profile-check-waits = Podrás pulsar «Comprobar mis marcas» cuando cada marca tenga una profundidad o «no está en mi agua».
profile-no-layers = No veo capas
profile-problem-unreadable = Una sola profundidad en metros, por favor, como { $example }.
profile-problem-above-surface = La profundidad se cuenta hacia abajo desde la superficie, donde es 0.
profile-problem-too-deep = Tu última lectura está a { $last } m. Más abajo no se sabe nada.
profile-problem-above-neighbour = Queda por encima de «{ $mark }», a { $depth } m, pero va por debajo. Mueve una de las dos.
profile-problem-below-neighbour = Queda por debajo de «{ $mark }», a { $depth } m, pero va por encima. Mueve una de las dos.
profile-problem-give = «Más o menos» es una longitud en metros, como { $example }. Puede quedar vacío.
profile-not-yet = Todavía no hay perfil: hacen falta lecturas a dos profundidades o más. Escríbelas o pégalas en Registro.
profile-not-yet-one = Solo hay lecturas a una profundidad. Un perfil necesita al menos otra.

## Comprobar antes de tiempo

profile-early =
    { $count ->
        [one] Si compruebas ahora, verás la respuesta de la pregunta { $numbers }.
       *[other] Si compruebas ahora, verás las respuestas de las preguntas { $numbers }.
    }
profile-early-more =
    { $count ->
        [one] Entonces ya no dará puntos. Tus marcas se quedan como están, de todos modos.
       *[other] Entonces ya no darán puntos. Tus marcas se quedan como están, de todos modos.
    }
profile-early-answer-first = Responder antes { $numbers }
profile-early-check = Comprobar ahora
profile-list-one = { $first }
profile-list-last = { $first } y { $last }
profile-list-more = { $first }, { $rest }

## Hechos que no hace falta tapar

profile-warmest = Máxima { $temp } °C, a { $depth } m
profile-warmest-surface = Máxima { $temp } °C, en la superficie
profile-coldest = Mínima { $temp } °C, a { $depth } m
profile-coldest-surface = Mínima { $temp } °C, en la superficie
profile-apart = Diferencia entre bajar y subir, { $apart } °C como mucho
profile-assumed = Leído una vez: se supone ± { $assumed } °C, y los márgenes se apoyan en ello
profile-assumed-few = { $count ->
    [one] Solo una marca se leyó dos veces: se supone ± { $assumed } °C, y los márgenes se apoyan en ello
   *[other] Solo { $count } marcas se leyeron dos veces: se supone ± { $assumed } °C, y los márgenes se apoyan en ello
}
profile-example = Un ejemplo: un estanque inventado, no medido
profile-legs-settling-warmer = Al bajar se leyeron de media { $mean } °C más que al subir, sobre todo en la capa de cambio brusco, como hace una sonda que aún se está estabilizando. La próxima vez, espera más.
profile-legs-settling-colder = Al bajar se leyeron de media { $mean } °C menos que al subir, sobre todo en la capa de cambio brusco, como hace una sonda que aún se está estabilizando. La próxima vez, espera más.
profile-legs-warmer = Al bajar se leyeron de media { $mean } °C más que al subir. Algo cambió entretanto: el agua, el lugar de la barca o la sonda.
profile-legs-colder = Al bajar se leyeron de media { $mean } °C menos que al subir. Algo cambió entretanto: el agua, el lugar de la barca o la sonda.

## Las lecturas, como las dice el cursor

profile-reading-both = <b>A { $depth } m</b> { $down } °C al bajar, { $up } °C al subir
profile-reading-down = <b>A { $depth } m</b> { $temp } °C al bajar
profile-reading-up = <b>A { $depth } m</b> { $temp } °C al subir
profile-reading-one = <b>A { $depth } m</b> { $temp } °C

## Capas, y palabras en lugar de un número

profile-found-title = Lo que encontraron las reglas
profile-thermocline = Termoclina
profile-weak-thermocline = Termoclina débil
profile-mixed-layer-to = Capa mezclada, hasta
profile-mixed-layer-at-least = Capa mezclada, al menos hasta
profile-mixed-layer-today = Capa mezclada de hoy, hasta
profile-deep-layer = Capa profunda
profile-deep-layer-from = Capa profunda, desde
profile-deep-layer-deeper = Capa profunda, a más de
profile-warm-today = Capa cálida de hoy
profile-today-steepest = Capa cálida de hoy, cambia más a
profile-under-it = Debajo
profile-steepest-step = Tramo más brusco
profile-warms-fastest = Se calienta más a
profile-densing = La densidad cambia más a
profile-ice-other-layers = Capa mezclada, capa profunda
profile-unit-m = m
profile-unit-c-per-m = °C por metro
profile-none = no hay
profile-cannot-tell = no se sabe
profile-not-under-ice = no para agua así
profile-even-water = agua uniforme, { $temp } °C
profile-slow-water = se enfría poco a poco
profile-range = de { $from } a { $to } m
profile-could-be = Podría ser { $range }.
profile-quarter-metre = un cuarto de metro
profile-half-metre = medio metro
profile-one-metre = un metro
profile-some-metres = { $metres } m
profile-an-answer = Es una respuesta, y vale como cualquier profundidad.

## La marca propia, al lado

profile-inside = La tuya, <mine>{ $mine } m</mine>, está dentro del margen: <b>{ $range }</b>.
profile-above = La tuya, <mine>{ $mine } m</mine>, queda { $far } m sobre el margen: <b>{ $range }</b>.
profile-below = La tuya, <mine>{ $mine } m</mine>, queda { $far } m bajo el margen: <b>{ $range }</b>.
profile-far-above = La tuya, <mine>{ $mine } m</mine>, queda { $far } m sobre el margen: <b>{ $range }</b>. { $look }
profile-far-below = La tuya, <mine>{ $mine } m</mine>, queda { $far } m bajo el margen: <b>{ $range }</b>. { $look }
profile-look-flattest = Mira dónde la línea está más tumbada: allí el agua cambia más deprisa.
profile-look-mixed = Mira dónde está ya { $drop } °C más fría.
profile-look-mixed-warmer = Mira dónde está ya { $drop } °C más cálida.
profile-look-steep-ends = Mira dónde acaba la capa de cambio brusco.
profile-refused-found = Dijiste <mine>no está en mi agua</mine>. Las reglas la encuentran: <b>{ $range }</b>. { $look }
profile-refused-weak = Dijiste <mine>no está en mi agua</mine>. Hay una débil: <b>{ $range }</b>.
profile-refused-warming = Dijiste <mine>no está en mi agua</mine>. No hay termoclina de la estación cálida, pero aquí es donde más se calienta: <b>{ $range }</b>.
profile-refused-today = Dijiste <mine>no está en mi agua</mine>. Es cierto para una termoclina estacional; esta es de hoy.
profile-refused-agreed = Dijiste <mine>no está en mi agua</mine>. Las reglas dicen lo mismo.
profile-no-layers-agreed = Dijiste <mine>sin capas</mine>. Las reglas dicen lo mismo.
profile-refused-at-least = Dijiste <mine>no está en mi agua</mine>: acaba más abajo que tus lecturas, si acaba.
profile-short-of-at-least = La pusiste a <mine>{ $mine } m</mine>. El agua sigue así al menos hasta { $least } m.
profile-as-far-as-at-least = La tuya, <mine>{ $mine } m</mine>, es tu última lectura. Hasta ahí llega, como mínimo.

## Reglas

profile-rule-step = Regla: el centro del tramo más brusco. El tramo va { $range }; en { $thickness } el agua perdió { $drop } °C: { $gradient } °C por metro.
profile-rule-main-step = Regla: el centro del tramo más brusco de la capa principal, { $gradient } °C por metro.
profile-rule-gentle-step = Regla: el centro del tramo más brusco, { $gradient } °C por metro. Los vecinos son casi igual de bruscos, así que el margen es ancho.
profile-rule-equal-steps =
    { $count ->
        [2] Regla: el centro del tramo más brusco. Dos tramos son igual de bruscos, { $gradient } °C por metro cada uno.
       *[other] Regla: el centro del tramo más brusco. { $count } tramos son igual de bruscos, { $gradient } °C por metro cada uno.
    }
profile-rule-warming-step = Regla: el centro del tramo que más se calienta. El tramo va { $range }; en { $thickness } el agua ganó { $gain } °C: { $gradient } °C por metro.
profile-rule-equal-warming-steps =
    { $count ->
        [2] Regla: el centro del tramo que más se calienta. Dos tramos son igual de bruscos, { $gradient } °C por metro cada uno.
       *[other] Regla: el centro del tramo que más se calienta. { $count } tramos son igual de bruscos, { $gradient } °C por metro cada uno.
    }
profile-rule-mixed = Regla: la primera profundidad { $drop } °C más fría que a { $reference } m.
profile-rule-mixed-at-least = Regla: la primera profundidad { $drop } °C más fría que a { $reference } m. Tu medición no llega a eso, por eso es «al menos».
profile-rule-mixed-at-least-small = Regla: la primera profundidad { $drop } °C más fría que a { $reference } m. Toda tu medición difiere menos, así que esta regla no ve la capa que hay: esta profundidad es «al menos».
profile-rule-mixed-at-least-warmer = Regla: la primera profundidad { $drop } °C más cálida que a { $reference } m. Tu medición no llega a eso, por eso es «al menos».
profile-rule-mixed-density = Regla: de arriba abajo la densidad gana menos de { $gain } kg por m³. Un cambio de { $drop } °C no marca aquí el final de la capa, porque tan cerca de 4 °C apenas cambia la densidad.
profile-rule-mixed-little = Regla: de arriba abajo la densidad aumenta menos de { $gain } kg por m³. Un cambio de { $drop } °C no marca aquí el final de la capa, porque apenas cambia la densidad.
profile-rule-mixed-outvoted = Regla: arriba y abajo se comparan con varias lecturas, y según estas la densidad apenas difiere. Un cambio de { $drop } °C en tan pocas no marca el final de la capa.
profile-rule-mixed-warmer = Regla: la primera profundidad { $drop } °C más cálida que a { $reference } m.
profile-rule-mixed-today = Regla: la primera profundidad { $drop } °C más fría que a { $reference } m. Aquí cae en la capa cálida de hoy.
profile-rule-mixed-today-warmer = Regla: la primera profundidad { $drop } °C más cálida que a { $reference } m. Aquí cae en la capa cálida de hoy.
profile-rule-deep = Regla: bajo la serie seguida de tramos que pierden cada uno al menos { $steep } °C por metro.
profile-rule-deep-joined = Regla: bajo la serie seguida de tramos que pierden cada uno al menos { $steep } °C por metro, o casi tanto que tus lecturas no lo distinguen.
profile-rule-deep-main = Regla: bajo la capa de cambio brusco en la que más cambia la densidad.
profile-note-cut-off = La medición acaba a { $last } m, en la capa de cambio brusco: la termoclina también podría estar más abajo de este margen.
profile-note-ambiguous = Hay otro tramo igual de brusco en otro lugar. Cuenta el de arriba.
profile-note-tries-scatter = Si se prueba una y otra vez, el tramo más brusco cae casi en cualquier parte: «no se sabe» es también una respuesta honesta.
profile-note-two-places = El margen está en dos lugares: entre ellos el agua cambia más despacio.

## Otras reglas

profile-rule-steepest-middle = Centro del tramo más brusco
profile-rule-densest = Donde la densidad cambia más deprisa
profile-rule-temp-drop = { $drop } °C más fría que a { $reference } m
profile-rule-temp-rise = { $drop } °C más cálida que a { $reference } m
profile-rule-density-rise = { $rise } kg por m³ más densa que a { $reference } m
profile-rule-first-steep-top = Comienzo del primer tramo de al menos { $steep } °C por metro
profile-rule-first-steep-middle = Centro de ese tramo
profile-rule-balance-point = Punto de equilibrio de la barra más larga y sus vecinas
profile-rule-parabola = Cima de una curva por esas barras
profile-rule-smooth-curve = Lugar más brusco de una curva suave por las medias
profile-rule-first-dense-top = Comienzo del primer tramo que gana al menos { $gain } kg por m³ por metro
profile-rule-sharpest-bend = Donde la línea más se dobla hacia lo frío
profile-rule-greatest-angle = Mayor ángulo entre una recta por encima y otra por debajo
profile-rule-broken-stick = Mejor ajuste de dos piezas: agua pareja y luego una pendiente recta
profile-rule-three-layers = Mejor ajuste de tres piezas: pareja, pendiente, pareja
# $found: cuántas reglas hallan una profundidad; $none: cuántas no hallan ninguna; $least, $most: la menos y la más profunda;
# $within: cuánto se acercan unas a otras cuando coinciden.
profile-rules-thermocline-apart =
    { $none ->
        [0] { $found } reglas ponen la termoclina entre <b>{ $least } y { $most } m</b>.
        [1] { $found } reglas ponen la termoclina entre <b>{ $least } y { $most } m</b>; 1 no halla ninguna.
       *[other] { $found } reglas ponen la termoclina entre <b>{ $least } y { $most } m</b>; { $none } no hallan ninguna.
    }
profile-rules-thermocline-agree =
    { $none ->
        [0] { $found } reglas coinciden hasta { $within } m en la termoclina: <b>{ $least } m</b>.
        [1] { $found } reglas coinciden hasta { $within } m en la termoclina: <b>{ $least } m</b>; 1 no halla ninguna.
       *[other] { $found } reglas coinciden hasta { $within } m en la termoclina: <b>{ $least } m</b>; { $none } no hallan ninguna.
    }
profile-rules-mixed-apart =
    { $none ->
        [0] { $found } reglas ponen el final de la capa mezclada entre <b>{ $least } y { $most } m</b>.
        [1] { $found } reglas ponen el final de la capa mezclada entre <b>{ $least } y { $most } m</b>; 1 no halla ninguno.
       *[other] { $found } reglas ponen el final de la capa mezclada entre <b>{ $least } y { $most } m</b>; { $none } no hallan ninguno.
    }
profile-rules-mixed-agree =
    { $none ->
        [0] { $found } reglas coinciden hasta { $within } m en el final de la capa mezclada: <b>{ $least } m</b>.
        [1] { $found } reglas coinciden hasta { $within } m en el final de la capa mezclada: <b>{ $least } m</b>; 1 no halla ninguno.
       *[other] { $found } reglas coinciden hasta { $within } m en el final de la capa mezclada: <b>{ $least } m</b>; { $none } no hallan ninguno.
    }

## Débil, no se sabe, dos capas, cortada

profile-weak-title = Capas débiles
profile-no-steep-layer = El agua se enfría hacia abajo, pero ningún tramo llega a { $steep } °C por metro: según esa regla, no hay capa de cambio brusco (metalimnion).
profile-no-steep-layer-chance = El agua se enfría hacia abajo, pero ningún tramo de al menos { $steep } °C por metro es más que azar: según esa regla, no hay capa de cambio brusco (metalimnion).
profile-no-deep = Pusiste una a <mine>{ $mine } m</mine>. La regla pide una capa de cambio brusco encima, y no la hay.
profile-no-deep-even-below = Pusiste una a <mine>{ $mine } m</mine>. Debajo el agua apenas cambia, pero la regla pide una capa de cambio brusco encima.
profile-cannot-tell-title = Estas lecturas no bastan para saberlo
profile-cannot-tell-lead = La termoclina podría estar en cualquier punto { $range }, más de la mitad de tu medición. El tramo más brusco es uno de muchos que tus lecturas no distinguen.
profile-cannot-tell-refused = Dijiste <mine>no está en mi agua</mine>. Con estas lecturas nadie puede decir más.
profile-cannot-tell-inside = La tuya, <mine>{ $mine } m</mine>, está dentro del margen: <b>{ $range }</b>. También lo está más de la mitad de tu medición.
profile-would-be = Regla: el centro del tramo más brusco. Sería { $value } m, { $gradient } °C por metro, con un margen { $range }.
profile-would-be-two-places = Regla: el centro del tramo más brusco. Sería { $value } m, { $gradient } °C por metro, con un margen { $range } en más de un lugar.
profile-would-settle = Lo que lo aclararía: esperar más en cada marca, u otra medición para hacer la media con esta.
profile-anywhere = Podría ser en cualquier punto { $range }.
profile-two-title = Dos capas de cambio brusco
profile-two-lead = La principal va { $range }. La de arriba se debe seguramente al sol de hoy.
profile-more-layers =
    { $count ->
        [2] Hay dos capas de cambio brusco. La principal es donde más cambia la densidad.
       *[other] Hay { $count } capas de cambio brusco. La principal es donde más cambia la densidad.
    }
profile-warm-today-note = Podría ser { $range }. Una capa de cambio brusco cerca de la superficie, otra debajo.
profile-season-note = La estacional, contada desde 2 m: { $value } m, podría ser { $range }.
profile-season-at-least = La estacional, contada desde 2 m: al menos { $least } m.
profile-season-inside = La tuya, <mine>{ $mine } m</mine>, está dentro del margen de la estacional: <b>{ $range }</b>, contada desde 2 m.
profile-season-above = La tuya, <mine>{ $mine } m</mine>, queda { $far } m sobre la estacional: <b>{ $range }</b>, contada desde 2 m.
profile-season-below = La tuya, <mine>{ $mine } m</mine>, queda { $far } m bajo la estacional: <b>{ $range }</b>, contada desde 2 m.
profile-cut-off-title = La medición acaba en la capa de cambio brusco
profile-cut-off-lead = A { $last } m el agua aún pierde { $gradient } °C por metro. Más abajo puede haber una capa profunda; estas lecturas acaban antes.
profile-cut-off-refused = Dijiste <mine>no está en mi agua</mine>: no está en estas lecturas.
profile-cut-off-placed = La pusiste a <mine>{ $mine } m</mine>. Hasta { $last } m la temperatura sigue cambiando mucho, así que la capa profunda empieza más abajo.
profile-cut-off-note = «A más de { $last } m» es la respuesta completa allí donde una pregunta la pida.

## Mezclada

profile-mixed-title = En esta agua no hay termoclina
profile-mixed-title-few = Estas lecturas no muestran termoclina
profile-mixed-lead = { $top } hasta { $last } m el agua difiere en { $differs } °C. { $why }
profile-from-surface = Desde la superficie
profile-from-depth = Desde { $depth } m
profile-mixed-no-step = Ningún tramo se acerca a { $steep } °C por metro. El agua está mezclada.
profile-mixed-below = Ningún tramo llega a { $steep } °C por metro, y arriba y abajo la densidad apenas difiere. El agua está mezclada.
profile-mixed-chance = Un tramo llega a { $gradient } °C por metro, pero arriba y abajo el agua es igual: lecturas como las tuyas dan un tramo así por azar. El agua está mezclada.
profile-mixed-by-density = Un tramo llega a { $gradient } °C por metro, pero en agua tan fría la densidad apenas difiere. El viento puede mezclarla; según las reglas, está mezclada.
profile-mixed-by-little = Un tramo llega a { $gradient } °C por metro, pero de arriba abajo la densidad aumenta menos de { $gain } kg por m³. Un viento puede mezclarla, así que según las reglas está mezclada.
profile-mixed-last-reading = Un tramo llega a { $gradient } °C por metro, pero solo lo muestra la última lectura. Lee más marcas allí antes de llamarlo capa.
profile-mixed-few-readings = Un tramo llega a { $gradient } °C por metro, pero muy pocas lecturas lo muestran. Lee más marcas allí antes de llamarlo capa.
profile-mixed-thermocline = Pusiste una a <mine>{ $mine } m</mine>. El tramo más brusco de todos es de { $gradient } °C por metro, y la densidad apenas cambia.
profile-mixed-thermocline-few = Pusiste una a <mine>{ $mine } m</mine>. Un tramo llega a { $gradient } °C por metro, pero muy pocas lecturas lo muestran.
profile-mixed-deep-few = Pusiste una a <mine>{ $mine } m</mine>. Muy pocas lecturas muestran allí agua más densa.
profile-mixed-deep = Pusiste una a <mine>{ $mine } m</mine>. Allí el agua apenas es más densa que encima.
profile-steepest-chance = El tramo va { $range }. Lecturas como las tuyas dan un tramo así por azar: solo uno de más de { $from } °C por metro sería otra cosa.
profile-steepest-real = El tramo va { $range }. El azar solo da un tramo de más de { $from } °C por metro más o menos una vez de cada veinte.

## Bajo el hielo

profile-ice-title = Más fría arriba, como bajo el hielo
profile-ice-lead = Desde { $top } °C arriba, el agua se calienta hasta { $bottom } °C. El agua es más densa cerca de 4 °C, así que la más cálida está debajo y allí puede quedarse.
profile-ice-lead-warm = Desde { $top } °C arriba, el agua se calienta hasta { $bottom } °C. El agua es más densa cerca de 4 °C, así que hasta ahí la más cálida está debajo, como debe. Más cálida aún, volvería a ser más ligera: quizá la sujeta la sal, o falla una lectura.
profile-densing-higher = El tramo va { $range }. Está por encima de donde más se calienta: cerca de 4 °C un grado apenas cambia la densidad.
profile-densing-step = El tramo va { $range }.
profile-ice-note = Esas reglas son para agua que está cálida arriba. Si había hielo, la profundidad se cuenta desde el nivel del agua en el agujero.
profile-ice-other-marks =
    { $count ->
        [one] Otra marca tuya queda registrada. No hay con qué compararla.
       *[other] Otras dos marcas tuyas quedan registradas. No hay con qué compararlas.
    }

## Inestable

profile-unstable-title = Agua más pesada arriba
profile-unstable-colder = Hasta { $bottom } m el agua está a { $above } °C; debajo, a { $below } °C. Aquí el agua más fría pesa más y se hunde, así que esto no dura.
profile-unstable-warmer = Hasta { $bottom } m el agua está a { $above } °C; debajo, a { $below } °C. En agua tan fría, la más cálida pesa más y se hunde, así que esto no dura.
profile-unstable-either = O algo salió mal con estas lecturas, o sorprendiste al lago mientras se enfriaba, o el agua de abajo es más salada, y la sal la hace más pesada. Hasta que esté claro no se marcan capas. «Era así» conserva todas las lecturas.
profile-unstable-either-warming = O algo salió mal con estas lecturas, o sorprendiste al lago mientras se calentaba, o el agua de abajo es más salada, y la sal la hace más pesada. Hasta que esté claro no se marcan capas. «Era así» conserva todas las lecturas.
profile-unstable-kept = Dijiste que era así: el lago se está removiendo, o el agua de abajo es más salada. Solo por la temperatura aquí no se pueden marcar capas.

## Solo la capa cálida de hoy

profile-today-title = Solo una capa cálida de hoy
profile-today-lead = La única capa de cambio brusco está arriba, { $range }. Un día de sol y calma hace una capa así; una noche de viento se la puede llevar.
profile-today-under = La parte { $range } difiere en { $differs } °C. No hay termoclina estacional ni capa profunda.
profile-today-under-slow = La parte { $range } se enfría { $differs } °C, pero allí no hay una capa de cambio brusco según las reglas: no se puede marcar una capa profunda.
profile-today-deep = Pusiste una capa profunda a <mine>{ $mine } m</mine>. Bajo la capa de hoy el agua es uniforme.
profile-today-deep-slow = Pusiste una capa profunda a <mine>{ $mine } m</mine>. Allí el agua se enfría poco a poco, y encima no hay una capa de cambio brusco según las reglas.

## Demasiado pocas profundidades

profile-few-title = Muy pocas profundidades para las reglas
profile-few-lead = Tienes { $count } profundidades en { $span } m. Las reglas necesitan al menos cuatro, en { $least } m o más.
profile-few-more = Tus lecturas y tus marcas se conservan. Unas marcas más en el cable lo aclararían.

## La imagen en una frase

profile-alt-empty = Todavía no hay lecturas.
profile-alt-one = De momento, una profundidad: { $first }.
profile-alt-falls = La temperatura baja de { $first } a { $last }.
profile-alt-rises = La temperatura sube de { $first } a { $last }.
profile-alt-even = La temperatura es casi la misma, de { $first } a { $last }.
profile-at-surface = { $temp } °C en la superficie
profile-at-depth = { $temp } °C a { $depth } m
profile-alt-more = { $first } { $more }
profile-alt-steepest = Donde más baja es { $range }.
profile-alt-warms = Donde más sube es { $range }.
profile-alt-cannot-tell = Estas lecturas no bastan para saber dónde baja más.
profile-alt-no-thermocline = No hay termoclina.
profile-alt-unstable = Arriba hay agua más pesada.
profile-alt-warm-today = La capa cálida de hoy va { $range }.
profile-alt-mixed = La capa mezclada acaba a { $depth } m.
profile-alt-deep = La capa profunda empieza a { $depth } m.
profile-alt-cut-off = En la última lectura, a { $depth } m, la temperatura aún cambia mucho.
