//! Results as tables: one row a campaign, and one row an interval.
//!
//! [`columns`] says what a table is made of. `campaigns` lists the columns of the campaigns,
//! `intervals` those of the intervals, and the `data` of a procedure what it adds to both: the
//! only places for their names, units and meanings. From these lists come `csv`, `parquet` and `data_package`;
//! [`shards`] are the rows of one campaign, [`collection`] gathers those of many.

mod campaigns;
pub mod collection;
pub mod columns;
mod csv;
mod data_package;
mod intervals;
mod parquet;
pub mod shards;

pub use csv::intervals_csv;
