# A claim beside its retest.
no-retest = The claim is { $claimed }. { $hit ->
    [yes] What is here cannot be compared with it: the answer says why.
   *[no] Nothing has been hit again yet to compare it with.
}
anything-between = anything between { $low } and { $high }
supported = The claim holds up, within what matters to you. The claim was { $claimed }; the retest shows { $span } ({ $level } interval).
promise-too-small = Too small a promise to test: { $claimed }, no more than the { $margin } that matter to you. The retest allows
    { $span } ({ $level } interval).
no-gain-at-all = The retest speaks against the claim. The claim was { $claimed }; the retest allows none of that ({ $level } interval).
contradicted = The retest speaks against the claim. The claim was { $claimed }; the retest allows at most { $high } ({ $level } interval).
not-settled = Not settled. The claim was { $claimed }; the retest allows { $span } ({ $level } interval).
averages = In the retest { $candidate } averaged { $candidate-mean } over { $candidate-count } shots, { $baseline } { $baseline-mean } over { $baseline-count }.
luck-can-mislead-that-far = An honest fitting can mislead that far: few shots, and clubs that were not hit in turn, if they were not.
luck-rarely-misleads-that-far = Luck and warming up alone rarely mislead that far. Another ball, another day, other conditions, or
    shots that were left out could.
shots-not-said = How many shots the claim rested on was not said, so nobody can tell how much of it is luck.
luck-alone = With { $shots ->
    [one] 1 shot
   *[other] { $shots } shots
} with each, luck alone sets two equal clubs { $size } apart on average, one way or the other.
best-of = The best of { $clubs } equal clubs would lead by { $size } on average.
equal-clubs-would-show = By luck alone, equal clubs hit in turn would show what was claimed, or more, in { $fittings }.
bet = From such a claim alone, a bet and not a verdict: about { $gap } is most likely, and there is any gain at all with a chance of { $gain }.
bet-with-margin = From such a claim alone, a bet and not a verdict: about { $gap } is most likely; there is any gain at all with a chance of { $gain },
    one of { $margin } or more with { $of-margin }.
yard = yard
meter = meter
degree = degree
unit = unit
no-gain-to-pay-for = The retest shows no gain to pay for.
costs-at-least = Allowing for luck, each { $unit } costs { $price } or more; there is no upper limit, since there may be no gain, or a loss.
costs-between = Allowing for luck, each { $unit } costs between { $least } and { $most }.
next-supported = What it is worth to you is yours to say.
next-supported-not-in-turn = The retest was not hit in turn, so it supports the claim without proving it: hit both clubs in turn, three shots at a time, before you decide.
next-contradicted = The retest was hit one club after the other: hit both in turn, three shots at a time, before you decide.
next-contradicted-in-turn = The retest was hit in turn, which says more than a fitting that was not. Ask the fitter for every shot, in the order hit.
next-contradicted-order-not-known = In which order the retest was hit is not known: hit both clubs in turn, three shots at a time, before you decide.
next-not-settled = More shots in turn narrow it{ $told ->
    [yes] .
   *[no] : the plan of a fair test says how many shots would most likely tell the two clubs apart.
}
next-too-small = To test so small a promise, set a smaller difference that matters, and hit many more shots: the plan of a fair test says how many.
next-no-retest = Plan a fair test, hit both clubs in turn, and come back with the shots.

# Why a claim cannot be held against anything.
scatter = A claim about scatter cannot be checked from averages.
scatter-remedy = Choose a goal about averages, or read the answer about scatter itself.
not-a-number = A part of the claim is no number.
not-a-number-remedy = Enter plain numbers.
averages-needed = “Straighter by so much” does not say from where to where.
averages-needed-remedy = Enter both averages, right as plus and left as minus.
no-claim = There is no claim yet.
no-claim-remedy = Enter both averages, or the gain that was promised.
no-change = The claim is that nothing changes.
no-change-remedy = Enter what was said to change.
at-least = The retest shows at least what was promised. That was { $claimed }; the retest shows { $span } ({ $level } interval).
value-in-doubt = Not settled: a value of the retest is in doubt. The claim was { $claimed }.
next-to-nothing = Not settled: the retest says next to nothing. The claim was { $claimed }.
order-unknown = Not settled: how far warming up and tiring move { $measure } is not known. The claim was { $claimed }; { $guess ->
    [yes] allowing for luck and, by a guess, for the order
   *[no] by luck alone
} the retest would
    allow { $span } ({ $level } interval).
next-supported-order-not-known = Whether the retest was hit in turn is not known, so it supports the claim without proving it: hit both clubs in turn, three shots at a time, before you decide.
next-supported-not-compared = The retest could not be compared lap by lap, so it supports the claim without proving it: have { $measure } measured on every shot before you decide.
next-value-in-doubt = First check the value in doubt: while it is wrong the retest says nothing.
next-hit-in-turn = Hit both clubs in turn, three shots at a time: then the order no longer matters.
next-read-every-shot = Have { $measure } measured on every shot, so that it can be compared lap by lap.
