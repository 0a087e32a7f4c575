//! When documents are issued, and where they go.

use std::path::Path;

use jiff::Timestamp;

use super::terminal::print_note;
use crate::error::{Error, Problem, Result};
use crate::report::files::prepare_folder;

/// Environment variable that fixes the time of issue, seconds since 1970.
const FIXED_TIME: &str = "SOURCE_DATE_EPOCH";

/// End of the last year that a PDF can be dated in, seconds since 1970.
const END_OF_9999_S: i64 = 253_402_300_800;

/// Makes the output folder ready, and says what earlier calls had left unfinished there.
///
/// # Errors
/// [`Error::Usage`] if it cannot be used.
pub fn open_folder(folder: &Path, is_quiet: bool) -> Result<()> {
    let notes = prepare_folder(folder)?;
    if !is_quiet {
        notes.iter().for_each(|note| print_note(note));
    }
    Ok(())
}

/// The time printed as that of issue: now, or what the environment fixes.
///
/// # Errors
/// [`Error::Usage`] for what is no such time.
pub fn time_of_issue() -> Result<Timestamp> {
    Ok(fixed_time()?.unwrap_or_else(Timestamp::now))
}

/// The time of issue that the environment fixes; `None` where it fixes none.
///
/// # Errors
/// [`Error::Usage`] for what is no such time.
pub fn fixed_time() -> Result<Option<Timestamp>> {
    let Some(fixed) = std::env::var_os(FIXED_TIME) else {
        return Ok(None);
    };
    let seconds = fixed.to_str().and_then(|text| text.trim().parse().ok());
    let time = seconds
        .filter(|seconds| (0..END_OF_9999_S).contains(seconds))
        .and_then(|seconds| Timestamp::from_second(seconds).ok());
    let what = || {
        format!(
            "found \"{}\", expected seconds since 1970",
            fixed.to_string_lossy()
        )
    };
    let hint = "unset the environment variable, or give a whole number";
    match time {
        Some(time) => Ok(Some(time)),
        None => Err(Error::Usage(
            Problem::at(Path::new(FIXED_TIME), what()).hint(hint).into(),
        )),
    }
}
