//! The instruments: plane, sensitivity, uncertainty, class.

use super::classes::{CLASSES, Class, InstrumentKind, SOLAR_PANEL};
use super::locate::Checker;
use super::model::{Instrument, Instruments, IrradianceEstimate, Plane, Sensitivity};
use super::schema::{InstrumentTable, InstrumentTables, IrradianceTable};
use super::standard_uncertainty::Uncertainty;
use super::wording::{nearest, words};
use crate::believable::{
    LARGEST_RESOLUTION_K, LARGEST_SENSITIVITY, LARGEST_UNCERTAINTY, LARGEST_UNCERTAINTY_K,
    LARGEST_UNCERTAINTY_M_S, LARGEST_UNCERTAINTY_S,
};
use crate::bounds::REMARK;

/// A key for a standard uncertainty.
struct UncertaintyKey {
    name: &'static str,
    highest: f64,
    unit: &'static str,
    value: fn(&InstrumentTable) -> Option<f64>,
    wrap: fn(f64) -> Uncertainty,
}

const KEYS: [UncertaintyKey; 4] = [
    UncertaintyKey {
        name: "relative_uncertainty",
        highest: LARGEST_UNCERTAINTY,
        unit: "as a fraction (0.03 is 3 %)",
        value: |table| table.relative_uncertainty,
        wrap: Uncertainty::Relative,
    },
    UncertaintyKey {
        name: "uncertainty_k",
        highest: LARGEST_UNCERTAINTY_K,
        unit: "K",
        value: |table| table.uncertainty_k,
        wrap: Uncertainty::Kelvin,
    },
    UncertaintyKey {
        name: "uncertainty_m_s",
        highest: LARGEST_UNCERTAINTY_M_S,
        unit: "m/s",
        value: |table| table.uncertainty_m_s,
        wrap: Uncertainty::MetresPerSecond,
    },
    UncertaintyKey {
        name: "uncertainty_s",
        highest: LARGEST_UNCERTAINTY_S,
        unit: "s",
        value: |table| table.uncertainty_s,
        wrap: Uncertainty::Seconds,
    },
];

/// Every instrument.
pub fn check_instruments(checker: &mut Checker<'_>, written: InstrumentTables) -> Instruments {
    let plane = written.irradiance.plane.as_deref();
    let irradiance_plane = match plane {
        Some("normal") => Some(Plane::Normal),
        Some("horizontal") => Some(Plane::Horizontal),
        None => None,
        Some(other) => {
            checker.problem(
                "instruments.irradiance.plane",
                format!("found \"{other}\", expected \"normal\" or \"horizontal\""),
                "\"normal\" is a sensor kept facing the sun, \"horizontal\" one that lies flat",
            );
            None
        }
    };
    let irradiance_estimate = check_estimate(checker, &written.irradiance, irradiance_plane);
    let irradiance_plane = match irradiance_estimate {
        Some(IrradianceEstimate::FromHorizontal) => Some(Plane::Horizontal),
        _ => irradiance_plane,
    };
    let sensitivity = check_sensitivity(checker, &written.irradiance);
    let irradiance = of_irradiance(written.irradiance, irradiance_estimate);
    let mut check =
        |table: &str, written: InstrumentTable, fitting: &str, kind: Option<InstrumentKind>| {
            check_instrument(checker, table, written, fitting, kind)
        };
    let (fraction, kelvin) = ("relative_uncertainty", "uncertainty_k");
    let (water, ambient) = (written.water_temperature, written.ambient_temperature);
    let vessel = written.vessel_temperature;
    Instruments {
        irradiance_plane,
        irradiance_estimate,
        sensitivity,
        irradiance: check(
            "irradiance",
            irradiance,
            fraction,
            Some(InstrumentKind::Irradiance),
        ),
        water_temperature: check(
            "water_temperature",
            water,
            kelvin,
            Some(InstrumentKind::Temperature),
        ),
        vessel_temperature: check(
            "vessel_temperature",
            vessel,
            kelvin,
            Some(InstrumentKind::VesselTemperature),
        ),
        ambient_temperature: check(
            "ambient_temperature",
            ambient,
            kelvin,
            Some(InstrumentKind::Temperature),
        ),
        water_mass: check(
            "water_mass",
            written.water_mass,
            fraction,
            Some(InstrumentKind::Mass),
        ),
        wind_speed: check("wind_speed", written.wind_speed, "uncertainty_m_s", None),
        clock: check(
            "clock",
            written.clock,
            "uncertainty_s",
            Some(InstrumentKind::Clock),
        ),
    }
}

/// The table of irradiance as that of any instrument; a solar panel's class is its own.
fn of_irradiance(
    written: IrradianceTable,
    estimate: Option<IrradianceEstimate>,
) -> InstrumentTable {
    InstrumentTable {
        relative_uncertainty: written.relative_uncertainty,
        class: written.class.or_else(|| {
            let is_panel = estimate == Some(IrradianceEstimate::SolarPanel);
            is_panel.then(|| SOLAR_PANEL.to_owned())
        }),
        id: written.id,
        description: written.description,
        ..InstrumentTable::default()
    }
}

/// How irradiance is estimated, where it is.
fn check_estimate(
    checker: &mut Checker<'_>,
    written: &IrradianceTable,
    plane: Option<Plane>,
) -> Option<IrradianceEstimate> {
    const KEY: &str = "instruments.irradiance.estimate";
    let word = written.estimate.as_deref()?;
    let mut ways = IrradianceEstimate::ALL.into_iter();
    let Some(way) = ways.find(|way| way.word() == word) else {
        let known = IrradianceEstimate::ALL.map(IrradianceEstimate::word);
        let near = nearest(word, known).map_or_else(
            || "leave the key out for a sensor at the cooker that faces the sun".to_owned(),
            |near| format!("did you mean \"{near}\"?"),
        );
        let what = format!("found \"{word}\", expected one of {}", words(known));
        checker.problem(KEY, what, near);
        return None;
    };
    let has_sensor = written.relative_uncertainty.is_some() || written.class.is_some();
    let (what, hint) = match (way, plane) {
        (IrradianceEstimate::ClearSky, _) if has_sensor => (
            "the clear-sky model is no instrument and has an uncertainty of its own",
            "delete class and relative_uncertainty, or delete estimate if a sensor was there",
        ),
        (IrradianceEstimate::ClearSky, Some(Plane::Horizontal))
        | (IrradianceEstimate::FromHorizontal, Some(Plane::Normal)) => (
            "does not go together with the plane",
            "delete plane: the model gives the plane normal to the beam, and \"from-horizontal\" a sensor that lies flat",
        ),
        (IrradianceEstimate::Station | IrradianceEstimate::SolarPanel, None) => (
            "needs the plane of the sensor",
            "write plane = \"horizontal\" if it lies flat, as at most stations, or \"normal\"",
        ),
        _ => return Some(way),
    };
    checker.problem(KEY, what, hint);
    None
}

fn check_sensitivity(checker: &mut Checker<'_>, written: &IrradianceTable) -> Sensitivity {
    for (key, value) in [
        ("sensitivity_uv_per_w_m2", written.sensitivity_uv_per_w_m2),
        ("sensitivity_ma_per_w_m2", written.sensitivity_ma_per_w_m2),
    ] {
        let Some(value) = value else { continue };
        checker.positive(
            &format!("instruments.irradiance.{key}"),
            value,
            LARGEST_SENSITIVITY,
            "",
        );
    }
    Sensitivity {
        uv_per_w_m2: written.sensitivity_uv_per_w_m2,
        ma_per_w_m2: written.sensitivity_ma_per_w_m2,
    }
}

/// An instrument whose uncertainty stands under the one key that fits its quantity.
fn check_instrument(
    checker: &mut Checker<'_>,
    table: &str,
    written: InstrumentTable,
    fitting: &str,
    kind: Option<InstrumentKind>,
) -> Instrument {
    let path = |key: &str| format!("instruments.{table}.{key}");
    let mut uncertainty = None;
    for key in &KEYS {
        let Some(value) = (key.value)(&written) else {
            continue;
        };
        if key.name == fitting {
            checker.in_range(&path(key.name), value, &(0.0..=key.highest), key.unit);
            uncertainty = Some((key.wrap)(value));
        } else {
            let hint = format!("did you mean \"{fitting}\"?");
            checker.problem(&path(key.name), "unknown key", hint);
        }
    }
    if let Some(step_k) = written.resolution_k {
        if kind.is_some_and(InstrumentKind::is_thermometer) {
            checker.positive(&path("resolution_k"), step_k, LARGEST_RESOLUTION_K, "K");
        } else {
            let hint = "only thermometers have one here; delete the key";
            checker.problem(&path("resolution_k"), "unknown key", hint);
        }
    }
    for (key, text) in [("id", &written.id), ("description", &written.description)] {
        checker.length(&path(key), text.as_deref(), &REMARK);
    }
    Instrument {
        class: written
            .class
            .and_then(|word| check_class(checker, &path("class"), &word, kind)),
        id: written.id,
        description: written.description,
        uncertainty,
        resolution_k: written.resolution_k,
    }
}

/// A class by its word.
fn check_class(
    checker: &mut Checker<'_>,
    path: &str,
    word: &str,
    kind: Option<InstrumentKind>,
) -> Option<&'static Class> {
    let fitting = CLASSES
        .iter()
        .filter(|class| kind.is_some_and(|kind| kind.knows(class.kind)));
    let found = fitting.clone().find(|class| class.word == word);
    if found.is_none() {
        let words: Vec<&str> = fitting.map(|class| class.word).collect();
        let (what, hint) = match nearest(word, words.iter().copied()) {
            _ if words.is_empty() => (
                "unknown key".to_owned(),
                "this instrument has no classes; delete the key".to_owned(),
            ),
            near => (
                format!("found \"{word}\", expected one of {}", words.join(", ")),
                near.map_or_else(
                    || "or leave it out and state the uncertainty itself".to_owned(),
                    |near| format!("did you mean \"{near}\"?"),
                ),
            ),
        };
        checker.problem(path, what, hint);
    }
    found
}
