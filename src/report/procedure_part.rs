//! What a procedure beside the rating says in a section of its own.

use serde::Serialize;

use crate::language::{Message, Words, celsius, fixed, kilograms};
use crate::message;
use crate::procedure::boiling::Boiling;
use crate::procedure::finding::Finding;
use crate::procedure::stated::Stated;
use crate::procedure::uncertainty::Figure;
use crate::report::rows::{self, FindingText, Row};
use crate::stats::line::Bounds;
use crate::units::decimals_for;

/// The section on one procedure.
#[derive(Debug, Clone, Serialize)]
pub struct ProcedurePart {
    pub what: String,
    /// Above the values: what their ± is.
    pub spread: String,
    /// Its figures.
    pub rows: Vec<Row>,
    /// Below them: what they rest on, each a paragraph.
    pub rests_on: Vec<String>,
    /// `None` where each run needs no row of its own.
    pub table: Option<Table>,
    /// `None` where there is nothing to draw.
    pub figure: Option<rows::Figure>,
    pub findings: Vec<FindingText>,
    pub source: String,
}

/// A table with a row a run.
#[derive(Debug, Clone, Serialize)]
pub struct Table {
    /// The first is of words, the others of numbers.
    pub heads: Vec<String>,
    pub rows: Vec<Vec<String>>,
}

/// What the ± of a section's figures is.
pub fn spread(is_of_one_day: bool) -> Message {
    if is_of_one_day {
        message!("procedure-spread-one-day")
    } else {
        message!("procedure-spread")
    }
}

/// One side of an interval is printed for both where the other is at most this much shorter.
const EVEN: f64 = 0.8;

/// Whether an interval reaches about as far on both sides.
pub fn is_even(figure: &Figure) -> bool {
    let Bounds { lower, upper } = figure.interval;
    let shorter = (figure.value - lower).min(upper - figure.value);
    shorter >= EVEN * figure.half_width()
}

/// `0.331 ± 0.022`, without its unit, times a scale; `0.331 (0.312 to 0.390)` where the interval
/// reaches further on one side.
pub fn spoken(figure: &Figure, scale: f64) -> Message {
    let half_width = figure.half_width() * scale;
    let decimals = decimals_for(half_width);
    let Bounds { lower, upper } = figure.interval;
    if !is_even(figure) {
        return message!(
            "procedure-value-between",
            value = fixed(figure.value * scale, decimals),
            lower = fixed(lower * scale, decimals),
            upper = fixed(upper * scale, decimals)
        );
    }
    message!(
        "balance-value",
        value = fixed(figure.value * scale, decimals),
        half_width = fixed(half_width, decimals)
    )
}

/// A stated figure with its unit.
pub fn value_of(stated: &Stated) -> Message {
    let scale = stated.key.scale();
    let value = match &stated.figure {
        Some(figure) => spoken(figure, scale),
        None => message!(
            "procedure-value-alone",
            value = fixed(stated.value * scale, 2)
        ),
    };
    match stated.key.unit() {
        "" => value,
        unit => message!("procedure-value", value = value, unit = unit),
    }
}

/// A row of a section: name and symbol, value with ± and unit.
pub fn row(stated: &Stated, words: &Words) -> Row {
    let label = message!(
        "procedure-label",
        name = stated.key.name(),
        symbol = stated.key.symbol()
    );
    Row::said(words, label, value_of(stated))
}

/// What a time to boil holds for.
pub fn boiling_said(boiling: &Boiling) -> Message {
    message!(
        "procedure-boiling",
        load = kilograms(fixed(boiling.water_kg, 2)),
        ambient = celsius(fixed(boiling.ambient_c, 0)),
        boiling = celsius(fixed(boiling.boiling_point_c, 1)),
        irradiance = fixed(boiling.irradiance_w_m2, 0)
    )
}

/// The findings of a procedure in words.
pub fn said<C>(
    findings: &[Finding<C>],
    code: impl Fn(&C) -> &'static str,
    words: &Words,
) -> Vec<FindingText> {
    let findings = findings.iter();
    findings
        .map(|one| FindingText::said(words, code(&one.code), one))
        .collect()
}
