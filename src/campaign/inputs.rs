//! Which files decide what comes of a campaign, found out before it is checked.

use std::collections::BTreeSet;
use std::path::Path;

use toml::de::{DeTable, DeValue};

use super::files::InputFile;
use super::find::CAMPAIGN_FILE;
use super::merge::find;
use super::named_files::{NamedFiles, Reach};
use super::patterns::{LogPattern, logs_of, without_here};
use super::read_text::read_text;
use super::shared::find_shared;
use crate::error::Result;

/// Every file that decides what comes of the campaign in a folder, each once: the campaign file,
/// the files of shared keys that hold for it, and the logs and the photo that it names within
/// `reach`, there or not. It need not be a campaign file without faults: of one that is no TOML
/// only the first two are told. Of a campaign that has been read, `Campaign::input_files` says
/// the same, in another order.
///
/// # Errors
/// [`crate::error::Error::Campaign`] for a campaign file that cannot be read, and for a file of
/// shared keys that is a link leading elsewhere.
pub fn inputs_of(folder: &Path, reach: Reach) -> Result<Vec<InputFile>> {
    let file = folder.join(CAMPAIGN_FILE);
    let text = read_text(&file, "campaign file")?.text;
    let mut inputs = vec![InputFile {
        name: CAMPAIGN_FILE.to_owned(),
        path: file,
    }];
    inputs.extend(find_shared(folder)?.into_iter().map(|place| InputFile {
        name: place.name,
        path: place.path,
    }));
    let files = NamedFiles::From(folder, reach);
    let named = DeTable::parse(&text).map(|tree| named_in(tree.get_ref(), files));
    let mut seen = BTreeSet::new();
    for name in named.unwrap_or_default() {
        if !files.forbids(&name) && seen.insert(name.clone()) {
            let path = folder.join(&name);
            inputs.push(InputFile { name, path });
        }
    }
    Ok(inputs)
}

/// The logs and the photo that a campaign file names; of a pattern, what it matches.
fn named_in(tree: &DeTable<'_>, files: NamedFiles<'_>) -> Vec<String> {
    let text = |value: Option<&DeValue<'_>>| Some(value?.as_str()?.to_owned());
    let runs = find(tree, "run").and_then(DeValue::as_array);
    let tables = runs.into_iter().flat_map(|runs| runs.iter());
    let tables: Vec<&DeTable<'_>> = tables.filter_map(|run| run.get_ref().as_table()).collect();
    let of_runs = |key: &'static str| tables.iter().filter_map(move |run| text(find(run, key)));
    let others: Vec<String> = of_runs("weather")
        .chain(text(find(tree, "cooker.photo")))
        .collect();
    let is_literal = |log: &String| LogPattern::of(log, files).is_none();
    let literal: Vec<String> = of_runs("log").filter(is_literal).collect();
    let named = literal
        .iter()
        .chain(&others)
        .map(|name| without_here(name))
        .collect();
    let logs = of_runs("log").flat_map(|log| match LogPattern::of(&log, files) {
        None => vec![log],
        Some(pattern) => logs_of(files, &pattern, &named).unwrap_or_default(),
    });
    logs.chain(others).collect()
}
