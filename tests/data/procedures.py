#!/usr/bin/env python3
"""Invented test days whose true figures are known, for the other published procedures.

    pip install numpy scipy
    python3 tests/data/procedures.py

solves the heat balances that the procedures start from, as differential
equations, and samples the solutions as logs. No closed formula of a procedure is
used. It writes into `procedures/`:

- `box/`, `box-noisy/`: a dry day and two water days of a box cooker; in the first also
  one under a steady sun, and one under it whose air warms;
- `dish/`, `dish-noisy/`: a cooling run and two heating runs of a dish;
- `dry-pot/`: an empty pot, exact and as an oven's dial is read;
- `refused/`: a plateau never reached, a cooling run that warms, one begun too late;
- `truth.json`: what was stated, and the true figures.

The equations, with temperatures in °C and every loss linear:

    plate  C_plate dTp/dt = A (eta0 H − U (Tp − Ta))
    box    (MC)' dTw/dt = A F' (eta0 H − U (Tw − Ta))
    dish   (MC)' dTw/dt = F'eta0 Ap Gb − F'UL At (Tw − Ta)
    (MC)' = M c_w + C_vessel

Everything is invented. It stops where a day is not as it is meant to be.
"""

import json
import platform
from dataclasses import dataclass
from importlib.metadata import version
from math import cos, pi, sin
from pathlib import Path

import numpy as np
from scipy.integrate import solve_ivp

HERE = Path(__file__).parent / "procedures"
MADE_BY = {
    "script": "tests/data/procedures.py",
    "python": platform.python_version(),
    **{name: version(name) for name in ("numpy", "scipy")},
    "solver": "scipy.integrate.solve_ivp, DOP853, rtol 1e-10, atol 1e-9",
    "seed": 20260314,
}
WATER_J_KG_K = 4186.0
KELVIN = 273.15
SUN_K = 5777.0
HOUR_S = 3600.0
# The sun's highest point at the invented site, seconds of local clock time: 11:55.
NOON_S = 11 * HOUR_S + 55 * 60
SITE = {
    "invented": True,
    "latitude_deg": -16.4,
    "longitude_deg": -71.5,
    "elevation_m": 200,
    "time_zone": "-05:00",
    "solar_noon_clock": "11:55",
}
BOX = {
    "intercept_area_m2": 0.25,
    "water_kg": 2.0,
    "vessel_heat_capacity_j_per_k": 930.0,
    "irradiance_plane": "horizontal",
}
BOX_MODEL = {
    "eta0": 0.605,
    "u_w_per_m2_k": 5.0,
    "f_prime": 0.85,
    "plate_heat_capacity_j_per_k": 1500.0,
}
DISH = {
    "intercept_area_m2": 1.4,
    "loss_area_m2": 0.15,
    "water_kg": 4.0,
    "vessel_heat_capacity_j_per_k": 800.0,
    "irradiance_plane": "normal, beam",
}
DISH_MODEL = {"f_ul_w_per_m2_k": 15.0, "f_eta0": 0.42}
POT_MODEL = {
    "eta0": 0.66,
    "u_w_per_m2_k": 4.0,
    "area_m2": 0.2,
    "plate_heat_capacity_j_per_k": 900.0,
}
NOISE = {"temperature_sd_k": 0.2, "irradiance_sd_w_m2": 5.0}
RANDOM = np.random.default_rng(MADE_BY["seed"])


def must(what, condition):
    """Stop where a day is not as it is meant to be."""
    if not condition:
        raise SystemExit(f"not as meant: {what}")


def clock(hours, minutes=0):
    return hours * HOUR_S + minutes * 60.0


@dataclass
class Day:
    """A log to come: its date, its sun and its air, its state at the start."""

    log: str
    date: str
    start_s: float
    start_c: float
    sun: object  # W/m² at a time of the day in seconds
    ambient_start_c: float
    ambient_rate_k_per_h: float = 1.0
    wind_m_s: float = 0.6

    def ambient(self, t):
        return self.ambient_start_c + self.ambient_rate_k_per_h * (t - self.start_s) / HOUR_S

    def wind(self, t):
        return self.wind_m_s + 0.2 * sin(2 * pi * (t - self.start_s) / 2700.0)


@dataclass
class Solved:
    """A day with its solution."""

    day: Day
    end_s: float
    state: object  # dense solution
    rate: object  # dT/dt of the equation, K/s, at (t, temperature)

    def temperature(self, t):
        return float(self.state(t)[0])

    def slope_k_per_min(self, t):
        return self.rate(t, self.temperature(t)) * 60.0


# ------------------------------------------------------------------ sun and equation


def horizontal_sun(peak_w_m2, haze=0.0, period_s=5400.0, phase=0.0):
    """A clear day's horizontal irradiance, with slow haze if wanted."""

    def sun(t):
        clear = peak_w_m2 * cos(pi * (t - NOON_S) / (14 * HOUR_S)) ** 1.2
        return clear * (1 + haze * sin(2 * pi * t / period_s + phase))

    return sun


def petela(ambient_c):
    """Exergy of a W of sunlight (Petela)."""
    x = (ambient_c + KELVIN) / SUN_K
    return 1 - 4 / 3 * x + x**4 / 3


def solve(day, rate, capacity_j_per_k=0.0, until_s=None, until_c=None):
    """The temperature, and beside it the integrals of sun, air and exergy.

    State: °C, ∫G dt, ∫Ta dt, ∫G·Petela dt, ∫C (1 − Ta/T) dT, since the start.
    """

    def equation(t, y):
        slope, sun, air = rate(t, y[0]), day.sun(t), day.ambient(t)
        carnot = 1 - (air + KELVIN) / (y[0] + KELVIN)
        return [slope, sun, air, sun * petela(air), capacity_j_per_k * carnot * slope]

    events = None
    if until_c is not None:
        events = lambda t, y: y[0] - until_c  # noqa: E731
        events.terminal = True
    end = until_s if until_s is not None else day.start_s + 6 * HOUR_S
    solution = solve_ivp(
        equation, (day.start_s, end), [day.start_c, 0, 0, 0, 0], method="DOP853",
        rtol=1e-10, atol=1e-9, max_step=120.0, dense_output=True, events=events,
    )
    must(f"{day.log} solved", solution.success)
    must(f"{day.log} gets there", until_c is None or len(solution.t_events[0]) == 1)
    return Solved(day, float(solution.t[-1]), solution.sol, rate)


def passing_s(solved, level_c, falling=False):
    """When a temperature is first passed, by bisection on the dense solution."""
    t = np.arange(solved.day.start_s, solved.end_s, 1.0)
    values = solved.state(t)[0]
    beyond = values <= level_c if falling else values >= level_c
    if not beyond.any():
        return None
    if beyond[0]:
        return float(t[0])
    low, high = t[beyond.argmax() - 1], t[beyond.argmax()]
    for _ in range(60):
        middle = (low + high) / 2
        if (solved.temperature(middle) >= level_c) != falling:
            high = middle
        else:
            low = middle
    return float(high)


def plate_rate(day, area_m2, model):
    def rate(t, c):
        gain = model["eta0"] * day.sun(t) - model["u_w_per_m2_k"] * (c - day.ambient(t))
        return area_m2 * gain / model["plate_heat_capacity_j_per_k"]

    return rate


def box_rate(day):
    capacity = BOX["water_kg"] * WATER_J_KG_K + BOX["vessel_heat_capacity_j_per_k"]
    area, model = BOX["intercept_area_m2"] * BOX_MODEL["f_prime"], BOX_MODEL

    def rate(t, c):
        gain = model["eta0"] * day.sun(t) - model["u_w_per_m2_k"] * (c - day.ambient(t))
        return area * gain / capacity

    return rate


def dish_capacity():
    return DISH["water_kg"] * WATER_J_KG_K + DISH["vessel_heat_capacity_j_per_k"]


def dish_rate(day):
    gain_m2 = DISH_MODEL["f_eta0"] * DISH["intercept_area_m2"]
    loss_w_per_k = DISH_MODEL["f_ul_w_per_m2_k"] * DISH["loss_area_m2"]

    def rate(t, c):
        return (gain_m2 * day.sun(t) - loss_w_per_k * (c - day.ambient(t))) / dish_capacity()

    return rate


# ----------------------------------------------------------------------------- logs


def stamp(date, t):
    second = round(t)
    return f"{date} {second // 3600:02}:{second % 3600 // 60:02}:{second % 60:02}"


def sample_times(solved, step_s):
    return np.arange(solved.day.start_s, solved.end_s + 1e-6, step_s)


def write_log(folder, name, rows, column, remark):
    target = HERE / folder
    target.mkdir(parents=True, exist_ok=True)
    head = [f"# Invented: made by tests/data/procedures.py. {remark}"]
    head.append(f"time,{column},ambient_c,irradiance_w_m2,wind_m_s")
    (target / name).write_text("\n".join(head + rows) + "\n", "utf-8")


def exact_log(folder, solved, step_s=60.0, column="water_c", name=None):
    """Readings without noise."""
    day, rows = solved.day, []
    for t in sample_times(solved, step_s):
        rows.append(
            f"{stamp(day.date, t)},{solved.temperature(t):.4f},{day.ambient(t):.4f},"
            f"{day.sun(t):.3f},{day.wind(t):.2f}"
        )
    write_log(folder, name or day.log, rows, column, "Without noise.")


def noisy_log(folder, solved, column="water_c"):
    """Readings with independent normal noise in temperatures and irradiance."""
    day, rows = solved.day, []
    for t in sample_times(solved, 60.0):
        c, air = RANDOM.normal(0.0, NOISE["temperature_sd_k"], 2)
        # A sensor in the dark reads nothing but its own zero here.
        light = RANDOM.normal(0.0, NOISE["irradiance_sd_w_m2"]) if day.sun(t) > 0 else 0.0
        rows.append(
            f"{stamp(day.date, t)},{solved.temperature(t) + c:.2f},{day.ambient(t) + air:.2f},"
            f"{day.sun(t) + light:.1f},{day.wind(t):.2f}"
        )
    remark = "Normal noise, 0.2 K (both temperatures) and 5 W/m², seeded."
    write_log(folder, day.log, rows, column, remark)


def dial_logs(folder, solved):
    """Every ten minutes, an oven's dial read to the nearest 5 °F: in °C, and as read."""
    day, celsius, fahrenheit = solved.day, [], []
    for t in sample_times(solved, 600.0):
        dial_f = 5 * round((solved.temperature(t) * 1.8 + 32) / 5)
        rest = f"{day.ambient(t):.1f},{day.sun(t):.0f},{day.wind(t):.1f}"
        celsius.append(f"{stamp(day.date, t)},{(dial_f - 32) / 1.8:.4f},{rest}")
        fahrenheit.append(f"{stamp(day.date, t)},{dial_f},{rest}")
    remark = "A dial read to 5 °F every ten minutes"
    write_log(folder, "dial-celsius.csv", celsius, "vessel_c", f"{remark}, put into °C.")
    write_log(
        folder, "dial-fahrenheit.csv", fahrenheit, "oven thermometer (°F)", f"{remark}."
    )


# ---------------------------------------------------------------------- true figures


def span_truth(solved, area_m2, water_kg, low_c, high_c):
    """Energy and exergy from one passing time to the other, exactly."""
    start, end = passing_s(solved, low_c), passing_s(solved, high_c)
    moved = solved.state(end) - solved.state(start)
    seconds = end - start
    sensible_j = water_kg * WATER_J_KG_K * (high_c - low_c)
    return {
        "from_c": low_c,
        "to_c": high_c,
        "from_after_s": start - solved.day.start_s,
        "to_after_s": end - solved.day.start_s,
        "mean_irradiance_w_m2": moved[1] / seconds,
        "mean_ambient_c": moved[2] / seconds,
        "energy_efficiency": sensible_j / (area_m2 * moved[1]),
        "exergy_gain_j": moved[4],
        "exergy_efficiency": moved[4] / (area_m2 * moved[3]),
    }


def run_truth(solved, given):
    t = sample_times(solved, 60.0)
    sun = np.array([solved.day.sun(s) for s in t])
    spans = {
        f"span_{low}_{high}": span_truth(
            solved, given["intercept_area_m2"], given["water_kg"], float(low), float(high)
        )
        for low, high in ((40, 90), (60, 90))
    }
    return {
        "date": solved.day.date,
        "start_clock": stamp("", solved.day.start_s).strip(),
        "readings": len(t),
        "irradiance_off_its_mean_percent": [
            float(100 * (sun.min() / sun.mean() - 1)), float(100 * (sun.max() / sun.mean() - 1))
        ],
        **spans,
    }


def dry_truth(solved, levels):
    """The hottest moment, where the plate stands still, and when it got where."""
    day = solved.day
    t = np.arange(day.start_s, solved.end_s, 1.0)
    top = float(t[solved.state(t)[0].argmax()])
    difference = solved.temperature(top) - day.ambient(top)
    passed = {level: passing_s(solved, level) for level in levels}
    return {
        "date": day.date,
        "start_clock": stamp("", day.start_s).strip(),
        "hottest_after_s": top - day.start_s,
        "hottest_c": solved.temperature(top),
        "ambient_then_c": day.ambient(top),
        "irradiance_then_w_m2": day.sun(top),
        "difference_then_k_m2_per_w": difference / day.sun(top),
        "initial_rate_k_per_min": solved.slope_k_per_min(day.start_s),
        "reached": [
            {"c": level, "after_s": None if s is None else s - day.start_s}
            for level, s in passed.items()
        ],
    }


def boiling_s(rate_of, sun_w_m2, ambient_c):
    """From ambient to 100 °C under a steady sun and air, by the equation."""
    day = Day("boiling", "", 0.0, ambient_c, lambda t: sun_w_m2, ambient_c, 0.0)
    return {
        "irradiance_w_m2": sun_w_m2,
        "ambient_c": ambient_c,
        "boiling_time_s": solve(day, rate_of(day), until_c=100.0).end_s,
    }


# ---------------------------------------------------------------------------- folders


def box():
    """(MC)' is of water and vessel, so F2 = F'·eta0·C_R with C_R = M c_w/(MC)'."""
    dry = Day("dry.csv", "2026-03-14", clock(9, 50), 24.0, horizontal_sun(852.0), 24.0)
    plate = solve(dry, plate_rate(dry, BOX["intercept_area_m2"], BOX_MODEL), until_s=clock(12, 50))
    sun = [dry.sun(t) for t in np.arange(clock(11, 35), clock(12, 16), 60.0)]
    must("the last sun is steady", max(sun) - min(sun) < 10.0)
    first = Day("water-1.csv", "2026-03-15", clock(10, 30), 40.0,
                horizontal_sun(860.0, 0.035, 5400.0, 0.4), 25.0)
    second = Day("water-2.csv", "2026-03-16", clock(9, 50), 40.0,
                 horizontal_sun(845.0, 0.03, 9000.0, 2.0), 23.0)
    days = [solve(d, box_rate(d), BOX["water_kg"] * WATER_J_KG_K, until_c=96.0)
            for d in (first, second)]
    # What a steady sun and a steady air do to the figures, apart and together.
    for log, date, air_rate in (
        ("water-steady.csv", "2026-03-19", 0.0), ("water-air-warms.csv", "2026-03-20", 1.0)
    ):
        d = Day(log, date, clock(10, 30), 40.0, lambda t: 850.0, 25.0, air_rate)
        days.append(solve(d, box_rate(d), BOX["water_kg"] * WATER_J_KG_K, until_c=96.0))
    exact_log("box", plate, column="vessel_c")
    exact_log("box", plate, 10.0, "vessel_c", "dry-10s.csv")
    noisy_log("box-noisy", plate, "vessel_c")
    for solved in days:
        exact_log("box", solved)
    for solved in days[:2]:
        noisy_log("box-noisy", solved)
    water = BOX["water_kg"] * WATER_J_KG_K
    ratio = water / (water + BOX["vessel_heat_capacity_j_per_k"])
    runs = {solved.day.log: run_truth(solved, BOX) for solved in days}
    for log, run in runs.items():
        off = run["irradiance_off_its_mean_percent"]
        must(f"{log} keeps within 10 % of its mean sun", -10 < off[0] and off[1] < 10)
    return {
        "given": BOX,
        "model": BOX_MODEL,
        "truth": {
            "f1_k_m2_per_w": BOX_MODEL["eta0"] / BOX_MODEL["u_w_per_m2_k"],
            "heat_capacity_ratio": ratio,
            "f2": BOX_MODEL["f_prime"] * BOX_MODEL["eta0"] * ratio,
            "boiling": boiling_s(box_rate, 800.0, 30.0),
        },
        "dry": {"dry.csv": dry_truth(plate, [100.0, 120.0, 150.0])},
        "water": runs,
    }


def dish():
    """The aperture is shaded in the cooling run: its log's irradiance is 0."""
    cold = Day("cooling.csv", "2026-03-14", clock(13, 30), 92.0, lambda t: 0.0, 26.0)
    cooling = solve(cold, dish_rate(cold), until_c=45.0)
    waves = lambda t: 720.0 * (1 + 0.05 * sin(2 * pi * t / 2400.0) + 0.03 * cos(2 * pi * t / 900.0))
    rising = lambda t: 660.0 * (1 + 0.08 * sin(pi * (t - clock(10, 55)) / 4800.0))
    first = Day("heating-1.csv", "2026-03-14", clock(11, 10), 30.0, waves, 24.0)
    second = Day("heating-2.csv", "2026-03-15", clock(10, 20), 30.0, rising, 22.0)
    days = [solve(d, dish_rate(d), DISH["water_kg"] * WATER_J_KG_K, until_c=96.0)
            for d in (first, second)]
    for solved in [cooling, *days]:
        exact_log("dish", solved)
        noisy_log("dish-noisy", solved)
    loss_w_per_k = DISH_MODEL["f_ul_w_per_m2_k"] * DISH["loss_area_m2"]
    runs = {solved.day.log: run_truth(solved, DISH) for solved in days}
    for log, run in runs.items():
        off = run["irradiance_off_its_mean_percent"]
        must(f"{log} keeps within 10 % of its mean sun", -10 < off[0] and off[1] < 10)
    return {
        "given": DISH,
        "model": DISH_MODEL,
        "truth": {
            "heat_capacity_j_per_k": dish_capacity(),
            "time_constant_s": dish_capacity() / loss_w_per_k,
            "loss_factor_w_per_m2_k": DISH_MODEL["f_ul_w_per_m2_k"],
            "optical_factor": DISH_MODEL["f_eta0"],
            "gain_m2": DISH_MODEL["f_eta0"] * DISH["intercept_area_m2"],
            "loss_w_per_k": loss_w_per_k,
            "boiling": boiling_s(dish_rate, 700.0, 30.0),
        },
        "cooling": {"cooling.csv": {
            "date": cold.date,
            "start_clock": stamp("", cold.start_s).strip(),
            "from_c": 92.0,
            "to_c": 45.0,
            "duration_s": cooling.end_s - cold.start_s,
        }},
        "water": runs,
    }


def dry_pot():
    sun = lambda t: 890.0 * cos(pi * (t - NOON_S) / (14 * HOUR_S)) ** 0.3
    day = Day("exact-60s.csv", "2026-03-17", clock(10), 24.0, sun, 24.0)
    pot = solve(day, plate_rate(day, POT_MODEL["area_m2"], POT_MODEL), until_s=clock(13))
    exact_log("dry-pot", pot, column="vessel_c")
    dial_logs("dry-pot", pot)
    return {
        "given": {"irradiance_plane": "normal"},
        "model": POT_MODEL,
        "dial": {"step_f": 5.0, "step_k": 5 / 1.8, "every_s": 600.0},
        "truth": {"difference_k_m2_per_w": POT_MODEL["eta0"] / POT_MODEL["u_w_per_m2_k"]},
        "dry": {"exact-60s.csv": dry_truth(pot, [100.0, 150.0])},
    }


def refused():
    """Logs that must give a finding instead of a figure, or a figure that says so."""
    day = Day("dry-rising.csv", "2026-03-18", clock(10, 50), 24.0, horizontal_sun(852.0), 24.0)
    heavy = {**BOX_MODEL, "plate_heat_capacity_j_per_k": 2400.0}
    rate = plate_rate(day, BOX["intercept_area_m2"], heavy)
    whole = solve(day, rate, until_s=clock(13))
    minutes = sample_times(whole, 60.0)
    end = next(t for t in minutes if whole.slope_k_per_min(t) <= 0.5)
    rising = solve(day, rate, until_s=float(end))
    last = np.arange(end - 600.0, end + 1.0, 60.0)
    line = np.polyfit(last / 60.0, rising.state(last)[0], 1)
    exact_log("refused", rising, column="vessel_c")

    sunny = Day("cooling-in-the-sun.csv", "2026-03-18", clock(13, 30), 50.0, lambda t: 400.0, 26.0)
    warms = solve(sunny, dish_rate(sunny), until_s=clock(14, 10))
    exact_log("refused", warms)

    late = Day("cooling-late.csv", "2026-03-18", clock(15), 38.0, lambda t: 0.0, 26.0)
    cools = solve(late, dish_rate(late), until_s=clock(17))
    exact_log("refused", cools)
    at = np.arange(late.start_s, cools.end_s, 1.0)
    above = cools.state(at)[0] - np.array([late.ambient(t) for t in at])
    truth = dry_truth(rising, [100.0])
    return {
        "dry-rising.csv": {
            "model": heavy,
            "given": {k: BOX[k] for k in ("intercept_area_m2", "irradiance_plane")},
            "rate_at_the_end_k_per_min": rising.slope_k_per_min(end),
            "line_of_the_last_ten_minutes_k_per_min": float(line[0]),
            "difference_at_the_end_k_m2_per_w": truth["difference_then_k_m2_per_w"],
            "f1_k_m2_per_w_if_it_had_gone_on": heavy["eta0"] / heavy["u_w_per_m2_k"],
        },
        "cooling-in-the-sun.csv": {
            "given": DISH,
            "model": DISH_MODEL,
            "beam_w_m2": 400.0,
            "from_c": 50.0,
            "to_c": warms.temperature(warms.end_s),
        },
        "cooling-late.csv": {
            "given": DISH,
            "model": DISH_MODEL,
            "above_ambient_at_start_k": 12.0,
            "above_ambient_at_end_k": float(above[-1]),
            "more_than_10_k_above_ambient_for_s": float(at[(above > 10).argmin()] - late.start_s),
            "time_constant_s": dish_capacity()
            / (DISH_MODEL["f_ul_w_per_m2_k"] * DISH["loss_area_m2"]),
        },
    }


def main():
    HERE.mkdir(exist_ok=True)
    content = {
        "made_by": MADE_BY,
        "note": "invented days; true figures of the equations in the script, no measurement, "
        "no published example",
        "site": SITE,
        "water_heat_capacity_j_per_kg_k": WATER_J_KG_K,
        "sun_temperature_k": SUN_K,
        "noise": {**NOISE, "note": "in the folders named -noisy, normal, independent; none in "
                  "the irradiance of the shaded cooling run"},
        "box": box(),
        "dish": dish(),
        "dry_pot": dry_pot(),
        "refused": refused(),
    }
    text = json.dumps(content, indent=1, ensure_ascii=False, allow_nan=False)
    (HERE / "truth.json").write_text(text + "\n", "utf-8")


if __name__ == "__main__":
    main()
