//! The program: arguments, one command, exit code.

#![forbid(unsafe_code)]

use std::process::ExitCode;

use simmerline::cli::args::Command;
use simmerline::cli::{
    check, collect, compare, enter, help, manual, new, plan, report, shell, terminal, units,
    verify, watch,
};
use simmerline::error::Result;

fn main() -> ExitCode {
    let outcome = match help::parse() {
        Ok(arguments) => run(&arguments.command),
        Err(said) => terminal::print_usage(said),
    };
    ExitCode::from(outcome.unwrap_or_else(|error| {
        terminal::print_error(&error);
        error.exit_code()
    }))
}

fn run(command: &Command) -> Result<u8> {
    match command {
        Command::Report(options) => report::run(options),
        Command::Check(options) => check::run(options),
        Command::Compare(options) => compare::run(options),
        Command::Verify(options) => verify::run(options),
        Command::Plan(options) => plan::run(options),
        Command::Watch(options) => watch::run(options),
        Command::Units(options) => units::run(options),
        Command::Collect(options) => collect::run(options),
        Command::New(options) => new::run(options),
        Command::Enter(options) => enter::run(options),
        Command::Completions(options) => shell::completions(options),
        Command::Manual(options) => manual::run(options),
    }
}
