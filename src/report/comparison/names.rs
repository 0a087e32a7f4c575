//! What a comparison and its campaigns are called.

use crate::comparison::Comparison;
use crate::procedure::Assessment;
use crate::report::number::short_number;

/// Number of a comparison, from the inputs of all campaigns, their order and our version.
pub fn number(comparison: &Comparison) -> String {
    let inputs = comparison
        .campaigns
        .iter()
        .flat_map(|one| one.tested.inputs());
    let mut parts: Vec<String> = inputs.map(|(_, sha256)| sha256).collect();
    parts.push(format!("{:?}", comparison.baseline));
    short_number(&parts)
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
        by(|one| &one.tested.campaign.cooker.name),
        by(|one| &one.tested.campaign.title),
    ]
    .into_iter()
    .find(are_distinct)
    .unwrap_or_else(|| by(|one| &one.tested.campaign.name))
}
