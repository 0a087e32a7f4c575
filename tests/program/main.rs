//! The program as a person meets it: exit codes, messages, and which files are there
//! afterwards. All campaigns are invented and made here.

#![allow(
    clippy::disallowed_methods,
    reason = "no report hangs on a test's last digit"
)]

#[path = "../kit"]
mod kit {
    pub mod campaign;
    pub mod files;
    pub mod header;
    pub mod heating;
    pub mod schema;
}

mod bad_campaign;
mod bad_log;
mod batch;
mod bench;
#[cfg(unix)]
mod check_many;
mod commands;
mod compare;
mod compare_dry;
mod cooking;
mod documents;
mod enter;
mod estimates;
#[cfg(unix)]
mod four_people;
#[cfg(unix)]
mod hostile_names;
mod index;
#[cfg(unix)]
mod kills;
mod kinds;
#[cfg(unix)]
mod no_room;
mod odd_log;
mod paths;
mod plan;
#[cfg(unix)]
mod reach;
mod schemas;
#[cfg(unix)]
mod screens;
mod shared;
mod slips;
#[rustfmt::skip]
mod slips_table;
mod tables;
#[cfg(unix)]
mod typist;
mod watch;
#[cfg(unix)]
mod watch_terminal;
