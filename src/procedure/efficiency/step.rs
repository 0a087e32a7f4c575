//! One interval, as energy and exergy take it.

use jiff::civil::Date;
use simmerline_math::ln;

use crate::physics::exergy::{SUN_K, ZERO_CELSIUS_K, share_of_sunlight};
use crate::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::sources::SCALE_ABOUT_C;
use crate::procedure::tested::Tested;
use crate::procedure::uncertainty::shift::Shift;
use crate::units::zoned;

/// One sound interval, as energy and exergy take it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Step {
    pub date: Date,
    /// It begins where the one before it ends.
    pub follows: bool,
    pub duration_s: f64,
    /// Heat capacity of the water, J/K.
    pub heat_j_per_k: f64,
    pub from_c: f64,
    pub to_c: f64,
    /// Means.
    pub water_c: f64,
    pub ambient_c: f64,
    /// Sunlight on the intercept area, W.
    pub sun_w: f64,
    /// What energy and exergy follow from.
    pub terms: Terms,
}

impl Step {
    /// Of an interval; `before` is the sound one before it. `None` where it lacks something.
    pub fn of(interval: &Interval, tested: &Tested, before: Option<&Interval>) -> Option<Step> {
        let measured = &interval.measured;
        let campaign = &tested.campaign;
        let water_kg = tested.runs[interval.run].plan.water_kg;
        let heat_j_per_k = water_kg * SPECIFIC_HEAT_J_PER_KG_K;
        let ambient_c = measured.ambient?.mean;
        let sun_w = campaign.cooker.intercept_area_m2 * measured.irradiance?.mean;
        let (from_c, to_c) = (measured.water_start_c, measured.water_end_c);
        let duration_s = measured.duration_s;
        Some(Step {
            date: zoned(measured.span.from_us, &campaign.site.time_zone).date(),
            follows: before.is_some_and(|before| {
                before.run == interval.run && before.measured.span.to_us == measured.span.from_us
            }),
            duration_s,
            heat_j_per_k,
            from_c,
            to_c,
            water_c: measured.water.mean,
            ambient_c,
            sun_w,
            terms: Terms::of(heat_j_per_k, (from_c, to_c), ambient_c, sun_w * duration_s),
        })
    }

    /// Td, K, with readings that are off.
    pub fn difference_k(&self, shift: &Shift) -> f64 {
        shift.water_c(self.water_c) - shift.ambient_c(self.ambient_c)
    }

    /// Heat that the water takes up, J.
    pub fn energy_j(&self) -> f64 {
        self.heat_j_per_k * (self.to_c - self.from_c)
    }

    /// Its exergy, J, to the first order of what the readings are off by.
    pub fn exergy_j(&self, shift: &Shift) -> f64 {
        self.terms.exergy_j(shift)
    }

    /// The same for each second, W.
    pub fn exergy_w(&self, shift: &Shift) -> f64 {
        self.exergy_j(shift) / (self.duration_s * shift.time)
    }
}

/// Sums over steps from which energy and exergy follow, whatever the readings are off by.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Terms {
    /// m·c·ΔT, J.
    pub heat_j: f64,
    /// Sunlight, J, and its exergy.
    pub sun_j: f64,
    pub sun_exergy_j: f64,
    /// m·c·[ΔT − Ta·ln(T2/T1)], J.
    pub exergy_j: f64,
    /// What one kelvin more, and a scale error of one, of water and of air add to it.
    per_water_k: f64,
    per_water_scale: f64,
    per_ambient_k: f64,
    per_ambient_scale: f64,
}

impl Terms {
    /// Of a heat capacity (J/K) that goes from one temperature to another at an ambient (°C), with
    /// so much sunlight (J).
    fn of(mc: f64, (from_c, to_c): (f64, f64), ambient_c: f64, sun_j: f64) -> Terms {
        let kelvin = |celsius: f64| celsius + ZERO_CELSIUS_K;
        let (from_k, to_k, ambient_k) = (kelvin(from_c), kelvin(to_c), kelvin(ambient_c));
        let ratio = ln(to_k / from_k);
        let rise_k = to_k - from_k;
        let of_scale = (to_c - SCALE_ABOUT_C) / to_k - (from_c - SCALE_ABOUT_C) / from_k;
        Terms {
            heat_j: mc * rise_k,
            sun_j,
            sun_exergy_j: sun_j * share_of_sunlight(ambient_k, SUN_K),
            exergy_j: mc * (rise_k - ambient_k * ratio),
            per_water_k: -mc * ambient_k * (1.0 / to_k - 1.0 / from_k),
            per_water_scale: mc * (rise_k - ambient_k * of_scale),
            per_ambient_k: -mc * ratio,
            per_ambient_scale: -mc * ratio * (ambient_c - SCALE_ABOUT_C),
        }
    }

    /// Both together.
    #[must_use]
    pub fn plus(self, other: Terms) -> Terms {
        Terms {
            heat_j: self.heat_j + other.heat_j,
            sun_j: self.sun_j + other.sun_j,
            sun_exergy_j: self.sun_exergy_j + other.sun_exergy_j,
            exergy_j: self.exergy_j + other.exergy_j,
            per_water_k: self.per_water_k + other.per_water_k,
            per_water_scale: self.per_water_scale + other.per_water_scale,
            per_ambient_k: self.per_ambient_k + other.per_ambient_k,
            per_ambient_scale: self.per_ambient_scale + other.per_ambient_scale,
        }
    }

    /// Exergy of the heat, J, with readings that are off.
    pub fn exergy_j(&self, shift: &Shift) -> f64 {
        let off_j = self.per_water_k * shift.water_k
            + self.per_water_scale * shift.water_scale
            + self.per_ambient_k * shift.ambient_k
            + self.per_ambient_scale * shift.ambient_scale;
        (self.exergy_j + off_j) * shift.water
    }

    /// Energy efficiency; `None` without sunlight.
    pub fn energy(&self, shift: &Shift) -> Option<f64> {
        let sun_j = self.sun_j * shift.irradiance * shift.time;
        let heat_j = self.heat_j * (1.0 + shift.water_scale) * shift.water;
        (sun_j > 0.0).then(|| heat_j / sun_j)
    }

    /// Exergy efficiency; `None` without sunlight.
    pub fn exergy(&self, shift: &Shift) -> Option<f64> {
        let sun_j = self.sun_exergy_j * shift.irradiance * shift.time;
        (sun_j > 0.0).then(|| self.exergy_j(shift) / sun_j)
    }
}
