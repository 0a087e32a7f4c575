//! Every bound on what is read, in one table, each with its reason. What lies beyond is
//! refused by name: nothing is cut off without a word, and nothing takes a machine down.
//!
//! They are far above what honest work needs. `DEVELOPERS.md` shows the same table, which a
//! test holds against this one. Ranges of what is physically believable are in
//! [`crate::believable`].

/// So much of something is read, and no more.
#[derive(Debug, PartialEq, Eq)]
pub struct Bound {
    /// What is counted.
    pub name: &'static str,
    pub most: u64,
    pub unit: &'static str,
    /// Why honest work stays below it, or what lies above.
    pub reason: &'static str,
}

impl Bound {
    /// The number, for what is counted in memory.
    pub const fn count(&self) -> usize {
        self.most as usize
    }

    /// What to say of so many, where they are too many.
    pub fn exceeded_by(&self, found: usize) -> Option<String> {
        let found = found as u64;
        (found > self.most).then(|| {
            let Bound { most, unit, .. } = self;
            format!("found {found} {unit}, expected at most {most}")
        })
    }
}

/// Declares the bounds and the list of them.
macro_rules! bounds {
    ($($name:ident: $what:literal, $most:expr, $unit:literal, $reason:literal;)*) => {
        $(
            #[doc = concat!("Most ", $unit, ": ", $what, ". ", $reason, ".")]
            pub const $name: Bound = Bound {
                name: $what,
                most: $most,
                unit: $unit,
                reason: $reason,
            };
        )*
        /// All of them, in the order of the guide.
        pub const ALL: &[&Bound] = &[$(&$name),*];
    };
}

bounds! {
    CAMPAIGN_BYTES: "campaign file", 4 << 20, "bytes",
        "2,000 runs with twenty keys and a note each are 2 MB";
    CAMPAIGN_KEYS: "keys and values of a campaign file", 200_000, "keys and values",
        "2,000 runs with fifty each are half of it";
    NAME: "title or name", 200, "characters",
        "it stands in a heading";
    REPORT_NUMBER: "report number", 40, "characters",
        "it stands at the head of every page";
    TEXT: "short text of the campaign file", 400, "characters",
        "it stands in a cell of a table";
    REMARK: "note on a run, an instrument, a span or a dry test", 4_000, "characters",
        "two pages; a longer account belongs into a document of its own";
    NOTES: "notes of a campaign, description of a cooker", 40_000, "characters",
        "twenty pages; a longer account belongs into a document of its own";
    RUNS: "runs of a campaign", 2_000, "runs",
        "five years of a test a day; each takes 5 ms, and 30 where all are shown";
    SPANS: "excluded and cloudless spans of a campaign, together", 10_000, "spans",
        "five for each of 2,000 runs";
    CALIBRATIONS: "calibrations of a campaign", 1_000, "calibrations",
        "one for every column of the widest log";
    CALIBRATION_POINTS: "points of a calibration", 1_000, "points",
        "a certificate has ten to fifty";
    STAGNATIONS: "tests of the dry vessel", 1_000, "tests",
        "three years of one a day; each is a row of a table";
    CORNERS: "corners of an aperture", 1_000, "points",
        "each side is held against every other, to see whether they cross";
    VESSELS: "vessels", 1_000, "vessels",
        "one for every column of the widest log";
    AMOUNTS: "amounts of water to cook", 6, "amounts",
        "the table on the page has room for no more";
    PHOTO_BYTES: "photo, as a file", 64 << 20, "bytes",
        "a camera's JPEG of 60 megapixels has 30 MB";
    PHOTO_PIXELS: "photo, width × height", 64_000_000, "pixels",
        "cameras have 12 to 60 million; a report shows 2000 pixels a side";
    PHOTO_MEMORY: "photo, unpacked", 256 << 20, "bytes",
        "64 million pixels of four bytes; told from the head of the file, before unpacking";
    LOG_BYTES: "log as text, unpacked", 4 << 30, "bytes",
        "three years of readings a second";
    LOG_EXPANSION: "compressed log or spreadsheet: times its size, above 16 MiB", 200, "times",
        "readings are compressed to a third up to a fiftieth";
    LOG_LINE: "line of a log", 1 << 20, "bytes",
        "1,000 columns of a thousand characters";
    LOG_ROWS: "readings of a log", 50_000_000, "readings",
        "a year and a half of one a second; 44 bytes of memory each";
    LOG_VALUES: "values read from a log", 250_000_000, "values",
        "50 million readings of five sensors; eight bytes of memory each";
    LOG_COLUMNS: "columns of a log", 1_000, "columns",
        "a logger has one to sixty channels; a spreadsheet may carry many more that are computed";
    HEADER: "header of a column", 500, "characters",
        "it is searched for a unit at every cut between two words";
    HEADER_LINE: "line of a header", 100_000, "lines",
        "a logger writes one to fifty above it";
    HEAD: "rows among which a header is searched", 2 << 20, "bytes",
        "every cell of them may be a header; 300 rows at most";
    DECLARED_HEAD: "rows down to a header whose line is given", 64 << 20, "bytes",
        "what stands above it is kept";
    SHEET_BYTES: "spreadsheet, as a file", 256 << 20, "bytes",
        "a sheet of its most rows has 20 to 80 MB";
    SHEET_CONTENT: "spreadsheet, unpacked", 1 << 30, "bytes",
        "a sheet of its most rows and six columns has 300 MB";
    SHEET_ROWS: "rows of a sheet", 1 << 20, "rows",
        "spreadsheet programs have no more";
    SHEET_CELLS: "cells of a sheet", 8_000_000, "cells",
        "its most rows with seven columns; a sheet is held in memory";
    SHEET_TEXT: "text of a sheet, with 24 bytes for each cell up to the last of its row", 1 << 29, "bytes",
        "a sheet is held in memory";
    ATTACHMENTS: "attachments of a report", 4_000, "files",
        "2,000 runs with a log and a weather log each";
    ATTACHED_BYTES: "attachments of a report, together", (1 << 31) - 1, "bytes",
        "PDF counts them in 32 bits";
    CARRIED_LOG: "log that a report carries inside without being asked to", 100_000_000, "bytes",
        "a month of readings a second; a longer one is named by its SHA-256 and kept beside the report";
    ATTACHED_EACH: "attachment of a report to verify, unpacked, or 200 times its size", 256 << 20, "bytes",
        "the results of 500 runs have 7 MB; some loggers fill their files with zeros";
    PDF_OBJECTS: "rows of a PDF's table of objects", 5_000_000, "objects",
        "500 runs have 106,000";
    PDF_VALUES: "values in the objects of a PDF", 32_000_000, "values",
        "500 runs have 1.6 million, one for 15 bytes of file; two million, or one for four bytes, where that is less";
    PDF_PACKED: "objects packed into others, together, unpacked", 256 << 20, "bytes",
        "reports have none; those that a program packs have less than the file";
    PDF_PAGES: "pages of a PDF", 20_000, "pages",
        "500 runs take 418";
    PDF_PAGES_BYTES: "all pages, unpacked and read twice, or 16 times the file", 256 << 20, "bytes",
        "500 runs have 125 MB, five times their file";
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn as_many_as_allowed_are_not_too_many() {
        assert_eq!(RUNS.exceeded_by(2_000), None);
        let said = "found 2001 runs, expected at most 2000";
        assert_eq!(RUNS.exceeded_by(2_001).as_deref(), Some(said));
    }
}
