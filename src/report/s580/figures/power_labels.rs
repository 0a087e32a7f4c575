//! The names of what the figure of page one shows, each where it has room.

use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, VPos};

use crate::error::Result;
use crate::language::{Words, fixed, kelvins, short};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::limits::RATING_DIFFERENCE_K;
use crate::procedure::s580::result::count_reasons;
use crate::report::figures::fit::{strong_width_pt, width_pt};
use crate::report::figures::places::{Room, Spot};
use crate::report::figures::style::{
    Chart, INK, LINE, NOTE, anchored, fault, points, pt, stroke, strong, text,
};

/// Sizes of the rating's label and of the others, points.
const RATING_PT: f64 = 10.0;
const NAME_PT: f64 = 7.5;
/// From one line of a label to the next, as a share of its size.
const STEP: f64 = 1.25;
/// Half of what a point of an interval takes, points.
const DOT_PT: f64 = 2.6;
/// How far labels keep off the line, points.
const LINE_PT: f64 = 2.0;
/// Height from which a band takes so much of the figure that labels stand on it, points.
const HIGH_BAND_PT: f64 = 70.0;
/// Distance from which a label is led to what it names, points.
const LEADER_PT: f64 = 9.0;

/// Most points that a label is tried at.
const MOST_TARGETS: usize = 12;

/// A label: its lines, and what it names.
struct Label {
    lines: Vec<String>,
    /// Where it points to.
    target: (f64, f64),
    /// Where else it may, if that is nearer to where there is room.
    others: Vec<(f64, f64)>,
    is_strong: bool,
    ink: RGBColor,
}

/// Writes the labels: the rating, the line's bands, the intervals used and those set aside.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn write_labels(
    chart: &mut Chart<'_, '_>,
    assessment: &Assessment,
    words: &Words,
    in_view: &dyn Fn(&&Interval) -> bool,
) -> Result<()> {
    let view = View::of(chart);
    let mut room = Room::new(view.wide_pt, view.high_pt);
    let seen: Vec<&Interval> = assessment.s580.intervals.iter().filter(in_view).collect();
    for at in seen.iter().filter_map(|interval| interval.point()) {
        room.take(Spot::about(view.place(at), DOT_PT));
    }
    let is_believed = !assessment.s580.is_not_valid();
    if is_believed {
        take_line(&mut room, assessment, &view);
    }
    let labels = [
        rating_label(assessment, words).filter(|_| is_believed),
        used_label(assessment, &seen, words),
        aside_label(assessment, &seen, words),
        bands_label(assessment, words).filter(|_| is_believed),
    ];
    for label in labels.into_iter().flatten() {
        write(chart, &mut room, &view, &label)?;
    }
    Ok(())
}

/// The chart's ranges and its size, by which values become points from its left and top.
struct View {
    left: f64,
    right: f64,
    bottom: f64,
    top: f64,
    wide_pt: f64,
    high_pt: f64,
}

impl View {
    fn of(chart: &Chart<'_, '_>) -> Self {
        let (wide, high) = chart.plotting_area().dim_in_pixel();
        let (x, y) = (chart.x_range(), chart.y_range());
        View {
            left: x.start,
            right: x.end,
            bottom: y.start,
            top: y.end,
            wide_pt: points(wide),
            high_pt: points(high),
        }
    }

    fn place(&self, (k, watts): (f64, f64)) -> (f64, f64) {
        (
            (k - self.left) / (self.right - self.left) * self.wide_pt,
            (self.top - watts) / (self.top - self.bottom) * self.high_pt,
        )
    }

    /// The point of the chart that is nearest to another.
    fn within(&self, (x_pt, y_pt): (f64, f64)) -> (f64, f64) {
        (x_pt.clamp(0.0, self.wide_pt), y_pt.clamp(0.0, self.high_pt))
    }

    fn value(&self, (x_pt, y_pt): (f64, f64)) -> (f64, f64) {
        (
            self.left + x_pt / self.wide_pt * (self.right - self.left),
            self.top - y_pt / self.high_pt * (self.top - self.bottom),
        )
    }
}

/// Keeps labels off the line with its bands, and off what leads from the mark to the axes.
fn take_line(room: &mut Room, assessment: &Assessment, view: &View) {
    let Some(uncertainty) = assessment.s580.uncertainty() else {
        return;
    };
    let line = &uncertainty.of_line.line;
    let steps = 60;
    for step in 0..=steps {
        let k = view.left + (view.right - view.left) * f64::from(step) / f64::from(steps);
        let half_w = uncertainty.of_line.at(k).expanded;
        let (x, mut upper) = view.place((k, line.predict(k) + half_w));
        let (_, mut lower) = view.place((k, line.predict(k) - half_w));
        if lower - upper > HIGH_BAND_PT {
            (_, upper) = view.place((k, line.predict(k)));
            lower = upper;
        }
        room.take(Spot {
            left: x - LINE_PT,
            top: upper - LINE_PT,
            right: x + LINE_PT,
            bottom: lower + LINE_PT,
        });
    }
    let mark = (RATING_DIFFERENCE_K, line.predict(RATING_DIFFERENCE_K));
    let at = view.place(mark);
    room.take(Spot::about(at, 8.0));
    room.take_line((at.0, view.high_pt), at);
    room.take_line((0.0, at.1), at);
}

fn rating_label(assessment: &Assessment, words: &Words) -> Option<Label> {
    let rating = assessment.s580.rating()?;
    let power = fixed(rating.ps50_w, 0);
    let at = kelvins(short(RATING_DIFFERENCE_K));
    Some(Label {
        lines: vec![words.say(message!("figure-rating", power = power, at = at))],
        target: (RATING_DIFFERENCE_K, rating.ps50_w),
        others: Vec::new(),
        is_strong: true,
        ink: INK,
    })
}

/// Names the used intervals at the one that lies in the middle of those furthest left.
fn used_label(assessment: &Assessment, seen: &[&Interval], words: &Words) -> Option<Label> {
    let used = seen.iter().filter(|interval| interval.is_on_line());
    let target = at_share(used.filter_map(|interval| interval.point()), 0.3)?;
    Some(Label {
        lines: vec![words.say(message!(
            "figure-used",
            intervals = assessment.s580.used().count()
        ))],
        target,
        others: Vec::new(),
        is_strong: false,
        ink: INK,
    })
}

/// Names those set aside at one of those for the most frequent reason.
fn aside_label(assessment: &Assessment, seen: &[&Interval], words: &Words) -> Option<Label> {
    let aside: Vec<&Interval> = seen
        .iter()
        .copied()
        .filter(|interval| !interval.is_on_line())
        .collect();
    let count = assessment.s580.set_aside().count();
    let reasons = count_reasons(assessment.s580.intervals.iter());
    let most = reasons.first().map(|&(reason, count)| (count, reason));
    let is_tied = reasons
        .get(1)
        .is_some_and(|(_, count)| most.is_some_and(|one| one.0 == *count));
    let of_most = |interval: &&&Interval| {
        most.is_some_and(|(_, reason)| interval.reasons().contains(&reason))
    };
    let points = aside.iter().filter(of_most).filter_map(|i| i.point());
    let points: Vec<(f64, f64)> = points.collect();
    let all = aside.iter().filter_map(|interval| interval.point());
    let target = at_share(points.iter().copied(), 0.5).or_else(|| at_share(all, 0.5))?;
    let apart = points.len().div_ceil(MOST_TARGETS).max(1);
    let others = points.into_iter().step_by(apart).collect();
    let mut lines = vec![words.say(message!("figure-aside", count = count))];
    lines.extend(most.map(|(count, reason)| {
        let reason = reason.describe();
        words.say(match is_tied {
            true => message!("figure-aside-among", reason = reason, count = count),
            false => message!("figure-aside-most", reason = reason, count = count),
        })
    }));
    Some(Label {
        lines,
        target,
        others,
        is_strong: false,
        ink: NOTE,
    })
}

fn bands_label(assessment: &Assessment, words: &Words) -> Option<Label> {
    let uncertainty = assessment.s580.uncertainty()?;
    let line = &uncertainty.of_line.line;
    let (low_k, high_k) = line.x_range;
    let k = low_k + 0.25 * (high_k - low_k);
    let names = match uncertainty.is_of_one_day() {
        false => [message!("figure-band-dark"), message!("figure-band-light")],
        true => [
            message!("figure-band-dark-one-day"),
            message!("figure-band-light-one-day"),
        ],
    };
    Some(Label {
        lines: names.map(|name| words.say(name)).into(),
        target: (k, line.predict(k) - uncertainty.of_line.at(k).expanded),
        others: Vec::new(),
        is_strong: false,
        ink: LINE,
    })
}

/// The point that has a share of the others on its left.
fn at_share(points: impl Iterator<Item = (f64, f64)>, share: f64) -> Option<(f64, f64)> {
    let mut points: Vec<(f64, f64)> = points.collect();
    points.sort_by(|one, two| one.0.total_cmp(&two.0));
    let place = (share * points.len() as f64) as usize;
    points
        .get(place.min(points.len().saturating_sub(1)))
        .copied()
}

/// Where a label stands, and the point that it names there: another than the first only where
/// that would have to be led to.
fn placed(room: &Room, view: &View, label: &Label, sizes: (f64, f64)) -> ((f64, f64), Spot) {
    let first = view.within(view.place(label.target));
    let (cost, spot) = room.find(first, sizes);
    if cost <= LEADER_PT {
        return (first, spot);
    }
    let others = label.others.iter().map(|point| {
        let target = view.within(view.place(*point));
        let (cost, spot) = room.find(target, sizes);
        (cost, target, spot)
    });
    let all = others.chain([(cost, first, spot)]);
    let best = all.min_by(|one, other| one.0.total_cmp(&other.0));
    best.map_or((first, spot), |(_, target, spot)| (target, spot))
}

fn write(chart: &mut Chart<'_, '_>, room: &mut Room, view: &View, label: &Label) -> Result<()> {
    let size_pt = if label.is_strong { RATING_PT } else { NAME_PT };
    let width = |line: &String| match label.is_strong {
        true => strong_width_pt(line, size_pt),
        false => width_pt(line, size_pt),
    };
    let lines = label.lines.iter();
    let lines: Vec<String> = lines
        .flat_map(|line| broken(line, view.wide_pt - 4.0, &width))
        .collect();
    let wide_pt = lines.iter().map(width).fold(0.0, f64::max);
    let step_pt = STEP * size_pt;
    let sizes = (wide_pt + 4.0, step_pt * lines.len() as f64 + 2.0);
    let (target, spot) = placed(room, view, label, sizes);
    room.take_label(spot);
    if spot.distance(target) > LEADER_PT {
        let ends = [spot.nearest(target), target].map(|end| view.value(end));
        let leader = PathElement::new(ends, stroke(&label.ink, 0.4));
        chart.draw_series([leader]).map_err(fault)?;
        room.take_line(spot.nearest(target), target);
    }
    let style = if label.is_strong {
        strong(size_pt, &label.ink)
    } else {
        text(size_pt, &label.ink)
    };
    let at = view.value((spot.left + 2.0, spot.top + 1.0));
    let written = lines.iter().enumerate().map(|(index, line)| {
        let style = anchored(style.clone(), HPos::Left, VPos::Top);
        let below = pt(step_pt * index as f64);
        EmptyElement::at(at) + Text::new(line.clone(), (0, below), style)
    });
    chart.draw_series(written).map_err(fault)?;
    Ok(())
}

/// A line, broken between words where it is wider than there is room, points.
fn broken(line: &str, room_pt: f64, width: &dyn Fn(&String) -> f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in line.split(' ') {
        let longer = lines.last().map(|line| format!("{line} {word}"));
        match longer.filter(|longer| width(longer) <= room_pt) {
            Some(longer) => {
                lines.pop();
                lines.push(longer);
            }
            None => lines.push(word.to_owned()),
        }
    }
    lines
}
