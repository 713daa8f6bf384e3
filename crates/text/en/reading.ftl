# What could not be used of a text, and what to do about it.
empty-text = There is no text yet.
empty-text-remedy = Paste the shots, choose a file or type them in.
no-numbers = No shots were found: the text has no column of numbers.
no-numbers-remedy = Paste a table with one row for each shot, such as: Club, Carry, Offline.
too-long = The text is longer than can be read at once; the rest was not read.
too-long-remedy = Split it into parts of at most 100,000 rows, 3,000,000 cells and 10 MB.
not-a-number = A number was expected here.
not-a-number-remedy = Correct the cell or empty it. The other values of this shot count.
letter-for-digit = A letter stands in a number.
letter-for-digit-remedy = Take the suggestion if it is right. Until then the value is left blank.
other-decimal-mark = This number uses another decimal mark than its column.
other-decimal-mark-remedy = Correct the cell, or choose the column’s decimal mark.
other-unit = The unit behind this number does not fit its column.
other-unit-remedy = Correct the cell, or say what the column holds.
too-many-cells = This row has more cells than there are headings; the extra ones were not read.
too-many-cells-remedy = Check for a decimal comma in a list that is set apart by commas.
no-number-in-row = This row holds no number that could be read.
no-number-in-row-remedy = Fill in its numbers, or mark the line as text.
no-build = No club is named for this shot.
no-build-remedy = Write the club’s name into the row.
uneven-columns = This column has another number of values than the others, so they cannot be matched; it was not read.
uneven-columns-remedy = Add a dash for each value that is missing.
more = More problems like these were counted but are not listed.
more-remedy = Correct the first ones and read again.
# What was found instead.
more-than-1000-cells = more than 1,000 cells
values-not = { $values } values, not { $usual }

# What was guessed, or is worth knowing.
more-notices = { $notices } more notices are not listed.
measure-guessed = Nothing says what was measured; it was taken for { $measure }.
own-measure = a measure of its own
too-sparse = Columns with hardly any value were set aside to keep the session small.
build-column-guessed = “{ $heading }” was taken for the column that names the clubs.
column-repeated = Another column already holds { $measure }; “{ $heading }” was kept beside it.
column-unsure = “{ $heading }” may be { $measure }; it was kept under its own heading.
marked-values = { $values } values are marked with a star; they were read like the others.
no-headings = There are no headings: say what each column holds.
heading-in-unit = { $heading } in { $unit }
unit-assumed = No unit is given, so the usual one was taken: { $columns }.
unit-question = “{ $heading }” was read in { $unit }, but its values only make sense in { $other }. Which is it?
implausible = { $measure }: { $value } { $unit } lies outside { $low } to { $high } { $unit }; it stays out until you say that it is right.
build-assumed = No club is named, so “{ $build }” was taken.
build-carried-down = Rows without a club’s name belong to the last name above them.
letters-read = Letters were read as digits in { $cells } cells, as asked.
quotes-ignored = A quotation mark never closes; quotation marks were read as plain characters.
before-break = before “{ $label }”
after-break = after “{ $label }”
something-changed = “{ $label }” stands between the shots. Did something change there? Before and after are told apart at this line.
second-mixed-up = No club was hit under two values of “{ $change }”, so what the club does and what that does cannot be told apart.

# The order of the shots, and their numbers.
rounds-inferred = The clubs were hit in turn; { $rounds } laps were worked out from the order of the rows.
ordered-by-time = The shots were put in the order of their times.
ordered-by-number = The shots were put in the order of their numbers.
numbers-repeated = Some shot numbers are there twice.
numbers-from-to = { $first } to { $last }
numbers-missing = { $count } shot { $missing ->
    [one] number is
   *[other] numbers are
} missing{ $of-a-build ->
    [yes] {" "}of { $build }
   *[no] {""}
}: { $numbers }{ $others ->
    [yes] {" "}and others
   *[no] {""}
}.

# Averages in the file.
perhaps-averages = Each club has one row, read as one shot. If the rows are averages, say so.
count-missing = The number of shots is missing for { $builds }: without it there can be no verdict.
chosen-shots = The averages of { $builds } are of chosen shots: no verdict can come from them.
deviation-missing = No deviation is given for { $measures }: the largest usual one will be taken.
deviation-of-some-missing = No deviation of { $measure } is given for { $builds }: the largest usual one will be taken. You can enter the other club’s for a guess.
too-many-summaries = There are more summary rows than can be kept; the others were not compared.
summaries-agree = The summary rows agree with the shots above them ({ $figures } figures checked).
count-disagrees = The file says { $printed } shots for { $all ->
    [yes] all shots
   *[no] { $build }
}; it holds { $found }.
figure = The { $figure ->
    [average] average
    [median] median
    [deviation] standard deviation
    [smallest] smallest
    [largest] largest
   *[range] range
}{ $of-a-measure ->
    [yes] {" "}{ $measure }
   *[no] {""}
} of { $all ->
    [yes] all shots
   *[no] { $build }
}
figure-disagrees = { $figure } is { $printed } in the file and { $found } from its { $rows } rows, { $apart } { $more ->
    [yes] more
   *[no] less
}: it belongs to shots that are not in the file.

# Names of what has none.
first-build = Club 1
value = Value
column = Column { $number }

# A file that is no text.
not-text = This file holds no text.
not-text-remedy = A photo can be read by your phone: select its text, copy it, and paste it here.
