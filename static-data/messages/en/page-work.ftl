### Words of Profile, Questions and the picture that do not come from the calculation.

## The picture

page-picture-name-log = The readings down the water: temperature along the top, depth downward
page-picture-name-profile = Profile: temperature along the top, depth downward, your marks at the left
page-picture-name-questions = Profile beside the question: temperature along the top, depth downward
page-picture-walk = Readings, from the surface down
page-picture-no-reading = no reading chosen; the arrow keys walk through them
# The word on a grip that is not placed yet.
page-picture-grip-mixed = mixed
page-picture-grip-thermocline = thermocline
page-picture-grip-deep = deep
page-picture-depth = { $depth } m
page-picture-save = Save the picture

## Readings as a table

page-readings-title = Readings
page-readings-depth = Depth, m
page-readings-mark = Mark, m
page-readings-down = Down, °C
page-readings-up = Up, °C
page-readings-mean = Mean, °C
page-readings-per-metre = °C per metre
page-readings-oxygen = O2, mg/L
page-readings-per-cent = O2, %
page-readings-covered = °C per metre is one more column here after the check.
# The profile as a sound; while it plays the same button stops it.
page-readings-hear = Hear it
page-readings-hear-stop = Stop
# A page with thick lines and braille numbers.
page-readings-touch = Save a page to feel
page-touch-head = Temperature and depth, to be raised
page-touch-temperature = Temperature, °C

## Profile

page-profile-title = Where are the layers?
page-profile-lead-unset = You first. Bring each mark to the depth where you see a layer change: drag it, use the arrow keys, or type.
page-profile-lead = You first. Move the three marks to where you see the layers change, or type a depth.
page-profile-your-mark = Your mark
page-profile-depth = Depth
page-profile-give = Give or take
page-profile-refused = not in my water
page-profile-mark-depth = { $mark }, depth in metres
page-profile-mark-give = { $mark }, give or take, in metres
page-profile-mark-refused = { $mark }: not in my water
page-profile-covered = The covered columns open when you check. You can move your marks again afterwards; the first ones stay on record.
page-profile-again = Your first marks stay on record. These stand beside them.
page-profile-walk = In the picture, arrow keys walk through the readings.
page-profile-to-table = Readings as a table
page-profile-to-marks = Back to my marks
page-profile-to-found = Back to what was found
page-profile-to-questions = On to the questions
page-profile-to-rules = Other rules
page-profile-to-log = Go to the readings
page-profile-rules-lead = Published rules draw these lines differently. All are right by their own words, so a depth needs its rule.
page-profile-rules-ticks = The row you are on draws its line in the picture; the others are the short ticks at the right of it.
page-profile-own-rule = { $rule }, your class’s rule
page-profile-rule-none = none

## Questions

page-questions-title = Questions about your water
page-questions-rail = Questions
page-questions-count = Question { $number } of { $of }
page-questions-mark = Question { $number }
page-questions-mark-done = Question { $number }, answered
page-questions-reason = How I know
page-questions-to-question = Back to the question
