//! Sums of squares of the heat balance over each tooth of a run, for one fall of the gain.

use simmerline_math::exp;

use super::fall::Shape;
use super::teeth::{Stretch, Tooth};
use crate::units::seconds_between;

/// Gain, loss, and what the loss grows by with the temperature difference.
const TERMS: usize = 3;
/// The terms and the water temperature.
const ALL: usize = TERMS + 1;
/// Brings the terms to about the same size, for rounding's sake.
const SCALES: [f64; TERMS] = [1e-6, 1e-4, 1e-6];
/// Share of a term's squares that must be left beside those before it, or it says nothing new.
const LEAST_LEFT: f64 = 1e-9;
/// Over a hole longer than this nothing of the heat before it is left, s.
const FORGOTTEN_AFTER_S: f64 = 900.0;

/// Σ x·y of the terms and the water temperature, each less its mean over its stretch, which takes
/// out the temperature at which it begins.
#[derive(Debug, Clone, Copy, Default)]
pub struct Squares {
    sums: [[f64; ALL]; ALL],
}

/// Mean share of the gain over each step of some teeth, in their order, with gain that falls as
/// [`Shape::share_left`] has it, by Simpson's rule.
pub fn shares(teeth: &[Tooth], shape: Shape, per_deg2: f64) -> Vec<f64> {
    let stretches = teeth.iter().flat_map(|tooth| &tooth.stretches);
    let mut shares = Vec::new();
    for stretch in stretches {
        let mut before = None;
        for step in &stretch.steps {
            let [from_deg, to_deg] = step.angle_deg;
            let from = before.unwrap_or_else(|| shape.share_left(from_deg, per_deg2));
            let middle = shape.share_left((from_deg + to_deg) / 2.0, per_deg2);
            let to = shape.share_left(to_deg, per_deg2);
            shares.push((from + 4.0 * middle + to) / 6.0);
            before = Some(to);
        }
    }
    shares
}

/// The squares of each tooth of a run, with shares of the gain as [`shares`] has them and heat
/// that reaches the water late, by a time constant (s).
pub fn of_run(teeth: &[Tooth], shares: &[f64], lag_s: f64) -> Vec<Squares> {
    let mut shares = shares.iter().copied();
    let mut heat = Heat::new(lag_s);
    let mut all = Vec::with_capacity(teeth.len());
    for tooth in teeth {
        let mut squares = Squares::default();
        heat.aim(seconds_between(heat.since_us, tooth.span.from_us));
        heat.since_us = tooth.span.from_us;
        for stretch in &tooth.stretches {
            squares.add_stretch(stretch, &mut shares, &mut heat);
        }
        all.push(squares);
    }
    all
}

/// Sunlight on its way into the water: what arrives follows what is absorbed with a delay of the
/// first order.
struct Heat {
    lag_s: f64,
    /// When the tooth began, µs since 1970, UTC.
    since_us: i64,
    /// What arrives, W/m² of sunlight on the axis, and when, s after the aiming.
    arriving: Option<(f64, f64)>,
    /// What was absorbed last, W/m².
    absorbed_w_m2: f64,
}

impl Heat {
    fn new(lag_s: f64) -> Heat {
        Heat {
            lag_s,
            since_us: 0,
            arriving: None,
            absorbed_w_m2: 0.0,
        }
    }

    /// Share that is left of a difference after a time, s.
    fn left(&self, after_s: f64) -> f64 {
        if self.lag_s > 0.0 {
            exp(-after_s / self.lag_s)
        } else {
            0.0
        }
    }

    /// The cooker is aimed, a time after it was last, s: up to then it absorbed as it did.
    fn aim(&mut self, after_s: f64) {
        let left = |at_s: f64| self.left(after_s - at_s);
        self.arriving = self.arriving.map(|(arriving, at_s)| {
            let late = (arriving - self.absorbed_w_m2) * left(at_s);
            let forgotten = after_s - at_s > FORGOTTEN_AFTER_S;
            let late = if forgotten { 0.0 } else { late };
            (self.absorbed_w_m2 + late, 0.0)
        });
    }

    /// Heat that arrives from one time to another (s after the aiming), J/m², while so much is
    /// absorbed, W/m².
    fn pass(&mut self, from_s: f64, to_s: f64, absorbed_w_m2: f64) -> f64 {
        let before = match self.arriving {
            Some((arriving, at_s)) if from_s - at_s <= FORGOTTEN_AFTER_S => {
                absorbed_w_m2 + (arriving - absorbed_w_m2) * self.left((from_s - at_s).max(0.0))
            }
            _ => absorbed_w_m2,
        };
        let left = self.left(to_s - from_s);
        let late = before - absorbed_w_m2;
        self.arriving = Some((absorbed_w_m2 + late * left, to_s));
        self.absorbed_w_m2 = absorbed_w_m2;
        absorbed_w_m2 * (to_s - from_s) + late * self.lag_s * (1.0 - left)
    }
}

impl Squares {
    fn add_stretch(
        &mut self,
        stretch: &Stretch,
        shares: &mut impl Iterator<Item = f64>,
        heat: &mut Heat,
    ) {
        let count = stretch.water_c.len() as f64;
        let mut rows: Vec<[f64; ALL]> = Vec::with_capacity(stretch.water_c.len());
        let mut passed = [0.0; TERMS];
        let mut means = [0.0; ALL];
        let mut point = |passed: [f64; TERMS], water_c: f64| {
            let row = [passed[0], passed[1], passed[2], water_c];
            for (mean, value) in means.iter_mut().zip(row) {
                *mean += value / count;
            }
            rows.push(row);
        };
        point(passed, stretch.water_c[0]);
        for (index, step) in stretch.steps.iter().enumerate() {
            let (from_s, to_s) = (stretch.since_s[index], stretch.since_s[index + 1]);
            let share = shares.next().unwrap_or(1.0);
            let absorbed_w_m2 = share * step.sun_j_m2 / (to_s - from_s);
            let arrived_j_m2 = heat.pass(from_s, to_s, absorbed_w_m2);
            passed[0] += SCALES[0] * arrived_j_m2;
            passed[1] += SCALES[1] * step.difference_k_s;
            passed[2] += SCALES[2] * step.square_k2_s;
            point(passed, stretch.water_c[index + 1]);
        }
        for row in &rows {
            for (one, sums) in self.sums.iter_mut().enumerate() {
                for (two, sum) in sums.iter_mut().enumerate() {
                    *sum += (row[one] - means[one]) * (row[two] - means[two]);
                }
            }
        }
    }

    /// With those of another tooth.
    #[must_use]
    pub fn plus(&self, other: &Squares) -> Squares {
        let mut both = *self;
        for (sums, others) in both.sums.iter_mut().zip(&other.sums) {
            for (sum, other) in sums.iter_mut().zip(others) {
                *sum += other;
            }
        }
        both
    }

    /// Sum of the squares that the terms leave of the water temperature, K²: by elimination,
    /// without a term that says nothing new.
    pub fn left_k2(&self) -> f64 {
        let mut sums = self.sums;
        for term in 0..TERMS {
            let own = self.sums[term][term];
            let pivot = sums[term][term];
            if own <= 0.0 || pivot <= LEAST_LEFT * own {
                continue;
            }
            let row = sums[term];
            for below in sums.iter_mut().skip(term + 1) {
                let factor = below[term] / pivot;
                for (value, above) in below.iter_mut().zip(row) {
                    *value -= factor * above;
                }
            }
        }
        sums[TERMS][TERMS].max(0.0)
    }
}
