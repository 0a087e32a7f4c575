//! Reports to verify, and ways to change what is in them. All campaigns are invented.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::{LazyLock, Mutex};

use jiff::Timestamp;
use lopdf::content::Content;
use lopdf::{Dictionary, Document, Object, ObjectId, Stream, StringFormat};
use simmerline::assess_reaching;
use simmerline::campaign::Reach;
use simmerline::error::Result;
use simmerline::report::{Edition, outputs};
use simmerline::verify::{Beside, Evidence, Outcome, Pdf, Verdict, Verification, verify};

use crate::kit::samples::sample_folder;

/// 3 November 2026, 12:00 UTC.
pub const ISSUED_S: i64 = 1_793_707_200;

static MADE: LazyLock<Mutex<BTreeMap<PathBuf, Vec<u8>>>> = LazyLock::new(Mutex::default);

/// The report on a campaign folder.
pub fn report_on(folder: &Path) -> Vec<u8> {
    report_reaching(folder, Reach::Inside)
}

/// The same, with files read as far as `reach` allows.
pub fn report_reaching(folder: &Path, reach: Reach) -> Vec<u8> {
    let assessment = assess_reaching(folder, reach).unwrap();
    let wishes = &assessment.tested.campaign.report;
    let edition = Edition::wished(wishes, Timestamp::from_second(ISSUED_S).unwrap());
    let made = outputs(&assessment, &edition).unwrap();
    let pdf = made.into_iter().find(|one| one.name.ends_with(".pdf"));
    pdf.unwrap().bytes
}

/// The report on a sample run, made once.
pub fn sample(name: &str) -> Vec<u8> {
    let folder = sample_folder(name);
    let mut made = MADE.lock().unwrap();
    let report = made
        .entry(folder)
        .or_insert_with_key(|folder| report_on(folder));
    report.clone()
}

pub fn take_out(pdf: &[u8]) -> Result<Evidence> {
    take_out_beside(pdf, Beside::folder(Path::new("no-such-folder")))
}

/// The same, with logs that the document does not carry.
pub fn take_out_beside(pdf: &[u8], beside: Beside) -> Result<Evidence> {
    Evidence::take_out(Pdf::parse(Path::new("report.pdf"), pdf)?, beside)
}

pub fn verified(pdf: &[u8]) -> Verification {
    verify(&take_out(pdf).unwrap()).unwrap()
}

/// Everything that is said, for a message.
pub fn said(verification: &Verification) -> String {
    let checks = verification.checks.iter();
    let lines = checks.map(|check| format!("{check:?}\n"));
    lines.collect::<String>() + &verification.sentence()
}

/// Asserts that a file is the one that was issued, and that nothing below that verdict says
/// otherwise.
pub fn issued(pdf: &[u8]) {
    let verification = verified(pdf);
    let said = said(&verification);
    assert_eq!(verification.verdict, Verdict::Issued, "{said}");
    for check in &verification.checks {
        assert_eq!(check.outcome, Outcome::Agrees, "{said}");
    }
}

/// Asserts which checks differ, and that the differences name all that is expected. Whether
/// the document differs besides, say in the attachments that were changed, is left open.
pub fn differs(pdf: &[u8], subjects: &[&str], named: &[&str]) {
    let verification = verified(pdf);
    let said = said(&verification);
    let mut differing = verification.of(Outcome::Differs);
    if !subjects.contains(&"document") {
        differing.retain(|subject| *subject != "document");
    }
    assert_eq!(differing, subjects, "{said}");
    assert_eq!(verification.verdict, Verdict::Differs, "{said}");
    assert!(verification.sentence().contains("DOES NOT AGREE"), "{said}");
    let differences: Vec<&String> = verification
        .checks
        .iter()
        .flat_map(|check| &check.differences)
        .collect();
    for name in named {
        assert!(
            differences.iter().any(|line| line.contains(name)),
            "no {name:?} in {said}"
        );
    }
}

/// A PDF with something changed, saved by another program.
pub fn changed(pdf: &[u8], change: impl FnOnce(&mut Document)) -> Vec<u8> {
    let mut document = Document::load_mem(pdf).unwrap();
    change(&mut document);
    let mut saved = Vec::new();
    document.save_to(&mut saved).unwrap();
    saved
}

/// What the document states of itself.
pub fn information(document: &mut Document) -> &mut Dictionary {
    let id = document
        .trailer
        .get(b"Info")
        .unwrap()
        .as_reference()
        .unwrap();
    document.get_dictionary_mut(id).unwrap()
}

/// The file specification of an attachment.
pub fn specification(document: &Document, name: &str) -> ObjectId {
    let is_it = |dictionary: &Dictionary| {
        let found = dictionary.get(b"UF").and_then(lopdf::decode_text_string);
        dictionary.has_type(b"Filespec") && found.is_ok_and(|found| found == name)
    };
    let mut objects = document.objects.iter();
    let found = objects.find(|(_, object)| object.as_dict().is_ok_and(is_it));
    *found.unwrap_or_else(|| panic!("{name} is not attached")).0
}

/// Where an attachment's content is.
pub fn content(document: &Document, name: &str) -> ObjectId {
    let specification = document
        .get_dictionary(specification(document, name))
        .unwrap();
    let files = specification
        .get_deref(b"EF", document)
        .unwrap()
        .as_dict()
        .unwrap();
    files.get(b"F").unwrap().as_reference().unwrap()
}

pub fn attached(document: &Document, name: &str) -> Vec<u8> {
    let stream = document.get_object(content(document, name)).unwrap();
    stream.as_stream().unwrap().get_plain_content().unwrap()
}

pub fn attached_text(document: &Document, name: &str) -> String {
    String::from_utf8(attached(document, name)).unwrap()
}

/// Puts other bytes into an attachment, compressed.
pub fn attach_instead(document: &mut Document, name: &str, bytes: &[u8]) {
    let id = content(document, name);
    let mut stream = Stream::new(Dictionary::new(), bytes.to_vec());
    stream.compress().unwrap();
    document.objects.insert(id, Object::Stream(stream));
}

/// Replaces text in an attachment that must be there once at least.
pub fn replace_in(document: &mut Document, name: &str, from: &str, to: &str) {
    let text = attached_text(document, name);
    assert!(text.contains(from), "{name} holds no {from:?}");
    attach_instead(document, name, text.replacen(from, to, 1).as_bytes());
}

/// Names and file specifications of all attachments, as the PDF lists them.
pub fn name_list(document: &mut Document) -> &mut Vec<Object> {
    let catalog = document.catalog_mut().unwrap();
    let names = catalog.get_mut(b"Names").unwrap().as_dict_mut().unwrap();
    let files = names
        .get_mut(b"EmbeddedFiles")
        .unwrap()
        .as_dict_mut()
        .unwrap();
    files.get_mut(b"Names").unwrap().as_array_mut().unwrap()
}

/// Results of the sample that is changed most.
pub const RATING: &str = "open-dish.rating.json";

/// The report on `open-dish` with something changed.
pub fn open_dish(change: impl FnOnce(&mut Document)) -> Vec<u8> {
    changed(&sample("open-dish"), change)
}

/// Changes the instructions that draw page one.
pub fn redrawn(change: impl FnOnce(&mut Content)) -> Vec<u8> {
    open_dish(|document| {
        let page = document.page_iter().next().unwrap();
        let mut content = Content::decode(&document.get_page_content(page)).unwrap();
        change(&mut content);
        document
            .change_page_content(page, content.encode().unwrap())
            .unwrap();
    })
}

/// The glyphs of the rating on page one: the only text of its size.
pub fn codes_of_number(content: &mut Content) -> &mut Vec<u8> {
    let is_size = |operand: &Object| operand.as_float().is_ok_and(|size| size == 54.0);
    let at = content.operations.iter().position(|operation| {
        operation.operator == "Tf" && operation.operands.last().is_some_and(is_size)
    });
    let shown = content.operations[at.unwrap()..]
        .iter_mut()
        .find(|operation| matches!(operation.operator.as_str(), "Tj" | "TJ"))
        .unwrap();
    // Between two glyphs stands by how much they are drawn together.
    if let Object::Array(items) = &shown.operands[0] {
        let glyphs = items.iter().filter_map(|item| item.as_str().ok());
        let all = glyphs.flatten().copied().collect();
        shown.operands[0] = Object::Array(vec![Object::String(all, StringFormat::Literal)]);
    }
    let string = match &mut shown.operands[0] {
        Object::Array(items) => &mut items[0],
        string => string,
    };
    match string {
        Object::String(codes, _) => codes,
        other => panic!("{other:?}"),
    }
}
