# What stands over an answer.
left-out = { $shots ->
    [one] 1 shot was left out.
   *[other] { $shots } shots were left out.
}
answer-hangs-on-few = With every shot: { $with-all }. Without the shots left out: { $without }. An answer that hangs on a few
    shots is no answer yet.
counts-them-too = The answer counts every shot, these too; without them it would be the same.
short-different = a difference
short-same = the same for your purpose
short-cannot-tell = cannot tell
short-cannot-answer = no answer possible
clubs-and-time-mixed-up = Clubs and time are mixed up.
order-unknown = Nobody knows in which order these shots were hit.
one-after-the-other = { $baseline } and { $candidate } were hit one after the other, not in turn.
order-could-move-unseen = Warming up or tiring could move { $measure } by about { $size }; these shots cannot tell that from the
    club.
order-could-move = Warming up or tiring could move { $measure } by about { $size }.
plain-averages-differ = Comparing the plain averages would have called this a difference.
small-drift-explains = A drift of only { $size } from one club to the other would explain that.
drift-would-explain = It would take a drift of { $size } from one club to the other to explain that.
only-averages = Only averages were given.
no-single-shots = There are no single shots here, so their order, the bad ones and the scatter cannot be checked.
assumed-to-scatter = No deviation was given, so single shots are taken to scatter by { $size }, the high end of what is usual.
looked-early = Looked at early: round { $round } of { $planned }.
early-is-stricter = An early look must be more convincing than the last one, so the answer is held to a stricter level. A lead
    seen early usually shrinks.
not-fixed = The number of shots was not fixed before.
open-is-stricter = Stopping when it looks good makes luck look like proof, so the answer must hold up at 99 in 100 instead of
    95. If the number was fixed before the first shot, say so under what counts.
clubs-held-against = { $clubs ->
    [2] Two
    [3] Three
    [4] Four
    [5] Five
    [6] Six
    [7] Seven
   *[other] { $clubs }
} clubs were held against { $baseline }.
best-of-several = The best of several looks good by luck alone, so each must be more convincing than if it were the only one.
best-by-luck = The best of as many equal clubs would lead by about { $size } without being better.
honest-lead = { $club } shows a gap of { $shown }; with that luck taken out, expect about { $honest }.
margin-changed = What counts was changed after the answer was seen.
margin-first-and-now = It was { $first } first and is { $now } now. An answer is worth most under the number that was named
    before.
