# Questions of the teacher's own. The question and the hint are the teacher's words.
ask-own = { $ask }
ask-own-label = It is
ask-own-name = your answer
ask-own-yes = <mine>{ $yours }</mine> is right: your readings give it.
ask-own-almost = <mine>{ $yours }</mine> is close. One step is a little off: read the numbers once more.
ask-own-no = <mine>{ $yours }</mine> is not what your readings give. Start from the picture or the table: which depths does the question name?
ask-own-fits = Anything from { $low } to { $high } fits your readings.
ask-own-hint = The answer is in your own readings. Find the depths of the question in the picture or in the table.
ask-own-do-temp-at = Go down to the depth, then across to the line, then straight up to the temperature.
ask-own-do-apart = Find both depths, read both temperatures, take the smaller from the larger.
ask-own-do-per-metre = Take the two temperatures apart, then divide by the metres between the depths.
ask-own-do-depth-of = Find the temperature at the top, follow it straight down to the line, then go across to the depth.
ask-own-do-warmest = Look through all your readings for the highest number.
ask-own-do-coldest = Look through all your readings for the lowest number.
ask-own-do-warmest-coldest = Find the highest and the lowest of your readings and take them apart.
ask-own-whole = from the warmest to the coldest
ask-own-own-words = In your own words: where in your readings does this number come from?
ask-own-dropped-unfinished = One of your teacher’s own questions is not finished, so it is not asked.
ask-own-dropped-depth = One of your teacher’s own questions is about { $depth } m. Your readings end at { $last } m, so it is not asked.
ask-own-dropped-marks = One of your teacher’s own questions needs a reading at { $top } m and one at { $bottom } m. They are not both there, so it is not asked.
ask-own-dropped-never = One of your teacher’s own questions asks where your water is { $temp } °C. It is so nowhere, so it is not asked.
ask-own-dropped-often = One of your teacher’s own questions asks where your water is { $temp } °C. It is so in more than one place, so it is not asked.
# The teacher's words to the class.
ask-lesson-note = { $note }
