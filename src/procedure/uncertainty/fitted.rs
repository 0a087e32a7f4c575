//! Two parameters, and all that makes them unsure.

use super::budget::{Budget, MOST_FREEDOM, Origin, coverage_factor};
use super::points::{Law, Moments, Point, ReadingSpread};
use super::shift::Shift;
use crate::procedure::sources::CommonError;
use crate::stats::two::{Covariance, Row, TwoFit, fit_two, jackknife, leave_out_groups};
use simmerline_math::{hypot, squared};

/// An error that all readings share, with what it does to both parameters for each unit (a
/// fraction, or K) that the readings are too high.
#[derive(Debug, Clone, PartialEq)]
pub struct Effect {
    pub error: CommonError,
    pub sensitivity: [f64; 2],
}

/// Two parameters of a fit with their uncertainty.
#[derive(Debug, Clone)]
pub struct Fitted {
    pub parameters: [f64; 2],
    /// Number of points.
    pub intervals: usize,
    /// Both parameters without each day in turn, where that can be told.
    pub without_a_day: Option<Vec<[f64; 2]>>,
    /// Of days; `None` where they cannot be told.
    pub of_days: Option<Covariance>,
    /// Of intervals, independent but for the readings that they share.
    pub of_intervals: Covariance,
    /// Of single readings alone, which the scatter has in it.
    pub of_readings: Covariance,
    pub effects: Vec<Effect>,
    /// What the draws start from.
    pub moments: Moments,
    pub law: Law,
}

/// Scatter and days of one figure.
#[derive(Debug, Clone, PartialEq)]
pub struct Statistical {
    pub covariance: Covariance,
    pub freedom: f64,
    /// What gives most: days, intervals or readings.
    pub origin: Origin,
}

/// Two parameters with all their uncertainty, for what is read off them many times.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Region {
    pub parameters: [f64; 2],
    /// Of days, intervals and readings with Student's t for 95 %; the widest counts.
    statistical: [(Covariance, f64); 3],
    /// The same factor of instruments.
    of_instruments: f64,
    common: Covariance,
}

impl Region {
    /// w1·b1 + w2·b2.
    pub fn value(&self, weights: [f64; 2]) -> f64 {
        weights[0] * self.parameters[0] + weights[1] * self.parameters[1]
    }

    /// Half-width of its 95 % band: the expanded uncertainty of [`Fitted::budget`].
    pub fn half_width(&self, weights: [f64; 2]) -> f64 {
        let statistical = self.statistical.iter();
        let reaches = statistical.map(|(one, factor)| factor * one.of(weights).sqrt());
        let widest = reaches.fold(0.0, f64::max);
        let common = self.of_instruments * self.common.of(weights).sqrt();
        hypot(widest, common)
    }

    /// The same of the parameters times a factor each.
    pub fn times(&self, [one, two]: [f64; 2]) -> Region {
        let times = |covariance: Covariance| Covariance {
            first: one * one * covariance.first,
            both: one * two * covariance.both,
            second: two * two * covariance.second,
        };
        Region {
            parameters: [one * self.parameters[0], two * self.parameters[1]],
            statistical: self.statistical.map(|(one, factor)| (times(one), factor)),
            common: times(self.common),
            ..*self
        }
    }
}

/// Step by which a derivative is taken, a fraction or K.
const STEP: f64 = 2e-3;

impl Fitted {
    /// Fits both parameters; `None` with fewer than three points, and where the parameters
    /// cannot be told apart.
    ///
    /// Where there are several days, each is left out in turn, so that days may differ in
    /// level and in slope, and readings may follow each other. With one day the intervals are
    /// independent but for the readings that they share.
    ///
    /// # Source
    /// Jackknife: [`jackknife`]. Common errors: JCGM 100:2008, 5.1.3, by the derivative of
    /// the whole fit. What covers is told in the contributor's guide.
    pub fn fit(
        points: &[Point],
        law: Law,
        readings: ReadingSpread,
        common: Vec<CommonError>,
    ) -> Option<Fitted> {
        let rows: Vec<Row> = points.iter().map(|point| point.row(law)).collect();
        let fit = fit_two(&rows)?;
        let day: Vec<usize> = points.iter().map(|point| point.day).collect();
        let of_readings = readings.of_fit(&fit, points, &rows);
        let without_a_day = leave_out_groups(&rows, &day);
        let moments = Moments::of(points);
        let effects = common.into_iter().map(|error| Effect {
            sensitivity: derivative(|size| moments.fit(law, &Shift::of(error.source, size))),
            error,
        });
        Some(Fitted {
            parameters: fit.parameters,
            intervals: rows.len(),
            of_days: without_a_day.as_deref().map(jackknife),
            of_intervals: of_intervals(&fit, readings.of_interval(points), of_readings),
            without_a_day,
            of_readings,
            effects: effects.collect(),
            moments,
            law,
        })
    }

    /// Number of days that were left out in turn; `None` for one day, and where none of several
    /// can be left out: what another day would do is then not in the uncertainty.
    pub fn days(&self) -> Option<usize> {
        self.without_a_day.as_ref().map(Vec::len)
    }

    /// What days, intervals and readings each give, with its degrees of freedom.
    fn candidates(&self) -> impl Iterator<Item = Statistical> {
        let of = |origin: Origin, covariance: Covariance, freedom: f64| Statistical {
            covariance,
            freedom,
            origin,
        };
        let days = self.of_days.zip(self.days());
        let of_days = days.map(|(found, days)| of(Origin::Days, found, days as f64 - 1.0));
        let intervals = self.intervals as f64 - 2.0;
        // Where intervals scatter by no more than their readings, these are all there is.
        let has_scatter = self.of_intervals != self.of_readings;
        let scatter = has_scatter.then(|| of(Origin::Scatter, self.of_intervals, intervals));
        let of_readings = of(Origin::ReadingNoise, self.of_readings, MOST_FREEDOM);
        of_days.into_iter().chain(scatter).chain([of_readings])
    }

    /// Scatter and days of w1·b1 + w2·b2: of what days, intervals and readings give it, that
    /// which makes its 95 % interval widest. Two days may agree anywhere by chance, and are no
    /// surer there than their intervals.
    pub fn statistical(&self, weights: [f64; 2]) -> Statistical {
        let reach =
            |one: &Statistical| coverage_factor(one.freedom) * one.covariance.of(weights).sqrt();
        let widest = self.candidates().reduce(|widest, one| {
            if reach(&one) > reach(&widest) {
                one
            } else {
                widest
            }
        });
        widest.expect("readings are always there")
    }

    /// The budget of w1·b1 + w2·b2, in its unit.
    pub fn budget(&self, weights: [f64; 2]) -> Budget {
        let statistical = self.statistical(weights);
        let read = |pair: [f64; 2]| weights[0] * pair[0] + weights[1] * pair[1];
        let common = self.effects.iter();
        let common = common.map(|effect| {
            let size = effect.error.standard.size();
            (effect.error.clone(), read(effect.sensitivity) * size)
        });
        Budget::new(
            read(self.parameters),
            (
                statistical.origin,
                statistical.covariance.of(weights).sqrt(),
            ),
            statistical.freedom,
            common,
        )
    }

    /// The band of whatever is read off both parameters.
    pub fn region(&self) -> Region {
        let mut common = Covariance::default();
        for (index, effect) in self.effects.iter().enumerate() {
            let is_same = |other: &&Effect| other.error.identity == effect.error.identity;
            if self.effects[..index].iter().any(|other| is_same(&other)) {
                continue;
            }
            let mut moved = [0.0; 2];
            for one in self.effects.iter().filter(is_same) {
                let size = one.error.standard.size();
                moved = [0, 1].map(|which| moved[which] + size * one.sensitivity[which]);
            }
            common.add(moved, 1.0);
        }
        let mut statistical = [(Covariance::default(), 0.0); 3];
        for (place, one) in statistical.iter_mut().zip(self.candidates()) {
            *place = (one.covariance, coverage_factor(one.freedom));
        }
        Region {
            parameters: self.parameters,
            statistical,
            of_instruments: coverage_factor(f64::INFINITY),
            common,
        }
    }

    /// The errors that all readings share.
    pub fn common(&self) -> impl Iterator<Item = &CommonError> {
        self.effects.iter().map(|effect| &effect.error)
    }
}

/// Derivative of both parameters where an error is none, by differences over two steps on
/// either side; not a number where the fit fails there.
fn derivative(at: impl Fn(f64) -> Option<[f64; 2]>) -> [f64; 2] {
    let all = [STEP, -STEP, 2.0 * STEP, -2.0 * STEP].map(|size| at(size).unwrap_or([f64::NAN; 2]));
    [0, 1].map(|which| {
        let [more, less, much_more, much_less] = all.map(|fit| fit[which]);
        (8.0 * (more - less) - (much_more - much_less)) / (12.0 * STEP)
    })
}

/// Of intervals that are independent but for the readings that they share: what was seen
/// beyond the readings' part, and that part with its correlation.
fn of_intervals(fit: &TwoFit, of_one: (Option<f64>, f64), of_readings: Covariance) -> Covariance {
    let read = squared(of_one.0.unwrap_or(0.0)) + squared(of_one.1);
    let rest = (fit.residual_variance() - read).max(0.0);
    fit.inverse.times(rest).plus(of_readings)
}
