### The grid and the form of averages.

entry-club = Club { $number }
entry-round = Lap
heading-shots = Shots
heading-of-which = Of which
heading-average = { $measure } average
heading-deviation = { $measure } SD
entry-undo = Undo
entry-add-club = Add a club
grid-name = Its name
grid-typed = What is typed: { $columns }
grid-read = Read { n-shots }
grid-whose = Whose shots?
grid-unit-question = { $name }: these numbers only make sense in { $unit }.
grid-unit-take = Read them in { $unit }
grid-shot = Shot
grid-cell = { $name }, shot { $shot }
grid-next = Next cell
grid-left = Left
grid-right = Right
grid-minus = Minus
grid-use = Use { $suggestion }
grid-wrong = { $name }: { $message }
grid-no-place = { $count } more { $count ->
    [one] column
   *[other] columns
  } found no place: add what they hold above, then paste again.
grid-empty = Type a shot first.
grid-source = Typed shots
columns-entered = What is entered
columns-unit = Unit of { $name }
columns-leave = Leave { $name } out
columns-add = Add a measure
columns-add-short = Add …
averages-help = From a receipt, a screen or a photo. How far the shots scatter may be left empty: then the largest usual scatter is taken.
averages-empty = Enter an average first.
averages-source = Averages entered
averages-read = Read these averages
averages-name = Name
averages-shots = Number of shots
averages-shots-of = Number of shots of { $name }
averages-meant = Averages of
averages-meant-of = Which shots the averages of { $name } stand for
averages-all = every shot hit
averages-best = only the best ones
averages-good = the good ones, mishits out
averages-measure-of = { $measure } of { $name }
averages-average = Average
averages-average-of = Average { $measure } of { $name }
averages-scatter = ± scatter (SD)
averages-scatter-of = Scatter of { $measure } of { $name }
averages-no-count = That is not a number of shots.
