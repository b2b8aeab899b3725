### Preguntas sobre profundidades, tramos y capas, las dos pasadas y qué volver a leer.

## A qué profundidad está una temperatura

ask-2 = ¿A qué profundidad hay { $temp } °C en tu agua?
ask-2-label = Tiene { $temp } °C a
ask-2-note = Léelo en la imagen. Medio tramo de más o de menos vale.
ask-2-yes = <mine>{ $yours }</mine> es donde la línea tiene { $temp } °C.
ask-2-almost = <mine>{ $yours }</mine> está cerca. Desde donde encuentras la línea, ve otra vez recto hasta las profundidades.
ask-2-wide = <mine>{ $yours }</mine> la contiene. La línea permite decirlo con menos margen.
ask-2-height = La profundidad se cuenta <b>hacia abajo</b> desde la superficie, y el 0 está arriba.
ask-2-next = <mine>{ $yours }</mine> es la marca siguiente. Baja recto desde { $temp } hasta encontrar la <b>línea</b> y luego ve hacia el lado.
ask-2-no = <mine>{ $yours }</mine> no es. Empieza en { $temp }, arriba, y baja recto hasta la línea.
ask-2-hint-1 = Las temperaturas están arriba, a lo ancho de la imagen. Busca ahí { $temp } °C.
ask-2-hint-2 = Baja recto desde { $temp } hasta encontrar la línea y luego ve recto hasta las profundidades, a la izquierda.
ask-2-worked = Desde { $temp } °C, recto abajo:
ask-2-worked-gloss = donde está la línea
ask-2-sum-at = A { $depth } m:
ask-2-sum-between = { $temp } °C, entre las dos:
ask-2-sum-gloss = según la línea
ask-2-fits = Todo lo que va de { $low } a { $high } m está bien leído en la imagen.
ask-2-own-words = Con tus palabras: ¿cómo encuentras en la imagen la profundidad de { $temp } °C?
ask-dropped-2 = «¿A qué profundidad hay …?» se queda fuera: tu agua no tiene ninguna temperatura a una sola profundidad en la que se note una lectura equivocada.

## Qué trozo cambia más deprisa

ask-3 = ¿En cuál de los tres trozos iluminados cambia más deprisa tu agua?
ask-3-lead = Los tres miden lo mismo.
ask-3-label = Más deprisa en
ask-3-name = trozo
ask-3-a = A, de { $from } a { $to } m
ask-3-b = B, de { $from } a { $to } m
ask-3-c = C, de { $from } a { $to } m
ask-3-note = Mira la línea en cada banda clara.
ask-3-yes = Ahí la línea va más hacia el lado, así que la temperatura cambia más.
ask-3-upright = Ahí la línea baja casi recta. Recta hacia abajo quiere decir que la temperatura <b>no</b> cambia.
ask-3-no = Ahí el agua sí cambia, pero en otro cambia más deprisa. Compara cuánto va la línea hacia el lado.
ask-3-hint-1 = En cada banda, mira por dónde entra la línea arriba y por dónde sale abajo.
ask-3-hint-2 = Hacia el lado es temperatura, hacia abajo es profundidad. Cuenta cuántos °C va la línea hacia el lado en cada banda.
ask-3-worked-upright = baja casi recta
ask-3-worked-sideways = muy hacia el lado
ask-3-why = Las bandas miden lo mismo, así que la del cambio más grande es la más rápida.
ask-3-own-words = Con tus palabras: ¿qué dice del agua una línea que baja recta?
ask-dropped-3 = «¿Qué trozo cambia más deprisa?» se queda fuera: en tu agua no hay tres trozos que se distingan con claridad.

## La capa brusca

ask-11 = ¿Dónde empieza y dónde acaba la capa en la que tu agua pierde al menos { $steep } °C por metro?
ask-11-lead = Da sus marcas de fuera: el comienzo de su primer tramo y el final del último. Si hay varias capas así, toma la que contiene tu tramo más brusco.
ask-11-label-layer = Esta capa
ask-11-name-layer = qué hace esta capa
ask-11-inside = empieza y acaba en mi medición
ask-11-on = sigue por debajo de mi última lectura
ask-11-none = no está: ningún tramo llega a { $steep } °C por metro
ask-11-note = Si la capa no está, las casillas pueden quedar vacías.
ask-11-grip-top = empieza
ask-11-grip-bottom = acaba
ask-11-yes = <mine>{ $yours }</mine> es la capa brusca (metalimnion) de tu agua según la regla de { $steep } °C por metro.
ask-11-yes-on = Empieza a <mine>{ $yours }</mine> y sigue por debajo de tu última lectura: «al menos hasta ahí» es todo lo que se puede decir.
ask-11-yes-none = Así es: ningún tramo de tu agua llega a { $steep } °C por metro, más allá de lo que hace el azar.
ask-11-no-drop = A un tramo de menos de un metro le basta con menos de { $steep } °C: divide antes lo que baja cada tramo entre su longitud.
ask-11-no-none = Al menos un tramo llega. Divide lo que baja cada tramo entre su longitud y compáralo con { $steep }.
ask-11-no-rate = <mine>{ $yours }</mine>: divide lo que baja cada tramo de ahí entre su longitud. ¿Llega a { $steep } °C por metro?
ask-11-not-on = Mira los últimos tramos de tu medición: ¿todavía pierden { $steep } °C por metro?
ask-11-cut-off = Las dos marcas están bien. Pero debajo de la última no tienes ninguna lectura: ¿puedes decir que la capa acaba ahí?
ask-11-drop = <mine>{ $yours }</mine> cuenta los tramos que pierden { $steep } °C en <b>un tramo</b>. Divide antes entre el tramo: la regla es por metro.
ask-11-today = <mine>{ $yours }</mine> está en la capa cálida de hoy. Mira más abajo.
ask-11-top = <mine>{ $yours }</mine> tiene una marca bien. Mira otra vez arriba: ¿cuál es el primer tramo que pierde { $steep } °C por metro?
ask-11-bottom = <mine>{ $yours }</mine> tiene una marca bien. Mira otra vez abajo: ¿cuál es el último tramo que pierde { $steep } °C por metro?
ask-11-no = <mine>{ $yours }</mine> no es. Empieza en el tramo más brusco y sube, y luego baja, mientras los tramos pierdan { $steep } °C por metro.
ask-11-hint-1 = Empieza en el tramo más brusco. Sus vecinos también pueden ser de la capa.
ask-11-hint-2 = Divide lo que baja cada tramo entre su longitud. Mientras sea { $steep } o más, el tramo es de la capa; para en el primero que sea menos, hacia arriba y hacia abajo.
ask-11-sum-step = De { $from } a { $to } m:
ask-11-sum-enough = al menos { $steep }: dentro
ask-11-sum-less = menos de { $steep }: fuera
ask-11-fits = Aquí vale: un comienzo de { $top_from } a { $top_to } m y un final de { $bottom_from } a { $bottom_to } m. En los bordes tus lecturas no distinguen los tramos de { $steep } °C por metro.
ask-11-value-none = ningún tramo llega a { $steep } °C por metro
ask-11-value-on = de { $from } m hasta al menos { $to } m
ask-11-why-on = Tu medición acaba en la parte brusca, a { $last } m. Con ella nadie puede decir cuánto más baja la capa.
ask-11-fastest = Tu tramo más rápido pierde { $value } °C por metro.
ask-11-chance = Un tramo llega a { $steep } °C por metro, pero lo que pierde no es más de lo que hace el azar en tus lecturas.
ask-11-own-words = Con tus palabras: ¿cómo encuentras los bordes de una capa de al menos { $steep } °C por metro?

## Espesor y parte de las capas

ask-12 = ¿Qué espesor tiene cada capa de tu agua y qué parte de la profundidad es?
ask-12-lead = La capa mezclada va de la superficie a su final; la capa profunda, del borde inferior de la capa brusca al fondo de tu medición. La capa brusca es lo que queda entre las dos.
ask-12-label-mixed = Capa mezclada
ask-12-label-steep = Capa brusca
ask-12-label-deep = Capa profunda
ask-12-label-shares = De la profundidad, en ese orden
ask-12-name-mixed = espesor de la capa mezclada, metros
ask-12-name-steep = espesor de la capa brusca, metros
ask-12-name-deep = espesor de la capa profunda, metros
ask-12-name-way = qué se sabe de la capa brusca
ask-12-name-share-mixed = parte de la capa mezclada, en centésimas
ask-12-name-share-steep = parte de la capa brusca, en centésimas
ask-12-name-share-deep = parte de la capa profunda, en centésimas
ask-12-whole = de espesor
ask-12-at-least = o más: sigue por debajo de mi medición
ask-12-after-percent = %
ask-12-note = Usa tus propios límites de las capas, de las preguntas anteriores. Dos partes, dos respuestas.
ask-12-yes = Los tres encajan con tus propios límites de las capas.
ask-12-yes-at-least = Los dos encajan. Debajo de tu última lectura nadie lo sabe, así que le toca «o más».
ask-12-yes-shares = Las tres partes encajan y juntas son toda la profundidad.
ask-12-yes-unknown = Entonces no hay partes: nadie sabe cuánto sigue por debajo de tu medición.
ask-12-cut-off = Los números encajan. Pero tu medición acaba en la capa brusca: ¿puedes decir que no es más gruesa?
ask-12-not-cut-off = Tu medición llega por debajo de la capa brusca, así que se puede decir su espesor y hay una capa profunda.
ask-12-overlap = Tus capas se solapan: cuentas agua dos veces. Cada capa empieza donde acaba la de encima.
ask-12-bottom = El agua fría de abajo también es una capa. Llega hasta el fondo de tu medición.
ask-12-bottom-shares = Son partes de las dos capas de arriba solas. La capa profunda también es parte de la profundidad.
ask-12-no-mixed = <mine>{ $yours }</mine> no es. ¿Cuánto hay de la superficie a donde acaba tu capa mezclada?
ask-12-no-steep = <mine>{ $yours }</mine> no es. ¿Cuánto hay del final de tu capa mezclada al borde inferior de la capa brusca?
ask-12-no-deep = <mine>{ $yours }</mine> no es. ¿Cuánto hay del borde inferior de la capa brusca al fondo de tu medición?
ask-12-sum = Cada parte encaja, pero juntas suman { $sum } %. Toda la profundidad es el 100 %.
ask-12-no-shares = Todavía no: juntas suman { $sum } %. Divide cada espesor entre toda la profundidad.
ask-12-fraction = Son partes de 1. Escríbelas en centésimas: 0,25 es el 25 %. No cuesta nada.
ask-12-slip-unit = <mine>{ $yours }</mine> no es una longitud. Escribe el espesor en metros; no cuesta nada.
ask-12-waits = Tus partes quedan guardadas. Se miran cuando estén los espesores.
ask-12-hint-1 = El espesor de una capa es su borde de abajo menos su borde de arriba.
ask-12-hint-2 = La capa mezclada empieza en 0. La brusca empieza donde acaba esa, y la profunda donde acaba la brusca.
ask-12-hint-shares-1 = Una parte es un trozo del total: ¿cuánto de toda la profundidad es esta capa?
ask-12-hint-shares-2 = Divide el espesor entre toda la profundidad y multiplica por 100. Las tres juntas suman 100.
ask-12-gloss-mixed = capa mezclada
ask-12-gloss-steep = capa brusca
ask-12-gloss-deep = capa profunda
ask-12-percent = { $value } %
ask-12-value = mezclada { $mixed } m, brusca { $steep } m, profunda { $deep } m
ask-12-value-at-least = mezclada { $mixed } m, brusca al menos { $steep } m
ask-12-value-shares = mezclada { $mixed } %, brusca { $steep } %, profunda { $deep } %
ask-12-value-unknown = no se puede decir ninguna parte
ask-12-why = Redondeadas a centésimas enteras pueden sumar 99 o 101.
ask-12-own-words = Con tus palabras: ¿por qué las tres capas juntas tienen que ser toda la profundidad?
ask-dropped-12 = «¿Qué espesor tiene cada capa?» se queda fuera: hacen falta un final de la capa mezclada y una capa brusca.
ask-dropped-12-today = «¿Qué espesor tiene cada capa?» se queda fuera: con una capa cálida de hoy tu agua tiene más de tres capas, o menos.
ask-dropped-12-thin = «¿Qué espesor tiene cada capa?» se queda fuera: una de tus capas es tan fina que en la cuenta no se notaría un paso olvidado.
ask-locked-first = Esta pregunta se apoya en tu respuesta a la pregunta { $number }.
ask-locked-go-first = Ir a la pregunta { $number }
