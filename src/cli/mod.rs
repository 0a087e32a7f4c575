//! The command line: one file a command, each thin.

pub mod args;
pub mod check;
mod check_procedures;
mod check_text;
mod check_verdict;
pub mod compare;
mod compare_lines;
pub mod data;
pub mod enter;
pub mod enter_run;
pub mod enter_words;
pub mod lines;
pub mod new;
mod new_runs;
pub mod plan;
pub mod report;
mod report_index;
mod report_table;
pub mod screen;
pub mod shell;
pub mod speech;
pub mod table;
pub mod terminal;
pub mod verify;
pub mod wrap;
