//! What page one says in plain words: a few facts, each with its name.

use super::cooking::{spoken_journey, spoken_range};
use crate::campaign::model::Plane;
use crate::language::{
    Message, UnitSystem, Words, celsius, clauses, duration, fixed, joined, kelvins, kilograms,
    range, short, within_brackets,
};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::cooking::pots::Cooking;
use crate::procedure::s580::limits::RATING_DIFFERENCE_K;
use crate::procedure::s580::rated::TookUp;
use crate::procedure::yardstick::{PUBLISHED, per_area};
use crate::report::dry_vessel::words::spoken_stagnation;
use crate::report::rows::Row;
use crate::report::s580::words::uncertainty::what_limits;
use crate::report::sections::{Section, Sections};
use crate::units::decimals_for;

/// What a reader must know before he uses the number: how its irradiance was got, and that it
/// is of one day or beyond what was observed.
pub fn caveats(assessment: &Assessment) -> Vec<Message> {
    let instruments = &assessment.tested.campaign.instruments;
    let mut caveats = Vec::new();
    match (
        instruments.irradiance_estimate,
        instruments.irradiance_plane,
    ) {
        (Some(way), _) => caveats.push(message!(
            "headline-irradiance-estimated",
            way = way.describe()
        )),
        (None, Some(Plane::Horizontal)) => caveats.push(message!("headline-horizontal")),
        (None, None) if assessment.tested.has_irradiance() => {
            caveats.push(message!("headline-plane-not-stated"));
        }
        (None, _) => {}
    }
    let uncertainty = assessment.s580.uncertainty();
    if uncertainty.is_some_and(|uncertainty| uncertainty.is_of_one_day()) {
        caveats.push(match assessment.s580.dates.len() {
            0 | 1 => message!("headline-one-day"),
            _ => message!("headline-days-not-in-spread"),
        });
    }
    let rating = assessment.s580.rating();
    if rating.is_some_and(|rating| rating.is_extrapolated) {
        caveats.push(message!("headline-extrapolated"));
    }
    caveats
}

/// The facts, those first that stay where there is little room; none of a number that is not
/// valid.
pub fn facts(assessment: &Assessment, sections: &Sections, words: &Words) -> Vec<Row> {
    if assessment.s580.is_not_valid() {
        return Vec::new();
    }
    let mut facts = Vec::new();
    let mut add = |label: Message, text: String| facts.push(Row::said(words, label, text));
    if let Some(delivers) = delivers(assessment, sections, words) {
        add(message!("fact-delivers"), delivers);
    }
    if let Some(sure) = how_sure(assessment, sections, words) {
        add(message!("fact-sure"), sure);
    }
    if let Some(prospect) = &assessment.prospect {
        let said = clauses(heating_clauses(&prospect.cooking, words));
        add(message!("fact-kitchen"), words.say(said));
    }
    if let Some(dry) = dry(assessment, sections) {
        add(message!("fact-dry"), words.say(dry));
    }
    if let Some(good) = how_good(assessment) {
        add(message!("fact-good"), words.say(good));
    }
    facts
}

/// What the water took up in the sun of the test, and would take up in 700 W/m².
fn delivers(assessment: &Assessment, sections: &Sections, words: &Words) -> Option<String> {
    let TookUp {
        irradiance_w_m2,
        power_w,
        half_width_w,
    } = assessment.s580.took_up()?;
    let decimals = decimals_for(half_width_w);
    let said = if power_w < 0.0 {
        message!("fact-lost")
    } else if assessment.tested.estimates_irradiance() {
        message!("fact-took-up-estimated")
    } else {
        message!("fact-took-up")
    };
    let scaled = scaled(assessment, sections);
    let took_up = said
        .with("difference", kelvins(short(RATING_DIFFERENCE_K)))
        .with("irradiance", fixed(irradiance_w_m2, 0))
        .with("power", fixed(power_w.abs(), decimals))
        .with("half_width", fixed(half_width_w, decimals));
    Some(words.say(clauses([took_up].into_iter().chain(scaled))))
}

/// What the water takes up at 700 W/m².
fn scaled(assessment: &Assessment, sections: &Sections) -> Option<Message> {
    assessment.s580.rated.as_ref()?;
    if assessment.tested.lies_flat() || !sections.has(Section::HeatBalance) {
        return None;
    }
    let power = assessment.water_balance.as_ref()?.power_700_50_w;
    let decimals = decimals_for(power.half_width());
    let said = if power.value < 0.0 {
        message!("fact-scaled-loses")
    } else {
        message!("fact-scaled")
    };
    Some(
        said.with("power", fixed(power.value.abs(), decimals))
            .with("half_width", fixed(power.half_width(), decimals))
            .with("section", sections.number(Section::HeatBalance)),
    )
}

/// The rating for each m², beside what others measured.
fn how_good(assessment: &Assessment) -> Option<Message> {
    let per_area = per_area(assessment).filter(|found| found.w_per_m2 > 0.0)?;
    let decimals = decimals_for(per_area.half_width_w_per_m2);
    let ends = PUBLISHED.iter().map(|one| one.w_per_m2);
    let (low, high) = ends.reduce(|one, two| (one.0.min(two.0), one.1.max(two.1)))?;
    Some(message!(
        "fact-per-area",
        power = fixed(per_area.w_per_m2, decimals),
        half_width = fixed(per_area.half_width_w_per_m2, decimals),
        percent = fixed(100.0 * per_area.share_of_sunlight, 0),
        range = range(low, high, 0)
    ))
}

/// What a dry vessel came to, where there is no rating.
fn dry(assessment: &Assessment, sections: &Sections) -> Option<Message> {
    let dry = assessment.dry_vessel.last();
    let dry = dry.filter(|_| assessment.s580.rating().is_none())?;
    Some(message!(
        "headline-dry",
        difference = kelvins(fixed(dry.difference_k, 0)),
        irradiance = fixed(dry.irradiance_w_m2, 0),
        result = spoken_stagnation(dry),
        section = sections.number(Section::Cooking)
    ))
}

/// What the interval is made of, where its budget stands, and what limits it.
fn how_sure(assessment: &Assessment, sections: &Sections, words: &Words) -> Option<String> {
    let uncertainty = assessment.s580.uncertainty()?;
    let scatter = 100.0 * uncertainty.budget.statistical_share();
    let budget_in = sections.number(Section::Regression);
    let mut parts = what_limits(uncertainty);
    parts.push(
        match uncertainty.assumed().len() {
            0 => message!("fact-parts"),
            _ => message!("fact-parts-assumed"),
        }
        .with("instruments", fixed(100.0 - scatter, 0))
        .with("section", budget_in),
    );
    Some(words.say(joined(parts, " ")))
}

fn heating_clauses(cooking: &Cooking, words: &Words) -> Vec<Message> {
    let mut usual = cooking.heatings.iter();
    let named = usual
        .find(|heating| heating.water_kg == 2.0)
        .or(cooking.heatings.first());
    let time = named.and_then(|heating| Some((heating.water_kg, heating.time?)));
    let may_get_there = named.is_some_and(|heating| heating.may_get_there);
    let irradiance = fixed(cooking.irradiance_w_m2, 0);
    let heating = match time {
        Some((water_kg, time)) => {
            let amount = match (water_kg, words.units) {
                (2.0, UnitSystem::Si) => message!("headline-two-kilograms").into(),
                (kg, _) => kilograms(short(kg)),
            };
            message!("fact-heats")
                .with("amount", amount)
                .with("time", duration(time.best_s))
                .with("range", spoken_range(time))
        }
        None if may_get_there => message!("fact-may-not-heat"),
        None => message!("fact-does-not-heat"),
    }
    .with("irradiance", irradiance)
    .with("journey", spoken_journey(cooking));
    let end = match cooking.heat_ends {
        Some(ends) if ends.best_c < cooking.boiling_point_c => Some(
            if ends.highest_c < cooking.boiling_point_c {
                message!("headline-heat-ends")
            } else {
                message!("headline-heat-ends-or-boils")
            }
            .with("end", celsius(fixed(ends.best_c, 0)))
            .with(
                "range",
                within_brackets(celsius(range(ends.lowest_c, ends.highest_c, 0))),
            ),
        ),
        // Said only where the slow end of the band says it, too.
        Some(ends) if ends.lowest_c >= cooking.boiling_point_c && !cooking.boils_below_target => {
            Some(message!("headline-boils-first"))
        }
        _ => None,
    };
    [heating].into_iter().chain(end).collect()
}
