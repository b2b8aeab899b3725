# The page's own words: bar, menus, Log, files, storage, help, trouble.

## Bar
page-bar-screens = Screens
page-bar-log = Log
page-bar-profile = Profile
page-bar-questions = Questions
page-bar-report = Report
page-bar-nothing = Nothing open yet
page-bar-group = group { $group }
page-bar-kept = safe on this device, { $time }
page-bar-not-kept = not kept on this device
page-bar-view = View
page-bar-help = Help

## Notebooks
page-notebooks-title = Notebooks on this device
page-notebooks-none = None yet. The first reading makes one.
page-notebooks-here = open here
page-notebooks-open-one = Open
page-notebooks-open-label = Open { $code }
page-notebooks-changed = last change { $time }
page-notebooks-save = Save to a file
page-notebooks-save-about = Go on with it on any computer.
page-notebooks-saved = Saved as { $name }, where your browser puts downloads.
page-notebooks-copy = No file there? Copy it as text
page-notebooks-open = Open a file
page-notebooks-open-about = Adds a notebook to this list.
page-notebooks-new = New group
page-notebooks-new-about = Closes { $code } and starts an empty notebook. Only its code stays in sight.
page-notebooks-erase = Erase { $code } …
page-notebooks-erase-title = Erase { $code } from this device?
page-notebooks-erase-text = Its readings and answers go, and nothing brings them back. A saved file stays where you put it.
page-notebooks-erase-no = Keep it
page-notebooks-erase-yes = Erase it
page-notebooks-open-title = Open { $code }?
page-notebooks-open-text = Its group closed it. Open it if it is yours.
page-notebooks-open-no = Leave it closed
page-notebooks-open-yes = Open it
page-copied = Copied. You can paste it into any text and, later, back into this page.
page-not-copied = This browser does not let the page copy.

## View
page-view-theme = Theme
page-view-day = Day
page-view-night = Night
page-view-sunlight = Sunlight
page-view-projector = Projector
page-view-language = Language
page-view-both = show the other language too
page-view-size = Text size
page-view-smaller = Smaller
page-view-larger = Larger

## Log: nothing yet
page-log-empty-title = Find the layers of your lake
page-log-empty-lead = Layercast turns the temperatures you read with the probe, going down and coming up, into a picture of the lake’s layers. You mark where you see them; then it shows what the published rules find, and how sure that is.
page-log-type = Type readings
page-log-type-about = Start in the first box. Enter moves on to the next mark.
page-log-paste = Paste a table
page-log-paste-about = Copy it in your spreadsheet, then Ctrl V anywhere on this page.
page-log-open = Open a file
page-log-open-about = A table or a saved notebook. Dropping it here works too.
page-log-example = See an example
page-log-example-about = Made-up ponds:
page-log-example-summer = layered, in summer
page-log-example-autumn = mixed, in autumn
page-log-example-ice = under ice
page-log-group-open = A letter is enough. This notebook’s code begins with it.
page-log-group-code = This notebook’s code is <b>{ $code }</b>.
page-log-empty-foot = All of it stays on this device. Nothing is sent anywhere.

## Log: table
page-log-table = Readings
page-log-skip = Past the table
page-log-head-depth = Depth,
page-log-head-mark = Mark, depth,
page-log-head-down = Going down,
page-log-head-one = Temperature,
page-log-head-up = Coming up,
page-log-head-apart = Apart,
page-log-cell-depth = Depth of the row, { $depth } metres
page-log-cell-mark = Mark { $depth } metres, corrected { $corrected } metres
page-log-cell-down = { $depth } metres, going down
page-log-cell-up = { $depth } metres, coming up
page-log-cell-one = { $depth } metres, temperature
page-log-cell-out = { $cell }, left out

## Log: panel
page-log-reopen = Not right?
page-log-type-it = Type it
page-log-settled = Settled: { $place }, { $what }.
page-log-water = Water
page-log-group = Group
page-log-bed = Bed at, m
page-log-bed-about = The depth at which the line went slack.
page-log-part = Rows listed
page-log-part-rows = { $from } to { $to }
page-log-profile = See the profile
page-log-add = Add a row
page-log-foot = Nothing is deleted. What you gave stays on record.
page-log-foot-doubts = Nothing is deleted. A cell with a question mark is left out until you decide, and what you gave stays on record.

## Log: doors of the panel
page-log-to-corrections = Corrections
page-log-to-companions = Oxygen and Secchi
page-log-door-done = Back to the readings
page-corrections-title = Corrections
page-corrections-lead = Your readings stay as you took them. What you give here is worked out beside them, and you can take it away again.
page-corrections-add = Add one:
page-corrections-remove = Take it away: { $what }
page-companions-title = Oxygen and Secchi
page-companions-lead = Only if you measured them. Lower the Secchi disk until it is gone, then raise it until you see it again.
page-companions-gone = Disk gone at, m
page-companions-back = Disk back at, m
page-companions-altitude = Lake above the sea, m
page-companions-depth = Mark, m
page-companions-oxygen = Oxygen, mg/L
page-companions-share = % of what the water can hold
page-companions-cell = { $depth } metres, oxygen

## Log: the guess before the first reading
page-log-to-guess = Guess first
page-log-guess-about = How warm at each depth? You will see your guess beside your profile later.
page-log-to-by-hand = Three by hand
page-by-hand-title = Three by hand
page-by-hand-lead = Put these three readings where they belong: choose one, then touch the picture, or move it with the arrow keys. Where you read twice, it is the mean. Then the rest is drawn.
page-by-hand-all = All three lie where they belong. The curve goes through your readings; where you read twice, through their mean.
page-by-hand-why = Why is 0 at the top?
page-by-hand-because = The picture stands as the water stands: the surface on top, and you go down with the cable.
page-by-hand-check = Check
page-by-hand-draw = Draw the rest
page-by-hand-waits = You can press “Check” when all three are on the picture.
page-by-hand-keys = { $reading }: arrow keys move it half a metre or half a degree
page-guess-title = Guess first
page-guess-lead = How warm will your water be at the top, at the bottom and between? Type five points, or touch the picture where they lie.
page-guess-depth = Depth, m
page-guess-temp = Temperature, °C
page-guess-depth-of = Point { $number }: depth, metres
page-guess-temp-of = Point { $number }: temperature, °C
page-guess-unread = One coloured box has no number in it that can be read.
page-guess-about = Your guess is fixed at your first reading. It gets no points; you see it beside your profile in the report.
page-guess-done = Go on to the readings

## Log: another group's cast
page-log-to-other = Compare with a group
page-log-other-title = Another group’s cast
page-log-other-lead = Two questions compare your cast with that of another group. Open what that group saved or handed in, or paste its lines. Your own readings stay as they are.
page-log-other-open = Open its file
page-log-other-paste = Its lines, pasted
page-log-other-take = Use the pasted lines
page-log-other-remove = Take it away
page-log-other-no = No other cast was found in that. A notebook, a hand-in, its lines or a saved report has one.

## Log: pasting
page-paste-title = Paste a table
page-paste-how = Copy the cells in your spreadsheet. Then press Ctrl V here, or press and hold in the box and choose Paste.
page-paste-field = Table
page-paste-use = Read it
page-paste-close = Close
page-paste-foot = You can type a table here too: on each line a depth and its temperatures, with a space between.
page-paste-name = The text you pasted

## Log: rows as they came
page-asis-title = What we read
page-asis-rows = The rows as they came
page-asis-line = Line
page-asis-role-label = What column { $column } is
page-asis-unit-label = Unit of column { $column }
page-asis-role-open = { $role }?
page-asis-role-depth = Depth
page-asis-role-down = Going down
page-asis-role-up = Coming up
page-asis-role-one = One temperature
page-asis-role-leg = Down or up
page-asis-role-oxygen = Oxygen, mg/L
page-asis-role-secchi = Secchi disk
page-asis-role-not-used = Not used
page-asis-unit-open = which unit?
page-asis-unit-m = metres
page-asis-unit-cm = cm
page-asis-unit-ft = feet
page-asis-unit-c = °C
page-asis-unit-f = °F
page-pending-foot = Nothing is deleted.

## Files
page-newer-title = Saved by a newer Layercast
page-newer-lead = The file <b>{ $name }</b> was saved by a newer page (version { $version }). This page does not know everything in it.
page-newer-ask = Take only the readings?
page-newer-text = Every version knows those. Answers and marks stay in the file, which is not touched.
page-newer-leave = Leave the file alone
page-newer-take = Take the readings
page-newer-else = To go on where you were, open the file with the page it was saved with, or ask your teacher for the newer one.
page-newer-foot = Older files always open.
page-no-title = This file is not a table
page-no-large = It is larger than 20 MB, more than a table of readings needs. Nothing was taken from it.
page-no-open = Open another file
page-no-close = Close
page-no-foot = What was in this notebook before is untouched.
page-drop = Let go to open the file
page-busy-reading = Reading the file.
page-busy-table = Sorting out the table.
page-busy-change = Working in what you did.
page-busy-opening = Opening the notebook.
page-busy-calculating = Working out the layers.
page-busy-drawing = Drawing the picture.
page-busy-step = Step { $step } of { $of }.
page-busy-stop = Stop
page-busy-stop-about = What was here before stays as it is.
page-busy-stopped = Stopped. What was here before is as it was.

## Trouble
page-trouble-nowhere = This browser keeps nothing
page-trouble-nowhere-text = Your work lives only as long as this page is open. Save it as a file before you close it.
page-trouble-erased = This browser threw away what it kept
page-trouble-erased-text = What you see here is kept again. Other notebooks of this device may be gone. Save this one as a file.
page-trouble-stopped = The calculation stopped. Your readings are safe.
page-trouble-stopped-text = They are kept apart from it. It was started again and has read them once more; carry on.
page-trouble-copy = Copy what happened
page-trouble-close = Close
page-other-title = Open in another tab
page-other-lead = This notebook is being worked on in another tab of this browser. Here you can look, but not change anything, so that the two don’t overwrite each other.
page-other-ask = Work here instead?
page-other-text = The other tab then stops writing. What was typed there is kept, to the last key.
page-other-look = Only look
page-other-work = Work here
page-other-foot = Closed the other tab already? “Work here” is all it takes.

## Help
page-help-title = What this page does
page-help-what = You give it the temperatures your group read at the marks of the cable, going down and coming up. It draws them, each at its own depth. You mark where you see the layers. Then it shows what published rules find in the same water, how sure that is, and asks questions about your own readings.
page-help-keys-title = By keyboard
page-help-keys-table = In the table: arrow keys, or Enter for the next mark. At the last mark Enter goes on to the bottom of “coming up” and climbs. Esc leaves the table.
page-help-keys-paste = Ctrl V pastes a table anywhere on Log.
page-help-keys-picture = In the picture: up and down arrow keys walk through the readings, Home and End go to the first and last, Esc leaves.
page-help-keys-marks = On a mark: up and down arrow keys move it by 0.1 m, with Shift from one mark of the cable to the next. Or type its depth.
page-help-keys-close = Tab goes on, Shift Tab goes back, Esc closes a menu.
page-help-rules-title = The rules, in short
page-help-rules-thermocline = Thermocline: the middle of the step that loses most °C per metre. Its range takes in the steps that your readings can’t tell from the steepest.
page-help-rules-metalimnion = Steep layer: the unbroken run of steps that lose at least 1 °C per metre. Below it lies the deep layer.
page-help-rules-mixed = Mixed layer: down to the first depth that is 1.0 °C colder than at 0.5 m.
page-help-rules-none = No such layer is an answer too, and so is “these readings can’t tell”.
page-help-safe-title = Before you measure
page-help-safe-first = The rules of your school and of the place come first, and so does the word of the people trained for it. These lines do not replace either.
page-help-safe-boat = From a boat: life jackets on everybody, fastened, and an adult who knows the boat and the water. Stay seated while the cable goes down.
page-help-safe-dock = From a dock: keep back from the edge, never alone, with something that floats ready to throw. Life jackets where your rules say so.
page-help-safe-ice = On ice: only when qualified people have checked it that same day and say that you may. Thickness alone does not make ice safe.
page-help-safe-cold = Cold water takes your breath and strength within minutes, also on a warm day. If somebody falls in: call for help, throw, don’t go in after them.
page-help-safe-lightning = Thunder or lightning: off the water and away from it at once. Your rules say when you may go back.
page-help-data-title = Where your work is kept
page-help-data-where = In this browser, on this device, under a code. Nobody’s name is asked. Nothing is sent anywhere: the page is built so that it cannot connect to anything. Some schools’ computers forget everything at sign-out, so save your notebook to a file before you leave.
page-help-data-erase = To erase a notebook: press the name or code at the top, then Erase. Clearing this browser’s site data erases all of them.
page-help-about = Layercast is free, under MIT or Apache-2.0.
