//! The report as PDF. Everything that knows Typst is in this file.

use std::sync::LazyLock;

use jiff::Timestamp;
use serde::Serialize;
use typst::foundations::{Bytes, Datetime, Smart};
use typst::layout::Abs;
use typst::text::{Font, FontInstance, FontVariant, FontVariations};
use typst_as_lib::TypstEngine;
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards, Timestamp as PdfTimestamp};

use super::assets::{Asset, Attachment};
use super::unbroken::{JOINER, kept_together};
use crate::error::{Error, Result};

/// Template of the report on one campaign.
pub const REPORT: &str = "report.typ";
/// Template of a comparison.
pub const COMPARISON: &str = "comparison.typ";

/// Template of a field sheet.
pub const FIELD_SHEET: &str = "field-sheet.typ";

/// Template sources, by the name under which they import each other.
const TEMPLATES: &[(&str, &str)] = &[
    (REPORT, include_str!("../../templates/report.typ")),
    (COMPARISON, include_str!("../../templates/comparison.typ")),
    (FIELD_SHEET, include_str!("../../templates/field-sheet.typ")),
    ("evidence.typ", include_str!("../../templates/evidence.typ")),
    (
        "parts/style.typ",
        include_str!("../../templates/parts/style.typ"),
    ),
    (
        "parts/ranking.typ",
        include_str!("../../templates/parts/ranking.typ"),
    ),
    (
        "parts/matrix.typ",
        include_str!("../../templates/parts/matrix.typ"),
    ),
    (
        "parts/frame.typ",
        include_str!("../../templates/parts/frame.typ"),
    ),
    (
        "parts/front.typ",
        include_str!("../../templates/parts/front.typ"),
    ),
    (
        "parts/tested.typ",
        include_str!("../../templates/parts/tested.typ"),
    ),
    (
        "parts/conditions.typ",
        include_str!("../../templates/parts/conditions.typ"),
    ),
    (
        "parts/runs.typ",
        include_str!("../../templates/parts/runs.typ"),
    ),
    (
        "parts/intervals.typ",
        include_str!("../../templates/parts/intervals.typ"),
    ),
    (
        "parts/regression.typ",
        include_str!("../../templates/parts/regression.typ"),
    ),
    (
        "parts/procedures.typ",
        include_str!("../../templates/parts/procedures.typ"),
    ),
    (
        "parts/cooking.typ",
        include_str!("../../templates/parts/cooking.typ"),
    ),
    (
        "parts/cautions.typ",
        include_str!("../../templates/parts/cautions.typ"),
    ),
    (
        "parts/provenance.typ",
        include_str!("../../templates/parts/provenance.typ"),
    ),
];

/// Fonts of figures and tables, beside those that come with Typst.
const SANS: [&[u8]; 2] = [
    include_bytes!("../../templates/fonts/Inter-Regular.otf"),
    include_bytes!("../../templates/fonts/Inter-SemiBold.otf"),
];

/// Families taken from those that come with Typst.
const FAMILIES: [&str; 2] = ["Libertinus Serif", "DejaVu Sans Mono"];

/// PDF/A, for the archive, and PDF/UA-1, for screen readers. Only PDF/A-3 carries files of
/// any kind; PDF/A-2 is the same without them.
const CARRYING: [PdfStandard; 2] = [PdfStandard::A_3a, PdfStandard::Ua_1];
const SLIM: [PdfStandard; 2] = [PdfStandard::A_2a, PdfStandard::Ua_1];

/// Sets a report by one of the templates and returns the PDF. The bytes of `attachments` are
/// among the assets.
///
/// # Errors
/// [`Error::Internal`] if the templates do not compile or the PDF cannot be written.
pub fn typeset(
    template: &str,
    report: &impl Serialize,
    assets: Vec<Asset>,
    attachments: &[Attachment],
    issued: Timestamp,
) -> Result<Vec<u8>> {
    let mut report = serde_json::to_value(report).map_err(internal)?;
    keep_together(&mut report);
    let data = [
        json("report.json", &report)?,
        json("attachments.json", &attachments)?,
    ];
    let standards = if attachments.is_empty() {
        SLIM
    } else {
        CARRYING
    };
    let files: Vec<(String, Bytes)> = assets
        .into_iter()
        .chain(data)
        .map(|asset| (asset.name, Bytes::new(asset.bytes)))
        .collect();
    let files = files
        .iter()
        .map(|(name, bytes)| (name.as_str(), bytes.clone()));
    let engine = TypstEngine::builder()
        .fonts(fonts())
        .with_static_source_file_resolver(TEMPLATES.iter().copied())
        .with_static_file_resolver(files)
        .build();
    let compiled = engine.compile::<_, PagedDocument>(template);
    let document = compiled.output.map_err(internal)?;
    let options = PdfOptions {
        creator: Smart::Custom(Some(
            concat!("simmerline ", env!("CARGO_PKG_VERSION")).to_owned(),
        )),
        timestamp: pdf_timestamp(issued),
        standards: PdfStandards::new(&standards).map_err(|error| internal(error.message()))?,
        ..PdfOptions::default()
    };
    typst_pdf::pdf(&document, &options).map_err(|faults| {
        let messages: Vec<String> = faults
            .iter()
            .map(|fault| fault.message.to_string())
            .collect();
        internal(messages.join("; "))
    })
}

/// Keys whose strings are for the program: names of files, codes.
const KEYS: [&str; 3] = ["file", "code", "level_code"];

/// Puts spaces that do not break into every string that is set.
fn keep_together(value: &mut serde_json::Value) {
    match value {
        // The template keeps dashes by boxes, so that no joiner gets into the text of the PDF.
        serde_json::Value::String(text) => *text = kept_together(text).replace(JOINER, ""),
        serde_json::Value::Array(items) => items.iter_mut().for_each(keep_together),
        serde_json::Value::Object(fields) => fields
            .iter_mut()
            .filter(|(key, _)| !KEYS.contains(&key.as_str()))
            .for_each(|(_, field)| keep_together(field)),
        _ => {}
    }
}

fn json(name: &str, data: &impl Serialize) -> Result<Asset> {
    Ok(Asset {
        name: name.to_owned(),
        bytes: serde_json::to_vec(data).map_err(internal)?,
    })
}

fn fonts() -> Vec<Font> {
    let of_typst = typst_assets::fonts().flat_map(|data| Font::iter(Bytes::new(data)));
    let of_typst = of_typst.filter(|font| FAMILIES.contains(&font.info().family.as_str()));
    let own = SANS
        .into_iter()
        .flat_map(|data| Font::iter(Bytes::new(data)));
    own.chain(of_typst).collect()
}

/// Width of a line in the font of figures, as a share of its size. A character that the
/// font lacks is as wide as it is high.
pub fn width_in_figures(line: &str, is_strong: bool) -> f64 {
    static FACES: LazyLock<Vec<FontInstance>> = LazyLock::new(|| {
        let faces = SANS.into_iter();
        let faces = faces.flat_map(|data| Font::iter(Bytes::new(data)));
        let as_it_is = |face: Font| {
            let variant = FontVariant::default();
            face.instantiate(variant, Abs::pt(1.0), &FontVariations::default())
        };
        faces.map(as_it_is).collect()
    });
    let face = &FACES[usize::from(is_strong)];
    let width_em = |character: char| {
        let glyph = face.ttf().glyph_index(character)?;
        Some(face.x_advance(glyph.0)?.get())
    };
    line.chars()
        .map(|character| width_em(character).unwrap_or(1.0))
        .sum()
}

/// Characters of the report that none of its fonts has: a PDF for the archive must
/// not hold them.
///
/// # Errors
/// [`Error::Internal`] if the report has no JSON form.
pub fn missing_characters(report: &impl Serialize) -> Result<Vec<char>> {
    let fonts = fonts();
    let text = serde_json::to_value(report).map_err(internal)?;
    let mut missing: Vec<char> = Vec::new();
    visit_strings(&text, &mut |string| {
        for character in string.chars().filter(|character| !character.is_control()) {
            let has_glyph = |font: &Font| font.info().coverage.contains(character as u32);
            if !missing.contains(&character) && !fonts.iter().any(has_glyph) {
                missing.push(character);
            }
        }
    });
    Ok(missing)
}

fn visit_strings(value: &serde_json::Value, visit: &mut impl FnMut(&str)) {
    match value {
        serde_json::Value::String(text) => visit(text),
        serde_json::Value::Array(items) => items.iter().for_each(|item| visit_strings(item, visit)),
        serde_json::Value::Object(fields) => fields
            .values()
            .for_each(|field| visit_strings(field, visit)),
        _ => {}
    }
}

fn pdf_timestamp(issued: Timestamp) -> Option<PdfTimestamp> {
    let utc = jiff::tz::TimeZone::UTC.to_datetime(issued);
    let datetime = Datetime::from_ymd_hms(
        i32::from(utc.year()),
        utc.month().try_into().ok()?,
        utc.day().try_into().ok()?,
        utc.hour().try_into().ok()?,
        utc.minute().try_into().ok()?,
        utc.second().try_into().ok()?,
    )?;
    Some(PdfTimestamp::new_utc(datetime))
}

fn internal(error: impl std::fmt::Display) -> Error {
    Error::Internal(format!("the report cannot be set: {error}"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn widths_are_those_of_the_font() {
        // Advance widths of W, m, /, ² and ä from the font files' tables head, cmap and hmtx,
        // 2816 units to the em, read byte by byte apart from any font library.
        for (is_strong, units) in [
            (false, 2672.0 + 2448.0 + 1004.0 + 1184.0 + 1588.0),
            (true, 2835.0 + 2528.0 + 1066.0 + 1190.0 + 1618.0),
        ] {
            let width_em = width_in_figures("Wm/²ä", is_strong);
            assert!((width_em - units / 2816.0).abs() < 1e-6, "{width_em}");
        }
    }
}
