//! `plan`: a test day before it comes, and a field sheet for it.

use jiff::civil::Date;

use super::args::PlanOptions;
use super::report::{open_folder, time_of_issue};
use super::table::{Align, table};
use super::terminal::{line, print, print_note, print_note_of};
use crate::campaign::find::find_one;
use crate::campaign::kinds::RunKind;
use crate::campaign::read_campaign_to_plan;
use crate::error::{Error, Problem, Result};
use crate::language::Words;
use crate::planning::{Plan, plan, usual_kind};
use crate::procedure::notice::outside;
use crate::procedure::s580::own_limits::check_own_limits;
use crate::procedure::{Assessment, assess};
use crate::report::Edition;
use crate::report::files::write_all;
use crate::report::plan::outputs::field_sheet;
use crate::report::plan::words::day::{
    expectation, expected_rows, missing, models, spoken_day, tested_unit,
};
use crate::report::plan::words::facts::facts;
use crate::units::{fixed, local_clock};

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
    if let Some(notice) = outside(&campaign) {
        print_note(&notice.message().to_string());
    }
    let kind = options.kind.unwrap_or_else(|| usual_kind(&campaign));
    let rated = match kind {
        RunKind::Water => rated_so_far(&campaign),
        RunKind::Cooling | RunKind::Dry => None,
    };
    let plan = plan(campaign, rated.as_ref(), date, kind)?;
    let wishes = &plan.campaign.report;
    let edition = Edition {
        paper: options.paper.unwrap_or(wishes.paper),
        ..Edition::wished(wishes, issued).in_language(options.language)
    };
    let sheet = field_sheet(&plan, &edition)?;
    print(&describe(&plan))?;
    match sheet {
        Some(sheet) => {
            let file = options.out.join(&sheet.name);
            write_all(&options.out, &plan.campaign.name, &[sheet])?;
            print(&format!("\n{}", line(&file.display().to_string())))?;
        }
        None => print("\nNo field sheet: no time of this day can be used.\n")?,
    }
    Ok(0)
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

/// What the campaign's logs say so far; a remark where they cannot be rated yet.
fn rated_so_far(campaign: &crate::campaign::Campaign) -> Option<Assessment> {
    if campaign.runs.is_empty() {
        return None;
    }
    let logs = crate::logs::read_logs(campaign);
    match logs.and_then(|logs| assess(campaign.clone(), logs)) {
        Ok(assessment) => Some(assessment),
        Err(error) => {
            print_note_of(
                "planned as for a first day, since the logs cannot be rated yet",
                &error,
            );
            None
        }
    }
}

fn describe(plan: &Plan) -> String {
    let campaign = &plan.campaign;
    let mark = if campaign.demonstration {
        " (invented data)"
    } else {
        ""
    };
    let words = Words::english();
    let title = format!("{}: {}{mark}", campaign.name, campaign.title);
    let place = format!(
        "{}, {}, clock of {}",
        spoken_day(plan),
        campaign.site.name,
        campaign.site.time_zone_name
    );
    let mut text = line(&title) + &line(&place) + "\n";
    if plan.kind != RunKind::Water {
        text += &line(&format!("{:<14}{}", "run", plan.kind.describe()));
    }
    for row in facts(plan, words) {
        text += &line(&format!("{:<14}{}", row.label, row.text));
    }
    if plan.kind == RunKind::Water {
        text += &format!("\n{}", line(&words.say(missing(plan))));
    }
    if plan.kind != RunKind::Cooling && !plan.day.rows.is_empty() {
        text += &format!(
            "\n{}{}",
            table(SUN_HEADER, &sun_table(plan)),
            line(&models(plan).to_string())
        );
    }
    if let Some(expectation) = expectation(plan) {
        let unit = tested_unit(plan).symbol();
        let (water, band) = (format!("water, {unit}"), format!("95 %, {unit}"));
        let header = [
            ("clock", Align::Left),
            (water.as_str(), Align::Right),
            (band.as_str(), Align::Right),
            ("power, W", Align::Right),
        ];
        text += &format!(
            "\n{}{}",
            table(header, &expected_rows(plan, words)),
            line(&expectation.to_string())
        );
    }
    text
}

const SUN_HEADER: [(&str, Align); 5] = [
    ("clock", Align::Left),
    ("elevation, °", Align::Right),
    ("azimuth, °", Align::Right),
    ("normal, W/m²", Align::Right),
    ("horizontal, W/m²", Align::Right),
];

fn sun_table(plan: &Plan) -> Vec<[String; 5]> {
    let zone = &plan.campaign.site.time_zone;
    plan.day
        .rows
        .iter()
        .map(|row| {
            [
                local_clock(row.time_us, zone),
                fixed(90.0 - row.clear.sun.zenith_deg, 0),
                fixed(row.clear.sun.azimuth_deg, 0),
                fixed(row.clear.normal_w_m2, 0),
                fixed(row.clear.horizontal_w_m2, 0),
            ]
        })
        .collect()
}
