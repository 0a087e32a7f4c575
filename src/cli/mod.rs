//! The command line: one file a command, each thin.

pub mod args;
pub mod check;
pub mod new;
pub mod report;
pub mod shell;
pub mod terminal;

use args::{Arguments, Command};

/// Runs a command and returns the process's exit code.
pub fn run(arguments: &Arguments) -> u8 {
    let outcome = match &arguments.command {
        Command::Report(options) => report::run(options),
        Command::Check(options) => check::run(options),
        Command::New(options) => new::run(options),
        Command::Completions(options) => shell::completions(options),
        Command::Manual => shell::manual(),
    };
    outcome.unwrap_or_else(|error| {
        terminal::print_error(&error);
        error.exit_code()
    })
}
