### Preguntas por qué: hundirse, mezclarse, calor, estaciones, oxígeno, con qué seguridad se sabe.

## Comunes

ask-why-keep = Guardarlo
ask-why-waits-picture = Podrás pulsar «Comprobar» cuando elijas una imagen.
ask-why-waits-words = Se puede guardar cuando hayas escrito algo.
ask-why-waits-keep = Se puede guardar cuando hayas elegido.
ask-why-kept = Guardado como lo escribiste: <mine>{ $yours }</mine>
ask-why-checked = Guardado. Lo que no marcaste todavía puede ir en tu informe.
ask-why-note-kept = Tus palabras se guardan como las escribes. Solo una persona las valora.
ask-why-name-check = lo que digo ahí
ask-why-label-check = En lo que escribí
ask-why-label-picture = Elijo
ask-why-note-picture = La línea tenue de cada imagen es el agua de antes.
ask-why-practice = Es un estanque de práctica, no tu agua.
ask-why-picture = Imagen { $letter }
ask-why-picture-alt = { $t1 } °C a { $z1 } m, { $t2 } °C a { $z2 } m, { $t3 } °C a { $z3 } m, { $t4 } °C a { $z4 } m, { $t5 } °C a { $z5 } m

## No se preguntan

ask-dropped-19 = «¿Cuánto debe enfriarse para que el viento la mezcle?» no se pregunta: en tu agua la superficie y el fondo no difieren lo bastante.
ask-dropped-19-four = «¿Hasta cuánto debe enfriarse la superficie?» no se pregunta: tu agua más profunda está tan cerca de 4 °C que adivinar parecería correcto.
ask-dropped-20 = «Tu agua dentro de un mes» no se pregunta: con tu medición las cuatro imágenes se parecerían demasiado.
ask-dropped-21 = «Tras una noche de viento» no se pregunta: las imágenes hechas con tu medición se parecerían demasiado.
ask-dropped-25 = «Si hubieras leído menos marcas» no se pregunta: tu medición tiene muy pocas marcas para quitar algunas.
ask-dropped-26 = «¿Qué único cambio ayudaría más?» no se pregunta: tus lecturas no dan un margen que estrechar, o hay demasiadas marcas para probarlo deprisa.
ask-dropped-107 = «¿Mal leída, o enfriándose?» no se pregunta: no hay una pareja de lecturas que mirar.
ask-dropped-108 = «¿Seguirá mañana por la mañana?» no se pregunta: esta capa tiene más calor del que se lleva una noche.

## Cuál se hunde

ask-17 = ¿Cuál de estas dos aguas tuyas se hunde bajo la otra?
ask-17-two = ¿Cuál de estas dos aguas se hunde bajo la otra?
ask-17-lead = Piensa en un cubo de cada una, echados juntos sin remover.
ask-17-lead-stated = Tu agua no tiene una pareja así; estas son de un estanque en invierno. Las dos son dulces y se echan juntas sin remover.
ask-17-label = Se hunde
ask-17-name = el agua que se hunde
ask-17-own = La de { $temp } °C, de { $depth } m
ask-17-stated = La de { $temp } °C
ask-17-neither = Ninguna: pesan lo mismo
ask-17-yes = Esa pesa más. El agua pesa más cerca de 4 °C.
ask-17-colder = El agua más fría pesa más solo hasta 4 °C. Por debajo vuelve a ser más ligera: ¿a qué lado de 4 °C están estas?
ask-17-same = Sí difieren, por poco. ¿Cuál está más cerca de 4 °C?
ask-17-hint-1 = Mira dónde queda 4 °C: entre las dos o a un lado.
ask-17-hint-2 = El agua pesa más cerca de 4 °C. La que está más cerca pesa más.
ask-17-cubic = 1 m³ a { $temp } °C:
ask-17-kg = { $kg } kg
ask-17-floats = flota
ask-17-sinks = se hunde
ask-17-why = Por eso el fondo de un lago helado no es el sitio más frío.
ask-17-own-words = Con tus palabras: ¿cuándo flota el agua más fría?

## El mismo grado

ask-18 = ¿Dónde impide más la mezcla una diferencia de 1 °C: en tu superficie o en tu fondo?
ask-18-two = ¿Dónde impide más la mezcla una diferencia de 1 °C: en agua cálida o en agua fría?
ask-18-lead = Dos capas resisten la mezcla por su diferencia de peso. Abajo está lo que pesa 1 m³ de tu agua a { $top } m y a { $bottom } m, y un grado más fría.
ask-18-lead-stated = Tu superficie y tu fondo están muy cerca entre sí o de 4 °C; aquí van otras dos aguas: lo que pesa 1 m³, y un grado más fría.
ask-18-weights = { $warm } °C: { $light } kg. { $cool } °C: { $heavy } kg.
ask-18-label-side = Más
ask-18-label-times = Son
ask-18-name-side = dónde impide más la mezcla
ask-18-name-times = cuántas veces
ask-18-after = veces
ask-18-note = Dos partes, dos veredictos. Basta un número de veces aproximado.
ask-18-top = En la superficie
ask-18-bottom = En el fondo
ask-18-warm = En el agua cálida
ask-18-cold = En el agua fría
ask-18-same = Igual: un grado es un grado
ask-18-side-yes = Sí: el agua cálida gana más peso con un grado.
ask-18-side-same = Un grado es un grado en el termómetro, pero no en la balanza: el agua se dilata más por grado cuando está cálida.
ask-18-side-colder = El agua fría pesa más, pero pregunta qué le añade <b>un grado</b>. Resta los dos pesos.
ask-18-times-yes = <mine>{ $yours }</mine> veces se acerca lo bastante.
ask-18-times-same = <mine>{ $yours }</mine> sale de los pesos enteros. Compara lo que cada uno <b>gana</b> con un grado.
ask-18-times-upside-down = <mine>{ $yours }</mine> es la división al revés: la ganancia mayor entre la menor.
ask-18-times-no = <mine>{ $yours }</mine> no es. Primero resta los dos pesos de cada agua.
ask-18-side-hint-1 = Mira las dos líneas de pesos, una tras otra.
ask-18-side-hint-2 = En cada línea resta el peso menor del mayor. ¿Dónde queda más?
ask-18-times-hint-1 = Necesitas dos ganancias: lo que añade un grado en cada agua.
ask-18-times-hint-2 = Divide la ganancia mayor entre la menor.
ask-18-gloss = de { $warm } a { $cool } °C
ask-18-divided = { $a } ÷ { $b } =
ask-18-times = { $times } veces
ask-18-times-gloss = lo que en la otra
ask-18-fits = Vale cualquier número de veces de { $low } a { $high }.
ask-18-why = Por eso unos pocos grados sujetan bien un lago en verano, y los mismos apenas lo sujetan en invierno.
ask-18-own-words = Con tus palabras: ¿por qué un grado no es siempre igual para el viento?

## Calor hasta que se mezcla

ask-19 = ¿Hasta cuánto debe enfriarse tu superficie para que el viento la mezcle hasta el fondo, y cuánto calor es?
ask-19-warms = ¿Hasta cuánto debe calentarse la parte de arriba de tu agua para que el viento la mezcle hasta el fondo, y cuánto calor es?
ask-19-lead = Calor por cada metro cuadrado de superficie. Un metro cúbico de agua pierde 4,18 MJ (megajulios) por cada °C.
ask-19-lead-warms = Calor por cada metro cuadrado de superficie. Un metro cúbico de agua toma 4,18 MJ (megajulios) por cada °C.
ask-19-label-temp = Debe enfriarse a
ask-19-label-temp-warms = Debe calentarse a
ask-19-label-heat = Calor que pierde
ask-19-label-heat-warms = Calor que gana
ask-19-label-days = Con 100 W por m²
ask-19-name-heat = calor, megajulios por metro cuadrado
ask-19-after-heat = MJ por m²
ask-19-name-days = días con 100 vatios por metro cuadrado
ask-19-after-days = días
ask-19-note = Tres partes, tres veredictos. Calor y días pueden ser aproximados; los días se juzgan con tu propio calor.
ask-19-temp-yes = <mine>{ $yours }</mine> es correcto: entonces la superficie pesa como el fondo.
ask-19-temp-almost = <mine>{ $yours }</mine> se acerca. Lee otra vez tu marca más profunda.
ask-19-temp-four = <mine>{ $yours }</mine> es más de lo necesario. Solo hasta la temperatura de <b>tu</b> agua del fondo: entonces pesan igual.
ask-19-temp-zero = <mine>{ $yours }</mine> va al revés. Por debajo de 4 °C, el agua de arriba se hace aún más ligera. ¿Hacia dónde se hace más pesada?
ask-19-temp-no = <mine>{ $yours }</mine> no es. ¿Con qué temperatura pesarían igual la superficie y el fondo?
ask-19-heat-yes = <mine>{ $yours }</mine> MJ por metro cuadrado se acerca lo bastante.
ask-19-heat-degrees = <mine>{ $yours }</mine> son grados por metros. Cada uno cuesta 4,18 MJ.
ask-19-heat-no = <mine>{ $yours }</mine> no es. Primero el área de la imagen entre tu línea y la temperatura del fondo, en °C por m.
ask-19-waits = <mine>{ $yours }</mine> queda guardado. Se juzga cuando tengas el calor.
ask-19-days-yes = <mine>{ $yours }</mine> días salen de tu calor.
ask-19-days-hours = <mine>{ $yours }</mine> son horas. ¿Cuántos días son?
ask-19-days-watts = <mine>{ $yours }</mine> es tu calor entre 100. Un vatio es un julio cada <b>segundo</b>: ¿cuántos MJ son 100 W en un día?
ask-19-days-no = <mine>{ $yours }</mine> no sale de tu calor. Primero: ¿cuánto se llevan 100 W en un día?
ask-19-temp-hint-1 = El viento mezcla fácilmente dos aguas que pesan igual. Mira tu lectura más profunda.
ask-19-temp-hint-2 = La de arriba se hunde en cuanto pesa como la del fondo. Es a la misma temperatura.
ask-19-temp-hint-2-warms = Por debajo de 4 °C el agua más cálida pesa más. La de arriba debe llegar a la temperatura del fondo.
ask-19-temp-hint-3 = Un lago de 15 °C sobre 7 °C se mezcla cuando su superficie llega a 7 °C.
ask-19-heat-hint-1 = En la imagen lleva la temperatura del fondo recta hacia arriba. Lo que queda entre ella y tu línea tiene que irse.
ask-19-heat-hint-2 = Metro a metro: ¿a cuántos °C está tu línea? Súmalos y toma 4,18 MJ por cada uno.
ask-19-area-sum = { $over } °C × { $depth } m =
ask-19-area = { $value } °C·m
ask-19-heat-sum = { $degrees } °C·m × { $heat } =
ask-19-mj = { $value } MJ por m²
ask-19-heat-gloss = 4,18 MJ cada uno
ask-19-days-hint-1 = Un vatio es un julio cada segundo. Un día tiene 86 400 segundos.
ask-19-days-hint-2 = 100 W se llevan 8,64 MJ en un día. Divide tu calor entre eso.
ask-19-days-sum = { $heat } ÷ { $day } =
ask-19-days = { $value } días
ask-19-days-gloss = a 8,64 MJ por día
ask-19-deepest = A { $depth } m:
ask-19-deepest-gloss = lo más hondo leído
ask-19-why = Hasta entonces el agua de abajo pesa más, y el viento tendría que levantarla.
ask-19-why-warms = Hasta entonces el agua de abajo pesa más: cerca de 4 °C el agua pesa lo máximo.
ask-19-fits-heat = Vale de { $low } a { $high } MJ.
ask-19-fits-days = Vale de { $low } a { $high } días.
ask-19-what = Una cuenta aproximada para un metro cuadrado: no cuenta el sol, las nubes ni la forma del lago.
ask-19-own-words = Con tus palabras: ¿por qué no hace falta que se enfríe a 4 °C?
ask-19-own-words-warms = Con tus palabras: ¿por qué debe calentarse para mezclarse?

## El mes que viene

ask-20 = ¿Qué imagen podría ser tu agua dentro de un mes?
ask-20-practice = ¿Qué imagen podría ser esta agua dentro de un mes?
ask-20-lead = Llega el otoño. En { $days } días el agua pierde { $watts } W por metro cuadrado de media, con viento flojo. En las cuatro imágenes se pierde casi lo mismo.
ask-20-name = imagen del mes que viene
ask-20-label-why = Porque
ask-20-name-why = por qué esta imagen
ask-20-start-1 = El calor sale por …
ask-20-start-2 = El agua que se ha enfriado …
ask-20-note = La imagen tiene veredicto. Tu razón se guarda y solo una persona la valora.
ask-20-yes = Así ocurre: el agua de arriba se enfría y se mezcla más hondo, y la profunda apenas lo nota.
ask-20-all-alike = Aquí todas las profundidades se enfrían igual. El calor sale por la superficie: ¿cómo llegaría desde el fondo?
ask-20-bottom-first = Aquí el fondo se enfría primero. No tiene aire al que dar su calor.
ask-20-cold-on-top = Aquí el agua enfriada se queda arriba. Ahora pesa más que la de debajo: ¿qué hace?
ask-20-no = ¿Por dónde sale el calor, y adónde va el agua enfriada?
ask-20-hint-1 = Pregunta a cada imagen: ¿por qué lado ha salido el calor?
ask-20-hint-2 = El agua enfriada pesa más. Se hunde hasta que la de abajo pesa aún más.
ask-20-hint-3 = Un lago de 18 °C sobre 8 °C, unas semanas después: 15 °C hasta más hondo, y abajo 8 °C como antes.
ask-20-why-hint-1 = Di por dónde sale el calor del agua.
ask-20-why-hint-2 = Después di qué hace el agua enfriada, y hasta dónde baja.
ask-20-why-hint-3 = De una taza de té: se enfría arriba, el té enfriado se hunde, y así se enfría todo por turnos.
ask-20-what = Cada día salió calor por la superficie; lo más pesado se hundió, y el viento removió desde arriba.
ask-20-model = Muestra lo que se sigue de eso, no un pronóstico de tu lago.
ask-20-because = el calor sale por la superficie, y el agua enfriada se hunde solo hasta donde pesa más
ask-20-own-words = Con tus palabras: ¿por qué el agua profunda sigue igual tanto tiempo?

## Una noche de viento

ask-21 = ¿Qué imagen podría ser tu agua tras una noche de viento?
ask-21-practice = ¿Qué imagen podría ser esta agua tras una noche de viento?
ask-21-lead = El viento la remueve desde arriba. No entra ni sale calor.
ask-21-lead-practice = El viento la remueve desde arriba. El calor ni entra ni sale.
ask-21-name = imagen de la mañana siguiente
ask-21-yes = Sí: removida desde arriba hasta cierta profundidad, con tanto calor como antes.
ask-21-all-colder = Aquí toda está más fría. Las áreas deben coincidir: ¿adónde fue el calor?
ask-21-colder-wins = Aquí el agua removida está tan fría como su parte más fría. ¿Qué fue del calor del resto?
ask-21-warmer-wins = Aquí el agua cálida ha crecido. Remover no da calor: ¿de dónde saldría?
ask-21-no = Compara lo que se enfrió con lo que se calentó.
ask-21-hint-1 = Pon cada imagen sobre la línea tenue. ¿Dónde está más fría el agua, dónde más cálida?
ask-21-hint-2 = Lo que perdió el agua de arriba lo ganó la que está justo debajo: las dos áreas son iguales.
ask-21-worked-sum = 2 m × { $a } °C + 2 m × { $b } °C =
ask-21-worked-before = otro estanque, antes
ask-21-worked-divided = { $a } ÷ { $b } m =
ask-21-worked-after = del todo removida
ask-21-before = Antes:
ask-21-heat-gloss = en toda la columna
ask-21-as-much = tanto como antes
ask-21-gloss-all-colder = menos: toda más fría
ask-21-gloss-colder-wins = menos: creció lo frío
ask-21-gloss-warmer-wins = más: creció lo cálido
ask-21-what = Se removió hasta { $depth } m y ahí tiene { $temp } °C. Por debajo no cambió nada.
ask-21-own-words = Con tus palabras: ¿cómo se ve en una imagen que no se perdió calor?

## Oxígeno

ask-22 = ¿Dónde hay poco oxígeno en tu agua, y por qué?
ask-22-guess = ¿Dónde esperas menos oxígeno en tu agua, y por qué?
ask-22-lead = Usa el oxígeno de tu tabla, en mg/L.
ask-22-lead-guess = No tienes lecturas de oxígeno, así que es una predicción. Se guarda, no se juzga.
ask-22-label-falls = Menos de { $limit } mg/L
ask-22-label-least = El mínimo, a
ask-22-label-guess = El mínimo
ask-22-label-why = Por qué
ask-22-name-where = dónde hay menos oxígeno
ask-22-name-why = por qué hay poco ahí
ask-22-top = Cerca de la superficie: el agua cálida retiene menos
ask-22-middle = A media profundidad
ask-22-bottom = Cerca del fondo
ask-22-same = Igual en todas partes
ask-22-start-1 = El oxígeno entra en el agua por …
ask-22-start-2 = Se gasta donde …
ask-22-half-right = A medias: el agua fría <b>puede</b> retener más. ¿Qué lo llevaría hasta allí?
ask-22-guess-kept = Tu predicción queda guardada. Una medición con oxígeno lo diría.
ask-22-gone = Las lecturas de oxígeno han cambiado.
ask-22-pair-yes = Entre <mine>{ $yours }</mine> baja de { $limit } mg/L.
ask-22-pair-long = <mine>{ $yours }</mine> lo contiene. Más cerca: dos marcas vecinas.
ask-22-pair-no = <mine>{ $yours }</mine> no es. Repasa el oxígeno hacia abajo hasta el primer número menor que { $limit }.
ask-22-pair-no-mark = <mine>{ $yours }</mine> no son dos marcas con lectura de oxígeno.
ask-22-least-yes = A <mine>{ $yours }</mine> está el mínimo.
ask-22-least-no = A <mine>{ $yours }</mine> no está el mínimo. Repasa el oxígeno.
ask-22-least-no-mark = A <mine>{ $yours }</mine> no se leyó oxígeno.
ask-22-falls-hint-1 = Mira el oxígeno junto a tus marcas, desde la superficie.
ask-22-falls-hint-2 = Toma la primera marca bajo el límite, y la marca de encima.
ask-22-least-hint-1 = Mira todos los números del oxígeno.
ask-22-least-hint-2 = Toma el menor, y lee su profundidad.
ask-22-least-hint-3 = Con 9,1, 8,8 y 6,4 mg/L a 1, 2 y 3 m el mínimo está a 3 m.
ask-22-why-hint-1 = El oxígeno viene del aire y de las plantas con luz.
ask-22-why-hint-2 = Di qué lo lleva abajo, qué lo gasta, y qué separa lo uno de lo otro.
ask-22-why-hint-3 = De un frasco cerrado con barro: nada trae oxígeno nuevo, los seres pequeños lo gastan, y a los pocos días no queda.
ask-22-worked-at = A { $depth } m:
ask-22-worked-below = Menos de { $limit } mg/L desde
ask-22-worked-gloss = en otro lago
ask-22-mg-l = { $value } mg/L
ask-22-limit = { $limit } mg/L es un límite aproximado, no igual para cada animal.
ask-22-point-brings = Digo qué aporta oxígeno al agua.
ask-22-point-uses = Digo qué lo gasta.
ask-22-point-stirs = Digo qué impide que se remueva el agua profunda.
ask-22-point-holds = No me quedo en «el agua fría retiene más».
ask-22-because = qué lleva oxígeno allí, qué lo gasta, y qué los separa
ask-22-own-words = Con tus palabras: ¿por qué puede tener tan poco oxígeno el agua fría?

## Menos marcas

ask-25 = Si hubieras leído solo cada { $step } m: ¿entre qué dos marcas sería más brusco, y cuánto podría apartarse a cada lado?
ask-25-lead = Tapa las demás marcas con la mano. Predice primero.
ask-25-lead-practice = Leída cada medio metro, cambia más de { $from } a { $to } m. Cada { $step } m tiene { $marks }.
ask-25-mark = { $temp } °C a { $depth } m
ask-25-marks = { $first }, { $rest }
ask-25-label-pair = Entre
ask-25-label-give = Más o menos
ask-25-name-give = cuánto a cada lado, metros
ask-25-note = Dos partes, dos veredictos. El más o menos cuenta desde el centro entre las marcas.
ask-25-gone = Las marcas han cambiado.
ask-25-pair-yes = <mine>{ $yours }</mine>: de lo que queda, ahí cambia más.
ask-25-pair-same = <mine>{ $yours }</mine> es lo que sabes por todas tus marcas. Sin las demás nadie lo sabría: entre dos marcas no se leyó nada.
ask-25-pair-no-mark = <mine>{ $yours }</mine> no se leerían las dos. Solo quedan marcas cada { $step } m.
ask-25-pair-no = <mine>{ $yours }</mine> no es. Compara las temperaturas de las marcas que quedan.
ask-25-give-yes = <mine>{ $yours }</mine> es la mitad del tramo, y nadie podría decirlo mejor.
ask-25-give-same = <mine>{ $yours }</mine> es tu seguridad con todas las marcas. Los tramos más largos saben menos.
ask-25-give-whole = <mine>{ $yours }</mine> es el tramo entero. Desde su centro, ¿cuánto hay hasta cada marca?
ask-25-give-no = <mine>{ $yours }</mine> no es. ¿Cuánto hay del centro del tramo a sus marcas?
ask-25-give-unit = <mine>{ $yours }</mine> no es una longitud. Dala en metros; no cuesta nada.
ask-25-pair-hint-1 = Mira solo las marcas cada { $step } m.
ask-25-pair-hint-2 = Resta cada temperatura de la de encima. ¿Dónde es mayor la diferencia?
ask-25-give-hint-1 = Está en algún sitio entre las dos marcas. ¿Cuál es el centro?
ask-25-give-hint-2 = Del centro a cada marca hay medio tramo.
ask-25-worked-step = De { $from } a { $to } m:
ask-25-worked-gloss = el más brusco
ask-25-half = { $step } ÷ 2 =
ask-25-half-gloss = a cada lado
ask-25-left = Quedarían { $marks }.
ask-25-several = Estas lecturas no lo distinguirían de otros entre { $from } y { $to } m, así que valen todos.
ask-25-why = Con todas tus marcas el tramo da { $own } m a cada lado.
ask-25-own-words = Con tus palabras: ¿qué se pierde con tramos más largos?

## Un cambio

ask-26 = ¿Qué único cambio estrecharía más el margen de tu termoclina?
ask-26-lead = Piensa en leer otra vez la misma agua, cambiando solo esto.
ask-26-label = Yo haría
ask-26-name = el único cambio
ask-26-half-step = Marcas al doble de cerca
ask-26-repeats = Cuatro lecturas por marca
ask-26-probe = Una sonda mejor y estable
ask-26-cable = Un cable más recto y exacto
ask-26-decimals = Un decimal más
ask-26-none = Ninguno ayudaría mucho
ask-26-yes = En ensayos con tus lecturas nada lo estrecha más.
ask-26-yes-near = En ensayos con tus lecturas eso deja { $width } m; lo más estrecho, { $narrowest } m. La diferencia es menos de una décima parte, así que también vale.
ask-26-yes-none = Cierto: en ensayos con tus lecturas ninguno la estrecha ni una vigésima parte.
ask-26-more-decimals = Más decimales muestran la misma variación con más cifras. ¿Qué te hace dudar: los grados, o las profundidades?
ask-26-no = Los ensayos con tus lecturas dicen que otra cosa gana más.
ask-26-hint-1 = Mira tu margen. ¿Tiene un tramo de ancho, o varios?
ask-26-hint-2 = Un tramo: las marcas están muy separadas. Varios: las temperaturas no los distinguen.
ask-26-hint-3 = Un margen de 4 a 5 m con una marca cada metro es un tramo: ayudarían marcas más juntas. De 3 a 6 m son tres: ayudarían lecturas más estables.
ask-26-as-read = Como se leyó
ask-26-wide = { $width } m de ancho
ask-26-most = de lo más estrecho
ask-26-fits = Lo que ganan los señalados difiere en menos de una décima parte, así que valen todos.
ask-26-how = De { $trials } ensayos de tus lecturas cada uno. También mueven un poco las marcas del cable, así que un ancho de aquí puede ser mayor que el margen que dan tus lecturas solas. Entre tus marcas se tomó una línea suave como agua.
ask-26-half-wider = Con marcas al doble de cerca salió más ancho: un tramo más corto pierde menos, y el azar hace más a menudo que otro sea el más brusco.
ask-26-own-words = Con tus palabras: ¿qué te hace dudar de esta profundidad?

## Cuándo no dice nada

ask-27 = ¿Cuándo o dónde no dirían nada tus respuestas?
ask-27-lead = Toda medición tiene límites. Algunos de la tuya:
ask-27-near-bed = Leíste hasta { $last } m; el fondo está a { $bed } m.
ask-27-above-bed = Leíste hasta { $last } m, y el agua sigue hasta { $bed } m.
ask-27-no-bed = Leíste hasta { $last } m, y nadie anotó a qué profundidad está el fondo.
ask-27-once = Cada marca se leyó una vez.
ask-27-legs-apart = Bajar y subir difieren hacia un lado, { $mean } °C de media.
ask-27-legs-alike = { $count ->
    [one] Una marca se leyó dos veces, en una visita.
   *[other] { $count } marcas se leyeron dos veces, en una visita.
}
ask-27-doubts = { $count ->
    [one] Una lectura lleva interrogación.
   *[other] { $count } lecturas llevan interrogación.
}
ask-27-label = Creo que
ask-27-name = cuándo o dónde no diría nada
ask-27-start-1 = Por debajo de … m nadie sabe …
ask-27-start-2 = Otro día …
ask-27-start-3 = Si la barca se hubiera movido …
ask-27-point-below = Digo qué no se sabe bajo mi última lectura.
ask-27-point-time = Digo que otra hora, día o estación puede ser distinta.
ask-27-point-drift = Digo qué harían una barca que se mueve o un cable inclinado.
ask-27-point-mud = Digo qué leería una sonda en el barro.
ask-27-point-place = Digo que una medición es un solo lugar del lago.
ask-27-hint-1 = Piensa en cuatro bordes: profundidad, tiempo, lugar, y cómo se leyó.
ask-27-hint-2 = Para cada uno pregunta: ¿qué tendría que cambiar para que mi respuesta no valiera?
ask-27-hint-3 = De la temperatura de un cuarto: «Un termómetro junto a la ventana a mediodía no dice nada del rincón por la noche».
ask-27-shown = profundidad, tiempo, lugar, y cómo se leyó
ask-27-end = Decir dónde acaba una respuesta hace más fuerte lo demás.
ask-27-own-words = Con tus palabras: ¿qué no muestra tu medición?

## Mal leída, o enfriándose

ask-107 = ¿Hay ahí una lectura mala, o el agua se enfriaba en ese momento?
ask-107-lead = Mira la pareja que tiene encima el agua más pesada, al bajar y al subir.
ask-107-label = Creo que
ask-107-name = lo que dicen las lecturas
ask-107-wrong = Una lectura está mal
ask-107-cooling = La superficie se enfriaba en ese momento
ask-107-salt = Es real, pero hondo: quizá sal
ask-107-again = Se leyó una vez: nadie puede decirlo
ask-107-yes-wrong = Sí: bajar y subir no coinciden ahí, o una lectura se sale. Léela otra vez si puedes.
ask-107-yes-cooling = Sí: se ve al bajar y al subir, justo en la superficie. El agua enfriada se hundía mientras leías.
ask-107-yes-salt = Sí: se ve al bajar y al subir, lejos de la superficie. Algo más sujeta ahí el agua, como la sal.
ask-107-yes-again = Sí: con una sola lectura en la marca no hay con qué comparar.
ask-107-odd = Es raro, pero se ve al bajar y al subir. Lo que se lee dos veces, por separado, es difícil llamarlo malo.
ask-107-one = Un agua que de verdad esté así lo mostraría al bajar y al subir. ¿Lo hace?
ask-107-no = Primero mira si bajar y subir coinciden ahí, y luego a qué profundidad está.
ask-107-hint-1 = Busca las dos marcas, y las dos lecturas de cada una.
ask-107-hint-2 = ¿Coinciden bajar y subir a 0,2 °C? Entonces es real. ¿Está en la superficie? Entonces quizá se enfría.
ask-107-hint-3 = 14,2 y 16,9 °C en una marca: una está mal. 14,2 y 14,3 °C en la superficie sobre 14,8 °C: se enfriaba.
ask-107-both = A { $depth } m: { $down } y { $up } °C
ask-107-apart = de diferencia
ask-107-why = El agua que se enfría se voltea en minutos. Repetir la lectura de la superficie lo mostraría.
ask-107-own-words = Con tus palabras: ¿cómo se distingue una lectura mala de un agua rara?

## Mañana por la mañana

ask-108 = ¿Seguirá aquí esta capa cálida mañana por la mañana?
ask-108-lead = De noche el agua pierde unos 50 a 250 W por metro cuadrado. Un metro cúbico guarda 4,18 MJ por cada °C.
ask-108-label = Creo que
ask-108-name = qué será de la capa
ask-108-here = Seguirá: las capas se quedan
ask-108-depends = Depende de la noche
ask-108-gone = No: una noche se lleva más de lo que guarda
ask-108-yes = Lo dice su calor junto a lo que pierde una noche.
ask-108-stays = Una capa dura lo que dura su calor. ¿Cuánto guarda esta, y cuánto se lleva una noche?
ask-108-no = Compara su calor con lo que se lleva una noche, poco y mucho.
ask-108-hint-1 = ¿Qué grosor tiene la capa, y cuántos °C está por encima del agua de abajo?
ask-108-hint-2 = °C por metros por 4,18 es su calor en MJ. 100 W durante 12 horas son 4,3 MJ.
ask-108-worked-sum = 2,0 °C × 0,5 m × 4,18 =
ask-108-night = { $watts } W, { $hours } horas:
ask-108-a-night = en una noche así
ask-108-layer = En tu capa:
ask-108-layer-gloss = sobre la de debajo
ask-108-mild = suave y nublada
ask-108-clear = despejada, con viento
ask-108-why = El viento la borra antes. Es una cuenta aproximada: cómo será la noche no se lee en una medición.
ask-108-own-words = Con tus palabras: ¿en qué se distingue esta capa de una termoclina?

## 23 y 24: la medición de otro grupo
ask-locked-check = Esta pregunta se abre cuando compruebas tus marcas en Perfil: compara lo encontrado.
ask-group = el grupo { $group }
ask-group-other = el otro grupo
ask-dropped-23 = «¿De verdad se contradicen los dos grupos?» no se pregunta: hace falta otra medición. Abre el archivo de ese grupo en Registro, en «Comparar con otro grupo».
ask-dropped-23-none = «¿De verdad se contradicen los dos grupos?» no se pregunta: una de las dos mediciones no tiene termoclina que comparar.
ask-23 = ¿De verdad se contradicen tu grupo y { $group }?
ask-23-lead = Con la misma regla, tu termoclina podría ser { $own }; la que midió { $group }, { $other }.
ask-23-name = lo que dices
ask-23-label = Digo
ask-23-share = No podemos decirlo: nuestros márgenes comparten una profundidad.
ask-23-apart = Sí: nuestros márgenes no comparten ninguna profundidad.
ask-23-wrong = Uno de los dos grupos lo ha hecho mal.
ask-23-yes-share = Correcto. El tuyo, { $own }, y el suyo, { $other }, comparten al menos una profundidad: los dos grupos pueden haber encontrado la misma termoclina.
ask-23-yes-apart = Correcto. El tuyo, { $own }, y el suyo, { $other }, no comparten ninguna profundidad: es más de lo que tus lecturas dejan abierto. Por qué, es la pregunta siguiente.
ask-23-one-is-wrong = Dos grupos cuidadosos pueden obtener dos números. Mira antes los márgenes: ¿comparten una profundidad?
ask-23-no = Pon los dos márgenes en una misma línea de profundidades y mira otra vez: ¿hay una profundidad que esté en los dos?
ask-23-hint-1 = Aquí una profundidad nunca va sola: cada una trae su margen. Compara los márgenes, no los números del centro.
ask-23-hint-2 = Dibuja los dos márgenes uno junto al otro en un mismo eje de profundidad.
ask-23-hint-3 = Otro estanque: de 2,0 a 3,0 m y de 3,0 a 4,0 m comparten 3,0 m, así que nadie puede decir que los dos grupos se contradigan.
ask-23-own-words = Con tus palabras: ¿cuándo se contradicen de verdad dos grupos?
ask-dropped-24 = «¿Qué explica mejor la diferencia?» no se pregunta: hace falta otra medición. Abre el archivo de ese grupo en Registro, en «Comparar con otro grupo».
ask-dropped-24-little = «¿Qué explica mejor la diferencia?» no se pregunta: las dos mediciones comparten muy pocas profundidades para decir por qué difieren.
ask-24 = ¿Qué explica mejor que tu medición sea distinta de la que hizo { $group }?
ask-24-lead = En las profundidades comunes, tu medición y la que hizo { $group } difieren normalmente en { $apart } °C.
ask-24-lead-heat = De media difieren en { $mean } °C de { $from } a { $to } m. Supón que la más cálida se leyó una hora después.
ask-24-name = lo que lo explica
ask-24-label = Fue
ask-24-chance = solo el azar
ask-24-none = ninguna de estas por sí sola
ask-24-name-evidence = tus pruebas
ask-24-label-evidence = Lo veo en que
ask-24-start-1 = A … m …
ask-24-start-2 = Si fuera el cable, veríamos …
ask-24-name-power = la potencia, W/m²
ask-24-label-power = Potencia necesaria
ask-24-watts = W/m²
ask-24-name-sun = si pudo hacerlo el sol
ask-24-label-sun = El sol da como mucho 1000 W/m²
ask-24-choose = elige
ask-24-could = pudo hacerlo
ask-24-could-not = no pudo hacerlo
ask-24-yes = Sí: { $cause }. Nada de lo que se probó explica mejor tus lecturas.
ask-24-no = No es { $cause }: otra cosa explica mejor estas lecturas. ¿En qué parte del agua difieren las dos mediciones y en cuál no?
ask-24-tied = Con estas lecturas no se distingue de esto: { $cause }.
ask-24-hint-1 = Mira dónde difieren las dos mediciones: ¿igual en todas partes, solo donde cambia deprisa o solo arriba?
ask-24-hint-2 = Una sonda que marca de más lo hace a toda profundidad. Las marcas corridas, el cable inclinado y el agua movida se notan solo donde cambia deprisa. El sol se nota arriba.
ask-24-hint-3 = Otras dos mediciones: 0,4 °C de diferencia a toda profundidad, cambie deprisa o no. Fue la sonda.
ask-24-evidence-hint = Di qué ves y a qué profundidades. Luego di qué verías si fuera otra cosa.
ask-24-evidence-shown = tus pruebas las escribes tú
ask-24-power-hint-1 = Un metro cúbico de agua necesita 4,18 millones de julios por cada °C.
ask-24-power-hint-2 = Grados por metros de agua por 4,18 millones da julios por metro cuadrado. Una hora tiene 3600 segundos.
ask-24-power-hint-3 = Otro lago: 0,2 °C en 5 m en una hora es 0,2 · 5 · 4 180 000 / 3600, unos 1160 W/m².
ask-24-no-depth = Falta la profundidad: hay que calentar cada metro de agua.
ask-24-no-time = Eso es el calor. La potencia es calor por segundo: divide entre los segundos de la hora.
ask-24-power-no = Ese número no. Primero el calor: grados por metros por 4,18 millones de julios. Luego divide entre los segundos de la hora.
ask-24-sun-no = La potencia está bien. Ahora compárala con los 1000 W/m² que da como mucho un sol fuerte.
ask-24-power-yes = Correcto: unos { $power } W/m².
ask-24-power = { $power } W/m²
ask-24-heat = { $heat } MJ/m²
ask-24-times = { $mean } °C · { $deep } m · 4,18 MJ
ask-24-over = { $heat } MJ/m² / 3600 s
ask-24-gloss-heat = calor por metro cuadrado
ask-24-gloss-power = por cada segundo
ask-24-sun-could = Un sol fuerte da unos 1000 W/m²: pudo hacerlo.
ask-24-sun-could-not = Un sol fuerte da unos 1000 W/m²: no pudo hacerlo.
ask-24-sun-unsure = Un sol fuerte da unos 1000 W/m²: demasiado cerca para saberlo.
ask-24-own-words = Con tus palabras: ¿qué verías si fuera otra causa?
