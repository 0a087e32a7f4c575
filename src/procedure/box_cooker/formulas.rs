//! The formulas of a box cooker's figures, and the rises of the water that they take.

use crate::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use crate::procedure::dry_vessel::dry_run::{Placed, mean_difference};
use crate::procedure::stretch::{NoStretch, Stretch, rising};
use crate::procedure::tested::Tested;
use crate::procedure::uncertainty::Off;

/// Water from here, °C.
///
/// # Source
/// Mullick, Kandpal and Saxena 1987, Solar Energy 39, 353–360: 60 to 65 °C; from memory.
pub const FROM_C: f64 = 60.0;
/// A rise that begins with the first reading begins at most here, °C. Source as of [`FROM_C`].
pub const BEGINS_MOST_C: f64 = 65.0;
/// Up to here, °C. Source as of [`FROM_C`]: 90 to 95 °C; the lower end, since water boils below
/// the upper one at 1,500 m.
pub const TO_C: f64 = 90.0;
/// As far below the local boiling point as the practice's window, K, where that is lower.
const BELOW_BOILING_K: f64 = 5.0;
/// Full load of a box, kg for each m² of aperture. Source as of [`FROM_C`].
pub const LOAD_KG_M2: f64 = 8.0;
/// Share by which the load may be off. Common practice, no published source.
pub const LOAD_WITHIN: f64 = 0.1;
/// F2 follows F1 steeply where the water's end takes more than this share of F1·H.
/// Common practice, no published source.
pub const NEAR_REACH: f64 = 0.85;

/// Group of the dry runs' days, and of the water's.
pub const DRY: usize = 0;
/// See [`DRY`].
pub const WATER: usize = 1;

/// The end of the rise, °C.
pub fn end_c(tested: &Tested) -> f64 {
    TO_C.min(tested.boiling_point_c - BELOW_BOILING_K)
}

/// The water's rises, and the runs without one that counts.
pub struct Taken {
    pub found: Vec<Stretch>,
    /// Rises whose end F1·H does not exceed: with F1 they could not be.
    pub beyond: Vec<Stretch>,
    pub left_out: Vec<NoStretch>,
}

/// The rise of every run of water, held against F1 (K m²/W) where there is one.
pub fn take_stretches(tested: &Tested, f1: Option<f64>) -> Taken {
    let to_c = end_c(tested);
    let mut taken = Taken {
        found: Vec::new(),
        beyond: Vec::new(),
        left_out: Vec::new(),
    };
    for run in &tested.runs {
        match rising(run, (FROM_C, BEGINS_MOST_C), to_c) {
            Ok(stretch) if f1.is_some_and(|f1| is_beyond(&stretch, f1)) => {
                taken.beyond.push(stretch);
            }
            Ok(stretch) => taken.found.push(stretch),
            Err(why) => taken.left_out.push(why),
        }
    }
    taken
}

/// Whether F1·H does not exceed the water's end above the air: there the published formula has
/// no value.
fn is_beyond(stretch: &Stretch, f1: f64) -> bool {
    f1 * stretch.irradiance_w_m2 <= stretch.to_c - stretch.ambient_c
}

/// What the formulas take.
pub struct Test<'t> {
    /// Of the glass, m².
    pub area_m2: f64,
    pub plateaus: &'t [Placed],
    pub stretches: &'t [Stretch],
}

/// Means over the rises.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conditions {
    pub irradiance_w_m2: f64,
    pub ambient_c: f64,
    pub water_kg: f64,
}

/// The rise that lies nearest to what F1 lets the water reach.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nearest {
    /// F1·H, K.
    pub reach_k: f64,
    /// End of the rise above the air, K.
    pub end_k: f64,
}

impl Test<'_> {
    /// F1, K m²/W; `None` without a plateau.
    pub fn f1(&self, off: &Off) -> Option<f64> {
        mean_difference(self.plateaus, off, DRY)
    }

    /// Mean of F2 over the rises; `None` where one of them has none.
    pub fn f2(&self, off: &Off) -> Option<f64> {
        self.f2_by(self.f1(off)?, off)
    }

    /// The same by a given F1, K m²/W.
    pub fn f2_by(&self, f1: f64, off: &Off) -> Option<f64> {
        let (mut sum, mut count) = (0.0, 0.0);
        for stretch in self.stretches {
            if !off.counts(WATER, stretch.date) {
                continue;
            }
            sum += self.f2_of(stretch, f1, off)?;
            count += 1.0;
        }
        (count > 0.0).then(|| sum / count)
    }

    fn f2_of(&self, stretch: &Stretch, f1: f64, off: &Off) -> Option<f64> {
        let shift = &off.shift;
        let h = stretch.irradiance_w_m2 * shift.irradiance;
        let td = shift.water_c(stretch.water_c) - shift.ambient_c(stretch.ambient_c);
        let rise_k = shift.water_c(stretch.to_c) - shift.water_c(stretch.from_c);
        let heat_j = stretch.water_kg * SPECIFIC_HEAT_J_PER_KG_K * shift.water * rise_k;
        let over_s = stretch.duration_s * shift.time;
        let net_w_m2 = h - td / f1;
        (net_w_m2 > 0.0).then(|| heat_j / (self.area_m2 * over_s * net_w_m2))
    }

    /// Means over the rises of irradiance, ambient and water; `None` without one.
    pub fn conditions(&self) -> Option<Conditions> {
        let count = self.stretches.len() as f64;
        let mean = |of: fn(&Stretch) -> f64| self.stretches.iter().map(of).sum::<f64>() / count;
        (count > 0.0).then(|| Conditions {
            irradiance_w_m2: mean(|one| one.irradiance_w_m2),
            ambient_c: mean(|one| one.ambient_c),
            water_kg: mean(|one| one.water_kg),
        })
    }

    /// Of some rises the nearest to F1·H; `None` without F1 or a rise.
    pub fn nearest(&self, stretches: &[Stretch]) -> Option<Nearest> {
        let f1 = self.f1(&Off::NONE)?;
        let all = stretches.iter().map(|stretch| Nearest {
            reach_k: f1 * stretch.irradiance_w_m2,
            end_k: stretch.to_c - stretch.ambient_c,
        });
        all.min_by(|one, two| (one.reach_k - one.end_k).total_cmp(&(two.reach_k - two.end_k)))
    }
}
