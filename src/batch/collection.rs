//! What calls have left in trees of outputs: the records, and the tables of all their campaigns.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use jiff::Timestamp;

use super::record::{ENDING, Record};
use crate::campaign::find::place_in;
use crate::error::{Error, Problem, Problems, Result, why};
use crate::report::data::tables::collection::{Fault, Member, collect_table, package};
use crate::report::data::tables::shards::DataSet;
use crate::report::files::{FileFacts, Output};

/// What to do about a campaign without rows.
const REPORT_AGAIN: &str = "report it again with --format parquet";

/// A campaign's outputs in a tree.
pub struct Kept {
    /// Root of the tree.
    pub root: PathBuf,
    pub record: Record,
}

impl Kept {
    /// Branch and name.
    pub fn place(&self) -> String {
        place_in(&self.record.branch, self.record.name())
    }

    /// Whether it was reported with rows for the data sets.
    pub fn has_rows(&self) -> bool {
        DataSet::ALL
            .into_iter()
            .all(|set| self.shard(set).is_some())
    }

    /// Its file in a data set; `None` where it was reported without.
    fn shard(&self, set: DataSet) -> Option<&FileFacts> {
        let folder = format!("{}/branch=", set.name());
        let mut outputs = self.record.outputs.iter();
        outputs.find(|output| output.name.starts_with(&folder))
    }
}

/// Every campaign's outputs below the roots, in the order of their branches and names. One that
/// lies below two roots as the same files counts once.
///
/// # Errors
/// [`Error::Usage`] for a root that cannot be listed, one without a record, and two campaigns
/// of one place whose outputs are not the same.
pub fn kept_below(roots: &[PathBuf]) -> Result<Vec<Kept>> {
    let mut problems = Problems::default();
    let mut found: BTreeMap<(String, String), Kept> = BTreeMap::new();
    for root in roots {
        let mut records = Vec::new();
        if let Err(problem) = walk(root, &mut records) {
            problems.push(problem);
            continue;
        }
        if records.is_empty() {
            let what = format!("holds no record of a report (NAME{ENDING})");
            problems.push(Problem::at(root, what).hint("name the --out folder of a report"));
        }
        for record in records {
            let key = (record.branch.clone(), record.name().to_owned());
            let root = root.clone();
            let kept = Kept { root, record };
            match found.get(&key) {
                Some(other) if other.record != kept.record => {
                    let (place, first) = (kept.place(), other.root.display());
                    let what = format!("\"{place}\" is in {first} too, and is not the same there");
                    let hint = "take one of them away: a campaign counts once";
                    problems.push(Problem::at(&kept.root, what).hint(hint));
                }
                _ => {
                    found.entry(key).or_insert(kept);
                }
            }
        }
    }
    match problems.is_empty() {
        true => Ok(found.into_values().collect()),
        false => Err(Error::Usage(problems)),
    }
}

/// The tables of campaigns and intervals, and the package that describes them and, where the
/// campaigns' own files lie below `out`, those too.
///
/// # Errors
/// [`Error::Usage`] for a campaign whose rows are missing or changed, or have the columns of
/// another version.
pub fn tables(all: &[Kept], out: &Path, issued: Timestamp) -> Result<Vec<Output>> {
    let members: Vec<Member> = all.iter().map(|kept| member(kept, out)).collect();
    let shards = DataSet::ALL.into_iter().map(|set| (set, shards(all, set)));
    let mut outputs = Vec::new();
    for (set, shards) in shards {
        let shards = shards?;
        let read = |at: usize| read_shard(&shards[at]);
        let fault = |at: usize, fault: Fault| {
            let what = match fault {
                Fault::OtherColumns => "has the columns of another version".to_owned(),
                Fault::Unreadable(said) => format!("cannot be read as Parquet: {said}"),
            };
            Error::Usage(
                Problem::at(&shards[at].path, what)
                    .hint(REPORT_AGAIN)
                    .into(),
            )
        };
        outputs.push(collect_table(set, &members, read, fault)?);
    }
    let package = package(&members, &outputs, issued)?;
    outputs.extend(package);
    Ok(outputs)
}

/// A campaign of the package; files of it count that lie below `out`.
fn member(kept: &Kept, out: &Path) -> Member {
    let root = fs::canonicalize(&kept.root).unwrap_or_else(|_| kept.root.clone());
    let out = fs::canonicalize(out).unwrap_or_else(|_| out.to_path_buf());
    let above = root.strip_prefix(&out).ok();
    let above = above.and_then(|above| above.to_str());
    let files = above.map_or_else(Vec::new, |above| {
        let outputs = kept.record.outputs.iter().cloned();
        let placed = outputs.map(|file| FileFacts {
            name: place_in(&above.replace('\\', "/"), &file.name),
            ..file
        });
        placed.collect()
    });
    Member {
        place: kept.place(),
        is_invented: kept.record.brief.standing.is_invented,
        files,
    }
}

/// A campaign's file in a data set.
struct Shard<'k> {
    path: PathBuf,
    facts: &'k FileFacts,
}

/// The file of every campaign in a data set.
///
/// # Errors
/// [`Error::Usage`] for campaigns whose rows were not asked for, all at once.
fn shards(all: &[Kept], set: DataSet) -> Result<Vec<Shard<'_>>> {
    let mut problems = Problems::default();
    let mut shards = Vec::new();
    for kept in all {
        match kept.shard(set) {
            Some(facts) => shards.push(Shard {
                path: kept.root.join(&facts.name),
                facts,
            }),
            None => {
                let path = kept.root.join(kept.place());
                let what = "was reported without --format parquet";
                problems.push(Problem::at(&path, what).hint(REPORT_AGAIN));
            }
        }
    }
    match problems.is_empty() {
        true => Ok(shards),
        false => Err(Error::Usage(problems)),
    }
}

fn read_shard(shard: &Shard<'_>) -> Result<Vec<u8>> {
    let refused = |what: String| {
        let problem = Problem::at(&shard.path, what);
        Error::Usage(problem.hint(REPORT_AGAIN).into())
    };
    let bytes = fs::read(&shard.path)
        .map_err(|error| refused(format!("cannot be read: {}", why(&error))))?;
    match crate::hash::sha256_hex(&bytes) == shard.facts.sha256 {
        true => Ok(bytes),
        false => Err(refused("is not as it was written".to_owned())),
    }
}

/// Records in a folder and below it.
fn walk(folder: &Path, records: &mut Vec<Record>) -> std::result::Result<(), Problem> {
    let unlisted = |error: std::io::Error| {
        Problem::at(folder, format!("cannot be listed: {}", why(&error)))
            .hint("name the --out folder of a report")
    };
    let mut below = Vec::new();
    for entry in fs::read_dir(folder).map_err(unlisted)? {
        let entry = entry.map_err(unlisted)?;
        let name = entry.file_name();
        let name = name.to_string_lossy();
        let kind = entry.file_type().map_err(unlisted)?;
        if kind.is_dir() {
            below.push(entry.path());
        } else if kind.is_file() && name.ends_with(ENDING) {
            let record = Record::read(&entry.path()).ok_or_else(|| {
                Problem::at(&entry.path(), "is no record that this version reads")
                    .hint("report that campaign again, or take the file away")
            })?;
            records.push(record);
        }
    }
    below.iter().try_for_each(|path| walk(path, records))
}
