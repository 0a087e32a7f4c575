//! What lines are printed on: how wide it is, and whether it shows colours.

use std::io::{self, IsTerminal};

use anstream::{AutoStream, ColorChoice};

/// Narrowest and widest line on a terminal, in columns. Lines of over 100 are hard to follow,
/// and numbers have no room in less than 60.
const NARROWEST: usize = 60;
const WIDEST: usize = 100;

/// Columns of a terminal that does not say how many it has.
const USUAL: usize = 80;

/// The preferred width, as POSIX names it.
const COLUMNS: &str = "COLUMNS";

/// Where lines are printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Screen {
    /// Longest line, in columns. `None`: a file or another program, where a sentence is a line
    /// and a row of a table too.
    pub width: Option<usize>,
    pub has_colours: bool,
}

impl Screen {
    /// Where lines are as long as they are, without colours.
    pub const PIPE: Screen = Screen {
        width: None,
        has_colours: false,
    };

    /// Standard output.
    pub fn out() -> Screen {
        let out = io::stdout();
        Screen {
            width: width(out.is_terminal(), size_of(&out)),
            has_colours: AutoStream::choice(&out) != ColorChoice::Never,
        }
    }

    /// Standard error.
    pub fn err() -> Screen {
        let err = io::stderr();
        Screen {
            width: width(err.is_terminal(), size_of(&err)),
            has_colours: AutoStream::choice(&err) != ColorChoice::Never,
        }
    }
}

/// Columns and lines of the terminal at standard output; `None` where there is none or it does
/// not say both.
pub fn size_out() -> Option<(usize, usize)> {
    let (columns, lines) = size_of(&io::stdout());
    Some((columns?, lines?))
}

/// Columns and lines of a terminal, each where it says it: a pseudo-terminal whose columns were
/// set may say that it has no lines.
#[cfg(unix)]
fn size_of(stream: &impl std::os::fd::AsFd) -> (Option<usize>, Option<usize>) {
    let Ok(size) = rustix::termios::tcgetwinsize(stream) else {
        return (None, None);
    };
    let said = |count: u16| Some(usize::from(count)).filter(|count| *count > 0);
    (said(size.ws_col), said(size.ws_row))
}

/// Columns and lines of a terminal, where it says both.
#[cfg(not(unix))]
fn size_of(stream: &impl std::os::windows::io::AsHandle) -> (Option<usize>, Option<usize>) {
    use terminal_size::{Height, Width, terminal_size_of};

    let size = terminal_size_of(stream);
    let columns = size.map(|(Width(columns), _)| usize::from(columns));
    (columns, size.map(|(_, Height(lines))| usize::from(lines)))
}

fn width(is_terminal: bool, (columns, _): (Option<usize>, Option<usize>)) -> Option<usize> {
    let preferred = std::env::var(COLUMNS).ok();
    width_of(preferred.as_deref(), is_terminal, columns)
}

/// The width that `COLUMNS` asks for, else that of the terminal, within what can be read.
fn width_of(preferred: Option<&str>, is_terminal: bool, columns: Option<usize>) -> Option<usize> {
    let preferred = preferred.and_then(|text| text.trim().parse().ok());
    let preferred = preferred.filter(|columns| *columns > 0);
    let own = is_terminal.then(|| columns.unwrap_or(USUAL));
    preferred
        .or(own)
        .map(|columns| columns.clamp(NARROWEST, WIDEST))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_terminal_has_its_width_from_60_to_100_and_a_pipe_none() {
        for (columns, expected) in [(40, 60), (60, 60), (80, 80), (120, 100)] {
            assert_eq!(width_of(None, true, Some(columns)), Some(expected));
        }
        assert_eq!(width_of(None, true, None), Some(80));
        assert_eq!(width_of(None, false, None), None);
    }

    #[test]
    fn a_stated_width_counts_and_one_that_is_no_width_does_not() {
        assert_eq!(width_of(Some("72"), true, Some(90)), Some(72));
        assert_eq!(width_of(Some("72"), false, None), Some(72));
        for odd in ["", "0", "-5", "wide", "7.5"] {
            assert_eq!(width_of(Some(odd), true, Some(90)), Some(90), "{odd}");
            assert_eq!(width_of(Some(odd), false, None), None, "{odd}");
        }
    }
}
