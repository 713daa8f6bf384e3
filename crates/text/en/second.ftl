# Before and after.
different = { $who }: { $size } { $way } than { $whom } ({ $low } to { $high }, { $level } interval).
same = { $who } and { $whom }: the same for your purpose ({ $low } to { $high }, { $level } interval).
not-settled = { $who } against { $whom }: { $gap } in these shots, not settled ({ $low } to { $high }, { $level } interval).
depends = What the club does depends on it: { $other } gains { $gap } on { $own } { $second } of what it gains { $first }.
same-in-both = What the club does is the same in both.
depends-not-settled = Whether the club does more in one than in the other is not settled.
counts = Shots: { $own } { $in-each }, { $other } { $other-first } and { $other-second }.
in-each = { $shots } { $first } and { $other-shots } { $second }
order-allowed-for = What came later is mixed up with warming up and tiring: { $size } of each end stand for that.
change-moved-more = The change to “{ $second }” made more difference to { $measure } than { $other } did: { $size } against { $other-size }.
club-moved-more = { $other } made more difference to { $measure } than the change to “{ $second }” did: { $size } against { $other-size }.
both-moved = Both made a difference to { $measure }, and which of them more is not settled: { $size } against { $other-size }.
change-moved = The change to “{ $second }” made a difference to { $measure }; whether { $other } did is not settled.
club-moved = { $other } made a difference to { $measure }; whether the change to “{ $second }” did is not settled.
neither-moved = { $change }: neither the change nor { $other } made a clear difference to { $measure }.
