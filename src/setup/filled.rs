//! The campaign file that follows from the answers: the one with every key explained, with theirs
//! filled in.

use super::answers::{Answers, SunSensor, Thermometer};
use super::opening::Opening;
use crate::campaign::kinds::RunKind;
use crate::campaign::measured::parse;
use crate::campaign::model::CookerType;
use crate::language::UnitSystem;
use crate::measure::{Kind, Unit};

/// A key to fill in.
struct Entry {
    /// The table that it stands in.
    table: &'static str,
    /// The key as the file with every key explained has it.
    key: &'static str,
    /// What is written in its place.
    code: String,
}

/// Where remarks begin.
const REMARK_COLUMN: usize = 34;
/// What a remark on a key begins with that is to be filled in.
const MARK: &str = "FILL IN";

/// The file with the answers in the places of its examples.
pub fn filled(template: &str, answers: &Answers) -> String {
    let entries = entries(answers);
    let has_opening = answers.opening.is_some();
    let has_estimate = answers.sun == Some(SunSensor::None);
    let mut table = String::new();
    let mut lines: Vec<String> = Vec::new();
    for line in template.lines() {
        let bare = line.strip_prefix("# ").unwrap_or(line);
        if let Some(header) = bare.strip_prefix('[') {
            table = header.split(']').next().unwrap_or_default().to_owned();
            let is_filled = entries.iter().any(|entry| entry.table == table);
            lines.push(if is_filled { bare } else { line }.to_owned());
            continue;
        }
        let key = bare.split_once(" =").map(|(key, _)| key);
        let is_here = |entry: &&Entry| entry.table == table && key == Some(entry.key);
        let replaced = entries.iter().find(is_here);
        lines.push(match replaced {
            Some(entry) => with_remark(&entry.code, bare),
            None if has_opening && key == Some("intercept_area_m2") => {
                line.replace(MARK, "instead of the shape below")
            }
            None if has_estimate && key == Some("plane") => format!("# {line}").replace(MARK, ""),
            None => line.to_owned(),
        });
    }
    lines.join("\n") + "\n"
}

/// A key with its value, and the remark of the line whose place it takes.
fn with_remark(code: &str, line: &str) -> String {
    let remark = line.split_once(" # ").map(|(_, remark)| remark.trim());
    let remark = remark.map(|remark| {
        let rest = remark.strip_prefix(MARK).unwrap_or(remark);
        rest.trim_start_matches([',', ':', ' ']).to_owned()
    });
    match remark.filter(|remark| !remark.is_empty()) {
        Some(remark) => {
            let last = code.rsplit('\n').next().unwrap_or(code);
            let gap = REMARK_COLUMN.saturating_sub(last.len()).max(1);
            format!("{code}{}# {remark}", " ".repeat(gap))
        }
        None => code.to_owned(),
    }
}

/// What is filled in.
fn entries(answers: &Answers) -> Vec<Entry> {
    let mut entries = Vec::new();
    let mut add = |table: &'static str, key: &'static str, code: String| {
        entries.push(Entry { table, key, code });
    };
    if let Some(title) = &answers.title {
        add("campaign", "title", text("title", title));
        add("cooker", "name", text("name", title));
    }
    if answers.units == Some(UnitSystem::Us) {
        add("report", "units", text("units", "us"));
        add("report", "paper", text("paper", "us-letter"));
    }
    if let Some(cooker) = answers.cooker {
        add("cooker", "type", text("type", cooker.word()));
    }
    if let Some(opening) = &answers.opening {
        add_opening(opening, &mut add);
    }
    if let Some(site) = &answers.site {
        add("site", "name", text("name", site));
    }
    if let Some(place) = answers.place {
        let degrees =
            |key: &str, degrees: f64| format!("{key} = {}", (degrees * 1e6).round() / 1e6);
        add(
            "site",
            "latitude_deg",
            degrees("latitude_deg", place.latitude_deg),
        );
        add(
            "site",
            "longitude_deg",
            degrees("longitude_deg", place.longitude_deg),
        );
    }
    if let Some(elevation) = &answers.elevation {
        add(
            "site",
            "elevation_m",
            quantity("elevation", elevation, Kind::Length),
        );
    }
    if let Some(zone) = &answers.time_zone {
        add("site", "time_zone", text("time_zone", zone));
    }
    if let (Some(water), true) = (&answers.water, answers.kind() != RunKind::Dry) {
        add("load", "water_kg", quantity("water", water, Kind::Mass));
    }
    add_thermometer(answers, &mut add);
    add_sun(answers, &mut add);
    entries
}

fn add_opening(opening: &Opening, add: &mut impl FnMut(&'static str, &'static str, String)) {
    const TABLE: &str = "cooker.aperture";
    let length = |stem: &str, said: &str| quantity(stem, said, Kind::Length);
    match opening {
        Opening::Area(area) => {
            let code = quantity("intercept_area", area, Kind::Area);
            add("cooker", "intercept_area_m2", code);
        }
        Opening::Circle { diameter } => {
            add(TABLE, "shape", text("shape", "circle"));
            add(TABLE, "diameter_m", length("diameter", diameter));
        }
        Opening::Rectangle { width, height } => {
            add(TABLE, "shape", text("shape", "rectangle"));
            let (width, height) = (length("width", width), length("height", height));
            add(TABLE, "diameter_m", format!("{width}\n{height}"));
        }
        Opening::RegularPolygon {
            sides,
            across_corners,
        } => {
            add(TABLE, "shape", text("shape", "regular-polygon"));
            let across = length("across_corners", across_corners);
            add(TABLE, "diameter_m", format!("sides = {sides}\n{across}"));
        }
    }
}

fn add_thermometer(answers: &Answers, add: &mut impl FnMut(&'static str, &'static str, String)) {
    const WATER: &str = "instruments.water_temperature";
    const VESSEL: &str = "instruments.vessel_temperature";
    let class = |word: &str| text("class", word);
    let Some(thermometer) = answers.thermometer else {
        return;
    };
    let is_dry = answers.kind() == RunKind::Dry;
    let code = match thermometer {
        Thermometer::Kitchen => class("kitchen-thermometer"),
        Thermometer::Thermocouple => class("thermocouple-k-2"),
        Thermometer::Pt100 => class("pt100-b"),
        Thermometer::Unknown => return,
        Thermometer::OvenDial => class("oven-dial"),
    };
    match is_dry {
        true => add(VESSEL, "class", code),
        false => add(WATER, "uncertainty_k", code),
    }
}

fn add_sun(answers: &Answers, add: &mut impl FnMut(&'static str, &'static str, String)) {
    const TABLE: &str = "instruments.irradiance";
    let code = match answers.sun {
        None => return,
        Some(SunSensor::None) => {
            return add(TABLE, "estimate", text("estimate", "clear-sky"));
        }
        Some(SunSensor::FacesSun) => text("plane", "normal"),
        // A box's own procedure wants it as it lies.
        Some(SunSensor::LiesFlat) if answers.cooker == Some(CookerType::Box) => {
            text("plane", "horizontal")
        }
        Some(SunSensor::LiesFlat) => format!(
            "{}\n{}",
            text("plane", "horizontal"),
            text("estimate", "from-horizontal")
        ),
        Some(SunSensor::Station) => {
            format!(
                "{}\n{}",
                text("plane", "horizontal"),
                text("estimate", "station")
            )
        }
    };
    add(TABLE, "plane", code);
}

fn text(key: &str, value: &str) -> String {
    format!("{key} = {}", toml::Value::String(value.to_owned()))
}

/// A quantity under the key that names its unit, where it has a single one; else as a text.
fn quantity(stem: &str, said: &str, kind: Kind) -> String {
    let digits = said.find(|c: char| !(c.is_ascii_digit() || c == '.'));
    let (number, unit) = said.split_at(digits.unwrap_or(said.len()));
    let ending = Unit::parse(unit, &[kind]).map(|unit| unit.symbol().replace('²', "2"));
    let number = number
        .parse::<f64>()
        .ok()
        .filter(|number| number.is_finite());
    match (number, ending) {
        (Some(number), Some(ending)) => format!("{stem}_{ending} = {number}"),
        _ => {
            debug_assert!(parse(said, kind).is_some(), "{said} was taken");
            text(stem, said)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::campaign::template::template_of;
    use crate::setup::interview::{Interview, Outcome};
    use crate::setup::questions::Question;

    fn file_of(texts: &[&str]) -> String {
        let mut interview = Interview::new(Answers::default(), Question::ALL.to_vec());
        for text in texts {
            let outcome = interview.take(text);
            assert!(matches!(outcome, Outcome::Taken(_)), "{text}: {outcome:?}");
        }
        assert_eq!(interview.question(), None);
        filled(&template_of(interview.answers.kind()), &interview.answers)
    }

    #[test]
    fn answers_stand_in_the_file_and_nothing_is_left_to_fill_in() {
        let file = file_of(&[
            "us",
            "Basket \"two\" (invented)",
            "panel",
            "36 x 24 in",
            "Yard (invented)",
            "35.08, -106.65",
            "5312",
            "",
            "water",
            "8 lb 9 oz",
            "kitchen",
            "none",
            "no",
        ]);
        assert_eq!(file.matches(MARK).count(), 1, "in the head alone: {file}");
        let read: toml::Value = toml::from_str(&file).unwrap();
        assert_eq!(
            read["campaign"]["title"].as_str(),
            Some("Basket \"two\" (invented)")
        );
        assert_eq!(
            read["cooker"]["aperture"]["width_in"].as_integer(),
            Some(36)
        );
        assert_eq!(read["site"]["longitude_deg"].as_float(), Some(-106.65));
        assert_eq!(read["site"]["elevation_ft"].as_integer(), Some(5312));
        assert_eq!(read["load"]["water"].as_str(), Some("8 lb 9 oz"));
        assert_eq!(read["report"]["paper"].as_str(), Some("us-letter"));
        let paper = file.lines().find(|line| line.starts_with("paper = "));
        assert!(paper.unwrap().ends_with("# a4, us-letter"), "{paper:?}");
        assert_eq!(
            read["instruments"]["irradiance"]["estimate"].as_str(),
            Some("clear-sky")
        );
        assert!(read["instruments"]["irradiance"].get("plane").is_none());
    }
}
