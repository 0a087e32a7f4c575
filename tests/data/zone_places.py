"""Where each IANA time zone is at home: latitude and longitude of its principal place, degrees,
north and east positive, from zone.tab of the time zone database (public domain), as the Python
package tzdata carries it.
Run: python3 tests/data/zone_places.py > src/procedure/slips/zone_places.csv"""
import importlib.resources
import re

import tzdata


def degrees(text):
    """±DDMM, ±DDDMM, ±DDMMSS or ±DDDMMSS in degrees."""
    sign = -1 if text[0] == "-" else 1
    digits = text[1:]
    whole = 2 if len(digits) in (4, 6) else 3
    parts = [int(digits[:whole]), int(digits[whole : whole + 2]), int(digits[whole + 2 :] or 0)]
    return sign * (parts[0] + parts[1] / 60 + parts[2] / 3600)


text = importlib.resources.files("tzdata").joinpath("zoneinfo/zone.tab").read_text()
rows = []
for line in text.splitlines():
    if not line.startswith("#"):
        _, place, zone = line.split("\t")[:3]
        north, east = re.fullmatch(r"([+-]\d+)([+-]\d+)", place).groups()
        rows.append(f"{zone},{degrees(north):.2f},{degrees(east):.2f}")
print(f"# Principal place of each zone: zone.tab of the IANA time zone database {tzdata.IANA_VERSION}, public domain.")
print("# Made by tests/data/zone_places.py. zone, degrees north, degrees east")
print("\n".join(sorted(rows)))
