## The doors of Profile: how sure, read differently, how hard to mix

page-profile-to-sure = How sure?
page-profile-to-otherwise = What if …?
page-profile-to-mixing = How hard to mix?
page-busy-sure = Trying your readings again and again.
page-busy-part = { $done } of { $of } tries.
page-busy-keeps = Stop keeps the tries that are done.
page-busy-stopped-part = Stopped. The tries that were done count.

door-waiting = Still trying. The ranges come in a moment.
door-head-depth = Depth
door-head-could-be = Could be
door-head-share = Of 100 tries
door-head-found = Found, of 100
door-head-now = As read
door-head-otherwise = Changed
door-head-step = Step
door-depth = { $depth } m
door-share = { $share }
door-share-under = under 1
door-share-over = over 99
door-none = none
door-could-be = could be
door-between = between the marks
door-no-range = no range
door-cannot-tell = can’t tell

door-sure-lead = We changed every reading a little, as chance could have, and looked for the layers again, ten thousand times.
door-sure-few = Only { $count ->
    [one] { $count } try was
   *[other] { $count } tries were
} made before Stop. The ranges are rough.
door-sure-refused = The tries go all over the place: these readings can’t tell where the steepest step is. “Can’t tell” is an honest answer.
door-sure-open = { $low } m or deeper
door-sure-below = below the last reading
door-sure-top = Top of the steep layer
door-sure-where = Where the steepest step fell
door-sure-densing = Density changes most at
door-sure-season = Mixed layer of the season, down to
door-sure-elsewhere = in other steps
door-sure-nowhere = no such step
door-sure-varied = What was changed in each try. Every reading: by about { $noise } °C, as far apart as going down and coming up are. The whole probe: by up to { $offset } °C. Every mark: by about { $mark } cm. The cable: by about { $stretch } %, and its slant by up to { $angle }°. Between two marks the water was bent a little, since nobody read it there.
door-sure-varied-assumed = What was changed in each try. Every reading: by about { $noise } °C (assumed). The whole probe: by up to { $offset } °C. Every mark: by about { $mark } cm. The cable: by about { $stretch } %, and its slant by up to { $angle }°. Between two marks the water was bent a little, since nobody read it there.
door-sure-span = The range of the thermocline stays { $range }, the steps that can’t be told from the steepest. The tries scatter more than that: readings that carry an error already get another one.

door-otherwise-lead = What if you had read it differently? Choose; your notebook stays as it is.
door-otherwise-depths = { $count ->
    [one] { $count } mark
   *[other] { $count } marks
} instead of { $before }.
door-otherwise-same = As you read it.
door-otherwise-state = The water would look: { $state }.
door-otherwise-state-mixed = mixed all the way down
door-otherwise-state-weak = weakly layered
door-otherwise-state-layered = layered
door-otherwise-state-inverse = colder on top
door-otherwise-state-unstable = heavier on top
door-otherwise-state-few = too few depths to say
door-otherwise-how = Between two marks nothing was read: the rules take a straight line there, “could be” lets it bend a little. What a worse probe or cable would add is drawn by chance, always the same chance for the same readings.
door-otherwise-wait = A shorter wait is worked out for a probe that needs { $tau } s to cover two thirds of a change.

page-otherwise-marks = Marks
page-otherwise-ways = Read
page-otherwise-wait = Waiting
page-otherwise-digits = Probe shows
page-otherwise-cable = Marks off by
page-otherwise-as-read = as read
page-otherwise-every-metre = every metre
page-otherwise-every-2-metres = every 2 metres
page-otherwise-down = only going down
page-otherwise-up = only coming up
page-otherwise-wait-short = half a minute
page-otherwise-wait-hardly = ten seconds
page-otherwise-halves = half degrees
page-otherwise-whole = whole degrees
page-otherwise-cable-usual = a few cm
page-otherwise-cable-rough = about 10 cm
page-otherwise-cable-poor = about 25 cm

door-mixing-lead = To mix your water down to { $bed } m takes about as much work, under each square metre of its surface, as lifting { $kg } kg by one metre ({ $joules } joules).
door-mixing-little = To mix your water down to { $bed } m takes next to no work: less than lifting one kilogram by ten centimetres under each square metre. A breeze does it.
door-mixing-alike = As far as these readings can tell, your water weighs the same down to { $bed } m. Mixing it takes no work that they could show.
door-mixing-down = Mixed down to
door-mixing-work = As lifting by one metre
door-mixing-kg = { $kg } kg
door-mixing-none = nothing to lift
door-mixing-resists = Resists mixing
door-mixing-times = { $times } ×
door-mixing-unit = × : so many times as much as water of 4 °C under water of 5 °C. A step twice as thick counts twice.
door-mixing-swing = Push the water at { $depth } m up a little and let go: it swings up and down once in { $seconds } s.
door-mixing-swing-minutes = Push the water at { $depth } m up a little and let go: it swings up and down once in { $minutes } min.
door-mixing-box = Worked out as if the sides went straight down to { $bed } m. A real pond narrows below, so it takes less.
door-mixing-box-read = Worked out as if the sides went straight down to your last reading, at { $bed } m. A real pond narrows below, so it takes less; deeper water, if there is some, is not counted and would add to it.
door-mixing-salt = Worked out for fresh water. Salt at the bottom would make it far harder.
