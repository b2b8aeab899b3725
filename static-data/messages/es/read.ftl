# Lo que dice el lector de tablas, y por qué duda de una casilla.

## Lo que se entendió

read-understood =
    { $rows ->
        [one] Leída una fila
       *[other] Leídas { $rows } filas
    }: profundidad { $depth }, { $temps }.
read-in-m = en metros
read-in-cm = en centímetros
read-in-ft = en pies
read-in-c = en °C
read-in-f = en °F
read-in-open = sin unidad escrita
read-part-both = al bajar y al subir { $in }
read-part-turn = una temperatura { $in }, al bajar y luego al subir
read-part-down = al bajar { $in }
read-part-up = al subir { $in }
read-part-one = una temperatura { $in }
read-part-way-column = una temperatura { $in }, cada fila con su sentido
read-part-blocks = temperaturas { $in }, al bajar y al subir una serie debajo de otra
read-gives =
    Resultado: { $marks ->
        [one] una marca a { $from } m
       *[other] { $marks } marcas de { $from } a { $to } m
    }, { $readings ->
        [one] una lectura
       *[other] { $readings } lecturas
    }.
read-gives-if =
    Con «{ $answer }» el resultado es: { $marks ->
        [one] una marca a { $from } m
       *[other] { $marks } marcas de { $from } a { $to } m
    }, { $readings ->
        [one] una lectura
       *[other] { $readings } lecturas
    }.

## Lo que no es una tabla

read-error-too-large = Son { $size } MB de datos, y leemos hasta { $limit } MB. Copia las casillas de una sola medición y pégalas aquí.
read-error-empty = No hay nada dentro: ni palabras ni números.
read-error-picture = Empieza como una imagen, no como un texto: sus primeros caracteres son { $signs }. No se ha tomado nada de ella.
read-error-spreadsheet = Es un archivo de hoja de cálculo, no texto simple. No se ha tomado nada de él.
read-error-document = Es un documento de texto o una presentación, no una tabla simple. No se ha tomado nada de él.
read-error-pdf = Es un PDF, una página impresa y no una tabla. No se ha tomado nada de él.
read-error-archive = Es una carpeta comprimida (zip o parecida), no una tabla. No se ha tomado nada de ella.
read-error-media = Es sonido o vídeo, no una tabla. No se ha tomado nada de él.
read-error-notebook = Es un cuaderno guardado desde esta página, no una tabla.
read-error-data = Son datos escritos para programas (JSON o XML), no una tabla. No se ha tomado nada de ellos.
read-error-binary = No es texto: sus caracteres no se pueden leer. No se ha tomado nada de él.
read-error-web-page = Es una página web, y no hay en ella ninguna tabla de lecturas. No se ha tomado nada de ella ni se ha ejecutado nada.
read-error-no-table = No hay ninguna fila con una profundidad y una temperatura. La línea { $line } dice «{ $written }».
read-error-one-column = Solo una columna tiene números. Una medición necesita dos: la profundidad y la temperatura.
read-error-no-depth = Ninguna columna parece una profundidad.
read-error-no-temp = Ninguna columna parece una temperatura.
read-error-too-many-columns = Esta tabla tiene { $columns } columnas, y leemos hasta { $limit }.
read-error-commas = La línea { $line } dice «{ $written }». Sus comas pueden ser signos decimales o separar casillas, y nada dice cuáles.
read-error-unit = La columna { $column } se titula «{ $written }». Leemos profundidades en metros, centímetros o pies, y temperaturas en °C o °F.

## Qué hacer

read-do-copy = Ábrelo en el programa del que viene, copia las casillas y pégalas aquí. O guárdalo allí como CSV.
read-do-type = Escribe las lecturas. O copia las casillas de la tabla de la que salió y pégalas aquí.
read-do-unpack = Descomprímela primero y abre después la tabla que contiene.
read-do-open-notebook = Ábrelo desde la lista de cuadernos, bajo el nombre del agua.
read-do-columns = Di en los encabezados qué es cada columna. O dala otra vez con una columna de profundidad y otra de temperatura.
read-do-few-columns = Copia solo las columnas de profundidad y temperatura y pégalas aquí.
read-do-semicolons = Copia las casillas en la hoja de cálculo y pégalas aquí: así las comas no estorban. O guarda la tabla con punto y coma.
read-do-units = Elige la unidad en el encabezado de esa columna, o cambia los números en la hoja de cálculo.

## Lo que se dio por hecho

read-notice-commas = Hay comas entre las casillas y dentro de los números. Hemos vuelto a juntar los números: mira si están bien.
read-notice-on-its-side = La tabla está tumbada, así que la giramos. Donde decimos «línea», cuenta sus columnas.
read-notice-metres = Las profundidades no llevan unidad. Llegan a { $deepest } en pasos de { $step }, así que las leímos en metros.
read-notice-celsius = Las temperaturas no llevan unidad. Van de { $low } a { $high }, así que las leímos en °C.
read-notice-celsius-most = Las temperaturas no llevan unidad. Casi todas van de { $low } a { $high }, así que las leímos en °C.
read-notice-depth-column = Ningún encabezado nombra la profundidad. La columna { $column } crece como una profundidad, así que la tomamos.
read-notice-temp-column = Ningún encabezado nombra la temperatura. Tomamos la columna { $column }.
read-notice-by-order = Ningún encabezado dice el sentido. Tomamos la columna { $down } al bajar y la columna { $up } al subir.
read-notice-twin = Las columnas { $dropped } y { $kept } dicen lo mismo en dos unidades. Tomamos la columna { $kept }.
read-notice-quote = En la línea { $line } se abren unas comillas que no se cierran. Las leímos como un carácter cualquiera.
read-notice-minus = Las profundidades llevan un signo menos. Las contamos hacia abajo desde la superficie.
read-notice-one-way = Hay una temperatura en cada marca y no está escrito el sentido. Di «al bajar» o «al subir» si lo sabes. Nada más depende de ello.
read-notice-way-open = El sentido queda sin decidir: cada lectura cuenta por sí sola.
read-notice-turn = Las profundidades dan la vuelta en la línea { $line }. Antes leímos al bajar, desde ella al subir.
read-notice-up-first = Antes de la línea { $line } las profundidades disminuyen: leímos al subir. Desde ella crecen: al bajar.
read-notice-tangled = Las profundidades bajan y suben más de una vez, así que el sentido queda sin decidir. Si son varias mediciones, dalas una a una.

## Dónde está una casilla

read-place-down = { $depth } m, al bajar, línea { $line }
read-place-up = { $depth } m, al subir, línea { $line }
read-place-one = { $depth } m, línea { $line }
read-place-line-depth = la profundidad de la línea { $line }
read-place-line-down = al bajar, en la línea { $line }
read-place-line-up = al subir, en la línea { $line }
read-place-line-one = la temperatura de la línea { $line }
read-at-line-depth = Línea { $line }, profundidad
read-at-line-down = Línea { $line }, al bajar
read-at-line-up = Línea { $line }, al subir
read-at-line-one = Línea { $line }, temperatura
read-places-more = { $first }; { $rest }
read-places-cut = { $first } y más

## Casillas y filas

read-notice-empty =
    { $count ->
        [one] Hay una casilla vacía
       *[other] Hay { $count } casillas vacías
    }: { $places }. Escribe la lectura si la tienes.
read-notice-missing =
    { $count ->
        [one] Una casilla dice
       *[other] { $count } casillas dicen
    } que no hay lectura: «{ $written }» ({ $places }). Escribe la lectura si la tienes.
read-notice-sheet-error =
    La hoja de cálculo no pudo calcular { $count ->
        [one] una casilla
       *[other] { $count } casillas
    }: «{ $written }» ({ $places }). Escribe la lectura si la tienes.
read-notice-code =
    { $count ->
        [one] Una casilla tiene
       *[other] { $count } casillas tienen
    } «{ $written }», un número que quiere decir «sin lectura» ({ $places }). Escribe la lectura si la tienes.
read-notice-other-sign =
    { $count ->
        [one] Un número lleva
       *[other] { $count } números llevan
    } otro signo decimal que los demás: «{ $written }» ({ $places }). También lo leímos como signo decimal: mira si está bien.
read-notice-own-unit =
    { $count ->
        [one] Una casilla lleva
       *[other] { $count } casillas llevan
    } otra unidad que la columna: «{ $written }» ({ $places }). La leímos en la unidad escrita: mira si está bien.
read-notice-outside =
    { $count ->
        [one] Una casilla está
       *[other] { $count } casillas están
    } fuera de lo que tiene el agua de un lago (de { $low } a { $high } °C): «{ $written }» ({ $places }). ¿Se perdió la coma, o es otra unidad?
read-notice-no-way =
    { $count ->
        [one] Una fila no dice su sentido
       *[other] { $count } filas no dicen su sentido
    }: «{ $written }» ({ $listed ->
        [one] línea { $lines }
       *[other] líneas { $lines }
    }). Queda sin decidir.
read-notice-no-oxygen =
    { $count ->
        [one] Una casilla de oxígeno no contiene
       *[other] { $count } casillas de oxígeno no contienen
    } un número de 0 a { $most } mg/L: «{ $written }» ({ $listed ->
        [one] línea { $lines }
       *[other] líneas { $lines }
    }). Se guarda como está escrito y queda fuera.
read-notice-oxygen = La columna { $column } es oxígeno en mg/L. Acompaña a las lecturas de su fila.
read-notice-oxygen-two = Las columnas { $first } y { $second } son oxígeno en mg/L. Acompañan a las lecturas de su fila.
read-notice-oxygen-percent = La columna { $column } es oxígeno en tanto por ciento de saturación. No se usa: con mg/L se obtiene también el tanto por ciento.
read-notice-salt = La columna { $column } habla de la sal. No se usa: la densidad se calcula para agua dulce. El agua salada puede estar abajo más cálida y aun así ser la más pesada.
read-notice-secchi-one = El disco de Secchi se vio hasta { $depth } m.
read-notice-secchi-two = El disco de Secchi desapareció a { $gone } m y reapareció a { $back } m. La media es { $mean } m.
read-notice-secchi-unclear = No está claro lo que dice del disco de Secchi: «{ $written }». Escribe la profundidad en «Oxígeno y Secchi».
read-notice-totals =
    { $listed ->
        [one] La línea { $lines } es un total o una media
       *[other] Las líneas { $lines } son totales o medias
    }, no una lectura: «{ $written }». Queda fuera.
read-notice-heads-again =
    { $listed ->
        [one] La línea { $lines } repite los encabezados
       *[other] Las líneas { $lines } repiten los encabezados
    }: «{ $written }». No se cuenta.
read-notice-text-rows =
    { $listed ->
        [one] La línea { $lines } es texto
       *[other] Las líneas { $lines } son texto
    }, no una lectura: «{ $written }». No se cuenta.
read-notice-depth-twice = La profundidad { $depth } m está en las líneas { $first } y { $second }, y falta la siguiente. Se usan las dos lecturas: mira si una profundidad es un desliz.
read-notice-no-readings = Todavía no se puede leer ninguna temperatura. Resuelve las casillas con interrogación, o mira si está elegida la columna correcta.
read-notice-one-reading = Solo hay una lectura. Un perfil necesita al menos cuatro profundidades.
read-notice-one-depth = Las { $readings } lecturas están a { $depth } m. Un perfil necesita al menos cuatro profundidades: mira si la profundidad es la columna correcta.
read-notice-more-doubts =
    { $count ->
        [one] Una casilla más lleva interrogación.
       *[other] { $count } casillas más llevan interrogación.
    }

## Casillas dudosas

read-doubt = { $place }: { $why } Queda apartada hasta que decidas.
read-doubt-meant = { $place }: { $why } ¿Querías decir { $meant }? Queda apartada hasta que decidas.
doubt-letter-zero =
    Pone <cell>{ $written }</cell>. { $place ->
        [1] El primer carácter
        [2] El segundo carácter
        [3] El tercer carácter
        [4] El cuarto carácter
       *[other] El carácter número { $place }
    } es la letra { $letter }, no un cero.
doubt-letter-one =
    Pone <cell>{ $written }</cell>. { $place ->
        [1] El primer carácter
        [2] El segundo carácter
        [3] El tercer carácter
        [4] El cuarto carácter
       *[other] El carácter número { $place }
    } es «{ $letter }», no un uno.
doubt-letter =
    Pone <cell>{ $written }</cell>. { $place ->
        [1] El primer carácter
        [2] El segundo carácter
        [3] El tercer carácter
        [4] El cuarto carácter
       *[other] El carácter número { $place }
    } es la letra { $letter }, no un { $digit }.
doubt-points = Pone <cell>{ $written }</cell>. Sobra una coma o un punto decimal.
doubt-space = Pone <cell>{ $written }</cell>. Hay un espacio dentro del número.
doubt-sign = Pone <cell>{ $written }</cell>. El carácter «{ $sign }» no es parte de un número.
doubt-date = Pone <cell>{ $written }</cell>. La hoja de cálculo convirtió un número en fecha.
doubt-range = Pone <cell>{ $written }</cell>. Aquí hace falta un número, no un margen.
doubt-surface = Pone <cell>{ $written }</cell>, una palabra para la superficie. Allí la profundidad es cero.
doubt-formula = Pone <cell>{ $written }</cell>. Parece una fórmula. Se queda como texto y nunca se calcula.
doubt-text = Pone <cell>{ $written }</cell>. Eso no es un número.
doubt-no-depth = Hay una temperatura, pero no una profundidad.
doubt-above-surface = Pone <cell>{ $written }</cell>. Con el signo menos estaría por encima del agua.
doubt-too-deep = Pone <cell>{ $written }</cell>. Ningún lago es tan profundo. ¿Se perdió la coma?
doubt-out-of-order = Pone <cell>{ $written }</cell>. Antes y después están { $before } y { $after } m, y esta profundidad no encaja entre ellas.
doubt-out-of-order-last = Pone <cell>{ $written }</cell>. La profundidad anterior es { $before } m, y esta no encaja después.
doubt-out-of-order-first = Pone <cell>{ $written }</cell>. La profundidad siguiente es { $after } m, y esta no encaja antes.

## Preguntas que van antes

read-ask-commas = ¿Estas comas son signos decimales?
read-ask-commas-text = La línea { $line } dice «{ $written }». Hay comas entre todas sus cifras, y puede leerse de dos maneras.
read-way-commas-decimal = Sí: { $joined }
read-way-commas-separate = No: { $separate }
read-ask-decimal = ¿Cuánto es «{ $written }»?
read-ask-decimal-text = Está en la línea { $line }. Siempre van tres cifras detrás del signo, así que puede ser decimal o separar los millares.
read-way-number = { $value }
read-sample = la columna { $column }, con { $written }
read-ask-depth-column = ¿Qué columna es la profundidad?
read-ask-depth-column-two = Ningún encabezado la nombra, y podrían serlo dos: { $first }, y { $second }.
read-ask-depth-column-many = Ningún encabezado la nombra, y podrían serlo { $count } columnas. La primera es { $first }.
read-way-column = La columna { $column }
read-way-column-unit = La columna { $column }, { $in }
read-way-neither = Ninguna de estas
read-ask-temp-columns = ¿Qué columnas son las temperaturas?
read-ask-temp-columns-text = { $count } columnas podrían ser temperaturas, y ningún encabezado dice al bajar o al subir. Las dos primeras son { $first }, y { $second }.
read-way-down-up = La columna { $down } al bajar, la { $up } al subir
read-way-all-temps = Todas, no se sabe el sentido
read-way-only-column = Solo la columna { $column }
read-ask-depth-unit = ¿En qué unidad están las profundidades?
read-ask-depth-unit-text = No llevan unidad. Van de { $low } a { $high }, casi siempre en pasos de { $step }.
read-ask-depth-unit-one = No lleva unidad, y solo hay una profundidad: { $high }.
read-way-m = Metros: hasta { $deepest } m
read-way-cm = Centímetros: hasta { $deepest } m
read-way-ft = Pies: hasta { $deepest } m
read-ask-fahrenheit = ¿Son °F?
read-ask-fahrenheit-text = Las temperaturas no llevan unidad. Van de { $low } a { $high }. El agua de un lago casi nunca está tan caliente; si son °F, van de { $low_c } a { $high_c } °C.
read-ask-fahrenheit-written = Está escrito °C, pero van de { $low } a { $high }. El agua de un lago nunca está tan caliente; si son °F, van de { $low_c } a { $high_c } °C.
read-way-f = Sí, °F
read-way-c = No, °C
read-ask-celsius = ¿Son °C?
read-ask-celsius-text = Está escrito °F, pero van de { $low } a { $high }. Si son °F, eso sería hielo: de { $low_c } a { $high_c } °C.
read-way-yes-c = Sí, °C
read-way-no-f = No, °F
read-ask-second-series = ¿La segunda serie es al subir?
read-ask-second-series-text = En la línea { $line } las profundidades empiezan otra vez arriba, y ninguna palabra dice el sentido de la sonda.
read-way-down-then-up = Primero al bajar, luego al subir
read-way-both-down = Las dos al bajar
read-way-leave-open = Dejarlo sin decidir
