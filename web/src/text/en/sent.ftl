### What a link holds, and whose settings are on the screen.

sent-title = Somebody shared this session with you
sent-note = With it came: { $note }
sent-yours = The settings are yours now, and so is the answer. The link stays as it was sent.
sent-try = The settings are the sender’s. Change them below the answer: the link stays as it was sent.
sent-back = Back to the sender’s settings
cut-stays = What was on this page stays as it was.
cut-left = What stands before the cut can still be read: { $shots } with { $measures }.
cut-gone = What came behind it is lost: other measures, notes, or why a shot was left out.
cut-open = Read what is left
cut-close = Close
sent-holds = It holds { $what } with { $clubs } and { $columns }.
n-averages = { $count } { $count ->
    [one] average
   *[other] averages
  }
n-measures = { $count ->
    [one] one measure
   *[other] { $count } measures
  }
sent-none-out = None is marked as left out.
sent-out = { n-shots } left out, and still shown: struck through under “Shots in order”.
