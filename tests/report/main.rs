//! The report: its words, its PDF, its web page, its figures.

mod campaigns;
mod figures;
mod iso_17025;
mod long;
mod names;
mod pdf;
mod photo;
mod schema;
mod tables;
mod web_page;
mod words;
