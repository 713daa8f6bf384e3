photo-which = Photo { $number } of { $count }:
photo-loading = Loading what reads photos: about 5 MB, once.
photo-finding = Looking for numbers …
photo-reading = Reading the numbers …
photo-stays = The photo never leaves this device.
photo-doubtful = { $count ->
    [one] { $count } of { $all } entries is to be looked at. Compare it with its cut-out.
   *[other] { $count } of { $all } entries are to be looked at. Compare each with its cut-out.
  }
photo-no-doubt = All { $all } entries were read without a doubt. A glance at the cut-outs does no harm.
photo-signs = Signs are easily lost. Look for them here: { $heading }
photo-all = All other entries beside their cut-outs
photo-right = It is right
photo-settled = Looked at
photo-empty = Nothing there
photo-rather = Rather { $text }
photo-take = Read these numbers
photo-one-more = Add a photo
photo-another = Choose another photo
photo-still-open = { $count ->
    [one] { $count } entry is still to be looked at.
   *[other] { $count } entries are still to be looked at.
  }
photo-mixed = Some photos show tables, others single big numbers. Take one kind at a time.
photo-column = Column { $number }
photo-place = { $heading }, row { $row }
photo-club = Club { $number }
photo-doubt-unsure = One character could be another.
photo-doubt-read_otherwise = A second look read something else.
photo-doubt-out_of_line = It is out of line for its column.
photo-doubt-against_another = It does not fit what stands beside it.
photo-doubt-filled = It was read by digits alone.
photo-doubt-missing = Something stands here that could not be read.
photo-doubt-sign = There may be a minus before it.
photo-failed-heic = This kind of photo (HEIC) cannot be opened here.
photo-failed-no_photo = This picture is of a kind that cannot be read here.
photo-failed-animated = This is a moving picture.
photo-failed-damaged = This picture is damaged, or cannot be opened here.
photo-failed-too_small = This picture is too small to hold a table.
photo-failed-too_large = This picture is larger than any photo.
photo-failed-no_picture = This picture holds nothing that can be read.
photo-failed-no_text = No text was found in this photo.
photo-failed-no_table = No table of numbers was found in this photo.
photo-failed-too_much = There is more text in this photo than a screen shows.
photo-failed-too_poor = Too dark or too blurred: too many numbers would be guesses. Nothing was taken over.
photo-failed-not_loaded = What reads photos could not be loaded.
photo-failed-failed = This photo could not be read on this device.
photo-failed-old_browser = This browser is too old to read photos.
photo-remedy-share = Share or save it as a JPEG, or take a screenshot of it.
photo-remedy-again = Take another: nearer, straight on, in even light, the phone held still.
photo-remedy-nearer = Take one of the table alone, near and upright.
photo-remedy-connection = Check the connection and try again. Or type the shots.
photo-remedy-type = Type the shots, or only the averages.
