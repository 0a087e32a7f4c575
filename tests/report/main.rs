//! The report: its words, its PDF, its figures.

mod campaigns;
mod figures;
mod names;
mod pdf;
mod photo;
mod schema;
mod tables;
mod words;
