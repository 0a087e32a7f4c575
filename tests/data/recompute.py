#!/usr/bin/env python3
"""The longer digits in tests/modules, worked out once more in 40-digit arithmetic.

    pip install mpmath
    python3 tests/data/recompute.py

Lines by their textbook formulas, Student's t from the incomplete beta function.
Nothing of the Rust code is used.
"""

from pathlib import Path

import mpmath as mp

mp.mp.dps = 40
HERE = Path(__file__).parent


def columns(name, *wanted):
    lines = [line for line in (HERE / name).read_text("utf-8").splitlines() if line[:1] != "#"]
    header, *rows = [line.split(",") for line in lines]
    return [[mp.mpf(row[header.index(column)]) for row in rows] for column in wanted]


def student_t(probability, df):
    def short_of(t):
        tail = mp.betainc(mp.mpf(df) / 2, mp.mpf(1) / 2, 0, df / (df + t * t), regularized=True)
        return 1 - tail / 2 - probability

    return mp.findroot(short_of, 12.7 if df == 1 else 2.2)


def show(title, x, y, at):
    n = len(x)
    x_mean, y_mean = sum(x) / n, sum(y) / n
    sxx = sum((a - x_mean) ** 2 for a in x)
    sxy = sum((a - x_mean) * (b - y_mean) for a, b in zip(x, y))
    syy = sum((b - y_mean) ** 2 for b in y)
    slope = sxy / sxx
    intercept = y_mean - slope * x_mean
    variance = sum((b - intercept - slope * a) ** 2 for a, b in zip(x, y)) / (n - 2)
    leverage = mp.mpf(1) / n + (at - x_mean) ** 2 / sxx
    t = student_t(mp.mpf("0.975"), n - 2)
    u_a = mp.sqrt(variance * (mp.mpf(1) / n + x_mean**2 / sxx))
    u_b = mp.sqrt(variance / sxx)
    covariance = -x_mean * variance / sxx
    value = intercept + slope * at
    print(title)
    for name, number in {
        "intercept": intercept,
        "slope": slope,
        "u(intercept)": u_a,
        "u(slope)": u_b,
        "covariance": covariance,
        "correlation": covariance / (u_a * u_b),
        "residual variance": variance,
        "residual sd": mp.sqrt(variance),
        "R squared": 1 - variance * (n - 2) / syy,
        f"value at {at}": value,
        "its standard error": mp.sqrt(variance * leverage),
        "confidence half-width": t * mp.sqrt(variance * leverage),
        "prediction half-width": t * mp.sqrt(variance * (1 + leverage)),
    }.items():
        print(f"  {name}: {mp.nstr(number, 15)}")


x, y = columns("nist_strd_norris.csv", "x", "y")
show("NIST StRD Norris", x, y, 0)
x, y = columns("gum_h3.csv", "t_c", "b_c")
show("JCGM 100:2008 H.3, from 20 degC", [t - 20 for t in x], y, 10)
x, y = columns("oxygen_purity.csv", "hydrocarbon_pct_x", "purity_pct_y")
show("Montgomery and Runger, table 11-1", x, y, 1)
difference_k = [mp.mpf(text) for text in ("17.95", "36.38", "55.72")]
power_w = [mp.mpf("58604") / 825, mp.mpf("46883.2") / 835, mp.mpf("50.96")]
show("Three intervals by hand", difference_k, power_w, 50)
for df in (1, 2, 3, 5, 8, 10, 18, 20, 28, 30, 60, 120):
    print(f"t(0.975, {df}): {mp.nstr(student_t(mp.mpf('0.975'), df), 12)}")
