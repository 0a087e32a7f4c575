//! The keys of a campaign file on top of those that it shares: key by key, the nearest file
//! wins. Keys that mean something together are taken from one file.

use std::borrow::Cow;
use std::ops::Range;

use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// Where a nearer file states one of the first, none of the second is taken from a file that
/// lies further up: it would say something of another thing, or say the same twice.
const SET_ASIDE: &[(&[&str], &[&str])] = &[
    (TARGETS, TARGETS),
    (&["campaign.client"], &["report.client_contact"]),
    // A site of its own has everything of its own: height, pressure and clock of another place
    // would be taken for its own without a word.
    (&["site.latitude_deg", "site.longitude_deg"], &["site"]),
    // The pressure would be that of another height.
    (&["site.elevation_m"], &["site.pressure_hpa"]),
    (WAYS, WAYS),
    (SENSITIVITIES, SENSITIVITIES),
    (&["limits.water_min_c"], &["limits.water_above_ambient_k"]),
    (&["limits.water_above_ambient_k"], &["limits.water_min_c"]),
    (&["limits.water_max_c"], &["limits.water_below_boiling_k"]),
    (&["limits.water_below_boiling_k"], &["limits.water_max_c"]),
    // An assumption and the source of it.
    (HEATING_VALUE, HEATING_VALUE),
    (STOVE, STOVE),
    (DAYS, DAYS),
];

const TARGETS: &[&str] = &[
    "campaign.target_uncertainty_w",
    "campaign.target_relative_uncertainty",
];
/// How irradiance came about.
const WAYS: &[&str] = &[
    "instruments.irradiance.plane",
    "instruments.irradiance.estimate",
];
const SENSITIVITIES: &[&str] = &[
    "instruments.irradiance.sensitivity_uv_per_w_m2",
    "instruments.irradiance.sensitivity_ma_per_w_m2",
];
const HEATING_VALUE: &[&str] = &[
    "impact.fuel",
    "impact.heating_value_mj_kg",
    "impact.heating_value_source",
];
const STOVE: &[&str] = &["impact.stove_efficiency", "impact.stove_efficiency_source"];
const DAYS: &[&str] = &["impact.days_per_year", "impact.days_source"];

/// How sure an instrument is: of these keys one file states all that count.
const UNCERTAINTIES: [&str; 5] = [
    "relative_uncertainty",
    "uncertainty_k",
    "uncertainty_m_s",
    "uncertainty_s",
    "class",
];
/// What there is of a sensor of irradiance, and not of a model.
const OF_A_SENSOR: [&str; 5] = [
    "relative_uncertainty",
    "class",
    "id",
    "sensitivity_uv_per_w_m2",
    "sensitivity_ma_per_w_m2",
];
/// The only estimate that rests on the sensor that is there.
const BY_THE_SENSOR: &str = "from-horizontal";
/// The estimate that no sensor takes part in.
const MODEL: &str = "clear-sky";

/// Which keys are not taken from a file further up where a nearer one states a key.
pub fn set_aside_by(key: &str) -> impl Iterator<Item = &'static str> {
    let rules = SET_ASIDE
        .iter()
        .filter(move |(stated, _)| stated.contains(&key));
    rules.flat_map(|(_, others)| others.iter().copied())
}

/// Adds to a file's keys those of one that lies further up; returns those that hold, such as
/// `site.name`.
pub fn merge<'t>(near: &mut DeTable<'t>, mut far: DeTable<'t>) -> Vec<String> {
    set_aside(near, &mut far);
    let mut holding = Vec::new();
    add(near, far, "", &mut holding);
    holding
}

/// Takes out of a file what does not go together with a nearer one.
fn set_aside(near: &DeTable<'_>, far: &mut DeTable<'_>) {
    for (stated, others) in SET_ASIDE {
        if stated.iter().any(|key| find(near, key).is_some()) {
            others.iter().for_each(|key| remove(far, key));
        }
    }
    let Some(DeValue::Table(instruments)) = find(near, "instruments") else {
        return;
    };
    for (name, table) in instruments {
        let Some(own) = table.get_ref().as_table() else {
            continue;
        };
        let of = |key: &str| format!("instruments.{}.{key}", name.get_ref());
        let id = |table: &DeTable<'_>, key: &str| Some(find(table, key)?.as_str()?.to_owned());
        let ids = (id(own, "id"), id(far, &of("id")));
        // An instrument of another name is another instrument: not calibrated with the first.
        if matches!(&ids, (Some(own), Some(other)) if own != other) {
            remove(far, &format!("instruments.{}", name.get_ref()));
            remove(far, "calibration");
        }
        let estimate = id(own, "estimate");
        if estimate.is_some_and(|estimate| estimate != BY_THE_SENSOR) {
            remove(far, &format!("instruments.{}", name.get_ref()));
        }
        if UNCERTAINTIES.iter().any(|key| own.contains_key(*key)) {
            UNCERTAINTIES.iter().for_each(|key| remove(far, &of(key)));
        }
        let has_sensor = OF_A_SENSOR.iter().any(|key| own.contains_key(*key));
        if has_sensor && id(far, &of("estimate")).as_deref() == Some(MODEL) {
            remove(far, &of("estimate"));
        }
    }
}

fn add<'t>(near: &mut DeTable<'t>, far: DeTable<'t>, above: &str, holding: &mut Vec<String>) {
    for (key, value) in far {
        let name = match above {
            "" => key.get_ref().to_string(),
            above => format!("{above}.{}", key.get_ref()),
        };
        let Some(own) = near.get_mut(key.get_ref().as_ref()) else {
            name_keys(value.get_ref(), &name, holding);
            near.insert(key, value);
            continue;
        };
        if let (DeValue::Table(own), DeValue::Table(further)) = (own.get_mut(), value.into_inner())
        {
            add(own, further, &name, holding);
        }
    }
}

/// Adds the name of every key of a value, or its own.
fn name_keys(value: &DeValue<'_>, name: &str, names: &mut Vec<String>) {
    match value {
        DeValue::Table(table) => {
            for (key, value) in table {
                name_keys(value.get_ref(), &format!("{name}.{}", key.get_ref()), names);
            }
        }
        _ => names.push(name.to_owned()),
    }
}

/// The value of a key such as `site.name`.
pub fn find<'v, 't>(table: &'v DeTable<'t>, key: &str) -> Option<&'v DeValue<'t>> {
    match key.split_once('.') {
        None => table.get(key).map(Spanned::get_ref),
        Some((first, rest)) => find(table.get(first)?.get_ref().as_table()?, rest),
    }
}

/// Takes a key such as `site.name` out.
pub fn remove(table: &mut DeTable<'_>, key: &str) {
    match key.split_once('.') {
        None => {
            table.remove(key);
        }
        Some((first, rest)) => {
            if let Some(DeValue::Table(below)) = table.get_mut(first).map(Spanned::get_mut) {
                remove(below, rest);
            }
        }
    }
}

/// The same table with every place so much further on.
pub fn moved<'t>(table: DeTable<'t>, by: usize) -> DeTable<'t> {
    let keys = table.into_iter().map(|(key, value)| {
        let span = on(key.span(), by);
        let key: Spanned<Cow<'t, str>> = Spanned::new(span, key.into_inner());
        (key, moved_value(value, by))
    });
    keys.collect()
}

fn moved_value<'t>(value: Spanned<DeValue<'t>>, by: usize) -> Spanned<DeValue<'t>> {
    let (span, value) = (value.span(), value.into_inner());
    let value = match value {
        DeValue::Table(table) => DeValue::Table(moved(table, by)),
        DeValue::Array(mut items) => {
            for item in items.iter_mut() {
                let taken = std::mem::replace(item, Spanned::new(0..0, DeValue::Boolean(false)));
                *item = moved_value(taken, by);
            }
            DeValue::Array(items)
        }
        other => other,
    };
    Spanned::new(on(span, by), value)
}

fn on(span: Range<usize>, by: usize) -> Range<usize> {
    span.start + by..span.end + by
}
