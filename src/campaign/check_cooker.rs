//! The cooker's table: area, half angle and photo.

use super::aperture::intercept_area_m2;
use super::check_aperture::check_aperture;
use super::locate::Checker;
use super::model::{Aperture, Cooker, CookerType};
use super::named_files::NamedFiles;
use super::photo::check_photo;
use super::schema::{ApertureTable, CookerTable};
use super::wording::words;
use crate::believable::{
    ACCEPTANCE_HALF_ANGLE_DEG, HEAVIEST_COOKER_KG, HIGHEST_COST, INTERCEPT_AREA_M2, LOSS_AREA_M2,
};
use crate::bounds::{NOTES, TEXT};
use crate::units::short;

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
            checker.text(key, text, &TEXT);
        }
    }
    checker.length("cooker.currency", written.currency.as_deref(), &TEXT);
    checker.length("cooker.description", written.description.as_deref(), &NOTES);
    let (intercept_area_m2, aperture) =
        check_area(checker, written.intercept_area_m2, written.aperture);
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
    if let Some(half_angle_deg) = written.acceptance_half_angle_deg {
        check_half_angle(checker, half_angle_deg);
    }
    for (key, area_m2) in [
        ("cooker.loss_area_m2", written.loss_area_m2),
        ("cooker.glazing_area_m2", written.glazing_area_m2),
    ] {
        if let Some(area_m2) = area_m2 {
            checker.in_range(key, area_m2, &LOSS_AREA_M2, "m²");
        }
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
        loss_area_m2: written.loss_area_m2,
        glazing_area_m2: written.glazing_area_m2,
    }
}

/// How far off its axis the sun may stand.
fn check_half_angle(checker: &mut Checker<'_>, half_angle_deg: f64) {
    let range = &ACCEPTANCE_HALF_ANGLE_DEG;
    if !range.contains(&half_angle_deg) {
        let (least, most) = (range.start(), range.end());
        checker.problem(
            "cooker.acceptance_half_angle_deg",
            format!("found {half_angle_deg}, expected {least} to {most} degrees"),
            "turn the cooker away from the sun until the pot gets visibly less light, and measure that angle; the sun itself has a radius of 0.27 degrees",
        );
    }
}

/// What an area may be that is too large to be in square metres.
fn of_small_units(area: f64) -> String {
    let in_m2 = |of_one_m2: f64| short((area * of_one_m2 * 1e4).round() / 1e4);
    format!(
        "if it is in cm², that is {} m²; if in square inches, {} m²",
        in_m2(1e-4),
        in_m2(6.4516e-4)
    )
}

/// The intercept area, m², as stated or of the aperture, and the aperture; of an area that
/// cannot be known, no number.
fn check_area(
    checker: &mut Checker<'_>,
    stated_m2: Option<f64>,
    written: Option<ApertureTable>,
) -> (f64, Option<Aperture>) {
    let has_aperture = written.is_some();
    let aperture = written.and_then(|table| check_aperture(checker, table));
    let area_m2 = match (stated_m2, &aperture) {
        (Some(area_m2), None) => {
            let key = "cooker.intercept_area_m2";
            if area_m2 > *INTERCEPT_AREA_M2.end() {
                let what = format!(
                    "found {area_m2}, expected {} to {} m²",
                    INTERCEPT_AREA_M2.start(),
                    INTERCEPT_AREA_M2.end()
                );
                checker.problem(key, what, of_small_units(area_m2));
            } else {
                checker.in_range(key, area_m2, &INTERCEPT_AREA_M2, "m²");
            }
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
            let name = checker.name_of("cooker.intercept_area_m2");
            let what = format!("both {name} and [cooker.aperture] are given, expected one");
            checker.problem(
                "cooker.intercept_area_m2",
                what,
                "keep the one you measured and delete the other",
            );
            f64::NAN
        }
        (None, None) => {
            if !has_aperture {
                const MEASURE: &str =
                    "measure the area that collects sunlight, as seen from the sun, in m²";
                let hint = match checker.how_to_fill_in("cooker.intercept_area_m2") {
                    Some(fill_in) => format!("{MEASURE}: {fill_in}"),
                    None => MEASURE.to_owned(),
                };
                checker.problem(
                    "cooker.intercept_area_m2",
                    "the key \"intercept_area_m2\" is missing, and there is no [cooker.aperture]",
                    hint,
                );
            }
            f64::NAN
        }
    };
    (area_m2, aperture)
}
