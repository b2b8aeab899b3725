## The Class screen

page-bar-class = Class
class-picture-about = One column for each group on one depth axis, with its layers, its thermocline and the range of its thermocline. The list beside it holds the same numbers.
class-picture-name = The class
class-picture-depth =
    Depth,
    m
class-picture-temperature = Temperature, °C
class-picture-none =
    no
    thermocline
    here
class-picture-none-short = none
class-picture-few =
    too few
    readings
class-picture-fahrenheit =
    looks
    like °F
class-picture-middle = middle
class-picture-cannot-tell =
    can’t
    tell
class-picture-cannot-tell-short = ?
class-part-which = Picture
class-part-layers = layers
class-part-curves = curves
class-part-middle = middle and range
class-head-group = Group
class-head-sheets = Sheets
class-head-depth = Thermocline, m
class-head-range = Range
class-none = none
class-none-told = –
class-not-kept = This browser does not keep the class. Save it to a file.
class-to-wall = Show on the wall
class-to-add = Add hand-ins
class-to-answers = Answers
class-to-sheets = Sheets and repairs
class-to-why = Why they differ
class-to-marks = Points
class-to-list = To the picture
class-hide = Hide the names
class-hide-not = Show the names
class-shuffle = Shuffle
class-shuffle-not = In order again
class-wall-back = Back
class-wall-next = Next
class-wall-leave = Close
class-wall-keys = Arrows: back and next · a letter: that group’s curve · point: dark · Esc: close
class-wall-why = { $pair }. { $said }
class-wall-curves = What each group read
class-wall-marks = Where each group put the thermocline
class-wall-middle = The middle of the class, and how far the groups lie apart
class-key-warm = epilimnion: warm, mixed
class-key-steep = metalimnion: steep
class-key-deep = hypolimnion: cold, deep
class-key-line = thermocline and its range
class-add-about = Drop files, or the zip of your learning platform, anywhere on this screen. What files are called does not matter.
class-add-choose = Choose files
class-add-folder = Choose a folder
class-add-lines = Or paste lines
class-add-take = Take the lines
class-add-pasted = pasted
class-counts = Of { $all }: { $fresh } new, { $again } same again, { $newer } newer, { $look } to look at, { $other } not for this class.
class-outcome-new = new
class-outcome-same-again = same again
class-outcome-newer-than = newer than the one here
class-outcome-needs-a-look = needs a look
class-outcome-not-ours = not for this class
class-head-question = Question
class-head-first = Right first
class-head-later = Later
class-head-not-yet = Not yet
class-head-blank = Blank
class-idea = { $count }: { $said }
class-varies = Other groups were asked other numbers.
class-idea-told = They were told: “{ $said }”
class-told-right = Right: { $said }.
class-told-tries = Tried: { $tries }.
class-told-try = { $given }: { $taken }
class-told-try-idea = { $given }: { $taken } ({ $idea })
class-told-none = Not tried.
class-told-cannot = “The readings can’t tell”: { $taken }
class-code = Class
class-head-seat = Seat
class-head-right = Right
class-head-points = Points
class-head-notes = Remarks
class-unnamed = no group
class-right-of = { $right } of { $asked }
class-points-of = { $points } of { $max }
class-of-max = of { $max }
class-points-not = “{ $text }” is not a number of points: { $points } stay
class-sheet-title = { $who }: { $sum }
class-late = late
class-practice = practice
class-why-points = Why
class-comment = Comment for the student
class-comment-put = Put in a comment
class-comment-keep = Keep it for others
class-comments-kept = Comments you keep
class-comment-drop = Drop it
class-by-hand = of { $max }, given by you
class-by-hand-over = of { $max }, given by you: more than the most
class-level = Level
class-level-none = not graded yet
class-level-0 = 0: nothing of it
class-level-1 = 1: begun
class-level-2 = 2: most of it
class-level-3 = 3: all of it
class-head-cannot-tell = Can’t be told
class-head-words = Graded
class-why-one = Group
class-why-other = against
class-why-minutes = Read, if you know it,
class-why-when = Before or after
class-why-later = minutes later
class-why-earlier = minutes earlier
class-why-rest = the rest
class-marks-about = A table for your grade book: one line for each seat, or one for each question.
class-marks-students = Who sits where
class-marks-students-about = If you like, paste your list: on each line a seat code and a name. It goes into the file you save and is kept nowhere else.
class-marks-comma = decimal commas, semicolons between the cells
class-marks-wide = Save one line a seat
class-marks-long = Save one line a question
class-marks-slips = Print slips for the seats
class-marks-slips-file = Feedback in one file
class-marks-slips-zip = A file for each seat
class-slip-comment = Your teacher: { $words }
class-save = Save the class to a file
class-saved = Saved as { $name }: { $what }.
class-saved-rows = { $rows ->
    [one] one row
   *[other] { $rows } rows
}
class-saved-sheets = { $sheets ->
    [one] one sheet
   *[other] { $sheets } sheets
}
class-new = Another class …
class-new-ask = Start an empty class?
class-new-text = Save this one to a file first: nothing brings it back.
class-new-no = Keep this one
class-new-yes = Start an empty one

## The lesson in the making, and its run sheet

class-to-lesson = The lesson
class-lesson-title = Name of the lesson
class-lesson-more = Add a question
class-lesson-add-own = A question of your own
class-lesson-whole = Put in every question
class-lesson-other = Another cast
class-lesson-other-choose = Choose its file
class-lesson-open = Open from the start
class-lesson-rules = Rules of the class
class-lesson-help = Help
class-lesson-help-more = the first hint is open
class-lesson-help-usual = hints are asked for
class-lesson-help-less = without the worked step
class-lesson-language = Language
class-lesson-language-own = the reader’s own
class-lesson-note = To the class
class-lesson-run = Notes for whoever takes the class
class-lesson-save = Save the lesson
class-lesson-print = Print the run sheet
class-lesson-choose = Open a lesson
class-lesson-not-one = This file is not a lesson. Choose the file that “Save the lesson” gave.
class-lesson-not-whole = Not saved yet. Question { $number }: { $why } Fill it in, or leave it out.
class-lesson-points-not = “{ $text }” is not a whole number from 0 to 100. “{ $name }” keeps { $points }.
class-lesson-rubric = Four levels in words
class-lesson-use = Use it for the open class
class-lesson-up = Up
class-lesson-down = Down
class-lesson-leave = Leave out
class-lesson-points-of = Points: { $name }
class-lesson-own-ask = Question
class-lesson-own-hint = Hint
class-lesson-by = How it is answered
class-lesson-by-words = in words
class-lesson-by-temp-at = the temperature at a depth
class-lesson-by-apart = the difference between the temperatures at two depths, °C
class-lesson-by-per-metre = °C per metre between two depths
class-lesson-by-depth-of = the depth of a temperature
class-lesson-by-warmest = the warmest reading
class-lesson-by-coldest = the coldest reading
class-lesson-by-warmest-coldest = warmest minus coldest
class-lesson-at = at, m
class-lesson-to = and, m
class-lesson-temp = °C
class-lesson-level-1 = All points for
class-lesson-level-2 = Most points for
class-lesson-level-3 = Some points for
class-lesson-level-4 = No points for
class-run-before = Before
class-run-plan = Time plan
class-run-plan-row = { $name }: { $minutes } minutes
class-run-hints = Your hints
class-run-hint = { $name }: { $hint }
class-run-questions = Questions, in order
class-run-after = After
class-run-before-lines =
    Open the page on every laptop, from the zip or the web: it needs no network.
    Each group opens its notebook, or types its readings in, and names its group.
    Give out the lesson’s file: Open a file, then Work by this lesson.
class-run-question = { $name } ({ $points })
class-run-after-lines =
    Report: each group writes, then saves the hand-in. Its receipt stands on the page.
    Collect the files. What they are called does not matter.
    On your own computer: Class, drop them all, show them on the wall.

## What to ask at the wall

class-to-notes = What to ask
class-notes-about = Only you see these, here and on paper. Arrow keys go from step to step; over the curves a letter lights its group, and the point makes the wall dark.
class-notes-print = Print them
class-wall-guesses = What each group guessed before the first reading
class-note-guesses = Ask: what made you think so? Leave every guess as it is; nobody grades them.
class-note-curves = Ask: what do all the lines share? Where do they part?
class-note-marks = Ask two groups that lie apart to say what they looked at.
class-note-layers = First the ranges, then the depths. Ask: which depth lies in most ranges?
class-note-middle = Ask: at which depth are the groups least sure, and why there?
class-note-why = Ask: what would we see if it were something else? Say what cannot be told apart.

# A saved class that was dropped while another is open.
class-open-holds = This is a saved class, with { $sheets ->
    [one] one sheet
   *[other] { $sheets } sheets
}. Open it?
class-open-text = It takes the place of the class that is open. Save that one to a file first: nothing brings it back.
class-open-no = Leave it
class-open-yes = Open it

# Where nothing is drawn yet.
class-nothing = The groups will stand here side by side.
class-nothing-years = Your casts will stand here side by side, the earliest first.

# Over two answers side by side.
class-pair-right = right for its water
class-pair-idea = with this idea
