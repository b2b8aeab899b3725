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
log-title-table = What we read
log-title-no-table = This is not a table

log-example = An example of an invented pond: nobody measured these readings.

## Nothing to draw

log-not-yet = No reading has both a depth and a temperature that can be used. Fill in a cell, or settle one that carries a question mark.
log-no-questions-yet = The questions are about your own water, so they need readings at two depths or more. Type or paste them on Log first.

log-word-apart = Apart: going down less coming up, at the same mark.

## Undo

log-undo-paste = Undo the paste
log-undo-file = Undo opening the file
log-undo-example = Put the example away
log-leave-as-it-was = Leave it as it was
log-undo-cell = Undo the typing
log-undo-settle = Undo the last decision
log-undo-change = Undo the last change

## Which way a single series was read

log-leg-title = Going down or coming up?
log-leg-text = It is not written, and nothing hangs on it. A reading whose way is not known is drawn as a circle. Read once: we assume <b>± { $assumed } °C</b>. Two readings at a mark would show how good they really are. The question about how well your two ways agree is left out.
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

## Ways out

log-make-it = Make it { $value }
log-leave-it-out = Leave it out
log-leave-them-out = Leave them out
log-leave-out-down = Leave out going down
log-leave-out-up = Leave out coming up
log-leave-out-upper = Leave out the upper one
log-leave-out-lower = Leave out the lower one
log-it-was-like-that = It was like that
log-look-at-the-table = Look at the table
log-take-back = Take it back

## What was decided

log-settled-temp = <cell>{ $was }</cell> made { $is }
log-settled-depth = depth <cell>{ $was }</cell> made { $is }
log-settled-added = { $is } added
log-settled-out = <cell>{ $was }</cell> left out
log-settled-kept = <cell>{ $was }</cell>: it was like that

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
        [one] One row. The heads are ours: set them right if they are not. Line numbers are those of the table as it came.
       *[other] { $rows } rows. The heads are ours: set them right if they are not. Line numbers are those of the table as it came.
    }
log-nothing-taken = Nothing was taken from it. What was in this notebook before is untouched.
log-skipped-title = a title, not a reading
log-skipped-head = heads of the columns
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
log-use-waits = Opens when the question is answered. Nothing is deleted.

## A saved notebook that is not opened

log-file-broken = The file says that it is a notebook of Layercast, but line { $line } cannot be read. Nothing was taken from it, and the file is as it was. Open an earlier copy, or paste the readings.
log-file-too-large = The file is too large for a notebook of Layercast. Nothing was taken from it.
log-file-absurd-marks = The file says that it is a notebook of Layercast, but its cable has marks that no cable has. Nothing was taken from it.
log-file-absurd-sheets = The file says that it is a notebook of Layercast, but its answers are not in order. Nothing was taken from it.
log-file-absurd-text = The file says that it is a notebook of Layercast, but a name in it is far too long. Nothing was taken from it.
log-file-absurd-numbers = The file says that it is a notebook of Layercast, but a number in it is far beyond any lake. Nothing was taken from it.
log-file-absurd-readings = The file holds more than { $most } readings. Nothing was taken from it.
