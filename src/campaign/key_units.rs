//! Units at the end of keys, so that no hint leads from one unit to another unsaid.

use crate::units::fixed;

/// A factor is told with as many decimals as bring it so near, as a fraction.
const NEAR_ENOUGH: f64 = 3e-4;
/// At most so many decimals.
const MOST_DECIMALS: usize = 9;

/// What units measure: those of one kind are converted into each other by a factor, but for
/// temperatures.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Kind {
    Length,
    Area,
    Mass,
    Volume,
    Temperature,
    Pressure,
    Speed,
    Irradiance,
    Time,
    Power,
    Angle,
    HeatCapacity,
    HeatingValue,
}

/// A unit as keys end in it.
#[derive(Debug)]
pub struct KeyUnit {
    ending: &'static str,
    pub symbol: &'static str,
    kind: Kind,
    /// How many of the kind's first unit one of it is.
    factor: f64,
}

const fn unit(ending: &'static str, symbol: &'static str, kind: Kind, factor: f64) -> KeyUnit {
    KeyUnit {
        ending,
        symbol,
        kind,
        factor,
    }
}

/// Every unit that keys have or that people write. Of two endings that fit, the longer counts.
///
/// # Source
/// Factors: NIST SP 811 (2008), appendix B.8; the gallon is that of the US.
const UNITS: &[KeyUnit] = &[
    unit("_m", "m", Kind::Length, 1.0),
    unit("_cm", "cm", Kind::Length, 0.01),
    unit("_mm", "mm", Kind::Length, 0.001),
    unit("_km", "km", Kind::Length, 1000.0),
    unit("_ft", "ft", Kind::Length, 0.3048),
    unit("_feet", "ft", Kind::Length, 0.3048),
    unit("_in", "in", Kind::Length, 0.0254),
    unit("_inches", "in", Kind::Length, 0.0254),
    unit("_yd", "yd", Kind::Length, 0.9144),
    unit("_mi", "mi", Kind::Length, 1609.344),
    unit("_m2", "m²", Kind::Area, 1.0),
    unit("_cm2", "cm²", Kind::Area, 1e-4),
    unit("_mm2", "mm²", Kind::Area, 1e-6),
    unit("_ft2", "ft²", Kind::Area, 0.092_903_04),
    unit("_sqft", "ft²", Kind::Area, 0.092_903_04),
    unit("_sq_ft", "ft²", Kind::Area, 0.092_903_04),
    unit("_in2", "in²", Kind::Area, 6.4516e-4),
    unit("_kg", "kg", Kind::Mass, 1.0),
    unit("_g", "g", Kind::Mass, 0.001),
    unit("_lb", "lb", Kind::Mass, 0.453_592_37),
    unit("_lbs", "lb", Kind::Mass, 0.453_592_37),
    unit("_pounds", "lb", Kind::Mass, 0.453_592_37),
    unit("_oz", "oz", Kind::Mass, 0.028_349_523),
    unit("_l", "L", Kind::Volume, 1.0),
    unit("_ml", "mL", Kind::Volume, 0.001),
    unit("_gal", "US gal", Kind::Volume, 3.785_412),
    unit("_c", "°C", Kind::Temperature, 1.0),
    unit("_f", "°F", Kind::Temperature, 1.0),
    unit("_k", "K", Kind::Temperature, 1.0),
    unit("_hpa", "hPa", Kind::Pressure, 1.0),
    unit("_pa", "Pa", Kind::Pressure, 0.01),
    unit("_kpa", "kPa", Kind::Pressure, 10.0),
    unit("_mbar", "mbar", Kind::Pressure, 1.0),
    unit("_bar", "bar", Kind::Pressure, 1000.0),
    unit("_inhg", "inHg", Kind::Pressure, 33.863_89),
    unit("_mmhg", "mmHg", Kind::Pressure, 1.333_224),
    unit("_psi", "psi", Kind::Pressure, 68.947_57),
    unit("_m_s", "m/s", Kind::Speed, 1.0),
    unit("_km_h", "km/h", Kind::Speed, 1.0 / 3.6),
    unit("_kmh", "km/h", Kind::Speed, 1.0 / 3.6),
    unit("_mph", "mph", Kind::Speed, 0.447_04),
    unit("_kn", "kn", Kind::Speed, 0.514_444_4),
    unit("_knots", "kn", Kind::Speed, 0.514_444_4),
    unit("_ft_min", "ft/min", Kind::Speed, 0.005_08),
    unit("_w_m2", "W/m²", Kind::Irradiance, 1.0),
    unit("_kw_m2", "kW/m²", Kind::Irradiance, 1000.0),
    unit("_s", "s", Kind::Time, 1.0),
    // Limits end in _min for the least.
    unit("_interval_min", "min", Kind::Time, 60.0),
    unit("_minutes", "min", Kind::Time, 60.0),
    unit("_h", "h", Kind::Time, 3600.0),
    unit("_hours", "h", Kind::Time, 3600.0),
    unit("_w", "W", Kind::Power, 1.0),
    unit("_kw", "kW", Kind::Power, 1000.0),
    unit("_deg", "degrees", Kind::Angle, 1.0),
    unit("_rad", "radians", Kind::Angle, 57.295_78),
    unit("_j_per_k", "J/K", Kind::HeatCapacity, 1.0),
    unit("_kj_per_k", "kJ/K", Kind::HeatCapacity, 1000.0),
    unit("_btu_per_f", "Btu/°F", Kind::HeatCapacity, 1899.101),
    unit("_mj_kg", "MJ/kg", Kind::HeatingValue, 1.0),
    unit("_kj_kg", "kJ/kg", Kind::HeatingValue, 0.001),
    unit("_kwh_kg", "kWh/kg", Kind::HeatingValue, 3.6),
    unit("_btu_lb", "Btu/lb", Kind::HeatingValue, 0.002_326),
];

impl KeyUnit {
    /// The unit that a key ends in, if it does.
    pub fn of(key: &str) -> Option<&'static KeyUnit> {
        let key = key.to_ascii_lowercase();
        let fitting = UNITS.iter().filter(|unit| key.ends_with(unit.ending));
        fitting.max_by_key(|unit| unit.ending.len())
    }

    /// Whether it is the same unit, however it is written.
    pub fn is(&self, other: &KeyUnit) -> bool {
        self.symbol == other.symbol
    }

    /// How a number in it becomes one in another unit, such as `1 ft is 0.3048 m`; `None` where
    /// that takes more than a factor.
    pub fn conversion(&self, other: &KeyUnit) -> Option<String> {
        match (self.symbol, other.symbol) {
            ("°F", "°C") => return Some("°C is (°F − 32)/1.8".to_owned()),
            ("K", "°C") => return Some("°C is K − 273.15".to_owned()),
            ("L", "kg") => {
                return Some("1 L of cold water is about 1 kg, and weighing is surer".to_owned());
            }
            ("°C", "K") => return Some("a difference of 1 °C is 1 K".to_owned()),
            ("°F", "K") => return Some("a difference of 1 °F is 0.5556 K".to_owned()),
            _ => {}
        }
        let is_scaled = self.kind == other.kind && self.kind != Kind::Temperature;
        is_scaled.then(|| {
            let factor = self.factor / other.factor;
            let near = |decimals: &usize| {
                let told: f64 = format!("{factor:.decimals$}").parse().unwrap_or(0.0);
                (told - factor).abs() <= NEAR_ENOUGH * factor
            };
            let decimals = (0..MOST_DECIMALS).find(near).unwrap_or(MOST_DECIMALS);
            let factor = fixed(factor, decimals);
            format!("1 {} is {factor} {}", self.symbol, other.symbol)
        })
    }

    /// A key without its unit.
    pub fn stem<'k>(&self, key: &'k str) -> &'k str {
        key.get(..key.len() - self.ending.len()).unwrap_or(key)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn conversion(from: &str, to: &str) -> Option<String> {
        KeyUnit::of(from)?.conversion(KeyUnit::of(to)?)
    }

    #[test]
    fn the_longest_ending_is_the_unit() {
        let symbol = |key| KeyUnit::of(key).map(|unit| unit.symbol);
        assert_eq!(symbol("wind_gust_m_s"), Some("m/s"));
        assert_eq!(symbol("irradiance_min_w_m2"), Some("W/m²"));
        assert_eq!(symbol("intercept_area_ft2"), Some("ft²"));
        assert_eq!(symbol("tracking_interval_min"), Some("min"));
        assert_eq!(symbol("ambient_min"), None);
        assert_eq!(symbol("time_zone"), None);
    }

    #[test]
    fn units_are_converted_by_the_factors_of_nist_sp_811() {
        let said = |from, to| conversion(from, to).unwrap();
        assert_eq!(said("elevation_ft", "elevation_m"), "1 ft is 0.3048 m");
        assert_eq!(said("area_ft2", "area_m2"), "1 ft² is 0.0929 m²");
        assert_eq!(said("water_lb", "water_kg"), "1 lb is 0.4536 kg");
        assert_eq!(said("pressure_inhg", "pressure_hpa"), "1 inHg is 33.86 hPa");
        assert_eq!(said("wind_mph", "wind_m_s"), "1 mph is 0.447 m/s");
        assert_eq!(conversion("water_lb", "elevation_m"), None);
    }
}
