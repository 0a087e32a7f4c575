//! The field sheet: one page for a pencil.

use serde::Serialize;

use super::day::{expectation, expected_rows, missing, models, spoken_day, tested_unit};
use super::facts::facts;
use crate::campaign::kinds::RunKind;
use crate::campaign::model::{CookerType, Plane};
use crate::language::{
    Message, PairedUnit, Phrase, UnitSystem, Words, clauses, joined, metres_per_second, range,
    within_brackets,
};
use crate::message;
use crate::physics::wind::{BEAUFORT, sign};
use crate::planning::Plan;
use crate::planning::pace::{COOLING_LONGEST_MIN, COOLING_STEP_MIN};
use crate::report::rows::Row;
use crate::report::spoken::author;
use crate::report::{Edition, Setting};
use crate::units::local_clock;

/// Beaufort numbers that the sheet explains: beyond them nobody tests.
const FORCES: usize = 5;

/// The sheet.
#[derive(Debug, Clone, Serialize)]
pub struct FieldSheet {
    title: String,
    /// Who tests, as far as the campaign file says it; else this program.
    author: String,
    subtitle: String,
    mark: String,
    setting: Setting,
    facts: Vec<Row>,
    /// Empty where intervals and days do not count.
    missing: String,
    checks: Vec<String>,
    /// What the lines to write on are for.
    blanks: Vec<String>,
    header: Vec<String>,
    rows: Vec<SheetRow>,
    has_sky: bool,
    has_irradiance: bool,
    has_expected: bool,
    has_aim: bool,
    notes: Vec<String>,
    forces: String,
    caution: String,
}

/// One line to fill in.
#[derive(Debug, Clone, Serialize)]
struct SheetRow {
    /// Of a load that cools, minutes since the first reading.
    clock: String,
    expected: String,
    /// Aim in the interval that begins here: the clock time.
    aim: String,
}

/// Puts the sheet into words.
pub fn build(plan: &Plan, edition: &Edition) -> FieldSheet {
    let words = &edition.words;
    let campaign = &plan.campaign;
    let say = |messages: Vec<Message>| messages.into_iter().map(|said| words.say(said)).collect();
    let is_of_water = plan.kind == RunKind::Water;
    let in_sun = plan.kind != RunKind::Cooling;
    let notes = expectation(plan)
        .into_iter()
        .chain(in_sun.then(|| models(plan)));
    FieldSheet {
        title: campaign.cooker.name.clone(),
        author: author(campaign).to_owned(),
        subtitle: words.say(subtitle(plan)),
        mark: if campaign.demonstration {
            words.say(message!("sheet-mark"))
        } else {
            String::new()
        },
        setting: edition.setting(),
        facts: facts(plan, words),
        missing: match is_of_water {
            true => words.say(missing(plan)),
            false => String::new(),
        },
        checks: say(checks(plan)),
        blanks: say(blanks(plan.kind, words.units)),
        header: say(header(plan).to_vec()),
        rows: sheet_rows(plan, words),
        has_sky: in_sun,
        has_irradiance: has_irradiance(plan),
        has_expected: plan.expected.is_some(),
        has_aim: in_sun,
        notes: say(notes.collect()),
        forces: words.say(forces()),
        caution: words
            .say(joined(
                [caution(plan.kind), message!("caution-governs")],
                " ",
            ))
            .trim_end()
            .to_owned(),
    }
}

/// Day and place, and what is tested unless it is water.
fn subtitle(plan: &Plan) -> Phrase {
    let of_day = message!(
        "sheet-subtitle",
        day = spoken_day(plan),
        site = &plan.campaign.site.name,
        zone = &plan.campaign.site.time_zone_name
    );
    match plan.kind {
        RunKind::Water => of_day.into(),
        kind => joined([of_day, kind.describe()], " · "),
    }
}

/// Whether a sensor of irradiance is read.
fn has_irradiance(plan: &Plan) -> bool {
    plan.kind != RunKind::Cooling && plan.campaign.instruments.has_own_irradiance()
}

fn header(plan: &Plan) -> [Message; 9] {
    let tested = match plan.kind {
        RunKind::Water | RunKind::Cooling => message!("sheet-water"),
        RunKind::Dry => message!("sheet-vessel"),
    };
    [
        match plan.kind {
            RunKind::Water | RunKind::Dry => message!("sheet-clock"),
            RunKind::Cooling => message!("sheet-after"),
        },
        tested.with("unit", tested_unit(plan).symbol()),
        message!("sheet-air", unit = plan.campaign.air_unit().symbol()),
        message!("sheet-wind"),
        message!("sheet-sky"),
        message!("sheet-irradiance"),
        message!("sheet-expected", unit = tested_unit(plan).symbol()),
        message!("sheet-aim"),
        message!("sheet-notes"),
    ]
}

/// What to look at before the first reading.
fn checks(plan: &Plan) -> Vec<Message> {
    let is_box = plan.campaign.cooker.kind == CookerType::Box;
    let mut checks = match plan.kind {
        RunKind::Water => vec![
            message!("check-shade"),
            message!("check-wind"),
            message!("check-weighed"),
            message!("check-sensor"),
        ],
        RunKind::Dry => vec![
            message!("check-shade"),
            message!("check-wind"),
            message!("check-empty"),
            message!("check-no-plastic"),
            message!("check-dial"),
        ],
        RunKind::Cooling => vec![
            message!("check-no-sun"),
            message!("check-wind"),
            message!("check-weighed"),
            message!("check-sensor"),
            message!("check-in-place"),
        ],
    };
    checks.extend([message!("check-lid"), message!("check-air")]);
    if has_irradiance(plan) {
        let plane = plan.campaign.instruments.irradiance_plane;
        checks.push(if plane == Some(Plane::Horizontal) {
            message!("check-irradiance-flat")
        } else {
            message!("check-irradiance")
        });
    }
    if plan.kind == RunKind::Dry && is_box {
        checks.push(message!("check-mirrors"));
    }
    if plan.kind != RunKind::Cooling {
        checks.push(message!("check-aimed"));
    }
    checks
}

/// What the lines to write on are for. Water is weighed on a scale of the unit that the report
/// has beside kilograms, for which the campaign file has a key.
fn blanks(kind: RunKind, units: UnitSystem) -> Vec<Message> {
    let unit = match units {
        UnitSystem::Si => PairedUnit::Kilogram.symbol(),
        UnitSystem::Us => PairedUnit::Kilogram.us_symbol(),
    };
    let mut blanks = vec![message!("sheet-tester")];
    if kind.has_water() {
        blanks.push(message!("sheet-weighed", unit = unit));
    }
    if kind == RunKind::Cooling {
        blanks.push(message!("sheet-began"));
    }
    blanks
}

fn caution(kind: RunKind) -> Message {
    match kind {
        RunKind::Water => message!("caution-field-sheet"),
        RunKind::Cooling => message!("caution-field-sheet-cooling"),
        RunKind::Dry => message!("caution-field-sheet-dry"),
    }
}

/// Lines by the minutes since the first reading.
fn cooling_rows() -> Vec<SheetRow> {
    let minutes = (0..=COOLING_LONGEST_MIN).step_by(COOLING_STEP_MIN as usize);
    let row = |minutes: i32| SheetRow {
        clock: minutes.to_string(),
        expected: String::new(),
        aim: String::new(),
    };
    minutes.map(row).collect()
}

fn sheet_rows(plan: &Plan, words: &Words) -> Vec<SheetRow> {
    if plan.kind == RunKind::Cooling {
        return cooling_rows();
    }
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
            speeds = within_brackets(metres_per_second(range(
                force.lowest_m_s,
                force.highest_m_s,
                1
            )))
        )
    });
    message!("sheet-forces", forces = clauses(forces))
}
