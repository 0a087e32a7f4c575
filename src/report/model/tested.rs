//! What was tested, where, when, with what, by whom.

use serde::Serialize;

use super::report::{Figure, Row};
use crate::campaign::model::{Instrument, IrradianceEstimate, Plane, Uncertainty};
use crate::procedure::Assessment;
use crate::report::Edition;
use crate::units::{counted, fixed, listed, range, short, spoken_date};

/// What a report says where the campaign file says nothing.
pub const NOT_STATED: &str = "not stated";

/// Section 1.
#[derive(Debug, Clone, Serialize)]
pub struct Tested {
    pub groups: Vec<Group>,
    pub instruments: Vec<InstrumentRow>,
    pub instruments_note: String,
    pub photo: Option<Figure>,
}

/// Facts under one heading.
#[derive(Debug, Clone, Serialize)]
pub struct Group {
    pub name: String,
    pub rows: Vec<Row>,
}

/// One instrument.
#[derive(Debug, Clone, Serialize)]
pub struct InstrumentRow {
    pub quantity: String,
    pub instrument: String,
    pub uncertainty: String,
}

/// One line under the title.
pub fn subtitle(assessment: &Assessment) -> String {
    let campaign = &assessment.campaign;
    let mut parts = vec![
        format!(
            "{}, {} m²",
            campaign.cooker.kind.describe(),
            fixed(campaign.cooker.intercept_area_m2, 2)
        ),
        format!(
            "{}, {} m",
            campaign.site.name,
            fixed(campaign.site.elevation_m, 0)
        ),
        test_dates(assessment),
    ];
    if let Some(tester) = &campaign.tester {
        parts.push(format!("tested by {tester}"));
    }
    parts.join(" · ")
}

/// First and last date of test: `16 to 19 September 2026`.
pub fn test_dates(assessment: &Assessment) -> String {
    let dates = assessment.runs.iter().map(|run| run.date);
    let (Some(first), Some(last)) = (dates.clone().min(), dates.max()) else {
        return NOT_STATED.to_owned();
    };
    let same_year = first.year() == last.year();
    let start = match (same_year, same_year && first.month() == last.month()) {
        _ if first == last => return spoken_date(first),
        (_, true) => first.strftime("%-d").to_string(),
        (true, _) => first.strftime("%-d %B").to_string(),
        _ => spoken_date(first),
    };
    format!("{start} to {}", spoken_date(last))
}

/// Puts section 1 into words.
pub fn tested(assessment: &Assessment, edition: &Edition) -> Tested {
    let photo = assessment
        .campaign
        .cooker
        .photo
        .as_ref()
        .map(|photo| Figure {
            file: format!("photo.{}", photo.extension),
            caption: "The cooker as tested.".to_owned(),
            alt: format!(
                "Photograph of the cooker {}",
                assessment.campaign.cooker.name
            ),
        });
    Tested {
        groups: groups(assessment, edition),
        instruments: instrument_rows(assessment),
        instruments_note: "Uncertainties are standard uncertainties (k = 1), as the tester states them; section 5 says what is taken where none is stated. The practice asks for the water sensor in the water, at the centre, 10 mm above the bottom, for the wind beside the cooker at its height, and for an even load over the vessels (from memory); none of these is checked here.".to_owned(),
        photo,
    }
}

/// Each quantity with its instrument and its standard uncertainty.
pub fn instrument_rows(assessment: &Assessment) -> Vec<InstrumentRow> {
    let is_measured =
        |measures: fn(&crate::procedure::Run) -> bool| assessment.runs.iter().any(measures);
    let instruments = &assessment.campaign.instruments;
    let plane = match instruments.irradiance_plane {
        _ if assessment.estimates_irradiance() => "irradiance, estimated",
        Some(Plane::Normal) => "irradiance, normal to the beam",
        Some(Plane::Horizontal) => "irradiance, horizontal plane",
        None => "irradiance, plane not stated, taken as normal to the beam",
    };
    let row = |quantity: &str, instrument: &Instrument, measured: bool| InstrumentRow {
        quantity: quantity.to_owned(),
        instrument: if measured {
            name_instrument(instrument)
        } else {
            "not measured".to_owned()
        },
        uncertainty: match instrument.uncertainty {
            Some(uncertainty) => spoken_uncertainty(uncertainty),
            None => instrument.class.map_or_else(
                || NOT_STATED.to_owned(),
                |class| format!("by its class, {}", class.basis),
            ),
        },
    };
    let sun = row(
        plane,
        &instruments.irradiance,
        is_measured(|run| run.readings.irradiance_w_m2.is_some()),
    );
    let sun = match instruments.irradiance_estimate {
        Some(way) => InstrumentRow {
            instrument: match way {
                IrradianceEstimate::ClearSky => way.describe().to_owned(),
                _ => format!("{}, {}", sun.instrument, way.describe()),
            },
            uncertainty: format!(
                "{}; section 5",
                match way {
                    IrradianceEstimate::ClearSky => "that of the model".to_owned(),
                    _ => sun.uncertainty,
                }
            ),
            ..sun
        },
        None => sun,
    };
    let wind = row(
        "wind speed",
        &instruments.wind_speed,
        is_measured(|run| run.readings.wind_m_s.is_some()),
    );
    let wind = if is_measured(|run| run.estimates_wind) {
        InstrumentRow {
            instrument: "by eye, Beaufort scale (WMO-No. 8)".to_owned(),
            uncertainty: "the range of a number, such as 0.3 to 1.5 m/s".to_owned(),
            ..wind
        }
    } else {
        wind
    };
    vec![
        row("water temperature", &instruments.water_temperature, true),
        row(
            "ambient temperature",
            &instruments.ambient_temperature,
            true,
        ),
        sun,
        wind,
        row("mass of water", &instruments.water_mass, true),
    ]
}

fn groups(assessment: &Assessment, edition: &Edition) -> Vec<Group> {
    let group = |name: &str, rows: Vec<Row>| Group {
        name: name.to_owned(),
        rows,
    };
    vec![
        group("Cooker", cooker_rows(assessment)),
        group("Load", load_rows(assessment)),
        group("Site", site_rows(assessment)),
        group("Test", test_rows(assessment, edition)),
    ]
}

fn cooker_rows(assessment: &Assessment) -> Vec<Row> {
    let cooker = &assessment.campaign.cooker;
    let mut rows = vec![
        Row::new("name", cooker.name.clone()),
        Row::new("type", cooker.kind.describe()),
        Row::new(
            "intercept area",
            format!("{} m²", fixed(cooker.intercept_area_m2, 3)),
        ),
    ];
    if let Some(aperture) = &cooker.aperture {
        let incidence = match aperture.incidence_deg {
            0.0 => String::new(),
            degrees => format!(", beam {}° off its normal", short(degrees)),
        };
        rows.push(Row::new("aperture", aperture.shape.describe() + &incidence));
    }
    if let Some(description) = &cooker.description {
        rows.push(Row::new("description", description.clone()));
    }
    if let Some(mass_kg) = cooker.mass_kg {
        rows.push(Row::new("mass", format!("{} kg", short(mass_kg))));
    }
    if let Some(cost) = cooker.cost {
        let currency = cooker
            .currency
            .as_deref()
            .unwrap_or("(currency not stated)");
        rows.push(Row::new("cost", format!("{} {currency}", short(cost))));
    }
    rows
}

fn load_rows(assessment: &Assessment) -> Vec<Row> {
    let loads = assessment
        .runs
        .iter()
        .map(|run| (run.plan.water_kg, run.load_kg_m2));
    let (lowest, highest) = loads.fold(
        ((f64::INFINITY, f64::INFINITY), (0.0_f64, 0.0_f64)),
        |(low, high), load| {
            (
                (low.0.min(load.0), low.1.min(load.1)),
                (high.0.max(load.0), high.1.max(load.1)),
            )
        },
    );
    vec![
        Row::new("water", format!("{} kg", range(lowest.0, highest.0, 2))),
        Row::new(
            "per intercept area",
            format!(
                "{} kg/m² (practice: {} kg/m²)",
                range(lowest.1, highest.1, 2),
                short(assessment.limits.of_finding("load-off"))
            ),
        ),
        Row::new("vessels", assessment.campaign.vessels.to_string()),
    ]
}

fn site_rows(assessment: &Assessment) -> Vec<Row> {
    let site = &assessment.campaign.site;
    let degrees = |value: f64, positive: char, negative: char| {
        let side = if value < 0.0 { negative } else { positive };
        format!("{}° {side}", fixed(value.abs(), 2))
    };
    let latitude = degrees(site.latitude_deg, 'N', 'S');
    let longitude = degrees(site.longitude_deg, 'E', 'W');
    let pressure = match site.pressure_hpa {
        Some(pressure_hpa) => format!("from a measured {} hPa", short(pressure_hpa)),
        None => "from the elevation".to_owned(),
    };
    vec![
        Row::new("name", site.name.clone()),
        Row::new(
            "position",
            format!("{latitude}, {longitude}, {} m", fixed(site.elevation_m, 0)),
        ),
        Row::new(
            "water boils at",
            format!("{} °C, {pressure}", fixed(assessment.boiling_point_c, 1)),
        ),
        Row::new("time zone", site.time_zone_name.clone()),
    ]
}

fn test_rows(assessment: &Assessment, edition: &Edition) -> Vec<Row> {
    let campaign = &assessment.campaign;
    let stated = |value: &Option<String>| value.clone().unwrap_or_else(|| NOT_STATED.to_owned());
    let zone = campaign.site.time_zone.clone();
    vec![
        Row::new(
            "method",
            format!(
                "ASAE {}, testing and reporting solar cooker performance",
                campaign.procedure
            ),
        ),
        Row::new(
            "dates",
            format!(
                "{}, {}",
                test_dates(assessment),
                counted(assessment.runs.len(), "run")
            ),
        ),
        Row::new("tracking", tracking(assessment)),
        Row::new("tested by", stated(&campaign.tester)),
        Row::new("for", stated(&campaign.client)),
        Row::new(
            "report issued",
            spoken_date(edition.issued.to_zoned_datetime(zone).date()),
        ),
    ]
}

fn tracking(assessment: &Assessment) -> String {
    let mut minutes: Vec<f64> = assessment
        .runs
        .iter()
        .filter_map(|run| run.plan.tracking_interval_min)
        .collect();
    minutes.sort_by(f64::total_cmp);
    minutes.dedup();
    if minutes.is_empty() {
        return NOT_STATED.to_owned();
    }
    let words: Vec<String> = minutes.into_iter().map(short).collect();
    format!("re-aimed every {} min", listed(&words))
}

fn name_instrument(instrument: &Instrument) -> String {
    match (&instrument.description, &instrument.id) {
        (Some(description), Some(id)) => format!("{description} ({id})"),
        (Some(only), None) | (None, Some(only)) => only.clone(),
        (None, None) => instrument
            .class
            .map_or_else(|| NOT_STATED.to_owned(), |class| class.name.to_owned()),
    }
}

/// A standard uncertainty with its unit.
pub fn spoken_uncertainty(uncertainty: Uncertainty) -> String {
    match uncertainty {
        Uncertainty::Relative(fraction) => {
            let percent = format!("{:.4}", fraction * 100.0);
            format!(
                "{} % of the reading",
                percent.trim_end_matches('0').trim_end_matches('.')
            )
        }
        Uncertainty::Kelvin(kelvin) => format!("{} K", short(kelvin)),
        Uncertainty::MetresPerSecond(speed) => format!("{} m/s", short(speed)),
        Uncertainty::Seconds(seconds) => format!("{} s", short(seconds)),
    }
}
