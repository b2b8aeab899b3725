# Words inside the profile picture. Short: each has its place beside a curve or in a narrow column.
# Where a message has several lines, the picture sets it in those lines; it breaks them anew only where one is too long.
# $depth, $low, $high, $drop, $thickness, $rise: numbers, written already with the reader's decimal sign.

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
picture-column-mixed =
    Mezclada
    hasta el
    fondo
picture-column-density =
    La densidad
    apenas
    cambia
picture-column-weak =
    Capas
    débiles
picture-column-cannot-tell = No se sabe
picture-column-unstable =
    Aún sin capas
    hay agua más
    fría encima
picture-column-too-few =
    Muy pocas
    lecturas
picture-column-under-ice =
    Fría, bajo
    el hielo
picture-column-densest =
    Cerca de 4{"\u00A0"}°C,
    más densa
picture-column-warm-today = Cálida hoy
picture-column-even-water =
    Agua
    uniforme
picture-column-warm-layer-today =
    Capa cálida
    de hoy

# The cover
picture-covered-until-check =
    tapado hasta
    que lo
    compruebes
picture-covered-until-have-it =
    tapado hasta
    que lo
    tengas

# Key
picture-going-down = al bajar
picture-coming-up = al subir
picture-mean-of-two = media de las dos
picture-reading = lectura

# Words on the found lines, longest form first
picture-thermocline-at = termoclina { $depth }{"\u00A0"}m
picture-thermocline = termoclina
picture-warms-fastest-at = se calienta más { $depth }{"\u00A0"}m
picture-warms-fastest = se calienta más
picture-warm-layer-today-at = capa cálida de hoy { $depth }{"\u00A0"}m
picture-warm-layer-today = capa cálida de hoy
picture-depth-value = { $depth }{"\u00A0"}m
picture-could-be = podría ser { $low } a { $high }{"\u00A0"}m
picture-could-be-short = { $low } a { $high }{"\u00A0"}m
picture-anywhere = en cualquier punto de { $low } a { $high }{"\u00A0"}m
picture-mixed-to = mezclada hasta { $depth }{"\u00A0"}m

# Another rule's line
picture-rule-steepest-middle = centro del tramo más brusco: { $depth }{"\u00A0"}m
picture-rule-density-step = la densidad cambia más: { $depth }{"\u00A0"}m
picture-rule-temp-drop = { $drop }{"\u00A0"}°C más fría: { $depth }{"\u00A0"}m
picture-rule-density-rise = { $rise }{"\u00A0"}kg por m³ más densa: { $depth }{"\u00A0"}m
picture-rule-first-steep-top = comienzo del primer tramo brusco: { $depth }{"\u00A0"}m
picture-rule-first-steep-middle = centro del primer tramo brusco: { $depth }{"\u00A0"}m

# The legs of a step's triangle
picture-step-drop = { $drop }{"\u00A0"}°C
picture-step-thickness = { $thickness }{"\u00A0"}m

# In the plot and the strip
picture-last-reading = última lectura
picture-left-out = una lectura apartada
picture-colder-than-below = más fría que abajo
picture-one-per-metre =
    línea a trazos:
    1{"\u00A0"}°C por metro
picture-empty =
    Aquí aparecerán tus lecturas,
    cada una a su profundidad.
