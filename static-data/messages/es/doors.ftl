## Las puertas del perfil: con qué seguridad, leído de otro modo, cuánto cuesta mezclarla

page-profile-to-sure = ¿Con qué seguridad?
page-profile-to-otherwise = ¿Y si …?
page-profile-to-mixing = ¿Cuánto cuesta mezclarla?
page-busy-sure = Probando tus lecturas una y otra vez.
page-busy-part = { $done } de { $of } pruebas.
page-busy-keeps = Parar conserva las pruebas hechas.
page-busy-stopped-part = Parado. Las pruebas hechas cuentan.

door-waiting = Aún probando. Los márgenes llegan enseguida.
door-head-depth = Profundidad
door-head-could-be = Podría ser
door-head-share = De 100 pruebas
door-head-found = Hallada, de 100
door-head-now = Tal como se leyó
door-head-otherwise = Cambiado
door-head-step = Tramo
door-depth = { $depth } m
door-share = { $share }
door-share-under = menos de 1
door-share-over = más de 99
door-none = no hay
door-could-be = podría ser
door-between = entre las marcas
door-no-range = sin margen
door-cannot-tell = no se sabe

door-sure-lead = Cambiamos un poco cada lectura, como podría hacerlo el azar, y buscamos otra vez las capas, diez mil veces.
door-sure-few = Solo { $count ->
    [one] se hizo { $count } prueba
   *[other] se hicieron { $count } pruebas
} antes de parar. Los márgenes son aproximados.
door-sure-refused = Las pruebas caen por todas partes: estas lecturas no bastan para saber dónde está el tramo más brusco. «No se sabe» es una respuesta honesta.
door-sure-open = { $low } m o más
door-sure-below = bajo la última lectura
door-sure-top = Comienzo de la capa de cambio brusco
door-sure-where = Dónde cayó el tramo más brusco
door-sure-densing = La densidad cambia más a
door-sure-season = Capa mezclada estacional, hasta
door-sure-elsewhere = en otros tramos
door-sure-nowhere = ningún tramo así
door-sure-varied = Lo que se cambió en cada prueba. Cada lectura: en unos { $noise } °C, lo que difieren bajar y subir. Toda la sonda: hasta { $offset } °C. Cada marca: unos { $mark } cm. El cable: un { $stretch } % más o menos, y su inclinación hasta { $angle }°. Entre dos marcas el agua se curvó un poco, porque ahí nadie leyó.
door-sure-varied-assumed = Lo que se cambió en cada prueba. Cada lectura: en unos { $noise } °C (supuesto). Toda la sonda: hasta { $offset } °C. Cada marca: unos { $mark } cm. El cable: un { $stretch } % más o menos, y su inclinación hasta { $angle }°. Entre dos marcas el agua se curvó un poco, porque ahí nadie leyó.
door-sure-span = El margen de la termoclina sigue siendo { $range }, los tramos que no se distinguen del más brusco. Las pruebas se dispersan más: lecturas que ya llevan un error reciben otro.

door-otherwise-lead = ¿Y si lo hubieras leído de otro modo? Elige; tu cuaderno no cambia.
door-otherwise-depths = { $count ->
    [one] { $count } marca
   *[other] { $count } marcas
} en vez de { $before }.
door-otherwise-same = Tal como lo leíste.
door-otherwise-state = El agua parecería: { $state }.
door-otherwise-state-mixed = mezclada hasta el fondo
door-otherwise-state-weak = con capas débiles
door-otherwise-state-layered = con capas
door-otherwise-state-inverse = más fría arriba
door-otherwise-state-unstable = más pesada arriba
door-otherwise-state-few = muy pocas profundidades para saberlo
door-otherwise-how = Entre dos marcas no se leyó nada: las reglas toman ahí una línea recta, «podría ser» deja que se curve un poco. Lo que añadirían una sonda o un cable peores se saca al azar, siempre el mismo azar para las mismas lecturas.
door-otherwise-wait = Una espera más corta se calcula para una sonda que necesita { $tau } s para recorrer dos tercios de un cambio.

page-otherwise-marks = Marcas
page-otherwise-ways = Lectura
page-otherwise-wait = Espera
page-otherwise-digits = La sonda muestra
page-otherwise-cable = Error de las marcas
page-otherwise-as-read = como se leyó
page-otherwise-every-metre = cada metro
page-otherwise-every-2-metres = cada 2 metros
page-otherwise-down = solo al bajar
page-otherwise-up = solo al subir
page-otherwise-wait-short = medio minuto
page-otherwise-wait-hardly = diez segundos
page-otherwise-halves = medios grados
page-otherwise-whole = grados enteros
page-otherwise-cable-usual = unos pocos cm
page-otherwise-cable-rough = unos 10 cm
page-otherwise-cable-poor = unos 25 cm

door-mixing-lead = Mezclar tu agua hasta { $bed } m cuesta, bajo cada metro cuadrado de su superficie, más o menos tanto trabajo como levantar { $kg } kg un metro ({ $joules } julios).
door-mixing-little = Mezclar tu agua hasta { $bed } m no cuesta casi nada: menos que levantar un kilo diez centímetros bajo cada metro cuadrado. Basta una brisa.
door-mixing-alike = Hasta donde alcanzan estas lecturas, tu agua pesa lo mismo hasta { $bed } m. Mezclarla no cuesta ningún trabajo que se note en ellas.
door-mixing-down = Mezclada hasta
door-mixing-work = Como levantar un metro
door-mixing-kg = { $kg } kg
door-mixing-none = nada que levantar
door-mixing-resists = Se resiste a mezclarse
door-mixing-times = { $times } ×
door-mixing-unit = × : tantas veces lo que resiste agua de 4 °C bajo agua de 5 °C. Un tramo el doble de grueso cuenta el doble.
door-mixing-swing = Empuja un poco hacia arriba el agua a { $depth } m y suéltala: sube y baja una vez en { $seconds } s.
door-mixing-swing-minutes = Empuja un poco hacia arriba el agua a { $depth } m y suéltala: sube y baja una vez en { $minutes } min.
door-mixing-box = Calculado como si los lados bajaran rectos hasta { $bed } m. Un estanque real se estrecha abajo y cuesta menos.
door-mixing-box-read = Calculado como si los lados bajaran rectos hasta tu última lectura, a { $bed } m. Un estanque real se estrecha abajo y cuesta menos; el agua más honda, si la hay, no se cuenta y le sumaría trabajo.
door-mixing-salt = Calculado para agua dulce. La sal en el fondo lo haría mucho más difícil.
