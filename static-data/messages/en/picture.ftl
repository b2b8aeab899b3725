# Words inside the profile picture. Short: each has its place beside a curve or in a narrow column.
# Where a message has several lines, the picture sets it in those lines; it breaks them anew only where one is too long.
# $depth, $low, $high, $drop, $thickness, $rise: numbers, written already with the reader's decimal sign.

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
picture-column-mixed =
    Mixed all
    the way
    down
picture-column-density =
    The density
    hardly
    differs
picture-column-weak =
    Weakly
    layered
picture-column-cannot-tell = Can’t tell
picture-column-unstable =
    No layers yet
    colder water
    lies on top
picture-column-too-few =
    Too few
    readings
picture-column-under-ice =
    Cold, under
    the ice
picture-column-densest =
    Near 4{"\u00A0"}°C,
    densest
picture-column-warm-today = Warm today
picture-column-even-water =
    Even
    water
picture-column-warm-layer-today =
    Today’s
    warm layer

# The cover
picture-covered-until-check =
    covered
    until you
    check
picture-covered-until-have-it =
    covered
    until you
    have it

# Key
picture-going-down = going down
picture-coming-up = coming up
picture-mean-of-two = mean of the two
picture-reading = reading

# Words on the found lines, longest form first
picture-thermocline-at = thermocline { $depth }{"\u00A0"}m
picture-thermocline = thermocline
picture-warms-fastest-at = warms fastest { $depth }{"\u00A0"}m
picture-warms-fastest = warms fastest
picture-warm-layer-today-at = today’s warm layer { $depth }{"\u00A0"}m
picture-warm-layer-today = today’s warm layer
picture-depth-value = { $depth }{"\u00A0"}m
picture-could-be = could be { $low } to { $high }{"\u00A0"}m
picture-could-be-short = { $low } to { $high }{"\u00A0"}m
picture-anywhere = anywhere from { $low } to { $high }{"\u00A0"}m
picture-mixed-to = mixed to { $depth }{"\u00A0"}m

# Another rule's line
picture-rule-steepest-middle = middle of the steepest step: { $depth }{"\u00A0"}m
picture-rule-density-step = density changes fastest: { $depth }{"\u00A0"}m
picture-rule-temp-drop = { $drop }{"\u00A0"}°C colder: { $depth }{"\u00A0"}m
picture-rule-density-rise = { $rise }{"\u00A0"}kg per m³ denser: { $depth }{"\u00A0"}m
picture-rule-first-steep-top = top of the first steep step: { $depth }{"\u00A0"}m
picture-rule-first-steep-middle = middle of the first steep step: { $depth }{"\u00A0"}m

# The legs of a step's triangle
picture-step-drop = { $drop }{"\u00A0"}°C
picture-step-thickness = { $thickness }{"\u00A0"}m

# In the plot and the strip
picture-last-reading = last reading
picture-left-out = one reading left out
picture-colder-than-below = colder than below
picture-one-per-metre =
    dashed line:
    1{"\u00A0"}°C per metre
picture-empty =
    Your readings will appear here,
    each at its own depth.
