# The parts that sentences about two clubs are made of.
does = { $club } { $verb }
# A column of the golfer's own: `Weight with Driver B is higher`.
measure-of-does = { $measure } with { $club } { $verb }
on-a-side = { $size } { $side }
averages = { $candidate } averaged { $candidate-mean } over { $candidate-shots }, { $baseline } { $baseline-mean } over { $baseline-count }.
averages-compared = Lap by lap, over the { $rounds } laps that hold both, { $candidate } averaged { $candidate-mean } over { $candidate-shots }, { $baseline }
    { $baseline-mean } over { $baseline-count }.
counts = { $baseline }: { $baseline-shots }. { $candidate }: { $candidate-shots }.
luck = Two identical clubs{ $hit ->
    [in-this-order] {" "}hit in this order could
    [in-whatever-order] , hit in whatever order, could
    [not-compared] , not compared lap by lap, could
    [luck-alone] {" "}would, by luck alone and with nothing allowed for the order,
    [same-one-first] , the same one first in every lap, could
   *[alike] {" "}would
} show a gap at least this big in { $sessions }.
between = Allowing for luck{ $room ->
    [luck-and-order] , warming up and tiring
    [luck-alone] {" "}alone, and for nothing that the order did
    [luck-and-a-guess] {" "}and, by a guess, for warming up and tiring
    [luck-and-starts] {" "}and for the cold start of each lap
   *[luck] {""}
}, the true difference may lie anywhere between { $low } and { $high } ({ $level } interval).
cannot-tell-in-short = Cannot tell: anything between { $low } and { $high }.
no-difference = no difference
last-of-several = { $names } and { $last }
check-the-value-first = First check the value in doubt: until then no number of shots can be named.
no-limits = So few shots or laps leave the true difference open by more than { $size } either way: they say next to nothing about it.
no-limits-in-doubt = With the value in doubt counted, these shots leave the true difference open by more than { $size } either way.
in-doubt-in-short = Cannot tell: a value is in doubt.
no-limits-in-short = Cannot tell: too few shots or laps.
# A size and which way: `8 yd more`.
gap = { $size } { $way }
shows-at-best = A session like this shows a difference of { $size } in 8 of 10 cases; smaller ones need more shots.
first-in-turn = Hit the clubs in turn, three shots at a time.
why-in-turn = When one club is finished before the next is taken, even many shots cannot tell the club from warming up.
have-it-measured = Have { $measure } measured on every shot.
first-read-every-shot = Have { $measure } measured on every shot, so that it can be compared lap by lap.
# A planned test that is not at its end: the next step is the next round.
go-on = Go on: { NUMBER($rounds) } { $rounds ->
    [one] lap of the plan remains
   *[other] laps of the plan remain
}.
more-than-can-be-hit = { $assumed ->
    [yes] If single shots scatter as assumed, it
   *[no] With this much scatter it
} would take more shots than anybody can hit: ask whether a bigger
    gap would do.
more-than-a-visit = { $assumed ->
    [yes] If single shots scatter as assumed, it
   *[no] With this much scatter it
} would take about { $shots } shots with each to tell a gap of { $gap } from none in 8 of 10 such tests: more than
    fit into one visit (about 60 with each, a golfers’ rule of thumb; no study behind it).
other-days = Come again on other days and put them together, settle for finding only a bigger gap, or look at which of the two
    scatters less.
another-day = Or come again on two other days and put the three together.
usually-tells = { $same-first ->
    [yes] This one began every lap with the same club. A second one like it that begins every second lap with the other club would most likely tell a gap of { $gap } from none: 8 of 10 such tests do.
   *[no] 8 of 10 tests of this size tell a gap of { $gap } from none; this one did not. A second one like it would most likely tell.
}
would-tell = About { $shots } shots with each, planned beforehand and hit in turn, three at a time, would most likely tell a gap of { $gap } from none: 8 of 10
    such tests do.
would-then-tell = { $assumed ->
    [yes] If single shots scatter as assumed, about
   *[no] About
} { $shots } shots with each, planned beforehand, would then most likely tell a gap of { $gap } from none: 8 of 10 such tests do.
in-turn-would-tell = { $assumed ->
    [yes] Hit like that, and if single shots scatter as assumed, about
   *[no] Hit like that, about
} { $shots } shots with each, planned beforehand, would most likely tell a gap of { $gap } from none: 8 of 10
    such tests do.
in-turn-settles-order = With the clubs hit in turn, three shots at a time, the order no longer matters.
plan-says-how-many = The plan of a fair test says how many shots that takes.
narrows = A new test of { $shots } shots with each, planned beforehand and hit in turn, three at a time, would narrow it to ± { $size } or less: 8 of 10
    such tests do.
near-it = If the true gap is near { $margin }, no number of shots settles whether it reaches that.
hardly-narrows = Even 60 shots with each in one more visit would not surely narrow it by much; several days put together do.
measured-on = measured on { $count } of { $shots }
would-find = { $assumed ->
    [yes] If single shots scatter as assumed, a
   *[no] A
} test of this size would then find a true difference of { $size } in 8 of 10 cases; smaller ones need more shots.
fixed-would-tell = About { $shots } shots with each, their number fixed beforehand and hit in turn, three at a time, would most likely tell a gap of { $gap } from none: 8 of 10
    such tests do. This session has at least as many, but a stricter interval of { $level } had to decide.
check-the-value = First check the value in doubt: while it is wrong, this answer is worth nothing.
# Laps of long turns: the number of shots is not what is missing.
shorter-turns = Change clubs every three shots, in place of turns of up to { $longest }: the same number of shots then makes many laps, and laps are what counts.
# Neither left nor right.
on-line = { $size } off line
# How far shots scatter in a measure, as a thing that is spoken of.
scatter-of = the scatter of { $measure }
look-at-the-value = First check the value that is asked about: what follows counts it.
