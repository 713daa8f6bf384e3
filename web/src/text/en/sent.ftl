### What a link holds, and whose settings are on the screen.

sent-title = Somebody shared this session with you
sent-note = With it came: { $note }
sent-yours = The settings are yours now, and so is the answer. The link stays as it was sent.
sent-try = The settings are the sender’s. Change them below the answer: the link stays as it was sent.
sent-back = Back to the sender’s settings
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
