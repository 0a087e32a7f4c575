//! What the samples of the procedures beside the rating were made of, and the figures that
//! follow from it by their definitions. Invented, like everything here.
//!
//! Tests hold the procedures against these figures, and `generate.rs` prints them.

use std::f64::consts::FRAC_PI_4;

/// Specific heat of water, J/(kg K).
pub const WATER_J_KG_K: f64 = 4186.0;

/// A flat box without mirrors, under the irradiance H of its own plane:
///
/// ```text
/// plate           C dT/dt = A (η0 H − U (T − Ta))
/// water  (M c + Cv) dT/dt = A F' (η0 H − U (T − Ta))
/// ```
pub struct FlatBox {
    pub area_m2: f64,
    /// η0, and U of the plate, W/(m² K).
    pub eta0: f64,
    pub loss_w_m2_k: f64,
    /// F', from the plate to the water.
    pub f_prime: f64,
    pub plate_j_k: f64,
    pub water_kg: f64,
    pub vessels_j_k: f64,
}

impl FlatBox {
    /// F1, K m²/W: the plateau's difference for each W/m² too.
    pub const fn f1(&self) -> f64 {
        self.eta0 / self.loss_w_m2_k
    }

    /// F2, of one.
    pub const fn f2(&self) -> f64 {
        let water_j_k = self.water_kg * WATER_J_KG_K;
        self.f_prime * self.eta0 * water_j_k / (water_j_k + self.vessels_j_k)
    }

    /// g, m²: gain of water and vessels for each W/m² in the plane of the box.
    pub const fn gain_m2(&self) -> f64 {
        self.area_m2 * self.f_prime * self.eta0
    }

    /// u, W/K: loss of water and vessels.
    pub const fn loss_w_k(&self) -> f64 {
        self.area_m2 * self.f_prime * self.loss_w_m2_k
    }
}

/// A dish under the irradiance G normal to the beam, Ap its aperture, At the surface of
/// its pot:
///
/// ```text
/// (M c + Cv) dT/dt = F'η0 Ap G − F'UL At (T − Ta)
/// ```
pub struct Dish {
    pub aperture_m2: f64,
    pub loss_area_m2: f64,
    /// F'η0, of one; F'UL, W/(m² K).
    pub optical_factor: f64,
    pub loss_factor_w_m2_k: f64,
    pub water_kg: f64,
    pub vessel_j_k: f64,
}

impl Dish {
    /// τ0 of the full pot, s.
    pub const fn time_constant_s(&self) -> f64 {
        (self.water_kg * WATER_J_KG_K + self.vessel_j_k) / self.loss_w_k()
    }

    /// g, m²: gain of water and vessel for each W/m².
    pub const fn gain_m2(&self) -> f64 {
        self.optical_factor * self.aperture_m2
    }

    /// u, W/K: loss of water and vessel.
    pub const fn loss_w_k(&self) -> f64 {
        self.loss_factor_w_m2_k * self.loss_area_m2
    }
}

/// A dry pot before a panel, under the irradiance G normal to the beam:
///
/// ```text
/// C dT/dt = η A G − u (T − Ta)
/// ```
pub struct DryPot {
    pub area_m2: f64,
    pub efficiency: f64,
    pub loss_w_k: f64,
    pub vessel_j_k: f64,
}

impl DryPot {
    /// The plateau's difference for each W/m², K m²/W.
    pub const fn difference_k_m2_w(&self) -> f64 {
        self.efficiency * self.area_m2 / self.loss_w_k
    }
}

/// The box of `box-figures`. Its F1 is 0.119, just under the limit of a grade.
pub const BOX_FIGURES: FlatBox = FlatBox {
    area_m2: 0.36,
    eta0: 0.595,
    loss_w_m2_k: 5.0,
    f_prime: 0.78,
    plate_j_k: 1100.0,
    water_kg: 2.88,
    // 1.1 kg of aluminium.
    vessels_j_k: 968.0,
};

/// The dish of `dish-cooling`.
pub const DISH_COOLING: Dish = Dish {
    // A circle of 1.00 m.
    aperture_m2: FRAC_PI_4,
    loss_area_m2: 0.19,
    optical_factor: 0.42,
    loss_factor_w_m2_k: 15.0,
    water_kg: 5.5,
    // 1.4 kg of stainless steel.
    vessel_j_k: 644.0,
};

/// The pot of `dry-pot`.
pub const DRY_POT: DryPot = DryPot {
    area_m2: 0.42,
    efficiency: 0.30,
    loss_w_k: 0.84,
    // 1.1 kg of enamelled steel.
    vessel_j_k: 495.0,
};
