### The report: writing it, the page as it prints, what is handed in.
### A no-break space stands between a number and its unit.

## Writing

report-write = Write your report
report-title = Title
report-claim = What did you find?
report-evidence = Which of your readings show it?
report-reasoning = Why do they show it, and how sure are you?
report-change = What would change your mind?
report-start-claim-first = Our water has …
report-start-claim-then = It changes fastest at …
report-start-evidence-first = Between … and … m it gets …
report-start-evidence-then = Above and below that …
report-start-reasoning-first = This shows it because …
report-start-reasoning-then = It could be off by … because …
report-start-change-first = We would change our mind if …
report-start-change-then = Next time we would …
report-put-in = Put in:
report-begin = Begin with:
report-some-covered = Numbers that are still covered come here once you have them.

## The group's own numbers

report-word-thermocline = thermocline { $depth } m
report-word-warms = warms fastest at { $depth } m
report-word-today = today’s warm layer { $depth } m
report-word-mixed = mixed to { $depth } m
report-word-mixed-at-least = mixed to at least { $depth } m
report-word-deep = deep from { $depth } m
report-word-deep-at-least = steep to at least { $depth } m
report-word-gradient = { $gradient } °C per metre
report-word-warmest = warmest { $temp } °C
report-word-coldest = coldest { $temp } °C
report-word-apart = down and up { $apart } °C apart
report-put-depth = { $depth } m ({ $range })
report-put-metres = { $depth } m
report-put-temp = { $temp } °C at { $depth } m
report-put-apart = { $apart } °C
report-about = { $first } { $second }
report-about-step = The steepest step, { $range }
report-covered = covered until you check

## The checklist

report-check-title = In your words there is:
report-check-number = a number
report-check-unit = a unit
report-check-two-depths = two depths
report-check-range = a range
report-check-there = yes
report-check-not = not yet
report-check-about = This only checks whether it is there, never whether it is right.

## Handing in

report-hand-in = Hand in
report-stand-questions = Questions settled
report-stand-cells = Doubts settled
report-stand-marks = Marks made first
report-stand-parts = Report
report-of = { $done } of { $all }
report-marks-yes = yes
report-marks-not-checked = placed, not checked yet
report-marks-not-yet = not yet
report-codes-missing = You can hand in without a class and a seat. With both codes your teacher knows whose work it is.
report-codes-whole = The codes tell your teacher whose work it is.
report-save = Save the hand-in
report-copy = Copy as text
report-copy-about = Saving blocked on this computer? Copy as text and paste it where your teacher collects work. It holds everything.
report-receipt = Receipt <b>{ $code }</b>. It changes when your work does.
report-more = To keep, or to send on:
report-save-page = all in one file
report-save-table = readings (CSV)
report-save-sidecar = its columns (JSON)
report-save-quality = quality (CSV)
report-save-svg = picture (SVG)
report-save-png = picture (PNG)
report-data = This page carries its own data. As a PDF or a file it can be opened again:
report-print = Print, or save as PDF
report-no-names = Your group letter is enough. Please leave names out.

## The page

report-page = The page as it will print
report-bed = { $depth } m deep
report-class-or-seat = { $text }
report-code = notebook { $code }
report-date = date: . . . . . . . . . . . . .
report-no-title = Our water
report-caption =
    { $count ->
        [one] One reading.
       *[other] { $count } readings. Bars: °C lost per metre. Soft edges and brackets: how far each depth could be off.
    }
report-caption-gained =
    { $count ->
        [one] One reading.
       *[other] { $count } readings. Bars: °C gained per metre. Soft edges and brackets: how far each depth could be off.
    }
report-caption-covered =
    { $count ->
        [one] One reading.
       *[other] { $count } readings. What the group has not uncovered yet stays covered here.
    }
report-caption-marks = Dashed: where we marked it first.
report-head-found = What the rules found
report-head-depth = Depth
report-head-could-be = Could be
report-head-marked = Marked
report-rule-warming = Middle of the steepest warming step
report-rule-deep = Below steps of at least { $steep } °C per metre
report-agree =
    { $count ->
        [one] Down and up agree to { $s } °C (standard deviation of one reading, from one pair).
       *[other] Down and up agree to { $s } °C (standard deviation of one reading, from { $count } pairs).
    }
report-decided = { $first }: { $second }.
report-open-doubts =
    { $count ->
        [one] One place is still to be looked at.
       *[other] { $count } places are still to be looked at.
    }
report-how-work = { $done } of { $all } questions settled.
report-how-rules = Rules: the thermocline is the middle of the steepest step; the mixed layer ends { $drop } °C from the temperature at { $reference } m; a step is steep from { $steep } °C per metre. Density of fresh water by Tanaka and others, 2001.
report-how-propagated = Ranges: steps that the readings cannot tell apart (standard deviation { $s } °C), and the law of propagation of uncertainty.
report-how-trials = Ranges: steps that the readings cannot tell apart (standard deviation { $s } °C), and { $count } tries with everything unsure drawn anew.
report-credit = Made with Layercast. The same file always gives this page.
# What was guessed before the first reading.
report-partner = Before we compared, one of us had marked: bottom of the mixed layer { $mixed }; thermocline { $thermocline }; top of the deep layer { $deep }.
report-guess = Our guess before the first reading { $second }: { $first }.
report-guess-line = (thin dashed line)
report-guess-point = { $temp } °C at { $depth } m
report-guess-and = { $first }, { $second }
