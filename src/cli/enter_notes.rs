//! `enter --from`: a text file of lines or of free notes becomes a sheet.

use std::path::{Path, PathBuf};

use super::enter_log::{TypedLog, read_small};
use super::lines::Lines;
use super::screen::Screen;
use super::terminal::{print_lines, print_note};
use crate::campaign::kinds::RunKind;
use crate::entry::form::Form;
use crate::entry::notes::{Survey, survey};
use crate::entry::sheet::{Sheet, spoken};
use crate::entry::text_file::{Taken, read_text, text_of};
use crate::error::{Error, Problem, Result, why};

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

    /// The form of a sheet, with the units and the kind of run that the notes themselves tell;
    /// the kind only where it was not asked for, and the unit of the air only where neither the
    /// notes nor the campaign state it. What was told is said.
    pub fn form(&self, form: Form, may_be_dry: bool, states_air_unit: bool) -> Form {
        let survey = &self.survey;
        let tested_unit = survey.tested_unit.unwrap_or(form.tested_unit);
        let of_air = survey.air_unit;
        let of_air = of_air.or(survey.tested_unit.filter(|_| !states_air_unit));
        let air_unit = of_air.unwrap_or(form.air_unit);
        for (what, unit, usual) in [
            (form.tested_name(), tested_unit, form.tested_unit),
            ("air", air_unit, form.air_unit),
        ] {
            if unit != usual {
                let unit = unit.symbol();
                self.note(&format!(
                    "the {what} temperature is in {unit}, as the notes say"
                ));
            }
        }
        // Where nobody states a unit, what is no water in one may be water in the other.
        let is_stated = survey.tested_unit.is_some() || form.tested_unit.symbol() == "°F";
        let is_hot = is_stated && survey.is_hotter_than_water(tested_unit, form.boiling_point_c);
        let is_dry = may_be_dry && form.kind == RunKind::Water && (survey.says_dry || is_hot);
        if is_dry {
            let why = match survey.says_dry {
                true => "the notes say so",
                false => "most readings are hotter than water gets",
            };
            self.note(&format!(
                "taken as a run of the dry, empty vessel: {why}; --kind water states that it held water"
            ));
        }
        Form {
            kind: if is_dry { RunKind::Dry } else { form.kind },
            tested_unit,
            air_unit,
            ..form
        }
    }

    /// The lines of the file.
    ///
    /// # Errors
    /// [`Error::Input`] with every line that cannot be taken, and if no line has an air
    /// temperature, unless a second log has it.
    pub fn sheet(&self, form: Form, has_weather: bool) -> Result<Noted> {
        let air = form.example_values().2;
        let mut sheet = Sheet::new(form);
        let taken = read_text(&mut sheet, &self.file, &self.text)?;
        let has_air = sheet.lines().iter().any(|line| line.cells.air.is_some());
        if !has_air && !has_weather {
            let problem = Problem::at(&self.file, "no line has an air temperature");
            let hint = format!(
                "add a line such as: air {air}; or name a second log that holds it in the run, as weather = \"…\""
            );
            return Err(Error::Input(problem.hint(hint).into()));
        }
        Ok(Noted { sheet, taken })
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

/// What became of the lines of a file.
pub struct Noted {
    pub sheet: Sheet,
    taken: Taken,
}

/// Saves the lines of a file: all, or none. The log may hold the first of them, or all: an earlier
/// call may have been killed before it added the run. With `again` it may hold others, which are
/// kept beside it. Returns the log's name.
///
/// # Errors
/// [`Error::Usage`] for a log that holds other lines, and if nothing can be saved.
pub fn save_notes(
    folder: &Path,
    name: String,
    noted: &Noted,
    notes: &Notes,
    again: bool,
) -> Result<String> {
    let Noted { sheet, taken } = noted;
    if again {
        let (mut log, older) = TypedLog::open_anew(folder, name, &sheet.form)?;
        notes.tell(taken)?;
        let text = sheet.to_csv()?;
        if let Some(older) = older.filter(|older| *older != text.as_bytes()) {
            let kept = log.keep_older(&older)?;
            print_note(&format!(
                "{} was there with other lines; they are kept in {}",
                log.path.display(),
                kept.display()
            ));
        }
        log.save(sheet)?;
        return Ok(log.name);
    }
    let (mut log, there) = TypedLog::open(folder, name, sheet.form.clone())?;
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
    notes.tell(taken)?;
    if sheet.lines() != there.lines() {
        log.save(sheet)?;
    }
    Ok(log.name)
}
