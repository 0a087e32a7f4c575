//! `units`: the campaigns below a folder as units of work, for programs that spread work over
//! machines.

use serde::Serialize;

use super::args::UnitsOptions;
use super::terminal::{line, print, print_json};
use crate::campaign::find::{Unit, find_units};
use crate::campaign::{InputFile, Reach, inputs_of, read_campaign};
use crate::error::{Error, Result};
use crate::procedure::s580::own_limits::check_own_limits;

/// A unit of work. What is not known is null.
#[derive(Serialize)]
struct UnitLine<'u> {
    /// Branch and name: the outputs are PLACE.pdf, PLACE.rating.json and so on.
    place: String,
    campaign: &'u str,
    branch: &'u str,
    folder: String,
    /// Files that its outputs rest on; null where the campaign file cannot be read.
    inputs: Option<Vec<InputLine>>,
    /// Of all inputs that are there, together.
    bytes: u64,
    /// What stops it, as far as its campaign file tells.
    error: Option<String>,
}

#[derive(Serialize)]
struct InputLine {
    /// As the campaign file calls it.
    name: String,
    path: String,
    bytes: u64,
}

/// Prints a line of JSON for each campaign.
///
/// # Errors
/// [`Error::Usage`] if there is no campaign, or two have one place; what is wrong with a single
/// one is in its line.
pub fn run(options: &UnitsOptions) -> Result<u8> {
    let units = find_units(&options.paths, options.root.as_deref())?;
    let reach = options.files.reach();
    for unit in &units {
        if options.folders {
            print(&line(&unit.folder.display().to_string()))?;
            continue;
        }
        let text = serde_json::to_string(&line_of(unit, reach));
        print_json(&text.map_err(|error| Error::Internal(error.to_string()))?)?;
    }
    Ok(0)
}

fn line_of(unit: &Unit, reach: Reach) -> UnitLine<'_> {
    let read = read_campaign(&unit.folder, reach, check_own_limits);
    let error = read.as_ref().err().map(ToString::to_string);
    let inputs = inputs_of(&unit.folder, reach).ok();
    let inputs = inputs.map(|all| all.into_iter().map(InputLine::of).collect::<Vec<_>>());
    let bytes = inputs.iter().flatten().map(|input| input.bytes).sum();
    UnitLine {
        place: unit.place(),
        campaign: &unit.name,
        branch: &unit.branch,
        folder: unit.folder.display().to_string(),
        inputs,
        bytes,
        error,
    }
}

impl InputLine {
    fn of(input: InputFile) -> Self {
        InputLine {
            name: input.name,
            bytes: std::fs::metadata(&input.path).map_or(0, |of| of.len()),
            path: input.path.display().to_string(),
        }
    }
}
