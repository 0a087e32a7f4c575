//! A written time in pieces.

/// A piece of a written time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Token<'t> {
    Number(&'t str),
    Word(&'t str),
    Mark(char),
    Space,
}

/// The pieces of a written time, in lower case without accents.
pub fn tokens(text: &str) -> Vec<Token<'_>> {
    let mut tokens = Vec::new();
    let mut rest = text.trim();
    while let Some(first) = rest.chars().next() {
        let is_same = |c: char| {
            (first.is_ascii_digit() && c.is_ascii_digit())
                || (first.is_alphabetic() && c.is_alphabetic())
                || (first.is_whitespace() && c.is_whitespace())
        };
        let mark_end = first.len_utf8();
        let end = rest
            .find(|c: char| !is_same(c))
            .unwrap_or(rest.len())
            .max(mark_end);
        let (token, after) = rest.split_at(end);
        tokens.push(match first {
            _ if first.is_ascii_digit() => Token::Number(token),
            _ if first.is_alphabetic() => Token::Word(token),
            _ if first.is_whitespace() => Token::Space,
            '−' | '–' => Token::Mark('-'),
            mark => Token::Mark(mark),
        });
        rest = after;
    }
    tokens
}
