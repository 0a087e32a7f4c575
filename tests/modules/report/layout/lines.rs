//! Lines of text, put together from what single instructions show.

use super::pages::{Ink, Page, Part, Text};
use super::place::Place;
use super::tags::{Element, Tags};

/// How far two texts of a line may stand apart, and how far one reaches into the other where
/// letters are drawn together, as a point after a 7 is, as a share of the size.
const GAP_EM: std::ops::Range<f64> = -0.25..0.5;
/// How far off its line a raised or lowered letter may stand, as a share of the size.
const RAISED_EM: f64 = 0.45;

/// A line of text, or what of it stands together.
#[derive(Debug, Clone)]
pub struct Line {
    pub text: String,
    pub place: Place,
    pub baseline: f64,
    /// Of its smallest letters.
    pub least_pt: f64,
    pub is_level: bool,
    pub part: Part,
    /// The element that it belongs to, from the root down; none for what is not content.
    pub block: Vec<Element>,
    pub clip: Place,
    pub inks: Vec<Inked>,
}

/// An ink on its ground.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Inked {
    pub ink: Ink,
    pub ground: Ink,
    pub size_pt: f64,
    pub is_strong: bool,
}

/// Lines of a page in the order in which they are drawn, each text in one of them.
pub fn lines_of(page: &Page, index: usize, tags: &Tags) -> Vec<Line> {
    let mut lines: Vec<Line> = Vec::new();
    for text in &page.texts {
        let block = match text.part {
            Part::Content(number) => {
                let leaf = tags.leaf(index, number);
                leaf.map_or_else(Vec::new, |leaf| leaf.block().to_vec())
            }
            _ => Vec::new(),
        };
        match lines.last_mut() {
            Some(line) if continues(line, text, &block) => line.append(text),
            _ => lines.push(Line::new(text, block)),
        }
    }
    lines
}

fn continues(line: &Line, text: &Text, block: &[Element]) -> bool {
    let size = line.least_pt.max(text.size_pt);
    let gap = text.place.left - line.place.right;
    line.is_level
        && text.is_level
        && line.block == block
        && (line.baseline - text.baseline).abs() < RAISED_EM * size
        && GAP_EM.contains(&(gap / size))
}

impl Line {
    fn new(text: &Text, block: Vec<Element>) -> Line {
        Line {
            text: text.text.clone(),
            place: text.place,
            baseline: text.baseline,
            least_pt: text.size_pt,
            is_level: text.is_level,
            part: text.part,
            block,
            clip: text.clip,
            inks: vec![inked(text)],
        }
    }

    fn append(&mut self, text: &Text) {
        self.text.push_str(&text.text);
        self.place = self.place.with(&text.place);
        self.least_pt = self.least_pt.min(text.size_pt);
        if !self.inks.contains(&inked(text)) {
            self.inks.push(inked(text));
        }
    }

    /// Its beginning, for a table of breaches.
    pub fn start(&self) -> String {
        self.text.trim().chars().take(32).collect()
    }
}

fn inked(text: &Text) -> Inked {
    Inked {
        ink: text.ink,
        ground: text.ground,
        size_pt: text.size_pt,
        is_strong: text.is_strong,
    }
}
