//! No function that does not fit a screen or two. Tests beside the code are left out.

use super::source::{Source, after_braces, find_body, sources};

const MOST_LINES: usize = 80;

/// Functions that may be longer, since all they hold is a flat table: file and name, with
/// the reason beside it.
const FLAT_TABLES: &[(&str, &str)] = &[
    // A notice, and what it says.
    ("logs/notice", "message"),
];

/// The function that reads as a list of steps.
const STEPS: (&str, &str) = ("procedure/assess", "assess");
const MOST_STEPS_LINES: usize = 40;

/// A function with the number of its lines, from `fn` to its last bracket.
#[derive(Debug)]
struct Function {
    file: String,
    name: String,
    lines: usize,
}

impl Function {
    fn is_in(&self, list: &[(&str, &str)]) -> bool {
        list.contains(&(&self.file, &self.name))
    }
}

fn functions_of(source: &Source) -> Vec<Function> {
    let mut found = Vec::new();
    let code = &source.code;
    for (at, word) in code.match_indices("fn ") {
        let before = code[..at].chars().next_back();
        let is_word = before.is_none_or(|letter| !letter.is_alphanumeric() && letter != '_');
        let signature = at + word.len();
        let letters = code[signature..].chars();
        let name: String = letters
            .take_while(|&letter| letter.is_alphanumeric() || letter == '_')
            .collect();
        let body = find_body(code, signature);
        if is_word && !name.is_empty() && code[body..].starts_with('{') {
            let end = after_braces(code, body);
            found.push(Function {
                file: source.path.clone(),
                name,
                lines: 1 + code[at..end].matches('\n').count(),
            });
        }
    }
    found
}

fn functions() -> Vec<Function> {
    let found: Vec<Function> = sources().iter().flat_map(functions_of).collect();
    assert!(found.len() > 500, "only {} functions", found.len());
    found
}

#[test]
fn no_function_is_longer_than_eighty_lines_but_flat_tables() {
    let mut long = functions();
    long.retain(|function| function.lines > MOST_LINES);
    for table in FLAT_TABLES {
        let is_it = |function: &Function| function.is_in(&[*table]);
        assert!(
            long.iter().any(is_it),
            "no exception is needed for {table:?}"
        );
    }
    long.retain(|function| !function.is_in(FLAT_TABLES));
    assert!(long.is_empty(), "over {MOST_LINES} lines: {long:#?}");
}

#[test]
fn the_steps_of_a_rating_fit_one_screen() {
    let functions = functions();
    let steps = functions.iter().find(|function| function.is_in(&[STEPS]));
    let steps = steps.expect("the function that lists the steps");
    let fits = steps.lines <= MOST_STEPS_LINES;
    assert!(fits, "{steps:?}");
}

#[test]
fn lines_are_counted_to_the_bracket_that_closes_the_function() {
    let text = "fn cool(heat: [f64; 3]) -> Heat {\n    stir('}', \"{\")\n}\n\nfn rest();\n";
    let found = functions_of(&Source::of("water".to_owned(), text));
    assert_eq!(found.len(), 1);
    assert_eq!((found[0].name.as_str(), found[0].lines), ("cool", 3));
}
