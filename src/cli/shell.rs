//! `completions`: what a shell wants to know.

use clap::CommandFactory;

use super::args::{Arguments, CompletionsOptions};
use super::terminal::print_own;
use crate::error::Result;

/// Prints the completion script for a shell.
///
/// # Errors
/// [`crate::error::Error::Usage`] if it cannot be printed.
pub fn completions(options: &CompletionsOptions) -> Result<u8> {
    let mut script = Vec::new();
    clap_complete::generate(
        options.shell,
        &mut Arguments::command(),
        "simmerline",
        &mut script,
    );
    print_own(&String::from_utf8_lossy(&script))?;
    Ok(0)
}
