//! The highest rate at which the water gains exergy.

use simmerline_math::squared;

use super::step::Step;
use crate::physics::exergy::ZERO_CELSIUS_K;
use crate::procedure::heat_balance::HeatBalance;
use crate::procedure::uncertainty::Off;

/// Fewest intervals that a parabola is laid through. Common practice, no published source.
const FEWEST: usize = 6;

/// The vertex of the parabola of exergy over the temperature difference.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Vertex {
    /// W.
    pub exergy_w: f64,
    /// At this temperature difference, K.
    pub difference_k: f64,
    /// What the scatter of the steps about the parabola gives it, one standard uncertainty, W.
    pub of_scatter_w: f64,
}

/// A parabola y = a + b·x + c·x².
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Parabola {
    pub a: f64,
    pub b: f64,
    pub c: f64,
    /// Mean and spread of the temperature differences, K.
    middle_k: f64,
    spread_k: f64,
    /// Third and fourth moment of them, by their spread.
    third: f64,
    fourth: f64,
    /// Variance of one step about it over their number, W².
    variance_of_mean: f64,
}

impl Parabola {
    /// Standard uncertainty of its value there by the scatter of the steps, W.
    fn of_scatter_w(&self, difference_k: f64) -> f64 {
        let x = (difference_k - self.middle_k) / self.spread_k;
        let (third, fourth) = (self.third, self.fourth);
        // The inverse of the normal equations, weighed with 1, x and x².
        let weighed = (fourth - third * third) + 2.0 * x * third + x * x * (fourth - 3.0)
            - 2.0 * x * x * x * third
            + x * x * x * x;
        let determinant = fourth - 1.0 - third * third;
        (self.variance_of_mean * weighed / determinant)
            .max(0.0)
            .sqrt()
    }

    /// Its value at a temperature difference, K: W.
    pub fn at(&self, difference_k: f64) -> f64 {
        self.a + (self.b + self.c * difference_k) * difference_k
    }
}

/// The parabola through exergy (W) over temperature difference (K) of the steps that count, by
/// least squares; `None` with fewer than six of them, or where they lie too near together.
pub fn parabola(steps: &[Step], off: &Off) -> Option<Parabola> {
    let points: Vec<(f64, f64)> = steps
        .iter()
        .filter(|step| off.counts(0, step.date))
        .map(|step| (step.difference_k(&off.shift), step.exergy_w(&off.shift)))
        .collect();
    if points.len() < FEWEST {
        return None;
    }
    let count = points.len() as f64;
    let mean = |of: &dyn Fn(f64) -> f64| points.iter().map(|(x, _)| of(*x)).sum::<f64>() / count;
    let middle = mean(&|x| x);
    let spread = mean(&|x| squared(x - middle)).sqrt();
    if spread < 1e-6 {
        return None;
    }
    // In units of the spread about the mean the sums are all of one size.
    let scaled = |x: f64| (x - middle) / spread;
    let of = |power: i32| mean(&|x| (0..power).fold(1.0, |product, _| product * scaled(x)));
    let with_y = |power: i32| {
        let terms = points
            .iter()
            .map(|(x, y)| y * (0..power).fold(1.0, |product, _| product * scaled(*x)));
        terms.sum::<f64>() / count
    };
    // With mean 0 and spread 1 the normal equations are 3 × 3 with ones and a zero in them.
    let (third, fourth) = (of(3), of(4));
    let (y0, y1, y2) = (with_y(0), with_y(1), with_y(2));
    let determinant = fourth - 1.0 - third * third;
    if determinant < 1e-9 {
        return None;
    }
    let c = (y2 - y0 - third * y1) / determinant;
    let b = y1 - third * c;
    let a = y0 - c;
    let left = points.iter().map(|(x, y)| {
        let x = scaled(*x);
        squared(y - a - b * x - c * x * x)
    });
    let variance = left.sum::<f64>() / (count - 3.0);
    // Back to kelvin.
    let (b, c) = (b / spread, c / (spread * spread));
    Some(Parabola {
        a: a - b * middle + c * middle * middle,
        b: b - 2.0 * c * middle,
        c,
        middle_k: middle,
        spread_k: spread,
        third,
        fourth,
        variance_of_mean: variance / count,
    })
}

/// The vertex of the parabola, where it is a highest point among the steps.
///
/// # Source
/// Kumar, Vishwanath and Gupta 2012, abstract seen: the parabola, and that its vertex is the
/// peak. That it has to lie among the intervals is this project's.
pub fn vertex(steps: &[Step], off: &Off) -> Option<Vertex> {
    let law = parabola(steps, off)?;
    let Parabola { a, b, c, .. } = law;
    if c >= 0.0 {
        return None;
    }
    let difference_k = -b / (2.0 * c);
    let counted = steps.iter().filter(|step| off.counts(0, step.date));
    let (low, high) = counted.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), step| {
        let at = step.difference_k(&off.shift);
        (low.min(at), high.max(at))
    });
    let exergy_w = a + b * difference_k / 2.0;
    ((low..=high).contains(&difference_k) && exergy_w > 0.0).then_some(Vertex {
        exergy_w,
        difference_k,
        of_scatter_w: law.of_scatter_w(difference_k),
    })
}

/// Exergy of the heat that is lost to the air where the peak is, W: u·Td·(1 − Ta/Tw) with the
/// loss u (W/K) of the heat balance; `None` where the loss may be none.
///
/// # Source
/// Kumar, Vishwanath and Gupta 2012 hold the peak against the exergy lost there (abstract seen).
/// How that is taken is not told there: that it is the exergy of the heat lost is this project's
/// reading.
pub fn lost_w(at: &Vertex, ambient_c: f64, balance: &HeatBalance) -> Option<f64> {
    let loss = &balance.loss_w_per_k;
    let ambient_k = ambient_c + ZERO_CELSIUS_K;
    let share = 1.0 - ambient_k / (ambient_k + at.difference_k);
    let lost_w = loss.value * at.difference_k * share;
    (loss.interval.lower > 0.0 && lost_w > 0.0).then_some(lost_w)
}
