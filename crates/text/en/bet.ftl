# What to bet: the line below the verdict, and the room with its dots.
line = A bet, not a verdict. Chance that { $does } on average: { $chance }.{ $gap }
line-with-margin = A bet, not a verdict. Chance that { $does } on average: { $chance }; by { $margin } or more: { $of-margin }.{ $gap }
most-likely = {" "}Most likely: { $none ->
    [yes] hardly any difference
   *[no] about { $gap }
}.
# Beside its ten dots.
at-all = { $does } on average, by however little: { $chance }.
by-margin = By { $margin } or more: { $chance }.
pairs = Shot against shot, one with each club: { $does } in { $share } pairs; allowing for luck { $range }.
dots = Ten dots, filled for { $chance }.
# Chances counted in ten, and ranges of them.
none-of-ten = fewer than 1 of 10
all-of-ten = more than 9 of 10
about-of-ten = about { $count } of 10
up-to-of-ten = up to { $count } of 10
from-of-ten = { $count } of 10 or more
range-of-ten = { $low } to { $high } of 10
# What stands behind it.
gap = In these shots: { $shown }. A gap that stands out is often helped by luck, so it is pulled toward no difference, the more so the less
    such clubs usually differ. Then { $none ->
    [yes] hardly any difference
   *[no] about { $value }
} is most likely, and at least 95 of 100 such gaps lie between { $low } and { $high }.
usual = How far clubs usually differ in { $measure } is our choice, with no study behind it: two of three true gaps below { $shaft } with another shaft in the
    same head, below { $head } with another head, below { $old } against an old club.
over-all-three = Nobody said what differs here, so every chance is a range over all three.
over-what-was-said = What differs here was said, so every chance is a range around that.
order-in-it = { $order ->
    [one-after-the-other] The clubs were not hit in turn
    [not-known] Whether the clubs were hit in turn is not known
   *[not-compared] The clubs were hit in turn, but { $measure } could not be compared lap by lap
}; what warming up and tiring may do is part of it.
decides-nothing = A bet says what is likely; it decides nothing. Only the answer above does.
# Why nothing is bet.
nothing-compared = There is nothing to bet on; the answer above says why.
no-scatter = Bets are on averages. How far shots scatter is not bet on.
no-nearer-zero = Bets are on more or less. Which club is nearer to zero is not bet on.
no-averages = No bet is made from averages alone: the order and the single shots are not known.
no-order = Nothing is bet: { $order ->
    [one-after-the-other] the clubs were not hit in turn
    [not-known] whether the clubs were hit in turn is not known
   *[not-compared] { $measure } could not be compared lap by lap
}, and how far warming up and tiring move { $measure } is not known.
no-left-out = Nothing is bet: it would hang on the shots left out.
no-value-in-doubt = Nothing is bet while a value is in doubt.
no-gap = The shots show no difference. With what clubs usually differ by, at least 95 of 100 such gaps lie between { $low } and { $high }.
any-of-ten = anything is possible, so no bet can be made
no-next-to-nothing = Nothing is bet: so few shots or laps say next to nothing about the gap.
rests-on = The chances of a gap rest on { $laps ->
    [0] fewer shots than were hit
   *[other] the { $laps } laps that hold both clubs
}: { $candidate-shots } with { $candidate }, { $baseline-count } with { $baseline }.
drift-points-there = The shots of each club drifted over the session, which by itself looks like “{ $does }”: part of the gap may be that, and not the club.
