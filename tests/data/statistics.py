#!/usr/bin/env python3
"""Reference values for the statistics of days, neighbours, single intervals and pairs.

Published data that packages carry: Fisher's iris (scikit-learn: petal length on sepal
length, by species) and the flow of the Nile at Aswan 1871 to 1970 (statsmodels).

    pip install numpy scipy statsmodels pandas scikit-learn
    python3 tests/data/statistics.py > tests/data/statistics.json
"""

import json
import platform
from importlib.metadata import version

import numpy as np
import pandas as pd
import statsmodels.api as sm
import statsmodels.formula.api as smf
from scipy import stats
from sklearn.datasets import load_iris
from statsmodels.stats.anova import anova_lm
from statsmodels.stats.multitest import multipletests
from statsmodels.stats.outliers_influence import OLSInfluence
from statsmodels.stats.stattools import durbin_watson

SEED = 1
DRAWS = 200_000


def nested(frame, narrow, wide):
    """F test of one formula against a wider one."""
    table = anova_lm(smf.ols(narrow, frame).fit(), smf.ols(wide, frame).fit())
    row = table.iloc[1]
    return {
        "f": row["F"],
        "p": row["Pr(>F)"],
        "degrees_of_freedom": [int(row["df_diff"]), int(row["df_resid"])],
    }


iris = load_iris()
frame = pd.DataFrame({"x": iris.data[:, 0], "y": iris.data[:, 2], "g": iris.target})
# Two sets of groups: the first species cut in two halves of 25 flowers, and the others.
frame["half"] = np.where(frame.index < 25, 0, np.where(frame.index < 50, 1, frame.g + 1))
frame["first"] = (frame.g == 0).astype(int)

line = smf.ols("y ~ x", frame).fit()
influence = OLSInfluence(line)
at = 6.0
without = [
    smf.ols("y ~ x", frame.drop(i)).fit().params @ [1, at] for i in frame.index
]

nile = sm.datasets.nile.load_pandas().data
nile_line = sm.OLS(nile.volume, sm.add_constant(nile.year)).fit()
design = sm.add_constant(nile.year).to_numpy()
rng = np.random.default_rng(SEED)
noise = rng.normal(size=(len(nile), DRAWS))
left = noise - design @ np.linalg.lstsq(design, noise, rcond=None)[0]
ratios = np.sum(np.diff(left, axis=0) ** 2, axis=0) / np.sum(left**2, axis=0)

p_values = [0.01, 0.04, 0.03, 0.005, 0.55, 0.0004, 0.2]
result = {
    "made_by": {"python": platform.python_version()}
    | {name: version(name) for name in ("numpy", "scipy", "statsmodels", "pandas", "scikit-learn")},
    "iris": {
        "x": frame.x.tolist(),
        "y": frame.y.tolist(),
        "species": frame.g.tolist(),
        "half": frame.half.tolist(),
        "one_line_or_parallel": nested(frame, "y ~ x", "y ~ x + C(g)"),
        "parallel_or_separate": nested(frame, "y ~ x + C(g)", "y ~ x * C(g)"),
        "parallel_or_slope_by_set": nested(
            frame, "y ~ x + C(half)", "y ~ x + C(half) + x:C(first)"
        ),
        "cooks_distance": influence.cooks_distance[0].tolist(),
        "at": at,
        "shift": (line.params @ [1, at] - np.array(without)).tolist(),
    },
    "nile": {
        "year": nile.year.tolist(),
        "volume": nile.volume.tolist(),
        "durbin_watson": durbin_watson(nile_line.resid),
        "mean_of_simulated": ratios.mean(),
        "sd_of_simulated": ratios.std(),
        "p_of_1_7": float((ratios < 1.7).mean()),
        "p_of_2_2": float((ratios < 2.2).mean()),
    },
    "holm": {"p": p_values, "corrected": multipletests(p_values, method="holm")[1].tolist()},
    "t": [
        {"t": t, "freedom": v, "two_sided_p": 2 * stats.t.sf(t, v)}
        for t, v in ((0.5, 1.0), (2.1, 3.7), (2.1, 15.4), (4.0, 2.2), (1.96, 1e4))
    ],
    "quantile_t_80": [{"freedom": v, "t": stats.t.ppf(0.8, v)} for v in (1, 3, 10, 100)],
    "scores_7": stats.norm.ppf((np.arange(1, 8) - 0.375) / 7.25).tolist(),
}
print(json.dumps(result, indent=1))
