//! What a typed log's run has to say of itself, where the campaign's logs are written
//! another way than a typed one.

use super::form::{Column, Form};
use super::sheet::Sheet;
use crate::campaign::model::{Columns, DateOrder, Delimiter, Format, LogRules, Units};

/// Keys and values of a run's table, each inside `units`, `format` or `columns`.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct OwnRules {
    pub units: Vec<(&'static str, String)>,
    pub format: Vec<(&'static str, String)>,
    pub columns: Vec<(&'static str, String)>,
}

/// The keys by which a typed log differs from the rules that hold for all logs;
/// `time_zone` is the site's.
pub fn own_rules(sheet: &Sheet, rules: &LogRules, time_zone: &str) -> OwnRules {
    OwnRules {
        units: own_units(&sheet.form, &rules.units),
        format: own_format(&rules.format, time_zone),
        columns: own_columns(&sheet.form, &rules.columns),
    }
}

fn own_units(form: &Form, units: &Units) -> Vec<(&'static str, String)> {
    let differing = form.columns().filter_map(|column| {
        let (quantity, unit) = (form.quantity(column)?, form.unit(column)?);
        let declared = quantity.declared_unit(units)?;
        (declared.symbol() != unit).then(|| (quantity.key(), unit.to_owned()))
    });
    differing.collect()
}

fn own_format(format: &Format, time_zone: &str) -> Vec<(&'static str, String)> {
    let mut own = Vec::new();
    let has_other_order = |order: &DateOrder| *order != DateOrder::YearMonthDay;
    for (key, is_needed, value) in [
        (
            "delimiter",
            format.delimiter.is_some_and(|d| d != Delimiter::Comma),
            ",",
        ),
        (
            "decimal_mark",
            format.decimal_mark.is_some_and(|mark| mark != '.'),
            ".",
        ),
        ("thousands_mark", format.thousands_mark == Some('.'), "'"),
        (
            "date_order",
            format.date_order.as_ref().is_some_and(has_other_order),
            "year-month-day",
        ),
        ("time_zone", format.time_zone.is_some(), time_zone),
        ("encoding", format.encoding.is_some(), "utf-8"),
    ] {
        if is_needed {
            own.push((key, value.to_owned()));
        }
    }
    own
}

fn own_columns(form: &Form, columns: &Columns) -> Vec<(&'static str, String)> {
    let named = form.columns().filter_map(|column| {
        let (key, is_named) = match (column, form.quantity(column)) {
            (Column::Time, _) => ("time", !columns.time.is_empty()),
            (_, Some(quantity)) => (quantity.key(), !quantity.named(columns).is_empty()),
            (_, None) => return None,
        };
        is_named.then(|| (key, form.header(column)))
    });
    named.collect()
}

impl OwnRules {
    /// The tables that hold something, by the name of each.
    pub fn tables(&self) -> impl Iterator<Item = (&'static str, &[(&'static str, String)])> {
        let all = [
            ("units", self.units.as_slice()),
            ("format", self.format.as_slice()),
            ("columns", self.columns.as_slice()),
        ];
        all.into_iter().filter(|(_, keys)| !keys.is_empty())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::campaign::kinds::RunKind;
    use crate::entry::form::tests::form_of;
    use crate::entry::sheet::tests::{sheet, sheet_of};
    use crate::measure::{Kind, Unit};

    #[test]
    fn nothing_is_said_where_the_rules_fit() {
        let rules = LogRules {
            units: Units {
                water_temperature: Unit::parse("°C", &[Kind::Temperature]),
                wind_speed: Unit::parse("Bft", &[Kind::Speed]),
                ..Units::default()
            },
            ..LogRules::default()
        };
        assert_eq!(
            own_rules(&sheet("°C", &[]), &rules, "UTC"),
            OwnRules::default()
        );
    }

    #[test]
    fn what_differs_is_said() {
        let rules = LogRules {
            units: Units {
                water_temperature: Unit::parse("K", &[Kind::Temperature]),
                wind_speed: Unit::parse("km/h", &[Kind::Speed]),
                ..Units::default()
            },
            format: Format {
                delimiter: Some(Delimiter::Semicolon),
                decimal_mark: Some(','),
                thousands_mark: Some('.'),
                ..Format::default()
            },
            columns: Columns {
                wind_speed: Some("Ch 5".to_owned()),
                ..Columns::default()
            },
            ..LogRules::default()
        };
        let own = own_rules(&sheet("°C", &[]), &rules, "UTC");
        let keys = |keys: &[(&'static str, String)]| -> Vec<String> {
            keys.iter()
                .map(|(key, value)| format!("{key}={value}"))
                .collect()
        };
        assert_eq!(keys(&own.units), ["water_temperature=°C", "wind_speed=Bft"]);
        assert_eq!(
            keys(&own.format),
            ["delimiter=,", "decimal_mark=.", "thousands_mark='"]
        );
        assert_eq!(keys(&own.columns), ["wind_speed=wind (Bft)"]);
    }
    #[test]
    fn a_dry_run_says_what_differs_of_the_vessel() {
        let rules = LogRules {
            units: Units {
                water_temperature: Unit::parse("K", &[Kind::Temperature]),
                vessel_temperature: Unit::parse("K", &[Kind::Temperature]),
                ..Units::default()
            },
            columns: Columns {
                vessel_temperature: Some("Ch 2".to_owned()),
                irradiance: Some("Ch 3".to_owned()),
                ..Columns::default()
            },
            ..LogRules::default()
        };
        let own = |kind: RunKind| own_rules(&sheet_of(form_of(kind, "°F"), &[]), &rules, "UTC");
        let dry = own(RunKind::Dry);
        assert_eq!(dry.units, [("vessel_temperature", "°F".to_owned())]);
        let columns = [
            ("vessel_temperature", "dry vessel (°F)".to_owned()),
            ("irradiance", "irradiance (W/m²)".to_owned()),
        ];
        assert_eq!(dry.columns, columns);
        let cooling = own(RunKind::Cooling);
        assert_eq!(cooling.units, [("water_temperature", "°F".to_owned())]);
        assert_eq!(cooling.columns, []);
    }
}
