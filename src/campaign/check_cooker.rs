//! The cooker's tables: area, aperture and photo.

use super::aperture::{Shape, crosses_itself, intercept_area_m2};
use super::locate::Checker;
use super::model::{Aperture, Cooker, CookerType};
use super::named_files::NamedFiles;
use super::photo::check_photo;
use super::schema::{ApertureTable, CookerTable};
use super::wording::words;
use crate::believable::{
    ACCEPTANCE_HALF_ANGLE_DEG, HEAVIEST_COOKER_KG, HIGHEST_COST, INCIDENCE_DEG, INTERCEPT_AREA_M2,
    LONGEST_APERTURE_M,
};

/// Longest text of a key, characters.
const LONGEST_TEXT: usize = 400;

/// The cooker, with its intercept area and its photo.
pub fn check_cooker(
    checker: &mut Checker<'_>,
    files: NamedFiles<'_>,
    written: CookerTable,
) -> Cooker {
    let mut kinds = CookerType::ALL.into_iter();
    let kind = kinds.find(|kind| kind.word() == written.kind);
    if kind.is_none() {
        checker.problem(
            "cooker.type",
            format!("found \"{}\", expected one of {}", written.kind, words(CookerType::ALL.map(CookerType::word))),
            "a reflector that keeps a focus is \"concentrating\"; a shallow or folding one is \"panel\"",
        );
    }
    for (key, text) in [
        ("cooker.identification", &written.identification),
        ("cooker.condition", &written.condition),
    ] {
        if let Some(text) = text {
            checker.text(key, text, LONGEST_TEXT);
        }
    }
    let has_aperture = written.aperture.is_some();
    let aperture = written
        .aperture
        .and_then(|table| check_aperture(checker, table));
    let intercept_area_m2 = match (written.intercept_area_m2, &aperture) {
        (Some(area_m2), None) => {
            checker.in_range(
                "cooker.intercept_area_m2",
                area_m2,
                &INTERCEPT_AREA_M2,
                "m²",
            );
            area_m2
        }
        (None, Some(aperture)) => {
            let area_m2 = intercept_area_m2(&aperture.shape, aperture.incidence_deg);
            if !INTERCEPT_AREA_M2.contains(&area_m2) {
                let (smallest, largest) = (INTERCEPT_AREA_M2.start(), INTERCEPT_AREA_M2.end());
                checker.problem(
                    "cooker.aperture",
                    format!("encloses {area_m2} m², expected {smallest} to {largest} m²"),
                    "check the lengths, in m; list the corners of an outline in order",
                );
            }
            area_m2
        }
        (Some(_), Some(_)) => {
            checker.problem(
                "cooker.intercept_area_m2",
                "both intercept_area_m2 and [cooker.aperture] are given, expected one",
                "keep the one you measured and delete the other",
            );
            f64::NAN
        }
        (None, None) => {
            if !has_aperture {
                checker.problem(
                    "cooker",
                    "has neither intercept_area_m2 nor [cooker.aperture]",
                    "measure the area that collects sunlight, as seen from the sun, in m²",
                );
            }
            f64::NAN
        }
    };
    for (key, value, highest, unit) in [
        (
            "cooker.cost",
            written.cost,
            HIGHEST_COST,
            "units of currency",
        ),
        ("cooker.mass_kg", written.mass_kg, HEAVIEST_COOKER_KG, "kg"),
    ] {
        if let Some(value) = value {
            checker.positive(key, value, highest, unit);
        }
    }
    if let Some(half_angle_deg) = written.acceptance_half_angle_deg
        && !ACCEPTANCE_HALF_ANGLE_DEG.contains(&half_angle_deg)
    {
        let range = &ACCEPTANCE_HALF_ANGLE_DEG;
        let (least, most) = (range.start(), range.end());
        checker.problem(
            "cooker.acceptance_half_angle_deg",
            format!("found {half_angle_deg}, expected {least} to {most} degrees"),
            "turn the cooker away from the sun until the pot gets visibly less light, and measure that angle; the sun itself has a radius of 0.27 degrees",
        );
    }
    Cooker {
        name: written.name,
        kind: kind.unwrap_or(CookerType::Panel),
        intercept_area_m2,
        aperture,
        description: written.description,
        photo: written
            .photo
            .and_then(|name| check_photo(checker, files, &name)),
        identification: written.identification,
        condition: written.condition,
        received: written
            .received
            .and_then(|date| checker.date("cooker.received", &date)),
        cost: written.cost,
        currency: written.currency,
        mass_kg: written.mass_kg,
        acceptance_half_angle_deg: written.acceptance_half_angle_deg,
    }
}

fn check_aperture(checker: &mut Checker<'_>, table: ApertureTable) -> Option<Aperture> {
    const SHAPES: [&str; 4] = ["circle", "rectangle", "regular-polygon", "outline"];
    let incidence_deg = table.incidence_deg.unwrap_or(0.0);
    checker.in_range(
        "cooker.aperture.incidence_deg",
        incidence_deg,
        &INCIDENCE_DEG,
        "degrees",
    );
    if !INCIDENCE_DEG.contains(&incidence_deg) {
        return None;
    }
    let own_keys: &[&str] = match table.shape.as_str() {
        "circle" => &["diameter_m"],
        "rectangle" => &["width_m", "height_m"],
        "regular-polygon" => &["sides", "across_corners_m"],
        "outline" => &["points_m"],
        _ => &[
            "diameter_m",
            "width_m",
            "height_m",
            "sides",
            "across_corners_m",
            "points_m",
        ],
    };
    for (key, is_given) in [
        ("diameter_m", table.diameter_m.is_some()),
        ("width_m", table.width_m.is_some()),
        ("height_m", table.height_m.is_some()),
        ("sides", table.sides.is_some()),
        ("across_corners_m", table.across_corners_m.is_some()),
        ("points_m", table.points_m.is_some()),
    ] {
        if is_given && !own_keys.contains(&key) {
            let what = format!("a {} has no {key}", table.shape);
            checker.problem(
                &format!("cooker.aperture.{key}"),
                what,
                "delete the key, or change the shape",
            );
        }
    }
    let mut length = |key: &str, value: Option<f64>| {
        let path = format!("cooker.aperture.{key}");
        match value {
            Some(value) => checker
                .positive(&path, value, LONGEST_APERTURE_M, "m")
                .then_some(value),
            None => {
                checker.problem(
                    &path,
                    format!("a {} needs the key {key}", table.shape),
                    "measure it, in m",
                );
                None
            }
        }
    };
    let shape = match table.shape.as_str() {
        "circle" => Shape::Circle {
            diameter_m: length("diameter_m", table.diameter_m)?,
        },
        "rectangle" => {
            let width_m = length("width_m", table.width_m);
            let height_m = length("height_m", table.height_m);
            Shape::Rectangle {
                width_m: width_m?,
                height_m: height_m?,
            }
        }
        "regular-polygon" => {
            let across_corners_m = length("across_corners_m", table.across_corners_m);
            let sides = table.sides.filter(|&sides| (3..=1000).contains(&sides));
            if sides.is_none() {
                checker.problem(
                    "cooker.aperture.sides",
                    "a regular-polygon needs sides, a whole number from 3 to 1000",
                    "count the sides",
                );
            }
            Shape::RegularPolygon {
                sides: sides?,
                across_corners_m: across_corners_m?,
            }
        }
        "outline" => {
            let points_m = table.points_m.unwrap_or_default();
            let key = "cooker.aperture.points_m";
            if !(3..=1000).contains(&points_m.len()) {
                checker.problem(
                    key,
                    format!("found {} points, expected 3 to 1000", points_m.len()),
                    "list the corners in order as [[x, y], …], in m",
                );
                return None;
            }
            if points_m.iter().flatten().any(|v| !v.is_finite()) || crosses_itself(&points_m) {
                checker.problem(
                    key,
                    "the outline crosses itself or has a point that is no number",
                    "list the corners in the order in which you meet them going round",
                );
                return None;
            }
            Shape::Outline { points_m }
        }
        other => {
            checker.problem(
                "cooker.aperture.shape",
                format!("found \"{other}\", expected one of {}", words(SHAPES)),
                "an uneven shape is an \"outline\" of its corners",
            );
            return None;
        }
    };
    Some(Aperture {
        shape,
        incidence_deg,
    })
}
