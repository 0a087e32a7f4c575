//! Page one of a campaign that heats no water: what its dry and cooling runs say.

use super::headline::{Headline, Number};
use crate::language::{Message, Words, celsius, fixed, kelvins, range};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::finding::Level;
use crate::procedure::stated::{FigureKey, Stated};
use crate::report::dish::falls;
use crate::report::dry_vessel::heating;
use crate::report::dry_vessel::runs_words::findings;
use crate::report::procedure_part::{is_even, row, said};
use crate::report::rows::{Figure, FindingText, Row};
use crate::report::s580::figures::drawn::POWER_LINES;
use crate::report::sections::{Section, Sections};
use crate::stats::line::Bounds;
use crate::units::decimals_for;

/// The name of a procedure's figure as page one has it: as wide as the page.
pub fn front(file: &str) -> String {
    format!("front-{file}")
}

/// The kind of document.
pub fn kind_without_water() -> Message {
    message!("report-kind-without-water")
}

/// Page one, with the first figure that there is as its number.
pub fn headline_without_water(
    assessment: &Assessment,
    sections: &Sections,
    stated: &[Stated],
    words: &Words,
) -> Headline {
    let first = stated.first();
    let level = Level::NoRating;
    let label = first.map_or_else(|| message!("headline-label-none"), |one| one.key.name());
    let figure = figure(assessment, words);
    Headline {
        label: words.say(label),
        number: first.and_then(|one| number(one, words)),
        interval: None,
        level: words.say(level.describe()),
        level_code: level.code().to_owned(),
        counts: String::new(),
        level_text: words.say(message!("headline-no-water")),
        rests_on: String::new(),
        facts: facts(assessment, stated, words),
        figure_title: figure.caption.clone(),
        lower_figures: Vec::new(),
        figure,
        findings: all_findings(assessment, words),
        conditions: None,
        caution: words.say(message!(
            "headline-caution-no-rating",
            section = sections.number(Section::Cautions)
        )),
    }
}

fn number(stated: &Stated, words: &Words) -> Option<Number> {
    let figure = stated.figure.as_ref()?;
    let scale = stated.key.scale();
    let half_width = figure.half_width() * scale;
    let decimals = decimals_for(half_width);
    let Bounds { lower, upper } = figure.interval;
    let is_even = is_even(figure);
    Some(Number {
        value: words.say(fixed(figure.value * scale, decimals)),
        spread: if is_even {
            format!("± {}", words.say(fixed(half_width, decimals)))
        } else {
            words.say(range(lower * scale, upper * scale, decimals))
        },
        unit: stated.key.unit().to_owned(),
        caveats: Vec::new(),
        explanation: vec![words.say(spread_alone(stated.is_of_one_day))],
    })
}

/// What the ± at the number is.
fn spread_alone(is_of_one_day: bool) -> Message {
    if is_of_one_day {
        message!("headline-spread-one-day")
    } else {
        message!("headline-spread")
    }
}

/// What each dry run came to, what the number is for, and the other figures.
fn facts(assessment: &Assessment, stated: &[Stated], words: &Words) -> Vec<Row> {
    let mut facts = Vec::new();
    let plateaus = assessment.dry_runs.plateaus().map(|(_, plateau)| plateau);
    let hottest = plateaus.max_by(|one, two| one.vessel_c.total_cmp(&two.vessel_c));
    facts.extend(hottest.map(|plateau| {
        let reached = message!(
            "headline-dry-plateau",
            irradiance = fixed(plateau.irradiance_w_m2, 0),
            vessel = celsius(fixed(plateau.vessel_c, 0)),
            difference = kelvins(fixed(plateau.difference_k(), 0)),
            ambient = celsius(fixed(plateau.ambient_c, 0))
        );
        Row::said(words, message!("fact-reached"), reached)
    }));
    if let Some(one) = stated.first() {
        facts.push(Row::said(
            words,
            message!("fact-good-for"),
            one.key.good_for(),
        ));
        facts.push(Row::said(
            words,
            message!("fact-not-with"),
            one.key.not_with(),
        ));
    }
    // F1 is the same ratio under another name.
    let others = stated.iter().skip(1).filter(|one| one.key != FigureKey::F1);
    facts.extend(others.map(|one| row(one, words)));
    facts.push(Row::said(
        words,
        message!("fact-kitchen"),
        message!("headline-no-water-means"),
    ));
    facts
}

fn figure(assessment: &Assessment, words: &Words) -> Figure {
    let is_dry = assessment
        .dry_runs
        .runs
        .iter()
        .any(|run| run.highest_c.is_some());
    let has_time = assessment
        .dish_figures
        .as_ref()
        .is_some_and(|found| found.time_constant_s.is_some());
    let (file, caption) = if is_dry {
        (front(heating::FILE), message!("dry-caption"))
    } else if has_time {
        (front(falls::FILE), message!("dish-caption"))
    } else {
        (
            POWER_LINES[0].to_owned(),
            message!("headline-nothing-drawn"),
        )
    };
    Figure {
        file,
        alt: words.say(&caption),
        caption: words.say(caption),
    }
}

fn all_findings(assessment: &Assessment, words: &Words) -> Vec<FindingText> {
    let mut all = findings(assessment, words);
    if let Some(found) = &assessment.box_figures {
        all.extend(said(&found.findings, |code| code.code(), words));
    }
    if let Some(found) = &assessment.dish_figures {
        all.extend(said(&found.findings, |code| code.code(), words));
    }
    all
}
