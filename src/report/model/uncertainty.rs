//! How sure the rating is, line by line.

use serde::Serialize;

use super::report::Figure;
use super::tested::spoken_uncertainty;
use crate::campaign::model::Uncertainty;
use crate::procedure::Assessment;
use crate::procedure::uncertainty::budget::{Budget, Contribution, Origin};
use crate::procedure::uncertainty::days::{DAYS_ALIKE_P, DayEffect, SHOWN_P};
use crate::procedure::uncertainty::outlook::Outlook;
use crate::procedure::uncertainty::trials::MonteCarlo;
use crate::procedure::uncertainty::{LineUncertainty, RatingUncertainty, sources};
use crate::units::{
    counted, decimals_for, fixed, listed, local_clock, probability, short, spoken_date, zoned,
};

/// Degrees of freedom of scatter and days below which Student's t has long tails.
const FEW_DEGREES: f64 = 10.0;
/// Days below which the interval is known to be too narrow where days differ.
const FEW_DAYS: usize = 3;
/// Influential intervals that are named; the rest are counted.
const NAMED_INTERVALS: usize = 4;

/// The second half of section 5.
#[derive(Debug, Clone, Serialize)]
pub struct UncertaintyPart {
    pub budget: Vec<BudgetRow>,
    pub total: BudgetRow,
    pub result: String,
    pub notes: Vec<String>,
    /// Days, neighbours, influence.
    pub scatter: Vec<String>,
    pub figure: Figure,
}

/// One line of the budget.
#[derive(Debug, Clone, Serialize)]
pub struct BudgetRow {
    pub source: String,
    pub of_source: String,
    pub evaluation: String,
    pub sensitivity: String,
    pub of_rating: String,
    /// Its part of the expanded uncertainty, W, and as the length of its bar, percent.
    pub part: String,
    pub part_percent: String,
}

/// Puts the uncertainty of the rating into words.
pub fn uncertainty(assessment: &Assessment, sure: &RatingUncertainty) -> UncertaintyPart {
    let budget = &sure.budget;
    let row = |part: &Contribution| budget_row(&sure.of_line, budget, part);
    UncertaintyPart {
        budget: budget.contributions.iter().map(row).collect(),
        total: BudgetRow {
            source: "combined".to_owned(),
            of_source: "root of the sum of squares".to_owned(),
            evaluation: String::new(),
            sensitivity: String::new(),
            of_rating: format!("{} W", fixed(budget.combined_w, 2)),
            part: format!("{} W", fixed(budget.expanded_w(), 2)),
            part_percent: String::new(),
        },
        result: result(budget),
        notes: notes(sure),
        scatter: scatter(assessment, sure),
        figure: figure(sure),
    }
}

/// `131 W ± 7 W (95 %)`.
pub fn with_uncertainty(power_w: f64, expanded_w: f64) -> String {
    let decimals = decimals_for(expanded_w);
    format!(
        "{} W ± {} W (95 %)",
        fixed(power_w, decimals),
        fixed(expanded_w, decimals)
    )
}

fn budget_row(of_line: &LineUncertainty, budget: &Budget, part: &Contribution) -> BudgetRow {
    let scatter = of_line.scatter();
    let (points, days) = (of_line.line.points, of_line.days.days.len());
    let (source, of_source, sensitivity) = match &part.origin {
        Origin::Scatter => (
            if of_line.days.is_honoured() {
                "scatter within days"
            } else {
                "scatter about the line"
            },
            format!(
                "{} W an interval, {}",
                fixed(scatter.sd_w, 1),
                counted(points, "interval")
            ),
            "–".to_owned(),
        ),
        Origin::ReadingNoise => (
            "reading of the water temperature",
            format!(
                "{} W an interval, {}; more than the scatter that was seen",
                fixed(scatter.sd_w, 1),
                counted(points, "interval")
            ),
            "–".to_owned(),
        ),
        Origin::Days => (
            "day-to-day spread",
            format!(
                "{} W a day, {}",
                fixed(scatter.between_sd_w, 1),
                counted(days, "day")
            ),
            "–".to_owned(),
        ),
        Origin::Common(error) => {
            let sensitivity_w = error.sensitivity_w(&of_line.line, budget.at_k);
            (
                error.source.name(),
                spoken_origin(error),
                match error.standard {
                    Uncertainty::Relative(_) => {
                        format!("{} W per %", fixed(sensitivity_w / 100.0, 2))
                    }
                    _ => format!("{} W per K", fixed(sensitivity_w, 2)),
                },
            )
        }
    };
    BudgetRow {
        source: source.to_owned(),
        of_source,
        evaluation: part.evaluation().to_string(),
        sensitivity,
        of_rating: format!("{} W", fixed(part.effect_w.abs(), 2)),
        part: format!("{} W", fixed(budget.part_of_expanded_w(part), 2)),
        part_percent: fixed((part.share * 100.0).clamp(0.0, 100.0), 1),
    }
}

fn spoken_origin(error: &sources::CommonError) -> String {
    match error.origin {
        sources::Origin::Stated => format!("{}, stated", spoken_uncertainty(error.standard)),
        sources::Origin::Class(class) => format!("{}: {}", class.name, class.basis),
        sources::Origin::Assumed(class) => format!("assumed a {}: {}", class.name, class.basis),
        sources::Origin::Known { basis, .. } => basis.to_owned(),
    }
}

/// Degrees of freedom, as far as the number means anything.
fn spoken_freedom(degrees: f64) -> String {
    if degrees < 1000.0 {
        fixed(degrees, 1)
    } else {
        "over 1000".to_owned()
    }
}

fn result(budget: &Budget) -> String {
    format!(
        "Ps(50) = {}. Expanded uncertainty ± {} W: combined {} W times k = {}, Student's t for 95 % and {} effective degrees of freedom (JCGM 100:2008, Welch–Satterthwaite).",
        with_uncertainty(budget.power_w, budget.expanded_w()),
        fixed(budget.expanded_w(), 2),
        fixed(budget.combined_w, 2),
        fixed(budget.coverage_factor, 2),
        spoken_freedom(budget.effective_freedom)
    )
}

fn notes(sure: &RatingUncertainty) -> Vec<String> {
    let mut notes = Vec::new();
    if sure.monte_carlo.is_none() && sure.budget.combined_w > 0.0 {
        notes.push("No Monte Carlo check: irradiance is so uncertain that some draws of it fall to zero or below. The interval above is then no more than a guess.".to_owned());
    }
    notes.extend(
        sure.monte_carlo
            .as_ref()
            .map(|drawn| monte_carlo(&sure.budget, drawn)),
    );
    notes.extend(outlook(sure));
    notes.push("Last column: each line's share of the variance, as its part of the expanded uncertainty; the parts add up to it. Type A: by statistics of the intervals; B: otherwise. Errors of instruments are taken as common to all intervals: those of irradiance, mass, specific heat and time scale the whole line and never show in the scatter; those of temperature cancel in the rise of the water and move Td.".to_owned());
    notes.extend(reading(sure));
    let errors = sure.of_line.common.iter();
    let mut sources: Vec<&str> = errors
        .filter_map(|error| match error.origin {
            sources::Origin::Stated => None,
            sources::Origin::Class(class) | sources::Origin::Assumed(class) => Some(class.source),
            sources::Origin::Known { source, .. } => Some(source),
        })
        .collect();
    sources.sort_unstable();
    sources.dedup();
    notes.push(format!(
        "What the tester did not state is from: {}. Limits without more knowledge are taken as rectangular, u = limit/√3 (JCGM 100:2008, 4.3.7).",
        sources.join("; ")
    ));
    let assumed = sure.assumed();
    if !assumed.is_empty() {
        let quantities: Vec<&str> = assumed.iter().map(|(quantity, _)| *quantity).collect();
        notes.push(format!(
            "For {} the campaign file states neither uncertainty nor class, so the most cautious class is assumed. Stating what was used will most likely make the uncertainty smaller.",
            listed(&quantities)
        ));
    }
    notes
}

/// Width of the drawn interval, W.
fn outcome_width_w(drawn: &MonteCarlo) -> f64 {
    drawn.outcome.upper - drawn.outcome.lower
}

fn monte_carlo(budget: &Budget, drawn: &MonteCarlo) -> String {
    let drawn_width_w = outcome_width_w(drawn);
    let cause = if drawn_width_w < 2.0 * budget.expanded_w() {
        "The draws reach less far: errors within limits end where a normal distribution goes on. The budget is on the safe side."
    } else if budget.statistical_freedom < FEW_DEGREES {
        "The tails of Student's t for so few degrees of freedom weigh more in the draws; more days bring the two together. Where much depends on it, take the wider one."
    } else {
        "Dividing by an irradiance that may be far off skews the draws; a better known sensor brings the two together. Where much depends on it, take the wider one."
    };
    let outcome = &drawn.outcome;
    let decimals = decimals_for(drawn.tolerance_w).max(1);
    let verdict = if drawn.agrees() {
        format!(
            "The ends of both intervals lie within {} W, the tolerance of JCGM 101 for one significant digit: the budget holds.",
            short(drawn.tolerance_w)
        )
    } else {
        format!(
            "That is {} W from the budget's interval, where JCGM 101 allows {} W for one significant digit. {cause}",
            fixed(drawn.apart_w, decimals),
            short(drawn.tolerance_w)
        )
    };
    let sd = drawn.sd_w.map_or_else(String::new, |sd_w| {
        format!(", standard deviation {} W", fixed(sd_w, 2))
    });
    format!(
        "Monte Carlo check (JCGM 101:2008): the same errors drawn {} times through readings, power, regression and line give {} to {} W for 95 %{sd}. {verdict}",
        outcome.trials,
        fixed(outcome.lower, decimals),
        fixed(outcome.upper, decimals),
    )
}

/// What more data would bring, towards the target or towards what instruments leave.
pub fn outlook(sure: &RatingUncertainty) -> Option<String> {
    let assuming = if sure.of_line.days.days.len() < 2 {
        ", assuming the spread seen so far and that days do not differ"
    } else {
        ", assuming the spread seen so far"
    };
    let Some((target_w, outlook)) = sure.target else {
        let least_w = sure.budget.common_expanded_w();
        return (sure.budget.combined_w > 0.0).then(|| {
            format!(
                "More intervals and days would bring the uncertainty down to ± {} W at best; the rest is the instruments'.",
                fixed(least_w, decimals_for(least_w))
            )
        });
    };
    let target = fixed(target_w, decimals_for(target_w));
    Some(match outlook {
        Outlook::Reached => format!("The ± {target} W aimed at are reached."),
        Outlook::More { intervals, days } => format!(
            "The ± {target} W aimed at take {}{assuming}.",
            spoken_more(intervals, days)
        ),
        Outlook::OutOfReach { least_w } => format!(
            "The ± {target} W aimed at cannot be reached with more intervals: the instruments alone leave ± {} W. {} weighs most.",
            fixed(least_w, decimals_for(least_w)),
            crate::units::sentence_case(heaviest(sure))
        ),
        Outlook::TooFar => format!(
            "The ± {target} W aimed at would take more intervals than anybody measures{assuming}."
        ),
    })
}

/// `12 more used intervals on 2 more days`.
pub fn spoken_more(intervals: usize, days: usize) -> String {
    let intervals = counted(intervals, "more used interval");
    match days {
        0 => intervals,
        days => format!("{intervals} on {}", counted(days, "more day")),
    }
}

/// The instrument that gives most.
fn heaviest(sure: &RatingUncertainty) -> &'static str {
    let parts = sure.budget.contributions.iter();
    let common = parts.filter_map(|part| match &part.origin {
        Origin::Common(error) => Some((error.source.name(), part.effect_w.abs())),
        _ => None,
    });
    common
        .max_by(|one, two| one.1.total_cmp(&two.1))
        .map_or("nothing", |(name, _)| name)
}

/// What limits the number most, where irradiance is estimated or the thermometer is coarse.
pub fn what_limits(sure: &RatingUncertainty) -> Option<String> {
    let parts = sure.budget.contributions.iter();
    let most = parts.max_by(|one, two| one.share.total_cmp(&two.share))?;
    let is_step = !most.is_common() && !matches!(most.origin, Origin::Days) && step_is_most(sure);
    let what = match &most.origin {
        _ if is_step => "the step in which the water thermometer is read",
        Origin::Common(error) if error.source.is_estimate() => "that irradiance is estimated",
        _ => return None,
    };
    Some(format!(
        "What limits this number most is {what}: {} % of its variance.",
        fixed(most.share * 100.0, 0)
    ))
}

/// Whether the step of the thermometer is most of the scatter.
fn step_is_most(sure: &RatingUncertainty) -> bool {
    let resolution_w = sure.of_line.reading.resolution_w.unwrap_or(0.0);
    resolution_w > sure.of_line.scatter().sd_w / 2.0_f64.sqrt()
}

/// What single readings explain of the scatter.
fn reading(sure: &RatingUncertainty) -> Option<String> {
    let noise = &sure.of_line.reading;
    let resolution_w = noise.resolution_w.filter(|watts| *watts > 0.0)?;
    let scatter = sure.of_line.scatter();
    let limits = if step_is_most(sure) {
        " The thermometer's step is most of the scatter: a finer one would help more than anything."
    } else {
        ""
    };
    Some(format!(
        "Of the {} W by which an interval scatters, the step in which the water thermometer is read explains {} W and the moment of reading {} W; both are in the scatter and not counted again.{limits}",
        fixed(scatter.sd_w, 1),
        fixed(resolution_w, 1),
        fixed(noise.clock_w, 1)
    ))
}

fn scatter(assessment: &Assessment, sure: &RatingUncertainty) -> Vec<String> {
    let mut lines = vec![days(&sure.of_line.days)];
    lines.extend(neighbours(&sure.of_line.days));
    lines.extend(influence(assessment, sure));
    lines
}

fn days(days: &DayEffect) -> String {
    let count = days.days.len();
    let Some(test) = days.test else {
        return match (count, days.within_sd_w) {
            (1, _) => "All used intervals are from one day: how much days differ cannot be told, so it is not in the uncertainty. Another day may well read outside the range stated.".to_owned(),
            (_, None) => "Too few intervals to tell days apart from scatter; how much days differ is not in the uncertainty.".to_owned(),
            _ => "The intervals lie on their days' lines without any scatter, so days cannot be tested.".to_owned(),
        };
    };
    let numbers = format!(
        "F({}, {}) = {}, p = {}",
        test.numerator_freedom,
        test.denominator_freedom,
        fixed(test.statistic, 2),
        probability(test.p)
    );
    let blocks = format!(
        "The uncertainty therefore takes {count} days, and not the intervals, as what is independent, with {}",
        counted(count - 1, "degree")
    ) + " of freedom."
        + if count < FEW_DAYS {
            " Two days are too few for that: where days differ, in simulations the interval then covered the truth in 89 of 100 cases, not in 95."
        } else {
            ""
        };
    if test.p < SHOWN_P {
        format!("Days differ by more than their scatter explains ({numbers}). {blocks}")
    } else if test.p < DAYS_ALIKE_P {
        format!(
            "Days may differ ({numbers}); to overlook it would state too small an uncertainty. {blocks}"
        )
    } else if days.is_honoured() {
        format!(
            "Days do not differ beyond the scatter ({numbers}), but neighbours within a run are alike. {blocks}"
        )
    } else {
        format!(
            "Days do not differ beyond the scatter of their intervals ({numbers}), so every interval counts as independent."
        )
    }
}

fn neighbours(days: &DayEffect) -> Option<String> {
    let neighbours = days.neighbours?;
    let verdict = if days.neighbours_are_alike() {
        "intervals that follow each other are alike, as when the aim or the sky drifts"
    } else {
        "no sign that intervals that follow each other are alike"
    };
    Some(format!(
        "Durbin–Watson within runs d = {} (2 if independent), p = {}: {verdict}.",
        fixed(neighbours.statistic, 2),
        probability(neighbours.p)
    ))
}

fn influence(assessment: &Assessment, sure: &RatingUncertainty) -> Option<String> {
    let zone = &assessment.campaign.site.time_zone;
    let named: Vec<String> = sure
        .influential
        .iter()
        .take(NAMED_INTERVALS)
        .map(|influential| {
            let interval = &assessment.intervals[influential.interval];
            format!(
                "{} {} (Cook's distance {}; without it Ps(50) is {} W)",
                spoken_date(zoned(interval.start_us, zone).date()),
                local_clock(interval.start_us, zone),
                fixed(influential.cooks_distance, 2),
                fixed(influential.ps50_without_w, 1)
            )
        })
        .collect();
    let rest = sure.influential.len().saturating_sub(NAMED_INTERVALS);
    let rest = match rest {
        0 => String::new(),
        rest => format!("; {rest} more"),
    };
    (!named.is_empty()).then(|| {
        format!(
            "Intervals that move the line more than others, by Cook's distance over 4/n, none of them removed: {}{rest}.",
            named.join(", ")
        )
    })
}

fn figure(sure: &RatingUncertainty) -> Figure {
    let budget = &sure.budget;
    Figure {
        file: "band.svg".to_owned(),
        caption: "Left: residuals in order of size against those of a normal distribution; on the dashed line if they are normal. Right: the line with its 95 % band, dark from scatter and days, light with the instruments.".to_owned(),
        alt: format!(
            "Two panels. Normal quantile plot of {} residuals. The line with its 95 percent band: at 50 kelvin {} watts, plus or minus {} watts from scatter and days, plus or minus {} watts with the instruments.",
            sure.of_line.line.points,
            fixed(budget.power_w, 1),
            fixed(budget.without_common_w(), 1),
            fixed(budget.expanded_w(), 1)
        ),
    }
}
