//! The campaigns of one call, gathered into tables.

use std::collections::BTreeSet;

use jiff::Timestamp;

use super::campaigns::{campaign_row, no_campaigns};
use super::columns::Table;
use super::data_package::{self, DataPackage, Resource, plain_name};
use super::intervals::{interval_rows, no_intervals};
use super::parquet::to_parquet;
use crate::error::Result;
use crate::procedure::Assessment;
use crate::report::data::rating_file::SCHEMA_ID;
use crate::report::files::{FileFacts, Output};

/// What the tables of a call are called together.
pub const TABLES: &str = "datapackage";
/// What the tables are, whatever is in them.
const WHAT: &str = "Ratings of solar cookers by water-heating tests, and the intervals that they \
    rest on. What was not measured is null, never zero.";

/// One campaign of a collection.
struct Member {
    name: String,
    is_invented: bool,
    /// What was written of it alone.
    files: Vec<FileFacts>,
}

/// Both tables, and what was written beside them.
pub struct Collection {
    campaigns: Table,
    intervals: Table,
    members: Vec<Member>,
}

impl Default for Collection {
    fn default() -> Self {
        Collection {
            campaigns: no_campaigns(),
            intervals: no_intervals(),
            members: Vec::new(),
        }
    }
}

impl Collection {
    /// Adds a campaign, with what was written of it alone.
    pub fn add(&mut self, campaign: &Assessment, files: Vec<FileFacts>) {
        self.campaigns.rows.push(campaign_row(campaign));
        self.intervals.rows.extend(interval_rows(campaign));
        self.members.push(Member {
            name: campaign.tested.campaign.name.clone(),
            is_invented: campaign.tested.campaign.demonstration,
            files,
        });
    }

    /// The tables, and the package that describes all files; none without a campaign.
    ///
    /// # Errors
    /// [`crate::error::Error::Internal`] if one cannot be made.
    pub fn outputs(&self, issued: Timestamp) -> Result<Vec<Output>> {
        if self.members.is_empty() {
            return Ok(Vec::new());
        }
        let description = self.description();
        let tables = [
            (&self.campaigns, "campaigns", "Campaigns: one row a rating"),
            (&self.intervals, "intervals", "Intervals of all campaigns"),
        ];
        let (mut outputs, mut resources) = (Vec::new(), Vec::new());
        for (table, name, title) in tables {
            let output = Output {
                name: format!("{name}.parquet"),
                bytes: to_parquet(table, &description)?,
            };
            let facts = output.facts();
            resources.push(Resource::parquet(name, &facts, title, &description, table));
            outputs.push(output);
        }
        resources.extend(self.resources_of_members());
        let package = DataPackage::new(description, issued, resources);
        outputs.push(Output {
            name: data_package::FILE.to_owned(),
            bytes: package.to_text()?.into_bytes(),
        });
        Ok(outputs)
    }

    /// What the data are; where they are invented it is said first.
    fn description(&self) -> String {
        let members = self.members.iter();
        let invented: Vec<&str> = members
            .filter(|member| member.is_invented)
            .map(|member| member.name.as_str())
            .collect();
        match invented.as_slice() {
            [] => WHAT.to_owned(),
            all if all.len() == self.members.len() => format!("INVENTED DATA. {WHAT}"),
            some => format!("INVENTED DATA in part: {}. {WHAT}", some.join(", ")),
        }
    }

    fn resources_of_members(&self) -> Vec<Resource> {
        let mut resources = Vec::new();
        let mut taken = BTreeSet::new();
        for member in &self.members {
            let mut short = plain_name(&member.name);
            while !taken.insert(short.clone()) {
                short.push_str("-2");
            }
            let mark = if member.is_invented {
                "INVENTED DATA. "
            } else {
                ""
            };
            for file in &member.files {
                let name = &member.name;
                if file.name.ends_with(".intervals.csv") {
                    resources.push(Resource::csv(
                        format!("intervals-{short}"),
                        file,
                        format!("Intervals of {name}"),
                        format!("{mark}One row an interval, used and set aside."),
                        &self.intervals,
                    ));
                } else if file.name.ends_with(".rating.json") {
                    resources.push(Resource::json(
                        format!("rating-{short}"),
                        file,
                        format!("Rating of {name}"),
                        format!("{mark}The whole result, by the JSON Schema {SCHEMA_ID}."),
                    ));
                }
            }
        }
        resources
    }
}
