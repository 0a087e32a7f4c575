//! Rules of what stands where on a page.

use super::lines::{Inked, Line};
use super::made::{Kind, Made};
use super::pages::{Ink, Page, Part};
use super::place::Place;
use super::rules::Found;

/// Largest share of a page's height that may be empty in one piece.
const MOST_EMPTY: f64 = 0.25;
/// Smallest type, points.
const LEAST_PT: f64 = 7.0;
/// What rounding may move, points.
const TOLERANCE_PT: f64 = 0.5;
/// So much of two lines may share a place, points: letters rarely fill their box.
const SHARED_PT: (f64, f64) = (1.0, 0.8);
/// Room around the text of a page without head and foot, points.
const LEAST_MARGIN_PT: f64 = 28.0;

/// Where text of a page may stand: between its head and foot, and as wide as those of all pages
/// are together.
fn text_block(made: &Made, index: usize) -> Place {
    let page = &made.pages[index];
    let is_frame = |line: &&Line| line.part == Part::Frame;
    let all = made.lines.iter().flatten().filter(is_frame);
    let all = all.map(|line| line.place);
    let around = all.reduce(|one, two| one.with(&two));
    let middle = page.height / 2.0;
    let own = made.lines[index].iter().filter(is_frame);
    let (head, foot): (Vec<&Line>, Vec<&Line>) = own.partition(|line| line.place.bottom < middle);
    let head = head.iter().map(|line| line.place.bottom);
    let foot = foot.iter().map(|line| line.place.top);
    let (least, most) = (LEAST_MARGIN_PT, page.width - LEAST_MARGIN_PT);
    Place {
        left: around.map_or(least, |around| around.left),
        top: head.fold(least, f64::max),
        right: around.map_or(most, |around| around.right),
        bottom: foot.fold(page.height - LEAST_MARGIN_PT, f64::min),
    }
}

/// Upright extents of all that is on a page, a figure being one.
fn extents(page: &Page, lines: &[Line], block: &Place) -> Vec<(f64, f64)> {
    let is_content = |part: Part| part != Part::Frame;
    let texts = lines.iter().filter(|line| is_content(line.part));
    let drawn = page.drawn.iter().filter(|drawn| is_content(drawn.part));
    // What a figure clips is as large as the figure.
    let clips = page.texts.iter().map(|text| text.clip);
    let clips = clips.filter(|clip| clip.height().is_finite());
    let places = texts
        .map(|line| line.place)
        .chain(drawn.map(|drawn| drawn.place))
        .chain(clips);
    let mut extents: Vec<(f64, f64)> = places
        .map(|place| (place.top.max(block.top), place.bottom.min(block.bottom)))
        .collect();
    extents.sort_by(|one, two| one.0.total_cmp(&two.0));
    extents
}

/// No page but the last has a quarter of its height empty, at its foot or above something
/// that is held there.
pub fn empty_feet(made: &Made) -> Vec<Found> {
    let before_last = made.pages.len() - 1;
    let mut found = Vec::new();
    for (index, page) in made.pages.iter().enumerate().take(before_last) {
        let block = text_block(made, index);
        let (mut reached, mut widest) = (block.top, 0.0);
        let end = (block.bottom, block.bottom);
        for (top, bottom) in extents(page, &made.lines[index], &block)
            .into_iter()
            .chain([end])
        {
            widest = f64::max(widest, top - reached);
            reached = f64::max(reached, bottom);
        }
        let share = widest / block.height();
        if share > MOST_EMPTY {
            let what = format!("{:.0} % of the height is empty", 100.0 * share);
            found.push(Found::on(index, what));
        }
    }
    found
}

/// All text is within the margins, and what a figure writes is within the figure.
pub fn outside_margins(made: &Made) -> Vec<Found> {
    let blocks: Vec<Place> = (0..made.pages.len())
        .map(|index| text_block(made, index))
        .collect();
    let mut found = Vec::new();
    for (index, line) in each_line(made) {
        let within = |place: &Place, of: &Place| {
            place.left >= of.left - TOLERANCE_PT
                && place.right <= of.right + TOLERANCE_PT
                && place.top >= of.top - TOLERANCE_PT
                && place.bottom <= of.bottom + TOLERANCE_PT
        };
        let room = match line.part {
            Part::Frame => Place::EVERYWHERE,
            _ => blocks[index],
        };
        for (what, room) in [("the margins", &room), ("its figure", &line.clip)] {
            if !within(&line.place, room) {
                let Place {
                    left,
                    top,
                    right,
                    bottom,
                } = line.place;
                let start = line.start();
                let what = format!(
                    "\"{start}\" at {left:.0}–{right:.0}, {top:.0}–{bottom:.0} is outside {what}"
                );
                found.push(Found::on(index, what));
            }
        }
    }
    found
}

fn each_line(made: &Made) -> impl Iterator<Item = (usize, &Line)> {
    let pages = made.lines.iter().enumerate();
    pages.flat_map(|(index, lines)| lines.iter().map(move |line| (index, line)))
}

/// No two lines stand on each other.
pub fn overlaps(made: &Made) -> Vec<Found> {
    let mut found = Vec::new();
    for (index, lines) in made.lines.iter().enumerate() {
        let mut lines: Vec<&Line> = lines.iter().collect();
        lines.sort_by(|one, two| one.place.top.total_cmp(&two.place.top));
        for (after, one) in lines.iter().enumerate() {
            let below = lines[after + 1..].iter();
            let near = below.take_while(|two| two.place.top < one.place.bottom);
            for two in near {
                let shared = one.place.within(&two.place);
                let is_shared = shared.width() > SHARED_PT.0 && shared.height() > SHARED_PT.1;
                // Drawn twice, as for a rim of light around it.
                let is_same = one.text == two.text && shared.width() > 0.95 * one.place.width();
                if is_shared && !is_same {
                    let (one, two) = (one.start(), two.start());
                    let (width, height) = (shared.width(), shared.height());
                    let what = format!("\"{one}\" and \"{two}\" share {width:.0} × {height:.1} pt");
                    found.push(Found::on(index, what));
                }
            }
        }
    }
    found
}

/// No type is too small to be read on paper.
pub fn small_type(made: &Made) -> Vec<Found> {
    let small = each_line(made).filter(|(_, line)| line.least_pt < LEAST_PT - 0.05);
    let found = small.map(|(index, line)| {
        Found::on(
            index,
            format!("\"{}\" in {:.1} pt", line.start(), line.least_pt),
        )
    });
    found.collect()
}

/// Every ink of text stands out from what is behind it.
///
/// # Source
/// WCAG 2.1, success criterion 1.4.3: 4.5 : 1, and 3 : 1 from 18 points on, or from 14 where
/// bold.
pub fn low_contrast(made: &Made) -> Vec<Found> {
    let mut found = Vec::new();
    for (index, line) in each_line(made) {
        for inked in &line.inks {
            let ratio = contrast(inked.ink, inked.ground);
            if ratio < needed(inked) {
                let what = format!("\"{}\" has {ratio:.1} : 1", line.start());
                found.push(Found::on(index, what));
            }
        }
    }
    found
}

fn needed(inked: &Inked) -> f64 {
    let is_large = inked.size_pt >= 18.0 || inked.is_strong && inked.size_pt >= 14.0;
    if is_large { 3.0 } else { 4.5 }
}

/// How much lighter the lighter of two is.
///
/// # Source
/// WCAG 2.1, definition of contrast ratio.
pub fn contrast(one: Ink, two: Ink) -> f64 {
    let (one, two) = (luminance(one), luminance(two));
    (one.max(two) + 0.05) / (one.min(two) + 0.05)
}

/// Relative luminance of an sRGB colour: 0 black, 1 white.
///
/// # Source
/// WCAG 2.1, definition of relative luminance.
pub fn luminance(ink: Ink) -> f64 {
    let linear = ink.map(|value| match value {
        value if value <= 0.04045 => value / 12.92,
        value => ((value + 0.055) / 1.055).powf(2.4),
    });
    0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]
}

/// No more pages than a reader of so many runs, or campaigns, must turn.
pub fn too_long(made: &Made) -> Vec<Found> {
    let most = match made.kind {
        Kind::FieldSheet => 1,
        Kind::Report { runs: 0..=4 } => 8,
        Kind::Report { .. } => 9,
        Kind::Comparison { campaigns: 0..=6 } => 5,
        Kind::Comparison { .. } => 7,
    };
    let pages = made.pages.len();
    let found = (pages > most).then(|| Found::on(most, format!("{pages} pages, {most} allowed")));
    found.into_iter().collect()
}
