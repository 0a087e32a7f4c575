//! The difference of two ratings.

use jiff::civil::Date;

use super::needed::{Needed, needed};
use super::shape::{Shape, shape};
use crate::language::Phrase;
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::s580::limits::RATING_DIFFERENCE_K;
use crate::procedure::s580::uncertainty::budget::{Origin, coverage_factor};
use crate::procedure::s580::uncertainty::days::SHOWN_P;
use crate::procedure::s580::uncertainty::{Budget, RatingUncertainty};
use crate::procedure::sources::Source;
use crate::stats::combine::{combined, effective_freedom};
use crate::stats::student::two_sided_p;
use crate::units::zoned;

/// Fewest days on which two cookers stand side by side that are paired.
const FEWEST_PAIRED_DAYS: usize = 3;
/// Days are paired only where the line takes up at most so much of what they do, as a share
/// left: their mean Td then lie close together.
const LEAST_LEFT: f64 = 0.9;
/// How far apart sites are one site, degrees: about a kilometre.
const ONE_SITE_DEG: f64 = 0.01;

/// How the scatter of a difference was evaluated.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Method {
    /// The campaigns' own scatter and days, one beside the other.
    Apart,
    /// Differences day by day: what a day does to both cancels.
    PairedByDay { days: usize },
}

/// What one source contributes to the uncertainty of a difference.
#[derive(Debug, Clone, PartialEq)]
pub struct Part {
    /// `None`: scatter and days.
    pub source: Option<Source>,
    /// Standard uncertainty that it gives the difference, W.
    pub of_difference_w: f64,
    /// What it would give if the two campaigns had nothing in common, W.
    pub apart_w: f64,
}

impl Part {
    /// What contributes, in words.
    pub fn name(&self) -> Phrase {
        match self.source {
            Some(source) => source.name().into(),
            None => message!("pair-budget-scatter").into(),
        }
    }
}

/// Two campaigns, the second held against the first.
#[derive(Debug, Clone, PartialEq)]
pub struct Difference {
    /// Places among the campaigns compared.
    pub first: usize,
    pub second: usize,
    /// Ps(50) of the second less that of the first, W.
    pub difference_w: f64,
    pub method: Method,
    /// Both were tested on several days, so that what a day does can be told.
    pub knows_days: bool,
    /// Of scatter and days, W.
    pub statistical_w: f64,
    /// Of instruments, W.
    pub common_w: f64,
    pub combined_w: f64,
    pub effective_freedom: f64,
    pub coverage_factor: f64,
    pub parts: Vec<Part>,
    /// Probability of so large a difference if there is none.
    pub p: f64,
    /// `None` where slopes cannot be told apart from scatter.
    pub shape: Option<Shape>,
    pub needed: Needed,
}

/// A difference as one of several pairs.
#[derive(Debug, Clone, PartialEq)]
pub struct Pair {
    pub difference: Difference,
    /// Probability of so large a difference if there is none, corrected by Holm for the
    /// number of pairs.
    pub p_corrected: f64,
}

impl Difference {
    /// Half-width of the 95 % interval, W.
    pub fn expanded_w(&self) -> f64 {
        self.coverage_factor * self.combined_w
    }

    /// The 95 % interval of the difference, W.
    pub fn interval_w(&self) -> (f64, f64) {
        let half_width_w = self.expanded_w();
        (
            self.difference_w - half_width_w,
            self.difference_w + half_width_w,
        )
    }

    /// Whether it would be real if this were the only pair.
    pub fn is_shown_alone(&self) -> bool {
        self.p < SHOWN_P
    }
}

impl Pair {
    /// Whether the difference is real, however many pairs were looked at. On a single day
    /// it could be the day's.
    pub fn is_shown(&self) -> bool {
        self.difference.knows_days && self.p_corrected < SHOWN_P
    }
}

/// Weighs the difference of two campaigns, one of so many pairs.
///
/// Errors of one identity are one error: with signs, u² = (u_second − u_first)² for those
/// that both share, and u_first² + u_second² for the others. Scatter and days add, unless
/// both cookers were tested on the same days and days matter: then the differences of the
/// days' mean residuals have what is left, with k − 1 degrees of freedom.
///
/// # Source
/// JCGM 100:2008, 5.2.2 and F.1.2.3; G.4.1 for degrees of freedom.
pub fn weigh(
    campaigns: &[Assessment],
    first: usize,
    second: usize,
    pairs: usize,
) -> Option<Difference> {
    let (one, two) = (&campaigns[first], &campaigns[second]);
    let (uncertainty_one, uncertainty_two) = (one.s580.uncertainty()?, two.s580.uncertainty()?);
    let (budget_one, budget_two) = (&uncertainty_one.budget, &uncertainty_two.budget);
    let difference_w = budget_two.power_w - budget_one.power_w;
    let paired = pair_by_day(one, two);
    let (method, statistical_w, finite) = match paired {
        Some((days, u_w)) => (
            Method::PairedByDay { days },
            u_w,
            vec![(u_w, (days - 1) as f64)],
        ),
        None => {
            let finite = [budget_one, budget_two]
                .map(|budget| (budget.statistical_w, budget.statistical_freedom));
            (
                Method::Apart,
                finite[0].0.hypot(finite[1].0),
                finite.to_vec(),
            )
        }
    };
    let mut parts = vec![Part {
        source: None,
        of_difference_w: statistical_w,
        apart_w: budget_one.statistical_w.hypot(budget_two.statistical_w),
    }];
    parts.extend(instrument_parts(budget_one, budget_two));
    let common_w = common_w(&effects(budget_one, budget_two));
    let combined_w = statistical_w.hypot(common_w);
    let effective = effective_freedom(combined_w, &finite);
    let p = if combined_w > 0.0 {
        two_sided_p(difference_w / combined_w, effective.clamp(1.0, 1e6))
    } else {
        f64::from(u8::from(difference_w == 0.0))
    };
    Some(Difference {
        first,
        second,
        difference_w,
        method,
        knows_days: [uncertainty_one, uncertainty_two]
            .iter()
            .all(|uncertainty| uncertainty.of_line.days.days.len() > 1),
        statistical_w,
        common_w,
        combined_w,
        effective_freedom: effective,
        coverage_factor: coverage_factor(effective),
        parts,
        p,
        shape: shape(uncertainty_one, uncertainty_two),
        needed: needed(
            &uncertainty_one.of_line,
            &uncertainty_two.of_line,
            common_w,
            pairs,
        ),
    })
}

/// An error of one campaign, with its effect on the difference, W.
struct Effect<'b> {
    source: Source,
    identity: &'b str,
    effect_w: f64,
}

/// Errors of both campaigns in their difference.
fn effects<'b>(one: &'b Budget, two: &'b Budget) -> Vec<Effect<'b>> {
    let of = |budget: &'b Budget, sign: f64| {
        budget
            .contributions
            .iter()
            .filter_map(move |part| match &part.origin {
                Origin::Common(error) => Some(Effect {
                    source: error.source,
                    identity: &error.identity,
                    effect_w: sign * part.effect_w,
                }),
                _ => None,
            })
    };
    of(one, -1.0).chain(of(two, 1.0)).collect()
}

fn common_w(effects: &[Effect<'_>]) -> f64 {
    let sizes: Vec<f64> = effects.iter().map(|effect| effect.effect_w).collect();
    let correlation =
        |i: usize, j: usize| f64::from(u8::from(effects[i].identity == effects[j].identity));
    combined(&sizes, correlation)
}

fn instrument_parts(one: &Budget, two: &Budget) -> Vec<Part> {
    let mut parts: Vec<Part> = Vec::new();
    let all = effects(one, two);
    for effect in &all {
        if parts.iter().any(|part| part.source == Some(effect.source)) {
            continue;
        }
        let (mut alike, mut apart_w) = (Vec::new(), 0.0_f64);
        for other in all.iter().filter(|other| other.source == effect.source) {
            apart_w = apart_w.hypot(other.effect_w);
            alike.push(Effect { ..*other });
        }
        parts.push(Part {
            source: Some(effect.source),
            of_difference_w: common_w(&alike),
            apart_w,
        });
    }
    parts
}

/// Standard uncertainty of scatter and days, W, from the differences day by day; `None`
/// unless both were tested on the same days at one site, and days matter to one of them.
///
/// s² is the variance of the differences r_2j − r_1j of the days' mean residuals, and
/// u² = s²/c·(B_1 + B_2)/2 with the sums B of the squared weights of days in either line,
/// and c what the slopes leave of what days do, see [`share_left`]. Where they take up much
/// of it, days are not paired. Not below what single readings give.
fn pair_by_day(one: &Assessment, two: &Assessment) -> Option<(usize, f64)> {
    let (uncertainty_one, uncertainty_two) = (one.s580.uncertainty()?, two.s580.uncertainty()?);
    let sites = (&one.tested.campaign.site, &two.tested.campaign.site);
    let is_one_site = (sites.0.latitude_deg - sites.1.latitude_deg).abs() < ONE_SITE_DEG
        && (sites.0.longitude_deg - sites.1.longitude_deg).abs() < ONE_SITE_DEG;
    let days_matter =
        uncertainty_one.of_line.days.is_honoured() || uncertainty_two.of_line.days.is_honoured();
    let dates = &one.s580.dates;
    let is_paired = is_one_site && days_matter && *dates == two.s580.dates;
    if !is_paired || dates.len() < FEWEST_PAIRED_DAYS {
        return None;
    }
    let left = (share_left(uncertainty_one) + share_left(uncertainty_two)) / 2.0;
    if left < LEAST_LEFT {
        return None;
    }
    let differences: Vec<f64> = dates
        .iter()
        .map(|&date| {
            mean_residual_w(two, uncertainty_two, date)
                - mean_residual_w(one, uncertainty_one, date)
        })
        .collect();
    let count = differences.len() as f64;
    let mean = differences.iter().sum::<f64>() / count;
    let squares: f64 = differences.iter().map(|d| (d - mean).powi(2)).sum();
    let weight = [uncertainty_one, uncertainty_two].map(|uncertainty| {
        let of_line = &uncertainty.of_line;
        of_line
            .days
            .weight_of_days(&of_line.line, RATING_DIFFERENCE_K)
    });
    let variance = squares / ((count - 1.0) * left) * (weight[0] + weight[1]) / 2.0;
    let floor_w = [uncertainty_one, uncertainty_two].map(|uncertainty| {
        let of_line = &uncertainty.of_line;
        of_line.reading.of_interval_w() * of_line.line.leverage(RATING_DIFFERENCE_K).sqrt()
    });
    let u_w = variance.sqrt().max(floor_w[0].hypot(floor_w[1]));
    Some((differences.len(), u_w))
}

/// What the line's slope leaves of the differences between days:
/// 1 − Σn_j(x̄_j − x̄)²/(Sxx·(k − 1)).
fn share_left(uncertainty: &RatingUncertainty) -> f64 {
    let (line, days) = (&uncertainty.of_line.line, &uncertainty.of_line.days.days);
    let apart = days
        .iter()
        .map(|day| day.points as f64 * (day.x_mean - line.x_mean()).powi(2));
    1.0 - apart.sum::<f64>() / (line.x_squares() * (days.len() - 1) as f64)
}

/// Mean of a day's residuals about the campaign's line, W.
fn mean_residual_w(campaign: &Assessment, uncertainty: &RatingUncertainty, date: Date) -> f64 {
    let zone = &campaign.tested.campaign.site.time_zone;
    let line = &uncertainty.of_line.line;
    let residuals: Vec<f64> = campaign
        .s580
        .used()
        .filter(|interval| zoned(interval.measured.span.from_us, zone).date() == date)
        .filter_map(|interval| interval.point())
        .map(|(difference_k, power_w)| power_w - line.predict(difference_k))
        .collect();
    residuals.iter().sum::<f64>() / residuals.len() as f64
}
