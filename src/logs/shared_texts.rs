//! How many texts the cells of a workbook share.

use std::io::{self, BufReader, Read, Seek};

use quick_xml::events::Event;
use zip::ZipArchive;

/// How the name of the file that holds them ends, in lower case.
const FILE: &str = "sharedstrings.xml";
const COUNT: &str = "uniqueCount";

/// Refuses a workbook that says that it holds more texts than bytes: calamine makes room for
/// as many as it says before it reads the first. What it unpacks to has been bounded before.
///
/// # Errors
/// What is wrong, in words.
pub fn measure_shared_texts<R: Read + Seek>(archive: &mut ZipArchive<R>) -> Result<(), String> {
    for index in 0..archive.len() {
        let mut entry = archive.by_index(index).map_err(|error| error.to_string())?;
        let name = entry.name().map(|name| name.to_lowercase());
        if name.is_ok_and(|name| name.ends_with(FILE)) {
            // The size that the archive tells is not believed either.
            let bytes = io::copy(&mut entry, &mut io::sink());
            let bytes = bytes.map_err(|error| error.to_string())?;
            drop(entry);
            let entry = archive.by_index(index);
            measure(entry.map_err(|error| error.to_string())?, bytes)?;
        }
    }
    Ok(())
}

/// Looks into the first element that holds texts, as calamine does.
fn measure(content: impl Read, bytes: u64) -> Result<(), String> {
    let mut reader = quick_xml::Reader::from_reader(BufReader::new(content));
    reader.config_mut().check_end_names = false;
    let mut buffer = Vec::new();
    loop {
        buffer.clear();
        let event = reader.read_event_into(&mut buffer);
        match event.map_err(|error| error.to_string())? {
            Event::Eof => return Ok(()),
            Event::Start(tag) | Event::Empty(tag) if tag.local_name().as_ref() == "sst" => {
                return match counts(&tag).find(|count| is_more_than(count, bytes)) {
                    Some(count) => Err(format!("it says that it holds {count} texts")),
                    None => Ok(()),
                };
            }
            _ => {}
        }
    }
}

/// The digits behind every mention of the count, however it is written.
fn counts(tag: &str) -> impl Iterator<Item = &str> {
    tag.split(COUNT).skip(1).map(|behind| {
        let digits = behind.trim_start_matches(|letter: char| !letter.is_ascii_digit());
        let end = digits.find(|letter: char| !letter.is_ascii_digit());
        &digits[..end.unwrap_or(digits.len())]
    })
}

/// Whether digits, if there are any, make a number that is larger.
fn is_more_than(digits: &str, most: u64) -> bool {
    !digits.is_empty() && !digits.parse::<u64>().is_ok_and(|number| number <= most)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_of_texts_is_not_believed() {
        let measured = |count: &str| {
            let text = format!(r#"<x:sst {count}><si><t>time</t></si></x:sst>"#);
            measure(text.as_bytes(), text.len() as u64)
        };
        let most = "9".repeat(40);
        for said in ["400", "99999999999", "18446744073709551615", &most] {
            for count in [
                format!("count=\"1\" uniqueCount=\"{said}\""),
                format!("uniqueCount = '+{said}'"),
            ] {
                let refusal = measured(&count).unwrap_err();
                assert!(
                    refusal.ends_with(&format!("holds {said} texts")),
                    "{refusal}"
                );
            }
        }
        for count in [
            "",
            "uniqueCount=\"1\"",
            "uniqueCount=\"\"",
            "count=\"9999\"",
        ] {
            assert_eq!(measured(count), Ok(()), "{count}");
        }
    }
}
