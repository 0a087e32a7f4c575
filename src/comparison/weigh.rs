//! One figure of two campaigns, the second held against the first.

use std::borrow::Cow;

use jiff::civil::Date;

use super::places::is_one_site;
use crate::procedure::Assessment;
use crate::procedure::sources::Source;
use crate::procedure::uncertainty::budget::Origin;
use crate::procedure::uncertainty::{Budget, Fitted, coverage_factor};
use crate::stats::combine::{combined, effective_freedom};
use crate::stats::student::two_sided_p;
use crate::stats::two::jackknife_variance;

/// Fewest days on which two cookers stand side by side that are paired.
const FEWEST_PAIRED_DAYS: usize = 3;
/// Most degrees of freedom that are told apart.
const MOST_FREEDOM: f64 = 1e6;

/// How the scatter of a difference was evaluated.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Method {
    /// The campaigns' own scatter and days, one beside the other.
    Apart,
    /// Each day left out of both at once: what a day does to both cancels.
    PairedByDay { days: usize },
}

/// A figure of the second campaign less that of the first, in the figure's unit.
#[derive(Debug, Clone, PartialEq)]
pub struct Weighed {
    pub value: f64,
    pub method: Method,
    /// Of scatter and days.
    pub statistical: f64,
    /// Of instruments.
    pub common: f64,
    pub combined: f64,
    pub effective_freedom: f64,
    pub coverage_factor: f64,
    /// Probability of so large a difference if there is none.
    pub p: f64,
}

impl Weighed {
    /// Half-width of the 95 % interval.
    pub fn expanded(&self) -> f64 {
        self.coverage_factor * self.combined
    }

    /// The 95 % interval of the difference.
    pub fn interval(&self) -> (f64, f64) {
        let half_width = self.expanded();
        (self.value - half_width, self.value + half_width)
    }
}

/// One campaign's part in a difference.
pub struct Side<'a> {
    pub assessment: &'a Assessment,
    pub fitted: &'a Fitted,
    /// Days of the fit, in order.
    pub dates: &'a [Date],
    /// Of the figure.
    pub budget: Budget,
}

impl<'a> Side<'a> {
    /// The rating's side, read at `weights`; `None` without a rating.
    pub fn of_rating(assessment: &'a Assessment) -> Option<Side<'a>> {
        let uncertainty = assessment.s580.uncertainty()?;
        Some(Side {
            assessment,
            fitted: &uncertainty.of_line.fitted,
            dates: &assessment.s580.dates,
            budget: uncertainty.budget.clone(),
        })
    }

    /// The heat balance's side, read at `weights`; `None` without one.
    pub fn of_balance(assessment: &'a Assessment, weights: [f64; 2]) -> Option<Side<'a>> {
        let balance = assessment.heat_balance.as_ref()?;
        Some(Side {
            assessment,
            fitted: &balance.fitted,
            dates: &balance.dates,
            budget: balance.fitted.budget(weights),
        })
    }
}

/// Weighs the difference of one figure, read at `weights` in both.
///
/// Errors of one identity are one error: with signs, u² = (u_second − u_first)² for those
/// that both share, and u_first² + u_second² for the others. Scatter and days add, unless
/// both cookers were tested on the same days at one site: then each day is left out of both
/// at once, with k − 1 degrees of freedom for k days.
///
/// # Source
/// JCGM 100:2008, 5.2.2 and F.1.2.3; G.4.1 for degrees of freedom.
pub fn weigh_figure(one: &Side<'_>, two: &Side<'_>, weights: [f64; 2]) -> Weighed {
    let (method, statistical, finite) = match pair_by_day(one, two, weights) {
        Some((days, u)) => (
            Method::PairedByDay { days },
            u,
            vec![(u, days as f64 - 1.0)],
        ),
        None => {
            let finite = [one, two].map(|side| {
                let budget = &side.budget;
                (budget.statistical, budget.statistical_freedom)
            });
            (
                Method::Apart,
                finite[0].0.hypot(finite[1].0),
                finite.to_vec(),
            )
        }
    };
    let value = two.budget.value - one.budget.value;
    let common = common(&effects(one, two));
    let combined = statistical.hypot(common);
    let effective = effective_freedom(combined, &finite);
    let p = if combined > 0.0 {
        two_sided_p(value / combined, effective.clamp(1.0, MOST_FREEDOM))
    } else {
        f64::from(u8::from(value == 0.0))
    };
    Weighed {
        value,
        method,
        statistical,
        common,
        combined,
        effective_freedom: effective,
        coverage_factor: coverage_factor(effective),
        p,
    }
}

/// Number of days and standard uncertainty of scatter and days from leaving out each day of
/// both at once; `None` unless both were tested on the same days at one site. Not below what
/// single readings give.
fn pair_by_day(one: &Side<'_>, two: &Side<'_>, weights: [f64; 2]) -> Option<(usize, f64)> {
    let sites = [one, two].map(|side| &side.assessment.tested.campaign.site);
    let is_paired = is_one_site(sites[0], sites[1]) && one.dates == two.dates;
    if !is_paired || one.dates.len() < FEWEST_PAIRED_DAYS {
        return None;
    }
    let without = (one.fitted.without_a_day.as_ref()?).iter();
    let without = without.zip(two.fitted.without_a_day.as_ref()?);
    let read = |fit: &[f64; 2]| weights[0] * fit[0] + weights[1] * fit[1];
    let differences: Vec<f64> = without.map(|(one, two)| read(two) - read(one)).collect();
    let of_readings = [one, two].map(|side| side.fitted.of_readings.of(weights));
    let variance = jackknife_variance(&differences).max(of_readings[0] + of_readings[1]);
    Some((differences.len(), variance.sqrt()))
}

/// An error of one campaign, with its effect on the difference.
#[derive(Debug, Clone)]
pub struct Effect<'b> {
    pub source: Source,
    identity: Cow<'b, str>,
    effect: f64,
}

/// Errors of both campaigns in the difference of a figure.
pub fn effects<'b>(one: &'b Side<'_>, two: &'b Side<'_>) -> Vec<Effect<'b>> {
    let is_one_sky = is_one_sky(one, two);
    let of = |side: &'b Side<'_>, sign: f64| {
        let parts = side.budget.contributions.iter();
        parts.filter_map(move |part| match &part.origin {
            Origin::Common(error) => Some(Effect {
                source: error.source,
                identity: if is_one_sky && error.source.is_estimate() {
                    format!("{:?}", error.source).into()
                } else {
                    error.identity.as_str().into()
                },
                effect: sign * part.effect,
            }),
            _ => None,
        })
    };
    of(one, -1.0).chain(of(two, 1.0)).collect()
}

/// Standard uncertainty of some errors together.
pub fn common(effects: &[Effect<'_>]) -> f64 {
    let sizes: Vec<f64> = effects.iter().map(|effect| effect.effect).collect();
    let correlation =
        |i: usize, j: usize| f64::from(u8::from(effects[i].identity == effects[j].identity));
    combined(&sizes, correlation)
}

/// The same, if each were an error of its own.
pub fn apart(effects: &[Effect<'_>]) -> f64 {
    effects
        .iter()
        .fold(0.0, |sum: f64, effect| sum.hypot(effect.effect))
}

/// Whether irradiance was estimated of one sky: the same way and turbidity, at one site, on
/// the same days. What the estimate is off by is then one error.
fn is_one_sky(one: &Side<'_>, two: &Side<'_>) -> bool {
    let campaigns = [one, two].map(|side| &side.assessment.tested.campaign);
    let [first, second] = campaigns;
    let way = first.instruments.irradiance_estimate;
    way.is_some()
        && way == second.instruments.irradiance_estimate
        && first.site.linke_turbidity == second.site.linke_turbidity
        && is_one_site(&first.site, &second.site)
        && one.dates == two.dates
}
