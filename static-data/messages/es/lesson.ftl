# La lección de quien enseña. Nombres de las preguntas, como los muestran las listas.
lesson-kind-1 = Leer una temperatura en la imagen
lesson-kind-2 = Encontrar la profundidad de una temperatura
lesson-kind-3 = Cuál de tres tramos cambia más deprisa
lesson-kind-4 = Cuánto más fría de una marca a otra
lesson-kind-5 = Cuántos °C en cada metro
lesson-kind-6 = Entre qué marcas cambia más deprisa
lesson-kind-7 = A qué profundidad está la termoclina
lesson-kind-8 = Con qué seguridad se conoce esa profundidad
lesson-kind-9 = Dónde acaba la capa mezclada, partiendo el tramo
lesson-kind-11 = Comienzo y fin de la capa de cambio brusco
lesson-kind-12 = Qué grosor tiene cada capa
lesson-kind-13 = Cuánto coinciden al bajar y al subir
lesson-kind-14 = En qué sentido se leyó más cálida, y qué sugiere
lesson-kind-15 = Qué lectura repetir
lesson-kind-16 = El mismo cambio en °F y pies
lesson-kind-17 = Cuál de dos aguas se hunde
lesson-kind-18 = Dónde 1 °C impide más la mezcla
lesson-kind-19 = Cuánto debe enfriarse el lago para mezclarse
lesson-kind-20 = La misma agua dentro de un mes
lesson-kind-21 = La misma agua tras una noche de viento
lesson-kind-22 = Dónde hay poco oxígeno y por qué
lesson-kind-23 = Si dos grupos se contradicen de verdad
lesson-kind-24 = Qué lo explica mejor cuando dos grupos difieren
lesson-kind-25 = Qué habrían dicho lecturas cada dos metros
lesson-kind-26 = Qué cambio daría más seguridad
lesson-kind-27 = Cuándo esta respuesta no diría nada
lesson-kind-29 = Llenar tres barras de °C por metro
# Preguntas que trae por sí sola el agua uniforme, la que se enfría o una capa de hoy.
lesson-kind-101 = Agua uniforme: máxima menos mínima
lesson-kind-102 = Agua uniforme: cuánto debe medir una diferencia
lesson-kind-103 = Agua uniforme: si algún tramo es mayor
lesson-kind-104 = Agua uniforme: tres hechos que lo muestran
lesson-kind-105 = Agua más pesada arriba: qué pareja
lesson-kind-106 = Agua uniforme: sol para calentar el metro de arriba
lesson-kind-107 = Agua más pesada arriba: error o enfriamiento
lesson-kind-108 = Una capa de hoy: si estará mañana
lesson-kind-unknown = Tipo de pregunta { $kind }, que esta página no conoce
lesson-own = Propia: { $ask }
lesson-own-new = Tu propia pregunta, aún vacía
lesson-own-lacks-ask = Escribe la pregunta.
lesson-own-lacks-depth = Da su profundidad en metros.
lesson-own-lacks-depths = Da dos profundidades distintas en metros.
lesson-own-lacks-temp = Da su temperatura en °C.
lesson-plan-before = Páginas y cuadernos abiertos, grupos con nombre
lesson-plan-marks = Marcas en Perfil, antes de comprobar nada
lesson-plan-questions = Las preguntas
lesson-plan-report = Informe escrito y entregado
lesson-plan-wall = Todos los grupos, proyectados
lesson-plan-sum = En total unos { $minutes } minutos, como suelen tardar las clases; nadie lo ha medido. Se puede cortar tras cualquier parte: lo hecho se conserva.
lesson-sum =
    { $count ->
        [one] Una pregunta
       *[other] { $count } preguntas
    }, { $points } puntos, unos { $minutes } minutos.
lesson-open-steps = °C que pierde por metro
lesson-open-thermocline = la termoclina
lesson-open-mixed = el fin de la capa mezclada
lesson-open-deep = la capa de cambio brusco y la profunda
lesson-open-curve = la curva (si no: antes se colocan tres lecturas a mano)
lesson-rule-reference = Capa mezclada: se mide desde una profundidad de
lesson-rule-drop = Capa mezclada: acaba donde el agua está más fría en
lesson-rule-steep = Capa de cambio brusco: al menos
lesson-unit-m = m
lesson-unit-c = °C
lesson-unit-c-per-m = °C por metro
lesson-open-newer = Esta lección se hizo con una página más nueva (versión { $version }). Se usa lo que esta página conoce; lo demás queda en el archivo.
lesson-open-unknown =
    { $count ->
        [one] Tiene una pregunta que esta página no conoce. No se hace, y queda en el archivo.
       *[other] Tiene { $count } preguntas que esta página no conoce. No se hacen, y quedan en el archivo.
    }
lesson-open-part = Una parte de esta lección no se pudo leer. Se usan sus preguntas y reglas; lo demás queda en el archivo.
# El archivo de una lección que alguien abrió.
page-lesson-title = Una lección de tu clase
page-lesson-lead = <b>{ $title }</b>
page-lesson-lead-untitled = El archivo <b>{ $name }</b> es una lección.
page-lesson-take = Trabajar con esta lección
page-lesson-leave = Dejarla
page-lesson-foot = Lo que has contestado y marcado se queda.
