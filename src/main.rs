//! The program: arguments, one command, exit code.

use std::process::ExitCode;

use clap::Parser;
use simmerline::cli::{self, args::Arguments};

fn main() -> ExitCode {
    ExitCode::from(cli::run(&Arguments::parse()))
}
