//! Figures beside the rating: of two side by side, of more a list for each figure.

use serde::Serialize;

use super::calls::{Calls, spans};
use super::lines::MOST_PANELS;
use super::spoken::{signed, spoken_ends};
use crate::comparison::alike::Unlike;
use crate::comparison::figures::{FigurePair, Held, PairFigures, Told};
use crate::comparison::{Comparison, ToldAs};
use crate::language::{Message, Phrase, Words, clauses, fixed, joined};
use crate::message;
use crate::procedure::s580::uncertainty::days::SHOWN_P;
use crate::procedure::stated::{FigureKey, Stated};
use crate::report::procedure_part::value_of;
use crate::units::decimals_for;

/// Campaigns up to which lists name each that is told apart; of more, they say how many.
const LISTED: usize = 12;

/// The section on the figures.
#[derive(Debug, Clone, Serialize)]
pub struct BesidePart {
    /// Of two campaigns; `None` of more.
    pub pair: Option<PairTable>,
    /// Of more, a list for each figure.
    pub lists: Vec<FigureList>,
    pub notes: Vec<String>,
}

/// The figures of two, with their differences.
#[derive(Debug, Clone, Serialize)]
pub struct PairTable {
    pub header: Vec<String>,
    pub rows: Vec<PairRow>,
}

/// A figure of two.
#[derive(Debug, Clone, Serialize)]
pub struct PairRow {
    /// In the order of the header.
    pub cells: Vec<String>,
    pub is_shown: bool,
}

/// A figure of several.
#[derive(Debug, Clone, Serialize)]
pub struct FigureList {
    pub title: String,
    pub header: Vec<String>,
    /// Highest value first.
    pub rows: Vec<ListRow>,
    /// Which are not compared, and why; empty where all are.
    pub not_compared: String,
}

/// A campaign's figure.
#[derive(Debug, Clone, Serialize)]
pub struct ListRow {
    pub number: String,
    pub name: String,
    pub value: String,
    /// From which others it is told apart.
    pub told: String,
}

/// Puts the figures into words; `None` where no pair has one.
pub fn beside(comparison: &Comparison, calls: &Calls, words: &Words) -> Option<BesidePart> {
    let mut pairs = comparison.figures.iter();
    if !pairs.any(|pair| !pair.figures.is_empty()) {
        return None;
    }
    if let [only] = comparison.figures.as_slice() {
        return Some(BesidePart {
            pair: Some(pair_table(comparison, only, calls, words)),
            lists: Vec::new(),
            notes: vec![words.say(message!("beside-note"))],
        });
    }
    let keys = FigureKey::ALL.iter().copied();
    let lists: Vec<FigureList> = keys
        .filter_map(|key| figure_list(comparison, key, calls, words))
        .collect();
    let is_cut = comparison.campaigns.len() > MOST_PANELS;
    let cut = is_cut.then(|| {
        message!(
            "beside-first-only",
            shown = MOST_PANELS,
            campaigns = comparison.campaigns.len()
        )
    });
    let notes = [message!("beside-list-note")].into_iter().chain(cut);
    Some(BesidePart {
        pair: None,
        lists,
        notes: notes.map(|note| words.say(note)).collect(),
    })
}

fn pair_table(
    comparison: &Comparison,
    pair: &PairFigures,
    calls: &Calls,
    words: &Words,
) -> PairTable {
    let told = comparison.told(pair.first, pair.second);
    let row = |figure: &FigurePair| {
        let [minuend, subtrahend] = match told.sign > 0.0 {
            true => [&figure.second, &figure.first],
            false => [&figure.first, &figure.second],
        };
        let cells = [
            Phrase::from(label(figure.key)),
            value_of(minuend).into(),
            value_of(subtrahend).into(),
            difference(figure, told.sign).unwrap_or_else(|| "–".into()),
            verdict(figure, comparison),
        ];
        PairRow {
            cells: cells.map(|cell| words.say(cell)).to_vec(),
            is_shown: figure.is_told_apart(),
        }
    };
    let header: [Phrase; 5] = [
        message!("beside-figure").into(),
        calls.name(told.minuend).into(),
        calls.name(told.subtrahend).into(),
        message!("beside-difference").into(),
        message!("beside-verdict").into(),
    ];
    PairTable {
        header: header.map(|name| words.say(name)).to_vec(),
        rows: pair.figures.iter().map(row).collect(),
    }
}

/// What a figure of one campaign comes to beside those of the others.
struct Beside<'s> {
    place: usize,
    stated: &'s Stated,
    /// Numbers of those told apart from it, and how many it is compared with.
    apart: Vec<usize>,
    compared: usize,
}

fn figure_list(
    comparison: &Comparison,
    key: FigureKey,
    calls: &Calls,
    words: &Words,
) -> Option<FigureList> {
    let is_brief = comparison.campaigns.len() > LISTED;
    let mut found: Vec<Beside<'_>> = Vec::new();
    let mut not_compared: Vec<(Unlike, Vec<[usize; 2]>)> = Vec::new();
    for pair in &comparison.figures {
        let Some(figure) = pair.figures.iter().find(|figure| figure.key == key) else {
            continue;
        };
        if let Err(why) = &figure.told {
            let numbers = [pair.first, pair.second].map(|place| calls.number(place));
            match not_compared.iter_mut().find(|(one, _)| one == why) {
                Some((_, pairs)) => pairs.push(numbers),
                None => not_compared.push((*why, vec![numbers])),
            }
        }
        for (place, stated, other) in [
            (pair.first, &figure.first, pair.second),
            (pair.second, &figure.second, pair.first),
        ] {
            let at = found.iter().position(|one| one.place == place);
            let at = at.unwrap_or_else(|| {
                found.push(Beside {
                    place,
                    stated,
                    apart: Vec::new(),
                    compared: 0,
                });
                found.len() - 1
            });
            found[at].compared += usize::from(figure.told.is_ok());
            if figure.is_told_apart() {
                found[at].apart.push(calls.number(other));
            }
        }
    }
    // Of which no two can be compared, a list would say nothing.
    found.retain(|one| one.compared > 0);
    found.sort_by(|one, two| two.stated.value.total_cmp(&one.stated.value));
    let rows: Vec<ListRow> = found
        .iter()
        .take(MOST_PANELS)
        .map(|one| ListRow {
            number: calls.number(one.place).to_string(),
            name: calls.name(one.place).to_owned(),
            value: words.say(joined(
                [value_of(one.stated).into(), stated_marks(one.stated)],
                "",
            )),
            told: words.say(one.told(is_brief)),
        })
        .collect();
    let header = [message!("beside-head-value"), message!("beside-head-apart")];
    (!rows.is_empty()).then(|| FigureList {
        title: words.say(label(key)),
        header: header.map(|name| words.say(name)).to_vec(),
        rows,
        not_compared: words.say(spoken_not_compared(not_compared, is_brief)),
    })
}

impl Beside<'_> {
    /// From which others it is told apart; briefly, from how many.
    fn told(&self, is_brief: bool) -> Phrase {
        match (self.apart.is_empty(), self.compared) {
            (true, 0) => "–".into(),
            (_, compared) if is_brief => message!(
                "beside-from-so-many",
                apart = self.apart.len(),
                compared = compared
            )
            .into(),
            (true, _) => message!("beside-from-none").into(),
            _ => spans(self.apart.clone()),
        }
    }
}

/// `Not compared: 3 with 1, 2, 4 (irradiance in another plane).`
fn spoken_not_compared(reasons: Vec<(Unlike, Vec<[usize; 2]>)>, is_brief: bool) -> Phrase {
    if reasons.is_empty() {
        return "".into();
    }
    if is_brief {
        let counts = reasons.iter().map(|(why, pairs)| {
            message!(
                "beside-not-compared-why",
                pairs = message!("beside-pairs", count = pairs.len()),
                why = why.name()
            )
        });
        return message!("beside-not-compared-list", reasons = clauses(counts)).into();
    }
    let of_reason = |(why, pairs): (Unlike, Vec<[usize; 2]>)| {
        message!(
            "beside-not-compared-why",
            pairs = clauses(stars(pairs).into_iter().map(|(one, others)| {
                message!(
                    "beside-not-compared-with",
                    one = one.to_string(),
                    others = spans(others)
                )
            })),
            why = why.name()
        )
    };
    let reasons = clauses(reasons.into_iter().map(of_reason));
    message!("beside-not-compared-list", reasons = reasons).into()
}

/// Pairs of numbers, those that share one together: first the one that is in most of them.
fn stars(mut pairs: Vec<[usize; 2]>) -> Vec<(usize, Vec<usize>)> {
    let mut stars = Vec::new();
    while !pairs.is_empty() {
        let mut numbers: Vec<usize> = pairs.iter().flatten().copied().collect();
        numbers.sort_unstable();
        numbers.dedup();
        let count = |number: usize| pairs.iter().filter(|pair| pair.contains(&number)).count();
        let most = numbers.iter().rev().max_by_key(|number| count(**number));
        let Some(&one) = most else {
            break;
        };
        let (own, rest): (Vec<_>, Vec<_>) = pairs.into_iter().partition(|pair| pair.contains(&one));
        let others = own.into_iter().flatten().filter(|number| *number != one);
        stars.push((one, others.collect()));
        pairs = rest;
    }
    stars
}

/// Behind a value: that it is of one day, or indicative.
fn stated_marks(stated: &Stated) -> Phrase {
    let marks = [
        (stated.is_of_one_day, message!("beside-one-day")),
        (stated.is_indicative, message!("beside-indicative")),
    ];
    let marks: Vec<Message> = marks
        .into_iter()
        .filter_map(|(is_so, mark)| is_so.then_some(mark))
        .collect();
    match marks.is_empty() {
        true => "".into(),
        false => joined([" (".into(), joined(marks, ", "), ")".into()], ""),
    }
}

fn label(key: FigureKey) -> Message {
    message!("procedure-label", name = key.name(), symbol = key.symbol())
}

/// `+0.021 ± 0.008 K m²/W`; `None` where it is not compared.
fn difference(figure: &FigurePair, sign: f64) -> Option<Phrase> {
    let Held {
        value, expanded, ..
    } = figure.told.as_ref().ok()?.held;
    let scale = figure.key.scale();
    let decimals = decimals_for(expanded * scale);
    let both = [
        signed(sign * value * scale, decimals),
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

/// In how many pairs a figure is compared: they alone are what its p is corrected for.
fn pairs_with(comparison: &Comparison, key: FigureKey) -> usize {
    let figures = comparison.figures.iter().flat_map(|pair| &pair.figures);
    figures
        .filter(|figure| figure.key == key && figure.told.is_ok())
        .count()
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
        message!(
            "beside-by-chance",
            pairs = pairs_with(comparison, figure.key)
        )
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

/// The figures of a pair, for a terminal: name, difference, verdict.
pub fn lines(comparison: &Comparison, pair: &PairFigures, words: &Words) -> Vec<[String; 3]> {
    let ToldAs { sign, .. } = comparison.told(pair.first, pair.second);
    let line = |figure: &FigurePair| {
        [
            figure.key.name().into(),
            difference(figure, sign).unwrap_or_else(|| "–".into()),
            verdict(figure, comparison),
        ]
        .map(|part: Phrase| words.say(part))
    };
    pair.figures.iter().map(line).collect()
}

/// The pair whose dry vessels are held against each other, if there is one pair only.
fn only_dry(comparison: &Comparison) -> Option<(&PairFigures, &FigurePair)> {
    let [pair] = comparison.figures.as_slice() else {
        return None;
    };
    let mut figures = pair.figures.iter();
    let dry = figures.find(|figure| figure.key == FigureKey::DryDifference)?;
    Some((pair, dry))
}

/// How many differences of figures there are.
fn compared(comparison: &Comparison) -> usize {
    let all = comparison.figures.iter().flat_map(|pair| &pair.figures);
    all.filter(|figure| figure.told.is_ok()).count()
}

/// What stands above a comparison without a rating: which dry vessel gets hotter, where that
/// is told.
pub fn title(comparison: &Comparison, calls: &Calls) -> Phrase {
    let count = comparison.campaigns.len();
    if compared(comparison) == 0 {
        return match comparison.baseline {
            Some(base) => message!("beside-title-none-of", name = calls.name(base)).into(),
            None => message!("beside-title-none", count = count).into(),
        };
    }
    let Some((pair, figure)) = only_dry(comparison) else {
        return message!("beside-title", count = count).into();
    };
    let names = |first: usize, second: usize| {
        let said = match figure.is_told_apart() {
            true => message!("beside-title-hotter"),
            false => message!("beside-title-not-told"),
        };
        said.with("first", calls.name(first))
            .with("second", calls.name(second))
    };
    match &figure.told {
        Ok(told) if told.held.value < 0.0 => names(pair.first, pair.second).into(),
        Ok(_) => names(pair.second, pair.first).into(),
        Err(_) => message!("beside-title", count = count).into(),
    }
}

/// What the first page says of two without ratings: which dry vessel gets hotter, and how many
/// other figures are told apart. Of more, how many figures are compared.
pub fn sentences(comparison: &Comparison, calls: &Calls) -> Vec<Phrase> {
    let [pair] = comparison.figures.as_slice() else {
        let all = comparison.figures.iter().flat_map(|pair| &pair.figures);
        let apart = all.filter(|figure| figure.is_told_apart()).count();
        return match compared(comparison) {
            // The title says it.
            0 => Vec::new(),
            compared => {
                vec![message!("beside-in-all", apart = apart, compared = compared).into()]
            }
        };
    };
    let told = comparison.told(pair.first, pair.second);
    let of_pair = |said: Message| {
        said.with("second", calls.name(told.minuend))
            .with("first", calls.name(told.subtrahend))
    };
    let dry = only_dry(comparison).map(|(_, figure)| figure);
    let is_dry = |figure: &&FigurePair| figure.key == FigureKey::DryDifference;
    let others = pair.figures.iter().filter(|figure| !is_dry(figure));
    let compared = others.clone().filter(|figure| figure.told.is_ok()).count();
    let apart = others.filter(|figure| figure.is_told_apart()).count();
    let of_dry = dry.map(|figure| match &figure.told {
        Ok(held) => hotter(figure, held, comparison, told, calls),
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
    let all = of_dry.into_iter().chain(of_others);
    all.map(Phrase::from).collect()
}

/// Which dry vessel gets hotter for each W/m².
fn hotter(
    figure: &FigurePair,
    held: &Told,
    comparison: &Comparison,
    told: ToldAs,
    calls: &Calls,
) -> Message {
    let value = told.sign * held.held.value;
    let is_more = value >= 0.0;
    let [lower, upper] = held.interval();
    let ends = match held.held.value >= 0.0 {
        true => (lower, upper),
        false => (-upper, -lower),
    };
    let base = match told.sign > 0.0 {
        true => &figure.first,
        false => &figure.second,
    };
    let share = value.abs() / base.value * 100.0;
    let said = if figure.is_told_apart() {
        match is_more {
            true => message!("beside-hotter"),
            false => message!("beside-cooler"),
        }
    } else if held.p_corrected < SHOWN_P {
        match is_more {
            true => message!("beside-hotter-one-day"),
            false => message!("beside-cooler-one-day"),
        }
    } else if held.held.p < SHOWN_P {
        message!(
            "beside-hotter-by-chance",
            pairs = pairs_with(comparison, figure.key)
        )
    } else {
        match is_more {
            true => message!("beside-hotter-not-told"),
            false => message!("beside-cooler-not-told"),
        }
    };
    let decimals = decimals_for(held.held.expanded);
    said.with("second", calls.name(told.minuend))
        .with("first", calls.name(told.subtrahend))
        .with("difference", fixed(value.abs(), decimals))
        .with("interval", spoken_ends(ends, decimals))
        .with("share", fixed(share, 0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pairs_that_share_a_number_stand_together() {
        let pairs = vec![[1, 3], [2, 3], [3, 4], [1, 5]];
        assert_eq!(stars(pairs), [(3, vec![1, 2, 4]), (1, vec![5])]);
    }
}
