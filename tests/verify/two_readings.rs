//! Files of which one reader shows one thing and another reader another: forgeries that pass
//! where only one way of reading is tried.

use lopdf::{Dictionary, Document, Object, ObjectId, Stream, dictionary};
use simmerline::error::Error;
use simmerline::verify::{Pdf, Verdict, verification_of};

use crate::bench::*;

/// Asserts that a file is refused because readers differ over it.
fn two_readings(pdf: &[u8], what: &str) {
    let error = match Pdf::parse(std::path::Path::new("report.pdf"), pdf) {
        Err(error) => error,
        Ok(_) => panic!("read, expected: {what}"),
    };
    let text = error.to_string();
    assert!(matches!(error, Error::TwoReadings(_)), "{text}");
    assert_eq!(error.exit_code(), 6);
    assert!(text.contains(what) && text.contains("\nhint: "), "{text}");
    let verification = verification_of(error).unwrap();
    assert_eq!(verification.verdict, Verdict::Differs);
}

/// Asserts that a file is not taken for the one that was issued, nor for the same content.
fn caught(pdf: &[u8]) {
    if let Ok(evidence) = take_out(pdf) {
        let verification = simmerline::verify::verify(&evidence).unwrap();
        assert_eq!(
            verification.verdict,
            Verdict::Differs,
            "{}",
            said(&verification)
        );
    }
}

fn original() -> Vec<u8> {
    sample("open-dish")
}

/// The instructions of page one.
fn page_one(document: &Document) -> ObjectId {
    let page = document.page_iter().next().unwrap();
    document.get_page_contents(page)[0]
}

/// An object as text, of a page with nothing on it.
fn forged_object(id: ObjectId) -> String {
    format!(
        "{} 0 obj\n<</Length 0>>\nstream\n\nendstream\nendobj\n",
        id.0
    )
}

/// A file with an object behind it, and a table of its own for it, which leads to `root`;
/// `ending` ends the file.
fn with_update(mut pdf: Vec<u8>, number: u32, object: &[u8], root: u32, ending: &str) -> Vec<u8> {
    let document = Document::load_mem(&pdf).unwrap();
    let at = pdf.len();
    pdf.extend(object);
    let table = pdf.len();
    let text = format!(
        "xref\n{number} 1\n{at:010} 00000 n \ntrailer\n<</Size {}/Root {root} 0 R/Prev {}>>\nstartxref\n{table}{ending}",
        document.max_id.max(number) + 1,
        document.xref_start
    );
    pdf.extend(text.bytes());
    pdf
}

fn root_of(document: &Document) -> ObjectId {
    document
        .trailer
        .get(b"Root")
        .unwrap()
        .as_reference()
        .unwrap()
}

/// A report with an update behind it, in which page one is another.
fn updated(ending: &str) -> Vec<u8> {
    let document = Document::load_mem(&original()).unwrap();
    let (id, root) = (page_one(&document), root_of(&document).0);
    with_update(original(), id.0, forged_object(id).as_bytes(), root, ending)
}

#[test]
fn an_update_behind_the_end() {
    two_readings(&updated("\n%%EOF\n"), "more than one table of objects");
    // Without its own end: some readers take the last table, some the last whole one.
    for ending in ["\n", "", "\n%%EO", "\n%EOF"] {
        let error = Pdf::parse(std::path::Path::new("x.pdf"), &updated(ending));
        assert!(error.is_err(), "{ending:?}");
    }
    let mut more = original();
    more.extend(b"3 0 obj 1 endobj\n");
    two_readings(&more, "goes on behind its end");
    let mut comment = original();
    comment.extend(b"% startxref 9");
    assert!(Pdf::parse(std::path::Path::new("x.pdf"), &comment).is_err());
}

#[test]
fn an_object_that_stands_twice_or_in_no_table() {
    let pdf = original();
    let document = Document::load_mem(&pdf).unwrap();
    let id = page_one(&document);
    let table = document.xref_start;
    let ending = |bytes: &mut Vec<u8>, moved: usize| {
        let at = bytes
            .windows(9)
            .rposition(|part| part == b"startxref")
            .unwrap();
        bytes.truncate(at);
        bytes.extend(format!("startxref\n{}\n%%EOF", table + moved).bytes());
    };
    for forged in [forged_object(id), forged_object((document.max_id + 7, 0))] {
        let mut twice = pdf.clone();
        twice.splice(table..table, forged.bytes());
        ending(&mut twice, forged.len());
        two_readings(&twice, "that its table does not list there");
    }
    // A table that leads elsewhere than to the object that stands there.
    let mut moved = pdf.clone();
    let entry = pdf[table..]
        .windows(18)
        .position(|line| line.ends_with(b" 00000 n"))
        .unwrap();
    let at = table + entry;
    moved[at..at + 10].copy_from_slice(b"0000000012");
    assert!(Pdf::parse(std::path::Path::new("x.pdf"), &moved).is_err());
}

#[test]
fn a_page_that_only_some_readers_find() {
    let kids = |change: fn(&mut Document, &mut Vec<Object>)| {
        open_dish(|document| {
            let pages = document.catalog().unwrap().get(b"Pages").unwrap();
            let pages = pages.as_reference().unwrap();
            let node = document.get_dictionary(pages).unwrap();
            let mut kids = node.get(b"Kids").unwrap().as_array().unwrap().clone();
            change(document, &mut kids);
            let node = document.get_dictionary_mut(pages).unwrap();
            node.set("Kids", kids);
        })
    };
    let direct = kids(|_, kids| {
        let page = dictionary! { "Type" => "Page", "MediaBox" => vec![0.into(), 0.into(), 595.into(), 842.into()] };
        kids.insert(0, Object::Dictionary(page));
    });
    two_readings(&direct, "a page is no object of its own");
    let typed = |kind: &str| {
        let mut page = Dictionary::new();
        page.set("Type", Object::Name(kind.into()));
        page
    };
    for kind in ["Pag", "Template", "Catalog"] {
        let pdf = open_dish(|document| {
            let page = document.page_iter().next().unwrap();
            let page = document.get_dictionary_mut(page).unwrap();
            page.set("Type", typed(kind).get(b"Type").unwrap().clone());
        });
        two_readings(&pdf, "a node is neither page nor list of pages");
    }
    let uncounted = kids(|_, kids| drop(kids.pop()));
    two_readings(&uncounted, "the pages are counted wrongly");
    let again = kids(|_, kids| {
        let first = kids[0].clone();
        kids.push(first);
    });
    two_readings(&again, "one node stands twice");
}

#[test]
fn a_layout_for_the_web_that_is_not_so() {
    let pdf = open_dish(|document| {
        let other = document.page_iter().nth(1).unwrap();
        let pages = document.get_pages().len() as i64;
        let layout = dictionary! {
            "Linearizee" => 1, "L" => 400_000, "O" => i64::from(other.0), "N" => pages, "E" => 9, "T" => 9,
        };
        document.add_object(layout);
    });
    two_readings(&renamed(pdf, b"Linearizee", b"Linearized"), "/Linearized");
}

#[test]
fn a_key_that_stands_twice() {
    let pdf = original();
    let at = find(&pdf, b"/Type/Pages");
    let mut twice = pdf.clone();
    // Overwritten in place, so that every table still holds.
    let kids = at + find(&pdf[at..], b"/Kids");
    let count = at + find(&pdf[at..], b"/Count");
    assert!(count < kids);
    twice[count..kids].fill(b' ');
    twice[count..count + 8].copy_from_slice(b"/Type/Pa");
    two_readings(&twice, "has the key /Type twice");
    // The same key in two spellings.
    twice[count..count + 8].copy_from_slice(b"/Typ#65 ");
    assert!(Pdf::parse(std::path::Path::new("x.pdf"), &twice).is_err());
}

#[test]
fn a_stream_of_another_length_or_of_none() {
    let pdf = original();
    let at = find(&pdf, b"\nendstream");
    let mut longer = pdf.clone();
    longer[at..at + 10].copy_from_slice(b" endstrean");
    caught(&longer);
    assert!(Pdf::parse(std::path::Path::new("x.pdf"), &longer).is_err());
}

#[test]
fn two_trailers_that_lead_to_two_catalogues() {
    let document = Document::load_mem(&original()).unwrap();
    let number = document.max_id + 1;
    let mut catalog = document.get_dictionary(root_of(&document)).unwrap().clone();
    catalog.set("OpenAction", dictionary! { "S" => "JavaScript" });
    let mut other = Document::new();
    other
        .objects
        .insert((number, 0), Object::Dictionary(catalog));
    other.trailer.set("Root", Object::Reference((number, 0)));
    let mut saved = Vec::new();
    other.save_to(&mut saved).unwrap();
    let from = find(&saved, format!("{number} 0 obj").as_bytes());
    let to = find(&saved, b"endobj") + 7;
    let pdf = with_update(original(), number, &saved[from..to], number, "\n%%EOF\n");
    two_readings(&pdf, "more than one table of objects");
}

#[test]
fn packed_objects_that_no_table_lists() {
    let pdf = open_dish(|document| {
        let id = page_one(document);
        let content = format!("{} 0 <</Length 0>>", id.0);
        let first = content.find('<').unwrap() as i64;
        let holder = dictionary! { "Type" => "ObjStn", "N" => 1, "First" => first };
        document.add_object(Stream::new(holder, content.into_bytes()));
    });
    let pdf = renamed(pdf, b"ObjStn", b"ObjStm");
    assert!(Pdf::parse(std::path::Path::new("x.pdf"), &pdf).is_err());
}

#[test]
fn a_reference_that_some_readers_follow() {
    // A generation that there is not: some readers look at the number alone.
    let pdf = open_dish(|document| {
        let page = document.page_iter().next().unwrap();
        document
            .catalog_mut()
            .unwrap()
            .set("OpenAction", Object::Reference((page.0, 7)));
    });
    two_readings(&pdf, "by a generation that there is not");
    // An object that is nothing but a reference.
    let pdf = open_dish(|document| {
        let id = page_one(document);
        let chain = document.add_object(Object::Reference(id));
        let page = document.page_iter().next().unwrap();
        document
            .get_dictionary_mut(page)
            .unwrap()
            .set("Contents", chain);
    });
    two_readings(&pdf, "only refers to another");
    // One that leads nowhere, where a report has none.
    let pdf = open_dish(|document| {
        document
            .catalog_mut()
            .unwrap()
            .set("OpenAction", Object::Reference((999_999, 0)));
    });
    differs(&pdf, &["document"], &["OpenAction"]);
    // A copy of a page is no page.
    let pdf = open_dish(|document| {
        let page = document.page_iter().nth(1).unwrap();
        let copy = document.get_object(page).unwrap().clone();
        let copy = document.add_object(copy);
        let outlines = document.catalog().unwrap().get(b"Outlines").unwrap();
        let outlines = outlines.as_reference().unwrap();
        let item = document
            .get_dictionary(outlines)
            .unwrap()
            .get(b"First")
            .unwrap();
        let item = item.as_reference().unwrap();
        let item = document.get_dictionary_mut(item).unwrap();
        item.set(
            "Dest",
            vec![Object::Reference(copy), Object::Name("Fit".into())],
        );
    });
    differs(&pdf, &["document"], &["Outlines.First"]);
}

#[test]
fn a_letter_that_only_some_readers_take_for_a_blank() {
    let pdf = original();
    let at = find(&pdf, b"/Type/Pages");
    let kids = at + find(&pdf[at..], b"/Kids");
    let mut spoiled = pdf.clone();
    // Between a number and the next key, as a blank would stand.
    let gap = at + find(&pdf[at..kids], b"/Count ") + 6;
    spoiled[gap] = 0;
    assert!(Pdf::parse(std::path::Path::new("x.pdf"), &spoiled).is_err());
}

#[test]
fn numbers_that_nothing_leads_to() {
    let pdf = open_dish(|document| {
        document.add_object(Object::Integer(7));
    });
    differs(&pdf, &["document"], &["which nothing leads to"]);
}

#[test]
fn numbers_and_sizes_that_some_readers_pass_over() {
    let pdf = original();
    let at = pdf.windows(6).rposition(|part| part == b"/Size ").unwrap();
    let mut fewer = pdf.clone();
    fewer[at + 6..at + 9].copy_from_slice(b"0  ");
    assert!(Pdf::parse(std::path::Path::new("x.pdf"), &fewer).is_err());
    let mut number = 0;
    let real = open_dish(|document| {
        let page = document.page_iter().next().unwrap();
        let page = document.get_dictionary_mut(page).unwrap();
        number = page.get(b"StructParents").unwrap().as_i64().unwrap();
        page.set("StructParents", Object::Name("REALVALUE".into()));
    });
    let written = format!("{:<10}", format!(" {number}.0"));
    let real = renamed(real, b"/REALVALUE", written.as_bytes());
    differs(&real, &["document"], &["page 1, besides what is drawn"]);
}

#[test]
fn what_nothing_leads_to() {
    let pdf = open_dish(|document| {
        let catalog = document.catalog().unwrap().clone();
        document.add_object(catalog);
    });
    differs(&pdf, &["document"], &["which nothing leads to"]);
    let pdf = open_dish(|document| {
        let hidden = Object::string_literal("9 0 obj <</Type/Page>> endobj");
        document.trailer.set("Hidden", hidden);
    });
    two_readings(&pdf, "has a trailer that says more or less");
}

#[test]
fn metadata_that_hides_in_the_name_of_a_program() {
    let pdf = open_dish(|document| {
        let metadata = document.catalog().unwrap().get(b"Metadata").unwrap();
        let id = metadata.as_reference().unwrap();
        let stream = document
            .get_object_mut(id)
            .unwrap()
            .as_stream_mut()
            .unwrap();
        let text = String::from_utf8(stream.get_plain_content().unwrap()).unwrap();
        let hidden = "<p:Producer xmlns:p=\"http://ns.adobe.com/pdf/1.3/\"><dc:title>231 W</dc:title></p:Producer><dc:title>";
        let changed = text.replacen("<dc:title>", hidden, 1);
        assert_ne!(changed, text);
        stream.set_plain_content(changed.into_bytes());
    });
    differs(&pdf, &["document"], &["titles and other metadata"]);
    let pdf = open_dish(|document| {
        information(document).set("Producer", dictionary! { "S" => "URI" });
    });
    differs(&pdf, &["document"], &["Info.Producer"]);
}

/// A word in the place of another of its length: lopdf would leave out objects of some kinds.
fn renamed(mut pdf: Vec<u8>, from: &[u8], to: &[u8]) -> Vec<u8> {
    let at = find(&pdf, from);
    pdf[at..at + to.len()].copy_from_slice(to);
    pdf
}

fn find(bytes: &[u8], part: &[u8]) -> usize {
    bytes
        .windows(part.len())
        .position(|found| found == part)
        .unwrap()
}
