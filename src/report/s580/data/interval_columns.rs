//! What was measured in an interval and what the practice says of it, in the table of intervals.

use crate::report::data::tables::columns::{Cell, Column, Heading, Kind, OfInterval, column};
use crate::units::rfc3339;

/// Used and set aside. What was not measured is null.
pub const MEASURED: &[Column<OfInterval>] = &[
    column(
        Heading::new(
            "campaign",
            Kind::Text,
            "Name of the campaign: its folder's, as in the table of campaigns",
        )
        .not_in_csv(),
        |campaign, _| (&campaign.tested.campaign.name).into(),
    ),
    column(
        Heading::new(
            "run",
            Kind::Text,
            "Run: its log, with the date if the log holds several",
        ),
        |campaign, interval| (&campaign.tested.runs[interval.run].plan.label).into(),
    ),
    column(
        Heading::new("start", Kind::Instant, "Start of the interval"),
        |campaign, interval| {
            Cell::instant(
                interval.measured.span.from_us,
                &campaign.tested.campaign.site.time_zone,
            )
        },
    ),
    column(
        Heading::new("end", Kind::Instant, "End of the interval"),
        |campaign, interval| {
            Cell::instant(
                interval.measured.span.to_us,
                &campaign.tested.campaign.site.time_zone,
            )
        },
    ),
    column(
        Heading::new(
            "start_local",
            Kind::Text,
            "Start in the site's time, with its offset from UTC (RFC 3339)",
        )
        .not_in_csv(),
        |campaign, interval| {
            rfc3339(
                interval.measured.span.from_us,
                &campaign.tested.campaign.site.time_zone,
            )
            .into()
        },
    ),
    column(
        Heading::new(
            "end_local",
            Kind::Text,
            "End in the site's time, with its offset from UTC (RFC 3339)",
        )
        .not_in_csv(),
        |campaign, interval| {
            rfc3339(
                interval.measured.span.to_us,
                &campaign.tested.campaign.site.time_zone,
            )
            .into()
        },
    ),
    column(
        Heading::number("duration_s", "s", "Time that really passed"),
        |_, interval| interval.measured.duration_s.into(),
    ),
    column(
        Heading::number("water_start_c", "°C", "Water temperature at the start"),
        |_, interval| interval.measured.water_start_c.into(),
    ),
    column(
        Heading::number("water_end_c", "°C", "Water temperature at the end"),
        |_, interval| interval.measured.water_end_c.into(),
    ),
    column(
        Heading::number(
            "water_mean_c",
            "°C",
            "Mean water temperature, weighted by time",
        ),
        |_, interval| interval.measured.water.mean.into(),
    ),
    column(
        Heading::number(
            "ambient_mean_c",
            "°C",
            "Mean ambient temperature, weighted by time",
        )
        .or_null(),
        |_, interval| interval.measured.ambient.map(|ambient| ambient.mean).into(),
    ),
    column(
        Heading::number(
            "irradiance_mean_w_m2",
            "W/m²",
            "Mean irradiance, weighted by time",
        )
        .or_null(),
        |_, interval| interval.measured.irradiance.map(|sun| sun.mean).into(),
    ),
    column(
        Heading::number("irradiance_min_w_m2", "W/m²", "Least irradiance").or_null(),
        |_, interval| interval.measured.irradiance.map(|sun| sun.min).into(),
    ),
    column(
        Heading::number("irradiance_max_w_m2", "W/m²", "Greatest irradiance").or_null(),
        |_, interval| interval.measured.irradiance.map(|sun| sun.max).into(),
    ),
    column(
        Heading::number("wind_mean_m_s", "m/s", "Mean wind speed, weighted by time").or_null(),
        |_, interval| interval.measured.wind.map(|wind| wind.mean).into(),
    ),
    column(
        Heading::number(
            "solar_time_start_h",
            "h",
            "Apparent solar time of the start",
        ),
        |_, interval| interval.measured.solar_start_h.into(),
    ),
    column(
        Heading::number("solar_time_end_h", "h", "Apparent solar time of the end"),
        |_, interval| interval.measured.solar_end_h.into(),
    ),
    column(
        Heading::number(
            "cooking_power_w",
            "W",
            "P: heat taken up by the water over the duration; negative while it cools",
        ),
        |_, interval| interval.measured.cooking_power_w.into(),
    ),
    column(
        Heading::number(
            "standardised_power_w",
            "W",
            "Ps: P times 700 W/m² over mean irradiance",
        )
        .or_null(),
        |_, interval| interval.measured.standardised_power_w.into(),
    ),
    column(
        Heading::number(
            "temperature_difference_k",
            "K",
            "Td: mean water minus mean ambient temperature",
        )
        .or_null(),
        |_, interval| interval.measured.difference_k.into(),
    ),
    column(
        Heading::new("used", Kind::Truth, "It is a point of the line"),
        |_, interval| interval.is_on_line().into(),
    ),
    column(
        Heading::new(
            "reasons",
            Kind::Text,
            "Codes of all reasons to set it aside, with spaces between; null if it breaks no limit",
        )
        .or_null(),
        |_, interval| Cell::codes(interval.reasons().iter().map(|reason| reason.code())),
    ),
    column(
        Heading::new(
            "demonstration",
            Kind::Truth,
            "The data are invented, to show what the program does",
        ),
        |campaign, _| campaign.tested.campaign.demonstration.into(),
    ),
    column(
        Heading::new(
            "verdict",
            Kind::Text,
            "used, not-normalised (it breaks no limit, and has no irradiance) or set-aside",
        ),
        |_, interval| interval.verdict.code().into(),
    ),
];
