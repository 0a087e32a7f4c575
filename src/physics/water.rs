//! Water: specific heat and boiling point.

use simmerline_math::pow;

/// Specific heat of liquid water as the practice fixes it, J/(kg K).
///
/// # Source
/// ASAE S580, the clause on cooking power. IAPWS-IF97 gives 4179 to 4211 J/(kg K)
/// between 10 and 95 °C.
pub const SPECIFIC_HEAT_J_PER_KG_K: f64 = 4186.0;

/// Temperature of the water above which vapour carries off a share of the heat that matters, °C.
///
/// # Source
/// Abstracts on the Ibero-American power test say so (seen); no limit is given there.
pub const EVAPORATION_C: f64 = 80.0;

/// 0 °C in kelvin.
const ZERO_CELSIUS_K: f64 = 273.15;

/// Coefficients n1 to n10 of the saturation line.
const N: &[f64] = &[
    0.116_705_214_527_67e4,
    -0.724_213_167_032_06e6,
    -0.170_738_469_400_92e2,
    0.120_208_247_024_70e5,
    -0.323_255_503_223_33e7,
    0.149_151_086_135_30e2,
    -0.482_326_573_615_91e4,
    0.405_113_405_420_57e6,
    -0.238_555_575_678_49,
    0.650_175_348_447_98e3,
];

/// Boiling point of water, °C, under a pressure of 611.213 Pa to 22.064 MPa.
///
/// With β = (p/1 MPa)^¼: E = β² + n3 β + n6, F = n1 β² + n4 β + n7,
/// G = n2 β² + n5 β + n8, D = 2G/(−F − √(F² − 4EG)),
/// T = (n10 + D − √((n10 + D)² − 4(n9 + n10 D)))/2.
///
/// ```
/// // IAPWS-IF97, table 36: 0.1 MPa gives 372.755919 K.
/// let boiling_c = simmerline::physics::water::boiling_point_c(0.1e6);
/// assert!((boiling_c + 273.15 - 372.755919).abs() < 1e-6);
/// ```
///
/// # Source
/// IAPWS R7-97(2012), Industrial Formulation 1997, region 4, equation 31.
pub fn boiling_point_c(pressure_pa: f64) -> f64 {
    let beta = pow(pressure_pa / 1e6, 0.25);
    let e = beta * beta + N[2] * beta + N[5];
    let f = N[0] * beta * beta + N[3] * beta + N[6];
    let g = N[1] * beta * beta + N[4] * beta + N[7];
    let d = 2.0 * g / (-f - (f * f - 4.0 * e * g).sqrt());
    let n10_d = N[9] + d;
    let kelvin = (n10_d - (n10_d * n10_d - 4.0 * (N[8] + N[9] * d)).sqrt()) / 2.0;
    kelvin - ZERO_CELSIUS_K
}
