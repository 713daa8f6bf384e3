# Which share of all choices speaks for which club.
headline-in-a-row = Of all the runs of { NUMBER($shots) } you could have been shown, { $share } would say that { $first } and
    { $other-share } that { $second }.
headline-picked = Of all the ways to pick { NUMBER($shots) } shots with each club, { $share } would say that { $first } and { $other-share }
    that { $second }.
# Put behind what is claimed.
at-least = {" "}by { $margin } or more
nearer-to-zero = { $club } averages nearer to zero
# The other club does the same; which verb follows from what the first one does.
other-does = { $club } does
other-is = { $club } is
other-has = { $club } has
that-of-other-is = it is with { $club }
best = The { $extreme ->
    [highest] highest
   *[best] best
} { NUMBER($shots) }{ $in-a-row ->
    [yes] {" "}in a row
   *[no] {""}
} with { $own } against the { $extreme ->
    [highest] lowest
   *[best] worst
} { NUMBER($shots) } with { $other }: { $gap }. Against all shots with { $other }: { $gap-to-all }.
farther-from-zero = { $size } farther from zero
nearer-to-zero-by = { $size } nearer to zero
half = half
by-luck-alone = Of comparisons of { NUMBER($shots) } shots each between two clubs that are the same, with shots that scatter like
    yours, { $share } would come out { $size } or more apart by luck alone.
all-shots-of-each = All { NUMBER($shots) } { $measured ->
    [yes] measured shots
   *[no] shots
} of each
all-shots = { $measured ->
    [yes] All measured shots
   *[no] All shots
}, { NUMBER($candidate) } and { NUMBER($baseline) }
whole = { $shots }: { $gap } with { $club }.
whole-no-difference = { $shots }: no difference.
deal = { NUMBER($shots) } shots each, dealt blindly: { $gap } with { $club }.
deal-no-difference = { NUMBER($shots) } shots each, dealt blindly: no difference.
note-in-a-row = Nobody has to mean it: stopping at a good moment is enough.
note-picked = Nobody has to mean it: setting aside the ones that felt wrong is enough.
note-as-listed = The order of hitting is not known, so a run is one in the order your shots are listed.
marked = { $gap } for the { $extreme ->
    [highest] highest
   *[best] best
} { NUMBER($shots) } with { $club }
# The picture for those who hear it.
alternative = Bars heaped around zero: the gaps that luck alone gives between two equal clubs, { NUMBER($shots) } shots
    each. Half of them are smaller than { $usual }, none of those drawn is larger than { $largest }. The marks: { $gap } for all shots,
    { $first }, and { $second }.
# Shares counted in a hundred.
none = none
all = all
fewer-than-1-of-100 = fewer than 1 of 100
more-than-99-of-100 = more than 99 of 100
of-100 = { $count } of 100
