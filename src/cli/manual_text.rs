//! A topic of the manual, from the little Markdown that `templates/manual` is written in to lines
//! for a screen: headings, paragraphs, items, tables, and lines of programs as they are.

use super::lines::Lines;
use super::table::Align;

/// A part of a text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Block {
    Heading(String),
    Paragraph(String),
    Item(String),
    /// Cells by rows, the header first; its cells may be empty.
    Table(Vec<Vec<String>>),
    /// Lines of a file, or of what is typed and printed.
    Program(Vec<String>),
}

/// A piece of a sentence.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Piece<'a> {
    Plain(&'a str),
    Strong(&'a str),
    /// What is typed, a key, a value.
    Code(&'a str),
    Link {
        text: &'a str,
        target: &'a str,
    },
}

/// The parts of a text.
pub fn blocks(text: &str) -> Vec<Block> {
    let mut blocks = Vec::new();
    let mut lines = text.lines().peekable();
    // Whether a line of words goes on with the sentence before it.
    let mut goes_on = false;
    while let Some(line) = lines.next() {
        let is_sentence = match line {
            "" => false,
            _ if line.starts_with("```") => {
                let program = lines.by_ref().take_while(|line| *line != "```");
                blocks.push(Block::Program(program.map(str::to_owned).collect()));
                false
            }
            _ if line.starts_with("## ") => {
                blocks.push(Block::Heading(line[3..].to_owned()));
                false
            }
            _ if line.starts_with('|') => {
                let mut rows = vec![cells(line)];
                // Without the rule below the header.
                lines.next();
                while let Some(row) = lines.next_if(|line| line.starts_with('|')) {
                    rows.push(cells(row));
                }
                blocks.push(Block::Table(rows));
                false
            }
            _ if line.starts_with("- ") => {
                blocks.push(Block::Item(line[2..].to_owned()));
                true
            }
            _ => {
                match blocks.last_mut() {
                    Some(Block::Paragraph(said) | Block::Item(said)) if goes_on => {
                        *said += &format!(" {}", line.trim_start());
                    }
                    _ => blocks.push(Block::Paragraph(line.to_owned())),
                }
                true
            }
        };
        goes_on = is_sentence;
    }
    blocks
}

/// The cells of a row; `\|` is a bar inside one.
fn cells(row: &str) -> Vec<String> {
    const BAR: &str = "\u{1}";
    let row = row.replace("\\|", BAR);
    let inside = row.trim().trim_start_matches('|').trim_end_matches('|');
    let cells = inside.split('|');
    cells.map(|cell| cell.trim().replace(BAR, "|")).collect()
}

/// The pieces of a sentence.
pub fn pieces(text: &str) -> Vec<Piece<'_>> {
    let mut pieces = Vec::new();
    let mut rest = text;
    while !rest.is_empty() {
        let (piece, after) = first_piece(rest);
        pieces.push(piece);
        rest = after;
    }
    pieces
}

fn first_piece(rest: &str) -> (Piece<'_>, &str) {
    if let Some(code) = rest.strip_prefix('`')
        && let Some((code, after)) = code.split_once('`')
    {
        return (Piece::Code(code), after);
    }
    if let Some(strong) = rest.strip_prefix("**")
        && let Some((strong, after)) = strong.split_once("**")
    {
        return (Piece::Strong(strong), after);
    }
    if let Some(link) = rest.strip_prefix('[')
        && let Some((text, target)) = link.split_once("](")
        && !text.contains(']')
        && let Some((target, after)) = target.split_once(')')
    {
        return (Piece::Link { text, target }, after);
    }
    let skipped = rest.chars().next().map_or(0, char::len_utf8);
    let next = rest[skipped..].find(['`', '*', '[']);
    let (plain, after) = rest.split_at(next.map_or(rest.len(), |next| next + skipped));
    (Piece::Plain(plain), after)
}

/// A sentence without its marks, but with backticks round what is typed. A link to another topic
/// says how to read that.
pub fn plain(text: &str) -> String {
    let piece = |piece: Piece<'_>| match piece {
        Piece::Plain(text) => text.to_owned(),
        Piece::Strong(text) => plain(text),
        Piece::Code(code) => format!("`{code}`"),
        Piece::Link { text, target } => linked(&plain(text), target),
    };
    pieces(text).into_iter().map(piece).collect()
}

/// The text of a link, with the command that prints what it leads to.
pub fn linked(text: &str, target: &str) -> String {
    match target.strip_suffix(".md") {
        Some(topic) => format!("{text} (`simmerline manual {topic}`)"),
        None => text.to_owned(),
    }
}

/// Adds a text to lines.
pub fn set(blocks: &[Block], lines: &mut Lines) {
    let mut is_after_item = false;
    for block in blocks {
        let is_item = matches!(block, Block::Item(_));
        if !(is_item && is_after_item) {
            lines.blank();
        }
        is_after_item = is_item;
        match block {
            Block::Heading(heading) => lines.title(&plain(heading)),
            Block::Paragraph(text) => lines.paragraph(&plain(text)),
            Block::Item(text) => lines.hanging("- ", &plain(text)),
            Block::Table(rows) => set_table(rows, &mut *lines),
            Block::Program(program) => program
                .iter()
                .fold(&mut *lines, |lines, line| lines.as_it_is(line)),
        };
    }
}

/// A table of two or three columns as one, a wider one as a list of its rows.
fn set_table<'a>(rows: &[Vec<String>], lines: &'a mut Lines) -> &'a mut Lines {
    let rows: Vec<Vec<String>> = rows
        .iter()
        .map(|row| row.iter().map(|cell| plain(cell)).collect())
        .collect();
    let Some((header, rows)) = rows.split_first() else {
        return lines;
    };
    match header.as_slice() {
        [first, second] if first.is_empty() && second.is_empty() => {
            let cells = of_width::<2>(rows);
            let rows = cells.map(|[label, text]| (label, text));
            lines.rows("  ", &rows.collect::<Vec<_>>())
        }
        [first, second] => {
            let rows: Vec<[String; 2]> = of_width(rows).collect();
            lines.table([(first, Align::Left), (second, Align::Left)], &rows)
        }
        [first, second, third] => {
            let rows: Vec<[String; 3]> = of_width(rows).collect();
            let names = [first, second, third].map(|name| (name.as_str(), Align::Left));
            lines.table(names, &rows)
        }
        _ => {
            for row in rows {
                let (lead, cells) = row.split_first().expect("a row has a cell");
                lines.hanging("- ", lead);
                let named = header.iter().skip(1).zip(cells);
                let said = named.filter(|(_, cell)| !cell.is_empty());
                let said: Vec<_> = said.map(|(n, c)| (n.clone(), c.clone())).collect();
                lines.rows("  ", &said);
            }
            lines
        }
    }
}

/// Rows of as many cells as their header has.
fn of_width<const N: usize>(rows: &[Vec<String>]) -> impl Iterator<Item = [String; N]> + '_ {
    rows.iter()
        .map(|row| std::array::from_fn(|column| row.get(column).cloned().unwrap_or_default()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_has_its_parts() {
        let text = "One\nsentence.\n\n## Head\n\n- first\n  line\n- second\n\n\
                    | a | b |\n| --- | --- |\n| `x \\| y` | z |\n\n```sh\nrun\n\n  it\n```\n`key` is\nlast";
        let expected = [
            Block::Paragraph("One sentence.".into()),
            Block::Heading("Head".into()),
            Block::Item("first line".into()),
            Block::Item("second".into()),
            Block::Table(vec![
                vec!["a".into(), "b".into()],
                vec!["`x | y`".into(), "z".into()],
            ]),
            Block::Program(vec!["run".into(), String::new(), "  it".into()]),
            Block::Paragraph("`key` is last".into()),
        ];
        assert_eq!(blocks(text), expected);
    }

    #[test]
    fn a_sentence_loses_its_marks_and_a_link_says_where_it_leads() {
        let text =
            "**Bold**, `[code]` and [a part](logs.md), [a file](../x.json), `*.csv` 2 * 3 [a]";
        assert_eq!(
            plain(text),
            "Bold, `[code]` and a part (`simmerline manual logs`), a file, `*.csv` 2 * 3 [a]"
        );
    }
}
