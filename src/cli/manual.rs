//! `manual`: what there is to know, by topics, to read on a screen or as a page for `man`.

use clap::{Command, CommandFactory};
use clap_mangen::Man;

use super::args::{Arguments, ManualOptions};
use super::lines::Lines;
use super::manual_page::page_of;
use super::manual_text::{blocks, plain, set};
use super::manual_topics::{TOPICS, Topic};
use super::screen::Screen;
use super::terminal::{print_lines, print_own};
use crate::error::{Error, Result};

/// Prints a topic, the list of topics, or the page for `man`.
///
/// # Errors
/// [`Error::Internal`] if the page cannot be set, [`Error::Usage`] if nothing can be printed.
pub fn run(options: &ManualOptions) -> Result<u8> {
    match (options.man, options.topic) {
        (true, _) => print_own(&page()?)?,
        (false, Some(topic)) => print_lines(&topic_lines(topic, Screen::out()))?,
        (false, None) => print_lines(&list_lines(Screen::out()))?,
    }
    Ok(0)
}

/// What there is to read.
fn list_lines(screen: Screen) -> Lines {
    let mut lines = Lines::new(screen);
    lines.title("The manual of simmerline").blank();
    let row = |topic: Topic| (topic.name.to_owned(), topic.parts().0.to_owned());
    lines.rows("  ", &TOPICS.map(row)).blank();
    lines.line("simmerline manual TOPIC prints one of them.");
    lines.line("simmerline manual --man prints all as a page for man, with every command.");
    lines
}

fn topic_lines(topic: Topic, screen: Screen) -> Lines {
    let (title, text) = topic.parts();
    let mut lines = Lines::new(screen);
    lines.title(title);
    set(&blocks(text), &mut lines);
    lines
}

/// The page for `man`: a section for each command, then one for each topic.
fn page() -> Result<String> {
    let mut page = commands_page()?;
    for topic in TOPICS {
        let (title, text) = topic.parts();
        page += &page_of(&plain(title).to_uppercase(), &blocks(text));
    }
    Ok(page)
}

fn commands_page() -> Result<String> {
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
    Ok(page.replace(" EXTRA\n", " EXAMPLES\n"))
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_line_of_a_topic_but_those_of_programs_is_wider_than_the_screen() {
        use unicode_width::UnicodeWidthStr;
        let screen = Screen {
            width: Some(80),
            has_colours: false,
        };
        for topic in TOPICS {
            let set = topic_lines(topic, screen);
            let wide = set.text().lines().find(|line| {
                let is_own = topic.parts().1.contains(line.trim());
                line.width() > 80 && !is_own
            });
            assert_eq!(wide, None, "{}", topic.name);
        }
    }
}
