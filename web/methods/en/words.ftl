### What the methods page says around its sections, and in its tables.

description = How Straight Answer decides: every method with its formula, its source, its measured error rate, and what it cannot do.
title = Methods: how Straight Answer decides
heading = How the answer is worked out
opening = Every method the page uses: in words, its formula, where it comes from, how often it was wrong when that was measured, and what it cannot do.
closing = Words you do not know are explained <a href="#glossary">at the end</a>.
back = Back to the page
contents = On this page

## Margins

margin-measure = Measure
margin-least = At least
margin-why = Why

## Measured error rates

not-yet-measured = The error rates are not yet measured.
not-yet-measured-here = Measured: not yet measured.
within-all = <strong>{ $within } of { $all }</strong> figures lie within their limits, on { $sessions } invented sessions. A limit is
    the figure that was measured when the method was chosen, plus about three of its standard errors; for plans it is the promise, give or take 3 points, and for the number of shots 77 to
    86 in 100.
within = Measured: { $within } of { $all } within their limits
figure = Invented sessions, and what was counted
measured = Measured
standard-error = ± its standard error
limit = Limit
at-most = at most { $most }
from-to = { $least } to { $most }
is-within = Within
yes = yes
no = no

## Beside other methods

not-yet-compared = Not yet measured against other methods.
compared = Called different, by method, on the same { $sessions } invented sessions each (standard error at most { $points } points)
method = Method
method-shots = { $method }, { $each } shots each
