//! Each run and each interval.

use serde::Serialize;

use crate::language::Words;

use super::report::{Figure, Row};
use crate::procedure::intervals::Interval;
use crate::procedure::{Assessment, Run};
use crate::units::{clock_from_hours, counted, fixed, local_clock, short, spoken_date};

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
    let runs = assessment.runs.iter().enumerate();
    runs.map(|(index, run)| run_part(assessment, index, run))
        .collect()
}

fn run_title(index: usize, run: &Run) -> String {
    format!("Run {}, {}", index + 1, spoken_date(run.date))
}

fn run_part(assessment: &Assessment, index: usize, run: &Run) -> RunPart {
    let zone = &assessment.campaign.site.time_zone;
    let clock = |time_us: i64| local_clock(time_us, zone);
    let first = run.readings.time_us.first().copied().unwrap_or_default();
    let last = run.readings.time_us.last().copied().unwrap_or_default();
    let used = run.on_line;
    let re_aimed = match run.plan.tracking_interval_min {
        Some(minutes) => format!("; re-aimed every {} min", short(minutes)),
        None => String::new(),
    };
    let summary = format!(
        "{}: {} from {} to {}, {} kg of water ({} kg/m²){re_aimed}. {}, {} used.",
        run.plan.label,
        counted(run.readings.time_us.len(), "reading"),
        clock(first),
        clock(last),
        fixed(run.plan.water_kg, 2),
        fixed(run.load_kg_m2, 2),
        counted(run.intervals, "interval"),
        used
    );
    let mut remarks = Vec::new();
    for hole in &run.holes {
        remarks.push(format!(
            "No interval from {} to {}: no two water readings there are 9 to 11 minutes apart.",
            clock(hole.from_us),
            clock(hole.to_us)
        ));
    }
    remarks.extend(run.plan.notes.clone());
    RunPart {
        title: run_title(index, run),
        summary,
        remarks,
        figure: Figure {
            file: format!("run-{}.svg", index + 1),
            caption: if used > 0 {
                "Shaded: spans of used intervals.".to_owned()
            } else {
                "No interval of this run is used.".to_owned()
            },
            alt: run_alt(run, used, &clock(first), &clock(last)),
        },
    }
}

fn run_alt(run: &Run, used: usize, from: &str, to: &str) -> String {
    let extremes = |values: &[f64], decimals: usize| {
        let low = values.iter().copied().fold(f64::INFINITY, f64::min);
        let high = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        (fixed(low, decimals), fixed(high, decimals))
    };
    let (cold, hot) = extremes(&run.readings.water_c.value, 1);
    let sun = match &run.readings.irradiance_w_m2 {
        Some(sun) => {
            let (low, high) = extremes(&sun.value, 0);
            format!("irradiance between {low} and {high} watts per square metre")
        }
        None => "irradiance not measured".to_owned(),
    };
    let wind = match &run.readings.wind_m_s {
        Some(wind) => {
            let (low, high) = extremes(&wind.value, 1);
            format!("wind between {low} and {high} metres per second")
        }
        None => "wind not measured".to_owned(),
    };
    format!(
        "Panels against local clock time from {from} to {to}: water between {cold} and {hot} degrees Celsius with ambient temperature; {sun}; {wind}. Used and shaded: {} of {}.",
        used,
        counted(run.intervals, "interval")
    )
}

/// What the reason codes of section 4 mean, those that occur.
pub fn reason_key(assessment: &Assessment, words: &Words) -> Vec<Row> {
    let occurring = Assessment::count_reasons(assessment.intervals.iter()).into_iter();
    occurring
        .map(|(reason, _)| Row::new(reason.code(), reason.describe()))
        .collect()
}

/// Puts section 4 into words.
pub fn interval_tables(assessment: &Assessment, words: &Words) -> Vec<IntervalTable> {
    let table = |(index, run): (usize, &Run)| IntervalTable {
        title: run_title(index, run),
        rows: assessment
            .intervals_of(index)
            .map(|interval| interval_row(assessment, interval))
            .collect(),
    };
    assessment.runs.iter().enumerate().map(table).collect()
}

fn interval_row(assessment: &Assessment, interval: &Interval) -> IntervalRow {
    let zone = &assessment.campaign.site.time_zone;
    let optional = |value: Option<f64>, decimals: usize| {
        value.map_or_else(|| "–".to_owned(), |value| fixed(value, decimals))
    };
    let sun = interval.irradiance.map_or_else(
        || "–".to_owned(),
        |sun| {
            format!(
                "{} ({}–{})",
                fixed(sun.mean, 0),
                fixed(sun.min, 0),
                fixed(sun.max, 0)
            )
        },
    );
    let reasons = if interval.is_used() && !interval.is_on_line() {
        vec!["no irradiance".to_owned()]
    } else {
        let codes = interval
            .reasons
            .iter()
            .map(|reason| reason.code().to_owned());
        codes.collect()
    };
    IntervalRow {
        used: interval.is_on_line(),
        cells: vec![
            format!(
                "{}–{}",
                local_clock(interval.start_us, zone),
                local_clock(interval.end_us, zone)
            ),
            clock_from_hours(interval.solar_start_h),
            format!(
                "{} → {}",
                fixed(interval.water_start_c, 1),
                fixed(interval.water_end_c, 1)
            ),
            optional(interval.ambient.map(|ambient| ambient.mean), 1),
            sun,
            optional(interval.wind.map(|wind| wind.mean), 1),
            fixed(interval.cooking_power_w, 0),
            optional(interval.difference_k, 1),
            optional(interval.standardised_power_w, 0),
        ],
        reasons,
    }
}
