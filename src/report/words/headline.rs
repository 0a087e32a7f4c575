//! Page one: the number, how sure it is, whether it conforms, and in plain words.

use std::cmp::Reverse;

use serde::Serialize;

use super::cooking::spoken_journey;
use crate::language::UnitSystem;
use crate::language::{Message, Words, celsius, clauses, duration, fixed, kilograms, range, short};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::cooking::pots::Cooking;
use crate::procedure::finding::Level;
use crate::procedure::s580::conformity::Conformity;
use crate::procedure::s580::finding::S580Finding;
use crate::procedure::s580::rated::{Rated, TookUp};
use crate::procedure::s580::result::count_reasons;
use crate::report::dry_vessel::words::spoken_stagnation;
use crate::report::rows::{Figure, FindingText};
use crate::report::s580::words::conditions::{BriefRow, brief};
use crate::report::s580::words::line::{equation, spoken_r_squared};
use crate::report::s580::words::uncertainty::what_limits;
use crate::report::sections::{Section, Sections};
use crate::units::decimals_for;

/// Page one.
#[derive(Debug, Clone, Serialize)]
pub struct Headline {
    pub label: String,
    /// `None`: no rating.
    pub number: Option<Number>,
    pub level: String,
    pub level_code: String,
    /// Says the level, of which practice, and what is missing.
    pub level_text: String,
    /// What "conforms" rests on that nobody checked; empty where it does not.
    pub rests_on: String,
    pub sentences: Vec<String>,
    pub figure: Figure,
    pub findings: Vec<FindingText>,
    pub conditions: Vec<BriefRow>,
    pub caution: String,
}

/// The single figure.
#[derive(Debug, Clone, Serialize)]
pub struct Number {
    pub value: String,
    pub spread: String,
    pub unit: String,
    /// What the spread is.
    pub explanation: Vec<String>,
}

/// Puts page one into words.
pub fn headline(assessment: &Assessment, sections: &Sections, words: &Words) -> Headline {
    let conformity = &assessment.s580.conformity;
    let finding = |finding: &S580Finding| FindingText::said(words, finding.code.code(), finding);
    Headline {
        label: words.say(message!("headline-label")),
        number: assessment
            .s580
            .rated
            .as_ref()
            .map(|rated| number(assessment, rated, sections, words)),
        level: words.say(conformity.level.describe()),
        level_code: conformity.level.code().to_owned(),
        level_text: words.say(level_text(
            conformity,
            &assessment.tested.campaign.procedure,
            sections,
        )),
        rests_on: match conformity.level {
            Level::Conforms | Level::ConformsWithNotes => {
                words.say(message!("headline-conforms-rests-on"))
            }
            Level::Indicative | Level::NotValid | Level::NoRating => String::new(),
        },
        sentences: sentences(assessment, sections, words),
        figure: figure(assessment, words),
        findings: gravest_first(&conformity.findings).map(finding).collect(),
        conditions: brief(assessment, words),
        caution: words.say(message!(
            "headline-caution",
            section = sections.number(Section::Cautions)
        )),
    }
}

/// The findings by what they allow, the gravest first; of equals, in their order.
fn gravest_first(findings: &[S580Finding]) -> impl Iterator<Item = &S580Finding> {
    let mut sorted: Vec<&S580Finding> = findings.iter().collect();
    sorted.sort_by_key(|finding| Reverse(finding.level));
    sorted.into_iter()
}

fn level_text(conformity: &Conformity, procedure: &str, sections: &Sections) -> Message {
    let missing = conformity.missing.as_ref();
    let stated_in = sections.number(Section::Conditions);
    match (conformity.level, missing) {
        (Level::NotValid, _) => message!("headline-not-valid"),
        (Level::NoRating, Some(missing)) => {
            message!(
                "headline-no-rating-missing",
                procedure = procedure,
                missing = missing
            )
        }
        (Level::NoRating, None) => message!("headline-without-rating", procedure = procedure),
        (Level::Indicative, Some(missing)) => message!(
            "headline-indicative-missing",
            procedure = procedure,
            missing = missing
        ),
        (Level::Indicative, None) => message!("headline-indicative", procedure = procedure),
        (Level::ConformsWithNotes, _) => {
            message!(
                "headline-conforms-with-notes",
                procedure = procedure,
                section = stated_in
            )
        }
        (Level::Conforms, _) => message!(
            "headline-conforms",
            procedure = procedure,
            section = stated_in
        ),
    }
}

/// The number with its expanded uncertainty.
fn number(assessment: &Assessment, rated: &Rated, sections: &Sections, words: &Words) -> Number {
    let Rated {
        rating,
        uncertainty,
        ..
    } = rated;
    let half_width_w = uncertainty.half_width_w();
    let decimals = decimals_for(half_width_w);
    let statistical = 100.0 * uncertainty.budget.statistical_share();
    let estimate = assessment.tested.campaign.instruments.irradiance_estimate;
    let estimate =
        estimate.map(|way| message!("headline-irradiance-estimated", way = way.describe()));
    let mut explanation: Vec<Message> = estimate.into_iter().collect();
    if uncertainty.is_of_one_day() {
        explanation.push(message!("headline-one-day"));
    }
    explanation.push(message!(
        "headline-parts-of-square",
        scatter = fixed(statistical, 0),
        instruments = fixed(100.0 - statistical, 0)
    ));
    let budget_in = sections.number(Section::Regression);
    explanation.push(match uncertainty.assumed().len() {
        0 => message!("headline-budget-in", section = budget_in),
        _ => message!("headline-budget-assumed", section = budget_in),
    });
    if uncertainty.interval_w != uncertainty.budget.interval() {
        explanation.push(message!("headline-drawn-wider", section = budget_in));
    }
    if uncertainty
        .monte_carlo
        .is_some_and(|drawn| !drawn.outcome.is_stable)
    {
        explanation.push(message!("headline-drawn-unsettled", section = budget_in));
    }
    if rating.is_extrapolated {
        explanation.push(message!("headline-extrapolated"));
    }
    Number {
        value: words.say(fixed(rating.ps50_w, decimals)),
        spread: format!("± {}", words.say(fixed(half_width_w, decimals))),
        unit: words.say(if uncertainty.is_of_one_day() {
            message!("headline-unit-one-day")
        } else {
            message!("headline-unit")
        }),
        explanation: explanation
            .into_iter()
            .map(|line| words.say(line))
            .collect(),
    }
}

fn sentences(assessment: &Assessment, sections: &Sections, words: &Words) -> Vec<String> {
    let mut sentences = vec![words.say(took_up(assessment))];
    if let Some(prospect) = &assessment.prospect {
        sentences.push(sentence(heating_clauses(&prospect.cooking, words), words));
    }
    sentences.extend(scaled(assessment, sections).map(|scaled| words.say(scaled)));
    let dry = assessment.dry_vessel.last();
    sentences.extend(
        dry.filter(|_| assessment.s580.rating().is_none())
            .map(|dry| {
                words.say(message!(
                    "headline-dry",
                    difference = fixed(dry.difference_k, 0),
                    irradiance = fixed(dry.irradiance_w_m2, 0),
                    result = spoken_stagnation(dry),
                    section = sections.number(Section::Cooking)
                ))
            }),
    );
    if !assessment.tested.runs.is_empty() {
        sentences.push(sentence(screening_clauses(assessment), words));
    }
    let limited = assessment.s580.uncertainty().and_then(what_limits);
    sentences.extend(limited.map(|limited| words.say(limited)));
    sentences
}

/// What the water took up in the sun of the test.
fn took_up(assessment: &Assessment) -> Message {
    let Some(took_up) = assessment.s580.took_up() else {
        return message!("headline-no-rating");
    };
    let TookUp {
        irradiance_w_m2,
        power_w,
        half_width_w,
    } = took_up;
    let decimals = decimals_for(half_width_w);
    let said = if power_w < 0.0 {
        message!("headline-lost")
    } else if assessment.tested.estimates_irradiance() {
        message!("headline-took-up-estimated")
    } else {
        message!("headline-took-up")
    };
    said.with("irradiance", fixed(irradiance_w_m2, 0))
        .with("power", fixed(power_w.abs(), decimals))
        .with("half_width", fixed(half_width_w, decimals))
}

/// What the rating is, and what the water takes up at 700 W/m².
fn scaled(assessment: &Assessment, sections: &Sections) -> Option<Message> {
    assessment.s580.rated.as_ref()?;
    if assessment.tested.lies_flat() || !sections.has(Section::HeatBalance) {
        return None;
    }
    let power = assessment.water_balance.as_ref()?.power_700_50_w;
    let decimals = decimals_for(power.half_width());
    let said = if power.value < 0.0 {
        message!("headline-scaled-loses")
    } else {
        message!("headline-scaled")
    };
    Some(
        said.with("power", fixed(power.value.abs(), decimals))
            .with("half_width", fixed(power.half_width(), decimals))
            .with("section", sections.number(Section::HeatBalance)),
    )
}

/// Clauses, each complete in itself, as one sentence.
fn sentence(parts: Vec<Message>, words: &Words) -> String {
    format!("{}.", words.say(clauses(parts)))
}

fn heating_clauses(cooking: &Cooking, words: &Words) -> Vec<Message> {
    let mut usual = cooking.heatings.iter();
    let named = usual
        .find(|heating| heating.water_kg == 2.0)
        .or(cooking.heatings.first());
    let time = named.and_then(|heating| Some((heating.water_kg, heating.time?)));
    let may_get_there = named.is_some_and(|heating| heating.may_get_there);
    let irradiance = fixed(cooking.irradiance_w_m2, 0);
    let is_of_test = !cooking.is_irradiance_asked;
    let heating = match time {
        Some((water_kg, time)) => {
            let amount = match (water_kg, words.units) {
                (2.0, UnitSystem::Si) => message!("headline-two-kilograms").into(),
                (kg, _) => kilograms(short(kg)),
            };
            let heats = if is_of_test {
                message!("headline-heats")
            } else {
                message!("headline-heats-at", irradiance = irradiance)
            };
            heats
                .with("amount", amount)
                .with("time", duration(time.best_s))
        }
        None if may_get_there && is_of_test => message!("headline-may-not-heat"),
        None if may_get_there => message!("headline-may-not-heat-at", irradiance = irradiance),
        None if is_of_test => message!("headline-does-not-heat"),
        None => message!("headline-does-not-heat-at", irradiance = irradiance),
    }
    .with("journey", spoken_journey(cooking));
    let end = match cooking.heat_ends {
        Some(ends) if ends.best_c < cooking.boiling_point_c => Some(
            if ends.highest_c < cooking.boiling_point_c {
                message!("headline-heat-ends")
            } else {
                message!("headline-heat-ends-or-boils")
            }
            .with("end", celsius(fixed(ends.best_c, 0)))
            .with("range", celsius(range(ends.lowest_c, ends.highest_c, 0))),
        ),
        // Said only where the slow end of the band says it, too.
        Some(ends) if ends.lowest_c >= cooking.boiling_point_c && !cooking.boils_below_target => {
            Some(message!("headline-boils-first"))
        }
        _ => None,
    };
    [heating].into_iter().chain(end).collect()
}

fn screening_clauses(assessment: &Assessment) -> Vec<Message> {
    let met = if is_estimated(assessment) {
        message!("headline-met-estimated")
    } else if is_all_measured(assessment) {
        message!("headline-met")
    } else {
        message!("headline-met-measured")
    };
    let mut clauses = vec![
        met.with("used", assessment.s580.used().count())
            .with("intervals", assessment.s580.intervals.len())
            .with(
                "minutes",
                short(assessment.s580.limits.interval().aim_min()),
            )
            .with("days", assessment.s580.dates.len()),
    ];
    let not_normalised = assessment.s580.not_normalised().count();
    if not_normalised > 0 {
        clauses.push(message!("headline-no-irradiance", count = not_normalised));
    }
    let counts = count_reasons(assessment.s580.intervals.iter()).into_iter();
    let mut reasons = counts.map(|(reason, count)| {
        message!("headline-reason", reason = reason.describe(), count = count)
    });
    let reasons = match (reasons.next(), reasons.next()) {
        (Some(first), Some(second)) => Some(message!(
            "headline-either-reason",
            first = first,
            second = second
        )),
        (only, _) => only,
    };
    clauses.extend(
        reasons.map(|reasons| match assessment.s580.set_aside().count() {
            1 => message!("headline-other", reasons = reasons),
            _ => message!("headline-others", reasons = reasons),
        }),
    );
    clauses
}

/// Whether wind or irradiance is an estimate.
fn is_estimated(assessment: &Assessment) -> bool {
    assessment.tested.estimates_irradiance()
        || assessment.tested.runs.iter().any(|run| run.estimates_wind)
}

/// Whether wind and irradiance were measured in every run.
fn is_all_measured(assessment: &Assessment) -> bool {
    assessment
        .tested
        .runs
        .iter()
        .all(|run| run.readings.wind_m_s.is_some() && run.readings.irradiance_w_m2.is_some())
}

fn figure(assessment: &Assessment, words: &Words) -> Figure {
    let aside = assessment.s580.set_aside().count();
    let (caption, alt) = match (assessment.s580.line(), assessment.s580.rating()) {
        (Some(line), Some(rating)) => {
            let (lowest_k, highest_k) = line.x_range;
            let facts = message!(
                "power-line-facts",
                equation = equation(line),
                r_squared = spoken_r_squared(line, 3),
                intervals = line.points,
                days = assessment.s580.dates.len(),
                lowest = fixed(lowest_k, 1),
                highest = fixed(highest_k, 1)
            );
            let alt = message!(
                "power-line-alt",
                facts = &facts,
                aside = aside,
                power = fixed(rating.ps50_w, 1)
            );
            let marked = |text: Message| match assessment.tested.estimates_irradiance() {
                true => message!("power-line-estimated", text = text),
                false => text,
            };
            let caption = message!("power-line-caption", facts = facts);
            (marked(caption), marked(alt))
        }
        _ => {
            let used = assessment.s580.used().count();
            let facts = message!("no-line-facts", intervals = used, aside = aside);
            let alt = message!("no-line-alt", facts = &facts);
            (message!("power-line-caption", facts = facts), alt)
        }
    };
    Figure {
        file: "power-line.svg".to_owned(),
        caption: words.say(caption),
        alt: words.say(alt),
    }
}
