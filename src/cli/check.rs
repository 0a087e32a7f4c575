//! `check`: what can be used so far, and what is missing.

use super::args::CheckOptions;
use super::check_procedures::of_procedures;
use super::table::{Align, table};
use super::terminal::{line, print, print_error};
use crate::campaign::find::find_campaigns;
use crate::campaign::kinds::RunKind;
use jiff::tz::TimeZone;
use unicode_width::UnicodeWidthStr;

use crate::error::Result;
use crate::logs::account::alike;
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::finding::Level;
use crate::procedure::run::Run;
use crate::procedure::s580::notice::clock_ahead_of_sun_h;
use crate::procedure::s580::reason::Reason;
use crate::procedure::s580::result::count_reasons;
use crate::procedure::tested::Tested;
use crate::report::s580::words::uncertainty::{outlook, with_uncertainty};
use crate::shown::shown;
use crate::units::{clock_from_hours, local_clock, short, spoken_date, zoned};

/// Screens each campaign and prints what was found.
///
/// # Errors
/// [`crate::error::Error::Usage`] if there is no campaign; what is wrong with a single one is
/// printed, and told by the exit code.
pub fn run(options: &CheckOptions) -> Result<u8> {
    let mut first_failure = None;
    for (index, folder) in find_campaigns(&options.paths)?.iter().enumerate() {
        if index > 0 {
            print("\n")?;
        }
        let assessed =
            crate::assess_reaching(folder, options.files.reach()).and_then(|assessment| {
                crate::report::check_characters(&assessment)?;
                Ok(assessment)
            });
        match assessed {
            Ok(assessment) => print(&describe(&assessment))?,
            Err(error) => {
                print_error(&error);
                first_failure.get_or_insert(error.exit_code());
            }
        }
    }
    Ok(first_failure.unwrap_or(0))
}

fn describe(assessment: &Assessment) -> String {
    let campaign = &assessment.tested.campaign;
    let mark = if campaign.demonstration {
        " (invented data)"
    } else {
        ""
    };
    let title = format!("{}: {}{mark}", campaign.name, campaign.title);
    let mut text = line(&title) + "\n";
    let others = other_runs(&assessment.tested);
    // A campaign of a dry vessel alone is not held against the practice for water.
    if !assessment.tested.runs.is_empty() || others.is_empty() {
        text += &of_water(assessment);
        text.extend((!others.is_empty()).then_some('\n'));
    }
    text += &others;
    text += &of_procedures(assessment);
    if !assessment.notices.is_empty() {
        text += "\nTo know\n";
    }
    for notice in &assessment.notices {
        text += &line(&format!("  {notice}"));
    }
    text + &how_read(assessment)
}

/// The runs that heat water, and what the practice makes of them.
fn of_water(assessment: &Assessment) -> String {
    let rows: Vec<[String; 6]> = (0..assessment.tested.runs.len())
        .map(|run| run_row(assessment, run))
        .collect();
    let mut text = table(HEADER, &rows);
    text += &holes(assessment);
    text += &not_normalised(assessment);
    text += &verdict(assessment);
    for finding in &assessment.s580.conformity.findings {
        text += &line(&format!("  {}: {}", finding.code.code(), finding.text));
        text += &line(&format!("    mend: {}", finding.remedy));
    }
    let reasons = count_reasons(assessment.s580.intervals.iter());
    if !reasons.is_empty() {
        text += "\nIntervals set aside, and what helps\n";
    }
    for (reason, count) in reasons {
        let by_clock = match reason {
            Reason::OutsideSolarWindow => solar_window_by_clock(assessment),
            _ => String::new(),
        };
        text += &format!(
            "  {} ({count}): {}\n    helps: {}{by_clock}\n",
            reason.code(),
            reason.describe(),
            reason.remedy()
        );
    }
    text
}

/// The runs that heat no water: what each is, and from when to when it was read.
fn other_runs(tested: &Tested) -> String {
    let rows: Vec<[String; 6]> = tested
        .cooling_runs
        .iter()
        .chain(&tested.dry_runs)
        .map(|run| other_row(run, &tested.campaign.site.time_zone))
        .collect();
    match rows.is_empty() {
        true => String::new(),
        false => table(OTHERS_HEADER, &rows),
    }
}

fn other_row(run: &Run, zone: &TimeZone) -> [String; 6] {
    let times_us = match run.plan.kind {
        RunKind::Dry => run.readings.vessel_c.as_ref(),
        RunKind::Water | RunKind::Cooling => Some(&run.readings.water_c),
    };
    let times_us = times_us.map_or(&[][..], |series| &series.time_us);
    let ends = times_us.first().zip(times_us.last());
    let [from, to] = match ends {
        Some((from_us, to_us)) => [from_us, to_us].map(|at_us| local_clock(*at_us, zone)),
        None => ["", ""].map(str::to_owned),
    };
    [
        run.plan.label.clone(),
        run.date.to_string(),
        run.plan.kind.describe().to_string(),
        times_us.len().to_string(),
        from,
        to,
    ]
}

/// How each log was read, those that are written alike together.
fn how_read(assessment: &Assessment) -> String {
    let mut text = "\nHow the logs were read\n".to_owned();
    for (index, group) in alike(&assessment.tested.accounts).into_iter().enumerate() {
        if index > 0 {
            text.push('\n');
        }
        let form: Vec<(String, String)> = group[0]
            .form()
            .iter()
            .map(|(label, text)| (label.to_string(), text.to_string()))
            .collect();
        let logs = group.iter().map(|account| shown(&account.log));
        let labels = form.iter().map(|(label, _)| shown(label)).chain(logs);
        let width = labels.map(|label| label.width()).max().unwrap_or(0);
        let mut row = |label: &str, what: &str| {
            let label = shown(label);
            let blanks = " ".repeat(width - label.width());
            text += &line(&format!("  {label}{blanks}  {what}"));
        };
        for account in &group {
            let zone = &assessment.tested.campaign.site.time_zone;
            row(&account.log, &account.readings(zone).to_string());
            for left_out in account.skipped.describe() {
                row("", &left_out.to_string());
            }
        }
        for (label, what) in &form {
            row(label, what);
        }
    }
    text
}

const HEADER: [(&str, Align); 6] = [
    ("run", Align::Left),
    ("date", Align::Left),
    ("readings", Align::Right),
    ("intervals", Align::Right),
    ("used", Align::Right),
    ("set aside for", Align::Left),
];

/// Of the runs that heat no water.
const OTHERS_HEADER: [(&str, Align); 6] = [
    ("run", Align::Left),
    ("date", Align::Left),
    ("kind", Align::Left),
    ("readings", Align::Right),
    ("from", Align::Left),
    ("to", Align::Left),
];

fn run_row(assessment: &Assessment, index: usize) -> [String; 6] {
    let run = &assessment.tested.runs[index];
    let screening = &assessment.s580.screenings[index];
    let reasons: Vec<String> = count_reasons(assessment.s580.intervals_of(index))
        .into_iter()
        .map(|(reason, count)| format!("{} {count}", reason.code()))
        .collect();
    [
        run.plan.label.clone(),
        run.date.to_string(),
        run.readings.time_us.len().to_string(),
        screening.intervals.to_string(),
        screening.on_line.to_string(),
        reasons.join(", "),
    ]
}

fn holes(assessment: &Assessment) -> String {
    let zone = &assessment.tested.campaign.site.time_zone;
    let (shortest_min, longest_min) = assessment.s580.limits.interval().ends_min();
    let mut text = String::new();
    let runs = assessment.tested.runs.iter();
    for (run, screening) in runs.zip(&assessment.s580.screenings) {
        for hole in &screening.holes {
            let (from, to) = (
                local_clock(hole.from_us, zone),
                local_clock(hole.to_us, zone),
            );
            let date = zoned(hole.from_us, zone).date();
            text += &line(&format!(
                "{}: no interval from {from} to {to} on {date}: no two water readings there are {} to {} minutes apart",
                run.plan.label,
                short(shortest_min),
                short(longest_min)
            ));
        }
    }
    text
}

/// What breaks no limit and is not used all the same.
fn not_normalised(assessment: &Assessment) -> String {
    let runs = assessment.tested.runs.iter();
    let counts = runs.zip(&assessment.s580.screenings);
    let counts = counts.filter(|(_, screening)| screening.not_normalised > 0);
    let lines = counts.map(|(run, screening)| {
        let (label, count) = (&run.plan.label, screening.not_normalised);
        line(&format!("{label}: not normalised, so not used: {count} that break no limit but have no irradiance"))
    });
    lines.collect()
}

/// The solar window by the clock of the last run, where it has an interval.
fn solar_window_by_clock(assessment: &Assessment) -> String {
    let Some(last) = assessment.s580.intervals.last() else {
        return String::new();
    };
    let (start_h, end_h) = assessment.s580.limits.solar_window_h();
    let zone = &assessment.tested.campaign.site.time_zone;
    let ahead_h = clock_ahead_of_sun_h(&last.measured, zone);
    format!(
        "; on {} that was {} to {} by the clock",
        spoken_date(assessment.tested.runs[last.run].date),
        clock_from_hours(start_h + ahead_h),
        clock_from_hours(end_h + ahead_h)
    )
}

/// How far the expanded uncertainty aimed at is, where one is.
fn towards_target(assessment: &Assessment) -> String {
    let uncertainty = assessment.s580.uncertainty();
    let aim = uncertainty.filter(|uncertainty| uncertainty.target.is_some());
    let aim = aim.and_then(outlook);
    aim.map_or_else(String::new, |aim| format!("{aim}\n"))
}

fn verdict(assessment: &Assessment) -> String {
    let conformity = &assessment.s580.conformity;
    let level = conformity.level.describe();
    let rating = match &assessment.s580.rated {
        Some(rated) => format!("Ps(50) so far {}", with_uncertainty(&rated.uncertainty)),
        None => "No rating yet".to_owned(),
    };
    let missing = match (&conformity.missing, conformity.level) {
        (_, Level::NotValid) => {
            "; more of it helps nothing: mend first what is said below".to_owned()
        }
        (Some(missing), _) => format!("; still missing: {missing}"),
        (None, _) if assessment.s580.rated.is_none() => String::new(),
        (None, Level::Indicative) => "; intervals and days are enough, but see below".to_owned(),
        (None, _) => "; intervals and days are enough".to_owned(),
    };
    format!(
        "\n{level}{}. {rating}{missing}.\n{}",
        if assessment.tested.estimates_irradiance() {
            format!(", {}", message!("irradiance-estimated"))
        } else {
            String::new()
        },
        towards_target(assessment)
    )
}
