# What stands over an answer.
part-of-club = { $shots } of { $all } { $club } shots
both-parts = { $one } and { $other }
left-out = Left out: { $shots }.
# A decision with its size and the interval that decided it.
result = { $decision }, { $figures }
figures = { $gap } ({ $low } to { $high }, { $level } interval)
slips = { NUMBER($slips) } { $slips ->
    [one] value that cannot be counts
   *[other] values that cannot be count
} in neither.
answer-hangs-on-few = An answer that hangs on a few shots is no answer yet.
every-shot = Every shot
without-some = Without { $left }
counts-them-too = The answer counts every shot, also what was left out. Both ways: { $decision }. With every shot { $with-all }, without what was
    left out { $without }.
counts-them-all-the-same = The answer counts every shot, also what was left out; without that it would be the same.
short-different = a difference
short-same = the same for { $theirs ->
    [yes] the sender’s
   *[no] your
} purpose
short-cannot-tell = cannot tell
short-cannot-answer = no answer possible
clubs-and-time-mixed-up = Clubs and time are mixed up.
order-not-known = Whether the clubs were hit in turn is not known.
order-unknown = One club may have had the cold shots and the other the warm ones.
not-compared-in-turn = { $measure } could not be compared lap by lap.
why-not-compared = The clubs were hit in turn, but in too few laps was { $measure } measured with both.
one-after-the-other = { $baseline } and { $candidate } were hit one after the other, not in turn.
order-could-move-unseen = Warming up or tiring could make a difference in { $measure } of about { $size }; these shots cannot tell that
    from the club.
order-could-move-unknown = How far warming up and tiring move { $measure } is not known, so nothing is allowed for them.
order-guessed = How far warming up and tiring move { $measure } is not known. As a guess of ours, three quarters of the scatter of its single shots are allowed
    for them: { $size }.
order-could-move = Warming up or tiring could make a difference in { $measure } of about { $size }.
plain-averages-differ = At the usual 95 %, comparing the plain averages would have called this a difference.
small-drift-explains = { $usual ->
    [yes] With
   *[no] At the level used here, with
} a drift of only { $size } from one club to the other, luck could explain the rest.
drift-would-explain = { $usual ->
    [yes] Only
   *[no] At the level used here, only
} with a drift of { $size } or more from one club to the other could luck explain the rest.
# The shots of each club drifted by as much as that.
drift-was-found = { $usual ->
    [yes] With
   *[no] At the level used here, with
} a drift of { $size } or more from one club to the other, luck could explain the rest, and that much was found: carried on from one to
    the other, each club’s own shots drifted by about { $found }.
only-averages = { $assumed ->
    [yes] Only averages were given, without a deviation: how far single shots scatter is assumed.
   *[no] Only averages were given.
}
no-single-shots = There are no single shots here, so their order, the bad ones and the scatter cannot be checked.
assumed-to-scatter = No standard deviation was given, so single shots are taken to scatter by { $size }, the high end of what is usual (a golfers’ rule of thumb; no study behind it).
looked-early = Looked at early: lap { $round } of { $planned }.
early-is-stricter = An early look must be more convincing than the last one, so the answer is held to a stricter level.{ $differs ->
    [yes] {" "}A lead seen early usually shrinks.
   *[no] {""}
}
not-fixed = The number of shots was not fixed beforehand, or was looked at on the way.
not-of-the-plan = { $rounds ->
    [0] No lap holds
    [one] 1 lap holds
   *[other] { $rounds } laps hold
} both clubs; { $planned } were planned.
fixed-not-said = { $theirs ->
    [yes] The sender
   *[no] You
} didn’t say whether the number of shots was fixed before the first one.
not-said-is-stricter = Stopping when it looks good makes luck look like proof, so until { $theirs ->
    [yes] the sender says
   *[no] you say
} that it was fixed, { $held ->
    [together] all clubs together get 1 chance in 100 of a mistake in place of 5
    [alike] a 98 % interval decides in place of a 90 % one
   *[alone] a 99 % interval decides in place of a 95 % one
}.
open-is-stricter = Stopping when it looks good makes luck look like proof, so { $held ->
    [together] all clubs together get 1 chance in 100 of a mistake in place of 5
    [alike] a 98 % interval decides in place of a 90 % one
   *[alone] a 99 % interval decides in place of a 95 % one
}.
clubs-held-against = { $clubs ->
    [2] Two
    [3] Three
    [4] Four
    [5] Five
    [6] Six
    [7] Seven
   *[other] { $clubs }
} clubs were compared with { $baseline }.
best-of-several = The best of several looks good by luck alone, so to be called a difference a gap must be more convincing than with one club alone.
best-by-luck = The best of as many equal clubs would lead by about { $size } without being better.
honest-lead = { $club } shows a gap of { $shown }; { $more ->
    [yes] a fair guess is that about { $honest } of it remains
   *[no] that is no more than such luck
}.
margin-changed = The difference that matters was changed{ $answered ->
    [yes] {" "}after the answer was seen
   *[no] {""}
}.
margin-first-and-now = It was { $first } first and is { $now } now. An answer counts for most with that difference set beforehand.
one-of-several = Of several clubs one always stands out by luck alone, so to be called a difference a gap must be more convincing than with one club alone.
lead-shown = { $club } shows a gap of { $shown }{ $more ->
    [yes] , more than that
   *[no] , no more than such luck
}.
