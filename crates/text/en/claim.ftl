# A claim beside its retest.
no-retest = The claim is { $claimed }. Nothing has been hit again yet to hold against it.
anything-between = anything between { $low } and { $high }
supported = The claim holds up: { $claimed } were promised, the retest shows { $span }.
no-gain-at-all = The retest contradicts the claim: { $claimed } were promised, it shows no gain at all.
contradicted = The retest contradicts the claim: { $claimed } were promised, it allows at most { $high }.
not-settled = Not settled: { $claimed } were promised, the retest allows { $span }.
averages = In the retest { $candidate } averaged { $candidate-mean } over { $candidate-count } shots, { $baseline } { $baseline-mean } over { $baseline-count }.
luck-can-mislead-that-far = The claim need not have been made up: so few shots, hit one club after the other, can mislead that far.
luck-rarely-misleads-that-far = Luck and warming up alone rarely mislead that far. Another ball, another day, other conditions, or
    shots that were left out could.
shots-not-said = How many shots the claim rested on was not said, so nobody can tell how much of it is luck.
luck-alone = With { $shots ->
    [one] 1 shot
   *[other] { $shots } shots
} with each, luck alone sets two equal clubs { $size } apart on average, one way or the other.
best-of = The best of { $clubs } equal clubs would lead by { $size } on average.
equal-clubs-would-show = Equal clubs would show what was claimed, or more, in { $fittings }.
honest = From such a claim alone, expect about { $gap }.
yard = yard
meter = meter
unit = unit
no-gain-to-pay-for = At this price the retest shows no gain to pay for.
costs-at-least = Each { $unit } costs at least { $price }; there is no upper limit, since the gain may be nothing.
costs-between = Each { $unit } costs between { $least } and { $most }.
next-supported = What it is worth to you is yours to say.
next-contradicted = Ask to hit both clubs in turn, in rounds of three, before you decide.
next-not-settled = More rounds in turn would settle it: plan a fair test.
next-no-retest = Plan a fair test, hit both clubs in turn, and come back with the shots.

# Why a claim cannot be held against anything.
scatter = A claim about scatter cannot be checked from averages.
scatter-remedy = Choose a goal about averages, or read the answer about scatter itself.
not-a-number = A part of the claim is no number.
not-a-number-remedy = Enter plain numbers.
averages-needed = 'Straighter by so much' does not say from where to where.
averages-needed-remedy = Enter both averages, right as plus and left as minus.
no-claim = There is no claim yet.
no-claim-remedy = Enter both averages, or the gain that was promised.
no-change = The claim is that nothing changes.
no-change-remedy = Enter what was said to change.
