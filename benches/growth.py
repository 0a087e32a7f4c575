"""How work grows with what a campaign holds: twice and four times as much, in processor time.

    python3 benches/growth.py target/release/simmerline [check|report]

Every campaign is invented and stands in a temporary folder. Twice as much should take twice
as long at most, beyond what starting takes; the largest of each is what the bounds allow.
"""

import datetime
import math
import pathlib
import resource
import subprocess
import sys
import tempfile

HEAD = """[campaign]
title = "Invented, for its size"
demonstration = true
[cooker]
name = "Mallee trough (invented)"
type = "concentrating"
intercept_area_m2 = 1.0
[site]
name = "Nowhere flats (invented)"
latitude_deg = -20.0
longitude_deg = 0.0
elevation_m = 100
time_zone = "UTC"
[load]
water_kg = 7.0
[instruments.irradiance]
plane = "normal"
"""
HEADER = "time,water_c,ambient_c,irradiance_w_m2,wind_m_s"
ONE_RUN = '[[run]]\nlog = "a.csv"\n'


def day(index):
    return datetime.date(2000, 1, 1) + datetime.timedelta(days=index)


def rows(date, more="", count=82, step_s=120):
    start = datetime.datetime.combine(date, datetime.time(10, 5))
    for index in range(count):
        after_s = index * step_s
        water_c = min(26 + 91 * (1 - math.exp(-after_s / 8600)), 92)
        time = start + datetime.timedelta(seconds=after_s)
        yield f"{time},{water_c:.2f},26.0,{880 + date.day % 7},0.4{more}\n"


def log(*days, headers="", more="", count=82, step_s=120):
    of_days = ("".join(rows(date, more, count, step_s)) for date in days)
    return f"{HEADER}{headers}\n" + "".join(of_days)


def columns(count):
    headers = "".join(f",channel {index}" for index in range(count - 5))
    return {"a.csv": log(day(0), headers=headers, more=",1.5" * (count - 5))}, ONE_RUN


def runs(count):
    logs = {f"{index}.csv": log(day(index)) for index in range(count)}
    return logs, "".join(f'[[run]]\nlog = "{name}"\n' for name in logs)


def runs_of_one_log(count):
    days = [day(index) for index in range(count)]
    text = "".join(f'[[run]]\nlog = "a.csv"\ndate = {date}\n' for date in days)
    return {"a.csv": log(*days)}, text


def runs_split_daily(count):
    days = [day(index) for index in range(count)]
    return {"a.csv": log(*days)}, ONE_RUN + 'split = "daily"\n'


def spans(count):
    span = '[[run.exclude]]\nfrom = "11:00"\nto = "11:00:30"\nreason = "smoke"\n'
    return {"a.csv": log(day(0))}, ONE_RUN + span * count


def dry_vessel_tests(count):
    one = "[[stagnation]]\ndate = {}\nplateau_c = 150\nambient_c = 25\nirradiance_w_m2 = 900\n"
    tests = "".join(one.format(day(index)) for index in range(count))
    return {"a.csv": log(day(0))}, ONE_RUN + tests


def calibration_points(count):
    points = ", ".join(f"[{200 * n / count}, {200 * n / count + 0.1}]" for n in range(count))
    curve = f'[[calibration]]\ncolumn = "water_c"\npoints = [{points}]\n'
    return {"a.csv": log(day(0), count=10_000, step_s=1)}, ONE_RUN + curve


def unknown_keys(count):
    keys = "".join(f"key-{index} = 1\n" for index in range(count))
    return {"a.csv": log(day(0))}, ONE_RUN + "[limits]\n" + keys


def lines_around(count):
    before = "".join(f"line {index}, before\n" for index in range(count))
    after = "".join(f"line {index}, after\n" for index in range(count))
    form = f"[format]\nheader_line = {count + 1}\n"
    return {"a.csv": before + log(day(0)) + after}, form + ONE_RUN


CASES = [
    (columns, 250),
    (runs, 500),
    (runs_of_one_log, 500),
    (runs_split_daily, 500),
    (spans, 2_500),
    (dry_vessel_tests, 250),
    (calibration_points, 250),
    (unknown_keys, 40_000),
    (lines_around, 20_000),
]


def processor_s(arguments):
    def children_s():
        used = resource.getrusage(resource.RUSAGE_CHILDREN)
        return used.ru_utime + used.ru_stime

    before_s = children_s()
    subprocess.run(arguments, capture_output=True, check=False)
    return children_s() - before_s


def main():
    program = str(pathlib.Path(sys.argv[1]).resolve())
    command = sys.argv[2] if len(sys.argv) > 2 else "check"
    for case, least in CASES:
        took = []
        for count in (least, 2 * least, 4 * least):
            with tempfile.TemporaryDirectory() as folder:
                logs, text = case(count)
                for name, content in {**logs, "campaign.toml": HEAD + text}.items():
                    (pathlib.Path(folder) / name).write_text(content)
                out = ["--out", f"{folder}/reports"] if command == "report" else []
                took.append(processor_s([program, command, folder, *out]))
        ratios = f"{took[1] / took[0]:.1f} {took[2] / took[1]:.1f}"
        times = " ".join(f"{seconds:.2f}" for seconds in took)
        print(f"{case.__name__:20} {least:6} ×1 ×2 ×4: {times} s; ratios {ratios}", flush=True)


main()
