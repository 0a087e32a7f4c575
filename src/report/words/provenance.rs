//! Deviations, notes, and where every number comes from.

use serde::Serialize;

use super::inputs::{input_row, kept_beside};
use super::unchecked::unchecked;
use crate::campaign::Campaign;
use crate::campaign::model::IrradianceEstimate;
use crate::language::{Message, Phrase, Words, clauses, fixed, kelvins, metres_per_second, short};
use crate::logs::account::{Account, alike};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::notice::Notice;
use crate::procedure::s580::finding::FindingCode;
use crate::procedure::s580::guard::{COVERAGE_FACTOR, Guard};
use crate::procedure::s580::limits::INTERVAL_S;
use crate::procedure::sky::USUAL_TURBIDITY;
use crate::report::Edition;
use crate::report::number::report_number;
use crate::report::rows::Row;
use crate::report::s580::words::conditions::spoken_limit;
use crate::units::{decimals_for, sentence_case};

/// The section on provenance.
#[derive(Debug, Clone, Serialize)]
pub struct ProvenancePart {
    pub deviations: Vec<String>,
    pub notices: Vec<String>,
    pub tester_notes: String,
    pub rows: Vec<Row>,
    /// What is quoted from memory, and what has no published source.
    pub unchecked: Vec<String>,
    /// How the logs were read, those that are written alike together.
    pub logs: Vec<LogPart>,
    pub inputs: Vec<Row>,
    /// How those are kept that are not inside; `None`: all are.
    pub kept_beside: Option<String>,
    pub end: String,
}

/// Logs that are written alike.
#[derive(Debug, Clone, Serialize)]
pub struct LogPart {
    /// The readings of each.
    pub readings: Vec<Row>,
    /// How they are written, and how their columns were understood.
    pub form: Vec<Row>,
}

/// What made a report, when, and by whose methods.
pub fn made_with(edition: &Edition, practice: impl Into<Phrase>) -> Vec<Row> {
    let row = |label: Message, text: Phrase| form_row(&edition.words, label, text);
    let issued = edition.issued.strftime("%Y-%m-%d %H:%M UTC").to_string();
    vec![
        Row::new(
            &sentence_case(&edition.words.say(message!("made-with"))),
            concat!("simmerline ", env!("CARGO_PKG_VERSION")),
        ),
        row(message!("made-issued"), issued.into()),
        row(message!("made-practice"), practice.into()),
        row(
            message!("made-solar-time"),
            message!("made-solar-time-text").into(),
        ),
        row(
            message!("made-boiling"),
            message!("made-boiling-text").into(),
        ),
    ]
}

/// A row whose label and text begin with a capital letter.
fn form_row(words: &Words, label: Message, text: impl Into<Phrase>) -> Row {
    let [label, text] = [label.into(), text.into()].map(|said: Phrase| words.say(said));
    Row::new(&sentence_case(&label), sentence_case(&text))
}

/// Puts the section on provenance into words.
pub fn provenance(assessment: &Assessment, edition: &Edition) -> ProvenancePart {
    let campaign = &assessment.tested.campaign;
    let words = &edition.words;
    let number = report_number(assessment);
    let inputs = assessment.tested.inputs();
    let heats = !assessment.tested.heats_no_water();
    let practice: Phrase = if heats {
        format!("ASAE {}", campaign.procedure).into()
    } else {
        message!("tested-method-none").into()
    };
    let mut rows = made_with(edition, practice);
    let decision = heats.then(|| decision(assessment.s580.limits.guard));
    rows.extend(decision.map(|said| form_row(words, message!("made-decision"), said)));
    rows.extend(estimate(campaign).map(|how| form_row(words, message!("made-irradiance"), how)));
    ProvenancePart {
        deviations: deviations(assessment)
            .into_iter()
            .map(|deviation| words.say(deviation))
            .collect(),
        notices: notices(&assessment.notices, words),
        tester_notes: campaign.notes.clone().unwrap_or_default(),
        rows,
        unchecked: unchecked(assessment)
            .into_iter()
            .map(|said| words.say(said))
            .collect(),
        logs: logs(assessment, words),
        inputs: inputs
            .iter()
            .map(|input| input_row(campaign, input, edition))
            .collect(),
        kept_beside: kept_beside(&[(campaign, inputs)], edition).map(|said| words.say(said)),
        end: words.say(message!("report-end", number = number)),
    }
}

/// How a value is held against a limit.
fn decision(guard: Option<Guard>) -> Message {
    let Some(guard) = guard else {
        return message!("made-decision-text");
    };
    let wind = guard.wind_m_s.map_or_else(
        || message!("made-decision-no-wind"),
        |wind_m_s| {
            message!(
                "made-decision-wind",
                wind = metres_per_second(rounded(wind_m_s))
            )
        },
    );
    message!(
        "made-decision-guarded",
        factor = short(COVERAGE_FACTOR),
        irradiance = rounded(guard.irradiance * 100.0),
        water = kelvins(rounded(guard.water_k)),
        ambient = kelvins(rounded(guard.ambient_k)),
        clock = rounded(guard.clock_s),
        mass = rounded(guard.water_mass * 100.0),
        wind = wind
    )
}

/// An uncertainty to two digits.
fn rounded(uncertainty: f64) -> Phrase {
    fixed(uncertainty, decimals_for(uncertainty))
}

/// Models that stand in for a sensor.
fn estimate(campaign: &Campaign) -> Option<Message> {
    let way = campaign.instruments.irradiance_estimate?;
    let said = match (way, campaign.site.linke_turbidity) {
        (IrradianceEstimate::ClearSky, Some(stated)) => {
            message!("made-irradiance-stated", turbidity = short(stated))
        }
        (IrradianceEstimate::ClearSky, None) => {
            message!("made-irradiance-usual", turbidity = short(USUAL_TURBIDITY))
        }
        _ => message!("made-irradiance-text"),
    };
    Some(said.with("way", way.describe()))
}

/// What a reader should know of the logs. The warning of food that stays warm stands where cooking
/// is spoken of.
fn notices(notices: &[Notice], words: &Words) -> Vec<String> {
    let of_logs = notices
        .iter()
        .filter(|notice| !matches!(notice, Notice::DangerZone(_)));
    of_logs
        .map(|notice| sentence(&words.say(notice.message())))
        .collect()
}

/// With a capital letter and a full stop.
fn sentence(said: &str) -> String {
    let end = if said.ends_with(['.', ')']) { "" } else { "." };
    sentence_case(said) + end
}

fn logs(assessment: &Assessment, words: &Words) -> Vec<LogPart> {
    let zone = &assessment.tested.campaign.site.time_zone;
    let part = |group: Vec<&Account>| {
        let step_s = common_step_s(&group);
        let readings = group.iter().map(|account| {
            let mut lines = vec![match step_s {
                Some(_) => account.readings_without_step(zone),
                None => account.readings(zone),
            }];
            lines.extend(account.skipped.describe());
            Row::new(&account.log, words.say(clauses(lines)))
        });
        let step = step_s.map(|step_s| {
            let said = message!("log-step-text", step = short(step_s));
            (message!("log-step").into(), said.into())
        });
        let form = group[0].form().into_iter().chain(step);
        LogPart {
            readings: readings.collect(),
            form: form
                .map(|(label, text)| Row::new(&words.say(label), words.say(text)))
                .collect(),
        }
    };
    alike(&assessment.tested.accounts)
        .into_iter()
        .map(part)
        .collect()
}

/// How far apart the readings of several logs are, s, where that is the same for all.
fn common_step_s(group: &[&Account]) -> Option<f64> {
    let step_s = group[0].step_s?;
    let is_common = group.len() > 1 && group.iter().all(|account| account.step_s == Some(step_s));
    is_common.then_some(step_s)
}

fn deviations(assessment: &Assessment) -> Vec<Message> {
    let own = assessment.s580.limits.rows.iter().filter(|row| row.changed);
    let mut deviations: Vec<Message> = own
        .map(|row| {
            message!(
                "deviation-limit",
                what = row.what(),
                limit = spoken_limit(row)
            )
        })
        .collect();
    let guard = assessment.s580.limits.guard;
    deviations.extend(guard.map(|_| message!("deviation-guard")));
    for run in assessment.tested.all_runs() {
        deviations.extend(run.plan.exclusions.iter().map(|exclusion| {
            let said = match &exclusion.reason {
                Some(reason) => message!("deviation-excluded", reason = reason),
                None => message!("deviation-excluded-no-reason"),
            };
            said.with("run", &run.plan.label)
                .with("from", exclusion.span.from.to_string())
                .with("to", exclusion.span.to.to_string())
        }));
    }
    if assessment.tested.heats_no_water() {
        return deviations;
    }
    let mut findings = assessment.s580.conformity.findings.iter();
    if findings.any(|finding| finding.code != FindingCode::ExcludedByTester) {
        deviations.push(message!("deviation-findings"));
    }
    let (shortest_s, longest_s) = assessment.s580.limits.interval().ends_s();
    deviations.push(message!(
        "deviation-interval",
        shortest = short(shortest_s),
        longest = short(longest_s),
        practice = short(INTERVAL_S)
    ));
    deviations
}
