# La página para docentes, "cómo se calcula": véase el archivo inglés.

how-title = Cómo se calcula
how-back = Volver al trabajo
how-list = En esta página
how-intro-text =
    Para docentes: cada regla en palabras y como fórmula, de dónde viene y, al final, una medición calculada a mano.
    z es la profundidad en metros, 0 en la superficie y mayor cuanto más abajo. T es la temperatura en °C. Un tramo va de una profundidad a la siguiente. El signo ^ precede a una potencia.
    Tras cada fuente se dice cómo la conocemos. <b>Leída:</b> vimos la fuente, o la parte que nombramos. <b>De memoria:</b> compruébala antes de citarla. <b>Elección nuestra:</b> ninguna fuente lo prescribe.

how-checks-title = Revisión de las lecturas
how-checks-text =
    Cada lectura recibe una marca: pasa, no evaluada, dudosa, falla o falta; cuenta la peor. No se borra nada. Una lectura que falla la primera o la segunda prueba espera fuera del cálculo hasta que tu grupo decida. La tercera prueba no aparta nada.
    Las lecturas repetidas en el tiempo a una misma profundidad pueden probarse también por saltos y por quedarse quietas (ritmo de cambio, línea plana). A lo largo de la profundidad esas dos no dicen nada.
how-checks-formula =
    Intervalo: falla por debajo de −0.5 o por encima de 40 °C, dudosa por debajo de 0 o por encima de 32 °C
    Pico: si las dos vecinas quedan al mismo lado, la menor de las dos diferencias; dudosa por encima de 0.5 °C, falla por encima de 1.0 °C
    Pesada sobre ligera: la densidad baja hacia el fondo en más de 0.01 kg por m³ (dudosa) o 0.03 (falla)
how-checks-source = Fuente: manual QARTOD de temperatura y salinidad, U.S. IOOS 2016 (portada leída; las pruebas, leídas en código público). 0.03 kg por m³: control de calidad de Argo (de memoria). Límites de intervalo y pico: elección nuestra para lagos.

how-corrections-title = Correcciones
how-corrections-text =
    Cada corrección está en una lista y se puede deshacer. Lo escrito queda como estaba.
    Prueba de la sonda, antes de salir: se lee tres veces en hielo fundente removido y tres veces junto a un segundo termómetro. A menos de 0.2 °C en ambos es buena, a menos de 0.5 °C basta para una clase; si se aparta más, necesita una corrección u otra sonda.
    Retraso: la sonda aún no se había estabilizado al leerla. La parte r de un cambio que quedaba por recorrer es la que más acerca las lecturas al bajar y al subir. Por encima de 0.5 no se corrige nada: hay que esperar más en cada marca.
how-corrections-formula =
    Sonda, en agua con hielo: T = lectura − lectura en hielo
    Sonda, con un segundo termómetro: T = (lectura − lectura en hielo) × segundo termómetro ÷ (lectura junto a él − lectura en hielo), si estas dos lecturas distan 5 °C o más
    Cero de profundidad: z = marca − altura de la barandilla o del hielo sobre el agua
    Primera marca: z = marca + distancia del cero de las marcas al sensor
    Estiramiento: z = marca × longitud real ÷ longitud marcada
    Inclinación de un cable recto: z = longitud × coseno de su ángulo con la vertical
    Retraso: T = (lectura − r × lectura anterior) ÷ (1 − r)
how-corrections-source = Fuente: prueba de la sonda, National Field Manual A6.1 y memorando 79.16 del USGS (leídos en citas), programa GLOBE (leído); 5 °C, elección nuestra. Inclinación: práctica hidrográfica (de memoria). Retraso: según la idea de Morison y otros 1994, J. Atmos. Oceanic Technol. 11, 1151–1164 (resumen leído).

how-pairs-title = Al bajar y al subir
how-pairs-text =
    Las profundidades leídas dos veces dicen cuánto se repite una lectura: s, la desviación estándar de una lectura. Si se leyó una sola vez, se toma s = 0.1 °C; con menos de 5 pares es al menos 0.1 °C. Nunca es menor de lo que permite la última cifra escrita.
    Si un sentido lee más cálido en conjunto, la página lo dice: entonces no es solo azar, sino una sonda lenta, deriva o el paso del tiempo.
how-pairs-formula =
    d = al bajar − al subir
    s = raíz de (suma de todos los d² ÷ (2 × número de pares))
    Un sentido es más cálido: media de d mayor que 2 × desviación estándar de d ÷ raíz del número de pares; con 4 pares como mínimo
    Un par es bueno: d hasta 0.2 °C + 0.1 m × °C por metro en ese lugar. Mirarlo otra vez: hasta 0.5 °C + lo mismo. Repetirlo: más
how-pairs-source = Fuente: usual en el control de calidad analítico, como en Youden & Steiner 1975 (de memoria; el álgebra se comprobó con una biblioteca numérica). 0.2 y 0.5 °C: elección nuestra, según el manual A6.1 y el memorando 79.16 del USGS (leídos en citas).

how-steps-title = Perfil y tramos
how-steps-text =
    El perfil tiene una temperatura por profundidad, la media de sus lecturas. Cada tramo tiene una pendiente, y un más o menos que viene de s.
how-steps-formula =
    °C por metro = (T arriba − T abajo) ÷ (z abajo − z arriba)
    más o menos de un valor del perfil: e = s ÷ raíz del número de lecturas de la media
    más o menos de un tramo: u = raíz de (e arriba² + e abajo²) ÷ (z abajo − z arriba)
how-steps-source = Fuente: hoja de campo de la IISD Experimental Lakes Area, Canadá (leída). Más o menos: ley de propagación, JCGM 100 (de memoria).

how-state-title = ¿Hay alguna capa?
how-state-text =
    Se pregunta antes de dar cualquier profundidad. Los extremos se comparan por su densidad: arriba y abajo son las medianas del perfil a menos de 1 m de la primera y de la última lectura (las dos lecturas mismas si la medición abarca 2 m o menos). Cuenta la primera línea que se cumple.
how-state-formula =
    aumento = densidad abajo − densidad arriba
    Inestable: hay agua sobre agua más ligera, por más de 0.03 kg por m³ y no menos que el aumento; solo se comparan profundidades que el ruido no puede intercambiar (T distintas en 4.5 × raíz de (e arriba² + e abajo²))
    Bajo hielo: arriba está 0.5 °C más fría que abajo, o más, y el aumento supera 0.01 kg por m³
    Mezclada: el aumento es menor de 0.1 kg por m³
    Con capas: una capa de cambio brusco que cuenta (véase allí), o un aumento de 0.5 kg por m³ o más
    Capas débiles: todo lo demás
how-state-source = Fuente: elección nuestra. En 58 mediciones reales que juzgamos a ojo coincide en 47; de 713 mediciones en las que equipos de campo marcaron capas, dice «con capas» en 700.

how-thermocline-title = La termoclina y su margen
how-thermocline-text =
    La termoclina es la profundidad a la que la temperatura baja más deprisa: el centro del tramo más brusco de la capa principal. Tramos vecinos igual de bruscos cuentan como uno.
    Su margen incluye todo tramo que las lecturas no distinguen del más brusco. Si es más de la mitad de la medición, la respuesta es «estas lecturas no bastan». El agua mezclada no tiene termoclina; bajo hielo la página dice dónde se calienta más deprisa, con la misma regla.
how-thermocline-formula =
    termoclina = (z arriba + z abajo) ÷ 2 del tramo más brusco
    un tramo pertenece al margen: sus °C por metro son al menos el más brusco − 2 × raíz de ((u del más brusco² + u del tramo²) ÷ 2)
    margen = del comienzo de su primer tramo al final del último
how-thermocline-source = Fuente: Hutchinson 1957 (de memoria; su definición y el centro del tramo, leídos en la hoja de la IISD Experimental Lakes Area). Margen: elección nuestra; en mediciones simuladas contenía la profundidad verdadera al menos en el 94 %, mientras que medio tramo a cada lado la contenía del 47 al 97 %.

how-second-title = Otras opiniones sobre la termoclina
how-second-text =
    «Otras reglas» muestra qué más se puede decir de las mismas lecturas. Nada de eso cambia la respuesta, y nada se da con más detalle que 0.1 m.
    <b>Densidad:</b> el tramo en el que la densidad cambia más deprisa. Está en la termoclina o por encima, porque un grado pesa más en agua cálida.
    <b>Parábola:</b> la cima de una parábola por la barra más larga y sus dos vecinas. <b>Punto de equilibrio:</b> el de las mismas tres barras. <b>Curva suave:</b> el punto más brusco de una curva por todos los valores del perfil que nunca se pasa de ellos (PCHIP).
how-second-formula =
    densidad: el centro del tramo con el mayor N² (véase Estabilidad)
    parábola: con g1, g2, g3 °C por metro en los centros m1, m2, m3: primera pendiente d1 = (g2 − g1) ÷ (m2 − m1), segunda pendiente d2 = (g3 − g2) ÷ (m3 − m2), curvatura c = (d2 − d1) ÷ (m3 − m1), profundidad = (m1 + m2) ÷ 2 − d1 ÷ (2c)
    punto de equilibrio = suma de (°C perdidos × centro) ÷ suma de °C perdidos
how-second-source = Fuente: densidad, física de manual (de memoria). Parábola y punto de equilibrio: práctica común, sin fuente. PCHIP: Fritsch & Carlson 1980, Fritsch & Butland 1984 (de memoria; comprobado con una biblioteca numérica).

how-metalimnion-title = Capa de cambio brusco (metalimnion)
how-metalimnion-text =
    La serie sin cortes de tramos bruscos que contiene el más brusco. Series separadas solo por tramos que las lecturas no distinguen de bruscos son una sola. Una serie cuenta solo si pierde en total más de lo que hace el azar. Debajo está la capa profunda (hipolimnion).
how-metalimnion-formula =
    brusco: 1 °C por metro o más (una clase puede elegir 0.5 o 2)
    unidas: los tramos de en medio pierden 1 − 2u °C por metro o más
    cuenta: T en su comienzo − T en su final es más de 2.8 × s
    margen de un borde sin repeticiones: un tramo más afuera si ese pierde 1 − 2u o más, un tramo más adentro si el último pierde 1 + 2u o menos; si no, medio tramo a cada lado
how-metalimnion-source = Fuente: 1 °C por metro, Birge 1897 y 1904 (de memoria, sin verlo). 2.8 × s: límite de repetibilidad de ISO 5725-6 (de memoria). Unir series: elección nuestra.

how-warm-title = Capa cálida de hoy
how-warm-text =
    El sol y la calma hacen una capa cálida poco profunda que mañana quizá no esté. Si hay varias capas de cambio brusco, la principal es la que tiene el mayor cambio de densidad. Otra que acaba a menos de 2 m de la superficie se llama «capa cálida de hoy», y entonces se busca también la capa mezclada estacional, a partir de 2 m.
    Una sola capa de cambio brusco es solo de hoy si acaba a 2 m o menos, pierde menos de 5 °C y la medición sigue 2 m o más por debajo.
how-warm-source = Fuente: la idea, «falso epilimnion», de la hoja de la IISD Experimental Lakes Area (leída). Los límites: elección nuestra.

how-mixed-title = Capa mezclada, la regla de la clase
how-mixed-text =
    La primera profundidad por debajo de 0.5 m a la que el agua está 1.0 °C más fría (o más cálida) que a 0.5 m, en una recta entre las lecturas vecinas. Si no se alcanza, la capa está mezclada al menos hasta la última lectura. En agua mezclada es así aunque haya un salto de ese tamaño, y bajo hielo la regla no se usa.
    Por qué 1.0 °C: sigue valiendo con termómetros de clase. Con un ruido de 0.2 °C en un lago de prueba, el 95 % de las respuestas quedó dentro de 0.6 m; con 0.2 °C se repartían por 2.2 m.
how-mixed-formula =
    meta = T a 0.5 m − 1.0
    profundidad = z arriba + (z abajo − z arriba) × (meta − T arriba) ÷ (T abajo − T arriba)
    margen sin ensayos: 2 × e ÷ °C por metro × raíz de (1 + (1 − f)² + f²), donde f es el lugar en el tramo, de 0 a 1; como mínimo 0.05 m
how-mixed-source = Fuente: una diferencia respecto a una profundidad de referencia, como en de Boyer Montégut y otros 2004, J. Geophys. Res. 109, C12003 (resumen leído). 1.0 °C: uso más antiguo en mares y lagos (de memoria). 0.5 m: elección nuestra, bajo la piel de agua cálida.

how-others-title = Capa mezclada, otras reglas publicadas
how-others-text =
    <b>Diferencia de temperatura</b> de 0.2; 0.5 o 0.8 °C, y <b>diferencia de densidad</b> de 0.03; 0.1 o 0.125 kg por m³: como la regla de la clase, con otra meta.
    <b>Gradiente:</b> el comienzo, o el centro, del primer tramo de 1 °C por metro o más; o de 0.1 kg por m³ por metro.
    <b>Curvatura:</b> la lectura en la que la curva más se dobla hacia lo frío.
    <b>Ángulo mayor:</b> una recta por la lectura y las tres de encima, otra por ella y las tres de debajo; la lectura con el mayor ángulo entre ambas. Antes, profundidad y temperatura se llevan a una escala de 0 a 1.
    <b>Palo quebrado:</b> constante hasta un quiebre y luego una recta, lo más cerca posible de las lecturas, hasta el final del tramo más brusco. <b>Tres capas:</b> constante, recta, constante en toda la medición.
    Difieren: en un mismo lago de prueba, catorce reglas dieron de 2.16 a 4.00 m. Con cada profundidad va su regla.
how-others-formula =
    curvatura = 2 × (pendiente abajo − pendiente arriba) ÷ (tramo arriba + tramo abajo), pendiente = T ganada por metro
    ángulo = arcotangente de la pendiente arriba − arcotangente de la pendiente abajo
    tres capas: T = T1 + (T2 − T1) × parte del camino del quiebre a al quiebre b
how-others-source = Fuente: 0.2 °C y 0.03 kg por m³, de Boyer Montégut y otros 2004 (resumen leído); 0.5 °C y 0.125 kg por m³, Levitus 1982; 0.8 °C, Kara y otros 2000; 0.1 kg por m³, Wilson y otros 2020; curvatura, Lorbacher y otros 2006; palo quebrado, Thomson & Fine 2003 (todo de memoria). Gradiente: hoja de la IISD Experimental Lakes Area (leída). Ángulo mayor: Chu & Fan 2011, J. Oceanogr. 67 (resumen leído). Que las reglas difieren mucho: Wilson y otros 2020, Gray y otros 2020 (resúmenes leídos).

how-chance-title = Márgenes repitiendo el azar
how-chance-text =
    La página repite tu medición 10 000 veces, cada vez con otros errores como los que la tuya puede tener, y vuelve a calcular cada profundidad. También se sortea lo que hay entre dos marcas, que nadie leyó: lo más brusco está en cualquier lugar de su tramo, y la capa mezclada y los bordes de la capa de cambio brusco acaban donde los tiene una curva entre las marcas, doblada al azar tanto como admiten los tramos vecinos. El margen es el 95 % central de las respuestas, ampliado hasta contener la profundidad que da la regla. Solo la termoclina conserva su propio margen. También dice cuántas veces no hubo tal capa y cuántas veces cada tramo fue el más brusco. La misma medición da el mismo margen en cualquier equipo: el azar parte de un número fijo.
how-chance-formula =
    nueva lectura = lectura + ruido con s, menos el redondeo que s ya contiene + un desplazamiento de la sonda para todas (hasta 0.2 °C en cada sentido) + redondeo (media última cifra en cada sentido)
    nueva profundidad = marca × un estiramiento para todas (desviación estándar 1 %) × coseno de una inclinación (de 0 a 5 grados) + error de cada marca (desviación estándar 0.03 m)
    margen = de la respuesta 2.5 a la 97.5 de cada 100 en orden
how-chance-source = Fuente: JCGM 101:2008, propagación de distribuciones con un método de Monte Carlo (título e índice leídos). Tamaño de los errores: elección nuestra.

how-density-title = Densidad del agua
how-density-text =
    Siempre a la presión de la superficie, para que solo cuente el calor. El agua es más densa a 3.98 °C. Kell 1975, EOS-80 y Chen & Millero 1986 están incluidas para comparar. De 0 a 35 °C difieren de la que se usa en pocas milésimas de kg por m³, demasiado poco para cambiar la respuesta de una clase. La sal se añade con EOS-80; la página misma calcula con agua dulce.
how-density-formula =
    densidad = 999.974950 × (1 − (T − 3.983035)² × (T + 301.797) ÷ (522528.9 × (T + 69.34881))) kg por m³, de 0 a 40 °C
how-density-source = Fuente: Tanaka y otros 2001, Metrologia 38, 301–309 (resumen y comienzo leídos; coeficientes leídos en varios códigos públicos, todos iguales). Kell 1975 (leída en una reimpresión con una errata, que corregimos), EOS-80: UNESCO 1983 (leída en códigos públicos), Chen & Millero 1986 (coeficientes leídos en códigos públicos, intervalo de memoria).

how-stability-title = Estabilidad
how-stability-text =
    ¿Cuánto cuesta mezclar esta agua? <b>N²</b> lo dice de un tramo: una porción de agua empujada arriba o abajo vuelve y oscila, en un tiempo de 6.283 ÷ N. <b>La resistencia a la mezcla</b> compara un tramo con la diferencia entre agua a 4 y a 5 °C; se duplica si el tramo se duplica. <b>La estabilidad de Schmidt</b> es el trabajo que hace falta para mezclar todo el lago sin calentarlo ni enfriarlo, por cada metro cuadrado. La página no pide un mapa de profundidades: el lago cuenta como una caja hasta el fondo, o hasta la última lectura si no se anotó el fondo, y así el trabajo sale varias veces mayor. Bajo la última lectura sigue su temperatura. Solo se dice un trabajo mayor que 2 desviaciones estándar de lo que hace por sí solo el ruido de las lecturas. El trabajo para mezclar solo hasta una profundidad es la misma suma con el agua de encima.
    El viento está en el cálculo, pero no en la página: con un área y un viento, el número de Wedderburn y el número de lago comparan este trabajo con el empuje del viento. Muy por debajo de 1, el viento puede inclinar las capas hasta la superficie.
how-stability-formula =
    N² = 9.80665 ÷ densidad media × (densidad abajo − densidad arriba) ÷ (z abajo − z arriba)
    resistencia = (densidad abajo − densidad arriba) ÷ 0.008 kg por m³
    Schmidt = 9.80665 ÷ área × suma, por rodajas finas, de (z − z del centro) × (densidad − densidad media) × área de la rodaja × su espesor
    Schmidt de dos capas en una caja = 9.80665 × diferencia de densidad × espesor de una × espesor de la otra ÷ 2
    como levantar tantos kg 1 m: trabajo ÷ 9.80665
    Wedderburn = 9.80665 × diferencia de densidad ÷ densidad abajo × espesor de la capa de arriba² ÷ (u² × longitud), u² = empuje del viento ÷ densidad abajo, empuje = 1.2 × 0.0013 × (viento en m por segundo)²
how-stability-source = Fuente: N², física de manual (de memoria; comprobada con una biblioteca abierta de densidades exactas). Resistencia: Vallentyne 1957 (de memoria). Schmidt 1928, Idso 1973, Limnol. Oceanogr. 18, 681–683 (títulos leídos; fórmula de memoria y comprobada en casos que se resuelven a mano). Viento: Imberger & Patterson 1990 (índice leído; fórmulas de memoria).

how-oxygen-title = Saturación de oxígeno
how-oxygen-text =
    Cuánto oxígeno contiene el agua en equilibrio con el aire: menos si es cálida, salada o está muy por encima del mar. El porcentaje es la parte de eso que se midió, a la temperatura del agua y a la presión de la superficie del lago. La página toma el agua como dulce (S = 0).
how-oxygen-formula =
    K = T + 273.15
    logaritmo natural de mg por litro = −139.34411 + 157570.1 ÷ K − 66423080 ÷ K^2 + 12438000000 ÷ K^3 − 862194900000 ÷ K^4
    con sal S en g por kg: además − S × (0.017674 − 10.754 ÷ K + 2140.7 ÷ K^2)
    presión a la altura h en metros = (1 − 0.0000225577 × h)^5.25588 atmósferas
    a la presión p en atmósferas: eso × (p − v) × (1 − q × p) ÷ ((1 − v) × (1 − q))
    v = 2.71828^(11.8571 − 3840.70 ÷ K − 216961 ÷ K^2), q = 0.000975 − 0.00001426 × T + 0.00000006436 × T²
how-oxygen-source = Fuente: Benson & Krause 1984, Limnol. Oceanogr. 29, 620–632 (coeficientes leídos en diez códigos públicos). Comprobada con la tabla impresa: 14.621 a 0 °C, 9.870 a 16 °C (leída). Altura: atmósfera estándar (de memoria).

how-whatif-title = ¿Y si…?
how-whatif-text =
    La misma medición como habría salido de otro modo: cada 1 o 2 m, en un solo sentido, con menos espera, con cifras más gruesas, con peores marcas. Se quitan lecturas, se redondean o reciben un ruido sacado con un inicio fijo, y todo se vuelve a calcular con las mismas reglas, también los márgenes (con 2000 repeticiones). Muestra cuánto vale el cuidado en el agua.
how-whatif-formula =
    menos espera: lectura = agua + r × (lectura anterior − agua), r = 2.71828^(−espera ÷ constante de tiempo de la sonda)
how-whatif-source = Fuente: respuesta de primer orden de una sonda, física de manual (de memoria). El resto sigue de las reglas de arriba.

how-compare-title = Comparar dos mediciones
how-compare-text =
    Clase lo muestra en «Por qué difieren», y una pregunta trata de ello. Dos mediciones de un lago difieren. ¿Es la sonda (todas las T desplazadas igual), el cero de las marcas (todas las profundidades desplazadas igual), el estiramiento del cable (más cuanto más hondo), agua de arriba calentada, agua movida o solo azar? Cada causa se ajusta a las diferencias y recibe una puntuación: por lo que deja, por cuánta libertad tuvo y por lo usual que es su tamaño. Se nombra la mejor, con aquellas de las que no se distingue, y se dice cuánto explica de la diferencia y si deja más de lo que dejaría el azar: entonces no es la única, o no es ninguna de estas. Un calentamiento de arriba se compara con lo que puede traer un sol fuerte, 1000 W por m².
    Solo se nombra una causa si supera al azar y explica al menos la mitad de la diferencia o no deja más de lo que dejaría el azar: si no, ninguna de ellas por sí sola es la razón. Cuánto hace falta se halla con 2000 pares creados con un inicio fijo que difieren solo por azar: como mucho 5 de cada 100 pueden recibir una causa.
how-compare-formula =
    resto = suma de ((diferencia − lo que la causa predice) ÷ su más o menos)²
    calor ganado, W por m² = 4180000 × suma de (T ganada × espesor) ÷ segundos entre ambas
how-compare-source = Fuente: mínimos cuadrados, manual (de memoria). Puntuación: según Jeffreys 1961 (de memoria). Sol: de memoria. Causas, tamaños usuales y límites: elección nuestra.

how-worked-title = Una medición, calculada a mano
how-worked-text =
    La medición de verano inventada que la página ofrece como ejemplo: 20 profundidades de 0 a 9.5 m, cada una leída al bajar y al subir. Una prueba vuelve a calcular cada número de abajo y falla si difiere.
how-worked-pairs-text =
    <b>Al bajar y al subir.</b> De 20 pares, el mayor d es 0.3 °C. Todos los d² suman 0.40, así que s es la raíz de 0.40 ÷ 40: 0.10 °C. La media de d es 0.090 °C y su límite, 2 × 0.112 ÷ raíz de 20, es 0.050: al bajar se leyó más cálido en conjunto.
    Un valor del perfil, la media de 2 lecturas, tiene e = 0.10 ÷ raíz de 2 = 0.071 °C. Un tramo de 0.5 m tiene u = raíz de (0.071² + 0.071²) ÷ 0.5 = 0.20 °C por metro.
how-worked-steps-text =
    <b>Tramos junto al más brusco.</b>
how-worked-steps-table =
    Tramo, m | T arriba, °C | T abajo, °C | °C perdidos | °C por metro
    2.5 – 3.0 | 22.75 | 21.80 | 0.95 | 1.9
    3.0 – 3.5 | 21.80 | 20.05 | 1.75 | 3.5
    3.5 – 4.0 | 20.05 | 17.55 | 2.50 | 5.0
    4.0 – 4.5 | 17.55 | 15.30 | 2.25 | 4.5
    4.5 – 5.0 | 15.30 | 13.50 | 1.80 | 3.6
how-worked-thermocline-text =
    <b>Termoclina.</b> El tramo más brusco, 5.0 °C por metro, tiene su centro en (3.5 + 4.0) ÷ 2 = 3.75 m. Un tramo pertenece al margen desde 5.0 − 2 × raíz de ((0.20² + 0.20²) ÷ 2) = 4.6. El siguiente tiene 4.5, así que el margen es solo este tramo: de 3.5 a 4.0 m.
how-worked-mixed-text =
    <b>Capa mezclada.</b> A 0.5 m hay 23.40 °C, así que la meta es 22.40 °C. Está entre 22.75 a 2.5 m y 21.80 a 3.0 m: 2.5 + 0.5 × (22.40 − 22.75) ÷ (21.80 − 22.75) = 2.68 m.
how-worked-metalimnion-text =
    <b>Capa de cambio brusco.</b> Los tramos de 2.5 a 6.5 m pierden 1.9; 3.5; 5.0; 4.5; 3.6; 2.6; 1.9 y 1.4 °C por metro: 8 seguidos. El tramo de encima tiene 0.7, el de debajo 0.9. De arriba abajo la serie pierde 22.75 − 10.55 = 12.20 °C, mucho más que 2.8 × 0.10 = 0.28 °C, así que cuenta.
how-worked-state-text =
    <b>Estado.</b> La mediana de los tres primeros valores del perfil es 23.40 °C, densidad 997.445 kg por m³; la de los tres últimos, 9.00 °C, densidad 999.784. El aumento es 2.339 kg por m³. No hay agua pesada sobre ligera, arriba no está más fría, el aumento supera 0.1 y hay una capa de cambio brusco que cuenta: con capas.
how-worked-schmidt-text =
    <b>Estabilidad de Schmidt.</b> Como dos capas que se tocan en la termoclina, 3.75 m de agua a 23.40 °C y 5.75 m a 9.00 °C: 9.80665 × 2.339 × 3.75 × 5.75 ÷ 2 = 247 J por m². El perfil entero, sumado por rodajas finas, da 235 J por m²: el trabajo de levantar 24 kg a 1 m, en cada metro cuadrado.
how-worked-n2-text =
    <b>N² del tramo más brusco.</b> Densidades a 20.05 y 17.55 °C: 998.196 y 998.680 kg por m³. N² = 9.80665 ÷ 998.438 × 0.484 ÷ 0.5 = 0.0095 por s², y el agua movida de su sitio oscila allí en 64 s.
how-worked-rules-text =
    <b>La misma medición con otras reglas.</b>
how-worked-rules-table =
    Regla | Profundidad, m
    Termoclina: centro del tramo más brusco | 3.75
    Termoclina: densidad | 3.75
    Termoclina: punto de equilibrio | 3.8
    Termoclina: parábola | 3.9
    Termoclina: curva suave | 3.8
    Capa mezclada: 1.0 °C | 2.68
    Capa mezclada: 0.2 °C | 1.75
    Capa mezclada: 0.5 °C | 2.29
    Capa mezclada: 0.8 °C | 2.58
    Capa mezclada: 0.03 kg por m³ | 1.56
    Capa mezclada: 0.1 kg por m³ | 2.17
    Capa mezclada: 0.125 kg por m³ | 2.32
    Capa mezclada: gradiente, comienzo | 2.50
    Capa mezclada: gradiente, centro | 2.75
    Capa mezclada: gradiente de densidad | 2.00
    Capa mezclada: curvatura | 3.00
    Capa mezclada: ángulo mayor | 2.50
    Capa mezclada: palo quebrado | 2.69
    Capa mezclada: tres capas | 2.45
how-worked-chance-text =
    <b>10 000 ensayos.</b> En el 73 % de ellos el tramo más brusco es el de 3.5 a 4.0 m, en el 26 % el de debajo. La capa mezclada acaba entre 2.58 y 2.87 m en el 95 % central.
how-worked-oxygen-text =
    <b>Oxígeno.</b> El agua dulce a 23.4 °C al nivel del mar contiene 8.51 mg por litro. A 300 m la presión es de 0.965 atmósferas y contiene 8.21. Una lectura de 7.0 allí es el 85 %.
how-worked-probe-text =
    <b>Prueba de la sonda.</b> En hielo una sonda leyó tres veces 0.3 °C, y tres veces 20.1 junto a un termómetro a 20.0. Su peor error, 0.3 °C, pasa de 0.2 y no de 0.5: basta para una clase, mejor corregida. Una lectura de 17.7 pasa a (17.7 − 0.3) × 20.0 ÷ (20.1 − 0.3) = 17.58 °C.
