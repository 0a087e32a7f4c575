//! Two parameters found together: y = b1·x1 + b2·x2, without intercept.
//!
//! A straight line is one of these, with x1 = 1.

use simmerline_math::squared;

/// Determinant of the normal equations, relative to its terms, below which the two
/// parameters cannot be told apart.
const NO_SPREAD: f64 = 1e-12;

/// One observation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    pub x: [f64; 2],
    pub y: f64,
}

/// Variances of two parameters and their covariance, in the products of their units.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Covariance {
    pub first: f64,
    pub both: f64,
    pub second: f64,
}

impl Covariance {
    /// Variance of w1·b1 + w2·b2; never negative.
    ///
    /// # Source
    /// JCGM 100:2008, equation 13.
    pub fn of(&self, weights: [f64; 2]) -> f64 {
        let [one, two] = weights;
        let variance =
            one * one * self.first + 2.0 * one * two * self.both + two * two * self.second;
        variance.max(0.0)
    }

    /// Adds the outer product of an error that moves both parameters.
    pub fn add(&mut self, [one, two]: [f64; 2], times: f64) {
        self.first += times * one * one;
        self.both += times * one * two;
        self.second += times * two * two;
    }

    /// The sum of two, of errors that have nothing to do with each other.
    pub fn plus(self, other: Covariance) -> Covariance {
        Covariance {
            first: self.first + other.first,
            both: self.both + other.both,
            second: self.second + other.second,
        }
    }

    /// So many times as much.
    pub fn times(self, factor: f64) -> Covariance {
        Covariance {
            first: factor * self.first,
            both: factor * self.both,
            second: factor * self.second,
        }
    }

    /// The matrix times a vector.
    #[inline]
    pub fn apply(&self, [one, two]: [f64; 2]) -> [f64; 2] {
        [
            self.first * one + self.both * two,
            self.both * one + self.second * two,
        ]
    }

    /// Lower triangle L with L·Lᵀ this matrix: first, below it, second.
    pub fn root(&self) -> [f64; 3] {
        let first = self.first.max(0.0).sqrt();
        let below = if first > 0.0 { self.both / first } else { 0.0 };
        [first, below, (self.second - below * below).max(0.0).sqrt()]
    }
}

/// Sums of squares and products of some rows.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Normal {
    pub xx: Covariance,
    pub xy: [f64; 2],
}

impl Normal {
    /// The sums of some rows.
    pub fn of<'r>(rows: impl IntoIterator<Item = &'r Row>) -> Normal {
        let mut sums = Normal::default();
        for row in rows {
            sums.xx.add(row.x, 1.0);
            sums.xy = [sums.xy[0] + row.x[0] * row.y, sums.xy[1] + row.x[1] * row.y];
        }
        sums
    }

    /// The sums of these and some more rows.
    pub fn with(self, more: Normal) -> Normal {
        Normal {
            xx: self.xx.plus(more.xx),
            xy: [self.xy[0] + more.xy[0], self.xy[1] + more.xy[1]],
        }
    }

    /// What is left of these sums without those of some of the rows.
    pub fn without(self, some: Normal) -> Normal {
        Normal {
            xx: self.xx.plus(some.xx.times(-1.0)),
            xy: [self.xy[0] - some.xy[0], self.xy[1] - some.xy[1]],
        }
    }

    /// (XᵀX)⁻¹; `None` where the parameters cannot be told apart.
    #[inline]
    pub fn inverse(&self) -> Option<Covariance> {
        let Covariance {
            first,
            both,
            second,
        } = self.xx;
        let determinant = first * second - both * both;
        let is_enough = determinant > NO_SPREAD * first * second && determinant.is_finite();
        is_enough.then(|| Covariance {
            first: second / determinant,
            both: -both / determinant,
            second: first / determinant,
        })
    }

    /// The parameters; `None` where they cannot be told apart.
    #[inline]
    pub fn solve(&self) -> Option<[f64; 2]> {
        Some(self.inverse()?.apply(self.xy))
    }
}

/// A fit by ordinary least squares.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TwoFit {
    pub parameters: [f64; 2],
    /// (XᵀX)⁻¹.
    pub inverse: Covariance,
    /// Sum of the squares of the residuals.
    pub residual_squares: f64,
    pub rows: usize,
}

impl TwoFit {
    /// What a row's y does to both parameters, per unit of y.
    pub fn weights(&self, row: &Row) -> [f64; 2] {
        self.inverse.apply(row.x)
    }

    /// Variance of one residual, with n − 2 degrees of freedom.
    pub fn residual_variance(&self) -> f64 {
        self.residual_squares / (self.rows as f64 - 2.0)
    }
}

/// Fits two parameters to at least three rows of equal weight; `None` with fewer, and where
/// the parameters cannot be told apart.
///
/// # Source
/// Ordinary least squares, NIST/SEMATECH e-Handbook, 4.1.4.1.
pub fn fit_two(rows: &[Row]) -> Option<TwoFit> {
    let sums = Normal::of(rows);
    let (inverse, parameters) = (sums.inverse()?, sums.solve()?);
    let residual = |row: &Row| row.y - parameters[0] * row.x[0] - parameters[1] * row.x[1];
    (rows.len() > 2).then(|| TwoFit {
        parameters,
        inverse,
        residual_squares: rows.iter().map(|row| squared(residual(row))).sum(),
        rows: rows.len(),
    })
}

/// Both parameters without each group of rows in turn. `group` gives each row's group, counted
/// from 0 without gaps. `None` with fewer than two groups, and where one of the fits cannot be
/// made.
pub fn leave_out_groups(rows: &[Row], group: &[usize]) -> Option<Vec<[f64; 2]>> {
    let count = group.iter().max().map_or(0, |last| last + 1);
    if count < 2 {
        return None;
    }
    let mut sums = vec![Normal::default(); count];
    for (row, &group) in rows.iter().zip(group) {
        sums[group] = sums[group].with(Normal::of([row]));
    }
    let all = Normal::of(rows);
    sums.iter().map(|of| all.without(*of).solve()).collect()
}

/// Variance of a figure by a jackknife, from what it is without each of k groups:
/// (k − 1)/k Σ(f₍ⱼ₎ − f̄)², with k − 1 degrees of freedom.
///
/// Whatever the rows of one group have in common is in it: a level, a slope, errors that
/// follow each other.
///
/// # Source
/// The delete-a-group jackknife: Kott, Journal of Official Statistics 17 (2001) 521–526,
/// from memory.
pub fn jackknife_variance(without: &[f64]) -> f64 {
    let groups = without.len() as f64;
    let mean = without.iter().sum::<f64>() / groups;
    let squares: f64 = without.iter().map(|one| squared(one - mean)).sum();
    (groups - 1.0) / groups * squares
}

/// Covariance of two parameters by the same jackknife.
pub fn jackknife(without: &[[f64; 2]]) -> Covariance {
    let variance = |of: fn(&[f64; 2]) -> f64| {
        let figures: Vec<f64> = without.iter().map(of).collect();
        jackknife_variance(&figures)
    };
    let (first, second) = (variance(|fit| fit[0]), variance(|fit| fit[1]));
    Covariance {
        first,
        both: (variance(|fit| fit[0] + fit[1]) - first - second) / 2.0,
        second,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_root_of_a_covariance_is_its_root() {
        let covariance = Covariance {
            first: 4.0,
            both: 2.0,
            second: 5.0,
        };
        assert_eq!(covariance.root(), [2.0, 1.0, 2.0]);
        assert_eq!(covariance.of([1.0, -1.0]), 5.0);
    }

    #[test]
    fn rows_on_one_ray_tell_no_parameters_apart() {
        let rows: Vec<Row> = [1.0, 2.0, 3.0, 4.0]
            .map(|x| Row {
                x: [x, 2.0 * x],
                y: x,
            })
            .to_vec();
        assert_eq!(fit_two(&rows), None);
        assert_eq!(leave_out_groups(&rows, &[0, 0, 1, 1]), None);
    }

    #[test]
    fn one_group_leaves_nothing_to_leave_out() {
        let rows = [1.0, 2.0, 4.0].map(|x| Row { x: [1.0, x], y: x });
        assert_eq!(leave_out_groups(&rows, &[0, 0, 0]), None);
    }
}
