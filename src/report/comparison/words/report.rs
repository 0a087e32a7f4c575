//! Every string of a comparison, in the order of its pages.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use super::beside::{BesidePart, beside};
use super::bracketing::extra;
use super::calls::Calls;
use super::campaigns::{CampaignsPart, campaigns};
use super::caveats::caveats;
use super::differences::{DifferencePart, difference};
use super::dry::{DryPart, dry};
use super::heating::{HeatingPart, heating};
use super::lines::{PanelsPart, lines};
use super::matrix::{MatrixPart, matrix};
use super::method::notes;
use super::ranking::{Extra, RankingPart, ranking_part};
use super::ranking_notes::{Medium, ranking_notes};
use super::verdict::{Verdict, verdict};
use crate::comparison::Comparison;
use crate::language::{Message, Phrase, Words, joined, listed};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::finding::Level;
use crate::report::comparison::names::number;
use crate::report::rows::Row;
use crate::report::sections::{Heading, Section, Sections};
use crate::report::words::cautions::{CautionPart, cautions};
use crate::report::words::inputs::{OfCampaign, checkable, input_row, kept_beside};
use crate::report::words::provenance::made_with;
use crate::report::words::tested::spoken_dates;
use crate::report::{Edition, Setting};

/// Places that the subtitle names.
const NAMED_SITES: usize = 2;
/// Testers that the document names as its authors.
const NAMED_AUTHORS: usize = 12;

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
    /// Who tested.
    pub author: String,
    /// Headings of the sections, in their order.
    pub sections: Vec<Heading>,
    pub verdict: Verdict,
    /// `None` without a rating that holds, or one that does not.
    pub ranking: Option<RankingPart>,
    /// How its groups and differences are read on paper; empty without any.
    pub ranking_notes: Vec<String>,
    /// The same on a web page, which has letters in place of brackets.
    pub ranking_notes_web: Vec<String>,
    pub matrix: Option<MatrixPart>,
    /// Which campaigns cannot be told apart, where brackets do not show it; empty elsewhere.
    pub alike: Vec<Row>,
    /// What a reader must know before believing any of it.
    pub caveats: Vec<Row>,
    pub caution: String,
    /// In another language than English: which text governs.
    pub governs: String,
    /// Whether the PDF carries its data, and how anybody checks it.
    pub checkable: String,
    pub lines: Option<PanelsPart>,
    pub heating: Option<HeatingPart>,
    /// `None` where it is not of two.
    pub difference: Option<DifferencePart>,
    /// `None` unless several campaigns have a dry vessel.
    pub dry: Option<DryPart>,
    /// `None` where no pair has another figure in common.
    pub beside: Option<BesidePart>,
    pub campaigns: CampaignsPart,
    pub cautions: CautionPart,
    pub notes: Vec<String>,
    pub made_with: Vec<Row>,
    /// Of each campaign, its files with their SHA-256.
    pub inputs: Vec<InputsOf>,
    /// How those are kept that are not inside; `None`: all are.
    pub kept_beside: Option<String>,
    pub end: String,
}

/// The inputs of a campaign.
#[derive(Debug, Clone, Serialize)]
pub struct InputsOf {
    /// The name of its folder.
    pub campaign: String,
    pub rows: Vec<Row>,
}

/// A comparison in words, with what its drawings need.
pub struct Built {
    pub report: ComparisonReport,
    pub extra: Extra,
    pub calls: Calls,
}

/// Puts a comparison into words.
pub fn build(comparison: &Comparison, edition: &Edition) -> Built {
    let words = &edition.words;
    let calls = Calls::of(comparison);
    let extra = extra(comparison, words);
    let number = number(comparison);
    let beside = beside(comparison, &calls, words);
    let difference = difference(comparison, words);
    let lines = lines(comparison, &calls, words);
    let heating = heating(comparison, &calls, words);
    let dry = dry(comparison, &calls, words);
    let sections = Sections::of_comparison(&[
        (Section::Lines, lines.is_some()),
        (Section::Heating, heating.is_some()),
        (Section::Differences, difference.is_some()),
        (
            Section::Beside,
            beside.is_some() || dry.as_ref().is_some_and(|dry| !dry.is_in_front),
        ),
    ]);
    let verdict = verdict(comparison, &calls, words);
    let say = |phrases: Vec<Phrase>| phrases.into_iter().map(|one| words.say(one)).collect();
    let marks = marks(comparison).into_iter().map(|mark| words.say(mark));
    let all_inputs: Vec<OfCampaign<'_>> = comparison
        .campaigns
        .iter()
        .map(|one| (&one.tested.campaign, one.tested.inputs()))
        .collect();
    let report = ComparisonReport {
        setting: edition.setting(),
        kind: words.say(message!("comparison-kind")),
        title: verdict.title.clone(),
        subtitle: words.say(subtitle(comparison)),
        marks: marks.collect(),
        statement: words.say(message!("comparison-statement")),
        author: words.say(author(comparison)),
        checkable: words.say(checkable(&all_inputs, edition)),
        kept_beside: kept_beside(&all_inputs, edition).map(|said| words.say(said)),
        sections: sections.headings(words),
        verdict,
        ranking: ranking(comparison, &calls, &extra, words),
        ranking_notes: say(ranking_notes(comparison, &extra, Medium::Paper)),
        ranking_notes_web: say(ranking_notes(comparison, &extra, Medium::Web)),
        matrix: matrix(comparison, &calls, words),
        alike: alike(&extra),
        caveats: caveats(comparison, &calls, words),
        lines,
        heating,
        difference,
        dry,
        beside,
        caution: words.say(message!(
            "caution-compared",
            section = sections.number(Section::Cautions)
        )),
        campaigns: campaigns(comparison, &calls, words),
        governs: words.say(message!("caution-governs")),
        cautions: cautions(words),
        notes: say(notes(comparison)),
        made_with: made_with(edition, practice(comparison)),
        inputs: inputs(&all_inputs, edition),
        end: words.say(message!("comparison-end", number = &number)),
        number,
    };
    Built {
        report,
        extra,
        calls,
    }
}

fn ranking(
    comparison: &Comparison,
    calls: &Calls,
    extra: &Extra,
    words: &Words,
) -> Option<RankingPart> {
    let part = ranking_part(&comparison.standings, calls.names(), extra, words);
    (!part.rows.is_empty()).then_some(part)
}

/// Of each rank, the numbers of those from which it cannot be told apart.
fn alike(extra: &Extra) -> Vec<Row> {
    let rows = extra.alike.iter().enumerate();
    let rows = rows.map(|(rank, numbers)| Row::new(&(rank + 1).to_string(), numbers));
    rows.collect()
}

/// How many campaigns of how many cookers, where and when.
fn subtitle(comparison: &Comparison) -> Phrase {
    let count = message!(
        "comparison-count",
        campaigns = comparison.campaigns.len(),
        cookers = count_cookers(comparison)
    );
    let mut sites: Vec<&str> = comparison
        .campaigns
        .iter()
        .map(|one| one.tested.campaign.site.name.as_str())
        .collect();
    sites.sort_unstable();
    sites.dedup();
    let sites = match sites.len() > NAMED_SITES {
        true => message!("comparison-sites", count = sites.len()).into(),
        false => listed(sites),
    };
    let dates = comparison
        .campaigns
        .iter()
        .flat_map(|one| one.tested.all_runs().map(|run| run.date));
    let dates = dates.clone().min().zip(dates.max());
    let dates = dates.map(|(first, last)| spoken_dates(first, last));
    let parts = [Phrase::from(count), sites].into_iter().chain(dates);
    joined(parts, " · ")
}

/// Cookers of one name are one, unless two marks are stated that tell them apart.
fn count_cookers(comparison: &Comparison) -> usize {
    let campaigns = comparison.campaigns.iter();
    let cookers = campaigns.map(|one| &one.tested.campaign.cooker);
    let mut known: BTreeMap<&str, BTreeSet<&String>> = BTreeMap::new();
    for cooker in cookers {
        let marks = known.entry(&cooker.name).or_default();
        marks.extend(&cooker.identification);
    }
    known.values().map(|marks| marks.len().max(1)).sum()
}

/// Who tested, each once.
fn author(comparison: &Comparison) -> Phrase {
    let mut testers: Vec<&String> = Vec::new();
    for one in &comparison.campaigns {
        let tester = one.tested.campaign.tester.as_ref();
        if let Some(tester) = tester.filter(|tester| !testers.contains(tester)) {
            testers.push(tester);
        }
    }
    match testers.len() {
        0 => message!("comparison-not-stated").into(),
        count if count > NAMED_AUTHORS => message!("comparison-authors", count = count).into(),
        _ => joined(testers, ", "),
    }
}

fn marks(comparison: &Comparison) -> Vec<Message> {
    let is_indicative = |one: &Assessment| one.s580.conformity.level == Level::Indicative;
    let mut campaigns = comparison.campaigns.iter();
    let marks = [
        (comparison.is_mixed(), message!("comparison-mark-mixed")),
        (
            !comparison.ranking.not_valid.is_empty(),
            message!("comparison-mark-not-valid"),
        ),
        (
            comparison.is_indicative(),
            match comparison.campaigns.iter().all(is_indicative) {
                true => message!("level-indicative"),
                false => message!("comparison-mark-indicative"),
            },
        ),
        (
            campaigns.any(|one| one.tested.campaign.demonstration),
            message!("comparison-mark-invented"),
        ),
    ];
    let marks = marks.into_iter().filter(|(is_so, _)| *is_so);
    marks.map(|(_, mark)| mark).collect()
}

/// What the comparison is made by.
fn practice(comparison: &Comparison) -> Message {
    match comparison.rated().next() {
        Some(_) => message!("comparison-practice"),
        None => message!("comparison-practice-no-rating"),
    }
}

fn inputs(all: &[OfCampaign<'_>], edition: &Edition) -> Vec<InputsOf> {
    let of = |(campaign, inputs): &OfCampaign<'_>| InputsOf {
        campaign: campaign.name.clone(),
        rows: inputs
            .iter()
            .map(|input| input_row(campaign, input, edition))
            .collect(),
    };
    all.iter().map(of).collect()
}
