# Las palabras de la propia página: barra, menús, Registro, archivos, almacenamiento, ayuda, problemas.

## Bar
page-bar-screens = Pantallas
page-bar-log = Registro
page-bar-profile = Perfil
page-bar-questions = Preguntas
page-bar-report = Informe
page-bar-nothing = Nada abierto todavía
page-bar-group = grupo { $group }
page-bar-kept = guardado en este equipo, { $time }
page-bar-not-kept = no se guarda en este equipo
page-bar-view = Ver
page-bar-help = Ayuda

## Notebooks
page-notebooks-title = Cuadernos en este equipo
page-notebooks-none = Aún no hay ninguno. Se crea con la primera lectura.
page-notebooks-here = abierto aquí
page-notebooks-open-one = Abrir
page-notebooks-open-label = Abrir { $code }
page-notebooks-changed = último cambio { $time }
page-notebooks-save = Guardar en un archivo
page-notebooks-save-about = Para seguir en cualquier equipo.
page-notebooks-saved = Guardado como { $name }, donde tu navegador deja las descargas.
page-notebooks-copy = ¿No está el archivo? Copiarlo como texto
page-notebooks-open = Abrir un archivo
page-notebooks-open-about = Añade un cuaderno a esta lista.
page-notebooks-new = Grupo nuevo
page-notebooks-new-about = Cierra { $code } y empieza un cuaderno vacío. Solo queda a la vista su código.
page-notebooks-erase = Borrar { $code } …
page-notebooks-erase-title = ¿Borrar { $code } de este equipo?
page-notebooks-erase-text = Sus lecturas y respuestas desaparecen y nada las recupera. Un archivo guardado se queda donde lo pusiste.
page-notebooks-erase-no = Conservarlo
page-notebooks-erase-yes = Borrarlo
page-notebooks-open-title = ¿Abrir { $code }?
page-notebooks-open-text = Su grupo lo cerró. Ábrelo si es el tuyo.
page-notebooks-open-no = Dejarlo cerrado
page-notebooks-open-yes = Abrirlo
page-copied = Copiado. Puedes pegarlo en cualquier texto y, más tarde, de nuevo en esta página.
page-not-copied = Este navegador no deja copiar a la página.

## View
page-view-theme = Tema
page-view-day = Día
page-view-night = Noche
page-view-sunlight = Sol
page-view-projector = Proyector
page-view-language = Idioma
page-view-both = mostrar también el otro idioma
page-view-size = Tamaño del texto
page-view-smaller = Más pequeño
page-view-larger = Más grande

## Log: nothing yet
page-log-empty-title = Encuentra las capas de tu lago
page-log-empty-lead = Layercast convierte las temperaturas que mediste al bajar y al subir la sonda en una imagen de las capas del lago. Tú marcas dónde las ves; luego muestra qué encuentran las reglas publicadas y con cuánta seguridad.
page-log-type = Escribir lecturas
page-log-type-about = Empieza en la primera casilla. Intro pasa a la marca siguiente.
page-log-paste = Pegar una tabla
page-log-paste-about = Cópiala en tu hoja de cálculo y pulsa Ctrl V en cualquier parte de esta página.
page-log-open = Abrir un archivo
page-log-open-about = Una tabla o un cuaderno guardado. También puedes soltarlo aquí.
page-log-example = Ver un ejemplo
page-log-example-about = Estanques inventados:
page-log-example-summer = con capas, en verano
page-log-example-autumn = mezclado, en otoño
page-log-example-ice = bajo el hielo
page-log-group-open = Basta una letra. El código de este cuaderno empieza con ella.
page-log-group-code = El código de este cuaderno es <b>{ $code }</b>.
page-log-empty-foot = Todo se queda en este equipo. No se envía nada a ninguna parte.

## Log: table
page-log-table = Lecturas
page-log-skip = Saltar la tabla
page-log-head-depth = Prof.,
page-log-head-mark = Marca, prof.,
page-log-head-down = Al bajar,
page-log-head-one = Temperatura,
page-log-head-up = Al subir,
page-log-head-apart = Difer.,
page-log-cell-depth = Profundidad de la fila, { $depth } metros
page-log-cell-mark = Marca { $depth } metros, corregida { $corrected } metros
page-log-cell-down = { $depth } metros, al bajar
page-log-cell-up = { $depth } metros, al subir
page-log-cell-one = { $depth } metros, temperatura
page-log-cell-out = { $cell }, apartada

## Log: panel
page-log-reopen = ¿No es así?
page-log-type-it = Escribirla
page-log-settled = Decidido: { $place }, { $what }.
page-log-water = Agua
page-log-group = Grupo
page-log-bed = Fondo a, m
page-log-bed-about = La profundidad a la que la cuerda quedó floja.
page-log-part = Filas de la lista
page-log-part-rows = de { $from } a { $to }
page-log-profile = Ver el perfil
page-log-add = Añadir una fila
page-log-foot = No se borra nada. Lo que diste queda registrado.
page-log-foot-doubts = No se borra nada. Una casilla con interrogación queda apartada hasta que decidas, y lo que diste se conserva.

## Log: puertas del panel
page-log-to-corrections = Correcciones
page-log-to-companions = Oxígeno y Secchi
page-log-door-done = Volver a las lecturas
page-corrections-title = Correcciones
page-corrections-lead = Tus lecturas quedan como las tomaste. Lo que pongas aquí se calcula aparte, y puedes volver a quitarlo.
page-corrections-add = Añadir una:
page-corrections-remove = Quitarla: { $what }
page-companions-title = Oxígeno y Secchi
page-companions-lead = Solo si los mediste. Baja el disco de Secchi hasta que desaparezca y súbelo hasta que vuelvas a verlo.
page-companions-gone = Desaparece a, m
page-companions-back = Reaparece a, m
page-companions-altitude = Lago sobre el mar, m
page-companions-depth = Marca, m
page-companions-oxygen = Oxígeno, mg/L
page-companions-share = % de lo que admite el agua
page-companions-cell = { $depth } metros, oxígeno

## Log: the guess before the first reading
page-log-to-guess = Primero, adivina
page-log-guess-about = ¿A qué temperatura en cada profundidad? Luego verás tu suposición junto a tu perfil.
page-log-to-by-hand = Tres a mano
page-by-hand-title = Tres a mano
page-by-hand-lead = Pon estas tres lecturas en su sitio: elige una y toca la imagen, o muévela con las teclas de flecha. Donde leíste dos veces, es la media. Después se dibuja el resto.
page-by-hand-all = Las tres están en su sitio. La curva pasa por tus lecturas; donde leíste dos veces, por su media.
page-by-hand-why = ¿Por qué el 0 está arriba?
page-by-hand-because = La imagen está como el agua: la superficie arriba, y tú bajas con el cable.
page-by-hand-check = Comprobar
page-by-hand-draw = Dibujar el resto
page-by-hand-waits = Podrás pulsar «Comprobar» cuando las tres estén en la imagen.
page-by-hand-keys = { $reading }: las flechas la mueven medio metro o medio grado
page-guess-title = Primero, adivina
page-guess-lead = ¿A qué temperatura estará tu agua arriba, en el fondo y entre medias? Escribe cinco puntos o toca la imagen donde estén.
page-guess-depth = Profundidad, m
page-guess-temp = Temperatura, °C
page-guess-depth-of = Punto { $number }: profundidad, metros
page-guess-temp-of = Punto { $number }: temperatura, °C
page-guess-unread = Una casilla de color no tiene un número que se pueda leer.
page-guess-about = Tu suposición queda fijada con la primera lectura. No da puntos; la verás junto a tu perfil en el informe.
page-guess-done = Pasar a las lecturas

## Log: another group's cast
page-log-to-other = Comparar con otro grupo
page-log-other-title = La medición de otro grupo
page-log-other-lead = Dos preguntas comparan tu medición con la de otro grupo. Abre lo que ese grupo guardó o entregó, o pega sus líneas. Tus lecturas quedan como están.
page-log-other-open = Abrir su archivo
page-log-other-paste = Sus líneas, pegadas
page-log-other-take = Usar las líneas pegadas
page-log-other-remove = Quitarla
page-log-other-no = Ahí no hay otra medición. La tienen un cuaderno, una entrega, sus líneas o un informe guardado.

## Log: pasting
page-paste-title = Pegar una tabla
page-paste-how = Copia las casillas en tu hoja de cálculo. Luego pulsa Ctrl V aquí, o mantén pulsado el cuadro y elige Pegar.
page-paste-field = Tabla
page-paste-use = Leerla
page-paste-close = Cerrar
page-paste-foot = También puedes escribir aquí una tabla: en cada línea una profundidad y sus temperaturas, con un espacio entre ellas.
page-paste-name = El texto que pegaste

## Log: rows as they came
page-asis-title = Lo que hemos leído
page-asis-rows = Las filas tal como llegaron
page-asis-line = Línea
page-asis-role-label = Qué es la columna { $column }
page-asis-unit-label = Unidad de la columna { $column }
page-asis-role-open = ¿{ $role }?
page-asis-role-depth = Profundidad
page-asis-role-down = Al bajar
page-asis-role-up = Al subir
page-asis-role-one = Una temperatura
page-asis-role-leg = Bajar o subir
page-asis-role-oxygen = Oxígeno, mg/L
page-asis-role-secchi = Disco de Secchi
page-asis-role-not-used = No se usa
page-asis-unit-open = ¿qué unidad?
page-asis-unit-m = metros
page-asis-unit-cm = cm
page-asis-unit-ft = pies
page-asis-unit-c = °C
page-asis-unit-f = °F
page-pending-foot = No se borra nada.

## Files
page-newer-title = Guardado con un Layercast más nuevo
page-newer-lead = El archivo <b>{ $name }</b> se guardó con una página más nueva (versión { $version }). Esta página no conoce todo lo que hay en él.
page-newer-ask = ¿Tomar solo las lecturas?
page-newer-text = Todas las versiones las conocen. Las respuestas y las marcas se quedan en el archivo, que no se toca.
page-newer-leave = Dejar el archivo como está
page-newer-take = Tomar las lecturas
page-newer-else = Para seguir donde estabas, abre el archivo con la página con que se guardó, o pide la más nueva a tu profe.
page-newer-foot = Los archivos más antiguos siempre se abren.
page-no-title = Este archivo no es una tabla
page-no-large = Ocupa más de 20 MB, más de lo que necesita una tabla de lecturas. No se tomó nada de él.
page-no-open = Abrir otro archivo
page-no-close = Cerrar
page-no-foot = Lo que había en este cuaderno sigue intacto.
page-drop = Suelta para abrir el archivo
page-busy-reading = Leyendo el archivo.
page-busy-table = Ordenando la tabla.
page-busy-change = Anotando lo que hiciste.
page-busy-opening = Abriendo el cuaderno.
page-busy-calculating = Calculando las capas.
page-busy-drawing = Dibujando la imagen.
page-busy-step = Paso { $step } de { $of }.
page-busy-stop = Detener
page-busy-stop-about = Lo que había antes queda como está.
page-busy-stopped = Detenido. Lo que había antes sigue como estaba.

## Trouble
page-trouble-nowhere = Este navegador no guarda nada
page-trouble-nowhere-text = Tu trabajo solo dura mientras esta página esté abierta. Guárdalo en un archivo antes de cerrarla.
page-trouble-erased = Este navegador tiró lo que guardaba
page-trouble-erased-text = Lo que ves aquí vuelve a estar guardado. Quizá ya no estén otros cuadernos de este equipo. Guarda este en un archivo.
page-trouble-stopped = El cálculo se detuvo. Tus lecturas están a salvo.
page-trouble-stopped-text = Se guardan aparte. El cálculo empezó de nuevo y las ha leído otra vez; puedes seguir.
page-trouble-copy = Copiar lo ocurrido
page-trouble-close = Cerrar
page-other-title = Abierto en otra pestaña
page-other-lead = Alguien trabaja con este cuaderno en otra pestaña de este navegador. Aquí puedes mirar, pero no cambiar nada, para que una no sobrescriba a la otra.
page-other-ask = ¿Trabajar aquí?
page-other-text = La otra pestaña deja entonces de escribir. Lo escrito allí se conserva, hasta la última tecla.
page-other-look = Solo mirar
page-other-work = Trabajar aquí
page-other-foot = ¿Ya cerraste la otra pestaña? Basta con «Trabajar aquí».

## Help
page-help-title = Qué hace esta página
page-help-what = Le das las temperaturas que tu grupo leyó en las marcas del cable, al bajar y al subir. Las dibuja, cada una a su profundidad. Tú marcas dónde ves las capas. Luego muestra qué encuentran en la misma agua las reglas publicadas y con cuánta seguridad, y te hace preguntas sobre tus propias lecturas.
page-help-keys-title = Con el teclado
page-help-keys-table = En la tabla: las flechas, o Intro para la marca siguiente. En la última marca, Intro pasa al final de «al subir» y sigue hacia arriba. Esc sale de la tabla.
page-help-keys-paste = Ctrl V pega una tabla en cualquier parte de Registro.
page-help-keys-picture = En la imagen: las flechas arriba y abajo recorren las lecturas, Inicio y Fin van a la primera y a la última, Esc sale.
page-help-keys-marks = En una marca: las flechas arriba y abajo la mueven 0,1 m; con Mayús, de una marca del cable a la siguiente. O escribe su profundidad.
page-help-keys-close = Tab avanza, Mayús Tab retrocede, Esc cierra un menú.
page-help-rules-title = Las reglas, en breve
page-help-rules-thermocline = Termoclina: el centro del tramo que pierde más °C por metro. Su margen incluye los tramos que tus lecturas no distinguen del más brusco.
page-help-rules-metalimnion = Capa de cambio brusco: la serie sin cortes de tramos que pierden al menos 1 °C por metro. Debajo está la capa profunda.
page-help-rules-mixed = Capa mezclada: hasta la primera profundidad 1,0 °C más fría que a 0,5 m.
page-help-rules-none = «No hay tal capa» también es una respuesta, y «estas lecturas no bastan» también.
page-help-safe-title = Antes de medir
page-help-safe-first = Primero van las normas de tu escuela y del lugar, y la palabra de las personas preparadas para ello. Estas líneas no las sustituyen.
page-help-safe-boat = Desde una barca: chaleco salvavidas para todos, abrochado, y una persona adulta que conozca la barca y el agua. Siéntate mientras baja el cable.
page-help-safe-dock = Desde un muelle: lejos del borde, nunca a solas, con algo que flote a mano para lanzarlo. Chaleco donde lo digan tus normas.
page-help-safe-ice = Sobre el hielo: solo si personas cualificadas lo han comprobado ese mismo día y dicen que puedes. El grosor por sí solo no lo hace seguro.
page-help-safe-cold = El agua fría quita el aliento y la fuerza en minutos, también en un día cálido. Si alguien cae: pide ayuda, lánzale algo, no te metas detrás.
page-help-safe-lightning = Truenos o rayos: fuera del agua y lejos de ella enseguida. Tus normas dicen cuándo se puede volver.
page-help-data-title = Dónde se guarda tu trabajo
page-help-data-where = En este navegador, en este equipo, bajo un código. No se pide el nombre de nadie. No se envía nada a ninguna parte: la página está hecha para no poder conectarse a nada. Los equipos de algunas escuelas lo olvidan todo al cerrar la sesión, así que guarda tu cuaderno en un archivo antes de irte.
page-help-data-erase = Para borrar un cuaderno: pulsa arriba el nombre o el código y luego Borrar. Si se borran los datos de este navegador, se borran todos.
page-help-about = Layercast es libre, bajo MIT o Apache-2.0.
