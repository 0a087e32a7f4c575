//! What the page says: the ranking, the files of each campaign, and what failed.

use serde::Serialize;

use crate::comparison::standing::{Ranking, Standing};
use crate::language::{Phrase, clauses, date};
use crate::message;
use crate::report::comparison::names::titles;
use crate::report::comparison::words::ranking::{RankingPart, listed};
use crate::report::comparison::words::status::status;
use crate::report::{Edition, Setting};
use crate::units::sentence_case;

/// A campaign of the page.
pub struct Listed {
    pub standing: Standing,
    /// Names of the files that were written of it, the report first.
    pub files: Vec<(FileKind, String)>,
}

/// What a file is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FileKind {
    WebPage,
    Pdf,
    Results,
    Intervals,
}

/// The page.
#[derive(Debug, Clone, Serialize)]
pub struct IndexPage {
    pub setting: Setting,
    pub title: String,
    pub subtitle: String,
    pub marks: Vec<String>,
    pub statement: String,
    /// `None`: no campaign has a rating.
    pub ranking: Option<RankingPart>,
    /// What the rows of the ranking lead to.
    pub links: Vec<String>,
    /// In place of the ranking.
    pub absence: String,
    pub order: String,
    pub reports: Vec<Entry>,
    /// Empty: all is well.
    pub failed: String,
    pub caution: String,
}

/// A campaign's files.
#[derive(Debug, Clone, Serialize)]
pub struct Entry {
    pub name: String,
    pub status: String,
    pub links: Vec<Link>,
}

/// Leads to a file beside the page.
#[derive(Debug, Clone, Serialize)]
pub struct Link {
    pub label: String,
    pub target: String,
}

/// Puts the page into words; `ranking` is that of the campaigns, and `failed` has the names of
/// those without a report.
pub fn build(
    campaigns: &[Listed],
    ranking: RankingPart,
    failed: &[String],
    edition: &Edition,
) -> IndexPage {
    let words = &edition.words;
    let standings: Vec<Standing> = campaigns.iter().map(|one| one.standing.clone()).collect();
    let names = names(&standings, edition);
    let places = Ranking::of(&standings);
    let places: Vec<usize> = listed(&places).map(|(_, place)| place).collect();
    let order = message!("index-order");
    let is_ranked = !places.is_empty();
    let issued = jiff::tz::TimeZone::UTC.to_datetime(edition.issued).date();
    let failure = message!(
        "index-failed",
        count = failed.len(),
        names = clauses(failed.iter().map(String::as_str))
    );
    IndexPage {
        setting: edition.setting(),
        title: words.say(message!("index-title", count = campaigns.len())),
        subtitle: words.say(message!("index-subtitle", date = date(issued))),
        marks: mark(&standings).map_or_else(Vec::new, |mark| vec![words.say(mark)]),
        statement: words.say(message!("index-statement")),
        links: places.iter().map(|&at| main_link(&campaigns[at])).collect(),
        ranking: is_ranked.then(|| named(ranking, &places, &names)),
        absence: match is_ranked {
            true => String::new(),
            false => words.say(message!("index-no-rating")),
        },
        order: match places.len() > 1 {
            true => words.say(order),
            false => String::new(),
        },
        reports: campaigns
            .iter()
            .zip(names)
            .map(|(one, name)| entry(one, name, edition))
            .collect(),
        failed: match failed.is_empty() {
            true => String::new(),
            false => words.say(failure),
        },
        caution: words.say(message!("index-caution")),
    }
}

/// Names of the campaigns, those of invented data with a mark where others are of real ones.
fn names(standings: &[Standing], edition: &Edition) -> Vec<String> {
    let is_mixed = standings
        .iter()
        .any(|one| one.is_invented != standings[0].is_invented);
    let marked = |(one, name): (&Standing, String)| match is_mixed && one.is_invented {
        true => edition.words.say(message!("index-invented", name = name)),
        false => name,
    };
    standings
        .iter()
        .zip(titles(standings))
        .map(marked)
        .collect()
}

/// What the page's head says of invented data.
fn mark(standings: &[Standing]) -> Option<Phrase> {
    let invented = standings.iter().filter(|one| one.is_invented).count();
    match invented {
        0 => None,
        all if all == standings.len() => Some(message!("report-invented").into()),
        _ => Some(message!("index-some-invented").into()),
    }
}

/// The same ranking, its rows with these names.
fn named(mut ranking: RankingPart, places: &[usize], names: &[String]) -> RankingPart {
    for (row, &place) in ranking.rows.iter_mut().zip(places) {
        row.name.clone_from(&names[place]);
    }
    ranking
}

fn entry(campaign: &Listed, name: String, edition: &Edition) -> Entry {
    let link = |(kind, file): &(FileKind, String)| Link {
        label: edition.words.say(match kind {
            FileKind::WebPage => message!("index-web-page"),
            FileKind::Pdf => message!("index-pdf"),
            FileKind::Results => message!("index-results"),
            FileKind::Intervals => message!("index-intervals"),
        }),
        target: beside(file),
    };
    Entry {
        name,
        status: sentence_case(&edition.words.say(status(&campaign.standing))),
        links: campaign.files.iter().map(link).collect(),
    }
}

fn main_link(campaign: &Listed) -> String {
    let first = campaign.files.first();
    first.map_or_else(String::new, |(_, file)| beside(file))
}

/// The address of a file beside the page or below it, whatever is in its name (RFC 3986, 2.1 and 4.2).
fn beside(file: &str) -> String {
    let mut address = "./".to_owned();
    for byte in file.bytes() {
        match byte {
            b'A'..=b'Z' | b'a'..=b'z' | b'0'..=b'9' | b'-' | b'.' | b'_' | b'~' | b'/' => {
                address.push(char::from(byte));
            }
            _ => address += &format!("%{byte:02X}"),
        }
    }
    address
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn any_name_is_an_address_beside_the_page() {
        assert_eq!(beside("open-dish.html"), "./open-dish.html");
        assert_eq!(beside("javascript:a()"), "./javascript%3Aa%28%29");
        assert_eq!(beside("a b#c?d%e/é"), "./a%20b%23c%3Fd%25e/%C3%A9");
    }
}
