//! The table of the budget: what contributes, the largest part first.

use serde::Serialize;

use crate::campaign::standard_uncertainty::Uncertainty;
use crate::language::{Message, Phrase, Words, celsius, clauses, fixed, joined, short};
use crate::message;
use crate::procedure::s580::uncertainty::{LineUncertainty, RatingUncertainty};
use crate::procedure::sources::{Basis, CommonError, SCALE_ABOUT_C, Source};
use crate::procedure::uncertainty::budget::{Budget, Contribution, Origin};
use crate::procedure::uncertainty::coverage_factor;
use crate::report::spoken::spoken_uncertainty;
use crate::units::digits_after_point;

/// Share of ±² below which lines that several share are gathered in one.
const TINY: f64 = 0.02;
/// Significant digits of the standard uncertainties.
///
/// # Source
/// JCGM 100:2008, 7.2.6.
const DIGITS: i32 = 2;

/// One line of the budget.
#[derive(Debug, Clone, Serialize)]
pub struct BudgetRow {
    pub source: String,
    pub of_source: String,
    pub evaluation: String,
    /// A number, and its unit.
    pub sensitivity: String,
    pub sensitivity_unit: String,
    /// Standard uncertainty that it gives the rating, W, a number alone.
    pub of_rating: String,
    /// What it is multiplied by.
    pub factor: String,
    /// Its share of the square of ±, and that as the length of its bar, percent.
    pub part: String,
    pub part_percent: String,
}

/// The lines of the budget, the largest first, the tiny ones in one, and what they come to.
pub fn budget_rows(uncertainty: &RatingUncertainty, words: &Words) -> Vec<BudgetRow> {
    let budget = &uncertainty.budget;
    let mut sorted: Vec<&Contribution> = budget.contributions.iter().collect();
    sorted.sort_by(|one, two| two.share.total_cmp(&one.share));
    let is_tiny = |part: &Contribution| part.is_common() && part.share.abs() < TINY;
    let (mut tiny, shown): (Vec<_>, Vec<_>) = sorted.into_iter().partition(|part| is_tiny(part));
    // One alone needs no gathering.
    let alone = if tiny.len() == 1 { tiny.pop() } else { None };
    let shown: Vec<&Contribution> = shown.into_iter().chain(alone).collect();
    let table = Table::of(uncertainty, &shown);
    let rows = shown.iter().map(|part| table.row(part, words));
    let gathered = (!tiny.is_empty()).then(|| table.gathered(&tiny, words));
    rows.chain(gathered).chain([table.total(words)]).collect()
}

/// What all lines share: how finely numbers are written.
struct Table<'u> {
    uncertainty: &'u RatingUncertainty,
    watts: usize,
    sensitivities: usize,
}

impl<'u> Table<'u> {
    fn of(uncertainty: &'u RatingUncertainty, shown: &[&Contribution]) -> Self {
        let sensitivities = shown
            .iter()
            .filter_map(|part| sensitivity(uncertainty, part));
        let largest = sensitivities
            .map(|(watts, _)| watts.abs())
            .fold(0.0, f64::max);
        Table {
            uncertainty,
            watts: digits_after_point(uncertainty.budget.combined, DIGITS),
            sensitivities: digits_after_point(largest, DIGITS),
        }
    }

    fn row(&self, part: &Contribution, words: &Words) -> BudgetRow {
        let uncertainty = self.uncertainty;
        let (number, unit) = match sensitivity(uncertainty, part) {
            Some((watts, unit)) => (words.say(fixed(watts, self.sensitivities)), words.say(unit)),
            None => ("–".to_owned(), String::new()),
        };
        BudgetRow {
            source: words.say(source(part)),
            of_source: words.say(of_source(&uncertainty.of_line, part)),
            evaluation: part.evaluation().to_string(),
            sensitivity: number,
            sensitivity_unit: unit,
            of_rating: words.say(self.spoken_watts(part.effect.abs())),
            factor: words.say(fixed(factor(&uncertainty.budget, part), 2)),
            part: words.say(percent(part.share)),
            part_percent: bar(part.share),
        }
    }

    /// What is small, in one line.
    fn gathered(&self, tiny: &[&Contribution], words: &Words) -> BudgetRow {
        let budget = &self.uncertainty.budget;
        let share: f64 = tiny.iter().map(|part| part.share).sum();
        let of_variance: f64 = tiny.iter().map(|part| part.share_of_variance).sum();
        let together = budget.combined * of_variance.max(0.0).sqrt();
        BudgetRow {
            source: words.say(message!("budget-tiny", share = fixed(TINY * 100.0, 0))),
            of_source: words.say(clauses(names(tiny))),
            evaluation: "B".to_owned(),
            sensitivity: "–".to_owned(),
            sensitivity_unit: String::new(),
            of_rating: words.say(self.spoken_watts(together)),
            factor: words.say(fixed(coverage_factor(f64::INFINITY), 2)),
            part: words.say(percent(share)),
            part_percent: bar(share),
        }
    }

    fn total(&self, words: &Words) -> BudgetRow {
        let budget = &self.uncertainty.budget;
        BudgetRow {
            source: words.say(message!("budget-combined")),
            of_source: words.say(message!("budget-root")),
            evaluation: String::new(),
            sensitivity: String::new(),
            sensitivity_unit: String::new(),
            of_rating: words.say(self.spoken_watts(budget.combined)),
            factor: words.say(fixed(budget.coverage_factor(), 2)),
            part: words.say(percent(1.0)),
            part_percent: String::new(),
        }
    }

    /// A standard uncertainty; what would read as none is told to be below the last digit.
    fn spoken_watts(&self, watts: f64) -> Phrase {
        let last_digit = simmerline_math::power_of_ten(-(self.watts as i32));
        if watts < last_digit / 2.0 {
            return below(last_digit, self.watts);
        }
        fixed(watts, self.watts)
    }
}

/// What a line is multiplied by to give its part of ±.
fn factor(budget: &Budget, part: &Contribution) -> f64 {
    coverage_factor(if part.is_common() {
        f64::INFINITY
    } else {
        budget.statistical_freedom
    })
}

/// A share of the square of ±.
fn percent(share: f64) -> Message {
    if share > 0.0 && share < 0.005 {
        return message!("budget-percent", share = below(1.0, 0));
    }
    message!("budget-percent", share = fixed(share * 100.0, 0))
}

/// `< 1`.
fn below(least: f64, decimals: usize) -> Phrase {
    joined(["<\u{a0}".into(), fixed(least, decimals)], "")
}

fn bar(share: f64) -> String {
    crate::units::fixed((share * 100.0).clamp(0.0, 100.0), 1)
}

/// Sources by name; both errors of one thermometer by its quantity.
fn names(parts: &[&Contribution]) -> Vec<Message> {
    let sources: Vec<Source> = parts
        .iter()
        .filter_map(|part| match &part.origin {
            Origin::Common(error) => Some(error.source),
            _ => None,
        })
        .collect();
    let mut names: Vec<Message> = Vec::new();
    for source in &sources {
        let quantity = source.quantity();
        let of_one = sources.iter().filter(|one| one.quantity() == quantity);
        let name = match of_one.count() {
            1 => source.name(),
            _ => quantity,
        };
        if !names.contains(&name) {
            names.push(name);
        }
    }
    names
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

/// What it does to the rating, W, and for how much of it.
fn sensitivity(uncertainty: &RatingUncertainty, part: &Contribution) -> Option<(f64, Message)> {
    let Origin::Common(error) = &part.origin else {
        return None;
    };
    let sensitivity_w = uncertainty.sensitivity_w(error)?;
    Some(match error.standard {
        Uncertainty::Relative(_) => (sensitivity_w / 100.0, message!("budget-per-percent")),
        _ => (sensitivity_w, message!("budget-per-kelvin")),
    })
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
