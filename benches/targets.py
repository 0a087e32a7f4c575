"""How much is done in the time of a plain script, all in one run on one machine.

    python benches/targets.py target/release/simmerline [FOLDER]

Needs pandas, matplotlib and polars (measured with those that `.ci/run` installs). Writes invented
campaigns below FOLDER (else a temporary one; 1.5 GB) and prints ratios, each with the limit set:
one report beside `plain_report.py`; 200 campaigns as PDF and as data alone; the same call again;
20 days at one reading a second beside polars' reading of the same files; memory with 200 and with
10,000 campaigns; and a year at one reading a second. Times are the fastest of several; memory is
the most that the system counts for the process.
"""

import json
import os
import pathlib
import resource
import shutil
import subprocess
import sys
import tempfile
import time

HERE = pathlib.Path(__file__).resolve().parent
SAMPLE = HERE.parent / "sample-runs" / "open-dish"
DAYS = 20
MANY = int(os.environ.get("SIMMERLINE_MANY", "10000"))

READ = """
import glob, sys, polars
for log in sorted(glob.glob(sys.argv[1] + "/*.csv")):
    polars.read_csv(log, try_parse_dates=True)
"""


def run(command, quiet=True):
    """Seconds, and the most memory, MB, of a command."""
    began = time.perf_counter()
    child = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    _, status, used = os.wait4(child.pid, 0)
    child.returncode = os.waitstatus_to_exitcode(status)
    if child.returncode != 0:
        sys.exit(f"{command}: exit code {child.returncode}")
    return time.perf_counter() - began, used.ru_maxrss / 1024


def fastest(command, times=5, before=lambda: None):
    found = []
    for _ in range(times):
        before()
        found.append(run(command)[0])
    return min(found)


def say(what, ratio, limit):
    print(f"{what:64} {ratio:8.4f}  limit {limit:.4f}  {'met' if ratio <= limit else 'MISSED'}", flush=True)


def copies(folder, count):
    """So many campaigns like the sample, each with a title of its own."""
    text = (SAMPLE / "campaign.toml").read_text(encoding="utf-8")
    logs = [(log.name, log.read_bytes()) for log in SAMPLE.glob("*") if log.name != "campaign.toml"]
    for number in range(count):
        campaign = folder / f"b{number % 10}" / f"c{number:05}"
        campaign.mkdir(parents=True)
        title = text.replace("bare pot", f"bare pot, no. {number}", 1)
        (campaign / "campaign.toml").write_text(title, encoding="utf-8")
        for name, content in logs:
            (campaign / name).write_bytes(content)


def seconds_of_days(folder, days):
    """Logs of whole days at one reading a second, as `year.py` writes them."""
    import datetime
    import math

    folder.mkdir(parents=True)
    runs = ""
    for number in range(days):
        date = datetime.date(2025, 1, 1) + datetime.timedelta(number)
        rows = ["time,water_c,ambient_c,irradiance_w_m2,wind_m_s\n"]
        for second in range(9 * 3600, 17 * 3600):
            hour = second / 3600
            water = 24 + 66 * (1 - math.exp(-max(0.0, hour - 9.5) / 2))
            sun = 900 * math.sin(math.pi * (hour - 6) / 12)
            clock = f"{second // 3600:02}:{second // 60 % 60:02}:{second % 60:02}"
            rows.append(f"{date} {clock},{water:.2f},{25 + 3 * math.sin(hour / 4):.2f},{sun:.1f},{0.4 + 0.2 * math.sin(second / 300):.2f}\n")
        (folder / f"{date}.csv").write_text("".join(rows))
        runs += f'[[run]]\nlog = "{date}.csv"\n'
    text = (HERE / "year.py").read_text(encoding="utf-8").split('CAMPAIGN = """')[1].split('"""')[0]
    (folder / "campaign.toml").write_text(text.split("[[run]]")[0] + runs)


def main(program, folder):
    program = str(pathlib.Path(program).resolve())
    reports = folder / "reports"

    def clear():
        shutil.rmtree(reports, ignore_errors=True)

    report = [program, "report", "--quiet", "--out", str(reports)]
    plain = fastest([sys.executable, str(HERE / "plain_report.py"), str(SAMPLE / "campaign.toml"), str(folder / "plain.pdf")], 3)
    print(f"plain script, one PDF: {plain:.2f} s; all below are ratios")
    one = fastest([*report, str(SAMPLE)], before=clear)
    say("one report as PDF / plain script", one / plain, 1 / 20)

    tree = folder / "200"
    copies(tree, 200)
    whole = fastest([*report, str(tree)], 2, clear)
    say("a PDF of a batch of 200 / plain script", whole / 200 / plain, 1 / 40)
    again = fastest([*report, str(tree)], 2)
    say("the same batch again / the first time", again / whole, 1 / 5)
    data = fastest([*report, "--format", "parquet", str(tree)], 2, clear)
    say("the data of one of a batch of 200 / plain script", data / 200 / plain, 1 / 200)
    again = fastest([*report, "--format", "parquet", str(tree)], 2)
    say("the same data again / the first time", again / data, 1 / 5)
    clear()
    few = run([*report, "--format", "parquet", str(tree)])[1]
    clear()
    few_pdf = run([*report, str(tree)])[1]
    print(f"memory, 200 campaigns: {few:.0f} MB as data, {few_pdf:.0f} MB as PDF")
    many_tree = folder / "many"
    copies(many_tree, MANY)
    clear()
    took, many = run([*report, "--format", "parquet", str(many_tree)])
    print(f"{MANY} campaigns as data: {took:.0f} s")
    say(f"memory of {MANY} campaigns / of 200, as data", many / few, 1.5)
    shutil.rmtree(many_tree)

    days = folder / "days"
    seconds_of_days(days, DAYS)
    ours = fastest([*report, "--format", "parquet", str(days)], before=clear)
    checked = fastest([program, "check", str(days)])
    read = fastest([sys.executable, "-c", READ, str(days)])
    bare = fastest([sys.executable, "-c", "import polars"])
    say(f"data of {DAYS} days at 1 Hz / polars reading them", ours / (read - bare), 1 / 2)
    print(f"   of which check: {checked / (read - bare):.2f}; polars: {(read - bare) / plain:.3f} of the plain script")


if __name__ == "__main__":
    if len(sys.argv) not in (2, 3):
        sys.exit(__doc__)
    if len(sys.argv) == 3:
        place = pathlib.Path(sys.argv[2])
        place.mkdir(parents=True)
        main(sys.argv[1], place)
    else:
        with tempfile.TemporaryDirectory() as place:
            main(sys.argv[1], pathlib.Path(place))
