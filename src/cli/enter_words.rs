//! What `enter` says of how lines are typed.

use std::path::Path;

use super::terminal::line;
use crate::campaign::kinds::RunKind;
use crate::entry::form::{Column, Form};
use crate::entry::sheet::{Sheet, spoken};
use crate::physics::wind::{BEAUFORT, sign};
use crate::units::{counted, spoken_date};

/// What stands above the first line.
pub fn greeting(log: &Path, sheet: &Sheet) -> String {
    let there = match sheet.lines().last() {
        Some(last) => format!(
            "{} are there; it goes on after {}.\n",
            counted(sheet.lines().len(), "line"),
            spoken(last.time)
        ),
        None => String::new(),
    };
    let kind = match sheet.form.kind {
        RunKind::Water => String::new(),
        kind => format!(" ({})", kind.describe()),
    };
    let title = format!(
        "Field sheet of {}{kind}, saved line by line in {}",
        spoken_date(sheet.form.date),
        log.display()
    );
    line(&title) + &there + &how_to_type(&sheet.form)
}

fn how_to_type(form: &Form) -> String {
    let items = form.columns().filter_map(|column| item(form, column));
    let items: Vec<String> = items.collect();
    let mut first = match form.kind {
        RunKind::Water => "31.5 24 1 c",
        RunKind::Dry => "185 24 1 c",
        RunKind::Cooling => "94.5 24 1",
    }
    .to_owned();
    if form.columns().any(|column| column == Column::Irradiance) {
        first += " 912";
    }
    first += match form.in_sun() {
        true => " thin haze",
        false => " in the shade",
    };
    let (unread, later) = match form.kind {
        RunKind::Water => ("31.5 - - c", "10:22 31.5"),
        RunKind::Dry => ("185 - - c", "12:22 185"),
        RunKind::Cooling => ("94.5 - 1", "13:22 94.5"),
    };
    format!(
        "Each line: {}.\n  \
         {first:<28}all but the {} can be left out, from the end\n  \
         {unread:<28}- for what was not read\n  \
         {later:<28}at another time than the one filled in\n\
         {}Enter alone passes over a time. undo takes a line back, done ends, help says more.\n",
        items.join(", "),
        form.tested_name(),
        pace(form.kind)
    )
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
fn pace(kind: RunKind) -> &'static str {
    match kind {
        RunKind::Water => "",
        RunKind::Dry => {
            "A reading every 5 to 20 minutes will do, until the vessel has stayed the same for half an hour,\nor an hour with a dial in steps of 10 °F or 5 °C.\n"
        }
        RunKind::Cooling => {
            "A reading every five minutes, down to 20 K (36 °F) above the air; irradiance is not needed.\n"
        }
    }
}

/// What can be typed, and the scale of the wind.
pub fn help(sheet: &Sheet) -> String {
    let mut text = how_to_type(&sheet.form);
    if sheet.form.in_sun() {
        text += "Sky: clear if no cloud was near the sun since the line before.\n";
    }
    text += "Wind by what it does:\n";
    for number in 0..BEAUFORT.len() {
        text += &format!("  {number}  {}\n", sign(number));
    }
    text + "Ctrl-D stops without adding the run; every line is kept.\n"
}
