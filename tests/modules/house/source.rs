//! The source text of the program: which files there are, and their code alone.

use std::fs;
use std::path::Path;

/// The names that lead to a file from the crate: `logs`, `times`.
pub type Names = Vec<String>;

/// A file of `src`: its path without the ending, as in `logs/times/mod`, and its code
/// without remarks, strings and tests.
pub struct Source {
    pub path: String,
    pub code: String,
}

impl Source {
    pub fn of(path: String, text: &str) -> Self {
        Source {
            path,
            code: without_tests(&blanked(text)),
        }
    }

    pub fn names(&self) -> Names {
        let names = self.path.split('/').map(str::to_owned);
        names.filter(|name| name != "mod").collect()
    }
}

/// All files but the two that only list or call others.
pub fn sources() -> Vec<Source> {
    let mut found = Vec::new();
    collect(Path::new("src"), "", &mut found);
    found.retain(|source| !matches!(source.path.as_str(), "lib" | "main"));
    found.sort_by(|one, other| one.path.cmp(&other.path));
    assert!(found.len() > 100, "only {} files", found.len());
    found
}

fn collect(folder: &Path, above: &str, found: &mut Vec<Source>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let stem = path.file_stem().unwrap().to_str().unwrap();
        if path.is_dir() {
            collect(&path, &format!("{above}{stem}/"), found);
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            let text = fs::read_to_string(&path).unwrap();
            found.push(Source::of(format!("{above}{stem}"), &text));
        }
    }
}

/// The text with spaces for what stands in remarks and in quotes; lines stay lines.
fn blanked(text: &str) -> String {
    let letters: Vec<char> = text.chars().collect();
    let mut code = String::new();
    let mut at = 0;
    while at < letters.len() {
        let end = end_of_blank(&letters, at);
        if end == at {
            code.push(letters[at]);
            at += 1;
        } else {
            let passed = letters[at..end].iter();
            code.extend(passed.map(|&letter| if letter == '\n' { '\n' } else { ' ' }));
            at = end;
        }
    }
    code
}

/// Where the remark, string or character that begins here ends; here, if none begins.
fn end_of_blank(letters: &[char], at: usize) -> usize {
    let is_at = |place: usize, text: &str| {
        let mut expected = text.chars().enumerate();
        expected.all(|(index, letter)| letters.get(place + index) == Some(&letter))
    };
    let after = |from: usize, text: &str| {
        let found = (from..letters.len()).find(|&place| is_at(place, text));
        found.map_or(letters.len(), |place| place + text.len())
    };
    let is_in_name = at > 0 && (letters[at - 1].is_alphanumeric() || letters[at - 1] == '_');
    match letters[at] {
        '/' if is_at(at, "//") => after(at, "\n") - 1,
        '/' if is_at(at, "/*") => after(at, "*/"),
        'r' if !is_in_name && (is_at(at, "r\"") || is_at(at, "r#")) => {
            let hashes = letters[at + 1..].iter().take_while(|&&c| c == '#').count();
            match letters.get(at + 1 + hashes) {
                Some('"') => after(at + hashes + 2, &format!("\"{}", "#".repeat(hashes))),
                _ => at,
            }
        }
        '"' => {
            let mut end = at + 1;
            while letters.get(end).is_some_and(|&letter| letter != '"') {
                end += if letters[end] == '\\' { 2 } else { 1 };
            }
            (end + 1).min(letters.len())
        }
        // A character, and not the name of a lifetime.
        '\'' if is_at(at + 1, "\\") => after(at + 3, "'"),
        '\'' if is_at(at + 2, "'") => at + 3,
        _ => at,
    }
}

/// Place of the first brace or semicolon from here on, outside round and square brackets.
pub fn find_body(code: &str, from: usize) -> usize {
    let mut depth = 0;
    for (at, letter) in code[from..].char_indices() {
        match letter {
            '(' | '[' => depth += 1,
            ')' | ']' => depth -= 1,
            '{' | ';' if depth == 0 => return from + at,
            _ => {}
        }
    }
    code.len()
}

/// Place after the bracket that closes the first one from here on.
pub fn after_braces(code: &str, from: usize) -> usize {
    let mut depth = 0;
    for (at, letter) in code[from..].char_indices() {
        match letter {
            '{' => depth += 1,
            '}' => depth -= 1,
            _ => continue,
        }
        if depth == 0 {
            return from + at + 1;
        }
    }
    code.len()
}

/// Takes out every item that is built for tests only.
fn without_tests(code: &str) -> String {
    const MARK: &str = "#[cfg(test)]";
    let mut left = String::new();
    let mut from = 0;
    while let Some(at) = code[from..].find(MARK) {
        let start = from + at;
        left.push_str(&code[from..start]);
        let body = find_body(code, start);
        from = if code[body..].starts_with('{') {
            after_braces(code, body)
        } else {
            (body + 1).min(code.len())
        };
    }
    left + &code[from..]
}
