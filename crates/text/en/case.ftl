# The parts that sentences about two clubs are made of.
does = { $club } { $verb }
# A column of the golfer's own: `Weight of Driver B is higher`.
measure-of-does = { $measure } of { $club } { $verb }
on-a-side = { $size } { $side }
averages = { $candidate } averaged { $candidate-mean } over { $candidate-shots }, { $baseline } { $baseline-mean } over { $baseline-count }.
counts = { $baseline }: { $baseline-shots }. { $candidate }: { $candidate-shots }.
luck = Two identical clubs { $mixed-up ->
    [yes] hit in this order could
   *[no] would
} show a gap this big in { $sessions }.
between = Allowing for luck{ $mixed-up ->
    [yes] , warming up and tiring
   *[no] {""}
}, the true difference lies between { $low } and { $high }.
cannot-tell-in-short = Cannot tell: anything between { $low } and { $high }.
no-difference = no difference
# A size and which way: `8 yd more`.
gap = { $size } { $way }
shows-at-best = A session like this shows a difference of { $size } in 8 of 10 cases; smaller ones need more shots.
first-in-turn = First hit the clubs in turn, three shots at a time: one after the other, even many shots cannot tell the
    club from warming up.
more-than-a-visit = With this much scatter it would take about { $shots } shots with each to settle { $margin }: more than
    one visit holds. Unless a bigger gap is what you are after, choose by feel, look or price.
usually-settles = Most sessions of this size settle { $margin }; this one did not. A second one like it would most likely
    tell.
would-settle = About { $shots } shots with each, planned before and hit in turns of three, would settle { $margin }.
would-then-settle = About { $shots } shots with each, planned before, would then settle { $margin }.
