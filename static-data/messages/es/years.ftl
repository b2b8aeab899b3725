# Años: mediciones de un mismo lugar a lo largo de días y años.

class-to-years = Años
years-about = Pon aquí mediciones del mismo lugar, de un año o de muchos: cuadernos, entregas, clases enteras. Cada una se calcula otra vez con la misma regla.
years-add = Añadir archivos
years-save = Guardar estos años en un archivo
years-day = Día
years-place = Lugar
years-thermocline = Termoclina, m
years-range = Margen
years-mixed = Mezclada hasta, m
years-heat-head = Calor
years-out = Quitar
years-beside = { $earlier } y { $later }
years-choose = Elige un día para ponerlo junto a los demás.
years-day-first = Dale su día a esta medición: entonces se puede poner junto a las demás.
years-added = { $new } nuevas, { $same } ya estaban, { $not_ours } sin medición.
years-sum =
    { $casts ->
        [one] Una medición
       *[other] { $casts } mediciones
    }, en { $days ->
        [one] un día
       *[other] { $days } días
    } de { $years ->
        [one] un año
       *[other] { $years } años
    }.
years-trend-few = No se ofrece ninguna tendencia: los años varían por azar, y menos de diez dicen poco.
years-trend-many = Diez años o más pueden mostrar una tendencia. Pregunta a alguien que trabaje con esas series; esta página no traza ninguna línea.
years-heat = { $heat } MJ/m² hasta { $to } m
years-pair-season =
    { $days ->
        [0] El mismo día del año.
        [one] Un día de diferencia dentro del año.
       *[other] { $days } días de diferencia dentro del año.
    }
years-pair-same = Termoclina: { $earlier }, después { $later }. Los márgenes se tocan, así que estas lecturas no muestran diferencia. Mostrarían una de más de { $smallest } m.
years-pair-deeper = Termoclina: { $earlier }, después { $later }. Estaba { $by } m más abajo, y los márgenes no se tocan: una diferencia que estas lecturas pueden mostrar.
years-pair-shallower = Termoclina: { $earlier }, después { $later }. Estaba { $by } m más arriba, y los márgenes no se tocan: una diferencia que estas lecturas pueden mostrar.
years-pair-one = Solo uno de los dos días tiene termoclina.
years-pair-none = Ninguno de los dos días tiene termoclina.
years-pair-warmer = Hasta { $to } m, el día posterior tenía { $heat } MJ/m² más: { $mean } °C de media. Dos sondas sin comprobar pueden diferir en { $probes } °C; esto es más.
years-pair-colder = Hasta { $to } m, el día posterior tenía { $heat } MJ/m² menos: { $mean } °C de media. Dos sondas sin comprobar pueden diferir en { $probes } °C; esto es más.
years-pair-alike = Hasta { $to } m, su calor difiere en { $heat } MJ/m²: { $mean } °C de media. Dos sondas sin comprobar pueden diferir en { $probes } °C, así que no se puede saber.
