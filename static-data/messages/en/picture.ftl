# Words inside the profile picture. Short: each has its place beside a curve or in a narrow column.
# Ids that end in -1, -2, -3 are the lines of one text; a line that a language does not need is {""}.
# $depth, $from, $to, $temp: numbers, written already with the reader's decimal sign. $rule: the name of a rule.

# Heads
picture-depth = Depth, m
picture-temperature = Temperature, °C
picture-lost = °C lost per metre
picture-gained = °C gained per metre
picture-per-metre = °C per metre
picture-per-metre-short = °C per m
picture-yours = yours
picture-by-the-rules = by the rules
picture-rules = rules
picture-mean = Mean

# The student's column
picture-mixed = mixed
picture-steep = steep
picture-deep = deep
picture-no-layers = no layers

# The rules' column: a name and its gloss
picture-epilimnion = Epilimnion
picture-epilimnion-gloss = warm, mixed
picture-metalimnion = Metalimnion
picture-metalimnion-gloss = steep
picture-hypolimnion = Hypolimnion
picture-hypolimnion-gloss = cold, deep
picture-goes-on = steep, and goes on

# The rules' column, pictures without three layers
picture-mixed-all-1 = Mixed all
picture-mixed-all-2 = the way
picture-mixed-all-3 = down
picture-by-density-1 = The density
picture-by-density-2 = hardly
picture-by-density-3 = differs
picture-weak-1 = Weakly
picture-weak-2 = layered
picture-cannot-tell = Can’t tell
picture-unstable-1 = No layers yet
picture-unstable-2 = heavier water
picture-unstable-3 = lies on top
picture-under-ice-1 = Colder
picture-under-ice-2 = on top
picture-densest-1 = Near 4{"\u00A0"}°C,
picture-densest-2 = densest
picture-denser-1 = Warmer,
picture-denser-2 = denser
picture-warm-only = Warm today
picture-even-1 = Even
picture-even-2 = water
picture-warm-today-1 = Today’s
picture-warm-today-2 = warm layer

# The cover
picture-covered-check-1 = covered
picture-covered-check-2 = until you
picture-covered-check-3 = check
picture-covered-have-1 = covered
picture-covered-have-2 = until you
picture-covered-have-3 = have it

# Key
picture-going-down = going down
picture-coming-up = coming up
picture-mean-of-two = mean of the two
picture-otherwise = read differently
picture-reading = reading

# Words on the found lines: with the depth, the name alone, the depth alone
picture-thermocline = thermocline { $depth }{"\u00A0"}m
picture-thermocline-name = thermocline
picture-warms-fastest = warms fastest { $depth }{"\u00A0"}m
picture-warms-fastest-name = warms fastest
picture-today = today’s warm layer { $depth }{"\u00A0"}m
picture-warm-layer-today = today’s warm layer
picture-metres = { $depth }{"\u00A0"}m
picture-could-be = could be { $from } to { $to }{"\u00A0"}m
picture-anywhere = anywhere from { $from } to { $to }{"\u00A0"}m
picture-range = { $from } to { $to }{"\u00A0"}m
picture-mixed-to = mixed to { $depth }{"\u00A0"}m
picture-rule = { $rule }: { $depth }{"\u00A0"}m

# In the plot and the strip
picture-degrees = { $temp }{"\u00A0"}°C
picture-last-reading = last reading
picture-one-left-out = one reading left out
picture-several-left-out = readings left out
picture-colder-than-below = heavier than below
picture-one-per-metre-1 = dashed line:
picture-one-per-metre-2 = 1{"\u00A0"}°C per metre
picture-empty-1 = Your readings will appear here,
picture-empty-2 = each at its own depth.
