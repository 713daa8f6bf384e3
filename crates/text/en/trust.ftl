# What was seen, why it matters, what to do.
in-turn = The clubs were hit in turn, in { $rounds } laps.
in-turn-why = Warming up, tiring and a change of wind meet all clubs alike.
in-turn-next = Keep hitting them in turn.
not-compared = The clubs were hit in turn, in { $rounds } laps, but { $measure } could not be compared lap by lap.
not-compared-why = In too few laps was it measured with both clubs, so warming up and tiring may count as the club.
not-compared-next = Have it measured on every shot.
in-streaks = The shots came in streaks: of what one was off by, about { $percent } % went on in the next.
in-streaks-why = Such shots tell less than as many that have nothing to do with each other, so the answer allows for { $wider } % more.
in-streaks-next = More laps help, and changing the club more often.
in-turn-same-first = The clubs were hit in turn, in { $rounds } laps, { $club } first in every one.
in-turn-same-first-why = What the first shots of a lap lose, after a rest or a walk, fell on { $club } alone.
in-turn-same-first-next = Begin { $several ->
    [yes] each lap with another club
   *[no] every second lap with the other club
}.
learning = { $club } gained on { $other } from shot to shot: { $measure } by { $rough ->
    [yes] { $size } or more
   *[no] about { $size }
} since its first one.
learning-why = Allowing for luck, by { $span }. { $baseline ->
    [yes] Warming up may have fallen mostly on it, and its average holds what that cost. Once warm, its gap
   *[no] A club that is new in the hand does that, and its average holds what learning it cost. Once it is known, its gap
}
    to { $other } may be { $gap } ({ $low } to { $high }, { $level } interval).
learning-next = Hit it until it no longer gains, then test again.
moved = { $club } itself moved: { $measure } { $before } with “{ $first }”, { $after } with “{ $second }”.
moved-why = That is { $gap } ({ $low } to { $high }, { $level } interval) with one and the same club. Whatever changed there, or only came with
    time, moves the other clubs too: those hit on different sides of it are not held against each other fairly.
moved-next = See “Before and after” for what the change did and what the club did.
odd-shot = Is this right? Shot { $number }, { $club }: { $measure } { $value }.
odd-average = Is this right? Average of { $club }: { $measure } { $value }.
out-of-range = { $measure } lies between { $low } and { $high }, if it was read and typed right{ $others ->
    [0] {""}
    [one] ; one more value lies outside
   *[other] ; { $others } more values lie outside
}.
point-slipped = Most shots with { $club } are near { $usual }: this one is about { $below ->
    [yes] a tenth of that
   *[no] ten times that
}, as if a decimal point had slipped{ $others ->
    [0] {""}
    [one] ; one more value looks so
   *[other] ; { $others } more values look so
}.
counts-in-the-answer = It counts all the same, and the answer is worth nothing while it is wrong.
counts-beside-the-answer = It counts in what is said of { $measure }, which is worth nothing while it is wrong; the answer on { $asked } does not
    use it.
out-of-range-next = Correct it, or set it aside.
moves-the-answer = It lies far from the rest, and alone it moves the answer by { $size }, where { $margin } matter{ $others ->
    [0] {""}
    [one] ; one more shot does that too
   *[other] ; { $others } more shots do that too
}. It counts all the same.
odd-next = If it is a slip, correct it or set it aside; if the ball was hit so, leave it.
blocked = { $several ->
    [yes] The clubs were hit one after another.
   *[no] One club was hit after the other.
}
blocked-why = Whatever changed between { $several ->
    [yes] one and the next
   *[no] the two
}, warming up, tiring, the wind, a tip from somebody watching, counts as the club.
blocked-next = Next time hit them in turn: three with one, three with the other, again and again.
order-unknown = The order in which the shots were hit is not known.
order-unknown-why = One club may have had the cold shots, the other the warm ones.
order-unknown-next = If you know the order, say so where your shots are shown.
long-turns = The clubs were hit in turns of up to { $longest } shots.
long-turns-why = Within so long a set warming up and tiring count as the club, so only whole laps are taken as evidence: the
    answer is much less sure than the number of shots suggests.
long-turns-next = Change clubs every three shots.
cold-start = { $club } was hit first, with { $shots } before any other club.
cold-start-why = Warming up alone usually gives the later club about { $size } of { $measure } (a golfers’ rule of thumb; no study behind it).{ $allows ->
    [up-to] {" "}With tiring and whatever else changes with time, the answer allows for up to { $allowed }.
    [nothing] {" "}The answer is about scatter and allows nothing for it.
   *[not-said] {""}
}
first-shots-are-rarely-the-best = The first shots of a session are rarely the best.
cold-start-next = Hit ten or so shots to warm up before any of them count: a golfers’ rule of thumb, no study behind it.
unequal = { $more } has { $shots }, { $fewer } only { $count }.
unequal-why = The answer is only as sure as the smaller number allows, and one bad shot weighs more there.
unequal-next = Give every club the same number of shots.
drift = { $in-turn ->
    [yes] Over the session
   *[no] Within each club’s own shots, carried on over the whole session,
} { $measure } went { $up ->
    [yes] up
   *[no] down
} by about { $size }.
drift-sideways = { $in-turn ->
    [yes] Over the session
   *[no] Within each club’s own shots, carried on over the whole session,
} { $measure } moved about { $moved }.
drift-why = Allowing for luck, by { $span }. { $shared ->
    [alike] Clubs hit in turn share it.
    [in-part] The clubs were changed so seldom that they share it only in part.
   *[not-at-all] Clubs hit one after the other do not share it: the answer may be off by more than it allows for.
}
# Which way a drift that clubs do not share pushes: `Driver B carries farther`.
drift-pushes = By itself it would look like “{ $does }”.
drift-next = { $advice ->
    [warm-up] Warm up before the first shot that counts.
    [rest] Rest between sets.
   *[both] Warm up before the first shot that counts, and rest between sets.
}
numbers-missing = { $missing ->
    [one] 1 shot is missing: the numbers jump at number { $first }
   *[other] { $missing } shots are missing: the numbers jump, first at number { $first }
}.
numbers-missing-why = If somebody took out the bad ones, the averages belong to chosen shots.
numbers-missing-next = Ask for every shot that was hit.
average-disagrees = The average { $measure } printed for { $club } is not that of its shots.
printed = Printed is { $printed }; the { $shots } here average { $average }.
printed-over = Printed is { $printed } over { $claimed }; the { $shots } here average { $average }.
average-disagrees-next = Ask which shots the printed average stands for.
left-out = Left out: { $counts }.
left-out-why = Leaving out the worst two of one club alone can make two equal clubs look different in 1 of 10 sessions. What was
    left out still counts in the answer.
left-out-next = Keep every shot{ $in-doubt ->
    [yes] , unless it is a slip
   *[no] {""}
}. A mishit belongs to the club too.
one-far-shot = { $several ->
    [yes] Of the two clubs compared here, 1 shot
   *[no] 1 shot
} with { $club } lies far from the rest.
one-far-shot-why = It counts. A single one can move an average a long way.
far-shots = { $several ->
    [yes] Of the two clubs compared here, { NUMBER($shots) } shots
   *[no] { NUMBER($shots) } shots
} lie far from the rest{ $others ->
    [0] { $shots ->
        [2] , both with { $club }
       *[other] , all with { $club }
    }
   *[other] : { NUMBER($count) } with { $club }, { NUMBER($others) } with { $other }
}.
far-shots-why = They count. Whether a club makes more of them is part of the question.
far-shots-next = Look at the typical shot in the numbers as well.
few-decide = Taking out { $shots ->
    [one] a single shot
   *[other] { $shots } well-chosen shots
} would change the answer.
few-decide-why = An answer that a few shots can turn around rests on little.
few-decide-next = Leave none out{ $in-doubt ->
    [yes] , unless it is a slip
   *[no] {""}
}. Before you decide, check it with a new test whose number of shots is fixed beforehand.
not-fixed = The number of shots was not fixed beforehand, or was looked at on the way.
fixed-not-said = Nobody said whether the number of shots was fixed beforehand.
fixed-not-said-next = If it was fixed before the first shot, say so.
not-of-the-plan = { $rounds ->
    [0] No lap holds
    [one] 1 lap holds
   *[other] { $rounds } laps hold
} both clubs; { $planned } were planned.
not-of-the-plan-next = Stop where the plan says.
not-fixed-why = Two equal clubs that are watched until one looks better will look different in about 2 of 10 sessions. The answer is held to
    a stricter level for that.
not-fixed-next = Fix the number before the first shot.
planned-looks = { $round } of { $planned } planned laps were { $unfinished ->
    [yes] begun; the last of them is not finished
   *[no] hit
}.
planned-looks-why = { $looked ->
    [yes] Looking on the way was planned, and the answer takes it into account.
   *[no] Nobody looked before the end of the plan.
}
planned-looks-next = { $done ->
    [yes] The plan is complete.
   *[no] Stop where the plan says.
}
no-speed-no-strike = Neither club speed nor the place of the strike was measured.
no-strike = The place of the strike on the face was not measured.
no-speed = Club speed was not measured.
club-or-swing-unknown = Without { $one-of-them ->
    [yes] it
   *[no] them
} nobody can say whether the club or the swing made a difference.
no-strike-next = Mark the face to see where the ball was struck.
no-speed-next = Ask for club speed.
no-speed-no-strike-next = Ask for club speed, and mark the face to see where the ball was struck.
averages-only = Only averages are here.
averages-only-why = Cold shots, left-out shots and the order of hitting cannot be seen in an average.
averages-only-next = Ask for every shot.
few-decide-next-go-on = Leave none out{ $in-doubt ->
    [yes] {" "}unless it is a slip
   *[no] {""}
}, and go on: { NUMBER($rounds) } { $rounds ->
    [one] lap of the plan remains
   *[other] laps of the plan remain
}.
