//! `completions` and `manual`: what a shell and `man` want to know.

use std::io;

use clap::CommandFactory;

use super::args::{Arguments, CompletionsOptions};
use super::terminal::print;
use crate::error::{Error, Result};

/// Prints the completion script for a shell.
///
/// # Errors
/// None so far.
pub fn completions(options: &CompletionsOptions) -> Result<u8> {
    let mut script = Vec::new();
    clap_complete::generate(
        options.shell,
        &mut Arguments::command(),
        "simmerline",
        &mut script,
    );
    print(&String::from_utf8_lossy(&script));
    Ok(0)
}

/// Prints the manual page, with a section for each command.
///
/// # Errors
/// [`Error::Internal`] if the page cannot be set.
pub fn manual() -> Result<u8> {
    let mut page = Vec::new();
    let render = |page: &mut Vec<u8>| -> io::Result<()> {
        let mut whole = Arguments::command();
        whole.build();
        clap_mangen::Man::new(whole.clone()).render(page)?;
        for command in whole
            .get_subcommands()
            .filter(|command| command.get_name() != "help")
        {
            let man = clap_mangen::Man::new(command.clone());
            man.render_name_section(page)?;
            man.render_synopsis_section(page)?;
            man.render_options_section(page)?;
        }
        Ok(())
    };
    render(&mut page).map_err(|error| Error::Internal(error.to_string()))?;
    print(&String::from_utf8_lossy(&page));
    Ok(0)
}
