//! What `check` says of the procedures beside the rating.

use super::terminal::line;
use crate::campaign::kinds::ProcedureKey;
use crate::language::{Message, Words};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::finding::Finding;
use crate::procedure::stated::{FigureKey, stated};
use crate::report::procedure_part::row;

/// The figures that there are so far, and what is missing for others, by procedure; empty where
/// none of them applies.
pub fn of_procedures(assessment: &Assessment) -> String {
    let words = Words::english();
    let is_other = |key: FigureKey| {
        use FigureKey::{Gain, Loss, OptoThermalRatio, Ps50};
        !matches!(key, Ps50 | Gain | Loss | OptoThermalRatio)
    };
    let figures = stated(assessment);
    let figures = figures.iter().filter(|one| is_other(one.key));
    let rows: Vec<String> = figures
        .map(|one| {
            let said = row(one, words);
            line(&format!("  {}: {}", said.label, said.text))
        })
        .collect();
    let findings = findings(assessment);
    if rows.is_empty() && findings.is_empty() {
        return String::new();
    }
    let mut text = "\n".to_owned();
    if rows.is_empty() {
        text += &line(&words.say(message!("check-no-figures")));
    } else {
        text += &line(&words.say(message!("check-figures")));
        text += &rows.concat();
    }
    text + &findings
}

fn findings(assessment: &Assessment) -> String {
    let mut text = String::new();
    let procedures = &assessment.tested.campaign.procedures;
    let is_told = !procedures.leaves_out(ProcedureKey::DryVessel);
    for run in assessment.dry_runs.runs.iter().filter(|_| is_told) {
        let label = &assessment.tested.dry_runs[run.run].plan.label;
        for finding in &run.findings {
            let said = format!("{label}: {}", finding.text);
            text += &mend(finding.code.code(), &said, &finding.remedy);
        }
    }
    if let Some(found) = &assessment.box_figures {
        text += &all(&found.findings, |code| code.code());
    }
    if let Some(found) = &assessment.dish_figures {
        text += &all(&found.findings, |code| code.code());
    }
    if let Some(found) = &assessment.efficiency {
        text += &all(&found.findings, |code| code.code());
    }
    text
}

fn all<C>(findings: &[Finding<C>], code: impl Fn(&C) -> &'static str) -> String {
    let findings = findings.iter();
    findings
        .map(|one| mend(code(&one.code), &one.text.to_string(), &one.remedy))
        .collect()
}

fn mend(code: &str, text: &str, remedy: &Message) -> String {
    line(&format!("  {code}: {text}")) + &line(&format!("    mend: {remedy}"))
}
