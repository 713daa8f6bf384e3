# Reference values of a difference pulled toward zero, by integration over the difference itself with Student's t as the
# likelihood: python3 22_pulled.py (numpy, scipy).
import json

import numpy as np
import scipy
from scipy.integrate import quad
from scipy.optimize import brentq
from scipy.stats import chi, norm, t

cases = []


def add(name, diff, se, df, usual, drift):
    if drift == 0:
        likelihood = lambda x: t.pdf((diff - x) / se, df)
    else:
        # Student's t and a normal drift added: a convolution.
        at, weight = np.polynomial.legendre.leggauss(600)
        e, weight = 12 * drift * at, 12 * drift * weight * norm.pdf(12 * at)
        likelihood = lambda x: np.sum(weight * t.pdf((diff - x - e) / se, df))
    each = usual if isinstance(usual, list) else [usual]
    density = lambda x: sum(norm.pdf(x / one) / one for one in each) * likelihood(x)
    given, usual = usual, max(each)
    cuts = sorted({-14 * usual, -6 * usual, -2 * usual, 0.0, diff / 2, 2 * usual, 6 * usual, 14 * usual} | ({diff} if abs(diff) < 14 * usual else set()))
    whole = lambda f, to: sum(
        quad(lambda x: f(x) * density(x), a, min(b, to), epsabs=1e-15, epsrel=1e-12, limit=400)[0] for a, b in zip(cuts, cuts[1:]) if a < to
    )
    end = cuts[-1]
    mass = whole(lambda x: 1.0, end)
    below = lambda x: whole(lambda _: 1.0, x) / mass
    expected = dict(
        mean=whole(lambda x: x, end) / mass if diff else 0.0,
        above=1 - below(0.0),
        above_margin=1 - below(5.0),
        interval=[brentq(lambda x: below(x) - p, -13 * usual, 13 * usual, xtol=1e-12) for p in (0.025, 0.975)],
    )
    cases.append(
        dict(
            id=name,
            source="the definition: normal before, Student's t for the shots, after by Bayes' rule",
            kind="computed-by-reference-library",
            how="tests/reference/stats/22_pulled.py: scipy quad over the difference, brentq for the ends",
            input=dict(diff=diff, se=se, df=df, usual=given, drift=drift),
            expected=expected,
            tolerance=dict(rel=1e-8, abs=1e-9),
        )
    )


add("fifteen_each_different", 10.6, 4.6, 26, 4.0, 0.0)
add("few_shots", 13.0, 6.0, 3, 4.0, 0.0)
add("one_degree_of_freedom", -8.0, 3.0, 1, 2.0, 0.0)
add("many_shots", 6.0, 0.8, 200, 8.0, 0.0)
add("nothing_found", 0.0, 3.0, 28, 4.0, 0.0)
add("blocked", 9.0, 2.5, 40, 4.0, 3.0)
add("three_kinds_of_change", 21.9, 2.9, 30, [2.0, 4.0, 8.0], 0.0)
add("three_kinds_of_change_blocked", -6.0, 3.5, 12, [2.0, 4.0, 8.0], 3.0)


def among(name, diff, others, se, df, usual, drift):
    # Several builds: averages around a common one with variance tau^2 / 2 each; the error's size integrated out by quad.
    averages = np.array([0.0, diff, *others])
    squares, more = np.sum((averages - averages.mean()) ** 2), len(averages) - 1

    def evidence(s, tau):
        spread = tau**2 + se**2 / s**2 + drift**2
        return chi.pdf(s * np.sqrt(df), df) * spread ** (-more / 2) * np.exp(-squares / spread)

    def believed(s, tau):
        error = se**2 / s**2 + drift**2
        kept = tau**2 / (tau**2 + error)
        return kept * diff, (kept * error) ** 0.5

    top = 1 + 12 / np.sqrt(df)
    whole = lambda f: sum(quad(lambda s: evidence(s, tau) * f(*believed(s, tau)), 0, top, epsabs=1e-18, epsrel=1e-12, limit=400, points=[0.5, 1.0])[0] for tau in usual)
    mass = whole(lambda m, sd: 1.0)
    above = lambda x: whole(lambda m, sd: norm.sf((x - m) / sd)) / mass
    cases.append(
        dict(
            id=name,
            source="the definition: averages normal around a common one before, after by Bayes' rule",
            kind="computed-by-reference-library",
            how="tests/reference/stats/22_pulled.py: scipy quad over the error's size, brentq for the ends",
            input=dict(diff=diff, se=se, df=df, usual=usual, drift=drift, others=others),
            expected=dict(
                mean=whole(lambda m, sd: m) / mass,
                above=above(0.0),
                above_margin=above(5.0),
                interval=[brentq(lambda x: above(x) - p, -100, 100, xtol=1e-12) for p in (0.975, 0.025)],
            ),
            tolerance=dict(rel=1e-8, abs=1e-9),
        )
    )


among("among_four_clubs_near_each_other", 6.0, [5.0, 3.0], 4.0, 36, [2.0, 4.0, 8.0], 0.0)
among("among_clubs_far_apart_blocked", 6.0, [-20.0, 14.0, -9.0], 4.0, 20, [2.0, 4.0, 8.0], 3.0)
json.dump(
    dict(
        method="a difference pulled toward zero",
        conventions=dict(above="chance above 0", above_margin="chance above 5", interval="equal tails, 95 %"),
        library_versions=dict(numpy=np.__version__, scipy=scipy.__version__),
        cases=cases,
    ),
    open("22_pulled.json", "w"),
    indent=1,
)
