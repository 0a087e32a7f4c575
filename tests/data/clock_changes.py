"""Hours of local dates around clock changes, 2025 to 2028, by Python zoneinfo and the
tzdata package. Run: python3 clock_changes.py > clock_changes.csv"""
import zoneinfo, tzdata, sys
from datetime import datetime, timedelta, date, timezone
zones=["Europe/Madrid","America/New_York","America/Santiago","Australia/Sydney","Australia/Lord_Howe","Africa/Windhoek"]
print(f"# Hours of a local date, from the IANA time zone database: Python {sys.version.split()[0]} zoneinfo, tzdata {tzdata.IANA_VERSION}")
print("# Made by tests/data/clock_changes.py. Each date on which the clocks change from 2025 to 2028, and one on which they do not.")
print("zone,date,hours")
for name in zones:
    z=zoneinfo.ZoneInfo(name)
    d=date(2025,1,1); plain=False
    while d<date(2029,1,1):
        a=datetime(d.year,d.month,d.day,tzinfo=z).astimezone(timezone.utc)
        n=d+timedelta(days=1)
        b=datetime(n.year,n.month,n.day,tzinfo=z).astimezone(timezone.utc)
        h=(b-a).total_seconds()/3600
        if h!=24 or (not plain and d>=date(2026,3,14)):
            if h==24: plain=True
            print(f"{name},{d},{h:g}")
        d=n
