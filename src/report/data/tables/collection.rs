//! The campaigns of many calls as tables, with a data package that says what is in them.

use std::collections::BTreeSet;

use jiff::Timestamp;

use super::columns::Table;
use super::data_package::{self, DataPackage, Resource, csv_schema, plain_name};
use super::parquet::{ParquetFile, read_rows};
use super::shards::DataSet;
use crate::error::Result;
use crate::report::data::rating_file::SCHEMA_ID;
use crate::report::files::{FileFacts, Output};

/// What the tables are called together.
pub const TABLES: &str = "datapackage";
/// What the tables are, whatever is in them.
const WHAT: &str = "Ratings of solar cookers by water-heating tests, and the intervals that they \
    rest on. What was not measured is null, never zero.";
/// A row group has so many rows, or a few more.
const GROUP: usize = 10_000;

/// One campaign of a collection.
pub struct Member {
    /// Branch and name.
    pub place: String,
    pub is_invented: bool,
    /// Files of it alone that lie below the package, by their paths from there.
    pub files: Vec<FileFacts>,
}

/// Why a campaign's file in a data set is not taken.
pub enum Fault {
    /// Its columns are those of another version.
    OtherColumns,
    /// What is wrong with it.
    Unreadable(String),
}

/// Collects a data set into one table: `read` gives the bytes of each campaign's file in it.
///
/// # Errors
/// What `read` says; `fault` makes an error of what is wrong with a file.
pub fn collect_table(
    set: DataSet,
    members: &[Member],
    mut read: impl FnMut(usize) -> Result<Vec<u8>>,
    fault: impl Fn(usize, Fault) -> crate::error::Error,
) -> Result<Output> {
    let mut table = set.table();
    let mut file = ParquetFile::begin(&table.headings, &description(members))?;
    for at in 0..members.len() {
        match read_rows(read(at)?, &table.headings) {
            Ok(Some(rows)) => table.rows.extend(rows),
            Ok(None) => return Err(fault(at, Fault::OtherColumns)),
            Err(said) => return Err(fault(at, Fault::Unreadable(said))),
        }
        if table.rows.len() >= GROUP || at + 1 == members.len() {
            file.add(&table)?;
            table.rows.clear();
        }
    }
    Ok(Output {
        name: format!("{}.parquet", set.name()),
        bytes: file.finish()?,
    })
}

/// The package that describes tables and the files of the campaigns that lie below it.
///
/// # Errors
/// [`crate::error::Error::Internal`] if it has no JSON form.
pub fn package(members: &[Member], tables: &[Output], issued: Timestamp) -> Result<Vec<Output>> {
    let description = description(members);
    let titles = ["Campaigns: one row a rating", "Intervals of all campaigns"];
    let all = DataSet::ALL.into_iter().zip(titles).zip(tables);
    let mut resources: Vec<Resource> = all
        .map(|((set, title), output)| {
            let (facts, table) = (output.facts(), set.table());
            Resource::parquet(set.name(), &facts, title, &description, &table)
        })
        .collect();
    resources.extend(resources_of_members(members));
    let package = DataPackage::new(description, issued, resources);
    let has_csv = members.iter().any(|member| !member.files.is_empty());
    let intervals: Table = DataSet::Intervals.table();
    let mut outputs = vec![Output {
        name: data_package::FILE.to_owned(),
        bytes: package.to_text()?.into_bytes(),
    }];
    if has_csv {
        outputs.push(csv_schema(&intervals)?);
    }
    Ok(outputs)
}

/// What the data are; where they are invented it is said first.
fn description(members: &[Member]) -> String {
    let invented: Vec<&str> = members
        .iter()
        .filter(|member| member.is_invented)
        .map(|member| member.place.as_str())
        .collect();
    match invented.as_slice() {
        [] => WHAT.to_owned(),
        all if all.len() == members.len() => format!("INVENTED DATA. {WHAT}"),
        some => format!("INVENTED DATA in part: {}. {WHAT}", some.join(", ")),
    }
}

fn resources_of_members(members: &[Member]) -> Vec<Resource> {
    let mut resources = Vec::new();
    let mut taken = BTreeSet::new();
    for member in members {
        let mut short = plain_name(&member.place);
        while !taken.insert(short.clone()) {
            short.push_str("-2");
        }
        let mark = if member.is_invented {
            "INVENTED DATA. "
        } else {
            ""
        };
        for file in &member.files {
            let place = &member.place;
            if file.name.ends_with(".intervals.csv") {
                resources.push(Resource::csv(
                    format!("intervals-{short}"),
                    file,
                    format!("Intervals of {place}"),
                    format!("{mark}One row an interval, used and set aside."),
                ));
            } else if file.name.ends_with(".rating.json") {
                resources.push(Resource::json(
                    format!("rating-{short}"),
                    file,
                    format!("Rating of {place}"),
                    format!("{mark}The whole result, by the JSON Schema {SCHEMA_ID}."),
                ));
            }
        }
    }
    resources
}
