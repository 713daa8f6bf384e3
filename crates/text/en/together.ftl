# Several days of the same clubs.
how-many-sessions = Putting sessions together takes at least two, and at most 50.
how-many-sessions-remedy = Add a session of the same clubs from another day.
no-scatter = Scatter cannot be put together over several days here.
no-scatter-remedy = Choose a goal about averages.
too-few-sessions = { $days ->
    [0] None of these sessions can be used for both clubs
    [one] Only 1 of these sessions can be used for both clubs
   *[other] Only { NUMBER($days) } of these sessions can be used for both clubs
}; it takes two.
same-names = Each of them needs shots of both clubs, under the same names, that are not all alike.
different = Over { NUMBER($days) } days { $club } { $verb }: between { $low } and { $high } ({ $level } interval).
same = Over { NUMBER($days) } days they are the same for your purpose: between { $low } and { $high } ({ $level } interval).
wide-open = { NUMBER($days) } days are too few to settle it together: { $gap } on average, and two do not show what a third would.
too-few-days = { NUMBER($days) } days are too few to settle it together: between { $low } and { $high } ({ $level } interval).
cannot-tell = Over { NUMBER($days) } days it cannot be told: between { $low } and { $high } ({ $level } interval).
days-agree = The days differ no more than luck would make them.
days-differ = From day to day the true difference moves by about { $size }.
two-days-wide-open = Each day’s answer, below, holds for that day only, and two days cannot show by how much days differ; a third day narrows this
    most.
two-days = Two days cannot show by how much days differ, so the interval allows for a lot. Each day’s own answer stands below; a
    third day narrows this most.
few-days = Few days say little about how much days differ, so the interval is wide; another day narrows it most.
