//! The structure of a PDF, its outline and its links: what a screen reader goes by.
//!
//! # Source
//! ISO 32000-1:2008, 12.3.3 (outlines), 12.5.6.5 (links), 14.7 (logical structure).

use std::collections::HashMap;

use lopdf::{Dictionary, Document, Object, ObjectId};

/// An element of the structure on the way to a leaf: its type, and which of its type it is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Element {
    pub kind: String,
    pub number: usize,
}

/// A piece of content in reading order.
#[derive(Debug, Clone)]
pub struct Leaf {
    /// From the root down.
    pub path: Vec<Element>,
    /// From 0.
    pub page: usize,
    /// Its number on the page.
    pub content: i64,
}

impl Leaf {
    pub fn element(&self, kind: &str) -> Option<&Element> {
        self.path.iter().find(|element| element.kind == kind)
    }

    /// What it belongs to, whatever its type of text within that.
    pub fn block(&self) -> &[Element] {
        let is_inline =
            |element: &Element| matches!(element.kind.as_str(), "Span" | "Link" | "Strong" | "Em");
        let end = self.path.iter().rposition(|element| !is_inline(element));
        &self.path[..end.map_or(0, |end| end + 1)]
    }

    pub fn is_heading(&self) -> bool {
        self.path.iter().any(|element| {
            let number = element.kind.strip_prefix('H');
            number.is_some_and(|number| number.is_empty() || number.parse::<u8>().is_ok())
        })
    }
}

/// An entry of the outline.
#[derive(Debug, Clone)]
pub struct Entry {
    /// 1: of the document.
    pub depth: usize,
    pub title: String,
    pub page: Option<usize>,
}

/// What a PDF says of itself.
#[derive(Debug)]
pub struct Tags {
    /// In reading order.
    pub leaves: Vec<Leaf>,
    /// Places of leaves, by page and number on the page.
    by_content: HashMap<(usize, i64), usize>,
    pub outline: Vec<Entry>,
    pub links: usize,
}

impl Tags {
    /// The piece of a page with a number.
    pub fn leaf(&self, page: usize, content: i64) -> Option<&Leaf> {
        let index = self.by_content.get(&(page, content))?;
        self.leaves.get(*index)
    }
}

pub fn read_tags(pdf: &Document) -> Tags {
    let pages = pdf.get_pages().into_values().enumerate();
    let pages: HashMap<ObjectId, usize> = pages.map(|(index, id)| (id, index)).collect();
    let mut reading = Reading {
        pdf,
        pages,
        leaves: Vec::new(),
        elements: 0,
    };
    let catalog = pdf.catalog().unwrap();
    let root = catalog.get_deref(b"StructTreeRoot", pdf).unwrap();
    let children = root.as_dict().unwrap().get(b"K").unwrap();
    reading.follow(children, &[], None);
    let mut outline = Vec::new();
    if let Ok(root) = catalog.get_deref(b"Outlines", pdf) {
        reading.entries(root.as_dict().unwrap(), 1, &mut outline);
    }
    let links = reading.pages.keys().map(|&page| links_on(pdf, page)).sum();
    let by_content = reading.leaves.iter().enumerate();
    let by_content = by_content.map(|(index, leaf)| ((leaf.page, leaf.content), index));
    Tags {
        by_content: by_content.collect(),
        leaves: reading.leaves,
        outline,
        links,
    }
}

fn links_on(pdf: &Document, page: ObjectId) -> usize {
    let page = pdf.get_dictionary(page).unwrap();
    let Ok(annotations) = page.get_deref(b"Annots", pdf) else {
        return 0;
    };
    let annotations = annotations.as_array().unwrap().iter();
    let kinds = annotations.filter_map(|annotation| {
        let (_, annotation) = pdf.dereference(annotation).ok()?;
        annotation
            .as_dict()
            .ok()?
            .get(b"Subtype")
            .ok()?
            .as_name()
            .ok()
    });
    kinds.filter(|kind| kind == b"Link").count()
}

struct Reading<'d> {
    pdf: &'d Document,
    pages: HashMap<ObjectId, usize>,
    leaves: Vec<Leaf>,
    elements: usize,
}

impl<'d> Reading<'d> {
    fn follow(&mut self, node: &'d Object, path: &[Element], page: Option<usize>) {
        let (_, node) = self.pdf.dereference(node).unwrap();
        match node {
            Object::Integer(content) => self.leaf(path, page, *content),
            Object::Array(children) => {
                for child in children {
                    self.follow(child, path, page);
                }
            }
            Object::Dictionary(element) => self.element(element, path, page),
            other => panic!("{other:?} in the structure"),
        }
    }

    fn element(&mut self, element: &'d Dictionary, path: &[Element], page: Option<usize>) {
        let own_page = element.get(b"Pg").and_then(Object::as_reference);
        let page = own_page.ok().map(|id| self.pages[&id]).or(page);
        match element.get(b"Type").and_then(Object::as_name) {
            Ok(b"MCR") => {
                let content = element.get(b"MCID").unwrap().as_i64().unwrap();
                return self.leaf(path, page, content);
            }
            Ok(b"OBJR") => return,
            _ => {}
        }
        let kind = element.get(b"S").unwrap().as_name().unwrap();
        self.elements += 1;
        let own = Element {
            kind: String::from_utf8_lossy(kind).into_owned(),
            number: self.elements,
        };
        if let Ok(children) = element.get(b"K") {
            self.follow(children, &[path, &[own]].concat(), page);
        }
    }

    fn leaf(&mut self, path: &[Element], page: Option<usize>, content: i64) {
        self.leaves.push(Leaf {
            path: path.to_vec(),
            page: page.expect("content is on a page"),
            content,
        });
    }

    fn entries(&self, parent: &'d Dictionary, depth: usize, outline: &mut Vec<Entry>) {
        let mut next = parent.get_deref(b"First", self.pdf).ok();
        while let Some(entry) = next {
            let entry = entry.as_dict().unwrap();
            let title = lopdf::decode_text_string(entry.get(b"Title").unwrap()).unwrap();
            let page = self.page_of(entry);
            outline.push(Entry { depth, title, page });
            self.entries(entry, depth + 1, outline);
            next = entry.get_deref(b"Next", self.pdf).ok();
        }
    }

    fn page_of(&self, entry: &'d Dictionary) -> Option<usize> {
        let place = match entry.get_deref(b"Dest", self.pdf) {
            Ok(place) => place,
            Err(_) => {
                let action = entry.get_deref(b"A", self.pdf).ok()?;
                action.as_dict().ok()?.get_deref(b"D", self.pdf).ok()?
            }
        };
        let page = place.as_array().ok()?.first()?.as_reference().ok()?;
        self.pages.get(&page).copied()
    }
}
