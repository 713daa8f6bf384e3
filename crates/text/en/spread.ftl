# Scatter in hundredths more or less.
same = For your purpose { $baseline } and { $candidate } scatter the same.
same-in-short = They scatter the same.
ruled-out = A difference of { $margin } or more is ruled out.
cannot-tell = With this many shots nobody can say which of { $baseline } and { $candidate } is tighter on { $measure }.
cannot-tell-in-short = Cannot tell which is tighter.
scatters-more = { $club } scatters more on { $measure }, by { $from } to { $to } %
is-tighter = { $club } is tighter on { $measure }: its shots scatter { $from } to { $to } % less
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
between = Allowing for luck, { $club } scatters anything between { $low } and { $high }.
more-than-200 = Scatter is slow to show: it would take more than 200 shots with each to see a difference of { $margin }.
would-settle = Scatter is slow to show: about { NUMBER($shots) } shots with each, planned before, to see a difference of
    { $margin }.
slow-to-show = Scatter is slow to show: it takes far more shots than an average.
