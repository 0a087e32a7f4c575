//! Who issued a report, who signs it, and by what it is known.

use serde::Serialize;

use crate::language::{Words, date};
use crate::message;
use crate::procedure::Assessment;
use crate::report::Edition;
use crate::report::number::report_number;
use crate::report::rows::Row;

/// Hashes of which page one gives the beginning, and digits of each.
const HASHES: usize = 8;
const DIGITS: usize = 8;

/// Above the title.
#[derive(Debug, Clone, Serialize)]
pub struct Letterhead {
    /// Who answers for the test; else who tested, or what the document is.
    pub issuer: String,
    /// For whom it is; empty if that is not stated.
    pub client: String,
    pub number: String,
    pub issued: String,
}

/// Puts the letterhead into words; `kind` stands where neither laboratory nor tester is stated.
pub fn letterhead(assessment: &Assessment, kind: &str, edition: &Edition) -> Letterhead {
    let campaign = &assessment.tested.campaign;
    let wishes = &campaign.report;
    let words = &edition.words;
    let issuer = wishes.laboratory.as_ref().or(campaign.tester.as_ref());
    let client = match (&campaign.client, &wishes.client_contact) {
        (Some(client), Some(contact)) => words.say(message!(
            "letterhead-client-contact",
            client = client,
            contact = contact
        )),
        (Some(client), None) => words.say(message!("letterhead-client", client = client)),
        (None, _) => String::new(),
    };
    let zone = campaign.site.time_zone.clone();
    let issued = edition.issued.to_zoned_datetime(zone).date();
    Letterhead {
        issuer: issuer.cloned().unwrap_or_else(|| kind.to_owned()),
        client,
        number: words.say(message!(
            "letterhead-number",
            number = report_number(assessment)
        )),
        issued: words.say(message!("letterhead-issued", date = date(issued))),
    }
}

/// Who tested and who authorises, with room to sign; a name is empty if it is not stated.
pub fn signatures(assessment: &Assessment, words: &Words) -> Vec<Row> {
    let campaign = &assessment.tested.campaign;
    let name = |name: &Option<String>| name.clone().unwrap_or_default();
    vec![
        Row::said(words, message!("sign-tested"), name(&campaign.tester)),
        Row::said(
            words,
            message!("sign-authorised"),
            name(&campaign.report.authorised_by),
        ),
        Row::said(words, message!("sign-date"), ""),
    ]
}

/// The beginnings of the inputs' SHA-256, and where they stand whole.
pub fn hashes(assessment: &Assessment, provenance: usize, words: &Words) -> String {
    let inputs = assessment.tested.inputs();
    let begun = inputs.iter().take(HASHES);
    let begun: Vec<&str> = begun.map(|input| &input.sha256[..DIGITS]).collect();
    let more = inputs.len() - begun.len();
    let said = if more > 0 {
        message!("letterhead-hashes-more", more = more)
    } else {
        message!("letterhead-hashes")
    };
    words.say(
        said.with("hashes", begun.join(" "))
            .with("section", provenance),
    )
}
