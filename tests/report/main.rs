//! The report: its words, its PDF, its figures.

mod campaigns;
mod figures;
mod long;
mod names;
mod pdf;
mod photo;
mod words;
