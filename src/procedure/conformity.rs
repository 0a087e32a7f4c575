//! Whether the rating conforms to the practice, and what would mend it.

use super::assess::local_dates;
use super::intervals::Interval;
use super::limits::{
    Allowed, LOAD_TOLERANCE, Limit, Limits, PRACTICE, RATING_DIFFERENCE_K, SLACK, Standing,
};
use super::run::Run;
use super::screen::Reason;
use crate::campaign::Campaign;
use crate::campaign::model::Plane;
use crate::language::{Message, Phrase, fixed, kilograms, listed, short};
use crate::message;
use crate::stats::line::Line;

/// How far a rating conforms, best first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Level {
    Conforms,
    ConformsWithNotes,
    Indicative,
}

impl Level {
    /// Every level, best first.
    pub const ALL: [Level; 3] = [Level::Conforms, Level::ConformsWithNotes, Level::Indicative];

    /// The code in files.
    pub const fn code(self) -> &'static str {
        match self {
            Level::Conforms => "conforms",
            Level::ConformsWithNotes => "conforms-with-notes",
            Level::Indicative => "indicative",
        }
    }

    /// The level in words.
    pub fn describe(self) -> Message {
        Message::new(format!("level-{}", self.code()))
    }
}

/// Something that lowers the level.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    pub code: &'static str,
    /// The best level it allows.
    pub level: Level,
    /// What was found.
    pub text: Message,
    /// What would mend it.
    pub remedy: Message,
}

/// The level with all that led to it.
#[derive(Debug, Clone, PartialEq)]
pub struct Conformity {
    pub level: Level,
    pub findings: Vec<Finding>,
    /// Intervals and days still missing: "9 more intervals and 1 more day".
    pub missing: Option<Message>,
}

impl Conformity {
    /// A used interval gained more than the sunlight it intercepted.
    pub fn is_unbelievable(&self) -> bool {
        self.findings
            .iter()
            .any(|finding| finding.code == "impossible-gain")
    }
}

/// Weighs a campaign against the practice.
pub fn judge(
    campaign: &Campaign,
    runs: &[Run],
    intervals: &[Interval],
    limits: &Limits,
    boiling_point_c: f64,
    line: Option<&Line>,
) -> Conformity {
    let zone = &campaign.site.time_zone;
    let on_line = || intervals.iter().filter(|interval| interval.is_on_line());
    let days = local_dates(on_line(), zone).len();
    let short_of = Shortfall::new(limits, on_line().count(), days);
    let mut findings = short_of.findings();
    findings.extend(line_findings(limits, line, has_irradiance(runs)));
    findings.extend(load_finding(limits, runs));
    findings.extend(measurement_findings(campaign, runs));
    findings.extend(gain_finding(campaign, intervals));
    findings.extend(limit_findings(limits, intervals, boiling_point_c));
    findings.extend(exclusion_finding(intervals));
    let level = findings.iter().map(|finding| finding.level).max();
    Conformity {
        level: level.unwrap_or(Level::Conforms),
        findings,
        missing: short_of.describe(),
    }
}

fn indicative(code: &'static str, text: Message, remedy: Message) -> Finding {
    Finding {
        code,
        level: Level::Indicative,
        text,
        remedy,
    }
}

fn note(code: &'static str, text: Message, remedy: Message) -> Finding {
    Finding {
        level: Level::ConformsWithNotes,
        ..indicative(code, text, remedy)
    }
}

/// Used intervals and days, and how many are missing.
pub struct Shortfall {
    used: usize,
    days: usize,
    least_used: usize,
    least_days: usize,
}

impl Shortfall {
    /// Of so many used intervals and days.
    pub fn new(limits: &Limits, used: usize, days: usize) -> Self {
        Shortfall {
            used,
            days,
            least_used: limits.of_finding("too-few-intervals") as usize,
            least_days: limits.of_finding("too-few-days") as usize,
        }
    }

    fn missing_intervals(&self) -> usize {
        self.least_used.saturating_sub(self.used)
    }

    fn missing_days(&self) -> usize {
        self.least_days.saturating_sub(self.days)
    }

    /// What is missing in words; `None`: nothing.
    pub fn describe(&self) -> Option<Message> {
        let (intervals, days) = (self.missing_intervals(), self.missing_days());
        match (intervals, days) {
            (0, 0) => None,
            (0, _) => Some(message!("missing-days", days = days)),
            (_, 0) => Some(message!("missing-intervals", intervals = intervals)),
            _ => Some(message!(
                "missing-intervals-and-days",
                intervals = intervals,
                days = days
            )),
        }
    }

    fn findings(&self) -> Vec<Finding> {
        let mut findings = Vec::new();
        if self.missing_intervals() > 0 {
            findings.push(indicative(
                "too-few-intervals",
                message!(
                    "finding-too-few-intervals",
                    intervals = self.used,
                    least = self.least_used
                ),
                message!(
                    "finding-too-few-intervals-remedy",
                    intervals = self.missing_intervals()
                ),
            ));
        }
        if self.missing_days() > 0 {
            findings.push(indicative(
                "too-few-days",
                message!(
                    "finding-too-few-days",
                    days = self.days,
                    least = self.least_days
                ),
                message!("finding-too-few-days-remedy", days = self.missing_days()),
            ));
        }
        findings
    }
}

fn has_irradiance(runs: &[Run]) -> bool {
    runs.iter()
        .any(|run| run.readings.irradiance_w_m2.is_some())
}

fn line_findings(limits: &Limits, line: Option<&Line>, has_irradiance: bool) -> Vec<Finding> {
    let Some(line) = line else {
        return vec![indicative(
            "no-rating",
            message!("finding-no-rating"),
            if has_irradiance {
                message!("finding-no-rating-remedy")
            } else {
                message!("finding-no-rating-remedy-irradiance")
            },
        )];
    };
    let mut findings = Vec::new();
    let least = limits.of_finding("r-squared-low");
    if line
        .r_squared
        .is_none_or(|r_squared| r_squared < least - SLACK)
    {
        let found = line.r_squared.map(|r_squared| fixed(r_squared, 2));
        findings.push(indicative(
            "r-squared-low",
            message!(
                "finding-r-squared-low",
                r_squared = found.unwrap_or_else(|| message!("undefined").into()),
                least = short(least)
            ),
            message!("finding-r-squared-low-remedy"),
        ));
    }
    if line.slope >= 0.0 {
        findings.push(indicative(
            "line-not-falling",
            message!("finding-line-not-falling"),
            message!("finding-line-not-falling-remedy"),
        ));
    }
    let rating_k = || short(RATING_DIFFERENCE_K);
    let ps50_w = line.predict(RATING_DIFFERENCE_K);
    if ps50_w <= 0.0 {
        findings.push(indicative(
            "no-useful-heat",
            message!(
                "finding-no-useful-heat",
                power = fixed(ps50_w, 0),
                difference = rating_k()
            ),
            message!("finding-no-useful-heat-remedy"),
        ));
    }
    if !line.spans(RATING_DIFFERENCE_K) {
        let (lowest_k, highest_k) = line.x_range;
        findings.push(note(
            "extrapolated",
            message!(
                "finding-extrapolated",
                difference = rating_k(),
                lowest = fixed(lowest_k, 1),
                highest = fixed(highest_k, 1)
            ),
            message!("finding-extrapolated-remedy", difference = rating_k()),
        ));
    }
    findings
}

fn load_finding(limits: &Limits, runs: &[Run]) -> Option<Finding> {
    let load_kg_m2 = limits.of_finding("load-off");
    let is_off = |run: &&Run| (run.load_kg_m2 / load_kg_m2 - 1.0).abs() > LOAD_TOLERANCE + SLACK;
    let off: Vec<Message> = runs
        .iter()
        .filter(|run| run.on_line > 0)
        .filter(is_off)
        .map(|run| {
            message!(
                "finding-load-off-run",
                run = &run.plan.label,
                load = fixed(run.load_kg_m2, 2)
            )
        })
        .collect();
    (!off.is_empty()).then(|| {
        indicative(
            "load-off",
            message!(
                "finding-load-off",
                tolerance = short(LOAD_TOLERANCE * 100.0),
                load = short(load_kg_m2),
                runs = listed(off)
            ),
            message!(
                "finding-load-off-remedy",
                load = kilograms(short(load_kg_m2))
            ),
        )
    })
}

/// Runs that count for what was measured: those that contribute, else all.
fn contributing(runs: &[Run]) -> Vec<&Run> {
    let used: Vec<&Run> = runs.iter().filter(|run| run.used > 0).collect();
    if used.is_empty() {
        runs.iter().collect()
    } else {
        used
    }
}

fn measurement_findings(campaign: &Campaign, runs: &[Run]) -> Vec<Finding> {
    let runs = contributing(runs);
    let without = |lacks: fn(&Run) -> bool| -> Vec<String> {
        let lacking = runs.iter().filter(|run| lacks(run));
        lacking.map(|run| run.plan.label.clone()).collect()
    };
    let mut findings = Vec::new();
    let windless = without(|run| run.readings.wind_m_s.is_none());
    if !windless.is_empty() {
        findings.push(indicative(
            "wind-not-measured",
            message!("finding-wind-not-measured", runs = listed(windless)),
            message!("finding-wind-not-measured-remedy"),
        ));
    }
    let by_eye = without(|run| run.readings.wind_m_s.is_some() && run.estimates_wind);
    if !by_eye.is_empty() {
        findings.push(indicative(
            "wind-estimated",
            message!("finding-wind-estimated", runs = listed(by_eye)),
            message!("finding-wind-not-measured-remedy"),
        ));
    }
    if let Some(way) = campaign.instruments.irradiance_estimate {
        findings.push(indicative(
            "irradiance-estimated",
            message!("finding-irradiance-estimated", way = way.describe()),
            message!("finding-irradiance-estimated-remedy"),
        ));
        return findings;
    }
    let sunless = without(|run| run.readings.irradiance_w_m2.is_none());
    if !sunless.is_empty() {
        findings.push(indicative(
            "irradiance-not-normal",
            message!("finding-irradiance-missing", runs = listed(sunless)),
            message!("finding-irradiance-missing-remedy"),
        ));
    } else if campaign.instruments.irradiance_plane == Some(Plane::Horizontal) {
        findings.push(indicative(
            "irradiance-not-normal",
            message!("finding-irradiance-horizontal"),
            message!("finding-irradiance-horizontal-remedy"),
        ));
    }
    findings
}

fn gain_finding(campaign: &Campaign, intervals: &[Interval]) -> Option<Finding> {
    let area_m2 = campaign.cooker.intercept_area_m2;
    let intercepted_w = |interval: &Interval| Some(area_m2 * interval.irradiance?.mean);
    let impossible: Vec<&Interval> = intervals
        .iter()
        .filter(|interval| interval.is_used())
        .filter(|interval| {
            intercepted_w(interval).is_some_and(|sun_w| interval.cooking_power_w > sun_w + SLACK)
        })
        .collect();
    let first = impossible.first()?;
    Some(indicative(
        "impossible-gain",
        message!(
            "finding-impossible-gain",
            intervals = impossible.len(),
            power = fixed(first.cooking_power_w, 0),
            sunlight = fixed(intercepted_w(first)?, 0)
        ),
        message!("finding-impossible-gain-remedy"),
    ))
}

/// How an own limit compares with the practice's.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Change {
    Looser,
    Tighter,
}

fn limit_findings(limits: &Limits, intervals: &[Interval], boiling_point_c: f64) -> Vec<Finding> {
    let mut relaxed_requirements = Vec::new();
    let mut relaxed_recommendations = Vec::new();
    let mut tightened = Vec::new();
    for (own, practice) in limits
        .rows
        .iter()
        .zip(&PRACTICE)
        .filter(|(own, _)| own.changed)
    {
        let text = message!(
            "finding-own-limit",
            what = own.what(),
            value = own.amount(),
            practice = spoken_practice(own, practice)
        );
        match (
            compare(own, practice, intervals, boiling_point_c),
            practice.standing,
        ) {
            (Some(Change::Looser), Standing::Requirement) => relaxed_requirements.push(text),
            (Some(Change::Looser), Standing::Recommendation) => relaxed_recommendations.push(text),
            (Some(Change::Tighter), _) => tightened.push(text),
            (None, _) => {}
        }
    }
    let mut findings = Vec::new();
    let remedy = || message!("finding-own-limit-remedy");
    if !relaxed_requirements.is_empty() {
        findings.push(indicative(
            "requirement-relaxed",
            message!(
                "finding-requirement-relaxed",
                limits = listed(relaxed_requirements)
            ),
            remedy(),
        ));
    }
    if !relaxed_recommendations.is_empty() {
        findings.push(note(
            "recommendation-relaxed",
            message!(
                "finding-recommendation-relaxed",
                limits = listed(relaxed_recommendations)
            ),
            remedy(),
        ));
    }
    if !tightened.is_empty() {
        findings.push(note(
            "limit-tightened",
            message!("finding-limit-tightened", limits = listed(tightened)),
            remedy(),
        ));
    }
    findings
}

fn spoken_practice(own: &Limit, practice: &Limit) -> Phrase {
    if own.key == practice.key {
        practice.amount()
    } else {
        message!(
            "finding-practice-limit",
            what = practice.what(),
            value = practice.amount()
        )
        .into()
    }
}

/// Looser if it lies beyond the practice's limit; a fixed end of the water window, if it
/// does so for any interval.
fn compare(
    own: &Limit,
    practice: &Limit,
    intervals: &[Interval],
    boiling_point_c: f64,
) -> Option<Change> {
    let practice_values: Vec<f64> = match own.key {
        "water_min_c" => intervals
            .iter()
            .filter_map(|interval| Some(interval.ambient?.mean + practice.value))
            .collect(),
        "water_max_c" => vec![boiling_point_c - practice.value],
        _ => vec![practice.value],
    };
    let is_looser = |value: &f64| match own.allowed {
        Allowed::AtLeast => own.value < value - SLACK,
        Allowed::AtMost => own.value > value + SLACK,
        Allowed::About => false,
    };
    let is_tighter = |value: &f64| (own.value - value).abs() > SLACK && !is_looser(value);
    if practice_values.iter().any(is_looser) {
        Some(Change::Looser)
    } else if practice_values.iter().any(is_tighter) {
        Some(Change::Tighter)
    } else {
        None
    }
}

fn exclusion_finding(intervals: &[Interval]) -> Option<Finding> {
    let excluded = intervals
        .iter()
        .filter(|interval| interval.reasons.contains(&Reason::ExcludedByTester))
        .count();
    (excluded > 0).then(|| {
        note(
            "excluded-by-tester",
            message!("finding-excluded-by-tester", intervals = excluded),
            message!("finding-excluded-by-tester-remedy"),
        )
    })
}
