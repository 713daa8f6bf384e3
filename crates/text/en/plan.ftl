# A plan in words.
headline = { $rounds } laps of { $set ->
    [one] 1 shot
   *[other] { $set } shots
} with each of { $clubs } clubs: { $each } shots each, { NUMBER($balls) } balls with the warm-up, about { $minutes } minutes at a quiet pace.
scatter-unknown = How far shots usually scatter in { $measure } is not known here. Say how far yours do, and this plan says what it
    will show.
found = { $size } { $often }
found-and = { $list }, of { $next }
found-and-last = { $list }, and of { $last }
power = With { $rounds } laps of { $set } you will see a true difference of { $list }.
found-both = { $margin }, { $double }
beside-typical = Typical shot: { $found }.
beside-visits = Two such visits put together: { $found }; that counts that a gap changes from day to day.
seen = { $size }: { $often }
in-scatter = { $hundredths } % in scatter
nearly-always = nearly always
hardly-ever = hardly ever
once-in-10 = once in 10
times-in-10 = { $times } times in 10
same = How often truly equal clubs are called the same (within { $margin }): { $often }. The other times the test cannot tell, or, up to once
    in 20, wrongly calls them different.
spread-given = As you said: about two of three shots with one club lie within { $size } of their average.
spread-earlier = As in your earlier session: about two of three shots with one club lie within { $size } of their average.
spread-usual = Taken as usual among amateurs (a golfers’ rule of thumb; no study behind it): about two of three shots with one club lie within { $size } of their average. With
    more scatter it shows less.
order-drawn = The order in each lap is drawn by lot, starting from the number { $seed }.
order-balanced = Every second lap runs backward, so that no club is always hit first.
change-after = Change the club after { $set ->
    [one] 1 shot
   *[other] { $set } shots
}: warming up and tiring then touch all clubs alike.
covered-until = The answer stays covered until all { $rounds } laps are hit. Looking earlier makes it stricter.
look-after-round = You may look after lap { $round } and stop there if the answer is clear; what that costs is counted already.
    Looking at any other time makes the answer stricter.
look-after-rounds = You may look after laps { $rounds } and { $last } and stop there if the answer is clear; what that costs is counted
    already. Looking at any other time makes the answer stricter.
one-club-twice = Both labels are one club, so the true difference is nothing.
luck-sets-apart = Luck alone will set them about { $size } apart.
not-called-different = In at least 19 of 20 such tests the answer will not be “different”.

# What is asked of a plan and cannot be.
no-such-measure = This measure is not in the list.
no-such-measure-remedy = Choose one of the list.
not-a-margin = The smallest difference that matters must be a number above nothing.
look-out-of-range = A look comes after lap 2 to { $rounds }.
look-out-of-range-remedy = Leave out looks that are earlier or later.
no-name = A club has no name.
no-name-remedy = Give every club a name that you will know again in the bay.
how-many-clubs = A test has 2 to { $most } clubs, not { $clubs }.
how-many-clubs-remedy = Add your own club and one to hold against it, or hit one club under two labels.
same-name-twice = Two clubs have the same name.
same-name-twice-remedy = Name them differently, or choose “the same club twice”.
not-a-scatter = The scatter of your shots must be a number above zero.
not-a-scatter-remedy = Leave it open to take what is usual.
out-of-range = A plan has { $least } to { $most } { $part ->
    [set] shots in a row
    [rounds] laps
   *[warm-up] warm-up shots
}, not { $got }.
out-of-range-remedy = Choose a number between them.

# While it is hit.
no-such-set = There is no set { $set }; the plan has { $sets }, counted from 0.
no-such-set-remedy = Take the shots from the log of this plan.
position = Set { $set } of { $sets }, { $club }, shot { $shot } of { $shots }
all-hit = All { $rounds } laps are hit.
look-is-due = Now a look at the answer is planned. What it costs is counted already.
covered-until-all = The answer stays covered until all { $rounds } laps are hit.
covered-until-round = The answer stays covered until lap { $round } is complete.
over-and-looked = The test is over, and the answer was looked at.
over = The test is over.
early-planned = No look is planned after lap { $round }. You can look, and it will be written down: this answer and the later
    ones are then held to stricter levels.
early-unplanned = No plan covers a look at this moment. You can look, and it will be written down: from now on the answer is held to
    the strictest level, as if you had looked after every shot.
stricter-planned = You looked when no look was planned. The answer is stricter for it, so that luck cannot pass for a club.
stricter-unplanned = You looked at a moment that no plan covers. The answer is held to the level for looking again and again: 99 % in
    place of 95 %.
with-club = { $count } with { $club }
mishits = { $shots ->
    [one] 1 shot
   *[other] { $shots } shots
} noted as a mishit: { $counts }. They count: mishits are part of what a club does.
some-club = Club
labeled = { $club }, label { $label }
