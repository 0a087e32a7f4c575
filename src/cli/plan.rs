//! `plan`: a test day before it comes, and a field sheet for it.

use jiff::civil::Date;

use super::args::PlanOptions;
use super::issue::{open_folder, time_of_issue};
use super::lines::{Lines, Mark};
use super::screen::Screen;
use super::speech::words_for_one;
use super::table::Align;
use super::terminal::{print_lines, print_note_in, print_note_of};
use crate::campaign::find::find_one;
use crate::campaign::kinds::RunKind;
use crate::campaign::{Campaign, read_campaign_to_plan};
use crate::error::{Error, Problem, Result};
use crate::language::{Phrase, Words, fixed};
use crate::message;
use crate::planning::{Plan, plan, usual_kind};
use crate::procedure::notice::outside;
use crate::procedure::s580::own_limits::check_own_limits;
use crate::procedure::{Assessment, assess};
use crate::report::Edition;
use crate::report::files::{Output, write_all};
use crate::report::plan::outputs::{SheetFormat, field_sheet_in};
use crate::report::plan::words::day::{
    expectation, expected_rows, missing, models, spoken_day, tested_unit,
};
use crate::report::plan::words::facts::facts_by_use;
use crate::units::local_clock;

/// Prints the plan of a day and writes its field sheet.
///
/// # Errors
/// [`Error::Usage`] for a folder without a campaign, a date that cannot be planned, or an
/// output folder that cannot be used; [`Error::Campaign`] for the campaign file.
pub fn run(options: &PlanOptions) -> Result<u8> {
    let folder = find_one(&options.campaign)?;
    let issued = time_of_issue()?;
    open_folder(&options.out, false)?;
    let campaign = read_campaign_to_plan(&folder, options.files.reach(), check_own_limits)?;
    let zone = campaign.site.time_zone.clone();
    let date = match &options.date {
        Some(written) => parse_date(written)?,
        None => issued.to_zoned_datetime(zone).date(),
    };
    let words = words_for_one(options.language, &campaign.report);
    let outside = outside(&campaign).map(|notice| words.say(notice.message()));
    let kind = options.kind.unwrap_or_else(|| usual_kind(&campaign));
    let (rated, not_rated) = match kind {
        RunKind::Water => rated_so_far(&campaign),
        RunKind::Cooling | RunKind::Dry => (None, None),
    };
    let plan = plan(campaign, rated.as_ref(), date, kind)?;
    let wishes = &plan.campaign.report;
    let edition = Edition {
        paper: options.paper.unwrap_or(wishes.paper),
        ..Edition::wished(wishes, issued).in_language(options.language)
    };
    let sheets = sheets(&plan, &edition, &options.format)?;
    let mut lines = Lines::new(Screen::out());
    describe(&mut lines, &plan, &words);
    if let Some(first) = sheets.first() {
        let (set, _) = first.name.rsplit_once('.').unwrap_or((&first.name, ""));
        write_all(&options.out, set, &sheets)?;
        lines.blank();
        for sheet in &sheets {
            lines.line(&options.out.join(&sheet.name).display().to_string());
        }
    }
    print_lines(&lines)?;
    outside.iter().for_each(|note| print_note_in(&words, note));
    if let Some(error) = &not_rated {
        print_note_of(&words.say(message!("plan-not-rated")), error);
    }
    Ok(0)
}

/// The field sheet in each form, once; none where no time can be used.
fn sheets(plan: &Plan, edition: &Edition, formats: &[SheetFormat]) -> Result<Vec<Output>> {
    let mut sheets: Vec<Output> = Vec::new();
    for format in formats {
        let sheet = field_sheet_in(*format, plan, edition)?;
        sheets.extend(sheet.filter(|sheet| sheets.iter().all(|other| other.name != sheet.name)));
    }
    Ok(sheets)
}

/// A date as the command line has it.
///
/// # Errors
/// [`Error::Usage`] if it is none.
pub fn parse_date(written: &str) -> Result<Date> {
    written.trim().parse().map_err(|_| {
        let place = std::path::Path::new("--date");
        let problem = Problem::at(place, format!("found \"{written}\", expected a date"));
        Error::Usage(problem.hint("write it as 2026-03-21").into())
    })
}

/// What the campaign's logs say so far, or why they cannot be rated yet.
fn rated_so_far(campaign: &Campaign) -> (Option<Assessment>, Option<Error>) {
    if campaign.runs.is_empty() {
        return (None, None);
    }
    let logs = crate::logs::read_logs(campaign);
    match logs.and_then(|logs| assess(campaign.clone(), logs)) {
        Ok(assessment) => (Some(assessment), None),
        Err(error) => (None, Some(error)),
    }
}

/// What is said of the day: whether it can be used, when, with what; then the tables.
fn describe(lines: &mut Lines, plan: &Plan, words: &Words) {
    let campaign = &plan.campaign;
    let title: Phrase = match campaign.demonstration {
        true => message!("terminal-invented", title = &campaign.title).into(),
        false => (&campaign.title).into(),
    };
    let mark = match plan.has_sheet() {
        true => Mark::Good,
        false => Mark::Bad,
    };
    let said = match plan.has_sheet() {
        true => message!("plan-title"),
        false => message!("plan-title-none"),
    };
    let said = said.with("day", spoken_day(plan)).with("title", title);
    lines.verdict(mark, &words.say(said));
    let kind = (plan.kind != RunKind::Water).then(|| {
        let label = words.say(message!("plan-run"));
        (label, words.say(plan.kind.describe()))
    });
    let facts = facts_by_use(plan, words).into_iter();
    let mut rows: Vec<(String, String)> = kind
        .into_iter()
        .chain(facts.map(|row| (row.label, row.text)))
        .collect();
    if plan.kind == RunKind::Water {
        let label = words.say(message!("plan-lacks"));
        rows.insert(0, (label, words.say(missing(plan))));
    }
    let place = message!(
        "plan-place-text",
        site = &campaign.site.name,
        zone = &campaign.site.time_zone_name
    );
    rows.push((words.say(message!("plan-place")), words.say(place)));
    lines.rows("  ", &rows);
    add_sun(lines, plan, words);
    add_expected(lines, plan, words);
}

/// So long before and after the time that can be used the sun is told, µs.
const BESIDE_WINDOW_US: i64 = 3_600_000_000;

fn add_sun(lines: &mut Lines, plan: &Plan, words: &Words) {
    let window = &plan.day.window;
    let told = (window.from_us - BESIDE_WINDOW_US)..=(window.to_us + BESIDE_WINDOW_US);
    let zone = &plan.campaign.site.time_zone;
    let rows = plan.day.rows.iter();
    let rows = rows.filter(|row| told.contains(&row.time_us)).map(|row| {
        let number = |value: f64| words.say(fixed(value, 0));
        [
            local_clock(row.time_us, zone),
            number(90.0 - row.clear.sun.zenith_deg),
            number(row.clear.sun.azimuth_deg),
            number(row.clear.normal_w_m2),
            number(row.clear.horizontal_w_m2),
        ]
    });
    let rows: Vec<[String; 5]> = rows.collect();
    if plan.kind == RunKind::Cooling || rows.is_empty() {
        return;
    }
    let heads = [
        message!("sheet-clock"),
        message!("plan-elevation"),
        message!("plan-azimuth"),
        message!("plan-normal"),
        message!("plan-horizontal"),
    ]
    .map(|head| words.say(head));
    let header = heads.each_ref().map(|head| (head.as_str(), Align::Right));
    lines.blank().table(header, &rows);
    lines.line(&words.say(models(plan)));
}

fn add_expected(lines: &mut Lines, plan: &Plan, words: &Words) {
    let Some(expectation) = expectation(plan) else {
        return;
    };
    let unit = tested_unit(plan).symbol();
    let heads = [
        message!("sheet-clock"),
        message!("sheet-water", unit = unit),
        match plan.is_of_one_day {
            true => message!("plan-range-one-day", unit = unit),
            false => message!("plan-range", unit = unit),
        },
        message!("plan-power"),
    ]
    .map(|head| words.say(head));
    let header = heads.each_ref().map(|head| (head.as_str(), Align::Right));
    lines.blank().table(header, &expected_rows(plan, words));
    lines.line(&words.say(expectation));
}
