//! Dry runs in words.

use super::heating::{FILE, names};
use crate::language::{Message, PairedUnit, Words, celsius, fixed, paired_number, unit_symbol};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::dry_vessel::dry_run::DryRun;
use crate::procedure::stated::{FigureKey, Stated};
use crate::report::procedure_part::{ProcedurePart, Table, row, spoken, spread};
use crate::report::rows::{Figure, FindingText};

/// The section on the dry runs; `None` without any.
pub fn dry_part(
    assessment: &Assessment,
    stated: &[Stated],
    words: &Words,
) -> Option<ProcedurePart> {
    let runs = &assessment.dry_runs.runs;
    if runs.is_empty() {
        return None;
    }
    let difference = assessment.dry_runs.difference.as_ref();
    let figure = stated
        .iter()
        .find(|one| one.key == FigureKey::DryDifference);
    let mut rests_on = vec![words.say(plane(assessment))];
    if runs.len() > 1 && difference.is_some() {
        rests_on.push(words.say(message!("dry-mean-of", runs = with_plateau(assessment))));
    }
    Some(ProcedurePart {
        what: words.say(message!("dry-what")),
        spread: words.say(spread(difference.is_some_and(|one| one.is_of_one_day))),
        rows: figure.iter().map(|stated| row(stated, words)).collect(),
        rests_on,
        table: Some(table(assessment, words)),
        figure: has_curve(assessment).then(|| Figure {
            file: FILE.to_owned(),
            caption: words.say(message!("dry-caption")),
            alt: words.say(alt(assessment)),
        }),
        findings: findings(assessment, words),
        source: words.say(message!("dry-source")),
    })
}

fn with_plateau(assessment: &Assessment) -> usize {
    assessment.dry_runs.plateaus().count()
}

fn has_curve(assessment: &Assessment) -> bool {
    let runs = assessment.dry_runs.runs.iter();
    runs.clone().any(|run| run.highest_c.is_some())
}

/// In which plane the sun was measured.
fn plane(assessment: &Assessment) -> Message {
    use crate::campaign::model::Plane;
    match assessment.tested.campaign.instruments.irradiance_plane {
        _ if assessment.tested.estimates_irradiance() => message!("dry-plane-estimated"),
        Some(Plane::Normal) => message!("dry-plane-normal"),
        Some(Plane::Horizontal) => message!("dry-plane-horizontal"),
        None => message!("dry-plane-not-stated"),
    }
}

fn table(assessment: &Assessment, words: &Words) -> Table {
    let levels: Vec<f64> = assessment
        .dry_runs
        .runs
        .iter()
        .fold(Vec::new(), |seen, run| {
            if seen.is_empty() {
                run.reached.iter().map(|one| one.celsius).collect()
            } else {
                seen
            }
        });
    let degrees = unit_symbol(PairedUnit::Celsius);
    let mut heads = vec![
        words.say(message!("dry-head-run")),
        words.say(message!("dry-head-plateau", unit = degrees.clone())),
        words.say(message!("dry-head-ambient", unit = degrees)),
        words.say(message!("dry-head-irradiance")),
        words.say(message!("dry-head-difference")),
        words.say(message!("dry-head-initial")),
    ];
    heads.extend(levels.iter().map(|level| {
        let level = celsius(fixed(*level, 0));
        words.say(message!("dry-head-reached", level = level))
    }));
    let runs = assessment.dry_runs.runs.iter();
    let named = runs.zip(names(assessment, words));
    Table {
        heads,
        rows: named
            .map(|(run, name)| cells(run, name, levels.len(), words))
            .collect(),
    }
}

fn cells(run: &DryRun, name: String, levels: usize, words: &Words) -> Vec<String> {
    const NONE: &str = "–";
    let said = |text: Option<String>| text.unwrap_or_else(|| NONE.to_owned());
    let degrees = |c: f64| words.say(paired_number(fixed(c, 0), Some(PairedUnit::Celsius)));
    let plateau = run.plateau.as_ref();
    let mut cells = vec![
        name,
        said(plateau.map(|one| degrees(one.vessel_c))),
        said(plateau.map(|one| degrees(one.ambient_c))),
        said(plateau.map(|one| words.say(fixed(one.irradiance_w_m2, 0)))),
        said(
            run.difference
                .as_ref()
                .map(|one| words.say(spoken(&one.figure, 1.0))),
        ),
        said(run.initial_k_per_min.map(|rate| words.say(fixed(rate, 1)))),
    ];
    for place in 0..levels {
        let after_s = run.reached.get(place).and_then(|one| one.after_s);
        cells.push(said(after_s.map(|s| words.say(fixed(s / 60.0, 0)))));
    }
    cells
}

fn alt(assessment: &Assessment) -> Message {
    let highest = assessment.dry_runs.runs.iter();
    let highest_c = highest
        .filter_map(|run| run.highest_c)
        .fold(f64::NEG_INFINITY, f64::max);
    message!(
        "dry-alt",
        runs = assessment.dry_runs.runs.len(),
        highest = celsius(fixed(highest_c, 0))
    )
}

/// The findings of all runs, each with the name of its run.
pub fn findings(assessment: &Assessment, words: &Words) -> Vec<FindingText> {
    let runs = assessment.dry_runs.runs.iter();
    runs.zip(names(assessment, words))
        .flat_map(|(run, name)| {
            let findings = run.findings.iter();
            findings.map(move |finding| (name.clone(), finding))
        })
        .map(|(name, finding)| {
            let said = FindingText::said(words, finding.code.code(), finding);
            FindingText {
                text: format!("{name}: {}", words.say(&finding.text)),
                ..said
            }
        })
        .collect()
}
