//! Rules of what belongs together: headings, tables, values, the outline.

use std::collections::{BTreeMap, BTreeSet};

use super::made::{Kind, Made};
use super::pages::Part;
use super::place::Place;
use super::rules::Found;
use super::tags::Leaf;

/// Where a piece of content stands on its page; `None` where it draws nothing.
fn place_of(made: &Made, leaf: &Leaf) -> Option<Place> {
    let page = &made.pages[leaf.page];
    let part = Part::Content(leaf.content);
    let texts = page.texts.iter().filter(|text| text.part == part);
    let drawn = page.drawn.iter().filter(|drawn| drawn.part == part);
    let places = texts
        .map(|text| text.place)
        .chain(drawn.map(|drawn| drawn.place));
    places.reduce(|one, two| one.with(&two))
}

fn text_of(made: &Made, leaf: &Leaf) -> String {
    let part = Part::Content(leaf.content);
    let texts = made.pages[leaf.page].texts.iter();
    let texts = texts.filter(|text| text.part == part);
    texts.map(|text| text.text.as_str()).collect()
}

/// What follows a heading, or several, stands on its page and not above it.
pub fn parted_headings(made: &Made) -> Vec<Found> {
    let mut found = Vec::new();
    let leaves = &made.tags.leaves;
    for (index, leaf) in leaves
        .iter()
        .enumerate()
        .filter(|(_, leaf)| leaf.is_heading())
    {
        let mut after = leaves[index + 1..].iter();
        let next = after.find(|next| !next.is_heading());
        let is_above = |next: &Leaf| {
            let places = place_of(made, leaf).zip(place_of(made, next));
            places.is_some_and(|(heading, next)| next.bottom < heading.top)
        };
        if next.is_none_or(|next| next.page != leaf.page || is_above(next)) {
            let what = format!("\"{}\" is parted from what follows", text_of(made, leaf));
            found.push(Found::on(leaf.page, what));
        }
    }
    found
}

/// Body rows of a table, each with the pages that it is on.
#[derive(Default)]
struct Rows {
    /// By the number of the row's element.
    pages: BTreeMap<usize, BTreeSet<usize>>,
    /// Places of the table's first and last leaf.
    first: usize,
    last: usize,
}

/// Tables by the number of their element.
fn tables(made: &Made) -> BTreeMap<usize, Rows> {
    let mut tables: BTreeMap<usize, Rows> = BTreeMap::new();
    for (index, leaf) in made.tags.leaves.iter().enumerate() {
        let Some(table) = leaf.element("Table") else {
            continue;
        };
        let rows = tables.entry(table.number).or_insert_with(|| Rows {
            first: index,
            ..Rows::default()
        });
        rows.last = index;
        if let Some(row) = leaf.element("TR")
            && leaf.element("THead").is_none()
        {
            rows.pages.entry(row.number).or_default().insert(leaf.page);
        }
    }
    tables
}

/// No row of a table is alone on a page, and none goes over two.
pub fn parted_rows(made: &Made) -> Vec<Found> {
    let mut found = Vec::new();
    for rows in tables(made).values() {
        let mut by_page: BTreeMap<usize, usize> = BTreeMap::new();
        for pages in rows.pages.values() {
            if pages.len() > 1 {
                let what = "a row of a table goes over two pages".to_owned();
                found.push(Found::on(*pages.first().unwrap(), what));
            }
            for &page in pages {
                *by_page.entry(page).or_default() += 1;
            }
        }
        if by_page.len() > 1 {
            let alone = by_page.iter().filter(|(_, rows)| **rows == 1);
            found.extend(alone.map(|(&page, _)| {
                let start = text_of(made, &made.tags.leaves[rows.first]);
                let of = rows.pages.len();
                let what = format!("one of {of} rows of the table \"{start} …\" stands alone");
                Found::on(page, what)
            }));
        }
    }
    found
}

/// The sentence before a table stands on the page on which the table begins, and a note after
/// it on the one where it ends.
pub fn parted_leads(made: &Made) -> Vec<Found> {
    let leaves = &made.tags.leaves;
    let is_sentence = |leaf: &&Leaf| {
        let is_other = |kind: &str| leaf.element(kind).is_some();
        !leaf.is_heading() && !["Table", "Figure", "L", "Title"].into_iter().any(is_other)
    };
    let mut found = Vec::new();
    for rows in tables(made).values() {
        let before = rows.first.checked_sub(1).map(|index| &leaves[index]);
        if let Some(lead) = before.filter(is_sentence)
            && lead.page != leaves[rows.first].page
        {
            let text: String = text_of(made, lead).chars().take(50).collect();
            found.push(Found::on(
                lead.page,
                format!("\"… {text}\" is parted from its table"),
            ));
        }
        let after = &leaves[rows.last + 1..];
        if let Some(note) = after.first().filter(is_sentence)
            && note.page != leaves[rows.last].page
            && !leads_to_more(after)
        {
            let text: String = text_of(made, note).chars().take(50).collect();
            found.push(Found::on(
                note.page,
                format!("\"{text} …\" is parted from its table"),
            ));
        }
    }
    found
}

/// Whether the sentence with which content begins is of the table or figure that follows it on
/// its page.
fn leads_to_more(content: &[Leaf]) -> bool {
    let first = &content[0];
    let mut after = content
        .iter()
        .skip_while(|leaf| leaf.block() == first.block());
    let is_shown = |leaf: &Leaf| {
        ["Table", "Figure"]
            .iter()
            .any(|kind| leaf.element(kind).is_some())
    };
    after
        .next()
        .is_some_and(|next| is_shown(next) && next.page == first.page)
}

/// Units that a number needs.
const UNITS: &[&str] = &[
    "°C", "°F", "K", "W", "W/m²", "W/K", "W/(m²", "kWh", "kg", "kg/m²", "m²", "m/s", "%", "min",
    "h", "MJ", "MJ/kg", "L", "g", "lb", "±", "–",
];
/// What stands before the stroke of a unit.
const NUMERATORS: &[&str] = &["W", "kg", "m", "MJ", "K", "kWh"];

/// No line ends between a number and its unit, within a unit, or within a range.
pub fn parted_values(made: &Made) -> Vec<Found> {
    let mut found = Vec::new();
    for (index, lines) in made.lines.iter().enumerate() {
        for pair in lines.windows(2) {
            let [one, two] = pair else { unreachable!() };
            let step = two.baseline - one.baseline;
            let is_next = one.is_level
                && two.is_level
                && one.block == two.block
                && !one.block.is_empty()
                && step > 0.8 * one.least_pt
                && step < 2.0 * one.least_pt.max(two.least_pt)
                && two.place.left < one.place.right;
            if is_next && parts_a_value(&one.text, &two.text) {
                let end: Vec<char> = one.text.trim_end().chars().collect();
                let end: String = end[end.len().saturating_sub(24)..].iter().collect();
                found.push(Found::on(index, format!("{end} | {}", two.start())));
            }
        }
    }
    found
}

fn parts_a_value(end: &str, start: &str) -> bool {
    let (end, start) = (end.trim_end(), start.trim_start());
    let first = start.split(|letter: char| letter.is_whitespace() || ",.;:)]".contains(letter));
    let first = first.into_iter().next().unwrap_or_default();
    if end.ends_with(|letter: char| letter.is_ascii_digit()) {
        return UNITS.contains(&first);
    }
    if end.ends_with('±') {
        return true;
    }
    let begins_with_digit =
        start.starts_with(|letter: char| letter.is_ascii_digit() || letter == '−');
    if let Some(before) = end.strip_suffix('–') {
        return before
            .trim_end()
            .ends_with(|letter: char| letter.is_ascii_digit())
            && begins_with_digit;
    }
    end.strip_suffix('/').is_some_and(|before| {
        let word = before
            .rsplit(|letter: char| !letter.is_alphanumeric())
            .next();
        NUMERATORS.contains(&word.unwrap_or_default())
    })
}

/// The outline has page one, each title once, and no number that holds the one above it.
pub fn wrong_outline(made: &Made) -> Vec<Found> {
    if made.kind == Kind::FieldSheet {
        return Vec::new();
    }
    let mut found = Vec::new();
    let outline = &made.tags.outline;
    if !outline.iter().any(|entry| entry.page == Some(0)) {
        found.push(Found::on(
            0,
            "the outline has no entry for page one".to_owned(),
        ));
    }
    let mut above: Vec<&str> = Vec::new();
    let mut titles = BTreeSet::new();
    for entry in outline {
        above.truncate(entry.depth - 1);
        if entry.page.is_none() {
            found.push(Found::on(0, format!("\"{}\" leads nowhere", entry.title)));
        }
        let parent = above.last().copied().unwrap_or_default();
        if !titles.insert((parent, &entry.title)) {
            found.push(Found::on(
                0,
                format!("\"{}\" is in the outline twice", entry.title),
            ));
        }
        let number =
            |title: &str| -> String { title.chars().take_while(char::is_ascii_digit).collect() };
        let (own, of_parent) = (number(&entry.title), number(parent));
        if !of_parent.is_empty() && own.len() > of_parent.len() && own.starts_with(&of_parent) {
            found.push(Found::on(
                0,
                format!("\"{}\" doubles its number", entry.title),
            ));
        }
        above.push(&entry.title);
    }
    found
}

/// A reader who sees a section named can go to it.
pub fn no_links(made: &Made) -> Vec<Found> {
    let lacks = made.kind != Kind::FieldSheet && made.tags.links == 0;
    let found = lacks.then(|| Found::on(0, "no link in the file".to_owned()));
    found.into_iter().collect()
}

/// What is read out first is the title, or what stands above it.
pub fn wrong_reading_order(made: &Made) -> Vec<Found> {
    let leaves = &made.tags.leaves;
    let is_title =
        |leaf: &Leaf| leaf.element("Title").is_some() || leaf.page == 0 && leaf.is_heading();
    let Some(at) = leaves.iter().position(is_title) else {
        return vec![Found::on(0, "nothing is tagged as the title".to_owned())];
    };
    let title = place_of(made, &leaves[at]).expect("a title is seen");
    let before = leaves[..at].iter();
    let first = before.filter(|leaf| leaf.page == 0).find(|leaf| {
        let place = place_of(made, leaf);
        place.is_some_and(|place| place.top > title.bottom)
    });
    let found = first.map(|leaf| {
        let text: String = text_of(made, leaf).chars().take(40).collect();
        Found::on(0, format!("\"{text} …\" is read before the title above it"))
    });
    found.into_iter().collect()
}
