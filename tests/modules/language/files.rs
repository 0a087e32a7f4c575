//! Each message file against the English one, and all against the code.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement, Resource};
use fluent_syntax::parser::parse;
use fluent_syntax::serializer::serialize;
use simmerline::language::{LANGUAGES, Language, STILL_TO_TRANSLATE};

/// A remark that says that a message is rightly as in English.
const AS_IN_ENGLISH: &str = "As in English";
/// Words shorter than this are taken for units and symbols.
const SHORTEST_WORD: usize = 4;

/// One message.
#[derive(Default)]
pub struct Entered {
    /// As the file has it, without its name.
    pub text: String,
    /// Letters, figures and marks outside of what goes in.
    pub words: String,
    pub variables: BTreeSet<String>,
    /// Messages within it: what goes into those is looked at there.
    pub within: BTreeSet<String>,
    pub remark: String,
    /// Still to translate: all else is that of the English.
    pub is_marked: bool,
}

pub fn file_of(language: &Language) -> String {
    let path = format!("templates/languages/{}.ftl", language.code);
    fs::read_to_string(&path).unwrap_or_else(|error| panic!("{path}: {error}"))
}

/// The messages of a language by name.
pub fn messages_of(language: &Language) -> BTreeMap<String, Entered> {
    let text = file_of(language);
    let resource =
        parse(text).unwrap_or_else(|(_, faults)| panic!("{}: {faults:?}", language.code));
    let mut messages = BTreeMap::new();
    for entry in &resource.body {
        match entry {
            Entry::Message(message) => {
                let pattern = message.value.as_ref().expect("a message says something");
                let mut found = Entered {
                    text: serialized(entry),
                    words: String::new(),
                    variables: BTreeSet::new(),
                    within: BTreeSet::new(),
                    remark: message
                        .comment
                        .as_ref()
                        .map_or_else(String::new, |comment| comment.content.join("\n")),
                    is_marked: false,
                };
                gather(pattern, &mut found);
                let name = message.id.name.clone();
                let twice = messages.insert(name.clone(), found).is_some();
                assert!(!twice, "{}: \"{name}\" stands twice", language.code);
            }
            Entry::Junk { content } => panic!("{}: not understood: {content}", language.code),
            _ => {}
        }
    }
    if *language != Language::ENGLISH {
        put_english_where_marked(&mut messages);
    }
    messages
}

fn put_english_where_marked(messages: &mut BTreeMap<String, Entered>) {
    let mut english = messages_of(&Language::ENGLISH);
    let marked = messages.iter_mut();
    for (name, message) in marked.filter(|(_, message)| message.text == STILL_TO_TRANSLATE) {
        let of_english = english.remove(name);
        *message = of_english.unwrap_or_else(|| panic!("\"{name}\" is not in English"));
        message.is_marked = true;
    }
}

/// Whether nothing of a language is still to translate.
pub fn is_whole(language: &Language) -> bool {
    let messages = messages_of(language);
    messages.values().all(|message| !message.is_marked)
}

fn serialized(entry: &Entry<String>) -> String {
    let Entry::Message(message) = entry else {
        return String::new();
    };
    let mut alone = message.clone();
    alone.comment = None;
    let whole = serialize(&Resource {
        body: vec![Entry::Message(alone)],
    });
    let (_, text) = whole.split_once('=').expect("a message has a value");
    text.trim().to_owned()
}

fn gather(pattern: &Pattern<String>, found: &mut Entered) {
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => found.words.push_str(value),
            PatternElement::Placeable { expression } => gather_expression(expression, found),
        }
    }
}

fn gather_expression(expression: &Expression<String>, found: &mut Entered) {
    let mut inline = |inline: &InlineExpression<String>| match inline {
        InlineExpression::VariableReference { id } => {
            found.variables.insert(id.name.clone());
        }
        InlineExpression::MessageReference { id, .. } => {
            found.within.insert(id.name.clone());
        }
        InlineExpression::StringLiteral { .. } => {}
        other => panic!("only arguments go into a message: {other:?}"),
    };
    match expression {
        Expression::Inline(expression) => inline(expression),
        Expression::Select { selector, variants } => {
            inline(selector);
            for variant in variants {
                gather(&variant.value, found);
                found.words.push(' ');
            }
        }
    }
}

#[test]
fn every_language_has_every_message_with_all_that_goes_into_it() {
    let english = messages_of(&Language::ENGLISH);
    for language in LANGUAGES {
        let messages = messages_of(&language);
        let code = language.code;
        for (name, of_english) in &english {
            let message = messages.get(name);
            let message = message.unwrap_or_else(|| panic!("{code}: no message \"{name}\""));
            assert_eq!(
                (&message.variables, &message.within),
                (&of_english.variables, &of_english.within),
                "{code}: what goes into \"{name}\""
            );
        }
        for name in messages.keys() {
            assert!(
                english.contains_key(name),
                "{code}: \"{name}\" is not in English"
            );
        }
    }
}

#[test]
fn no_message_is_left_in_english() {
    let english = messages_of(&Language::ENGLISH);
    let mut left = Vec::new();
    for language in LANGUAGES.iter().skip(1) {
        for (name, message) in messages_of(language) {
            let has_words = message
                .words
                .split(|letter: char| !letter.is_alphabetic())
                .any(|word| word.chars().count() >= SHORTEST_WORD);
            let is_same = message.words == english[&name].words;
            if has_words && is_same && !message.is_marked && !message.remark.contains(AS_IN_ENGLISH)
            {
                left.push(format!("{}: {name} = {}", language.code, message.text));
            }
        }
    }
    assert!(
        left.is_empty(),
        "left in English; a message that is rightly the same has the remark \"# {AS_IN_ENGLISH}\" above it:\n{}",
        left.join("\n")
    );
}

#[test]
fn names_of_languages_and_their_files_agree() {
    let files = fs::read_dir("templates/languages").unwrap();
    let mut files: Vec<String> = files
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    files.sort();
    let mut expected: Vec<String> = LANGUAGES
        .iter()
        .map(|language| format!("{}.ftl", language.code))
        .collect();
    expected.sort();
    assert_eq!(files, expected);
}

pub fn sources(folder: &Path, ending: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(sources(&path, ending));
        } else if path.extension().is_some_and(|found| found == ending) {
            found.push(path);
        }
    }
    found
}

/// Names in quotes in the code, and beginnings of names that the code completes.
fn named_in_code() -> (BTreeSet<String>, Vec<String>) {
    let mut whole = BTreeSet::new();
    let mut begun = Vec::new();
    for path in sources(Path::new("src"), "rs") {
        let code = fs::read_to_string(&path).unwrap();
        for quoted in code.split('"').skip(1) {
            let is_name = |letter: char| {
                letter.is_ascii_lowercase() || letter.is_ascii_digit() || letter == '-'
            };
            if let Some((start, _)) = quoted.split_once('{') {
                if start.ends_with('-') && start.chars().all(is_name) {
                    begun.push(start.to_owned());
                }
            } else if !quoted.is_empty() && quoted.chars().all(is_name) {
                whole.insert(quoted.to_owned());
            }
        }
    }
    (whole, begun)
}

#[test]
fn every_message_is_used() {
    let (whole, begun) = named_in_code();
    let templates: String = ["typ", "html"]
        .iter()
        .flat_map(|ending| sources(Path::new("templates"), ending))
        .map(|path| fs::read_to_string(path).unwrap())
        .collect();
    let english = messages_of(&Language::ENGLISH);
    for name in english.keys() {
        let mut others = english.values();
        let is_within = others.any(|other| other.within.contains(name));
        let is_used = match name.strip_prefix("page-") {
            Some(word) => templates.contains(&format!("\"{word}\"")),
            None => whole.contains(name) || begun.iter().any(|start| name.starts_with(start)),
        };
        assert!(is_used || is_within, "nothing uses \"{name}\"");
    }
}

#[test]
fn every_message_that_the_code_names_is_there() {
    let english = messages_of(&Language::ENGLISH);
    for path in sources(Path::new("src"), "rs") {
        let code = fs::read_to_string(&path).unwrap();
        let squeezed: String = code.split_whitespace().collect();
        for start in ["message!(\"", "Message::new(\""] {
            for named in squeezed.split(start).skip(1) {
                let (name, _) = named.split_once('"').unwrap();
                let place = path.display();
                assert!(english.contains_key(name), "{place}: no message \"{name}\"");
            }
        }
    }
    for path in sources(Path::new("templates"), "typ") {
        let template = fs::read_to_string(&path).unwrap();
        for named in template.split("words.at(\"").skip(1) {
            let (word, _) = named.split_once('"').unwrap();
            let name = format!("page-{word}");
            let place = path.display();
            assert!(
                english.contains_key(&name),
                "{place}: no message \"{name}\""
            );
        }
    }
}

#[test]
fn words_of_templates_keep_what_the_template_puts_in() {
    let placeholders = |message: &Entered| -> BTreeSet<String> {
        let parts = message.words.split('[').skip(1);
        let named = parts.filter_map(|part| Some(part.split_once(']')?.0.to_owned()));
        named.collect()
    };
    let english = messages_of(&Language::ENGLISH);
    let held = english.iter().filter(|(name, _)| name.starts_with("page-"));
    let held: Vec<_> = held
        .filter(|(_, message)| message.words.contains('['))
        .collect();
    assert!(held.len() >= 3, "{} words of templates", held.len());
    for language in LANGUAGES.iter().skip(1) {
        let messages = messages_of(language);
        for (name, of_english) in &held {
            let found = placeholders(&messages[*name]);
            assert_eq!(
                found,
                placeholders(of_english),
                "{}: \"{name}\"",
                language.code
            );
        }
    }
}

/// Numbers of a text, each as its figures alone, so that 1.5 and 1,5 are the same.
fn numbers(text: &str) -> Vec<String> {
    let is_figure = |letter: char| letter.is_ascii_digit() || letter == '.' || letter == ',';
    let mut numbers: Vec<String> = text
        .split(|letter: char| !is_figure(letter))
        .map(|number| number.chars().filter(char::is_ascii_digit).collect())
        .filter(|figures: &String| !figures.is_empty())
        .collect();
    numbers.sort();
    numbers
}

fn sentences(text: &str) -> usize {
    let ends = |(index, letter): (usize, char)| {
        let rest = &text[index + letter.len_utf8()..];
        matches!(letter, '.' | '!' | '?') && (rest.is_empty() || rest.starts_with([' ', '\n']))
    };
    text.char_indices().filter(|end| ends(*end)).count()
}

/// Cautions, and what else is said of the safety of food and water.
fn is_safety(name: &str) -> bool {
    name.starts_with("caution-")
        || name.starts_with("danger-")
        || ["year-note-water", "cooking-foods-about", "headline-caution"].contains(&name)
}

#[test]
fn cautions_have_every_sentence_and_every_number_of_the_english() {
    let english = messages_of(&Language::ENGLISH);
    for language in LANGUAGES.iter().skip(1) {
        let messages = messages_of(language);
        let code = language.code;
        let cautions = english.iter().filter(|(name, _)| is_safety(name));
        let mut held = 0;
        for (name, of_english) in cautions {
            if name == "caution-governs" {
                assert!(!messages[name].words.trim().is_empty(), "{code}: {name}");
                continue;
            }
            let (here, there) = (&messages[name].text, &of_english.text);
            assert_eq!(
                numbers(here),
                numbers(there),
                "{code}: numbers of \"{name}\""
            );
            assert_eq!(
                sentences(here),
                sentences(there),
                "{code}: sentences of \"{name}\""
            );
            held += 1;
        }
        assert!(held > 20, "{held} messages of cautions");
    }
}

#[test]
fn numbers_that_stand_in_a_message_are_those_of_the_english() {
    let english = messages_of(&Language::ENGLISH);
    for language in LANGUAGES.iter().skip(1) {
        for (name, message) in messages_of(language) {
            let (here, there) = (numbers(&message.text), numbers(&english[&name].text));
            let here: BTreeSet<&String> = here.iter().collect();
            let there: BTreeSet<&String> = there.iter().collect();
            assert_eq!(here, there, "{}: numbers of \"{name}\"", language.code);
        }
    }
}
