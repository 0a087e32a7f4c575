//! `datapackage.json`: what the files of a call are, and what is in their columns.

use jiff::Timestamp;
use serde::Serialize;

use super::columns::{Heading, Kind, Table};
use crate::error::{Error, Result};
use crate::report::files::{FileFacts, Output};

/// Name of the file: the one that readers look for.
pub const FILE: &str = "datapackage.json";
/// Name of the file that says what is in the columns of every CSV: ten thousand of them would
/// say it ten thousand times.
const CSV_SCHEMA: &str = "intervals.csv.schema.json";

/// The description of a folder of results.
///
/// # Source
/// Frictionless Data, Data Package, Data Resource, Table Schema and CSV Dialect, version 1;
/// from memory. `unit` of a field is our own: the standard has none.
#[derive(Serialize)]
pub struct DataPackage {
    profile: &'static str,
    name: &'static str,
    title: &'static str,
    description: String,
    created: String,
    resources: Vec<Resource>,
}

/// One file.
#[derive(Serialize)]
pub struct Resource {
    name: String,
    path: String,
    profile: &'static str,
    title: String,
    description: String,
    format: &'static str,
    mediatype: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    encoding: Option<&'static str>,
    /// Length.
    #[serde(skip_serializing_if = "Option::is_none")]
    bytes: Option<usize>,
    hash: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    dialect: Option<Dialect>,
    #[serde(skip_serializing_if = "Option::is_none")]
    schema: Option<Schema>,
}

/// What is in the columns of a file: told there, or in a file that many share.
#[derive(Serialize)]
#[serde(untagged)]
enum Schema {
    Here(TableSchema),
    InFile(&'static str),
}

/// How CSV is written.
#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
struct Dialect {
    delimiter: &'static str,
    line_terminator: &'static str,
    quote_char: &'static str,
    double_quote: bool,
    header: bool,
}

#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
struct TableSchema {
    fields: Vec<Field>,
    /// Texts that stand for null.
    missing_values: [&'static str; 1],
}

#[derive(Serialize)]
struct Field {
    name: &'static str,
    #[serde(rename = "type")]
    kind: &'static str,
    description: &'static str,
    #[serde(skip_serializing_if = "str::is_empty")]
    unit: &'static str,
    constraints: Constraints,
}

#[derive(Serialize)]
struct Constraints {
    required: bool,
}

impl DataPackage {
    /// A package of resources; `description` says what their data are.
    pub fn new(description: String, issued: Timestamp, resources: Vec<Resource>) -> Self {
        DataPackage {
            profile: "data-package",
            name: "simmerline-results",
            title: "Ratings of solar cookers by water-heating tests",
            description,
            created: issued.strftime("%Y-%m-%dT%H:%M:%SZ").to_string(),
            resources,
        }
    }

    /// The file as text.
    ///
    /// # Errors
    /// [`Error::Internal`] if a value has no JSON form.
    pub fn to_text(&self) -> Result<String> {
        serde_json::to_string_pretty(self)
            .map(|text| text + "\n")
            .map_err(|error| Error::Internal(error.to_string()))
    }
}

impl Resource {
    /// A table as Apache Parquet; without its length, which frictionless 5.21, the
    /// standard's own reader, does not count and so calls wrong. The hash says more.
    pub fn parquet(
        name: &str,
        file: &FileFacts,
        title: &str,
        description: &str,
        table: &Table,
    ) -> Self {
        Resource {
            name: name.to_owned(),
            path: file.name.clone(),
            profile: "data-resource",
            title: title.to_owned(),
            description: description.to_owned(),
            format: "parquet",
            mediatype: "application/vnd.apache.parquet",
            encoding: None,
            bytes: None,
            hash: hash(file),
            dialect: None,
            schema: Some(Schema::Here(schema(table.headings.iter()))),
        }
    }

    /// A table of intervals as CSV, whose columns [`csv_schema`] tells.
    pub fn csv(name: String, file: &FileFacts, title: String, description: String) -> Self {
        Resource {
            name,
            path: file.name.clone(),
            profile: "tabular-data-resource",
            title,
            description,
            format: "csv",
            mediatype: "text/csv",
            encoding: Some("utf-8"),
            bytes: Some(file.length),
            hash: hash(file),
            dialect: Some(Dialect {
                delimiter: ",",
                line_terminator: "\n",
                quote_char: "\"",
                double_quote: true,
                header: true,
            }),
            schema: Some(Schema::InFile(CSV_SCHEMA)),
        }
    }

    /// A file of JSON that is no table.
    pub fn json(name: String, file: &FileFacts, title: String, description: String) -> Self {
        Resource {
            name,
            path: file.name.clone(),
            profile: "data-resource",
            title,
            description,
            format: "json",
            mediatype: "application/json",
            encoding: Some("utf-8"),
            bytes: Some(file.length),
            hash: hash(file),
            dialect: None,
            schema: None,
        }
    }
}

/// The file that says what is in the columns of a table that is in CSV.
///
/// # Errors
/// [`Error::Internal`] if it has no JSON form.
pub fn csv_schema(table: &Table) -> Result<Output> {
    let headings = table.headings.iter();
    let schema = schema(headings.filter(|heading| heading.is_in_csv));
    let text = serde_json::to_string_pretty(&schema);
    let text = text.map_err(|error| Error::Internal(error.to_string()))? + "\n";
    Ok(Output {
        name: CSV_SCHEMA.to_owned(),
        bytes: text.into_bytes(),
    })
}

/// A file's hash as the standard writes it.
fn hash(file: &FileFacts) -> String {
    format!("sha256:{}", file.sha256)
}

fn schema<'h>(headings: impl Iterator<Item = &'h Heading>) -> TableSchema {
    let field = |heading: &Heading| Field {
        name: heading.name,
        kind: match heading.kind {
            Kind::Text => "string",
            Kind::Number => "number",
            Kind::Count => "integer",
            Kind::Truth => "boolean",
            Kind::Instant => "datetime",
        },
        description: heading.description,
        unit: heading.unit,
        constraints: Constraints {
            required: heading.is_required,
        },
    };
    TableSchema {
        fields: headings.map(field).collect(),
        missing_values: [""],
    }
}

/// A name as the standard allows it: lower-case letters without accents, digits, `-`, `_`, `/`
/// and `.`; whatever else is in it becomes `-`.
pub fn plain_name(name: &str) -> String {
    let plain = |character: char| match character.to_ascii_lowercase() {
        kept @ ('a'..='z' | '0'..='9' | '-' | '_' | '/' | '.') => kept,
        _ => '-',
    };
    name.chars().map(plain).collect()
}
