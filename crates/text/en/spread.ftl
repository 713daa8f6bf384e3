# Scatter in hundredths more or less.
same = For { $theirs ->
    [yes] the sender’s
   *[no] your
} purpose { $baseline } and { $candidate } scatter the same.
same-in-short = They scatter the same.
ruled-out = These shots speak against a difference of { $margin } or more.
cannot-tell = With this many shots nobody can say which of { $baseline } and { $candidate } is tighter ({ $measure }).
next-to-nothing = These shots say next to nothing about which of { $baseline } and { $candidate } is tighter ({ $measure }).
no-limits = So few shots leave open whether one scatters many times as much as the other: they say next to nothing about it.
cannot-tell-in-short = Cannot tell which is tighter.
scatters-more = { $club } scatters more in { $measure }, by { $from } to { $to } %
is-tighter = { $club } is tighter in { $measure }: its shots scatter { $from } to { $to } % less
line = { $does }.
too-small = A real difference, too small to matter: { $does }.
matters = { $does }. It starts to matter at { $margin }.
may-matter = { $does }. Whether that reaches the { $margin } that matter is not settled.
deviations = Shots scatter around their average by { $size } with { $candidate } ({ NUMBER($shots) } shots) and by
    { $other-size } with { $baseline } ({ NUMBER($other-shots) }).
end = { $hundredths } % { $below ->
    [yes] less
   *[no] more
}
between = Allowing for luck, { $club } may scatter anywhere from { $low } to { $high } ({ $level } interval).
more-than-200 = Scatter is slow to show: it would take more than 200 shots with each to see a difference of { $margin } in 8 of 10 tests.
would-show = Scatter is slow to show: about { NUMBER($shots) } shots with each, planned beforehand, show a difference of
    { $margin } in 8 of 10 tests.
size-stays-open = Scatter is slow to show: more shots narrow this slowly. If the truth is near { $margin }, no number of shots settles whether it
    reaches that.
no-limit = no limit
slow-to-show = Scatter is slow to show: it takes far more shots than an average.
