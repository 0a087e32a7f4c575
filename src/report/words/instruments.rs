//! The instruments in words, each with its standard uncertainty.

use serde::Serialize;

use crate::campaign::classes::{InstrumentKind, assumed};
use crate::campaign::model::{Instrument, Instruments, IrradianceEstimate, Plane};
use crate::language::{Message, Phrase, Words, fixed, metres_per_second};
use crate::message;
use crate::physics::wind::BEAUFORT;
use crate::procedure::{Assessment, Run};
use crate::report::spoken::{not_stated, spoken_uncertainty};
use crate::units::sentence_case;

/// One instrument.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct InstrumentRow {
    pub quantity: String,
    pub instrument: String,
    pub uncertainty: String,
}

/// The same, before it is said in a language.
struct Described {
    quantity: Message,
    instrument: Phrase,
    uncertainty: Phrase,
}

/// Each quantity with its instrument and its standard uncertainty; `budget_in` says where
/// that of an estimate stands.
pub fn instrument_rows(
    assessment: &Assessment,
    budget_in: &Message,
    words: &Words,
) -> Vec<InstrumentRow> {
    let instruments = &assessment.tested.campaign.instruments;
    let always = |quantity: Message, instrument: &Instrument| describe(quantity, instrument, true);
    let has_dry = !assessment.tested.dry_runs.is_empty();
    let has_water =
        !assessment.tested.heats_no_water() || !assessment.tested.cooling_runs.is_empty();
    let of_water = has_water.then(|| {
        always(
            message!("tested-water-temperature"),
            &instruments.water_temperature,
        )
    });
    // A dry run has no budget of its own, which would name what is assumed.
    let of_vessel = has_dry.then(|| {
        describe_assumed(
            message!("tested-vessel-temperature"),
            &instruments.vessel_temperature,
            InstrumentKind::VesselTemperature,
        )
    });
    let of_air = if has_dry {
        describe_assumed(
            message!("tested-ambient-temperature"),
            &instruments.ambient_temperature,
            InstrumentKind::Temperature,
        )
    } else {
        always(
            message!("tested-ambient-temperature"),
            &instruments.ambient_temperature,
        )
    };
    let of_mass = has_water.then(|| always(message!("tested-water-mass"), &instruments.water_mass));
    let rows = [
        of_water,
        of_vessel,
        Some(of_air),
        Some(irradiance(assessment, budget_in, instruments)),
        Some(wind(assessment, instruments)),
        of_mass,
    ];
    let said = |row: Described| InstrumentRow {
        quantity: sentence_case(&words.say(row.quantity)),
        instrument: words.say(row.instrument),
        uncertainty: words.say(row.uncertainty),
    };
    rows.into_iter().flatten().map(said).collect()
}

fn describe(quantity: Message, instrument: &Instrument, is_measured: bool) -> Described {
    Described {
        quantity,
        instrument: if is_measured {
            name_instrument(instrument)
        } else {
            message!("instrument-not-measured").into()
        },
        uncertainty: match (instrument.uncertainty, instrument.class) {
            (Some(uncertainty), _) => spoken_uncertainty(uncertainty),
            (None, Some(class)) => message!("instrument-by-class", basis = class.basis()).into(),
            // Nobody asks how sure an instrument is that was not there.
            (None, None) if !is_measured => "–".into(),
            (None, None) => not_stated(),
        },
    }
}

/// The same, with the class that is taken where neither uncertainty nor class is stated.
fn describe_assumed(quantity: Message, instrument: &Instrument, kind: InstrumentKind) -> Described {
    let described = describe(quantity, instrument, true);
    if instrument.uncertainty.is_some() || instrument.class.is_some() {
        return described;
    }
    let class = assumed(kind);
    Described {
        uncertainty: message!(
            "instrument-assumed",
            class = class.name(),
            basis = class.basis()
        )
        .into(),
        ..described
    }
}

fn is_measured(assessment: &Assessment, measures: fn(&Run) -> bool) -> bool {
    assessment.tested.all_runs().any(measures)
}

fn irradiance(
    assessment: &Assessment,
    budget_in: &Message,
    instruments: &Instruments,
) -> Described {
    let quantity = match instruments.irradiance_plane {
        _ if assessment.tested.estimates_irradiance() => message!("tested-irradiance-estimated"),
        Some(Plane::Normal) => message!("tested-irradiance-normal"),
        Some(Plane::Horizontal) => message!("tested-irradiance-horizontal"),
        None => message!("tested-irradiance-plane-assumed"),
    };
    let is_measured = is_measured(assessment, |run| run.readings.irradiance_w_m2.is_some());
    let sensor = describe(quantity, &instruments.irradiance, is_measured);
    match instruments.irradiance_estimate {
        None => sensor,
        Some(way @ IrradianceEstimate::ClearSky) => Described {
            instrument: way.describe().into(),
            uncertainty: message!(
                "instrument-uncertainty-of-model",
                budget = budget_in.clone()
            )
            .into(),
            ..sensor
        },
        Some(way) => Described {
            instrument: message!(
                "instrument-estimated",
                instrument = sensor.instrument,
                way = way.describe()
            )
            .into(),
            uncertainty: message!(
                "instrument-estimated-uncertainty",
                uncertainty = sensor.uncertainty,
                budget = budget_in.clone()
            )
            .into(),
            ..sensor
        },
    }
}

fn wind(assessment: &Assessment, instruments: &Instruments) -> Described {
    let is_by_eye = is_measured(assessment, |run| run.estimates_wind);
    let is_measured = is_measured(assessment, |run| run.readings.wind_m_s.is_some());
    let sensor = describe(
        message!("tested-wind-speed"),
        &instruments.wind_speed,
        is_measured,
    );
    if is_by_eye {
        Described {
            instrument: message!("instrument-by-eye").into(),
            uncertainty: by_eye(),
            ..sensor
        }
    } else {
        sensor
    }
}

/// How far off an estimate by eye may be: as far as a number of the scale reaches, such as the
/// first.
fn by_eye() -> Phrase {
    let light_air = &BEAUFORT[1];
    let ends = message!(
        "ends-of-range",
        low = fixed(light_air.lowest_m_s, 1),
        high = fixed(light_air.highest_m_s, 1)
    );
    message!(
        "instrument-by-eye-uncertainty",
        speeds = metres_per_second(ends.into())
    )
    .into()
}

/// Of an instrument; its uncertainty beside it may be stated all the same.
fn not_described() -> Phrase {
    message!("instrument-not-described").into()
}

/// What the instrument is: the tester's words, else its class.
fn name_instrument(instrument: &Instrument) -> Phrase {
    match (&instrument.description, &instrument.id) {
        (Some(description), Some(id)) => {
            message!("instrument-with-id", description = description, id = id).into()
        }
        (Some(only), None) | (None, Some(only)) => only.into(),
        (None, None) => instrument
            .class
            .map_or_else(not_described, |class| class.name().into()),
    }
}
