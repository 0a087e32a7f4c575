//! Time to heat water with a power that falls in a straight line.

use simmerline_math::{exp_m1, ln};

/// Share of the power below which its change over the heating is no change.
const LEVEL: f64 = 1e-6;

/// Water heated by P = intercept + slope·(T − ambient), W and W/K.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Heating {
    /// Power at ambient temperature, W.
    pub intercept_w: f64,
    /// Change of power with temperature difference, W/K.
    pub slope_w_per_k: f64,
    /// Heat capacity of what is heated, J/K.
    pub heat_capacity_j_per_k: f64,
}

impl Heating {
    /// Time, s, to go from one temperature difference to a higher one (K above ambient).
    ///
    /// dT/dt = P/C, so t = C ∫ dx/(a + b x) = (C/b) ln(P2/P1).
    /// `None` if the power is not positive all the way: it does not get there.
    ///
    /// ```
    /// use simmerline::physics::heating::Heating;
    /// let level = Heating { intercept_w: 4186.0, slope_w_per_k: 0.0, heat_capacity_j_per_k: 4186.0 };
    /// assert!((level.time_s(0.0, 60.0).unwrap() - 60.0).abs() < 1e-9);
    /// ```
    ///
    /// # Source
    /// First-order linear differential equation, in closed form.
    pub fn time_s(&self, from_k: f64, to_k: f64) -> Option<f64> {
        let (a, b, c) = (
            self.intercept_w,
            self.slope_w_per_k,
            self.heat_capacity_j_per_k,
        );
        let (p1, p2) = (a + b * from_k, a + b * to_k);
        if !(p1 > 0.0 && p2 > 0.0 && to_k > from_k) {
            return None;
        }
        if (p2 - p1).abs() < LEVEL * p1 {
            return Some(c * (to_k - from_k) / p1);
        }
        Some(c / b * ln(p2 / p1))
    }

    /// Temperature difference, K above ambient, that is reached after a time in seconds.
    ///
    /// dx/dt = (a + b x)/C, so x(t) = x0 + (a + b x0)/b · (exp(b t/C) − 1).
    ///
    /// ```
    /// use simmerline::physics::heating::Heating;
    /// let level = Heating { intercept_w: 4186.0, slope_w_per_k: 0.0, heat_capacity_j_per_k: 4186.0 };
    /// assert_eq!(level.after_k(10.0, 60.0), 70.0);
    /// ```
    ///
    /// # Source
    /// As [`Heating::time_s`], of which it is the inverse.
    pub fn after_k(&self, from_k: f64, seconds: f64) -> f64 {
        let power_w = self.intercept_w + self.slope_w_per_k * from_k;
        let decay = self.slope_w_per_k * seconds / self.heat_capacity_j_per_k;
        let mean_share = if decay.abs() < LEVEL {
            1.0 + decay / 2.0
        } else {
            exp_m1(decay) / decay
        };
        from_k + power_w * seconds / self.heat_capacity_j_per_k * mean_share
    }

    /// Temperature difference that the water tends to, K: −a/b; `None` if the
    /// power does not fall.
    pub fn tends_to_k(&self) -> Option<f64> {
        (self.slope_w_per_k < 0.0).then(|| -self.intercept_w / self.slope_w_per_k)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const COOKER: Heating = Heating {
        intercept_w: 190.0,
        slope_w_per_k: -2.2,
        heat_capacity_j_per_k: 3.5 * 4186.0,
    };

    #[test]
    fn a_target_beyond_the_lines_zero_is_never_reached() {
        assert_eq!(COOKER.time_s(0.0, 86.4), None);
        assert!((COOKER.tends_to_k().unwrap() - 86.363_636).abs() < 1e-6);
    }

    #[test]
    fn the_temperature_after_a_time_is_that_which_takes_this_time() {
        for (from_k, to_k) in [(0.0, 50.0), (5.0, 80.0), (60.0, 60.5)] {
            let seconds = COOKER.time_s(from_k, to_k).unwrap();
            assert!((COOKER.after_k(from_k, seconds) - to_k).abs() < 1e-9);
        }
        assert!((COOKER.after_k(100.0, 1e9) - COOKER.tends_to_k().unwrap()).abs() < 1e-9);
    }

    #[test]
    fn level_and_nearly_level_power_agree() {
        let level = Heating {
            slope_w_per_k: 0.0,
            ..COOKER
        };
        let nearly = Heating {
            slope_w_per_k: -1e-5,
            ..COOKER
        };
        let (level_s, nearly_s) = (
            level.time_s(5.0, 70.0).unwrap(),
            nearly.time_s(5.0, 70.0).unwrap(),
        );
        assert!((level_s / nearly_s - 1.0).abs() < 1e-5);
    }
}
