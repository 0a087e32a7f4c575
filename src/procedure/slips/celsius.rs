//! Water in degrees Celsius whose column says degrees Fahrenheit.

use crate::campaign::kinds::RunKind;
use crate::language::{Message, celsius, fixed};
use crate::logs::quantity::Quantity;
use crate::message;
use crate::procedure::run::Run;
use crate::procedure::tested::Tested;
use crate::units::celsius_to_fahrenheit;

/// The symbol of the unit that is doubted.
const FAHRENHEIT: &str = "°F";
/// Water is put out as warm as the air, or nearly, K. Common practice, no published source.
const NEAR_AIR_K: f64 = 8.0;
/// Nobody puts out water so much colder than the air, K: water at 5 °C would stand in air of more
/// than 25 °C. Common practice, no published source.
const COLDER_THAN_AIR_K: f64 = 20.0;
/// Water so cold is ice, even by a sensor that is off, °C. Common practice, no published source.
const FROZEN_C: f64 = -2.0;
/// The numbers rise by as much as heated water does, in whatever unit.
/// Common practice, no published source.
const HEATED_BY: f64 = 20.0;
/// Numbers of water that boils, and of a sensor that reads so much too high, K. Common practice, no
/// published source.
const ABOVE_BOILING: f64 = 3.0;

/// A column of water that is stated in degrees Fahrenheit, and looks like degrees Celsius.
#[derive(Debug, Clone, PartialEq)]
pub struct CelsiusAsFahrenheit {
    pub log: String,
    pub header: String,
    /// The first and the highest number of the column, as they are written.
    pub first_written: f64,
    pub highest_written: f64,
    /// The first as it is read, °C.
    pub first_c: f64,
    /// The air then, °C, where the first number is near it.
    pub air_c: Option<f64>,
}

/// That water of a run is in degrees Celsius in a column of degrees Fahrenheit: its numbers begin
/// near the air and end no hotter than boiling water if they are of °C, and if they are of °F the
/// water was put out far colder than the air, or frozen.
pub fn celsius_as_fahrenheit(tested: &Tested, run: &Run) -> Option<CelsiusAsFahrenheit> {
    if run.plan.kind != RunKind::Water {
        return None;
    }
    let account = tested
        .accounts
        .iter()
        .find(|account| account.log == run.plan.log)?;
    let columns_of = |quantity: Quantity| {
        let columns = account.columns.iter();
        columns.filter(move |column| column.quantity == quantity)
    };
    // Of several sensors one in °C would have shown the other to be wrong.
    if columns_of(Quantity::Water).any(|column| column.unit != FAHRENHEIT) {
        return None;
    }
    let header = columns_of(Quantity::Water).next()?.header.clone();
    let water_c = &run.readings.water_c.value;
    let first_c = *water_c.first()?;
    let highest_c = water_c.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let first_written = celsius_to_fahrenheit(first_c);
    let highest_written = celsius_to_fahrenheit(highest_c);
    let air = run.readings.ambient_c.as_ref();
    let air_c = air.and_then(|air| air.value.first().copied());
    let is_air_in_fahrenheit =
        columns_of(Quantity::Ambient).any(|column| column.unit == FAHRENHEIT);
    // Whoever mistook the unit of the water may have mistaken that of the air.
    let is_near = |air_c: f64| (first_written - air_c).abs() <= NEAR_AIR_K;
    let begins_as_air = air_c.is_none_or(|air_c| {
        is_near(air_c) || (is_air_in_fahrenheit && is_near(celsius_to_fahrenheit(air_c)))
    });
    let is_too_cold =
        first_c < FROZEN_C || air_c.is_some_and(|air_c| first_c < air_c - COLDER_THAN_AIR_K);
    let is_slip = begins_as_air
        && is_too_cold
        && highest_written > first_written + HEATED_BY
        && highest_written <= tested.boiling_point_c + ABOVE_BOILING;
    is_slip.then(|| CelsiusAsFahrenheit {
        log: run.plan.label.clone(),
        header,
        first_written,
        highest_written,
        first_c,
        air_c: air_c.filter(|air_c| is_near(*air_c)),
    })
}

impl CelsiusAsFahrenheit {
    /// What it says.
    pub fn message(&self) -> Message {
        let said = match self.air_c {
            Some(air_c) => message!(
                "notice-celsius-as-fahrenheit",
                air = celsius(fixed(air_c, 0))
            ),
            None => message!("notice-celsius-as-fahrenheit-no-air"),
        };
        said.with("log", &self.log)
            .with("column", &self.header)
            .with("first", fixed(self.first_written, 0))
            .with("highest", fixed(self.highest_written, 0))
            .with("first_c", celsius(fixed(self.first_c, 0)))
    }
}
