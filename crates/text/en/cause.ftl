# Through which number a gap came.
ball-speed = Ball speed
launch-angle = Launch angle
spin = Spin
direction = Direction
curve = Curve
rest = Not explained
club-speed = Club speed
smash = Smash factor
part-of-carry = { $size } of carry ({ $span })
no-clear-part = no clear part of the gap, perhaps none at all ({ $span })
part-differed = { $gap } in these shots: { $worth }.
part = { $worth }.
no-gap = On average { $candidate } and { $baseline } carried equally far in these shots, so there is no gap to explain.
carried-by-rest = { $club } carried { $gap } { $farther ->
    [yes] farther
   *[no] shorter
} in these shots: about { $size } of that lie in ball, wind, luck or how carry was measured, not
    in the launch.
carried-by-nothing-clear = { $club } carried { $gap } { $farther ->
    [yes] farther
   *[no] shorter
} in these shots: nothing in how the ball was launched clearly accounts for it.
carried-through = { $club } carried { $gap } { $farther ->
    [yes] farther
   *[no] shorter
} in these shots: { $most ->
    [more] more than all of it
    [all] all of it
   *[largest] the largest clear part
}, { $size }, came through { $through }.
lie-in-rest = About { $size } lie in ball, wind, luck or how carry was measured, not in the launch.
through-ball-speed = { $up ->
    [yes] more
   *[no] less
} ball speed
through-launch = { $launched ->
    [higher] a higher launch
    [lower] a lower launch
   *[somehow] the launch
}
through-spin = { $spun ->
    [more] more spin
    [less] less spin
   *[somehow] the spin
}
through-direction = where the ball started
through-curve = how the ball curved
through-club-speed = { $up ->
    [yes] more
   *[no] less
} club speed
through-smash = a { $up ->
    [yes] better
   *[no] worse
} smash factor
through-rest = what the flight model does not explain
against = Against it worked { $what }: { $size }.
path = The path went more { $outward ->
    [yes] from in to out
   *[no] from out to in
}.
swing-differed = The swing that day differed: { $how }
swing-did-not-differ = Nothing that was measured of the swing clearly differed between the two.
swing-not-measured = Nothing about the swing was measured.
belongs-to-both = To club and swing together belongs: { $what }
within-ball-speed = Of what ball speed was worth, { $club } came from how fast the club was swung{ $club-is-clear ->
    [yes] {""}
   *[no] {" "}(perhaps nothing)
} and { $smash } from how well it was struck{ $smash-is-clear ->
    [yes] {""}
   *[no] {" "}(perhaps nothing)
}.
no-direction = Launch direction and spin axis were not both measured: what starting or curving off line cost is part of what is not explained.
no-club-speed = Club speed was not measured: it would tell whether ball speed came from a faster swing or a better strike.
no-loft = Loft and attack angle at impact were not measured: with both, a change of spin can be held against how the club arrived.
no-strike = Where on the face the ball was struck was not measured. With a driver, a strike 5 mm higher takes off about 700 rpm of spin, by a golfers’ rule of thumb
    with no study behind it, so no difference in spin can be put down to the club without it.
note = Split over a model of the flight, shot against shot of the same rank, { $shots } and { $other-shots }; the model is off by about 3 % of
    carry, by less in a difference. What stands in brackets is a 99 % interval, since several parts are looked at; clear means that the whole
    interval lies on one side of zero.
not-flown = { $shots } without all these numbers, or that did not fly, are not in it.
not-in-turn = The clubs were not hit in turn, so warming up or tiring is in these parts too.
order-not-known = Whether the clubs were hit in turn is not known, so warming up or tiring may be in these parts too.
through-which = It says through which number the gap came, not that the club made that number.
needs-turns = It says through which number the gap came, not that the club made that number: that needs the clubs hit in turn.
bar = { $part }: { $size }, from { $span }.
bars = Bars from left, shorter, to right, longer, that add up to { $gap } of carry with { $club } before they are rounded. { $parts }
bars-within = Within ball speed: { $parts }
from-to = { $low } to { $high }
moved = { $measure }: { $size } { $way } ({ $span }).
not-moved = { $measure }: no clear difference ({ $span }).
worth = { $size } { $way }, { $measure }: worth about { $effect }{ $is-clear ->
    [yes] {""}
   *[no] , perhaps nothing
} ({ $span }).
# What to take to a coach, by the number through which the gap came; never a club to buy.
next-club-speed = Next: the club was swung at another speed that day. Hit both in turn again before you put that down to the club.
next-smash = Next: mark the face and see where each club was struck; take that to a coach before anything else.
next-ball-speed = Next: have club speed measured and mark the face, to see whether the swing or the strike made the ball speed; take that to a coach.
next-launch-or-spin = Next: look with a coach, in this order, at tee height, the strike on the face, then loft.
next-start-or-curve = Next: look with a coach, in this order, at aim, the face at impact and the lie of the club. A lesson may do more than a club.
long-turns = The clubs were changed so seldom that warming up or tiring may be in these parts too; the intervals here count shots, where the answer counts whole laps only.
hint-long-turns = The clubs were changed too seldom to be sure of it.
