# Reference values of the chance that a value of one sample is above one of another: python3 23_chance_above.py (numpy, scipy).
# The chance is counted pair by pair, the statistic and p are scipy's, the ends follow from them on the logit.
import json

import numpy as np
import scipy
from scipy.stats import brunnermunzel, t

cases = []


def add(name, source, kind, candidate, baseline, published=None):
    x, y = np.array(candidate, float), np.array(baseline, float)
    above = np.mean([(1.0 if a > b else 0.5 if a == b else 0.0) for a in x for b in y])
    found = brunnermunzel(y, x, alternative="two-sided")
    se = (above - 0.5) / found.statistic
    # Satterthwaite, of the placements counted pair by pair.
    place = lambda of, among: np.array([np.mean([(1.0 if a > b else 0.5 if a == b else 0.0) for b in among]) for a in of])
    va, vb = place(x, y).var(ddof=1) / len(x), place(y, x).var(ddof=1) / len(y)
    df = (va + vb) ** 2 / (va**2 / (len(x) - 1) + vb**2 / (len(y) - 1))
    half = t.isf(0.025, df) * se / (above * (1 - above))
    back = lambda g: float(1 / (1 + np.exp(-g)))
    logit = np.log(above / (1 - above))
    cases.append(
        dict(
            id=name,
            source=source,
            kind=kind,
            how="tests/reference/stats/23_chance_above.py: pairs counted, scipy.stats.brunnermunzel, logit interval",
            input=dict(candidate=candidate, baseline=baseline),
            expected=dict(
                chance=float(above), statistic=float(found.statistic), df=float(df), p=float(found.pvalue), interval=[back(logit - half), back(logit + half)]
            ),
            tolerance=dict(rel=1e-9),
        )
    )


library = "computed-by-reference-library"
# The printed example: statistic 3.1375, df 17.683, p 0.005786, chance 0.788961.
add(
    "pain_scores",
    "Brunner and Munzel (2000), pain scores; printed as 3.1375, 17.683, 0.005786, 0.788961 by R lawstat::brunner.munzel.test",
    "published",
    [3, 3, 4, 3, 1, 2, 3, 1, 1, 5, 4],
    [1, 2, 1, 1, 1, 1, 1, 1, 1, 1, 2, 4, 1, 1],
)
add("carries_without_ties", "invented carries", library, [258.2, 262.7, 249.1, 266.4, 259.9, 261.3, 241.0], [251.6, 247.2, 255.8, 254.1, 250.3, 228.9])
add("unequal_numbers", "invented carries", library, [250.0, 262.0, 255.0], [251.0, 247.0, 255.0, 254.0, 250.0, 228.0, 257.0, 252.0, 260.0, 256.0, 253.0, 258.0])
add("other_way_round", "invented carries", library, [240.0, 251.0, 239.0, 244.0, 252.0], [247.0, 255.0, 254.0, 250.0, 238.0])

file = dict(
    method="chance that a value of one sample is above one of another",
    conventions=dict(interval="95 %, on the logit", statistic="(chance - 1/2) / se", p="two-sided, Student's t"),
    library_versions=dict(numpy=np.__version__, scipy=scipy.__version__),
    cases=cases,
)
with open("23_chance_above.json", "w") as out:
    json.dump(file, out, indent=1)
    out.write("\n")
