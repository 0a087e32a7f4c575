//! The pages as they are against the pages as they ought to be.

use std::collections::BTreeMap;

use serde_json::Value;

use super::check::Check;
use super::evidence::Evidence;
use super::pdf::{Difference, Page, Part};
use super::stated::Subject;
use crate::language::Words;
use crate::procedure::finding::Level;
use crate::report::placed;
use crate::report::words::headline::Headline;
use crate::units::fixed;

/// So many characters are shown before and after the place where two texts part.
const SHOWN_BEFORE: usize = 16;
const SHOWN_FROM: usize = 24;

/// The hashes that the pages and the results state, against the attached bytes.
pub fn check_hashes(evidence: &Evidence, pages: &[Page]) -> Check {
    let text: String = pages.iter().map(|page| page.text.as_str()).collect();
    // A field sheet is one page for a pencil, and prints none.
    let prints_hashes = !matches!(evidence.stated.subject, Subject::FieldSheet { .. });
    let mut differences = Vec::new();
    let mut agreeing = 0;
    for input in &evidence.inputs {
        let file = placed(evidence.folder_of(&input.campaign), &input.file);
        let file = file.escape_debug();
        let Some(attached) = evidence.content(&input.attached_as) else {
            differences.push(format!("{file}: is not attached"));
            continue;
        };
        let in_results = attached.sha256 == input.sha256;
        let in_pages = !prints_hashes || text.contains(&attached.sha256);
        if in_results && in_pages {
            agreeing += 1;
            continue;
        }
        let missing = match (in_results, in_pages) {
            (false, false) => format!("neither {} nor the pages state that", evidence.results.name),
            (false, true) => format!(
                "{} states {}",
                evidence.results.name,
                input.sha256.escape_debug()
            ),
            (true, _) => "the pages do not print that".to_owned(),
        };
        differences.push(format!(
            "{file}: the SHA-256 of what is attached is {}; {missing}",
            attached.sha256
        ));
    }
    let printed = if prints_hashes {
        " and the pages print"
    } else {
        ""
    };
    let text = format!(
        "{agreeing} of {} inputs have the SHA-256 that {} states{printed}",
        evidence.inputs.len(),
        evidence.results.name
    );
    Check::new("hashes", text, differences)
}

/// The number, its spread and the level on page one.
pub fn check_headline(headline: &Headline, words: &Words, pages: &[Page]) -> Check {
    let printed = pages.first().map_or("", |page| page.text.as_str());
    let label = squeezed(&headline.label);
    let after_label = printed.split_once(&label).map_or("", |(_, rest)| rest);
    let number = headline.number.as_ref();
    let number = number.map(|number| format!("{} {} {}", number.value, number.spread, number.unit));
    let is_number = |number: &String| after_label.starts_with(&squeezed(number));
    let mut wrong: Vec<&String> = number.iter().filter(|number| !is_number(number)).collect();
    if !prints_level(printed, &headline.level, words) {
        wrong.push(&headline.level);
    }
    let differences = wrong.into_iter().map(|expected| {
        let instead = beginning_after(printed, &label);
        format!("page 1 does not print \"{expected}\"; it prints {instead}")
    });
    let differences: Vec<String> = differences.collect();
    let said: Vec<String> = number.into_iter().chain([headline.level.clone()]).collect();
    Check::new("headline", expected(&said, &differences), differences)
}

/// Whether a page prints a level, and none that begins alike: "Conforms with notes" begins as
/// "Conforms" does.
fn prints_level(printed: &str, level: &str, words: &Words) -> bool {
    let level = squeezed(level);
    let levels = Level::ALL
        .iter()
        .map(|level| squeezed(&words.say(level.describe())));
    let is_more = |other: &String| *other != level && other.starts_with(&level);
    let mut longer = levels.filter(is_more);
    printed.contains(&level) && !longer.any(|other| printed.contains(&other))
}

/// The same for the page of another version, which evaluates spread and level in its own way:
/// the first number with a spread against the rating as computed again, its spread and the
/// level against what the attached results state.
pub fn check_printed(stated: &str, again: &str, words: &Words, pages: &[Page]) -> Check {
    let parse = |text: &str| serde_json::from_str::<Value>(text).unwrap_or_default();
    let (stated, again) = (parse(stated), parse(again));
    let printed = pages.first().map_or("", |page| page.text.as_str());
    let mut differences = Vec::new();
    let mut said = Vec::new();
    if let Some(ps50_w) = again["rating"]["ps50_w"].as_f64() {
        let spread_w = stated_spread_w(&stated["uncertainty"]);
        let found = number_with_spread(printed);
        let is_so = found.as_ref().is_some_and(|(value, spread)| {
            is_rounded(value, ps50_w)
                && spread_w.is_none_or(|spread_w| is_rounded(spread, spread_w))
        });
        let expected = match spread_w {
            Some(spread_w) => format!("{} ± {} W", fixed(ps50_w, 2), fixed(spread_w, 2)),
            None => format!("{} W", fixed(ps50_w, 2)),
        };
        if !is_so {
            let found = found.map_or_else(
                || "no number with a spread".to_owned(),
                |(value, spread)| format!("{value} ± {spread}"),
            );
            differences.push(format!(
                "page 1 prints {found}, expected {expected} or rounded"
            ));
        }
        said.push(expected);
    }
    let code = stated["conformity"]["level"].as_str().unwrap_or_default();
    let code = if stated["rating"].is_null() {
        Level::NoRating.code()
    } else {
        code
    };
    match Level::ALL.iter().find(|level| level.code() == code) {
        Some(level) => {
            let level = words.say(level.describe());
            if !prints_level(printed, &level, words) {
                differences.push(format!("page 1 does not print \"{level}\""));
            }
            said.push(level);
        }
        None => said.push("a level that this version does not know".to_owned()),
    }
    Check::new("headline", expected(&said, &differences), differences)
}

/// What page one prints, or ought to.
fn expected(said: &[String], differences: &[String]) -> String {
    let before = if differences.is_empty() {
        ""
    } else {
        "expected: "
    };
    format!("{before}{}", said.join("; "))
}

/// Half the interval that results state as printed, W.
fn stated_spread_w(uncertainty: &Value) -> Option<f64> {
    let end = |place: usize| uncertainty["printed_interval_95_w"][place].as_f64();
    let printed = end(0)
        .zip(end(1))
        .map(|(lower, upper)| (upper - lower) / 2.0);
    printed.or_else(|| uncertainty["ps50_expanded_uncertainty_w"].as_f64())
}

/// The first number with a spread that a page prints.
fn number_with_spread(printed: &str) -> Option<(String, String)> {
    let is_of_number = |character: &char| character.is_ascii_digit() || "−-.,".contains(*character);
    let (before, after) = printed.split_once('±')?;
    let value: Vec<char> = before.chars().rev().take_while(is_of_number).collect();
    let spread = after.chars().take_while(is_of_number);
    Some((value.into_iter().rev().collect(), spread.collect()))
}

/// Whether a printed number is a value to the digits that it prints; some are rounded up.
fn is_rounded(printed: &str, value: f64) -> bool {
    let plain = printed.replace(',', ".").replace('−', "-");
    let decimals = plain
        .split_once('.')
        .map_or(0, |(_, decimals)| decimals.len());
    // One in the last digit.
    let step: Option<f64> = format!("1e-{decimals}").parse().ok();
    let number: Option<f64> = plain.parse().ok();
    number
        .zip(step)
        .is_some_and(|(number, step)| (number - value).abs() <= step)
}

/// What a page prints after a label.
fn beginning_after(printed: &str, label: &str) -> String {
    match printed.split_once(label) {
        Some((_, rest)) => {
            let start: String = rest.chars().take(SHOWN_FROM).collect();
            format!("\"{start}…\" there")
        }
        None => "something else".to_owned(),
    }
}

/// Every page, by its text and by everything else that is drawn on it.
pub fn check_pages(pages: &[Page], expected: &[Page]) -> Check {
    let mut differences = Vec::new();
    if pages.len() != expected.len() {
        differences.push(format!(
            "there are {} pages, expected {}",
            pages.len(),
            expected.len()
        ));
    }
    let both = || pages.iter().zip(expected);
    // Fonts hold the letters of all pages: other words on one change the fonts of all.
    let has_other_words = both().any(|(page, expected)| page.text != expected.text);
    for (index, (page, expected)) in both().enumerate() {
        let number = index + 1;
        if page.text != expected.text {
            let (found, expected) = where_they_part(&page.text, &expected.text);
            differences.push(format!(
                "page {number} prints \"{found}\", expected \"{expected}\""
            ));
        } else if page.strokes != expected.strokes {
            differences.push(format!(
                "page {number} has its words, and is drawn otherwise: a figure, a picture, a place, something laid over it"
            ));
        } else if page.drawing != expected.drawing && !has_other_words {
            differences.push(format!(
                "page {number} has its words, and is drawn otherwise: a font, or instructions that are written in another way"
            ));
        }
    }
    let agreeing = both().filter(|(page, expected)| page == expected).count();
    let text = format!(
        "{agreeing} of {} are what the attached data give, in words and drawing",
        expected.len()
    );
    Check::new("pages", text, differences)
}

/// So many places of one part are named.
const PLACES: usize = 5;

/// Everything besides what is drawn: bookmarks, structure, titles, attachments, and whatever a
/// reader may act on.
pub fn check_document(pages: &[Page], expected: &[Page], differences: &[Difference]) -> Check {
    let is_told = |difference: &&Difference| match difference.part {
        // What is drawn has been told page by page.
        Part::Page(index) => {
            let drawn = |pages: &[Page]| pages.get(index).map(|page| page.drawing);
            drawn(pages) != drawn(expected)
        }
        _ => false,
    };
    let mut places: BTreeMap<Part, Vec<&str>> = BTreeMap::new();
    for difference in differences.iter().filter(|difference| !is_told(difference)) {
        let of_part = places.entry(difference.part).or_default();
        of_part.push(&difference.place);
    }
    let line = |(part, places): (&Part, &Vec<&str>)| {
        let named = places
            .iter()
            .take(PLACES)
            .copied()
            .collect::<Vec<_>>()
            .join(", ");
        let more = places.len().saturating_sub(PLACES);
        let more = if more > 0 {
            format!(" and {more} more")
        } else {
            String::new()
        };
        format!("{} not as issued: {named}{more}", part_name(*part))
    };
    let text = match places.is_empty() {
        true => "bookmarks, structure, titles, attachments and actions are as issued",
        false => "something besides the pages is not as issued",
    };
    Check::new("document", text, places.iter().map(line).collect())
}

fn part_name(part: Part) -> String {
    match part {
        Part::Page(index) => format!("page {}, besides what is drawn, is", index + 1),
        Part::Pages => "the list of pages is".to_owned(),
        Part::Bookmarks => "bookmarks are".to_owned(),
        Part::Attachments => "attachments, or what is said of them, are".to_owned(),
        Part::Structure => "what a screen reader says is".to_owned(),
        Part::Metadata => "titles and other metadata are".to_owned(),
        Part::Other => "the document, in what readers show or do, is".to_owned(),
    }
}

/// The pieces of two texts around the first place where they differ.
fn where_they_part(one: &str, other: &str) -> (String, String) {
    let same = one
        .chars()
        .zip(other.chars())
        .take_while(|(one, other)| one == other)
        .count();
    let piece = |text: &str| {
        let piece = text.chars().skip(same.saturating_sub(SHOWN_BEFORE));
        let length = same.min(SHOWN_BEFORE) + SHOWN_FROM;
        piece
            .take(length)
            .collect::<String>()
            .escape_debug()
            .to_string()
    };
    (piece(one), piece(other))
}

/// A text without white space.
fn squeezed(text: &str) -> String {
    text.split_whitespace().collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn page(text: &str, strokes: u8, drawing: u8) -> Page {
        Page {
            text: text.to_owned(),
            drawing: [drawing; 32],
            strokes: [strokes; 32],
        }
    }

    #[test]
    fn pages_differ_in_words_in_drawing_in_fonts_and_in_number() {
        let expected = [page("one131±10W", 1, 1), page("two", 2, 2)];
        let differences = |pages: &[Page]| check_pages(pages, &expected).differences;
        assert!(differences(&expected).is_empty());
        // The fonts follow from the words.
        assert_eq!(
            differences(&[page("one113±10W", 9, 9), page("two", 2, 9)]),
            ["page 1 prints \"one113±10W\", expected \"one131±10W\""]
        );
        let painted = differences(&[page("one113±10W", 9, 9), page("two", 3, 9)]);
        assert!(
            painted[1].starts_with("page 2 has its words"),
            "{painted:?}"
        );
        let other_font = differences(&[page("one131±10W", 1, 1), page("two", 2, 3)]);
        assert!(other_font[0].contains("a font"), "{other_font:?}");
        assert_eq!(
            differences(&expected[..1]),
            ["there are 1 pages, expected 2"]
        );
    }

    #[test]
    fn a_number_with_its_spread_is_found_and_held_to_its_digits() {
        let found = number_with_spread("Ps(50)131,4±9,8W(95%)12±3").unwrap();
        assert_eq!(found, ("131,4".to_owned(), "9,8".to_owned()));
        assert!(is_rounded("131,4", 131.44) && is_rounded("10", 9.2));
        assert!(!is_rounded("131,4", 131.6) && !is_rounded("113", 131.4) && !is_rounded("", 1.0));
        assert_eq!(number_with_spread("131W"), None);
    }
}
