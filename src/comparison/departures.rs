//! How the practice or the limits of campaigns differ.

use crate::campaign::model::GUARD_KEY;
use crate::language::{Message, Phrase, clock, joined, short};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::limit::Allowed;
use crate::procedure::s580::limits::{LimitKey, S580Limit};

/// What a campaign was tested by, where the first was tested by something else.
#[derive(Debug, Clone, PartialEq)]
pub enum Departure {
    /// Numbers of the practices.
    Procedure { here: String, there: String },
    /// A limit; `None`: that campaign has none.
    Limit {
        here: Option<S580Limit>,
        there: Option<S580Limit>,
    },
    /// Whether there is a guard band.
    Guard { here: bool },
}

impl Departure {
    /// With the keys of the campaign file, for whoever mends one: `wind_max_m_s 2 where the
    /// first has 1`.
    pub fn by_key(&self) -> Message {
        match self {
            Departure::Procedure { here, there } => {
                message!("departure-procedure", here = here, there = there)
            }
            Departure::Limit { here, there } => {
                let value = |limit: &Option<S580Limit>| match limit {
                    Some(limit) => short(limit.value),
                    None => message!("departure-none").into(),
                };
                let mut limits = [here, there].into_iter().flatten();
                message!(
                    "departure-limit",
                    limit = limits.find_map(|limit| limit.word).unwrap_or_default(),
                    here = value(here),
                    there = value(there)
                )
            }
            Departure::Guard { here } => message!(
                "departure-limit",
                limit = GUARD_KEY,
                here = here.to_string(),
                there = (!here).to_string()
            ),
        }
    }

    /// In words, for whoever reads the comparison: `mean wind 2 m/s instead of 1 m/s`.
    pub fn in_words(&self) -> Message {
        self.said(|limit| limit.what().into())
    }

    /// In words and with the keys of the campaign file, for whoever mends one:
    /// `mean wind (wind_mean_max_m_s) 2 m/s instead of 1 m/s`.
    pub fn in_words_by_key(&self) -> Phrase {
        let said = self.said(|limit| match limit.word {
            Some(word) => with_key(limit.what(), word),
            None => limit.what().into(),
        });
        match self {
            Departure::Guard { .. } => with_key(said, GUARD_KEY),
            Departure::Limit { .. } | Departure::Procedure { .. } => said.into(),
        }
    }

    /// In words; `named` says what a limit is called.
    fn said(&self, named: impl Fn(&S580Limit) -> Phrase) -> Message {
        match self {
            Departure::Procedure { here, there } => {
                message!("departure-procedure-said", here = here, there = there)
            }
            Departure::Limit {
                here: Some(here),
                there: Some(there),
            } => message!(
                "departure-limit-said",
                limit = named(here),
                here = amount(here),
                there = amount(there)
            ),
            Departure::Limit {
                here: Some(here), ..
            } => match here.allowed {
                Allowed::AtLeast => message!("departure-least-said"),
                Allowed::AtMost | Allowed::Within(_) => message!("departure-most-said"),
            }
            .with("limit", named(here))
            .with("here", amount(here)),
            Departure::Limit { there, .. } => {
                let what = there.as_ref().map(named);
                let what = what.unwrap_or_else(|| "".into());
                message!("departure-none-said", limit = what)
            }
            Departure::Guard { here: true } => message!("departure-guard-said"),
            Departure::Guard { here: false } => message!("departure-no-guard-said"),
        }
    }
}

/// What is meant, and in brackets its key.
fn with_key(said: impl Into<Phrase>, key: &str) -> Phrase {
    joined([said.into(), format!("({key})").into()], " ")
}

/// A limit with its unit; a time of day as a clock has it.
fn amount(limit: &S580Limit) -> Phrase {
    match limit.key {
        LimitKey::SolarTimeStart | LimitKey::SolarTimeEnd => clock(limit.value),
        _ => limit.amount(),
    }
}

/// How the practice and the limits of each campaign depart from those of the first.
pub fn departures(campaigns: &[Assessment]) -> Vec<Vec<Departure>> {
    let first = &campaigns[0];
    campaigns.iter().map(|one| of_one(one, first)).collect()
}

/// Campaigns that were tested by the same, by their places.
#[derive(Debug, Clone, PartialEq)]
pub struct TestedAlike {
    pub places: Vec<usize>,
    /// What they were tested by, where most were tested by something else.
    pub departures: Vec<Departure>,
}

/// The campaigns that most others were tested like, then those that depart from them, each set
/// that departs alike together; `None` where none departs.
pub fn by_departure(campaigns: &[Assessment]) -> Option<(TestedAlike, Vec<TestedAlike>)> {
    let groups = grouped(departures(campaigns));
    // Of as many, the earlier.
    let most = groups.iter().map(|group| group.places.len()).max()?;
    let norm = groups.iter().find(|group| group.places.len() == most)?;
    let norm = &campaigns[norm.places[0]];
    let from_norm = campaigns.iter().map(|one| of_one(one, norm)).collect();
    let (same, others): (Vec<_>, Vec<_>) = grouped(from_norm)
        .into_iter()
        .partition(|group| group.departures.is_empty());
    let same = same.into_iter().next()?;
    (!others.is_empty()).then_some((same, others))
}

/// Places with the same departures together, in their order.
fn grouped(departures: Vec<Vec<Departure>>) -> Vec<TestedAlike> {
    let mut groups: Vec<TestedAlike> = Vec::new();
    for (place, departures) in departures.into_iter().enumerate() {
        let mut known = groups.iter_mut();
        match known.find(|group| group.departures == departures) {
            Some(group) => group.places.push(place),
            None => groups.push(TestedAlike {
                places: vec![place],
                departures,
            }),
        }
    }
    groups
}

fn of_one(one: &Assessment, first: &Assessment) -> Vec<Departure> {
    let mut departures = Vec::new();
    let procedures = [one, first].map(|of| &of.tested.campaign.procedure);
    if procedures[0] != procedures[1] {
        departures.push(Departure::Procedure {
            here: procedures[0].clone(),
            there: procedures[1].clone(),
        });
    }
    let all = one.s580.limits.rows.iter().chain(&first.s580.limits.rows);
    let mut keys: Vec<(&str, LimitKey)> = all
        .filter_map(|limit| Some((limit.word?, limit.key)))
        .collect();
    keys.sort_unstable_by_key(|(word, _)| *word);
    keys.dedup();
    for (_, key) in keys {
        let [here, there] = [one, first].map(|of| of.s580.limits.row(key).copied());
        let values = [&here, &there].map(|limit| limit.map(|limit| limit.value));
        if values[0] != values[1] {
            departures.push(Departure::Limit { here, there });
        }
    }
    let guards = [one, first].map(|of| of.s580.limits.guard.is_some());
    if guards[0] != guards[1] {
        departures.push(Departure::Guard { here: guards[0] });
    }
    departures
}
