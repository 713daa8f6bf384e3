### A claim held against a retest, and days put together.

claim-supported = Holds up
claim-at_least = Kept in full
claim-too_small = Too small to hold up
claim-contradicted = Contradicted
claim-not_settled = Not settled
claim-no_retest = No retest yet
claim-help = What did the fitting say? It is held against the session on this page.
claim-help-no-retest = What did the fitting say? Without a retest on this page you can still see what luck alone would show.
claim-reach = luck alone reaches { $size } to either side
claim-reach-caption = Shaded: where about 95 of 100 fittings of two equal clubs hit in turn would fall, with the shots that were said.
claim-reach-caption-order = Shaded: where about 95 of 100 fittings of two equal clubs hit in turn would fall, with the shots that were said; not hit in turn, warming up or tiring could move them by { $size } more.
claim-picture-claim = The claim
claim-picture-retest = The retest ({ $level } interval)
claim-picture-each = { $name }: { $value }.
claim-promised = What was promised
claim-gain = Promised gain
claim-averages = Or the averages it came from
claim-before = With your club
claim-after = With the new one
claim-shots_after = Shots with each club
claim-tried = New clubs tried
claim-price = Price, if you like
claim-currency = Currency
claim-keep-title = Keep it for the retest
claim-keep-who = Whose claim
claim-keep = Keep this claim
claim-kept = Kept in the book on this device. A retest of the same person stands beside it there.
claim-kept-page = This browser keeps nothing: it is gone when you close the page.
claim-not-kept = It could not be kept: the store of this device is full, or a newer page has it.
together-title = The same clubs on another day
together-help = Paste a session of another day, with the same names for the clubs. A third club that you hit every day, such as an old iron, makes up for a day without one of the two.
together-text = A session of another day
together-add = Add this day
together-files = Choose files
together-today = Day 1, on this page: { n-shots }
together-day = Day { $day }: { n-shots }
together-not-understood = { $count } { $count ->
    [one] thing
   *[other] things
  } not understood; the first: { $first }
together-out = Take out day { $day }
together-air = The weather differed: bring every day to standard air first
together-weather = Weather of day { $day }
together-day-said = Day { $day }: { $said }
together-weight = Counts { $weight }.
together-through = Holds one of the two clubs, held against { $control }.
together-not-both = Does not hold both clubs.
day-n = day { $day }
no-session = There is no session.
no-session-remedy = Add one.
