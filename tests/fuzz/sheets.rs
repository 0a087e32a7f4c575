//! Spreadsheets: damage to the files in them, which are packed again, and to the whole.

use std::io::{Cursor, Read, Write};

use simmerline::campaign::Campaign;
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipArchive, ZipWriter};

use crate::limits::TEXT;
use crate::target::{Part, Sample, Target};
use crate::texts::{dresses, read_as_log};

/// The files of a spreadsheet; `None` for what is none.
fn taken_apart(sample: &Sample) -> Option<Sample> {
    let mut archive = ZipArchive::new(Cursor::new(sample.parts[0].bytes.as_slice())).ok()?;
    let parts = (0..archive.len()).map(|index| {
        let mut file = archive.by_index(index).unwrap();
        let mut bytes = Vec::new();
        file.read_to_end(&mut bytes).unwrap();
        Part {
            name: file.name().unwrap().into_owned(),
            bytes,
        }
    });
    let parts = parts.collect();
    Some(Sample {
        name: sample.name.clone(),
        parts,
    })
}

fn put_together(parts: &[Part]) -> Vec<u8> {
    let mut writer = ZipWriter::new(Cursor::new(Vec::new()));
    let stored = SimpleFileOptions::default().compression_method(CompressionMethod::Stored);
    for part in parts {
        writer.start_file(part.name.as_str(), stored).unwrap();
        writer.write_all(&part.bytes).unwrap();
    }
    writer.finish().unwrap().into_inner()
}

#[test]
fn spreadsheet() {
    let _one = crate::limits::one_at_a_time();
    let sheets = dresses()
        .into_iter()
        .filter_map(|(campaign, sample)| Some((campaign, taken_apart(&sample)?)));
    let (campaigns, samples): (Vec<Campaign>, Vec<Sample>) = sheets.unzip();
    assert!(samples.len() >= 8, "only {} spreadsheets", samples.len());
    Target {
        name: "spreadsheet",
        samples,
        always: TEXT,
        join: put_together,
        parse: |index: usize, bytes: &[u8]| read_as_log(&campaigns[index], bytes),
    }
    .run();
}
