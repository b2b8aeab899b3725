# Years: casts of one place over days and years.

class-to-years = Years
years-about = Put casts of the same place here, of one year or of many: notebooks, hand-ins, whole classes. Each is computed again by the same rule.
years-add = Add files
years-save = Save these years to a file
years-day = Day
years-place = Place
years-thermocline = Thermocline, m
years-range = Range
years-mixed = Mixed to, m
years-heat-head = Heat
years-out = Take out
years-beside = { $earlier } and { $later }
years-choose = Choose a day to set it beside the others.
years-day-first = Give this cast its day: then it can be set beside the others.
years-added = { $new } new, { $same } here already, { $not_ours } without a cast.
years-sum =
    { $casts ->
        [one] One cast
       *[other] { $casts } casts
    }, on { $days ->
        [one] one day
       *[other] { $days } days
    } of { $years ->
        [one] one year
       *[other] { $years } years
    }.
years-trend-few = No trend is offered: years differ by chance, and fewer than ten say little.
years-trend-many = Ten years and more may show a trend. Ask somebody who works with such series; this page draws no line through them.
years-heat = { $heat } MJ/m² to { $to } m
years-pair-season =
    { $days ->
        [0] The same day of the year.
        [one] One day apart in the year.
       *[other] { $days } days apart in the year.
    }
years-pair-same = Thermocline: { $earlier }, then { $later }. The ranges meet, so these readings show no difference. They would show one of more than { $smallest } m.
years-pair-deeper = Thermocline: { $earlier }, then { $later }. It lay { $by } m deeper, and the ranges do not meet: a difference that these readings can show.
years-pair-shallower = Thermocline: { $earlier }, then { $later }. It lay { $by } m less deep, and the ranges do not meet: a difference that these readings can show.
years-pair-one = Only one of the two days has a thermocline.
years-pair-none = Neither day has a thermocline.
years-pair-warmer = Down to { $to } m the later day held { $heat } MJ/m² more: { $mean } °C on average. Two probes that nobody checked may differ by { $probes } °C; this is more.
years-pair-colder = Down to { $to } m the later day held { $heat } MJ/m² less: { $mean } °C on average. Two probes that nobody checked may differ by { $probes } °C; this is more.
years-pair-alike = Down to { $to } m their heat differs by { $heat } MJ/m²: { $mean } °C on average. Two probes that nobody checked may differ by { $probes } °C, so it cannot be told.
