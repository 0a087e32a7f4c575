//! Figures beside the rating, pair by pair, and what they say of cookers without a rating.

use serde::Serialize;

use super::differences::DifferenceRow;
use super::spoken::{signed, spoken_ends};
use crate::comparison::Comparison;
use crate::comparison::figures::{FigurePair, Held, PairFigures, Told};
use crate::language::{Message, Phrase, Words, fixed, joined};
use crate::message;
use crate::procedure::s580::uncertainty::days::SHOWN_P;
use crate::procedure::stated::FigureKey;
use crate::report::comparison::names::letter;
use crate::report::procedure_part::value_of;
use crate::units::decimals_for;

/// Longest line on a terminal, characters.
const LONGEST_LINE: usize = 100;
/// Campaigns that sentences call by name, too.
const NAMED: usize = 3;

/// The section on the figures.
#[derive(Debug, Clone, Serialize)]
pub struct BesidePart {
    pub header: Vec<String>,
    /// How many columns stand before the numbers.
    pub words_before: usize,
    pub rows: Vec<DifferenceRow>,
    pub note: String,
}

/// Puts the figures into words; `None` where no pair has one.
pub fn beside(comparison: &Comparison, words: &Words) -> Option<BesidePart> {
    let pairs = &comparison.figures;
    let is_one = pairs.len() == 1;
    let rows: Vec<DifferenceRow> = pairs
        .iter()
        .flat_map(|pair| pair.figures.iter().map(move |figure| (pair, figure)))
        .map(|(pair, figure)| {
            let cells = [
                Phrase::from(label(figure.key)),
                value_of(&figure.first).into(),
                value_of(&figure.second).into(),
                difference(figure).unwrap_or_else(|| "–".into()),
                verdict(figure, comparison),
            ];
            let before = (!is_one).then(|| Phrase::from(between(pair)));
            let cells = before.into_iter().chain(cells);
            DifferenceRow {
                cells: cells.map(|cell| words.say(cell)).collect(),
                is_shown: figure.is_told_apart(),
            }
        })
        .collect();
    let names = match pairs.as_slice() {
        [only] => [only.first, only.second].map(|place| letter(place).to_string().into()),
        _ => [message!("beside-first"), message!("beside-second")].map(Phrase::from),
    };
    let [first, second] = names;
    let of_pairs = (!is_one).then(|| Phrase::from(message!("beside-pair")));
    let header = of_pairs.into_iter().chain([
        message!("beside-figure").into(),
        first,
        second,
        match pairs.as_slice() {
            [only] => between(only).into(),
            _ => message!("beside-difference").into(),
        },
        message!("beside-verdict").into(),
    ]);
    (!rows.is_empty()).then(|| BesidePart {
        header: header.map(|name| words.say(name)).collect(),
        words_before: 1 + usize::from(!is_one),
        rows,
        note: words.say(message!("beside-note")),
    })
}

/// `B − A`.
fn between(pair: &PairFigures) -> String {
    format!("{} − {}", letter(pair.second), letter(pair.first))
}

fn label(key: FigureKey) -> Message {
    message!("procedure-label", name = key.name(), symbol = key.symbol())
}

/// `+0.021 ± 0.008 K m²/W`; `None` where it is not compared.
fn difference(figure: &FigurePair) -> Option<Phrase> {
    let Held {
        value, expanded, ..
    } = figure.told.as_ref().ok()?.held;
    let scale = figure.key.scale();
    let decimals = decimals_for(expanded * scale);
    let both = [
        signed(value * scale, decimals),
        "±".into(),
        fixed(expanded * scale, decimals),
    ];
    let unit: Option<Phrase> = match figure.key.unit() {
        "" => None,
        "%" => Some(message!("beside-points").into()),
        unit => Some(unit.into()),
    };
    Some(joined(both.into_iter().chain(unit), " "))
}

/// Whether the figures are told apart, with what a reader must know of it.
fn verdict(figure: &FigurePair, comparison: &Comparison) -> Phrase {
    let told = match &figure.told {
        Err(why) => return message!("beside-not-compared", why = why.name()).into(),
        Ok(told) => told,
    };
    let said = if figure.is_told_apart() {
        message!("beside-told-apart")
    } else if told.p_corrected < SHOWN_P {
        message!("beside-apart-when-tested")
    } else if told.held.p < SHOWN_P {
        message!("beside-by-chance", pairs = comparison.figures.len())
    } else {
        message!("beside-not-told-apart")
    };
    let marks = marks(figure);
    if marks.is_empty() {
        return said.into();
    }
    let marks = joined(marks, ", ");
    message!("beside-marked", verdict = said, marks = marks).into()
}

fn marks(figure: &FigurePair) -> Vec<Message> {
    [
        (figure.is_of_one_day(), message!("beside-one-day")),
        (figure.is_indicative(), message!("beside-indicative")),
        (
            figure.has_unknown_vessels,
            message!("beside-vessels-not-stated"),
        ),
    ]
    .into_iter()
    .filter_map(|(is_so, mark)| is_so.then_some(mark))
    .collect()
}

/// A line for each figure of a pair, for a terminal; the symbol stands for a long name.
pub fn lines(comparison: &Comparison, pair: &PairFigures, words: &Words) -> Vec<String> {
    let figures = pair.figures.iter();
    let line = |figure: &FigurePair, name: Phrase| {
        let said = difference(figure)
            .into_iter()
            .chain([verdict(figure, comparison)]);
        let said = joined(said, ", ");
        words.say(joined([between(pair).into(), name, said], "  "))
    };
    figures
        .map(|figure| {
            let whole = line(figure, figure.key.name().into());
            match whole.chars().count() <= LONGEST_LINE {
                true => whole,
                false => line(figure, figure.key.symbol().into()),
            }
        })
        .collect()
}

/// What the first page says of a pair without two ratings: which dry vessel gets hotter, and how
/// many other figures are told apart.
pub fn figures_verdict(comparison: &Comparison, pair: &PairFigures, names: &[String]) -> Phrase {
    let call = |place: usize| {
        if names.len() <= NAMED {
            format!("{} ({})", letter(place), names[place])
        } else {
            letter(place).to_string()
        }
    };
    let of_pair = |said: Message| {
        said.with("second", call(pair.second))
            .with("first", call(pair.first))
    };
    let is_dry = |figure: &&FigurePair| figure.key == FigureKey::DryDifference;
    let dry = pair.figures.iter().find(is_dry);
    let others = pair.figures.iter().filter(|figure| !is_dry(figure));
    let compared = others.clone().filter(|figure| figure.told.is_ok()).count();
    let apart = others.filter(|figure| figure.is_told_apart()).count();
    let of_dry = dry.map(|figure| match &figure.told {
        Ok(told) => {
            let names = [pair.first, pair.second].map(call);
            hotter(figure, told, comparison, names)
        }
        Err(why) => of_pair(message!("beside-hotter-not-compared", why = why.name())),
    });
    let of_others = match (compared, pair.figures.is_empty()) {
        (_, true) => Some(of_pair(message!("beside-nothing-shared"))),
        (0, _) if dry.is_some() => None,
        _ => Some(of_pair(message!(
            "beside-others",
            apart = apart,
            compared = compared
        ))),
    };
    joined(of_dry.into_iter().chain(of_others), " ")
}

/// Which dry vessel gets hotter for each W/m².
fn hotter(
    figure: &FigurePair,
    told: &Told,
    comparison: &Comparison,
    [first, second]: [String; 2],
) -> Message {
    let value = told.held.value;
    let [lower, upper] = told.interval();
    let is_more = value >= 0.0;
    let ends = if is_more {
        (lower, upper)
    } else {
        (-upper, -lower)
    };
    let share = value.abs() / figure.first.value * 100.0;
    let said = if figure.is_told_apart() {
        match is_more {
            true => message!("beside-hotter"),
            false => message!("beside-cooler"),
        }
    } else if told.p_corrected < SHOWN_P {
        match is_more {
            true => message!("beside-hotter-one-day"),
            false => message!("beside-cooler-one-day"),
        }
    } else if told.held.p < SHOWN_P {
        message!("beside-hotter-by-chance", pairs = comparison.figures.len())
    } else {
        match is_more {
            true => message!("beside-hotter-not-told"),
            false => message!("beside-cooler-not-told"),
        }
    };
    let decimals = decimals_for(told.held.expanded);
    said.with("second", second)
        .with("first", first)
        .with("difference", fixed(value.abs(), decimals))
        .with("interval", spoken_ends(ends, decimals))
        .with("share", fixed(share, 0))
}
