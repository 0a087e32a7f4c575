//! Whether two lines differ in slope, in level, or in both: for the data file. What a
//! difference comes from is not told by it, since losses are scaled with the sun in both.

use crate::procedure::s580::uncertainty::RatingUncertainty;
use crate::procedure::s580::uncertainty::days::SHOWN_P;
use crate::stats::combine::effective_freedom;
use crate::stats::groups::{
    FTest, Fit, Sums, compare_nested, one_line, overall, parallel_lines, slope_by_set,
};
use crate::stats::student::two_sided_p;
use simmerline_math::hypot;

/// What the data show of two lines.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shape {
    /// Slope of the second less that of the first, W/K.
    pub slope_difference_w_per_k: f64,
    /// Intercept of the second less that of the first, W; of parallel lines where the slopes
    /// do not differ.
    pub intercept_difference_w: f64,
    /// Same slope?
    pub slopes: FTest,
    /// Probability of intercepts so far apart if they are one; with one slope for both
    /// where the slopes do not differ, else with a slope for each.
    pub intercepts_p: f64,
    /// Days, and not intervals, are what is independent.
    pub by_days: bool,
}

/// Analysis of covariance of two lines.
///
/// Slopes: lines with a slope each against parallel ones. Intercepts: parallel lines
/// against one, or, where slopes differ, the difference at Td = 0 by Student's t. Where
/// days matter to either, every day has an intercept of its own, and slopes and intercepts
/// of campaigns are held against the spread of days. Instruments are not in it. `None`
/// where there is no scatter or no freedom to test with.
///
/// # Source
/// Analysis of covariance, as in any text on linear models.
pub fn shape(one: &RatingUncertainty, two: &RatingUncertainty) -> Option<Shape> {
    let (line_one, line_two) = (&one.of_line, &two.of_line);
    let by_days = !one.is_of_one_day() && !two.is_of_one_day();
    let (days_one, days_two) = (&line_one.days.days, &line_two.days.days);
    let whole = [overall(days_one), overall(days_two)];
    let slopes = if by_days {
        slopes_by_days(days_one, days_two)?
    } else {
        let each = slope_by_set(&[&whole[..1], &whole[1..]])?;
        compare_nested(parallel_lines(&whole)?, each)?
    };
    let intercepts_p = if slopes.p < SHOWN_P {
        at_zero_p(one, two)
    } else if by_days {
        let all: Vec<Sums> = [days_one.as_slice(), days_two].concat();
        let campaigns = parallel_lines(&whole)?;
        let (one_line, by_day) = (one_line(&whole)?, parallel_lines(&all)?);
        let of_days = all.len().checked_sub(2).filter(|days| *days > 0)?;
        let between = Fit {
            residual_squares: (campaigns.residual_squares - by_day.residual_squares).max(0.0),
            freedom: of_days,
            is_exact: false,
        };
        FTest::new(
            one_line.residual_squares - campaigns.residual_squares,
            1,
            between,
        )?
        .p
    } else {
        compare_nested(one_line(&whole)?, parallel_lines(&whole)?)?.p
    };
    let groups = if by_days {
        [days_one.as_slice(), days_two]
    } else {
        [&whole[..1], &whole[1..]]
    };
    let [slope_one, slope_two] = groups.map(slope_within);
    let intercept_difference_w = if slopes.p < SHOWN_P {
        line_two.line.intercept - line_one.line.intercept
    } else {
        // Of the parallel lines that were tested.
        let slope = slope_within(&groups.concat());
        let level = |all: &Sums| all.y_mean - slope * all.x_mean;
        level(&whole[1]) - level(&whole[0])
    };
    Some(Shape {
        slope_difference_w_per_k: slope_two - slope_one,
        intercept_difference_w,
        slopes,
        intercepts_p,
        by_days,
    })
}

/// Slope common to lines with an intercept for each group.
fn slope_within(groups: &[Sums]) -> f64 {
    let (xy, xx) = groups
        .iter()
        .fold((0.0, 0.0), |(xy, xx), group| (xy + group.xy, xx + group.xx));
    xy / xx
}

/// Whether the campaigns' slopes differ, every day with an intercept of its own: against
/// the scatter of intervals, and against the spread of the days' own slopes, with one
/// degree of freedom less than days for each campaign. The more cautious of both counts.
fn slopes_by_days(one: &[Sums], two: &[Sums]) -> Option<FTest> {
    let all: Vec<Sums> = [one, two].concat();
    let campaigns = slope_by_set(&[one, two])?;
    let against_intervals = compare_nested(parallel_lines(&all)?, campaigns)?;
    let each: Vec<&[Sums]> = all.chunks(1).collect();
    let explained = against_intervals.statistic * campaigns.mean_square();
    let of_days = slope_by_set(&each)
        .zip(all.len().checked_sub(2).filter(|days| *days > 0))
        .and_then(|(days, freedom)| {
            let spread = Fit {
                residual_squares: (campaigns.residual_squares - days.residual_squares).max(0.0),
                freedom,
                is_exact: false,
            };
            FTest::new(explained, 1, spread)
        });
    Some(match of_days {
        Some(test) if test.p > against_intervals.p => test,
        _ => against_intervals,
    })
}

/// Probability of intercepts so far apart, from scatter and days of either line at Td = 0.
fn at_zero_p(one: &RatingUncertainty, two: &RatingUncertainty) -> f64 {
    let budgets = [one, two].map(|uncertainty| uncertainty.of_line.at(0.0));
    let u_w = hypot(budgets[0].statistical, budgets[1].statistical);
    let finite = budgets
        .each_ref()
        .map(|budget| (budget.statistical, budget.statistical_freedom));
    let difference_w = budgets[1].value - budgets[0].value;
    two_sided_p(difference_w / u_w, effective_freedom(u_w, &finite).max(1.0))
}
