# While a reading is in doubt this stands where the answer will.
doubt-first = First look at this{ $count ->
    [one] {""}
   *[other] {" "}({ $count } questions)
}
doubt-lines = { $count ->
    [one] Line
   *[other] Lines
} { $lines } of your text.
doubt-read-as = Your shots, as they were read
