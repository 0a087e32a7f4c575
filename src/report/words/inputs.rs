//! The files that a document rests on: which of them are inside it, and how the others are kept.

use crate::campaign::Campaign;
use crate::hash::HashedFile;
use crate::language::{Message, Phrase, short};
use crate::message;
use crate::report::Edition;
use crate::report::rows::Row;

/// A limit is said in these.
const BYTES_PER_MB: f64 = 1e6;

/// Where this version can be got, as the package states it; empty where it does not.
const ADDRESS: &str = env!("CARGO_PKG_REPOSITORY");

/// A campaign with the files that it rests on.
pub type OfCampaign<'c> = (&'c Campaign, Vec<HashedFile>);

/// Whether the PDF carries its data, and how anybody checks it.
pub fn checkable(campaigns: &[OfCampaign<'_>], edition: &Edition) -> Phrase {
    let version = env!("CARGO_PKG_VERSION");
    let said = match (edition.has_attachments, ADDRESS.is_empty()) {
        (false, _) => return message!("checkable-not").into(),
        (true, true) => message!("checkable", version = version),
        (true, false) => message!("checkable-from", version = version, address = ADDRESS),
    };
    match count_beside(campaigns, edition) {
        0 => said.into(),
        _ => message!(
            "checkable-beside",
            said = said,
            limit = largest_log_mb(edition)
        )
        .into(),
    }
}

/// How the logs are kept that the PDF does not carry; `None` where it carries all.
pub fn kept_beside(campaigns: &[OfCampaign<'_>], edition: &Edition) -> Option<Message> {
    match count_beside(campaigns, edition) {
        0 => None,
        count => Some(message!(
            "inputs-beside",
            count = count,
            limit = largest_log_mb(edition)
        )),
    }
}

fn count_beside(campaigns: &[OfCampaign<'_>], edition: &Edition) -> usize {
    let of = |(campaign, inputs): &OfCampaign<'_>| {
        let beside = |input: &&HashedFile| edition.keeps_beside(campaign, input);
        inputs.iter().filter(beside).count()
    };
    campaigns.iter().map(of).sum()
}

fn largest_log_mb(edition: &Edition) -> Phrase {
    short(edition.largest_log as f64 / BYTES_PER_MB)
}

/// A file with its SHA-256, and what is to be known of it; the hash of a photo is that of the
/// picture in the report.
pub fn input_row(campaign: &Campaign, input: &HashedFile, edition: &Edition) -> Row {
    let file = &input.name;
    let label: Phrase = match &campaign.cooker.photo {
        Some(photo) if photo.name == *file => message!("input-photo", file = file).into(),
        _ => file.into(),
    };
    let label: Phrase = match campaign.outside.contains(file) {
        true => message!("input-outside", file = label).into(),
        false => label,
    };
    let label: Phrase = match edition.keeps_beside(campaign, input) {
        true => message!("input-beside", file = label, bytes = input.bytes as usize).into(),
        false => label,
    };
    Row::new(&edition.words.say(label), &input.sha256)
}
