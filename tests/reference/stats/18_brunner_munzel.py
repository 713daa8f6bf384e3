"""Writes 18_brunner_munzel.json: scipy.stats.brunnermunzel on data of this folder's other files."""
import json, numpy, scipy
from scipy.stats import brunnermunzel, rankdata

def df(x, y):  # scipy does not return it; Brunner and Munzel (2000), eq. (2.9)
    n, m = len(x), len(y)
    both = rankdata(list(x) + list(y)); rx, ry = rankdata(x), rankdata(y)
    sx = sum((both[:n] - rx - both[:n].mean() + (n + 1) / 2) ** 2) / (n - 1)
    sy = sum((both[n:] - ry - both[n:].mean() + (m + 1) / 2) ** 2) / (m - 1)
    return (n * sx + m * sy) ** 2 / ((n * sx) ** 2 / (n - 1) + (m * sy) ** 2 / (m - 1))

cases = []
for c in json.load(open("04_mann_whitney_hl.json"))["cases"]:
    x, y = c["input"]["x"], c["input"]["y"]
    if c["id"] == "complete_separation":
        continue
    r = brunnermunzel(y, x)  # scipy's sign: positive when the second sample is larger
    cases.append(dict(id=c["id"], exercises="standard error of the chance that one beats the other",
        source=c["source"], kind="computed-by-reference-library",
        how="scipy.stats.brunnermunzel(y, x, distribution='t'); df by the paper's formula (18_brunner_munzel.py)",
        input=dict(x=x, y=y), expected=dict(t=float(r.statistic), df=float(df(x, y)), p=float(r.pvalue)),
        tolerance=dict(rel=1e-9)))
json.dump(dict(method="Brunner and Munzel", library_versions=dict(numpy=numpy.__version__, scipy=scipy.__version__),
    cases=cases), open("18_brunner_munzel.json", "w"), indent=1)
