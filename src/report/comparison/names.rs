//! What a comparison and its campaigns are called.

use crate::comparison::Comparison;
use crate::comparison::standing::Standing;
use crate::procedure::Assessment;
use crate::report::number::short_number;

/// Number of a comparison, from the inputs of all campaigns, their order and our version.
pub fn number(comparison: &Comparison) -> String {
    let inputs = comparison
        .campaigns
        .iter()
        .flat_map(|one| one.tested.inputs());
    let mut parts: Vec<String> = inputs.map(|input| input.sha256).collect();
    parts.push(format!("{:?}", comparison.baseline));
    short_number(&parts)
}

/// Letters of a campaign in files: A, B … Z, AA, AB … as columns of a spreadsheet have them.
pub fn letter(place: usize) -> String {
    let last = char::from(b'A' + (place % 26) as u8);
    match place / 26 {
        0 => last.to_string(),
        before => letter(before - 1) + &last.to_string(),
    }
}

/// The letter of a group: a, b … z, aa …
pub fn group_letter(group: usize) -> String {
    letter(group).to_lowercase()
}

/// Name of each campaign: its title, with that of its folder where two have one.
pub fn titles(standings: &[Standing]) -> Vec<String> {
    let is_shared = |title: &str| {
        let mut alike = standings.iter().filter(|one| one.title == title);
        alike.nth(1).is_some()
    };
    let name = |one: &Standing| match is_shared(&one.title) {
        true => format!("{} ({})", one.title, one.campaign),
        false => one.title.clone(),
    };
    standings.iter().map(name).collect()
}

/// The same of campaigns.
pub fn names(campaigns: &[Assessment]) -> Vec<String> {
    titles(&campaigns.iter().map(Standing::of).collect::<Vec<_>>())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_go_on_after_z() {
        let places = [0, 25, 26, 27, 51, 52, 199, 701, 702];
        let expected = ["A", "Z", "AA", "AB", "AZ", "BA", "GR", "ZZ", "AAA"];
        assert_eq!(places.map(letter), expected);
    }
}
