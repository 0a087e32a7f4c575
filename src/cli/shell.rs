//! `completions` and `manual`: what a shell and `man` want to know.

use clap::{Command, CommandFactory};
use clap_mangen::Man;

use super::args::{Arguments, CompletionsOptions};
use super::terminal::print_own;
use crate::error::{Error, Result};

/// Prints the completion script for a shell.
///
/// # Errors
/// [`Error::Usage`] if it cannot be printed.
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

/// Prints the manual page, with a section for each command.
///
/// # Errors
/// [`Error::Internal`] if the page cannot be set.
pub fn manual() -> Result<u8> {
    let mut whole = Arguments::command();
    whole.build();
    let mut page = render(&whole, |man, page| {
        man.render_title(page)?;
        man.render_name_section(page)?;
        man.render_synopsis_section(page)?;
        man.render_options_section(page)?;
        man.render_extra_section(page)
    })?;
    for command in whole
        .get_subcommands()
        .filter(|command| command.get_name() != "help")
    {
        let about = command
            .get_about()
            .map(ToString::to_string)
            .unwrap_or_default();
        let sections = render(command, |man, page| {
            man.render_synopsis_section(page)?;
            man.render_options_section(page)?;
            man.render_extra_section(page)
        })?;
        page += &format!(".SH {}\n{about}\n", command.get_name().to_uppercase());
        page += &sections.replace(".SH ", ".SS ");
    }
    // What stands below a command's options is examples and exit codes.
    print_own(&page.replace(" EXTRA\n", " EXAMPLES\n"))?;
    Ok(0)
}

/// Sections of a command's page as text.
fn render(
    command: &Command,
    sections: impl FnOnce(&Man, &mut Vec<u8>) -> std::io::Result<()>,
) -> Result<String> {
    let mut page = Vec::new();
    let internal = |error: &dyn std::fmt::Display| Error::Internal(error.to_string());
    sections(&Man::new(command.clone()), &mut page).map_err(|error| internal(&error))?;
    String::from_utf8(page).map_err(|error| internal(&error))
}
