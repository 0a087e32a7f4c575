//! One campaign's rows as files of their own, in data sets that grow: a file a campaign, in
//! folders that readers take for a column (`branch=kiln%2Fspring`).

use super::campaigns::{campaign_row, no_campaigns};
use super::columns::{Cell, Heading, Kind, Table};
use super::intervals::{interval_rows, no_intervals};
use super::parquet::to_parquet;
use crate::error::Result;
use crate::procedure::Assessment;
use crate::report::files::Output;

/// Where in the tree a campaign is; besides its name no two rows of campaigns have one.
pub const BRANCH: Heading = Heading::new(
    "branch",
    Kind::Text,
    "Folders between the root of the tree and the campaign's own, with / between them; - for none",
)
.not_in_csv();

/// A data set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DataSet {
    Campaigns,
    Intervals,
}

impl DataSet {
    /// Both.
    pub const ALL: [DataSet; 2] = [DataSet::Campaigns, DataSet::Intervals];

    /// The name of its folder, and of its file where it is in one.
    pub fn name(self) -> &'static str {
        match self {
            DataSet::Campaigns => "campaigns",
            DataSet::Intervals => "intervals",
        }
    }

    /// The table without rows.
    pub fn table(self) -> Table {
        let mut table = match self {
            DataSet::Campaigns => no_campaigns(),
            DataSet::Intervals => no_intervals(),
        };
        table.headings.insert(0, BRANCH);
        table
    }
}

/// A campaign's file in a data set.
pub struct Shard {
    /// From the root of the outputs, with `/` between folders.
    pub folder: String,
    pub output: Output,
}

/// The files of a campaign, one in each data set.
///
/// # Errors
/// [`crate::error::Error::Internal`] if one cannot be made.
pub fn shards(campaign: &Assessment, branch: &str) -> Result<Vec<Shard>> {
    let tested = &campaign.tested.campaign;
    let description = match tested.demonstration {
        true => "INVENTED DATA",
        false => "",
    };
    let branch = match branch {
        "" => "-",
        branch => branch,
    };
    let shard = |set: DataSet| {
        let mut table = set.table();
        let rows: Vec<Vec<Cell>> = match set {
            DataSet::Campaigns => vec![campaign_row(campaign)],
            DataSet::Intervals => interval_rows(campaign).collect(),
        };
        let placed = |mut row: Vec<Cell>| {
            row.insert(0, branch.into());
            row
        };
        table.rows = rows.into_iter().map(placed).collect();
        Ok(Shard {
            folder: format!("{}/branch={}", set.name(), in_a_name(branch)),
            output: Output {
                name: format!("{}.parquet", tested.name),
                bytes: to_parquet(&table, description)?,
            },
        })
    };
    DataSet::ALL.into_iter().map(shard).collect()
}

/// A value as it stands in the name of a folder: per cent and two hex digits for each byte that
/// is no letter, digit, `-` or `_` of ASCII, as readers of such folders take it.
fn in_a_name(value: &str) -> String {
    let plain = |byte: u8| byte.is_ascii_alphanumeric() || b"-_".contains(&byte);
    let written = value.bytes().map(|byte| match plain(byte) {
        true => char::from(byte).to_string(),
        false => format!("%{byte:02X}"),
    });
    written.collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_branch_is_one_folder_whatever_is_in_it() {
        assert_eq!(in_a_name("-"), "-");
        // No computer takes a folder whose name ends with a point for another.
        assert_eq!(in_a_name("a."), "a%2E");
        assert_eq!(in_a_name("kiln/spring 2"), "kiln%2Fspring%202");
        assert_eq!(in_a_name("a=b%é"), "a%3Db%25%C3%A9");
    }
}
