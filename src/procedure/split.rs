//! A log of many days to the runs in it.

use jiff::civil::Date;
use jiff::tz::TimeZone;

use super::run_notice::RunNotice;
use crate::campaign::model::{Exclusion, RunPlan};
use crate::campaign::moment::Moment;
use crate::local_time;
use crate::logs::Readings;
use crate::units::{MICROSECONDS_PER_SECOND, zoned};

/// Water readings further apart than this belong to two runs, s.
/// Common practice, no published source.
const GAP_S: f64 = 3600.0;
/// A date on which the water rises less than this holds no heating, K.
/// Common practice, no published source.
const LEAST_RISE_K: f64 = 10.0;

/// One heating of a log.
#[derive(Debug, Clone)]
pub struct Piece {
    pub plan: RunPlan,
    pub readings: Readings,
}

/// Splits a log at each local midnight and at each gap of more than an hour.
///
/// A heating goes from the coldest water before the hottest to the hottest; a start or an
/// end of the run, as clock times, take the place of either on each day. A part in which
/// the water rises less than 10 K is none, unless it has both.
pub fn split(plan: &RunPlan, readings: Readings, zone: &TimeZone) -> (Vec<Piece>, RunNotice) {
    let is_bounded = is_clock(&plan.start) && is_clock(&plan.end);
    let of_log = readings.time_us.len();
    let parts = parts(&readings.water_c.time_us, zone);
    let count = parts.len();
    let heating = |part: Part| {
        let span = heating(&readings, plan, part.date, (part.from, part.to), zone);
        span.map(|span| (part.date, span))
    };
    let (dates, spans): (Vec<Date>, Vec<(i64, i64)>) =
        parts.into_iter().filter_map(heating).unzip();
    let cut = dates.into_iter().zip(readings.into_parts(&spans));
    let is_run =
        |readings: &Readings| readings.water_c.value.len() >= 2 && readings.ambient_c.is_some();
    let piece = |(date, readings)| Piece {
        plan: RunPlan {
            date: Some(date),
            label: format!("{} {date}", plan.log),
            // The readings are the run's already.
            start: None,
            end: None,
            ..plan.clone()
        },
        readings,
    };
    let runs = cut.filter(|(_, readings)| is_run(readings));
    let mut pieces: Vec<Piece> = runs.map(piece).collect();
    let flat = count - pieces.len();
    number_twins(&mut pieces);
    deal_exclusions(&mut pieces, &plan.exclusions, zone);
    let kept: usize = pieces
        .iter()
        .map(|piece| piece.readings.time_us.len())
        .sum();
    let notice = RunNotice::LogSplit {
        log: plan.log.clone(),
        runs: pieces.len(),
        without: flat,
        readings_left_out: of_log - kept,
        is_bounded,
        least_rise_k: LEAST_RISE_K,
    };
    (pieces, notice)
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Part {
    date: Date,
    from: i64,
    to: i64,
}

/// Stretches of one local date without a gap.
fn parts(water_us: &[i64], zone: &TimeZone) -> Vec<Part> {
    let mut parts: Vec<Part> = Vec::new();
    let gap_us = (GAP_S * MICROSECONDS_PER_SECOND) as i64;
    // Midnight at the end of the date of the last part, so that not every reading asks.
    let mut midnight_us = i64::MIN;
    for &time_us in water_us {
        if time_us < midnight_us
            && let Some(last) = parts.last_mut()
            && time_us - last.to <= gap_us
        {
            last.to = time_us;
            continue;
        }
        let date = zoned(time_us, zone).date();
        midnight_us = date
            .tomorrow()
            .ok()
            .and_then(|next| local_time::midnight_us(next, zone))
            .unwrap_or(i64::MAX);
        parts.push(Part {
            date,
            from: time_us,
            to: time_us,
        });
    }
    parts
}

/// Whether a start or end holds on every date.
fn is_clock(moment: &Option<Moment>) -> bool {
    matches!(moment, Some(Moment::Clock(_)))
}

/// The heating in a part of a log.
fn heating(
    readings: &Readings,
    plan: &RunPlan,
    date: Date,
    (from, to): (i64, i64),
    zone: &TimeZone,
) -> Option<(i64, i64)> {
    let resolve = |moment: &Option<Moment>| moment.as_ref().map(|at| at.resolve_us(date, zone));
    let start = resolve(&plan.start).unwrap_or(Some(i64::MIN))?;
    let end = resolve(&plan.end).unwrap_or(Some(i64::MAX))?;
    let (from, to) = (from.max(start), to.min(end));
    let (times, water_c) = readings.water_c.between(from, to);
    let hotter = |top: usize, at: usize| if water_c[at] > water_c[top] { at } else { top };
    let top = (0..water_c.len()).reduce(hotter)?;
    let colder = |low: usize, at: usize| if water_c[at] <= water_c[low] { at } else { low };
    let low = (0..=top).reduce(colder)?;
    let rises = water_c[top] - water_c[low] >= LEAST_RISE_K;
    let (starts, ends) = (is_clock(&plan.start), is_clock(&plan.end));
    let from = if starts { from } else { times[low] };
    let to = if ends { to } else { times[top] };
    (from < to && (rises || (starts && ends))).then_some((from, to))
}

/// Tells the runs of one date apart.
fn number_twins(pieces: &mut [Piece]) {
    let labels: Vec<String> = pieces
        .iter()
        .map(|piece| piece.plan.label.clone())
        .collect();
    for (index, piece) in pieces.iter_mut().enumerate() {
        let twins = labels
            .iter()
            .filter(|label| **label == labels[index])
            .count();
        if twins > 1 {
            let before = labels[..index]
                .iter()
                .filter(|label| **label == labels[index])
                .count();
            piece.plan.label = format!("{} ({})", labels[index], before + 1);
        }
    }
}

/// An excluded span with a date goes to the run that it meets, else to the first, where
/// it is reported to meet nothing; one without a date holds every day.
fn deal_exclusions(pieces: &mut [Piece], exclusions: &[Exclusion], zone: &TimeZone) {
    let has_date = |exclusion: &Exclusion| !matches!(exclusion.span.from, Moment::Clock(_));
    for piece in pieces.iter_mut() {
        piece
            .plan
            .exclusions
            .retain(|exclusion| !has_date(exclusion));
    }
    for exclusion in exclusions.iter().filter(|exclusion| has_date(exclusion)) {
        let meets = |piece: &Piece| {
            let date = piece.plan.date.unwrap_or_default();
            let from = exclusion.span.from.resolve_us(date, zone);
            let to = exclusion.span.to.resolve_us(date, zone);
            let times = &piece.readings.time_us;
            match (from, to, times.first(), times.last()) {
                (Some(from), Some(to), Some(first), Some(last)) => from <= *last && to >= *first,
                _ => false,
            }
        };
        let met = pieces.iter().position(meets).unwrap_or(0);
        if let Some(piece) = pieces.get_mut(met) {
            piece.plan.exclusions.push(exclusion.clone());
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::campaign::model::LogRules;
    use crate::logs::Series;

    const MINUTE_US: i64 = 60_000_000;

    fn plan() -> RunPlan {
        RunPlan {
            number: 1,
            is_matched: false,
            line: None,
            log: "all.csv".to_owned(),
            label: "all.csv".to_owned(),
            path: "all.csv".into(),
            rules: LogRules::default(),
            weather: None,
            is_split: true,
            shares_log: false,
            kind: crate::campaign::kinds::RunKind::Water,
            water_kg: 7.0,
            vessel_water_kg: Vec::new(),
            tracking_interval_min: None,
            date: None,
            start: None,
            end: None,
            notes: None,
            exclusions: Vec::new(),
            cloudless: Vec::new(),
        }
    }

    /// Water every ten minutes from midnight UTC of 1970-01-02 on.
    fn readings(water_c: &[f64]) -> Readings {
        let start = 1440 * MINUTE_US;
        let times: Vec<i64> = (0..water_c.len() as i64)
            .map(|n| start + n * 10 * MINUTE_US)
            .collect();
        let series = Series::new(times.clone(), water_c.to_vec());
        Readings {
            time_us: times.into(),
            ambient_c: Some(series.clone()),
            water_c: series,
            ..Readings::default()
        }
    }

    #[test]
    fn a_heating_goes_from_the_coldest_to_the_hottest() {
        let readings = readings(&[30.0, 25.0, 25.0, 60.0, 90.0, 90.0, 70.0, 20.0]);
        let times = &readings.time_us;
        let pieces = |from: usize, to: usize| {
            let part = readings.part(times[from], times[to]);
            let spans = |piece: &Piece| {
                let times = &piece.readings.time_us;
                (times[0], times[times.len() - 1])
            };
            let (pieces, _) = split(&plan(), part.clone(), &TimeZone::UTC);
            pieces.iter().map(spans).collect::<Vec<_>>()
        };
        assert_eq!(pieces(0, 7), [(times[2], times[4])]);
        assert_eq!(pieces(0, 2), []);
    }

    #[test]
    fn parts_end_at_midnight_and_at_gaps() {
        let hours = |hours: &[f64]| -> Vec<i64> {
            hours
                .iter()
                .map(|hour| (hour * 3600.0 * 1e6) as i64)
                .collect()
        };
        let times = hours(&[10.0, 10.5, 12.0, 12.5, 23.5, 24.0, 24.5]);
        let parts = parts(&times, &TimeZone::UTC);
        let spans: Vec<(i64, i64)> = parts.iter().map(|part| (part.from, part.to)).collect();
        let expected = [(0, 1), (2, 3), (4, 4), (5, 6)];
        assert_eq!(spans, expected.map(|(from, to)| (times[from], times[to])));
    }
}
