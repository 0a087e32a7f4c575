//! A sky without clouds, and what a flat sensor says of sunlight normal to the beam.

use simmerline_math::{cos, exp, pow, sin_cos, squared};

/// Solar constant that the decomposition was fitted with, W/m².
const SOLAR_CONSTANT_W_M2: f64 = 1366.1;
/// Standard pressure at sea level, Pa.
const SEA_LEVEL_PRESSURE_PA: f64 = 101_325.0;
/// Share of sunlight that bare ground sends back.
///
/// # Source
/// Liu and Jordan 1963, Solar Energy 7, 53–74; the value for ground without snow, from memory.
const GROUND_ALBEDO: f64 = 0.2;
/// Zenith angle beyond which a horizontal reading says nothing of the beam, degrees.
const LOWEST_SUN_ZENITH_DEG: f64 = 87.0;
/// Least cosine of the zenith angle in the clearness index.
const LEAST_COS_ZENITH: f64 = 0.065;

/// Sunlight by its parts, W/m².
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sunlight {
    /// Global, on the horizontal.
    pub horizontal_w_m2: f64,
    /// Direct, on the plane normal to the beam.
    pub beam_w_m2: f64,
    /// From the sky, on the horizontal.
    pub diffuse_w_m2: f64,
}

impl Sunlight {
    /// Global irradiance, W/m², on the plane normal to the beam, as a sensor that faces the
    /// sun sees it: G = B + D (1 + cos θz)/2 + ρ H (1 − cos θz)/2, for a sky that shines
    /// alike from everywhere and ground with ρ = 0.2; `zenith_deg` is the sun's, 0 to 90.
    ///
    /// ```
    /// use simmerline::physics::sky::Sunlight;
    /// let sun = Sunlight { horizontal_w_m2: 1000.0, beam_w_m2: 900.0, diffuse_w_m2: 100.0 };
    /// assert!((sun.on_normal_plane_w_m2(0.0) - 1000.0).abs() < 1e-9);
    /// ```
    ///
    /// # Source
    /// Liu and Jordan 1963; Duffie and Beckman, Solar Engineering of Thermal Processes,
    /// equation 2.15.1 with the plane's slope equal to the zenith angle.
    pub fn on_normal_plane_w_m2(&self, zenith_deg: f64) -> f64 {
        let cos_zenith = cos(zenith_deg.to_radians());
        self.beam_w_m2
            + self.diffuse_w_m2 * (1.0 + cos_zenith) / 2.0
            + GROUND_ALBEDO * self.horizontal_w_m2 * (1.0 - cos_zenith) / 2.0
    }
}

/// Extraterrestrial irradiance normal to the beam, W/m², on a day of the year (1 to 366).
///
/// ```
/// let in_july = simmerline::physics::sky::extraterrestrial_w_m2(185);
/// assert!(in_july > 1320.0 && in_july < 1323.0);
/// ```
///
/// # Source
/// Spencer 1971, Search 2(5), 172, as in Iqbal, An Introduction to Solar Radiation (1983),
/// equation 1.2.1; solar constant 1366.1 W/m² (ASTM E490-00).
pub fn extraterrestrial_w_m2(day_of_year: u16) -> f64 {
    let angle = std::f64::consts::TAU * (f64::from(day_of_year) - 1.0) / 365.0;
    let (sin, cos) = sin_cos(angle);
    let (sin_2, cos_2) = sin_cos(2.0 * angle);
    let distance =
        1.000_11 + 0.034_221 * cos + 0.001_28 * sin + 0.000_719 * cos_2 + 0.000_077 * sin_2;
    SOLAR_CONSTANT_W_M2 * distance
}

/// Air mass relative to that of a sun in the zenith at the same height, at an apparent
/// zenith angle, degrees; `None` below the horizon.
///
/// m = 1/(cos z + 0.50572 (96.07995 − z)^−1.6364)
///
/// ```
/// let mass = simmerline::physics::sky::relative_air_mass(60.0).unwrap();
/// assert!((mass - 1.994293).abs() < 1e-6);
/// ```
///
/// # Source
/// Kasten and Young 1989, Applied Optics 28, 4735–4738.
pub fn relative_air_mass(apparent_zenith_deg: f64) -> Option<f64> {
    (apparent_zenith_deg <= 90.0).then(|| {
        let bent = 0.505_72 * pow(96.079_95 - apparent_zenith_deg, -1.6364);
        1.0 / (cos(apparent_zenith_deg.to_radians()) + bent)
    })
}

/// What the air over a place lets through.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ClearAir {
    /// Height above the sea, m.
    pub elevation_m: f64,
    /// Air pressure, Pa.
    pub pressure_pa: f64,
    /// Linke turbidity: how many clean, dry atmospheres would dim the beam as much.
    pub linke_turbidity: f64,
}

impl ClearAir {
    /// Sunlight under a sky without clouds, W/m², at an apparent zenith angle (degrees) and
    /// an extraterrestrial irradiance normal to the beam (W/m²); none below the horizon.
    ///
    /// With I0 outside the atmosphere, air mass m, turbidity T, height h:
    /// f1 = e^(−h/8000), f2 = e^(−h/1250), a1 = 5.09e−5 h + 0.868, a2 = 3.92e−5 h + 0.0387;
    /// H = a1 I0 cos z e^(−a2 m (f1 + f2 (T − 1))), B = (0.664 + 0.163/f1) I0 e^(−0.09 m (T − 1)),
    /// not more than H (1 − (0.1 − 0.2 e^(−T))/(0.1 + 0.882/f1))/cos z; D = H − B cos z.
    ///
    /// # Source
    /// Ineichen and Perez 2002, Solar Energy 73, 151–157, without the enhancement for large
    /// air masses, as in the reference library that `tests/modules/physics/sky.rs` names.
    pub fn sunlight(&self, apparent_zenith_deg: f64, outside_w_m2: f64) -> Sunlight {
        let Some(relative) = relative_air_mass(apparent_zenith_deg) else {
            return Sunlight {
                horizontal_w_m2: 0.0,
                beam_w_m2: 0.0,
                diffuse_w_m2: 0.0,
            };
        };
        let air_mass = relative * self.pressure_pa / SEA_LEVEL_PRESSURE_PA;
        let cos_zenith = cos(apparent_zenith_deg.to_radians()).max(0.0);
        let (h, t) = (self.elevation_m, self.linke_turbidity);
        let (f1, f2) = (exp(-h / 8000.0), exp(-h / 1250.0));
        let (a1, a2) = (5.09e-5 * h + 0.868, 3.92e-5 * h + 0.0387);
        let dimming = exp(-a2 * air_mass * (f1 + f2 * (t - 1.0)));
        let horizontal_w_m2 = a1 * outside_w_m2 * cos_zenith * dimming;
        let beam = outside_w_m2 * (0.664 + 0.163 / f1) * exp(-0.09 * air_mass * (t - 1.0));
        let least_diffuse = (0.1 - 0.2 * exp(-t)) / (0.1 + 0.882 / f1);
        let most_beam = horizontal_w_m2 * ((1.0 - least_diffuse) / cos_zenith).clamp(0.0, 1e20);
        let beam_w_m2 = beam.min(most_beam);
        Sunlight {
            horizontal_w_m2,
            beam_w_m2,
            diffuse_w_m2: horizontal_w_m2 - beam_w_m2 * cos_zenith,
        }
    }
}

/// Beam and diffuse part of a horizontal reading (W/m²), from how much of the sunlight
/// outside the atmosphere arrives; `zenith_deg` is the sun's true zenith angle.
///
/// kt = H/(I0 cos z), at most 1; share of diffuse light 1 − 0.09 kt up to kt = 0.22, then
/// 0.9511 − 0.1604 kt + 4.388 kt² − 16.638 kt³ + 12.336 kt⁴, and 0.165 beyond kt = 0.80.
///
/// # Source
/// Erbs, Klein and Duffie 1982, Solar Energy 28, 293–302. No beam with the sun lower than
/// 3° (zenith 87°), and cos z of at least 0.065 in kt, as in the reference library that
/// `tests/modules/physics/sky.rs` names.
pub fn split_horizontal(horizontal_w_m2: f64, zenith_deg: f64, outside_w_m2: f64) -> Sunlight {
    let cos_zenith = cos(zenith_deg.to_radians());
    let most_w_m2 = outside_w_m2 * cos_zenith.max(LEAST_COS_ZENITH);
    let kt = (horizontal_w_m2 / most_w_m2).clamp(0.0, 1.0);
    let diffuse_share = if kt <= 0.22 {
        1.0 - 0.09 * kt
    } else if kt <= 0.80 {
        let square = squared(kt);
        0.9511 - 0.1604 * kt + 4.388 * square - 16.638 * square * kt + 12.336 * square * square
    } else {
        0.165
    };
    let diffuse_w_m2 = diffuse_share * horizontal_w_m2;
    let beam_w_m2 = (horizontal_w_m2 - diffuse_w_m2) / cos_zenith;
    let is_seen = zenith_deg <= LOWEST_SUN_ZENITH_DEG && beam_w_m2 >= 0.0;
    Sunlight {
        horizontal_w_m2,
        beam_w_m2: if is_seen { beam_w_m2 } else { 0.0 },
        diffuse_w_m2: if is_seen {
            diffuse_w_m2
        } else {
            horizontal_w_m2
        },
    }
}
