//! The field sheet: one page for a pencil.

use serde::Serialize;

use super::words::{
    aiming, expectation, expected_rows, load_rows, missing, models, spoken_day, sun_rows,
    water_unit,
};
use crate::error::Result;
use crate::measure::Unit;
use crate::physics::wind::BEAUFORT;
use crate::planning::Plan;
use crate::report::document::{self, FIELD_SHEET};
use crate::report::files::Output;
use crate::report::model::report::Row;
use crate::report::outputs::refuse_missing_characters;
use crate::report::{Edition, Setting};
use crate::units::{local_clock, range};

/// Beaufort numbers that the sheet explains: beyond them nobody tests.
const FORCES: usize = 5;

/// The sheet.
#[derive(Debug, Clone, Serialize)]
pub struct FieldSheet {
    title: String,
    subtitle: String,
    mark: String,
    setting: Setting,
    facts: Vec<Row>,
    missing: String,
    checks: Vec<String>,
    header: Vec<String>,
    rows: Vec<SheetRow>,
    has_irradiance: bool,
    has_expected: bool,
    notes: Vec<String>,
    forces: String,
    caution: String,
}

/// One line to fill in.
#[derive(Debug, Clone, Serialize)]
struct SheetRow {
    clock: String,
    expected: String,
    /// Aim in the ten minutes that begin here: the clock time.
    aim: String,
}

/// The field sheet of a plan as a PDF of one page; `None` where no time can be used.
///
/// # Errors
/// [`crate::error::Error::Campaign`] for a character that the fonts lack,
/// [`crate::error::Error::Internal`] if it cannot be set.
pub fn field_sheet(plan: &Plan, edition: &Edition) -> Result<Option<Output>> {
    if plan.times_us.is_empty() {
        return Ok(None);
    }
    let sheet = build(plan, edition);
    refuse_missing_characters(&[&plan.campaign], &sheet)?;
    Ok(Some(Output {
        name: format!("{}.{}.field-sheet.pdf", plan.campaign.name, plan.date),
        bytes: document::typeset(FIELD_SHEET, &sheet, Vec::new(), &[], edition.issued)?,
    }))
}

/// Puts the sheet into words.
pub fn build(plan: &Plan, edition: &Edition) -> FieldSheet {
    let campaign = &plan.campaign;
    let unit = |unit: Option<Unit>| unit.map_or("°C", Unit::symbol);
    let units = &campaign.rules.units;
    let header = [
        "clock".to_owned(),
        format!("water, {}", unit(units.water_temperature)),
        format!("air, {}", unit(units.ambient_temperature)),
        "wind, Bft".to_owned(),
        "sky: clear or cloud".to_owned(),
        "irradiance, W/m²".to_owned(),
        format!("expected, {}", water_unit(plan).symbol()),
        "aim".to_owned(),
        "notes".to_owned(),
    ];
    let mut facts = sun_rows(plan);
    facts.extend(load_rows(plan));
    facts.push(Row::new("aim", aiming(plan)));
    FieldSheet {
        title: campaign.cooker.name.clone(),
        subtitle: format!(
            "{} · {} · clock of {}",
            spoken_day(plan),
            campaign.site.name,
            campaign.site.time_zone_name
        ),
        mark: if campaign.demonstration {
            "Invented data, for demonstration".to_owned()
        } else {
            String::new()
        },
        setting: edition.setting(),
        facts,
        missing: missing(plan),
        checks: CHECKS
            .into_iter()
            .filter(|check| campaign.instruments.has_own_irradiance() || *check != SENSOR_CHECK)
            .map(str::to_owned)
            .collect(),
        header: header.to_vec(),
        rows: sheet_rows(plan),
        has_irradiance: campaign.instruments.has_own_irradiance(),
        has_expected: plan.expected.is_some(),
        notes: expectation(plan)
            .into_iter()
            .chain([models(plan)])
            .collect(),
        forces: forces(),
        caution: CAUTION.to_owned(),
    }
}

/// For those who have one.
const SENSOR_CHECK: &str = "irradiance sensor clean and facing the sun";

/// What to look at before the first reading.
const CHECKS: [&str; 8] = [
    "no shade on the cooker until the end",
    "wind light: smoke drifts, leaves still",
    "water weighed, not poured by the cup",
    "sensor in the water, 10 mm above the bottom, off the wall",
    "lid on, and it stays on",
    "air thermometer in the shade, out of the cooker's light",
    SENSOR_CHECK,
    "aimed, and nothing that burns near the focus",
];

const CAUTION: &str = "Never look into the focus or at the sun. Hot metal and steam burn: gloves, lid away from you. Keep away children and all that burns; stay with the cooker; turn it from the sun before you reach in; tie it down against wind. Shade and water for yourself. Throw the test water away. Local codes and licensed practice come first.";

fn sheet_rows(plan: &Plan) -> Vec<SheetRow> {
    let zone = &plan.campaign.site.time_zone;
    let clock = |time_us: i64| local_clock(time_us, zone);
    let times = &plan.times_us;
    let aims = plan.aimings_us.clone().unwrap_or_default();
    let expected = expected_rows(plan);
    let row = |(index, &time_us): (usize, &i64)| {
        let next_us = times.get(index + 1).copied().unwrap_or(i64::MAX);
        let here: Vec<String> = aims
            .iter()
            .filter(|aim_us| {
                (time_us..next_us).contains(*aim_us) || (index == 0 && **aim_us < time_us)
            })
            .map(|aim_us| clock(*aim_us))
            .collect();
        let expected = expected.get(index);
        SheetRow {
            clock: clock(time_us),
            expected: expected.map_or_else(String::new, |[_, water, band, _]| {
                if water == band {
                    water.clone()
                } else {
                    format!("{water} ({band})")
                }
            }),
            aim: here.join(" "),
        }
    };
    times.iter().enumerate().map(row).collect()
}

fn forces() -> String {
    let rows = BEAUFORT.iter().take(FORCES).enumerate();
    let words: Vec<String> = rows
        .map(|(number, force)| {
            format!(
                "{number} {} ({} m/s)",
                force.sign,
                range(force.lowest_m_s, force.highest_m_s, 1)
            )
        })
        .collect();
    format!("Wind by eye, Beaufort (WMO-No. 8): {}.", words.join("; "))
}
