//! The figures of a concentrating cooker in words.

use super::falls::FILE;
use crate::language::{Message, Words, celsius, fixed, kelvins};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::dish::DishFigures;
use crate::procedure::dish::formulas::WINDOW_K;
use crate::procedure::stated::{FigureKey, Stated};
use crate::report::procedure_part::{ProcedurePart, boiling_said, row, said, spoken, spread};
use crate::report::rows::{Figure, Row};

/// The section on the figures of a concentrating cooker; `None` where they do not apply.
pub fn dish_part(
    assessment: &Assessment,
    stated: &[Stated],
    words: &Words,
) -> Option<ProcedurePart> {
    use FigureKey::{DishBoiling, LossFactor, OpticalFactor, TimeConstant};
    let found = assessment.dish_figures.as_ref()?;
    let is_ours =
        |key: FigureKey| matches!(key, TimeConstant | LossFactor | OpticalFactor | DishBoiling);
    let ours: Vec<&Stated> = stated.iter().filter(|one| is_ours(one.key)).collect();
    let mut rows: Vec<Row> = ours.iter().map(|one| row(one, words)).collect();
    if let Some(loss) = &found.loss_w_per_k {
        let value = message!("balance-loss-text", value = spoken(&loss.figure, 1.0));
        rows.push(Row::said(words, message!("dish-loss"), value));
    }
    let rests_on = rests_on(assessment, found);
    Some(ProcedurePart {
        what: words.say(message!("dish-what")),
        spread: words.say(spread(ours.iter().any(|one| one.is_of_one_day))),
        rows,
        rests_on: rests_on.into_iter().map(|one| words.say(one)).collect(),
        table: None,
        figure: found.time_constant_s.as_ref().map(|time| Figure {
            file: FILE.to_owned(),
            caption: words.say(message!("dish-caption")),
            alt: words.say(message!(
                "dish-alt",
                runs = found.coolings.len(),
                minutes = fixed(time.figure.value / 60.0, 0)
            )),
        }),
        findings: said(&found.findings, |code| code.code(), words),
        source: words.say(message!("dish-source")),
    })
}

fn rests_on(assessment: &Assessment, found: &DishFigures) -> Vec<Message> {
    let mut all = Vec::new();
    if !found.coolings.is_empty() {
        let from_c = found.coolings.iter().map(|one| one.from_c);
        let to_c = found.coolings.iter().map(|one| one.to_c);
        all.push(message!(
            "dish-rests-on-cooling",
            runs = found.coolings.len(),
            from = celsius(fixed(from_c.fold(f64::NEG_INFINITY, f64::max), 0)),
            to = celsius(fixed(to_c.fold(f64::INFINITY, f64::min), 0))
        ));
    }
    if let Some(heat) = &assessment.tested.campaign.vessel_heat {
        all.push(message!(
            "dish-rests-on-vessels",
            heat = fixed(heat.j_per_k(), 0),
            basis = heat.basis()
        ));
    }
    if found.optical_factor.is_some() {
        all.push(message!(
            "dish-rests-on-heating",
            runs = found.heatings.len(),
            margin = kelvins(fixed(WINDOW_K, 0))
        ));
    }
    all.extend(found.boiling.as_ref().map(boiling_said));
    all
}
