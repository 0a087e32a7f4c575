//! What commands print for other programs: JSON, each with its schema.

pub mod check_file;
mod problem;
pub mod summary_file;
pub mod verification_file;

use schemars::generate::SchemaSettings;
use schemars::transform::RestrictFormats;
use schemars::{JsonSchema, Schema};
use serde::Serialize;

use crate::error::{Error, Result};

/// The JSON Schema (draft 2020-12) that every printed value of a type meets.
fn schema_of<T: JsonSchema>() -> Schema {
    let settings = SchemaSettings::draft2020_12().for_serialize();
    let settings = settings.with_transform(RestrictFormats::default());
    settings.into_generator().into_root_schema_for::<T>()
}

/// A value as text.
fn text_of(value: &impl Serialize) -> Result<String> {
    let text = serde_json::to_string_pretty(value);
    text.map_err(|error| Error::Internal(error.to_string()))
}
