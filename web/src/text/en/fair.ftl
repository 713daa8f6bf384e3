### A fair test: planned, hit, logged.

## The plan

fair-waits = A test is under way on this device. Finish it or forget it, then the plan from the link opens.
fair-overtaken-shown = Another tab has gone on with this test. Its shots are shown here now.
fair-overtaken-back = Another tab has gone on with this test. Its shots are shown here now; your last number is back in your hand: keep it if it still belongs here.
fair-overtaken-gone = This test was forgotten in another tab.
fair-my-driver = My driver
fair-new-driver = New driver
fair-new-driver-n = New driver { $number }
fair-link-copied = Link copied. It opens this plan on any phone, ready to start.
fair-link-by-hand = Copy it by hand: { $address }
fair-share-title = A fair test
fair-not-taken = The device did not take it. Copy the link instead.
fair-sent = This plan came with the link.
fair-sent-help = Look it over, then start it on this phone.
fair-help = Decide before the first ball what counts. Then hit the clubs in turn and keep every shot. A lap is once through all the clubs, a few shots with each.
fair-change = Change the plan
fair-finds = How often a test like this finds a difference
fair-keeps-fair = What keeps it fair
fair-offline = Works without a network.
fair-the-club = The club
fair-the-clubs = The clubs, yours first
fair-club-name = Name of club { $number }
fair-club-out = Take out club { $number }
fair-add-club = Add a club
fair-same-club = One club under two labels, to see what luck does
fair-what-counts = What counts
fair-better = What would be better
fair-margin = Smallest difference that matters
fair-rounds-of = Laps of { n-shots } with each club
fair-round-less = One lap less
fair-round-more = One lap more
fair-look = Look at the answer
fair-look-when = When to look at the answer
fair-look-halfway = Halfway and at the end
fair-look-at_end = Only at the end
fair-look-every_round = After every lap
fair-more = More choices
fair-set = Shots in a set: in a row with one club
fair-set-label = Shots in a set
fair-warm = Warm-up shots, not counted
fair-warm-label = Warm-up shots
fair-spread = How far your shots scatter
fair-earlier = Take the scatter from the session on this page
fair-drawn = Draw the order in each lap by lot
fair-seed = The number the draw starts from
fair-start = Start the test on this phone
fair-who = Who hits? (if you like)
fair-print = Print the sheet
fair-copy-link = Copy the plan as a link
fair-share-plan = Share the plan…
fair-kept-note = Once started, every shot is kept on this device, and only here, until you forget it.
fair-lengths = How often a true difference is found, by the length of the test
fair-lengths-alternative = Found with a true difference of { $margin } and of { $double }. { $each }.
fair-lengths-each = { $rounds } laps, { $minutes } minutes: { $margin } and { $double }
fair-lengths-tick = { $tenths } of 10
fair-lengths-table = What shorter and longer tests would show
fair-rounds = Laps
fair-balls = Balls
fair-minutes = Minutes
fair-same = The same
fair-same-note = The same: how often truly equal clubs are called the same within { $margin }.
fair-this-plan = (this plan)
fair-record = Write down for every shot
fair-looks = What each look costs
fair-looks-help = An early look is held to a wider interval than the last, so that all of them together are wrong no more often than a single one.
fair-after-round = After lap
fair-how-sure = Interval that decides

## The sheet on paper

sheet-title = A fair test: { $clubs }
sheet-against = against
sheet-before = Before: { $count } warm-up shots, not counted. { $cautions }
sheet-round = Lap
sheet-club = Club
sheet-shot = Shot { $number }
sheet-look = look before
sheet-cells = In each cell: { $measures }. Write every shot down; mark a mishit with m.
sheet-felt = Before any average is worked out: which felt straighter? ________ longer? ________ easier to hit? ________ Which looks best? ________ sounds best? ________

## The log

log-before = Before the first shot
log-warm-up = Warm up: { $count } { $count ->
    [one] ball
   *[other] balls
  }
log-warm-up-free = Warm up as you like
log-warm-up-help = These do not count. Use any of the clubs, or all of them. Stop if anything hurts, mind who stands near or down the range, and leave at the first thunder.
log-warm = I’m warmed up
log-rest = Rest two minutes first. Drink something.
log-take = Take this club.
log-change = Change the club.
log-undo = Undo
log-undo-last = Undo the last shot
log-end-set = End this set
log-whole = Whole test: { $shots } of { $of } shots.
log-keys = Number keys
log-key-back = Delete the last digit
log-key-side = Other side of zero
log-key-point = Point
log-next = Next number
log-sides = L / R
log-left = L
log-right = R
log-mishit = Mishit
log-mishit-counts = it counts
log-mishit-note = mishit
log-keep = Keep this shot
log-set = This set
log-open = still to hit
log-last = Last shot:
log-odd = { $measure }: { $value } is not usual.
log-odd-help = Is it what was measured? Then it is kept and counts.
log-odd-again = Type it again
log-odd-keep = Yes, keep it
log-paste = Paste a shot or a set
log-paste-help = One row for each shot: { $order }.
log-paste-here = Paste here
log-save-file = Save as a file
log-look = Look at the answer
log-look-early = Look now all the same
log-look-again = This look was taken already; looking at it again costs nothing.
log-look-now = Look now
log-kept-plan = The plan is kept on this device, and so is each shot from here on.
log-kept = Kept on this device: { $kept } of { n-shots }.
log-not-kept = This device does not keep the shots.
log-not-kept-why = Its store is full or blocked, as in a private window.
log-not-kept-newer = A newer version of this page is open in another tab, and keeps the shots. Close this one.
log-not-kept-help = They stay on the screen: leave this page open, and save the shots as a file when you are done.
paste-no-room = These are { $count } shots; this set has room for { $room }.
paste-refused = The browser did not let the page read what you copied. Paste into the field instead.
paste-nothing = There is nothing to paste.
paste-row-has = Row { $row } has { $count } values; { $wanted } are written down for each shot, in the order shown.
paste-there-are = There are { $count } values; { $wanted } are written down for each shot, in the order shown.
paste-no-number = “{ $cell }” is not a number.

## The face of the club

face-label = Strike on the face: { $where }. Tap where the ball was struck, or use the arrow keys.
face-toe = Toe
face-heel = Heel
face-tap = tap where it was struck
face-middle = middle
face-mm-toe = { $mm } mm toe
face-mm-heel = { $mm } mm heel
face-middle-height = middle height
face-mm-high = { $mm } mm high
face-mm-low = { $mm } mm low

## What was felt

feel-title = First, what did you feel?
feel-help = Asked once, before any number is shown. Leave open what you cannot say.
feel-straighter = Which felt straighter?
feel-longer = Which felt longer?
feel-easier = Which felt easier to hit?
feel-look = Whose look do you like best?
feel-sound = Whose sound do you like best?
feel-cannot-say = Cannot say
feel-show = Now show the answer
feel-back = Back to the test

## After a look

after-waits = The test waits: { $hit } of { $of } shots are in. { $look }
after-stands = The answer stands above, from { $hit } of { $of } shots. { $stricter }
after-felt = What you felt, beside it
after-not-kept = This device does not keep the shots. Save them as a file before you leave.
after-go-on = Go on: { $count } shots are in
after-next-person = Next person, same plan
save-shots = Save the shots as a file
forget-title = Leave, keep or forget
forget-leave = Leave the test for now
