"""Holds a folder that `simmerline report --format parquet` wrote against outside readers.

    python3 frictionless_check.py FOLDER

frictionless, the reference library of the Data Package standard, validates
`datapackage.json`: its profile, the length and hash of every file, and every cell of every
table against its schema. pyarrow reads the Parquet files; the intervals must have the rows,
values and nulls of the CSV files, as Python's own csv reads them, and the campaigns those of
NAME.rating.json, as Python's own json reads it. Numbers must agree to the last bit.

Exit code: 0 all agree, 1 something does not (each is printed).
"""

import csv
import datetime
import hashlib
import json
import math
import os
import sys

# A neighbour is called statistics.py, as a module of Python that the readers import.
sys.path = [path for path in sys.path if path != os.path.dirname(os.path.abspath(__file__))]

import pyarrow.parquet  # noqa: E402
from frictionless import Package  # noqa: E402

# Columns of campaigns.parquet, and where rating.json has the same.
IN_RATING = {
    "cooker": ["cooker"],
    "demonstration": ["demonstration"],
    "intercept_area_m2": ["intercept_area_m2"],
    "ps50_w": ["rating", "ps50_w"],
    "ps50_expanded_uncertainty_w": ["uncertainty", "ps50_expanded_uncertainty_w"],
    "slope_w_per_k": ["regression", "slope_w_per_k"],
    "r_squared": ["regression", "r_squared"],
    "conformity": ["conformity", "level"],
    "tester": ["tester"],
    "report_number": ["report_number"],
}


def package_problems(folder):
    """What frictionless finds, and tables that it has not read as tables."""
    package = Package(os.path.join(folder, "datapackage.json"))
    for resource in package.resources:
        # frictionless does not hash Parquet.
        with open(os.path.join(folder, resource.path), "rb") as file:
            digest = hashlib.sha256(file.read()).hexdigest()
        if resource.hash != f"sha256:{digest}":
            yield f"{resource.path}: its hash is {digest}, stated {resource.hash}"
    report = package.validate()
    if not report.valid and not report.stats["errors"]:
        yield "frictionless: not valid"
    for error in report.flatten(["name", "rowNumber", "fieldName", "message"]):
        yield f"frictionless: {error}"
    for task in report.tasks:
        is_table = task.place.endswith((".csv", ".parquet"))
        rows = task.stats.get("rows", 0)
        print(f"{task.place}: {task.type}, {rows} rows, {'valid' if task.valid else 'not valid'}")
        if is_table and task.type != "table":
            yield f"{task.place}: frictionless has not read it as a table"


def as_kind(text, value):
    """A CSV cell as the kind of value that Parquet has in its place."""
    if text == "":
        return None
    if isinstance(value, bool):
        return {"true": True, "false": False}[text]
    if isinstance(value, float):
        return float(text)
    if isinstance(value, datetime.datetime):
        return datetime.datetime.fromisoformat(text)
    return text


def interval_problems(folder, names):
    """Where intervals.parquet is not what the CSV files are."""
    table = pyarrow.parquet.read_table(os.path.join(folder, "intervals.parquet"))
    for name in ("start", "end"):
        if str(table.schema.field(name).type) != "timestamp[us, tz=UTC]":
            yield f"intervals.parquet: {name} is {table.schema.field(name).type}"
    rows = table.to_pylist()
    cells = nulls = place = 0
    for name in names:
        with open(os.path.join(folder, f"{name}.intervals.csv"), newline="", encoding="utf-8") as file:
            for record in csv.DictReader(file):
                if place == len(rows):
                    yield f"{name}: more rows in CSV than in Parquet"
                    return
                row = rows[place]
                place += 1
                record["campaign"], record["branch"] = name, "-"
                record["start_local"], record["end_local"] = record["start"], record["end"]
                if set(record) != set(row):
                    yield f"columns differ: {set(record) ^ set(row)}"
                    return
                for column, text in record.items():
                    cells += 1
                    nulls += row[column] is None
                    if as_kind(text, row[column]) != row[column]:
                        yield f"{name}, row {place}, {column}: {text!r}, {row[column]!r}"
    if place != len(rows):
        yield f"intervals.parquet: {len(rows)} rows, the CSV files have {place}"
    print(f"intervals: {place} rows, {cells} cells compared, {nulls} of them null")


def campaign_problems(folder, rows):
    """Where campaigns.parquet is not what the rating.json files are."""
    for row in rows:
        with open(os.path.join(folder, f"{row['campaign']}.rating.json"), encoding="utf-8") as file:
            rating = json.load(file)
        for column, keys in IN_RATING.items():
            value = rating
            for key in keys:
                value = None if value is None else value[key]
            if row[column] != value:
                yield f"{row['campaign']}, {column}: {value!r}, {row[column]!r}"
        numbers = [value for value in row.values() if isinstance(value, float)]
        if not all(map(math.isfinite, numbers)):
            yield f"{row['campaign']}: a number that is not finite"
    print(f"campaigns: {len(rows)} rows")


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    folder = sys.argv[1]
    campaigns = pyarrow.parquet.read_table(os.path.join(folder, "campaigns.parquet")).to_pylist()
    problems = list(package_problems(folder))
    problems += interval_problems(folder, [row["campaign"] for row in campaigns])
    problems += campaign_problems(folder, campaigns)
    for problem in problems:
        print(f"PROBLEM: {problem}")
    return 1 if problems else 0


if __name__ == "__main__":
    sys.exit(main())
