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
cannot-tell = Over { NUMBER($days) } days it cannot be told: between { $low } and { $high } ({ $level } interval).
next-to-nothing = Over { NUMBER($days) } days it cannot be told: they say next to nothing about the true difference.
days-agree = The days differ no more than luck would make them.
assumed = We assume, since a few days cannot show it, that from one day to another the gap itself moves by about { $size } or less.
days-differ = The days lie farther apart than their shots explain, within what is assumed.
days-far-apart = The days lie farther apart than is assumed, as if the gap itself moved by about { $size }, so the interval is wider for it.
through-control = On days with only one of the two clubs it was held against { $control }, hit on those days as well, so that your own form of the
    day drops out.
order-is-the-same = The same club was hit first each time, so warming up and tiring push the same way every day: { $size } to either side
    is room for that, however many days there are. Hit the other one first next time, or both in turn.
order-changes = Of the interval, { $size } to either side is room for warming up and tiring, since the clubs were not compared in turn every day.
order-guessed = How far warming up and tiring move { $measure } is not known: what is allowed for them is a guess of ours, from how far single shots scatter.
order-is-not-known = Which way warming up and tiring push is not known of every day, so { $size } to either side is room for the worst of it, however
    many days there are.
one-more-day = One more day like these would narrow it from about { $now } to about { $then } to either side.
one-more-day-hardly = One more day like these would hardly narrow it.
