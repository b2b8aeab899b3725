# Preguntas propias de quien enseña. La pregunta y la pista son sus palabras.
ask-own = { $ask }
ask-own-label = Es
ask-own-name = tu respuesta
ask-own-yes = <mine>{ $yours }</mine> es correcto: es lo que dan tus lecturas.
ask-own-almost = <mine>{ $yours }</mine> se acerca. Un paso se desvía un poco: lee los números otra vez.
ask-own-no = <mine>{ $yours }</mine> no es lo que dan tus lecturas. Empieza por la imagen o la tabla: ¿qué profundidades nombra la pregunta?
ask-own-fits = Cualquier valor de { $low } a { $high } encaja con tus lecturas.
ask-own-hint = La respuesta está en tus propias lecturas. Busca en la imagen o en la tabla las profundidades de la pregunta.
ask-own-do-temp-at = Baja hasta la profundidad, ve de lado hasta la línea y sube recto hasta la temperatura.
ask-own-do-apart = Busca las dos profundidades, lee las dos temperaturas y resta la menor de la mayor.
ask-own-do-per-metre = Resta las dos temperaturas y divide entre los metros que hay entre las profundidades.
ask-own-do-depth-of = Busca la temperatura arriba, baja recto hasta la línea y ve de lado hasta la profundidad.
ask-own-do-warmest = Busca el número más alto de todas tus lecturas.
ask-own-do-coldest = Busca el número más bajo de todas tus lecturas.
ask-own-do-warmest-coldest = Busca la más alta y la más baja de tus lecturas y réstalas.
ask-own-whole = de la más cálida a la más fría
ask-own-own-words = Con tus palabras: ¿de qué parte de tus lecturas sale este número?
ask-own-dropped-unfinished = Una pregunta propia de tu clase no está terminada, así que no se hace.
ask-own-dropped-depth = Una pregunta propia de tu clase trata de { $depth } m. Tus lecturas acaban a { $last } m, así que no se hace.
ask-own-dropped-marks = Una pregunta propia de tu clase necesita una lectura a { $top } m y otra a { $bottom } m. No están las dos, así que no se hace.
ask-own-dropped-never = Una pregunta propia de tu clase pregunta dónde está tu agua a { $temp } °C. No lo está en ninguna parte, así que no se hace.
ask-own-dropped-often = Una pregunta propia de tu clase pregunta dónde está tu agua a { $temp } °C. Lo está en más de un sitio, así que no se hace.
# The teacher's words to the class.
ask-lesson-note = { $note }
