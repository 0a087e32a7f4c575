//! Each run and each interval.

use serde::Serialize;

use crate::language::{Message, Words, clauses, date, fixed, kilograms, short};
use crate::message;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::result::count_reasons;
use crate::procedure::{Assessment, Run};
use crate::report::rows::{Figure, Row};
use crate::units::{clock_from_hours, local_clock};

/// One run of section 3.
#[derive(Debug, Clone, Serialize)]
pub struct RunPart {
    pub title: String,
    pub summary: String,
    pub remarks: Vec<String>,
    pub figure: Figure,
}

/// The intervals of one run, for section 4.
#[derive(Debug, Clone, Serialize)]
pub struct IntervalTable {
    pub title: String,
    pub rows: Vec<IntervalRow>,
}

/// One interval.
#[derive(Debug, Clone, Serialize)]
pub struct IntervalRow {
    pub used: bool,
    /// In the order of the template's header.
    pub cells: Vec<String>,
    /// Reason codes; none for a used interval.
    pub reasons: Vec<String>,
}

/// Puts section 3 into words.
pub fn run_parts(assessment: &Assessment, words: &Words) -> Vec<RunPart> {
    let runs = assessment.tested.runs.iter().enumerate();
    runs.map(|(index, run)| run_part(assessment, index, run, words))
        .collect()
}

fn run_title(index: usize, run: &Run) -> Message {
    message!("run-title", number = index + 1, date = date(run.date))
}

fn run_part(assessment: &Assessment, index: usize, run: &Run, words: &Words) -> RunPart {
    let zone = &assessment.tested.campaign.site.time_zone;
    let screening = &assessment.s580.screenings[index];
    let clock = |time_us: i64| local_clock(time_us, zone);
    let first = run.readings.time_us.first().copied().unwrap_or_default();
    let last = run.readings.time_us.last().copied().unwrap_or_default();
    let summary = match run.plan.tracking_interval_min {
        Some(minutes) => message!("run-summary-re-aimed", minutes = short(minutes)),
        None => message!("run-summary"),
    };
    let summary = summary
        .with("run", &run.plan.label)
        .with("readings", run.readings.time_us.len())
        .with("from", clock(first))
        .with("to", clock(last))
        .with("water", kilograms(fixed(run.plan.water_kg, 2)))
        .with("load", fixed(run.load_kg_m2, 2))
        .with("intervals", screening.intervals)
        .with("used", screening.on_line);
    let (shortest_min, longest_min) = assessment.s580.limits.interval().ends_min();
    let holes = screening.holes.iter().map(|hole| {
        words.say(message!(
            "run-hole",
            from = clock(hole.from_us),
            to = clock(hole.to_us),
            shortest = short(shortest_min),
            longest = short(longest_min)
        ))
    });
    RunPart {
        title: words.say(run_title(index, run)),
        summary: words.say(summary),
        remarks: holes.chain(run.plan.notes.clone()).collect(),
        figure: Figure {
            file: format!("run-{}.svg", index + 1),
            caption: words.say(match &assessment.s580.predicted[index] {
                Some(predicted) => {
                    message!("run-caption-predicted", rms = fixed(predicted.rms_k, 1))
                }
                None => message!("run-caption-none"),
            }),
            alt: words.say(run_alt(assessment, index, clock(first), clock(last))),
        },
    }
}

fn run_alt(assessment: &Assessment, index: usize, from: String, to: String) -> Message {
    let run = &assessment.tested.runs[index];
    let screening = &assessment.s580.screenings[index];
    let extremes = |values: &[f64], decimals: usize| {
        let low = values.iter().copied().fold(f64::INFINITY, f64::min);
        let high = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        (fixed(low, decimals), fixed(high, decimals))
    };
    let (coldest, hottest) = extremes(&run.readings.water_c.value, 1);
    let irradiance = match &run.readings.irradiance_w_m2 {
        Some(sun) => {
            let (lowest, highest) = extremes(&sun.value, 0);
            message!("run-alt-irradiance", lowest = lowest, highest = highest)
        }
        None => message!("run-alt-no-irradiance"),
    };
    let wind = match &run.readings.wind_m_s {
        Some(wind) => {
            let (lowest, highest) = extremes(&wind.value, 1);
            message!("run-alt-wind", lowest = lowest, highest = highest)
        }
        None => message!("run-alt-no-wind"),
    };
    let aside = count_reasons(assessment.s580.intervals_of(index)).into_iter();
    let aside: Vec<Message> = aside
        .map(|(reason, count)| {
            message!(
                "run-alt-aside",
                intervals = count,
                reason = reason.describe()
            )
        })
        .collect();
    let aside = if aside.is_empty() {
        message!("run-alt-none-aside")
    } else {
        message!("run-alt-set-aside", reasons = clauses(aside))
    };
    let predicted = match &assessment.s580.predicted[index] {
        Some(predicted) => message!("run-alt-predicted", rms = fixed(predicted.rms_k, 1)),
        None => message!("run-alt-not-predicted"),
    };
    message!(
        "run-alt",
        from = from,
        to = to,
        coldest = coldest,
        hottest = hottest,
        irradiance = irradiance,
        wind = wind,
        used = screening.on_line,
        intervals = screening.intervals,
        aside = aside,
        predicted = predicted
    )
}

/// What the reason codes of section 4 mean, those that occur.
pub fn reason_key(assessment: &Assessment, words: &Words) -> Vec<Row> {
    let occurring = count_reasons(assessment.s580.intervals.iter()).into_iter();
    occurring
        .map(|(reason, _)| Row::said(words, reason.code(), reason.describe()))
        .collect()
}

/// Puts section 4 into words.
pub fn interval_tables(assessment: &Assessment, words: &Words) -> Vec<IntervalTable> {
    let table = |(index, run): (usize, &Run)| IntervalTable {
        title: words.say(run_title(index, run)),
        rows: assessment
            .s580
            .intervals_of(index)
            .map(|interval| interval_row(assessment, interval, words))
            .collect(),
    };
    assessment
        .tested
        .runs
        .iter()
        .enumerate()
        .map(table)
        .collect()
}

fn interval_row(assessment: &Assessment, interval: &Interval, words: &Words) -> IntervalRow {
    let zone = &assessment.tested.campaign.site.time_zone;
    let number = |value: f64, decimals: usize| words.say(fixed(value, decimals));
    let optional = |value: Option<f64>, decimals: usize| {
        value.map_or_else(|| "–".to_owned(), |value| number(value, decimals))
    };
    let sun = interval.measured.irradiance.map_or_else(
        || "–".to_owned(),
        |sun| {
            let (mean, min, max) = (number(sun.mean, 0), number(sun.min, 0), number(sun.max, 0));
            format!("{mean} ({min}–{max})")
        },
    );
    let reasons = if interval.is_not_normalised() {
        vec![words.say(message!("interval-no-irradiance"))]
    } else {
        let codes = interval
            .reasons()
            .iter()
            .map(|reason| reason.code().to_owned());
        codes.collect()
    };
    IntervalRow {
        used: interval.is_on_line(),
        cells: vec![
            format!(
                "{}–{}",
                local_clock(interval.measured.span.from_us, zone),
                local_clock(interval.measured.span.to_us, zone)
            ),
            clock_from_hours(interval.measured.solar_start_h),
            format!(
                "{} → {}",
                number(interval.measured.water_start_c, 1),
                number(interval.measured.water_end_c, 1)
            ),
            optional(interval.measured.ambient.map(|ambient| ambient.mean), 1),
            sun,
            optional(interval.measured.wind.map(|wind| wind.mean), 1),
            number(interval.measured.cooking_power_w, 0),
            optional(interval.measured.difference_k, 1),
            optional(interval.measured.standardised_power_w, 0),
        ],
        reasons,
    }
}
