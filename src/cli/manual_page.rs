//! A topic of the manual as a section of a page for `man`.

use roff::{Inline, Roff, bold, italic, roman};

use super::manual_text::{Block, Piece, linked, pieces, plain};

/// A section with its title.
pub fn page_of(title: &str, blocks: &[Block]) -> String {
    let mut page = Roff::new();
    page.control("SH", [title]);
    for block in blocks {
        match block {
            Block::Heading(heading) => page.control("SS", [plain(heading).as_str()]),
            Block::Paragraph(text) => page.control("PP", []).text(inlines(text)),
            Block::Item(text) => page.control("IP", ["\\(bu", "2"]).text(inlines(text)),
            Block::Table(rows) => table(&mut page, rows),
            Block::Program(lines) => program(&mut page, lines),
        };
    }
    // Marks that a printer of text would make typographic, though they are typed.
    let page = page.render().replace('`', "\\(ga");
    let page = page.replace('~', "\\(ti").replace('^', "\\(ha");
    // What a whole page begins with stands at its head already.
    let head = Roff::new().render();
    page.strip_prefix(&head).unwrap_or(&page).to_owned()
}

/// A row's first cell is a term, the others say what it is; their headers stand before them where
/// there are several.
fn table<'a>(page: &'a mut Roff, rows: &[Vec<String>]) -> &'a mut Roff {
    let Some((header, rows)) = rows.split_first() else {
        return page;
    };
    if let [first, second] = header.as_slice()
        && !first.is_empty()
    {
        page.control("TP", []).text([italic(plain(first))]);
        page.text([italic(plain(second))]);
    }
    for row in rows {
        let mut cells = header.iter().zip(row);
        let Some((_, term)) = cells.next() else {
            continue;
        };
        page.control("TP", []).text(inlines(term));
        let said: Vec<_> = cells.filter(|(_, cell)| !cell.is_empty()).collect();
        for (index, (name, cell)) in said.iter().enumerate() {
            if index > 0 {
                page.control("br", []);
            }
            let mut line = inlines(cell);
            if header.len() > 2 && !name.is_empty() {
                line.insert(0, roman(format!("{}: ", plain(name))));
            }
            page.text(line);
        }
    }
    page
}

fn program<'a>(page: &'a mut Roff, lines: &[String]) -> &'a mut Roff {
    page.control("PP", [])
        .control("RS", ["4"])
        .control("nf", []);
    for line in lines {
        match line.is_empty() {
            true => page.control("sp", []),
            false => page.text([roman(line.as_str())]),
        };
    }
    page.control("fi", []).control("RE", [])
}

fn inlines(text: &str) -> Vec<Inline> {
    let inline = |piece: Piece<'_>| match piece {
        Piece::Plain(text) => roman(text),
        Piece::Strong(text) => bold(plain(text)),
        Piece::Code(code) => bold(code),
        Piece::Link { text, target } => roman(linked(&plain(text), target).replace('`', "")),
    };
    pieces(text).into_iter().map(inline).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cli::manual_text::blocks;

    #[test]
    fn what_is_typed_can_be_copied_and_no_line_is_taken_for_a_command() {
        let text = "`.x` is\n\n```sh\nxargs -d '\\n' `a` ~ ^\n.y\n```\n";
        assert_eq!(
            page_of("T", &blocks(text)),
            ".SH T\n.PP\n\\fB.x\\fR is\n.PP\n.RS 4\n.nf\n\
             xargs \\-d \\*(Aq\\\\n\\*(Aq \\(gaa\\(ga \\(ti \\(ha\n\\&.y\n.fi\n.RE\n"
        );
    }

    #[test]
    fn a_row_is_a_term_and_what_it_is() {
        let text = "| a | b | c |\n| --- | --- | --- |\n| `x` | y | z |\n";
        assert_eq!(
            page_of("T", &blocks(text)),
            ".SH T\n.TP\n\\fBx\\fR\nb: y\n.br\nc: z\n"
        );
    }
}
