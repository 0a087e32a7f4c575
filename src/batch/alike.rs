//! What is said of many campaigns, with what is said alike of several told once.

use std::cmp::Ordering;
use std::collections::{BTreeMap, BTreeSet};

use crate::language::{Message, Phrase};
use crate::procedure::cooking::danger::Danger;
use crate::procedure::finding::Level;

/// From so many on, sentences that differ in numbers and names of files alone are told by one of
/// them: by the gravest where food safety is at stake, else by the first.
const MERGED_FROM: usize = 4;

/// What stands in a pattern for a number or a name of a file.
const ANY: &str = "#";

/// What goes into messages that names a file or a run, and so differs from log to log.
const OF_FILES: [&str; 6] = ["log", "logs", "run", "runs", "file", "files"];

/// How much something weighs among all that is said: food safety before all else.
#[derive(Debug, Clone, Copy, Default, PartialEq, PartialOrd)]
pub struct Gravity {
    /// `None` of what is no warning of food safety.
    pub danger: Option<Danger>,
    /// Level of the finding or of the campaign.
    pub level: Option<Level>,
}

impl Gravity {
    /// Of what leaves a result, or is said of one, at a level.
    pub fn of_level(level: Level) -> Self {
        Gravity {
            danger: None,
            level: Some(level),
        }
    }

    /// The gravest first.
    pub fn cmp_gravest_first(&self, other: &Gravity) -> Ordering {
        other.partial_cmp(self).unwrap_or(Ordering::Equal)
    }

    fn raise(&mut self, other: Gravity) {
        if other.danger > self.danger {
            self.danger = other.danger;
        }
        self.level = self.level.max(other.level);
    }
}

/// What is said of a campaign, and how much it weighs.
#[derive(Debug, Clone, PartialEq)]
pub struct Said {
    /// A sentence, and what belongs to it.
    pub phrases: Vec<Phrase>,
    pub gravity: Gravity,
}

impl From<Message> for Said {
    /// A sentence alone, which weighs nothing.
    fn from(message: Message) -> Self {
        Said {
            phrases: vec![message.into()],
            gravity: Gravity::default(),
        }
    }
}

/// What is said, of one or more campaigns.
#[derive(Debug, Clone, PartialEq)]
pub struct Group {
    /// Of the first of [`Group::campaigns`].
    pub said: Vec<Phrase>,
    /// Each once: those of one wording in the order in which they came, then those of the next.
    pub campaigns: Vec<String>,
    /// How often it was said.
    pub times: usize,
    /// Of the others it is said with other numbers or files.
    pub differs: bool,
    /// Of the gravest of them.
    pub gravity: Gravity,
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
    pub fn add(&mut self, campaign: &str, said: Said) {
        let Said {
            phrases: said,
            gravity,
        } = said;
        let next = self.patterns.len();
        let at = *self.at.entry(pattern(&said)).or_insert(next);
        if at == next {
            self.patterns.push(Exact::default());
        }
        let exact = &mut self.patterns[at];
        let next = exact.groups.len();
        let at = *exact.at.entry(printed(&said)).or_insert(next);
        if at == next {
            exact.groups.push(Group {
                said,
                campaigns: Vec::new(),
                times: 0,
                differs: false,
                gravity,
            });
        }
        let group = &mut exact.groups[at];
        group.gravity.raise(gravity);
        group.times += 1;
        if group.campaigns.last().is_none_or(|last| last != campaign) {
            group.campaigns.push(campaign.to_owned());
        }
    }

    /// What is to be told, in the order in which it was met: what is said alike once; what
    /// differs in numbers and files alone once too, where it is said often and of several
    /// campaigns. Warnings of food safety are then told by the gravest, whose campaigns come
    /// first.
    pub fn groups(self) -> Vec<Group> {
        let groups = self
            .patterns
            .into_iter()
            .flat_map(|Exact { groups, .. }| merged(groups));
        groups.collect()
    }
}

/// One group of those of a pattern, where there are enough of them; else they as they are.
fn merged(mut exact: Vec<Group>) -> Vec<Group> {
    let times: usize = exact.iter().map(|group| group.times).sum();
    if exact.len() < 2 || times < MERGED_FROM || distinct(&exact).len() < 2 {
        return exact;
    }
    let danger = |group: &Group| Gravity {
        level: None,
        ..group.gravity
    };
    exact.sort_by(|one, other| danger(one).cmp_gravest_first(&danger(other)));
    let campaigns = distinct(&exact);
    let mut gravity = Gravity::default();
    exact.iter().for_each(|group| gravity.raise(group.gravity));
    vec![Group {
        said: exact.swap_remove(0).said,
        campaigns,
        times,
        differs: true,
        gravity,
    }]
}

/// As a reader sees it: numbers that are rounded alike are the same.
fn printed(said: &[Phrase]) -> String {
    let lines = said.iter().map(Phrase::to_string);
    lines.collect::<Vec<_>>().join("\n")
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
    use crate::language::{duration, fixed};

    fn of(message: Message, danger: Option<Danger>) -> Said {
        Said {
            phrases: vec![message.into()],
            gravity: Gravity {
                danger,
                level: None,
            },
        }
    }

    fn faults(log: &str, count: usize, column: &str) -> Said {
        let said = Message::new("notice-fault-values").with("log", log);
        of(said.with("cells", count).with("column", column), None)
    }

    /// A run that stayed so many hours where food may stay two.
    fn too_long(run: &str, hours: f64) -> Said {
        let said = Message::new("danger-measured").with("run", run);
        let said = said.with("time", duration(hours * 3600.0));
        let said = said.with("longest", duration(2.0 * 3600.0));
        let danger = Danger {
            is_endless: false,
            times_allowed: hours / 2.0,
        };
        of(said.with("zone", "cool"), Some(danger))
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
        assert_eq!(groups[0].said, faults("7.csv", 7, "water").phrases);
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
    fn what_is_printed_alike_is_alike_whatever_stands_behind_the_rounding() {
        let mut alike = Alike::default();
        for (campaign, number) in [("a", 1.01), ("b", 1.02), ("c", 1.2)] {
            let said = Message::new("check-next-then").with("remedy", fixed(number, 1));
            alike.add(campaign, of(said.with("missing", "more"), None));
        }
        let groups = alike.groups();
        let campaigns = groups.iter().map(|group| group.campaigns.join(" "));
        assert_eq!(campaigns.collect::<Vec<_>>(), ["a b", "c"]);
    }

    #[test]
    fn food_safety_is_told_by_the_gravest_and_its_campaign_is_named_first() {
        let mut alike = Alike::default();
        for (campaign, hours) in [("a", 2.05), ("b", 3.0), ("c", 6.0), ("d", 2.5), ("e", 6.0)] {
            alike.add(campaign, too_long(&format!("{campaign}.csv"), hours));
        }
        let groups = alike.groups();
        assert_eq!(groups.len(), 1);
        assert_eq!(groups[0].said, too_long("c.csv", 6.0).phrases);
        assert_eq!(groups[0].campaigns, ["c", "e", "b", "d", "a"]);
        assert_eq!(groups[0].gravity, too_long("c.csv", 6.0).gravity);
    }

    #[test]
    fn food_safety_weighs_more_than_any_level_and_a_worse_level_more_than_a_better() {
        let danger = too_long("a.csv", 3.0).gravity;
        let [noted, not_valid] = [Level::ConformsWithNotes, Level::NotValid].map(Gravity::of_level);
        let mut all = [Gravity::default(), noted, danger, not_valid];
        all.sort_by(Gravity::cmp_gravest_first);
        assert_eq!(all, [danger, not_valid, noted, Gravity::default()]);
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
