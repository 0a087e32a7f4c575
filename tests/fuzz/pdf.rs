//! PDFs: damage to objects, which get a table of their places that is right, to what draws a
//! page, and to a whole report.

use std::path::Path;

use jiff::Timestamp;
use simmerline::error::Result;
use simmerline::report::{Edition, outputs};
use simmerline::verify::Pdf;

use crate::limits::PDF;
use crate::target::{Part, Sample, Target};

/// Objects 1 and on; streams follow their dictionary.
const OBJECTS: [&str; 8] = [
    "<</Type/Catalog/Pages 2 0 R/Names<</EmbeddedFiles 6 0 R>>/AF[7 0 R]/Lang(en)>>",
    "<</Type/Pages/Kids[3 0 R]/Count 1/MediaBox[0 0 595.276 841.89]>>",
    "<</Type/Page/Parent 2 0 R/Contents 9 0 R/Resources<</Font<</f0 4 0 R>>>>/Tabs/S>>",
    "<</Type/Font/Subtype/Type0/BaseFont/Invented/Encoding/Identity-H/ToUnicode 10 0 R\
     /DescendantFonts[<</Type/Font/Subtype/CIDFontType2/BaseFont/Invented/DW 500>>]>>",
    "<</Title(Invented)/Creator(simmerline 0.2.0)/CreationDate(D:20261103102000Z)>>",
    "<</Names[(log.csv) 7 0 R]>>",
    "<</Type/Filespec/F(log.csv)/UF<FEFF006C006F0067>/AFRelationship/Data\
     /EF<</F 8 0 R/UF 8 0 R>>>>",
    "<</Type/EmbeddedFile/Length 10/Params<</Size 10>>>>stream\n1,2,3\n4,5\n\nendstream",
];

const CONTENT: &str = "q 1 0 0 -1 0 841.89 cm /Span <</Alt (a \\(b\\) c) /MCID 0>> BDC
BT /f0 8 Tf 1 0 0 1 56.7 100.25 Tm [<0001> -5.5 <00020003>] TJ (\\000\\001)Tj ET EMC
0.5 g 10 20 30 40 re f % a remark
BT /f0 12 Tf <0001>' 1 2 <0002>\" ET Q";

const CHARACTERS: &str = "/CIDInit /ProcSet findresource begin 12 dict begin begincmap
/CMapName /Invented def 1 begincodespacerange <0000> <FFFF> endcodespacerange
3 beginbfchar <0001> <0041> <0002> <00660069> <0003> <D835DC00> endbfchar
2 beginbfrange <0010> <001F> <0061> <0020> <0022> [<0041> <0042> <0043>] endbfrange
endcmap end end";

const TRAILER: &str = "/Root 1 0 R/Info 5 0 R";

fn stream(bytes: &[u8]) -> Vec<u8> {
    let head = format!("<</Length {}>>stream\n", bytes.len());
    [head.as_bytes(), bytes, b"\nendstream"].concat()
}

/// A file of these objects and trailer, with a table of where they stand.
fn file(objects: &[Vec<u8>], trailer: &[u8]) -> Vec<u8> {
    let mut file = b"%PDF-1.7\n%\xe2\xe3\xcf\xd3\n".to_vec();
    let mut table = "0000000000 65535 f \n".to_owned();
    for (number, object) in (1..).zip(objects) {
        table += &format!("{:010} 00000 n \n", file.len());
        file.extend(format!("{number} 0 obj\n").into_bytes());
        file.extend(object);
        file.extend(b"\nendobj\n");
    }
    let (start, count) = (file.len(), objects.len() + 1);
    file.extend(format!("xref\n0 {count}\n{table}trailer\n<</Size {count}").into_bytes());
    file.extend(trailer);
    file.extend(format!(">>\nstartxref\n{start}\n%%EOF\n").into_bytes());
    file
}

fn bytes_of(texts: &[&str]) -> Vec<Vec<u8>> {
    texts.iter().map(|text| text.as_bytes().to_vec()).collect()
}

fn part(name: &str, bytes: &[u8]) -> Part {
    Part {
        name: name.to_owned(),
        bytes: bytes.to_vec(),
    }
}

fn take_apart(bytes: &[u8]) -> Result<()> {
    let pdf = Pdf::parse(Path::new("report.pdf"), bytes)?;
    pdf.attachments()?;
    pdf.pages()?;
    Ok(())
}

/// A report on a sample campaign.
fn report() -> Vec<u8> {
    let rated = simmerline::assess_folder(Path::new("sample-runs/kitchen-thermometer")).unwrap();
    let outputs = outputs(&rated, &Edition::plain(Timestamp::UNIX_EPOCH)).unwrap();
    let mut pdfs = outputs
        .into_iter()
        .filter(|file| file.name.ends_with(".pdf"));
    pdfs.next().expect("a report is a PDF").bytes
}

#[test]
fn pdf_objects() {
    let _one = crate::limits::one_at_a_time();
    let mut parts: Vec<Part> = OBJECTS
        .iter()
        .map(|text| part("object", text.as_bytes()))
        .collect();
    parts.push(part("content", &stream(CONTENT.as_bytes())));
    parts.push(part("characters", &stream(CHARACTERS.as_bytes())));
    parts.push(part("trailer", TRAILER.as_bytes()));
    let invented = Sample {
        name: "invented".to_owned(),
        parts,
    };
    Target {
        name: "pdf_objects",
        samples: vec![invented, Sample::whole("report", report())],
        always: PDF,
        join: |parts: &[Part]| match parts {
            [whole] => whole.bytes.clone(),
            [objects @ .., trailer] => {
                let objects: Vec<Vec<u8>> = objects.iter().map(|part| part.bytes.clone()).collect();
                file(&objects, &trailer.bytes)
            }
            [] => Vec::new(),
        },
        parse: |_: usize, bytes: &[u8]| take_apart(bytes),
    }
    .run();
}

#[test]
fn pdf_content() {
    let _one = crate::limits::one_at_a_time();
    let sample = Sample {
        name: "invented".to_owned(),
        parts: vec![
            part("content", CONTENT.as_bytes()),
            part("characters", CHARACTERS.as_bytes()),
        ],
    };
    Target {
        name: "pdf_content",
        samples: vec![sample],
        always: PDF,
        join: |parts: &[Part]| {
            let mut objects = bytes_of(&OBJECTS);
            objects.extend(parts.iter().map(|part| stream(&part.bytes)));
            file(&objects, TRAILER.as_bytes())
        },
        parse: |_: usize, bytes: &[u8]| take_apart(bytes),
    }
    .run();
}
