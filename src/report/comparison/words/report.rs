//! Every string of a comparison, in the order of its pages.

use serde::Serialize;

use super::causes::cause;
use super::differences::{DifferencesPart, differences, verdict};
use super::tables::{CampaignPart, FigureTable, campaigns, per_unit_table, rating_table};
use crate::campaign::model::Plane;
use crate::comparison::Comparison;
use crate::comparison::pair::ALIKE_IRRADIANCE;
use crate::language::{Message, Phrase, Words, clauses, date, fixed, listed, range};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::finding::Level;
use crate::report::comparison::figures::compared_lines::WITH_BANDS;
use crate::report::comparison::names::{letter, names, number};
use crate::report::rows::{Figure, Row};
use crate::report::sections::{Heading, Section, Sections};
use crate::report::words::cautions::{CautionPart, cautions};
use crate::report::words::provenance::{checkable, made_with};
use crate::report::{Edition, Setting};
use crate::stats::line::Bounds;

/// Pairs that page one has a sentence for.
const SENTENCES: usize = 6;
/// Days below which the spread of days is hardly known.
const FEW_DAYS: usize = 3;
/// Longest title made of the cookers' names, characters.
const LONGEST_TITLE: usize = 76;

/// The comparison.
#[derive(Debug, Clone, Serialize)]
pub struct ComparisonReport {
    pub setting: Setting,
    pub kind: String,
    pub title: String,
    pub subtitle: String,
    pub number: String,
    pub marks: Vec<String>,
    pub statement: String,
    pub author: String,
    /// Headings of the sections, in their order.
    pub sections: Vec<Heading>,
    pub sentences: Vec<String>,
    /// What a reader must know before believing them.
    pub warnings: Vec<String>,
    pub figure: Figure,
    pub ratings: FigureTable,
    pub per_unit: FigureTable,
    pub caution: String,
    /// Whether the PDF carries its data, and how anybody checks it.
    pub checkable: String,
    pub differences: DifferencesPart,
    pub campaigns: Vec<CampaignPart>,
    pub cautions: CautionPart,
    pub notes: Vec<String>,
    pub made_with: Vec<Row>,
    pub inputs: Vec<Row>,
    pub end: String,
}

/// Puts a comparison into words.
pub fn build(comparison: &Comparison, edition: &Edition) -> ComparisonReport {
    let words = &edition.words;
    let names = names(&comparison.campaigns);
    let number = number(comparison);
    let sections = Sections::of_comparison();
    ComparisonReport {
        setting: edition.setting(),
        kind: words.say(message!("comparison-kind")),
        title: title(&names, words),
        subtitle: words.say(subtitle(comparison)),
        marks: marks(comparison)
            .into_iter()
            .map(|mark| words.say(mark))
            .collect(),
        statement: words.say(message!("comparison-statement")),
        author: String::new(),
        checkable: words.say(checkable(edition)),
        sections: sections.headings(words),
        sentences: sentences(comparison, &names, &sections)
            .into_iter()
            .map(|sentence| words.say(sentence))
            .collect(),
        warnings: warnings(comparison)
            .into_iter()
            .map(|warning| words.say(warning))
            .collect(),
        figure: figure(comparison, &names, words),
        ratings: rating_table(comparison, &names, words),
        per_unit: per_unit_table(comparison, words),
        caution: words.say(message!(
            "caution-compared",
            section = sections.number(Section::Cautions)
        )),
        differences: differences(comparison, words),
        campaigns: campaigns(comparison, &names, words),
        cautions: cautions(words),
        notes: notes(comparison).map(|note| words.say(note)).to_vec(),
        made_with: made_with(edition, message!("comparison-practice")),
        inputs: inputs(comparison, words),
        end: words.say(message!("comparison-end", number = &number)),
        number,
    }
}

fn title(names: &[String], words: &Words) -> String {
    let all = words.say(listed(names));
    if all.chars().count() <= LONGEST_TITLE {
        all
    } else {
        words.say(message!("comparison-title-count", count = names.len()))
    }
}

fn subtitle(comparison: &Comparison) -> Message {
    let mut sites: Vec<&str> = comparison
        .campaigns
        .iter()
        .map(|one| one.tested.campaign.site.name.as_str())
        .collect();
    sites.dedup();
    let dates = comparison
        .campaigns
        .iter()
        .flat_map(|one| one.tested.runs.iter().map(|run| run.date));
    let dates: Phrase = match (dates.clone().min(), dates.max()) {
        (Some(first), Some(last)) if first == last => date(first),
        (Some(first), Some(last)) => {
            message!("comparison-dates", first = date(first), last = date(last)).into()
        }
        _ => "".into(),
    };
    let sites = if sites.len() > 3 {
        message!("comparison-sites", count = sites.len()).into()
    } else {
        listed(sites)
    };
    message!(
        "comparison-subtitle",
        campaigns = comparison.campaigns.len(),
        sites = sites,
        dates = dates
    )
}

fn marks(comparison: &Comparison) -> Vec<Message> {
    let mut marks = Vec::new();
    if comparison.is_mixed() {
        marks.push(message!("comparison-mark-mixed"));
    }
    if comparison.is_indicative() {
        marks.push(message!("comparison-mark-indicative"));
    }
    if comparison
        .campaigns
        .iter()
        .any(|one| one.tested.campaign.demonstration)
    {
        marks.push(message!("comparison-mark-invented"));
    }
    marks
}

fn sentences(comparison: &Comparison, names: &[String], sections: &Sections) -> Vec<Phrase> {
    let pairs = &comparison.pairs;
    let mut sentences: Vec<Phrase> = pairs
        .iter()
        .take(SENTENCES)
        .map(|pair| verdict(comparison, pair, names))
        .collect();
    if let [only] = pairs.as_slice() {
        sentences.push(cause(only));
    }
    if pairs.len() > SENTENCES {
        let shown = pairs.iter().filter(|pair| pair.is_shown()).count();
        let in_all = message!(
            "comparison-in-all",
            shown = shown,
            pairs = pairs.len(),
            section = sections.number(Section::Differences)
        );
        sentences.push(in_all.into());
    }
    sentences
}

fn warnings(comparison: &Comparison) -> Vec<Message> {
    let mut warnings = Vec::new();
    let of_first = measured_plane(&comparison.campaigns[0]);
    for (place, (one, departures)) in comparison
        .campaigns
        .iter()
        .zip(&comparison.departures)
        .enumerate()
    {
        let campaign = letter(place).to_string();
        if one.s580.conformity.level == Level::Indicative {
            warnings.push(message!("warning-indicative", campaign = &campaign));
        }
        let days = one.s580.dates.len();
        if days < FEW_DAYS {
            warnings.push(message!(
                "warning-few-days",
                campaign = &campaign,
                days = days
            ));
        }
        if !departures.is_empty() {
            warnings.push(message!(
                "warning-departures",
                campaign = &campaign,
                departures = clauses(departures)
            ));
        }
        if one.tested.estimates_irradiance() {
            warnings.push(message!("warning-estimated", campaign = campaign));
        } else if measured_plane(one) != of_first {
            warnings.push(message!("warning-plane", campaign = campaign));
        }
    }
    warnings
}

/// The plane in which irradiance was measured; one that is not stated is taken as normal to
/// the beam.
fn measured_plane(one: &Assessment) -> Plane {
    let plane = one.tested.campaign.instruments.irradiance_plane;
    plane.unwrap_or(Plane::Normal)
}

fn figure(comparison: &Comparison, names: &[String], words: &Words) -> Figure {
    let read = comparison.campaigns.iter().zip(names).enumerate();
    let read = read.filter_map(|(place, (one, name))| {
        let uncertainty = one.s580.uncertainty()?;
        let Bounds { lower, upper } = uncertainty.interval_w;
        Some(message!(
            "comparison-lines-one",
            campaign = letter(place).to_string(),
            name = name,
            power = fixed(uncertainty.budget.value, 1),
            range = range(lower, upper, 1)
        ))
    });
    let caption = if comparison.campaigns.len() > WITH_BANDS {
        message!("comparison-lines-bars")
    } else {
        message!("comparison-lines-bands")
    };
    Figure {
        file: "lines.svg".to_owned(),
        caption: words.say(caption),
        alt: words.say(message!("comparison-lines-alt", lines = clauses(read))),
    }
}

fn notes(comparison: &Comparison) -> [Message; 8] {
    [
        message!("comparison-note-ratings"),
        message!(
            "comparison-note-suns",
            percent = fixed(ALIKE_IRRADIANCE * 100.0, 0)
        ),
        message!("comparison-note-uncertainty"),
        message!("comparison-note-paired"),
        message!("comparison-note-p", pairs = comparison.pairs.len()),
        message!("comparison-note-causes"),
        message!("comparison-note-needed"),
        message!("comparison-note-reports"),
    ]
}

fn inputs(comparison: &Comparison, words: &Words) -> Vec<Row> {
    let of = |one: &Assessment| {
        let campaign = &one.tested.campaign;
        let row = |(file, sha256): (String, String)| {
            let label = format!("{}/{file}", campaign.name);
            match campaign.outside.contains(&file) {
                true => Row::new(&words.say(message!("input-outside", file = label)), sha256),
                false => Row::new(&label, sha256),
            }
        };
        one.tested.inputs().into_iter().map(row).collect::<Vec<_>>()
    };
    comparison.campaigns.iter().flat_map(of).collect()
}
