"""Sunrise, noon, sunset and sun positions at ten places by pvlib, for sun_events.csv.

python3 sun_events.py > sun_events.csv
"""

import pandas as pd
import pvlib
from scipy.optimize import brentq

PLACES = [
    ("Etc/UTC", 0.0, 0.0, 0, "2026-03-20"),
    ("America/Lima", -16.4, -71.5, 2335, "2026-03-14"),
    ("Europe/Madrid", 37.4, -5.98, 12, "2026-06-21"),
    ("Asia/Kolkata", 26.9, 75.8, 430, "2026-11-03"),
    ("Africa/Nairobi", -1.29, 36.82, 1795, "2026-02-11"),
    ("Australia/Adelaide", -34.9, 138.6, 50, "2026-09-23"),
    ("America/Denver", 39.74, -105.18, 1830, "2026-12-21"),
    ("Pacific/Auckland", -36.8, 174.7, 30, "2026-05-14"),
    ("Europe/Oslo", 69.65, 18.96, 10, "2026-06-21"),  # the sun does not set
    ("Europe/Oslo", 69.65, 18.96, 10, "2026-12-21"),  # it does not rise
]

# sun_rise_set_transit_spa of pvlib gives the day before's rise where it falls on the UTC date
# before noon's, so rise and set are found here as the zeros of pvlib's own positions.


def zenith(instant, latitude, longitude, elevation):
    times = pd.DatetimeIndex([pd.Timestamp(instant, unit="s", tz="UTC")])
    return pvlib.solarposition.spa_python(
        times, latitude, longitude, altitude=elevation, delta_t=69.0).zenith.iloc[0]


def crossing(noon, side, place):
    height = lambda seconds: zenith(seconds, *place) - 90.8333
    far = noon + side * 43200
    if (height(noon) < 0) == (height(far) < 0):
        return pd.NaT
    return pd.Timestamp(brentq(height, noon, far, xtol=0.01), unit="s", tz="UTC").round("s")


print(f"# pvlib {pvlib.__version__}, spa_python (delta_t 69 s), times UTC; noon by sun_rise_set_transit_spa,")
print("# rise and set where its zenith without refraction is 90.8333 degrees;")
print("# zenith without refraction, and azimuth, at local 10:00, 12:00 and 15:00")
print("time_zone,latitude_deg,longitude_deg,elevation_m,date,rise,noon,set,"
      "zenith_10_deg,azimuth_10_deg,zenith_12_deg,azimuth_12_deg,zenith_15_deg,azimuth_15_deg")
for zone, latitude, longitude, elevation, date in PLACES:
    day = pd.DatetimeIndex([date]).tz_localize(zone)
    events = pvlib.solarposition.sun_rise_set_transit_spa(day, latitude, longitude, delta_t=69.0)
    times = pd.DatetimeIndex([f"{date} {clock}" for clock in ("10:00", "12:00", "15:00")]).tz_localize(zone)
    sun = pvlib.solarposition.spa_python(times, latitude, longitude, altitude=elevation, delta_t=69.0)
    spell = lambda time: "" if pd.isna(time) else time.tz_convert("UTC").strftime("%Y-%m-%dT%H:%M:%SZ")
    cells = [zone, latitude, longitude, elevation, date]
    noon = events["transit"].iloc[0]
    rise, sunset = (crossing(noon.timestamp(), side, (latitude, longitude, elevation)) for side in (-1, 1))
    cells += [spell(rise), spell(noon), spell(sunset)]
    for row in sun.itertuples():
        cells += [f"{row.zenith:.5f}", f"{row.azimuth:.5f}"]
    print(",".join(str(cell) for cell in cells))
