//! The frame of the pages: bookmarks, references that lead somewhere, the order of reading, who
//! made it.

use std::collections::BTreeMap;

use lopdf::{Dictionary, Document, Object};
use simmerline::language::{LANGUAGES, UnitSystem, Words};
use simmerline::report::Edition;
use simmerline::report::words::build;

use crate::language::files::messages_of;
use crate::report::campaigns::*;
use crate::report::pdf::{pages, squeezed};

fn text_of(object: &Object) -> String {
    lopdf::decode_text_string(object).unwrap()
}

fn follow<'a>(pdf: &'a Document, object: &'a Object) -> &'a Object {
    pdf.dereference(object).unwrap().1
}

/// Titles of the bookmarks in their order, each with its level.
fn bookmarks(pdf: &Document) -> Vec<(usize, String)> {
    let catalog = pdf.catalog().unwrap();
    let outlines = follow(pdf, catalog.get(b"Outlines").unwrap());
    let mut found = Vec::new();
    gather(pdf, outlines.as_dict().unwrap(), 1, &mut found);
    found
}

fn gather(pdf: &Document, parent: &Dictionary, level: usize, found: &mut Vec<(usize, String)>) {
    let mut next = parent.get(b"First").ok();
    while let Some(object) = next {
        let entry = follow(pdf, object).as_dict().unwrap();
        found.push((level, text_of(entry.get(b"Title").unwrap())));
        gather(pdf, entry, level + 1, found);
        next = entry.get(b"Next").ok();
    }
}

#[test]
fn bookmarks_begin_with_page_one_and_number_the_sections_alone() {
    for (name, assessment) in samples() {
        let report = build(&assessment, &edition());
        let pdf = Document::load_mem(&pdf_of(&assessment)).unwrap();
        let bookmarks = bookmarks(&pdf);
        assert_eq!(bookmarks[0], (1, report.title.clone()), "{name}");
        let sections = report.sections.iter();
        let expected: Vec<String> = sections
            .map(|section| format!("{} {}", section.number, section.name))
            .collect();
        let top = bookmarks[1..].iter().filter(|(level, _)| *level == 1);
        let top: Vec<&String> = top.map(|(_, title)| title).collect();
        assert_eq!(top, expected.iter().collect::<Vec<_>>(), "{name}");
        for (_, title) in bookmarks.iter().filter(|(level, _)| *level > 1) {
            let is_numbered = title.starts_with(|first: char| first.is_ascii_digit());
            assert!(!is_numbered, "{name}: {title}");
        }
    }
}

/// The pages, by their objects, counted from one.
fn page_numbers(pdf: &Document) -> BTreeMap<lopdf::ObjectId, u32> {
    let pages = pdf.get_pages().into_iter();
    pages.map(|(number, id)| (id, number)).collect()
}

/// Where names lead to: the destinations of the catalog's tree of names.
fn named_places(pdf: &Document) -> BTreeMap<Vec<u8>, Object> {
    let mut named = BTreeMap::new();
    let names = pdf.catalog().unwrap().get(b"Names");
    let names = names.map(|names| follow(pdf, names).as_dict().unwrap());
    if let Ok(tree) = names.and_then(|names| names.get(b"Dests")) {
        gather_names(pdf, follow(pdf, tree).as_dict().unwrap(), &mut named);
    }
    named
}

fn gather_names(pdf: &Document, node: &Dictionary, named: &mut BTreeMap<Vec<u8>, Object>) {
    if let Ok(kids) = node.get(b"Kids") {
        for kid in follow(pdf, kids).as_array().unwrap() {
            gather_names(pdf, follow(pdf, kid).as_dict().unwrap(), named);
        }
    }
    if let Ok(names) = node.get(b"Names") {
        for pair in follow(pdf, names).as_array().unwrap().chunks(2) {
            named.insert(pair[0].as_str().unwrap().to_vec(), pair[1].clone());
        }
    }
}

/// A destination, which may be named, as a page and a place on it.
fn place(pdf: &Document, target: &Object, named: &BTreeMap<Vec<u8>, Object>) -> Vec<Object> {
    match follow(pdf, target) {
        Object::String(name, _) => place(pdf, &named[name], named),
        Object::Dictionary(one) => place(pdf, one.get(b"D").unwrap(), named),
        Object::Array(place) => place.clone(),
        other => panic!("{other:?} is no destination"),
    }
}

/// From which page to which the links of a document lead.
fn links(pdf: &Document) -> Vec<(u32, u32)> {
    let numbers = page_numbers(pdf);
    let named = named_places(pdf);
    let mut links = Vec::new();
    for (id, from) in &numbers {
        let page = pdf.get_dictionary(*id).unwrap();
        let Ok(annotations) = page.get(b"Annots") else {
            continue;
        };
        for annotation in follow(pdf, annotations).as_array().unwrap() {
            let annotation = follow(pdf, annotation).as_dict().unwrap();
            let target = annotation.get(b"Dest").or_else(|_| {
                let action = follow(pdf, annotation.get(b"A").unwrap()).as_dict();
                action.unwrap().get(b"D")
            });
            let target = place(pdf, target.unwrap(), &named);
            links.push((*from, numbers[&target[0].as_reference().unwrap()]));
        }
    }
    links
}

/// On which page each section begins, by the text of the pages.
fn first_pages(pdf: &Document, headings: &[String]) -> Vec<u32> {
    let pages = pages(pdf);
    let page_of = |heading: &String| {
        let found = pages
            .iter()
            .position(|page| page.contains(&squeezed(heading)));
        found.unwrap_or_else(|| panic!("{heading} is on no page")) as u32 + 1
    };
    headings.iter().map(page_of).collect()
}

#[test]
fn a_section_named_on_page_one_is_a_link_to_where_it_begins() {
    for name in ["open-dish", "dry-pot"] {
        let assessment = sample(name);
        let report = build(&assessment, &edition());
        let pdf = Document::load_mem(&pdf_of(&assessment)).unwrap();
        let headings: Vec<String> = report
            .sections
            .iter()
            .map(|section| format!("{} {}", section.number, section.name))
            .collect();
        let begins = first_pages(&pdf, &headings);
        let mut named = Vec::new();
        for section in &report.sections {
            let said = format!("section {}", section.number);
            let place: usize = section.number.parse().unwrap();
            if report.headline.caution.contains(&said) {
                named.push(begins[place - 1]);
            }
        }
        assert!(!named.is_empty(), "{name}");
        let links = links(&pdf);
        for page in named {
            assert!(links.contains(&(1, page)), "{name}: {links:?}");
        }
    }
}

#[test]
fn every_language_refers_to_sections_by_one_phrase_and_never_by_a_number_of_its_own() {
    for language in &LANGUAGES {
        let words = Words::new(*language, UnitSystem::Si);
        let setting = Edition { words, ..edition() }.setting();
        let phrase = setting.references.section.replace("[number]", "");
        let phrase = phrase.trim_end().to_lowercase();
        assert!(!phrase.is_empty(), "{}", language.code);
        for (name, message) in messages_of(language) {
            // Said in English.
            if message.is_marked {
                continue;
            }
            let text = message.text.to_lowercase();
            let place = format!("{}: {name} = {text}", language.code);
            for (at, _) in text.match_indices("{ $section }") {
                let before = text[..at].trim_end();
                assert!(before.ends_with(&phrase), "{place}");
            }
            // Of another document, it would lead to a section of this one.
            for (at, _) in text.match_indices(&format!("{phrase} ")) {
                let after = text[at + phrase.len() + 1..].chars().next();
                assert!(!after.is_some_and(|c| c.is_ascii_digit()), "{place}");
            }
        }
    }
}

/// Roles of the structure's elements in the order in which they are read.
fn roles(pdf: &Document) -> Vec<String> {
    let catalog = pdf.catalog().unwrap();
    let root = follow(pdf, catalog.get(b"StructTreeRoot").unwrap());
    let mut roles = Vec::new();
    gather_roles(pdf, root, &mut roles);
    roles
}

fn gather_roles(pdf: &Document, object: &Object, roles: &mut Vec<String>) {
    let kids = match follow(pdf, object) {
        Object::Array(kids) => kids.clone(),
        Object::Dictionary(element) => {
            if let Ok(role) = element.get(b"S").and_then(Object::as_name) {
                roles.push(String::from_utf8_lossy(role).into_owned());
            }
            element
                .get(b"K")
                .map_or_else(|_| Vec::new(), |kids| vec![kids.clone()])
        }
        _ => Vec::new(),
    };
    for kid in &kids {
        gather_roles(pdf, kid, roles);
    }
}

#[test]
fn reading_begins_at_the_head_of_page_one_and_not_at_its_foot() {
    for name in ["open-dish", "dry-pot", "kitchen-thermometer"] {
        let pdf = Document::load_mem(&pdf_of(&sample(name))).unwrap();
        let roles = roles(&pdf);
        let title = roles.iter().position(|role| role == "H1").unwrap();
        let links = roles.iter().position(|role| role == "Link").unwrap();
        // The letterhead and the kind of document stand above the title.
        assert!(title <= 8, "{name}: {:?}", &roles[..12]);
        assert!(title < links, "{name}");
    }
}

#[test]
fn an_author_is_always_named() {
    for (name, mut assessment) in samples() {
        let campaign = &mut assessment.tested.campaign;
        campaign.tester = None;
        campaign.report.laboratory = None;
        let report = build(&assessment, &edition());
        assert_eq!(report.author, "simmerline", "{name}");
    }
}
