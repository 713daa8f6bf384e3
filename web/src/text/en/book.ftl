### The book: what was kept on this device, by people and visits.

book-who = Who
book-nobody = Nobody in particular
book-date = Date
book-place = Place
book-note = A note, in your words
book-visit = This visit: date, place, note
book-mark = New on that day
visit-nothing-new = nothing
visit-lesson = a lesson
visit-ball = another ball
keep-help = Nothing is kept until you press Keep. It lies on this device alone.
keep-button = Keep
keep-done = Kept on this device: { $who }, { $date }.
keep-full = It could not be kept: the store of this device is full or blocked. The shots stay on the page; save them as a file under “Keep and share”.
keep-open-book = Open the book
book-memory = This browser keeps nothing, as in a private window: the book lies in this page alone, and is gone when you close it. Save a copy.
book-newer = A newer version of this page is open in another tab and has the book. Close this tab, or load it again.
book-empty = Nothing is kept on this device. What you keep after an answer, and every test that you log, will stand here.
book-lies = Kept on this device: { $all }.
book-size = About { $size }.
book-kilobytes = { $size } kB
book-megabytes = { $size } MB
book-under-way = Under way
book-go-on = Go on
book-search = Find by name, date, place or club
book-nothing-found = Nothing begins with that.
book-more = Show more
book-open-answer = Open the answer
book-next-visit = Next visit: same clubs and margin
book-all-of = All of { $name }
book-everybody = ← Everybody
book-delete = Delete
book-delete-person = Delete { $name } and all visits
book-gone = Deleted: { $what }. It can be taken back for 30 days.
book-take-back = Take back
book-taken-back = It is back.
book-deleted = Deleted
book-deleted-help = Each can be taken back for 30 days; then it is gone for good.
book-records = { $count ->
    [one] one record
   *[other] { $count } records
  }
book-without-answer = No answer was looked at
book-test-over = Test, not looked at:
book-test-waits = Test that waits:
book-no-shots = There are no shots in it yet.
book-no-plan = It holds no two clubs to plan for.
book-damaged = This record is damaged and cannot be shown. All others open.
book-damaged-body = The shots of this record are damaged. They were saved as they lie, as a file.
book-save-raw = Save it as it lies
book-raw-file = damaged-record
book-not-written = It could not be written: the store of this device is full or blocked. Save a copy.
book-forgotten = Everything is forgotten. Nothing is left on this device.
book-nowhere = The book is on this device and nowhere else: there is no account, no server, and nothing comes along to another phone by itself. What goes there is a copy that you carry, or the link of an answer.
season-title = { $candidate } beside { $baseline }, visit by visit
season-together = All visits together
season-caption = Each bar: the gap of one visit, with how far it reaches.
season-no-difference = no difference
season-zone = less than { $margin } does not matter
season-each = { $name }: { $value }, from { $low } to { $high }.
season-one = With a second visit with the same two clubs it will say what both show together.
book-claim-beside = What was claimed, beside the latest retest
book-claim-of = Claim of { $date }: { $said }
book-claim = Claim: { $said }
copy-title = Copies: the whole book as one file
copy-help = For another device, or against loss. It is made here and goes where you put it. { $schema }
copy-schema = How the file is written.
copy-passphrase = Passphrase, if you like
copy-passphrase-help = With one, nobody reads the file without it. Nobody can bring it back if it is lost.
copy-save = Save a copy
copy-open = Open a copy
copy-file = straight-answer-book
copy-saved = The copy is saved.
copy-remind = The newest visit is in no copy yet.
copy-locked = Its passphrase
copy-wrong = That does not open it.
copy-unlock = Unlock
copy-no_copy = This file is no copy of a book.
copy-later_version = This copy was saved by a later version of the page. Load the page again while you have a network.
copy-brings = It brings: { $all }. Nothing here goes.
copy-visit = Save this visit as a file
copy-visit-file = straight-answer-visit
copy-visit-saved = The visit is saved as a file. On another device it is opened like a copy.
copy-nothing-new = It brings nothing new: all of it is here.
copy-only-changes = It brings no new record, but says some of what is here anew.
copy-branches = { $count ->
    [one] One test was gone on with in both: both are kept, as two.
   *[other] { $count } tests were gone on with in both: both of each are kept, as two.
  }
copy-unreadable = { $count ->
    [one] One record in it cannot be read, and stays in the file.
   *[other] { $count } records in it cannot be read, and stay in the file.
  }
copy-changes = { $count ->
    [one] In one place it says something else than here. The newer stands:
   *[other] In { $count } places it says something else than here. The newer stands:
  }
copy-change-there = here “{ $here }”, there “{ $there }”: taken from the copy
copy-change-here = here “{ $here }”, there “{ $there }”: stays as it is here
copy-take-over = Put it in
copy-leave = Leave it
copy-taken-over = It is in.
