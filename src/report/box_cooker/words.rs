//! The figures of a box cooker in words.

use super::heating::FILE;
use crate::language::{Message, Words, celsius, fixed, square_metres};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::box_cooker::figures::{BoxFigures, GRADE_A_K_M2_PER_W, Grade, glass_m2};
use crate::procedure::box_cooker::formulas::{FROM_C, end_c};
use crate::procedure::stated::{FigureKey, Stated};
use crate::report::procedure_part::{ProcedurePart, boiling_said, row, said, spread};
use crate::report::rows::{Figure, Row};

/// The section on the figures of a box cooker; `None` where they do not apply.
pub fn box_part(
    assessment: &Assessment,
    stated: &[Stated],
    words: &Words,
) -> Option<ProcedurePart> {
    let found = assessment.box_figures.as_ref()?;
    let is_ours =
        |key: FigureKey| matches!(key, FigureKey::F1 | FigureKey::F2 | FigureKey::BoxBoiling);
    let ours: Vec<&Stated> = stated.iter().filter(|one| is_ours(one.key)).collect();
    let mut rows: Vec<Row> = ours.iter().map(|one| row(one, words)).collect();
    if let Some(found) = found.grade {
        rows.push(Row::said(words, message!("box-grade"), grade(found)));
    }
    let rests_on = rests_on(assessment, found);
    Some(ProcedurePart {
        what: words.say(message!("box-what")),
        spread: words.say(spread(ours.iter().any(|one| one.is_of_one_day))),
        rows,
        rests_on: rests_on.into_iter().map(|one| words.say(one)).collect(),
        table: None,
        figure: found.f2.as_ref().map(|_| Figure {
            file: FILE.to_owned(),
            caption: words.say(message!("box-caption")),
            alt: words.say(message!(
                "box-alt",
                runs = found.stretches.len(),
                from = celsius(fixed(FROM_C, 0)),
                to = celsius(fixed(end_c(&assessment.tested), 0))
            )),
        }),
        findings: said(&found.findings, |code| code.code(), words),
        source: words.say(message!("box-source")),
    })
}

fn grade(found: Grade) -> Message {
    let said = match found {
        Grade::A => message!("box-grade-a"),
        Grade::NotSurely => message!("box-grade-none"),
        Grade::OneDay => message!("box-grade-one-day"),
        Grade::NotFlat => message!("box-grade-not-flat"),
    };
    said.with("limit", fixed(GRADE_A_K_M2_PER_W, 2))
}

fn rests_on(assessment: &Assessment, found: &BoxFigures) -> Vec<Message> {
    let mut all = Vec::new();
    let plateaus = assessment.dry_runs.plateaus().count();
    if plateaus > 0 {
        all.push(message!("box-rests-on-dry", runs = plateaus));
    }
    if found.f2.is_some() {
        all.push(message!(
            "box-rests-on-water",
            runs = found.stretches.len(),
            from = celsius(fixed(FROM_C, 0)),
            to = celsius(fixed(end_c(&assessment.tested), 0))
        ));
    }
    if found.f2.is_some() {
        let is_stated = assessment.tested.campaign.cooker.glazing_area_m2.is_some();
        let said = if is_stated {
            message!("box-glass")
        } else {
            message!("box-glass-not-stated")
        };
        all.push(said.with(
            "area",
            square_metres(fixed(glass_m2(&assessment.tested), 3)),
        ));
    }
    all.extend(found.boiling.as_ref().map(boiling_said));
    all
}
