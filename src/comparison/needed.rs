//! How many days would show a difference.

use super::weigh::{Spread, Weighed};
use crate::procedure::uncertainty::budget::MOST_FREEDOM;
use crate::stats::line::COVERAGE;
use crate::stats::student::quantile_t;
use simmerline_math::{hypot, log10, pow};

/// The difference that is sought, as a share of the larger power.
const SOUGHT_SHARE: f64 = 0.1;
/// Chance with which a true difference of that size is to be shown.
pub const POWER: f64 = 0.8;
/// Most days that are asked for.
const MOST_DAYS: usize = 100;

/// What it takes to show a difference of `sought_w`, if the spread stays as it was seen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Needed {
    /// W.
    pub sought_w: f64,
    /// More days of each campaign; `None`: days cannot be told, or no number of them will do.
    pub days_each: Option<usize>,
}

/// What it takes to show a difference of a tenth of the larger power, at 95 % for all
/// `pairs` that can be compared together (Bonferroni) and with a chance of 80 %: what the interval
/// for 1 − 0.025/pairs and that for 0.80 reach, together, is at most the difference, with scatter
/// and days after so many more days like those seen, and the instruments that do not cancel.
pub fn needed(difference_w: &Weighed, pairs: usize) -> Needed {
    let [one_w, two_w] = difference_w.figures.map(f64::abs);
    let sought_w = round_to_two_digits(SOUGHT_SHARE * one_w.max(two_w));
    let confidence = 1.0 - (1.0 - COVERAGE) / 2.0 / pairs.max(1) as f64;
    let shows = |more: usize| {
        let spreads = difference_w.spreads.iter();
        let finite: Vec<(f64, f64)> = spreads
            .map(|spread| spread.after(more))
            .collect::<Option<_>>()?;
        // As the difference itself is weighed: each part by its own t.
        let reach_w = |probability: f64| {
            let parts = finite.iter();
            let parts = parts.map(|(u, freedom)| quantile_t(probability, *freedom) * u);
            let common = quantile_t(probability, MOST_FREEDOM) * difference_w.common;
            parts.fold(common, |sum: f64, part| hypot(sum, part))
        };
        Some(reach_w(confidence) + reach_w(POWER) <= sought_w)
    };
    Needed {
        sought_w,
        days_each: fewest(&shows),
    }
}

/// The fewest days that show it, as more of them always show more; `None` where no number does.
fn fewest(shows: &impl Fn(usize) -> Option<bool>) -> Option<usize> {
    shows(MOST_DAYS)?.then_some(())?;
    let (mut low, mut high) = (0, MOST_DAYS);
    while low < high {
        let middle = (low + high) / 2;
        match shows(middle)? {
            true => high = middle,
            false => low = middle + 1,
        }
    }
    Some(low)
}

impl Spread {
    /// Standard uncertainty and degrees of freedom after so many more days; `None` where days
    /// cannot be told.
    fn after(&self, more_days: usize) -> Option<(f64, f64)> {
        let (days, more) = (self.days? as f64, more_days as f64);
        let standard = self.standard * (days / (days + more)).sqrt();
        Some((standard, self.freedom + more))
    }
}

fn round_to_two_digits(value: f64) -> f64 {
    if value <= 0.0 {
        return value;
    }
    let unit = pow(10_f64, log10(value).floor() - 1.0).min(1.0);
    (value / unit).round() * unit
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::comparison::weigh::Method;

    /// Two campaigns of so many days each, whose days give each figure 3 W.
    fn weighed(days: Option<usize>, common: f64) -> Weighed {
        let spread = Spread {
            standard: 3.0,
            freedom: days.map_or(20.0, |days| days as f64 - 1.0),
            days,
        };
        Weighed {
            figures: [100.0, 90.0],
            value: -10.0,
            method: Method::Apart,
            spreads: vec![spread; 2],
            statistical: 18.0_f64.sqrt(),
            common,
            combined: hypot(18.0_f64.sqrt(), common),
            effective_freedom: 6.0,
            coverage_factor: 2.45,
            p: 0.06,
            parts: Vec::new(),
        }
    }

    #[test]
    fn so_many_days_more_as_a_table_of_t_gives() {
        // By hand, 4 days each and 10 W sought: with n more u² = 18·4/(4 + n), and 3 + n degrees
        // of freedom of each. n = 3: u 3.207, t(6) 2.447 + 0.906 → 10.75 W. n = 4: u 3.000,
        // t(7) 2.365 + 0.896 → 9.78 W. Values of t: any table.
        let found = needed(&weighed(Some(4), 0.0), 1);
        assert_eq!(found.sought_w, 10.0);
        assert_eq!(found.days_each, Some(4));
        // Two pairs ask for more.
        assert!(needed(&weighed(Some(4), 0.0), 2).days_each > Some(4));
    }

    #[test]
    fn no_days_make_up_for_instruments_or_for_days_that_nobody_saw() {
        // 4 W of instruments alone take (1.96 + 0.84)·4 W = 11.2 W.
        assert_eq!(needed(&weighed(Some(4), 4.0), 1).days_each, None);
        assert_eq!(needed(&weighed(None, 0.0), 1).days_each, None);
    }
}
