# Words inside the profile picture. Short: each has its place beside a curve or in a narrow column.
# Ids that end in -1, -2, -3 are the lines of one text; a line that a language does not need is {""}.
# $depth, $from, $to, $temp: numbers, written already with the reader's decimal sign. $rule: the name of a rule.

# Heads
picture-depth = Prof., m
picture-temperature = Temperatura, °C
picture-lost = °C que pierde por metro
picture-gained = °C que gana por metro
picture-per-metre = °C por metro
picture-per-metre-short = °C por m
picture-yours = lo tuyo
picture-by-the-rules = según las reglas
picture-rules = reglas
picture-mean = Media

# The student's column
picture-mixed = mezclada
picture-steep = brusca
picture-deep = profunda
picture-no-layers = sin capas

# The rules' column: a name and its gloss
picture-epilimnion = Epilimnion
picture-epilimnion-gloss = cálida, mezclada
picture-metalimnion = Metalimnion
picture-metalimnion-gloss = cambio brusco
picture-hypolimnion = Hipolimnion
picture-hypolimnion-gloss = fría, profunda
picture-goes-on = brusca, y sigue

# The rules' column, pictures without three layers
picture-mixed-all-1 = Mezclada
picture-mixed-all-2 = hasta el
picture-mixed-all-3 = fondo
picture-by-density-1 = La densidad
picture-by-density-2 = apenas
picture-by-density-3 = cambia
picture-weak-1 = Capas
picture-weak-2 = débiles
picture-cannot-tell = No se sabe
picture-unstable-1 = Aún sin capas
picture-unstable-2 = hay agua más
picture-unstable-3 = pesada encima
picture-under-ice-1 = Más fría
picture-under-ice-2 = arriba
picture-densest-1 = Cerca de 4{"\u00A0"}°C,
picture-densest-2 = más densa
picture-denser-1 = Más cálida,
picture-denser-2 = más densa
picture-warm-only = Cálida hoy
picture-even-1 = Agua
picture-even-2 = uniforme
picture-warm-today-1 = Capa cálida
picture-warm-today-2 = de hoy

# The cover
picture-covered-check-1 = tapado hasta
picture-covered-check-2 = que lo
picture-covered-check-3 = compruebes
picture-covered-have-1 = tapado hasta
picture-covered-have-2 = que lo
picture-covered-have-3 = tengas

# Key
picture-going-down = al bajar
picture-coming-up = al subir
picture-mean-of-two = media de las dos
picture-otherwise = leído de otro modo
picture-reading = lectura

# Words on the found lines: with the depth, the name alone, the depth alone
picture-thermocline = termoclina { $depth }{"\u00A0"}m
picture-thermocline-name = termoclina
picture-warms-fastest = se calienta más { $depth }{"\u00A0"}m
picture-warms-fastest-name = se calienta más
picture-today = capa cálida de hoy { $depth }{"\u00A0"}m
picture-warm-layer-today = capa cálida de hoy
picture-metres = { $depth }{"\u00A0"}m
picture-could-be = podría ser { $from } a { $to }{"\u00A0"}m
picture-anywhere = en cualquier punto de { $from } a { $to }{"\u00A0"}m
picture-range = { $from } a { $to }{"\u00A0"}m
picture-mixed-to = mezclada hasta { $depth }{"\u00A0"}m
picture-rule = { $rule }: { $depth }{"\u00A0"}m

# In the plot and the strip
picture-degrees = { $temp }{"\u00A0"}°C
picture-last-reading = última lectura
picture-one-left-out = una lectura apartada
picture-several-left-out = lecturas apartadas
picture-colder-than-below = más pesada que abajo
picture-one-per-metre-1 = línea a trazos:
picture-one-per-metre-2 = 1{"\u00A0"}°C por metro
picture-empty-1 = Aquí aparecerán tus lecturas,
picture-empty-2 = cada una a su profundidad.
