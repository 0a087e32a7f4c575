//! A campaign and its logs to one rating.

use jiff::civil::Date;
use jiff::tz::TimeZone;

use super::conformity::{Conformity, judge};
use super::cooking::{Cooking, Kitchen, cook, mean_ambient_c};
use super::danger::{DangerZone, danger_zone};
use super::estimate::{contradictions, estimate_irradiance};
use super::intervals::{Interval, find_holes, form_intervals};
use super::limits::{Limit, Limits, RATING_DIFFERENCE_K, STANDARD_IRRADIANCE_W_M2};
use super::predicted::{Predicted, predict_run};
use super::run::{Run, prepare_run, problem, run_notices};
use super::screen::{Reason, Surroundings, breaks, longest_gust_s, screen_run};
use super::split::{Piece, split};
use super::stagnation::{Stagnation, stagnations};
use super::uncertainty::{RatingUncertainty, evaluate};
use super::year::{ClearYear, clear_year};
use crate::campaign::Campaign;
use crate::campaign::find::CAMPAIGN_FILE;
use crate::campaign::model::{CookerType, IrradianceEstimate, RunPlan, Site};
use crate::error::{Error, Problem, Problems, Result};
use crate::hash::sha256_hex;
use crate::language::Phrase;
use crate::logs::account::Account;
use crate::logs::quantity::Quantity;
use crate::logs::{Log, Readings};
use crate::notice::Notice;
use crate::physics::air::pressure_pa;
use crate::physics::water::boiling_point_c;
use crate::stats::line::{self, Line, fit_line};
use crate::units::zoned;

/// Pascals in a hectopascal.
const PA_PER_HPA: f64 = 100.0;

/// Everything that is known about a campaign after the practice has been applied.
#[derive(Debug, Clone)]
pub struct Assessment {
    pub campaign: Campaign,
    /// Name and SHA-256 of every log.
    pub logs: Vec<(String, String)>,
    /// How every log was read.
    pub accounts: Vec<Account>,
    /// In the order of the campaign file.
    pub runs: Vec<Run>,
    /// Of all runs, in order, used and set aside.
    pub intervals: Vec<Interval>,
    pub limits: Limits,
    /// Local boiling point of water, °C.
    pub boiling_point_c: f64,
    /// Ps on Td over the used intervals; `None` where no line can be fitted.
    pub line: Option<Line>,
    pub rating: Option<Rating>,
    /// How sure the rating is.
    pub uncertainty: Option<RatingUncertainty>,
    pub conformity: Conformity,
    /// What the line means for a pot of water.
    pub cooking: Option<Cooking>,
    /// What it means for clear days through the year.
    pub year: Option<ClearYear>,
    /// Heating that would leave food too long where bacteria grow.
    pub danger_zone: Option<DangerZone>,
    /// Of the campaign's tests of the dry vessel, in their order.
    pub stagnations: Vec<Stagnation>,
    /// Of each run, in their order; `None` without a line or a used interval.
    pub predicted: Vec<Option<Predicted>>,
    pub notices: Vec<Notice>,
}

/// The single figure, W.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rating {
    /// Ps(50): the line read at a temperature difference of 50 K.
    pub ps50_w: f64,
    /// Standard error of the line there, from the regression alone.
    pub standard_error_w: f64,
    pub confidence_w: line::Interval,
    pub prediction_w: line::Interval,
    /// 50 K lies outside the temperature differences that were observed.
    pub is_extrapolated: bool,
}

/// Applies the practice.
///
/// `logs` are those of `campaign.runs`, in the same order.
///
/// # Errors
/// [`Error::Campaign`] for own limits between which nothing lies, and for a start,
/// end or exclusion that leaves nothing or does not exist in the site's zone.
///
/// # Source
/// ASAE S580.1; the reading of it is this project's design, stated in the report.
pub fn assess(campaign: Campaign, logs: Vec<Log>) -> Result<Assessment> {
    let limits = Limits::new(&campaign.limits);
    if let Some(what) = limits.contradiction() {
        let problem = Problem::at(&campaign.file, what).item("[limits]");
        let hint = "correct your own limit, or set its other end too";
        return Err(Error::Campaign(problem.hint(hint).into()));
    }
    let boiling_point_c = local_boiling_point_c(&campaign.site);
    let mut notices = Vec::new();
    let mut problems = Problems::default();
    let mut runs = Vec::new();
    let mut intervals = Vec::new();
    let (mut inputs, mut accounts) = (Vec::new(), Vec::new());
    let rule = Rule {
        limits: &limits,
        boiling_point_c,
    };
    for (plan, log) in campaign.runs.iter().zip(logs) {
        let about_log = log.notices.into_iter();
        let about_log = about_log.filter(|notice| !is_expected(&campaign, notice));
        add_new(&mut notices, about_log.collect());
        add_new(&mut inputs, log.inputs);
        let mut plan = plan.clone();
        if plan.is_split && log.accounts.iter().any(|account| account.is_elapsed) {
            // It says when the stopwatch was started, not when each day's heating begins.
            plan.start = None;
        }
        let estimates_wind = log.accounts.iter().any(Account::estimates_wind);
        add_new(&mut accounts, log.accounts);
        let pieces = pieces_of(&campaign, &plan, log.readings, &mut notices);
        for piece in pieces.map_err(|problem| Error::Campaign(problem.into()))? {
            match rate_run(&campaign, runs.len(), piece, rule, &mut notices) {
                Err(problem) => problems.push(problem),
                Ok((mut run, formed)) => {
                    run.estimates_wind = estimates_wind;
                    runs.push(run);
                    intervals.extend(formed);
                }
            }
        }
    }
    if let Some(problem) = overlap(&campaign, &runs).or_else(|| copy(&campaign, &runs)) {
        problems.push(problem);
    }
    if !problems.is_empty() {
        return Err(Error::Campaign(problems));
    }
    let measures_irradiance = runs
        .iter()
        .any(|run| run.readings.irradiance_w_m2.is_some());
    let instruments = &campaign.instruments;
    let is_estimated = instruments.irradiance_estimate.is_some();
    if instruments.irradiance_plane.is_none() && measures_irradiance && !is_estimated {
        notices.push(Notice::PlaneAssumed);
    }
    let line = fit_used(&intervals);
    let rating = line.as_ref().map(rate);
    let uncertainty = line
        .as_ref()
        .map(|line| evaluate(&campaign, &runs, &intervals, line));
    notices.extend(uncertainty.as_ref().and_then(assumed_notice));
    if let Some(sure) = &uncertainty {
        notices.extend(contradictions(&campaign, &runs, &intervals, &sure.of_line));
    }
    let conformity = judge(
        &campaign,
        &runs,
        &intervals,
        &limits,
        boiling_point_c,
        line.as_ref(),
    );
    let kitchen = Kitchen {
        tested_kg: mean_load_kg(&runs),
        boiling_point_c,
        window_s: limits.solar_window_s(),
        wishes: &campaign.wishes,
    };
    let cooking = uncertainty
        .as_ref()
        .and_then(|uncertainty| cook(&uncertainty.of_line, &intervals, kitchen));
    let year = uncertainty
        .as_ref()
        .zip(cooking.as_ref())
        .and_then(|(sure, cooking)| clear_year(&campaign, &runs, &sure.of_line, cooking, &limits));
    let danger_zone = danger_zone(&runs, cooking.as_ref());
    notices.extend(danger_zone.clone().map(Notice::DangerZone));
    notices.extend(line.as_ref().and_then(|line| above_film(&campaign, line)));
    let stagnations = stagnations(&campaign).map_err(|problem| Error::Campaign(problem.into()))?;
    let predict = |(index, run): (usize, &Run)| {
        let of_run: Vec<&Interval> = intervals.iter().filter(|one| one.run == index).collect();
        predict_run(line.as_ref()?, run, &of_run, boiling_point_c)
    };
    let predicted = runs.iter().enumerate().map(predict).collect();
    Ok(Assessment {
        campaign,
        logs: inputs,
        accounts,
        runs,
        intervals,
        limits,
        boiling_point_c,
        line,
        rating,
        uncertainty,
        conformity,
        cooking,
        year,
        danger_zone,
        stagnations,
        predicted,
        notices,
    })
}

/// A log without irradiance, where it is to come from the clear-sky model.
fn is_expected(campaign: &Campaign, notice: &Notice) -> bool {
    let way = campaign.instruments.irradiance_estimate;
    way == Some(IrradianceEstimate::ClearSky)
        && matches!(notice, Notice::ColumnNotFound { quantity, .. } if *quantity == Quantity::Irradiance)
}

/// Adds what is not there yet: a log of several runs says everything once.
fn add_new<T: PartialEq>(all: &mut Vec<T>, new: Vec<T>) {
    for item in new {
        if !all.contains(&item) {
            all.push(item);
        }
    }
}

/// The runs in a log: one, or as many as it is split into.
fn pieces_of(
    campaign: &Campaign,
    plan: &RunPlan,
    readings: Readings,
    notices: &mut Vec<Notice>,
) -> std::result::Result<Vec<Piece>, Problem> {
    if !plan.is_split {
        let plan = plan.clone();
        return Ok(vec![Piece { plan, readings }]);
    }
    let (pieces, about) = split(plan, &readings, &campaign.site.time_zone);
    notices.extend(about);
    if pieces.is_empty() {
        let what = "no heating was found in the log that is split";
        let hint = "check start and end, or that the water rises in it";
        return Err(problem(campaign, plan, what, hint));
    }
    Ok(pieces)
}

/// So many readings of two runs may lie at one time by a slip in one of them.
const COMMON_READINGS: usize = 1;

/// Two runs at one time: a cooker heats one load at a time, so readings stand twice.
fn overlap(campaign: &Campaign, runs: &[Run]) -> Option<Problem> {
    runs.iter().enumerate().find_map(|(index, run)| {
        let span = |run: &Run| {
            let times = &run.readings.time_us;
            Some((*times.first()?, *times.last()?))
        };
        // A stray date makes a span long; readings of both runs must lie in what is common.
        let meets = |other: &&Run| {
            let Some((one, two)) = span(run).zip(span(other)) else {
                return false;
            };
            let (from, to) = (one.0.max(two.0), one.1.min(two.1));
            let readings = |run: &Run| {
                let times = &run.readings.time_us;
                times.iter().filter(|&time| (from..=to).contains(time)).count()
            };
            from < to && readings(run) > COMMON_READINGS && readings(other) > COMMON_READINGS
        };
        let other = runs[..index].iter().find(meets)?;
        let what = format!("runs at the same time as \"{}\"", other.plan.label);
        let hint = "a cooker heats one load at a time: take out the log that is there twice, correct date, start and end, or give another cooker a campaign of its own";
        Some(problem(campaign, &run.plan, &what, hint))
    })
}

/// Two runs of one file with the same water temperatures from end to end: a sheet that was
/// not named is read twice, under another date.
fn copy(campaign: &Campaign, runs: &[Run]) -> Option<Problem> {
    runs.iter().enumerate().find_map(|(index, run)| {
        let is_same = |other: &&Run| {
            let (one, two) = (&run.readings.water_c.value, &other.readings.water_c.value);
            let sheets = [run, other].map(|run| &run.plan.rules.format.sheet);
            let is_one_file = other.plan.path == run.plan.path && sheets[0] != sheets[1];
            is_one_file && one.len() > COMMON_READINGS && one == two
        };
        let other = runs[..index].iter().find(is_same)?;
        let mut steps = run.readings.water_c.value.windows(2);
        let is_flat = steps.all(|pair| pair[0] == pair[1]);
        let what = format!(
            "has the same water temperatures as \"{}\", reading by reading",
            other.plan.label
        );
        let hint = "a log is a run once: take one of the two out, or name its sheet or its date";
        (!is_flat).then(|| problem(campaign, &run.plan, &what, hint))
    })
}

/// What a run's intervals are held against.
#[derive(Clone, Copy)]
struct Rule<'l> {
    limits: &'l Limits,
    boiling_point_c: f64,
}

/// One run: trimmed, cut into intervals, screened and counted.
fn rate_run(
    campaign: &Campaign,
    index: usize,
    piece: Piece,
    rule: Rule<'_>,
    notices: &mut Vec<Notice>,
) -> std::result::Result<(Run, Vec<Interval>), Problem> {
    let mut run = prepare_run(campaign, piece.plan, piece.readings, notices)?;
    estimate_irradiance(campaign, &mut run)?;
    let readings = &run.readings;
    run.longest_gust_s = longest_gust_s(readings.wind_m_s.as_ref(), rule.limits);
    let around = Surroundings {
        boiling_point_c: rule.boiling_point_c,
        longest_gust_s: run.longest_gust_s,
    };
    let mut formed = form_intervals(index, readings, run.plan.water_kg, &campaign.site);
    screen_run(&mut formed, &run, rule.limits, around);
    let count = |counts: fn(&Interval) -> bool| formed.iter().filter(|i| counts(i)).count();
    (run.intervals, run.used) = (formed.len(), count(Interval::is_used));
    run.on_line = count(Interval::is_on_line);
    run.holes = find_holes(&formed, &readings.water_c.time_us);
    let zone = &campaign.site.time_zone;
    notices.extend(run_notices(&run, &formed, zone, rule.boiling_point_c));
    Ok((run, formed))
}

impl Assessment {
    /// Whether irradiance is estimated.
    pub fn estimates_irradiance(&self) -> bool {
        self.campaign.instruments.irradiance_estimate.is_some()
    }

    /// The intervals of one run.
    pub fn intervals_of(&self, run: usize) -> impl Iterator<Item = &Interval> {
        self.intervals
            .iter()
            .filter(move |interval| interval.run == run)
    }

    /// The intervals that the line is drawn through: those used, with irradiance.
    pub fn used(&self) -> impl Iterator<Item = &Interval> {
        self.intervals
            .iter()
            .filter(|interval| interval.is_on_line())
    }

    /// The intervals that break no rule but have no irradiance to be normalised by.
    pub fn not_normalised(&self) -> impl Iterator<Item = &Interval> {
        let intervals = self.intervals.iter();
        intervals.filter(|interval| interval.is_used() && !interval.is_on_line())
    }

    /// The intervals that are set aside.
    pub fn set_aside(&self) -> impl Iterator<Item = &Interval> {
        self.intervals.iter().filter(|interval| !interval.is_used())
    }

    /// Mean ambient temperature of the intervals on the line, °C; `None` without one.
    pub fn mean_ambient_c(&self) -> Option<f64> {
        mean_ambient_c(&self.intervals)
    }

    /// Local dates with intervals that are on the line, in order.
    pub fn used_dates(&self) -> Vec<Date> {
        local_dates(self.used(), &self.campaign.site.time_zone)
    }

    /// How many intervals break a limit.
    pub fn count_breaking(&self, limit: &Limit) -> usize {
        let breaking = |interval: &&Interval| {
            let around = Surroundings {
                boiling_point_c: self.boiling_point_c,
                longest_gust_s: self.runs[interval.run].longest_gust_s,
            };
            breaks(interval, limit, around)
        };
        self.intervals.iter().filter(breaking).count()
    }

    /// Every file the report rests on, with its SHA-256: campaign file, logs, and the
    /// photo as it stands in the report.
    pub fn inputs(&self) -> Vec<(String, String)> {
        let campaign = (CAMPAIGN_FILE.to_owned(), self.campaign.sha256.clone());
        let logs = self.logs.iter().cloned();
        let photo = self.campaign.cooker.photo.iter();
        let photo = photo.map(|photo| (photo.name.clone(), sha256_hex(&photo.bytes)));
        std::iter::once(campaign).chain(logs).chain(photo).collect()
    }

    /// Each reason that occurs among some intervals, with how often, most frequent first.
    pub fn count_reasons<'i>(
        intervals: impl Iterator<Item = &'i Interval>,
    ) -> Vec<(Reason, usize)> {
        let mut counts: Vec<(Reason, usize)> = Reason::ALL.map(|reason| (reason, 0)).to_vec();
        for reason in intervals.flat_map(|interval| &interval.reasons) {
            counts[*reason as usize].1 += 1;
        }
        counts.retain(|(_, count)| *count > 0);
        counts.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
        counts
    }
}

/// Local dates on which intervals start, in order.
pub fn local_dates<'i>(
    intervals: impl Iterator<Item = &'i Interval>,
    zone: &TimeZone,
) -> Vec<Date> {
    let mut dates: Vec<Date> = intervals
        .map(|interval| zoned(interval.start_us, zone).date())
        .collect();
    dates.sort();
    dates.dedup();
    dates
}

/// Local boiling point of water, °C, from measured pressure or from elevation.
pub fn local_boiling_point_c(site: &Site) -> f64 {
    boiling_point_c(local_pressure_pa(site))
}

/// Air pressure, Pa, as measured or from elevation.
pub fn local_pressure_pa(site: &Site) -> f64 {
    match site.pressure_hpa {
        Some(pressure_hpa) => pressure_hpa * PA_PER_HPA,
        None => pressure_pa(site.elevation_m),
    }
}

fn fit_used(intervals: &[Interval]) -> Option<Line> {
    let on_line = intervals.iter().filter(|interval| interval.is_on_line());
    let (difference_k, power_w): (Vec<f64>, Vec<f64>) = on_line.filter_map(Interval::point).unzip();
    fit_line(&difference_k, &power_w)
}

/// That instruments are assumed, where some are.
fn assumed_notice(uncertainty: &RatingUncertainty) -> Option<Notice> {
    let assumed = uncertainty.assumed();
    let instruments = assumed.into_iter();
    let instruments: Vec<(Phrase, Phrase)> = instruments
        .map(|(source, class)| (source.name().into(), class.name().into()))
        .collect();
    (!instruments.is_empty()).then_some(Notice::InstrumentsAssumed { instruments })
}

/// Share of sunlight that a metallised film sends on when new.
/// Common practice, no published source.
const FILM_REFLECTANCE: f64 = 0.86;

/// That a reflector takes up more than its film can send on.
fn above_film(campaign: &Campaign, line: &Line) -> Option<Notice> {
    let cooker = &campaign.cooker;
    let is_reflector = matches!(cooker.kind, CookerType::Panel | CookerType::Concentrating);
    let share = line.intercept / (STANDARD_IRRADIANCE_W_M2 * cooker.intercept_area_m2);
    (is_reflector && share > FILM_REFLECTANCE).then_some(Notice::AboveFilm { share })
}

/// Mean load of the runs that contribute to the line, kg.
fn mean_load_kg(runs: &[Run]) -> f64 {
    let loads: Vec<f64> = runs
        .iter()
        .filter(|run| run.on_line > 0)
        .map(|run| run.plan.water_kg)
        .collect();
    loads.iter().sum::<f64>() / loads.len() as f64
}

fn rate(line: &Line) -> Rating {
    let at_k = RATING_DIFFERENCE_K;
    Rating {
        ps50_w: line.predict(at_k),
        standard_error_w: line.standard_error(at_k),
        confidence_w: line.confidence(at_k),
        prediction_w: line.prediction(at_k),
        is_extrapolated: !line.spans(at_k),
    }
}
