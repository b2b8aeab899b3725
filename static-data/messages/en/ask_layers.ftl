### Questions about depths, stretches and layers, the two ways, and what to read again.

## How deep is a temperature

ask-2 = How deep is { $temp } °C in your water?
ask-2-label = It has { $temp } °C at
ask-2-note = Read it from the picture. Half a step either way is fine.
ask-2-yes = <mine>{ $yours }</mine> is where the line has { $temp } °C.
ask-2-almost = <mine>{ $yours }</mine> is close. From where you meet the line, go straight across to the depths once more.
ask-2-wide = <mine>{ $yours }</mine> holds it. The line lets you say it more narrowly.
ask-2-height = Depth counts <b>down</b> from the surface, and 0 is at the top.
ask-2-next = <mine>{ $yours }</mine> is the next mark. Follow { $temp } straight down until you meet the <b>line</b>, then go across.
ask-2-temperature = <mine>{ $yours }</mine> lies below your cast. It looks like the temperature: what is asked for is its depth.
ask-2-no = <mine>{ $yours }</mine> is not it. Start from { $temp } at the top and go straight down to the line.
ask-2-hint-1 = The temperatures stand along the top of the picture. Find { $temp } °C there.
ask-2-hint-2 = Go straight down from { $temp } until you meet the line, then straight across to the depths at the left.
ask-2-worked = From { $temp } °C straight down:
ask-2-worked-gloss = where the line is met
ask-2-sum-at = At { $depth } m:
ask-2-sum-between = { $temp } °C, between them:
ask-2-sum-gloss = by the line
ask-2-fits = Anything from { $low } to { $high } m is read well from the picture.
ask-2-own-words = In your own words: how do you find the depth of { $temp } °C in the picture?
ask-dropped-2 = “How deep is …?” is left out: your water has no temperature at one depth only, where a wrong way to read would show.

## Which stretch changes fastest

ask-3 = In which of the three marked stretches does your water change fastest?
ask-3-lead = All three are equally long.
ask-3-label = Fastest in
ask-3-name = stretch
ask-3-a = A, from { $from } to { $to } m
ask-3-b = B, from { $from } to { $to } m
ask-3-c = C, from { $from } to { $to } m
ask-3-note = Look at the line in each marked band.
ask-3-yes = There the line goes furthest sideways, so the temperature changes most.
ask-3-upright = There the line goes nearly straight down. Straight down means <b>no</b> change of temperature.
ask-3-no = The water does change there, but it changes faster in another one. Compare how far the line goes sideways.
ask-3-hint-1 = In each band, look where the line comes in at the top and where it goes out at the bottom.
ask-3-hint-2 = Sideways is temperature, down is depth. Count how many °C the line goes sideways in each band.
ask-3-worked-upright = nearly straight down
ask-3-worked-sideways = far sideways
ask-3-why = The bands are equally long, so the one with the largest change is the fastest.
ask-3-own-words = In your own words: what does a line that goes straight down say about the water?
ask-dropped-3 = “Which stretch changes fastest?” is left out: no three stretches of your water differ clearly enough.

## The steep layer

ask-11 = Where does the layer begin and end in which your water loses at least { $steep } °C per metre?
ask-11-lead = Give its outer marks: the top of its first step and the bottom of its last. If there are several such layers, take the one that holds your steepest step.
ask-11-label-layer = This layer
ask-11-name-layer = what this layer does
ask-11-inside = begins and ends in my cast
ask-11-on = goes on below my last reading
ask-11-none = is not there: no step reaches { $steep } °C per metre
ask-11-note = Where the layer is not there, the boxes may stay empty.
ask-11-grip-top = begins
ask-11-grip-bottom = ends
ask-11-yes = <mine>{ $yours }</mine> counts as the steep layer (metalimnion) of your water by the { $steep } °C per metre rule.
ask-11-yes-on = It begins at <mine>{ $yours }</mine> and goes on below your last reading: “at least that deep” is all that can be said.
ask-11-yes-none = Right: no step of your water reaches { $steep } °C per metre, beyond what chance can do.
ask-11-no-drop = A step shorter than a metre needs less than { $steep } °C: divide the drop of each step by its length first.
ask-11-no-none = At least one step does. Divide the drop of each step by its length and compare with { $steep }.
ask-11-no-rate = <mine>{ $yours }</mine>: divide the drop of each step there by its length. Does it come to { $steep } °C per metre?
ask-11-not-on = Look at the last steps of your cast: do they still lose { $steep } °C per metre?
ask-11-cut-off = Both marks are right. But below the last one you have no reading: can you say that the layer ends there?
ask-11-drop = <mine>{ $yours }</mine> counts steps that lose { $steep } °C in <b>one step</b>. Divide by the step first: the rule is per metre.
ask-11-today = <mine>{ $yours }</mine> lies in the warm layer of today. Look deeper.
ask-11-top = <mine>{ $yours }</mine> has one mark right. Look at the top again: which is the first step that loses { $steep } °C per metre?
ask-11-bottom = <mine>{ $yours }</mine> has one mark right. Look at the bottom again: which is the last step that loses { $steep } °C per metre?
ask-11-no = <mine>{ $yours }</mine> is not it. Start from the steepest step and go up, then down, as long as the steps lose { $steep } °C per metre.
ask-11-hint-1 = Start from the steepest step. Its neighbours may belong to the layer too.
ask-11-hint-2 = Divide the drop of each step by its length. As long as that is { $steep } or more, the step belongs to the layer; stop at the first that is less, upward and downward.
ask-11-sum-step = From { $from } to { $to } m:
ask-11-sum-enough = at least { $steep }: inside
ask-11-sum-less = less than { $steep }: outside
ask-11-fits = Right here: a top from { $top_from } to { $top_to } m, a bottom from { $bottom_from } to { $bottom_to } m. At the edges your readings cannot tell steps from { $steep } °C per metre.
ask-11-value-none = no step reaches { $steep } °C per metre
ask-11-value-on = { $from } m to at least { $to } m
ask-11-why-on = Your cast ends in the steep part, at { $last } m. Nobody can say from it how much further down the layer goes.
ask-11-fastest = Your fastest step loses { $value } °C per metre.
ask-11-chance = A step reaches { $steep } °C per metre, but it loses only as much as chance can do in your readings.
ask-11-own-words = In your own words: how do you find the edges of a layer of at least { $steep } °C per metre?

## Thickness and share of the layers

ask-12 = How thick is each layer of your water, and what share of the depth does it have?
ask-12-lead = The mixed layer reaches from the surface to its end, the deep layer from the lower edge of the steep layer to the bottom of your cast. The steep layer is what lies between them.
ask-12-label-mixed = Mixed layer
ask-12-label-steep = Steep layer
ask-12-label-deep = Deep layer
ask-12-label-shares = Of the depth, in that order
ask-12-name-mixed = thickness of the mixed layer, metres
ask-12-name-steep = thickness of the steep layer, metres
ask-12-name-deep = thickness of the deep layer, metres
ask-12-name-way = what is known of the steep layer
ask-12-name-share-mixed = share of the mixed layer, in hundredths
ask-12-name-share-steep = share of the steep layer, in hundredths
ask-12-name-share-deep = share of the deep layer, in hundredths
ask-12-whole = thick
ask-12-at-least = or more: it goes on below my cast
ask-12-after-percent = %
ask-12-note = Use your own ends of the layers, from the questions before. Two parts, two verdicts.
ask-12-yes = All three fit your own ends of the layers.
ask-12-yes-at-least = Both fit. Below your last reading nobody knows, so “or more” belongs to it.
ask-12-yes-shares = The three shares fit, and together they are the whole depth.
ask-12-yes-unknown = No shares, then: how deep it goes on below your cast, nobody knows.
ask-12-cut-off = The numbers fit. But your cast ends in the steep layer: can you say that it is not thicker?
ask-12-not-cut-off = Your cast reaches below the steep layer, so its thickness can be said, and there is a deep layer.
ask-12-overlap = Your mixed layer and your steep layer overlap: water that both hold is counted twice. The steep layer begins where the mixed layer ends.
ask-12-overlap-deep = Your deep layer overlaps both above it: it is as thick as the whole depth. It begins where the steep layer ends.
ask-12-bottom = The cold water below is a layer too. It reaches down to the bottom of your cast.
ask-12-bottom-shares = These are shares of the two upper layers alone. The deep layer belongs to the depth too.
ask-12-no-mixed = <mine>{ $yours }</mine> is not it. From the surface to where your mixed layer ends, how far is that?
ask-12-no-steep = <mine>{ $yours }</mine> is not it. From the end of your mixed layer to the lower edge of the steep layer, how far is that?
ask-12-no-deep = <mine>{ $yours }</mine> is not it. From the lower edge of the steep layer to the bottom of your cast, how far is that?
ask-12-sum = Each share fits, but together they make { $sum } %. The whole depth is 100 %.
ask-12-no-shares = Not yet: together they make { $sum } %. Divide each thickness by the whole depth.
ask-12-fraction = These are parts of 1. Write them in hundredths: 0.25 is 25 %. It costs nothing.
ask-12-slip-unit = <mine>{ $yours }</mine> is not a length. Write the thickness in metres; it costs nothing.
ask-12-waits = Your shares are kept. They are judged when the thicknesses are found.
ask-12-hint-1 = A layer is as thick as its lower edge less its upper edge.
ask-12-hint-2 = The mixed layer begins at 0. The steep layer begins where it ends, the deep layer begins where the steep one ends.
ask-12-hint-shares-1 = A share is a part of the whole: how much of the whole depth is this layer?
ask-12-hint-shares-2 = Divide the thickness by the whole depth and multiply by 100. The three together make 100.
ask-12-gloss-mixed = mixed layer
ask-12-gloss-steep = steep layer
ask-12-gloss-deep = deep layer
ask-12-percent = { $value } %
ask-12-value = mixed { $mixed } m, steep { $steep } m, deep { $deep } m
ask-12-value-at-least = mixed { $mixed } m, steep at least { $steep } m
ask-12-value-shares = mixed { $mixed } %, steep { $steep } %, deep { $deep } %
ask-12-value-unknown = no shares can be said
ask-12-yours = mixed { $mixed } · steep { $steep } · deep { $deep }
ask-12-yours-two = mixed { $mixed } · steep { $steep }
ask-12-why = Rounded to whole hundredths they may make 99 or 101.
ask-12-own-words = In your own words: why must the three layers together be the whole depth?
ask-dropped-12 = “How thick is each layer?” is left out: it needs an end of the mixed layer and a steep layer.
ask-dropped-12-today = “How thick is each layer?” is left out: with a warm layer of today your water has more than three layers, or fewer.
ask-dropped-12-thin = “How thick is each layer?” is left out: one of your layers is too thin for its sum to show a step left out.
ask-locked-first = This question builds on your answer to question { $number }.
ask-locked-go-first = Go to question { $number }

## Which way was warmer

ask-14 = Was your water warmer going down or coming up, where was it so, and what does that suggest?
ask-14-lead = At each mark, compare the reading going down with the one coming up.
ask-14-label-side = Warmer
ask-14-label-place = It was so
ask-14-label-why = That suggests
ask-14-name-side = which way was warmer
ask-14-name-place = where it was so
ask-14-name-why = what that suggests
ask-14-choose = choose one
ask-14-down = going down
ask-14-up = coming up
ask-14-small = too small to say
ask-14-everywhere = at all depths alike
ask-14-steep = mostly where the temperature changes fast with depth
ask-14-no-pattern = in no pattern
ask-14-settling = a probe that had not settled yet
ask-14-marks = other depths at the same mark
ask-14-drift = a change of probe or water in between
ask-14-chance = nothing but chance
ask-14-wrong = that one of the two ways is wrong
ask-14-note = Three parts, three verdicts. Each goes by your own answer to the one before.
ask-14-yes-side = That is what most of your marks show.
ask-14-yes-small = Right: which way is warmer is by turns, or too little to be told from chance.
ask-14-yes-steep = Beside the steep steps the two ways are further apart than elsewhere.
ask-14-yes-everywhere = Away from the steep steps the two ways are as far apart, or nearly.
ask-14-yes-no-pattern = Where nothing is left over but chance, there is no place for it either.
ask-14-yes-why = That would leave just such a pattern.
ask-14-yes-chance = Two readings of the same water differ a little, by turns this way and that.
ask-14-not-small = It is more than chance: count at how many marks going down is warmer, and at how many coming up.
ask-14-no-side = Count at how many marks going down is warmer, and at how many coming up.
ask-14-no-place = Compare the marks beside steep steps with the marks where the water hardly changes.
ask-14-one-is-wrong = Pairs of readings always differ. The question is which <b>pattern</b> they differ in, and what would leave such a pattern.
ask-14-no-why = That would leave another pattern. What would it do where it changes fast, and what elsewhere?
ask-14-waits = Your choice is kept. It is judged when the one before it is found.
ask-14-hint-side-1 = Look at the two columns of readings, mark by mark.
ask-14-hint-side-2 = Take coming up from going down at each mark, with its sign. Are nearly all of one sign, or is it by turns?
ask-14-hint-side-3 = In another water going down was warmer at 15 of 17 marks: that is not chance. At 9 of 17 it would be.
ask-14-hint-place-1 = Find the steep steps first. How far apart are the two ways there?
ask-14-hint-place-2 = Then look where the line goes straight down. Are the two ways as far apart there?
ask-14-hint-place-3 = In another water they were 0.6 °C apart beside the steep steps and 0.1 °C elsewhere: mostly where it changes fast.
ask-14-hint-why-1 = A slow probe still reads a little of the water it has just come from. Where would that matter most?
ask-14-hint-why-2 = A mark at another depth matters only where the water changes with depth. A probe that drifts reads differently everywhere.
ask-14-hint-why-3 = In another water coming up was 0.3 °C colder at every depth: something changed in between, the probe or the water.
ask-14-count = { $n ->
    [one] One mark was read both ways.
   *[other] Of { $n } marks read both ways, going down is warmer at { $down }, coming up at { $up }.
}
ask-14-sum-mean = Down less up, mean:
ask-14-sum-steep = Beside steep steps:
ask-14-sum-rest = At the other marks:
ask-14-also = On this pattern a slow probe cannot be told from other depths at the same mark: a slanted cable, or layers that moved.
ask-14-why-not-wrong = Which of the two ways is nearer to the truth, the pattern alone does not say. The mean of both leans to neither.
ask-14-own-words = In your own words: what pattern would a slow probe leave?
ask-dropped-14 = “Was it warmer going down or coming up?” is left out: fewer than 4 marks were read both ways.
ask-dropped-14-same = “Was it warmer going down or coming up?” is left out: your two readings are the same at every mark.

## Which reading to take again

ask-15 = Which of these readings would you take again, if you could?
ask-15-lead = All of them are from your own cast. Perhaps one of them needs it, perhaps none.
ask-15-label = I choose
ask-15-name = reading to take again
ask-15-down = { $depth } m going down: { $temp } °C
ask-15-up = { $depth } m coming up: { $temp } °C
ask-15-one = { $depth } m: { $temp } °C
ask-15-none = none of them
ask-15-note = A good reason is worth a line in “How I know”.
ask-15-yes = That one is worth a second look.
ask-15-yes-none = Right: no check points to any of your readings.
ask-15-yes-fine = Nothing points to that one, and taking it again does no harm. Say why.
ask-15-not-none = At least one of them sticks out. Compare each with its neighbours and with the other way.
ask-15-no = Nothing points to that one. Another sticks out more: compare each with its neighbours and with the other way.
ask-15-shoulder = There the layer begins or ends. Both ways agree on it, so it is real.
ask-15-shoulder-once = There the layer begins or ends. The readings below go on from it, so it is real.
ask-15-hint-1 = Look for a reading that does not fit the ones above and below it.
ask-15-hint-2 = Compare going down with coming up at the same mark. Beside a steep step they may lie further apart.
ask-15-hint-3 = In another water, 14.2 °C stood between 18.1 and 17.9 °C going down, and coming up had 18.0: that one was taken again.
ask-15-why-range = Lake water cannot have that temperature.
ask-15-why-spike = It sticks out from the readings above and below it.
ask-15-why-pair = Going down and coming up are further apart there than such readings should be.
ask-15-why-heavier = It makes heavier water lie on top of lighter water. Either the reading is off, or the water was cooling at that moment.
ask-15-why-none = Neighbours fit, and where there are two ways they agree.
ask-15-all-count = Every reading that a check points to counts as right.
ask-15-own-words = In your own words: what makes a reading worth taking again?
ask-dropped-15 = “Which reading would you take again?” is left out: there are too few readings to choose from.

## Other units

ask-16 = How would you say these in °F and feet?
ask-16-label-rate = 1.0 °C per metre is
ask-16-label-apart = 2 °C colder is colder by
ask-16-name-rate = rate in the other units
ask-16-name-apart = difference in the other unit
ask-16-after-rate = °F per foot
ask-16-after-apart = °F
ask-16-note = 1 °C is as large as 1.8 °F. A foot is 0.3048 m.
ask-16-yes = <mine>{ $yours }</mine> is right.
ask-16-almost = <mine>{ $yours }</mine> is close. Work it out once more.
ask-16-thirty-two = <mine>{ $yours }</mine> has the 32 in it. That belongs to a temperature; there is no 32 in a <b>difference</b>.
ask-16-still-metres = <mine>{ $yours }</mine> is °F, still per <b>metre</b>. A foot is shorter: how much of it lies in one foot?
ask-16-upside-down = <mine>{ $yours }</mine> is what a longer piece would lose. A foot is <b>shorter</b> than a metre, so it loses less.
ask-16-no-rate = <mine>{ $yours }</mine> is not it. First: how many °F are lost in each metre?
ask-16-no-apart = <mine>{ $yours }</mine> is not it. How many °F are as large as one °C?
ask-16-hint-rate-1 = Two things change: the degrees get smaller, and the piece of water gets shorter.
ask-16-hint-rate-2 = Multiply by 1.8 for the degrees. Then take 0.3048 of that, for one foot instead of a metre.
ask-16-hint-apart-1 = On a thermometer with both scales, how far apart are two marks of °C, counted in °F?
ask-16-hint-apart-2 = Multiply the difference by 1.8. Where 0 stands on each scale does not matter for a difference.
ask-16-sum-times = { $a } × { $b } =
ask-16-gloss-per-metre = °F per metre
ask-16-gloss-per-foot = °F per foot
ask-16-gloss-f = °F
ask-16-value-rate = { $value } °F per foot
ask-16-value-apart = { $value } °F
ask-16-why = A temperature of 2 °C is 35.6 °F. A difference of 2 °C is 3.6 °F.
ask-16-own-words = In your own words: why is there no 32 in a difference?

## Even water: sun needed

ask-106 = How long must the sun shine to warm the top metre of your water by { $warmer } °C?
ask-106-lead = It takes { $heat } million joules to warm a cubic metre of water by 1 °C. Good sun brings { $sun } joules every second to each square metre; take it that all of that stays in the top metre.
ask-106-label = It takes
ask-106-name = how long it takes
ask-106-note = The unit of time is yours to choose.
ask-106-yes = <mine>{ $yours }</mine> is right.
ask-106-almost = <mine>{ $yours }</mine> is close. Work it out once more.
ask-106-one-degree = <mine>{ $yours }</mine> would warm it by one degree. The question asks for { $warmer }.
ask-106-seconds = <mine>{ $yours }</mine> is the right number of <b>seconds</b>. Choose that unit, or make hours of it.
ask-106-no = <mine>{ $yours }</mine> is not it. First: how many joules does the top metre need, under each square metre?
ask-106-hint-1 = Under each square metre the top metre is one cubic metre of water.
ask-106-hint-2 = Joules needed = joules for one degree × degrees. Divide by the joules that come each second, then make hours of the seconds.
ask-106-gloss-heat = million J needed
ask-106-sum-seconds = { $a } million ÷ { $b } =
ask-106-gloss-seconds = seconds
ask-106-sum-hours = { $a } ÷ 3600 =
ask-106-gloss-hours = hours
ask-106-value = { $value } h
ask-106-why = It takes longer outside: some light is thrown back, some goes deeper, and the surface gives heat away. So on a calm sunny day even water can get a warm layer by the afternoon.
ask-106-own-words = In your own words: why can a windy night undo a day of sun?
ask-unit-s = seconds
ask-unit-min = minutes
ask-unit-h = hours
ask-unit-d = days
