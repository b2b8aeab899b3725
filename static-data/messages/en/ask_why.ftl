### Questions that ask why: sinking, mixing, heat, seasons, oxygen, how sure one can be.

## Shared

ask-why-keep = Keep it
ask-why-waits-picture = You can press “Check” when you have chosen a picture.
ask-why-waits-words = It can be kept once you have written something.
ask-why-waits-keep = It can be kept once you have chosen.
ask-why-kept = Kept as you wrote it: <mine>{ $yours }</mine>
ask-why-checked = Kept. What you did not tick can still go into your report.
ask-why-note-kept = Your words are kept as you write them. Only a person judges them.
ask-why-name-check = what I say in it
ask-why-label-check = In what I wrote
ask-why-label-picture = I choose
ask-why-note-picture = The faint line in each picture is the water before.
ask-why-practice = This is a practice pond, not your water.
ask-why-picture = Picture { $letter }
ask-why-picture-alt = { $t1 } °C at { $z1 } m, { $t2 } °C at { $z2 } m, { $t3 } °C at { $z3 } m, { $t4 } °C at { $z4 } m, { $t5 } °C at { $z5 } m

## Left out

ask-dropped-19 = “How much must it cool before wind can mix it?” is left out: in your water top and bottom do not differ enough for it.
ask-dropped-19-four = “To what must the surface cool?” is left out: your deepest water is so near 4 °C that a guess would look right.
ask-dropped-20 = “Your water next month” is left out: from your cast the four pictures would look too much alike.
ask-dropped-21 = “After a windy night” is left out: the pictures made from your cast would look too much alike.
ask-dropped-25 = “Had you read fewer marks” is left out: your cast has too few marks to leave some out.
ask-dropped-26 = “Which one change would help most?” is left out: your readings give no range to narrow, or too many marks to try it out quickly.
ask-dropped-107 = “Wrong, or cooling at this moment?” is left out: there is no pair of readings to look at.
ask-dropped-108 = “Will it be here tomorrow morning?” is left out: this layer holds more heat than a night takes.

## Which of two waters sinks

ask-17 = Which of these two waters of yours sinks below the other?
ask-17-two = Which of these two waters sinks below the other?
ask-17-lead = Think of a bucket of each, poured together without stirring.
ask-17-lead-stated = Your own water has no such pair, so these are from a pond in winter. Both are fresh, poured together without stirring.
ask-17-label = It sinks
ask-17-name = the water that sinks
ask-17-own = Water of { $temp } °C, from { $depth } m
ask-17-stated = Water of { $temp } °C
ask-17-neither = Neither: they weigh the same
ask-17-yes = That one is the heavier. Water is heaviest near 4 °C.
ask-17-colder = Colder water is heavier only down to 4 °C. Below that it gets lighter again: which side of 4 °C are these on?
ask-17-same = They do differ, by little. Which one is nearer to 4 °C?
ask-17-hint-1 = Look at where 4 °C lies between or beside the two.
ask-17-hint-2 = Water is heaviest near 4 °C. The one nearer to that weighs more.
ask-17-cubic = 1 m³ at { $temp } °C:
ask-17-kg = { $kg } kg
ask-17-floats = floats
ask-17-sinks = sinks
ask-17-why = That is why the bottom of a frozen lake is not the coldest place.
ask-17-own-words = In your own words: when does colder water float?

## The same degree

ask-18 = Where does a difference of 1 °C keep water from mixing more strongly: at your surface or at your bottom?
ask-18-two = Where does a difference of 1 °C keep water from mixing more strongly: in warm or in cold water?
ask-18-lead = Two layers resist mixing by their difference in weight. Below stands what 1 m³ of your water weighs at { $top } m and at { $bottom } m, and one degree cooler.
ask-18-lead-stated = Your own top and bottom are too near to each other or to 4 °C for this, so here are two other waters: what 1 m³ weighs, and one degree cooler.
ask-18-weights = { $warm } °C: { $light } kg. { $cool } °C: { $heavy } kg.
ask-18-label-side = More
ask-18-label-times = That is
ask-18-name-side = where it hinders mixing more
ask-18-name-times = how many times as much
ask-18-after = times as much
ask-18-note = Two parts, two verdicts. A rough number of times is enough.
ask-18-top = At the surface
ask-18-bottom = At the bottom
ask-18-warm = In the warm water
ask-18-cold = In the cold water
ask-18-same = The same: a degree is a degree
ask-18-side-yes = Yes: warm water gains more weight from one degree.
ask-18-side-same = A degree is a degree on the thermometer, but not on the scales: water swells more per degree when it is warm.
ask-18-side-colder = Cold water is the heavier, but ask what <b>one degree</b> adds to it. Take the two weights apart.
ask-18-times-yes = <mine>{ $yours }</mine> times is near enough.
ask-18-times-same = <mine>{ $yours }</mine> is what the weights themselves come to. Compare what each <b>gains</b> from one degree.
ask-18-times-upside-down = <mine>{ $yours }</mine> is the division turned round: the bigger gain by the smaller.
ask-18-times-no = <mine>{ $yours }</mine> is not it. First take the two weights of each water apart.
ask-18-side-hint-1 = Look at the two lines of weights, one after the other.
ask-18-side-hint-2 = In each line take the lighter weight from the heavier. Where is more left?
ask-18-times-hint-1 = You need two gains: what one degree adds in each water.
ask-18-times-hint-2 = Divide the bigger gain by the smaller one.
ask-18-gloss = { $warm } to { $cool } °C
ask-18-divided = { $a } ÷ { $b } =
ask-18-times = { $times } times
ask-18-times-gloss = as much
ask-18-fits = Anything from { $low } to { $high } times counts.
ask-18-why = So a few degrees hold a summer lake firmly, and the same few degrees hardly hold a winter one.
ask-18-own-words = In your own words: why is a degree not always the same to the wind?

## Heat until it mixes

ask-19 = To what must your surface cool before wind can mix it to the bottom, and how much heat is that?
ask-19-warms = To what must the top of your water warm up before wind can mix it to the bottom, and how much heat is that?
ask-19-lead = Heat for each square metre of the surface. One cubic metre of water loses 4.18 MJ (megajoules) for each °C.
ask-19-lead-warms = Heat for each square metre of the surface. One cubic metre of water takes up 4.18 MJ (megajoules) for each °C.
ask-19-label-temp = It must cool to
ask-19-label-temp-warms = It must warm to
ask-19-label-heat = Heat to lose
ask-19-label-heat-warms = Heat to gain
ask-19-label-days = At 100 W per m²
ask-19-name-heat = heat, megajoules per square metre
ask-19-after-heat = MJ per m²
ask-19-name-days = days at 100 watts per square metre
ask-19-after-days = days
ask-19-note = Three parts, three verdicts. Heat and days may be rough; the days are judged by your own heat.
ask-19-temp-yes = <mine>{ $yours }</mine> is right: then the top is as heavy as the bottom.
ask-19-temp-almost = <mine>{ $yours }</mine> is close. Read your deepest mark again.
ask-19-temp-four = <mine>{ $yours }</mine> is further than it needs. Only down to the temperature of <b>your</b> bottom water: then both weigh the same.
ask-19-temp-zero = <mine>{ $yours }</mine> goes the wrong way. Colder than 4 °C, water on top gets lighter still. Which way makes it heavier?
ask-19-temp-no = <mine>{ $yours }</mine> is not it. Which temperature would make top and bottom weigh the same?
ask-19-heat-yes = <mine>{ $yours }</mine> MJ for each square metre is near enough.
ask-19-heat-degrees = <mine>{ $yours }</mine> is degrees times metres. Each of those takes 4.18 MJ.
ask-19-heat-no = <mine>{ $yours }</mine> is not it. First the area in the picture between your line and the bottom temperature, in °C times m.
ask-19-waits = <mine>{ $yours }</mine> is kept. It is judged when the heat is found.
ask-19-days-yes = <mine>{ $yours }</mine> days follow from your heat.
ask-19-days-hours = <mine>{ $yours }</mine> is hours. How many days are that?
ask-19-days-watts = <mine>{ $yours }</mine> is your heat by 100. A watt is a joule each <b>second</b>: how many MJ is 100 W in a day?
ask-19-days-no = <mine>{ $yours }</mine> does not follow from your heat. First: what does 100 W take in one day?
ask-19-temp-hint-1 = Wind can mix two waters easily when they weigh the same. Look at your deepest reading.
ask-19-temp-hint-2 = The top sinks as soon as it is as heavy as the bottom. That is at the same temperature.
ask-19-temp-hint-2-warms = Below 4 °C warmer water is heavier. The top must come up to the temperature of the bottom.
ask-19-temp-hint-3 = A lake of 15 °C over 7 °C mixes when its surface has come to 7 °C.
ask-19-heat-hint-1 = In the picture draw the bottom temperature straight up. What lies between it and your line must go.
ask-19-heat-hint-2 = Metre by metre: how many °C is your line away from it? Add them up, and take 4.18 MJ for each.
ask-19-area-sum = { $over } °C × { $depth } m =
ask-19-area = { $value } °C·m
ask-19-heat-sum = { $degrees } °C·m × { $heat } =
ask-19-mj = { $value } MJ per m²
ask-19-heat-gloss = 4.18 MJ each
ask-19-days-hint-1 = A watt is a joule each second. A day has 86 400 seconds.
ask-19-days-hint-2 = 100 W take 8.64 MJ in a day. Divide your heat by that.
ask-19-days-sum = { $heat } ÷ { $day } =
ask-19-days = { $value } days
ask-19-days-gloss = at 8.64 MJ a day
ask-19-deepest = At { $depth } m:
ask-19-deepest-gloss = your deepest reading
ask-19-why = Until then the water below is heavier, and wind would have to lift it.
ask-19-why-warms = Until then the water below is heavier: near 4 °C water weighs most.
ask-19-fits-heat = Anything from { $low } to { $high } MJ counts.
ask-19-fits-days = Anything from { $low } to { $high } days counts.
ask-19-what = A rough sum for one square metre: sun, clouds and the shape of the lake are left out.
ask-19-own-words = In your own words: why need it not cool to 4 °C?
ask-19-own-words-warms = In your own words: why must it get warmer to mix?

## Next month

ask-20 = Which picture could be your water a month from now?
ask-20-practice = Which picture could be this water a month from now?
ask-20-lead = Autumn comes. In { $days } days the water loses { $watts } W for each square metre on average, and there is a light wind. All four pictures lose about as much heat.
ask-20-name = picture of next month
ask-20-label-why = Because
ask-20-name-why = why this picture
ask-20-start-1 = Heat leaves through …
ask-20-start-2 = Water that has cooled …
ask-20-note = The picture gets a verdict. Your reason is kept and only a person judges it.
ask-20-yes = So it goes: the upper water cools and mixes deeper, and the deep water hardly notices.
ask-20-all-alike = Here all depths cool alike. Heat leaves through the surface: how would it get there from the bottom?
ask-20-bottom-first = Here the bottom cools first. It has no air to give its heat to.
ask-20-cold-on-top = Here the cooled water stays on top. It is heavier than the water below it now: what does it do?
ask-20-no = Where does the heat leave, and where does the cooled water go?
ask-20-hint-1 = Ask of each picture: through which side has the heat left?
ask-20-hint-2 = Cooled water is heavier. It sinks until the water below it is heavier still.
ask-20-hint-3 = A lake of 18 °C over 8 °C, some weeks later: 15 °C down to a greater depth, and 8 °C below as before.
ask-20-why-hint-1 = Say where the heat leaves the water.
ask-20-why-hint-2 = Then say what the cooled water does, and how far down it gets.
ask-20-why-hint-3 = About a cup of tea: it cools at the top, the cooled tea sinks, and so all of it cools in turn.
ask-20-what = Each day heat was taken through the surface; what was heavier sank, and the wind stirred from the top.
ask-20-model = It shows what follows from that, not a forecast of your lake.
ask-20-because = heat leaves through the surface, and cooled water sinks only as far as it is heavier
ask-20-own-words = In your own words: why does the deep water stay as it is for so long?

## A windy night

ask-21 = Which picture could be your water after a windy night?
ask-21-practice = Which picture could be this water after a windy night?
ask-21-lead = The wind stirs it from the top. No heat comes in or goes out.
ask-21-lead-practice = The wind stirs it from the top. Heat neither comes in nor goes out.
ask-21-name = picture of the morning after
ask-21-yes = Yes: stirred from the top down to a depth, with as much heat as before.
ask-21-all-colder = Here all of it is colder. The areas must match: where did the heat go?
ask-21-colder-wins = Here the stirred water is as cold as its coldest part. What became of the heat of the rest?
ask-21-warmer-wins = Here the warm water has grown. Stirring adds no heat: where would it come from?
ask-21-no = Compare what got colder with what got warmer.
ask-21-hint-1 = Lay each picture over the faint line. Where has it become colder, where warmer?
ask-21-hint-2 = What the upper water lost, the water just below must have gained: the two areas are equal.
ask-21-worked-sum = 2 m × { $a } °C + 2 m × { $b } °C =
ask-21-worked-before = another pond, before
ask-21-worked-divided = { $a } ÷ { $b } m =
ask-21-worked-after = stirred through
ask-21-before = Before:
ask-21-heat-gloss = in the whole column
ask-21-as-much = as much as before
ask-21-gloss-all-colder = less: all of it colder
ask-21-gloss-colder-wins = less: the cold grew
ask-21-gloss-warmer-wins = more: the warm grew
ask-21-what = It was stirred down to { $depth } m and has { $temp } °C there. Below, nothing has changed.
ask-21-own-words = In your own words: how do you see in a picture that no heat was lost?

## Oxygen

ask-22 = Where is oxygen low in your water, and why?
ask-22-guess = Where would you expect the least oxygen in your water, and why?
ask-22-lead = Use the oxygen of your table, in mg/L.
ask-22-lead-guess = You have no oxygen readings, so this is a prediction. It is kept, not judged.
ask-22-label-falls = Below { $limit } mg/L
ask-22-label-least = Lowest at
ask-22-label-guess = The lowest
ask-22-label-why = Why
ask-22-name-where = where the least oxygen is
ask-22-name-why = why it is low there
ask-22-top = Near the surface: warm water holds less
ask-22-middle = Half-way down
ask-22-bottom = Near the bottom
ask-22-same = The same everywhere
ask-22-start-1 = Oxygen gets into the water by …
ask-22-start-2 = It is used up where …
ask-22-half-right = Half right: cold water <b>can</b> hold more. What would bring it there?
ask-22-guess-kept = Your prediction is kept. A cast with oxygen would tell.
ask-22-gone = The oxygen readings have changed since.
ask-22-pair-yes = Between <mine>{ $yours }</mine> it falls below { $limit } mg/L.
ask-22-pair-long = <mine>{ $yours }</mine> holds it. Go closer: two neighbouring marks.
ask-22-pair-no = <mine>{ $yours }</mine> is not it. Look down the oxygen to the first number below { $limit }.
ask-22-pair-no-mark = <mine>{ $yours }</mine> are not both marks with an oxygen reading.
ask-22-least-yes = At <mine>{ $yours }</mine> it is lowest.
ask-22-least-no = At <mine>{ $yours }</mine> it is not lowest. Look down the oxygen once more.
ask-22-least-no-mark = At <mine>{ $yours }</mine> no oxygen was read.
ask-22-falls-hint-1 = Look at the oxygen beside your marks, from the surface down.
ask-22-falls-hint-2 = Take the first mark that is below the limit, and the mark above it.
ask-22-least-hint-1 = Look through all the oxygen numbers.
ask-22-least-hint-2 = Take the smallest, and read its depth.
ask-22-least-hint-3 = With 9.1, 8.8 and 6.4 mg/L at 1, 2 and 3 m the least is at 3 m.
ask-22-why-hint-1 = Oxygen comes from the air and from plants in the light.
ask-22-why-hint-2 = Say what brings it down, what uses it up, and what keeps the two apart.
ask-22-why-hint-3 = About a closed jar of pond mud: nothing brings new oxygen in, small life uses it up, and after some days there is none.
ask-22-worked-at = At { $depth } m:
ask-22-worked-below = Below { $limit } mg/L from
ask-22-worked-gloss = in another lake
ask-22-mg-l = { $value } mg/L
ask-22-limit = { $limit } mg/L is a rough limit, not the same for every animal.
ask-22-point-brings = I say what brings oxygen into the water.
ask-22-point-uses = I say what uses it up.
ask-22-point-stirs = I say what keeps the stirring away from the deep water.
ask-22-point-holds = I do not stop at “cold water holds more”.
ask-22-because = what brings oxygen there, what uses it up, and what keeps the two apart
ask-22-own-words = In your own words: why can cold water have so little oxygen?

## Fewer marks

ask-25 = Had you read only every { $step } m: between which two marks would it be steepest, and how far to either side could it lie?
ask-25-lead = Cover all other marks with your hand. Predict first.
ask-25-lead-practice = Read every half metre, it is steepest from { $from } to { $to } m. Every { $step } m it has { $marks }.
ask-25-mark = { $temp } °C at { $depth } m
ask-25-marks = { $first }, { $rest }
ask-25-label-pair = Between
ask-25-label-give = Give or take
ask-25-name-give = how far to either side, metres
ask-25-note = Two parts, two verdicts. Give or take counts from the middle between the marks.
ask-25-gone = The marks have changed since.
ask-25-pair-yes = <mine>{ $yours }</mine>: of what is left, it changes most there.
ask-25-pair-same = <mine>{ $yours }</mine> is what you know from all your marks. With the others left out nobody would know: between two marks nothing was read.
ask-25-pair-no-mark = <mine>{ $yours }</mine> would not both be read. Only marks every { $step } m are left.
ask-25-pair-no = <mine>{ $yours }</mine> is not it. Compare the temperatures of the marks that are left.
ask-25-give-yes = <mine>{ $yours }</mine> is half the step, and nobody could say it closer.
ask-25-give-same = <mine>{ $yours }</mine> is how sure you are with all your marks. Wider steps know less.
ask-25-give-whole = <mine>{ $yours }</mine> is the whole step. From its middle, how far is it to each mark?
ask-25-give-no = <mine>{ $yours }</mine> is not it. How far is it from the middle of the step to its marks?
ask-25-give-unit = <mine>{ $yours }</mine> is not a length. Give it in metres; it costs nothing.
ask-25-pair-hint-1 = Look only at the marks every { $step } m.
ask-25-pair-hint-2 = Take each temperature from the one above it. Where is the difference greatest?
ask-25-give-hint-1 = It lies somewhere between the two marks. What is the middle?
ask-25-give-hint-2 = From the middle it is half the step to each mark.
ask-25-worked-step = From { $from } to { $to } m:
ask-25-worked-gloss = the steeper of the two
ask-25-half = { $step } ÷ 2 =
ask-25-half-gloss = to either side
ask-25-left = Left would be { $marks }.
ask-25-several = These readings could not tell it from its like between { $from } and { $to } m, so each of those counts.
ask-25-why = With all your marks the step gives { $own } m to either side.
ask-25-own-words = In your own words: what do wider steps cost?

## One change

ask-26 = Which one change would narrow the range of your thermocline most?
ask-26-lead = Think of reading the same water again, with only this done differently.
ask-26-label = I would
ask-26-name = the one change
ask-26-half-step = Half the step between marks
ask-26-repeats = Four readings at each mark
ask-26-probe = A better, steadier probe
ask-26-cable = A straighter, truer cable
ask-26-decimals = One more decimal shown
ask-26-none = None of these would help much
ask-26-yes = In trials with your own readings nothing narrows it more.
ask-26-yes-near = In trials with your own readings that leaves { $width } m, the narrowest { $narrowest } m. The two differ by less than a tenth, so yours counts too.
ask-26-yes-none = True: in trials with your own readings none narrows it by a twentieth.
ask-26-more-decimals = More decimals show the same unsteadiness in finer digits. What makes you unsure: the degrees, or the depths?
ask-26-no = Trials with your own readings say that something else gains more.
ask-26-hint-1 = Look at your range. Is it one step wide, or several?
ask-26-hint-2 = One step: the marks are too far apart. Several: the temperatures cannot tell them apart.
ask-26-hint-3 = A range from 4 to 5 m with a mark each metre is one step: nearer marks would help. From 3 to 6 m it is three: steadier readings would.
ask-26-as-read = As read
ask-26-wide = { $width } m wide
ask-26-most = narrowest, or as good
ask-26-fits = What those marked gain differs by less than a tenth, so each counts.
ask-26-how = From { $trials } trials of your own readings each. They move the marks of the cable a little too, so a width here may be more than the range that your readings alone give. Between your marks a smooth line was taken for the water.
ask-26-half-wider = Half the step came out wider: a shorter step loses less, so chance makes another one the steepest more often.
ask-26-own-words = In your own words: what makes you unsure of this depth?

## When it means nothing

ask-27 = When or where would your answers mean nothing?
ask-27-lead = Every cast has limits. Some of yours:
ask-27-near-bed = You read to { $last } m; the bed is at { $bed } m.
ask-27-above-bed = You read to { $last } m, and the water goes on to { $bed } m.
ask-27-no-bed = You read to { $last } m, and nobody noted how deep the bed is.
ask-27-once = Each mark was read once.
ask-27-legs-apart = Down and up differ one way, by { $mean } °C on average.
ask-27-legs-alike = { $count ->
    [one] One mark was read twice, in one visit.
   *[other] { $count } marks were read twice, in one visit.
}
ask-27-doubts = { $count ->
    [one] One reading carries a question mark.
   *[other] { $count } readings carry a question mark.
}
ask-27-label = I think
ask-27-name = when or where it would mean nothing
ask-27-start-1 = Below … m nobody knows …
ask-27-start-2 = On another day …
ask-27-start-3 = If the boat had drifted …
ask-27-point-below = I say what is not known below my last reading.
ask-27-point-time = I say that another hour, day or season could be different.
ask-27-point-drift = I say what a drifting boat or a slanting cable would do.
ask-27-point-mud = I say what a probe in the mud would read.
ask-27-point-place = I say that one cast is one place in the lake.
ask-27-hint-1 = Think of four edges: depth, time, place, and how it was read.
ask-27-hint-2 = For each, ask: what would have to be different for my answer to be wrong?
ask-27-hint-3 = About the warmth of a room: “One thermometer by the window at noon says nothing of the corner at night.”
ask-27-shown = depth, time, place, and how it was read
ask-27-end = Saying where an answer ends makes the rest of it stronger.
ask-27-own-words = In your own words: what does your cast not show?

## Wrong, or cooling

ask-107 = Is a reading wrong there, or was the water cooling at this moment?
ask-107-lead = Look at the pair with the heavier water on top, going down and coming up.
ask-107-label = I think
ask-107-name = what the readings say
ask-107-wrong = A reading is wrong
ask-107-cooling = The surface was cooling at this moment
ask-107-salt = It is real, but deep: salt, perhaps
ask-107-again = It was read once: nobody can say
ask-107-yes-wrong = Yes: the two ways do not agree there, or one reading sticks out. Read it again if you can.
ask-107-yes-cooling = Yes: both ways show it, right at the surface. Cooled water was sinking while you read.
ask-107-yes-salt = Yes: both ways show it, far below the surface. Something else must hold the water there, such as salt.
ask-107-yes-again = Yes: with one reading at a mark there is nothing to compare with.
ask-107-odd = It is odd, but both ways show it. What is read twice, apart, is hard to call wrong.
ask-107-one = Water that really lies so would show it both ways. Does it?
ask-107-no = First see whether both ways agree there, then how deep it is.
ask-107-hint-1 = Find the two marks, and both readings of each.
ask-107-hint-2 = Do down and up agree within 0.2 °C? Then it is real. Is it at the surface? Then it may be cooling.
ask-107-hint-3 = 14.2 and 16.9 °C at one mark: one of them is wrong. 14.2 and 14.3 °C at the surface over 14.8 °C: it was cooling.
ask-107-both = At { $depth } m: { $down } and { $up } °C
ask-107-apart = apart
ask-107-why = Cooling water overturns within minutes. Repeating the surface reading would show it.
ask-107-own-words = In your own words: how can you tell a wrong reading from odd water?

## Tomorrow morning

ask-108 = Will this warm layer be here tomorrow morning?
ask-108-lead = At night water loses some 50 to 250 W for each square metre. A cubic metre holds 4.18 MJ for each °C.
ask-108-label = I think
ask-108-name = what becomes of the layer
ask-108-here = It will: layers stay
ask-108-depends = That depends on the night
ask-108-gone = Gone: a night takes more than it holds
ask-108-yes = Its heat beside a night’s loss says so.
ask-108-stays = A layer stays only as long as its heat does. How much does this one hold, and what does a night take?
ask-108-no = Compare its heat with what a night takes, little and much.
ask-108-hint-1 = How thick is the layer, and how many °C is it warmer than the water below?
ask-108-hint-2 = °C times metres times 4.18 is its heat in MJ. 100 W for 12 hours is 4.3 MJ.
ask-108-worked-sum = 2.0 °C × 0.5 m × 4.18 =
ask-108-night = { $watts } W, { $hours } hours:
ask-108-a-night = in such a night
ask-108-layer = In your layer:
ask-108-layer-gloss = over the water below
ask-108-mild = a mild, cloudy night
ask-108-clear = a clear, windy night
ask-108-why = Wind makes it go sooner. A rough sum: what the night will be like, nobody reads from a cast.
ask-108-own-words = In your own words: how is this layer unlike a thermocline?

## 23 and 24: another group's cast
ask-locked-check = This question opens when your marks on Profile are checked: it compares what was found.
ask-group = group { $group }
ask-group-other = the other group
ask-dropped-23 = “Do you and another group really disagree?” is left out: it needs a second cast. Open that group’s file on Log, under “Compare with a group”.
ask-dropped-23-none = “Do you and another group really disagree?” is left out: one of the two casts has no thermocline to compare.
ask-23 = Do you and { $group } really disagree?
ask-23-lead = By the same rule, your thermocline could be { $own }, that of { $group } { $other }.
ask-23-name = what you say
ask-23-label = I say
ask-23-share = We cannot say so: our ranges share a depth.
ask-23-apart = Yes: our ranges share no depth.
ask-23-wrong = One of us must have done it wrong.
ask-23-yes-share = Right. Yours, { $own }, and theirs, { $other }, share at least one depth: both groups may have met the same thermocline.
ask-23-yes-apart = Right. Yours, { $own }, and theirs, { $other }, share no depth: that is more than your readings leave open. Why is the next question.
ask-23-one-is-wrong = Two careful groups can get two numbers. Look at the ranges first: do they share a depth?
ask-23-no = Put both ranges on one line of depths and look once more: is there a depth that lies in both?
ask-23-hint-1 = A depth here is never bare: each comes with a range. Compare the ranges, not the numbers in their middle.
ask-23-hint-2 = Draw both ranges beside each other on one depth axis.
ask-23-hint-3 = Another pond: 2.0 to 3.0 m and 3.0 to 4.0 m share 3.0 m, so nobody can say that the two groups disagree.
ask-23-own-words = In your own words: when do two groups really disagree?
ask-dropped-24 = “What explains the difference best?” is left out: it needs a second cast. Open that group’s file on Log, under “Compare with a group”.
ask-dropped-24-little = “What explains the difference best?” is left out: the two casts share too few depths to say why they differ.
ask-24 = What explains best why your cast differs from that of { $group }?
ask-24-lead = At the depths you share, your cast and that of { $group } typically differ by { $apart } °C.
ask-24-lead-heat = On average they differ by { $mean } °C from { $from } to { $to } m. Suppose the warmer one was read one hour later.
ask-24-name = what explains it
ask-24-label = It was
ask-24-chance = nothing but chance
ask-24-none = none of these by itself
ask-24-name-evidence = your evidence
ask-24-label-evidence = I see it by
ask-24-start-1 = At … m …
ask-24-start-2 = If it were the cable, we would see …
ask-24-name-power = the power, W/m²
ask-24-label-power = Power behind it
ask-24-watts = W/m²
ask-24-name-sun = whether the sun could have done it
ask-24-label-sun = Sun brings 1,000 W/m² at most
ask-24-choose = choose
ask-24-could = it could have
ask-24-could-not = it could not have
ask-24-yes = Yes: { $cause }. Nothing that was tried explains your readings better.
ask-24-no = Not { $cause }: something else explains these readings better. Where in the water do the two casts differ, and where not?
ask-24-tied = These readings cannot tell it from this: { $cause }.
ask-24-hint-1 = Look at where the two casts differ: everywhere alike, only where it is steep, or only at the top?
ask-24-hint-2 = A probe that reads more does so at every depth. Shifted marks, a slanted cable and moved water show only where it is steep. The sun shows at the top.
ask-24-hint-3 = Two other casts: 0.4 °C apart at every depth, steep or not. That was the probe.
ask-24-evidence-hint = Say what you see and at which depths. Then say what you would see if it were something else.
ask-24-evidence-shown = your evidence is yours to write
ask-24-power-hint-1 = One cubic metre of water takes 4.18 million joules for each °C.
ask-24-power-hint-2 = Degrees times metres of water times 4.18 million gives joules for each square metre. An hour has 3,600 seconds.
ask-24-power-hint-3 = Another lake: 0.2 °C through 5 m in one hour is 0.2 · 5 · 4,180,000 / 3,600, about 1,160 W/m².
ask-24-no-depth = You left out how deep the water is: each metre of it has to be warmed.
ask-24-no-time = That is the heat. Power is heat for each second: divide by the seconds of the hour.
ask-24-power-no = Not that number. First the heat: degrees times metres times 4.18 million joules. Then divide by the seconds of the hour.
ask-24-sun-no = The power is right. Now set it beside the 1,000 W/m² that strong sun brings at most.
ask-24-power-yes = Right: about { $power } W/m².
ask-24-power = { $power } W/m²
ask-24-heat = { $heat } MJ/m²
ask-24-times = { $mean } °C · { $deep } m · 4.18 MJ
ask-24-over = { $heat } MJ/m² / 3,600 s
ask-24-gloss-heat = heat for each square metre
ask-24-gloss-power = for each second
ask-24-sun-could = Strong sun brings about 1,000 W/m²: it could have.
ask-24-sun-could-not = Strong sun brings about 1,000 W/m²: it could not have.
ask-24-sun-unsure = Strong sun brings about 1,000 W/m²: too close to tell.
ask-24-own-words = In your own words: what would you see if it were another cause?
