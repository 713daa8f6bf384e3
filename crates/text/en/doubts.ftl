# What is asked before there is an answer, where the reading of a text is in doubt; and what can be said to it.
many-clubs = This text names { $clubs } clubs, more than a session has. Which column names the clubs?
by-column = “{ $heading }”: { $names }
measure-guessed = Nothing says what these numbers are. What was measured?
unknown-heading = What is in the column “{ $heading }” ({ $unit })?
headed-alike = Two columns say that they hold { $measure }, and their numbers differ. Which one is meant?
told-apart = Two columns are headed “{ $heading }”. The smaller one was taken for { $smaller }, the larger one for { $larger }. Is that right?
unit = “{ $heading }” was read in { $unit }, but its values only make sense in { $other }. Which is it?
unit-of-club = { $measure } of { $club } does not go with its ball speed as it does for the other clubs: in { $other } it would. Which is it?
units-mixed = { $measure } stands in { $unit } and in { $other }. Is that right?
out-of-range = { $cells } { $cells-are ->
    [one] value of
   *[other] values of
} { $measure } cannot be right: { $values }. { $cells-are ->
    [one] It is
   *[other] They are
} left out.
point-slipped = { $cells } { $cells-are ->
    [one] value of
   *[other] values of
} { $measure } { $cells-are ->
    [one] is
   *[other] are
} about ten times off the others, as if a point had slipped: { $values }. { $cells-are ->
    [one] It is
   *[other] They are
} left out.
above-total = In { $rows } { $rows-are ->
    [one] row
   *[other] rows
} the ball carries farther than it goes in all. Is that right?
plus-minus = What stands behind the ±?
odd-spread = A spread of { $values } in { $measure } cannot be right for { $clubs }. It is left out.
same-name = Are these one club: { $names }?
one-row = There is a single shot with { $club }. Whose is it?
odd-name = Are these clubs: { $names }?
left-out-why = { $shots } { $shots-are ->
    [one] shot is
   *[other] shots are
} marked as not counting, and nothing says why. Why?

# What can be said to it.
it-is = It is { $measure }
something-else = Something else
first-column = The first one
second-column = The second one
it-is-right = It is right
in-unit = It is in { $unit }
leave-cells-out = Leave that out
they-are-right = They are right
one-club = They are one club
belongs-to = It belongs to { $club }
different-clubs = They are different clubs
own-club = It is a club of its own
leave-shot-out = Leave this shot out
are-clubs = They are clubs
are-no-clubs = They are not clubs
deviation = How far single shots lie apart (standard deviation)
no-deviation = Something else, or I do not know
mishits = They were mishits
misread = They were measured wrongly
mishit = mishit
measured-wrongly = measured wrongly
count-them = Count them all the same
named-like-no-club = named “{ $name }”
# A shot as it was read, and its measures between commas.
of-a-shot = { $measure } { $value }
