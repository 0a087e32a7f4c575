#!/usr/bin/env python3
"""One invented campaign in many dresses, and campaigns that must be refused.

Writes `tests/data/dresses/`: `canonical/`, a folder a dress, `broken/` and
`README.md`. Everything is invented: cooker, place, people, loggers, readings.
Each dress holds the readings of `canonical` to 1e-9 after conversion, so it must
give the rating of `canonical`.

How to run it, from the root of the repository:

    python3 -m venv VENV
    VENV/bin/pip install pandas==3.1.1 openpyxl==3.1.5 odfpy==1.4.1 numpy==2.4.6
    VENV/bin/python tests/data/dresses.py                 # write, then check
    VENV/bin/python tests/data/dresses.py --check         # check only
    VENV/bin/python tests/data/dresses.py --libreoffice   # also convert anew

Made with Python 3.11.7, the packages above and tzdata 2026.6 of PyPI. The logs
of the `libreoffice-*` dresses are made by LibreOffice 7.4.7.2 of Debian 12
(`apt-get install libreoffice-calc --no-install-recommends`), only if asked for;
`CONVERSIONS` below holds the commands. Runs without `--libreoffice` leave them.

With these versions the same program gives the same files, byte for byte; another
zlib may pack gzip, xlsx and ods otherwise. LibreOffice's files carry the time of
saving.

The check reads every dress back from disk with pandas, undoes the conversion with
factors of its own (`BACK`), and compares times to 1 ms and values to 1e-9.

Conversion factors. Exact by definition: foot 0.3048 m, mile 1609.344 m, nautical
mile 1852 m, 0 degC = 273.15 K, degF = 1.8 degC + 32 (NIST SP 811, from memory).
BTU: International Table, 1055.05585262 J (same source, from memory).
"""

import argparse
import gzip
import io
import re
import shutil
import subprocess
import sys
import tempfile
import zipfile
from datetime import datetime, timedelta, timezone
from decimal import Decimal
from pathlib import Path
from zoneinfo import ZoneInfo

import numpy as np
import openpyxl
import pandas as pd
from odf.opendocument import OpenDocumentSpreadsheet
from odf.table import Table, TableCell, TableRow
from odf.text import P

ROOT = Path(__file__).resolve().parent / "dresses"
ZONE = ZoneInfo("Australia/Sydney")
UTC = timezone.utc
VERSIONS = f"Python {sys.version.split()[0]}"
PANDAS = f"pandas {pd.__version__}"
OPENPYXL = f"openpyxl {openpyxl.__version__}"
ODFPY = "odfpy 1.4.1"
LIBREOFFICE = "LibreOffice 7.4.7.2"

# ------------------------------------------------------------ the base campaign

#: Local start of each day. 24/02 settles the order of day and month; 04/03 and
#: 12/03 can be read both ways, and both ways lie in summer time.
STARTS = [
    datetime(2026, 2, 24, 11, 30),
    datetime(2026, 3, 4, 11, 36),
    datetime(2026, 3, 12, 11, 42),
]
ROWS = 51
STEP = timedelta(minutes=2)


class Row:
    """One reading; numbers are Decimals, as the instruments show them."""

    def __init__(self, t, water, ambient, sun, wind):
        self.t, self.water, self.ambient, self.sun, self.wind = t, water, ambient, sun, wind


def base():
    """Three days of lumped heating: m c dT/dt = eta A G - U (T - Ta)."""
    noise = np.random.Generator(np.random.PCG64(20260224))
    capacity = 7.0 * 4186.0 + 900.0
    days = []
    for number, start in enumerate(STARTS):
        eta = 0.475 + 0.004 * (number - 1)
        loss = 3.2
        sun0 = [835.0, 860.0, 815.0][number]
        air0 = [25.2, 26.4, 24.6][number]
        water = air0 + [6.4, 6.0, 6.2][number]
        slow_sun = slow_wind = 0.0
        rows = []
        for index in range(ROWS):
            share = index / (ROWS - 1)
            slow_sun = 0.8 * slow_sun + noise.normal(0.0, 4.0)
            slow_wind = 0.7 * slow_wind + noise.normal(0.0, 0.10)
            sun = sun0 + 45.0 * np.sin(np.pi * (0.2 + 0.6 * share)) + slow_sun
            air = air0 + 2.2 * share + noise.normal(0.0, 0.05)
            wind = min(0.9, max(0.1, 0.5 + slow_wind))
            seen = water + noise.normal(0.0, 0.05)
            rows.append(
                Row(
                    start + index * STEP,
                    Decimal(f"{seen:.1f}"),
                    Decimal(f"{air:.1f}"),
                    Decimal(f"{sun:.0f}"),
                    Decimal(f"{wind:.1f}"),
                )
            )
            for _ in range(24):
                net = eta * 1.0 * sun - loss * (water - air)
                water += net * 5.0 / capacity
        waters = [row.water for row in rows]
        assert waters == sorted(set(waters)), "the water must rise from reading to reading"
        days.append(rows)
    for row in (row for rows in days for row in rows):
        assert 700 <= row.sun <= 950 and 24 <= row.ambient <= 30 and row.wind < 1
        assert row.ambient + 5 <= row.water <= Decimal("93.5"), (row.t, row.water, row.ambient)
    return days


DAYS = base()

# -------------------------------------------------------------- campaign files

HEAD = """\
# Invented data, made by tests/data/dresses.py: {what}.

[campaign]
title = "Teasel dish in many dresses (invented)"
demonstration = true
procedure = "S580.1"
tester = "V. Exempla (invented)"

[cooker]
name = "Teasel dish (invented)"
type = "concentrating"
intercept_area_m2 = 1.0

[site]
name = "Bindweed paddock (invented)"
latitude_deg = -31.6
longitude_deg = 147.2
elevation_m = 240
time_zone = "Australia/Sydney"

[load]
water_kg = 7.0
{load}
[instruments.irradiance]
plane = "normal"
{irradiance}"""

RUN = '[[run]]\nlog = "{log}"\n{more}'


def toml(what, runs=None, more="", load="", irradiance="", log="day-{n}.csv", run=""):
    """A campaign file; `{n}`, `{date}`, `{clock}` in `log` and `run` are the day's."""
    if runs is None:
        runs = []
        for n, start in enumerate(STARTS, 1):
            day = dict(n=n, date=f"{start:%Y-%m-%d}", clock=f"{start:%H:%M}")
            filled = run
            for key, value in day.items():
                filled = filled.replace("{" + key + "}", str(value))
            runs.append(RUN.format(log=log.replace("{n}", str(n)), more=filled))
    lines = lambda text: text.rstrip("\n") + "\n" if text else ""
    parts = [HEAD.format(what=what, load=lines(load), irradiance=lines(irradiance))]
    if more:
        parts.append(lines(more))
    parts += [lines(one) for one in runs]
    return "\n".join(part.rstrip("\n") + "\n" for part in parts)


# ------------------------------------------------------------- cells and texts

CANONICAL = ["time", "water_c", "ambient_c", "irradiance_w_m2", "wind_m_s"]
PLAIN = ["Time", "Water", "Ambient", "Irradiance", "Wind"]
FOOT = Decimal("0.3048")


def shown(value, mark="."):
    """A number without exponent; twelve decimals at most."""
    value = Decimal(value)
    if value != value.quantize(Decimal("1e-12")):
        value = value.quantize(Decimal("1e-12"))
    text = f"{value:f}"
    return text.replace(".", mark)


def iso(t):
    return f"{t:%Y-%m-%d %H:%M:%S}"


def utc(t):
    return t.replace(tzinfo=ZONE).astimezone(UTC)


def epoch_s(t):
    return int(utc(t).timestamp())


def serial(t):
    """Days since 1899-12-30, to ten decimals, as a spreadsheet shows fifteen digits."""
    day = Decimal((t - datetime(1899, 12, 30)) // timedelta(seconds=1)) / 86400
    return f"{day:.10f}"


def twelve(t, am="AM", pm="PM"):
    return f"{(t.hour - 1) % 12 + 1}:{t:%M}", am if t.hour < 12 else pm


def fahrenheit(c):
    return c * Decimal("1.8") + 32


WATER, AMBIENT = (lambda r: r.water), (lambda r: r.ambient)
SUN, WIND = (lambda r: r.sun), (lambda r: r.wind)
WATER_F, AMBIENT_F = (lambda r: fahrenheit(r.water)), (lambda r: fahrenheit(r.ambient))
SUN_KW = lambda r: r.sun / 1000
SUN_MV = lambda r: r.sun * Decimal("12.4") / 1000
SUN_UV = lambda r: r.sun * Decimal("12.4")
WIND_KMH = lambda r: r.wind * Decimal("3.6")
WIND_MPH = lambda r: r.wind * 3600 / Decimal("1609.344")
WIND_KN = lambda r: r.wind * 3600 / 1852
WIND_FTMIN = lambda r: r.wind * 60 / FOOT
SUN_BTU = lambda r: r.sun * 3600 * FOOT * FOOT / Decimal("1055.05585262")


def lines_of(rows, header=None, cells=None, times=(iso,), mark=".", sep=",", quote=False, tail=""):
    """Header and rows as text lines. `cells` are functions of a row."""
    header = header if header is not None else CANONICAL
    cells = cells if cells is not None else [WATER, AMBIENT, SUN, WIND]

    def join(parts):
        parts = [str(part) for part in parts]
        if quote:
            parts = ['"' + part.replace('"', '""') + '"' for part in parts]
        elif len(sep) == 1:
            parts = [f'"{part}"' if sep in part else part for part in parts]
        return sep.join(parts) + tail

    lines = [join(header)] if header else []
    for row in rows:
        stamp = [form(row.t) for form in times]
        rest = [cell(row) for cell in cells]
        rest = [value if isinstance(value, str) else shown(value, mark) for value in rest]
        lines.append(join(stamp + rest))
    return lines


def encode(lines, encoding="utf-8", end="\n"):
    """Text lines to bytes; UTF-16 with a byte order mark."""
    text = end.join(lines) + end
    mark = {"utf-16-le": b"\xff\xfe", "utf-16-be": b"\xfe\xff"}.get(encoding, b"")
    return mark + text.encode(encoding)


def squeeze(data):
    """gzip without a time stamp."""
    out = io.BytesIO()
    with gzip.GzipFile(filename="", mode="wb", fileobj=out, mtime=0) as file:
        file.write(data)
    return out.getvalue()


def settle_zip(data):
    """The same archive without times of saving."""
    source = zipfile.ZipFile(io.BytesIO(data))
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as target:
        for entry in source.infolist():
            content = source.read(entry)
            if entry.filename in ("docProps/core.xml", "meta.xml"):
                content = re.sub(rb"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d", b"2026-03-13T08:00:00", content)
            info = zipfile.ZipInfo(entry.filename, (1980, 1, 1, 0, 0, 0))
            info.compress_type = entry.compress_type
            info.external_attr = entry.external_attr
            target.writestr(info, content)
    return out.getvalue()


def workbook(sheets, date_format=None):
    """An .xlsx of sheets, each a name and rows of cells.

    The `date_format` "m/d/yy h:mm" is number 22 of those built in, which
    spreadsheets show in the manner of their locale.
    """
    book = openpyxl.Workbook()
    book.remove(book.active)
    for name, rows in sheets:
        sheet = book.create_sheet(name)
        for row in rows:
            sheet.append([float(c) if isinstance(c, Decimal) else c for c in row])
            if date_format and isinstance(row[0], datetime):
                sheet.cell(sheet.max_row, 1).number_format = date_format
    out = io.BytesIO()
    book.save(out)
    return settle_zip(out.getvalue())


def cells_of(rows, header=None, stamp=lambda t: [t], cells=None):
    cells = cells or [WATER, AMBIENT, SUN, WIND]
    return [header or CANONICAL] + [stamp(r.t) + [cell(r) for cell in cells] for r in rows]


PREAMBLE = [
    "Tracebox TB-0 (invented)",
    "Serial number,000417",
    "Software version,2.31",
    "Operator,V. Exempla (invented)",
    "Exported,2026-03-13 18:04:00",
    "Logging interval,00:02:00",
]

# -------------------------------------------------------------------- checking

#: Factors back to degC, W/m2 and m/s, written independently of those above.
BACK = {
    "f": lambda x: (x - 32.0) * 5.0 / 9.0,
    "k": lambda x: x - 273.15,
    "kw": lambda x: x * 1e3,
    "btu": lambda x: x * (1055.05585262 / (3600.0 * 0.09290304)),
    "mv": lambda x: x * 1e-3 / 12.4e-6,
    "uv": lambda x: x * 1e-6 / 12.4e-6,
    "v": lambda x: x / 12.4e-6,
    "ma": lambda x: x / 0.15,
    "a": lambda x: x * 1e3 / 0.15,
    "kmh": lambda x: x / 3.6,
    "mph": lambda x: x * 0.44704,
    "kn": lambda x: x * (1852.0 / 3600.0),
    "ftmin": lambda x: x * 0.00508,
}
NAMES = ["time", "water", "ambient", "sun", "wind"]


def read_csv(path, keep=None, encoding="utf-8", **how):
    """A log as pandas reads it; `keep` is what a line with readings looks like."""
    if keep is None:
        return pd.read_csv(path, encoding=encoding, **how)
    opener = gzip.open if path.suffix == ".gz" else open
    with opener(path, "rb") as file:
        text = file.read().decode(encoding)
    kept = [line for line in re.split(r"\r\n|\r|\n", text) if re.match(keep, line)]
    return pd.read_csv(io.StringIO("\n".join(kept)), header=None, **how)


def stamp_back(df, **how):
    return pd.to_datetime(df.iloc[:, 0], **how)


def two_stamps(df, **how):
    return pd.to_datetime(df.iloc[:, 0].astype(str) + " " + df.iloc[:, 1].astype(str), **how)


def tidy(df, n, when=None, pick=None, conv=None):
    """A frame to instants and canonical numbers; `pick` are columns or functions."""
    stamp = when(df, n) if when else stamp_back(df)
    stamp = pd.Series(pd.to_datetime(stamp)).reset_index(drop=True)
    if stamp.dt.tz is None:
        stamp = stamp.dt.tz_localize("Australia/Sydney")
    out = {"time": stamp.dt.tz_convert("UTC")}
    for name, where in zip(NAMES[1:], pick or [1, 2, 3, 4]):
        column = where(df) if callable(where) else df.iloc[:, where]
        values = np.asarray(column, dtype=float)
        unit = (conv or {}).get(name)
        out[name] = BACK[unit](values) if unit else values
    return pd.DataFrame(out)


def by_day(suffix=".csv", when=None, pick=None, conv=None, **how):
    def back(folder):
        frames = [read_csv(folder / f"day-{n}{suffix}", **how) for n in (1, 2, 3)]
        return [tidy(df, n, when, pick, conv) for n, df in enumerate(frames, 1)]

    return back


def by_sheet(suffix=".xlsx", when=None, pick=None, conv=None, name="day-{n}", **how):
    def back(folder):
        out = []
        for n in (1, 2, 3):
            options = {k: v.replace("{n}", str(n)) if isinstance(v, str) else v for k, v in how.items()}
            df = pd.read_excel(folder / (name.replace("{n}", str(n)) + suffix), **options)
            out.append(tidy(df, n, when, pick, conv))
        return out

    return back


def base_frame():
    rows = [row for rows in DAYS for row in rows]
    return pd.DataFrame(
        {
            "time": pd.to_datetime([utc(r.t) for r in rows]),
            "water": [float(r.water) for r in rows],
            "ambient": [float(r.ambient) for r in rows],
            "sun": [float(r.sun) for r in rows],
            "wind": [float(r.wind) for r in rows],
        }
    )


def check(dress):
    """Compares a dress on disk with the base; the number of readings compared."""
    want = base_frame()
    got = pd.concat(dress.back(ROOT / dress.name)).sort_values("time").reset_index(drop=True)
    assert len(got) == len(want), f"{dress.name}: {len(got)} readings, expected {len(want)}"
    apart = (got["time"] - want["time"]).abs().max()
    assert apart <= pd.Timedelta(milliseconds=1), f"{dress.name}: times {apart} apart"
    for name in NAMES[1:]:
        apart = np.abs(got[name].to_numpy() - want[name].to_numpy()).max()
        assert apart <= 1e-9, f"{dress.name}: {name} {apart} apart"
    return len(got)


# --------------------------------------------------------------------- dresses


class Dress:
    def __init__(self, name, what, toml, files, back, made=None):
        self.name, self.what, self.toml = name, what, toml
        self.files, self.back, self.made = files, back, made or VERSIONS


DRESSES = []


def add(name, what, files, back, made=None, **campaign):
    DRESSES.append(Dress(name, what, toml(what, **campaign), files, back, made))


def days(form, suffix=".csv"):
    """A file a day; `form` makes its bytes from the day's rows."""
    return {f"day-{n}{suffix}": form(rows) for n, rows in enumerate(DAYS, 1)}


def text(**how):
    """A form for `days`: text lines of these options, with encoding and line end."""
    encoding, end = how.pop("encoding", "utf-8"), how.pop("end", "\n")
    return lambda rows: encode(lines_of(rows, **how), encoding, end)


def encodings_and_lines():
    add("utf8-bom", "UTF-8 with byte order mark", days(text(encoding="utf-8-sig")), by_day())
    add("utf16-le", "UTF-16 LE with byte order mark", days(text(encoding="utf-16-le")), by_day(encoding="utf-16"))
    add("utf16-be", "UTF-16 BE with byte order mark", days(text(encoding="utf-16-be")), by_day(encoding="utf-16"))
    header = ["Date et heure", "Température eau (°C)", "Température ambiante (°C)", "Éclairement (W/m²)", "Vent (m/s)"]
    add("windows-1252", "Windows-1252; French headers with °, ², é", days(text(header=header, encoding="cp1252")), by_day(encoding="cp1252"))
    header = ["Zeit", "Wasser (°C)", "Umgebung (°C)", "Globalstrahlung für Kocher (W/m²)", "Wind (m/s)"]
    add("latin-1-key", "Latin-1, encoding by key; a header with ü named under [columns]", days(text(header=header, encoding="latin-1")), by_day(encoding="latin-1"),
        more='[columns]\nirradiance = "Globalstrahlung für Kocher (W/m²)"\n\n[format]\nencoding = "windows-1252"')
    add("cr", "CR line ends", days(text(end="\r")), by_day())
    add("crlf", "CRLF line ends", days(text(end="\r\n")), by_day())
    add("gzip", "gzip", days(lambda rows: squeeze(text()(rows)), ".csv.gz"), by_day(".csv.gz"), log="day-{n}.csv.gz")


def delimiters():
    semi = dict(sep=";", mark=",")
    add("semicolon-decimal-comma", "semicolons and decimal commas", days(text(**semi)), by_day(sep=";", decimal=","))
    add("tab", "tabs", days(text(sep="\t"), ".txt"), by_day(".txt", sep="\t"), log="day-{n}.txt")
    add("tab-decimal-comma", "tabs and decimal commas", days(text(sep="\t", mark=","), ".tsv"), by_day(".tsv", sep="\t", decimal=","), log="day-{n}.tsv")
    add("pipe", "pipes", days(text(sep="|")), by_day(sep="|"))
    stamp = lambda t: f"{t:%Y-%m-%dT%H:%M:%S}"

    def padded(rows, header=CANONICAL, times=(stamp,)):
        table = [header] + [[form(r.t) for form in times] + [shown(f(r)) for f in (WATER, AMBIENT, SUN, WIND)] for r in rows]
        wide = [max(len(line[i]) for line in table) for i in range(len(table[0]))]
        lines = ["   ".join(cell.rjust(width) for cell, width in zip(line, wide)) for line in table]
        return encode(lines)

    add("spaces", "runs of spaces, right-aligned, time with T", days(padded, ".txt"), by_day(".txt", sep=r"\s+"), log="day-{n}.txt")
    both = (lambda t: f"{t:%Y-%m-%d}", lambda t: f"{t:%H:%M:%S}")
    add("spaces-date-clock", "runs of spaces, date and clock in two columns",
        days(lambda rows: padded(rows, ["date", "time", *CANONICAL[1:]], both), ".txt"),
        by_day(".txt", when=lambda df, n: two_stamps(df), pick=[2, 3, 4, 5], sep=r"\s+"), log="day-{n}.txt")
    add("quoted-decimal-comma", "commas, every field quoted, decimal commas", days(text(mark=",", quote=True)), by_day(decimal=","))
    add("pipe-key", "pipes, delimiter and decimal mark by key", days(text(sep="|", end="\r\n")), by_day(sep="|"),
        more='[format]\ndelimiter = "|"\ndecimal_mark = "."')


def surroundings():
    add("preamble", "six lines before the header: serial number, software version, an export date",
        days(lambda rows: encode(PREAMBLE + lines_of(rows))), by_day(skiprows=6))
    add("preamble-key", "the same, header_line = 7",
        days(lambda rows: encode(PREAMBLE + lines_of(rows))), by_day(skiprows=6), more="[format]\nheader_line = 7")
    header = ["Time", "Water temperature", "Ambient temperature", "Irradiance", "Wind speed"]
    units = ["yyyy-mm-dd hh:mm:ss", "°C", "°C", "W/m²", "m/s"]

    def units_row(rows):
        lines = lines_of(rows, header=header)
        return encode([lines[0], ",".join(units), *lines[1:]])

    add("units-row", "a row of units under the header", days(units_row), by_day(skiprows=[1]))

    def units_row_f(rows):
        lines = lines_of(rows, header=header, cells=[WATER_F, AMBIENT_F, SUN_KW, WIND_KMH])
        return encode([lines[0], ",°F,°F,kW/m²,km/h", *lines[1:]])

    add("units-row-other", "a row of units under the header: °F, kW/m², km/h", days(units_row_f),
        by_day(skiprows=[1], conv=dict(water="f", ambient="f", sun="kw", wind="kmh")))

    def remarks(rows):
        lines = lines_of(rows)
        return encode([*lines[:12], "# lid looked at, 1 min", *lines[12:30], "# turned after the sun, by hand", "#", *lines[30:]])

    add("comments", "# comments in mid-file", days(remarks), by_day(comment="#"))

    def footer(rows):
        mean = lambda f: f"{sum(f(r) for r in rows) / len(rows):.2f}"
        summary = ",".join(["Mean of 51 readings", *(mean(f) for f in (WATER, AMBIENT, SUN, WIND))])
        return encode([*lines_of(rows), "", summary, "end of data"])

    add("footer", "footer: a blank line, a summary line, \"end of data\"", days(footer), by_day(keep=r"\d{4}-"))
    add("trailing-delimiters", "a delimiter at the end of every line", days(text(tail=",")), by_day())

    def trailing_rows(rows):
        lines = lines_of(rows)
        return encode([lines[0], *(line + "," for line in lines[1:])])

    add("trailing-delimiters-rows", "a delimiter at the end of every row, not of the header", days(trailing_rows), by_day(index_col=False))

    def again(rows):
        lines = lines_of(rows)
        return encode([*PREAMBLE, *lines[:24], "", *PREAMBLE, *lines[:1], *lines[24:]])

    add("header-again", "preamble and header again in mid-file", days(again), by_day(keep=r"\d{4}-"))
    add("newest-first", "newest row first", days(lambda rows: text()(rows[::-1])), by_day())

    def extras(rows):
        header = ["Record", "Battery (V)", "Wind speed (m/s)", "Irradiance (W/m²)", "Time", "Ambient temperature (°C)", "Water temperature (°C)"]
        lines = [",".join(header)]
        for index, r in enumerate(rows, 1):
            lines.append(f"{index},{12.6 + 0.01 * (index % 7):.2f},{r.wind},{r.sun},{iso(r.t)},{r.ambient},{r.water}")
        return encode(lines)

    add("other-order", "columns in another order, among columns that nobody needs", days(extras),
        by_day(when=lambda df, n: pd.to_datetime(df["Time"]), pick=[6, 5, 3, 2]))


def spreadsheets():
    two = lambda t: [t.date(), t.time()]
    two_header = ["Date", "Time", *CANONICAL[1:]]
    add("xlsx", "xlsx with date cells", days(lambda rows: workbook([("Sheet1", cells_of(rows))]), ".xlsx"), by_sheet(), OPENPYXL, log="day-{n}.xlsx")
    add("xlsx-date-clock", "xlsx with a date cell and a time cell", days(lambda rows: workbook([("Sheet1", cells_of(rows, two_header, two))]), ".xlsx"),
        by_sheet(when=lambda df, n: pd.to_datetime(df.iloc[:, 0].astype(str).str[:10] + " " + df.iloc[:, 1].astype(str)), pick=[2, 3, 4, 5]), OPENPYXL, log="day-{n}.xlsx")
    about = ("About", [["Tracebox TB-0 (invented)"], ["Serial number", "000417"]])
    add("xlsx-second-sheet", "xlsx, readings on the second sheet, sheet = \"Readings\"",
        days(lambda rows: workbook([about, ("Readings", cells_of(rows))]), ".xlsx"), by_sheet(sheet_name="Readings"), OPENPYXL, log="day-{n}.xlsx",
        more='[format]\nsheet = "Readings"')
    book = workbook([("Notes", [["Invented data"]])] + [(f"Day {n}", cells_of(rows)) for n, rows in enumerate(DAYS, 1)])
    add("xlsx-sheet-a-run", "one xlsx for all days, a sheet a run", {"readings.xlsx": book}, by_sheet(name="readings", sheet_name="Day {n}"), OPENPYXL,
        log="readings.xlsx", run='sheet = "Day {n}"')
    header = ["Time", "Water temperature", "Ambient temperature", "Irradiance", "Wind speed"]

    def dressed(rows):
        body = cells_of(rows, header, cells=[WATER_F, AMBIENT_F, SUN, WIND_KMH])
        top = [[line.split(",")[0], *line.split(",")[1:]] for line in PREAMBLE]
        end = [[], ["end of data"]]
        return workbook([("Sheet1", [*top, [], body[0], ["local", "°F", "°F", "W/m²", "km/h"], *body[1:], *end])])

    def dressed_back(folder):
        out = []
        for n in (1, 2, 3):
            df = pd.read_excel(folder / f"day-{n}.xlsx", header=None, skiprows=9).iloc[:ROWS]
            out.append(tidy(df, n, conv=dict(water="f", ambient="f", wind="kmh")))
        return out

    add("xlsx-preamble-units-row", "xlsx with preamble, units row (°F, km/h) and footer", days(dressed, ".xlsx"), dressed_back, OPENPYXL, log="day-{n}.xlsx")
    add("xlsx-text-times", "xlsx with times as text, 12-hour, month first",
        days(lambda rows: workbook([("Sheet1", cells_of(rows, stamp=lambda t: [f"{t:%m/%d/%Y} {' '.join(twelve(t))}"]))]), ".xlsx"),
        by_sheet(when=lambda df, n: stamp_back(df, format="%m/%d/%Y %I:%M %p")), OPENPYXL, log="day-{n}.xlsx",
        more='[format]\ndate_order = "month-day-year"')

    def ods_pandas(rows):
        table = cells_of(rows)
        frame = pd.DataFrame([[c if not isinstance(c, Decimal) else float(c) for c in line] for line in table[1:]], columns=table[0])
        out = io.BytesIO()
        frame.to_excel(out, engine="odf", index=False)
        return settle_zip(out.getvalue())

    add("ods", "ods with date cells", days(ods_pandas, ".ods"), by_sheet(".ods"), f"{PANDAS} with {ODFPY}", log="day-{n}.ods")

    def ods_two(rows):
        book = OpenDocumentSpreadsheet()
        sheet = Table(name="Readings")
        book.spreadsheet.addElement(sheet)

        def line(cells):
            row = TableRow()
            for kind, value, seen in cells:
                key = {"string": "stringvalue", "date": "datevalue", "time": "timevalue", "float": "value"}[kind]
                cell = TableCell(valuetype=kind, **{key: value})
                cell.addElement(P(text=seen))
                row.addElement(cell)
            sheet.addElement(row)

        line([("string", name, name) for name in ["Date", "Time", *CANONICAL[1:]]])
        for r in rows:
            cells = [("date", f"{r.t:%Y-%m-%d}", f"{r.t:%d.%m.%y}"), ("time", f"{r.t:PT%HH%MM%SS}", f"{r.t:%H:%M}")]
            cells += [("float", shown(f(r)), shown(f(r), ",")) for f in (WATER, AMBIENT, SUN, WIND)]
            line(cells)
        out = io.BytesIO()
        book.write(out)
        return settle_zip(out.getvalue())

    add("ods-date-clock", "ods with a date cell and a time cell, shown in the German way", days(ods_two, ".ods"),
        by_sheet(".ods", when=lambda df, n: pd.to_datetime(df.iloc[:, 0].astype(str).str[:10] + " " + df.iloc[:, 1].astype(str)), pick=[2, 3, 4, 5]), ODFPY, log="day-{n}.ods")


MONTH = {"f": 2, "m": 3}


def month_back(df, n):
    """Day, first letter of the month's name, year, clock: in whatever language."""

    def one(cell):
        day, name, year, clock = re.match(r"(\d+)[^A-Za-z]*(?:de )?(\w+)\D*?(\d{4})\s+(.*)", cell).groups()
        return datetime.fromisoformat(f"{year}-{MONTH[name[0].lower()]:02}-{int(day):02} {clock}")

    return df.iloc[:, 0].map(one)


def times():
    def when(name, what, form, back, more="", run="", header="time", **how):
        """A dress in which only the time differs."""
        add(name, what, days(text(header=[header, *CANONICAL[1:]], times=(form,), **how)), by_day(when=back), more=more, run=run)

    dmy, mdy = '[format]\ndate_order = "day-month-year"', '[format]\ndate_order = "month-day-year"'
    dated = "date = {date}"
    when("iso-offset", "ISO 8601 with offset", lambda t: t.replace(tzinfo=ZONE).isoformat(), lambda df, n: stamp_back(df))
    when("iso-z", "ISO 8601 in UTC with Z", lambda t: f"{utc(t):%Y-%m-%dT%H:%M:%SZ}", lambda df, n: stamp_back(df))
    when("logger-clock-utc", "the logger's clock in UTC, time_zone = \"UTC\"", lambda t: iso(utc(t)), lambda df, n: stamp_back(df, utc=True), more='[format]\ntime_zone = "UTC"')
    west = timezone(timedelta(hours=-3))
    when("logger-clock-day-before", "the logger's clock at -03:00, so that the readings lie on the day before",
         lambda t: iso(utc(t).astimezone(west)), lambda df, n: stamp_back(df).dt.tz_localize(west), more='[format]\ntime_zone = "-03:00"')
    both = (lambda t: f"{t:%Y-%m-%d}", lambda t: f"{t:%H:%M}")
    add("date-clock", "date and clock in two columns", days(text(header=["date", "time", *CANONICAL[1:]], times=both)),
        by_day(when=lambda df, n: two_stamps(df), pick=[2, 3, 4, 5]))
    add("date-clock-key", "date and clock in two columns with odd headers, by key", days(text(header=["D", "T", *CANONICAL[1:]], times=both)),
        by_day(when=lambda df, n: two_stamps(df), pick=[2, 3, 4, 5]), more='[columns]\ntime = ["D", "T"]')
    back_dmy = lambda df, n: stamp_back(df, format="%d/%m/%Y %H:%M:%S")
    when("day-month-year", "day/month/year, date_order by key", lambda t: f"{t:%d/%m/%Y %H:%M:%S}", back_dmy, more=dmy)
    when("day-month-year-run-date", "day/month/year, settled by each run's date", lambda t: f"{t:%d/%m/%Y %H:%M:%S}", back_dmy, run=dated)
    when("day-month-year-dots", "day.month.year, date_order by key", lambda t: f"{t:%d.%m.%Y %H:%M}", lambda df, n: stamp_back(df, format="%d.%m.%Y %H:%M"), more=dmy)
    when("month-day-year-12h", "month/day/year without leading zeros, 12-hour clock with AM/PM",
         lambda t: f"{t.month}/{t.day}/{t.year} {' '.join(twelve(t))}", lambda df, n: stamp_back(df, format="%m/%d/%Y %I:%M %p"), more=mdy)

    def pm_back(df, n):
        return pd.to_datetime(df.iloc[:, 0].str.replace(".m.", "m", regex=False), format="%d/%m/%Y %I:%M %p")

    when("day-month-year-12h-pm", "day/month/year, 12-hour clock with \"a.m.\"/\"p.m.\"",
         lambda t: f"{t:%d/%m/%Y} {' '.join(twelve(t, 'a.m.', 'p.m.'))}", pm_back, more=dmy)
    when("year-slash", "year/month/day with slashes", lambda t: f"{t:%Y/%m/%d %H:%M}", lambda df, n: stamp_back(df, format="%Y/%m/%d %H:%M"))
    when("two-digit-year", "two-digit years, settled by each run's date", lambda t: f"{t:%d/%m/%y %H:%M}", lambda df, n: stamp_back(df, format="%d/%m/%y %H:%M"), run=dated)
    when("two-digit-year-key", "two-digit years, month first, date_order by key", lambda t: f"{t:%m-%d-%y %H:%M:%S}", lambda df, n: stamp_back(df, format="%m-%d-%y %H:%M:%S"), more=mdy)
    m = lambda feb, mar: (lambda t: feb if t.month == 2 else mar)
    en, es, fr = m("Feb", "Mar"), m("febrero", "marzo"), m("févr.", "mars")
    de, mrz, pt = m("Februar", "März"), m("Feb.", "Mrz."), m("fev", "mar")
    when("month-en", "English month names", lambda t: f"{t:%d} {en(t)} {t:%Y %H:%M:%S}", month_back)
    when("month-es", "Spanish month names, with \"de\"", lambda t: f"{t.day} de {es(t)} de {t:%Y %H:%M:%S}", month_back)
    when("month-fr", "French month names", lambda t: f"{t.day} {fr(t)} {t:%Y %H:%M:%S}", month_back)
    when("month-de", "German month names", lambda t: f"{t.day}. {de(t)} {t:%Y %H:%M:%S}", month_back)
    when("month-de-short", "German month names, short (Mrz.)", lambda t: f"{t.day:02}. {mrz(t)} {t:%Y %H:%M}", month_back)
    when("month-pt", "Portuguese month names, short", lambda t: f"{t:%d}-{pt(t)}-{t:%Y %H:%M:%S}", month_back)
    long_en = m("February", "March")
    when("month-en-first", "English month names before the day, 12-hour clock, quoted for the comma",
         lambda t: f"{long_en(t)} {t.day}, {t.year} {' '.join(twelve(t))}", lambda df, n: stamp_back(df, format="%B %d, %Y %I:%M %p"))
    when("epoch-s", "epoch seconds", epoch_s, lambda df, n: stamp_back(df, unit="s", utc=True))
    when("epoch-ms", "epoch milliseconds", lambda t: epoch_s(t) * 1000, lambda df, n: stamp_back(df, unit="ms", utc=True))
    when("serial-days", "spreadsheet serial days in CSV, ten decimals", serial, lambda df, n: stamp_back(df, unit="D", origin="1899-12-30").dt.round("ms"))
    since = lambda t: (t - next(s for s in STARTS if s.date() == t.date())) // timedelta(seconds=1)
    started = 'date = {date}\nstart = "{clock}"'
    elapsed = lambda unit: (lambda df, n: STARTS[n - 1] + pd.to_timedelta(df.iloc[:, 0] * unit, unit="s").dt.round("ms"))
    when("elapsed-s", "elapsed seconds, with start", since, elapsed(1), run=started, header="Elapsed time (s)")
    when("elapsed-min", "elapsed minutes, with start", lambda t: since(t) // 60, elapsed(60), run=started, header="Elapsed time (min)")
    when("elapsed-key", "elapsed hours under an odd header, unit by key, with start", lambda t: shown(Decimal(since(t)) / 3600), elapsed(3600), run=started, header="Run",
         more='[columns]\ntime = "Run"\n\n[units]\ntime = "h"')
    when("clock-only", "clock times only, with each run's date", lambda t: f"{t:%H:%M:%S}",
         lambda df, n: pd.to_datetime(f"{STARTS[n - 1]:%Y-%m-%d} " + df.iloc[:, 0]), run=dated)


def languages_and_units():
    def headers(name, what, names, **how):
        add(name, what, days(text(header=names)), by_day(), **how)

    headers("headers-en", "English headers, units in brackets", ["Date and time", "Water temperature (°C)", "Ambient temperature (°C)", "Irradiance (W/m²)", "Wind speed (m/s)"])
    headers("headers-es", "Spanish headers, units in brackets", ["Fecha y hora", "Temperatura del agua (°C)", "Temperatura ambiente (°C)", "Irradiancia (W/m²)", "Velocidad del viento (m/s)"])
    headers("headers-fr", "French headers, units in brackets", ["Date et heure", "Température de l'eau [°C]", "Température ambiante [°C]", "Rayonnement solaire [W/m²]", "Vitesse du vent [m/s]"])
    headers("headers-de", "German headers, units in brackets", ["Datum und Uhrzeit", "Wassertemperatur [°C]", "Umgebungstemperatur [°C]", "Bestrahlungsstärke [W/m²]", "Windgeschwindigkeit [m/s]"])
    headers("headers-pt", "Portuguese headers, units in brackets", ["Data e hora", "Temperatura da água (°C)", "Temperatura ambiente (°C)", "Irradiância (W/m²)", "Velocidade do vento (m/s)"])
    headers("units-after-comma", "units after a comma", ["Time", "Water temperature, °C", "Ambient temperature, °C", "Irradiance, W/m²", "Wind speed, m/s"])
    headers("units-after-slash", "units after a slash", ["Time", "Water temperature / °C", "Ambient temperature / °C", "Irradiance / (W/m²)", "Wind speed / (m/s)"])
    headers("columns-key", "headers that say nothing, named under [columns]; units under [units]", ["Stamp", "TC1", "TC2", "CH3", "CH4"],
            more='[columns]\ntime = "Stamp"\nwater_temperature = "TC1"\nambient_temperature = "TC2"\nirradiance = "CH3"\nwind_speed = "CH4"\n\n'
            '[units]\nwater_temperature = "°C"\nambient_temperature = "°C"\nirradiance = "W/m²"\nwind_speed = "m/s"')

    def units(name, what, cells=None, names=None, conv=None, **how):
        header = names or CANONICAL
        add(name, what, days(text(header=header, cells=cells)), by_day(conv=conv), **how)

    plain = ["time", "Water temperature (°C)", "Ambient temperature (°C)", "Irradiance (W/m²)", "Wind speed (m/s)"]
    swap = lambda index, name: [name if i == index else old for i, old in enumerate(plain)]
    both = lambda a, b: [plain[0], a, b, *plain[3:]]
    sun = lambda f: [WATER, AMBIENT, f, WIND]
    wind = lambda f: [WATER, AMBIENT, SUN, f]
    units("fahrenheit", "°F in the headers", [WATER_F, AMBIENT_F, SUN, WIND], both("Water temperature (°F)", "Ambient temperature (°F)"), dict(water="f", ambient="f"))
    units("fahrenheit-suffix", "units as suffixes: °F, kW/m², km/h", [WATER_F, AMBIENT_F, SUN_KW, WIND_KMH], ["time", "water_f", "ambient_f", "irradiance_kw_m2", "wind_km_h"],
          dict(water="f", ambient="f", sun="kw", wind="kmh"))
    zero = Decimal("273.15")
    units("kelvin", "kelvin in the headers", [lambda r: r.water + zero, lambda r: r.ambient + zero, SUN, WIND], both("Water temperature (K)", "Ambient temperature (K)"), dict(water="k", ambient="k"))
    units("kilowatts", "kW/m²", sun(SUN_KW), swap(3, "Irradiance (kW/m²)"), dict(sun="kw"))
    units("btu", "BTU/(h ft²)", sun(SUN_BTU), swap(3, "Irradiance [BTU/(h ft²)]"), dict(sun="btu"))
    uv = "sensitivity_uv_per_w_m2 = 12.4"
    units("millivolts", "irradiance in mV, with sensitivity", sun(SUN_MV), swap(3, "Irradiance (mV)"), dict(sun="mv"), irradiance=uv)
    units("microvolts", "irradiance in µV, with sensitivity", sun(SUN_UV), swap(3, "Irradiance (µV)"), dict(sun="uv"), irradiance=uv)
    units("volts", "irradiance in V, with sensitivity", sun(lambda r: SUN_UV(r) / 1000000), swap(3, "Irradiance (V)"), dict(sun="v"), irradiance=uv)
    ma = "sensitivity_ma_per_w_m2 = 0.15"
    units("reference-cell", "reference cell in mA, with sensitivity", sun(lambda r: r.sun * Decimal("0.15")), swap(3, "Irradiance (mA)"), dict(sun="ma"), irradiance=ma)
    units("reference-cell-a", "reference cell in A, unit by key, with sensitivity", sun(lambda r: r.sun * Decimal("0.15") / 1000), swap(3, "Irradiance"), dict(sun="a"),
          irradiance=ma, more='[units]\nirradiance = "A"')
    units("wind-km-h", "wind in km/h", wind(WIND_KMH), swap(4, "Wind speed (km/h)"), dict(wind="kmh"))
    units("wind-mph", "wind in mph", wind(WIND_MPH), swap(4, "Wind speed (mph)"), dict(wind="mph"))
    units("wind-knots", "wind in knots", wind(WIND_KN), swap(4, "Wind speed (knots)"), dict(wind="kn"))
    units("wind-ft-min", "wind in ft/min", wind(WIND_FTMIN), swap(4, "Wind speed (ft/min)"), dict(wind="ftmin"))
    units("units-key", "units only under [units]: °F, K, kW/m², mph", [WATER_F, lambda r: r.ambient + zero, SUN_KW, WIND_MPH], PLAIN,
          dict(water="f", ambient="k", sun="kw", wind="mph"),
          more='[units]\nwater_temperature = "°F"\nambient_temperature = "K"\nirradiance = "kW/m²"\nwind_speed = "mph"')

    def grouped(group, mark):
        """µV with a mark between thousands."""
        def cell(r):
            whole, part = f"{SUN_UV(r):.1f}".split(".")
            return f"{whole[:-3]}{group}{whole[-3:]}{mark}{part}"
        return cell

    for name, group, mark in [("point", ".", ","), ("comma", ",", "."), ("apostrophe", "'", "."), ("space", " ", ",")]:
        add(f"thousands-{name}", f"thousands marked by a {name}, declared; irradiance in µV",
            days(text(header=swap(3, "Irradiance (µV)"), cells=sun(grouped(group, mark)), sep=";", mark=mark)),
            by_day(sep=";", decimal=mark, thousands=group, conv=dict(sun="uv")), irradiance=uv,
            more=f'[format]\nthousands_mark = "{group}"')


WIGGLE = [Decimal(n) / 10 for n in (1, 2, 3, 2, 1, 4, 2)]


def wiggle(r):
    return WIGGLE[(r.t.minute // 2) % len(WIGGLE)]


def sensors():
    rest = [AMBIENT, SUN, WIND]
    add("two-sensors", "two water sensors, whose mean is the reading",
        days(text(header=["time", "TC1", "TC2", *CANONICAL[2:]], cells=[lambda r: r.water + wiggle(r), lambda r: r.water - wiggle(r), *rest])),
        by_day(pick=[lambda df: (df["TC1"] + df["TC2"]) / 2, 3, 4, 5]),
        more='[columns]\nwater_temperature = [["TC1", "TC2"]]\n\n[units]\nwater_temperature = "°C"')
    add("two-vessels", "two vessels of 3 and 4 kg, whose mean by mass is the reading",
        days(text(header=["time", "Pot A (°C)", "Pot B (°C)", *CANONICAL[2:]], cells=[lambda r: r.water + 4 * wiggle(r), lambda r: r.water - 3 * wiggle(r), *rest])),
        by_day(pick=[lambda df: (3 * df.iloc[:, 1] + 4 * df.iloc[:, 2]) / 7, 3, 4, 5]),
        load="vessels = 2\nvessel_water_kg = [3.0, 4.0]", more='[columns]\nwater_temperature = ["Pot A (°C)", "Pot B (°C)"]')
    add("two-vessels-run", "the same, the masses stated for each run",
        days(text(header=["time", "Pot A (°C)", "Pot B (°C)", *CANONICAL[2:]], cells=[lambda r: r.water - 5 * wiggle(r), lambda r: r.water + 2 * wiggle(r), *rest])),
        by_day(pick=[lambda df: (2 * df.iloc[:, 1] + 5 * df.iloc[:, 2]) / 7, 3, 4, 5]),
        load="vessels = 2", more='[columns]\nwater_temperature = ["Pot A (°C)", "Pot B (°C)"]', run="vessel_water_kg = [2.0, 5.0]")
    add("two-vessels-three-sensors", "two vessels, two sensors in the first, one in the second",
        days(text(header=["time", "TC1", "TC2", "TC3", *CANONICAL[2:]],
                  cells=[lambda r: r.water + 5 * wiggle(r), lambda r: r.water + 3 * wiggle(r), lambda r: r.water - 3 * wiggle(r), *rest])),
        by_day(pick=[lambda df: (3 * (df["TC1"] + df["TC2"]) / 2 + 4 * df["TC3"]) / 7, 4, 5, 6]),
        load="vessels = 2\nvessel_water_kg = [3.0, 4.0]", more='[columns]\nwater_temperature = [["TC1", "TC2"], "TC3"]\n\n[units]\nwater_temperature = "°C"')
    gain, offset = Decimal("1.02"), Decimal("-0.3")
    add("gain-offset", "a water sensor with gain and offset",
        days(text(cells=[lambda r: (r.water - offset) / gain, *rest])), by_day(pick=[lambda df: 1.02 * df["water_c"] - 0.3, 2, 3, 4]),
        more='[[calibration]]\ncolumn = "water_c"\ngain = 1.02\noffset = -0.3')
    add("gain-offset-fahrenheit", "the same, logged in °F; an irradiance gain too",
        days(text(header=["time", "Water temperature (°F)", "ambient_c", "Irradiance (kW/m²)", "wind_m_s"],
                  cells=[lambda r: fahrenheit((r.water - offset) / gain), AMBIENT, lambda r: r.sun / Decimal("0.97") / 1000, WIND])),
        by_day(pick=[lambda df: 1.02 * BACK["f"](df.iloc[:, 1]) - 0.3, 2, lambda df: 970.0 * df.iloc[:, 3], 4]),
        more='[[calibration]]\ncolumn = "Water temperature (°F)"\ngain = 1.02\noffset = -0.3\n\n[[calibration]]\ncolumn = "Irradiance (kW/m²)"\ngain = 0.97')
    points = [("0.4", "0.0"), ("50.2", "50.0"), ("98.9", "99.3")]
    points = [(Decimal(a), Decimal(b)) for a, b in points]

    def unpoint(r):
        (a0, b0), (a1, b1) = (points[:2] if r.water <= points[1][1] else points[1:])
        return a0 + (r.water - b0) * (a1 - a0) / (b1 - b0)

    shown_points = ", ".join(f"[{a}, {b}]" for a, b in points)
    add("points", "a water sensor with a table of points",
        days(text(cells=[unpoint, *rest])), by_day(pick=[lambda df: np.interp(df["water_c"], [0.4, 50.2, 98.9], [0.0, 50.0, 99.3]), 2, 3, 4]),
        more=f'[[calibration]]\ncolumn = "water_c"\npoints = [{shown_points}]')


def weather_rows():
    """The station's log of whole mornings: the runs, and windy cloud around them."""
    out = []
    for rows in DAYS:
        odd = lambda t: Row(t, None, Decimal("22.0"), Decimal("310"), Decimal("4.2"))
        out += [odd(rows[0].t + k * STEP) for k in range(-15, 0)]
        out += rows
        out += [odd(rows[-1].t + k * STEP) for k in range(1, 16)]
    return out


def two_logs():
    station = ["time", *CANONICAL[2:]]
    rest = [AMBIENT, SUN, WIND]
    everything = [r for rows in DAYS for r in rows]
    pots = days(text(header=["time", "water_c"], cells=[WATER]))

    def merged(weather, shift=0, when=None, conv=None, pick=(1, 2, 3), **how):
        def back(folder):
            out = []
            for n in (1, 2, 3):
                pot = pd.read_csv(folder / f"day-{n}.csv")
                pot["t"] = pd.to_datetime(pot["time"])
                sky = pd.read_csv(folder / weather.replace("{n}", str(n)), **how)
                sky["t"] = (when or (lambda df: pd.to_datetime(df.iloc[:, 0])))(sky) + pd.Timedelta(seconds=shift)
                sky = sky.rename(columns={sky.columns[i]: name for i, name in zip(pick, NAMES[2:])})
                both = pot.merge(sky[["t", *NAMES[2:]]], on="t", how="left")
                out.append(tidy(both[["t", "water_c", *NAMES[2:]]], n, conv=conv))
            return out
        return back

    add("weather-log", "two logs a run: the cooker's and the weather's",
        pots | {f"weather-{n}.csv": encode(lines_of(rows, station, rest)) for n, rows in enumerate(DAYS, 1)},
        merged("weather-{n}.csv"), run='weather = "weather-{n}.csv"')
    late = timedelta(seconds=120)
    add("weather-clock-error", "the same, the weather log's clock 120 s fast",
        pots | {f"weather-{n}.csv": encode(lines_of(rows, station, rest, times=(lambda t: iso(t + late),))) for n, rows in enumerate(DAYS, 1)},
        merged("weather-{n}.csv", shift=-120), run='weather = "weather-{n}.csv"\nweather_clock_offset_s = -120')
    add("weather-one-log", "one weather log for all three runs", pots | {"station.csv": encode(lines_of(everything, station, rest))},
        merged("station.csv"), run='weather = "station.csv"')
    add("weather-whole-day", "the same, and wind and cloud before and after each run, which count for nothing",
        pots | {"station.csv": encode(lines_of(weather_rows(), station, rest))}, merged("station.csv"), run='weather = "station.csv"')
    header = ["Datum", "Luft", "Globalstrahlung", "Windmesser"]
    lines = lines_of(everything, header, [AMBIENT_F, SUN_KW, WIND_KN], (lambda t: f"{utc(t):%d.%m.%Y %H:%M}",), ",", ";")
    sydney = lambda df: pd.to_datetime(df.iloc[:, 0], format="%d.%m.%Y %H:%M", utc=True).dt.tz_convert("Australia/Sydney").dt.tz_localize(None)
    add("weather-tables", "one weather log in another manner, told under [weather]", pots | {"station.csv": encode(lines, "cp1252", "\r\n")},
        merged("station.csv", when=sydney, conv=dict(ambient="f", sun="kw", wind="kn"), sep=";", decimal=","), run='weather = "station.csv"',
        more='[weather]\ncolumns = { time = "Datum", ambient_temperature = "Luft", irradiance = "Globalstrahlung", wind_speed = "Windmesser" }\n'
        'units = { ambient_temperature = "°F", irradiance = "kW/m²", wind_speed = "knots" }\n'
        'format = { date_order = "day-month-year", time_zone = "UTC" }')


def split_back(name, when=None, **how):
    return lambda folder: [tidy(pd.read_csv(folder / name, **how), 1, when)]


def one_log():
    everything = [r for rows in DAYS for r in rows]
    runs = ['[[run]]\nlog = "readings.csv"\nsplit = "daily"']
    add("split-daily", "all days in one log, split = \"daily\"", {"readings.csv": encode(lines_of(everything))}, split_back("readings.csv"), runs=runs)
    add("split-daily-day-first", "the same, day/month/year without a key: 24/02 settles it",
        {"readings.csv": encode(lines_of(everything, times=(lambda t: f"{t:%d/%m/%Y %H:%M}",)))},
        split_back("readings.csv", lambda df, n: stamp_back(df, format="%d/%m/%Y %H:%M")), runs=runs)
    add("split-daily-utc", "the same in UTC with Z, newest row first",
        {"readings.csv": encode(lines_of(everything[::-1], times=(lambda t: f"{utc(t):%Y-%m-%dT%H:%M:%SZ}",)))}, split_back("readings.csv"), runs=runs)


def frame_of(rows):
    return pd.DataFrame(
        {
            "time": [r.t for r in rows],
            "water_c": [float(r.water) for r in rows],
            "ambient_c": [float(r.ambient) for r in rows],
            "irradiance_w_m2": [float(r.sun) for r in rows],
            "wind_m_s": [float(r.wind) for r in rows],
        }
    )


def from_pandas():
    dump = lambda df, **how: df.to_csv(lineterminator="\n", **how).encode()
    add("pandas-index", "DataFrame.to_csv, with a numbered index whose header is blank", days(lambda rows: dump(frame_of(rows))), by_day(index_col=0), PANDAS)
    add("pandas-time-index", "DataFrame.to_csv, the time as index", days(lambda rows: dump(frame_of(rows).set_index("time"))), by_day(), PANDAS)
    add("pandas-semicolon", "DataFrame.to_csv with sep=\";\", decimal=\",\"", days(lambda rows: dump(frame_of(rows), index=False, sep=";", decimal=",")), by_day(sep=";", decimal=","), PANDAS)

    def zoned(rows):
        frame = frame_of(rows)
        frame["time"] = frame["time"].dt.tz_localize("Australia/Sydney")
        return dump(frame, index=False)

    add("pandas-zoned", "DataFrame.to_csv, times with zone (a space before the clock, an offset after it)", days(zoned), by_day(), PANDAS)


GERMAN = ["Zeitstempel", "Wassertemperatur", "Umgebungstemperatur", "Bestrahlungsstärke", "Windgeschwindigkeit"]


def combined():
    def tall(rows):
        lines = lines_of(rows, GERMAN, times=(lambda t: f"{t:%d.%m.%Y %H:%M:%S}",), mark=",", sep="\t")
        top = ["Messwertschreiber MS-0 (erfunden)", "Seriennummer\t000417", "Softwareversion\t2.31", "Bediener\tV. Exempla (erfunden)", "Ausgegeben am\t13.03.2026 18:04:00", ""]
        mean = lambda f: shown(Decimal(f"{sum(f(r) for r in rows) / len(rows):.2f}"), ",")
        end = ["\t".join(["Mittelwert", *(mean(f) for f in (WATER, AMBIENT, SUN, WIND))]), "Ende der Daten"]
        return encode([*top, lines[0], "TT.MM.JJJJ hh:mm:ss\t°C\t°C\tW/m²\tm/s", *lines[1:], *end], "utf-16-le", "\r\n")

    add("tall-german", "UTF-16 LE, tabs, decimal commas, preamble, German headers, day.month.year, units row, footer", days(tall, ".txt"),
        by_day(".txt", keep=r"\d\d\.\d\d\.\d{4} ", encoding="utf-16", sep="\t", decimal=",", when=lambda df, n: stamp_back(df, format="%d.%m.%Y %H:%M:%S")),
        log="day-{n}.txt", more='[format]\ndate_order = "day-month-year"')
    pt = ["Data e hora", "Temperatura da água (°F)", "Temperatura ambiente (°F)", "Irradiância (kW/m²)", "Velocidade do vento (km/h)"]
    name = lambda t: "fevereiro" if t.month == 2 else "março"
    add("tall-portuguese", "Latin-1, gzip, semicolons, decimal commas, Portuguese headers and months, °F, kW/m², km/h, CRLF",
        days(lambda rows: squeeze(text(header=pt, cells=[WATER_F, AMBIENT_F, SUN_KW, WIND_KMH], times=(lambda t: f"{t.day} de {name(t)} de {t:%Y %H:%M}",),
                                      sep=";", mark=",", encoding="latin-1", end="\r\n")(rows)), ".csv.gz"),
        by_day(".csv.gz", when=month_back, conv=dict(water="f", ambient="f", sun="kw", wind="kmh"), sep=";", decimal=",", encoding="latin-1"), log="day-{n}.csv.gz")
    es = ["Fecha", "Hora", "Agua (°C)", "Ambiente (°C)", "Radiación solar (W/m²)", "Viento (m/s)"]
    add("tall-spanish", "UTF-16 BE, CR, quoted, decimal commas, Spanish headers, date and 12-hour clock apart, newest first, trailing delimiters",
        days(lambda rows: text(header=es, times=(lambda t: f"{t:%d-%m-%y}", lambda t: " ".join(twelve(t, "a.m.", "p.m."))), mark=",", quote=True, tail=",", encoding="utf-16-be", end="\r")(rows[::-1])),
        by_day(encoding="utf-16", decimal=",", index_col=False, pick=[2, 3, 4, 5],
               when=lambda df, n: pd.to_datetime(df["Fecha"] + " " + df["Hora"].str.replace(".m.", "m", regex=False), format="%d-%m-%y %I:%M %p")), run="date = {date}")
    sun_mv, factor = "sensitivity_uv_per_w_m2 = 12.4", dict(ambient="f", sun="mv", wind="mph")
    header = ["Logger time", "Probe A", "Probe B", "Shade", "Pyr", "Cup"]
    add("tall-logger", "preamble, units row, epoch ms, two vessels in °F, mV, mph, comments and header again",
        days(lambda rows: logger(rows, header)), by_day(
            keep=r"\d{13},", when=lambda df, n: stamp_back(df, unit="ms", utc=True), conv=factor,
            pick=[lambda df: (3 * BACK["f"](df[1]) + 4 * BACK["f"](df[2])) / 7, 3, 4, 5]),
        load="vessels = 2\nvessel_water_kg = [3.0, 4.0]", irradiance=sun_mv,
        more='[columns]\ntime = "Logger time"\nwater_temperature = ["Probe A", "Probe B"]\nambient_temperature = "Shade"\nirradiance = "Pyr"\nwind_speed = "Cup"')

    one = {"day-1.xlsx": workbook([("Notes", [["Invented"]]), ("Data", cells_of(DAYS[0]))])}
    probe = ["When", "Probe", "Shade", "Sun", "Cup"]
    one["day-2.csv"] = encode(lines_of(DAYS[1], probe, [WATER_F, AMBIENT_F, SUN, WIND_KN], (lambda t: f"{t:%d/%m/%Y %H:%M}",), ",", ";"), "cp1252")
    one["day-3.txt"] = encode(lines_of(DAYS[2], GERMAN, times=(lambda t: f"{t:%d.%m.%Y %H:%M}",), mark=",", sep="\t"), "utf-16-le")

    def back(folder):
        a = pd.read_excel(folder / "day-1.xlsx", sheet_name="Data")
        b = pd.read_csv(folder / "day-2.csv", sep=";", decimal=",")
        c = pd.read_csv(folder / "day-3.txt", sep="\t", decimal=",", encoding="utf-16")
        return [tidy(a, 1), tidy(b, 2, lambda df, n: stamp_back(df, format="%d/%m/%Y %H:%M"), conv=dict(water="f", ambient="f", wind="kn")),
                tidy(c, 3, lambda df, n: stamp_back(df, format="%d.%m.%Y %H:%M"))]

    add("another-logger-a-day", "another logger each day, told run by run", one, back, f"{OPENPYXL}, {VERSIONS}", runs=[
        '[[run]]\nlog = "day-1.xlsx"\nsheet = "Data"',
        '[[run]]\nlog = "day-2.csv"\ndate = 2026-03-04\n'
        'columns = { time = "When", water_temperature = "Probe", ambient_temperature = "Shade", irradiance = "Sun", wind_speed = "Cup" }\n'
        'units = { water_temperature = "°F", ambient_temperature = "°F", irradiance = "W/m²", wind_speed = "knots" }',
        '[[run]]\nlog = "day-3.txt"\nformat = { date_order = "day-month-year" }\n'
        'units = { water_temperature = "°C", ambient_temperature = "°C", irradiance = "W/m²", wind_speed = "m/s" }'])


def logger(rows, header):
    cells = [lambda r: fahrenheit(r.water + 4 * wiggle(r)), lambda r: fahrenheit(r.water - 3 * wiggle(r)), AMBIENT_F, SUN_MV, WIND_MPH]
    lines = lines_of(rows, header, cells, (lambda t: epoch_s(t) * 1000,))
    top = [*PREAMBLE, lines[0], "ms,°F,°F,°F,mV,mph"]
    return encode([*top, *lines[1:20], "# power cycled", *top, *lines[20:]])


#: How LibreOffice makes the logs: suffix, target, locale (set in its own settings),
#: and whether from the canonical CSV or from an xlsx whose dates follow the locale.
#: In the targets, 59 is the semicolon, 9 the tab, 34 the quotation mark, 76 UTF-8,
#: 65535 UTF-16, 1031 German, and the last "true" saves cells as shown.
CONVERSIONS = {
    "libreoffice-xlsx": (".xlsx", "xlsx", "en-US", "csv"),
    "libreoffice-ods": (".ods", "ods", "en-US", "csv"),
    "libreoffice-german-csv": (".csv", "csv:Text - txt - csv (StarCalc):59,34,76,1,,1031,false,true", "de-DE", "csv"),
    "libreoffice-german-dates": (".csv", "csv:Text - txt - csv (StarCalc):59,34,76,1,,1031,false,true", "de-DE", "xlsx"),
    "libreoffice-german-utf16": (".csv", "csv:Text - txt - csv (StarCalc):9,34,65535,1,,1031,false,true", "de-DE", "xlsx"),
}
READ_FILTER = "CSV:44,34,76,1,,1033,false,true"
LOCALE = (
    '<?xml version="1.0" encoding="UTF-8"?>\n'
    '<oor:items xmlns:oor="http://openoffice.org/2001/registry">'
    '<item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse">'
    "<value>{locale}</value></prop></item></oor:items>\n"
)


def libreoffice_dresses():
    """Campaign files of the dresses whose logs LibreOffice makes."""
    add("libreoffice-xlsx", "canonical CSV opened and saved as xlsx", {}, by_sheet(when=lambda df, n: stamp_back(df).dt.round("s")), LIBREOFFICE, log="day-{n}.xlsx")
    add("libreoffice-ods", "canonical CSV opened and saved as ods", {}, by_sheet(".ods", when=lambda df, n: stamp_back(df).dt.round("s")), LIBREOFFICE, log="day-{n}.ods")
    add("libreoffice-german-csv", "canonical CSV opened and saved as CSV in the German way", {}, by_day(sep=";", decimal=","), LIBREOFFICE)
    dots = lambda df, n: stamp_back(df, format="%d.%m.%Y %H:%M")
    day_first = '[format]\ndate_order = "day-month-year"'
    both = f"{LIBREOFFICE}, from {OPENPYXL}"
    add("libreoffice-german-dates", "xlsx opened and saved as CSV in the German way, dates too", {}, by_day(sep=";", decimal=",", when=dots), both, more=day_first)
    add("libreoffice-german-utf16", "the same with tabs, in UTF-16", {}, by_day(sep="\t", decimal=",", encoding="utf-16", when=dots), both, more=day_first)


def convert():
    """Lets LibreOffice make the logs of its dresses from the canonical ones."""
    for name, (suffix, target, locale, source) in CONVERSIONS.items():
        with tempfile.TemporaryDirectory() as scratch:
            profile = Path(scratch) / "profile" / "user"
            profile.mkdir(parents=True)
            (profile / "registrymodifications.xcu").write_text(LOCALE.format(locale=locale))
            out = Path(scratch) / "out"
            logs = [ROOT / "canonical" / f"day-{n}.csv" for n in (1, 2, 3)]
            if source == "xlsx":
                logs = [Path(scratch) / f"day-{n}.xlsx" for n in (1, 2, 3)]
                for log, rows in zip(logs, DAYS):
                    log.write_bytes(workbook([("Sheet1", cells_of(rows))], "m/d/yy h:mm"))
            how = [f"--infilter={READ_FILTER}"] if source == "csv" else []
            subprocess.run(
                ["soffice", f"-env:UserInstallation={profile.parent.as_uri()}", "--headless", *how,
                 "--convert-to", target, "--outdir", str(out), *map(str, logs)],
                check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
            )
            for n in (1, 2, 3):
                (ROOT / name).mkdir(parents=True, exist_ok=True)
                shutil.copyfile(out / f"day-{n}{suffix}", ROOT / name / f"day-{n}{suffix}")


# ---------------------------------------------------------------------- broken

BROKEN = []


def refuse(name, what, files, expect, more="", run="", load="", irradiance=""):
    """A campaign of one run that must be refused; `expect` are pieces of the error."""
    log = next(iter(files))
    runs = [RUN.format(log=log, more=run)]
    BROKEN.append((name, what, toml(what, runs, more, load, irradiance), files, expect))


def broken():
    rows = DAYS[1]
    one = lambda **how: {"day.csv": encode(lines_of(rows, **how))}
    plain = ["Time", "Water temperature (°C)", "Ambient temperature (°C)", "Irradiance (W/m²)", "Wind speed (m/s)"]
    swap = lambda index, header: [header if i == index else old for i, old in enumerate(plain)]
    sun = lambda f: [WATER, AMBIENT, f, WIND]
    uv = "sensitivity_uv_per_w_m2 = 12.4"
    refuse("date-two-ways", "03/04/2026 all through", one(times=(lambda t: f"{t:%m/%d/%Y %H:%M:%S}",)),
           ["day.csv", "03/04/2026", "date_order", "3 April 2026", "4 March 2026"])
    group = lambda r: "{}.{},{}".format(*re.match(r"(\d+)(\d{3})\.(\d)", f"{SUN_UV(r):.1f}").groups())
    refuse("thousands", "thousands and decimals marked (10.540,0), not declared; irradiance in µV",
           one(header=swap(3, "Irradiance (µV)"), cells=sun(group), sep=";", mark=","), ["day.csv", "Irradiance (µV)", group(rows[0]), "thousands_mark"], irradiance=uv)
    whole = lambda r: f"{SUN_UV(r):.0f}"[:-3] + "." + f"{SUN_UV(r):.0f}"[-3:]
    refuse("thousands-or-decimals", "10.540 in a log with decimal commas, not declared",
           one(header=swap(3, "Irradiance (µV)"), cells=sun(whole), sep=";", mark=","), ["day.csv", "Irradiance (µV)", whole(rows[0]), "thousands_mark"], irradiance=uv)
    refuse("no-unit-fahrenheit", "water and ambient temperature in °F, and no unit anywhere", one(header=["Time", "Water", "Ambient", *plain[3:]], cells=[WATER_F, AMBIENT_F, SUN, WIND]),
           ["day.csv", "Water", "°F", "[units]"])
    refuse("temperature-twice", "two headers that say temperature and no more", one(header=["Time", "Temperature 1", "Temperature 2", *plain[3:]]),
           ["day.csv", "Temperature 1", "Temperature 2", "water temperature", "ambient temperature", "[columns]"])
    refuse("irradiance-twice", "two headers that both say irradiance",
           one(header=["Time", *plain[1:3], "Irradiance (W/m²)", "Solar irradiance (W/m²)", plain[4]], cells=[WATER, AMBIENT, SUN, lambda r: r.sun - 40, WIND]),
           ["day.csv", "Irradiance (W/m²)", "Solar irradiance (W/m²)", "[columns]"])
    night = lambda t: iso(datetime(2026, 10, 4, 1, 30) + (t - STARTS[1]))
    refuse("skipped-hour", "times that the change to summer time skips", one(times=(night,)), ["day.csv:17", "2026-10-04 02:00:00", "time_zone"])
    refuse("elapsed-without-start", "elapsed time, and no start", one(header=["Elapsed time (s)", *plain[1:]], times=(lambda t: (t - STARTS[1]).seconds,)),
           ["day.csv", "Elapsed time (s)", "start"], run="date = 2026-03-04")
    refuse("clock-without-date", "clock times, and no date", one(times=(lambda t: f"{t:%H:%M:%S}",)), ["day.csv", "11:36:00", "date"])
    refuse("mv-without-sensitivity", "irradiance in mV, and no sensitivity", one(header=swap(3, "Irradiance (mV)"), cells=sun(SUN_MV)),
           ["day.csv", "Irradiance (mV)", "sensitivity_uv_per_w_m2"])
    refuse("ma-without-sensitivity", "a reference cell in mA, and no sensitivity in mA", one(header=swap(3, "Irradiance (mA)"), cells=sun(lambda r: r.sun * Decimal("0.15"))),
           ["day.csv", "Irradiance (mA)", "sensitivity_ma_per_w_m2"], irradiance=uv)
    bare = [",".join(CANONICAL)] + [",".join([iso(r.t), *(shown(f(r), ",") for f in (WATER, AMBIENT, SUN, WIND))]) for r in rows]
    refuse("decimal-comma-unquoted", "decimal commas in a log with commas, without quotation marks", {"day.csv": encode(bare)}, ["day.csv:2", "decimal comma"])
    quoted = lines_of(rows)
    quoted[10] = quoted[10].replace(",", ',"', 1)
    refuse("unclosed-quote", "a quotation mark that is not closed", {"day.csv": encode(quoted)}, ["day.csv:11", "quotation mark"])
    packed = squeeze(encode(lines_of(rows)))
    refuse("gzip-cut", "a gzip file cut in half", {"day.csv.gz": packed[: len(packed) // 2]}, ["day.csv.gz"])
    book = workbook([("Day 1", cells_of(rows)), ("Notes", [["Invented"]])])
    refuse("xlsx-cut", "an xlsx file cut in half", {"day.xlsx": book[: len(book) // 2]}, ["day.xlsx"])
    refuse("sheet-not-there", "a sheet that is not there", {"day.xlsx": book}, ["day.xlsx", "Readings", "Day 1", "Notes"], more='[format]\nsheet = "Readings"')
    refuse("unknown-unit", "a unit under [units] that is none", one(header=[*plain[:4], "Wind speed"]), ["furlongs", "wind_speed"], more='[units]\nwind_speed = "furlongs"')
    refuse("unknown-unit-header", "a unit in a header that is none", one(header=swap(4, "Wind speed (furlongs)")), ["day.csv", "Wind speed (furlongs)", "furlongs"])
    refuse("unit-of-another-quantity", "a temperature in m/s", one(header=swap(1, "Water temperature (m/s)")), ["day.csv", "Water temperature (m/s)", "m/s"])
    refuse("calibration-not-there", "a calibration of a column that is not there", one(), ["TC9", "water_c"], more='[[calibration]]\ncolumn = "TC9"\ngain = 1.02\noffset = -0.3')
    refuse("vessel-loads", "three vessels' loads for two columns", one(header=["time", "Pot A (°C)", "Pot B (°C)", *CANONICAL[2:]], cells=[WATER, WATER, AMBIENT, SUN, WIND]),
           ["vessel_water_kg"], load="vessels = 2\nvessel_water_kg = [3.0, 2.0, 2.0]", more='[columns]\nwater_temperature = ["Pot A (°C)", "Pot B (°C)"]')
    refuse("date-order-contradicted", "24/02/2026 under date_order = \"month-day-year\"",
           {"day.csv": encode(lines_of(DAYS[0], times=(lambda t: f"{t:%d/%m/%Y %H:%M:%S}",)))}, ["day.csv:2", "24/02/2026", "date_order"],
           more='[format]\ndate_order = "month-day-year"')


# ------------------------------------------------------------------------ main

README = """\
# One campaign in many dresses

Made by `../dresses.py`, whose head says how to run it. **Everything here is
invented**: cooker, place, people, loggers, weather and readings.

`canonical` is the base: three days, one reading every two minutes. Every other folder
holds the same readings, to 1e-9 after conversion, in another dress, and its
`campaign.toml` differs in `[load]`, `[instruments.irradiance]` and the tables after
them, and says no more than that dress needs. So every dress must give the
rating of `canonical`. The program that made them reads each back with pandas and
compares it with `canonical`; it does not read the campaign files.

`broken` holds campaigns that must be refused. Each line of `expect.txt` is a piece of
text that the error must hold: place, text found, or key to set.

## Dresses

| folder | what is different | made with |
| --- | --- | --- |
{dresses}

The `libreoffice-*` logs come from the canonical ones through

```text
soffice --headless --infilter="{read}" --convert-to TARGET day-1.csv
```

or, where it says so, from an xlsx of the same readings, without `--infilter`. Targets
and locales:

{targets}

BTU is that of the International Table, 1055.05585262 J. Serial days in CSV have ten
decimals, as a spreadsheet shows them, so a time is good to some 4 µs. Those in the
xlsx files are binary floating-point numbers and good to some 0.6 µs.

## Broken

| folder | what is wrong | the error must hold |
| --- | --- | --- |
{broken}
"""


def readme():
    cell = lambda text: text.replace("|", "\\|")
    dresses = [f"| `{d.name}` | {cell(d.what)} | {d.made} |" for d in DRESSES]
    origin = {"csv": "", "xlsx": ", from xlsx with dates in number format 22"}
    targets = [f"- `{name}`: `{target}`, locale {locale}{origin[source]}" for name, (_, target, locale, source) in CONVERSIONS.items()]
    wrong = [f"| `{name}` | {cell(what)} | {', '.join(f'`{piece}`' for piece in expect)} |" for name, what, _, _, expect in BROKEN]
    return README.format(dresses="\n".join(dresses), read=READ_FILTER, targets="\n".join(targets), broken="\n".join(wrong))


def write_all():
    converted = set(CONVERSIONS)
    for old in ROOT.iterdir() if ROOT.exists() else []:
        if old.is_dir() and old.name not in converted:
            shutil.rmtree(old)
    for dress in DRESSES:
        put(ROOT / dress.name, dress.toml, dress.files)
    for name, _, campaign, files, expect in BROKEN:
        put(ROOT / "broken" / name, campaign, files | {"expect.txt": encode(expect)})
    (ROOT / "README.md").write_text(readme(), encoding="utf-8")


def put(folder, campaign, files):
    folder.mkdir(parents=True, exist_ok=True)
    (folder / "campaign.toml").write_text(campaign, encoding="utf-8")
    for name, data in files.items():
        (folder / name).write_bytes(data)


def main():
    options = argparse.ArgumentParser(description="Writes and checks the dresses.")
    options.add_argument("--check", action="store_true", help="write nothing, check what is there")
    options.add_argument("--libreoffice", action="store_true", help="also make the libreoffice-* logs anew")
    asked = options.parse_args()
    add("canonical", "nothing: the base", days(text()), by_day())
    for group in (encodings_and_lines, delimiters, surroundings, spreadsheets, times, languages_and_units,
                  sensors, two_logs, one_log, from_pandas, combined, libreoffice_dresses):
        group()
    broken()
    names = [d.name for d in DRESSES]
    assert len(names) == len(set(names))
    if not asked.check:
        write_all()
    if asked.libreoffice:
        convert()
    readings = sum(check(dress) for dress in DRESSES)
    size = sum(path.stat().st_size for path in ROOT.rglob("*") if path.is_file())
    print(f"{len(DRESSES)} dresses, {readings} readings as in canonical; {len(BROKEN)} broken; {size} bytes")


if __name__ == "__main__":
    main()
