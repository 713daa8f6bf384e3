# Where they land.
strip = a fairway { $width } wide
in-the-middle = in the middle
side = { $size } { $right ->
    [yes] right
   *[no] left
}
side-and-shape = { $size } { $right ->
    [yes] right
   *[no] left
}, the { $fade ->
    [yes] fade
   *[no] draw
} side
miss = { $side } on average{ $part ->
    [yes] {" "}over the { $shots } with both numbers
   *[no] {""}
}, { $carry } from the tee.
counted = { NUMBER($landed) } of { $shots } { $other-aim ->
    [yes] would have landed
   *[no] landed
} on it.
too-few-for-a-chance = Too few shots to give a chance.
counted-share = That is { $share } ({ $low } to { $high }, 95 % interval).
dots = about { $share } ({ $low } to { $high }, 95 % interval)
chance = A bell curve as wide as these shots says { $chance } ({ $low } to { $high }).
no-better-aim = No other aim would have done clearly better than that of the day.
best-at-the-middle = Best aimed at the middle: by the curve about { $chance } ({ $low } to { $high }).
best-aimed = Best aimed { $side }: by the curve about { $chance } ({ $low } to { $high }).
aim-over-club = You miss { $side } on average with { $club }: aiming off would fix more than the club does{ $hint ->
    [yes] {" "}in these shots
   *[no] {""}
}.
hits-more-often = As aimed, { $better } hits { $strip } more often than { $worse }{ $hint ->
    [yes] {" "}in these shots: a hint, not proof, since warming up or tiring may play a part
   *[no] {""}
}.
line-counted = Counted, about { $share } with { $candidate } landed on { $strip }, about { $other-share } with { $baseline }.
line-more-often = As aimed, { $better } hits it more often{ $hint ->
    [yes] {" "}in these shots: a hint, not proof, since warming up or tiring may play a part
   *[no] {""}
}.
line-not-settled = These shots do not settle which of the two hits it more often.
not-settled = These shots do not settle which of the two hits { $strip } more often.
alone = With { $club } about { $chance } hit { $strip }.
too-few = Too few shots to say how often a fairway would be hit.
as-aimed = As aimed, by the bell curve: about { $chance } with { $own }, { $other-chance } with { $other }; the true gap may lie from { $low } to { $high }
    in 100 ({ $level } interval){ $order ->
    [one-after-the-other] , with nothing allowed for one club being hit after the other
    [not-known] ; the order is not known, and nothing is allowed for it
    [long-turns] , with nothing allowed for clubs being changed so seldom
   *[in-turn] {""}
}.
counted-against-the-curve = Counted, a larger share of the shots with { $favored } landed on it: a few shots far off with { $favored } widen its
    curve, or a few of { $other } just missed. Neither way settles which of the two hits more often.
would-hit = Aimed { $side }, { $club } would hit about { $chance }, by the curve.
centers = The middle of the shots with { $candidate } lies { $carry } { $longer ->
    [yes] longer
   *[no] shorter
} and { $level ->
    [yes] on the same line as
   *[no] { $side } of
} that with { $baseline }.
centers-by-luck = Two identical clubs would show middles at least that far apart in { $sessions }.
order-may-move = One club was hit after the other, so warming up or tiring may have moved a middle.
long-turns-may-move = The clubs were changed so seldom that warming up or tiring may have moved a middle.
order-not-known = The order is not known, so warming up or tiring may have moved a middle.
aimed-off = Aimed { $side } of that day’s aim.
aimed-as-on-the-day = Aimed as on the day.
note = Where balls land, not where they roll to.
note-curve = The count comes first; the bell curve beside it is that of shots that scatter like these around the same middle, and mishits widen it. The ranges
    are where the true share may lie, with so few shots.
note-aim = What another aim would do comes from the curve; the best aim supposes that the middle of your shots stays where it is.
build-said = { $club }: { $miss } { $chance }
ovals = Ovals: where the next shots would fall if they scatter like these, about half of them in the inner one and nine in ten in the outer.
no-oval = No oval for { $club }: where the next shots would fall cannot be drawn from { $shots }, only from { $fewest } or more.
no-scatter-for-ovals = No ovals, and no chance of luck: the { $measure } of these shots does not scatter as real shots do.
line-of-landings = Nine in ten of the next shots would fall on a line { $long } long, since these do not differ in the other direction.
oval = Nine in ten of the next shots would fall in an oval { $long } by { $wide }.
from-above = The landings from above, the target straight ahead, with { $strip }. { $aimed }
more-or-fewer = { $hundredths } { $more ->
    [yes] more
   *[no] fewer
}
no-gain = none
