//! A campaign's own limits: whether they make sense, and what they do to the level.

use super::finding::{FindingCode, S580Finding};
use super::in_force::Limits;
use super::intervals::Interval;
use super::limits::{LimitKey, PRACTICE, S580Limit};
use crate::language::{Phrase, listed};
use crate::message;
use crate::procedure::limit::{Allowed, SLACK, Standing};

/// How an own limit compares with the practice's.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Change {
    Looser,
    Tighter,
}

/// What a campaign's own limits do to the level, looser and tighter ones.
pub fn own_limit_findings(
    limits: &Limits,
    intervals: &[Interval],
    boiling_point_c: f64,
) -> Vec<S580Finding> {
    let mut relaxed_requirements = Vec::new();
    let mut relaxed_recommendations = Vec::new();
    let mut tightened = Vec::new();
    for (own, practice) in limits
        .rows
        .iter()
        .zip(PRACTICE)
        .filter(|(own, _)| own.changed)
    {
        let text = message!(
            "finding-own-limit",
            what = own.what(),
            value = own.amount(),
            practice = spoken_practice(own, practice)
        );
        match (
            compare(own, practice, intervals, boiling_point_c),
            practice.standing,
        ) {
            (Some(Change::Looser), Standing::Requirement) => relaxed_requirements.push(text),
            (Some(Change::Looser), Standing::Recommendation) => relaxed_recommendations.push(text),
            (Some(Change::Tighter), _) => tightened.push(text),
            (None, _) => {}
        }
    }
    let mut findings = Vec::new();
    let remedy = || message!("finding-own-limit-remedy");
    if !relaxed_requirements.is_empty() {
        findings.push(S580Finding::indicative(
            FindingCode::RequirementRelaxed,
            message!(
                "finding-requirement-relaxed",
                limits = listed(relaxed_requirements)
            ),
            remedy(),
        ));
    }
    if !relaxed_recommendations.is_empty() {
        findings.push(S580Finding::note(
            FindingCode::RecommendationRelaxed,
            message!(
                "finding-recommendation-relaxed",
                limits = listed(relaxed_recommendations)
            ),
            remedy(),
        ));
    }
    if !tightened.is_empty() {
        findings.push(S580Finding::note(
            FindingCode::LimitTightened,
            message!("finding-limit-tightened", limits = listed(tightened)),
            remedy(),
        ));
    }
    findings
}

fn spoken_practice(own: &S580Limit, practice: &S580Limit) -> Phrase {
    if own.key == practice.key {
        practice.amount()
    } else {
        message!(
            "finding-practice-limit",
            what = practice.what(),
            value = practice.amount()
        )
        .into()
    }
}

/// Looser if it lies beyond the practice's limit; a fixed end of the water window, if it
/// does so for any interval.
fn compare(
    own: &S580Limit,
    practice: &S580Limit,
    intervals: &[Interval],
    boiling_point_c: f64,
) -> Option<Change> {
    let practice_values: Vec<f64> = match own.key {
        LimitKey::WaterMin => intervals
            .iter()
            .filter_map(|interval| Some(interval.measured.ambient?.mean + practice.value))
            .collect(),
        LimitKey::WaterMax => vec![boiling_point_c - practice.value],
        _ => vec![practice.value],
    };
    let is_looser = |value: &f64| match own.allowed {
        Allowed::AtLeast => own.value < value - SLACK,
        Allowed::AtMost => own.value > value + SLACK,
        Allowed::Within(_) => false,
    };
    let is_tighter = |value: &f64| (own.value - value).abs() > SLACK && !is_looser(value);
    if practice_values.iter().any(is_looser) {
        Some(Change::Looser)
    } else if practice_values.iter().any(is_tighter) {
        Some(Change::Tighter)
    } else {
        None
    }
}
