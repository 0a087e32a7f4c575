//! `enter`: a pencilled field sheet is typed in.

use std::io::{self, BufRead, IsTerminal};
use std::path::Path;

use jiff::civil::Date;

use super::args::EnterOptions;
use super::enter_log::{NOT_SAVED, TypedLog};
use super::enter_notes::{Notes, save_notes};
use super::enter_run::{add_run, kind_beside, kind_of_log};
use super::enter_words::{greeting, help};
use super::lines::Lines;
use super::screen::Screen;
use super::terminal::{
    print, print_lines, print_note, print_note_with_hint, print_sentences, quoted,
};
use crate::campaign::find::CAMPAIGN_FILE;
use crate::campaign::kinds::RunKind;
use crate::campaign::{Campaign, read_campaign_to_plan};
use crate::entry::desk::{Desk, Outcome};
use crate::entry::form::Form;
use crate::entry::sheet::spoken;
use crate::entry::start::{common_start, next_time, read_date, read_start, window_start};
use crate::entry::value::Refusal;
use crate::error::{Error, Problem, Result, why};
use crate::measure::{Kind, Unit};
use crate::planning::pace::step_min;
use crate::procedure::s580::Limits;
use crate::procedure::s580::own_limits::check_own_limits;
use crate::procedure::site::local_boiling_point_c;
use crate::report::files::try_folder;
use crate::shown::is_unseen;
use crate::units::counted;

/// Takes lines from a file or from standard input, saves them, and adds the run.
///
/// # Errors
/// [`Error::Usage`] for a date, time or log that cannot be, and if nothing can be saved;
/// [`Error::Input`] with every line of a file that cannot be taken; [`Error::Campaign`]
/// if the campaign file is invalid or does not take the run.
pub fn run(options: &EnterOptions) -> Result<u8> {
    let is_file = options.campaign.ends_with(CAMPAIGN_FILE);
    let folder = match options.campaign.parent().filter(|_| is_file) {
        Some(parent) if parent == Path::new("") => Path::new("."),
        Some(parent) => parent,
        None => &options.campaign,
    };
    let date = read_date(&options.date)?;
    let name = log_name(options.log.as_deref(), date)?;
    let reach = options.files.reach();
    let campaign = read_campaign_to_plan(folder, reach, check_own_limits)?;
    let limits =
        Limits::of_campaign(&campaign).map_err(|problem| Error::Campaign(problem.into()))?;
    let kind = options
        .kind
        .unwrap_or_else(|| kind_of_log(&campaign, &folder.join(&name)));
    if let Some(file) = &options.from {
        let notes = Notes::read(file)?;
        try_folder(folder, NOT_SAVED)?;
        let kind = match (options.kind, options.again) {
            (None, true) => kind_beside(&campaign, &name),
            _ => kind,
        };
        let states_air_unit = campaign.rules.units.ambient_temperature.is_some();
        let form = form(&campaign, kind, date);
        let form = notes.form(form, options.kind.is_none(), states_air_unit);
        let has_weather = campaign
            .runs
            .iter()
            .any(|run| run.log == name && run.weather.is_some());
        let sheet = notes.sheet(form, has_weather)?;
        let log = save_notes(folder, name, &sheet, &notes, options.again)?;
        return add_run(folder, reach, &log, &sheet.sheet, options.again);
    }
    let step_min = step_min(kind, &limits);
    let (mut log, sheet) = TypedLog::open(folder, name, form(&campaign, kind, date))?;
    try_folder(folder, NOT_SAVED)?;
    let next = match (
        &options.start,
        common_start(sheet.lines(), step_min),
        sheet.lines().last(),
    ) {
        (Some(start), _, last) => Some(read_start(start, last)?),
        (None, Some(start), Some(last)) => next_time(last.time, start, step_min),
        _ => Some(window_start(&campaign, &limits, kind, date)?),
    };
    let start = options.start.as_ref().and(next);
    let start = start
        .or_else(|| common_start(sheet.lines(), step_min))
        .or(next);
    let start = start.expect("a sheet without a line has a next time");
    let mut above = Lines::new(Screen::out());
    greeting(&mut above, &log.path, &sheet);
    print_lines(&above)?;
    let mut desk = Desk::new(sheet, next, start, step_min);
    if type_in(&mut desk, &mut log)? {
        return add_run(folder, reach, &log.name, &desk.sheet, false);
    }
    let mut named = match &options.log {
        Some(name) => format!(" --log {}", quoted(Path::new(name))),
        None => String::new(),
    };
    if let Some(kind) = options.kind {
        named += &format!(" --kind {}", kind.word());
    }
    let kept = counted(desk.sheet.lines().len(), "line");
    let kept = format!("{}: {kept} kept", log.path.display());
    let folder = quoted(folder);
    let next = format!("To go on: simmerline enter {folder} --date {date}{named}");
    print_sentences(&["", &kept, &next])?;
    Ok(0)
}

/// What holds for a sheet of a campaign.
fn form(campaign: &Campaign, kind: RunKind, date: Date) -> Form {
    // Nobody reads kelvins by hand.
    let typed = |unit: Unit| match unit.symbol() {
        "°F" => unit,
        _ => Unit::base(Kind::Temperature),
    };
    Form {
        date,
        zone: campaign.site.time_zone.clone(),
        kind,
        tested_unit: typed(campaign.tested_unit(kind)),
        air_unit: typed(campaign.air_unit()),
        has_irradiance: campaign.instruments.has_own_irradiance(),
        boiling_point_c: local_boiling_point_c(&campaign.site),
        is_demonstration: campaign.demonstration,
    }
}

fn log_name(chosen: Option<&str>, date: Date) -> Result<String> {
    let Some(name) = chosen else {
        return Ok(format!("{date}.csv"));
    };
    let is_plain = !name.starts_with('.')
        && name.to_lowercase().ends_with(".csv")
        && !name.contains(|c: char| matches!(c, '/' | '\\' | ':' | '"') || is_unseen(c));
    if is_plain {
        return Ok(name.to_owned());
    }
    let problem = Problem::at(
        Path::new("--log"),
        format!("found \"{name}\", expected the name of a CSV file in the campaign's folder"),
    );
    let hint = format!("write for example --log {date}-2.csv");
    Err(Error::Usage(problem.hint(hint).into()))
}

/// Asks for lines until somebody is done (`true`) or the input ends.
fn type_in(desk: &mut Desk, log: &mut TypedLog) -> Result<bool> {
    let mut input = io::stdin().lock();
    let mut refused = 0;
    loop {
        let time = desk.next.map_or_else(|| "--:--".to_owned(), spoken);
        print(&format!("{time}  > "))?;
        let mut bytes = Vec::new();
        let read = input.read_until(b'\n', &mut bytes).map_err(|error| {
            let problem = Problem::at(
                Path::new("standard input"),
                format!("cannot be read: {}", why(&error)),
            );
            Error::Usage(problem.hint("every line before is saved").into())
        })?;
        let outcome = match String::from_utf8(bytes) {
            _ if read == 0 => break,
            Ok(text) => desk.take(&text),
            Err(_) => Outcome::Refused(Refusal::new(
                "the line is not UTF-8 text",
                "type it again, in plain letters",
            )),
        };
        match outcome {
            Outcome::Done => {
                note_refused(refused);
                return Ok(true);
            }
            Outcome::Help => {
                let mut lines = Lines::new(Screen::out());
                help(&mut lines, &desk.sheet);
                print_lines(&lines)?;
            }
            Outcome::Passed => {}
            Outcome::Refused(refusal) => {
                refused += 1;
                print_note_with_hint(&format!("not taken: {}", refusal.what), &refusal.hint);
            }
            Outcome::TakenBack(time) => {
                log.save(&desk.sheet)?;
                print(&format!("The line of {} is taken back.\n", spoken(time)))?;
            }
            Outcome::Kept { odd } => {
                log.save(&desk.sheet)?;
                if let Some(odd) = odd {
                    print_note(&format!("{odd}; kept, undo takes it back"));
                }
            }
        }
    }
    note_refused(refused);
    Ok(false)
}

/// Where nobody types, nobody has seen that a line was not taken.
fn note_refused(refused: usize) {
    if refused > 0 && !io::stdin().is_terminal() {
        print_note(&format!(
            "{} not taken, so that later lines without a time may stand at the wrong one",
            counted(refused, "line")
        ));
    }
}
