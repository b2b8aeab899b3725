# The teacher's lesson. Names of the questions, as lists show them.
lesson-kind-1 = Read a temperature from the picture
lesson-kind-2 = Find the depth of a temperature
lesson-kind-3 = Which of three stretches changes fastest
lesson-kind-4 = How much colder from one mark to another
lesson-kind-5 = How many °C in each metre
lesson-kind-6 = Between which marks it changes fastest
lesson-kind-7 = How deep the thermocline is
lesson-kind-8 = How sure that depth is
lesson-kind-9 = Where the mixed layer ends, and the step split
lesson-kind-11 = Top and bottom of the steep layer
lesson-kind-12 = How thick each layer is
lesson-kind-13 = How well going down and coming up agree
lesson-kind-14 = Which way read warmer, and what that suggests
lesson-kind-15 = Which reading to take again
lesson-kind-16 = The same change in °F and feet
lesson-kind-17 = Which of two waters sinks
lesson-kind-18 = Where 1 °C hinders mixing more
lesson-kind-19 = How far the lake must cool before it mixes
lesson-kind-20 = The same water next month
lesson-kind-21 = The same water after a windy night
lesson-kind-22 = Where oxygen is low, and why
lesson-kind-23 = Whether two groups really disagree
lesson-kind-24 = What explains it best when two groups differ
lesson-kind-25 = What readings every two metres would have told
lesson-kind-26 = Which change would make you surer
lesson-kind-27 = When this answer would mean nothing
lesson-kind-29 = Fill in three bars of °C per metre
# Questions that even water, cooling water or a layer of today brings by itself.
lesson-kind-101 = Even water: warmest minus coldest
lesson-kind-102 = Even water: how big a difference must be
lesson-kind-103 = Even water: is any step bigger
lesson-kind-104 = Even water: three facts that show it
lesson-kind-105 = Heavier water on top: which pair
lesson-kind-106 = Even water: sun to warm the top metre
lesson-kind-107 = Heavier water on top: wrong, or cooling
lesson-kind-108 = A layer of today: will it be here tomorrow
lesson-kind-unknown = Question kind { $kind }, which this page does not know
lesson-own = Your own: { $ask }
lesson-own-new = Your own question, still empty
lesson-own-lacks-ask = Write the question.
lesson-own-lacks-depth = Give its depth in metres.
lesson-own-lacks-depths = Give two different depths in metres.
lesson-own-lacks-temp = Give its temperature in °C.
lesson-plan-before = Pages and notebooks open, groups named
lesson-plan-marks = Marks on Profile, before anything is checked
lesson-plan-questions = The questions
lesson-plan-report = Report written and handed in
lesson-plan-wall = All groups on the wall
lesson-plan-sum = Together about { $minutes } minutes, as classes usually take; nobody has measured it. It can be cut after any part: what was done is kept.
lesson-sum =
    { $count ->
        [one] One question
       *[other] { $count } questions
    }, { $points } points, about { $minutes } minutes.
lesson-open-steps = °C lost per metre
lesson-open-thermocline = the thermocline
lesson-open-mixed = the end of the mixed layer
lesson-open-deep = the steep and the deep layer
lesson-open-curve = the curve (if not: three readings are placed by hand first)
lesson-rule-reference = Mixed layer: measured from a depth of
lesson-rule-drop = Mixed layer: ends where the water is colder by
lesson-rule-steep = Steep layer: at least
lesson-unit-m = m
lesson-unit-c = °C
lesson-unit-c-per-m = °C per metre
lesson-open-newer = This lesson was made with a newer page (version { $version }). What this page knows of it is used; the rest stays in the file.
lesson-open-unknown =
    { $count ->
        [one] It has one question that this page does not know. It is not asked, and stays in the file.
       *[other] It has { $count } questions that this page does not know. They are not asked, and stay in the file.
    }
lesson-open-part = A part of this lesson could not be read. Its questions and rules are used; the rest stays in the file.
# A lesson's file that a student opened.
page-lesson-title = A lesson from your teacher
page-lesson-lead = <b>{ $title }</b>
page-lesson-lead-untitled = The file <b>{ $name }</b> is a lesson.
page-lesson-take = Work by this lesson
page-lesson-leave = Leave it
page-lesson-foot = What you have answered and marked stays.
