//! What Typst reads: templates and fonts, the same for every document, and the files of one.

use std::collections::HashMap;
use std::sync::LazyLock;

use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt};

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

/// Fonts of figures and tables, beside those that come with Typst.
pub const SANS: [&[u8]; 2] = [
    include_bytes!("../../templates/fonts/Inter-Regular.otf"),
    include_bytes!("../../templates/fonts/Inter-SemiBold.otf"),
];

/// Families taken from those that come with Typst.
const FAMILIES: [&str; 2] = ["Libertinus Serif", "DejaVu Sans Mono"];

/// What all documents have in common, read once.
struct Common {
    library: LazyHash<Library>,
    book: LazyHash<FontBook>,
    fonts: Vec<Font>,
    templates: HashMap<FileId, Source>,
}

static COMMON: LazyLock<Common> = LazyLock::new(|| {
    let fonts = all_fonts();
    let templates = TEMPLATES.iter().map(|(name, text)| {
        let id = id_of(name);
        (id, Source::new(id, (*text).to_owned()))
    });
    Common {
        library: LazyHash::new(Library::default()),
        book: LazyHash::new(FontBook::from_fonts(&fonts)),
        templates: templates.collect(),
        fonts,
    }
});

/// Every font that a document may use.
pub fn fonts() -> &'static [Font] {
    &COMMON.fonts
}

fn all_fonts() -> Vec<Font> {
    let of_typst = typst_assets::fonts().flat_map(|data| Font::iter(Bytes::new(data)));
    let of_typst = of_typst.filter(|font| FAMILIES.contains(&font.info().family.as_str()));
    let own = SANS
        .into_iter()
        .flat_map(|data| Font::iter(Bytes::new(data)));
    own.chain(of_typst).collect()
}

/// A file's name as Typst knows it.
fn id_of(name: &str) -> FileId {
    let path = VirtualPath::new(name).expect("names of files are our own, and lead nowhere else");
    RootedPath::new(VirtualRoot::Project, path).intern()
}

/// What one document is set from.
pub struct World {
    template: FileId,
    files: HashMap<FileId, Bytes>,
}

impl World {
    /// A template, and the files that it reads.
    pub fn new(template: &str, files: impl IntoIterator<Item = Asset>) -> World {
        let files = files.into_iter();
        let files = files.map(|file| (id_of(&file.name), Bytes::new(file.bytes)));
        World {
            template: id_of(template),
            files: files.collect(),
        }
    }
}

impl typst::World for World {
    fn library(&self) -> &LazyHash<Library> {
        &COMMON.library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &COMMON.book
    }

    fn main(&self) -> FileId {
        self.template
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        let found = COMMON.templates.get(&id).cloned();
        found.ok_or_else(|| not_there(id))
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        self.files.get(&id).cloned().ok_or_else(|| not_there(id))
    }

    fn font(&self, index: usize) -> Option<Font> {
        COMMON.fonts.get(index).cloned()
    }

    /// No document prints the day on which it is set, but for the time of issue that it is given.
    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}

fn not_there(id: FileId) -> FileError {
    FileError::NotFound(id.vpath().get_with_slash().into())
}
