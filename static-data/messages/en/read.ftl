# What the reader of tables says, and why it doubts a cell.

## What was understood

read-understood =
    Read { $rows ->
        [one] one row
       *[other] { $rows } rows
    }: depth { $depth }, { $temps }.
read-in-m = in metres
read-in-cm = in centimetres
read-in-ft = in feet
read-in-c = in °C
read-in-f = in °F
read-in-open = with no unit written
read-part-both = going down and coming up { $in }
read-part-turn = one temperature { $in }, going down and then coming up
read-part-down = going down { $in }
read-part-up = coming up { $in }
read-part-one = one temperature { $in }
read-part-way-column = one temperature { $in }, each row with its way
read-part-blocks = temperatures { $in }, going down and coming up one under the other
read-gives =
    This gives { $marks ->
        [one] one mark at { $from } m
       *[other] { $marks } marks from { $from } to { $to } m
    }, { $readings ->
        [one] one reading
       *[other] { $readings } readings
    }.
read-gives-if =
    With “{ $answer }” this gives { $marks ->
        [one] one mark at { $from } m
       *[other] { $marks } marks from { $from } to { $to } m
    }, { $readings ->
        [one] one reading
       *[other] { $readings } readings
    }.

## What is not a table

read-error-too-large = This is { $size } MB of data, and we read up to { $limit } MB. Copy the cells of one cast and paste them here.
read-error-empty = There is nothing in it: no words, no numbers.
read-error-picture = This begins like a picture, not like text: its first characters are { $signs }. Nothing was taken from it.
read-error-spreadsheet = This is a spreadsheet file, not plain text. Nothing was taken from it.
read-error-document = This is a text document or a set of slides, not a plain table. Nothing was taken from it.
read-error-pdf = This is a PDF, a printed page and not a table. Nothing was taken from it.
read-error-archive = This is a packed folder (zip or the like), not a table. Nothing was taken from it.
read-error-media = This is sound or film, not a table. Nothing was taken from it.
read-error-notebook = This is a notebook saved from this page, not a table.
read-error-data = This is data written for programs (JSON or XML), not a table. Nothing was taken from it.
read-error-binary = This is not text: its characters cannot be read. Nothing was taken from it.
read-error-web-page = This is a web page, and there is no table of readings in it. Nothing was taken from it, and nothing in it was run.
read-error-no-table = No row with a depth and a temperature is in it. Line { $line } says “{ $written }”.
read-error-one-column = Only one column has numbers. A cast needs two: the depth and the temperature.
read-error-no-depth = No column looks like a depth.
read-error-no-temp = No column looks like a temperature.
read-error-too-many-columns = This table has { $columns } columns, and we read up to { $limit }.
read-error-commas = Line { $line } says “{ $written }”. Its commas may be decimal signs or stand between cells, and nothing tells which.
read-error-unit = Column { $column } is headed “{ $written }”. We read depths in metres, centimetres or feet, and temperatures in °C or °F.

## What to do

read-do-copy = Open it in the program it comes from, copy the cells, and paste them here. Or save it there as CSV.
read-do-type = Type the readings in. Or copy the cells of the table it was made from, and paste them here.
read-do-unpack = Unpack it first, then open the table that is in it.
read-do-open-notebook = Open it from the list of notebooks, under the name of the water.
read-do-columns = Say in the headings which column is what. Or give it again with one column for the depth and one for the temperature.
read-do-few-columns = Copy only the columns with depth and temperature, and paste them here.
read-do-semicolons = Copy the cells in the spreadsheet and paste them here: then no comma is in the way. Or save the table with semicolons.
read-do-units = Choose the unit in the heading of that column, or change the numbers in the spreadsheet.

## What was taken for granted

read-notice-commas = Commas stand between the cells and inside the numbers. We put the numbers together again: see if they are right.
read-notice-on-its-side = The table lies on its side, so we turned it. Where we say “line”, count its columns.
read-notice-metres = No unit is written at the depths. They go to { $deepest } in steps of { $step }, so we took metres.
read-notice-celsius = No unit is written at the temperatures. They run from { $low } to { $high }, so we took °C.
read-notice-celsius-most = No unit is written at the temperatures. Most run from { $low } to { $high }, so we took °C.
read-notice-depth-column = No heading names the depth. Column { $column } runs like depths, so we took it.
read-notice-temp-column = No heading names the temperature. We took column { $column }.
read-notice-by-order = No heading says which way. We took column { $down } for going down and column { $up } for coming up.
read-notice-twin = Columns { $dropped } and { $kept } say the same in two units. We took column { $kept }.
read-notice-quote = In line { $line } a quote mark opens and never closes. We read it as an ordinary character.
read-notice-minus = The depths are written with a minus. We count them downward from the surface.
read-notice-one-way = One temperature at each mark, and the way is not written. Say “going down” or “coming up” if you know it. Nothing else depends on it.
read-notice-way-open = The way is left open: each reading counts by itself.
read-notice-turn = The depths turn at line { $line }. Before it we read going down, from it on coming up.
read-notice-up-first = Before line { $line } the depths get smaller: we read coming up. From it on they grow: going down.
read-notice-tangled = The depths go down and up more than once, so the way is left open. If these are several casts, give them one by one.

## Where a cell is

read-place-down = { $depth } m, going down, line { $line }
read-place-up = { $depth } m, coming up, line { $line }
read-place-one = { $depth } m, line { $line }
read-place-line-depth = the depth in line { $line }
read-place-line-down = going down in line { $line }
read-place-line-up = coming up in line { $line }
read-place-line-one = the temperature in line { $line }
read-at-line-depth = Line { $line }, depth
read-at-line-down = Line { $line }, going down
read-at-line-up = Line { $line }, coming up
read-at-line-one = Line { $line }, temperature
read-places-more = { $first }; { $rest }
read-places-cut = { $first } and more

## Cells and rows

read-notice-empty =
    { $count ->
        [one] One cell is empty
       *[other] { $count } cells are empty
    }: { $places }. Type the reading in if you have it.
read-notice-missing =
    { $count ->
        [one] One cell says
       *[other] { $count } cells say
    } that there is no reading: “{ $written }” ({ $places }). Type the reading in if you have it.
read-notice-sheet-error =
    The spreadsheet could not work out { $count ->
        [one] one cell
       *[other] { $count } cells
    }: “{ $written }” ({ $places }). Type the reading in if you have it.
read-notice-code =
    { $count ->
        [one] One cell holds
       *[other] { $count } cells hold
    } “{ $written }”, a number that stands for “no reading” ({ $places }). Type the reading in if you have it.
read-notice-other-sign =
    { $count ->
        [one] One number has
       *[other] { $count } numbers have
    } another decimal sign than the rest: “{ $written }” ({ $places }). We read it as a decimal sign too: see if that is right.
read-notice-own-unit =
    { $count ->
        [one] One cell has
       *[other] { $count } cells have
    } another unit than the column: “{ $written }” ({ $places }). We read it in the unit written there: see if that is right.
read-notice-outside =
    { $count ->
        [one] One cell is
       *[other] { $count } cells are
    } outside what lake water is ({ $low } to { $high } °C): “{ $written }” ({ $places }). Did a point get lost, or is it another unit?
read-notice-no-way =
    { $count ->
        [one] One row does not say its way
       *[other] { $count } rows do not say their way
    }: “{ $written }” ({ $listed ->
        [one] line { $lines }
       *[other] lines { $lines }
    }). It is left open.
read-notice-no-oxygen =
    { $count ->
        [one] One cell of oxygen holds
       *[other] { $count } cells of oxygen hold
    } no number from 0 to { $most } mg/L: “{ $written }” ({ $listed ->
        [one] line { $lines }
       *[other] lines { $lines }
    }). It is kept as written and left out.
read-notice-oxygen = Column { $column } is oxygen in mg/L. It goes along with the readings of its row.
read-notice-oxygen-two = Columns { $first } and { $second } are oxygen in mg/L. They go along with the readings of their row.
read-notice-oxygen-percent = Column { $column } is oxygen in per cent of saturation. It is not used: mg/L gives the per cent too.
read-notice-salt = Column { $column } tells of salt. It is not used: density is worked out for fresh water. Salty water below can be warmer and still be the heavier.
read-notice-secchi-one = The Secchi disk was seen down to { $depth } m.
read-notice-secchi-two = The Secchi disk vanished at { $gone } m and came back at { $back } m. The mean is { $mean } m.
read-notice-secchi-unclear = What it says of the Secchi disk is not clear: “{ $written }”. Type the depth under “Oxygen and Secchi”.
read-notice-totals =
    { $listed ->
        [one] Line { $lines } is a total or a mean
       *[other] Lines { $lines } are totals or means
    }, not a reading: “{ $written }”. Left out.
read-notice-heads-again =
    { $listed ->
        [one] Line { $lines } repeats the headings
       *[other] Lines { $lines } repeat the headings
    }: “{ $written }”. Passed over.
read-notice-text-rows =
    { $listed ->
        [one] Line { $lines } is text
       *[other] Lines { $lines } are text
    }, no reading: “{ $written }”. Passed over.
read-notice-depth-twice = The depth { $depth } m stands in lines { $first } and { $second }, and the next one is missing. Both readings are used: see if one depth is a slip.
read-notice-no-readings = No temperature can be read yet. Settle the cells with a question mark, or see if the right column is chosen.
read-notice-one-reading = There is only one reading. A profile needs at least four depths.
read-notice-one-depth = All { $readings } readings lie at { $depth } m. A profile needs at least four depths: see if the right column is the depth.
read-notice-more-doubts =
    { $count ->
        [one] One more cell has a question mark.
       *[other] { $count } more cells have a question mark.
    }

## Doubted cells

read-doubt = { $place }: { $why } It is left out until you decide.
read-doubt-meant = { $place }: { $why } Did you mean { $meant }? It is left out until you decide.
doubt-letter-zero =
    You have <cell>{ $written }</cell>. { $place ->
        [1] The first character
        [2] The second character
        [3] The third character
        [4] The fourth character
       *[other] Character number { $place }
    } is the letter { $letter }, not a zero.
doubt-letter-one =
    You have <cell>{ $written }</cell>. { $place ->
        [1] The first character
        [2] The second character
        [3] The third character
        [4] The fourth character
       *[other] Character number { $place }
    } is “{ $letter }”, not a one.
doubt-letter =
    You have <cell>{ $written }</cell>. { $place ->
        [1] The first character
        [2] The second character
        [3] The third character
        [4] The fourth character
       *[other] Character number { $place }
    } is the letter { $letter }, not a { $digit }.
doubt-points = You have <cell>{ $written }</cell>. There is one decimal point or comma too many.
doubt-space = You have <cell>{ $written }</cell>. There is a space inside the number.
doubt-sign = You have <cell>{ $written }</cell>. The character “{ $sign }” is not part of a number.
doubt-date = You have <cell>{ $written }</cell>. The spreadsheet made a date of a number.
doubt-range = You have <cell>{ $written }</cell>. One number is needed here, not a range.
doubt-surface = You have <cell>{ $written }</cell>, a word for the surface. The depth there is zero.
doubt-formula = You have <cell>{ $written }</cell>. It looks like a formula. It stays text and is never worked out.
doubt-text = You have <cell>{ $written }</cell>. That is not a number.
doubt-no-depth = There is a temperature, but no depth.
doubt-above-surface = You have <cell>{ $written }</cell>. With a minus it would lie above the water.
doubt-too-deep = You have <cell>{ $written }</cell>. No lake is that deep. Did the point get lost?
doubt-out-of-order = You have <cell>{ $written }</cell>. The depths before and after it are { $before } and { $after } m, and this one does not fit between them.
doubt-out-of-order-last = You have <cell>{ $written }</cell>. The depth before it is { $before } m, and this one does not fit after it.
doubt-out-of-order-first = You have <cell>{ $written }</cell>. The depth after it is { $after } m, and this one does not fit before it.

## Questions that come first

read-ask-commas = Are these commas decimal signs?
read-ask-commas-text = Line { $line } says “{ $written }”. Commas stand between all its digits, and two readings are possible.
read-way-commas-decimal = Yes: { $joined }
read-way-commas-separate = No: { $separate }
read-ask-decimal = How much is “{ $written }”?
read-ask-decimal-text = It stands in line { $line }. Everywhere three digits follow the sign, so it may be a decimal sign or set thousands apart.
read-way-number = { $value }
read-sample = column { $column } with { $written }
read-ask-depth-column = Which column is the depth?
read-ask-depth-column-two = No heading names it, and two columns could be it: { $first }, and { $second }.
read-ask-depth-column-many = No heading names it, and { $count } columns could be it. The first is { $first }.
read-way-column = Column { $column }
read-way-column-unit = Column { $column }, { $in }
read-way-neither = None of these
read-ask-temp-columns = Which columns are the temperatures?
read-ask-temp-columns-text = { $count } columns could be temperatures, and no heading says going down or coming up. The first two are { $first }, and { $second }.
read-way-down-up = Column { $down } going down, column { $up } coming up
read-way-all-temps = All of them, the way is not known
read-way-only-column = Only column { $column }
read-ask-depth-unit = Which unit are the depths in?
read-ask-depth-unit-text = No unit is written at them. They run from { $low } to { $high }, mostly in steps of { $step }.
read-ask-depth-unit-one = No unit is written at it, and there is one depth only: { $high }.
read-way-m = Metres: down to { $deepest } m
read-way-cm = Centimetres: down to { $deepest } m
read-way-ft = Feet: down to { $deepest } m
read-ask-fahrenheit = Are these °F?
read-ask-fahrenheit-text = No unit is written at the temperatures. They run from { $low } to { $high }. Lake water is hardly ever that hot; as °F it is { $low_c } to { $high_c } °C.
read-ask-fahrenheit-written = °C is written, but they run from { $low } to { $high }. Lake water is never that hot; as °F it is { $low_c } to { $high_c } °C.
read-way-f = Yes, °F
read-way-c = No, °C
read-ask-celsius = Are these °C?
read-ask-celsius-text = °F is written, but they run from { $low } to { $high }. As °F that would be ice: { $low_c } to { $high_c } °C.
read-way-yes-c = Yes, °C
read-way-no-f = No, °F
read-ask-second-series = Is the second series coming up?
read-ask-second-series-text = In line { $line } the depths begin again at the top, and no word says which way the probe went.
read-way-down-then-up = First down, then up
read-way-both-down = Both going down
read-way-leave-open = Leave it open
