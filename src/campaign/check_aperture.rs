//! The aperture's table: its shape, and the keys that each shape has.

use super::aperture::{Shape, crosses_itself};
use super::locate::Checker;
use super::model::Aperture;
use super::schema::ApertureTable;
use super::wording::words;
use crate::believable::{INCIDENCE_DEG, LONGEST_APERTURE_M};
use crate::bounds::CORNERS;

/// Fewest corners of a polygon, and of an outline.
const LEAST_CORNERS: usize = 3;

/// Words of the shapes, each with its keys.
const SHAPES: [(&str, &[&str]); 4] = [
    ("circle", &["diameter_m"]),
    ("rectangle", &["width_m", "height_m"]),
    ("regular-polygon", &["sides", "across_corners_m"]),
    ("outline", &["points_m"]),
];

/// The aperture; `None` where its table has a problem.
pub fn check_aperture(checker: &mut Checker<'_>, table: ApertureTable) -> Option<Aperture> {
    let incidence_deg = table.incidence_deg.unwrap_or(0.0);
    let key = "cooker.aperture.incidence_deg";
    checker.in_range(key, incidence_deg, &INCIDENCE_DEG, "degrees");
    if !INCIDENCE_DEG.contains(&incidence_deg) {
        return None;
    }
    refuse_keys_of_others(checker, &table);
    Some(Aperture {
        shape: check_shape(checker, table)?,
        incidence_deg,
    })
}

/// Notes every key that the shape does not have.
fn refuse_keys_of_others(checker: &mut Checker<'_>, table: &ApertureTable) {
    let mut shapes = SHAPES.iter();
    let Some((shape, own_keys)) = shapes.find(|(word, _)| *word == table.shape) else {
        return;
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
            checker.problem(
                &format!("cooker.aperture.{key}"),
                format!("a {shape} has no {key}"),
                "delete the key, or change the shape",
            );
        }
    }
}

fn check_shape(checker: &mut Checker<'_>, table: ApertureTable) -> Option<Shape> {
    let word = table.shape.as_str();
    match word {
        "circle" => Some(Shape::Circle {
            diameter_m: check_length(checker, word, "diameter_m", table.diameter_m)?,
        }),
        "rectangle" => {
            let width_m = check_length(checker, word, "width_m", table.width_m);
            let height_m = check_length(checker, word, "height_m", table.height_m);
            Some(Shape::Rectangle {
                width_m: width_m?,
                height_m: height_m?,
            })
        }
        "regular-polygon" => {
            let across = table.across_corners_m;
            let across_corners_m = check_length(checker, word, "across_corners_m", across);
            let sides = table
                .sides
                .filter(|&sides| (LEAST_CORNERS..=CORNERS.count()).contains(&(sides as usize)));
            if sides.is_none() {
                checker.problem(
                    "cooker.aperture.sides",
                    format!(
                        "a regular-polygon needs sides, a whole number from {LEAST_CORNERS} to {}",
                        CORNERS.most
                    ),
                    "count the sides",
                );
            }
            Some(Shape::RegularPolygon {
                sides: sides?,
                across_corners_m: across_corners_m?,
            })
        }
        "outline" => check_outline(checker, table.points_m.unwrap_or_default()),
        other => {
            let known = words(SHAPES.map(|(word, _)| word));
            checker.problem(
                "cooker.aperture.shape",
                format!("found \"{other}\", expected one of {known}"),
                "an uneven shape is an \"outline\" of its corners",
            );
            None
        }
    }
}

/// A length that a shape needs.
fn check_length(
    checker: &mut Checker<'_>,
    shape: &str,
    key: &str,
    written_m: Option<f64>,
) -> Option<f64> {
    let path = format!("cooker.aperture.{key}");
    let Some(length_m) = written_m else {
        let what = format!("a {shape} needs the key {key}");
        let stem = key.trim_end_matches("_m");
        let hint = format!("measure it, in m; or write {stem}_ft or {stem}_in");
        checker.problem(&path, what, hint);
        return None;
    };
    let is_right = checker.positive(&path, length_m, LONGEST_APERTURE_M, "m");
    is_right.then_some(length_m)
}

fn check_outline(checker: &mut Checker<'_>, points_m: Vec<[f64; 2]>) -> Option<Shape> {
    let key = "cooker.aperture.points_m";
    let hint = "list the corners in order as [[x, y], …], in m";
    if points_m.len() < LEAST_CORNERS {
        let what = format!(
            "found {} points, expected {LEAST_CORNERS} or more",
            points_m.len()
        );
        checker.problem(key, what, hint);
        return None;
    }
    if !checker.bound(key, points_m.len(), &CORNERS, hint) {
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
    Some(Shape::Outline { points_m })
}
