//! The field sheet: one page for a pencil.

use serde::Serialize;

use super::day::{
    aiming, expectation, expected_rows, load_rows, missing, models, spoken_day, sun_rows,
    water_unit,
};
use crate::language::{Message, Words, clauses, joined, range};
use crate::measure::Unit;
use crate::message;
use crate::physics::wind::{BEAUFORT, sign};
use crate::planning::Plan;
use crate::report::rows::Row;
use crate::report::{Edition, Setting};
use crate::units::local_clock;

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
    /// Aim in the interval that begins here: the clock time.
    aim: String,
}

/// Puts the sheet into words.
pub fn build(plan: &Plan, edition: &Edition) -> FieldSheet {
    let words = &edition.words;
    let campaign = &plan.campaign;
    let mut facts = sun_rows(plan, words);
    facts.extend(load_rows(plan, words));
    facts.push(Row::new(
        &words.say(message!("plan-aim")),
        words.say(aiming(plan)),
    ));
    let notes = expectation(plan).into_iter().chain([models(plan)]);
    FieldSheet {
        title: campaign.cooker.name.clone(),
        subtitle: words.say(message!(
            "sheet-subtitle",
            day = spoken_day(plan),
            site = &campaign.site.name,
            zone = &campaign.site.time_zone_name
        )),
        mark: if campaign.demonstration {
            words.say(message!("sheet-mark"))
        } else {
            String::new()
        },
        setting: edition.setting(),
        facts,
        missing: words.say(missing(plan)),
        checks: checks(campaign.instruments.has_own_irradiance())
            .into_iter()
            .map(|check| words.say(check))
            .collect(),
        header: header(plan).map(|name| words.say(name)).to_vec(),
        rows: sheet_rows(plan, words),
        has_irradiance: campaign.instruments.has_own_irradiance(),
        has_expected: plan.expected.is_some(),
        notes: notes.map(|note| words.say(note)).collect(),
        forces: words.say(forces()),
        caution: words
            .say(joined(
                [message!("caution-field-sheet"), message!("caution-governs")],
                " ",
            ))
            .trim_end()
            .to_owned(),
    }
}

fn header(plan: &Plan) -> [Message; 9] {
    let unit = |unit: Option<Unit>| unit.map_or("°C", Unit::symbol);
    let units = &plan.campaign.rules.units;
    [
        message!("sheet-clock"),
        message!("sheet-water", unit = unit(units.water_temperature)),
        message!("sheet-air", unit = unit(units.ambient_temperature)),
        message!("sheet-wind"),
        message!("sheet-sky"),
        message!("sheet-irradiance"),
        message!("sheet-expected", unit = water_unit(plan).symbol()),
        message!("sheet-aim"),
        message!("sheet-notes"),
    ]
}

/// What to look at before the first reading.
fn checks(has_irradiance: bool) -> Vec<Message> {
    let mut checks = vec![
        message!("check-shade"),
        message!("check-wind"),
        message!("check-weighed"),
        message!("check-sensor"),
        message!("check-lid"),
        message!("check-air"),
    ];
    if has_irradiance {
        checks.push(message!("check-irradiance"));
    }
    checks.push(message!("check-aimed"));
    checks
}

fn sheet_rows(plan: &Plan, words: &Words) -> Vec<SheetRow> {
    let zone = &plan.campaign.site.time_zone;
    let clock = |time_us: i64| local_clock(time_us, zone);
    let times = &plan.times_us;
    let aims = plan.aimings_us.clone().unwrap_or_default();
    let expected = expected_rows(plan, words);
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

fn forces() -> Message {
    let rows = BEAUFORT.iter().take(FORCES).enumerate();
    let forces = rows.map(|(number, force)| {
        message!(
            "sheet-force",
            number = number.to_string(),
            sign = sign(number),
            speeds = range(force.lowest_m_s, force.highest_m_s, 1)
        )
    });
    message!("sheet-forces", forces = clauses(forces))
}
