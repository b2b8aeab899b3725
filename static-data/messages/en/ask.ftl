### Questions: what is asked, hinted, judged and explained.

## Around every question

ask-check = Check
ask-hint = A hint
ask-hint-another = Another hint
ask-hint-elsewhere = One worked elsewhere
ask-show-me = Show me
ask-cannot-tell = The readings can’t tell
ask-next = Next question
ask-again = Answer again
ask-to-profile = Back to the profile
ask-to-check = Check my marks on Profile
ask-hint-head = Hint { $n } of 3
ask-hint-worked = Hint { $n } of 3, the same at another place
ask-first-answer = first answer: <mine>{ $yours }</mine>
ask-before = before: <mine>{ $yours }</mine>
ask-written = { $yours }
ask-written-then = { $yours }, { $next }
ask-on-profile = on Profile: <mine>{ $mark }</mine>
ask-before-profile = on Profile: <mine>{ $mark }</mine>, then: <mine>{ $yours }</mine>
ask-first-was = Your first answer was <mine>{ $yours }</mine>.
ask-first-on-profile = On Profile you had <mine>{ $mark }</mine>.
ask-shown = Shown: <b>{ $answer }</b>.
ask-shown-yours = Shown: <b>{ $answer }</b>. Yours: <mine>{ $yours }</mine>.
ask-third = That was the third try. The answer: <b>{ $answer }</b>.
ask-cannot-tell-yes = Right. These readings cannot tell, and saying so is the full answer.
ask-cannot-tell-no = These readings can tell this one. A hint says where to look.
ask-locked = This question opens when each of your three marks on Profile is placed, or said not to be there.
ask-locked-ask = The next question waits for your marks
ask-locked-go = Place your marks
ask-waits-number = You can press “Check” when a box is filled in.
ask-waits-list = You can press “Check” when you have chosen from the list.
ask-waits-choice = You can press “Check” when you have chosen an answer.
ask-waits-facts = { $chosen } of { $wanted } chosen
ask-waits-facts-many = { $chosen } chosen: leave only { $most }.
ask-all-done = { $count ->
    [one] The question is done. It stays in your notebook.
   *[other] All { $count } questions are done. They stay in your notebook.
}
ask-note-first-stays = Your first answer stays on record. Later ones stand beside it.
ask-note-show-me = “Show me” does the sum on your own water. A shown answer earns no points.
ask-note-revealed = The check of your marks has shown this answer, so it earns no points. Doing it is worth it all the same.
ask-note-units = Units to choose from: °C, °C per metre, m.
ask-note-watt = W is short for watt: one joule each second.
ask-note-units-sources = Units to choose from: °C, °C per metre, m. The mean, going down and coming up all count, each by its own numbers.
ask-note-digits = { $n ->
    [0] Your readings carry no decimals. More digits say no more.
    [one] Your readings carry one decimal. More digits say no more.
   *[other] Your readings carry { $n } decimals. More digits say no more.
}
ask-note-digits-depth = Two decimals of a metre are a centimetre. Your cable cannot do better.
ask-note-sign = “{ $colder }” already says which way, so the number needs no minus.
ask-note-sign-rate = “{ $loses }” already says which way, so the number needs no minus.
ask-note-by-mean = That is by the mean of both.
ask-note-by-down = That is by your readings going down.
ask-note-by-up = That is by your readings coming up.
ask-slip-number = <mine>{ $yours }</mine> is not a number yet. Write it like 4.5 or 4,5.
ask-slip-one-number = <mine>{ $yours }</mine> is a range. Here one number is enough.
ask-slip-two-depths = <mine>{ $yours }</mine> does not give two depths in metres. Write one in each box.
ask-slip-no-marks = <mine>{ $yours }</mine> is not from one mark to another. Take two depths where you have a reading.
ask-slip-unit = <mine>{ $yours }</mine> is the right number. Its unit is another one; choose again, it costs nothing.
ask-slip-unit-close = <mine>{ $yours }</mine> is close enough as a number. Its unit is another one; choose again, it costs nothing.
ask-slip-fahrenheit = <mine>{ $yours }</mine>: the number is right in °F, but its unit is missing or wrong. Write “{ $number } °F”, or work it out in °C; it costs nothing.
ask-slip-point = <mine>{ $yours }</mine>: did the decimal point slip? Write it again, it costs nothing.
ask-which-rule = You said <mine>{ $yours }</mine>. That fits “{ $rule }”. Your class uses “{ $class }”. Which rule did you use?
ask-yes-rounded = <mine>{ $yours }</mine> is right: it is { $value }, rounded.
ask-yes-close = <mine>{ $yours }</mine> is close enough: your readings give { $value }.
ask-yes-other-rule = <mine>{ $yours }</mine> is right, by another rule: “{ $rule }”.
ask-not-that-rule = <mine>{ $yours }</mine> is not what that rule gives here. Go through its steps once more.
ask-read-off = Then start from a rule: <mine>{ $yours }</mine> is not where your class’s rule puts it.

## Words used inside sentences

ask-word-loses = loses
ask-word-gains = gains
ask-word-lose = lose
ask-word-gain = gain
ask-word-strip-lost = °C lost per metre
ask-word-strip-gained = °C gained per metre
ask-word-lost = lost
ask-word-gained = gained
ask-word-drop = drop
ask-word-rise = rise
ask-word-colder = colder
ask-word-warmer = warmer
ask-word-half-metre = <b>half</b> a metre
ask-word-quarter-metre = a <b>quarter</b> of a metre
ask-word-one-metre = one metre
ask-value-c = { $value } °C
ask-value-c-per-m = { $value } °C per metre
ask-value-m = { $value } m
ask-value-from-to = { $from } to { $to } m

## Fields

ask-name-unit = unit
ask-name-source = read from
ask-name-rule = rule used
ask-name-from = from, metres
ask-name-to = to, metres
ask-name-depth = depth, metres
ask-name-temp = temperature, °C
ask-label-from = From
ask-label-source = I read from
ask-label-rule = My rule
ask-after-m = m
ask-after-m-to = m  to
ask-after-m-and = m  and
ask-after-c = °C
ask-after-each-metre = °C in each metre
ask-unit-choose = choose a unit
ask-unit-c = °C
ask-unit-c-per-m = °C per metre
ask-unit-m = m
ask-source-mean = the mean of both
ask-source-down = going down
ask-source-up = coming up
ask-grip-from = from
ask-grip-to = to
ask-grip-steepest = steepest
ask-spoken-depth = { $depth } metres deep
ask-spoken-unset = not placed yet
ask-rule-choose = choose your rule
ask-rule-none = No rule, I read it off
ask-rule-steepest-middle = Middle of the steepest step
ask-rule-densest-step = Where density changes fastest
ask-rule-temp-drop = 1.0 °C colder than at 0.5 m
ask-rule-density-rise = 0.1 kg per m³ denser than at 0.5 m
ask-rule-first-steep-top = Top of the first step of at least 1 °C per metre
ask-rule-first-steep-middle = Middle of that step

## Sums

ask-sum-minus = { $a } − { $b } =
ask-sum-divided = { $a } ÷ { $b } =
ask-sum-c = { $value } °C
ask-sum-m = { $value } m
ask-sum-number = { $value }
ask-sum-nothing = { "" }
ask-sum-change = what the water { $lost }
ask-sum-from-to = from { $from } to { $to } m
ask-sum-over = over this step
ask-sum-per-metre = °C per metre
ask-fits-c = Anything from { $low } to { $high } counts as right: your readings are written to { $digit } °C.
ask-fits-c-rounded = Anything from { $low } to { $high } counts: your readings go in steps of { $digit } °C, and you may round them to { $to } °C.

## Why these questions

ask-about-mixed = A mixed lake is a full answer. These questions are its own.
ask-about-weak = Your water is weakly layered. Where the readings cannot tell, “The readings can’t tell” is a full answer.
ask-about-cannot-tell = The steepest step could lie in more than half of your cast. Where the readings cannot tell, “The readings can’t tell” is a full answer.
ask-about-inverse = Colder water lies on top, as under ice. These questions ask where it gets warmer.
ask-about-unstable = Heavier water lies on top of lighter water. First find out which readings say so.
ask-about-today = There is only a warm layer of today, near the surface. These questions ask for it.
ask-about-too-few = With fewer than 4 depths, or less than 1.5 m of water, layers cannot be looked for. These questions work all the same.
ask-dropped-1 = “How warm is it at …?” is left out: read upside down it would give the same answer in your water.
ask-dropped-4 = “How much colder …?” is left out: no two marks of your water differ enough.
ask-dropped-5 = “How many °C in each metre?” is left out: on your marks a sum with a wrong division, or with none, would look right.
ask-dropped-29 = “Fill in three bars” is left out: your marks give no three steps that change enough to tell a right sum from one with a wrong division, or with none.
ask-dropped-6 = “Where does it change fastest?” is left out: no step of your water stands out.
ask-dropped-7 = “How deep is the thermocline?” is left out: your water has none.
ask-dropped-8 = “How sure is it?” is left out: there is no thermocline to be sure of.
ask-dropped-9-deep = “Where does your mixed layer end?” is left out: nowhere in your cast is it that much colder.
ask-dropped-9-same = “Where does your mixed layer end?” is left out: in your water it ends in the steepest step, where the thermocline would look right too.
ask-dropped-9-warmer = “Where does your mixed layer end?” is left out: in your water it ends where it gets warmer, and the question asks for colder water.
ask-dropped-13 = “How well do down and up agree?” is left out: no mark was read both going down and coming up.
ask-dropped-13-one = “How well do down and up agree?” is left out: only one mark was read twice.
ask-dropped-101 = “Warmest minus coldest” is left out: near 0 °C a single temperature would look right too.
ask-dropped-102 = “How big must a difference be?” is left out: your two readings agree too well to tell the sums apart.
ask-dropped-103 = “Is any step big enough?” is left out: there is no step between two marks.
ask-dropped-104 = “Which facts show it?” is left out: your cast has too few facts to choose from.
ask-dropped-105 = “Which readings show heavier water on top?” is left out: there are no other pairs to choose from.

## How warm at a depth

ask-1 = How warm is your water at { $depth } m?
ask-1-label = It has
ask-1-name = temperature
ask-1-note = Read it from the picture. Half a degree either way is fine.
ask-1-yes = <mine>{ $yours }</mine> is what your water has at { $depth } m.
ask-1-almost = <mine>{ $yours }</mine> is close. Go straight up from the line once more and read the numbers along the top.
ask-1-height = 0 is at the top, like the pond. Go <b>down</b> to { $depth } m.
ask-1-swapped = <mine>{ $yours }</mine> is the depth. The temperature stands along the top.
ask-1-no = <mine>{ $yours }</mine> is not that. First find { $depth } m at the left, then go across to the line.
ask-1-hint-1 = 0 is at the top of the picture, like the surface of the pond. Find { $depth } m on the cable at the left.
ask-1-hint-2 = From there go across to the line, then straight up to the numbers along the top.
ask-1-worked = At { $depth } m, across and up:
ask-1-worked-gloss = where the line stands
ask-1-sum-down = Going down, at { $depth } m:
ask-1-sum-up = Coming up, at { $depth } m:
ask-1-sum-one = Your reading at { $depth } m:
ask-1-fits = Anything from { $low } to { $high } °C is read well from the picture.
ask-1-own-words = In your own words: how do you find { $depth } m in the picture?

## How much colder

ask-4 = How much { $colder } is your water at { $lower } m than at { $upper } m?
ask-4-label = It is { $colder } by
ask-4-name = how much { $colder }
ask-4-yes = <mine>{ $yours }</mine> is right.
ask-4-almost = <mine>{ $yours }</mine> is close. Read both numbers again and take one from the other.
ask-4-sum = <mine>{ $yours }</mine> is the two added together. Take the two apart: the warmer less the colder.
ask-4-one = <mine>{ $yours }</mine> is one of the two temperatures. Take the two apart: the warmer less the colder.
ask-4-no = <mine>{ $yours }</mine> is not the difference. First write down the two temperatures.
ask-4-hint-1 = Look at two numbers in the column “Mean”: the one at { $upper } m and the one at { $lower } m.
ask-4-hint-2 = Take the colder one from the warmer one. What is left is the difference.
ask-4-own-words = In your own words: why do you take one from the other?

## How many °C in each metre

ask-5 = How many °C does your water { $lose } in each metre?
ask-5-lead = Take the stretch from { $from } to { $to } m.
ask-5-label = It { $loses }
ask-5-name = how much it { $loses }
ask-5-yes = <mine>{ $yours }</mine> is right.
ask-5-almost = <mine>{ $yours }</mine> is close. Do the { $drop } again, then the division.
ask-5-not-divided = <mine>{ $yours }</mine> is the whole { $drop }, over { $length }. One thing is missing: divide by { $length } to get °C per metre.
ask-5-multiplied = <mine>{ $yours }</mine> is the { $drop } times the step. Divide instead: what would one whole metre have?
ask-5-upside-down = <mine>{ $yours }</mine> is metres per degree. Turn the division round: degrees by metres.
ask-5-by-depth = <mine>{ $yours }</mine> is the { $drop } divided by a depth. Divide by the step: how far the two marks are apart.
ask-5-no = <mine>{ $yours }</mine> is not it. First work out the { $drop } between the two marks, in °C.
ask-5-hint-1 = Look at the two depths, and at how far apart they are.
ask-5-hint-2 = “°C per metre” means: in one whole metre. Take the { $drop }, then divide it by the step in metres.
ask-5-own-words = In your own words: why do you divide by the step?

# Kind 29: three bars.
ask-29 = Fill in three bars: how many °C does your water { $lose } in each metre?
ask-29-lead = Subtract the two temperatures of each pair, then divide by the step. Each bar stands in the picture as soon as you have it.
ask-29-label = { $from } to { $to } m
ask-29-name = °C per metre from { $from } to { $to } m
ask-29-note = Read down, up or the mean, whichever you like.

## Where it changes fastest

ask-6 = Between which two marks does your water change fastest, and how fast is that?
ask-6-place = Between which two marks does your water change fastest?
ask-6-warmer = Between which two marks does it get warmer fastest on the way down, and how fast is that?
ask-6-warmer-place = Between which two marks does it get warmer fastest on the way down?
ask-6-look-below = Look below { $depth } m. What lies above is likely the sun of today.
ask-6-look-between = Your water has more than one steep layer. Look from { $from } to { $to } m, at the one with the biggest difference in weight across it.
ask-6-label = It { $loses }
ask-6-name = °C per metre
ask-6-note = Use the mean. “{ $strip }” opens when you have it.
ask-6-note-no-speed = Over a whole metre the change and the change per metre are one number, so “how fast” is not asked.
ask-6-note-speed-not-tellable = “How fast” is not asked here: in your water a sum with a wrong division, or with none, could look right.
ask-6-yes = <mine>{ $yours }</mine> is the steepest step.
ask-6-too-long = <mine>{ $yours }</mine> is several steps, and the steepest is one of them. Name the two marks next to each other.
ask-6-today = <mine>{ $yours }</mine> lies in the warm layer of today. Look deeper.
ask-6-longer-step = <mine>{ $yours }</mine> changes most, but over a longer step. Divide each change by its own step.
ask-6-coldest = <mine>{ $yours }</mine> is the coldest place. It changes fastest where two neighbours differ most.
ask-6-bottom = <mine>{ $yours }</mine> is the bottom. It changes fastest where two neighbours differ most.
ask-6-first-steep = <mine>{ $yours }</mine> is the first step that reaches 1 °C per metre. A steeper one comes below.
ask-6-no = <mine>{ $yours }</mine> is not the steepest. In this picture the line runs flattest where the water changes fastest per metre: look for that stretch.
ask-6-waits = <mine>{ $yours }</mine> is kept. It is judged when the step is found.
ask-6-several = Your readings cannot tell the steepest step from its like between { $from } and { $to } m, so each of those counts.
ask-6-next-bar = The next bar is { $shorter } shorter. Your readings can tell bars apart from { $apart } on, so it does not count.
ask-6-hint-1 = Straight down means no change of temperature. Look where the line is flattest.
ask-6-hint-2 = Take the difference between each number of the column “Mean” and the one above it. Divide by the step, if the steps are not alike.
ask-6-own-words = In your own words: how does the line show where the water changes fastest?

## Depth of the thermocline

ask-7 = How deep is the thermocline in your water?
ask-7-today = At what depth does the water get colder fastest in today’s warm layer?
ask-7-warming = At what depth does it get warmer fastest on the way down?
ask-7-label = It lies at
ask-7-marked = On Profile you marked <mine>{ $yours }</mine>. Keep it, or move the mark: drag it, use the arrow keys, or type.
ask-7-refused = On Profile you said: not in my water. That stays on record. Where would you put it now?
ask-7-note = ↑ is shallower, ↓ is deeper, by 0.1 m; with Shift by one mark of the cable.
ask-7-yes = <mine>{ $yours }</mine> is inside the range of your readings.
ask-7-yes-one-way = Right by the rule of your class, from one way alone: <mine>{ $yours }</mine> lies in its steepest step.
ask-7-rule = Rule of your class: the middle of the steepest step, with all that cannot be told from it.
ask-7-rule-warming = Rule: the middle of the step where it gets warmer fastest, with all that cannot be told from it.
ask-7-wide = <mine>{ $yours }</mine> holds it, but it is wide. Give a single depth here.
ask-7-temperature = <mine>{ $yours }</mine> is a temperature. The answer is a depth, in metres.
ask-7-near-surface = <mine>{ $yours }</mine> is the warm layer of this afternoon. Look deeper.
ask-7-bottom = <mine>{ $yours }</mine> is the bottom. Look for the place where it changes fastest from one mark to the next.
ask-7-mirror = <mine>{ $yours }</mine> would be right if you counted from the bottom. 0 is at the surface: count down from there.
ask-7-almost = <mine>{ $yours }</mine> is close, but not inside. Compare the steps above and below your mark.
ask-7-no = <mine>{ $yours }</mine> is not it. First find the step where the line is flattest.
ask-7-hint-1 = Look where the line is flattest, or where the bar is longest.
ask-7-hint-2 = Take the two marks of that step. The depth asked for is half-way between them.
ask-7-worked = Middle of { $from } and { $to } m:
ask-7-worked-gloss = another step
ask-7-sum = Middle of { $from } and { $to } m:
ask-7-sum-gloss = the steepest step
ask-7-fits = Anything from { $from } to { $to } m fits your readings.
ask-7-range-later = How far it could lie to either side has a question of its own.
ask-7-not-tellable = The range reaches over half of your cast, so “The readings can’t tell” is as full an answer here.
ask-7-own-words = In your own words: how do you find this depth in a profile?

## How sure

ask-8 = How sure is the depth of your thermocline?
ask-8-today = How sure is the depth where today’s warm layer gets colder fastest?
ask-8-lead = Give the depths between which it surely lies. Narrow is better, as long as your readings allow it.
ask-8-label = It lies between
ask-8-note = The two grips in the picture and the two boxes are one answer.
ask-8-note-mark = On Profile you said <mine>{ $depth }, give or take { $give }</mine>; that stays on record.
ask-8-note-depth = On Profile you said <mine>{ $depth }</mine> and gave no range; that stays on record.
ask-8-yes = <mine>{ $yours }</mine> holds it, and is as narrow as your readings allow.
ask-8-narrow = <mine>{ $yours }</mine> is narrower than one step. Your probe is fine in <b>degrees</b>; your <b>depths</b> are further apart than that.
ask-8-whole = <mine>{ $yours }</mine> is most of your lake. True, but your readings know more.
ask-8-wide = <mine>{ $yours }</mine> holds it. Your readings allow a narrower answer: which steps could be the steepest?
ask-8-beside = <mine>{ $yours }</mine> has a good width and lies just beside it. Where is the middle of the steepest step?
ask-8-no = <mine>{ $yours }</mine> does not hold it. Start from the steepest step and go outward.
ask-8-hint-1 = Between two marks you have no reading. Which step could it be in?
ask-8-hint-2 = Take every step whose bar your readings cannot tell from the longest. From the first top to the last bottom is your range.
ask-8-worked = one whole step
ask-8-span = What cannot be told from the steepest step reaches from { $from } to { $to } m.
ask-8-fits = Any range that holds { $value } m and is { $least } to { $most } m wide fits your readings.
ask-8-own-words = In your own words: why can nobody be surer from these readings?

## End of the mixed layer

ask-9 = Where does your mixed layer end, by the { $drop } °C rule?
ask-9-lead = By that rule it ends where the water is { $drop } °C colder than at { $depth } m.
ask-9-rule = Rule of your class: { $drop } °C colder than at { $depth } m.
ask-9-label-temp = I look for
ask-9-label-pair = It lies between
ask-9-label-depth = In that step, at
ask-9-note = Three parts, three verdicts. The third is judged on the step you gave in the second.
ask-9-note-two = Two parts, two verdicts. In your water it ends at a mark, so there is no step to split.
ask-9-note-near = Two parts, two verdicts. In your water it ends so near to a mark that your readings cannot tell it from the mark, so the depth in the step is not asked.
ask-9-temp-yes = <mine>{ $yours }</mine> is the temperature to look for.
ask-9-temp-almost = <mine>{ $yours }</mine> is close. Read the mean at { $depth } m again.
ask-9-temp-no = <mine>{ $yours }</mine> is not it. Start from the mean at { $depth } m; the rule takes { $drop } °C from it.
ask-9-surface = <mine>{ $yours }</mine> starts from the surface. The rule starts from { $depth } m.
ask-9-previous = <mine>{ $yours }</mine> starts from the mark above. The rule always starts from { $depth } m.
ask-9-thermocline = <mine>{ $yours }</mine> is where the water changes fastest. The question is where the warm water <b>ends</b>.
ask-9-pair-yes = <mine>{ $yours }</mine> are the two marks.
ask-9-pair-long = <mine>{ $yours }</mine> holds it, over more than one step. Which two marks next to each other?
ask-9-pair-no = <mine>{ $yours }</mine> is not it. Go down the means to the first one that is colder than what you look for.
ask-9-depth-yes = <mine>{ $yours }</mine> is where the rule’s temperature is met.
ask-9-depth-almost = <mine>{ $yours }</mine> is close. Work out the fraction of the drop again.
ask-9-depth-outside = <mine>{ $yours }</mine> lies outside your step, { $from } to { $to } m.
ask-9-nearest = <mine>{ $yours }</mine> is the nearest mark. It lies part of the way: what fraction of the drop?
ask-9-depth-no = <mine>{ $yours }</mine> is not it. First: how much of the step’s drop is used up at your temperature?
ask-9-waits = <mine>{ $yours }</mine> is kept. It is judged when the two marks are found.
ask-9-temp-hint-1 = Look at the mean at { $depth } m: that is where the rule starts.
ask-9-temp-hint-2 = The rule looks for water that is { $drop } °C colder. Take that from the mean.
ask-9-temp-worked = starting from { $depth } m
ask-9-pair-hint-1 = Go down the column “Mean” with the temperature you look for in mind.
ask-9-pair-hint-2 = The upper mark is still warmer, the lower one colder. Stop at the first two like that.
ask-9-depth-hint-1 = At the upper mark nothing of the step’s drop is used up, at the lower mark all of it. How much at your temperature?
ask-9-depth-hint-2 = Fraction = upper mark less your temperature, divided by the drop over the step. Go that fraction of the step down.
ask-9-sum-target = what you look for
ask-9-sum-at = At { $depth } m:
ask-9-sum-warmer = warmer than { $target }
ask-9-sum-colder = { $target } or colder
ask-9-sum-still = still warmer
ask-9-sum-enough = as cold, or colder
ask-9-sum-to-lose = still to lose
ask-9-sum-whole = over the whole step
ask-9-sum-fraction = fraction of the step
ask-9-sum-place = { $top } + { $f } × { $height } =
ask-9-sum-end = by the rule
ask-9-fits = Anything from { $low } to { $high } m counts as right.
ask-9-class = By the rule of your class it lies between { $from } and { $to } m, at { $value } m.
ask-9-ends = By the rule it ends at { $value } m.
ask-9-own-words = In your own words: how does the rule find the end of the mixed layer?

## How well going down and coming up agree

ask-13 = How well do going down and coming up agree?
ask-13-lead = At each mark you have two readings, one going down and one coming up. From how far they are apart, say how far off one reading typically is.
ask-13-lead-one = Two readings have a hand in each difference, so one alone is off by less: about 0.886 times the mean difference.
ask-13-note-squares = Squares, then the root: each difference times itself, half the mean of these, then the square root.
ask-13-label = One reading is off by
ask-13-name = how far off one reading is
ask-13-label-way = I took
ask-13-name-way = which mean was taken
ask-13-way-choose = choose what you took
ask-13-way-unsigned = the mean without signs
ask-13-way-signed = the mean with plus and minus
ask-13-way-squares = squares, then the root
ask-13-yes = <mine>{ $yours }</mine> is how far off one of your readings typically is.
ask-13-almost = <mine>{ $yours }</mine> is close. Add the differences up again, without their signs.
ask-13-signed = In a mean with signs, plus and minus cancel. First drop the signs.
ask-13-no = <mine>{ $yours }</mine> is not it. First write down the difference at each mark, without its sign.
ask-13-hint-1 = Look at the numbers going down and coming up, mark by mark: how far apart are they?
ask-13-hint-2 = Drop the signs and take the mean of the differences. Two readings had a hand in each; for one reading take 0.886 times that mean.
ask-13-worked-at = apart at { $depth } m
ask-13-made-up = ({ $a } + { $b } + { $c }) ÷ 3 =
ask-13-sum-mean = { $n ->
    [one] The one difference:
   *[other] Mean of { $n } differences:
}
ask-13-sum-mean-gloss = signs dropped
ask-13-sum-times = 0.886 × { $mean } =
ask-13-sum-times-gloss = for one reading
ask-13-why = Why 0.886? In each difference two readings are off, so on average it is 1.128 times as much as what one of them is off. The other way round that makes 0.886.
ask-13-squares = The other way, by squares and their root, gives { $s } °C. Both ways count.
ask-13-fits = Anything from { $low } to { $high } °C counts as right.
ask-13-own-words = In your own words: why do the signs have to go first?

## Even water: warmest less coldest

ask-101 = How much warmer is your warmest reading than your coldest?
ask-101-label = It is warmer by
ask-101-name = how much warmer
ask-101-yes = <mine>{ $yours }</mine> is all that your whole cast differs by.
ask-101-almost = <mine>{ $yours }</mine> is close. Look for the warmest and the coldest number again.
ask-101-no = <mine>{ $yours }</mine> is not it. First find the warmest reading, then the coldest.
ask-101-hint-1 = Find the warmest and the coldest reading, at whatever depth.
ask-made-up = in another water
ask-101-gloss = warmest less coldest
ask-101-own-words = In your own words: what does this difference say about your water?

## Even water: what can be believed

ask-102 = How big must a difference be before you believe it?
ask-102-lead = Two readings of the same water lie closer together than 2.8 times what one reading is typically off, 95 times in 100. How much is that for yours?
ask-102-lead-once = Your water was read once, so take it that one reading is typically { $s } °C off. Two readings of the same water lie closer together than 2.8 times that, 95 times in 100. How much is it?
ask-102-lead-given = One of your readings is typically { $s } °C off. Two readings of the same water lie closer together than 2.8 times that, 95 times in 100. How much is it?
ask-102-label = At least
ask-102-name = smallest difference to believe
ask-102-yes = <mine>{ $yours }</mine> is where belief begins for your readings.
ask-102-almost = <mine>{ $yours }</mine> is close. Multiply again.
ask-102-typical = <mine>{ $yours }</mine> is what one reading is typically off. Chance alone often gives that much; it takes 2.8 times that.
ask-102-any = Then every difference would count. Two readings of the same water differ too.
ask-102-no = <mine>{ $yours }</mine> is not it. First: how far off is one reading, typically?
ask-102-hint-1 = Start from how far off one reading typically is: going down and coming up have told you.
ask-102-hint-1-given = Start from how far off one reading typically is: it stands under the question.
ask-102-hint-2 = Multiply what one reading is typically off by 2.8.
ask-102-worked = for another probe
ask-102-gloss = what you may believe
ask-102-sum = { $limit } × { $s } =
ask-102-why = Why 2.8? It is 1.96 times the root of 2: 1.96 keeps 95 of 100 inside, and the root is there because two readings are off at once.
ask-102-own-words = In your own words: why is a smaller difference not to be believed?

## Even water: is any step bigger

ask-103 = Is any step in your water big enough to believe?
ask-103-lead = Compare each mean with the one below it.
ask-103-label = I find
ask-103-name = what you find
ask-103-none = No step is big enough
ask-103-by-turns = At least one is, and not always colder below
ask-103-colder = At least one is, and always colder below
ask-103-note = Use the smallest difference you may believe, from the question before.
ask-103-note-given = In your water, believe a difference of { $limit } °C or more.
ask-103-yes = That is what your readings show.
ask-103-on-the-line = One step lies just on the line, so another answer would do as well.
ask-103-every = Means do differ from mark to mark, but by less than you may believe.
ask-103-no-step = At least one step is bigger than that. Go down the means once more.
ask-103-no = Look which way the bigger steps go.
ask-103-hint-1 = Look at the column “Mean”: where do two neighbours differ most?
ask-103-hint-2 = Take that difference and compare it with the smallest you may believe.
ask-103-biggest = The biggest step, { $from } to { $to } m, is { $drop } °C. You may believe { $limit } °C and more.
ask-103-own-words = In your own words: what makes a step big enough to believe?

## Even water: three facts

ask-104 = No layer in this water. Which three facts show it?
ask-104-lead = Every line is true. Only three of them show that the water is mixed.
ask-104-name = fact
ask-104-note = Choose three lines, in any order.
ask-104-range = From the surface to { $last } m it differs by { $apart } °C.
ask-104-no-step = No step loses { $steep } °C per metre; the steepest loses { $steepest }.
ask-104-weight = Top and bottom water weigh almost the same: { $gain } kg per m³ apart.
ask-104-densest = It is all near 4 °C, where a degree hardly changes what water weighs.
ask-104-never = Nowhere is it { $drop } °C colder than at { $depth } m.
ask-104-surface = The water at { $depth } m has { $temp } °C.
ask-104-legs = Going down and coming up differ by up to { $apart } °C.
ask-104-deepest = The deepest reading was taken at { $last } m.
ask-104-count = { $n ->
    [one] It was read at one depth.
   *[other] It was read at { $n } depths.
}
ask-104-yes = These three show it. In layered water none of them would be true.
ask-104-almost = Two of your three show it. Which of your lines would be true of layered water too?
ask-104-no = { $hits ->
    [0] None of your three shows it yet. Ask of each line: would it be true of layered water too?
   *[other] { $hits } of your three shows it. Ask of each line: would it be true of layered water too?
}
ask-104-hint-1 = Think of a layered lake in summer. Which lines could stand in its notebook too?
ask-104-hint-2 = Layers need a difference between top and bottom. Look for lines that say how small it is.
ask-104-hint-3 = “The pond is 9 m wide” is true of any water: it shows nothing. “It never differs by half a degree” could not be said of a layered one.
ask-104-shown = these three
ask-104-own-words = In your own words: how do you know that this water is mixed?

## Heavier water on top

ask-105 = Which readings show heavier water on top?
ask-105-lead = All these pairs are from your own cast. In only one of them the heavier water lies on top.
ask-105-label = This pair
ask-105-name = pair of readings
ask-105-pair = { $upper } °C at { $top } m, over { $lower } °C at { $bottom } m
ask-105-note = Above 4 °C, colder water is heavier. Below 4 °C it is lighter.
ask-105-yes = Here the heavier water lies on top. It cannot stay there for long.
ask-105-warm = In that pair the warmer, lighter water lies on top, as it should.
ask-105-hint-1 = For each pair ask: which of the two is colder?
ask-105-hint-2 = Above 4 °C the colder water is the heavier one. It should lie below.
ask-105-hint-3 = 9.0 °C over 12.0 °C would be heavy over light; 12.0 °C over 9.0 °C would be as it should be.
ask-105-weights = As fresh water, the upper weighs { $upper } kg per m³, the lower { $lower }.
ask-105-what-now = Either a reading is wrong, or the water was cooling at that moment, or the water below is saltier, and salt makes it heavier. Look at those readings on Log.
ask-105-own-words = In your own words: why can heavy water not stay on top?
