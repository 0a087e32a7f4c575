//! The report as PDF. Everything that knows Typst is in this file and in `engine.rs`.

use std::num::NonZeroUsize;
use std::sync::LazyLock;

use jiff::Timestamp;
use serde::Serialize;
use typst::comemo;
use typst::diag::SourceDiagnostic;
use typst::foundations::{Bytes, Datetime, Smart};
use typst::layout::Abs;
use typst::text::{Font, FontInstance, FontVariant, FontVariations};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards, Timestamp as PdfTimestamp};

use super::assets::{Asset, Attachment};
pub use super::engine::{COMPARISON, FIELD_SHEET, REPORT};
use super::engine::{SANS, engine, fonts};
use super::unbroken::{JOINER, kept_together};
use crate::error::{Error, Result};

/// PDF/A, for the archive, and PDF/UA-1, for screen readers. Only PDF/A-3 carries files of
/// any kind; PDF/A-2 is the same without them.
const CARRYING: [PdfStandard; 2] = [PdfStandard::A_3a, PdfStandard::Ua_1];
const SLIM: [PdfStandard; 2] = [PdfStandard::A_2a, PdfStandard::Ua_1];

/// Typst keeps what it has laid out, so that what two documents have alike, or one document in two
/// of its rounds, is laid out once. What so many ends of documents have passed since it was used is
/// thrown away: as many as are set side by side unless `--jobs` says more, or one's end would take
/// from another what it still needs, and has to do again. More take memory, and hardly any time
/// less.
fn kept() -> usize {
    std::thread::available_parallelism().map_or(1, NonZeroUsize::get)
}

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
    let engine = engine(assets.into_iter().chain(data));
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
    let pdf = typst_pdf::pdf(&document, &options).map_err(faults);
    comemo::evict(kept());
    pdf
}

/// What Typst says went wrong.
fn faults(faults: impl IntoIterator<Item = SourceDiagnostic>) -> Error {
    let messages: Vec<String> = faults
        .into_iter()
        .map(|fault| fault.message.to_string())
        .collect();
    internal(messages.join("; "))
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
    let text = serde_json::to_value(report).map_err(internal)?;
    let mut missing: Vec<char> = Vec::new();
    visit_strings(&text, &mut |string| {
        for character in string.chars().filter(|character| !character.is_control()) {
            if !has_glyph(character) && !missing.contains(&character) {
                missing.push(character);
            }
        }
    });
    Ok(missing)
}

/// Whether one of the fonts has a character.
fn has_glyph(character: char) -> bool {
    static COVERED: LazyLock<Vec<bool>> = LazyLock::new(|| {
        let mut covered = Vec::new();
        for code in fonts().iter().flat_map(|font| font.info().coverage.iter()) {
            let place = code as usize;
            if place >= covered.len() {
                covered.resize(place + 1, false);
            }
            covered[place] = true;
        }
        covered
    });
    COVERED.get(character as usize).copied().unwrap_or(false)
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
