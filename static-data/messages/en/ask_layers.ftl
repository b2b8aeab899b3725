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

ask-3 = In which of the three lit stretches does your water change fastest?
ask-3-lead = All three are equally long.
ask-3-label = Fastest in
ask-3-name = stretch
ask-3-a = A, from { $from } to { $to } m
ask-3-b = B, from { $from } to { $to } m
ask-3-c = C, from { $from } to { $to } m
ask-3-note = Look at the line in each light band.
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
ask-11-yes = <mine>{ $yours }</mine> is the steep layer (metalimnion) of your water by the { $steep } °C per metre rule.
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
ask-11-chance = A step reaches { $steep } °C per metre, but what it loses is no more than chance can do in your readings.
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
ask-12-cut-off = The numbers fit. But your cast ends in the steep layer: can you say that it is no thicker?
ask-12-not-cut-off = Your cast reaches below the steep layer, so its thickness can be said, and there is a deep layer.
ask-12-overlap = Your layers overlap: some water is counted twice. Each layer begins where the one above it ends.
ask-12-bottom = The cold water below is a layer too. It reaches down to the bottom of your cast.
ask-12-bottom-shares = These are shares of the two upper layers alone. The deep layer belongs to the depth too.
ask-12-no-mixed = <mine>{ $yours }</mine> is not it. From the surface to where your mixed layer ends, how far is that?
ask-12-no-steep = <mine>{ $yours }</mine> is not it. From the end of your mixed layer to the lower edge of the steep layer, how far is that?
ask-12-no-deep = <mine>{ $yours }</mine> is not it. From the lower edge of the steep layer to the bottom of your cast, how far is that?
ask-12-sum = Each share fits, but together they make { $sum } %. The whole depth is 100 %.
ask-12-no-shares = Not yet: together they make { $sum } %. Divide each thickness by the whole depth.
ask-12-fraction = These are parts of 1. Write them in hundredths: 0.25 is 25 %. It costs nothing.
ask-12-slip-unit = <mine>{ $yours }</mine> is no length. Write the thickness in metres; it costs nothing.
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
ask-12-why = Rounded to whole hundredths they may make 99 or 101.
ask-12-own-words = In your own words: why must the three layers together be the whole depth?
ask-dropped-12 = “How thick is each layer?” is left out: it needs an end of the mixed layer and a steep layer.
ask-dropped-12-today = “How thick is each layer?” is left out: with a warm layer of today your water has more than three layers, or fewer.
ask-dropped-12-thin = “How thick is each layer?” is left out: one of your layers is too thin for its sum to show a step left out.
ask-locked-first = This question builds on your answer to question { $number }.
ask-locked-go-first = Go to question { $number }
