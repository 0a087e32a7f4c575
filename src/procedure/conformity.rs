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
use crate::stats::line::Line;
use crate::units::{counted, fixed, listed, short};

/// How far a rating conforms, best first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Level {
    Conforms,
    ConformsWithNotes,
    Indicative,
}

impl Level {
    /// The code in files.
    pub const fn code(self) -> &'static str {
        match self {
            Level::Conforms => "conforms",
            Level::ConformsWithNotes => "conforms-with-notes",
            Level::Indicative => "indicative",
        }
    }

    /// The level in words.
    pub fn describe(self) -> &'static str {
        match self {
            Level::Conforms => "Conforms",
            Level::ConformsWithNotes => "Conforms with notes",
            Level::Indicative => "Indicative only",
        }
    }
}

/// Something that lowers the level.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    pub code: &'static str,
    /// The best level it allows.
    pub level: Level,
    /// What was found.
    pub text: String,
    /// What would mend it.
    pub remedy: String,
}

/// The level with all that led to it.
#[derive(Debug, Clone, PartialEq)]
pub struct Conformity {
    pub level: Level,
    pub findings: Vec<Finding>,
    /// Intervals and days still missing: "9 more intervals and 1 more day".
    pub missing: Option<String>,
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

fn indicative(code: &'static str, text: String, remedy: impl Into<String>) -> Finding {
    Finding {
        code,
        level: Level::Indicative,
        text,
        remedy: remedy.into(),
    }
}

fn note(code: &'static str, text: String, remedy: impl Into<String>) -> Finding {
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
    pub fn describe(&self) -> Option<String> {
        let more = |count: usize, noun: &str| {
            let nouns = counted(count, noun);
            (count > 0).then(|| nouns.replacen(' ', " more ", 1))
        };
        match (
            more(self.missing_intervals(), "interval"),
            more(self.missing_days(), "day"),
        ) {
            (Some(intervals), Some(days)) => Some(format!("{intervals} and {days}")),
            (intervals, days) => intervals.or(days),
        }
    }

    fn findings(&self) -> Vec<Finding> {
        let mut findings = Vec::new();
        if self.missing_intervals() > 0 {
            findings.push(indicative(
                "too-few-intervals",
                format!(
                    "{} used, the practice asks for {}",
                    counted(self.used, "interval"),
                    self.least_used
                ),
                format!(
                    "{} that can be used",
                    counted(self.missing_intervals(), "more interval")
                ),
            ));
        }
        if self.missing_days() > 0 {
            findings.push(indicative(
                "too-few-days",
                format!(
                    "used intervals on {}, the practice asks for {}",
                    counted(self.days, "day"),
                    self.least_days
                ),
                format!(
                    "used intervals on {}",
                    counted(self.missing_days(), "more day")
                ),
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
            "no line can be fitted: it takes three used intervals with irradiance, at different temperature differences".to_owned(),
            if has_irradiance {
                "more intervals that can be used, from ambient to near boiling"
            } else {
                "measure irradiance; without it power cannot be normalised"
            },
        )];
    };
    let mut findings = Vec::new();
    let least = limits.of_finding("r-squared-low");
    if line
        .r_squared
        .is_none_or(|r_squared| r_squared < least - SLACK)
    {
        let found = line
            .r_squared
            .map_or("undefined".to_owned(), |r_squared| fixed(r_squared, 2));
        findings.push(indicative(
            "r-squared-low",
            format!("R² is {found}, below {}; the practice would be content with a note, this report is not", short(least)),
            "steadier aiming, clearer sky and less wind; a sensor that does not touch the pot",
        ));
    }
    if line.slope >= 0.0 {
        findings.push(indicative(
            "line-not-falling",
            "the power does not fall as the water gets hotter, which no real cooker does".to_owned(),
            "check that the water temperature is that of the water, and cover a wider range of temperatures",
        ));
    }
    let ps50_w = line.predict(RATING_DIFFERENCE_K);
    if ps50_w <= 0.0 {
        findings.push(indicative(
            "no-useful-heat",
            format!(
                "the line reads {} W at {} K: there the water loses heat",
                fixed(ps50_w, 0),
                short(RATING_DIFFERENCE_K)
            ),
            "check that the readings are of water being heated, with the cooker aimed",
        ));
    }
    if !line.spans(RATING_DIFFERENCE_K) {
        let (lowest_k, highest_k) = line.x_range;
        findings.push(note(
            "extrapolated",
            format!(
                "{} K lies outside the temperature differences observed, {} to {} K",
                short(RATING_DIFFERENCE_K),
                fixed(lowest_k, 1),
                fixed(highest_k, 1)
            ),
            format!(
                "used intervals on both sides of {} K",
                short(RATING_DIFFERENCE_K)
            ),
        ));
    }
    findings
}

fn load_finding(limits: &Limits, runs: &[Run]) -> Option<Finding> {
    let load_kg_m2 = limits.of_finding("load-off");
    let is_off = |run: &&Run| (run.load_kg_m2 / load_kg_m2 - 1.0).abs() > LOAD_TOLERANCE + SLACK;
    let off: Vec<String> = runs
        .iter()
        .filter(|run| run.on_line > 0)
        .filter(is_off)
        .map(|run| format!("{} ({} kg/m²)", run.plan.label, fixed(run.load_kg_m2, 2)))
        .collect();
    (!off.is_empty()).then(|| {
        indicative(
            "load-off",
            format!(
                "the load is more than {} % away from {} kg/m² in {}",
                short(LOAD_TOLERANCE * 100.0),
                short(load_kg_m2),
                listed(&off)
            ),
            format!(
                "weigh in {} kg of water for each m² of intercept area, or correct that area",
                short(load_kg_m2)
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
            format!("wind was not measured in {}", listed(&windless)),
            "measure the wind beside the cooker, at its height",
        ));
    }
    let by_eye = without(|run| run.readings.wind_m_s.is_some() && run.estimates_wind);
    if !by_eye.is_empty() {
        findings.push(indicative(
            "wind-estimated",
            format!(
                "wind is an estimate by eye in {}, good to a number of the Beaufort scale",
                listed(&by_eye)
            ),
            "measure the wind beside the cooker, at its height",
        ));
    }
    if let Some(way) = campaign.instruments.irradiance_estimate {
        findings.push(indicative(
            "irradiance-estimated",
            format!(
                "irradiance was not measured at the cooker in the plane normal to the beam, but estimated {}",
                way.describe()
            ),
            "measure irradiance beside the cooker, with a sensor that faces the sun",
        ));
        return findings;
    }
    let sunless = without(|run| run.readings.irradiance_w_m2.is_none());
    if !sunless.is_empty() {
        findings.push(indicative(
            "irradiance-not-normal",
            format!(
                "irradiance was not measured in {}, whose intervals cannot be normalised and are not on the line",
                listed(&sunless)
            ),
            "measure irradiance in the plane normal to the beam",
        ));
    } else if campaign.instruments.irradiance_plane == Some(Plane::Horizontal) {
        findings.push(indicative(
            "irradiance-not-normal",
            "irradiance was measured in the horizontal plane, the practice asks for the plane normal to the beam; there it is usually higher, so the rating is probably too high".to_owned(),
            "mount the sensor so that it faces the sun as the cooker does; until then estimate = \"from-horizontal\" turns its readings to the sun",
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
        format!(
            "{} gained more heat than the sunlight intercepted; the first took {} W from {} W",
            counted(impossible.len(), "used interval"),
            fixed(first.cooking_power_w, 0),
            fixed(intercepted_w(first)?, 0)
        ),
        "check the mass of water, the intercept area, and the units of temperature and irradiance",
    ))
}

/// What mends an own limit.
const BACK_TO_THE_PRACTICE: &str =
    "go back to the practice's limits: delete these under [limits] in the campaign file";

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
        let text = format!(
            "{} {} {} (practice: {})",
            own.what,
            short(own.value),
            own.unit,
            spoken_practice(own, practice)
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
    if !relaxed_requirements.is_empty() {
        findings.push(indicative(
            "requirement-relaxed",
            format!(
                "own limits looser than a requirement: {}",
                listed(&relaxed_requirements)
            ),
            BACK_TO_THE_PRACTICE,
        ));
    }
    if !relaxed_recommendations.is_empty() {
        findings.push(note(
            "recommendation-relaxed",
            format!(
                "own limits looser than a recommendation: {}",
                listed(&relaxed_recommendations)
            ),
            BACK_TO_THE_PRACTICE,
        ));
    }
    if !tightened.is_empty() {
        findings.push(note(
            "limit-tightened",
            format!(
                "own limits tighter than the practice: {}",
                listed(&tightened)
            ),
            BACK_TO_THE_PRACTICE,
        ));
    }
    findings
}

fn spoken_practice(own: &Limit, practice: &Limit) -> String {
    if own.key == practice.key {
        format!("{} {}", short(practice.value), practice.unit)
    } else {
        format!(
            "{} {} {}",
            practice.what,
            short(practice.value),
            practice.unit
        )
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
            format!("{} excluded by the tester", counted(excluded, "interval")),
            "none, if the reason given in the campaign file stands",
        )
    })
}
