"""A year at one reading a second: time and memory beside polars alone, in one run.

Run from the project's folder after `cargo build --release`, with polars from PyPI
(measured with Python 3.11, polars 2.1.0):

    python3 benches/year.py FOLDER

Writes 1.3 GB of invented readings to FOLDER/year.csv, reads them in turn with
`polars.read_csv` and with `simmerline check`, three times each, and prints the ratio of
the fastest times, and the most memory that either took.
"""

import datetime
import math
import pathlib
import resource
import subprocess
import sys
import time

CAMPAIGN = """
[campaign]
title = "Invented year at one reading a second"
demonstration = true
[cooker]
name = "Invented year dish"
type = "concentrating"
intercept_area_m2 = 1.0
[site]
name = "Invented plain"
latitude_deg = -20.0
longitude_deg = 0.0
elevation_m = 100
time_zone = "UTC"
[load]
water_kg = 7.0
[instruments.irradiance]
plane = "normal"
[[run]]
log = "year.csv"
split = "daily"
"""

POLARS = """
import polars, sys
frame = polars.read_csv(sys.argv[1], try_parse_dates=True)
assert frame.shape == (365 * 86400, 5), frame.shape
"""


def write_year(path):
    """Every day is the same heating from 9:30 to 14:00, and cools after it."""
    clocks, values = [], []
    top = 75 * (1 - math.exp(-2.25))
    for second in range(86400):
        hour = second / 3600
        sun = max(0.0, 900 * math.sin(math.pi * (hour - 6) / 12))
        if hour < 9.5:
            warmed = 0.0
        elif hour < 14:
            warmed = 75 * (1 - math.exp(-(hour - 9.5) / 2))
        else:
            warmed = top * math.exp(-(hour - 14))
        ambient = 25 + 3 * math.sin(hour / 4)
        wind = 0.4 + 0.2 * math.sin(second / 300)
        clocks.append(f" {second // 3600:02}:{second // 60 % 60:02}:{second % 60:02}")
        values.append(f",{24 + warmed:.2f},{ambient:.2f},{sun:.1f},{wind:.2f}\n")
    with open(path, "w") as log:
        log.write("time,water_c,ambient_c,irradiance_w_m2,wind_m_s\n")
        for number in range(365):
            date = str(datetime.date(2025, 1, 1) + datetime.timedelta(number))
            log.write("".join(date + c + v for c, v in zip(clocks, values)))


def seconds(command):
    began = time.perf_counter()
    subprocess.run(command, check=True, stdout=subprocess.DEVNULL)
    return time.perf_counter() - began


folder = pathlib.Path(sys.argv[1])
folder.mkdir(parents=True, exist_ok=True)
(folder / "campaign.toml").write_text(CAMPAIGN)
if not (folder / "year.csv").exists():
    write_year(folder / "year.csv")
alone = [sys.executable, "-c", POLARS, str(folder / "year.csv")]
ours = ["target/release/simmerline", "check", str(folder)]
times = [(seconds(ours), seconds(alone)) for _ in range(3)]
fastest = [min(column) for column in zip(*times)]
print(f"simmerline check / polars alone: {fastest[0] / fastest[1]:.2f}")
peak = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss / 1024
print(f"most memory of either: {peak:.0f} MB")
