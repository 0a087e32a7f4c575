//! Links from "section 5" to where it is, in a web page that is put together.

use super::edition::References;

/// Elements in whose text nothing is linked: what is no text of the page, what is a heading or a
/// link by itself, and what others wrote.
const WITHOUT: [&str; 8] = ["style", "title", "svg", "a", "h1", "h2", "caption", "dt"];
/// Classes of the same.
const CLASSES: [&str; 3] = [
    "class=\"own\"",
    "class=\"letterhead\"",
    "class=\"subtitle\"",
];
/// Elements that have no end.
const VOID: [&str; 5] = ["meta", "br", "img", "input", "hr"];

/// The same page with links to its sections. The words that the language has for the second page
/// give way to `second`, which is what a web page has there, with a link to its target.
pub fn linked(page: &str, references: &References, second: Option<(&str, &str)>) -> String {
    let mut out = String::with_capacity(page.len() + page.len() / 50);
    let mut closed: Option<(&str, usize)> = None;
    let mut rest = page;
    while !rest.is_empty() {
        let start = rest.find('<').unwrap_or(rest.len());
        let (text, tagged) = rest.split_at(start);
        out += &match closed {
            Some(_) => text.to_owned(),
            None => linked_text(text, page, references, second),
        };
        let end = tagged.find('>').map_or(tagged.len(), |end| end + 1);
        let (tag, after) = tagged.split_at(end);
        closed = after_tag(tag, closed);
        out += tag;
        rest = after;
    }
    out
}

/// What is closed to links after a tag: the element that closed it, and how deep it is in it.
fn after_tag<'p>(tag: &'p str, closed: Option<(&'p str, usize)>) -> Option<(&'p str, usize)> {
    let is_end = tag.starts_with("</");
    let name = tag.trim_start_matches(['<', '/']);
    let name = name.split([' ', '>', '/', '\n']).next().unwrap_or("");
    let is_single = tag.ends_with("/>") || VOID.contains(&name) || name.starts_with('!');
    match closed {
        Some((of, 1)) if is_end && of == name => None,
        Some((of, depth)) if is_end && of == name => Some((of, depth - 1)),
        Some((of, depth)) if !is_single && of == name => Some((of, depth + 1)),
        Some(closed) => Some(closed),
        None if is_end || is_single => None,
        None => {
            let is_closed =
                WITHOUT.contains(&name) || CLASSES.iter().any(|class| tag.contains(class));
            is_closed.then_some((name, 1))
        }
    }
}

/// A piece of text with its links.
fn linked_text(
    text: &str,
    page: &str,
    references: &References,
    second: Option<(&str, &str)>,
) -> String {
    let mut out = String::new();
    let mut rest = text;
    let mut before = None;
    while let Some(first) = rest.chars().next() {
        let is_start = !before.is_some_and(char::is_alphanumeric);
        let found = is_start.then(|| found_at(rest, page, references, second));
        let taken = match found.flatten() {
            Some((length, link)) => {
                out += &link;
                length
            }
            None => {
                out.push(first);
                first.len_utf8()
            }
        };
        before = rest[..taken].chars().last();
        rest = &rest[taken..];
    }
    out
}

/// How much of a text is a reference, from its start, and the link that it becomes.
fn found_at(
    text: &str,
    page: &str,
    references: &References,
    second: Option<(&str, &str)>,
) -> Option<(usize, String)> {
    if let Some((length, number)) = numbered(text, &references.section) {
        let target = format!("section-{number}");
        let is_there = page.contains(&format!(" id=\"{target}\""));
        let link = || format!("<a href=\"#{target}\">{}</a>", &text[..length]);
        return is_there.then(|| (length, link()));
    }
    let (length, number) = numbered(text, &references.page)?;
    let (target, words) = second.filter(|_| number == "2")?;
    Some((length, format!("<a href=\"#{target}\">{words}</a>")))
}

/// How much of a text says a pattern, such as `section [number]`, and its number. Capital
/// letters count as small ones, and spaces may be ones that do not break.
fn numbered<'t>(text: &'t str, pattern: &str) -> Option<(usize, &'t str)> {
    let (prefix, _) = pattern.split_once("[number]")?;
    let mut characters = text.char_indices();
    for expected in prefix.chars() {
        let (_, found) = characters.next()?;
        let is_same = match expected {
            ' ' => matches!(found, ' ' | '\u{a0}' | '\n'),
            _ => found.to_lowercase().eq(expected.to_lowercase()),
        };
        if !is_same {
            return None;
        }
    }
    let from = characters.next()?.0;
    let digits = text[from..].find(|one: char| !one.is_ascii_digit());
    let digits = digits.unwrap_or(text.len() - from);
    let end = from + digits;
    let goes_on = text[end..].starts_with(char::is_alphanumeric);
    (digits > 0 && !goes_on).then(|| (end, &text[from..end]))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn references(section: &str, page: &str) -> References {
        References {
            section: section.to_owned(),
            page: page.to_owned(),
        }
    }

    fn english(page: &str) -> String {
        let second = Some(("summary", "All figures"));
        linked(
            page,
            &references("section [number]", "page [number]"),
            second,
        )
    }

    const PLACE: &str = "<h2 id=\"section-5\">5</h2>";

    #[test]
    fn a_section_that_is_there_is_linked() {
        assert_eq!(
            english(&format!("{PLACE}<p>Section 5, see section 5.</p>")),
            format!(
                "{PLACE}<p><a href=\"#section-5\">Section 5</a>, see \
                 <a href=\"#section-5\">section 5</a>.</p>"
            )
        );
        for text in [
            "section 6",
            "section 55",
            "subsection 5",
            "section 5a",
            "section",
        ] {
            let page = format!("{PLACE}<p>{text}</p>");
            assert_eq!(english(&page), page);
        }
    }

    #[test]
    fn spaces_that_do_not_break_and_other_languages_are_found() {
        let page = format!("{PLACE}<p>Sehemu ya\u{a0}5</p>");
        let found = linked(
            &page,
            &references("sehemu ya [number]", "ukurasa [number]"),
            None,
        );
        assert!(found.ends_with("<p><a href=\"#section-5\">Sehemu ya\u{a0}5</a></p>"));
    }

    #[test]
    fn headings_links_drawings_and_what_others_wrote_stay() {
        for page in [
            "<h2>section 5</h2>",
            "<a href=\"#\">section 5</a>",
            "<p class=\"own\">section 5 <b>section 5</b></p>",
            "<svg><g><text>section 5</text></g></svg>",
            "<p aria-label=\"section 5\"></p>",
            "<div class=\"letterhead\"><div>a</div>section 5</div>",
            "<style>section 5</style>",
        ] {
            let page = format!("{PLACE}{page}");
            assert_eq!(english(&page), page);
        }
        assert!(english(&format!("{PLACE}<a>b</a><br />section 5")).contains("#section-5"));
    }

    #[test]
    fn the_second_page_is_what_the_web_page_has_there() {
        let found = english("<p>(page 2), page 1</p>");
        assert_eq!(
            found,
            "<p>(<a href=\"#summary\">All figures</a>), page 1</p>"
        );
    }
}
