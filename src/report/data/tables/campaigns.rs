//! The table of campaigns: the rating, how sure it is, the heat balance, and what the rating
//! rests on.

use super::columns::{Cell, Column, Heading, Kind, OfCampaign, Table, column};
use crate::procedure::Assessment;
use crate::report::box_cooker::columns::OF_BOX;
use crate::report::dish::columns::OF_DISH;
use crate::report::dry_vessel::columns::DRY;
use crate::report::efficiency::columns::OF_EFFICIENCY;
use crate::report::heat_balance::data::balance_columns::BALANCED;
use crate::report::number::report_number;
use crate::report::s580::data::rating_columns::RATED;

/// Which campaign, of what, where and by which practice.
const TESTED: &[Column<OfCampaign>] = &[
    column(
        Heading::new(
            "campaign",
            Kind::Text,
            "Name of the campaign: its folder's; with branch, no two rows have one",
        ),
        |one| (&one.tested.campaign.name).into(),
    ),
    column(
        Heading::new("title", Kind::Text, "Title of the campaign"),
        |one| (&one.tested.campaign.title).into(),
    ),
    column(
        Heading::new(
            "demonstration",
            Kind::Truth,
            "The data are invented, to show what the program does",
        ),
        |one| one.tested.campaign.demonstration.into(),
    ),
    column(
        Heading::new("cooker", Kind::Text, "Name of the cooker"),
        |one| (&one.tested.campaign.cooker.name).into(),
    ),
    column(
        Heading::new(
            "cooker_type",
            Kind::Text,
            "box, panel, concentrating or tube",
        ),
        |one| one.tested.campaign.cooker.kind.word().into(),
    ),
    column(
        Heading::number(
            "intercept_area_m2",
            "m²",
            "Area that collects sunlight, projected on the plane normal to the beam",
        ),
        |one| one.tested.campaign.cooker.intercept_area_m2.into(),
    ),
    column(
        Heading::new("site", Kind::Text, "Name of the site"),
        |one| (&one.tested.campaign.site.name).into(),
    ),
    column(
        Heading::number("latitude_deg", "°", "Latitude, north positive"),
        |one| one.tested.campaign.site.latitude_deg.into(),
    ),
    column(
        Heading::number("longitude_deg", "°", "Longitude, east positive"),
        |one| one.tested.campaign.site.longitude_deg.into(),
    ),
    column(
        Heading::number("elevation_m", "m", "Elevation above sea level"),
        |one| one.tested.campaign.site.elevation_m.into(),
    ),
    column(
        Heading::number("boiling_point_c", "°C", "Local boiling point of water"),
        |one| one.tested.boiling_point_c.into(),
    ),
    column(
        Heading::new("tester", Kind::Text, "Who tested").or_null(),
        |one| one.tested.campaign.tester.as_deref().into(),
    ),
    column(
        Heading::new("first_reading", Kind::Instant, "First reading that counts").or_null(),
        |one| {
            let firsts = one
                .tested
                .all_runs()
                .flat_map(|run| run.readings.time_us.first());
            instant(one, firsts.min().copied())
        },
    ),
    column(
        Heading::new("last_reading", Kind::Instant, "Last reading that counts").or_null(),
        |one| {
            let lasts = one
                .tested
                .all_runs()
                .flat_map(|run| run.readings.time_us.last());
            instant(one, lasts.max().copied())
        },
    ),
];

/// What the rating rests on, and whether it conforms.
const RESTS_ON: &[Column<OfCampaign>] = &[
    column(
        Heading::new("runs", Kind::Count, "Number of runs that heat water"),
        |one| one.tested.runs.len().into(),
    ),
    column(
        Heading::new(
            "cooling_runs",
            Kind::Count,
            "Number of runs in which a load cools",
        ),
        |one| one.tested.cooling_runs.len().into(),
    ),
    column(
        Heading::new("dry_runs", Kind::Count, "Number of runs of the dry vessel"),
        |one| one.tested.dry_runs.len().into(),
    ),
    column(
        Heading::new(
            "days",
            Kind::Count,
            "Number of local dates with an interval that the line is drawn through",
        ),
        |one| one.s580.dates.len().into(),
    ),
    column(
        Heading::new("intervals", Kind::Count, "Number of intervals"),
        |one| one.s580.intervals.len().into(),
    ),
    column(
        Heading::new(
            "used",
            Kind::Count,
            "Number of used intervals: the points of the line",
        ),
        |one| one.s580.used().count().into(),
    ),
    column(
        Heading::new(
            "not_normalised",
            Kind::Count,
            "Number of intervals that break no limit but have no irradiance to be normalised by",
        ),
        |one| one.s580.not_normalised().count().into(),
    ),
    column(
        Heading::new(
            "conformity",
            Kind::Text,
            "conforms, conforms-with-notes, indicative or not-valid",
        ),
        |one| one.s580.conformity.level.code_in_files().into(),
    ),
    column(
        Heading::new(
            "findings",
            Kind::Text,
            "Codes of what lowers the conformity, separated by spaces; null without any",
        )
        .or_null(),
        |one| {
            Cell::codes(
                one.s580
                    .conformity
                    .findings
                    .iter()
                    .map(|finding| finding.code.code()),
            )
        },
    ),
    column(
        Heading::new(
            "irradiance_estimate",
            Kind::Text,
            "How irradiance was estimated, by the campaign file's word; null where it was not",
        )
        .or_null(),
        |one| {
            let way = one.tested.campaign.instruments.irradiance_estimate;
            way.map(|way| way.word()).into()
        },
    ),
    column(
        Heading::new(
            "wind_estimated",
            Kind::Truth,
            "The wind was estimated by eye in some run",
        ),
        |one| one.tested.runs.iter().any(|run| run.estimates_wind).into(),
    ),
    column(
        Heading::new("procedure", Kind::Text, "Test practice, by its number"),
        |one| (&one.tested.campaign.procedure).into(),
    ),
    column(
        Heading::new("report_number", Kind::Text, "Number of the report"),
        |one| report_number(one).into(),
    ),
    column(
        Heading::new("tool_version", Kind::Text, "Version of simmerline"),
        |_| env!("CARGO_PKG_VERSION").into(),
    ),
];

/// A moment, in µs since 1970, and its local time.
fn instant(one: &Assessment, time_us: Option<i64>) -> Cell {
    let zone = &one.tested.campaign.site.time_zone;
    time_us.map(|us| Cell::instant(us, zone)).into()
}

fn columns() -> impl Iterator<Item = &'static Column<OfCampaign>> {
    let results = RATED
        .iter()
        .chain(BALANCED)
        .chain(DRY)
        .chain(OF_BOX)
        .chain(OF_DISH)
        .chain(OF_EFFICIENCY);
    TESTED.iter().chain(results).chain(RESTS_ON)
}

/// The table without rows.
pub fn no_campaigns() -> Table {
    Table::new(columns().map(|column| column.heading).collect())
}

/// The row of a campaign.
pub fn campaign_row(campaign: &Assessment) -> Vec<Cell> {
    columns().map(|column| (column.cell)(campaign)).collect()
}
