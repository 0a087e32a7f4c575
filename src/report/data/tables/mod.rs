//! Results as tables: one row a campaign, and one row an interval.
//!
//! `columns` says what a table is made of; `campaigns` and `intervals` list the columns of
//! each, the only place for their names, units and meanings. From that list come `csv`,
//! `parquet` and `data_package`; [`Collection`] gathers the campaigns of one call.

mod campaigns;
mod collection;
mod columns;
mod csv;
mod data_package;
mod intervals;
mod parquet;

pub use collection::Collection;
pub use csv::intervals_csv;
