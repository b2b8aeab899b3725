### Preguntas sobre profundidades, tramos y capas, los dos sentidos y qué volver a leer.

## A qué profundidad está una temperatura

ask-2 = ¿A qué profundidad hay { $temp } °C en tu agua?
ask-2-label = Tiene { $temp } °C a
ask-2-note = Léelo en la imagen. Medio tramo de más o de menos vale.
ask-2-yes = <mine>{ $yours }</mine> es donde la línea tiene { $temp } °C.
ask-2-almost = <mine>{ $yours }</mine> está cerca. Desde donde encuentras la línea, ve otra vez recto hasta las profundidades.
ask-2-wide = <mine>{ $yours }</mine> la contiene. La línea permite decirlo con menos margen.
ask-2-height = La profundidad se cuenta <b>hacia abajo</b> desde la superficie, y el 0 está arriba.
ask-2-next = <mine>{ $yours }</mine> es la marca siguiente. Baja recto desde { $temp } hasta encontrar la <b>línea</b> y luego ve hacia el lado.
ask-2-temperature = <mine>{ $yours }</mine> queda por debajo de tu medición. Parece la temperatura: se pide su profundidad.
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
ask-dropped-2 = «¿A qué profundidad hay …?» no se pregunta: tu agua no tiene ninguna temperatura a una sola profundidad en la que se note una lectura equivocada.

## Qué trozo cambia más deprisa

ask-3 = ¿En cuál de los tres trozos marcados cambia más deprisa tu agua?
ask-3-lead = Los tres miden lo mismo.
ask-3-label = Más deprisa en
ask-3-name = trozo
ask-3-a = A, de { $from } a { $to } m
ask-3-b = B, de { $from } a { $to } m
ask-3-c = C, de { $from } a { $to } m
ask-3-note = Mira la línea en cada banda marcada.
ask-3-yes = Ahí la línea va más hacia el lado, así que la temperatura cambia más.
ask-3-upright = Ahí la línea baja casi recta. Recta hacia abajo quiere decir que la temperatura <b>no</b> cambia.
ask-3-no = Ahí el agua sí cambia, pero en otro cambia más deprisa. Compara cuánto va la línea hacia el lado.
ask-3-hint-1 = En cada banda, mira por dónde entra la línea arriba y por dónde sale abajo.
ask-3-hint-2 = Hacia el lado es temperatura, hacia abajo es profundidad. Cuenta cuántos °C va la línea hacia el lado en cada banda.
ask-3-worked-upright = baja casi recta
ask-3-worked-sideways = muy hacia el lado
ask-3-why = Las bandas miden lo mismo, así que la del cambio más grande es la más rápida.
ask-3-own-words = Con tus palabras: ¿qué dice del agua una línea que baja recta?
ask-dropped-3 = «¿Qué trozo cambia más deprisa?» no se pregunta: en tu agua no hay tres trozos que se distingan con claridad.

## La capa de cambio brusco

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
ask-11-yes = <mine>{ $yours }</mine> cuenta como la capa de cambio brusco (metalimnion) de tu agua según la regla de { $steep } °C por metro.
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
ask-11-why-on = Tu medición acaba en la capa de cambio brusco, a { $last } m. Con ella nadie puede decir cuánto más baja la capa.
ask-11-fastest = Tu tramo más rápido pierde { $value } °C por metro.
ask-11-chance = Un tramo llega a { $steep } °C por metro, pero lo que pierde no es más de lo que hace el azar en tus lecturas.
ask-11-own-words = Con tus palabras: ¿cómo encuentras los bordes de una capa de al menos { $steep } °C por metro?

## Espesor y parte de las capas

ask-12 = ¿Qué espesor tiene cada capa de tu agua y qué parte de la profundidad es?
ask-12-lead = La capa mezclada va de la superficie a su final; la capa profunda, del borde inferior de la capa de cambio brusco al fondo de tu medición. La capa de cambio brusco es lo que queda entre las dos.
ask-12-label-mixed = Capa mezclada
ask-12-label-steep = Capa de cambio brusco
ask-12-label-deep = Capa profunda
ask-12-label-shares = De la profundidad, en ese orden
ask-12-name-mixed = espesor de la capa mezclada, metros
ask-12-name-steep = espesor de la capa de cambio brusco, metros
ask-12-name-deep = espesor de la capa profunda, metros
ask-12-name-way = qué se sabe de la capa de cambio brusco
ask-12-name-share-mixed = parte de la capa mezclada, en centésimas
ask-12-name-share-steep = parte de la capa de cambio brusco, en centésimas
ask-12-name-share-deep = parte de la capa profunda, en centésimas
ask-12-whole = de espesor
ask-12-at-least = o más: sigue por debajo de mi medición
ask-12-after-percent = %
ask-12-note = Usa tus propios límites de las capas, de las preguntas anteriores. Dos partes, dos respuestas.
ask-12-yes = Los tres encajan con tus propios límites de las capas.
ask-12-yes-at-least = Los dos encajan. Debajo de tu última lectura nadie lo sabe, así que le toca «o más».
ask-12-yes-shares = Las tres partes encajan y juntas son toda la profundidad.
ask-12-yes-unknown = Entonces no hay partes: nadie sabe cuánto sigue por debajo de tu medición.
ask-12-cut-off = Los números encajan. Pero tu medición acaba en la capa de cambio brusco: ¿puedes decir que no es más gruesa?
ask-12-not-cut-off = Tu medición llega por debajo de la capa de cambio brusco, así que se puede decir su espesor y hay una capa profunda.
ask-12-overlap = Tu capa mezclada y tu capa de cambio brusco se solapan: cuentas dos veces el agua que comparten. La capa de cambio brusco empieza donde acaba la mezclada.
ask-12-overlap-deep = Tu capa profunda se solapa con las dos de encima: mide lo que toda la profundidad. Empieza donde acaba la capa de cambio brusco.
ask-12-bottom = El agua fría de abajo también es una capa. Llega hasta el fondo de tu medición.
ask-12-bottom-shares = Son partes de las dos capas de arriba solas. La capa profunda también es parte de la profundidad.
ask-12-no-mixed = <mine>{ $yours }</mine> no es. ¿Cuánto hay de la superficie a donde acaba tu capa mezclada?
ask-12-no-steep = <mine>{ $yours }</mine> no es. ¿Cuánto hay del final de tu capa mezclada al borde inferior de la capa de cambio brusco?
ask-12-no-deep = <mine>{ $yours }</mine> no es. ¿Cuánto hay del borde inferior de la capa de cambio brusco al fondo de tu medición?
ask-12-sum = Cada parte encaja, pero juntas suman { $sum } %. Toda la profundidad es el 100 %.
ask-12-no-shares = Todavía no: juntas suman { $sum } %. Divide cada espesor entre toda la profundidad.
ask-12-fraction = Son partes de 1. Escríbelas en centésimas: 0,25 es el 25 %. No cuesta nada.
ask-12-slip-unit = <mine>{ $yours }</mine> no es una longitud. Escribe el espesor en metros; no cuesta nada.
ask-12-waits = Tus partes quedan guardadas. Se miran cuando estén los espesores.
ask-12-hint-1 = El espesor de una capa es su borde de abajo menos su borde de arriba.
ask-12-hint-2 = La capa mezclada empieza en 0. La de cambio brusco empieza donde acaba esa, y la profunda donde acaba la de cambio brusco.
ask-12-hint-shares-1 = Una parte es un trozo del total: ¿cuánto de toda la profundidad es esta capa?
ask-12-hint-shares-2 = Divide el espesor entre toda la profundidad y multiplica por 100. Las tres juntas suman 100.
ask-12-gloss-mixed = capa mezclada
ask-12-gloss-steep = capa de cambio brusco
ask-12-gloss-deep = capa profunda
ask-12-percent = { $value } %
ask-12-value = mezclada { $mixed } m, cambio brusco { $steep } m, profunda { $deep } m
ask-12-value-at-least = mezclada { $mixed } m, cambio brusco al menos { $steep } m
ask-12-value-shares = mezclada { $mixed } %, cambio brusco { $steep } %, profunda { $deep } %
ask-12-value-unknown = no se puede decir ninguna parte
ask-12-yours = mezclada { $mixed } · cambio brusco { $steep } · profunda { $deep }
ask-12-yours-two = mezclada { $mixed } · cambio brusco { $steep }
ask-12-why = Redondeadas a centésimas enteras pueden sumar 99 o 101.
ask-12-own-words = Con tus palabras: ¿por qué las tres capas juntas tienen que ser toda la profundidad?
ask-dropped-12 = «¿Qué espesor tiene cada capa?» no se pregunta: hacen falta un final de la capa mezclada y una capa de cambio brusco.
ask-dropped-12-today = «¿Qué espesor tiene cada capa?» no se pregunta: con una capa cálida de hoy tu agua tiene más de tres capas, o menos.
ask-dropped-12-thin = «¿Qué espesor tiene cada capa?» no se pregunta: una de tus capas es tan fina que en la cuenta no se notaría un paso olvidado.
ask-locked-first = Esta pregunta se apoya en tu respuesta a la pregunta { $number }.
ask-locked-go-first = Ir a la pregunta { $number }

## En qué sentido se leyó más cálida

ask-14 = ¿Estaba tu agua más cálida al bajar o al subir, dónde, y qué hace pensar eso?
ask-14-lead = En cada marca, compara la lectura al bajar con la lectura al subir.
ask-14-label-side = Más cálida
ask-14-label-place = Fue así
ask-14-label-why = Hace pensar en
ask-14-name-side = en qué sentido se leyó más cálida
ask-14-name-place = dónde fue así
ask-14-name-why = en qué hace pensar
ask-14-choose = elige una
ask-14-down = al bajar
ask-14-up = al subir
ask-14-small = demasiado poco para decirlo
ask-14-everywhere = a todas las profundidades por igual
ask-14-steep = sobre todo donde la temperatura cambia mucho con la profundidad
ask-14-no-pattern = sin orden
ask-14-settling = una sonda que aún no se había estabilizado
ask-14-marks = otras profundidades en la misma marca
ask-14-drift = un cambio de la sonda o del agua entre medias
ask-14-chance = nada más que azar
ask-14-wrong = que uno de los dos sentidos está mal
ask-14-note = Tres partes, tres respuestas. Cada una sigue tu propia respuesta a la anterior.
ask-14-yes-side = Es lo que muestra la mayoría de tus marcas.
ask-14-yes-small = Así es: unas veces una y otras la otra, o demasiado poco para distinguirlo del azar.
ask-14-yes-steep = Junto a los tramos bruscos los dos sentidos se separan más que en el resto.
ask-14-yes-everywhere = Lejos de los tramos bruscos los dos sentidos se separan lo mismo, o casi.
ask-14-yes-no-pattern = Donde no queda más que azar, tampoco hay un sitio para ello.
ask-14-yes-why = Dejaría justo un orden como ese.
ask-14-yes-chance = Dos lecturas de la misma agua difieren un poco, unas veces hacia un lado y otras hacia el otro.
ask-14-not-small = Es más que azar: cuenta en cuántas marcas está más cálida al bajar y en cuántas al subir.
ask-14-no-side = Cuenta en cuántas marcas está más cálida al bajar y en cuántas al subir.
ask-14-no-place = Compara las marcas junto a tramos bruscos con las marcas donde el agua apenas cambia.
ask-14-one-is-wrong = Los pares de lecturas siempre difieren. La pregunta es con qué <b>orden</b> difieren, y qué dejaría un orden así.
ask-14-no-why = Eso dejaría otro orden. ¿Qué haría donde cambia mucho, y qué en el resto?
ask-14-waits = Tu elección queda guardada. Se mira cuando esté la anterior.
ask-14-hint-side-1 = Mira las dos columnas de lecturas, marca por marca.
ask-14-hint-side-2 = En cada marca, al bajar menos al subir, con su signo. ¿Casi todas tienen el mismo signo, o se turnan?
ask-14-hint-side-3 = En otra agua estaba más cálida al bajar en 15 de 17 marcas: eso no es azar. En 9 de 17 lo sería.
ask-14-hint-place-1 = Busca primero los tramos bruscos. ¿Cuánto se separan ahí los dos sentidos?
ask-14-hint-place-2 = Mira luego donde la línea baja recta. ¿Se separan ahí lo mismo?
ask-14-hint-place-3 = En otra agua se separaban 0,6 °C junto a los tramos bruscos y 0,1 °C en el resto: sobre todo donde cambia mucho.
ask-14-hint-why-1 = Una sonda lenta todavía marca algo del agua de la que acaba de venir. ¿Dónde se notaría más?
ask-14-hint-why-2 = Una marca a otra profundidad solo se nota donde el agua cambia con la profundidad. Una sonda que se desvía marca distinto en todas partes.
ask-14-hint-why-3 = En otra agua, al subir estaba 0,3 °C más fría a todas las profundidades: algo cambió entre medias, la sonda o el agua.
ask-14-count = { $n ->
    [one] Una marca se leyó en los dos sentidos.
   *[other] De { $n } marcas leídas en los dos sentidos, está más cálida al bajar en { $down } y al subir en { $up }.
}
ask-14-sum-mean = Bajar menos subir, media:
ask-14-sum-steep = Junto a tramos bruscos:
ask-14-sum-rest = En las otras marcas:
ask-14-also = Con este orden, una sonda lenta no se distingue de otras profundidades en la misma marca: un cable inclinado, o capas que se movieron.
ask-14-why-not-wrong = Cuál de los dos sentidos está más cerca de la verdad no lo dice el orden solo. La media de los dos no se inclina hacia ninguno.
ask-14-own-words = Con tus palabras: ¿qué orden dejaría una sonda lenta?
ask-dropped-14 = «¿Estaba más cálida al bajar o al subir?» no se pregunta: menos de 4 marcas se leyeron en los dos sentidos.
ask-dropped-14-same = «¿Estaba más cálida al bajar o al subir?» no se pregunta: tus dos lecturas son iguales en todas las marcas.

## Qué lectura volver a tomar

ask-15 = ¿Cuál de estas lecturas volverías a tomar, si pudieras?
ask-15-lead = Todas son de tu propia medición. Quizá una lo necesita, quizá ninguna.
ask-15-label = Elijo
ask-15-name = lectura que volver a tomar
ask-15-down = { $depth } m al bajar: { $temp } °C
ask-15-up = { $depth } m al subir: { $temp } °C
ask-15-one = { $depth } m: { $temp } °C
ask-15-none = ninguna de ellas
ask-15-note = Una buena razón merece una línea en «Cómo lo sé».
ask-15-yes = Esa merece una segunda mirada.
ask-15-yes-none = Así es: ninguna comprobación señala ninguna de tus lecturas.
ask-15-yes-fine = Nada señala esa, y volver a tomarla no hace daño. Di por qué.
ask-15-not-none = Al menos una se sale. Compara cada una con sus vecinas y con la del otro sentido.
ask-15-no = Nada señala esa. Otra se sale más: compara cada una con sus vecinas y con la del otro sentido.
ask-15-shoulder = Ahí empieza o acaba la capa. Los dos sentidos coinciden, así que es real.
ask-15-shoulder-once = Ahí empieza o acaba la capa. Las lecturas de debajo siguen desde ella, así que es real.
ask-15-hint-1 = Busca una lectura que no encaje con las de encima y debajo.
ask-15-hint-2 = Compara al bajar con al subir en la misma marca. Junto a un tramo brusco pueden separarse más.
ask-15-hint-3 = En otra agua, al bajar había 14,2 °C entre 18,1 y 17,9 °C, y al subir 18,0: esa se volvió a tomar.
ask-15-why-range = El agua de un lago no puede tener esa temperatura.
ask-15-why-spike = Se sale de las lecturas de encima y debajo.
ask-15-why-pair = Al bajar y al subir se separan ahí más de lo que deberían.
ask-15-why-heavier = Con ella hay agua más pesada encima de agua más ligera. O la lectura falla, o el agua se estaba enfriando en ese momento.
ask-15-why-none = Las vecinas encajan y, donde hay dos sentidos, coinciden.
ask-15-all-count = Vale cualquier lectura que señale una comprobación.
ask-15-own-words = Con tus palabras: ¿qué hace que merezca la pena volver a tomar una lectura?
ask-dropped-15 = «¿Qué lectura volverías a tomar?» no se pregunta: hay muy pocas lecturas para elegir.

## Otras unidades

ask-16 = ¿Cómo dirías esto en °F y pies?
ask-16-label-rate = 1,0 °C por metro son
ask-16-label-apart = 2 °C más fría es más fría en
ask-16-name-rate = ritmo en las otras unidades
ask-16-name-apart = diferencia en la otra unidad
ask-16-after-rate = °F por pie
ask-16-after-apart = °F
ask-16-note = 1 °C es tan grande como 1,8 °F. Un pie son 0,3048 m.
ask-16-yes = <mine>{ $yours }</mine> está bien.
ask-16-almost = <mine>{ $yours }</mine> está cerca. Haz la cuenta otra vez.
ask-16-thirty-two = <mine>{ $yours }</mine> lleva el 32. Eso es de una temperatura; en una <b>diferencia</b> no hay 32.
ask-16-still-metres = <mine>{ $yours }</mine> son °F, todavía por <b>metro</b>. Un pie es más corto: ¿cuánto de eso cabe en un pie?
ask-16-upside-down = <mine>{ $yours }</mine> es lo que perdería un trozo más largo. Un pie es <b>más corto</b> que un metro, así que pierde menos.
ask-16-no-rate = <mine>{ $yours }</mine> no es. Primero: ¿cuántos °F se pierden en cada metro?
ask-16-no-apart = <mine>{ $yours }</mine> no es. ¿Cuántos °F son tan grandes como un °C?
ask-16-hint-rate-1 = Cambian dos cosas: los grados se hacen más pequeños y el trozo de agua, más corto.
ask-16-hint-rate-2 = Multiplica por 1,8 para los grados. Toma después 0,3048 de eso, para un pie en vez de un metro.
ask-16-hint-apart-1 = En un termómetro con las dos escalas, ¿cuánto se separan dos marcas de °C, contado en °F?
ask-16-hint-apart-2 = Multiplica la diferencia por 1,8. Dónde está el 0 de cada escala no importa para una diferencia.
ask-16-sum-times = { $a } × { $b } =
ask-16-gloss-per-metre = °F por metro
ask-16-gloss-per-foot = °F por pie
ask-16-gloss-f = °F
ask-16-value-rate = { $value } °F por pie
ask-16-value-apart = { $value } °F
ask-16-why = Una temperatura de 2 °C son 35,6 °F. Una diferencia de 2 °C son 3,6 °F.
ask-16-own-words = Con tus palabras: ¿por qué no hay 32 en una diferencia?

## Agua uniforme: el sol que hace falta

ask-106 = ¿Cuánto tiene que brillar el sol para calentar { $warmer } °C el primer metro de tu agua?
ask-106-lead = Hacen falta { $heat } millones de julios para calentar 1 °C un metro cúbico de agua. Un buen sol trae { $sun } julios cada segundo a cada metro cuadrado; supón que todo eso se queda en el primer metro.
ask-106-label = Tarda
ask-106-name = cuánto tarda
ask-106-note = La unidad de tiempo la eliges tú.
ask-106-yes = <mine>{ $yours }</mine> está bien.
ask-106-almost = <mine>{ $yours }</mine> está cerca. Haz la cuenta otra vez.
ask-106-one-degree = <mine>{ $yours }</mine> la calentaría un grado. La pregunta pide { $warmer }.
ask-106-seconds = <mine>{ $yours }</mine> es el número correcto de <b>segundos</b>. Elige esa unidad, o pásalo a horas.
ask-106-no = <mine>{ $yours }</mine> no es. Primero: ¿cuántos julios necesita el primer metro debajo de cada metro cuadrado?
ask-106-hint-1 = Debajo de cada metro cuadrado, el primer metro es un metro cúbico de agua.
ask-106-hint-2 = Julios necesarios = julios para un grado × grados. Divide entre los julios que llegan cada segundo y pasa los segundos a horas.
ask-106-gloss-heat = millones de J
ask-106-sum-seconds = { $a } millones ÷ { $b } =
ask-106-gloss-seconds = segundos
ask-106-sum-hours = { $a } ÷ 3600 =
ask-106-gloss-hours = horas
ask-106-value = { $value } h
ask-106-why = Fuera tarda más: parte de la luz se refleja, parte va más abajo y la superficie pierde calor. Así, un día de sol sin viento puede dejar por la tarde una capa cálida hasta en agua uniforme.
ask-106-own-words = Con tus palabras: ¿por qué una noche de viento puede deshacer un día de sol?
ask-unit-s = segundos
ask-unit-min = minutos
ask-unit-h = horas
ask-unit-d = días
