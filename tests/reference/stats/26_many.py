# False discovery rates and ratios of means: python3 26_many.py (statsmodels, scipy).
import json

import numpy as np
import scipy
import statsmodels
from scipy.optimize import brentq
from scipy.stats import t
from statsmodels.stats.multitest import multipletests

HERE = "tests/reference/stats/26_many.py"


def rates(name, source, kind, p, extra=None):
    made = dict(
        id=name, source=source, kind=kind,
        how=f"{HERE}: statsmodels {statsmodels.__version__} multipletests(p, method='fdr_bh')",
        input=dict(p=p), expected=dict(rates=multipletests(p, method="fdr_bh")[1].tolist()), tolerance=dict(rel=1e-12),
    )
    if extra:
        made["published"] = extra
        kept = sum(rate <= extra["rate"] for rate in made["expected"]["rates"])
        assert kept == extra["kept"], kept
    return made


def ratio(name, found, of, weight):
    found, of, weight = (np.asarray(x, float) for x in (found, of, weight))
    df = len(found) - 1
    def statistic(beta):
        r = found - beta * of
        mean = np.sum(weight * r) / np.sum(weight)
        return mean / np.sqrt(np.sum(weight * (r - mean) ** 2) / (df * np.sum(weight)))
    middle = float(np.sum(weight * found) / np.sum(weight * of))
    sign = np.sign(np.sum(weight * of))
    limit = t.isf(0.025, df)
    ends = [
        brentq(lambda b: sign * statistic(b) - limit, middle - 50, middle, xtol=1e-14, rtol=1e-14),
        brentq(lambda b: sign * statistic(b) + limit, middle, middle + 50, xtol=1e-14, rtol=1e-14),
    ]
    return dict(
        id=name, source="made-up", kind="computed-by-reference-library",
        how=f"{HERE}: where Student's t of found - b * of passes its limit, scipy {scipy.__version__} brentq",
        input=dict(found=found.tolist(), of=of.tolist(), weight=weight.tolist()),
        expected=dict(ratio=middle, interval=ends), tolerance=dict(rel=1e-9),
    )


cases = [
    rates(
        "benjamini-hochberg-1995", "Benjamini and Hochberg, J. Royal Statistical Society B 57 (1995), 289-300, section 4: 15 p-values of a trial",
        "published",
        [0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240, 0.4262, 0.5719, 0.6528, 0.7590, 1.0],
        dict(source="the same: the four smallest are kept at 0.05", rate=0.05, kept=4),
    ),
    rates("ties", "made-up, with ties, in no order", "computed-by-reference-library", [0.5, 0.01, 0.04, 0.01, 0.9, 0.04, 0.2]),
    ratio("claims", [4.0, 1.5, 6.0, -2.0, 7.5, 3.0], [10.0, 8.0, 15.0, 6.0, 12.0, 20.0], [1.0, 2.0, 0.5, 1.0, 1.5, 0.7]),
    ratio("claims-downward", [-300.0, -50.0, -420.0, 80.0], [-400.0, -250.0, -500.0, -300.0], [1.0, 1.0, 2.0, 1.0]),
]
versions = dict(numpy=np.__version__, scipy=scipy.__version__, statsmodels=statsmodels.__version__)
print(json.dumps(dict(method="what is said of many sessions", library_versions=versions, cases=cases), indent=1))
