//! What a report quotes from memory, said once.

use crate::campaign::model::{Instruments, IrradianceEstimate, Plane};
use crate::language::{Message, clauses};
use crate::message;
use crate::procedure::Assessment;
use crate::report::sections::{Section, Sections};

/// The paragraphs: the works, and what common practice means.
pub fn unchecked(assessment: &Assessment) -> [Message; 2] {
    [
        message!("unchecked-memory", works = clauses(works(assessment))),
        message!("unchecked-common"),
    ]
}

/// Every work that this report quotes and nobody had at hand.
fn works(assessment: &Assessment) -> Vec<Message> {
    let sections = Sections::of_report(assessment);
    let heats = !assessment.tested.heats_no_water();
    let decision = match assessment.s580.limits.guard {
        Some(_) => message!("memory-decision-guarded"),
        None => message!("memory-decision"),
    };
    let has_box = sections.has(Section::BoxCooker);
    let dry = !has_box && (sections.has(Section::DryVessel) || !assessment.dry_vessel.is_empty());
    let foods = assessment.prospect.as_ref();
    let foods = foods.is_some_and(|prospect| !prospect.cooking.foods.is_empty());
    let instruments = &assessment.tested.campaign.instruments;
    let way = instruments.irradiance_estimate;
    let works = [
        heats.then(|| message!("memory-s580")),
        heats.then_some(decision),
        quotes_iec_60751(instruments).then(|| message!("memory-iec-60751")),
        (way == Some(IrradianceEstimate::ClearSky)).then(|| message!("memory-clear-sky")),
        (instruments.irradiance_plane == Some(Plane::Horizontal))
            .then(|| message!("memory-conversion")),
        sections
            .has(Section::HeatBalance)
            .then(|| message!("memory-balance")),
        dry.then(|| message!("memory-dry")),
        has_box.then(|| message!("memory-box")),
        sections.has(Section::Dish).then(|| message!("memory-dish")),
        sections
            .has(Section::Efficiency)
            .then(|| message!("memory-efficiency")),
        foods.then(|| message!("memory-food")),
        Some(message!("memory-cautions")),
    ];
    works.into_iter().flatten().collect()
}

/// Whether the uncertainty of a thermometer follows from the class of a resistance thermometer.
fn quotes_iec_60751(instruments: &Instruments) -> bool {
    let thermometers = [
        &instruments.water_temperature,
        &instruments.vessel_temperature,
        &instruments.ambient_temperature,
    ];
    thermometers.into_iter().any(|thermometer| {
        let class = thermometer
            .class
            .filter(|_| thermometer.uncertainty.is_none());
        class.is_some_and(|class| class.source() == message!("source-iec-60751"))
    })
}
