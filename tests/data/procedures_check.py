#!/usr/bin/env python3
"""Outside values for exergy and for the heat that vessels hold.

    pip install numpy CoolProp iapws ht chemicals
    python3 tests/data/procedures_check.py

writes `procedures_check.json` beside itself:

- Petela's factor in 40-digit decimals (derived: our own arithmetic);
- the exergy that 1 kg of liquid water takes up at 101325 Pa, by two property
  libraries, beside the formula with a constant specific heat;
- specific heats of vessel materials: DIN EN 12524 (2000-07) as the package ht
  carries it, handbook values beside it.

It stops where the two libraries differ, or a factor is not the specification's.
"""

import json
import math
import platform
from decimal import Decimal, getcontext
from importlib.metadata import version
from pathlib import Path

from chemicals import heat_capacity
from CoolProp.CoolProp import PropsSI
from ht.insulation import ASHRAE, building_materials
from iapws import IAPWS95, IAPWS97

HERE = Path(__file__).parent
MADE_BY = {
    "script": "tests/data/procedures_check.py",
    "python": platform.python_version(),
    **{name: version(name) for name in ("CoolProp", "iapws", "ht", "chemicals")},
}
C_W = 4186.0
PRESSURE_PA = 101325.0
getcontext().prec = 40


def must(what, condition):
    if not condition:
        raise SystemExit(f"not as meant: {what}")


def petela():
    rows = []
    for sun in (5762, 5777, 5800):
        for ambient in (273, 278, 283, 288, 293, 298, 300, 303, 308, 313):
            x = Decimal(ambient) / Decimal(sun)
            factor = 1 - Decimal(4) / 3 * x + x**4 / 3
            rows.append({"sun_k": sun, "ambient_k": ambient, "factor": float(round(factor, 15))})
    stated = {5762: 0.930582, 5777: 0.930762, 5800: 0.931037}
    for row in rows:
        if row["ambient_k"] == 300:
            must(f"factor at {row['sun_k']} K",
                 abs(row["factor"] - stated[row["sun_k"]]) < 5e-7)
    return {
        "source": "Petela 1964, 1 − 4/3 (Ta/Ts) + 1/3 (Ta/Ts)⁴ (from memory, high); "
        "derived: our own arithmetic, 40 digits; the formula has no table of its own",
        "rows": rows,
    }


def by_coolprop(c):
    at = ("T", c + 273.15, "P", PRESSURE_PA, "Water")
    return PropsSI("H", *at), PropsSI("S", *at)


def by_iapws95(c):
    water = IAPWS95(T=c + 273.15, P=PRESSURE_PA / 1e6)
    return water.h * 1000, water.s * 1000


def by_iapws97(c):
    water = IAPWS97(T=c + 273.15, P=PRESSURE_PA / 1e6)
    return water.h * 1000, water.s * 1000


def water():
    rows = []
    for t1, t2 in ((20, 30), (50, 55), (60, 90), (80, 95)):
        for ambient in (10, 20, 30):
            row = {"from_c": t1, "to_c": t2, "ambient_c": ambient}
            for name, state in (
                ("coolprop", by_coolprop), ("iapws95", by_iapws95), ("iapws97", by_iapws97)
            ):
                (h1, s1), (h2, s2) = state(t1), state(t2)
                row[f"{name}_heat_j_per_kg"] = h2 - h1
                row[f"{name}_exergy_j_per_kg"] = h2 - h1 - (ambient + 273.15) * (s2 - s1)
            ratio = math.log((t2 + 273.15) / (t1 + 273.15))
            row["formula_heat_j_per_kg"] = C_W * (t2 - t1)
            row["formula_exergy_j_per_kg"] = C_W * (t2 - t1 - (ambient + 273.15) * ratio)
            found = row["coolprop_exergy_j_per_kg"]
            row["formula_off_percent"] = 100 * (row["formula_exergy_j_per_kg"] / found - 1)
            for other in ("iapws95", "iapws97"):
                # Differences of h and s: two formulations agree to well under a thousandth.
                must(f"libraries agree {t1} {t2} {ambient} {other}",
                     abs(row[f"{other}_exergy_j_per_kg"] - found) < 0.001 * abs(found) + 0.5)
            rows.append(row)
    return {
        "source": "h2 − h1 − Ta (s2 − s1) of liquid water at 101325 Pa: CoolProp (IAPWS-95), "
        "iapws (IAPWS-95 and IAPWS-IF97); formula: c [(T2 − T1) − Ta ln(T2/T1)], "
        "c 4186 J/(kg K). Negative where water below ambient is warmed.",
        "rows": rows,
    }


# Name in the package, second value in J/(kg K), where that is from.
MEMORY = "Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, appendix A, 300 K; memory"
MATERIALS = [
    ("aluminium", "Metals, aluminium alloys", 903.0, f"{MEMORY}, high (pure aluminium)"),
    ("cast iron", "Metals, iron, cast", 447.0, f"{MEMORY}, high, of pure iron: none of cast iron"),
    ("steel", "Metals, steel", 434.0, f"{MEMORY}, high (plain carbon steel)"),
    ("stainless steel", "Metals, stainless steel", 477.0, f"{MEMORY}, high (AISI 304)"),
    ("copper", "Metals, copper", 385.0, f"{MEMORY}, high (pure copper)"),
    ("brass", "Metals, brass", 380.0, f"{MEMORY}, high (cartridge brass)"),
    ("soda lime glass", "Glass, soda lime", 750.0, f"{MEMORY}, high (plate glass)"),
    ("ceramic or porcelain", "Tiles, ceramic or porcelain", None, None),
    ("fired clay", "Tiles, clay", 880.0, f"{MEMORY}, medium (clay as a material, not fired)"),
]
# The same from memory, before the package was looked into. Confidence: mine.
FROM_MEMORY = {
    "aluminium": (880.0, "high"), "cast iron": (450.0, "high"), "steel": (450.0, "high"),
    "stainless steel": (460.0, "high"), "copper": (380.0, "high"), "brass": (380.0, "high"),
    "soda lime glass": (750.0, "high"), "ceramic or porcelain": (840.0, "high"),
    "fired clay": (800.0, "medium"),
}
# A third value where the package has one: ASHRAE Handbook, Fundamentals.
ASHRAE_KEYS = {
    "soda lime glass": "Siding, Architectural (soda-lime float) glass",
    "fired clay": "Brick, fired clay, 1920 kg/m^3",
}
# Elements: molar heat in the CRC Handbook's table, and the molar mass (IUPAC, memory, high).
ELEMENTS = {
    "aluminium": ("7429-90-5", 26.9815),
    "cast iron": ("7439-89-6", 55.845),
    "steel": ("7439-89-6", 55.845),
    "copper": ("7440-50-8", 63.546),
}


def materials():
    rows = []
    for name, key, second, source in MATERIALS:
        table = building_materials[key][2]
        remembered, trust = FROM_MEMORY[name]
        row = {
            "material": name,
            "en_12524_j_per_kg_k": table,
            "en_12524_seen_as": f"ht.insulation.building_materials, {key}",
            "en_12524_from_memory_j_per_kg_k": remembered,
            "memory_trust": trust,
            "second_j_per_kg_k": second,
            "second_source": source,
            "second_off_percent": None if second is None else 100 * (second / table - 1),
        }
        must(f"{name}: memory and package agree", remembered == table)
        if name in ASHRAE_KEYS:
            row["ashrae_j_per_kg_k"] = ASHRAE[ASHRAE_KEYS[name]][1]
            row["ashrae_seen_as"] = f"ht.insulation.ASHRAE, {ASHRAE_KEYS[name]}"
        if name in ELEMENTS:
            cas, molar_g = ELEMENTS[name]
            molar = float(heat_capacity.CRC_standard_data.loc[cas]["Cps"])
            row["pure_element_25_c_j_per_kg_k"] = molar / molar_g * 1000
            row["pure_element_source"] = (
                f"CRC Handbook's standard properties in the package chemicals, {cas}, "
                f"{molar} J/(mol K)"
            )
        rows.append(row)
    return {
        "source": "DIN EN 12524 (2000-07), Building materials and products, tabulated design "
        "values (now in ISO 10456), as the Python package ht carries it, which cites it; the "
        "standard itself was not seen. At room temperature; metals hold some per cent more at "
        "100 °C (memory, medium).",
        "rows": rows,
    }


def main():
    content = {
        "made_by": MADE_BY,
        "petela_factor": petela(),
        "water_exergy": water(),
        "specific_heats": materials(),
    }
    text = json.dumps(content, indent=1, ensure_ascii=False, allow_nan=False)
    (HERE / "procedures_check.json").write_text(text + "\n", "utf-8")
    for row in content["water_exergy"]["rows"]:
        print({k: round(v, 3) for k, v in row.items()})
    for row in content["specific_heats"]["rows"]:
        print(row["material"], row["en_12524_j_per_kg_k"], row["second_j_per_kg_k"],
              row.get("pure_element_25_c_j_per_kg_k"))


if __name__ == "__main__":
    main()
