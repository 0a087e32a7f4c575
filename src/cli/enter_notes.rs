//! `enter --from`: a text file of lines or of free notes becomes a sheet.

use std::path::{Path, PathBuf};

use super::enter_log::{NOT_SAVED, TypedLog, read_small};
use super::lines::Lines;
use super::screen::Screen;
use super::terminal::{print_lines, print_note};
use crate::campaign::kinds::RunKind;
use crate::entry::form::Form;
use crate::entry::notes::{Survey, survey};
use crate::entry::sheet::{Sheet, spoken};
use crate::entry::text_file::{Taken, read_text, text_of};
use crate::error::{Error, Problem, Result, why};
use crate::report::files::try_folder;

/// A text file of lines.
pub struct Notes {
    file: PathBuf,
    text: String,
    survey: Survey,
}

impl Notes {
    /// Reads it.
    ///
    /// # Errors
    /// [`Error::Input`] if it cannot be read, or is no text.
    pub fn read(file: &Path) -> Result<Notes> {
        let bytes = read_small(file).map_err(|error| {
            let problem = Problem::at(file, format!("cannot be read: {}", why(&error)));
            let hint =
                "name a text file that you may read; lines from a pipe are taken without --from";
            Error::Input(problem.hint(hint).into())
        })?;
        let text = text_of(file, &bytes)?.to_owned();
        let survey = survey(&text);
        Ok(Notes {
            file: file.to_path_buf(),
            text,
            survey,
        })
    }

    /// The form of a sheet, with the unit and the kind of run that the notes themselves tell;
    /// the kind only where it was not asked for. What was told is said.
    pub fn form(&self, form: Form, may_be_dry: bool) -> Form {
        let survey = &self.survey;
        let boiling_point_c = form.boiling_point_c;
        let unit = survey.unit.unwrap_or(form.tested_unit);
        let is_dry = survey.says_dry || survey.is_hotter_than_water(unit, boiling_point_c);
        let guessed = survey.only_possible_unit(boiling_point_c);
        let guessed = guessed.filter(|guess| *guess != form.tested_unit && !survey.says_dry);
        if let Some(unit) = guessed {
            self.note(&format!(
                "no unit stands in the notes; as {} they can be water, as {} they cannot, so they are taken as {}",
                unit.symbol(),
                form.tested_unit.symbol(),
                unit.symbol()
            ));
        }
        let kind = match may_be_dry && is_dry && guessed.is_none() && form.kind == RunKind::Water {
            true => {
                let why = match survey.says_dry {
                    true => "the notes say so",
                    false => "water gets no hotter than it boils",
                };
                self.note(&format!(
                    "taken as a run of the dry, empty vessel: {why}; --kind water states that it held water"
                ));
                RunKind::Dry
            }
            false => form.kind,
        };
        let unit = survey.unit.or(guessed);
        Form {
            kind,
            tested_unit: unit.unwrap_or(form.tested_unit),
            air_unit: unit.unwrap_or(form.air_unit),
            ..form
        }
    }

    fn note(&self, what: &str) {
        print_note(&format!("{}: {what}", self.file.display()));
    }

    /// Says what lines were taken for, and what is odd about some.
    fn tell(&self, taken: &Taken) -> Result<()> {
        let mut lines = Lines::new(Screen::out());
        if !taken.understood.is_empty() {
            lines.line(&format!("{}, as it was understood:", self.file.display()));
            let rows = taken.understood.iter();
            let rows = rows.map(|told| (format!("line {}", told.line), told.what.clone()));
            lines.rows("  ", &rows.collect::<Vec<_>>());
        }
        print_lines(&lines)?;
        for odd in &taken.odd {
            let (file, line, what) = (self.file.display(), odd.line, &odd.what);
            print_note(&format!("{file}:{line}: {what}; taken all the same"));
        }
        Ok(())
    }
}

/// Takes the lines of a file and saves them: all, or none. The log may hold the first of them, or
/// all: an earlier call may have been killed before it added the run. With `again` it may hold
/// others, which are kept beside it.
///
/// # Errors
/// [`Error::Input`] with every line that cannot be taken; [`Error::Usage`] for a log that holds
/// other lines, and if nothing can be saved.
pub fn from_notes(
    folder: &Path,
    name: String,
    form: Form,
    notes: &Notes,
    again: bool,
) -> Result<(TypedLog, Sheet)> {
    let mut sheet = Sheet::new(form.clone());
    let taken = read_text(&mut sheet, &notes.file, &notes.text)?;
    try_folder(folder, NOT_SAVED)?;
    if again {
        let (mut log, older) = TypedLog::open_anew(folder, name, &form)?;
        notes.tell(&taken)?;
        let text = sheet.to_csv()?;
        if let Some(older) = older.filter(|older| *older != text.as_bytes()) {
            let kept = log.keep_older(&older)?;
            print_note(&format!(
                "{} was there with other lines; they are kept in {}",
                log.path.display(),
                kept.display()
            ));
        }
        log.save(&sheet)?;
        return Ok((log, sheet));
    }
    let (mut log, there) = TypedLog::open(folder, name, form)?;
    if let Some(last) = there.lines().last()
        && !sheet.lines().starts_with(there.lines())
    {
        let what = format!(
            "is there already, with lines to {} that {} does not begin with, and stays as it is",
            spoken(last.time),
            notes.file.display()
        );
        let hint = "if the notes were corrected, say --again: the older lines are kept beside; for another run, choose a name with --log NAME.csv";
        let problem = Problem::at(&log.path, what).hint(hint);
        return Err(Error::Usage(problem.into()));
    }
    notes.tell(&taken)?;
    if sheet.lines() != there.lines() {
        log.save(&sheet)?;
    }
    Ok((log, sheet))
}
