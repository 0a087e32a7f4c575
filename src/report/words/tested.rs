//! What was tested, where, when, with what, by whom.

use jiff::civil::Date;
use serde::Serialize;

use super::instruments::{InstrumentRow, instrument_rows};
use crate::campaign::Campaign;
use crate::campaign::model::{IrradianceEstimate, Site};
use crate::language::{
    Message, Phrase, UnitSystem, Words, celsius, date, fixed, joined, kilograms,
    kilograms_per_square_metre, listed, metres, range, short, square_metres, within_brackets,
};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::dry_vessel::plateau::Plateau;
use crate::procedure::limit::with_unit;
use crate::procedure::spans::Summary;
use crate::report::Edition;
use crate::report::rows::{Figure, Row};
use crate::report::sections::{Section, Sections};
use crate::report::spoken::not_stated;
use crate::units::sentence_case;

/// Section 1.
#[derive(Debug, Clone, Serialize)]
pub struct Tested {
    /// For two columns of as many groups each.
    pub groups: Vec<Group>,
    /// What of all that is not checked.
    pub stated_note: String,
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

/// What the campaign file says, else that it says nothing.
fn stated(text: &Option<String>) -> Phrase {
    text.as_ref().map_or_else(not_stated, Into::into)
}

/// One line under the title.
pub fn subtitle(assessment: &Assessment, units: UnitSystem) -> Phrase {
    let campaign = &assessment.tested.campaign;
    let cooker = message!(
        "subtitle-cooker",
        cooker = campaign.cooker.kind.describe(),
        area = square_metres(fixed(campaign.cooker.intercept_area_m2, 2))
    );
    let site = message!(
        "subtitle-site",
        site = &campaign.site.name,
        elevation = metres(fixed(campaign.site.elevation_m, 0))
    );
    let mut parts: Vec<Phrase> = vec![cooker.into(), site.into(), test_dates(assessment)];
    let tester = campaign.tester.iter();
    parts.extend(tester.map(|tester| message!("subtitle-tester", tester = tester).into()));
    // The longer line breaks, and no line begins with the dot.
    let between = match units {
        UnitSystem::Si => " · ",
        UnitSystem::Us => "\u{a0}· ",
    };
    joined(parts, between)
}

/// First and last date of test: `16 to 19 September 2026`.
pub fn test_dates(assessment: &Assessment) -> Phrase {
    let dates = assessment.tested.all_runs().map(|run| run.date);
    match (dates.clone().min(), dates.max()) {
        (Some(first), Some(last)) => spoken_dates(first, last),
        _ => not_stated(),
    }
}

/// Two dates, what both share said once.
pub fn spoken_dates(first: Date, last: Date) -> Phrase {
    let day = first.day().to_string();
    if first == last {
        date(first)
    } else if first.year() != last.year() {
        message!("dates", first = date(first), last = date(last)).into()
    } else if first.month() != last.month() {
        let month = Message::new(format!("month-{}", first.month()));
        message!(
            "dates-of-a-year",
            day = day,
            month = month,
            last = date(last)
        )
        .into()
    } else {
        message!("dates-of-a-month", first = day, last = date(last)).into()
    }
}

/// Puts section 1 into words.
pub fn tested(assessment: &Assessment, sections: &Sections, edition: &Edition) -> Tested {
    let words = &edition.words;
    let cooker = &assessment.tested.campaign.cooker;
    let photo = cooker.photo.as_ref().map(|photo| Figure {
        file: format!("photo.{}", photo.extension),
        caption: words.say(message!("tested-photo")),
        alt: words.say(message!("tested-photo-alt", cooker = &cooker.name)),
    });
    Tested {
        groups: groups(assessment, edition),
        stated_note: words.say(message!("tested-stated-note")),
        instruments: instrument_rows(assessment, &budget_in(assessment, sections), words),
        instruments_note: instruments_note(assessment, sections, words),
        photo,
    }
}

/// Where the budget of an estimate stands.
fn budget_in(assessment: &Assessment, sections: &Sections) -> Message {
    if assessment.tested.heats_no_water() {
        return message!("budget-not-told-apart");
    }
    message!(
        "budget-in-section",
        section = sections.number(Section::Regression)
    )
}

fn instruments_note(assessment: &Assessment, sections: &Sections, words: &Words) -> String {
    words.say(
        if assessment.tested.heats_no_water() && assessment.tested.dry_runs.is_empty() {
            message!("tested-instruments-note-cooling")
        } else if assessment.tested.heats_no_water() {
            message!("tested-instruments-note-dry")
        } else {
            message!(
                "tested-instruments-note",
                section = sections.number(Section::Regression)
            )
        },
    )
}

fn groups(assessment: &Assessment, edition: &Edition) -> Vec<Group> {
    let words = &edition.words;
    let group = |name: Message, rows: Vec<(Message, Phrase)>| Group {
        name: words.say(name),
        rows: form_rows(words, rows),
    };
    vec![
        group(message!("tested-cooker"), cooker_rows(assessment)),
        group(message!("tested-load"), load_rows(assessment)),
        environment(assessment, words),
        group(
            message!("tested-site"),
            site_rows(
                &assessment.tested.campaign.site,
                assessment.tested.boiling_point_c,
            ),
        ),
        group(message!("tested-test"), test_rows(assessment, edition)),
        group(
            message!("tested-parties"),
            party_rows(&assessment.tested.campaign),
        ),
    ]
}

/// Air, sun and wind of what counts: the used intervals; where no water heats, the plateaus or the
/// cooling runs.
fn environment(assessment: &Assessment, words: &Words) -> Group {
    let tested = &assessment.tested;
    let (name, rows) = if !tested.heats_no_water() {
        (message!("tested-environment"), environment_rows(assessment))
    } else if tested.dry_runs.is_empty() {
        (message!("tested-environment-cooling"), air_rows(assessment))
    } else {
        (message!("tested-environment-dry"), plateau_rows(assessment))
    };
    Group {
        name: words.say(name),
        rows: form_rows(words, rows),
    }
}

/// Rows as in a form: labels and our own words begin with a capital letter, the tester's stay as
/// they are. What is not stated is gathered in one row below the others.
fn form_rows(words: &Words, rows: Vec<(Message, Phrase)>) -> Vec<Row> {
    let (unstated, stated): (Vec<_>, Vec<_>) = rows
        .into_iter()
        .partition(|(_, text)| *text == not_stated());
    let row = |(label, text): (Message, Phrase)| {
        let is_testers = matches!(text, Phrase::Text(_));
        let said = words.say(text);
        let text = if is_testers {
            said
        } else {
            sentence_case(&said)
        };
        Row::new(&sentence_case(&words.say(label)), text)
    };
    let labels: Vec<Phrase> = unstated
        .into_iter()
        .map(|(label, _)| label.into())
        .collect();
    let last = (!labels.is_empty()).then(|| (message!("not-stated"), joined(labels, ", ")));
    stated.into_iter().chain(last).map(row).collect()
}

/// The air of the cooling runs.
fn air_rows(assessment: &Assessment) -> Vec<(Message, Phrase)> {
    let runs = assessment.tested.cooling_runs.iter();
    let air = runs.filter_map(|run| run.readings.ambient_c.as_ref());
    let values = air.flat_map(|air| air.value.iter().copied());
    let (coolest, warmest) = values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), c| {
        (low.min(c), high.max(c))
    });
    vec![(
        message!("environment-ambient"),
        celsius(range(coolest, warmest, 1)),
    )]
}

/// Air and sun of the plateaus.
fn plateau_rows(assessment: &Assessment) -> Vec<(Message, Phrase)> {
    let plateaus: Vec<&Plateau> = assessment
        .dry_runs
        .plateaus()
        .map(|(_, plateau)| plateau)
        .collect();
    if plateaus.is_empty() {
        let none = message!("tested-no-plateau");
        return vec![(message!("environment-ambient"), none.into())];
    }
    let ends = |of: fn(&Plateau) -> f64| {
        let values = plateaus.iter().map(|plateau| of(plateau));
        values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| {
            (low.min(value), high.max(value))
        })
    };
    let (coolest, warmest) = ends(|plateau| plateau.ambient_c);
    let (weakest, strongest) = ends(|plateau| plateau.irradiance_w_m2);
    vec![
        (
            message!("environment-ambient"),
            celsius(range(coolest, warmest, 1)),
        ),
        (
            message!("environment-irradiance"),
            with_unit(range(weakest, strongest, 0), "W/m²"),
        ),
    ]
}

fn cooker_rows(assessment: &Assessment) -> Vec<(Message, Phrase)> {
    let cooker = &assessment.tested.campaign.cooker;
    let area = fixed(cooker.intercept_area_m2, 3);
    let mut rows: Vec<(Message, Phrase)> = vec![
        (message!("tested-name"), (&cooker.name).into()),
        (
            message!("tested-identification"),
            stated(&cooker.identification),
        ),
        (message!("tested-type"), cooker.kind.describe().into()),
        (message!("tested-area"), square_metres(area)),
    ];
    if let Some(aperture) = &cooker.aperture {
        let shape = aperture.shape.describe();
        let shape = match aperture.incidence_deg {
            0.0 => shape,
            degrees => message!(
                "aperture-off-normal",
                shape = shape,
                degrees = short(degrees)
            ),
        };
        rows.push((message!("tested-aperture"), shape.into()));
    }
    rows.extend([
        (message!("tested-description"), stated(&cooker.description)),
        (message!("tested-condition"), stated(&cooker.condition)),
        (
            message!("tested-received"),
            cooker.received.map_or_else(not_stated, date),
        ),
    ]);
    if let Some(mass_kg) = cooker.mass_kg {
        rows.push((message!("tested-mass"), kilograms(short(mass_kg))));
    }
    if let Some(cost) = cooker.cost {
        let said = match &cooker.currency {
            Some(currency) => message!("tested-cost-text", currency = currency),
            None => message!("tested-cost-no-currency"),
        };
        rows.push((
            message!("tested-cost"),
            said.with("cost", short(cost)).into(),
        ));
    }
    rows
}

fn load_rows(assessment: &Assessment) -> Vec<(Message, Phrase)> {
    let mut rows = water_rows(assessment);
    let campaign = &assessment.tested.campaign;
    rows.push((
        message!("tested-vessels"),
        campaign.vessels.to_string().into(),
    ));
    if let Some(heat) = &campaign.vessel_heat {
        let said = message!(
            "tested-vessel-heat-text",
            heat = fixed(heat.j_per_k(), 0),
            basis = heat.basis()
        );
        rows.push((message!("tested-vessel-heat"), said.into()));
    }
    if let Some(area_m2) = campaign.cooker.loss_area_m2 {
        rows.push((message!("tested-loss-area"), square_metres(short(area_m2))));
    }
    rows
}

/// What the vessels hold; nothing where no run heats or cools water.
fn water_rows(assessment: &Assessment) -> Vec<(Message, Phrase)> {
    let tested = &assessment.tested;
    if tested.heats_no_water() && tested.cooling_runs.is_empty() {
        return vec![(message!("tested-water"), message!("tested-no-water").into())];
    }
    let spread = |of: fn(&crate::procedure::Run) -> f64| {
        let runs = assessment.tested.runs.iter();
        let loads = runs.chain(&assessment.tested.cooling_runs).map(of);
        let (lowest, highest) = loads.fold((f64::INFINITY, 0.0_f64), |(low, high), load| {
            (low.min(load), high.max(load))
        });
        range(lowest, highest, 2)
    };
    let asked = assessment.s580.limits.load();
    let per_area = if asked.changed {
        message!(
            "tested-per-area-own",
            own = within_brackets(kilograms_per_square_metre(short(asked.value)))
        )
    } else {
        message!(
            "tested-per-area-text",
            practice = within_brackets(kilograms_per_square_metre(short(asked.value)))
        )
    };
    vec![
        (
            message!("tested-water"),
            kilograms(spread(|run| run.plan.water_kg)),
        ),
        (
            message!("tested-per-area"),
            per_area
                .with(
                    "load",
                    kilograms_per_square_metre(spread(|run| run.load_kg_m2)),
                )
                .into(),
        ),
    ]
}

fn site_rows(site: &Site, boiling_point_c: f64) -> Vec<(Message, Phrase)> {
    let latitude = if site.latitude_deg < 0.0 {
        message!("tested-south")
    } else {
        message!("tested-north")
    };
    let longitude = if site.longitude_deg < 0.0 {
        message!("tested-west")
    } else {
        message!("tested-east")
    };
    let position = message!(
        "tested-position-text",
        latitude = latitude.with("degrees", fixed(site.latitude_deg.abs(), 2)),
        longitude = longitude.with("degrees", fixed(site.longitude_deg.abs(), 2)),
        elevation = metres(fixed(site.elevation_m, 0))
    );
    let boiling = match site.pressure_hpa {
        Some(pressure_hpa) => {
            message!("tested-boiling-by-pressure", pressure = short(pressure_hpa))
        }
        None => message!("tested-boiling-by-elevation"),
    };
    let boiling = boiling.with("boiling", celsius(fixed(boiling_point_c, 1)));
    vec![
        (message!("tested-place"), (&site.name).into()),
        (message!("tested-position"), position.into()),
        (message!("tested-boiling"), boiling.into()),
        (message!("tested-time-zone"), (&site.time_zone_name).into()),
    ]
}

fn test_rows(assessment: &Assessment, edition: &Edition) -> Vec<(Message, Phrase)> {
    let campaign = &assessment.tested.campaign;
    let zone = campaign.site.time_zone.clone();
    let issued = edition.issued.to_zoned_datetime(zone).date();
    let method = if assessment.tested.heats_no_water() {
        message!("tested-method-none")
    } else {
        message!("tested-method-text", procedure = &campaign.procedure)
    };
    let dates = message!(
        "tested-dates-text",
        dates = test_dates(assessment),
        runs = assessment.tested.all_runs().count()
    );
    vec![
        (message!("tested-method"), method.into()),
        (message!("tested-dates"), dates.into()),
        (message!("tested-tracking"), tracking(assessment)),
        (message!("tested-issued"), date(issued)),
    ]
}

/// Who answers for the report, for whom it is, and what others contributed.
fn party_rows(campaign: &Campaign) -> Vec<(Message, Phrase)> {
    let wishes = &campaign.report;
    let stated_else = |text: &Option<String>, otherwise: Message| match text {
        Some(text) => text.into(),
        None => otherwise.into(),
    };
    let station = campaign.instruments.irradiance_estimate == Some(IrradianceEstimate::Station);
    let others = if station {
        message!("tested-others-station")
    } else {
        message!("not-stated")
    };
    vec![
        (
            message!("tested-laboratory"),
            stated_else(&wishes.laboratory, message!("tested-laboratory-not-stated")),
        ),
        (message!("tested-tester"), stated(&campaign.tester)),
        (message!("tested-authorised"), stated(&wishes.authorised_by)),
        (message!("tested-client"), stated(&campaign.client)),
        (message!("tested-contact"), stated(&wishes.client_contact)),
        (message!("tested-client-data"), stated(&wishes.client_data)),
        (
            message!("tested-sampling"),
            stated_else(&wishes.sampling, message!("tested-not-sampled")),
        ),
        (
            message!("tested-others"),
            stated_else(&wishes.external_results, others),
        ),
    ]
}

/// What surrounded the used intervals.
fn environment_rows(assessment: &Assessment) -> Vec<(Message, Phrase)> {
    let environment = assessment.s580.environment();
    let has_used = assessment.s580.used().next().is_some();
    let spoken = |of: Option<Summary>, decimals: usize, unit: &'static str| match of {
        Some(of) => {
            let numbers = message!(
                "environment-numbers",
                mean = fixed(of.mean, decimals),
                range = range(of.min, of.max, decimals)
            );
            with_unit(numbers.into(), unit)
        }
        None if has_used => message!("instrument-not-measured").into(),
        None => message!("environment-none").into(),
    };
    vec![
        (
            message!("environment-ambient"),
            spoken(environment.ambient, 1, "°C"),
        ),
        (
            message!("environment-irradiance"),
            spoken(environment.irradiance, 0, "W/m²"),
        ),
        (
            message!("environment-wind"),
            spoken(environment.wind, 1, "m/s"),
        ),
    ]
}

fn tracking(assessment: &Assessment) -> Phrase {
    let mut minutes: Vec<f64> = assessment
        .tested
        .runs
        .iter()
        .filter_map(|run| run.plan.tracking_interval_min)
        .collect();
    minutes.sort_by(f64::total_cmp);
    minutes.dedup();
    if minutes.is_empty() {
        return not_stated();
    }
    let minutes = listed(minutes.into_iter().map(short));
    message!("tested-tracking-text", minutes = minutes).into()
}
