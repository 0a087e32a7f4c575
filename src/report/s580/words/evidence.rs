//! Each run and each interval.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use crate::language::{
    Message, Phrase, UnitSystem, Words, clauses, date, fixed, joined, kilograms,
    kilograms_per_square_metre, short,
};
use crate::logs::Readings;
use crate::message;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::result::count_reasons;
use crate::procedure::{Assessment, Run};
use crate::report::result_names;
use crate::report::rows::Figure;
use crate::report::s580::lanes::Lane;
use crate::report::s580::run_grid::{RunClock, is_long, runs_in_a_row};
use crate::report::s580::shown_runs::{ALL_SHOWN, ShownRuns};
use crate::units::{
    celsius_to_fahrenheit, clock_from_hours, kelvin_to_fahrenheit_difference, local_clock,
    metres_per_second_to_miles_per_hour,
};

/// Section 3.
#[derive(Debug, Clone, Serialize)]
pub struct RunsPart {
    /// How the figures are read.
    pub how: Vec<String>,
    /// Runs beside each other, row by row.
    pub rows: Vec<Vec<RunPart>>,
    /// Those of which no figure is shown.
    pub others: Vec<OtherRun>,
}

/// A run without a figure.
#[derive(Debug, Clone, Serialize)]
pub struct OtherRun {
    pub title: String,
    /// How many of its intervals are used.
    pub used: String,
    /// What is to be known of it alone.
    pub remarks: Vec<String>,
}

/// One run of section 3.
#[derive(Debug, Clone, Serialize)]
pub struct RunPart {
    pub title: String,
    /// How many of its intervals are used.
    pub used: String,
    pub remarks: Vec<String>,
    pub figure: Figure,
}

/// Section 4: every interval of the campaign.
#[derive(Debug, Clone, Serialize)]
pub struct IntervalTable {
    /// Unit of the temperatures of water and air; differences are in kelvins.
    pub temperature_unit: &'static str,
    /// Unit of the wind.
    pub speed_unit: &'static str,
    /// Why intervals are not used: names of the columns of marks.
    pub lanes: Vec<String>,
    /// Of each column of numbers, texts of which one is as wide as any in it.
    pub widest: Vec<Vec<String>>,
    pub groups: Vec<IntervalGroup>,
    pub notes: Vec<String>,
}

/// The intervals of one run.
#[derive(Debug, Clone, Serialize)]
pub struct IntervalGroup {
    pub title: String,
    /// How many of them are used.
    pub used: String,
    pub rows: Vec<IntervalRow>,
}

/// One interval.
#[derive(Debug, Clone, Serialize)]
pub struct IntervalRow {
    pub used: bool,
    /// In the order of the template's header.
    pub cells: Vec<String>,
    /// Whether it stands in each of the lanes; in none if it is used.
    pub marks: Vec<bool>,
}

/// Puts section 3 into words.
pub fn runs_part(assessment: &Assessment, words: &Words) -> RunsPart {
    let shown = ShownRuns::of(assessment);
    let runs = &assessment.tested.runs;
    let parts = shown.places.iter();
    let parts: Vec<RunPart> = parts
        .map(|index| run_part(assessment, *index, &runs[*index], words))
        .collect();
    let rows = parts.chunks(runs_in_a_row(parts.len()));
    let said: BTreeSet<&str> = parts
        .iter()
        .flat_map(|part| part.remarks.iter().map(String::as_str))
        .collect();
    let others = (0..runs.len()).filter(|index| !shown.has(*index));
    let mut others: Vec<OtherRun> = others
        .map(|index| other_run(assessment, index, words))
        .collect();
    // Runs that a log is split into share the tester's note, which is said once.
    let mut of_others = BTreeSet::new();
    for other in &mut others {
        other
            .remarks
            .retain(|remark| !said.contains(remark.as_str()) && of_others.insert(remark.clone()));
    }
    let which = which_are_shown(assessment, &shown);
    RunsPart {
        how: which
            .into_iter()
            .chain(how(assessment))
            .map(|said| words.say(said))
            .collect(),
        rows: rows.map(<[RunPart]>::to_vec).collect(),
        others,
    }
}

/// Which of many runs are shown, and where the others are.
fn which_are_shown(assessment: &Assessment, shown: &ShownRuns) -> Option<Message> {
    let one_in = shown.one_in?;
    let names = result_names(&assessment.tested.campaign.name);
    Some(message!(
        "runs-shown",
        shown = shown.places.len(),
        runs = assessment.tested.runs.len(),
        most = ALL_SHOWN,
        step = one_in,
        file = names.intervals
    ))
}

fn other_run(assessment: &Assessment, index: usize, words: &Words) -> OtherRun {
    let run = &assessment.tested.runs[index];
    OtherRun {
        title: words.say(run_title(index, run, span_years(&assessment.tested.runs))),
        used: words.say(used_of(assessment, index)),
        remarks: remarks(assessment, index, words),
    }
}

/// Holes in a run, and the tester's note.
fn remarks(assessment: &Assessment, index: usize, words: &Words) -> Vec<String> {
    let zone = &assessment.tested.campaign.site.time_zone;
    let clock = |time_us: i64| local_clock(time_us, zone);
    let (shortest_min, longest_min) = assessment.s580.limits.interval().ends_min();
    let holes = assessment.s580.screenings[index].holes.iter().map(|hole| {
        words.say(message!(
            "run-hole",
            from = clock(hole.from_us),
            to = clock(hole.to_us),
            shortest = short(shortest_min),
            longest = short(longest_min)
        ))
    });
    let notes = assessment.tested.runs[index].plan.notes.iter();
    let notes = notes.map(|note| words.say(message!("run-tester", note = note)));
    holes.chain(notes).collect()
}

/// How the figures of the runs are read.
fn how(assessment: &Assessment) -> impl Iterator<Item = Message> {
    let runs = &assessment.tested.runs;
    let zone = &assessment.tested.campaign.site.time_zone;
    let axes = match RunClock::of(runs, zone) {
        _ if runs.len() < 2 => None,
        _ if runs.iter().any(is_long) => Some(message!("runs-axes-but-clock")),
        RunClock::Common(..) => Some(message!("runs-axes")),
        RunClock::OwnStart(_) => Some(message!("runs-axes-own-start")),
    };
    let measures = |series: fn(&Readings) -> bool| runs.iter().any(|run| series(&run.readings));
    let wind = if measures(|readings| readings.wind_m_s.is_some()) {
        message!("runs-wind")
    } else {
        message!("runs-no-wind")
    };
    let irradiance = !measures(|readings| readings.irradiance_w_m2.is_some());
    let is_predicted = assessment.s580.predicted.iter().any(Option::is_some);
    let is_aimed = runs.iter().any(|run| !run.readings.aimed_us.is_empty());
    let has_lanes = !Lane::of_campaign(assessment).is_empty();
    let said = [
        axes,
        Some(message!("runs-shaded")),
        irradiance.then(|| message!("runs-no-irradiance")),
        Some(wind),
        has_lanes.then(|| message!("runs-lanes")),
        is_aimed.then(|| message!("runs-aimed")),
        is_predicted.then(|| message!("runs-predicted")),
    ];
    said.into_iter().flatten()
}

/// Whether not all runs are of one year.
fn span_years(runs: &[Run]) -> bool {
    let mut years = runs.iter().map(|run| run.date.year());
    let first = years.next();
    years.any(|year| Some(year) != first)
}

/// The run's number and date, with the year where there are several.
fn run_title(index: usize, run: &Run, with_year: bool) -> Message {
    let date: Phrase = if with_year {
        date(run.date)
    } else {
        let month = Message::new(format!("month-{}", run.date.month()));
        let day = run.date.day().to_string();
        message!("figure-day", day = day, month = month).into()
    };
    message!("run-title", number = index + 1, date = date)
}

fn used_of(assessment: &Assessment, index: usize) -> Message {
    let screening = &assessment.s580.screenings[index];
    message!(
        "run-used",
        used = screening.on_line,
        of = screening.intervals
    )
}

fn run_part(assessment: &Assessment, index: usize, run: &Run, words: &Words) -> RunPart {
    let zone = &assessment.tested.campaign.site.time_zone;
    let clock = |time_us: i64| local_clock(time_us, zone);
    let first = run.readings.time_us.first().copied().unwrap_or_default();
    let last = run.readings.time_us.last().copied().unwrap_or_default();
    let alt = [
        Some(run_alt(assessment, index, clock(first), clock(last))),
        alt_of_aimings(run),
    ];
    let alt = alt.into_iter().flatten();
    RunPart {
        title: words.say(run_title(index, run, span_years(&assessment.tested.runs))),
        used: words.say(used_of(assessment, index)),
        remarks: remarks(assessment, index, words),
        figure: Figure {
            file: format!("run-{}.svg", index + 1),
            caption: run_caption(assessment, index, words),
            alt: words.say(joined(alt, " ")),
        },
    }
}

/// The load, how often the cooker was aimed where not all runs are alike in that, and how
/// near the line comes to the water.
fn run_caption(assessment: &Assessment, index: usize, words: &Words) -> String {
    let runs = &assessment.tested.runs;
    let run = &runs[index];
    let aimed_min = run.plan.tracking_interval_min;
    let are_alike = runs
        .iter()
        .all(|run| run.plan.tracking_interval_min == aimed_min);
    let load = message!(
        "run-load",
        water = kilograms(fixed(run.plan.water_kg, 2)),
        load = kilograms_per_square_metre(fixed(run.load_kg_m2, 2))
    );
    let aimed = aimed_min
        .filter(|_| !are_alike)
        .map(|minutes| message!("run-aimed", minutes = short(minutes)));
    let predicted = assessment.s580.predicted[index].as_ref();
    let predicted =
        predicted.map(|predicted| message!("run-predicted", rms = fixed(predicted.rms_k, 1)));
    let said = [Some(load), aimed, predicted];
    words.say(clauses(said.into_iter().flatten()))
}

/// How often the cooker was aimed by the notes; `None` where no note tells.
fn alt_of_aimings(run: &Run) -> Option<Message> {
    match run.readings.aimed_us.len() {
        0 => None,
        1 => Some(message!("run-alt-aimed-once")),
        times => Some(message!("run-alt-aimed", times = times)),
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

/// Puts section 4 into words.
pub fn interval_table(assessment: &Assessment, words: &Words) -> IntervalTable {
    let lanes = Lane::of_campaign(assessment);
    let runs = &assessment.tested.runs;
    let with_year = span_years(runs);
    let group = |&index: &usize| IntervalGroup {
        title: words.say(run_title(index, &runs[index], with_year)),
        used: words.say(used_of(assessment, index)),
        rows: assessment
            .s580
            .intervals_of(index)
            .map(|interval| interval_row(assessment, interval, &lanes, words))
            .collect(),
    };
    let aside = (!lanes.is_empty()).then(|| message!("intervals-dots"));
    let shown = ShownRuns::of(assessment);
    let which = intervals_of_shown(assessment, &shown);
    let notes = which.into_iter().chain([message!("intervals-note")]);
    let notes = notes.chain(aside);
    let notes = notes.chain((words.units == UnitSystem::Us).then(table_in_us));
    let units = TableUnits::of(words.units);
    let groups: Vec<IntervalGroup> = shown.places.iter().map(group).collect();
    IntervalTable {
        temperature_unit: units.temperature,
        speed_unit: units.speed,
        widest: widest(&groups),
        groups,
        lanes: lanes.iter().map(|lane| words.say(lane.name())).collect(),
        notes: notes.map(|note| words.say(note)).collect(),
    }
}

/// Of each column, one text of every form: digits are all of one width, so that a text with other
/// digits in the same places is as wide.
fn widest(groups: &[IntervalGroup]) -> Vec<Vec<String>> {
    let mut forms: Vec<BTreeMap<String, &String>> = Vec::new();
    for row in groups.iter().flat_map(|group| &group.rows) {
        forms.resize_with(forms.len().max(row.cells.len()), BTreeMap::new);
        for (forms, cell) in forms.iter_mut().zip(&row.cells) {
            let form = cell.replace(|one: char| one.is_ascii_digit(), "0");
            forms.entry(form).or_insert(cell);
        }
    }
    let texts = |forms: BTreeMap<String, &String>| forms.into_values().cloned().collect();
    forms.into_iter().map(texts).collect()
}

/// Which intervals are in the table where not all are, and where all are.
fn intervals_of_shown(assessment: &Assessment, shown: &ShownRuns) -> Option<Message> {
    shown.one_in?;
    let names = result_names(&assessment.tested.campaign.name);
    Some(message!(
        "intervals-shown",
        shown = shown.places.len(),
        intervals = assessment.s580.intervals.len(),
        file = names.intervals
    ))
}

/// What the unit of differences in the table is in that of the US.
fn table_in_us() -> Message {
    message!(
        "intervals-us",
        fahrenheit = short(kelvin_to_fahrenheit_difference(1.0))
    )
}

/// Units of the table in a system, and what turns degrees Celsius and metres per second into them.
struct TableUnits {
    temperature: &'static str,
    of_c: fn(f64) -> f64,
    speed: &'static str,
    of_m_s: fn(f64) -> f64,
}

impl TableUnits {
    fn of(units: UnitSystem) -> Self {
        match units {
            UnitSystem::Si => TableUnits {
                temperature: "°C",
                of_c: |celsius| celsius,
                speed: "m/s",
                of_m_s: |metres_per_second| metres_per_second,
            },
            UnitSystem::Us => TableUnits {
                temperature: "°F",
                of_c: celsius_to_fahrenheit,
                speed: "mph",
                of_m_s: metres_per_second_to_miles_per_hour,
            },
        }
    }
}

fn interval_row(
    assessment: &Assessment,
    interval: &Interval,
    lanes: &[Lane],
    words: &Words,
) -> IntervalRow {
    let zone = &assessment.tested.campaign.site.time_zone;
    let measured = &interval.measured;
    let number = |value: f64, decimals: usize| words.say(fixed(value, decimals));
    let optional = |value: Option<f64>, decimals: usize| {
        value.map_or_else(|| "–".to_owned(), |value| number(value, decimals))
    };
    let clock = |time_us: i64| local_clock(time_us, zone);
    let TableUnits { of_c, of_m_s, .. } = TableUnits::of(words.units);
    let sun_range = measured.irradiance.map_or_else(
        || "–".to_owned(),
        |sun| format!("{}–{}", number(sun.min, 0), number(sun.max, 0)),
    );
    IntervalRow {
        used: interval.is_on_line(),
        cells: vec![
            format!(
                "{}–{}",
                clock(measured.span.from_us),
                clock(measured.span.to_us)
            ),
            clock_from_hours(measured.solar_start_h),
            format!(
                "{} → {}",
                number(of_c(measured.water_start_c), 1),
                number(of_c(measured.water_end_c), 1)
            ),
            optional(measured.ambient.map(|ambient| of_c(ambient.mean)), 1),
            optional(measured.irradiance.map(|sun| sun.mean), 0),
            sun_range,
            optional(measured.wind.map(|wind| of_m_s(wind.mean)), 1),
            number(measured.cooking_power_w, 0),
            optional(measured.difference_k, 1),
            optional(measured.standardised_power_w, 0),
        ],
        marks: lanes.iter().map(|lane| lane.holds(interval)).collect(),
    }
}
