# The answer as text to paste, and as lines of a picture.
open = See every number and try your own margin
in-the-file = The shots are in the file that goes with this.
title = { $measure }: { $candidate } against { $baseline }
the-same = the same
scatter = Scatter: { $ratio }; allowing for luck { $low } to { $high } ({ $level } % interval).
gap = Gap: { $gap }; allowing for luck{ $mixed-up ->
    [yes] {" "}and order
   *[no] {""}
} { $low } to { $high } ({ $level } % interval).
average-of = { $club } average of { $shots }
average-of-unknown = { $club } average of nobody knows how many shots
shots-with = { $club } { $shots }
hit-in-turn = { $counts }, hit in turn.
hit-one-after-the-other = { $counts }, hit one club after the other.
hit-somehow = { $counts }.
none-left-out = No shot was left out.
no-reason = no reason given
times-reason = { NUMBER($times) } { $reason }
other-reasons = other reasons
left-out = Left out, but in the link: { $shots } ({ $reasons }).
