# The answer as text to paste, and as lines of a picture.
open = See every number and try your own margin
in-the-file = The shots are in the file that goes with this.
title = { $measure }: { $candidate } against { $baseline }
the-same = equal in these shots
scatter = Scatter: { $ratio }; allowing for luck { $low } to { $high } ({ $level } interval).
gap = Gap: { $gap }; allowing for luck{ $room ->
    [luck-and-order] {" "}and order
    [luck-alone] {" "}alone
    [luck-and-a-guess] {" "}and, by a guess, order
    [luck-and-starts] {" "}and the cold start of each lap
   *[luck] {""}
} { $low } to { $high } ({ $level } interval).
gap-alone = Gap in these { $averages ->
    [yes] averages
   *[no] shots
}: { $gap }.
average-of = { $club }: average of { $shots }
average-of-unknown = { $club }: average of an unknown number of shots
shots-with = { $club }: { $shots }
shots-measured = { $club }: { $shots }, { $measured } of them measured
average-of-best = { $club }: average of the best { $shots }
hit-in-turn = { $counts }, hit in turn.
hit-one-after-the-other = { $counts }, hit one club after another.
hit-somehow = { $counts }; in which order they were hit is not known.
hit-by-one = { $counts }.
none-left-out = None is marked as left out.
sender-says-fixed = The sender says that the number of shots was fixed beforehand; neither that nor typed numbers can be checked here.
sender-says-planned = The sender says that the laps were planned beforehand; neither that nor typed numbers can be checked here.
cannot-be-checked = Numbers that were typed cannot be checked here.
no-reason = with no reason given
times-reason = { NUMBER($times) } { $reason }
other-reasons = other reasons
left-out = Left out, but in the link: { $shots } ({ $reasons }).
