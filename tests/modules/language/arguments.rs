//! What the code puts into each message, held against what goes into it in the files.
//!
//! The code is read, not run, so that a branch that no test reaches is held as well.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

use simmerline::language::Language;

use super::code::{Name, Reader, read};
use super::files::{Entered, messages_of, sources};

/// All that goes into a message, and into the messages within it.
fn needed(messages: &BTreeMap<String, Entered>, name: &str) -> BTreeSet<String> {
    let message = &messages[name];
    let within = message.within.iter();
    let within = within.flat_map(|inner| needed(messages, inner));
    message.variables.iter().cloned().chain(within).collect()
}

/// What does not go with the messages, in files of code by their place.
fn faults(files: &BTreeMap<String, Reader>, messages: &BTreeMap<String, Entered>) -> Vec<String> {
    let finished = || files.values().flat_map(|reader| &reader.finished);
    let whole: BTreeSet<&String> = finished().filter_map(|said| said.name.whole()).collect();
    let mut held = BTreeSet::new();
    let mut faults = Vec::new();
    for (place, reader) in files {
        let untold = reader.untold.iter();
        faults.extend(untold.map(|untold| format!("{place}: cannot be told: {untold}")));
        for said in &reader.finished {
            let names = messages.keys().filter(|name| match &said.name {
                Name::Whole(whole) => whole == *name,
                Name::Begun(start) => name.starts_with(start) && !whole.contains(name),
            });
            for name in names {
                held.insert(name);
                let (needed, given) = (needed(messages, name), &said.arguments);
                if needed != *given {
                    faults.push(format!(
                        "{place}: \"{name}\" takes {needed:?} and is given {given:?}"
                    ));
                }
            }
        }
    }
    // Words of templates, and names that stand in tables: nothing is put into them.
    let within: BTreeSet<&String> = messages.values().flat_map(|one| &one.within).collect();
    for name in messages.keys() {
        let is_alone = !held.contains(name) && !within.contains(name);
        if is_alone && !needed(messages, name).is_empty() {
            faults.push(format!("nothing is put into \"{name}\""));
        }
    }
    faults
}

#[test]
fn every_message_is_given_what_goes_into_it_and_nothing_else() {
    let files = sources(Path::new("src"), "rs").into_iter().map(|path| {
        let code = fs::read_to_string(&path).unwrap();
        (path.display().to_string(), read(&code))
    });
    let files: BTreeMap<String, Reader> = files.collect();
    let finished: usize = files.values().map(|reader| reader.finished.len()).sum();
    assert!(finished > 600, "{finished} messages in the code");
    let faults = faults(&files, &messages_of(&Language::ENGLISH));
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

/// Faults of a function's body, where `one` takes `$a` and `two` takes `$a` and `$b`.
fn faults_of(body: &str) -> Vec<String> {
    let message = |variables: &[&str]| Entered {
        variables: variables.iter().map(ToString::to_string).collect(),
        ..Entered::default()
    };
    let messages = [("one", message(&["a"])), ("two", message(&["a", "b"]))];
    let messages = messages.map(|(name, message)| (name.to_owned(), message));
    let code = format!("fn say() {{ {body} }}");
    let files = BTreeMap::from([("place".to_owned(), read(&code))]);
    faults(&files, &BTreeMap::from(messages))
}

#[test]
fn what_is_put_in_is_followed_from_where_a_message_is_chosen() {
    let both = "message!(\"one\", a = 1), message!(\"two\", a = 1, b = 2)";
    for body in [
        format!("[{both}]"),
        "match x { 1 => message!(\"one\"), _ => message!(\"two\", b = 2) }.with(\"a\", 1)".to_owned(),
        "let said = if x { message!(\"one\") } else { message!(\"two\").with(\"b\", 2) }; say(said.with(\"a\", 1))".to_owned(),
        "let of = |said: Message| said.with(\"a\", 1); [of(message!(\"one\")), of(message!(\"two\", b = 2))]".to_owned(),
        "let said = match x { None => return None, Some(_) => message!(\"one\") }; drop(two(message!(\"two\", a = said.with(\"a\", 1), b = 3)))".to_owned(),
    ] {
        assert_eq!(faults_of(&body), Vec::<String>::new(), "{body}");
    }
    for (body, expected) in [
        (
            format!("[{both}, message!(\"one\")]"),
            "\"one\" takes {\"a\"} and is given {}",
        ),
        (
            format!("[{both}, message!(\"one\", a = 1, c = 1)]"),
            "\"one\" takes {\"a\"} and is given {\"a\", \"c\"}",
        ),
        (
            format!(
                "drop([{both}]); match x {{ 1 => message!(\"one\"), _ => message!(\"two\") }}.with(\"a\", 1)"
            ),
            "\"two\" takes {\"a\", \"b\"} and is given {\"a\"}",
        ),
        (
            format!("drop([{both}]); other().with(\"a\", 1)"),
            "cannot be told",
        ),
        (
            "message!(\"one\", a = 1)".to_owned(),
            "nothing is put into \"two\"",
        ),
    ] {
        let found = faults_of(&body);
        assert!(
            found.len() == 1 && found[0].contains(expected),
            "{body}: {found:?}"
        );
    }
}
