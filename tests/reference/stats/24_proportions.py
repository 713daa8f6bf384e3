# Exact intervals of counted shares, and exact comparisons of two of them: python3 24_proportions.py (scipy).
import json

import scipy
from scipy.stats import binomtest, hypergeom

cases = []


def interval(name, found, of, source="the binomial distribution", kind="computed-by-reference-library"):
    ends = binomtest(found, of).proportion_ci(0.95, method="exact")
    cases.append(
        dict(
            id=name,
            source=source,
            kind=kind,
            how="tests/reference/stats/24_proportions.py: scipy.stats.binomtest, exact",
            input=dict(found=found, of=of),
            expected=dict(interval=[float(ends.low), float(ends.high)]),
            tolerance=dict(rel=1e-9),
        )
    )


def compared(name, one, other, source="the hypergeometric distribution", kind="computed-by-reference-library"):
    (x, n), (y, m) = one, other
    chance = hypergeom(n + m, x + y, n)
    cases.append(
        dict(
            id=name,
            source=source,
            kind=kind,
            how="tests/reference/stats/24_proportions.py: scipy.stats.hypergeom, twice the smaller tail",
            input=dict(one=[x, n], other=[y, m]),
            expected=dict(p=float(min(1.0, 2 * min(chance.cdf(x), chance.sf(x - 1))))),
            tolerance=dict(rel=1e-9),
        )
    )


interval("three_of_fifteen", 3, 15)
interval("one_of_thirty", 1, 30)
interval("eight_of_ten", 8, 10)
interval("many", 37, 400)
compared("the_lady_tasting_tea", (3, 4), (1, 4), "Fisher (1935), the lady tasting tea: 17 of 70 in one tail", "published")
compared("mishits", (5, 15), (1, 15))
compared("unequal_numbers", (2, 9), (14, 30))
json.dump(
    dict(
        method="shares that were counted",
        conventions=dict(interval="95 %, Clopper and Pearson", p="two-sided, twice the smaller tail"),
        library_versions=dict(scipy=scipy.__version__),
        cases=cases,
    ),
    open("24_proportions.json", "w"),
    indent=1,
)
