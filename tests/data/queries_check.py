"""Runs the queries of the manual over `reports` here, and holds what they say against the JSON and
CSV of each campaign, as Python's own readers read them.

    python queries_check.py templates/manual/many.md

Exit code: 0 all agree, 1 something does not.
"""

import csv
import glob
import json
import os
import sys

# A neighbour is called statistics.py, as a module of Python that the readers import.
sys.path = [path for path in sys.path if path != os.path.dirname(os.path.abspath(__file__))]


def queries(manual):
    """The blocks of Python in a text, in their order."""
    parts = manual.split("```python\n")[1:]
    return [part.split("```")[0] for part in parts]


def places():
    """Every campaign's branch, name, and the stem of its files."""
    for record in glob.glob("reports/**/*.made.json", recursive=True):
        stem = record[: -len(".made.json")]
        branch, name = os.path.split(os.path.relpath(stem, "reports"))
        yield branch or "-", name, stem


def best_by_json():
    """What the query of campaigns must say."""
    rows = []
    for branch, name, stem in places():
        with open(f"{stem}.rating.json", encoding="utf-8") as file:
            results = json.load(file)
        if results["conformity"]["level"].startswith("conforms"):
            expanded = results["uncertainty"]["ps50_expanded_uncertainty_w"]
            rows.append((branch, name, results["rating"]["ps50_w"], expanded))
    return sorted(rows, key=lambda row: -row[2])


def used_by_csv():
    """What the query of intervals must say."""
    rows = []
    for branch, name, stem in places():
        with open(f"{stem}.intervals.csv", newline="", encoding="utf-8") as file:
            used = [row for row in csv.DictReader(file) if row["used"] == "true"]
        if used:
            irradiances = [float(row["irradiance_mean_w_m2"]) for row in used]
            rows.append((branch, name, len(used), sum(irradiances) / len(used)))
    return sorted(rows)


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    with open(sys.argv[1], encoding="utf-8") as file:
        found = {}
        for query in queries(file.read()):
            exec(query, found)
    problems = []
    if found["best"] != best_by_json():
        problems.append(f"best: {found['best']}, by JSON {best_by_json()}")
    used, expected = found["used"].rows(), used_by_csv()
    same = [row[:3] for row in used] == [row[:3] for row in expected] and all(
        # Sums in another order differ in the last digits.
        abs(one[3] - other[3]) < 1e-9 * other[3]
        for one, other in zip(used, expected)
    )
    if not same:
        problems.append(f"used: {used}, by CSV {expected}")
    if not (best_by_json() and len(expected) > 2):
        problems.append("too little to compare")
    for problem in problems:
        print(f"PROBLEM: {problem}")
    return 1 if problems else 0


if __name__ == "__main__":
    sys.exit(main())
