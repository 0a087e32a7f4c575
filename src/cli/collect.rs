//! `collect`: the rows of all campaigns that were reported into some folders, as tables.

use super::args::CollectOptions;
use super::issue::{open_folder, time_of_issue};
use super::terminal::{line, print};
use crate::batch::collection::{kept_below, tables};
use crate::error::Result;
use crate::report::data::tables::collection::TABLES;
use crate::report::files::write_all;

/// Writes the tables and the package that describes them.
///
/// # Errors
/// [`crate::error::Error::Usage`] for a folder without records, for a campaign that is in two
/// of them and not the same, or whose rows are missing or changed, and for an output folder that
/// cannot be used.
pub fn run(options: &CollectOptions) -> Result<u8> {
    let issued = time_of_issue()?;
    let kept = kept_below(&options.folders)?;
    let out = &options.out;
    open_folder(out, options.quiet)?;
    let written = write_all(out, TABLES, &tables(&kept, out, issued)?)?;
    if !options.quiet {
        let paths = written.iter().map(|file| out.join(&file.name));
        let paths = paths.map(|path| line(&path.display().to_string()));
        print(&paths.collect::<String>())?;
    }
    Ok(0)
}
