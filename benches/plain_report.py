"""What somebody would write with pandas and matplotlib: one campaign's rating, as a PDF.

    python plain_report.py CAMPAIGN.toml OUT.pdf

The yardstick of `targets.py`, not a product: ten-minute intervals, the usual limits, the line,
1,000 draws of its residuals, and a PDF of the pages that a report needs (result, one a run,
conditions, intervals). It states no uncertainty of instruments, sets aside less, carries nothing
inside and is no archive's PDF, so that it does much less than what it is held against.
"""

import pathlib
import sys
import tomllib

import matplotlib

matplotlib.use("Agg")
import matplotlib.pyplot as plt  # noqa: E402
import numpy as np  # noqa: E402
import pandas as pd  # noqa: E402
from matplotlib.backends.backend_pdf import PdfPages  # noqa: E402

HEAT_CAPACITY_J_PER_KG_K = 4186.0
STANDARD_IRRADIANCE_W_M2 = 700.0
INTERVAL_S = 600


def intervals_of(log, load_kg):
    """Ten-minute intervals of a log, each with its powers and whether it is within limits."""
    rows = []
    for start, part in log.resample(f"{INTERVAL_S}s", origin="start"):
        if len(part) < 9:
            continue
        gain_k = part["water_c"].iloc[-1] - part["water_c"].iloc[0]
        duration_s = (part.index[-1] - part.index[0]).total_seconds()
        power_w = load_kg * HEAT_CAPACITY_J_PER_KG_K * gain_k / duration_s
        irradiance = part["irradiance_w_m2"]
        rows.append(
            {
                "start": start,
                "water_c": part["water_c"].mean(),
                "ambient_c": part["ambient_c"].mean(),
                "irradiance_w_m2": irradiance.mean(),
                "wind_m_s": part["wind_m_s"].mean(),
                "power_w": power_w,
                "standard_w": power_w * STANDARD_IRRADIANCE_W_M2 / irradiance.mean(),
                "difference_k": (part["water_c"] - part["ambient_c"]).mean(),
                "used": irradiance.between(450, 1100).all()
                and irradiance.max() - irradiance.min() <= 100
                and part["wind_m_s"].mean() <= 1.0
                and 20 <= part["ambient_c"].mean() <= 35
                and part["water_c"].max() < 90,
            }
        )
    return pd.DataFrame(rows)


def table_page(pdf, title, frame):
    figure, axes = plt.subplots(figsize=(8.3, 11.7))
    axes.axis("off")
    axes.set_title(title)
    table = axes.table(cellText=frame.values, colLabels=frame.columns, loc="upper center")
    table.auto_set_font_size(False)
    table.set_fontsize(6)
    pdf.savefig(figure)
    plt.close(figure)


def main(campaign, out):
    text = tomllib.loads(pathlib.Path(campaign).read_text(encoding="utf-8"))
    folder, load_kg = pathlib.Path(campaign).parent, text["load"]["water_kg"]
    logs = {
        run["log"]: pd.read_csv(
            folder / run["log"], comment="#", parse_dates=["time"], index_col="time"
        )
        for run in text["run"]
    }
    intervals = pd.concat(
        [intervals_of(log, load_kg).assign(run=name) for name, log in logs.items()]
    )
    used = intervals[intervals["used"]]
    x, y = used["difference_k"].to_numpy(), used["standard_w"].to_numpy()
    slope, intercept = np.polyfit(x, y, 1)
    residuals = y - (intercept + slope * x)
    draws = np.random.default_rng(1)
    rated = [
        np.polyval(np.polyfit(x, y + draws.choice(residuals, len(x)), 1), 50) for _ in range(1000)
    ]
    lower, upper = np.quantile(rated, [0.025, 0.975])
    with PdfPages(out) as pdf:
        figure, axes = plt.subplots(figsize=(8.3, 11.7))
        axes.scatter(x, y)
        axes.plot([0, 80], [intercept, intercept + 80 * slope])
        axes.set_xlabel("Temperature difference, K")
        axes.set_ylabel("Standardised cooking power, W")
        axes.set_title(
            f"{text['campaign']['title']}: {intercept + 50 * slope:.0f} W ({lower:.0f} to {upper:.0f})"
        )
        pdf.savefig(figure)
        plt.close(figure)
        for name, log in logs.items():
            figure, panels = plt.subplots(4, 1, figsize=(8.3, 11.7), sharex=True)
            for panel, column in zip(panels, log.columns):
                panel.plot(log.index, log[column])
                panel.set_ylabel(column)
            figure.suptitle(name)
            pdf.savefig(figure)
            plt.close(figure)
        conditions = intervals.drop(columns=["start", "run", "used"]).describe().round(2)
        table_page(pdf, "Conditions", conditions.reset_index())
        for first in range(0, len(intervals), 45):
            table_page(pdf, "Intervals", intervals.iloc[first : first + 45].round(1))


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    main(*sys.argv[1:])
