## The class: hand-ins, the table of what came, the wall, points

class-why-empty = There is nothing in it.
class-why-too-large = It is too large to be a hand-in.
class-why-unknown = This is not a Layercast hand-in.
class-why-pdf = It is a PDF: a picture of pages. Ask for the hand-in file, or for the lines.
class-why-picture = It is a picture. Ask for the hand-in file, or for the lines.
class-why-page = It is a web page without a hand-in in it.
class-why-lesson = It is a lesson, not a hand-in.
class-why-cast = It is a cast without answers.
class-why-class = It is a saved class. Drop it alone, and it opens.
class-why-cut-off = It is a hand-in that breaks off before its end. Ask for it again.
class-why-damaged = It is a hand-in, but a part of it cannot be read. Ask for it again.
class-why-absurd = It is a hand-in with something in it that no Layercast page has written.
class-why-lines = Of the { $of } lines of { $name }, { $missing ->
    [0] { $wrong ->
        [one] one is not as it was written: line { $numbers-wrong }.
       *[other] { $wrong } are not as they were written: lines { $numbers-wrong }.
    }
    [one] one is not here: line { $numbers-missing }.{ $wrong ->
        [0] {""}
       *[other] {" "}Not as written: { $numbers-wrong }.
    }
   *[other] { $missing } are not here: lines { $numbers-missing }.{ $wrong ->
        [0] {""}
       *[other] {" "}Not as written: { $numbers-wrong }.
    }
} Copy them again, all of them.
class-why-lines-unreadable = All lines of { $name } are here, but what they hold cannot be read. Ask for them again.

class-file-none = This is not a class file.
class-file-newer = Saved by a newer Layercast (version { $version }). Open it with that one.
class-file-broken = This class cannot be read to its end.
class-why-newer = It was handed in from a newer Layercast (version { $version }). Open the class with that one.
class-why-too-many = The class is full: no more hand-ins are taken.
class-why-zip-broken = This zip, or a file in it, is broken. Fetch it again.
class-why-zip-empty = The zip is empty.
class-why-zip-locked = It has a password. Unpack it first.
class-why-zip-method = It is packed in a way that is not read here. Unpack it first.
class-why-zip-too-much = There is far too much in it.
class-why-zip-too-deep = It lies too many zips deep.
class-why-zip-document = It is a document of an office program. Copy the lines out of it and paste them.
class-row-same = It is here already.
class-row-same-work = The same marks, tries and words are here already.
class-row-older = An older copy. The newer one stays.
class-row-newer = It goes on where the copy here ends, and takes its place.
class-row-beside = This seat has another sheet here, and neither holds all of the other. Choose one, or keep both.
class-row-other-class = It says class { $code }.
class-row-other-lesson = It is of another lesson: { $lesson }.
class-look-no-seat = It has no seat code.
class-look-edited = Something in this file was changed after it was saved. What counts is worked out from what it says now.
class-look-other-version = It was made with another version of this lesson. It is read by yours.
class-look-example = Its readings are an example: nobody measured them.
class-look-fahrenheit = Water of { $warmest } °C? These look like °F.
class-look-feet = { $depth } m deep, where the others have { $usual } m: these look like feet.
class-look-station = { $depth } m deep, where the others have { $usual } m: perhaps another place.
class-look-near = Nearly the cast of { $group }: { $count ->
    [one] one reading differs
   *[other] { $count } readings differ
}. One of them may be a copy with a slip.
class-look-group-twice = Others of group { $group } handed in another cast. Is the group right?
class-aside-class = of another class
class-aside-lesson = of another lesson
class-aside-beside = a second sheet of this seat
class-aside-out = taken out by you
class-way-take-in = Take it in
class-way-take-out = Take it out
class-way-keep-this = Keep this one
class-way-keep-both = Keep both
class-way-seen = It’s fine as it is
class-way-feet = Read as feet
class-way-fahrenheit = Read as °F
class-way-station = Another place
class-way-practice = Count it as practice
class-way-this-cast = This cast for both
class-way-that-cast = The other cast for both
class-way-both-casts = They are two
class-repaired-group = Group { $group }, put right by you
class-repaired-seat = Seat { $seat }, put right by you
class-repaired-feet = Read as feet
class-repaired-fahrenheit = Read as °F
class-repaired-zero = Marks read { $height } above the water
class-repaired-station = Another place
class-undo = Undo
class-undo-import = Undo: hand-ins added
class-undo-repair = Undo: the repair
class-undo-mark = Undo: the points
class-undo-taken-out = Undo: taken out
class-undo-code = Undo: the class’s code
class-undo-order = Undo: names and order
class-title-empty = Your class
class-title = { $casts ->
    [one] One cast
   *[other] { $casts } casts
}, { $sheets ->
    [one] one sheet
   *[other] { $sheets } sheets
}
class-cast-mixed = mixed to the bottom
class-cast-none = none
class-cast-today = only today’s warm layer
class-cast-too-few = too few readings
class-cast-fahrenheit = looks like °F
class-cast-unstable = heavier water on top
class-wall-empty = Drop hand-ins anywhere on this screen, or a class that you saved.
class-wall-none = No group found a thermocline.
class-wall-one = Only { $group } found a thermocline.
class-wall-all-share = All { $found } ranges share { $range }. The groups do not contradict each other.{ $none ->
    [0] {""}
    [one] {" "}One group has none.
   *[other] {" "}{ $none } groups have none.
}
class-wall-all-touch = All { $found } ranges share { $depth } m. The groups do not contradict each other.{ $none ->
    [0] {""}
    [one] {" "}One group has none.
   *[other] {" "}{ $none } groups have none.
}
class-wall-some-share = { $most } of { $found } ranges overlap: { $range }.{ $none ->
    [0] {""}
    [one] {" "}One group has none.
   *[other] {" "}{ $none } groups have none.
}
class-wall-some-touch = { $most } of { $found } ranges share { $depth } m.{ $none ->
    [0] {""}
    [one] {" "}One group has none.
   *[other] {" "}{ $none } groups have none.
}
class-wall-apart = No two of the { $found } ranges share a depth: the groups found different depths.{ $none ->
    [0] {""}
    [one] {" "}One group has none.
   *[other] {" "}{ $none } groups have none.
}
class-talk-station = <b>{ $group }</b> measured at another place, { $depth } m deep. It may be different there.
class-talk-widest = <b>{ $group }</b> has the widest range. Ask: what would make it narrower?
class-talk-widest-apart = <b>{ $group }</b> differs most between down and up, so its range is widest.
class-talk-deepest = <b>{ $group }</b> lies deepest. Ask: a slanted cable, or did the layer sink?
class-right-first = right first
class-right-later = right later
class-not-yet = not yet
class-blank = blank
class-cannot-tell = cannot be told
class-after-shown = after it was shown: no points
class-unasked = No question could be asked of the readings as they were handed in.
class-written = not graded yet
class-marked = graded
class-try-right = right
class-try-other-rule = right by another rule
class-try-close = close
class-try-free = does not count
class-try-words = in words
class-idea-count = { $students ->
    [one] one student
   *[other] { $students } students
}, { $groups ->
    [one] one group
   *[other] { $groups } groups
}
class-given = { $text }
class-report = Report
class-report-text = { $name } { $text }
class-comment-unit = Write the unit beside the number.
class-comment-depths = Name the two depths you compared.
class-comment-range = Give a range: how far could it be off?
class-comment-why = Your numbers are here. Write why they show it.
class-comment-rule = Say by which rule.
class-comment-fits = What you say fits your readings.
class-next-idea = Ask next: { $ask } { $students } answers show the same idea. Put two side by side: which fits the water, and how do you see it?
class-next-not-yet = Ask next: { $ask } { $students ->
    [one] One did not have it
   *[other] { $students } did not have it
} at the first try.
class-next-why = Ask next: why do the groups differ, and could anybody tell?
class-note-late = Handed in late.
class-note-practice = Practice.
class-why-title = { $one } and { $other }
class-why-group = { $group }
class-why-the-rest = the rest
class-why-too-few = They share too few depths to be compared.
class-why-too-little = They share too little water to be compared.
class-why-apart = They are { $apart } °C apart, taken over all depths.
class-why-chance = Nothing but chance is needed: readings of the same water differ so much.
class-why-none-alone = They differ by more than chance, and no cause by itself says why.
class-why-cannot-be-told = These readings cannot tell it from: { $cause }.
class-why-no-clock = Nobody can say whether the sun could have done it without the time between them: write the minutes above.
class-why-no-clock-rest = Set it against one other group, and write the minutes between them: then it can be said whether the sun could have done it.
class-why-minutes-not = “{ $text }” is not a number of minutes within a week, so the sun is left out. Write it like 45.
class-why-sun-could = The sun could have done it: { $power } W/m².
class-why-sun-cannot = The sun cannot have done it: that is { $power } W/m².
class-why-sun-unsure = Whether the sun could have done it is too close to tell: { $power } W/m².
class-why-sun-cooled = The later cast holds less heat: the sun did not do that.
class-why-sun-whole = As warmth gained between the two it would take { $power } W/m²: the sun cannot have done it.
class-why-not-even = The water is too even to tell.
class-why-not-top = Nothing was read near the surface.
class-why-not-layer = There is no layer that could move.
class-cause-offset = the probe
class-cause-zero = the zero of the marks
class-cause-stretch = a stretched or slanted cable
class-cause-top = the sun in between
class-cause-moved = moved water, or another place
class-fit-offset-more = If the probe of group { $one } read { $size } °C more than that of { $other }, that would explain { $explains } % of the difference.
class-fit-offset-less = If the probe of group { $one } read { $size } °C less than that of { $other }, that would explain { $explains } % of the difference.
class-fit-zero-deeper = If, at the same mark, the probe of group { $one } hung { $size } m deeper than that of { $other }, that would explain { $explains } % of the difference.
class-fit-zero-shallower = If, at the same mark, the probe of group { $one } hung { $size } m less deep than that of { $other }, that would explain { $explains } % of the difference.
class-fit-stretch-longer = If, at the same marks, the cable of group { $one } reached { $size } % deeper than that of { $other }, that would explain { $explains } % of the difference.
class-fit-stretch-shorter = If, at the same marks, the cable of group { $one } reached { $size } % less deep than that of { $other }, that would explain { $explains } % of the difference.
class-fit-top-warmer = If group { $one } had the top water { $size } °C warmer than { $other }, that would explain { $explains } % of the difference.
class-fit-top-colder = If group { $one } had the top water { $size } °C colder than { $other }, that would explain { $explains } % of the difference.
class-fit-moved-deeper = If the layer lay { $size } m deeper for group { $one } than for { $other }, that would explain { $explains } % of the difference.
class-fit-moved-shallower = If the layer lay { $size } m higher up for group { $one } than for { $other }, that would explain { $explains } % of the difference.
class-fit-too-small = It would be less than anybody could read off.
class-fit-group = group { $group }
class-why-best = Fits best: { $cause }
class-why-overlap = Their thermocline ranges share a depth, so about the thermocline they do not contradict each other.
class-why-no-overlap = Their thermocline ranges share no depth.
class-why-simpler = More would be explained by: { $cause }. It is not named first, because it bends more easily to fit, or would have to be unusually large.
class-why-station = { $group } measured at another place. The water itself may differ there, and no reading need be wrong.
