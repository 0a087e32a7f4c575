//! The tree of pages, of which readers make the pages in their order.

use std::collections::BTreeSet;

use lopdf::{Dictionary, Document, Object, ObjectId};

/// Deepest tree.
const DEEPEST: usize = 32;

/// The pages in their order, as far as they can be told.
pub fn page_ids(document: &Document) -> Vec<ObjectId> {
    let mut pages = Vec::new();
    if let Some(top) = top(document) {
        let _told_elsewhere = gather(document, top, &mut pages, &mut BTreeSet::new(), DEEPEST);
    }
    pages
}

/// Says where readers would differ over which pages there are.
///
/// # Source
/// ISO 32000-1:2008, 7.7.3 (page tree): nodes are `Pages` with `Kids` and their `Count`,
/// leaves are `Page`, all of them objects with a number.
pub fn fault_of_tree(document: &Document) -> Option<String> {
    let top = match top(document) {
        Some(top) => top,
        None => return Some("has no pages".to_owned()),
    };
    gather(
        document,
        top,
        &mut Vec::new(),
        &mut BTreeSet::new(),
        DEEPEST,
    )
    .err()
}

fn top(document: &Document) -> Option<ObjectId> {
    let catalog = document.catalog().ok()?;
    catalog.get(b"Pages").and_then(Object::as_reference).ok()
}

fn gather(
    document: &Document,
    id: ObjectId,
    pages: &mut Vec<ObjectId>,
    seen: &mut BTreeSet<ObjectId>,
    depth: usize,
) -> Result<(), String> {
    let fault = |what: &str| {
        Err(format!(
            "has a tree of pages in which {what} (object {})",
            id.0
        ))
    };
    let Some(depth) = depth.checked_sub(1) else {
        return fault("nodes are nested too deep");
    };
    if !seen.insert(id) {
        return fault("one node stands twice");
    }
    let Ok(node) = document.get_dictionary(id) else {
        return fault("a node is missing");
    };
    let kids = node.get(b"Kids").and_then(Object::as_array);
    let count = node.get(b"Count").and_then(Object::as_i64);
    match (kind(node), kids, count) {
        (Some(b"Page"), Err(_), Err(_)) => pages.push(id),
        (Some(b"Pages"), Ok(kids), Ok(count)) => {
            let before = pages.len();
            for kid in kids {
                let Ok(kid) = kid.as_reference() else {
                    return fault("a page is no object of its own");
                };
                gather(document, kid, pages, seen, depth)?;
            }
            if usize::try_from(count) != Ok(pages.len() - before) {
                return fault("the pages are counted wrongly");
            }
        }
        _ => return fault("a node is neither page nor list of pages"),
    }
    Ok(())
}

fn kind(node: &Dictionary) -> Option<&[u8]> {
    node.get(b"Type").and_then(Object::as_name).ok()
}
