//! What is said of many campaigns, with what is said alike of several told once.

use std::collections::{BTreeMap, BTreeSet};

use crate::language::{Message, Phrase};

/// From so many on, sentences that differ in numbers and names of files alone are told by the
/// first of them.
const MERGED_FROM: usize = 4;

/// What stands in a pattern for a number or a name of a file.
const ANY: &str = "#";

/// What goes into messages that names a file or a run, and so differs from log to log.
const OF_FILES: [&str; 6] = ["log", "logs", "run", "runs", "file", "files"];

/// What is said, of one or more campaigns.
#[derive(Debug, Clone, PartialEq)]
pub struct Group {
    /// Of the first of them.
    pub said: Vec<Phrase>,
    /// Campaigns, each once, in their order.
    pub campaigns: Vec<String>,
    /// How often it was said.
    pub times: usize,
    /// Of the others it is said with other numbers or files.
    pub differs: bool,
}

/// What was said of one pattern, each by its words and numbers.
#[derive(Debug, Clone, Default)]
struct Exact {
    groups: Vec<Group>,
    at: BTreeMap<String, usize>,
}

/// Sentences of campaigns as they come, each with what belongs to it, such as what would remedy
/// it.
#[derive(Debug, Clone, Default)]
pub struct Alike {
    /// By pattern.
    patterns: Vec<Exact>,
    at: BTreeMap<String, usize>,
}

impl Alike {
    /// Adds what is said of a campaign.
    pub fn add(&mut self, campaign: &str, said: Vec<Phrase>) {
        let next = self.patterns.len();
        let at = *self.at.entry(pattern(&said)).or_insert(next);
        if at == next {
            self.patterns.push(Exact::default());
        }
        let exact = &mut self.patterns[at];
        let next = exact.groups.len();
        let at = *exact.at.entry(format!("{said:?}")).or_insert(next);
        if at == next {
            exact.groups.push(Group {
                said,
                campaigns: Vec::new(),
                times: 0,
                differs: false,
            });
        }
        let group = &mut exact.groups[at];
        group.times += 1;
        if group.campaigns.last().is_none_or(|last| last != campaign) {
            group.campaigns.push(campaign.to_owned());
        }
    }

    /// What is to be told, in the order in which it was met: what is said alike once; what
    /// differs in numbers and files alone once too, where it is said often and of several
    /// campaigns.
    pub fn groups(self) -> Vec<Group> {
        let groups = self
            .patterns
            .into_iter()
            .flat_map(|Exact { groups: exact, .. }| {
                let times: usize = exact.iter().map(|group| group.times).sum();
                let campaigns = distinct(&exact);
                match exact.len() > 1 && times >= MERGED_FROM && campaigns.len() > 1 {
                    true => vec![Group {
                        said: exact[0].said.clone(),
                        campaigns,
                        times,
                        differs: true,
                    }],
                    false => exact,
                }
            });
        groups.collect()
    }
}

fn distinct(groups: &[Group]) -> Vec<String> {
    let mut seen = BTreeSet::new();
    let all = groups.iter().flat_map(|group| &group.campaigns);
    all.filter(|campaign| seen.insert(*campaign))
        .cloned()
        .collect()
}

/// What messages that differ in numbers and files alone have in common.
fn pattern(said: &[Phrase]) -> String {
    let blanked: Vec<Phrase> = said.iter().map(of_phrase).collect();
    format!("{blanked:?}")
}

fn of_message(message: &Message) -> Message {
    let arguments = message.arguments.iter();
    Message {
        name: message.name.clone(),
        arguments: arguments
            .map(|(name, phrase)| match OF_FILES.contains(name) {
                true => (*name, ANY.into()),
                false => (*name, of_phrase(phrase)),
            })
            .collect(),
    }
}

fn of_phrase(phrase: &Phrase) -> Phrase {
    let each = |phrases: &[Phrase]| phrases.iter().map(of_phrase).collect();
    match phrase {
        Phrase::Text(_) | Phrase::UnitSymbol(_) => phrase.clone(),
        Phrase::Message(message) => of_message(message).into(),
        Phrase::Listed(phrases) => Phrase::Listed(each(phrases)),
        Phrase::Clauses(phrases) => Phrase::Clauses(each(phrases)),
        Phrase::Joined(phrases, between) => Phrase::Joined(each(phrases), between),
        Phrase::Count(_)
        | Phrase::Fixed(..)
        | Phrase::Short(_)
        | Phrase::Range(..)
        | Phrase::Probability(_)
        | Phrase::Quantity(..)
        | Phrase::BracketedQuantity(..)
        | Phrase::PairedNumber(..)
        | Phrase::Clock(_)
        | Phrase::Duration(_)
        | Phrase::Date(_) => ANY.into(),
    }
}

/// The same of a sentence that is already put into words: each word that has a digit may be
/// another, and so may what was found between quotation marks.
pub fn pattern_of_words(text: &str) -> String {
    let mut pattern = Vec::new();
    let mut is_found = false;
    for word in text.split(' ') {
        let is_quoted = is_found && word.starts_with('"') && word.trim_end_matches(',').len() > 2;
        // What stands between quotation marks elsewhere is a name, such as that of a key.
        let is_number = !word.starts_with('"') && word.contains(|c: char| c.is_ascii_digit());
        let is_any = is_quoted || is_number;
        pattern.push(if is_any { ANY } else { word });
        is_found = word == "found";
    }
    pattern.join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn faults(log: &str, count: usize, column: &str) -> Vec<Phrase> {
        let said = Message::new("notice-fault-values").with("log", log);
        vec![said.with("cells", count).with("column", column).into()]
    }

    #[test]
    fn what_is_said_alike_of_several_is_told_once() {
        let mut alike = Alike::default();
        for campaign in ["a", "b"] {
            alike.add(campaign, faults("1.csv", 7, "water"));
        }
        alike.add("b", faults("2.csv", 7, "air"));
        let groups = alike.groups();
        assert_eq!(groups.len(), 2);
        assert_eq!(groups[0].campaigns, ["a", "b"]);
        assert_eq!((groups[0].times, groups[0].differs), (2, false));
        assert_eq!(groups[1].campaigns, ["b"]);
    }

    #[test]
    fn numbers_and_files_are_no_other_cause_where_there_are_many_and_another_column_is() {
        let mut alike = Alike::default();
        for (campaign, count) in [("a", 7), ("a", 8), ("b", 9), ("c", 9)] {
            alike.add(campaign, faults(&format!("{count}.csv"), count, "water"));
        }
        alike.add("c", faults("1.csv", 7, "air"));
        let groups = alike.groups();
        assert_eq!(groups.len(), 2);
        assert_eq!(groups[0].said, faults("7.csv", 7, "water"));
        assert_eq!(groups[0].campaigns, ["a", "b", "c"]);
        assert_eq!((groups[0].times, groups[0].differs), (4, true));
    }

    #[test]
    fn few_that_differ_are_told_each_and_so_are_those_of_one_campaign() {
        let mut alike = Alike::default();
        for (campaign, count) in [("a", 7), ("b", 8), ("c", 9)] {
            alike.add(campaign, faults("1.csv", count, "water"));
        }
        assert_eq!(alike.groups().len(), 3);
        let mut alike = Alike::default();
        (0..9).for_each(|count| alike.add("a", faults("1.csv", count, "water")));
        assert_eq!(alike.groups().len(), 9);
    }

    #[test]
    fn words_that_have_digits_are_no_other_cause() {
        let [one, other] = ["64.6 – 155.8 °C", "7 – 203.0 °C"]
            .map(|range| pattern_of_words(&format!("found {range}, expected −5 – 105 °C")));
        assert_eq!(one, other);
        let [one, other] =
            ["9l.4", "dry"].map(|cell| pattern_of_words(&format!("found \"{cell}\", expected °C")));
        assert_eq!(one, other);
        let [one, other] =
            ["a", "b"].map(|key| pattern_of_words(&format!("the key \"{key}\" is missing")));
        assert_ne!(one, other);
    }
}
