### What the methods page says around its sections, and in its tables.

first-description = How Straight Answer decides whether two golf clubs really differ, how often it is wrong, and what it cannot do: two minutes.
first-title = How Straight Answer finds its answer
first-heading = How the answer is found
first-opening = Two minutes: what this page does with your shots, how often it is wrong, and what it cannot do.
first-closing = All methods, formulas, sources and rates
full-description = How Straight Answer decides: every method with its formula, its source, its measured error rate, and what it cannot do.
full-title = Methods: how Straight Answer decides
full-heading = How the answer is worked out
full-opening = Every method the page uses: in words, its formula, where it comes from, how often it was wrong when that was measured, and what it cannot do. The <a href="./methods.html">first page</a> says the main things in two minutes; words you do not know are explained <a href="#glossary">at the end</a>. A lap is once through all the clubs, a set a few shots in a row with one of them.
full-closing = The first page, in two minutes
back = Back to the page
contents = On this page

## Margins

margin-measure = Measure
margin-least = At least
margin-why = Why

## Measured error rates

not-yet-measured = The error rates are not yet measured.
not-yet-measured-here = Measured: not yet measured.
kept = Of { $rates } error rates { $above } lie above the 5 in 100 that is promised. The highest is { $most } in 100: { $where }. Of { $found } promised chances to find a
    difference { $below } came out lower, by { $points } points at most. All on { $sessions } invented sessions.
guarded = Beside what it promises every figure has a limit in the code, set from its first measurement and about three of its standard errors. Such a limit
    shows that a later change made something worse; that a figure lies within it proves nothing.
range-wrong = Measured: wrong in { $least } to { $most } of 100, promised at most 5; { $worse } of { $count } above the promise.
range-found = Measured: found in { $least } to { $most } of 100; { $worse } of { $count } below what was promised.
range-others = { $count ->
    [one] One figure
   *[other] { $count } figures
  } with no promise.
figure = Invented sessions, and what was counted
measured = Measured
standard-error = ± its standard error
promised = Promised
against-promise = Kept?
at-most = at most { $most }
from-to = { $least } to { $most }
no-promise = nothing
kept-mark = kept
above-mark = above the promise
below-mark = below the promise
not-counted = (not yet counted)

## Beside other methods

not-yet-compared = Not yet measured against other methods.
compared = Called different, by method, on the same { $sessions } invented sessions each (standard error at most { $points } points)
method = Method
method-shots = { $method }, { $each } shots each
