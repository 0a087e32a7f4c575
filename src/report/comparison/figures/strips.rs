//! A ranking's plot, row by row: each campaign's interval on a strip of its own, below one axis,
//! so that rows stand in a table that pages and a narrow screen can break.

use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, VPos};

use crate::error::Result;
use crate::language::Phrase;
use crate::report::figures::style::{
    Area, Canvas, GRID, INK, LINE, anchored, fault, nice, pt, stroke, text,
};
use simmerline_math::log10;

/// Ink of what has no rank.
pub const GREY: RGBColor = RGBColor(0x8b, 0x94, 0x99);
/// Room at either end of a strip for a mark or half a number, points.
const END_PT: f64 = 10.0;
/// The same for half a time.
const TIME_END_PT: f64 = 18.0;
/// Half the size of a mark, points.
const MARK_PT: f64 = 3.3;
/// Height of the axis, points.
pub const AXIS_PT: f64 = 13.0;
/// Width of a lane of brackets, points.
pub const LANE_PT: f64 = 6.0;
/// From one label of an axis to the next, at least, points.
const LABEL_STEP_PT: f64 = 30.0;
/// The same for times.
const TIME_STEP_PT: f64 = 38.0;

/// The axis that all strips of a ranking share.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Scale {
    low: f64,
    high: f64,
    step: f64,
    /// Room at either end, points.
    end_pt: f64,
}

impl Scale {
    /// An axis that begins at zero, or below where values do, and ends where they do; for a width
    /// in points. Its steps are 1, 2 or 5 of a decimal place.
    pub fn new(values: impl Iterator<Item = f64>, width_pt: f64) -> Scale {
        let (low, high) = values.fold((0.0_f64, 0.0_f64), |(low, high), value| {
            (low.min(value), high.max(value))
        });
        let span = (high - low).max(f64::MIN_POSITIVE);
        let labels = (width_pt / LABEL_STEP_PT).floor().max(1.0);
        let step = nice(span / labels);
        Scale {
            low,
            high: if high > low { high } else { step },
            step,
            end_pt: END_PT,
        }
    }

    /// The same, with labels at least so many points apart, and some room above.
    pub fn roomy(values: impl Iterator<Item = f64>, width_pt: f64, apart_pt: f64) -> Scale {
        let scale = Scale::new(values, width_pt * LABEL_STEP_PT / apart_pt);
        Scale {
            high: scale.high + 0.04 * (scale.high - scale.low),
            ..scale
        }
    }

    /// The same for times, in seconds, with steps that a clock has.
    pub fn of_times(values: impl Iterator<Item = f64>, width_pt: f64) -> Scale {
        const STEPS_MIN: &[f64] = &[5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 240.0, 480.0, 960.0];
        let high = values.fold(60.0, f64::max);
        let least_s = high / (width_pt / TIME_STEP_PT).floor().max(1.0);
        let steps_s = STEPS_MIN.iter().map(|min| min * 60.0);
        let step = steps_s.clone().find(|step| *step >= least_s);
        let step = step.unwrap_or_else(|| nice(least_s));
        Scale {
            low: 0.0,
            high: (high / step).ceil() * step,
            step,
            end_pt: TIME_END_PT,
        }
    }

    /// Where its labels stand.
    pub fn steps(&self) -> impl Iterator<Item = f64> + use<> {
        let Scale {
            low, high, step, ..
        } = *self;
        let first = (low / step - 1e-6).ceil() as i64;
        let last = (high / step + 1e-6).floor() as i64;
        (first..=last).map(move |index| step * index as f64)
    }

    /// Decimals of its labels.
    pub fn decimals(&self) -> usize {
        (-log10(self.step * 1.001).floor()).max(0.0) as usize
    }

    /// Where it begins.
    pub fn start(&self) -> f64 {
        self.low
    }

    /// Where it ends.
    pub fn end(&self) -> f64 {
        self.high
    }

    fn x(&self, value: f64, width_pt: f64) -> i32 {
        let share = (value - self.low) / (self.high - self.low);
        pt(self.end_pt + share * (width_pt - 2.0 * self.end_pt))
    }
}

/// How a campaign is marked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mark {
    /// It conforms.
    Filled,
    /// It is indicative.
    Open,
    /// It is physically impossible.
    Struck,
}

/// A value with its interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dot {
    pub value: f64,
    /// Where it lies below the axis, an arrow stands.
    pub lower: f64,
    /// `None`: it has no end, or one beyond the axis.
    pub upper: Option<f64>,
    pub mark: Mark,
}

/// Draws the axis: its numbers, and where they stand.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_axis(
    scale: &Scale,
    label: impl Fn(f64) -> Phrase,
    canvas: &Canvas<'_>,
) -> Result<String> {
    canvas.draw(AXIS_PT, |area| {
        for at in scale.steps() {
            let x = scale.x(at, canvas.width_pt);
            let style = anchored(text(7.0, &INK), HPos::Center, VPos::Top);
            let words = canvas.words.say(label(at));
            area.draw(&Text::new(words, (x, pt(1.0)), style))
                .map_err(fault)?;
            let tick = vec![(x, pt(AXIS_PT - 3.0)), (x, pt(AXIS_PT))];
            area.draw(&PathElement::new(tick, stroke(&INK, 0.6)))
                .map_err(fault)?;
        }
        Ok(())
    })
}

/// Draws a strip: the lines of the axis through it, and the value with its interval; `None`:
/// the lines alone.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_strip(
    scale: &Scale,
    dot: Option<&Dot>,
    (height_pt, middle_pt): (f64, f64),
    canvas: &Canvas<'_>,
) -> Result<String> {
    canvas.draw(height_pt, |area| {
        for at in scale.steps() {
            let x = scale.x(at, canvas.width_pt);
            let line = vec![(x, 0), (x, pt(height_pt))];
            area.draw(&PathElement::new(line, stroke(&GRID, 0.5)))
                .map_err(fault)?;
        }
        match dot {
            Some(dot) => draw_dot(area, scale, dot, canvas.width_pt, pt(middle_pt)),
            None => Ok(()),
        }
    })
}

fn draw_dot(area: &Area<'_>, scale: &Scale, dot: &Dot, width_pt: f64, y: i32) -> Result<()> {
    let x = |value: f64| scale.x(value, width_pt);
    let (ink, face) = match dot.mark {
        Mark::Filled => (&LINE, LINE),
        Mark::Open => (&INK, WHITE),
        Mark::Struck => (&GREY, WHITE),
    };
    let bar = stroke(ink, 1.8);
    let (start, end) = (dot.lower.max(scale.low), dot.upper.unwrap_or(scale.end()));
    let interval = vec![(x(start), y), (x(end), y)];
    area.draw(&PathElement::new(interval, bar)).map_err(fault)?;
    let arrows = [
        (dot.lower < scale.low, x(start), -1),
        (dot.upper.is_none(), x(end), 1),
    ];
    for (_, back, way) in arrows.into_iter().filter(|(is_there, ..)| *is_there) {
        let tip = back + way * pt(4.0);
        let head = vec![(back, y - pt(2.6)), (tip, y), (back, y + pt(2.6))];
        area.draw(&Polygon::new(head, ink.filled()))
            .map_err(fault)?;
    }
    let at = (x(dot.value), y);
    let round = |radius_pt: f64, colour: RGBColor| Circle::new(at, pt(radius_pt), colour.filled());
    area.draw(&round(MARK_PT, *ink)).map_err(fault)?;
    area.draw(&round(MARK_PT - 1.1, face)).map_err(fault)?;
    if dot.mark == Mark::Struck {
        let reach = pt(5.4);
        let through = vec![(at.0 - reach, y + reach), (at.0 + reach, y - reach)];
        area.draw(&PathElement::new(through, stroke(&INK, 1.1)))
            .map_err(fault)?;
    }
    Ok(())
}

/// What a bracket does in one row of its lane.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Bracket {
    /// No bracket is there.
    None,
    /// The row is within the bracket's ends but not of its group.
    Passes,
    /// The row is of the group; whether the bracket begins and ends there.
    Holds { begins: bool, ends: bool },
}

/// Draws the brackets of a row, a lane each.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_brackets(lanes: &[Bracket], height_pt: f64, canvas: &Canvas<'_>) -> Result<String> {
    canvas.draw(height_pt, |area| {
        for (lane, bracket) in lanes.iter().enumerate() {
            let x = pt((lane as f64 + 0.5) * LANE_PT);
            let (top, bottom, width_pt) = match bracket {
                Bracket::None => continue,
                Bracket::Passes => (0.0, height_pt, 0.5),
                Bracket::Holds { begins, ends } => {
                    let room = |is_end: bool| if is_end { 3.0 } else { 0.0 };
                    (room(*begins), height_pt - room(*ends), 2.4)
                }
            };
            let line = vec![(x, pt(top)), (x, pt(bottom))];
            area.draw(&PathElement::new(line, stroke(&INK, width_pt)))
                .map_err(fault)?;
        }
        Ok(())
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_axis_holds_its_values_in_steps_of_one_two_or_five() {
        let scale = Scale::new([60.0, 161.0, 175.0].into_iter(), 190.0);
        assert_eq!(scale.steps().collect::<Vec<_>>(), [0.0, 50.0, 100.0, 150.0]);
        let below = Scale::new([-16.0, 67.0].into_iter(), 190.0);
        assert_eq!((below.start(), below.end()), (-16.0, 67.0));
        assert_eq!(below.steps().collect::<Vec<_>>(), [0.0, 20.0, 40.0, 60.0]);
        let none = Scale::new(std::iter::empty(), 190.0);
        assert!(none.steps().count() >= 2);
    }

    #[test]
    fn an_axis_of_times_has_steps_of_a_clock() {
        let scale = Scale::of_times([3900.0, 9900.0].into_iter(), 190.0);
        let minutes: Vec<f64> = scale.steps().map(|at| at / 60.0).collect();
        assert_eq!(minutes, [0.0, 60.0, 120.0, 180.0]);
        let short = Scale::of_times([4000.0].into_iter(), 190.0);
        assert_eq!(short.steps().nth(1), Some(15.0 * 60.0));
    }

    #[test]
    fn values_lie_between_the_ends_of_a_strip() {
        let scale = Scale::new([60.0, 161.0].into_iter(), 150.0);
        assert_eq!(scale.x(0.0, 150.0), pt(END_PT));
        assert_eq!(scale.x(scale.end(), 150.0), pt(150.0 - END_PT));
    }
}
