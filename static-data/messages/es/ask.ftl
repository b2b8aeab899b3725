### Preguntas: lo que se pregunta, se sugiere, se juzga y se explica.

## Alrededor de cada pregunta

ask-check = Comprobar
ask-hint = Una pista
ask-hint-another = Otra pista
ask-hint-elsewhere = Un ejemplo en otro sitio
ask-show-me = Enséñamelo
ask-cannot-tell = No se puede saber
ask-next = Pregunta siguiente
ask-again = Responder otra vez
ask-to-profile = Volver al perfil
ask-to-check = Comprobar mis marcas en el Perfil
ask-hint-head = Pista { $n } de 3
ask-hint-worked = Pista { $n } de 3, lo mismo en otro sitio
ask-first-answer = primera respuesta: <mine>{ $yours }</mine>
ask-before = antes: <mine>{ $yours }</mine>
ask-written = { $yours }
ask-written-then = { $yours }, { $next }
ask-on-profile = en el Perfil: <mine>{ $mark }</mine>
ask-before-profile = en el Perfil: <mine>{ $mark }</mine>, después: <mine>{ $yours }</mine>
ask-first-was = Tu primera respuesta fue <mine>{ $yours }</mine>.
ask-first-on-profile = En el Perfil tenías <mine>{ $mark }</mine>.
ask-shown = Te lo enseñamos: <b>{ $answer }</b>.
ask-shown-yours = Te lo enseñamos: <b>{ $answer }</b>. Lo tuyo: <mine>{ $yours }</mine>.
ask-third = Era el tercer intento. La respuesta: <b>{ $answer }</b>.
ask-cannot-tell-yes = Así es. Estas lecturas no bastan para saberlo, y decirlo es la respuesta completa.
ask-cannot-tell-no = Con estas lecturas esto sí se puede saber. Una pista dice dónde mirar.
ask-locked = Esta pregunta se abre cuando cada una de tus tres marcas del Perfil esté puesta, o digas que no está.
ask-locked-ask = La pregunta siguiente espera tus marcas
ask-locked-go = Poner tus marcas
ask-waits-number = Podrás pulsar «Comprobar» cuando rellenes una casilla.
ask-waits-list = Podrás pulsar «Comprobar» cuando elijas en la lista.
ask-waits-choice = Podrás pulsar «Comprobar» cuando elijas una respuesta.
ask-waits-facts = { $chosen } de { $wanted } elegidas
ask-waits-facts-many = { $chosen } elegidas: deja solo { $most }.
ask-all-done = { $count ->
    [one] La pregunta está hecha. Queda en tu cuaderno.
   *[other] Las { $count } preguntas están hechas. Quedan en tu cuaderno.
}
ask-note-first-stays = Tu primera respuesta queda registrada. Las demás van a su lado.
ask-note-show-me = «Enséñamelo» hace la cuenta con tu agua. Una respuesta enseñada no da puntos.
ask-note-revealed = Al comprobar tus marcas se vio esta respuesta, así que no da puntos. Hacerla vale la pena igual.
ask-note-units = Unidades para elegir: °C, °C por metro, m.
ask-note-watt = W es vatio: un julio cada segundo.
ask-note-units-sources = Unidades para elegir: °C, °C por metro, m. Valen la media, al bajar y al subir, cada una con sus números.
ask-note-digits = { $n ->
    [0] Tus lecturas no tienen decimales. Más cifras no dicen más.
    [one] Tus lecturas tienen un decimal. Más cifras no dicen más.
   *[other] Tus lecturas tienen { $n } decimales. Más cifras no dicen más.
}
ask-note-digits-depth = Dos decimales de un metro son un centímetro. Tu cable no da para más.
ask-note-sign = «{ $colder }» ya dice hacia dónde, así que el número no lleva menos.
ask-note-sign-rate = «{ $loses }» ya dice hacia dónde, así que el número no lleva menos.
ask-note-by-mean = Eso es según la media de las dos.
ask-note-by-down = Eso es según tus lecturas al bajar.
ask-note-by-up = Eso es según tus lecturas al subir.
ask-slip-number = <mine>{ $yours }</mine> todavía no es un número. Escríbelo como 4,5 o 4.5.
ask-slip-one-number = <mine>{ $yours }</mine> es un intervalo. Aquí basta un número.
ask-slip-two-depths = <mine>{ $yours }</mine> no da dos profundidades en metros. Escribe una en cada casilla.
ask-slip-no-marks = <mine>{ $yours }</mine> no va de una marca a otra. Toma dos profundidades en las que tengas lectura.
ask-slip-unit = <mine>{ $yours }</mine> es el número correcto. La unidad es otra; elige de nuevo, no cuesta nada.
ask-slip-unit-close = <mine>{ $yours }</mine> se acerca lo bastante como número. La unidad es otra; elige de nuevo, no cuesta nada.
ask-slip-fahrenheit = <mine>{ $yours }</mine>: el número es correcto en °F, pero falta la unidad o es otra. Escribe «{ $number } °F», o calcúlalo en °C; no cuesta nada.
ask-slip-point = <mine>{ $yours }</mine>: ¿se movió la coma decimal? Escríbelo otra vez, no cuesta nada.
ask-which-rule = Dijiste <mine>{ $yours }</mine>. Eso encaja con «{ $rule }». Tu clase usa «{ $class }». ¿Qué regla usaste?
ask-yes-rounded = <mine>{ $yours }</mine> es correcto: es { $value }, redondeado.
ask-yes-close = <mine>{ $yours }</mine> se acerca lo bastante: tus lecturas dan { $value }.
ask-yes-other-rule = <mine>{ $yours }</mine> es correcto, con otra regla: «{ $rule }».
ask-not-that-rule = <mine>{ $yours }</mine> no es lo que da aquí esa regla. Repite sus pasos.
ask-read-off = Entonces empieza por una regla: <mine>{ $yours }</mine> no es donde la pone la regla de tu clase.

## Palabras dentro de las frases

ask-word-loses = pierde
ask-word-gains = gana
ask-word-lose = pierde
ask-word-gain = gana
ask-word-strip-lost = °C que pierde por metro
ask-word-strip-gained = °C que gana por metro
ask-word-lost = perdió
ask-word-gained = ganó
ask-word-drop = bajada
ask-word-rise = subida
ask-word-colder = más fría
ask-word-warmer = más cálida
ask-word-half-metre = <b>medio</b> metro
ask-word-quarter-metre = un <b>cuarto</b> de metro
ask-word-one-metre = un metro
ask-value-c = { $value } °C
ask-value-c-per-m = { $value } °C por metro
ask-value-m = { $value } m
ask-value-from-to = de { $from } a { $to } m

## Casillas

ask-name-unit = unidad
ask-name-source = leído en
ask-name-rule = regla usada
ask-name-from = de, metros
ask-name-to = a, metros
ask-name-depth = profundidad, metros
ask-name-temp = temperatura, °C
ask-label-from = De
ask-label-source = Lo leí en
ask-label-rule = Mi regla
ask-after-m = m
ask-after-m-to = m  a
ask-after-m-and = m  y
ask-after-c = °C
ask-after-each-metre = °C en cada metro
ask-unit-choose = elige la unidad
ask-unit-c = °C
ask-unit-c-per-m = °C por metro
ask-unit-m = m
ask-source-mean = la media de las dos
ask-source-down = al bajar
ask-source-up = al subir
ask-grip-from = desde
ask-grip-to = hasta
ask-grip-steepest = brusco
ask-spoken-depth = a { $depth } metros de profundidad
ask-spoken-unset = sin colocar
ask-rule-choose = elige tu regla
ask-rule-none = Ninguna, lo leí a ojo
ask-rule-steepest-middle = Centro del tramo más brusco
ask-rule-densest-step = Donde la densidad cambia más deprisa
ask-rule-temp-drop = 1,0 °C más fría que a 0,5 m
ask-rule-density-rise = 0,1 kg por m³ más densa que a 0,5 m
ask-rule-first-steep-top = Comienzo del primer tramo de al menos 1 °C por metro
ask-rule-first-steep-middle = Centro de ese tramo

## Cuentas

ask-sum-minus = { $a } − { $b } =
ask-sum-divided = { $a } ÷ { $b } =
ask-sum-c = { $value } °C
ask-sum-m = { $value } m
ask-sum-number = { $value }
ask-sum-nothing = { "" }
ask-sum-change = lo que { $lost } el agua
ask-sum-from-to = de { $from } a { $to } m
ask-sum-over = en este tramo
ask-sum-per-metre = °C por metro
ask-fits-c = Vale todo entre { $low } y { $high }: tus lecturas están escritas a { $digit } °C.
ask-fits-c-rounded = Vale todo entre { $low } y { $high }: tus lecturas van de { $digit } en { $digit } °C y puedes redondearlas a { $to } °C.

## Por qué estas preguntas

ask-about-mixed = Un lago mezclado es una respuesta completa. Estas preguntas son las suyas.
ask-about-weak = Tu agua tiene capas débiles. Donde las lecturas no bastan, «No se puede saber» es una respuesta completa.
ask-about-cannot-tell = El tramo más brusco podría estar en más de la mitad de tu medición. Donde las lecturas no bastan, «No se puede saber» es una respuesta completa.
ask-about-inverse = Arriba está el agua más fría, como bajo el hielo. Estas preguntas buscan dónde se calienta.
ask-about-unstable = Hay agua más pesada encima de otra más ligera. Primero averigua qué lecturas lo dicen.
ask-about-today = Solo hay una capa cálida de hoy, cerca de la superficie. Estas preguntas la buscan.
ask-about-too-few = Con menos de 4 profundidades, o menos de 1,5 m de agua, no se pueden buscar capas. Estas preguntas valen igual.
ask-dropped-1 = «¿Qué temperatura hay a …?» no se pregunta: leída al revés daría lo mismo en tu agua.
ask-dropped-4 = «¿Cuánto más fría …?» no se pregunta: en tu agua no hay dos marcas que se diferencien bastante.
ask-dropped-5 = «¿Cuántos °C en cada metro?» no se pregunta: con tus marcas, una cuenta sin la división, o con la división mal hecha, parecería correcta.
ask-dropped-29 = «Llena tres barras» no se pregunta: no hay en tus marcas tres tramos que cambien lo bastante para distinguir una cuenta correcta de una sin la división, o con la división mal hecha.
ask-dropped-6 = «¿Dónde cambia más deprisa?» no se pregunta: en tu agua no destaca ningún tramo.
ask-dropped-7 = «¿A qué profundidad está la termoclina?» no se pregunta: tu agua no tiene.
ask-dropped-8 = «¿Con qué seguridad?» no se pregunta: no hay termoclina de la que estar seguro.
ask-dropped-9-deep = «¿Dónde acaba tu capa mezclada?» no se pregunta: en ningún punto de tu medición está tanto más fría.
ask-dropped-9-same = «¿Dónde acaba tu capa mezclada?» no se pregunta: en tu agua acaba en el tramo más brusco, y la termoclina también parecería correcta.
ask-dropped-9-warmer = «¿Dónde acaba tu capa mezclada?» no se pregunta: en tu agua acaba donde se hace más cálida, y la pregunta busca agua más fría.
ask-dropped-13 = «¿Cuánto coinciden bajar y subir?» no se pregunta: ninguna marca se leyó al bajar y al subir.
ask-dropped-13-one = «¿Cuánto coinciden bajar y subir?» no se pregunta: solo una marca se leyó dos veces.
ask-dropped-101 = «Máxima menos mínima» no se pregunta: cerca de 0 °C una sola temperatura también parecería correcta.
ask-dropped-102 = «¿Cómo de grande debe ser una diferencia?» no se pregunta: tus dos lecturas coinciden tanto que las cuentas no se distinguen.
ask-dropped-103 = «¿Es algún tramo lo bastante grande?» no se pregunta: no hay tramo entre dos marcas.
ask-dropped-104 = «¿Qué hechos lo muestran?» no se pregunta: tu medición da pocos hechos para elegir.
ask-dropped-105 = «¿Qué lecturas muestran agua más pesada encima?» no se pregunta: no hay otras parejas para elegir.

## Qué temperatura hay a una profundidad

ask-1 = ¿Qué temperatura tiene tu agua a { $depth } m?
ask-1-label = Tiene
ask-1-name = temperatura
ask-1-note = Léela en la imagen. Medio grado más o menos está bien.
ask-1-yes = <mine>{ $yours }</mine> es lo que tiene tu agua a { $depth } m.
ask-1-almost = <mine>{ $yours }</mine> está cerca. Sube otra vez recto desde la línea y lee los números de arriba.
ask-1-height = El 0 está arriba, como en el estanque. <b>Baja</b> hasta { $depth } m.
ask-1-swapped = <mine>{ $yours }</mine> es la profundidad. La temperatura está arriba.
ask-1-no = <mine>{ $yours }</mine> no es eso. Primero busca { $depth } m a la izquierda y ve en horizontal hasta la línea.
ask-1-hint-1 = El 0 está arriba en la imagen, como la superficie del estanque. Busca { $depth } m en el cable de la izquierda.
ask-1-hint-2 = Desde ahí ve en horizontal hasta la línea y luego recto hacia arriba, hasta los números.
ask-1-worked = A { $depth } m, a la línea y arriba:
ask-1-worked-gloss = donde está la línea
ask-1-sum-down = Al bajar, a { $depth } m:
ask-1-sum-up = Al subir, a { $depth } m:
ask-1-sum-one = Tu lectura a { $depth } m:
ask-1-fits = Todo entre { $low } y { $high } °C está bien leído en la imagen.
ask-1-own-words = Con tus palabras: ¿cómo encuentras { $depth } m en la imagen?

## Cuánto más fría

ask-4 = ¿Cuánto { $colder } está tu agua a { $lower } m que a { $upper } m?
ask-4-label = Está { $colder } en
ask-4-name = cuánto { $colder }
ask-4-yes = <mine>{ $yours }</mine> es correcto.
ask-4-almost = <mine>{ $yours }</mine> está cerca. Lee otra vez los dos números y resta uno del otro.
ask-4-sum = <mine>{ $yours }</mine> es la suma de las dos. Réstalas: la más cálida menos la más fría.
ask-4-one = <mine>{ $yours }</mine> es una de las dos temperaturas. Réstalas: la más cálida menos la más fría.
ask-4-no = <mine>{ $yours }</mine> no es la diferencia. Primero apunta las dos temperaturas.
ask-4-hint-1 = Mira dos números de la columna «Media»: el de { $upper } m y el de { $lower } m.
ask-4-hint-2 = Resta la más fría de la más cálida. Lo que queda es la diferencia.
ask-4-own-words = Con tus palabras: ¿por qué se resta una de la otra?

## Cuántos °C en cada metro

ask-5 = ¿Cuántos °C { $lose } tu agua en cada metro?
ask-5-lead = Toma el agua de { $from } a { $to } m.
ask-5-label = El agua { $loses }
ask-5-name = cuánto { $loses } el agua
ask-5-yes = <mine>{ $yours }</mine> es correcto.
ask-5-almost = <mine>{ $yours }</mine> está cerca. Haz otra vez la { $drop } y luego la división.
ask-5-not-divided = <mine>{ $yours }</mine> es toda la { $drop }, en { $length }. Falta una cosa: divide entre { $length } para tener °C por metro.
ask-5-multiplied = <mine>{ $yours }</mine> es la { $drop } multiplicada por el tramo. Divide: ¿cuánto tendría un metro entero?
ask-5-upside-down = <mine>{ $yours }</mine> son metros por grado. Da la vuelta a la división: grados entre metros.
ask-5-by-depth = <mine>{ $yours }</mine> es la { $drop } dividida entre una profundidad. Divide entre el tramo: lo que separa las dos marcas.
ask-5-no = <mine>{ $yours }</mine> no es eso. Primero calcula la { $drop } entre las dos marcas, en °C.
ask-5-hint-1 = Mira las dos profundidades y lo separadas que están.
ask-5-hint-2 = «°C por metro» quiere decir: en un metro entero. Toma la { $drop } y divídela entre el tramo en metros.
ask-5-own-words = Con tus palabras: ¿por qué se divide entre el tramo?

# Kind 29: three bars.
ask-29 = Llena tres barras: ¿cuántos °C { $lose } tu agua en cada metro?
ask-29-lead = Resta las dos temperaturas de cada par y divide entre el tramo. Cada barra aparece en la imagen en cuanto la tengas.
ask-29-label = De { $from } a { $to } m
ask-29-name = °C por metro de { $from } a { $to } m
ask-29-note = Puedes usar la bajada, la subida o la media.

## Dónde cambia más deprisa

ask-6 = ¿Entre qué dos marcas cambia más deprisa tu agua, y a qué ritmo?
ask-6-place = ¿Entre qué dos marcas cambia más deprisa tu agua?
ask-6-warmer = ¿Entre qué dos marcas sube más deprisa la temperatura al bajar, y a qué ritmo?
ask-6-warmer-place = ¿Entre qué dos marcas sube más deprisa la temperatura al bajar?
ask-6-look-below = Mira por debajo de { $depth } m. Lo de arriba será seguramente el sol de hoy.
ask-6-look-between = Tu agua tiene más de una capa de cambio rápido. Mira de { $from } a { $to } m: ahí está la que separa las aguas de peso más distinto.
ask-6-label = Ahí { $loses }
ask-6-name = °C por metro
ask-6-note = Usa la media. «{ $strip }» se abre cuando lo tengas.
ask-6-note-no-speed = En un metro entero el cambio y el cambio por metro son el mismo número, así que no se pregunta el ritmo.
ask-6-note-speed-not-tellable = Aquí no se pregunta el ritmo: en tu agua, una cuenta sin la división, o con la división mal hecha, podría parecer correcta.
ask-6-yes = <mine>{ $yours }</mine> es el tramo más brusco.
ask-6-too-long = <mine>{ $yours }</mine> son varios tramos, y el más brusco es uno de ellos. Di las dos marcas seguidas.
ask-6-today = <mine>{ $yours }</mine> está en la capa cálida de hoy. Mira más abajo.
ask-6-longer-step = <mine>{ $yours }</mine> cambia más, pero en un tramo más largo. Divide cada cambio entre su propio tramo.
ask-6-coldest = <mine>{ $yours }</mine> es lo más frío. El cambio es más rápido donde dos vecinas se diferencian más.
ask-6-bottom = <mine>{ $yours }</mine> es el fondo. El cambio es más rápido donde dos vecinas se diferencian más.
ask-6-first-steep = <mine>{ $yours }</mine> es el primer tramo que llega a 1 °C por metro. Más abajo hay uno más brusco.
ask-6-no = <mine>{ $yours }</mine> no es el más brusco. En esta imagen la línea va más tumbada donde el agua cambia más deprisa por metro: busca ese tramo.
ask-6-waits = <mine>{ $yours }</mine> queda guardado. Se juzga cuando encuentres el tramo.
ask-6-several = Tus lecturas no distinguen el tramo más brusco de sus parecidos entre { $from } y { $to } m, así que vale cualquiera de ellos.
ask-6-next-bar = La barra siguiente es { $shorter } más corta. Tus lecturas distinguen barras desde { $apart }, así que no cuenta.
ask-6-hint-1 = Recto hacia abajo quiere decir que la temperatura no cambia. Mira dónde está más tumbada la línea.
ask-6-hint-2 = Mira la diferencia entre cada número de la columna «Media» y el que tiene encima. Divide entre el tramo si los tramos no son iguales.
ask-6-own-words = Con tus palabras: ¿cómo muestra la línea dónde cambia más deprisa el agua?

## Profundidad de la termoclina

ask-7 = ¿A qué profundidad está la termoclina en tu agua?
ask-7-today = ¿A qué profundidad baja más deprisa la temperatura en la capa cálida de hoy?
ask-7-warming = ¿A qué profundidad sube más deprisa la temperatura al bajar?
ask-7-label = Está a
ask-7-marked = En el Perfil marcaste <mine>{ $yours }</mine>. Déjalo, o mueve la marca: arrástrala, usa las flechas o escribe.
ask-7-refused = En el Perfil dijiste: no está en mi agua. Queda registrado. ¿Dónde la pondrías ahora?
ask-7-note = ↑ es menos hondo, ↓ más hondo, de 0,1 en 0,1 m; con Mayús, de marca en marca del cable.
ask-7-yes = <mine>{ $yours }</mine> está dentro del margen de tus lecturas.
ask-7-yes-one-way = Correcto según la regla de tu clase, con un solo sentido: <mine>{ $yours }</mine> está en su tramo más brusco.
ask-7-rule = Regla de tu clase: el centro del tramo más brusco, con todo lo que no se distingue de él.
ask-7-rule-warming = Regla: el centro del tramo donde la temperatura sube más deprisa, con todo lo que no se distingue de él.
ask-7-wide = <mine>{ $yours }</mine> la contiene, pero es ancho. Aquí da una sola profundidad.
ask-7-temperature = <mine>{ $yours }</mine> es una temperatura. La respuesta es una profundidad, en metros.
ask-7-near-surface = <mine>{ $yours }</mine> es la capa cálida de esta tarde. Mira más abajo.
ask-7-bottom = <mine>{ $yours }</mine> es el fondo. Busca dónde cambia más deprisa de una marca a la siguiente.
ask-7-mirror = <mine>{ $yours }</mine> valdría si contaras desde el fondo. El 0 está en la superficie: cuenta hacia abajo desde ahí.
ask-7-almost = <mine>{ $yours }</mine> está cerca, pero no dentro. Compara los tramos por encima y por debajo de tu marca.
ask-7-no = <mine>{ $yours }</mine> no es eso. Primero busca el tramo donde la línea está más tumbada.
ask-7-hint-1 = Mira dónde está más tumbada la línea o es más larga la barra.
ask-7-hint-2 = Toma las dos marcas de ese tramo. La profundidad que se pide está a medio camino entre ellas.
ask-7-worked = Mitad entre { $from } y { $to } m:
ask-7-worked-gloss = otro tramo
ask-7-sum = Mitad entre { $from } y { $to } m:
ask-7-sum-gloss = el tramo más brusco
ask-7-fits = Todo entre { $from } y { $to } m encaja con tus lecturas.
ask-7-range-later = Cuánto podría moverse a cada lado tiene su propia pregunta.
ask-7-not-tellable = El margen abarca más de la mitad de tu medición, así que aquí «No se puede saber» es una respuesta igual de completa.
ask-7-own-words = Con tus palabras: ¿cómo encuentras esta profundidad en un perfil?

## Con qué seguridad

ask-8 = ¿Con qué seguridad conoces la profundidad de tu termoclina?
ask-8-today = ¿Con qué seguridad sabes dónde baja más deprisa la temperatura en la capa cálida de hoy?
ask-8-lead = Da las profundidades entre las que está con seguridad. Cuanto más estrecho, mejor, mientras tus lecturas lo permitan.
ask-8-label = Está entre
ask-8-note = Los dos tiradores de la imagen y las dos casillas son una sola respuesta.
ask-8-note-mark = En el Perfil dijiste <mine>{ $depth }, más o menos { $give }</mine>; queda registrado.
ask-8-note-depth = En el Perfil dijiste <mine>{ $depth }</mine> sin margen; queda registrado.
ask-8-yes = <mine>{ $yours }</mine> la contiene, y es tan estrecho como permiten tus lecturas.
ask-8-narrow = <mine>{ $yours }</mine> es más estrecho que un tramo. Tu sonda es fina en <b>grados</b>; tus <b>profundidades</b> están más separadas.
ask-8-whole = <mine>{ $yours }</mine> es casi todo tu lago. Es verdad, pero tus lecturas saben más.
ask-8-wide = <mine>{ $yours }</mine> la contiene. Tus lecturas permiten algo más estrecho: ¿qué tramos podrían ser el más brusco?
ask-8-beside = <mine>{ $yours }</mine> tiene un buen ancho y queda justo al lado. ¿Dónde está el centro del tramo más brusco?
ask-8-no = <mine>{ $yours }</mine> no la contiene. Empieza por el tramo más brusco y ve hacia fuera.
ask-8-hint-1 = Entre dos marcas no tienes lectura. ¿En qué tramo podría estar?
ask-8-hint-2 = Toma todos los tramos cuya barra no se distingue de la más larga con tus lecturas. Del primer comienzo al último final va tu margen.
ask-8-worked = un tramo entero
ask-8-span = Lo que no se distingue del tramo más brusco va de { $from } a { $to } m.
ask-8-fits = Cualquier margen que contenga { $value } m y mida de { $least } a { $most } m encaja con tus lecturas.
ask-8-own-words = Con tus palabras: ¿por qué nadie puede estar más seguro con estas lecturas?

## Final de la capa mezclada

ask-9 = ¿Dónde acaba tu capa mezclada, según la regla de { $drop } °C?
ask-9-lead = Según esa regla acaba donde el agua está { $drop } °C más fría que a { $depth } m.
ask-9-rule = Regla de tu clase: { $drop } °C más fría que a { $depth } m.
ask-9-label-temp = Busco
ask-9-label-pair = Está entre
ask-9-label-depth = En ese tramo, a
ask-9-note = Tres partes, tres veredictos. La tercera se juzga con el tramo que diste en la segunda.
ask-9-note-two = Dos partes, dos veredictos. En tu agua acaba en una marca, así que no hay tramo que partir.
ask-9-note-near = Dos partes, dos veredictos. En tu agua acaba tan cerca de una marca que tus lecturas no distinguen ese punto de la marca, así que no se pregunta la profundidad en el tramo.
ask-9-temp-yes = <mine>{ $yours }</mine> es la temperatura que hay que buscar.
ask-9-temp-almost = <mine>{ $yours }</mine> está cerca. Lee otra vez la media a { $depth } m.
ask-9-temp-no = <mine>{ $yours }</mine> no es eso. Empieza por la media a { $depth } m; la regla le quita { $drop } °C.
ask-9-surface = <mine>{ $yours }</mine> parte de la superficie. La regla parte de { $depth } m.
ask-9-previous = <mine>{ $yours }</mine> parte de la marca de encima. La regla parte siempre de { $depth } m.
ask-9-thermocline = <mine>{ $yours }</mine> es donde el agua cambia más deprisa. La pregunta es dónde <b>acaba</b> el agua cálida.
ask-9-pair-yes = <mine>{ $yours }</mine> son las dos marcas.
ask-9-pair-long = <mine>{ $yours }</mine> la contiene, con más de un tramo. ¿Qué dos marcas seguidas son?
ask-9-pair-no = <mine>{ $yours }</mine> no es eso. Baja por las medias hasta la primera más fría que lo que buscas.
ask-9-depth-yes = <mine>{ $yours }</mine> es donde se alcanza la temperatura de la regla.
ask-9-depth-almost = <mine>{ $yours }</mine> está cerca. Calcula otra vez la fracción de la bajada.
ask-9-depth-outside = <mine>{ $yours }</mine> queda fuera de tu tramo, de { $from } a { $to } m.
ask-9-nearest = <mine>{ $yours }</mine> es la marca más cercana. Está a una parte del camino: ¿qué fracción de la bajada?
ask-9-depth-no = <mine>{ $yours }</mine> no es eso. Primero: ¿cuánto de la bajada del tramo se ha gastado a tu temperatura?
ask-9-waits = <mine>{ $yours }</mine> queda guardado. Se juzga cuando encuentres las dos marcas.
ask-9-temp-hint-1 = Mira la media a { $depth } m: ahí empieza la regla.
ask-9-temp-hint-2 = La regla busca agua { $drop } °C más fría. Réstalo de la media.
ask-9-temp-worked = empezando a { $depth } m
ask-9-pair-hint-1 = Baja por la columna «Media» pensando en la temperatura que buscas.
ask-9-pair-hint-2 = La marca de arriba aún está más cálida, la de abajo más fría. Para en las dos primeras así.
ask-9-depth-hint-1 = En la marca de arriba no se ha gastado nada de la bajada del tramo, en la de abajo toda. ¿Cuánto a tu temperatura?
ask-9-depth-hint-2 = Fracción = la marca de arriba menos tu temperatura, entre la bajada del tramo. Baja esa fracción del tramo.
ask-9-sum-target = lo que buscas
ask-9-sum-at = A { $depth } m:
ask-9-sum-warmer = más cálida que { $target }
ask-9-sum-colder = { $target } o más fría
ask-9-sum-still = aún más cálida
ask-9-sum-enough = igual o más fría
ask-9-sum-to-lose = falta por perder
ask-9-sum-whole = en todo el tramo
ask-9-sum-fraction = fracción del tramo
ask-9-sum-place = { $top } + { $f } × { $height } =
ask-9-sum-end = según la regla
ask-9-fits = Vale todo entre { $low } y { $high } m.
ask-9-class = Según la regla de tu clase está entre { $from } y { $to } m, a { $value } m.
ask-9-ends = Según la regla acaba a { $value } m.
ask-9-own-words = Con tus palabras: ¿cómo encuentra la regla el final de la capa mezclada?

## Cuánto coinciden bajar y subir

ask-13 = ¿Cuánto coinciden las lecturas al bajar y al subir?
ask-13-lead = En cada marca tienes dos lecturas, una al bajar y otra al subir. Por lo que se separan, di cuánto se desvía normalmente una sola lectura.
ask-13-lead-one = En cada diferencia intervienen dos lecturas, así que una sola se desvía menos: unas 0,886 veces la diferencia media.
ask-13-note-squares = Cuadrados y luego la raíz: cada diferencia por sí misma, la mitad de la media de eso y luego la raíz cuadrada.
ask-13-label = Una lectura se desvía
ask-13-name = cuánto se desvía una lectura
ask-13-label-way = Tomé
ask-13-name-way = qué media se tomó
ask-13-way-choose = elige lo que tomaste
ask-13-way-unsigned = la media sin signos
ask-13-way-signed = la media con más y menos
ask-13-way-squares = cuadrados y luego la raíz
ask-13-yes = <mine>{ $yours }</mine> es lo que se desvía normalmente una de tus lecturas.
ask-13-almost = <mine>{ $yours }</mine> está cerca. Suma otra vez las diferencias, sin sus signos.
ask-13-signed = En una media con signos, el más y el menos se anulan. Primero quita los signos.
ask-13-no = <mine>{ $yours }</mine> no es eso. Primero apunta la diferencia en cada marca, sin su signo.
ask-13-hint-1 = Mira los números al bajar y al subir, marca por marca: ¿cuánto se separan?
ask-13-hint-2 = Quita los signos y haz la media de las diferencias. En cada una intervienen dos lecturas; para una sola toma 0,886 veces esa media.
ask-13-worked-at = separadas a { $depth } m
ask-13-made-up = ({ $a } + { $b } + { $c }) ÷ 3 =
ask-13-sum-mean = { $n ->
    [one] La única diferencia:
   *[other] Media de { $n } diferencias:
}
ask-13-sum-mean-gloss = sin los signos
ask-13-sum-times = 0,886 × { $mean } =
ask-13-sum-times-gloss = para una lectura
ask-13-why = ¿Por qué 0,886? En cada diferencia se desvían dos lecturas, así que de media es 1,128 veces lo que se desvía una. Dándole la vuelta sale 0,886.
ask-13-squares = De la otra manera, con cuadrados y raíz, da { $s } °C. Valen las dos.
ask-13-fits = Todo entre { $low } y { $high } °C vale.
ask-13-own-words = Con tus palabras: ¿por qué hay que quitar antes los signos?

## Agua uniforme: máxima menos mínima

ask-101 = ¿Cuánto más cálida es tu lectura máxima que la mínima?
ask-101-label = Es más cálida en
ask-101-name = cuánto más cálida
ask-101-yes = <mine>{ $yours }</mine> es todo lo que varía tu medición entera.
ask-101-almost = <mine>{ $yours }</mine> está cerca. Busca otra vez el número más alto y el más bajo.
ask-101-no = <mine>{ $yours }</mine> no es eso. Primero busca la lectura máxima y luego la mínima.
ask-101-hint-1 = Busca la lectura máxima y la mínima, a la profundidad que sea.
ask-made-up = en otra agua
ask-101-gloss = máxima menos mínima
ask-101-own-words = Con tus palabras: ¿qué dice esta diferencia de tu agua?

## Agua uniforme: qué se puede creer

ask-102 = ¿Cómo de grande debe ser una diferencia para creerla?
ask-102-lead = Dos lecturas de la misma agua se separan menos de 2,8 veces lo que se desvía normalmente una lectura, 95 veces de cada 100. ¿Cuánto es en tu caso?
ask-102-lead-once = Tu agua se leyó una vez, así que supón que una lectura se desvía normalmente { $s } °C. Dos lecturas de la misma agua se separan menos de 2,8 veces eso, 95 veces de cada 100. ¿Cuánto es?
ask-102-lead-given = Una de tus lecturas se desvía normalmente { $s } °C. Dos lecturas de la misma agua se separan menos de 2,8 veces eso, 95 veces de cada 100. ¿Cuánto es?
ask-102-label = Al menos
ask-102-name = diferencia mínima para creerla
ask-102-yes = <mine>{ $yours }</mine> es donde se empieza a creer con tus lecturas.
ask-102-almost = <mine>{ $yours }</mine> está cerca. Multiplica otra vez.
ask-102-typical = <mine>{ $yours }</mine> es lo que se desvía normalmente una lectura. El azar da eso a menudo; hacen falta 2,8 veces eso.
ask-102-any = Entonces contaría cualquier diferencia. Dos lecturas de la misma agua también se diferencian.
ask-102-no = <mine>{ $yours }</mine> no es eso. Primero: ¿cuánto se desvía normalmente una lectura?
ask-102-hint-1 = Empieza por lo que se desvía normalmente una lectura: te lo han dicho bajar y subir.
ask-102-hint-1-given = Empieza por lo que se desvía normalmente una lectura: está escrito bajo la pregunta.
ask-102-hint-2 = Multiplica por 2,8 lo que se desvía normalmente una lectura.
ask-102-worked = con otra sonda
ask-102-gloss = lo que puedes creer
ask-102-sum = { $limit } × { $s } =
ask-102-why = ¿Por qué 2,8? Es 1,96 por la raíz de 2: con 1,96 quedan dentro 95 de cada 100, y la raíz está porque se desvían dos lecturas a la vez.
ask-102-own-words = Con tus palabras: ¿por qué no se cree una diferencia más pequeña?

## Agua uniforme: si algún tramo es mayor

ask-103 = ¿Hay en tu agua algún tramo lo bastante grande para creerlo?
ask-103-lead = Compara cada media con la de debajo.
ask-103-label = Encuentro
ask-103-name = lo que encuentras
ask-103-none = Ningún tramo es lo bastante grande
ask-103-by-turns = Al menos uno sí, y no siempre con agua más fría debajo
ask-103-colder = Al menos uno sí, y siempre con agua más fría debajo
ask-103-note = Usa la diferencia mínima que puedes creer, la de la pregunta anterior.
ask-103-note-given = En tu agua, cree una diferencia de { $limit } °C o más.
ask-103-yes = Eso es lo que muestran tus lecturas.
ask-103-on-the-line = Un tramo está justo en el límite, así que otra respuesta valdría también.
ask-103-every = Las medias se diferencian de marca en marca, pero menos de lo que puedes creer.
ask-103-no-step = Al menos un tramo es mayor que eso. Repasa las medias hacia abajo.
ask-103-no = Mira hacia dónde van los tramos mayores.
ask-103-hint-1 = Mira la columna «Media»: ¿dónde se diferencian más dos vecinas?
ask-103-hint-2 = Toma esa diferencia y compárala con la mínima que puedes creer.
ask-103-biggest = El tramo mayor, de { $from } a { $to } m, es de { $drop } °C. Puedes creer desde { $limit } °C.
ask-103-own-words = Con tus palabras: ¿qué hace que un tramo sea lo bastante grande para creerlo?

## Agua uniforme: tres hechos

ask-104 = En esta agua no hay capas. ¿Qué tres hechos lo muestran?
ask-104-lead = Todas las líneas son verdad. Solo tres muestran que el agua está mezclada.
ask-104-name = hecho
ask-104-note = Elige tres líneas, en cualquier orden.
ask-104-range = De la superficie a { $last } m varía { $apart } °C.
ask-104-no-step = Ningún tramo pierde { $steep } °C por metro; el más brusco pierde { $steepest }.
ask-104-weight = El agua de arriba y la del fondo pesan casi lo mismo: { $gain } kg por m³ de diferencia.
ask-104-densest = Toda está cerca de 4 °C, donde un grado apenas cambia lo que pesa el agua.
ask-104-never = En ningún sitio está { $drop } °C más fría que a { $depth } m.
ask-104-surface = El agua a { $depth } m tiene { $temp } °C.
ask-104-legs = Al bajar y al subir hay hasta { $apart } °C de diferencia.
ask-104-deepest = La lectura más honda se tomó a { $last } m.
ask-104-count = { $n ->
    [one] Se leyó a una profundidad.
   *[other] Se leyó a { $n } profundidades.
}
ask-104-yes = Estos tres lo muestran. En agua con capas ninguno sería verdad.
ask-104-almost = Dos de tus tres lo muestran. ¿Cuál de tus líneas sería verdad también en agua con capas?
ask-104-no = { $hits ->
    [0] Ninguno de tus tres lo muestra todavía. Pregunta en cada línea: ¿sería verdad también en agua con capas?
   *[other] { $hits } de tus tres lo muestra. Pregunta en cada línea: ¿sería verdad también en agua con capas?
}
ask-104-hint-1 = Piensa en un lago con capas en verano. ¿Qué líneas podrían estar también en su cuaderno?
ask-104-hint-2 = Las capas necesitan una diferencia entre arriba y abajo. Busca líneas que digan lo pequeña que es.
ask-104-hint-3 = «El estanque mide 9 m de ancho» vale para cualquier agua: no muestra nada. «Nunca varía medio grado» no se podría decir de un agua con capas.
ask-104-shown = estos tres
ask-104-own-words = Con tus palabras: ¿cómo sabes que esta agua está mezclada?

## Agua más pesada encima

ask-105 = ¿Qué lecturas muestran agua más pesada encima?
ask-105-lead = Todas estas parejas son de tu medición. Solo una tiene encima el agua más pesada.
ask-105-label = Esta pareja
ask-105-name = pareja de lecturas
ask-105-pair = { $upper } °C a { $top } m, sobre { $lower } °C a { $bottom } m
ask-105-note = Por encima de 4 °C, el agua más fría pesa más. Por debajo de 4 °C pesa menos.
ask-105-yes = Aquí el agua más pesada está encima. No puede quedarse así mucho tiempo.
ask-105-warm = En esa pareja el agua más cálida y ligera está encima, como debe ser.
ask-105-hint-1 = En cada pareja pregunta: ¿cuál de las dos está más fría?
ask-105-hint-2 = Por encima de 4 °C el agua más fría es la más pesada. Debería estar debajo.
ask-105-hint-3 = 9,0 °C sobre 12,0 °C sería pesada sobre ligera; 12,0 °C sobre 9,0 °C sería como debe ser.
ask-105-weights = Como agua dulce, la de arriba pesa { $upper } kg por m³, la de abajo { $lower }.
ask-105-what-now = O una lectura está mal, o el agua se enfriaba en ese momento, o el agua de abajo es más salada, y la sal la hace más pesada. Mira esas lecturas en el Registro.
ask-105-own-words = Con tus palabras: ¿por qué el agua pesada no puede quedarse encima?
