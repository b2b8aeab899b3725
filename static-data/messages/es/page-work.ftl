### Words of Profile, Questions and the picture that do not come from the calculation.

## The picture

page-picture-name-log = Las lecturas a lo largo del agua: la temperatura arriba, la profundidad hacia abajo
page-picture-name-profile = Perfil: la temperatura arriba, la profundidad hacia abajo, tus marcas a la izquierda
page-picture-name-questions = Perfil junto a la pregunta: la temperatura arriba, la profundidad hacia abajo
page-picture-walk = Lecturas, de la superficie hacia abajo
page-picture-no-reading = ninguna lectura elegida; las flechas las recorren
# The word on a grip that is not placed yet.
page-picture-grip-mixed = mezclada
page-picture-grip-thermocline = termoclina
page-picture-grip-deep = profunda
page-picture-depth = { $depth } m
page-picture-save = Guardar la imagen

## Readings as a table

page-readings-title = Lecturas
page-readings-depth = Prof., m
page-readings-mark = Marca, m
page-readings-down = Al bajar, °C
page-readings-up = Al subir, °C
page-readings-mean = Media, °C
page-readings-per-metre = °C por metro
page-readings-oxygen = O2, mg/L
page-readings-per-cent = O2, %
page-readings-covered = °C por metro es una columna más aquí después de comprobar.
# The profile as a sound; while it plays the same button stops it.
page-readings-hear = Oírlo
page-readings-hear-stop = Parar
# A page with thick lines and braille numbers.
page-readings-touch = Guardar una hoja para tocar
page-touch-head = Temperatura y profundidad, en relieve
page-touch-temperature = Temperatura, °C

## Profile

page-profile-title = ¿Dónde están las capas?
page-profile-lead-unset = Primero tú. Lleva cada marca a la profundidad donde ves que cambia una capa: arrástrala, usa las flechas o escribe.
page-profile-lead = Primero tú. Mueve las tres marcas a donde ves que cambian las capas, o escribe una profundidad.
page-profile-your-mark = Tu marca
page-profile-depth = Profundidad
page-profile-give = Más o menos
page-profile-refused = no está en mi agua
page-profile-mark-depth = { $mark }, profundidad en metros
page-profile-mark-give = { $mark }, más o menos, en metros
page-profile-mark-refused = { $mark }: no está en mi agua
page-profile-covered = Las columnas tapadas se abren al comprobar. Después puedes volver a mover tus marcas; las primeras quedan registradas.
page-profile-again = Tus primeras marcas quedan registradas. Estas quedan a su lado.
page-profile-walk = En la imagen, las flechas recorren las lecturas.
page-profile-to-table = Lecturas en una tabla
page-profile-to-marks = Volver a mis marcas
page-profile-to-found = Volver a lo encontrado
page-profile-to-questions = Ir a las preguntas
page-profile-to-rules = Otras reglas
page-profile-to-log = Ir a las lecturas
page-profile-rules-lead = Las reglas publicadas trazan estas líneas de formas distintas. Todas tienen razón según sus propias palabras, así que una profundidad necesita su regla.
page-profile-rules-ticks = La fila en la que estás dibuja su línea en la imagen; las demás son las rayas cortas a su derecha.
page-profile-own-rule = { $rule }, la regla de tu clase
page-profile-rule-none = no hay

## Questions

page-questions-title = Preguntas sobre tu agua
page-questions-rail = Preguntas
page-questions-count = Pregunta { $number } de { $of }
page-questions-mark = Pregunta { $number }
page-questions-mark-done = Pregunta { $number }, respondida
page-questions-reason = Cómo lo sé
page-questions-to-question = Volver a la pregunta
