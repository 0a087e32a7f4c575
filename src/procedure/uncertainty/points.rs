//! What the readings of intervals give to a fit.

use jiff::civil::Date;
use jiff::tz::TimeZone;
use simmerline_math::squared;

use super::shift::Shift;
use crate::procedure::s580::intervals::Interval;
use crate::stats::two::{Covariance, Normal, Row, TwoFit};
use crate::units::zoned;

/// One interval as a fit takes it: y = b1·x1 + b2·x2, with the temperature difference in x2.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// What the first parameter stands before.
    pub x1: f64,
    /// Mean water and ambient temperature, °C.
    pub water_c: f64,
    pub ambient_c: f64,
    /// What the heat of the water gives y.
    pub of_water: f64,
    /// What the heat of the vessels adds to y; none where they do not count.
    pub of_vessels: f64,
    /// What one kelvin more at the end of the interval, and one second, gives y.
    pub per_kelvin: f64,
    pub per_second: f64,
    /// Local date of its start, counted from 0 without gaps.
    pub day: usize,
    /// It begins with the reading that ends the one before it.
    pub follows: bool,
}

/// How x1, x2 and y follow from the terms of a point whose readings are off.
pub type Law = fn(&Shift) -> Factors;

/// What stands before the terms of a point.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Factors {
    /// x1 from x1.
    pub x1: f64,
    /// x2 from 1, water and ambient.
    pub x2: [f64; 3],
    /// y from both parts of it.
    pub y: [f64; 2],
}

/// Number of terms that a row is put together from.
const TERMS: usize = 6;

impl Point {
    fn terms(&self) -> [f64; TERMS] {
        [
            self.x1,
            1.0,
            self.water_c,
            self.ambient_c,
            self.of_water,
            self.of_vessels,
        ]
    }

    /// Td, K.
    pub fn difference_k(&self) -> f64 {
        self.water_c - self.ambient_c
    }

    /// The point as an observation.
    pub fn row(&self, law: Law) -> Row {
        let [x1, one, water, ambient, of_water, of_vessels] = self.terms();
        let factors = law(&Shift::NONE);
        let x2 = combined([one, water, ambient], factors.x2);
        let [of_y, of_rest] = factors.y;
        Row {
            x: [factors.x1 * x1, x2],
            y: of_y * of_water + of_rest * of_vessels,
        }
    }
}

/// Sums of the products of all terms over all points: whatever the readings are off by, the
/// fit follows from them.
#[derive(Debug, Clone, PartialEq)]
pub struct Moments([[f64; TERMS]; TERMS]);

impl Moments {
    /// The sums of some points.
    pub fn of(points: &[Point]) -> Moments {
        let mut sums = [[0.0; TERMS]; TERMS];
        for point in points {
            let terms = point.terms();
            for (row, one) in sums.iter_mut().zip(terms) {
                for (sum, two) in row.iter_mut().zip(terms) {
                    *sum += one * two;
                }
            }
        }
        Moments(sums)
    }

    /// Both parameters, with readings that are off; `None` where they cannot be told apart.
    pub fn fit(&self, law: Law, shift: &Shift) -> Option<[f64; 2]> {
        let Factors { x1, x2, y } = law(shift);
        // The sums times x1, and times x2, of each term.
        let (mut of_x1, mut of_x2) = ([0.0; TERMS], [0.0; TERMS]);
        for (term, row) in self.0.iter().enumerate() {
            of_x1[term] = row[0] * x1;
            of_x2[term] = combined([row[1], row[2], row[3]], x2);
        }
        let per_x2 = |of: &[f64; TERMS]| combined([of[1], of[2], of[3]], x2);
        let per_y = |of: &[f64; TERMS]| of[4] * y[0] + of[5] * y[1];
        Normal {
            xx: Covariance {
                first: of_x1[0] * x1,
                both: per_x2(&of_x1),
                second: per_x2(&of_x2),
            },
            xy: [per_y(&of_x1), per_y(&of_x2)],
        }
        .solve()
    }
}

/// The sum of three terms, each times its factor.
#[inline]
fn combined(terms: [f64; 3], factors: [f64; 3]) -> f64 {
    terms[0] * factors[0] + terms[1] * factors[1] + terms[2] * factors[2]
}

/// How surely single readings are made.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct ReadingSpread {
    /// Standard deviation of one reading of the water, K; `None` where it is not known.
    pub water_k: Option<f64>,
    /// Standard deviation of its moment, s.
    pub moment_s: f64,
}

impl ReadingSpread {
    /// What it gives one interval, both of whose ends are read: root mean square over the
    /// points, in the unit of y, of the temperature (`None` where that is not known) and of
    /// the moment.
    pub fn of_interval(&self, points: &[Point]) -> (Option<f64>, f64) {
        let root = |of: fn(&Point) -> f64| {
            let squares: f64 = points.iter().map(|point| squared(of(point))).sum();
            (2.0 * squares / points.len().max(1) as f64).sqrt()
        };
        let water = self.water_k.map(|water_k| water_k * root(|p| p.per_kelvin));
        (water, self.moment_s * root(|p| p.per_second))
    }

    /// What it gives both parameters of a fit. The reading between two intervals ends one and
    /// begins the other, so that its error enters them with opposite signs and largely
    /// cancels.
    ///
    /// # Source
    /// JCGM 100:2008, equation 16 with the sensitivities of each reading.
    pub fn of_fit(&self, fit: &TwoFit, points: &[Point], rows: &[Row]) -> Covariance {
        let ends = |per: fn(&Point) -> f64, variance: f64| {
            let mut sum = Covariance::default();
            let mut before: Option<[f64; 2]> = None;
            for (point, row) in points.iter().zip(rows) {
                let of_row = fit.weights(row).map(|weight| weight * per(point));
                let begun = match before.filter(|_| point.follows) {
                    Some(ended) => [ended[0] - of_row[0], ended[1] - of_row[1]],
                    None => {
                        sum.add(before.unwrap_or_default(), variance);
                        of_row
                    }
                };
                sum.add(begun, variance);
                before = Some(of_row);
            }
            sum.add(before.unwrap_or_default(), variance);
            sum
        };
        let of_water = ends(|p| p.per_kelvin, squared(self.water_k.unwrap_or(0.0)));
        of_water.plus(ends(|p| p.per_second, squared(self.moment_s)))
    }
}

/// Where intervals lie among days and neighbours.
pub struct Places {
    /// Local dates, in order.
    pub dates: Vec<Date>,
    /// Of each interval, its date's place, and whether it begins where the one before it ends.
    pub of: Vec<(usize, bool)>,
}

/// The places of some intervals in their order, by the local dates of their starts.
pub fn places<'i>(intervals: &[&'i Interval], zone: &TimeZone) -> Places {
    let date_of = |interval: &Interval| zoned(interval.measured.span.from_us, zone).date();
    let mut dates: Vec<Date> = intervals.iter().map(|interval| date_of(interval)).collect();
    dates.sort_unstable();
    dates.dedup();
    let mut before: Option<&'i Interval> = None;
    let mut place = |interval: &&'i Interval| {
        let day = dates.partition_point(|date| *date < date_of(interval));
        let follows = before.is_some_and(|before| {
            before.run == interval.run
                && before.measured.span.to_us == interval.measured.span.from_us
        });
        before = Some(*interval);
        (day, follows)
    };
    let of = intervals.iter().map(&mut place).collect();
    Places { dates, of }
}
