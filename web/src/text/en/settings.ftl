### What the facts below the answer and what was read say once they are opened.

n-more = { $count } more
read-title = What was read
rename = Rename
rename-club = Rename { $name }
rename-new = New name for { $name }
rename-joins = Given another club’s name, the two become one.
save = Save
whose-these = Which club hit these shots?
whose-in = Which club hit the shots in { $name }?
whose-added = Which club hit the shots you added?
whose-other = Or another club:
whose-name = Its name
whose-take = Name it
were-hit = Clubs were hit
were-hit-how = How the clubs were hit
numbers-are-what = What the numbers are
columns-unused = { $count ->
    [one] { $count } not used
   *[other] { $count } not used
}
columns-help = Tap one to correct it.
column-with-unit = { $name } ({ $unit })
column-n = column { $number }
please-check = please check
column-holds = What “{ $heading }” holds
column-unit = Unit of “{ $heading }”
no-unit = no unit
back-to-typing = Back to typing
change-averages = Change the averages
remove-shots = Remove these shots
start-again = Start again
letters-as-digits = Read these letters as digits
without-club = Rows without a club are
without-club-label = The club of rows without one
not-known = not known
probably = It probably says { $suggestion }.
line-n = Line { $line }
text-title = The text and how it was read
text-of = { $name }: { $rows }
cells-apart = Cells are set apart by
cells-apart-how = How cells are set apart
cells-comma = comma
cells-tab = tab
cells-semicolon = semicolon
cells-pipe = pipe
cells-spaces = spaces
cells-lines = lines
decimals-how = How decimals are written
decimals-point = 231.5 (point)
decimals-comma = 231,5 (comma)
stand-as = Shots stand as
stand-as-how = How shots stand in the text
layout-rows = one row for each shot
layout-blocks = blocks, each under its club’s name
layout-column_per_build = one column for each club
layout-row_per_build = one row for each club, its shots in it
layout-side_by_side = clubs side by side
layout-column_after_column = columns one below the other
layout-averages = averages, one row for each club
layout-measures_down = averages, measures down
lines-no-shots = Lines that are no shots
line-is = What line { $line } is
line-shot = a shot
line-summary = averages and the like
line-headings = headings
line-units = units
line-build = a club’s name
line-text = text
line-problem = not understood
rows-shots = { $count } { $count ->
    [one] row with shots
   *[other] rows with shots
  }
rows-averages = { $count } { $count ->
    [one] row of averages
   *[other] rows of averages
  }
rows-headings = { $count } { $count ->
    [one] heading or text
   *[other] headings or texts
  }
text-too-long = The text is too long to be shown here.
text-again = Your text. Change it and read it again
read-again = Read it again
add-other = Add the other club’s shots
add-more = Add more shots or another club
add-label = Shots to add
add-placeholder = Paste or type them here
add-these = Add these
add-file = Add a file
which-yours = Which club is yours?
which-theirs = Which club is the sender’s own?
whichever = Whichever leads
whichever-now = Whichever leads ({ $name })
against = Hold against it
against-label = The club to hold against yours
compare = Compare
compare-label = What to compare
better = What would be better?
margin-label = Smallest difference that would matter to you
margin-less = { $step } { $unit } less
margin-more = { $step } { $unit } more
margin-none = none
margin-spread = More or less scatter than with your club. What is usual here is our judgment; no study behind it.
margin-own = Nothing is usual for this column. Leave it empty, or say what would matter.
margin-usual = Usual is { $margin } { $unit }. Yours counts.
stopping-fixed = Yes, it was fixed
stopping-not_fixed = No, it was not
stopping-unknown = I don’t know
stopping-planned = In planned laps (once through the clubs), and we looked on the way
rounds-planned = Laps planned
looked-after = Looked at after lap
