//! Straight lines through grouped points, and tests of one model against another.
//!
//! Everything follows from sums about the groups' own means, so it takes one pass.

use statrs::distribution::{ContinuousCDF, FisherSnedecor};

/// Residual squares, relative to the squares of y, that are rounding and no scatter.
const ROUNDING: f64 = 1e-24;

/// Sums of squares and products of the points of one group about their means.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Sums {
    pub points: usize,
    pub x_mean: f64,
    pub y_mean: f64,
    /// Σ(x − x̄)².
    pub xx: f64,
    /// Σ(x − x̄)(y − ȳ).
    pub xy: f64,
    /// Σ(y − ȳ)².
    pub yy: f64,
}

impl Sums {
    /// The sums of two groups taken as one.
    pub fn pooled(self, other: Sums) -> Sums {
        let points = self.points + other.points;
        if points == 0 {
            return self;
        }
        let share = other.points as f64 / points as f64;
        let (dx, dy) = (other.x_mean - self.x_mean, other.y_mean - self.y_mean);
        let between = self.points as f64 * share;
        Sums {
            points,
            x_mean: self.x_mean + share * dx,
            y_mean: self.y_mean + share * dy,
            xx: self.xx + other.xx + between * dx * dx,
            xy: self.xy + other.xy + between * dx * dy,
            yy: self.yy + other.yy + between * dy * dy,
        }
    }

    /// The sums within both groups, as if their means were one.
    fn within(self, other: Sums) -> Sums {
        Sums {
            points: self.points + other.points,
            xx: self.xx + other.xx,
            xy: self.xy + other.xy,
            yy: self.yy + other.yy,
            ..self
        }
    }

    /// Squares about the line through the means: Syy − Sxy²/Sxx.
    fn residual_squares(self) -> f64 {
        let explained = if self.xx > 0.0 {
            self.xy * self.xy / self.xx
        } else {
            0.0
        };
        (self.yy - explained).max(0.0)
    }
}

/// Sums of each group; `group` gives each point's group, counted from 0, without gaps.
pub fn sums_by_group(x: &[f64], y: &[f64], group: &[usize]) -> Vec<Sums> {
    let groups = group.iter().max().map_or(0, |&last| last + 1);
    let mut sums = vec![Sums::default(); groups];
    for ((&x, &y), &group) in x.iter().zip(y).zip(group) {
        let point = Sums {
            points: 1,
            x_mean: x,
            y_mean: y,
            ..Sums::default()
        };
        sums[group] = sums[group].pooled(point);
    }
    sums
}

/// How well a model fits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fit {
    /// Sum of the squares of the residuals.
    pub residual_squares: f64,
    /// Points less parameters.
    pub freedom: usize,
    /// The model leaves nothing but rounding.
    pub is_exact: bool,
}

impl Fit {
    fn new(residual_squares: f64, points: usize, parameters: usize, total: f64) -> Option<Fit> {
        (points > parameters).then(|| Fit {
            residual_squares,
            freedom: points - parameters,
            is_exact: residual_squares <= ROUNDING * total,
        })
    }

    /// Mean square of the residuals.
    pub fn mean_square(&self) -> f64 {
        self.residual_squares / self.freedom as f64
    }
}

/// Sums about the mean of all points.
pub fn overall(groups: &[Sums]) -> Sums {
    groups.iter().copied().fold(Sums::default(), Sums::pooled)
}

/// One line for all: y = a + b x. `None` without a degree of freedom left.
pub fn one_line(groups: &[Sums]) -> Option<Fit> {
    let all = overall(groups);
    Fit::new(all.residual_squares(), all.points, 2, all.yy)
}

/// A line a group, all of one slope: y = a_g + b x. `None` without a degree of freedom left.
pub fn parallel_lines(groups: &[Sums]) -> Option<Fit> {
    let within = groups.iter().copied().fold(Sums::default(), Sums::within);
    Fit::new(
        within.residual_squares(),
        within.points,
        groups.len() + 1,
        overall(groups).yy,
    )
}

/// Lines with an intercept for each group and a slope for each set of groups:
/// y = a_g + b_s x. `None` without a degree of freedom left.
pub fn slope_by_set(sets: &[&[Sums]]) -> Option<Fit> {
    let within = |set: &&[Sums]| set.iter().copied().fold(Sums::default(), Sums::within);
    let squares = sets.iter().map(|set| within(set).residual_squares()).sum();
    let groups: Vec<Sums> = sets.concat();
    let all = overall(&groups);
    Fit::new(squares, all.points, groups.len() + sets.len(), all.yy)
}

/// An F test.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FTest {
    pub statistic: f64,
    pub numerator_freedom: usize,
    pub denominator_freedom: usize,
    /// Probability of so large a statistic if the narrower model holds.
    pub p: f64,
}

impl FTest {
    /// The test of a mean square against that of the scatter.
    pub fn new(square: f64, numerator_freedom: usize, scatter: Fit) -> Option<FTest> {
        if numerator_freedom == 0 || scatter.is_exact || scatter.residual_squares <= 0.0 {
            return None;
        }
        let statistic = square / scatter.mean_square();
        let (one, two) = (numerator_freedom as f64, scatter.freedom as f64);
        let distribution = FisherSnedecor::new(one, two).ok()?;
        Some(FTest {
            statistic,
            numerator_freedom,
            denominator_freedom: scatter.freedom,
            p: distribution.sf(statistic),
        })
    }
}

/// Whether a wider model, of which the narrower is a special case, fits better than
/// chance allows: F = ((RSS0 − RSS1)/(ν0 − ν1))/(RSS1/ν1). `None` if the wider one leaves
/// no residuals or no freedom.
///
/// # Source
/// NIST/SEMATECH e-Handbook, 4.4.4.6, and any text on analysis of covariance.
pub fn compare_nested(narrower: Fit, wider: Fit) -> Option<FTest> {
    let freedom = narrower.freedom.checked_sub(wider.freedom)?;
    let explained = (narrower.residual_squares - wider.residual_squares).max(0.0);
    FTest::new(explained / freedom.max(1) as f64, freedom, wider)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn parallel_groups_leave_no_residuals_but_one_line_does() {
        let (x, y) = (
            [0.0, 1.0, 2.0, 0.0, 1.0, 2.0],
            [1.0, 2.0, 3.0, 5.0, 6.0, 7.0],
        );
        let groups = sums_by_group(&x, &y, &[0, 0, 0, 1, 1, 1]);
        let parallel = parallel_lines(&groups).unwrap();
        assert!(parallel.is_exact && parallel.freedom == 3);
        let one = one_line(&groups).unwrap();
        assert!((one.residual_squares - 24.0).abs() < 1e-12);
        assert_eq!(compare_nested(one, parallel), None);
    }

    #[test]
    fn as_many_parameters_as_points_give_no_fit() {
        let groups = sums_by_group(&[0.0, 1.0, 2.0], &[1.0, 2.0, 4.0], &[0, 1, 1]);
        assert_eq!(parallel_lines(&groups), None);
    }
}
