## The class: hand-ins, the table of what came, the wall, marks

class-why-empty = There is nothing in it.
class-why-too-large = It is too large to be a hand-in.
class-why-unknown = It is no hand-in of ours.
class-why-pdf = It is a PDF: a picture of pages. Ask for the hand-in file, or for the lines.
class-why-picture = It is a picture. Ask for the hand-in file, or for the lines.
class-why-page = It is a web page without a hand-in in it.
class-why-lesson = It is a lesson, not a hand-in.
class-why-cast = It is a cast without answers.
class-why-class = It is a class. Open it by itself.
class-why-cut-off = It is a hand-in that breaks off before its end. Ask for it again.
class-why-damaged = It is a hand-in, but a part of it cannot be read. Ask for it again.
class-why-absurd = It is a hand-in with something in it that no page of ours has written.
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
