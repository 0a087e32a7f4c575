//! The pages as they are against the pages as they ought to be.

use super::check::Check;
use super::evidence::Evidence;
use super::pdf::Page;
use crate::language::Words;
use crate::procedure::finding::Level;
use crate::report::words::headline::Headline;

/// So many characters are shown before and after the place where two texts part.
const SHOWN_BEFORE: usize = 16;
const SHOWN_FROM: usize = 24;

/// The hashes that the pages and the results state, against the attached bytes.
pub fn check_hashes(evidence: &Evidence, pages: &[Page]) -> Check {
    let text: String = pages.iter().map(|page| page.text.as_str()).collect();
    let mut differences = Vec::new();
    let mut agreeing = 0;
    for input in &evidence.inputs {
        let file = input.file.escape_debug();
        let Some(attached) = evidence.attachments.get(&input.attached_as) else {
            differences.push(format!("{file}: is not attached"));
            continue;
        };
        let in_results = attached.sha256 == input.sha256;
        let in_pages = text.contains(&attached.sha256);
        if in_results && in_pages {
            agreeing += 1;
            continue;
        }
        let missing = match (in_results, in_pages) {
            (false, false) => format!("neither {} nor the pages state that", evidence.rating.name),
            (false, true) => format!(
                "{} states {}",
                evidence.rating.name,
                input.sha256.escape_debug()
            ),
            (true, _) => "the pages do not print that".to_owned(),
        };
        differences.push(format!(
            "{file}: the SHA-256 of what is attached is {}; {missing}",
            attached.sha256
        ));
    }
    let text = format!(
        "{agreeing} of {} inputs have the SHA-256 that {} states and the pages print",
        evidence.inputs.len(),
        evidence.rating.name
    );
    Check::new("hashes", text, differences)
}

/// The number, its spread and the level on page one; of another version's report the number
/// alone, since versions evaluate spread and level differently.
pub fn check_headline(
    headline: &Headline,
    words: &Words,
    pages: &[Page],
    is_by_this_version: bool,
) -> Check {
    let printed = pages.first().map_or("", |page| page.text.as_str());
    let label = squeezed(&headline.label);
    let after_label = printed.split_once(&label).map_or("", |(_, rest)| rest);
    let number = headline.number.as_ref();
    let number = number.map(|number| match is_by_this_version {
        true => format!("{} {} {}", number.value, number.spread, number.unit),
        false => format!("{} ±", number.value),
    });
    let is_number = |number: &String| after_label.starts_with(&squeezed(number));
    // "Conforms with notes" begins as "Conforms" does.
    let level = squeezed(&headline.level);
    let levels: Vec<String> = Level::ALL
        .iter()
        .map(|level| squeezed(&words.say(level.describe())))
        .collect();
    let is_more = |other: &String| *other != level && other.starts_with(&level);
    let is_other = levels
        .iter()
        .any(|other| is_more(other) && printed.contains(other));
    let mut wrong: Vec<&String> = number.iter().filter(|number| !is_number(number)).collect();
    if is_by_this_version && (is_other || !printed.contains(&level)) {
        wrong.push(&headline.level);
    }
    let differences = wrong.into_iter().map(|expected| {
        let instead = beginning_after(printed, &label);
        format!("page 1 does not print \"{expected}\"; it prints {instead}")
    });
    let differences = differences.collect();
    let level = is_by_this_version.then(|| headline.level.clone());
    let said: Vec<String> = number.into_iter().chain(level).collect();
    Check::new("headline", said.join("; "), differences)
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

/// Every page, by its text and by everything else that is drawn on it. `strange` is what the
/// document has besides its pages, and no report has.
/// `is_heard` says whether what is not drawn, alternative texts and titles, is as it ought to be.
pub fn check_pages(
    pages: &[Page],
    expected: &[Page],
    strange: Vec<String>,
    is_heard: bool,
) -> Check {
    let besides = |name: String| format!("the document has \"{name}\", which no report has");
    let mut differences: Vec<String> = strange.into_iter().map(besides).collect();
    if !is_heard {
        let what = "what is not drawn is another: an alternative text of a figure, or a title";
        differences.push(what.to_owned());
    }
    if pages.len() != expected.len() {
        differences.push(format!(
            "there are {} pages, expected {}",
            pages.len(),
            expected.len()
        ));
    }
    let both = || pages.iter().zip(expected).enumerate();
    for (index, (page, expected)) in
        both().filter(|(_, (page, expected))| page.text != expected.text)
    {
        let (found, expected) = where_they_part(&page.text, &expected.text);
        differences.push(format!(
            "page {} prints \"{found}\", expected \"{expected}\"",
            index + 1
        ));
    }
    // Fonts hold the letters of all pages, so other words change how every page is drawn.
    if differences.is_empty() {
        let otherwise = both().filter(|(_, (page, expected))| page.drawing != expected.drawing);
        differences.extend(otherwise.map(|(index, _)| {
            format!(
                "page {} has its words, and is drawn otherwise: a figure, a picture, a font",
                index + 1
            )
        }));
    }
    let agreeing = both()
        .filter(|(_, (page, expected))| page == expected)
        .count();
    let text = format!(
        "{agreeing} of {} are what the attached data give, in words and drawing",
        expected.len()
    );
    Check::new("pages", text, differences)
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

    fn page(text: &str, drawing: u8) -> Page {
        Page {
            text: text.to_owned(),
            drawing: [drawing; 32],
        }
    }

    #[test]
    fn pages_differ_in_words_in_drawing_and_in_number() {
        let expected = [page("one131±10W", 1), page("two", 2)];
        let differences =
            |pages: &[Page]| check_pages(pages, &expected, Vec::new(), true).differences;
        assert!(differences(&expected).is_empty());
        assert_eq!(
            differences(&[page("one113±10W", 9), page("two", 9)]),
            ["page 1 prints \"one113±10W\", expected \"one131±10W\""]
        );
        assert!(
            differences(&[page("one131±10W", 1), page("two", 3)])[0]
                .starts_with("page 2 has its words")
        );
        assert_eq!(
            differences(&expected[..1]),
            ["there are 1 pages, expected 2"]
        );
    }
}
