#!/usr/bin/env python3
"""An independent second opinion on the invented days of `procedures/`.

    pip install numpy iapws
    python3 tests/data/procedures_reference.py

works the logs out by the published formulas as the specification states them,
from the formulas only, without a look at the Rust code; prints how far each figure
is from the true one, and freezes the figures in `procedures/reference.json`.

Readings of the procedures that are ours, since the papers leave them open:

- plateau: of all stretches that begin at a reading and end at the first reading
  ten minutes later or more, those whose line has a slope under 0.1 K/min in size,
  irradiance within ± 20 W/m² of its mean and over 600 W/m²; of these the one with
  the hottest mean plate, the earliest of equals. Means are by trapezoid;
- passing times: between the first reading at or over the temperature and the one
  before it, on a straight line; a run that begins above it begins there;
- means of ambient and irradiance: trapezoid over the span, ends interpolated;
- time constant: readings from the start while the water is over 10 K above ambient.
"""

import json
import math
import platform
from importlib.metadata import version
from pathlib import Path

import numpy as np
from iapws.iapws97 import _TSat_P

HERE = Path(__file__).parent / "procedures"
MADE_BY = {
    "script": "tests/data/procedures_reference.py",
    "python": platform.python_version(),
    **{name: version(name) for name in ("numpy", "iapws")},
}
C_W = 4186.0
T_SUN_K = 5777.0
PLATEAU_S, PLATEAU_K_PER_MIN, PLATEAU_BAND_W_M2, PLATEAU_SUN_W_M2 = 600.0, 0.1, 20.0, 600.0
COOLING_OVER_K = 10.0
BELOW_BOILING_K = 5.0
SLACK = 1e-9


def read(folder, name):
    """A log's columns; the dark vessel's or the water's temperature as `c`."""
    lines = [x for x in (HERE / folder / name).read_text("utf-8").splitlines() if x[0] != "#"]
    head = lines[0].split(",")
    rows = [line.split(",") for line in lines[1:]]
    log = {h: np.array([float(r[i]) for r in rows]) for i, h in enumerate(head) if h != "time"}
    clocks = [[int(p) for p in r[0].split(" ")[1].split(":")] for r in rows]
    seconds = np.array([h * 3600 + m * 60 + s for h, m, s in clocks], dtype=float)
    if "oven thermometer (°F)" in log:
        c = (log["oven thermometer (°F)"] - 32) / 1.8
    else:
        c = log["vessel_c"] if "vessel_c" in log else log["water_c"]
    return {"s": seconds - seconds[0], "c": c, "a": log["ambient_c"], "g": log["irradiance_w_m2"]}


def mean(s, x):
    return float(np.trapezoid(x, s) / (s[-1] - s[0]))


def boiling_c(elevation_m):
    exponent = 9.80665 * 0.0289644 / (8.31432 * 0.0065)
    pressure_pa = 101325.0 * (1 - 0.0065 * elevation_m / 288.15) ** exponent
    return _TSat_P(pressure_pa / 1e6) - 273.15


# ------------------------------------------------------------------------- dry vessel


def stretch(log, i, j):
    """Means of readings i to j, where they are a plateau."""
    s, c, a, g = (log[k][i : j + 1] for k in "scag")
    slope = float(np.polyfit((s - s[0]) / 60, c, 1)[0])
    sun = mean(s, g)
    steady = abs(slope) < PLATEAU_K_PER_MIN
    bright = (np.abs(g - sun) <= PLATEAU_BAND_W_M2 + SLACK).all() and g.min() > PLATEAU_SUN_W_M2
    if not (steady and bright):
        return None
    return {
        "from_s": float(s[0]),
        "to_s": float(s[-1]),
        "slope_k_per_min": slope,
        "plateau_c": mean(s, c),
        "ambient_c": mean(s, a),
        "irradiance_w_m2": sun,
        "difference_k_m2_per_w": (mean(s, c) - mean(s, a)) / sun,
    }


def plateau(log):
    best = None
    for i, start in enumerate(log["s"]):
        later = np.nonzero(log["s"] - start >= PLATEAU_S - SLACK)[0]
        found = stretch(log, i, later[0]) if len(later) else None
        if found and (best is None or found["plateau_c"] > best["plateau_c"] + SLACK):
            best = found
    return best


def longest_plateau(log):
    """Another reading of the rule: the longest stretch that meets it, whatever its length."""
    best, n = None, len(log["s"])
    for i in range(n):
        for j in range(n - 1, i, -1):
            length = log["s"][j] - log["s"][i]
            if length < PLATEAU_S - SLACK or (best and length <= best["to_s"] - best["from_s"]):
                break
            found = stretch(log, i, j)
            if found:
                best = found
                break
    return best


def passing(log, level_c):
    """When a temperature is first passed, and None if it never is."""
    above = np.nonzero(log["c"] >= level_c)[0]
    if len(above) == 0:
        return None
    k = above[0]
    if k == 0:
        return 0.0
    c, s = log["c"], log["s"]
    return float(s[k - 1] + (level_c - c[k - 1]) / (c[k] - c[k - 1]) * (s[k] - s[k - 1]))


def dry(folder, name, levels):
    log = read(folder, name)
    return {
        "plateau": plateau(log),
        "longest_plateau": longest_plateau(log),
        "reached": [{"c": level, "after_s": passing(log, level)} for level in levels],
        "first_reading_to_next_k_per_min": float(
            (log["c"][1] - log["c"][0]) / (log["s"][1] - log["s"][0]) * 60
        ),
    }


# ------------------------------------------------------------------------ box cooker


def span(log, start, end):
    """The readings of a span, its ends interpolated."""
    inside = (log["s"] > start) & (log["s"] < end)
    s = np.concatenate([[start], log["s"][inside], [end]])
    return {k: s if k == "s" else np.interp(s, log["s"], log[k]) for k in "scag"}


def second_figure(log, f1, given, low_c=60.0, high_c=90.0):
    start, end = passing(log, low_c), passing(log, high_c)
    part = span(log, start, end)
    h, ta, tau = mean(part["s"], part["g"]), mean(part["s"], part["a"]), end - start
    heat = given["water_kg"] * C_W / given["intercept_area_m2"]
    # A run that begins above the lower temperature begins where it begins.
    tw1 = float(part["c"][0])
    ratio = (1 - (tw1 - ta) / (f1 * h)) / (1 - (high_c - ta) / (f1 * h))
    return {
        "duration_s": tau,
        "mean_irradiance_w_m2": h,
        "mean_ambient_c": ta,
        "f2": f1 * heat / tau * math.log(ratio),
        # The balance over the span, with no means: the formula's own assumption dropped.
        "f2_from_integrals": heat * (high_c - tw1)
        / float(np.trapezoid(part["g"] - (part["c"] - part["a"]) / f1, part["s"])),
    }


def box_boiling_s(f1, f2, given, irradiance, ambient):
    heat = given["water_kg"] * C_W / given["intercept_area_m2"]
    return -f1 * heat / f2 * math.log(1 - (100 - ambient) / (f1 * irradiance))


# ------------------------------------------------------------------------------- dish


def cooling(log, given):
    """τ0 three ways, over the readings more than 10 K above ambient."""
    difference = log["c"] - log["a"]
    low = np.nonzero(difference <= COOLING_OVER_K)[0]
    n = low[0] if len(low) else len(difference)
    s, c, d = log["s"][:n], log["c"][:n], difference[:n]
    if n < 3 or c[-1] >= c[0]:
        return None
    lost = np.concatenate([[0.0], np.cumsum((d[1:] + d[:-1]) / 2 * np.diff(s))])
    heat = given["water_kg"] * C_W + given["vessel_heat_capacity_j_per_k"]
    tau0 = -1 / float(np.polyfit(lost, c, 1)[0])
    return {
        "readings": int(n),
        "above_ambient_k": [float(d[0]), float(d[-1])],
        "heat_capacity_j_per_k": heat,
        "time_constant_s": tau0,
        "loss_factor_w_per_m2_k": heat / (given["loss_area_m2"] * tau0),
        "loss_w_per_k": heat / tau0,
        "time_constant_from_logarithm_s": -1 / float(np.polyfit(s, np.log(d), 1)[0]),
        "time_constant_from_logarithm_and_mean_ambient_s": -1
        / float(np.polyfit(s, np.log(c - mean(s, log["a"][:n])), 1)[0]),
    }


def optical(log, i, j, tau0, loss_factor, given):
    s, c, a, g = (log[k][i : j + 1] for k in "scag")
    gb, ta, tau = mean(s, g), mean(s, a), s[-1] - s[0]
    decay = math.exp(-tau / tau0)
    risen = (c[-1] - ta) / gb - (c[0] - ta) / gb * decay
    ratio = given["loss_area_m2"] / given["intercept_area_m2"]
    return loss_factor * ratio * float(risen) / (1 - decay)


def optical_from_integrals(log, k, cooled, given):
    """The balance up to reading k, with no means: gain over sunlight."""
    s, c, a, g = (log[key][: k + 1] for key in "scag")
    kept_j = cooled["heat_capacity_j_per_k"] * (c[-1] - c[0])
    lost_j = cooled["loss_w_per_k"] * np.trapezoid(c - a, s)
    return float((kept_j + lost_j) / (given["intercept_area_m2"] * np.trapezoid(g, s)))


def heating(log, cooled, given, top_c):
    """F'η0 over the whole heating below boiling − 5 K, and in spans of equal length."""
    k = int(np.nonzero(log["c"] < top_c)[0][-1])
    arguments = cooled["time_constant_s"], cooled["loss_factor_w_per_m2_k"], given
    result = {
        "to_s": float(log["s"][k]),
        "tw1_c": float(log["c"][0]),
        "tw2_c": float(log["c"][k]),
        "mean_beam_w_m2": mean(log["s"][: k + 1], log["g"][: k + 1]),
        "optical_factor": optical(log, 0, k, *arguments),
        "optical_factor_from_integrals": optical_from_integrals(log, k, cooled, given),
    }
    for length in (300, 600):
        step = round(length / (log["s"][1] - log["s"][0]))
        values = [optical(log, i, i + step, *arguments) for i in range(0, k - step + 1, step)]
        result[f"optical_factor_spans_of_{length}_s"] = values
        result[f"optical_factor_mean_of_{length}_s"] = float(np.mean(values))
    return result


def dish_boiling_s(tau0, loss_factor, optical_factor, given, beam, ambient):
    concentration = given["intercept_area_m2"] / given["loss_area_m2"]
    share = loss_factor / (optical_factor * concentration) * (100 - ambient) / beam
    return -tau0 * math.log(1 - share)


# ------------------------------------------------------------------ energy and exergy


def petela(ambient_c):
    x = (ambient_c + 273.15) / T_SUN_K
    return 1 - 4 / 3 * x + x**4 / 3


def figures(part, area_m2, water_kg):
    """Energy and exergy efficiency from a span's first reading to its last."""
    s, c, a, g = (part[k] for k in "scag")
    t1, t2, ta = c[0] + 273.15, c[-1] + 273.15, mean(s, a) + 273.15
    light_j = area_m2 * float(np.trapezoid(g, s))
    gain_j = water_kg * C_W * float(t2 - t1 - ta * math.log(t2 / t1))
    return {
        "from_c": float(c[0]),
        "to_c": float(c[-1]),
        "duration_s": float(s[-1] - s[0]),
        "mean_irradiance_w_m2": mean(s, g),
        "mean_ambient_c": ta - 273.15,
        "energy_efficiency": water_kg * C_W * float(t2 - t1) / light_j,
        "exergy_gain_j": gain_j,
        "exergy_efficiency": gain_j / (light_j * petela(ta - 273.15)),
    }


def summed(part, area_m2, water_kg):
    """Exergy efficiency summed from reading to reading, each with its own ambient."""
    s, t, g = part["s"], part["c"] + 273.15, part["g"]
    ta = (part["a"][1:] + part["a"][:-1]) / 2 + 273.15
    gain_j = water_kg * C_W * float(np.sum(np.diff(t) - ta * np.log(t[1:] / t[:-1])))
    light_j = area_m2 * float(np.sum((g[1:] + g[:-1]) / 2 * np.diff(s) * petela(ta - 273.15)))
    return gain_j / light_j


def efficiency(log, given, low_c=40.0, high_c=90.0):
    """Between the passing times, between whole readings, and in ten-minute intervals."""
    area_m2, water_kg = given["intercept_area_m2"], given["water_kg"]
    start, end = passing(log, low_c), passing(log, high_c)
    inside = np.nonzero((log["s"] >= start) & (log["s"] <= end))[0]
    i, j = inside[0], inside[-1]
    readings = {k: log[k][i : j + 1] for k in "scag"}
    step = round(600 / (log["s"][1] - log["s"][0]))
    tens = []
    for k in range(i, j - step + 1, step):
        part = {key: log[key][k : k + step + 1] for key in "scag"}
        found = figures(part, area_m2, water_kg)
        found["difference_k"] = mean(part["s"], part["c"] - part["a"])
        found["exergy_power_w"] = found["exergy_gain_j"] / found["duration_s"]
        tens.append(found)
    parabola = np.polyfit(
        [t["difference_k"] for t in tens], [t["exergy_power_w"] for t in tens], 2
    )
    vertex_k = float(-parabola[1] / (2 * parabola[0]))
    return {
        "between_passing_times": figures(span(log, start, end), area_m2, water_kg),
        "between_readings": figures(readings, area_m2, water_kg),
        "ten_minutes": tens,
        "summed_exergy_efficiency": summed(span(log, start, end), area_m2, water_kg),
        "parabola_w": [float(p) for p in parabola],
        "vertex_difference_k": vertex_k,
        "vertex_is_a_maximum_inside": bool(
            parabola[0] < 0 and tens[0]["difference_k"] <= vertex_k <= tens[-1]["difference_k"]
        ),
        "vertex_exergy_power_w": float(np.polyval(parabola, vertex_k)),
    }


# -------------------------------------------------------------------- folders, report


def off_percent(value, true):
    return None if value is None else 100 * (value / true - 1)


def box(folder, truth):
    given, true = truth["given"], truth["truth"]
    logs = {"dry.csv": dry(folder, "dry.csv", [100.0, 120.0, 150.0])}
    if folder == "box":
        logs["dry-10s.csv"] = dry(folder, "dry-10s.csv", [100.0, 120.0, 150.0])
    f1 = logs["dry.csv"]["plateau"]["difference_k_m2_per_w"]
    off = {f"f1 {n}": off_percent(d["plateau"]["difference_k_m2_per_w"], true["f1_k_m2_per_w"])
           for n, d in logs.items()}
    off |= {f"f1 {n}, longest plateau": off_percent(
        d["longest_plateau"]["difference_k_m2_per_w"], true["f1_k_m2_per_w"])
        for n, d in logs.items()}
    f2 = []
    for name, run in truth["water"].items():
        if not (HERE / folder / name).exists():  # the steady days are without noise only
            continue
        log = read(folder, name)
        logs[name] = {
            "f2": second_figure(log, f1, given),
            "f2_with_true_f1": second_figure(log, true["f1_k_m2_per_w"], given),
            "f2_65_95": second_figure(log, f1, given, 65.0, 95.0),
            "f2_from_40": second_figure(log, f1, given, 40.0, 90.0),
            "efficiency": efficiency(log, given),
        }
        for key in ("f2", "f2_with_true_f1", "f2_65_95", "f2_from_40"):
            off[f"{key} {name}"] = off_percent(logs[name][key]["f2"], true["f2"])
        off[f"f2_from_integrals {name}"] = off_percent(
            logs[name]["f2"]["f2_from_integrals"], true["f2"]
        )
        off |= efficiency_off(name, logs[name]["efficiency"], run["span_40_90"])
        if name in ("water-1.csv", "water-2.csv"):
            f2.append(logs[name]["f2"]["f2"])
    steady = true["boiling"]
    boiling = box_boiling_s(
        f1, float(np.mean(f2)), given, steady["irradiance_w_m2"], steady["ambient_c"]
    )
    off["boiling time"] = off_percent(boiling, steady["boiling_time_s"])
    return {
        "f1_k_m2_per_w": f1,
        "f2": float(np.mean(f2)),
        "boiling_time_s": boiling,
        "logs": logs,
        "off_percent": off,
    }


def efficiency_off(name, found, true):
    between, out = found["between_passing_times"], {}
    for key in ("energy_efficiency", "exergy_efficiency"):
        out[f"{key} {name}"] = off_percent(between[key], true[key])
        out[f"{key} {name}, whole readings"] = off_percent(
            found["between_readings"][key], true[key]
        )
    out[f"exergy_efficiency {name}, summed from reading to reading"] = off_percent(
        found["summed_exergy_efficiency"], true["exergy_efficiency"]
    )
    return out


def dish(folder, truth, top_c):
    given, true = truth["given"], truth["truth"]
    cooled = cooling(read(folder, "cooling.csv"), given)
    logs, off = {"cooling.csv": cooled}, {}
    for key in ("time_constant_s", "loss_factor_w_per_m2_k", "loss_w_per_k"):
        off[key] = off_percent(cooled[key], true[key])
    for key in ("from_logarithm", "from_logarithm_and_mean_ambient"):
        off[f"time constant {key}"] = off_percent(
            cooled[f"time_constant_{key}_s"], true["time_constant_s"]
        )
    factors = []
    for name, run in truth["water"].items():
        log = read(folder, name)
        logs[name] = {
            "optical": heating(log, cooled, given, top_c),
            "efficiency": efficiency(log, given),
        }
        for key in ("optical_factor", "optical_factor_mean_of_300_s",
                    "optical_factor_mean_of_600_s", "optical_factor_from_integrals"):
            off[f"{key} {name}"] = off_percent(
                logs[name]["optical"][key], true["optical_factor"]
            )
        off |= efficiency_off(name, logs[name]["efficiency"], run["span_40_90"])
        factors.append(logs[name]["optical"]["optical_factor_mean_of_600_s"])
    steady, factor = true["boiling"], float(np.mean(factors))
    tau0, loss = cooled["time_constant_s"], cooled["loss_factor_w_per_m2_k"]
    boiling = dish_boiling_s(
        tau0, loss, factor, given, steady["irradiance_w_m2"], steady["ambient_c"]
    )
    off["boiling time"] = off_percent(boiling, steady["boiling_time_s"])
    return {
        "time_constant_s": tau0,
        "loss_factor_w_per_m2_k": loss,
        "loss_w_per_k": cooled["loss_w_per_k"],
        "optical_factor": factor,
        "gain_m2": factor * given["intercept_area_m2"],
        "boiling_time_s": boiling,
        "logs": logs,
        "off_percent": off,
    }


def dry_pot(truth):
    true = truth["truth"]["difference_k_m2_per_w"]
    logs, off = {}, {}
    for name in ("exact-60s.csv", "dial-celsius.csv", "dial-fahrenheit.csv"):
        logs[name] = dry("dry-pot", name, [100.0, 150.0])
        for key in ("plateau", "longest_plateau"):
            found = logs[name][key]
            off[f"{key} {name}"] = off_percent(found and found["difference_k_m2_per_w"], true)
    return {"logs": logs, "off_percent": off}


def refused(truth):
    late = cooling(read("refused", "cooling-late.csv"), truth["cooling-late.csv"]["given"])
    sunny = cooling(
        read("refused", "cooling-in-the-sun.csv"), truth["cooling-in-the-sun.csv"]["given"]
    )
    true = truth["cooling-late.csv"]["time_constant_s"]
    return {
        "dry-rising.csv": dry("refused", "dry-rising.csv", [100.0]),
        "cooling-in-the-sun.csv": sunny,
        "cooling-late.csv": late,
        "off_percent": {"time_constant_s cooling-late.csv": off_percent(
            late["time_constant_s"], true)},
    }


def main():
    truth = json.loads((HERE / "truth.json").read_text("utf-8"))
    boiling = boiling_c(truth["site"]["elevation_m"])
    result = {
        "made_by": MADE_BY,
        "note": "figures from the logs by the published formulas; nothing edited by hand; "
        "off_percent is against truth.json",
        "boiling_point_c": boiling,
        "box": box("box", truth["box"]),
        "box-noisy": box("box-noisy", truth["box"]),
        "dish": dish("dish", truth["dish"], boiling - BELOW_BOILING_K),
        "dish-noisy": dish("dish-noisy", truth["dish"], boiling - BELOW_BOILING_K),
        "dry-pot": dry_pot(truth["dry_pot"]),
        "refused": refused(truth["refused"]),
    }
    text = json.dumps(result, indent=1, ensure_ascii=False, allow_nan=False)
    (HERE / "reference.json").write_text(text + "\n", "utf-8")
    for folder in ("box", "box-noisy", "dish", "dish-noisy", "dry-pot", "refused"):
        print(folder)
        for what, off in result[folder]["off_percent"].items():
            print(f"  {what}: " + ("none" if off is None else f"{off:+.4f} %"))


if __name__ == "__main__":
    main()
