//! What `check` says of the procedures beside the rating.

use super::lines::Lines;
use crate::campaign::kinds::ProcedureKey;
use crate::language::{Message, Words};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::finding::{Finding, Level};
use crate::procedure::stated::{FigureKey, stated};
use crate::report::heat_balance::acceptance_words;
use crate::report::procedure_part::row;

/// The figures that there are so far, and what is missing for others, by procedure; nothing
/// where none of them applies.
pub fn of_procedures(lines: &mut Lines, assessment: &Assessment, words: &Words) {
    let is_other = |key: FigureKey| {
        use FigureKey::{Gain, Loss, OptoThermalRatio, Ps50};
        !matches!(key, Ps50 | Gain | Loss | OptoThermalRatio)
    };
    let figures = stated(assessment);
    let figures = figures.iter().filter(|one| is_other(one.key));
    let acceptance = assessment.acceptance.as_ref();
    let acceptance = acceptance.filter(|one| one.half_angle.is_some());
    let rows: Vec<(String, String)> = figures
        .map(|one| {
            let said = row(one, words);
            match one.is_of_one_day {
                true => {
                    let mark = words.say(message!("summary-one-day"));
                    (said.label, format!("{} {mark}", said.text))
                }
                false => (said.label, said.text),
            }
        })
        .chain(acceptance.map(|one| {
            let said = acceptance_words::row(one, words);
            (said.label, said.text)
        }))
        .collect();
    // What is found of a number that cannot be true says nothing new.
    let findings = match assessment.s580.is_not_valid() {
        true => Vec::new(),
        false => findings(assessment),
    };
    if rows.is_empty() && findings.is_empty() {
        return;
    }
    let heading = match rows.is_empty() {
        true => message!("check-no-figures"),
        false => message!("check-figures"),
    };
    lines.blank().title(&words.say(heading)).rows("  ", &rows);
    for found in findings {
        let text = match found.run {
            Some(run) => format!("{run}: {}", words.say(found.text)),
            None => words.say(found.text),
        };
        lines.remedied("  ", &text, &words.say(found.remedy));
    }
}

/// A finding of a procedure beside the rating.
pub struct Found {
    pub procedure: ProcedureKey,
    /// Name of the run that it is about, where it is about one.
    pub run: Option<String>,
    pub code: &'static str,
    pub text: Message,
    pub remedy: Message,
    /// The best level that it allows.
    pub level: Level,
}

/// What lowers the figures beside the rating.
pub fn findings(assessment: &Assessment) -> Vec<Found> {
    let mut all = Vec::new();
    let procedures = &assessment.tested.campaign.procedures;
    let is_told = !procedures.leaves_out(ProcedureKey::DryVessel);
    for run in assessment.dry_runs.runs.iter().filter(|_| is_told) {
        let label = &assessment.tested.dry_runs[run.run].plan.label;
        let found = found(ProcedureKey::DryVessel, &run.findings, |code| code.code());
        all.extend(found.map(|one| Found {
            run: Some(label.clone()),
            ..one
        }));
    }
    if let Some(part) = &assessment.box_figures {
        all.extend(found(ProcedureKey::BoxCooker, &part.findings, |code| {
            code.code()
        }));
    }
    if let Some(part) = &assessment.dish_figures {
        all.extend(found(ProcedureKey::Dish, &part.findings, |code| {
            code.code()
        }));
    }
    if let Some(part) = &assessment.acceptance {
        all.extend(found(ProcedureKey::HeatBalance, &part.findings, |code| {
            code.code()
        }));
    }
    if let Some(part) = &assessment.efficiency {
        all.extend(found(ProcedureKey::Efficiency, &part.findings, |code| {
            code.code()
        }));
    }
    all
}

fn found<C>(
    procedure: ProcedureKey,
    findings: &[Finding<C>],
    code: impl Fn(&C) -> &'static str,
) -> impl Iterator<Item = Found> {
    findings.iter().map(move |one| Found {
        procedure,
        run: None,
        code: code(&one.code),
        text: one.text.clone(),
        remedy: one.remedy.clone(),
        level: one.level,
    })
}
