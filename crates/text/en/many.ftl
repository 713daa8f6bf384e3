# What many fittings bring.
# A pile that says nothing.
too-few = { $sessions ->
    [0] No session was read.
    [one] One session was read, and { $pooled ->
        [0] it cannot be pooled
       *[other] one alone says nothing of others
    }.
   *[other] { NUMBER($sessions) } sessions were read, and { $pooled ->
        [0] none of them can be pooled
       *[other] one of them alone can be pooled
    }; it takes two.
}
# What a fitting here brings.
brings = On average a fitting here brings between { $low } and { $high } ({ $measure }, { $level } interval, { NUMBER($pooled) } sessions).
spread = Golfers differ: two of three true gains lie within { $size } of that average, give or take (somewhere between { $low } and { $high }).
spread-not-shown = How far golfers differ cannot be told from these sessions: their own errors explain it, and two of three true gains may lie
    within up to { $high } of that average.
next = The next fitting like these truly brings between { $low } and { $high }, in 95 of 100 cases.
enough = A gain of { $margin } or more: { $chance }.
worse = A loss, however small: { $chance }.
room = Of each of these ranges, { $size } to either side is room for warming up, which does not even out where most sessions begin with the same club.
# How many leads were luck.
found = { $different ->
    [0] Of { NUMBER($pooled) } sessions none is called different by itself.
    [one] Of { NUMBER($pooled) } sessions one is called different by itself ({ NUMBER($better) } better, { NUMBER($worse) } worse).
   *[other] Of { NUMBER($pooled) } sessions { NUMBER($different) } are called different by themselves ({ NUMBER($better) } better, { NUMBER($worse) } worse).
}
by-luck = If no club differed from another, luck alone would make that about { $luck }.
listed = { $listed ->
    [0] None stands out far enough for a list in which no more than { $rate } in 100 are luck.
    [one] One stands on a list in which no more than { $rate } in 100 are luck, on average.
   *[other] { NUMBER($listed) } stand on a list in which no more than { $rate } in 100 are luck, on average.
}
# What became of what was promised.
promised = { $claims ->
    [one] One session came with a promise: { $promised }. Its shots show { $found }.
   *[other] { NUMBER($claims) } sessions came with a promise, on average { $promised }. Their shots show { $found } on average.
}
found-again = Of what was promised, { $low } to { $high } in 100 was found again ({ $level } interval).
# How the sessions came to be sent.
sent-not-said = Nobody said whether these are all the sessions there were. If only the good ones were sent, all of this is too good.
sent-picked = These sessions were picked by how they came out, so all of this is too good: it tells of this choice, not of fittings.
copies = { $copies ->
    [one] One copy was found by what it holds, and not counted again.
   *[other] { NUMBER($copies) } copies were found by what they hold, and not counted again.
}
# What is answered alone and not pooled, and what would change that.
not-pooled = Not pooled, { NUMBER($sessions) }: { $why }
one-club = only one club was hit. Send the shots of the golfer’s own club along.
several-clubs = several clubs were hit, and nobody said which is the golfer’s own and which the fitting’s. Say it in a table of names.
one-after-the-other = one club was hit after the other, so that warming up looks like a gain. Hit them in turn.
order-not-known = nobody knows the order in which they were hit. Keep the shots in their order, or number the laps.
too-few-rounds = too few laps hold both clubs. Hit at least two laps with both.
averages-only = averages only, of which nobody knows the order. Send the shots.
counts-missing = averages without a number of shots. Send the shots.
only-the-best = only the best shots, or chosen ones. Send all of them.
not-measured = this was not measured for both clubs.
too-few-shots = too few shots with one of the clubs.
no-scatter = shots that are all alike were probably rounded or copied.
value-in-doubt = a value cannot be. Look at it, and send it again once it is right.
# What cannot be asked.
no-scatter-asked = How far shots scatter cannot be put together over many sessions here.
no-nearer-zero = Which club is nearer to zero cannot be put together over many sessions: gaps to either side do not add up.
ask-average = Choose a measure of which more or less is better.
not-a-margin = The margin is no size.
not-a-margin-remedy = Give a number of zero or more.
not-a-rate = The part of a list that may be luck lies between 0 and 1.
not-a-rate-remedy = Give a number such as 0.1.
piles-differ = These piles were asked different things.
piles-differ-remedy = Ask all of them for the same measure, margin and goal.
