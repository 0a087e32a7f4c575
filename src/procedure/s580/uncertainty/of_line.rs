//! How sure a line is, anywhere along it.

use super::days::DayEffect;
use crate::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::limits::STANDARD_IRRADIANCE_W_M2;
use crate::procedure::sources::CommonError;
use crate::procedure::uncertainty::points::{Factors, ReadingSpread};
use crate::procedure::uncertainty::shift::Shift;
use crate::procedure::uncertainty::{Budget, Fitted, Point, Region};
use crate::stats::line::Line;
use simmerline_math::hypot;

/// Everything that the uncertainty of a line follows from.
#[derive(Debug, Clone)]
pub struct LineUncertainty {
    pub line: Line,
    pub days: DayEffect,
    /// Intercept and slope.
    pub fitted: Fitted,
    pub reading: ReadingNoise,
}

/// Standard deviation that single readings give the power of one interval, W. It is part
/// of the scatter.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct ReadingNoise {
    /// From the step in which the water thermometer is read; `None` where it is not known.
    pub resolution_w: Option<f64>,
    /// From the moment at which it is read.
    pub clock_w: f64,
}

impl ReadingNoise {
    /// All of it, W.
    pub fn of_interval_w(&self) -> f64 {
        hypot(self.resolution_w.unwrap_or(0.0), self.clock_w)
    }
}

impl LineUncertainty {
    /// The uncertainty of the line through some points; `None` where their temperature
    /// differences are too much alike.
    pub fn of(
        line: &Line,
        points: &[Point],
        readings: ReadingSpread,
        common: Vec<CommonError>,
    ) -> Option<LineUncertainty> {
        let (resolution_w, clock_w) = readings.of_interval(points);
        Some(LineUncertainty {
            line: *line,
            days: DayEffect::of(line, points),
            fitted: Fitted::fit(points, standardised, readings, common)?,
            reading: ReadingNoise {
                resolution_w,
                clock_w,
            },
        })
    }

    /// The budget of the line read at `at_k`, W.
    pub fn at(&self, at_k: f64) -> Budget {
        Budget {
            value: self.line.predict(at_k),
            ..self.fitted.budget([1.0, at_k])
        }
    }

    /// Intercept and slope of the cooking power at an irradiance (W/m²), with its 95 %
    /// band. It holds for the irradiance of the test, at which normalising is undone.
    pub fn power_at(&self, irradiance_w_m2: f64) -> Region {
        let share = irradiance_w_m2 / STANDARD_IRRADIANCE_W_M2;
        self.fitted.region().times([share; 2])
    }
}

/// Ps = a + b·Td: power over irradiance on temperature difference.
fn standardised(shift: &Shift) -> Factors {
    Factors {
        x1: 1.0,
        x2: shift.difference(),
        y: [shift.power() / shift.irradiance, 0.0],
    }
}

/// What an interval gives to the line; `None` where it cannot be normalised.
pub fn point(interval: &Interval, water_kg: f64, day: usize, follows: bool) -> Option<Point> {
    let measured = &interval.measured;
    let power_w = measured.standardised_power_w?;
    let water_j_per_k = water_kg * SPECIFIC_HEAT_J_PER_KG_K;
    let share = STANDARD_IRRADIANCE_W_M2 / measured.irradiance?.mean;
    Some(Point {
        x1: 1.0,
        water_c: measured.water.mean,
        ambient_c: measured.ambient?.mean,
        of_water: power_w,
        of_vessels: 0.0,
        per_kelvin: water_j_per_k / measured.duration_s * share,
        per_second: power_w / measured.duration_s,
        day,
        follows,
    })
}
