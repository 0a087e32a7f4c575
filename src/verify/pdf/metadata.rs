//! Whether two packets of metadata say the same, however their XML is laid out: programs that
//! save a file again indent it, move declarations, and say that they did.
//!
//! # Source
//! ISO 16684-1 (XMP), 7.1 and 8.4 (clauses from memory).

use quick_xml::events::{BytesStart, Event};
use quick_xml::name::{LocalName, NamespaceResolver, QName, ResolveResult};
use quick_xml::reader::NsReader;

/// What a program that saves a file again says of itself, by its local name.
const OF_SAVING: [&str; 4] = ["ModifyDate", "MetadataDate", "Producer", "xmptk"];
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
    let mut text = String::new();
    loop {
        let event = reader.read_event().ok()?;
        let part = match &event {
            Event::Eof => return (!is_passed_over).then_some(parts),
            Event::Text(found) => {
                text += found;
                continue;
            }
            Event::GeneralRef(found) => {
                text += &format!("&{};", &**found);
                continue;
            }
            Event::PI(_) | Event::Decl(_) => continue,
            // It holds a date or a name, and no elements.
            Event::Start(_) if is_passed_over => return None,
            Event::End(_) if is_passed_over => {
                is_passed_over = false;
                text.clear();
                continue;
            }
            Event::Start(start) if is_of_saving(start.name()) => {
                is_passed_over = true;
                None
            }
            Event::Start(start) => Some(format!("<{}", element(reader.resolver(), start)?)),
            Event::End(_) => Some(">".to_owned()),
            // Reports have no comments, no marked sections, no types.
            _ => return None,
        };
        let said = text.trim();
        if !said.is_empty() {
            parts.push(said.to_owned());
        }
        text.clear();
        parts.extend(part);
        if parts.len() > MOST_PARTS {
            return None;
        }
    }
}

fn is_of_saving(name: QName<'_>) -> bool {
    OF_SAVING
        .iter()
        .any(|known| name.local_name().as_ref() == *known)
}

/// An element's full name with its attributes, each once, in the order of their names.
fn element(names: &NamespaceResolver, start: &BytesStart<'_>) -> Option<String> {
    let full = |(namespace, local): (ResolveResult<'_>, LocalName<'_>)| {
        let namespace = match namespace {
            ResolveResult::Bound(namespace) => namespace.into_inner().to_owned(),
            ResolveResult::Unbound => String::new(),
            ResolveResult::Unknown(_) => return None,
        };
        Some(format!("{namespace}|{}", local.as_ref()))
    };
    let mut attributes = Vec::new();
    for attribute in start.attributes() {
        let attribute = attribute.ok()?;
        if attribute.key.as_namespace_binding().is_some() || is_of_saving(attribute.key) {
            continue;
        }
        let name = full(names.resolve_attribute(attribute.key))?;
        attributes.push(format!("{name}={}", attribute.value));
    }
    attributes.sort();
    let name = full(names.resolve_element(start.name()))?;
    Some(format!("{name} {}", attributes.join(" ")))
}

#[cfg(test)]
mod tests {
    use super::*;

    const PACKET: &str = r#"<?xpacket begin="" id="x"?><x:m xmlns:x="meta/" x:xmptk="a"><r:D r:about="" xmlns:r="rdf/" xmlns:dc="dc/"><dc:title>131 W</dc:title><x:ModifyDate>1</x:ModifyDate></r:D></x:m><?xpacket end="w"?>"#;

    #[test]
    fn layout_and_the_name_of_the_program_do_not_count() {
        let saved = r#"<?xml version="1.0"?>
            <y:m xmlns:y="meta/" y:xmptk="b">
              <r:D xmlns:r="rdf/" xmlns:d="dc/" r:about="">
                <d:title>131 W</d:title>
                <y:Producer>other</y:Producer>
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
            ("</r:D>", ""),
        ] {
            let other = PACKET.replace(from, to);
            assert!(!say_the_same(PACKET.as_bytes(), other.as_bytes()), "{to}");
        }
    }
}
