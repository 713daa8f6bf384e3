### What came by the share sheet, or was opened from a folder.

arrived-title = Something came from elsewhere
arrived-text = shared text
arrived-files = { $more ->
    [0] “{ $name }” came from elsewhere.
    [one] “{ $name }” and one more file came from elsewhere.
   *[other] “{ $name }” and { $more } more files came from elsewhere.
  }
arrived-read = Read the shots in it
arrived-instead = Read it in the place of these shots
arrived-add = Add it to these shots
arrived-leave = Leave it
