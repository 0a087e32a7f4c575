//! Every string of a comparison, in the order of its pages.

use serde::Serialize;

use super::beside::{BesidePart, beside, figures_verdict};
use super::causes::cause;
use super::differences::{DifferencesPart, differences, verdict};
use super::dry::{DryPart, dry};
use super::tables::{CampaignPart, FigureTable, campaigns, per_unit_table, rating_table};
use crate::campaign::model::Plane;
use crate::comparison::Comparison;
use crate::comparison::pair::ALIKE_IRRADIANCE;
use crate::language::{Message, Phrase, Words, clauses, date, fixed, listed, range};
use crate::message;
use crate::procedure::Assessment;
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
    /// The lines of the ratings; `None` without any.
    pub figure: Option<Figure>,
    /// `None` without a rating.
    pub ratings: Option<FigureTable>,
    pub per_unit: Option<FigureTable>,
    /// `None` unless several campaigns have a dry vessel.
    pub dry: Option<DryPart>,
    pub caution: String,
    /// Whether the PDF carries its data, and how anybody checks it.
    pub checkable: String,
    pub differences: DifferencesPart,
    /// `None` where no pair has another figure in common.
    pub beside: Option<BesidePart>,
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
    let beside = beside(comparison, words);
    let sections = Sections::of_comparison(!comparison.pairs.is_empty(), beside.is_some());
    let has_ratings = comparison.rated().next().is_some();
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
        figure: has_ratings.then(|| figure(comparison, &names, words)),
        ratings: has_ratings.then(|| rating_table(comparison, &names, words)),
        per_unit: has_ratings.then(|| per_unit_table(comparison, words)),
        dry: dry(comparison, words),
        beside,
        caution: words.say(message!(
            "caution-compared",
            section = sections.number(Section::Cautions)
        )),
        differences: differences(comparison, words),
        campaigns: campaigns(comparison, &names, words),
        cautions: cautions(words),
        notes: notes(comparison)
            .into_iter()
            .map(|note| words.say(note))
            .collect(),
        made_with: made_with(edition, practice(has_ratings)),
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
        .flat_map(|one| one.tested.all_runs().map(|run| run.date));
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
    let mut sentences: Vec<Phrase> = comparison
        .figures
        .iter()
        .take(SENTENCES)
        .map(
            |figures| match comparison.pair_of(figures.first, figures.second) {
                Some(pair) => verdict(comparison, pair, names),
                None => figures_verdict(comparison, figures, names),
            },
        )
        .collect();
    if let ([only], [_]) = (pairs.as_slice(), comparison.figures.as_slice()) {
        sentences.push(cause(only));
    }
    let mut campaigns = comparison.campaigns.iter();
    if campaigns.all(|one| one.tested.heats_no_water()) {
        sentences.push(message!("headline-no-water-means").into());
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
        let is_rated = one.s580.rated.is_some();
        if !is_rated && comparison.rated().next().is_some() {
            warnings.push(message!("warning-no-rating", campaign = &campaign));
        }
        if is_rated && one.s580.conformity.level.falls_short() {
            warnings.push(message!("warning-indicative", campaign = &campaign));
        }
        let days = one.s580.dates.len();
        if is_rated && days < FEW_DAYS {
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

/// What the comparison is made by.
fn practice(has_ratings: bool) -> Message {
    match has_ratings {
        true => message!("comparison-practice"),
        false => message!("comparison-practice-no-rating"),
    }
}

fn notes(comparison: &Comparison) -> Vec<Message> {
    let of_ratings = (!comparison.pairs.is_empty()).then(|| notes_on_ratings(comparison));
    let mut pairs = comparison.figures.iter();
    let of_figures = pairs.any(|pair| !pair.figures.is_empty()).then(|| {
        [
            message!("beside-note-difference"),
            message!("beside-note-alike"),
            message!("beside-note-pairs", pairs = comparison.figures.len()),
        ]
    });
    let of_ratings = of_ratings.into_iter().flatten();
    of_ratings
        .chain(of_figures.into_iter().flatten())
        .chain([message!("comparison-note-reports")])
        .collect()
}

fn notes_on_ratings(comparison: &Comparison) -> [Message; 7] {
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
