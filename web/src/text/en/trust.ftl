### Whether the session can be trusted, and every shot in the order hit.

weight-serious = Serious
weight-note = Worth knowing
weight-good = Done well
trust-setup = What no list of shots shows, ask or remember: the same ball, tee height, mat or grass, and aim with every club? And how do loft, length, lie and grip of the clubs differ? What differed there counts as the club.
n-serious = { $count } { $count ->
    [one] serious warning
   *[other] serious warnings
  }
no-serious = No serious warning
n-notes = { $count } worth knowing
n-good = { $count } done well
shots-title = Shots in order: { $measure }
shots-too-many = There are too many shots for a picture.
shots-every = Every shot, and leaving one out
shots-every-help = Give a reason to leave a shot out. It stays in view, and the answer is worked out with it and without it.
shots-show-more = Show more of { n-shots }
shots-no-value = No shot has a value for this measure.
shots-alternative = { $measure } of every shot, in the order hit.
shots-alternative-each = { $name }: { n-shots }, { $average } on average.
shots-alternative-rounds = Hit in { n-rounds }.
shots-alternative-out = { n-shots } left out.
shots-alternative-noted = { n-shots } noted by the golfer; they count.
shots-alternative-list = The list below has every value.
shots-average = average { $average }
shots-caption = First shot on the left, last on the right. Broken lines: each club’s average.
shots-caption-bands = Bands: laps, once through the clubs.
shots-caption-drift = Slanted lines: the drift, whichever club was in hand.
shots-caption-out = Struck through: left out.
shots-caption-noted-as = Ringed: noted as “{ $note }”; it counts.
shots-caption-noted = Ringed: noted by the golfer; it counts.
shots-column = Shot
counts-column = Counts?
counts-yes = counts
counts-back = put it back
shots-left-out = left out
leave-out = leave out: { $reason }
shot-counts = Whether shot { $shot } counts
reason-mishit = mishit
reason-club = wrong club
reason-fault = fault of ball or reading
reason-other = other reason

paper-for = For: ________________________
paper-for-name = For: { $name }
paper-printed = Printed on { $date }
paper-shots = Every shot, in the order hit: { $measure }
paper-shots-out = Every shot, in the order hit: { $measure }. In brackets: left out.
