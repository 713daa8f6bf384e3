# The typical shot: a second question beside the average.
differs = The typical shot: { $does }{ $mixed-up ->
    [yes] {" "}here, beyond what warming up or tiring usually explains
   *[no] {""}
}, by { $span } ({ $level } interval).
same = The typical shot: the same, at most { $size } apart ({ $level } interval).
cannot-tell = The typical shot: these shots cannot tell. Anything between { $low } and { $high } ({ $level } interval).
# How it stands to the average.
only-typical = These shots cannot say the same of the average: it counts every mishit in full.
only-average = The averages differ, and the typical shots { $same ->
    [yes] are the same
   *[no] cannot be told apart
}{ $bad-shots ->
    [yes] : part of that gap may lie in the bad shots
   *[no] {""}
}.
opposite = The averages lie the other way about: between the two lies how often and how badly a club is mishit.
one-is-the-same = Only one of the two, the average or the typical shot, is settled here.
more-and-more-bad = With { $club } the well-hit shots are ahead, and { $shots ->
    [one] one more shot
   *[other] more of its shots
} fell far short.
# Shots far below the typical one.
mishits = More than { $below } short of the typical shot: { $candidate } { $candidate-found } of { $candidate-of } (its own rate { $candidate-low } to { $candidate-high } of 100),
    { $baseline } { $baseline-found } of { $baseline-of } ({ $baseline-low } to { $baseline-high } of 100).
told-apart = That is more than luck.
may-be-luck = Counts like these may be luck.
beside-the-answer = The answer is about the average and counts every shot; this stands beside it.
# Why nothing is said of it.
nothing-compared = There is nothing to compare; the answer says why.
no-scatter = The typical shot is about how far, not about scatter.
no-averages = Averages do not show the typical shot.
no-value-in-doubt = While a value is in doubt nothing is said of the typical shot.
cannot-be-fitted = The typical shot cannot be worked out here: too few shots, too many, or too many of them alike.
differs-in-these-shots = The typical shot: { $does } in these shots, by { $span } ({ $level } interval); how much of that came from warming up or tiring is not known.
cannot-tell-order = The typical shot: these shots cannot tell, since how far warming up or tiring moves { $measure } is not known. { $guess ->
    [yes] Allowing for luck and, by a guess, for that
   *[no] By luck alone
}, anything between { $low } and { $high } ({ $level } interval).
next-to-nothing = The typical shot: so few shots or laps say next to nothing about it.
same-gap-less-surely = The typical shots show about the same gap, less surely.
