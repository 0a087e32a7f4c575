//! What `enter` says of how lines are typed.

use std::path::Path;

use super::lines::Lines;
use crate::campaign::kinds::RunKind;
use crate::entry::form::{Column, Form};
use crate::entry::sheet::{Sheet, spoken};
use crate::physics::wind::{BEAUFORT, sign};
use crate::units::{counted, spoken_date};

/// What stands above the first line.
pub fn greeting(lines: &mut Lines, log: &Path, sheet: &Sheet) {
    let kind = match sheet.form.kind {
        RunKind::Water => String::new(),
        kind => format!(" ({})", kind.describe()),
    };
    lines.line(&format!(
        "Field sheet of {}{kind}, saved line by line in {}",
        spoken_date(sheet.form.date),
        log.display()
    ));
    if let Some(last) = sheet.lines().last() {
        lines.line(&format!(
            "{} are there; it goes on after {}.",
            counted(sheet.lines().len(), "line"),
            spoken(last.time)
        ));
    }
    how_to_type(lines, &sheet.form);
}

fn how_to_type(lines: &mut Lines, form: &Form) {
    let items = form.columns().filter_map(|column| item(form, column));
    let items: Vec<String> = items.collect();
    let (time, tested, air) = form.example_values();
    let irradiance = match form.columns().any(|column| column == Column::Irradiance) {
        true => " 912",
        false => "",
    };
    let (first, unread) = match form.in_sun() {
        true => (
            format!("{tested} {air} 1 c{irradiance} thin haze"),
            format!("{tested} - - c"),
        ),
        false => (
            format!("{tested} {air} 1{irradiance} in the shade"),
            format!("{tested} - 1"),
        ),
    };
    let only = format!(
        "all but the {} can be left out, from the end",
        form.tested_name()
    );
    let examples = [
        (first, only),
        (unread, "- for what was not read".to_owned()),
        (
            format!("{time} {tested}"),
            "at another time than the one filled in".to_owned(),
        ),
    ];
    lines.line(&format!("Each line: {}.", items.join(", ")));
    lines.rows("  ", &examples);
    if let Some(pace) = pace(form.kind) {
        lines.line(pace);
    }
    lines
        .line("Enter alone passes over a time. undo takes a line back, done ends, help says more.");
}

/// What stands in a column, as somebody types it; nothing of the time.
fn item(form: &Form, column: Column) -> Option<String> {
    let item = match column {
        Column::Time => return None,
        Column::Tested => format!("{} ({})", form.tested_name(), form.tested_unit.symbol()),
        Column::Air => format!("air ({})", form.air_unit.symbol()),
        Column::Wind => "wind (Beaufort)".to_owned(),
        Column::Sky => "sky (c clear, x cloud)".to_owned(),
        Column::Irradiance => "irradiance (W/m²)".to_owned(),
        Column::Notes => "notes".to_owned(),
    };
    Some(item)
}

/// How often a run of a kind is read, where that is not by intervals.
fn pace(kind: RunKind) -> Option<&'static str> {
    match kind {
        RunKind::Water => None,
        RunKind::Dry => Some(
            "A reading every 5 to 20 minutes will do, until the vessel has stayed the same for half an hour, or an hour with a dial in steps of 10 °F or 5 °C.",
        ),
        RunKind::Cooling => Some(
            "A reading every five minutes, down to 20 K (36 °F) above the air; irradiance is not needed.",
        ),
    }
}

/// What can be typed, and the scale of the wind.
pub fn help(lines: &mut Lines, sheet: &Sheet) {
    how_to_type(lines, &sheet.form);
    if sheet.form.in_sun() {
        lines.line("Sky: clear if no cloud was near the sun since the line before.");
    }
    lines.line("Wind by what it does:");
    let signs = (0..BEAUFORT.len()).map(|number| (number.to_string(), sign(number).to_string()));
    lines.rows("  ", &signs.collect::<Vec<_>>());
    lines.line("Ctrl-D stops without adding the run; every line is kept.");
}
