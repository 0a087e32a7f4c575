//! Every string of a comparison, in the order of its pages.

use serde::Serialize;

use super::differences::{DifferencesPart, differences, shape_words, verdict};
use super::tables::{CampaignPart, FigureTable, campaigns, per_unit_table, rating_table};
use crate::comparison::Comparison;
use crate::procedure::Assessment;
use crate::report::cautions::{CautionPart, cautions};
use crate::report::figures::compared_lines::WITH_BANDS;
use crate::report::model::provenance::{made_with, short_number};
use crate::report::model::report::{Figure, Row};
use crate::report::{Edition, Setting};
use crate::units::{counted, listed, range, spoken_date};

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
    pub sentences: Vec<String>,
    /// What a reader must know before believing them.
    pub warnings: Vec<String>,
    pub figure: Figure,
    pub ratings: FigureTable,
    pub per_unit: FigureTable,
    pub caution: String,
    pub differences: DifferencesPart,
    pub campaigns: Vec<CampaignPart>,
    pub cautions: CautionPart,
    pub notes: Vec<String>,
    pub made_with: Vec<Row>,
    pub inputs: Vec<Row>,
    pub end: String,
}

/// Letter of a campaign: A, B, C …
pub fn letter(place: usize) -> char {
    char::from(b'A' + place as u8)
}

/// Name of each campaign: its cooker's where these differ, else its title, else its folder's.
pub fn names(campaigns: &[Assessment]) -> Vec<String> {
    let by = |name: fn(&Assessment) -> &str| -> Vec<String> {
        campaigns.iter().map(|one| name(one).to_owned()).collect()
    };
    let are_distinct = |names: &Vec<String>| {
        let mut sorted = names.clone();
        sorted.sort();
        sorted.dedup();
        sorted.len() == names.len()
    };
    [
        by(|one| &one.campaign.cooker.name),
        by(|one| &one.campaign.title),
    ]
    .into_iter()
    .find(are_distinct)
    .unwrap_or_else(|| by(|one| &one.campaign.name))
}

/// Number of a comparison, from the inputs of all campaigns, their order and our version.
pub fn number(comparison: &Comparison) -> String {
    let inputs = comparison.campaigns.iter().flat_map(Assessment::inputs);
    let mut parts: Vec<String> = inputs.map(|(_, sha256)| sha256).collect();
    parts.push(format!("{:?}", comparison.baseline));
    short_number(&parts)
}

/// Puts a comparison into words.
pub fn build(comparison: &Comparison, edition: &Edition) -> ComparisonReport {
    let names = names(&comparison.campaigns);
    let number = number(comparison);
    ComparisonReport {
        setting: edition.setting(),
        kind: "Solar cookers compared".to_owned(),
        title: title(&names),
        subtitle: subtitle(comparison),
        marks: marks(comparison),
        statement: "Results relate only to the cookers as tested. Reproduce only in full."
            .to_owned(),
        author: String::new(),
        sentences: sentences(comparison, &names),
        warnings: warnings(comparison),
        figure: figure(comparison, &names),
        ratings: rating_table(comparison, &names),
        per_unit: per_unit_table(comparison),
        caution: "Hot surfaces and steam burn, the focus can blind and start fires, and these ratings say nothing about food safety. Read the cautions in section 3 before you cook. Local codes and licensed practice come first.".to_owned(),
        differences: differences(comparison),
        campaigns: campaigns(comparison, &names),
        cautions: cautions(&edition.words),
        notes: notes(comparison),
        made_with: made_with(edition.issued, "ASAE S580.1 for each rating; JCGM 100:2008 for the differences"),
        inputs: inputs(comparison),
        end: format!("End of report {number}"),
        number,
    }
}

fn title(names: &[String]) -> String {
    let all = listed(names);
    if all.chars().count() <= LONGEST_TITLE {
        all
    } else {
        format!("{} compared", counted(names.len(), "solar cooker"))
    }
}

fn subtitle(comparison: &Comparison) -> String {
    let mut sites: Vec<&str> = comparison
        .campaigns
        .iter()
        .map(|one| one.campaign.site.name.as_str())
        .collect();
    sites.dedup();
    let dates = comparison
        .campaigns
        .iter()
        .flat_map(|one| one.runs.iter().map(|run| run.date));
    let dates = match (dates.clone().min(), dates.max()) {
        (Some(first), Some(last)) if first == last => spoken_date(first),
        (Some(first), Some(last)) => format!("{} to {}", spoken_date(first), spoken_date(last)),
        _ => String::new(),
    };
    let sites = if sites.len() > 3 {
        counted(sites.len(), "site")
    } else {
        listed(&sites)
    };
    format!(
        "{} · {sites} · {dates}",
        counted(comparison.campaigns.len(), "campaign")
    )
}

fn marks(comparison: &Comparison) -> Vec<String> {
    let mut marks = Vec::new();
    if comparison.is_mixed() {
        marks.push("Mixed procedures or limits".to_owned());
    }
    if comparison.is_indicative() {
        marks.push("Indicative in part".to_owned());
    }
    if comparison
        .campaigns
        .iter()
        .any(|one| one.campaign.demonstration)
    {
        marks.push("Invented data, for demonstration".to_owned());
    }
    marks
}

fn sentences(comparison: &Comparison, names: &[String]) -> Vec<String> {
    let pairs = &comparison.pairs;
    let mut sentences: Vec<String> = pairs
        .iter()
        .take(SENTENCES)
        .map(|pair| verdict(comparison, pair, names))
        .collect();
    if let [only] = pairs.as_slice() {
        sentences.push(shape_words(only));
    }
    if pairs.len() > SENTENCES {
        let shown = pairs.iter().filter(|pair| pair.is_shown()).count();
        sentences.push(format!(
            "In all {} of {} show a real difference; section 1 has every one.",
            shown,
            counted(pairs.len(), "pair")
        ));
    }
    sentences
}

fn warnings(comparison: &Comparison) -> Vec<String> {
    let mut warnings = Vec::new();
    for (place, (one, departures)) in comparison
        .campaigns
        .iter()
        .zip(&comparison.departures)
        .enumerate()
    {
        let level = one.conformity.level;
        if level == crate::procedure::conformity::Level::Indicative {
            warnings.push(format!(
                "{} is only indicative: a difference from it is no better than its rating.",
                letter(place)
            ));
        }
        let days = one.used_dates().len();
        if days < FEW_DAYS {
            warnings.push(format!(
                "{} was tested on {} only: how much its days differ is hardly known, and its intervals may be too narrow.",
                letter(place),
                counted(days, "day")
            ));
        }
        if !departures.is_empty() {
            warnings.push(format!(
                "{} was tested by other limits than A, and is compared all the same: {}.",
                letter(place),
                departures.join("; ")
            ));
        }
        if one.estimates_irradiance() {
            warnings.push(format!(
                "The irradiance of {} is estimated, not measured.",
                letter(place)
            ));
            continue;
        }
        let plane = one.campaign.instruments.irradiance_plane;
        let of_first = comparison.campaigns[0]
            .campaign
            .instruments
            .irradiance_plane;
        if plane.unwrap_or(crate::campaign::model::Plane::Normal)
            != of_first.unwrap_or(crate::campaign::model::Plane::Normal)
        {
            warnings.push(format!(
                "The irradiance of {} was measured in another plane than that of A; no uncertainty here covers that.",
                letter(place)
            ));
        }
    }
    warnings
}

fn figure(comparison: &Comparison, names: &[String]) -> Figure {
    let read: Vec<String> = comparison
        .campaigns
        .iter()
        .zip(names)
        .enumerate()
        .filter_map(|(place, (one, name))| {
            let budget = &one.uncertainty.as_ref()?.budget;
            Some(format!(
                "{} ({name}) {} watts, 95 percent {} watts",
                letter(place),
                crate::units::fixed(budget.power_w, 1),
                range(
                    budget.power_w - budget.expanded_w(),
                    budget.power_w + budget.expanded_w(),
                    1
                )
            ))
        })
        .collect();
    Figure {
        file: "lines.svg".to_owned(),
        caption: format!(
            "Lines over the temperature differences that were observed, thin beyond, with {} of scatter, days and instruments. Errors that cookers share are in every one but cancel in a difference, so two that overlap can still differ.",
            if comparison.campaigns.len() > WITH_BANDS {
                "95 % bars at 50 K"
            } else {
                "95 % bands"
            }
        ),
        alt: format!(
            "Lines of standardised cooking power in watts against temperature difference in kelvin. At 50 kelvin: {}.",
            read.join("; ")
        ),
    }
}

fn notes(comparison: &Comparison) -> Vec<String> {
    vec![
        "A difference is that of the lines at Td = 50 K. Its uncertainty has the scatter and days of both campaigns, and what their instruments do not share. Instruments are one and the same where the campaign files give one id; those without an id count as different, which makes the uncertainty larger. Specific heat is common to all.".to_owned(),
        "Where both were tested on the same days at one site, and days matter, differences are taken day by day, so that what a day does to both cancels.".to_owned(),
        format!(
            "p is the probability of so large a difference if there is none (Student's t, Welch–Satterthwaite); the corrected p allows for {} by Holm's method. A difference is called real where the corrected p is under 0.05.",
            counted(comparison.pairs.len(), "pair")
        ),
        "Slopes and intercepts are compared by analysis of covariance, from scatter and days alone; where days matter every day has an intercept of its own. Instruments that differ could move both by as much as their uncertainty. Their p are not corrected for the number of pairs.".to_owned(),
        "How many more intervals are needed: for a chance of four in five to show a difference of that size at 95 %, if the spread stays as it was seen.".to_owned(),
        "Each rating has its own report, with its readings, conditions and budget.".to_owned(),
    ]
}

fn inputs(comparison: &Comparison) -> Vec<Row> {
    let of = |one: &Assessment| {
        let name = one.campaign.name.clone();
        one.inputs()
            .into_iter()
            .map(move |(file, sha256)| Row::new(&format!("{name}/{file}"), sha256))
    };
    comparison.campaigns.iter().flat_map(of).collect()
}
