//! How sure the rating is: the result, the rule behind its ±, and what would make it smaller.

use serde::Serialize;

use super::budget::{BudgetRow, budget_rows};
use super::scatter::scatter;
use crate::language::{Message, Phrase, Words, celsius, clauses, fixed, joined, listed, short};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::s580::uncertainty::RatingUncertainty;
use crate::procedure::s580::uncertainty::limiting::Limiting;
use crate::procedure::s580::uncertainty::outlook::Outlook;
use crate::procedure::sources::{Basis, COLD_END_C, HOT_END_C, SCALE_ABOUT_C, irradiance_fraction};
use crate::procedure::uncertainty::apart::Apart;
use crate::procedure::uncertainty::trials::MonteCarlo;
use crate::units::decimals_for;

/// The second half of section 5.
#[derive(Debug, Clone, Serialize)]
pub struct UncertaintyPart {
    /// The rating with its ±.
    pub result: String,
    /// What limits it, and what more testing can do.
    pub means: String,
    /// The lines, the largest first; the last is what they come to.
    pub budget: Vec<BudgetRow>,
    /// The rule behind the ±, and its check by drawing.
    pub rule: Vec<String>,
    /// What the table's columns and lines rest on.
    pub notes: Vec<String>,
    /// Days, neighbours, influence.
    pub scatter: Vec<String>,
}

/// Puts the uncertainty of the rating into words.
pub fn uncertainty_part(
    assessment: &Assessment,
    uncertainty: &RatingUncertainty,
    words: &Words,
) -> UncertaintyPart {
    let say = |said: Phrase| words.say(said);
    let is_believed = !assessment.s580.is_not_valid();
    let means = what_limits(uncertainty)
        .into_iter()
        .chain(outlook(uncertainty))
        .filter(|_| is_believed);
    let notes = notes(uncertainty).into_iter().chain(sources(uncertainty));
    UncertaintyPart {
        result: words.say(match is_believed {
            true => message!("budget-result", rating = with_uncertainty(uncertainty)),
            false => message!("budget-result-not-valid"),
        }),
        means: words.say(joined(means, " ")),
        budget: budget_rows(uncertainty, words),
        rule: rule(uncertainty).into_iter().map(say).collect(),
        notes: notes.map(|note| words.say(note)).collect(),
        scatter: scatter(assessment, uncertainty)
            .into_iter()
            .map(say)
            .collect(),
    }
}

/// `131 W ± 7 W (95 %)`, and where days are not in it `131 W ± 7 W (not 95 %)`.
pub fn with_uncertainty(uncertainty: &RatingUncertainty) -> Message {
    let half_width_w = uncertainty.half_width_w();
    let decimals = decimals_for(half_width_w);
    let said = if uncertainty.is_of_one_day() {
        message!("rating-of-one-day")
    } else {
        message!("rating-with-uncertainty")
    };
    said.with("power", fixed(uncertainty.budget.value, decimals))
        .with("half_width", fixed(half_width_w, decimals))
}

/// What limits the number most, with its share of the square of ±, and what makes most of the
/// scatter; nothing where nothing is uncertain. Page one and the budget say it by this.
pub fn what_limits(uncertainty: &RatingUncertainty) -> Vec<Message> {
    let Some(most) = uncertainty.most_limiting() else {
        return Vec::new();
    };
    let is_scatter = matches!(
        most.what,
        Limiting::FewDays { .. } | Limiting::Days | Limiting::WithinDays | Limiting::Scatter
    );
    let step = (is_scatter && uncertainty.step_is_most_of_intervals())
        .then(|| message!("limits-resolution"));
    let said = match most.what {
        Limiting::FewDays { days } => message!("limits-most-few-days", days = days),
        Limiting::Days => message!("limits-most-days"),
        Limiting::WithinDays => message!("limits-most-within-days"),
        Limiting::Scatter => message!("limits-most-scatter"),
        Limiting::Step => message!("limits-most-resolution"),
        Limiting::Irradiance => message!("limits-most-irradiance"),
        Limiting::Estimate => message!("limits-most-estimated"),
        Limiting::WaterThermometer => message!("limits-most-water"),
        Limiting::AmbientThermometer => message!("limits-most-ambient"),
        Limiting::WaterMass => message!("limits-most-mass"),
        Limiting::Other => message!("limits-most-other"),
    };
    let said = said.with("percent", fixed(most.share * 100.0, 0));
    [said].into_iter().chain(step).collect()
}

/// The rule behind the ±, and what the draws say.
fn rule(uncertainty: &RatingUncertainty) -> Vec<Phrase> {
    let has_uncertainty = uncertainty.budget.combined > 0.0;
    let check = match &uncertainty.monte_carlo {
        Some(drawn) => Some(check(uncertainty, drawn)),
        None => has_uncertainty.then(|| message!("drawn-none").into()),
    };
    let columns = Phrase::from(message!("budget-note-columns"));
    let rule = Phrase::from(message!("budget-rule"));
    [rule].into_iter().chain(check).chain([columns]).collect()
}

/// The check by drawing, and the interval that follows.
fn check(uncertainty: &RatingUncertainty, drawn: &MonteCarlo) -> Phrase {
    let outcome = &drawn.outcome;
    let decimals = decimals_for(drawn.tolerance);
    let (lower, upper) = (
        fixed(outcome.lower, decimals),
        fixed(outcome.upper, decimals),
    );
    let (trials, tolerance) = (grouped(outcome.trials), short(drawn.tolerance));
    let mut said = match uncertainty.apart {
        None => vec![message!(
            "drawn-holds",
            trials = trials,
            lower = lower,
            upper = upper,
            tolerance = tolerance
        )],
        Some(apart) => {
            let budget = uncertainty.budget.interval();
            let printed = uncertainty.interval_w;
            vec![
                message!(
                    "drawn-apart",
                    trials = trials,
                    lower = lower,
                    upper = upper,
                    tolerance = tolerance,
                    apart = fixed(drawn.apart, decimals),
                    from = fixed(budget.lower, decimals),
                    to = fixed(budget.upper, decimals)
                ),
                reason(uncertainty, apart),
                message!(
                    "drawn-interval",
                    from = fixed(printed.lower, decimals),
                    to = fixed(printed.upper, decimals)
                ),
            ]
        }
    };
    let is_told = uncertainty.apart == Some(Apart::Unsettled);
    if !outcome.is_stable && !is_told {
        let within = fixed(outcome.ends_within, decimals_for(outcome.ends_within));
        said.push(message!("drawn-settled-to", within = within));
    }
    joined(said, " ")
}

/// Why the draws' interval is not the budget's.
fn reason(uncertainty: &RatingUncertainty, apart: Apart) -> Message {
    let freedom = uncertainty.budget.statistical_freedom.round() as usize;
    match apart {
        Apart::Division => {
            let percent = irradiance_percent(uncertainty);
            message!(
                "drawn-because-divided",
                percent = fixed(percent, decimals_for(percent))
            )
        }
        Apart::Curved => message!("drawn-because-curved"),
        Apart::Limits => message!("drawn-because-limits"),
        Apart::FewFreedom => message!("drawn-because-few", freedom = freedom),
        Apart::Unsettled => message!("drawn-because-unsettled", freedom = freedom),
    }
}

/// Standard uncertainty of irradiance, percent.
fn irradiance_percent(uncertainty: &RatingUncertainty) -> f64 {
    100.0 * irradiance_fraction(uncertainty.of_line.fitted.common())
}

/// `80 000`.
fn grouped(count: usize) -> String {
    match count {
        0..10_000 => count.to_string(),
        _ => format!("{}\u{a0}{:03}", count / 1000, count % 1000),
    }
}

/// What more data would bring, towards the target or towards what instruments leave.
pub fn outlook(uncertainty: &RatingUncertainty) -> Option<Message> {
    let is_one_day = uncertainty.of_line.days.days.len() < 2;
    let Some((target_w, outlook)) = uncertainty.target else {
        let least_w = uncertainty.budget.common_expanded();
        return (uncertainty.budget.combined > 0.0).then(|| {
            let least = fixed(least_w, decimals_for(least_w));
            message!("outlook-at-best", least = least)
        });
    };
    let said = match outlook {
        Outlook::Reached => message!("outlook-reached"),
        Outlook::More { intervals, days } => if is_one_day {
            message!("outlook-more-one-day")
        } else {
            message!("outlook-more")
        }
        .with("more", spoken_more(intervals, days)),
        Outlook::OutOfReach { least_w } => message!(
            "outlook-out-of-reach",
            least = fixed(least_w, decimals_for(least_w)),
            heaviest = heaviest(uncertainty)
        ),
        Outlook::TooFar if is_one_day => message!("outlook-too-far-one-day"),
        Outlook::TooFar => message!("outlook-too-far"),
    };
    Some(said.with("target", fixed(target_w, decimals_for(target_w))))
}

/// `12 more used intervals on 2 more days`.
fn spoken_more(intervals: usize, days: usize) -> Message {
    match days {
        0 => message!("outlook-intervals", intervals = intervals),
        days => message!(
            "outlook-intervals-and-days",
            intervals = intervals,
            days = days
        ),
    }
}

/// The sentence on the instrument that gives most.
fn heaviest(uncertainty: &RatingUncertainty) -> Phrase {
    uncertainty.budget.heaviest_common().map_or_else(
        || "".into(),
        |source| Message::new(format!("heaviest-{}", source.code())).into(),
    )
}

/// What the table's columns and lines rest on.
fn notes(uncertainty: &RatingUncertainty) -> Vec<Phrase> {
    let thermometer = message!(
        "budget-note-thermometer",
        cold = celsius(short(COLD_END_C)),
        hot = celsius(short(HOT_END_C)),
        about = celsius(short(SCALE_ABOUT_C))
    );
    let mut notes = vec![message!("budget-note-common"), thermometer];
    notes.extend(reading(uncertainty));
    notes.into_iter().map(Phrase::from).collect()
}

/// Where what the tester did not state is from.
fn sources(uncertainty: &RatingUncertainty) -> Vec<Phrase> {
    let errors = uncertainty.of_line.fitted.common();
    let named = errors.filter_map(|error| match error.basis {
        Basis::Stated => None,
        Basis::Class(class) | Basis::Assumed(class) => Some(class.source()),
        Basis::Known(known) => Some(known.named_source()),
    });
    let mut sources: Vec<Message> = Vec::new();
    for source in named {
        if !sources.contains(&source) {
            sources.push(source);
        }
    }
    sources.sort_by(|one, two| one.name.cmp(&two.name));
    let sources = message!("budget-note-sources", sources = clauses(sources));
    let assumed = uncertainty.assumed().into_iter();
    let assumed = assumed.map(|(source, _)| source.quantity());
    let of_assumed = (assumed.len() > 0)
        .then(|| message!("budget-note-assumed", quantities = listed(assumed)).into());
    [sources.into()].into_iter().chain(of_assumed).collect()
}

/// What single readings explain of the scatter.
fn reading(uncertainty: &RatingUncertainty) -> Option<Message> {
    let noise = &uncertainty.of_line.reading;
    let resolution_w = noise.resolution_w.filter(|watts| *watts > 0.0)?;
    let scatter_w = uncertainty.of_line.line.residual_sd;
    let is_most = uncertainty.most_limiting().map(|most| most.what) == Some(Limiting::Step);
    let said = if noise.of_interval_w() > scatter_w {
        // A part is not larger than the whole.
        message!("budget-note-resolution-beyond")
    } else if is_most {
        message!("budget-note-resolution-most")
    } else {
        message!("budget-note-resolution")
    };
    Some(
        said.with("scatter", fixed(scatter_w, 1))
            .with("step", fixed(resolution_w, 1))
            .with("moment", fixed(noise.clock_w, 1)),
    )
}
