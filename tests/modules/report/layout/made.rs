//! Every document that the rules are held against, made once for all of them: reports of all
//! samples and of a campaign of nine runs, comparisons and field sheets, in every language, on
//! every paper; in English on Letter with units of the US, and on A4 both with them and without.

use std::collections::BTreeSet;
use std::fmt::Write as _;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{LazyLock, Mutex};

use lopdf::Document;
use simmerline::campaign::kinds::RunKind;
use simmerline::campaign::wishes::Paper;
use simmerline::comparison::{Comparison, compare};
use simmerline::language::{LANGUAGES, Language, UnitSystem, Words};
use simmerline::planning::{Plan, plan};
use simmerline::procedure::Assessment;
use simmerline::report::comparison::outputs::outputs as comparison_outputs;
use simmerline::report::plan::outputs::field_sheet;
use simmerline::report::words::build;
use simmerline::report::{Edition, outputs};

use super::lines::{Line, lines_of};
use super::pages::{Page, read_pages};
use super::tags::{Tags, read_tags};
use crate::kit::campaign::Invented;
use crate::kit::header::HEADER;
use crate::kit::heating::{row_with, water_c};
use crate::kit::rate::{rate, samples};
use crate::report::campaigns::issued;

/// Runs of the long campaign.
const MANY_RUNS: u32 = 9;

/// What a document is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// A report of so many runs.
    Report {
        runs: usize,
    },
    /// A comparison of so many campaigns.
    Comparison {
        campaigns: usize,
    },
    FieldSheet,
}

/// A document as it was laid out.
pub struct Made {
    pub name: String,
    pub kind: Kind,
    pub language: &'static str,
    pub paper: Paper,
    pub units: UnitSystem,
    pub pages: Vec<Page>,
    /// Lines of text of each page.
    pub lines: Vec<Vec<Line>>,
    pub tags: Tags,
    /// Names of the facts that page one has room for where no shortcomings are told, and how many
    /// shortcomings there are.
    pub facts: Vec<String>,
    pub shortcomings: usize,
    /// Words that the tester wrote, which the report quotes.
    pub own_words: BTreeSet<String>,
}

/// What documents are made from.
enum Source {
    Report(Box<Assessment>),
    Comparison(Box<Comparison>),
    FieldSheet(Box<Plan>),
}

/// All of them.
pub static MADE: LazyLock<Vec<Made>> = LazyLock::new(make);

fn make() -> Vec<Made> {
    let sources = sources();
    let editions = editions();
    let jobs: Vec<_> = (sources.iter())
        .flat_map(|source| editions.iter().map(move |edition| (source, *edition)))
        .collect();
    let (next, made) = (AtomicUsize::new(0), Mutex::new(Vec::new()));
    let threads = std::thread::available_parallelism().map_or(2, usize::from);
    std::thread::scope(|scope| {
        for _ in 0..threads {
            scope.spawn(|| {
                while let Some(job) = jobs.get(next.fetch_add(1, Ordering::Relaxed)) {
                    let ((name, own_words, source), edition) = job;
                    let one = make_one(name, own_words, source, *edition);
                    made.lock().unwrap().push(one);
                }
            });
        }
    });
    let mut made = made.into_inner().unwrap();
    made.sort_by(|one, two| {
        let key = |made: &Made| {
            let is_us = made.units == UnitSystem::Us;
            (made.name.clone(), made.language, made.paper.word(), is_us)
        };
        key(one).cmp(&key(two))
    });
    made
}

/// A language, a paper, and units.
type Printed = (Language, Paper, UnitSystem);

/// Every language on every paper. Units of the US stand with English: on the paper of the US,
/// which has no edition without them, and on the narrower one.
fn editions() -> Vec<Printed> {
    let of_language = |language: Language| {
        Paper::ALL.map(|paper| match (language.code, paper) {
            ("en", Paper::UsLetter) => (language, paper, UnitSystem::Us),
            _ => (language, paper, UnitSystem::Si),
        })
    };
    let on_both = LANGUAGES.into_iter().flat_map(of_language);
    let narrow = (Language::ENGLISH, Paper::A4, UnitSystem::Us);
    on_both.chain([narrow]).collect()
}

fn make_one(
    name: &str,
    own_words: &BTreeSet<String>,
    source: &Source,
    (language, paper, units): Printed,
) -> Made {
    let edition = Edition {
        words: Words::new(language, units),
        paper,
        // The pages are the same; the logs of the long campaign are gone.
        has_attachments: false,
        ..Edition::plain(issued())
    };
    let headline = match source {
        Source::Report(assessment) => Some(build(assessment, &edition).headline),
        _ => None,
    };
    let (facts, shortcomings) = headline.map_or_else(Default::default, |headline| {
        let facts = headline.facts.into_iter().map(|fact| fact.label);
        (facts.collect(), headline.findings.len())
    });
    let (kind, files) = match source {
        Source::Report(assessment) => {
            let runs = assessment.tested.campaign.runs.len();
            (
                Kind::Report { runs },
                outputs(assessment, &edition).unwrap(),
            )
        }
        Source::Comparison(comparison) => {
            let campaigns = comparison.campaigns.len();
            let files = comparison_outputs(comparison, &edition).unwrap();
            (Kind::Comparison { campaigns }, files)
        }
        Source::FieldSheet(plan) => {
            let sheet = field_sheet(plan, &edition).unwrap();
            (Kind::FieldSheet, vec![sheet.unwrap()])
        }
    };
    let mut pdfs = files.into_iter();
    let pdf = pdfs.find(|file| file.name.ends_with(".pdf")).unwrap();
    let pdf = Document::load_mem(&pdf.bytes).unwrap();
    let (pages, tags) = (read_pages(&pdf), read_tags(&pdf));
    let lines = (pages.iter().enumerate())
        .map(|(index, page)| lines_of(page, index, &tags))
        .collect();
    Made {
        name: name.to_owned(),
        kind,
        language: language.code,
        paper,
        units,
        pages,
        lines,
        tags,
        facts,
        shortcomings,
        own_words: own_words.clone(),
    }
}

type Named = (String, BTreeSet<String>, Source);

fn sources() -> Vec<Named> {
    let mut assessed = samples();
    let sheets: Vec<Named> = (assessed.iter())
        .filter(|(name, _)| ["open-dish", "box"].contains(&name.as_str()))
        .map(|(name, assessment)| {
            let campaign = assessment.tested.campaign.clone();
            let own_words = own_words(assessment);
            let date = jiff::civil::date(2027, 3, 14);
            let plan = plan(campaign, Some(assessment), date, RunKind::Water).unwrap();
            let source = Source::FieldSheet(Box::new(plan));
            (format!("field sheet of {name}"), own_words, source)
        })
        .collect();
    let comparisons = comparisons(&assessed);
    assessed.push((format!("{MANY_RUNS} runs"), many_runs()));
    let reports = assessed.into_iter().map(|(name, assessment)| {
        let own_words = own_words(&assessment);
        (name, own_words, Source::Report(Box::new(assessment)))
    });
    reports.chain(comparisons).chain(sheets).collect()
}

fn comparisons(samples: &[(String, Assessment)]) -> Vec<Named> {
    let two = ["open-dish", "open-dish-skirt"];
    let six = [
        "box",
        "box-autumn",
        "open-dish",
        "open-dish-skirt",
        "panel-cloudy",
        "tube-area-slip",
    ];
    let all = samples.iter().map(|(name, _)| name.as_str());
    let all: Vec<&str> = all.collect();
    let lists = [&two[..], &six, &all];
    let made = lists.map(|names| {
        let of_name = |name: &&str| {
            let (_, assessment) = samples.iter().find(|(known, _)| known == name).unwrap();
            assessment.clone()
        };
        let campaigns: Vec<Assessment> = names.iter().map(of_name).collect();
        let own_words = campaigns.iter().flat_map(own_words).collect();
        let comparison = compare(campaigns, None, true).unwrap();
        let name = format!("comparison of {}", names.len());
        (name, own_words, Source::Comparison(Box::new(comparison)))
    });
    made.into()
}

/// The invented campaign on nine days.
fn many_runs() -> Assessment {
    let names: Vec<String> = (1..=MANY_RUNS)
        .map(|day| format!("day-{day}.csv"))
        .collect();
    let logs: Vec<String> = (1..=MANY_RUNS).map(log_of_day).collect();
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    let logs: Vec<(&str, &str)> = (names.iter().copied())
        .zip(logs.iter().map(String::as_str))
        .collect();
    rate(&Invented::default().text(&names), &logs).unwrap()
}

/// Water that follows the closed form, with a wobble as of a thermometer.
fn log_of_day(day: u32) -> String {
    let mut log = format!("{HEADER}\n");
    for minute in 0..=200 {
        let after_s = 60 * minute;
        let wobble_k = f64::from((day * 7 + minute * 13) % 11) / 20.0 - 0.25;
        let water_c = water_c(f64::from(after_s)) + wobble_k;
        writeln!(log, "{}", row_with(day, after_s, &format!("{water_c:.2}"))).unwrap();
    }
    log
}

/// What the campaign file has in quotes, and the headers of its logs.
fn own_words(assessment: &Assessment) -> BTreeSet<String> {
    let campaign = &assessment.tested.campaign;
    let quoted = campaign.text.split('"').skip(1).step_by(2);
    let headers = assessment.tested.accounts.iter().flat_map(|account| {
        let read = account.columns.iter().map(|column| &column.header);
        read.chain(&account.not_read).chain([&account.time_header])
    });
    let texts = quoted.chain(headers.map(String::as_str));
    texts.flat_map(words_of).map(str::to_owned).collect()
}

/// Words of a text, those with hyphens and low lines whole.
pub fn words_of(text: &str) -> impl Iterator<Item = &str> {
    text.split(|letter: char| !(letter.is_alphanumeric() || "-_./".contains(letter)))
}
