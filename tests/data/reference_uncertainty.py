"""Heat balance and uncertainty of a sample campaign, for `reference.py`.

Two linear fits share one treatment: the rating's line Ps = a + b·Td, and the heat
balance P = g·G − u·Td without intercept. Both by statsmodels. Written from the
project's specification alone, without a look at the Rust code.

Errors are of two kinds. Independent: what days differ by, found by leaving out each
day in turn (delete-a-group jackknife; Efron and Tibshirani 1993, An Introduction to
the Bootstrap, chapter 11, from memory), never less than what steps and moments of
reading make. Common: what an instrument does to all intervals alike, found by
refitting to readings changed by plus and minus one standard uncertainty (JCGM
100:2008, 5.1.3 note 2). Degrees of freedom by Welch and Satterthwaite (the same,
G.4.1), instruments infinite.
"""

import math

import numpy as np
import statsmodels.api as sm
from scipy import stats

WATER_J_KG_K = 4186.0
STANDARD_IRRADIANCE_W_M2 = 700.0
STEP = 1e-3  # of a standard uncertainty, for derivatives
MANY = 1e4  # degrees of freedom that count as infinite
THERMOMETER_MIDDLE_C, THERMOMETER_SPAN_K = 60.0, 80.0
SPECIFIC_HEAT_RELATIVE = 0.006 / math.sqrt(3)
VESSEL_HEAT_RELATIVE = 0.10 / math.sqrt(3)
CLOCK_RATE_RELATIVE = 1e-4 / math.sqrt(3)
ESTIMATE_RELATIVE = {"clear-sky": 0.10, "from-horizontal": 0.05}
# Standard uncertainties of the classes that the samples name or leave open.
# Those marked "assumed" stand in no document this was written from: see the README.
CLASSES = {
    "pyranometer-c": 0.10,  # within 20 % at 95 %, WMO-No. 8 as quoted
    "kitchen-thermometer": 2.0 / math.sqrt(3),  # within 2 K
    "kitchen-scale": 0.01 / math.sqrt(3),  # within 1 %
    "logger": 1.0 / math.sqrt(3),  # within 1 s
    "watch": 10.0 / math.sqrt(3),  # within 10 s
}
KITCHEN_STEP_K = 1.0
# Reasons for which an interval's readings are not sound for the balance.
UNSOUND = {
    "reading-gap",
    "excluded-by-tester",
    "not-cloudless",
    "water-below-window",
    "water-above-window",
}


def standard_uncertainty(instruments, quantity, key, default):
    """What is stated, else the class's, else the most cautious class's."""
    of = instruments.get(quantity, {})
    return float(of[key]) if key in of else CLASSES[of.get("class", default)]


def seen_step(columns):
    """The widest grid on which all cells of some columns lie, in the cells' unit, or None."""
    grid = 0
    for cells in columns:
        thousandths = sorted({round(float(c) * 1000) for c in cells if math.isfinite(c)})
        for low, high in zip(thousandths, thousandths[1:]):
            grid = math.gcd(grid, high - low)
    return grid / 1000 if grid else None


def sources(campaign, step_k):
    """Standard uncertainties of one campaign's instruments, in a dict."""
    instruments = campaign.get("instruments", {})
    sun = instruments.get("irradiance", {})
    if "estimate" in sun:
        irradiance = ESTIMATE_RELATIVE[sun["estimate"]]
    else:
        irradiance = standard_uncertainty(
            instruments, "irradiance", "relative_uncertainty", "pyranometer-c"
        )
    water = instruments.get("water_temperature", {})
    air = instruments.get("ambient_temperature", {})
    return {
        "irradiance": irradiance,
        "mass": standard_uncertainty(
            instruments, "water_mass", "relative_uncertainty", "kitchen-scale"
        ),
        "water_k": standard_uncertainty(
            instruments, "water_temperature", "uncertainty_k", "kitchen-thermometer"
        ),
        "ambient_k": standard_uncertainty(
            instruments, "ambient_temperature", "uncertainty_k", "kitchen-thermometer"
        ),
        "one_thermometer": "id" in water and water["id"] == air.get("id"),
        "moment_s": standard_uncertainty(instruments, "clock", "uncertainty_s", "logger"),
        "step_k2": (water.get("resolution_k") or step_k or KITCHEN_STEP_K) ** 2 / 12,
    }


class Data:
    """Readings of the intervals of one fit, as columns; P of water and vessel apart."""

    def __init__(self, intervals, with_vessels):
        def column(key):
            return np.array([i[key] for i in intervals], dtype=float)

        self.water_c, self.ambient_c = column("water_mean_c"), column("ambient_mean_c")
        self.difference_k = column("temperature_difference_k")
        self.irradiance_w_m2 = column("irradiance_mean_w_m2")
        self.duration_s = column("duration_s")
        capacity, rise = column("_capacity_j_per_k"), column("water_end_c") - column("water_start_c")
        vessel = column("_vessel_j_per_k") * with_vessels
        self.water_w = capacity * rise / self.duration_s
        self.vessel_w = vessel * rise / self.duration_s
        self.per_kelvin_w = (capacity + vessel) / self.duration_s
        self.days = np.array([i["start"][:10] for i in intervals])
        self.ends = [((i["run"], i["start"]), (i["run"], i["end"])) for i in intervals]

    def changed(self, sun=0.0, water=0.0, vessel=0.0, rate=0.0, offsets=(0.0, 0.0), scales=(0.0, 0.0)):
        """G, P and Td if readings were too high: water, ambient offsets in K, scales per K."""
        difference = (
            self.difference_k
            + (offsets[0] + scales[0] * (self.water_c - THERMOMETER_MIDDLE_C))
            - (offsets[1] + scales[1] * (self.ambient_c - THERMOMETER_MIDDLE_C))
        )
        stored = self.water_w * (1 + water) + self.vessel_w * (1 + vessel)
        power = stored * (1 + scales[0]) / (1 + rate)
        return self.irradiance_w_m2 * (1 + sun), power, difference


def line(sun, power, difference):
    """Ps = a + b·Td: the response and the design."""
    return power * STANDARD_IRRADIANCE_W_M2 / sun, np.column_stack(
        [np.ones_like(difference), difference]
    )


def balance(sun, power, difference):
    """P = g·G − u·Td: the response and the design."""
    return power, np.column_stack([sun, -difference])


def solvable(x):
    """Whether there are three rows or more and the columns are not collinear."""
    if len(x) < 3:
        return False
    return np.linalg.cond(x / np.linalg.norm(x, axis=0)) < 1e8


def reading_noise(data, known, per_w):
    """Covariance of the responses by steps and moments of reading; neighbours share one."""
    column = {}
    for pair in data.ends:
        for end in pair:
            column.setdefault(end, len(column))
    step, moment = np.zeros((2, len(data.ends), len(column)))
    power = data.water_w + data.vessel_w
    for row, (start, end) in enumerate(data.ends):
        kelvin = data.per_kelvin_w[row] * per_w[row]
        second = power[row] / data.duration_s[row] * per_w[row]
        step[row, column[end]], step[row, column[start]] = kelvin, -kelvin
        moment[row, column[end]], moment[row, column[start]] = second, -second
    return known["step_k2"] * step @ step.T + known["moment_s"] ** 2 * moment @ moment.T


def independent(data, model, noise):
    """Covariances of the two parameters by days (or None) and by intervals, number of days."""
    y, x = model(*data.changed())
    fitted = sm.OLS(y, x).fit()
    weights = fitted.normalized_cov_params @ x.T
    beyond = max(0.0, fitted.mse_resid - np.diag(noise).mean())
    of_intervals = beyond * fitted.normalized_cov_params + weights @ noise @ weights.T
    days = sorted(set(data.days))
    kept = [data.days != day for day in days]
    if len(days) >= 2 and all(solvable(x[k]) for k in kept):
        without = np.array([sm.OLS(y[k], x[k]).fit().params for k in kept])
        apart, k = without - without.mean(axis=0), len(days)
        return (k - 1) / k * apart.T @ apart, of_intervals, k
    return None, of_intervals, len(days)


def freedom_of(factor):
    """Degrees of freedom of Student's t for 95 % of that factor, between 1 and MANY."""
    few, many = 1.0, MANY
    for _ in range(60):
        middle = math.sqrt(few * many)
        if stats.t.ppf(0.975, middle) > factor:
            few = middle
        else:
            many = middle
    return many


def common(data, model, known):
    """Effects on the two parameters of each common error, a row an error."""
    root2 = math.sqrt(2)
    offset = [known["water_k"] / root2, known["ambient_k"] / root2]
    scale = [root2 * known[k] / THERMOMETER_SPAN_K for k in ("water_k", "ambient_k")]
    changes = [
        {"sun": known["irradiance"]},
        {"water": known["mass"]},
        {"water": SPECIFIC_HEAT_RELATIVE},
        {"rate": CLOCK_RATE_RELATIVE},
    ]
    if data.vessel_w.any():
        changes.append({"vessel": VESSEL_HEAT_RELATIVE})
    for name, u in (("offsets", offset), ("scales", scale)):
        if known["one_thermometer"]:
            changes.append({name: tuple(u)})
        else:
            changes += [{name: (u[0], 0.0)}, {name: (0.0, u[1])}]

    def refit(change, sign):
        signed = {
            k: tuple(sign * p for p in v) if isinstance(v, tuple) else sign * v
            for k, v in change.items()
        }
        return sm.OLS(*model(*data.changed(**signed))).fit().params

    return np.array([(refit(c, STEP) - refit(c, -STEP)) / (2 * STEP) for c in changes])


class Estimate:
    """A fit with its errors; reads any linear combination of its two parameters."""

    def __init__(self, data, model, known):
        y, x = model(*data.changed())
        self.params = sm.OLS(y, x).fit().params
        per_w = (
            STANDARD_IRRADIANCE_W_M2 / data.irradiance_w_m2
            if model is line
            else np.ones(len(y))
        )
        noise = reading_noise(data, known, per_w)
        weights = np.linalg.pinv(x)
        self.noise = weights @ noise @ weights.T
        self.of_days, self.of_intervals, self.days = independent(data, model, noise)
        self.intervals = len(y)
        self.common = common(data, model, known)

    def uncertainty(self, c):
        """Parts, degrees of freedom, factor and expanded uncertainty of c·params."""
        c = np.asarray(c, dtype=float)
        parts = [(self.of_intervals, self.intervals - 2.0), (self.noise, MANY)]
        if self.of_days is not None:
            parts.insert(0, (self.of_days, self.days - 1.0))
        variance, freedom, t = max(
            ((float(c @ part @ c), nu, float(stats.t.ppf(0.975, nu))) for part, nu in parts),
            key=lambda one: one[2] * math.sqrt(one[0]),
        )
        shared = float(np.sum((self.common @ c) ** 2))
        combined = math.sqrt(variance + shared)
        normal = float(stats.t.ppf(0.975, MANY))
        expanded = math.hypot(t * math.sqrt(variance), normal * math.sqrt(shared))
        factor = expanded / combined
        effective = freedom_of(factor)
        return {
            "combined": combined,
            "expanded": expanded,
            "effective": effective,
            "factor": factor,
            "independent": math.sqrt(variance),
            "independent_freedom": freedom,
            "common": math.sqrt(shared),
        }

    def figure(self, value, c):
        """A value with the standard uncertainty and 95 % interval of c·params."""
        u = self.uncertainty(c)
        return {
            "value": float(value),
            "standard_uncertainty": u["combined"],
            "interval_95": [float(value) - u["expanded"], float(value) + u["expanded"]],
        }


def rating_uncertainty(used, known):
    """The keys of `uncertainty`: Ps(50) with scatter, days and instruments; None without a line."""
    # The practice's power is the water's alone.
    data = Data(used, with_vessels=False)
    if not used or not solvable(line(*data.changed())[1]):
        return None
    u = Estimate(data, line, known).uncertainty([1.0, 50.0])
    return {
        "ps50_combined_standard_uncertainty_w": u["combined"],
        "ps50_expanded_uncertainty_w": u["expanded"],
        "effective_degrees_of_freedom": u["effective"],
        "coverage_factor": u["factor"],
        "independent_standard_uncertainty_w": u["independent"],
        "independent_degrees_of_freedom": u["independent_freedom"],
        "common_standard_uncertainty_w": u["common"],
    }


def heat_balance(intervals, used, known, rated):
    """The keys of `heat_balance`, findings but `one-day` left out; None where it cannot be fitted."""
    sound = [
        i
        for i in intervals
        if i["irradiance_mean_w_m2"] is not None
        and i["temperature_difference_k"] is not None
        and not UNSOUND & set(i["reasons"])
    ]
    data = Data(sound, with_vessels=True)
    if not sound or not solvable(balance(*data.changed())[1]):
        return None
    found = Estimate(data, balance, known)
    gain, loss = found.params
    loss_figure = found.figure(loss, [0.0, 1.0])
    ratio = None
    if loss_figure["interval_95"][0] > 0:
        ratio = found.figure(gain / loss, [1 / loss, -gain / loss**2])
    days = len(set(data.days))
    scaling = None
    if rated:
        # Ps(50) is of the water alone, and so is what the scaling adds to it.
        mean_w_m2 = np.mean([i["irradiance_mean_w_m2"] for i in used])
        y, x = balance(*Data(sound, with_vessels=False).changed())
        of_water = sm.OLS(y, x).fit().params[1]
        scaling = float(50 * of_water * (1 - STANDARD_IRRADIANCE_W_M2 / mean_w_m2))
    sun = data.irradiance_w_m2
    return {
        "intervals": len(sound),
        "days": days,
        "mean_irradiance_w_m2": float(sun.mean()),
        "irradiance_range_w_m2": [float(sun.min()), float(sun.max())],
        "gain_m2": found.figure(gain, [1.0, 0.0]),
        "loss_w_per_k": loss_figure,
        "power_700_50_w": found.figure(700 * gain - 50 * loss, [700.0, -50.0]),
        "scaling_in_ps50_w": scaling,
        "opto_thermal_ratio_k_m2_per_w": ratio,
        "findings": [{"code": "one-day"}] if days == 1 else [],
    }
