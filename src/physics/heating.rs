//! Time to heat water with a power that falls in a straight line.

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

/// How long a heating takes, and how that changes with the line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeatingTime {
    /// Seconds.
    pub time_s: f64,
    /// Change with the intercept, s/W.
    pub per_intercept: f64,
    /// Change with the slope, s/(W/K).
    pub per_slope: f64,
}

impl Heating {
    /// Time to go from one temperature difference to a higher one (K above ambient).
    ///
    /// dT/dt = P/C, so t = C ∫ dx/(a + b x) = (C/b) ln(P2/P1), with
    /// ∂t/∂a = −C (x2 − x1)/(P1 P2) and
    /// ∂t/∂b = −(C/b²) ln(P2/P1) + (C/b)(x2/P2 − x1/P1).
    /// `None` if the power is not positive all the way: it does not get there.
    ///
    /// ```
    /// use simmerline::physics::heating::Heating;
    /// let level = Heating { intercept_w: 4186.0, slope_w_per_k: 0.0, heat_capacity_j_per_k: 4186.0 };
    /// assert!((level.time(0.0, 60.0).unwrap().time_s - 60.0).abs() < 1e-9);
    /// ```
    ///
    /// # Source
    /// First-order linear differential equation, in closed form.
    pub fn time(&self, from_k: f64, to_k: f64) -> Option<HeatingTime> {
        let (a, b, c) = (
            self.intercept_w,
            self.slope_w_per_k,
            self.heat_capacity_j_per_k,
        );
        let (p1, p2) = (a + b * from_k, a + b * to_k);
        if !(p1 > 0.0 && p2 > 0.0 && to_k > from_k) {
            return None;
        }
        let per_intercept = -c * (to_k - from_k) / (p1 * p2);
        if (p2 - p1).abs() < LEVEL * p1 {
            return Some(HeatingTime {
                time_s: c * (to_k - from_k) / p1,
                per_intercept,
                per_slope: -c * (to_k * to_k - from_k * from_k) / (2.0 * p1 * p1),
            });
        }
        let log = (p2 / p1).ln();
        Some(HeatingTime {
            time_s: c / b * log,
            per_intercept,
            per_slope: -c / (b * b) * log + c / b * (to_k / p2 - from_k / p1),
        })
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
    fn gradient_agrees_with_finite_differences() {
        let time = COOKER.time(10.0, 60.0).unwrap();
        let step = 1e-4;
        let more = Heating {
            intercept_w: 190.0 + step,
            ..COOKER
        };
        let steeper = Heating {
            slope_w_per_k: -2.2 + step,
            ..COOKER
        };
        let by_intercept = (more.time(10.0, 60.0).unwrap().time_s - time.time_s) / step;
        let by_slope = (steeper.time(10.0, 60.0).unwrap().time_s - time.time_s) / step;
        assert!((by_intercept / time.per_intercept - 1.0).abs() < 1e-4);
        assert!((by_slope / time.per_slope - 1.0).abs() < 1e-4);
    }

    #[test]
    fn a_target_beyond_the_lines_zero_is_never_reached() {
        assert_eq!(COOKER.time(0.0, 86.4), None);
        assert!((COOKER.tends_to_k().unwrap() - 86.363_636).abs() < 1e-6);
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
        let (level, nearly) = (
            level.time(5.0, 70.0).unwrap(),
            nearly.time(5.0, 70.0).unwrap(),
        );
        assert!((level.time_s / nearly.time_s - 1.0).abs() < 1e-5);
        assert!((level.per_slope / nearly.per_slope - 1.0).abs() < 1e-3);
    }
}
