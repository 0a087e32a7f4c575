//! `enter`: a pencilled field sheet is typed in.

use std::fs::{self, File};
use std::io::{self, BufRead, ErrorKind, IsTerminal, Read};
use std::path::{Path, PathBuf};

use jiff::civil::Date;

use super::args::EnterOptions;
use super::enter_run::{add_run, kind_of_log};
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
use crate::entry::sheet::{Sheet, spoken};
use crate::entry::start::{common_start, next_time, read_date, read_start, window_start};
use crate::entry::text_file::read_text;
use crate::entry::value::Refusal;
use crate::error::{Error, Problem, Result, why};
use crate::hash::sha256_hex;
use crate::measure::{Kind, Unit};
use crate::planning::pace::step_min;
use crate::procedure::s580::Limits;
use crate::procedure::s580::own_limits::check_own_limits;
use crate::procedure::site::local_boiling_point_c;
use crate::report::files::{replace_file, try_folder};
use crate::shown::is_unseen;
use crate::units::counted;

/// Largest text that is read as a sheet, bytes.
const LARGEST_SHEET: u64 = 4 << 20;
/// What to do where nothing can be saved.
const NOT_SAVED: &str = "see that you may write to the campaign's folder";

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
    let step_min = step_min(kind, &limits);
    let (mut log, mut sheet) = TypedLog::open(folder, name, form(&campaign, kind, date))?;
    try_folder(folder, NOT_SAVED)?;
    if let Some(file) = &options.from {
        from_file(&mut log, &mut sheet, file)?;
        return add_run(folder, reach, &log.name, &sheet);
    }
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
        return add_run(folder, reach, &log.name, &desk.sheet);
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
    let celsius = Unit::base(Kind::Temperature);
    let units = &campaign.rules.units;
    let typed = |rule: Option<Unit>| rule.filter(|unit| unit.symbol() == "°F").unwrap_or(celsius);
    Form {
        date,
        zone: campaign.site.time_zone.clone(),
        kind,
        tested_unit: typed(match kind {
            RunKind::Water | RunKind::Cooling => units.water_temperature,
            RunKind::Dry => units.vessel_temperature.or(units.water_temperature),
        }),
        air_unit: typed(units.ambient_temperature),
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

/// The log of a sheet on disk.
struct TypedLog {
    name: String,
    path: PathBuf,
    /// SHA-256 of what was read or saved last; `None` where it is not there.
    saved: Option<String>,
}

impl TypedLog {
    /// The log with the sheet that it holds, if it is there.
    fn open(folder: &Path, name: String, form: Form) -> Result<(Self, Sheet)> {
        let path = folder.join(&name);
        let bytes = read_if_there(&path)?;
        let sheet = match &bytes {
            None => Sheet::new(form),
            // What is no text has no typed sheet's header either.
            Some(bytes) => Sheet::from_csv(form, &path, &String::from_utf8_lossy(bytes))?,
        };
        let saved = bytes.as_deref().map(sha256_hex);
        Ok((TypedLog { name, path, saved }, sheet))
    }

    /// Saves the whole sheet, unless somebody else has changed the log meanwhile.
    fn save(&mut self, sheet: &Sheet) -> Result<()> {
        let text = sheet.to_csv()?;
        replace_file(
            &self.path,
            self.saved.as_deref(),
            text.as_bytes(),
            NOT_SAVED,
        )?;
        self.saved = Some(sha256_hex(text.as_bytes()));
        Ok(())
    }
}

fn read_if_there(path: &Path) -> Result<Option<Vec<u8>>> {
    match read_small(path) {
        Ok(bytes) => Ok(Some(bytes)),
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(None),
        Err(error) => {
            let problem = Problem::at(path, format!("cannot be read: {}", why(&error)));
            let hint = "move it away, or choose another name with --log NAME.csv";
            Err(Error::Usage(problem.hint(hint).into()))
        }
    }
}

/// A file no larger than a sheet can be. A device or a pipe may never end, or never begin.
fn read_small(path: &Path) -> io::Result<Vec<u8>> {
    let of = fs::metadata(path)?;
    if !of.is_file() {
        let what = "it is a folder, a device or a pipe, expected a file";
        return Err(io::Error::new(ErrorKind::InvalidInput, what));
    }
    let mut bytes = Vec::new();
    // It may grow while it is read.
    let mut file = File::open(path)?.take(LARGEST_SHEET + 1);
    file.read_to_end(&mut bytes)?;
    if bytes.len() as u64 > LARGEST_SHEET {
        let size = of.len().max(LARGEST_SHEET + 1);
        let what = format!("{size} bytes, too long for a sheet that was typed in");
        return Err(io::Error::new(ErrorKind::FileTooLarge, what));
    }
    Ok(bytes)
}

/// Takes the lines of a file. The log may hold the first of them, or all: an earlier call may
/// have been killed before it added the run.
fn from_file(log: &mut TypedLog, sheet: &mut Sheet, file: &Path) -> Result<()> {
    let bytes = read_small(file).map_err(|error| {
        let problem = Problem::at(file, format!("cannot be read: {}", why(&error)));
        let hint = "name a text file that you may read; lines from a pipe are taken without --from";
        Error::Input(problem.hint(hint).into())
    })?;
    let there = std::mem::replace(sheet, Sheet::new(sheet.form.clone()));
    let odd = read_text(sheet, file, &bytes)?;
    if let Some(last) = there.lines().last()
        && !sheet.lines().starts_with(there.lines())
    {
        let what = format!(
            "is there already, with lines to {} that {} does not begin with, and stays as it is",
            spoken(last.time),
            file.display()
        );
        let hint = "move it away, or choose another name with --log NAME.csv";
        let problem = Problem::at(&log.path, what).hint(hint);
        return Err(Error::Usage(problem.into()));
    }
    for odd in odd {
        let what = odd.what;
        print_note(&format!(
            "{}:{}: {what}; taken all the same",
            file.display(),
            odd.line
        ));
    }
    match sheet.lines() == there.lines() {
        true => Ok(()),
        false => log.save(sheet),
    }
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
