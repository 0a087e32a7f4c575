//! Page one: the number, how sure it is, whether it conforms, and in plain words.

use serde::Serialize;

use super::conditions::{BriefRow, brief};
use super::report::{Figure, IRRADIANCE_ESTIMATED};
use super::stagnation::spoken_stagnation;
use super::uncertainty::what_limits;
use crate::language::Words;
use crate::procedure::Assessment;
use crate::procedure::assess::Rating;
use crate::procedure::conformity::Level;
use crate::procedure::cooking::Cooking;
use crate::procedure::limits::STANDARD_IRRADIANCE_W_M2;
use crate::procedure::uncertainty::RatingUncertainty;
use crate::stats::line::Line;
use crate::units::{counted, decimals_for, fixed, range, sentence_case, short, spoken_duration};

/// Reasons named in the sentence on what was set aside.
const NAMED_REASONS: usize = 2;

/// Page one.
#[derive(Debug, Clone, Serialize)]
pub struct Headline {
    pub label: String,
    /// `None`: no rating.
    pub number: Option<Number>,
    pub level: String,
    pub level_code: String,
    /// What follows the level: of which practice, and what is missing.
    pub level_text: String,
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

/// A finding and what would mend it.
#[derive(Debug, Clone, Serialize)]
pub struct FindingText {
    pub code: String,
    pub text: String,
    pub remedy: String,
}

/// Puts page one into words.
pub fn headline(assessment: &Assessment, words: &Words) -> Headline {
    let conformity = &assessment.conformity;
    let procedure = &assessment.campaign.procedure;
    let level_text = match (conformity.level, &conformity.missing) {
        (Level::Indicative, Some(missing)) => {
            format!(", does not conform to ASAE {procedure}; still missing: {missing}")
        }
        (Level::Indicative, None) => {
            format!(", does not conform to ASAE {procedure}, for the findings below")
        }
        _ => format!(" to ASAE {procedure}, as section 2 states it"),
    };
    let level_text = if conformity.is_unbelievable() {
        format!(
            ", and not to be believed: the water gained more heat than the sunlight holds{}",
            conformity
                .missing
                .as_ref()
                .map_or(String::new(), |missing| format!(
                    "; still missing: {missing}"
                ))
        )
    } else {
        level_text
    };
    let finding = |finding: &crate::procedure::conformity::Finding| FindingText {
        code: finding.code.to_owned(),
        text: sentence_case(&finding.text),
        remedy: sentence_case(&finding.remedy),
    };
    Headline {
        label: "Standardised cooking power Ps(50)".to_owned(),
        number: assessment
            .uncertainty
            .as_ref()
            .zip(assessment.rating.as_ref())
            .map(|(sure, rating)| number(assessment, sure, rating)),
        level: conformity.level.describe().to_owned(),
        level_code: conformity.level.code().to_owned(),
        level_text,
        sentences: sentences(assessment),
        figure: figure(assessment),
        findings: conformity.findings.iter().map(finding).collect(),
        conditions: brief(assessment, words),
        caution: "Hot surfaces and steam burn, the focus can blind and start fires, and this rating says nothing about food safety. Read the cautions in section 7 before you cook. Local codes and licensed practice come first.".to_owned(),
    }
}

/// The number with its expanded uncertainty.
fn number(assessment: &Assessment, sure: &RatingUncertainty, rating: &Rating) -> Number {
    let budget = &sure.budget;
    let expanded_w = budget.expanded_w();
    let decimals = decimals_for(expanded_w);
    let of_intervals_w = budget.statistical_part_w();
    let estimate = assessment.campaign.instruments.irradiance_estimate;
    let estimate = estimate.map(|way| format!("{IRRADIANCE_ESTIMATED} {}", way.describe()));
    let mut explanation: Vec<String> = estimate.into_iter().collect();
    explanation.push(format!(
        "of it, scatter and days {} W, instruments {} W",
        fixed(of_intervals_w, decimals),
        fixed(expanded_w - of_intervals_w, decimals)
    ));
    explanation.push(match sure.assumed().len() {
        0 => "95 %; each watt has its line in section 5".to_owned(),
        _ => "95 %; some instruments are assumed (section 5)".to_owned(),
    });
    if let Some(drawn) = sure.monte_carlo.filter(|drawn| !drawn.agrees()) {
        explanation.push(format!(
            "a Monte Carlo check gives {} W (section 5)",
            range(drawn.outcome.lower, drawn.outcome.upper, decimals)
        ));
    }
    if rating.is_extrapolated {
        explanation.push("an extrapolation: 50 K lies outside what was observed".to_owned());
    }
    Number {
        value: fixed(rating.ps50_w, decimals),
        spread: format!("± {}", fixed(expanded_w, decimals)),
        unit: "W (95 %)".to_owned(),
        explanation,
    }
}

fn sentences(assessment: &Assessment) -> Vec<String> {
    let mut sentences = Vec::new();
    match &assessment.rating {
        Some(rating) => sentences.push(format!(
            "Water 50 K warmer than the air {} {} W in sunlight of 700 W/m².",
            if rating.ps50_w < 0.0 {
                "loses"
            } else {
                "takes up"
            },
            fixed(rating.ps50_w.abs(), 0)
        )),
        None => sentences.push(
            "These readings do not give a rating. The findings below say what is missing."
                .to_owned(),
        ),
    }
    if let Some(cooking) = &assessment.cooking {
        sentences.push(heating_sentence(cooking));
    }
    let dry = assessment.stagnations.last();
    sentences.extend(dry.filter(|_| assessment.rating.is_none()).map(|dry| {
        format!(
            "The dry vessel came to {} K above the air in {} W/m²: {} (section 6).",
            fixed(dry.difference_k, 0),
            fixed(dry.irradiance_w_m2, 0),
            spoken_stagnation(dry)
        )
    }));
    if !assessment.runs.is_empty() {
        sentences.push(screening_sentence(assessment));
    }
    sentences.extend(assessment.uncertainty.as_ref().and_then(what_limits));
    sentences
}

fn heating_sentence(cooking: &Cooking) -> String {
    let mut usual = cooking.heatings.iter();
    let named = usual
        .find(|heating| heating.water_kg == 2.0)
        .or(cooking.heatings.first());
    let time = named.and_then(|heating| heating.time);
    let amount = match named.map(|heating| heating.water_kg) {
        Some(2.0) | None => "two kilograms".to_owned(),
        Some(kg) => format!("{} kg", short(kg)),
    };
    let journey = spoken_journey(cooking);
    let end = match cooking.heat_ends {
        Some(ends) if ends.best_c < cooking.boiling_point_c => format!(
            "; the useful heat ends near {} °C (95 %: {} °C)",
            fixed(ends.best_c, 0),
            range(ends.lowest_c, ends.highest_c, 0)
        ),
        _ if cooking.boils_below_target => String::new(),
        None => String::new(),
        Some(_) => "; the water boils before the useful heat ends".to_owned(),
    };
    let at = if cooking.irradiance_w_m2 == STANDARD_IRRADIANCE_W_M2 {
        "At that irradiance".to_owned()
    } else {
        format!("At {} W/m²", short(cooking.irradiance_w_m2))
    };
    match time {
        Some(time) => format!(
            "{at} {amount} of water go {journey} in about {}{end}.",
            spoken_duration(time.best_s)
        ),
        None if named.is_some_and(|heating| heating.may_get_there) => {
            format!("{at} water may not get {journey}{end}.")
        }
        None => format!("{at} water does not get {journey}{end}."),
    }
}

/// From where to where water is heated: `from 20 to 95 °C`.
pub fn spoken_journey(cooking: &Cooking) -> String {
    let start = fixed(cooking.start_c, 0);
    if cooking.boils_below_target {
        format!(
            "from {start} °C to boiling ({} °C here)",
            fixed(cooking.target_c, 1)
        )
    } else {
        format!("from {start} to {} °C", fixed(cooking.target_c, 0))
    }
}

fn screening_sentence(assessment: &Assessment) -> String {
    let mut parts = vec![format!(
        "{} of {}, on {}, met every condition{}",
        assessment.used().count(),
        counted(assessment.intervals.len(), "ten-minute interval"),
        counted(assessment.used_dates().len(), "day"),
        if is_estimated(assessment) {
            " that was measured or estimated"
        } else if is_all_measured(assessment) {
            ""
        } else {
            " that was measured"
        }
    )];
    let not_normalised = assessment.not_normalised().count();
    if not_normalised > 0 {
        parts.push(format!("{not_normalised} more have no irradiance"));
    }
    let reasons: Vec<String> = Assessment::count_reasons(assessment.intervals.iter())
        .into_iter()
        .take(NAMED_REASONS)
        .map(|(reason, count)| format!("{} ({count})", reason.describe()))
        .collect();
    if !reasons.is_empty() {
        let most = if assessment.set_aside().count() > 1 {
            "the others were set aside, most often because"
        } else {
            "the other was set aside because"
        };
        parts.push(format!("{most} {}", reasons.join(" or ")));
    }
    format!("{}.", parts.join("; "))
}

/// Whether wind or irradiance is an estimate.
fn is_estimated(assessment: &Assessment) -> bool {
    assessment.estimates_irradiance() || assessment.runs.iter().any(|run| run.estimates_wind)
}

/// Whether wind and irradiance were measured in every run.
fn is_all_measured(assessment: &Assessment) -> bool {
    assessment
        .runs
        .iter()
        .all(|run| run.readings.wind_m_s.is_some() && run.readings.irradiance_w_m2.is_some())
}

/// The line's equation, rounded to what its errors deserve.
pub fn equation(line: &Line) -> String {
    let intercept_decimals = decimals_for(line.intercept_standard_error);
    let slope_decimals = decimals_for(line.slope_standard_error).max(2);
    let sign = if line.slope < 0.0 { '−' } else { '+' };
    format!(
        "Ps = {} W {sign} {} W/K · Td",
        fixed(line.intercept, intercept_decimals),
        fixed(line.slope.abs(), slope_decimals)
    )
}

fn figure(assessment: &Assessment) -> Figure {
    let used = assessment.used().count();
    let aside = assessment.set_aside().count();
    let (caption, alt) = match (&assessment.line, &assessment.rating) {
        (Some(line), Some(rating)) => {
            let r_squared = line
                .r_squared
                .map_or("undefined".to_owned(), |r| fixed(r, 3));
            let (low_k, high_k) = line.x_range;
            let facts = format!(
                "{}; R² = {r_squared}; {} on {}, Td from {} to {} K",
                equation(line),
                counted(line.points, "used interval"),
                counted(assessment.used_dates().len(), "day"),
                fixed(low_k, 1),
                fixed(high_k, 1)
            );
            let alt = format!(
                "Scatter plot of standardised cooking power in watts against the temperature difference between water and ambient in kelvin. {facts}; {aside} set aside. The line reads {} watts at 50 kelvin.",
                fixed(rating.ps50_w, 1)
            );
            let mark = match assessment.estimates_irradiance() {
                true => format!("{}: ", sentence_case(IRRADIANCE_ESTIMATED)),
                false => String::new(),
            };
            (format!("{mark}{facts}."), format!("{mark}{alt}"))
        }
        _ => {
            let facts = format!(
                "{} and {aside} set aside; no line can be fitted",
                counted(used, "used interval")
            );
            let alt = format!(
                "Scatter plot of standardised cooking power against temperature difference: {facts}."
            );
            (format!("{facts}."), alt)
        }
    };
    Figure {
        file: "power-line.svg".to_owned(),
        caption,
        alt,
    }
}
