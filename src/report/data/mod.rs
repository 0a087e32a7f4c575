//! Results as data: [`rating_file`] is `rating.json`, of which the other files and the `data`
//! of each procedure are parts; [`tables`] are CSV, Parquet and data package.

mod campaign;
mod cooking;
pub mod figure;
pub mod finding;
pub mod logs;
pub mod rating_file;
pub mod tables;
