# Why a request is not understood. Programs send them; a page never does.
unknown-field = There is no field called { $field } here.
unknown-field-remedy = { $nearest ->
    [yes] Did you mean { $known }?
   *[no] The fields here are { $known }.
}
missing-field = The field { $field } is missing.
missing-field-remedy = Add it: the declarations say what it holds.
unknown-word = { $word } is none of the words that may stand here.
unknown-word-remedy = { $nearest ->
    [yes] Did you mean { $known }?
   *[no] Choose one of { $known }.
}
not-of-type = This must be { $expected ->
    [number] a number
    [count] a whole number, zero or more
    [text] a text
    [yes-or-no] true or false
    [list] a list
   *[object] an object with named fields
}.
not-of-type-other = This must be { $expected }.
not-of-type-remedy = Send a value of that type.
not-finite = This is no finite number.
not-finite-remedy = Send a size that was measured, or leave it out.
does-not-fit = It does not fit together: { $why }.
does-not-fit-remedy = Send a value that fits the declarations.
no-such-club = { $named ->
    [yes] It names the club { $club }
   *[no] It names no club
}; there are { $clubs ->
    [0] none
    [one] 1, counted from 0
   *[other] { $clubs }, counted from 0
}.
second-does-not-fit = What else changed has { $values } values, of at most { $most }, or a shot names one that is not among them.
shots-twice = The shots stand one by one and as columns: send one of the two.
column-length = This column holds { $numbers ->
    [one] 1 number
   *[other] { $numbers } numbers
}; there are { $shots ->
    [one] 1 shot
   *[other] { $shots } shots
}.
no-such-shot = A reason or a note is of shot { $shot }; there are { $shots ->
    [one] 1 shot
   *[other] { $shots } shots
}, counted from 0.
other-version = This table of a language belongs to another version.
other-version-remedy = Fetch the one that stands beside this package.
