### Profile: the student's marks, and what the rules found.
### `<mine>` is the student's own; a no-break space stands between a number and its unit.

## The marks

profile-hand-over = Cover them: my partner marks too
profile-hand-back = Take my marks back
profile-partner-covered = Your partner’s marks are covered. Place yours without a word; then both stand here.
profile-partner-mark = { $mark }: first { $first }, then { $second }.
profile-partner-at = { $depth } m
profile-partner-none = not there
profile-mark-mixed = Bottom of the mixed layer
profile-mark-thermocline = Thermocline
profile-mark-deep = Top of the deep layer
profile-word-thermocline = Thermocline, the steepest part: the water changes fastest there.
profile-word-give = Give or take: how far off your mark may be. It may stay empty.
profile-metres-deep = { $depth } metres deep
profile-not-placed = not placed yet
profile-check = Check my marks
profile-check-waits = You can press “Check my marks” when each mark has a depth or is “not in my water”.
profile-no-layers = I see no layers
profile-problem-unreadable = One depth in metres, please, like { $example }.
profile-problem-above-surface = Depth counts down from the surface, where it is 0.
profile-problem-too-deep = Your last reading is at { $last } m. Below it nothing is known.
profile-problem-above-neighbour = This lies above “{ $mark }” at { $depth } m, but belongs below it. Move one of the two.
profile-problem-below-neighbour = This lies below “{ $mark }” at { $depth } m, but belongs above it. Move one of the two.
profile-problem-give = Give or take is a length in metres, like { $example }. It may stay empty.
profile-not-yet = No profile yet: it needs readings at two depths or more. Type or paste them on Log.
profile-not-yet-one = There are readings at one depth only. A profile needs at least one more.

## An early check

profile-early =
    { $count ->
        [one] Checking now shows the answer to question { $numbers }.
       *[other] Checking now shows the answers to questions { $numbers }.
    }
profile-early-more =
    { $count ->
        [one] It then earns no points. Your marks stay as they are, either way.
       *[other] They then earn no points. Your marks stay as they are, either way.
    }
profile-early-answer-first = Answer { $numbers } first
profile-early-check = Check now
profile-list-one = { $first }
profile-list-last = { $first } and { $last }
profile-list-more = { $first }, { $rest }

## Facts that need no cover

profile-warmest = Warmest { $temp } °C, at { $depth } m
profile-warmest-surface = Warmest { $temp } °C, at the surface
profile-coldest = Coldest { $temp } °C, at { $depth } m
profile-coldest-surface = Coldest { $temp } °C, at the surface
profile-apart = Down and up apart, at most { $apart } °C
profile-assumed = Read once: ± { $assumed } °C is assumed, and the ranges rest on it
profile-assumed-few = { $count ->
    [one] Only one mark was read twice: ± { $assumed } °C is assumed, and the ranges rest on it
   *[other] Only { $count } marks were read twice: ± { $assumed } °C is assumed, and the ranges rest on it
}
profile-example = An example: an invented pond, not measured
profile-legs-settling-warmer = Going down read { $mean } °C warmer on average, most in the steep part, as a probe does that is still settling. Next time, wait longer.
profile-legs-settling-colder = Going down read { $mean } °C colder on average, most in the steep part, as a probe does that is still settling. Next time, wait longer.
profile-legs-warmer = Going down read { $mean } °C warmer on average. Something changed in between: the water, the boat’s place, or the probe.
profile-legs-colder = Going down read { $mean } °C colder on average. Something changed in between: the water, the boat’s place, or the probe.

## Readings, as the cursor speaks them

profile-reading-both = <b>At { $depth } m</b> { $down } °C going down, { $up } °C coming up
profile-reading-down = <b>At { $depth } m</b> { $temp } °C going down
profile-reading-up = <b>At { $depth } m</b> { $temp } °C coming up
profile-reading-one = <b>At { $depth } m</b> { $temp } °C

## Layers and words in place of a number

profile-found-title = What the rules found
profile-thermocline = Thermocline
profile-weak-thermocline = Thermocline, a weak one
profile-mixed-layer-to = Mixed layer, down to
profile-mixed-layer-at-least = Mixed layer, down to at least
profile-mixed-layer-today = Mixed layer today, down to
profile-deep-layer = Deep layer
profile-deep-layer-from = Deep layer, from
profile-deep-layer-deeper = Deep layer, deeper than
profile-warm-today = Today’s warm layer
profile-today-steepest = Today’s warm layer, steepest at
profile-under-it = Under it
profile-steepest-step = Steepest step
profile-warms-fastest = Warms fastest at
profile-densing = Density changes most at
profile-ice-other-layers = Mixed layer, deep layer
profile-unit-m = m
profile-unit-c-per-m = °C per metre
profile-none = none
profile-cannot-tell = can’t tell
profile-not-under-ice = not for such water
profile-even-water = even water, { $temp } °C
profile-slow-water = cools slowly
profile-range = { $from } to { $to } m
profile-could-be = Could be { $range }.
profile-quarter-metre = a quarter of a metre
profile-half-metre = half a metre
profile-one-metre = one metre
profile-some-metres = { $metres } m
profile-an-answer = That is an answer, and you can hand it in like any depth.

## The student's mark beside it

profile-inside = Yours, <mine>{ $mine } m</mine>, is inside the range: <b>{ $range }</b>.
profile-above = Yours, <mine>{ $mine } m</mine>, is { $far } m above the range: <b>{ $range }</b>.
profile-below = Yours, <mine>{ $mine } m</mine>, is { $far } m below the range: <b>{ $range }</b>.
profile-far-above = Yours, <mine>{ $mine } m</mine>, is { $far } m above the range: <b>{ $range }</b>. { $look }
profile-far-below = Yours, <mine>{ $mine } m</mine>, is { $far } m below the range: <b>{ $range }</b>. { $look }
profile-look-flattest = Look where the line lies flattest: there the water changes fastest.
profile-look-mixed = Look where it has become { $drop } °C colder.
profile-look-mixed-warmer = Look where it has become { $drop } °C warmer.
profile-look-steep-ends = Look where the steep part ends.
profile-refused-found = You said <mine>not in my water</mine>. The rules find it: <b>{ $range }</b>. { $look }
profile-refused-weak = You said <mine>not in my water</mine>. There is a weak one: <b>{ $range }</b>.
profile-refused-warming = You said <mine>not in my water</mine>. No thermocline of the warm season, but here it warms fastest: <b>{ $range }</b>.
profile-refused-today = You said <mine>not in my water</mine>. True for a thermocline of the season; this one is today’s.
profile-refused-agreed = You said <mine>not in my water</mine>. So do the rules.
profile-no-layers-agreed = You said <mine>no layers</mine>. So do the rules.
profile-refused-at-least = You said <mine>not in my water</mine>: it ends deeper than your readings, if it ends.
profile-short-of-at-least = You set it at <mine>{ $mine } m</mine>. The water goes on like that, down to { $least } m at least.
profile-as-far-as-at-least = Yours, <mine>{ $mine } m</mine>, is your last reading. It reaches at least that far.

## Rules

profile-rule-step = Rule: the middle of the steepest step. From { $range } the water lost { $drop } °C in { $thickness }: { $gradient } °C per metre.
profile-rule-main-step = Rule: the middle of the steepest step of the main layer, { $gradient } °C per metre.
profile-rule-gentle-step = Rule: the middle of the steepest step, { $gradient } °C per metre. Its neighbours are nearly as steep, so the range is wide.
profile-rule-equal-steps =
    { $count ->
        [2] Rule: the middle of the steepest step. Two steps are equally steep, { $gradient } °C per metre each.
       *[other] Rule: the middle of the steepest step. { $count } steps are equally steep, { $gradient } °C per metre each.
    }
profile-rule-warming-step = Rule: the middle of the steepest warming step. From { $range } the water gained { $gain } °C in { $thickness }: { $gradient } °C per metre.
profile-rule-equal-warming-steps =
    { $count ->
        [2] Rule: the middle of the steepest warming step. Two steps are equally steep, { $gradient } °C per metre each.
       *[other] Rule: the middle of the steepest warming step. { $count } steps are equally steep, { $gradient } °C per metre each.
    }
profile-rule-mixed = Rule: the first depth { $drop } °C colder than at { $reference } m.
profile-rule-mixed-at-least = Rule: the first depth { $drop } °C colder than at { $reference } m. Your cast never gets there, so this depth is “at least”.
profile-rule-mixed-at-least-small = Rule: the first depth { $drop } °C colder than at { $reference } m. Your whole cast differs by less, so this rule cannot see the layer that is there: this depth is “at least”.
profile-rule-mixed-at-least-warmer = Rule: the first depth { $drop } °C warmer than at { $reference } m. Your cast never gets there, so this depth is “at least”.
profile-rule-mixed-density = Rule: from top to bottom the density gains less than { $gain } kg per m³. A step of { $drop } °C does not end the layer here, because so near to 4 °C it hardly changes the density.
profile-rule-mixed-little = Rule: from top to bottom the density gains less than { $gain } kg per m³. A step of { $drop } °C does not end the layer here, because it hardly changes the density.
profile-rule-mixed-outvoted = Rule: top and bottom are compared over several readings, and by these they hardly differ in density. A step of { $drop } °C in so few of them does not end the layer.
profile-rule-mixed-warmer = Rule: the first depth { $drop } °C warmer than at { $reference } m.
profile-rule-mixed-today = Rule: the first depth { $drop } °C colder than at { $reference } m. Here that falls in today’s warm layer.
profile-rule-mixed-today-warmer = Rule: the first depth { $drop } °C warmer than at { $reference } m. Here that falls in today’s warm layer.
profile-rule-deep = Rule: below the unbroken run of steps that each lose at least { $steep } °C per metre.
profile-rule-deep-joined = Rule: below the unbroken run of steps that each lose at least { $steep } °C per metre, or so nearly that your readings cannot tell.
profile-rule-deep-main = Rule: below the steep layer across which the density changes most.
profile-note-cut-off = The cast ends at { $last } m, in the steep part: the thermocline could also lie deeper than this range.
profile-note-ambiguous = Another step is just as steep, in another place. The upper one counts.
profile-note-tries-scatter = Tried again and again, the steepest step falls almost anywhere: “can’t tell” is an honest answer too.
profile-note-two-places = The range is in two places: between them the water changes more slowly.

## Other rules

profile-rule-steepest-middle = Middle of the steepest step
profile-rule-densest = Where density changes fastest
profile-rule-temp-drop = { $drop } °C colder than at { $reference } m
profile-rule-temp-rise = { $drop } °C warmer than at { $reference } m
profile-rule-density-rise = { $rise } kg per m³ denser than at { $reference } m
profile-rule-first-steep-top = Top of the first step of at least { $steep } °C per metre
profile-rule-first-steep-middle = Middle of that step
profile-rule-balance-point = Balance point of the longest bar and its neighbours
profile-rule-parabola = Top of a curve through those bars
profile-rule-smooth-curve = Steepest place of a smooth curve through the means
profile-rule-first-dense-top = Top of the first step that gains at least { $gain } kg per m³ per metre
profile-rule-sharpest-bend = Where the line bends most towards colder
profile-rule-greatest-angle = Greatest angle between a straight line above and one below
profile-rule-broken-stick = Best fit of two pieces: even water, then a straight slope
profile-rule-three-layers = Best fit of three pieces: even, slope, even
# $found: how many rules find a depth; $none: how many find none; $least, $most: the shallowest and the deepest of them;
# $within: how near to one another they are when they agree.
profile-rules-thermocline-apart =
    { $none ->
        [0] { $found } rules put the thermocline between <b>{ $least } and { $most } m</b>.
        [1] { $found } rules put the thermocline between <b>{ $least } and { $most } m</b>, 1 finds none.
       *[other] { $found } rules put the thermocline between <b>{ $least } and { $most } m</b>, { $none } find none.
    }
profile-rules-thermocline-agree =
    { $none ->
        [0] { $found } rules agree to { $within } m on the thermocline: <b>{ $least } m</b>.
        [1] { $found } rules agree to { $within } m on the thermocline: <b>{ $least } m</b>, 1 finds none.
       *[other] { $found } rules agree to { $within } m on the thermocline: <b>{ $least } m</b>, { $none } find none.
    }
profile-rules-mixed-apart =
    { $none ->
        [0] { $found } rules put the end of the mixed layer between <b>{ $least } and { $most } m</b>.
        [1] { $found } rules put the end of the mixed layer between <b>{ $least } and { $most } m</b>, 1 finds none.
       *[other] { $found } rules put the end of the mixed layer between <b>{ $least } and { $most } m</b>, { $none } find none.
    }
profile-rules-mixed-agree =
    { $none ->
        [0] { $found } rules agree to { $within } m on the end of the mixed layer: <b>{ $least } m</b>.
        [1] { $found } rules agree to { $within } m on the end of the mixed layer: <b>{ $least } m</b>, 1 finds none.
       *[other] { $found } rules agree to { $within } m on the end of the mixed layer: <b>{ $least } m</b>, { $none } find none.
    }

## Weak, not tellable, two layers, cut off

profile-weak-title = Weakly layered
profile-no-steep-layer = The water cools downward, but no step reaches { $steep } °C per metre: no steep layer (metalimnion) by that rule.
profile-no-steep-layer-chance = The water cools downward, but no step of at least { $steep } °C per metre is more than chance: no steep layer (metalimnion) by that rule.
profile-no-deep = You set one at <mine>{ $mine } m</mine>. The rule needs a steep layer above it, and there is none.
profile-no-deep-even-below = You set one at <mine>{ $mine } m</mine>. Below it the water hardly changes, but the rule needs a steep layer above.
profile-cannot-tell-title = These readings can’t tell
profile-cannot-tell-lead = The thermocline could be anywhere from { $range }, more than half of your cast. The steepest step is one of many that your readings cannot tell apart.
profile-cannot-tell-refused = You said <mine>not in my water</mine>. With these readings nobody can say more.
profile-cannot-tell-inside = Yours, <mine>{ $mine } m</mine>, is inside the range: <b>{ $range }</b>. So is more than half of your cast.
profile-would-be = Rule: the middle of the steepest step. It would be { $value } m, { $gradient } °C per metre, with a range of { $range }.
profile-would-be-two-places = Rule: the middle of the steepest step. It would be { $value } m, { $gradient } °C per metre, with a range of { $range } in more than one place.
profile-would-settle = What would settle it: a longer wait at each mark, or a second cast to average with this one.
profile-anywhere = It could be anywhere from { $range }.
profile-two-title = Two steep layers
profile-two-lead = The main one lies at { $range }. The one near the top is likely from today’s sun.
profile-more-layers =
    { $count ->
        [2] There are two steep layers. The main one is where the density changes most.
       *[other] There are { $count } steep layers. The main one is where the density changes most.
    }
profile-warm-today-note = Could be { $range }. A steep part near the surface, another below it.
profile-season-note = The season’s, counted from 2 m: { $value } m, could be { $range }.
profile-season-at-least = The season’s, counted from 2 m: at least { $least } m.
profile-season-inside = Yours, <mine>{ $mine } m</mine>, is inside the range of the season’s: <b>{ $range }</b>, counted from 2 m.
profile-season-above = Yours, <mine>{ $mine } m</mine>, is { $far } m above the season’s: <b>{ $range }</b>, counted from 2 m.
profile-season-below = Yours, <mine>{ $mine } m</mine>, is { $far } m below the season’s: <b>{ $range }</b>, counted from 2 m.
profile-cut-off-title = The cast ends in the steep part
profile-cut-off-lead = At { $last } m the water still loses { $gradient } °C per metre. Below there may be a deep layer; these readings stop before it.
profile-cut-off-refused = You said <mine>not in my water</mine>: not in these readings.
profile-cut-off-placed = You set it at <mine>{ $mine } m</mine>. Down to { $last } m the temperature still changes fast, so the deep layer begins deeper.
profile-cut-off-note = “Deeper than { $last } m” is the full answer wherever a question asks for it.

## Mixed

profile-mixed-title = No thermocline in this water
profile-mixed-title-few = These readings show no thermocline
profile-mixed-lead = { $top } to { $last } m the water differs by { $differs } °C. { $why }
profile-from-surface = From the surface
profile-from-depth = From { $depth } m
profile-mixed-no-step = No step comes near { $steep } °C per metre. The water is mixed.
profile-mixed-below = No step reaches { $steep } °C per metre, and top and bottom hardly differ in density. The water is mixed.
profile-mixed-chance = A step reaches { $gradient } °C per metre, but top and bottom are alike: readings like yours make such a step by chance. The water is mixed.
profile-mixed-by-density = A step reaches { $gradient } °C per metre, but in water this cold the density hardly differs. A wind can mix it, so by the rules it is mixed.
profile-mixed-by-little = A step reaches { $gradient } °C per metre, but from top to bottom the density gains less than { $gain } kg per m³. A wind can mix that, so by the rules it is mixed.
profile-mixed-last-reading = One step reaches { $gradient } °C per metre, but only the last reading shows it. Read more marks there before you call it a layer.
profile-mixed-few-readings = One step reaches { $gradient } °C per metre, but too few readings show it. Read more marks there before you call it a layer.
profile-mixed-thermocline = You set one at <mine>{ $mine } m</mine>. The steepest step of all is { $gradient } °C per metre, and the density hardly changes.
profile-mixed-thermocline-few = You set one at <mine>{ $mine } m</mine>. One step reaches { $gradient } °C per metre, but too few readings show it.
profile-mixed-deep-few = You set one at <mine>{ $mine } m</mine>. Too few readings show denser water there.
profile-mixed-deep = You set one at <mine>{ $mine } m</mine>. The water there is hardly denser than above it.
profile-steepest-chance = { $range }. Readings like yours make a step like that by chance: only one steeper than { $from } °C per metre would be more.
profile-steepest-real = { $range }. Chance alone makes a step above { $from } °C per metre only about one time in twenty.

## Under ice

profile-ice-title = Colder on top, as under ice
profile-ice-lead = From { $top } °C at the top the water warms to { $bottom } °C. Water is densest near 4 °C, so the warmer water lies below and can stay there.
profile-ice-lead-warm = From { $top } °C at the top the water warms to { $bottom } °C. Water is densest near 4 °C, so up to there the warmer water lies below as it should. Warmer still, it would be lighter again: salt may hold it down, or a reading is off.
profile-densing-higher = From { $range }. Higher up than the fastest warming: near 4 °C a degree hardly changes the density.
profile-densing-step = From { $range }.
profile-ice-note = Those rules are for water that is warm on top. If there was ice, depth counts from the water level in the hole.
profile-ice-other-marks =
    { $count ->
        [one] One more mark of yours stays on record. There is nothing to compare it with.
       *[other] Two more marks of yours stay on record. There is nothing to compare them with.
    }

## Unstable

profile-unstable-title = Heavier water on top
profile-unstable-colder = Down to { $bottom } m the water is { $above } °C, below it { $below } °C. Colder water is heavier here and sinks, so this does not last.
profile-unstable-warmer = Down to { $bottom } m the water is { $above } °C, below it { $below } °C. In water this cold the warmer is the heavier one and sinks, so this does not last.
profile-unstable-either = Either something went wrong with these readings, or you caught the lake in the act of cooling, or the water below is saltier, and salt makes it heavier. Layers are not marked until that is clear. “It was like that” keeps every reading.
profile-unstable-either-warming = Either something went wrong with these readings, or you caught the lake in the act of warming, or the water below is saltier, and salt makes it heavier. Layers are not marked until that is clear. “It was like that” keeps every reading.
profile-unstable-kept = You said that it was like that: the lake is turning over, or the water below is saltier. By temperature alone no layers can be marked here.

## Today's warm layer only

profile-today-title = Only a warm layer of today
profile-today-lead = The only steep part is at the top, { $range }. A sunny, calm day makes such a layer; a windy night can take it away.
profile-today-under = From { $range } it differs by { $differs } °C. No thermocline of the season, no deep layer.
profile-today-under-slow = From { $range } it cools by { $differs } °C, but no steep layer of the rules lies there: no deep layer can be marked.
profile-today-deep = You set a deep layer at <mine>{ $mine } m</mine>. Under today’s layer the water is even.
profile-today-deep-slow = You set a deep layer at <mine>{ $mine } m</mine>. The water cools slowly there, and no steep layer of the rules lies above it.

## Too few depths

profile-few-title = Too few depths for the rules
profile-few-lead = You have { $count } depths over { $span } m. The rules need at least four depths, over at least { $least } m.
profile-few-more = Your readings and your marks are kept. A few more marks on the cable would settle it.

## The picture in one sentence

profile-alt-empty = No readings yet.
profile-alt-one = One depth so far: { $first }.
profile-alt-falls = Temperature falls from { $first } to { $last }.
profile-alt-rises = Temperature rises from { $first } to { $last }.
profile-alt-even = Temperature is nearly the same from { $first } to { $last }.
profile-at-surface = { $temp } °C at the surface
profile-at-depth = { $temp } °C at { $depth } m
profile-alt-more = { $first } { $more }
profile-alt-steepest = It falls fastest from { $range }.
profile-alt-warms = It rises fastest from { $range }.
profile-alt-cannot-tell = These readings can’t tell where it falls fastest.
profile-alt-no-thermocline = There is no thermocline.
profile-alt-unstable = Heavier water lies on top.
profile-alt-warm-today = Today’s warm layer lies at { $range }.
profile-alt-mixed = The mixed layer ends at { $depth } m.
profile-alt-deep = The deep layer begins at { $depth } m.
profile-alt-cut-off = It is still steep at the last reading, at { $depth } m.
