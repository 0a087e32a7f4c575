//! Gain and loss, and what follows from them.

use jiff::civil::Date;

use super::far_apart::FarApart;
use super::finding::BalanceFinding;
use crate::procedure::s580::S580;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::limits::{RATING_DIFFERENCE_K, STANDARD_IRRADIANCE_W_M2};
use crate::procedure::uncertainty::trials::draw;
use crate::procedure::uncertainty::{Budget, Figure, Fitted, Region};
use crate::stats::line::Bounds;

/// What is found of a campaign's heat balance P = g·G − u·Td.
#[derive(Debug, Clone)]
pub struct HeatBalance {
    /// Number of intervals that it rests on, those that are [`is_sound`](super::fit::is_sound).
    pub intervals: usize,
    /// The heat of the vessels counts.
    pub counts_vessels: bool,
    /// Local dates that they lie on, in order.
    pub dates: Vec<Date>,
    /// Of the intervals' means, W/m².
    pub mean_irradiance_w_m2: f64,
    pub irradiance_w_m2: Bounds,
    /// Lowest and highest temperature difference, K.
    pub difference_k: Bounds,
    /// Gain (m²) and loss (W/K) with all that makes them unsure.
    pub fitted: Fitted,
    /// g, W of gain for each W/m² of irradiance: m².
    pub gain_m2: Figure,
    /// u, W/K.
    pub loss_w_per_k: Figure,
    /// Power at 700 W/m² and 50 K, W.
    pub power_700_50_w: Figure,
    /// g/u, K m²/W; `None` where the loss may be none.
    pub opto_thermal_ratio: Option<Figure>,
    /// What it rests on in the place of the practice's intervals, where there is none of those.
    pub far_apart: Option<FarApart>,
    pub findings: Vec<BalanceFinding>,
}

/// The figures of a fit.
pub struct Figures {
    pub gain_m2: Figure,
    pub loss_w_per_k: Figure,
    pub power_700_50_w: Figure,
    pub opto_thermal_ratio: Option<Figure>,
}

impl Figures {
    /// Gain, loss, power at 700 W/m² and 50 K, and the ratio of gain and loss.
    ///
    /// # Source
    /// The opto-thermal ratio: Lahkar, Bhamu and Samdarshi, Applied Energy 99 (2012) 491–495,
    /// from memory.
    pub fn of(fitted: &Fitted) -> Figures {
        let [gain, loss] = fitted.parameters;
        let at = at_w(STANDARD_IRRADIANCE_W_M2, RATING_DIFFERENCE_K);
        let ratio = Budget {
            value: gain / loss,
            ..fitted.budget([1.0 / loss, -gain / (loss * loss)])
        };
        let budgets = [
            fitted.budget([1.0, 0.0]),
            fitted.budget([0.0, 1.0]),
            fitted.budget(at),
            ratio,
        ];
        let drawn = draw(fitted, at, &budgets, |[gain, loss]| {
            [gain, loss, at[0] * gain + at[1] * loss, gain / loss]
        });
        let [gain_m2, loss_w_per_k, power_700_50_w, ratio] =
            std::array::from_fn(|which| Figure::of(&budgets[which], drawn[which].as_ref()));
        Figures {
            gain_m2,
            loss_w_per_k,
            power_700_50_w,
            opto_thermal_ratio: (loss_w_per_k.interval.lower > 0.0).then_some(ratio),
        }
    }
}

/// Weights of gain and loss in the power at an irradiance and a temperature difference.
pub fn at_w(irradiance_w_m2: f64, difference_k: f64) -> [f64; 2] {
    [irradiance_w_m2, -difference_k]
}

impl HeatBalance {
    /// The intervals of which those that are sound are its points.
    pub fn rests_on<'a>(&'a self, s580: &'a S580) -> &'a [Interval] {
        match &self.far_apart {
            Some(far_apart) => &far_apart.intervals,
            None => &s580.intervals,
        }
    }

    /// Gain (weighed with W/m²) and loss (with −K) with their 95 % band.
    pub fn region(&self) -> Region {
        self.fitted.region()
    }

    /// Intercept and slope of the power at an irradiance (W/m²) over the temperature difference.
    pub fn power_at(&self, irradiance_w_m2: f64) -> Region {
        self.region().times([irradiance_w_m2, -1.0])
    }

    /// What scaling in proportion to irradiance adds to Ps(50), W, by the loss of this balance,
    /// which has to be that of the water alone, as Ps(50) is; `None` without a rating.
    pub fn scaling_in_ps50_w(&self, s580: &S580) -> Option<f64> {
        s580.rated.as_ref()?;
        let share = 1.0 - STANDARD_IRRADIANCE_W_M2 / s580.mean_irradiance_w_m2()?;
        Some(self.loss_w_per_k.value * RATING_DIFFERENCE_K * share)
    }

    /// Whether all of it was measured on one day: what another day would do is not in it.
    pub fn is_of_one_day(&self) -> bool {
        self.fitted.days().is_none()
    }
}
