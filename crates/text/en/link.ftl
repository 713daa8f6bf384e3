# Why a link cannot be opened or made.
not-a-link = This is no link that holds a session or a plan.
not-a-link-remedy = Copy the whole address, from https up to its last letter.
too-long = This is longer than any link.
too-long-remedy = Ask for the file with the shots instead.
later = A newer version of this page made this link.
later-remedy = Reload the page to get the newest version, then open the link again.
damaged = This link is not whole: it was cut off or changed on its way.
damaged-remedy = Copy the whole address again from where it was first written, or ask its sender for it again.
inconsistent = What this link holds does not fit together.
inconsistent-remedy = Ask the sender to share it again.
too-large = This session is too large for a link.
too-large-remedy = Save it as a file and send that.
names-too-long = The names of the clubs are too long for a link.
names-too-long-remedy = Shorten them.
# What is worth knowing of one that opens.
parts-unknown = A newer version of this page made this link and put something into it that this one does not know.
    Everything else is here.
digits-lost = { $measure } was given with many digits; the link keeps seven of them.
