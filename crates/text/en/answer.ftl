# The answer in one sentence: `Driver B carries farther. On average 8 to 17 yd more; it starts to matter at 5 yd.`
matters = { $does }{ $mixed-up ->
    [yes] {" "}here, beyond what warming up or tiring usually explains
   *[no] {""}
}. On average { $span } { $more }; it starts to matter at { $margin }.
may-matter = { $does }{ $mixed-up ->
    [yes] {" "}here, beyond what warming up or tiring usually explains
   *[no] {""}
}, on average by { $span }. Whether that reaches the { $margin } that matter is not settled.
too-small = A real difference, too small to matter: { $does }, on average by { $span }.
different = { $does }{ $mixed-up ->
    [yes] {" "}here, beyond what warming up or tiring usually explains
   *[no] {""}
}, on average by { $span }.
differs-in-these-shots = { $does } in these { $averages ->
    [yes] averages
   *[no] shots
}, on average by { $span }; how much of that came from warming up or tiring is not known.
differs-in-short = { $does } in these { $averages ->
    [yes] averages
   *[no] shots
}, on average by { $span }.
too-small-in-short = { $does }, on average by { $span }: too small to matter.
same = { $measure }: { $candidate } and { $baseline } are the same for { $theirs ->
    [yes] the sender’s
   *[no] your
} purpose, at most { $size } apart.
same-in-short = The same: at most { $size } apart.
more-is-ruled-out = Anything below { $margin } would not matter, and these { $averages ->
    [yes] averages
   *[no] shots
} speak against a larger difference.
nearer-to-zero = On average { $club } is nearer to zero.
nearer-not-settled = It stays open which of the two is nearer to zero.
depends = It depends on what was left out.
depends-in-short = Depends on what was left out.
depends-how = With every shot: { $with-all }. Without { $shots }: { $without }.
order-could-explain = The order of hitting and luck together could explain this gap, so these { $averages ->
    [yes] averages
   *[no] shots
} cannot tell.
order-not-allowed-for = How far warming up or tiring moves { $measure } is not known, so these { $averages ->
    [yes] averages
   *[no] shots
} cannot tell whether { $baseline } and { $candidate } are
    the same.
not-apart = With this many shots, { $baseline } and { $candidate } cannot be told apart ({ $measure }).
not-apart-not-in-turn = { $baseline } and { $candidate } were not hit in turn, and cannot be told apart ({ $measure }).
not-apart-order-not-known = It is not known whether { $baseline } and { $candidate } were hit in turn, and these shots cannot tell them apart
    ({ $measure }).
next-to-nothing = These { $averages ->
    [yes] averages
   *[no] shots
} say next to nothing about { $candidate } against { $baseline } ({ $measure }).
only-whole-laps = The clubs were changed so seldom that only { $laps } laps count: { $nothing ->
    [yes] they say next to nothing about { $candidate } against { $baseline }
   *[no] they cannot tell { $baseline } and { $candidate } apart
} ({ $measure }).
not-apart-averages = From averages alone, { $baseline } and { $candidate } cannot be told apart ({ $measure }).

# What to do next.
choose-after = { $measure } does not decide between them, but { $hint ->
    [yes] in these shots they
   *[no] they
} differ in { $others }: look there before choosing.
choose-not-yet = { $measure } does not decide between them, and { $asked } is not settled: settle that before choosing.
choose-after-the-other-club = { $measure } does not decide between these two: look at { $club } before choosing.
choose-after-a-check = Before choosing, check it with a new test: taking out { $shots ->
    [one] a single shot
   *[other] { $shots } well-chosen shots
} would change the answer on { $asked }.
# Where laps of a plan remain they are the check.
choose-after-the-last-laps = Before choosing, hit the last { $rounds ->
    [one] lap
   *[other] { NUMBER($rounds) } laps
} of the plan: taking out { $shots ->
    [one] a single shot
   *[other] { $shots } well-chosen shots
} would change the answer on { $asked }.
choose-freely = Choose by feel, look or price.
stays-open = How they compare in { $measure } stays open: these shots cannot tell.
hint-no-proof = The clubs were hit one after the other, so this is a { $allowed ->
    [yes] strong hint
   *[no] hint
}, not proof.
hint-order-not-known = Whether the clubs were hit in turn is not known, so this is a { $allowed ->
    [yes] strong hint
   *[no] hint
}, not proof.
hint-averages = Averages do not show in which order the shots were hit, so this is a { $allowed ->
    [yes] strong hint
   *[no] hint
}, not proof.
hint-not-compared = The clubs were hit in turn, but { $measure } could not be compared lap by lap, so this is a { $allowed ->
    [yes] strong hint
   *[no] hint
}, not proof.
between-the-blocks = Whatever changed exactly between the two, the wind, a lesson, another ball, cannot be told from the club.
new-in-the-hand = If { $club } was new in the hand, that and luck together could explain it: learning a club can cost about { $size } of { $measure } over so many shots, and these shots cannot
    tell that from the club.
second-day = A second day would show whether it lasts.
holds-here = This holds for these clubs as built, with { $theirs ->
    [yes] the sender’s
   *[no] your
} swing that day.
leave-nothing-out = Count every shot, or hit a planned test and leave nothing out.

# Why a session cannot answer, and what would help.
no-shots = There are no shots to compare yet.
no-shots-next = Paste the shots of two clubs, or try an example.
one-club = There is only one club here, and nothing to compare it with.
one-club-next = Add shots with a second club, and name the club of each shot.
too-few-shots = There are too few shots to compare the clubs ({ $measure }).
too-few-shots-next = At least 3 shots with each club are needed for any answer, 5 for scatter. The plan of a fair test says how
    many shots would most likely tell.
counts-missing = Averages alone cannot answer this: for at least one of them nobody said how many shots it comes from.
counts-missing-why = An average of 3 shots and an average of 30 look the same and mean very different things.
counts-missing-next = Add the number of shots behind each average.
only-the-best = Of { $clubs } only the best shots are shown, and they cannot answer this.
only-the-best-why = The best few of any club look good. What counts is what the club does on every swing.
only-the-best-next = Ask for every shot, or for the average and the number of all of them.
spread-missing = How much single shots scatter in { $measure } is missing, so the averages cannot be compared.
spread-missing-next = Add the standard deviation beside each average, or every shot.
only-averages = Averages do not show which club is tighter.
only-averages-why = Scatter lies in the single shots; a deviation printed beside an average is too unsure to decide on.
only-averages-next = Add every shot.
no-scatter = With { $clubs }, { $both ->
    [yes] all shots of either club have one value of { $measure }
   *[no] every shot has the same { $measure }
}, so there is nothing to judge luck by.
no-scatter-in-rounds = Every lap shows the same gap in { $measure }, without any scatter around it, so there is nothing to judge luck by.
no-scatter-why = Real shots scatter{ $laps ->
    [yes] , and so do gaps from lap to lap
   *[no] {""}
}. Numbers that do not were probably rounded or copied.
no-scatter-next = Check the { $measure } column.
not-measured = { $measure } was not recorded with { $clubs }.
not-measured-next = Choose a measure that both have, or add the missing column.
one-or-both = one club or both
