# Why something cannot be flown, and what would help.
no-such-build = There is no club number { $build }; there are { $builds }, counted from 0.
no-such-build-remedy = Name a club that is in the session.
not-conditions = This page cannot fly a ball in such weather.
not-conditions-remedy = { $condition ->
    [temperature] Enter −50 to 55 °C, or −58 to 131 °F.
    [humidity] Enter 0 to 100.
    [wind] Enter at most 67 mph or 108 km/h.
   *[altitude] Enter −1,600 to 19,600 feet or −480 to 5,970 meters above sea level.
}
no-conditions = These conditions cannot be used.
no-conditions-remedy = Leave them open for standard air.
no-number = This must be a number.
no-launch = This page cannot fly a ball that is launched like this.
no-flight = A ball launched like this does not fly.
no-launch-remedy = Check the number and its unit.
nothing-to-bring = No shot here has its { $measures } and carry.
nothing-to-bring-remedy = Add these columns to bring carry to standard air.
nothing-to-hold = No shot here has carry, ball speed, launch angle and spin.
nothing-to-hold-remedy = Add these columns to see whether they belong together.
same-carry = Every shot of a club has the same carry, so nothing can be read from it.
same-carry-remedy = Check the carry column: it was probably rounded or copied.
nothing-to-map = Fewer than { $least } shots with your club have carry, ball speed, launch angle and spin.
add-columns = Add these columns, shot by shot.
no-such-group = There is no group number { $group }; there are { $groups }, counted from 0.
no-such-group-remedy = Name a group of the answer, or leave it open.
same-build-twice = A club cannot be compared with itself.
same-build-twice-remedy = Choose another candidate.
too-few-to-split = Fewer than { $least } shots with each club have carry, ball speed, launch angle and spin.
too-few-to-split-remedy = Add shots with all four numbers.
not-measured = Not measured here: { $measures }. Without it nobody can say where a gap in carry comes from.
cannot-be-shown = { $place ->
    [fairway] This fairway is not one that can be shown.
   *[aim] This aim is not one that can be shown.
}
cannot-be-shown-remedy = Ask for { $least } to { $most }.
nothing-landed = Where these shots landed is not known: no shot has both carry and offline.
nothing-landed-remedy = Add the sideways miss of each shot (offline) beside its carry.
no-candidate = It is not said which club is held against the first.
no-candidate-remedy = Name one of the session’s clubs, not the baseline.
too-few-on-a-side = Before and after need at least 3 shots with each of two clubs on both sides.
too-few-on-a-side-remedy = Move the change to another shot, or hit both clubs again after it.
no-scatter = These values do not scatter, so nothing tells chance from cause.
no-scatter-remedy = Check the column, or choose another measure.

# Carry brought to standard air.
standard-air-carry = Modeled standard-air carry
would-carry = In standard air (15 °C at sea level, dry, calm) an average shot of yours would carry { $how ->
    [same] the same
    [farther] about { $size } farther
   *[less] about { $size } shorter
}.
note = Modeled: only the change of air is, your own ball stays in the number. A reading near the ground says little about the
    wind that the ball meets higher up.
