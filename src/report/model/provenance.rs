//! Deviations, notes, and where every number comes from.

use jiff::Timestamp;
use serde::Serialize;

use super::report::Row;
use crate::campaign::Campaign;
use crate::campaign::model::IrradianceEstimate;
use crate::hash::sha256_hex;
use crate::language::{Words, joined};
use crate::logs::account::{Account, alike};
use crate::procedure::Assessment;
use crate::procedure::local_sky::USUAL_TURBIDITY;
use crate::report::Edition;
use crate::units::short;

/// Digits of the number given to a report that has none.
const NUMBER_DIGITS: usize = 10;

/// Section 8.
#[derive(Debug, Clone, Serialize)]
pub struct ProvenancePart {
    pub deviations: Vec<String>,
    pub notices: Vec<String>,
    pub tester_notes: String,
    pub rows: Vec<Row>,
    /// How the logs were read, those that are written alike together.
    pub logs: Vec<Vec<Row>>,
    pub inputs: Vec<Row>,
    pub end: String,
}

/// The campaign's own number, else one made from the inputs' hashes and our version.
pub fn report_number(assessment: &Assessment) -> String {
    assessment
        .campaign
        .report_number
        .clone()
        .unwrap_or_else(|| {
            let inputs = assessment.inputs().into_iter();
            short_number(&inputs.map(|(_, sha256)| sha256).collect::<Vec<_>>())
        })
}

/// A number made of hashes and our version.
pub fn short_number(hashes: &[String]) -> String {
    let version = env!("CARGO_PKG_VERSION");
    let text = hashes.join("\n") + "\n" + version;
    let hash = sha256_hex(text.as_bytes()).to_uppercase();
    hash[..NUMBER_DIGITS].to_owned()
}

/// What made a report, when, and by whose methods.
pub fn made_with(issued: Timestamp, practice: &str) -> Vec<Row> {
    vec![
        Row::new(
            "made with",
            concat!("simmerline ", env!("CARGO_PKG_VERSION")),
        ),
        Row::new("issued", issued.strftime("%Y-%m-%d %H:%M UTC").to_string()),
        Row::new("practice", practice),
        Row::new("solar time", "NREL/TP-560-34302, from time and longitude"),
        Row::new(
            "boiling point",
            "ISO 2533 atmosphere where no pressure was measured, IAPWS-IF97 saturation",
        ),
    ]
}

/// Puts section 8 into words.
pub fn provenance(assessment: &Assessment, edition: &Edition) -> ProvenancePart {
    let campaign = &assessment.campaign;
    ProvenancePart {
        deviations: deviations(assessment),
        notices: assessment
            .notices
            .iter()
            .map(|notice| edition.words.say(notice.message()))
            .collect(),
        tester_notes: campaign.notes.clone().unwrap_or_default(),
        rows: made_with(edition.issued, &format!("ASAE {}", campaign.procedure))
            .into_iter()
            .chain(estimate_row(campaign))
            .collect(),
        logs: logs(assessment, &edition.words),
        inputs: assessment
            .inputs()
            .into_iter()
            .map(|(file, sha256)| Row::new(&file, sha256))
            .collect(),
        end: format!("End of report {}", report_number(assessment)),
    }
}

/// Models that stand in for a sensor.
fn estimate_row(campaign: &Campaign) -> Option<Row> {
    let way = campaign.instruments.irradiance_estimate?;
    let turbidity = match (way, campaign.site.linke_turbidity) {
        (IrradianceEstimate::ClearSky, Some(stated)) => {
            format!(", Linke turbidity {} as stated", short(stated))
        }
        (IrradianceEstimate::ClearSky, None) => format!(
            ", Linke turbidity {} (common practice, no published source)",
            short(USUAL_TURBIDITY)
        ),
        _ => String::new(),
    };
    Some(Row::new(
        "irradiance",
        format!(
            "estimated {}{turbidity}; plane normal to the beam after Liu and Jordan 1963",
            way.describe()
        ),
    ))
}

fn logs(assessment: &Assessment, words: &Words) -> Vec<Vec<Row>> {
    let zone = &assessment.campaign.site.time_zone;
    let part = |group: Vec<&Account>| {
        let readings = group.iter().map(|account| {
            let mut lines = vec![account.readings(zone)];
            lines.extend(account.skipped.describe());
            Row::new(&account.log, words.say(joined(lines, "; ")))
        });
        let form = group[0].form().into_iter();
        readings
            .chain(form.map(|(label, text)| Row::new(&words.say(label), words.say(text))))
            .collect()
    };
    alike(&assessment.accounts).into_iter().map(part).collect()
}

fn deviations(assessment: &Assessment) -> Vec<String> {
    let mut deviations = Vec::new();
    for row in assessment.limits.rows.iter().filter(|row| row.changed) {
        deviations.push(format!(
            "Own limit: {} = {} {} ({}).",
            row.key,
            short(row.value),
            row.unit,
            row.what()
        ));
    }
    for run in &assessment.runs {
        for exclusion in &run.plan.exclusions {
            let reason = exclusion.reason.as_deref().unwrap_or("no reason given");
            deviations.push(format!(
                "{}: {} excluded by the tester: {reason}.",
                run.plan.label, exclusion.span
            ));
        }
    }
    let other = assessment.conformity.findings.iter();
    if other
        .clone()
        .any(|finding| !finding.code.ends_with("tester"))
    {
        deviations.push("Further: every finding on page one.".to_owned());
    }
    deviations.push("Interval length: 540 to 660 s are admitted, and power is taken over the time that really passed, where the practice speaks of 600 s.".to_owned());
    deviations
}
