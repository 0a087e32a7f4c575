//! How sure the rating is, line by line.

use serde::Serialize;

use super::scatter::scatter;
use crate::campaign::standard_uncertainty::Uncertainty;
use crate::language::{Message, Phrase, Words, celsius, clauses, fixed, joined, listed, short};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::s580::uncertainty::limiting::Limiting;
use crate::procedure::s580::uncertainty::outlook::Outlook;
use crate::procedure::s580::uncertainty::{LineUncertainty, RatingUncertainty};
use crate::procedure::sources::{Basis, COLD_END_C, CommonError, HOT_END_C, SCALE_ABOUT_C};
use crate::procedure::uncertainty::budget::{Budget, Contribution, Origin};
use crate::procedure::uncertainty::coverage_factor;
use crate::procedure::uncertainty::trials::MonteCarlo;
use crate::report::rows::Figure;
use crate::report::spoken::spoken_uncertainty;
use crate::units::decimals_for;

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
    /// Its share of the variance, and that as the length of its bar, percent.
    pub part: String,
    pub part_percent: String,
}

/// Puts the uncertainty of the rating into words.
pub fn uncertainty_part(
    assessment: &Assessment,
    uncertainty: &RatingUncertainty,
    words: &Words,
) -> UncertaintyPart {
    let budget = &uncertainty.budget;
    let row = |part: &Contribution| budget_row(uncertainty, part, words);
    let say = |said: Phrase| words.say(said);
    UncertaintyPart {
        budget: budget.contributions.iter().map(row).collect(),
        total: BudgetRow {
            source: words.say(message!("budget-combined")),
            of_source: words.say(message!("budget-root")),
            evaluation: String::new(),
            sensitivity: String::new(),
            of_rating: words.say(in_watts(budget.combined)),
            part: words.say(percent(1.0)),
            part_percent: String::new(),
        },
        result: words.say(result(uncertainty)),
        notes: notes(uncertainty, words).into_iter().map(say).collect(),
        scatter: scatter(assessment, uncertainty)
            .into_iter()
            .map(say)
            .collect(),
        figure: figure(uncertainty, words),
    }
}

/// `131 W ± 7 W (95 %)`, and of one day `131 W ± 7 W (one day)`.
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

/// As fine as the budget is.
fn in_watts(power_w: f64) -> Message {
    message!("budget-watts", power = fixed(power_w, 2))
}

/// A share of the variance.
fn percent(share: f64) -> Message {
    message!("budget-percent", share = fixed(share * 100.0, 0))
}

fn budget_row(uncertainty: &RatingUncertainty, part: &Contribution, words: &Words) -> BudgetRow {
    let of_line = &uncertainty.of_line;
    BudgetRow {
        source: words.say(source(part)),
        of_source: words.say(of_source(of_line, part)),
        evaluation: part.evaluation().to_string(),
        sensitivity: words.say(sensitivity(uncertainty, part)),
        of_rating: words.say(in_watts(part.effect.abs())),
        part: words.say(percent(part.share)),
        part_percent: crate::units::fixed((part.share * 100.0).clamp(0.0, 100.0), 1),
    }
}

/// What a line of the budget is about.
fn source(part: &Contribution) -> Message {
    match &part.origin {
        Origin::Scatter => message!("budget-scatter"),
        Origin::ReadingNoise => message!("budget-reading"),
        Origin::Days => message!("budget-days"),
        Origin::Common(error) => error.source.name(),
    }
}

/// Its standard uncertainty.
fn of_source(of_line: &LineUncertainty, part: &Contribution) -> Message {
    match &part.origin {
        Origin::Scatter => message!(
            "budget-scatter-text",
            deviation = fixed(of_line.line.residual_sd, 1),
            intervals = of_line.line.points
        ),
        Origin::ReadingNoise => message!(
            "budget-reading-text",
            deviation = fixed(of_line.reading.of_interval_w(), 1),
            intervals = of_line.line.points
        ),
        Origin::Days => message!("budget-days-text", days = of_line.days.days.len()),
        Origin::Common(error) => spoken_origin(error),
    }
}

/// What it does to the rating.
fn sensitivity(uncertainty: &RatingUncertainty, part: &Contribution) -> Phrase {
    let Origin::Common(error) = &part.origin else {
        return "–".into();
    };
    let Some(sensitivity_w) = uncertainty.sensitivity_w(error) else {
        return "–".into();
    };
    match error.standard {
        Uncertainty::Relative(_) => message!(
            "budget-per-percent",
            sensitivity = fixed(sensitivity_w / 100.0, 2)
        ),
        _ => message!("budget-per-kelvin", sensitivity = fixed(sensitivity_w, 2)),
    }
    .into()
}

fn spoken_origin(error: &CommonError) -> Message {
    if error.source.is_scale() {
        let percent = (error.standard.size() * 1e4).round() / 100.0;
        return message!(
            "budget-scale",
            percent = short(percent),
            about = celsius(short(SCALE_ABOUT_C))
        );
    }
    let known = spoken_basis(error);
    match error.whole_k() {
        Some(_) => message!("budget-offset-of", known = known),
        None => known,
    }
}

/// What the file states, or the class.
fn spoken_basis(error: &CommonError) -> Message {
    let whole = error.whole_k().map_or(error.standard, Uncertainty::Kelvin);
    match error.basis {
        Basis::Stated => message!("budget-stated", uncertainty = spoken_uncertainty(whole)),
        Basis::Class(class) => {
            message!("budget-class", class = class.name(), basis = class.basis())
        }
        Basis::Assumed(class) => {
            message!(
                "budget-assumed",
                class = class.name(),
                basis = class.basis()
            )
        }
        Basis::Known(known) => known.basis(),
    }
}

fn result(uncertainty: &RatingUncertainty) -> Message {
    let budget = &uncertainty.budget;
    message!(
        "budget-result-parts",
        rating = with_uncertainty(uncertainty),
        expanded = fixed(budget.expanded, 2),
        combined = fixed(budget.combined, 2),
        factor = fixed(budget.coverage_factor(), 2),
        of_days = fixed(coverage_factor(budget.statistical_freedom), 2),
        of_instruments = fixed(coverage_factor(f64::INFINITY), 2)
    )
}

fn notes(uncertainty: &RatingUncertainty, words: &Words) -> Vec<Phrase> {
    let mut notes: Vec<Phrase> = Vec::new();
    if uncertainty.monte_carlo.is_none() && uncertainty.budget.combined > 0.0 {
        notes.push(message!("drawn-none").into());
    }
    let drawn = uncertainty.monte_carlo.as_ref();
    notes.extend(drawn.map(|drawn| monte_carlo(&uncertainty.budget, drawn)));
    notes.extend(outlook(uncertainty).map(Phrase::from));
    notes.push(message!("budget-note-squares").into());
    notes.push(
        message!(
            "budget-note-thermometer",
            cold = celsius(short(COLD_END_C)),
            hot = celsius(short(HOT_END_C)),
            about = celsius(short(SCALE_ABOUT_C))
        )
        .into(),
    );
    notes.extend(reading(uncertainty).map(Phrase::from));
    let errors = uncertainty.of_line.fitted.common();
    let named = errors.filter_map(|error| match error.basis {
        Basis::Stated => None,
        Basis::Class(class) | Basis::Assumed(class) => Some(class.source()),
        Basis::Known(known) => Some(known.named_source()),
    });
    let mut named: Vec<String> = named.map(|source| words.say(source)).collect();
    named.sort_unstable();
    named.dedup();
    notes.push(message!("budget-note-sources", sources = clauses(named)).into());
    let assumed = uncertainty
        .assumed()
        .into_iter()
        .map(|(source, _)| source.quantity());
    if assumed.len() > 0 {
        notes.push(message!("budget-note-assumed", quantities = listed(assumed)).into());
    }
    notes
}

/// What was drawn, and what follows from it.
fn monte_carlo(budget: &Budget, drawn: &MonteCarlo) -> Phrase {
    let outcome = &drawn.outcome;
    let decimals = decimals_for(drawn.tolerance).max(1);
    let what = match drawn.sd {
        Some(sd_w) => message!("drawn-deviation", deviation = fixed(sd_w, 2)),
        None => message!("drawn"),
    };
    let what = what
        .with("trials", outcome.trials.to_string())
        .with("lower", fixed(outcome.lower, decimals))
        .with("upper", fixed(outcome.upper, decimals));
    let interval = budget.interval();
    let reaches_further = outcome.lower < interval.lower || outcome.upper > interval.upper;
    // How far the draws' interval lies to one side of the budget's.
    let aside = (outcome.upper - interval.upper + outcome.lower - interval.lower).abs() / 2.0;
    let verdict = if drawn.agrees() {
        message!("drawn-agrees")
    } else {
        let verdict = if !reaches_further {
            message!("drawn-narrower-all")
        } else if aside > drawn.tolerance / 2.0 {
            message!("drawn-wider-skewed")
        } else {
            message!("drawn-wider")
        };
        verdict.with("apart", fixed(drawn.apart, decimals))
    };
    let verdict = verdict.with("tolerance", short(drawn.tolerance));
    let unsettled = (!outcome.is_stable).then(|| message!("drawn-unsettled"));
    joined([what, verdict].into_iter().chain(unsettled), " ")
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

/// What limits the number most, as far as the tester can mend it.
pub fn what_limits(uncertainty: &RatingUncertainty) -> Option<Message> {
    let most = uncertainty.most_limiting()?;
    let said = match most.what {
        Limiting::Step => message!("limits-most-step"),
        Limiting::Estimate => message!("limits-most-estimate"),
    };
    Some(said.with("percent", fixed(most.share * 100.0, 0)))
}

/// What single readings explain of the scatter.
fn reading(uncertainty: &RatingUncertainty) -> Option<Message> {
    let noise = &uncertainty.of_line.reading;
    let resolution_w = noise.resolution_w.filter(|watts| *watts > 0.0)?;
    let said = if uncertainty.step_is_most() {
        message!("budget-note-step-most")
    } else {
        message!("budget-note-reading")
    };
    Some(
        said.with("scatter", fixed(uncertainty.of_line.line.residual_sd, 1))
            .with("step", fixed(resolution_w, 1))
            .with("moment", fixed(noise.clock_w, 1)),
    )
}

fn figure(uncertainty: &RatingUncertainty, words: &Words) -> Figure {
    let budget = &uncertainty.budget;
    Figure {
        file: "band.svg".to_owned(),
        caption: words.say(message!("spread-caption")),
        alt: words.say(message!(
            "spread-alt",
            points = uncertainty.of_line.line.points,
            power = fixed(budget.value, 1),
            scatter = fixed(budget.without_common(), 1),
            expanded = fixed(budget.expanded, 1)
        )),
    }
}
