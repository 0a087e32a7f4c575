//! What campaigns are called on paper: by name where they are few, else by number.

use crate::comparison::Comparison;
use crate::language::{Message, Phrase, joined, listed};
use crate::message;
use crate::report::comparison::names::titles;

/// Campaigns that a sentence calls by name, at most.
const NAMED: usize = 2;

/// Names and numbers of campaigns.
#[derive(Debug, Clone)]
pub struct Calls {
    names: Vec<String>,
    /// Of each place, from one: those with a rank by it, then the others.
    numbers: Vec<usize>,
    /// Places in the order of their numbers.
    order: Vec<usize>,
}

impl Calls {
    /// Those of a comparison.
    pub fn of(comparison: &Comparison) -> Calls {
        let ranked = comparison.ranking.ranked.iter().copied();
        let places = 0..comparison.campaigns.len();
        let others = places.filter(|place| comparison.ranking.rank(*place).is_none());
        let order: Vec<usize> = ranked.chain(others).collect();
        let mut numbers = vec![0; order.len()];
        for (index, place) in order.iter().enumerate() {
            numbers[*place] = index + 1;
        }
        Calls {
            names: titles(&comparison.standings),
            numbers,
            order,
        }
    }

    /// The name of a place.
    pub fn name(&self, place: usize) -> &str {
        &self.names[place]
    }

    /// All names, in the order of places.
    pub fn names(&self) -> &[String] {
        &self.names
    }

    /// The number of a place.
    pub fn number(&self, place: usize) -> usize {
        self.numbers[place]
    }

    /// Places in the order of their numbers.
    pub fn order(&self) -> &[usize] {
        &self.order
    }

    /// Some campaigns in a sentence: by name where they are one or two, else by number.
    pub fn listed(&self, places: &[usize]) -> Phrase {
        let quoted = |place: &usize| message!("calls-name", name = self.name(*place));
        match places {
            few if few.len() <= NAMED => listed(few.iter().map(quoted)),
            _ => self.by_number(places).into(),
        }
    }

    /// The same, by number: `no. 3`, `nos. 1 to 4 and 7`.
    pub fn by_number(&self, places: &[usize]) -> Message {
        let numbers = places.iter().map(|place| self.number(*place));
        message!(
            "calls-numbers",
            count = places.len(),
            numbers = spans(numbers.collect())
        )
    }
}

/// Numbers, those that follow each other together: `1–4, 7`.
pub fn spans(mut numbers: Vec<usize>) -> Phrase {
    numbers.sort_unstable();
    let mut spans: Vec<[usize; 2]> = Vec::new();
    for number in numbers {
        match spans.last_mut() {
            Some([_, last]) if *last + 1 == number => *last = number,
            _ => spans.push([number, number]),
        }
    }
    let spans = spans.into_iter().map(|[first, last]| match last - first {
        0 => first.to_string(),
        1 => format!("{first}, {last}"),
        _ => format!("{first}–{last}"),
    });
    joined(spans, ", ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_that_follow_each_other_stand_together() {
        let said = |numbers: &[usize]| spans(numbers.to_vec()).to_string();
        assert_eq!(said(&[7, 1, 2, 3, 4]), "1–4, 7");
        assert_eq!(said(&[2, 3]), "2, 3");
        assert_eq!(said(&[5]), "5");
    }
}
