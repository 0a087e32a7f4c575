//! The rules of the pages, each held against all documents.

use std::collections::BTreeMap;

use super::flow;
use super::known::KNOWN;
use super::made::{MADE, Made};
use super::on_paper;
use super::said;

/// A breach of a rule in one document.
pub struct Found {
    /// From 0.
    page: usize,
    what: String,
}

impl Found {
    pub fn on(page: usize, what: String) -> Found {
        Found { page, what }
    }
}

/// Most breaches that a failing test tells one by one.
const MOST_SHOWN: usize = 40;

/// Holds a rule against every document; with `LAYOUT_KNOWN=none` in the environment, every
/// breach is told, the known ones too.
#[track_caller]
fn hold(rule: &str, breaches_of: fn(&Made) -> Vec<Found>) {
    let mut lines: BTreeMap<String, usize> = BTreeMap::new();
    for made in MADE.iter() {
        let (name, language, paper) = (&made.name, made.language, made.paper.word());
        for Found { page, what } in breaches_of(made) {
            let page = page + 1;
            let line = format!("{name:26} {language} {paper:9} p. {page:2}  {what}");
            *lines.entry(line).or_default() += 1;
        }
    }
    let count: usize = lines.values().sum();
    let shows_known = std::env::var_os("LAYOUT_KNOWN").is_some();
    let known = KNOWN
        .iter()
        .find(|known| known.rule == rule && !shows_known);
    let count_known = known.map_or(0, |known| known.count);
    let shown = if shows_known { lines.len() } else { MOST_SHOWN };
    let lines: Vec<String> = (lines.iter().take(shown))
        .map(|(line, times)| match times {
            1 => line.clone(),
            times => format!("{line} ({times} times)"),
        })
        .collect();
    let lines = lines.join("\n");
    // As many as are known, so that a new one does not hide behind one that was mended.
    assert!(
        count == count_known,
        "{rule}: {count} breaches, {count_known} known; known.rs has to say how many\n{lines}"
    );
}

#[test]
fn every_kind_of_document_is_held_against_the_rules() {
    // Eleven samples, nine runs, three comparisons, two field sheets; five languages, two papers.
    assert!(MADE.len() >= (11 + 1 + 3 + 2) * 5 * 2, "{}", MADE.len());
    for made in MADE.iter() {
        let texts: usize = made.lines.iter().map(Vec::len).sum();
        assert!(texts > 40, "{}: {texts} lines", made.name);
        assert!(made.tags.leaves.len() > 20, "{}", made.name);
    }
}

macro_rules! rules {
    ($($name:ident: $breaches_of:path;)*) => {
        $(
            #[test]
            fn $name() {
                hold(stringify!($name), $breaches_of);
            }
        )*
        /// Their names.
        const RULES: &[&str] = &[$(stringify!($name)),*];
    };
}

rules! {
    no_page_but_the_last_is_a_quarter_empty: on_paper::empty_feet;
    no_text_is_outside_its_margins_or_its_figure: on_paper::outside_margins;
    no_two_lines_overlap: on_paper::overlaps;
    no_type_is_under_seven_points: on_paper::small_type;
    every_ink_of_text_stands_out: on_paper::low_contrast;
    no_document_is_too_long: on_paper::too_long;
    no_heading_is_parted_from_what_follows: flow::parted_headings;
    no_row_of_a_table_is_alone_or_torn: flow::parted_rows;
    no_sentence_is_parted_from_its_table: flow::parted_leads;
    no_line_ends_within_a_value: flow::parted_values;
    the_outline_leads_to_each_section_once: flow::wrong_outline;
    sections_are_linked: flow::no_links;
    the_title_is_read_first: flow::wrong_reading_order;
    page_one_tells_its_facts: said::untold_facts;
    numbers_are_rounded: said::wrong_numbers;
    no_code_is_printed: said::codes;
    probabilities_are_numbers: said::wrong_probabilities;
}

#[test]
fn known_breaches_are_of_rules_that_there_are() {
    for known in KNOWN {
        assert!(RULES.contains(&known.rule), "{}", known.rule);
        assert!(!known.reason.is_empty(), "{}", known.rule);
    }
}
