//! A campaign by this practice: intervals, line, rating, conformity.

use crate::procedure::finding::Level;
use jiff::civil::Date;

use super::conformity::{Conformity, judge};
use super::in_force::Limits;
use super::intervals::{Interval, of_run};
use super::limits::S580Limit;
use super::notice::S580Notice;
use super::predicted::{Predicted, predict_run};
use super::rated::{Rated, Rating, TookUp, rate_line};
use super::reason::Reason;
use super::screen::{Screening, Surroundings, breaks, screen_run};
use super::stall::stalls;
use super::uncertainty::RatingUncertainty;
use crate::language::Phrase;
use crate::procedure::site::local_dates;
use crate::procedure::tested::Tested;
use crate::stats::line::Line;

/// What the practice makes of a campaign.
#[derive(Debug, Clone)]
pub struct S580 {
    pub limits: Limits,
    /// Of all runs, in order, used and set aside.
    pub intervals: Vec<Interval>,
    /// Of each run, in their order.
    pub screenings: Vec<Screening>,
    /// `None` where no line can be fitted.
    pub rated: Option<Rated>,
    pub conformity: Conformity,
    /// Of each run, in their order; `None` without a line or a used interval.
    pub predicted: Vec<Option<Predicted>>,
    /// Local dates with intervals that are on the line, in order.
    pub dates: Vec<Date>,
    /// Of the campaign as a whole; those of a run are in its screening.
    pub notices: Vec<S580Notice>,
}

/// Applies the practice.
///
/// # Source
/// ASAE S580.1; the reading of it is this project's design, stated in the report.
pub fn rate(tested: &Tested, limits: Limits) -> S580 {
    let site = &tested.campaign.site;
    let (screenings, intervals) = screen_runs(tested, &limits);
    let on_line = intervals.iter().filter(|interval| interval.is_on_line());
    let starts_us = on_line.map(|interval| interval.measured.span.from_us);
    let dates = local_dates(starts_us, &site.time_zone);
    let rated = rate_line(tested, &intervals);
    let conformity = judge(
        tested,
        &limits,
        &intervals,
        &screenings,
        dates.len(),
        rated.as_ref(),
    );
    let predicted = predict_runs(tested, &intervals, rated.as_ref());
    let notices = about_rating(tested, &intervals, rated.as_ref());
    S580 {
        limits,
        intervals,
        screenings,
        rated,
        conformity,
        predicted,
        dates,
        notices,
    }
}

fn screen_runs(tested: &Tested, limits: &Limits) -> (Vec<Screening>, Vec<Interval>) {
    let site = &tested.campaign.site;
    let (mut screenings, mut intervals) = (Vec::new(), Vec::new());
    for (index, run) in tested.runs.iter().enumerate() {
        let (screening, of_run) = screen_run(index, run, site, limits, tested.boiling_point_c);
        screenings.push(screening);
        intervals.extend(of_run);
    }
    (screenings, intervals)
}

fn predict_runs(
    tested: &Tested,
    intervals: &[Interval],
    rated: Option<&Rated>,
) -> Vec<Option<Predicted>> {
    let runs = tested.runs.iter().enumerate();
    let predict = |(index, run)| {
        let of_run: Vec<&Interval> = of_run(intervals, index).iter().collect();
        predict_run(&rated?.line, run, &of_run, tested.boiling_point_c)
    };
    runs.map(predict).collect()
}

fn about_rating(tested: &Tested, intervals: &[Interval], rated: Option<&Rated>) -> Vec<S580Notice> {
    let mut notices = Vec::new();
    if let Some(rated) = rated {
        notices.extend(assumed_instruments(&rated.uncertainty));
        notices.extend(stalls(tested, intervals, &rated.uncertainty.of_line));
    }
    notices
}

/// That instruments are assumed, where some are.
fn assumed_instruments(uncertainty: &RatingUncertainty) -> Option<S580Notice> {
    let assumed = uncertainty.assumed();
    let instruments = assumed.into_iter();
    let instruments: Vec<(Phrase, Phrase)> = instruments
        .map(|(source, class)| (source.quantity().into(), class.name().into()))
        .collect();
    (!instruments.is_empty()).then_some(S580Notice::InstrumentsAssumed { instruments })
}

impl S580 {
    /// Whether the readings are physically impossible, so that nothing follows from them.
    pub fn is_not_valid(&self) -> bool {
        self.conformity.level == Level::NotValid
    }

    /// The line, where there is one.
    pub fn line(&self) -> Option<&Line> {
        self.rated.as_ref().map(|rated| &rated.line)
    }

    /// The single figure, where there is a line.
    pub fn rating(&self) -> Option<&Rating> {
        self.rated.as_ref().map(|rated| &rated.rating)
    }

    /// How sure the single figure is, where there is a line.
    pub fn uncertainty(&self) -> Option<&RatingUncertainty> {
        self.rated.as_ref().map(|rated| &rated.uncertainty)
    }

    /// The intervals of one run.
    pub fn intervals_of(&self, run: usize) -> impl Iterator<Item = &Interval> {
        of_run(&self.intervals, run).iter()
    }

    /// The intervals that the line is drawn through: those used, with irradiance.
    pub fn used(&self) -> impl Iterator<Item = &Interval> {
        let intervals = self.intervals.iter();
        intervals.filter(|interval| interval.is_on_line())
    }

    /// The intervals that break no rule but have no irradiance to be normalised by.
    pub fn not_normalised(&self) -> impl Iterator<Item = &Interval> {
        let intervals = self.intervals.iter();
        intervals.filter(|interval| interval.is_not_normalised())
    }

    /// The intervals that are set aside.
    pub fn set_aside(&self) -> impl Iterator<Item = &Interval> {
        let intervals = self.intervals.iter();
        intervals.filter(|interval| interval.is_set_aside())
    }

    /// Mean ambient temperature of the intervals on the line, °C; `None` without one.
    pub fn mean_ambient_c(&self) -> Option<f64> {
        mean_ambient_c(&self.intervals)
    }

    /// Mean irradiance of the intervals on the line, W/m²; `None` without one.
    pub fn mean_irradiance_w_m2(&self) -> Option<f64> {
        let means = self
            .used()
            .filter_map(|one| Some(one.measured.irradiance?.mean));
        let means: Vec<f64> = means.collect();
        (!means.is_empty()).then(|| means.iter().sum::<f64>() / means.len() as f64)
    }

    /// What the water took up in the sun of the test; `None` without a line.
    pub fn took_up(&self) -> Option<TookUp> {
        let rated = self.rated.as_ref()?;
        Some(rated.took_up(self.mean_irradiance_w_m2()?))
    }

    /// Mean load of the runs that contribute to the line, kg; `None` without one.
    pub fn mean_load_kg(&self, tested: &Tested) -> Option<f64> {
        let runs = tested.runs.iter().zip(&self.screenings);
        let contributing = runs.filter(|(_, screening)| screening.on_line > 0);
        let loads: Vec<f64> = contributing.map(|(run, _)| run.plan.water_kg).collect();
        (!loads.is_empty()).then(|| loads.iter().sum::<f64>() / loads.len() as f64)
    }

    /// How many points lie further from the line than twice its residual standard deviation.
    pub fn outside_twice(&self) -> usize {
        let Some(line) = self.line() else {
            return 0;
        };
        let points = self.used().filter_map(Interval::point);
        points
            .filter(|(k, power_w)| (power_w - line.predict(*k)).abs() > 2.0 * line.residual_sd)
            .count()
    }

    /// How many intervals break a limit, at a local boiling point, °C.
    pub fn count_breaking(&self, limit: &S580Limit, boiling_point_c: f64) -> usize {
        let breaking = |interval: &&Interval| {
            let around = Surroundings {
                boiling_point_c,
                longest_gust_s: self.screenings[interval.run].longest_gust_s,
            };
            breaks(&interval.measured, limit, &self.limits, around)
        };
        self.intervals.iter().filter(breaking).count()
    }
}

/// Each reason that occurs among some intervals, with how often, most frequent first.
pub fn count_reasons<'i>(intervals: impl Iterator<Item = &'i Interval>) -> Vec<(Reason, usize)> {
    let mut counts: Vec<(Reason, usize)> = Reason::ALL.iter().map(|&reason| (reason, 0)).collect();
    for reason in intervals.flat_map(|interval| interval.reasons()) {
        counts[*reason as usize].1 += 1;
    }
    counts.retain(|(_, count)| *count > 0);
    counts.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
    counts
}

/// Mean ambient temperature of those intervals that are on the line, °C; `None` without one.
pub fn mean_ambient_c(intervals: &[Interval]) -> Option<f64> {
    let on_line = intervals.iter().filter(|interval| interval.is_on_line());
    let ambients: Vec<f64> = on_line
        .filter_map(|interval| Some(interval.measured.ambient?.mean))
        .collect();
    (!ambients.is_empty()).then(|| ambients.iter().sum::<f64>() / ambients.len() as f64)
}
