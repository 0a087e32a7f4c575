//! The PDF: what it carries, and that it is the same twice.

use jiff::Timestamp;
use lopdf::{Dictionary, Document, Object};
use simmerline::hash::HashedFile;
use simmerline::language::Words;
use simmerline::procedure::s580::result::count_reasons;
use simmerline::report::Edition;
use simmerline::report::outputs;
use simmerline::report::s580::lanes::Lane;
use simmerline::report::words::build;
use simmerline::report::words::cautions::cautions;

use crate::report::campaigns::*;

/// Text of each page without white space, which a line break may put anywhere.
pub fn pages(pdf: &Document) -> Vec<String> {
    let numbers: Vec<u32> = pdf.get_pages().into_keys().collect();
    let text = |page: u32| pdf.extract_text(&[page]).unwrap();
    numbers
        .into_iter()
        .map(|page| squeezed(&text(page)))
        .collect()
}

pub fn squeezed(text: &str) -> String {
    let is_seen = |one: &char| !one.is_whitespace() && *one != '\u{2060}';
    text.chars().filter(is_seen).collect()
}

#[test]
fn the_pdf_of_every_sample_run_holds_what_a_report_must_carry() {
    for (name, assessment) in samples() {
        let report = build(&assessment, &edition());
        let pdf = Document::load_mem(&pdf_of(&assessment)).unwrap();
        let pages = pages(&pdf);
        assert!(pages.len() > 2, "{name}: {} pages", pages.len());
        assert!(
            pages[0].contains(&squeezed(&report.title)),
            "{name}: {}",
            pages[0]
        );
        let is_indicative = is_called_indicative(&assessment);
        for (index, page) in pages.iter().enumerate() {
            let place = format!("{name}, page {}: {page}", index + 1);
            assert!(
                page.contains(&squeezed(&format!("Report {}", report.number))),
                "{place}"
            );
            assert!(page.contains("Inventeddata"), "{place}");
            assert_eq!(page.contains("Indicative"), is_indicative, "{place}");
            let count = squeezed(&format!("page {} of {}", index + 1, pages.len()));
            assert!(page.contains(&count), "{place}");
            assert!(page.contains(&squeezed(&report.statement)), "{place}");
        }
        let text = pages.concat();
        for (reason, _) in count_reasons(assessment.s580.intervals.iter()) {
            let short_name = Lane::Aside(reason).name().to_string();
            assert!(
                text.contains(&squeezed(&short_name)),
                "{name}: {short_name}"
            );
        }
        for caution in cautions(Words::english()).cautions {
            assert!(
                text.contains(&squeezed(&caution.title)),
                "{name}: {}",
                caution.title
            );
            assert!(
                text.contains(&squeezed(&caution.text)),
                "{name}: {}",
                caution.title
            );
        }
        for HashedFile {
            name: file, sha256, ..
        } in assessment.tested.inputs()
        {
            assert!(
                text.contains(&squeezed(&file)) && text.contains(&sha256),
                "{name}: {file}"
            );
        }
        let end = squeezed(&format!("End of report {}", report.number));
        assert!(pages.last().unwrap().contains(&end), "{name}");
        assert_eq!(text.matches(&end).count(), 1, "{name}");
    }
}

#[test]
fn every_string_of_the_model_is_on_paper_or_is_a_key() {
    for name in ["open-dish", "panel-cloudy"] {
        let assessment = sample(name);
        let report = build(&assessment, &edition());
        let text = pages(&Document::load_mem(&pdf_of(&assessment)).unwrap()).concat();
        let mut printed = vec![
            report.kind.clone(),
            report.subtitle.clone(),
            report.headline.caution.clone(),
        ];
        // Findings may take the place of facts.
        if report.headline.findings.is_empty() {
            printed.extend(report.headline.facts.iter().map(|fact| fact.text.clone()));
        }
        printed.extend(
            report
                .headline
                .findings
                .iter()
                .flat_map(|f| [f.text.clone(), f.remedy.clone()]),
        );
        printed.extend(
            report
                .tested
                .groups
                .iter()
                .flat_map(|g| &g.rows)
                .map(|row| row.text.clone()),
        );
        printed.extend(
            report
                .conditions
                .rows
                .iter()
                .map(|row| row.observed.clone()),
        );
        printed.extend(report.runs.rows.concat().into_iter().flat_map(|run| {
            let told = [run.title, run.used, run.figure.caption];
            told.into_iter().chain(run.remarks)
        }));
        printed.extend(
            report
                .regression
                .line
                .iter()
                .flat_map(|line| &line.rows)
                .map(|row| row.text.clone()),
        );
        printed.extend(report.cooking.rows.iter().map(|row| row.time.clone()));
        printed.extend(report.cooking.assumptions.clone());
        printed.extend(report.provenance.deviations.clone());
        for string in printed {
            assert!(text.contains(&squeezed(&string)), "{name}: {string}");
        }
    }
}

pub fn dictionaries(pdf: &Document) -> impl Iterator<Item = &Dictionary> {
    pdf.objects.values().filter_map(|object| match object {
        Object::Dictionary(dictionary) => Some(dictionary),
        Object::Stream(stream) => Some(&stream.dict),
        _ => None,
    })
}

#[test]
fn the_pdf_is_tagged_titled_archival_and_accessible() {
    for (name, assessment) in samples() {
        let report = build(&assessment, &edition());
        let pdf = Document::load_mem(&pdf_of(&assessment)).unwrap();
        let catalog = pdf.catalog().unwrap();
        let (_, metadata) = pdf.dereference(catalog.get(b"Metadata").unwrap()).unwrap();
        let metadata = String::from_utf8(metadata.as_stream().unwrap().content.clone()).unwrap();
        for part in [
            "<pdfaid:part>3</pdfaid:part>",
            "<pdfaid:conformance>A</pdfaid:conformance>",
            "<pdfuaid:part>1</pdfuaid:part>",
            "2026-11-03T12:00:00",
            &report.title,
        ] {
            assert!(metadata.contains(part), "{name}: no {part} in {metadata}");
        }
        assert_eq!(catalog.get(b"Lang").unwrap().as_str().unwrap(), b"en");
        let (_, marks) = pdf.dereference(catalog.get(b"MarkInfo").unwrap()).unwrap();
        assert!(
            marks
                .as_dict()
                .unwrap()
                .get(b"Marked")
                .unwrap()
                .as_bool()
                .unwrap(),
            "{name}"
        );
        assert!(catalog.has(b"StructTreeRoot"), "{name}");
        let (_, view) = pdf
            .dereference(catalog.get(b"ViewerPreferences").unwrap())
            .unwrap();
        assert!(
            view.as_dict()
                .unwrap()
                .get(b"DisplayDocTitle")
                .unwrap()
                .as_bool()
                .unwrap()
        );
    }
}

#[test]
fn every_figure_of_the_pdf_has_its_content_in_words() {
    let assessment = sample("open-dish");
    let pdf = Document::load_mem(&pdf_of(&assessment)).unwrap();
    let is_figure = |d: &&Dictionary| {
        d.get(b"S")
            .and_then(Object::as_name)
            .is_ok_and(|s| s == b"Figure")
    };
    let figures: Vec<&Dictionary> = dictionaries(&pdf).filter(is_figure).collect();
    // On page one the interval, the line and the conditions; a figure a run, the residuals, the
    // heat balance, exergy, the year.
    assert_eq!(figures.len(), 7 + assessment.tested.runs.len());
    for figure in figures {
        let alt = lopdf::decode_text_string(figure.get(b"Alt").unwrap()).unwrap();
        assert!(alt.len() > 25 && alt.contains(' '), "{alt}");
    }
}

#[test]
fn every_font_of_the_pdf_is_embedded() {
    let pdf = Document::load_mem(&pdf_of(&sample("box"))).unwrap();
    let descriptors: Vec<&Dictionary> = dictionaries(&pdf)
        .filter(|d| d.has_type(b"FontDescriptor"))
        .collect();
    assert!(descriptors.len() >= 4);
    for descriptor in descriptors {
        assert!(
            [&b"FontFile"[..], b"FontFile2", b"FontFile3"]
                .iter()
                .any(|key| descriptor.has(key))
        );
        let name = String::from_utf8_lossy(descriptor.get(b"FontName").unwrap().as_name().unwrap());
        let known = ["LibertinusSerif", "Inter", "DejaVuSansMono"];
        assert!(known.iter().any(|family| name.contains(family)), "{name}");
    }
}

#[test]
fn the_same_result_and_time_of_issue_give_the_same_bytes() {
    for (name, assessment) in samples() {
        let first = outputs(&assessment, &edition()).unwrap();
        let second = outputs(&assessment, &edition()).unwrap();
        assert_eq!(first.len(), 3);
        for (first, second) in first.iter().zip(&second) {
            assert_eq!(first.name, second.name);
            assert!(first.bytes == second.bytes, "{name}: {}", first.name);
        }
    }
}

#[test]
fn the_time_of_issue_changes_the_pdf_and_no_data() {
    let assessment = sample("open-dish");
    let first = outputs(&assessment, &edition()).unwrap();
    let later = outputs(
        &assessment,
        &Edition::plain(Timestamp::from_second(ISSUED_S + 86_400).unwrap()),
    )
    .unwrap();
    for (first, later) in first.iter().zip(&later) {
        assert_eq!(
            first.bytes == later.bytes,
            !first.name.ends_with(".pdf"),
            "{}",
            first.name
        );
    }
}
