### Log: the readings, what is doubted about them, and the table that waits.
### Every `<cell>` holds what a person wrote; a no-break space stands between a number and its unit.

## Titles

log-title-empty = Find the layers of your lake
log-title-cells =
    { $count ->
        [1] One cell to look at
        [2] Two cells to look at
        [3] Three cells to look at
        [4] Four cells to look at
        [5] Five cells to look at
       *[other] { $count } cells to look at
    }
log-title-places =
    { $count ->
        [1] One place to look at
        [2] Two places to look at
        [3] Three places to look at
        [4] Four places to look at
        [5] Five places to look at
       *[other] { $count } places to look at
    }
log-title-settled =
    { $count ->
        [one] One reading, nothing to settle
       *[other] { $count } readings, nothing to settle
    }
log-title-not-yet = Nothing to draw yet
log-title-one-temperature = One temperature at each mark
log-title-question = One question first
log-title-fahrenheit = Are these °F?
log-title-table = What we read
log-title-no-table = This is not a table

log-example = An example of an invented pond: nobody measured these readings.

## Nothing to draw

log-not-yet = No reading has both a depth and a temperature that can be used. Fill in a cell, or settle one that carries a question mark.
log-no-questions-yet = The questions are about your own water, so they need readings at two depths or more. Type or paste them on Log first.
log-lesson-on = The lesson <b>{ $title }</b> is on: { $count ->
        [one] one question comes
       *[other] { $count } questions come
    } once your readings are in.
log-lesson-on-untitled = A lesson from your teacher is on: { $count ->
        [one] one question comes
       *[other] { $count } questions come
    } once your readings are in.

log-word-apart = Apart: going down less coming up, at the same mark.

## Undo

log-undo-paste = Undo the paste
log-undo-file = Undo opening the file
log-undo-example = Put the example away
log-leave-as-it-was = Leave it as it was
log-undo-cell = Undo the typing
log-undo-settle = Undo the last decision
log-undo-fahrenheit = Undo reading as °F
log-undo-change = Undo the last change

## Which way a single series was read

log-leg-title = Going down or coming up?
log-leg-text = It is not written. Leave it open if you don’t know: nothing else depends on it, and the readings are drawn as circles. Read once: we assume <b>± { $assumed } °C</b>. Two readings at each mark would show how good they really are, so the question about how well down and up agree is left out.
log-leg-open = Leave it open
log-leg-down = Going down
log-leg-up = Coming up

## Where a doubt is

log-place-down = { $depth } m, going down
log-place-up = { $depth } m, coming up
log-place-one = { $depth } m
log-place-both = { $depth } m, both ways
log-place-two-depths = { $upper } m and { $lower } m
log-place-stretch = { $from } to { $to } m
log-place-stretch-both = { $from } to { $to } m, both ways
log-place-line-depth = Line { $line }, depth
log-place-line-down = Line { $line }, going down
log-place-line-up = Line { $line }, coming up
log-place-line-one = Line { $line }, temperature
log-place-no-depth = A reading without a depth
log-place-temps = From { $low } to { $high }
log-place-all-temps = All temperatures

## Why it is doubted

log-doubt-too-warm = You have <cell>{ $written }</cell>. Lake water is never { $temp } °C. { $ask }
log-doubt-too-warm-converted = You have <cell>{ $written }</cell>, which is { $temp } °C. Lake water is never that warm. { $ask }
log-doubt-too-cold = You have <cell>{ $written }</cell>. Lake water is never { $temp } °C: it freezes at 0 °C. { $ask }
log-doubt-too-cold-converted = You have <cell>{ $written }</cell>, which is { $temp } °C. Lake water is never that cold: it freezes at 0 °C. { $ask }
log-doubt-very-warm = You have <cell>{ $written }</cell>. Lake water is hardly ever { $temp } °C. { $ask }
log-doubt-very-cold = You have <cell>{ $written }</cell>. Lake water is hardly ever { $temp } °C: it freezes at 0 °C. { $ask }
log-ask-point-lost = Did the point get lost?
log-ask-what-was-it = What did the probe show?
log-doubt-spike = You have <cell>{ $written }</cell>. The readings next to it on the same way are <b>{ $above }</b> and <b>{ $below }</b>, so this one sticks out.
log-doubt-spike-converted = You have <cell>{ $written }</cell>, which is { $temp } °C. The readings next to it on the same way are <b>{ $above } °C</b> and <b>{ $below } °C</b>, so this one sticks out.
log-doubt-pair = Going down <cell>{ $down }</cell>, coming up <cell>{ $up }</cell>: { $apart } °C apart at one mark. Is one of them a slip?
log-doubt-inversion = At { $upper } m you have <b>{ $above } °C</b>, over <b>{ $below } °C</b> at { $lower } m. The upper water would be heavier, and heavier water sinks.
log-doubt-colder-on-top =
    { $marks ->
        [1] One mark, colder by { $difference } °C than the water under it. { $more }
        [2] Two marks, colder by { $difference } °C than the water under them. { $more }
        [3] Three marks, colder by { $difference } °C than the water under them. { $more }
        [4] Four marks, colder by { $difference } °C than the water under them. { $more }
        [5] Five marks, colder by { $difference } °C than the water under them. { $more }
       *[other] { $marks } marks, colder by { $difference } °C than the water under them. { $more }
    }
log-doubt-warmer-on-top =
    { $marks ->
        [1] One mark, warmer by { $difference } °C than the water under it. In water this cold the warmer is the heavier one. { $more }
        [2] Two marks, warmer by { $difference } °C than the water under them. In water this cold the warmer is the heavier one. { $more }
        [3] Three marks, warmer by { $difference } °C than the water under them. In water this cold the warmer is the heavier one. { $more }
        [4] Four marks, warmer by { $difference } °C than the water under them. In water this cold the warmer is the heavier one. { $more }
        [5] Five marks, warmer by { $difference } °C than the water under them. In water this cold the warmer is the heavier one. { $more }
       *[other] { $marks } marks, warmer by { $difference } °C than the water under them. In water this cold the warmer is the heavier one. { $more }
    }
log-both-ways-agree = Going down and coming up agree, so it is not one slip.
log-both-ways-differ = Going down and coming up do not agree there, so one of them may be a slip.
log-one-way-only = A second reading there would show whether it is a slip.
log-doubt-fahrenheit = Most of these look like °F. Lake water is never that hot; as °F they are { $low } to { $high } °C.

## Ways out

log-make-it = Make it { $value }
log-leave-it-out = Leave it out
log-leave-them-out = Leave them out
log-leave-out-down = Leave out going down
log-leave-out-up = Leave out coming up
log-leave-out-upper = Leave out the upper one
log-leave-out-lower = Leave out the lower one
log-it-was-like-that = It was like that
log-read-as-fahrenheit = Read all as °F
log-they-are-celsius = They are °C
log-look-at-the-table = Look at the table
log-take-back = Take it back

## What was decided

log-settled-temp = <cell>{ $was }</cell> made { $is }
log-settled-depth = depth <cell>{ $was }</cell> made { $is }
log-settled-added = { $is } added
log-settled-out = <cell>{ $was }</cell> left out
log-settled-kept = <cell>{ $was }</cell>: it was like that
log-settled-fahrenheit = read as °F, and so is what you type here from now on
log-settled-celsius = read as °C

## Long casts

log-rows-not-listed =
    { $count ->
        [one] One more row is kept and drawn, but not listed here.
       *[other] { $count } more rows are kept and drawn, but not listed here.
    }
log-doubts-not-listed =
    { $count ->
        [one] One more after these.
       *[other] { $count } more after these.
    }
log-settled-not-listed =
    { $count ->
        [one] One more decision, not listed here.
       *[other] { $count } more decisions, not listed here.
    }

## The table view

log-pending-head =
    { $rows ->
        [one] One row. We chose these headings: change any that is wrong. Line numbers are those of the table as it came.
       *[other] { $rows } rows. We chose these headings: change any that is wrong. Line numbers are those of the table as it came.
    }
log-nothing-taken = Nothing was taken from it. What was in this notebook before is untouched.
log-skipped-title = a title, not a reading
log-skipped-head = headings of the columns
log-skipped-units = units
log-skipped-blank = nothing in it
log-skipped-total = a total or a mean, not a reading
log-more-rows =
    { $rows ->
        [one] One more row, to line { $line }
       *[other] { $rows } more rows, to line { $line }
    }
log-too-many-readings = This table holds { $count } readings. A cast may have { $most }: take every tenth one, or split it.
log-use-this-table = Use this table
log-use-waits = You can press “Use this table” when the question is answered. Nothing is deleted.

## Corrections

log-undo-correction = Undo the correction
log-correct-remove = Take it away
log-correct-zero = Where the marks were read
log-correct-zero-about = Read at a rail, a dock or the top of the ice? How high was it above the water?
log-correct-gap = Sensor and mark zero
log-correct-gap-about = How far below the zero of the marks does the sensor hang?
log-correct-tape = Cable against a tape
log-correct-tape-about = Lay the cable beside a tape, pulled straight. What is a long piece by its marks, and what by the tape?
log-correct-slant = Slanting cable
log-correct-slant-about = The boat drifted? Say from which mark to which, and how far the cable leaned from straight down.
log-correct-probe = Probe check
log-correct-probe-about = Hold the probe in melting ice made of clean water, and stir, but not with the probe. The last two fields may stay empty: they are for warm water, beside a thermometer you can trust.
log-correct-lag = Probe still settling
log-correct-lag-about = How much of each step the probe had still to go when it was read, 0 to 0.5. Going down and coming up show how much.

log-correct-field-ice = Probe in ice water, °C
log-correct-field-read = Probe in the same water, °C
log-correct-field-true = Trusted thermometer in warm water, °C
log-correct-field-above-water = Above the water, m
log-correct-field-gap = Sensor below mark zero, m
log-correct-field-marked = By the marks, m
log-correct-field-measured = By the tape, m
log-correct-field-from = From mark, m
log-correct-field-to = To mark, m
log-correct-field-angle = Leaning, degrees
log-correct-field-share = Still to go

log-correct-example-temp = { $temp } °C
log-correct-example-depth = { $depth } m
log-correct-example-angle = 15°
log-correct-example-bare = { $value }
log-correct-missing = Not applied yet: fill in “{ $field }”.
log-correct-unreadable = Not applied: under “{ $field }” stands <cell>{ $written }</cell>. Write it like { $example }.
log-correct-nothing = It changes no reading.

log-corrected-ice-less = Every temperature { $by } °C less: the probe read { $ice } °C in ice water.
log-corrected-ice-more = Every temperature { $by } °C more: the probe read { $ice } °C in ice water.
log-corrected-two-point = Every temperature set right, by { $most } °C at most: the probe read { $ice } °C in ice water, and { $read } °C where the water had { $true } °C.
log-corrected-zero-above = Every depth { $by } m less: the marks were read { $by } m above the water.
log-corrected-zero-below = Every depth { $by } m more: the marks were read { $by } m below the water.
log-corrected-gap-below = Every depth { $by } m more: the sensor hangs { $by } m below mark zero.
log-corrected-gap-above = Every depth { $by } m less: the sensor sits { $by } m above mark zero.
log-corrected-tape = Every depth times { $factor }, by { $most } m at most: { $marked } m by the marks are { $measured } m by the tape.
log-corrected-slant = Marks { $from } to { $to } m lie higher, by { $most } m at most: the cable leaned { $angle }°.
log-corrected-lag = Every reading moved on, by { $most } °C at most: the probe had still { $share } % of each step to go.
log-correct-slant-steep = { $did } A cable that leans more than 10° hangs in a curve, so take these depths as rough. A heavier weight helps next time.
log-correct-above-water =
    { $count ->
        [one] One reading comes to stand above the water. It is kept and left out.
       *[other] { $count } readings come to stand above the water. They are kept and left out.
    }

log-refused-senseless = Not applied: no cable and no probe is that far off. Look at the number again.
log-refused-tape = Not applied: the two lengths are too far apart to be one piece of cable. Look at both again.
log-refused-slant = Not applied: the first mark comes before the last, and a cable leans between 0 and 60°. Look at the numbers again.
log-refused-probe = Not applied: no probe that still works is that far off. Look at the numbers again, or take another probe.
log-refused-too-close = The two waters are less than 5 °C apart, too close to tell more than ice water does. So every temperature is set right by the { $ice } °C of the ice water alone.
log-refused-twice = Not applied: there is one like it above. Take one of them away.
log-refused-slant-twice = Not applied: some of these marks are in another slant already.
log-refused-no-pairs = Not applied: no mark was read both ways, so the readings can’t tell how far the probe had settled.
log-refused-wrong-sign = Not applied: a probe that still settles reads too warm going down into colder water. Yours does not, so something else keeps the two ways apart.
log-refused-too-slow = Not applied: the probe had more than half of each step still to go. Working that out would only swell the errors. Wait longer next time.

log-correct-lag-offer = Going down and coming up are { $apart } °C apart, the way a probe leaves them that was still settling: about { $share } % of each step was still to go. Correct for it?
log-correct-lag-take = Correct for it

## Oxygen and the Secchi disk

log-secchi-depth = Secchi depth { $depth } m.
log-secchi-odd = <cell>{ $written }</cell> is not a depth of a Secchi disk. Write it like 3.2.
log-altitude-odd = <cell>{ $written }</cell> is not a height of a lake. Write it in metres above the sea, like 420.
log-oxygen-at-sea = Oxygen in per cent is for fresh water at the height of the sea. If your lake lies higher, give its height under “Oxygen and Secchi”.
log-oxygen-at-height = Oxygen in per cent is worked out for fresh water { $height } m above the sea.

## A saved notebook that is not opened

log-file-broken = The file says that it is a notebook of Layercast, but line { $line } cannot be read. Nothing was taken from it, and the file is as it was. Open an earlier copy, or paste the readings.
log-file-too-large = The file is too large for a notebook of Layercast. Nothing was taken from it.
log-file-absurd-marks = The file says that it is a notebook of Layercast, but its cable has marks that no cable has. Nothing was taken from it.
log-file-absurd-sheets = The file says that it is a notebook of Layercast, but its answers are not in order. Nothing was taken from it.
log-file-absurd-text = The file says that it is a notebook of Layercast, but a name in it is far too long. Nothing was taken from it.
log-file-absurd-numbers = The file says that it is a notebook of Layercast, but a number in it is far beyond any lake. Nothing was taken from it.
log-file-absurd-readings = The file holds more than { $most } readings. Nothing was taken from it.
# Another group's cast.
log-other-none = No other cast yet.
log-other-group = The cast of group { $group }: { $count } readings, to { $last } m.
log-other = Another cast: { $count } readings, to { $last } m.

# Three readings placed on the picture by hand.
log-by-hand-first = First place three of your readings on the picture by hand. Then the rest is drawn.
log-by-hand-alt = The axes of the picture. Three readings are placed on it by hand before the rest draws.
log-by-hand-reading = { $temp } °C at { $depth } m
log-by-hand-placed = lies at { $temp } °C and { $depth } m
log-by-hand-unplaced = not on the picture yet
log-by-hand-right = Right.
log-by-hand-depth-from-below = 0 is at the top, like the water: count { $depth } m <b>down from there</b>.
log-by-hand-warm-left = Warmer lies further to the right. Go along to { $temp } °C.
log-by-hand-other-depth = The right temperature. Its depth is { $depth } m, counted down from 0.
log-by-hand-other-temp = The right depth. Now go along to { $temp } °C.
log-by-hand-elsewhere = Count { $depth } m down from 0, then go along to { $temp } °C.
