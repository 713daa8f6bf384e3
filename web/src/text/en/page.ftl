### What the page says before and with its first answer.

## The page itself

page-title = Straight Answer: do these two clubs really differ?
lead = Do two clubs really perform differently, or was it luck?
promise = Nothing leaves this device.
start-back = All ways in
your-shots = Your shots
their-shots = The shots in this link
opening = Opening…
replacing = A link is opening. Until then the shots from before stand here.
loading = Loading…
working = Working it out…
fair-title = A fair test
fair-line = Plan it, hit in turn, log each shot
claim-title = Check a claim, or put days together
claim-line = Does a fitting’s promise hold?
footer-average = An average of a few shots says little. This page counts every shot, and says so when they cannot tell.
footer-paper = How the answer is found: every shot counts, clubs hit in turn are compared lap by lap, and intervals are wider than a textbook’s where the order of hitting or the way of stopping asks for it. The methods page of Straight Answer has the formulas, their sources and their measured error rates.
footer-kept = Your shots stay in this page and are gone when you close it; only what you keep and the tests that you log stay on this device, until you forget them.
show-meters = Meters
show-kilometers-an-hour = km/h
show-miles-an-hour = mph
show-yards = Yards
# The file of the methods page in this language.
methods-page = ./methods.html
footer-methods = How the answer is found: methods, sources, error rates (opens beside this page)
version = Version { $version }.
version-offline = Version { $version }. Works without a network.
version-new = Version { $version }. A new version is here; it is used the next time you open the page.
not-loaded = This part could not be loaded. Check the connection and reload the page.
not-loaded-door = This part could not be loaded. Check the connection, reload the page and open it again.
not-loaded-entry = This part could not be loaded. Check the connection, go back and open it again.
stopped = The calculation stopped on this device.
stopped-remedy = Reload the page and try again. ({ $why })

## Counts

n-shots = { $count } { $count ->
    [one] shot
   *[other] shots
  }
n-characters = { $count } { $count ->
    [one] character
   *[other] characters
  }
n-clubs = { $count } { $count ->
    [one] club
   *[other] clubs
  }
n-rounds = { $count } { $count ->
    [one] lap
   *[other] laps
  }
n-rows = { $count } { $count ->
    [one] row
   *[other] rows
  }

## Names of goals, sides, roles and orders

goal-longer = Longer
goal-faster = Faster
goal-higher = Higher
goal-shorter = Shorter
goal-slower = Slower
goal-lower = Lower
goal-straighter = Straighter
goal-nearer-zero = Nearer to zero
goal-tighter = Less scatter
goal-different = Any difference
side-tighter = tighter
side-wider = wider
side-shorter = shorter
side-longer = longer
side-slower = slower
side-faster = faster
side-left = farther left
side-right = farther right
side-lower = lower
side-higher = higher
role-build = Club
role-round = Lap
role-number = Shot number
role-time = Time
role-count = Number of shots
role-left_out = Left out
role-second = What changed
role-ignored = Not used
role-deviation = { $measure }, scatter
role-low = { $measure }, smallest
role-high = { $measure }, largest
role-other = { $measure }, { $kind }
order-interleaved = In turn
order-blocked = One club after the other
order-unknown = Not known
unit-degrees = degrees
no-limit = no limit
ratio-same = the same
ratio-less = { $percent } % less
ratio-more = { $percent } % more
share-below = below 1 %
share-above = above 99 %
from-to = { $from } to { $to }

## Giving shots

give-question = Paste or type your shots
give-help = One row for each shot, and a column that says which club. A copied table works, headings too.
give-read = Read these shots
paste = Paste
choose-file = Choose a file
choose-file-or-photo = Choose a file or a photo
photo-title = Your photo
try-title = No shots at hand? Try an invented session
type-shots = Type shots one by one
enter-averages = Only averages? Enter them
example-fair = Fair test, equal drivers
example-fair-truth = Hit in turn. In truth the two are the same.
example-twelve = Fair test, one is longer
example-twelve-truth = Hit in turn. In truth one carries { $unit ->
    [m] 11 meters
   *[yd] 12 yards
} more.
example-floor = At the shop
example-floor-truth = Five cold shots with the old club, then thirty with the new one. In truth they are the same.
example-name = Invented example: { $title }
sample-mine = Mine
sample-new = New
sample-columns = club,carry
text-pasted = Your text
text-added = Added text
text-link = The link
text-logged = Your test, as logged
reading = Reading { $names }, { n-characters }…
stop = Stop
says-reading = Reading your shots.
says-answer = The answer: { $headline }
see-answer = See the answer

## What was not taken

empty-text = There is nothing here yet.
empty-text-remedy = Paste the shots of two clubs, choose a file, or try an example below.
clipboard-refused = The browser did not let the page read what you copied.
clipboard-refused-remedy = Hold your finger on the field and choose Paste.
example-not-loaded = This example could not be loaded.
example-not-loaded-remedy = You seem to be offline. Your own shots can still be read: paste them here.
file-too-large = This file is larger than 50 MB.
file-too-large-remedy = Keep only the columns and rows of this session, or paste them here.
workbooks-not-loaded = What opens workbooks could not be loaded.
workbooks-not-loaded-remedy = You seem to be offline. Copy the rows with their headings, and paste them here.
workbook-not-opened = This workbook could not be opened here.
workbook-not-opened-remedy = Check the connection and try again. Or open it, copy the rows with their headings, and paste them here.
nothing-added = Nothing was added. { $why }
no-shots = No shots were found.

## Sheets of a workbook

sheets-which = Which sheets of { $name } hold the shots?
sheets-each = A sheet for each club? Choose them all: the name of a sheet stands for its club.
sheets-none = Choose a sheet first.
sheets-read = Read what is chosen
cancel = Cancel
back = Back
entry-grid = Type the shots
entry-averages = Enter averages

## What was read

averages-only = averages only
averages-of = averages of { n-shots }
numbers-are = The numbers are
columns = Columns: { $read }
columns-to-check = { $count } { $count ->
    [one] column
   *[other] columns
  } to check
read-in-short = { $clubs }, { $shots }
club-unnamed = Club { $number }
done-opened = opened other shots
done-added = added shots
done-typed = changed what was typed
done-removed = removed a text
done-renamed = renamed { $name }
done-left-out = left a shot out or put it back
done-started = started again
undo-done = Undo: { $done }
redo-done = Do again: { $done }
done-corrected = corrected how it was read

## What was not understood

not-understood = { n-rows } not understood
look-at-this = Please look at this

## The text

decimals = Decimals are written

## A club that is not named

club-letter = Club { $letter }

## Adding

## What counts

counts-title = What counts
fact-margin = { $margin } matter
fact-no-margin = Nothing said to matter
fact-order-interleaved = Hit in turn
fact-order-blocked = One club after the other
fact-order-unknown = Order not known
fact-stopping-fixed = Number of shots fixed before
fact-stopping-not_fixed = Number of shots not fixed
fact-stopping-unknown = Number of shots fixed? Not said
fact-planned = Planned: { n-rounds }
fact-yours = Yours:
fact-theirs = The sender’s:
stopping = Was the number of shots fixed before the first one?

## The answer

answer-title = The answer
standing-matters = Different, and it matters
standing-may_matter = Different; whether it matters is open
standing-too_small = Different, too little to matter
standing-different = Different
standing-same = The same
standing-cannot_tell = Cannot tell
standing-depends = It depends
standing-cannot_answer = Cannot answer
answer-in-full = In full, and what next
answer-against = against
caution = Before you hit more balls: warm up, rest between sets, stop if anything hurts, and mind who stands near or down the range.
asks-was-fixed = It was fixed
asks-was-not-fixed = It was not
asks-in-turn = They were hit in turn
asks-one-after-the-other = One after the other
asks-shot-right = It is right
asks-shot-slip = A slip: set it aside
asks-shot-confirmed = You said that it is right.
reason-slip = slip of the keys
other-measures = The other measures
numbers-title = The numbers behind this
trust-title = Can this session be trusted?
picture-below = below { $margin }
picture-zone = too small to matter: { $margin }
picture-no-difference = no difference
picture-caption = The mark is the gap in these shots. The bar is where the true gap may lie.
picture-caption-level = The mark is the gap in these shots. The bar is where the true gap may lie: the { $level } interval.
picture-caption-ratio = The mark is how much more or less it scattered in these shots. The bar is where the truth may lie.
picture-caption-ratio-level = The mark is how much more or less it scattered in these shots. The bar is where the truth may lie: the { $level } interval.
picture-way = { $name } ({ $level } interval)
picture-level = { $level } interval
picture-allowance = Its thin ends stand for warming up and tiring.
picture-allowance-laps = Its thin ends stand for the cold start of the laps.
picture-alternative = { $what }. { $each }
picture-alternative-zone = { $what }. { $each } Too small to matter: { $margin }.
picture-scatter-of = Scatter of { $measure }
picture-each-way = { $way }: { $candidate } against { $baseline }, { $value } in these shots; the truth may lie from { $low } to { $high } ({ $level } interval).
picture-each = { $candidate } against { $baseline }: { $value } in these shots; the truth may lie from { $low } to { $high } ({ $level } interval).

## The closed parts below the answer

group-how-sure = How sure?
group-why = Why?
group-what-if = What if?
door-bet = What would you bet?
door-bet-line = How likely it is, and by how much: a bet, not a verdict
door-luck = How far luck reaches
door-luck-line = What two identical clubs would show in such a session
door-landing = Where they land
door-landing-line = From above: spread, fairway, aim
door-cause = Club or swing?
door-cause-line = Where the gap came from
door-potential = What this ball speed could carry
door-potential-line = Best launch and spin for each
door-change = Before and after
door-change-line = A lesson, another ball, a break
change-said = Your shots say what changed: { $name }.
change-asked = Did the club or that change do more?
door-weather = The weather that day
door-weather-line = Carry as in standard air
door-share = Keep and share
door-share-line = A link, a picture, a file, a print
door-keep = Put it into the book
door-keep-line = On this device, with a name and a date
consistency-title = Do carry and launch belong together?
