//! The command line as it is read, with examples and exit codes in its help that hang behind
//! what they explain.

use clap::{Command, CommandFactory, FromArgMatches};
use unicode_width::UnicodeWidthStr;

use super::args::Arguments;
use super::screen::Screen;
use super::table::GUTTER;
use super::wrap::wrapped;

/// What the command line asks for.
///
/// # Errors
/// What is wrong with it, or help where that is asked for.
pub fn parse() -> Result<Arguments, clap::Error> {
    let mut command = Arguments::command();
    if let Some(width) = Screen::out().width {
        command = hung(command, width);
    }
    let mut matches = command.try_get_matches_from_mut(std::env::args_os())?;
    Arguments::from_arg_matches_mut(&mut matches).map_err(|said| said.format(&mut command))
}

fn hung(mut command: Command, width: usize) -> Command {
    let names: Vec<String> = command
        .get_subcommands()
        .map(|one| one.get_name().to_owned())
        .collect();
    for name in names {
        command = command.mut_subcommand(name, |one| hung(one, width));
    }
    let short = command.get_after_help().map(ToString::to_string);
    let long = command.get_after_long_help().map(ToString::to_string);
    if let Some(text) = short {
        command = command.after_help(in_lines(&text, width));
    }
    if let Some(text) = long {
        command = command.after_long_help(in_lines(&text, width));
    }
    command
}

/// Lines of help, of which those that explain what stands before them hang there.
fn in_lines(text: &str, width: usize) -> String {
    let lines: Vec<String> = text.lines().map(|line| in_width(line, width)).collect();
    lines.concat().trim_end().to_owned()
}

fn in_width(line: &str, width: usize) -> String {
    let indent = line.len() - line.trim_start().len();
    if line.width() <= width || indent == 0 {
        return format!("{line}\n");
    }
    let gap = line[indent..].find(GUTTER).map(|gap| indent + gap);
    let Some(gap) = gap else {
        // A command goes on further in than the next one begins.
        let (indent, command) = line.split_at(indent);
        return format!("{indent}{}", &wrapped_below(indent, command, width));
    };
    let said = line[gap..].trim_start();
    let lead = &line[..line.len() - said.len()];
    match lead.width() <= width / 2 {
        true => wrapped(lead, said, Some(width)),
        false => format!("{}\n{}", &line[..gap], wrapped("      ", said, Some(width))),
    }
}

fn wrapped_below(indent: &str, command: &str, width: usize) -> String {
    let deeper = format!("{indent}    ");
    let text = wrapped(&deeper, command, Some(width));
    text[deeper.len()..].to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_explains_hangs_behind_what_it_explains() {
        let text = "Exit codes:\n  5  all done, but a rating is only indicative\n  0  done";
        assert_eq!(
            in_lines(text, 30),
            "Exit codes:\n  5  all done, but a rating is\n     only indicative\n  0  done"
        );
        let text = "  simmerline compare first second    which gives more";
        assert_eq!(
            in_lines(text, 40),
            "  simmerline compare first second\n      which gives more"
        );
        let text = "  simmerline new my-cooker --yes --units us";
        assert_eq!(
            in_lines(text, 34),
            "  simmerline new my-cooker\n      --yes --units us"
        );
        let text = "A paragraph that is wrapped by the parser stays as it is";
        assert_eq!(in_lines(text, 20), text);
    }
}
