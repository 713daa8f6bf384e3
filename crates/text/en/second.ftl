# Before and after.
different = { $who }: { $size } { $way } than { $whom } ({ $low } to { $high }, { $level } interval).
same = { $who } and { $whom }: the same for your purpose ({ $low } to { $high }, { $level } interval).
not-settled = { $who } against { $whom }: { $gap } in these shots, not settled ({ $low } to { $high }, { $level } interval).
next-to-nothing = { $who } against { $whom }: { $gap } in these shots, which say next to nothing about the true difference.
hangs-on-left-out = { $who } against { $whom }: { $gap } in these shots ({ $low } to { $high }, { $level } interval), but it depends on what was left out.
depends = The change altered what the club does: against { $own }, { $other } averaged { $size } { $way } “{ $second }” than “{ $first }”.
same-in-both = What the club does is about the same “{ $first }” and “{ $second }”: the two gaps differ by less than matters to you.
depends-not-settled = Whether the club makes more difference “{ $second }” than “{ $first }” is not settled.
counts = Shots: { $own } { $in-each }, { $other } { $other-first } and { $other-second }.
in-each = { $shots } { $first } and { $other-shots } { $second }
order-allowed-for = What came later is mixed up with warming up and tiring, so its interval is { $size } wider at each end.
order-not-allowed-for = What came later is mixed up with warming up and tiring, and how far they move { $measure } is not known.
change-hint = What the change did is therefore a hint, not proof.
club-hint-one-after-the-other = The clubs were hit one after the other, so what { $other } did is a hint, not proof.
club-hint-order-not-known = Whether the clubs were hit in turn is not known, so what { $other } did is a hint, not proof.
club-hint-not-compared = The clubs were hit in turn, but { $measure } could not be compared lap by lap, so what { $other } did is a strong hint and
    no proof.
change-moved-more = The change to “{ $second }” { $hint ->
    [yes] points to more of a difference in { $measure } than { $other } does
   *[no] made more difference to { $measure } than { $other } did
}: { $size } against { $other-size }.
club-moved-more = { $other } { $hint ->
    [yes] points to more of a difference in { $measure } than the change to “{ $second }” does
   *[no] made more difference to { $measure } than the change to “{ $second }” did
}: { $size } against { $other-size }.
both-moved = Both { $hint ->
    [yes] point to a difference in
   *[no] made a difference to
} { $measure }, and which of them more is not settled: { $size } against { $other-size }.
change-moved = The change to “{ $second }” { $hint ->
    [yes] points to a difference in
   *[no] made a difference to
} { $measure }; whether { $other } did is not settled.
club-moved = { $other } { $hint ->
    [yes] points to a difference in
   *[no] made a difference to
} { $measure }; whether the change to “{ $second }” did is not settled.
change-moved-club-same = The change to “{ $second }” { $hint ->
    [yes] points to a difference in
   *[no] made a difference to
} { $measure }; { $other } and { $own } are the same for your purpose.
club-moved-change-same = { $other } { $hint ->
    [yes] points to a difference in
   *[no] made a difference to
} { $measure }; “{ $first }” and “{ $second }” are the same for your purpose.
neither-matters = Neither the change to “{ $second }” nor { $other } made a difference to { $measure } that matters to you.
neither-moved = Neither the change to “{ $second }” nor { $other } made a clear difference to { $measure }.
altered = What { $other } does to { $measure } changed: against { $own } it had { $size } { $way } “{ $second }” than “{ $first }”.
nothing-said = These shots say next to nothing about what the change to “{ $second }” and { $other } did to { $measure }.
