//! What Typst reads: templates and fonts, the same for every document, and the files of one.

use std::sync::LazyLock;

use typst::foundations::Bytes;
use typst::syntax::Source;
use typst::text::Font;
use typst_as_lib::TypstEngine;
use typst_as_lib::conversions::IntoSource;

use super::assets::Asset;

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

/// Fonts of figures and tables.
pub const SANS: [&[u8]; 2] = [
    include_bytes!("../../templates/fonts/Inter-Regular.otf"),
    include_bytes!("../../templates/fonts/Inter-SemiBold.otf"),
];

/// Fonts of text, and of what is to be copied letter by letter.
const OTHERS: [&[u8]; 3] = [
    include_bytes!("../../templates/fonts/LibertinusSerif-Regular.otf"),
    include_bytes!("../../templates/fonts/LibertinusSerif-Semibold.otf"),
    include_bytes!("../../templates/fonts/DejaVuSansMono.ttf"),
];

/// Every font that a document may use, read once.
pub fn fonts() -> &'static [Font] {
    static FONTS: LazyLock<Vec<Font>> = LazyLock::new(|| {
        let files = SANS.into_iter().chain(OTHERS);
        files
            .flat_map(|data| Font::iter(Bytes::new(data)))
            .collect()
    });
    &FONTS
}

/// The templates, parsed once.
fn templates() -> &'static [Source] {
    static SOURCES: LazyLock<Vec<Source>> = LazyLock::new(|| {
        let sources = TEMPLATES.iter().copied();
        sources.map(IntoSource::into_source).collect()
    });
    &SOURCES
}

/// What sets one document, from the templates and fonts of all and the files of its own. What it
/// has laid out is kept until the caller throws it away.
pub fn engine(files: impl IntoIterator<Item = Asset>) -> TypstEngine {
    let files: Vec<(String, Bytes)> = files
        .into_iter()
        .map(|file| (file.name, Bytes::new(file.bytes)))
        .collect();
    let files = files
        .iter()
        .map(|(name, bytes)| (name.as_str(), bytes.clone()));
    TypstEngine::builder()
        .fonts(fonts().iter().cloned())
        .with_static_source_file_resolver(templates().iter().cloned())
        .with_static_file_resolver(files)
        .comemo_evict_max_age(None)
        .build()
}
