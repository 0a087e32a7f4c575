"""Clear middle days of the months by pvlib, for clear_months.csv.

python3 clear_months.py > clear_months.csv
"""

import numpy as np
import pandas as pd
import pvlib

LATITUDE, LONGITUDE, ELEVATION, ZONE, YEAR = 38.9, -2.9, 620, "Europe/Madrid", 2026
LEAST_W_M2, STANDARD_W_M2, TURBIDITY, ALBEDO = 450.0, 700.0, 3.0, 0.2

pressure_pa = 101325.0 * (1 - 0.0065 * ELEVATION / 288.15) ** 5.255876
print(f"# pvlib {pvlib.__version__}: spa_python, ineichen, isotropic, get_ground_diffuse, minute by minute on")
print(f"# the 15th at {LATITUDE} N, {-LONGITUDE} W, {ELEVATION} m, turbidity {TURBIDITY}; hours with {LEAST_W_M2} W/m2 or more")
print("# normal to the beam, and the integral of G/700 W/m2 over them")
print("month,hours,standard_s")
for month in range(1, 13):
    start = pd.Timestamp(f"{YEAR}-{month:02}-15", tz=ZONE)
    times = pd.date_range(start, start + pd.Timedelta(days=1), freq="1min", inclusive="left")
    sun = pvlib.solarposition.spa_python(
        times, LATITUDE, LONGITUDE, altitude=ELEVATION, pressure=pressure_pa, temperature=12.0, delta_t=69.0)
    zenith = sun["apparent_zenith"]
    mass = pvlib.atmosphere.get_absolute_airmass(
        pvlib.atmosphere.get_relative_airmass(zenith, "kastenyoung1989"), pressure_pa)
    outside = pvlib.irradiance.get_extra_radiation(times, method="spencer")
    sky = pvlib.clearsky.ineichen(zenith, mass, TURBIDITY, altitude=ELEVATION, dni_extra=outside)
    normal = (sky["dni"] + pvlib.irradiance.isotropic(zenith, sky["dhi"])
              + pvlib.irradiance.get_ground_diffuse(zenith, sky["ghi"], albedo=ALBEDO)).fillna(0)
    enough = normal[normal >= LEAST_W_M2].to_numpy()
    print(f"{month},{len(enough) / 60:.3f},{np.sum(enough) * 60 / STANDARD_W_M2:.1f}")
