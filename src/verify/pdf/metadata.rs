//! Whether two packets of metadata say the same, however their XML is laid out: programs that
//! save a file again indent it, move declarations, and say that they did.
//!
//! # Source
//! ISO 16684-1 (XMP), 7.1 and 8.4 (clauses from memory).

use quick_xml::events::{BytesStart, Event};
use quick_xml::name::{LocalName, NamespaceResolver, ResolveResult};
use quick_xml::reader::NsReader;

/// What a program that saves a file again says of itself, by its full name.
const OF_SAVING: [&str; 4] = [
    "http://ns.adobe.com/xap/1.0/|ModifyDate",
    "http://ns.adobe.com/xap/1.0/|MetadataDate",
    "http://ns.adobe.com/pdf/1.3/|Producer",
    "adobe:ns:meta/|xmptk",
];
/// More parts than any packet of ours has.
const MOST_PARTS: usize = 10_000;

/// Whether two packets say the same; not, where one cannot be read.
pub fn say_the_same(one: &[u8], other: &[u8]) -> bool {
    one == other || parts(one).is_some_and(|parts_of_one| parts(other) == Some(parts_of_one))
}

/// The elements, attributes and texts of a packet in their order, by their full names.
fn parts(packet: &[u8]) -> Option<Vec<String>> {
    let mut reader = NsReader::from_str(std::str::from_utf8(packet).ok()?);
    reader.config_mut().expand_empty_elements = true;
    let mut parts = Vec::new();
    // Inside an element that does not count.
    let mut is_passed_over = false;
    let mut depth = 0_usize;
    let mut text = String::new();
    loop {
        let event = reader.read_event().ok()?;
        match &event {
            Event::Start(_) => depth += 1,
            Event::End(_) => depth = depth.checked_sub(1)?,
            _ => {}
        }
        let part = match &event {
            Event::Eof => return (depth == 0).then_some(parts),
            Event::Text(found) => {
                text += found;
                continue;
            }
            Event::GeneralRef(found) => {
                text += &format!("&{};", &**found);
                continue;
            }
            Event::Decl(_) => continue,
            Event::PI(found) if found.target() == "xpacket" => continue,
            // It holds a date or a name, and no elements.
            Event::Start(_) if is_passed_over => return None,
            Event::End(_) if is_passed_over => {
                is_passed_over = false;
                text.clear();
                continue;
            }
            Event::Start(start) => {
                let name = full(reader.resolver().resolve_element(start.name()))?;
                is_passed_over = OF_SAVING.contains(&name.as_str());
                let attributes = attributes(reader.resolver(), start)?;
                (!is_passed_over).then(|| format!("<{name} {attributes}"))
            }
            Event::End(_) => Some(">".to_owned()),
            // Reports have no comments, no marked sections, no types.
            _ => return None,
        };
        let said = text.trim();
        if !said.is_empty() {
            parts.push(format!("\"{said}"));
        }
        text.clear();
        parts.extend(part);
        if parts.len() > MOST_PARTS {
            return None;
        }
    }
}

/// A name with its namespace; none, where that is not declared.
fn full((namespace, local): (ResolveResult<'_>, LocalName<'_>)) -> Option<String> {
    let namespace = match namespace {
        ResolveResult::Bound(namespace) => namespace.into_inner(),
        ResolveResult::Unbound => "",
        ResolveResult::Unknown(_) => return None,
    };
    Some(format!("{namespace}|{}", local.as_ref()))
}

/// An element's attributes, in the order of their names.
fn attributes(names: &NamespaceResolver, start: &BytesStart<'_>) -> Option<String> {
    let mut attributes = Vec::new();
    for attribute in start.attributes() {
        let attribute = attribute.ok()?;
        if attribute.key.as_namespace_binding().is_some() {
            continue;
        }
        let name = full(names.resolve_attribute(attribute.key))?;
        if OF_SAVING.contains(&name.as_str()) {
            continue;
        }
        attributes.push(format!("{name}={}", attribute.value));
    }
    attributes.sort();
    Some(attributes.join(" "))
}

#[cfg(test)]
mod tests {
    use super::*;

    const PACKET: &str = r#"<?xpacket begin="" id="x"?><x:m xmlns:x="adobe:ns:meta/" x:xmptk="a"><r:D r:about="" xmlns:r="rdf/" xmlns:dc="dc/" xmlns:p="http://ns.adobe.com/xap/1.0/"><dc:title>131 W</dc:title><p:ModifyDate>1</p:ModifyDate></r:D></x:m><?xpacket end="w"?>"#;

    #[test]
    fn layout_and_the_name_of_the_program_do_not_count() {
        let saved = r#"<?xml version="1.0"?>
            <y:m xmlns:y="adobe:ns:meta/" y:xmptk="b" xmlns:q="http://ns.adobe.com/pdf/1.3/">
              <r:D xmlns:r="rdf/" xmlns:d="dc/" r:about="">
                <d:title>131 W</d:title>
                <q:Producer>other</q:Producer>
              </r:D>
            </y:m>"#;
        assert!(say_the_same(PACKET.as_bytes(), saved.as_bytes()));
    }

    #[test]
    fn what_is_said_counts() {
        for (from, to) in [
            ("131 W", "231 W"),
            ("dc:title", "dc:other"),
            ("\"dc/\"", "\"dd/\""),
            ("r:about=\"\"", "r:about=\"x\""),
            ("131 W", "131&lt;W"),
            ("<dc:title>", "<!-- x --><dc:title>"),
            ("<dc:title>", "<dc:Producer/><dc:title>"),
            ("<dc:title>", "<?run x?><dc:title>"),
            (">1<", "><dc:title>231 W</dc:title><"),
            ("</r:D>", ""),
        ] {
            let other = PACKET.replace(from, to);
            assert!(!say_the_same(PACKET.as_bytes(), other.as_bytes()), "{to}");
        }
    }
}
