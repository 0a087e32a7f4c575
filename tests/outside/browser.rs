//! The web page in Chromium: on a phone, on a desk, on paper.

use std::ffi::OsStr;
use std::fs;
use std::path::Path;

use libtest_mimic::Failed;
use lopdf::Document;
use tempfile::TempDir;

use super::{Made, holds, output};

/// Widths of a phone and of a desk, CSS pixels.
const WIDTHS: [u32; 2] = [360, 1280];

/// Opens the report at each width in a frame, as a window cannot be made so narrow. Says of
/// each frame how wide it is, what reaches beyond it outside a box that scrolls, and whether
/// the marks are in sight at the top and at the end.
const LOOK: &str = r#"
addEventListener("load", () => {
  const found = [...document.querySelectorAll("iframe")].map(frame => {
    const page = frame.contentDocument, view = frame.contentWindow;
    const root = page.documentElement, width = root.clientWidth;
    const beyond = [...page.querySelectorAll("body *")].filter(element =>
      !element.closest(".scroll *") && element.getBoundingClientRect().right > width + 0.5);
    const marks = () => {
      const at = page.querySelector(".top .marks").getBoundingClientRect();
      return at.top >= 0 && at.bottom < 120 && at.height > 0;
    };
    const atTop = marks();
    view.scrollTo(0, root.scrollHeight);
    const figures = [...page.querySelectorAll("svg")];
    return [view.innerWidth, root.scrollWidth > width ? "overflows" : "fits",
      beyond.map(element => element.outerHTML.slice(0, 80)).join(" | ") || "nothing beyond",
      atTop && marks() && view.scrollY > 1000 ? "marks in sight" : "marks out of sight",
      figures.every(figure => figure.getBoundingClientRect().width > 540) ? "legible" : "small",
    ].join("; ");
  });
  document.body.replaceChildren(...found.map(line => {
    const element = document.createElement("p");
    element.textContent = line;
    return element;
  }));
});
"#;

/// Nothing of the page is wider than a phone, its marks stay in sight, and they are on every
/// sheet of paper.
pub fn chromium(made: &Made, name: &str) -> Result<(), Failed> {
    let page = made.path(name, "html");
    let frames = WIDTHS.map(|width| {
        let address = page.display();
        format!("<iframe src=\"file://{address}\" style=\"width: {width}px; height: 700px; border: 0\"></iframe>")
    });
    let folder = TempDir::new()?;
    let wrapper = folder.path().join("frames.html");
    let script = format!("<script>{LOOK}</script>");
    fs::write(
        &wrapper,
        format!("<!DOCTYPE html>{script}{}", frames.concat()),
    )?;
    let said = browse(&["--allow-file-access-from-files", "--dump-dom"], &wrapper)?;
    for width in WIDTHS {
        let expected = format!("<p>{width}; fits; nothing beyond; marks in sight; legible</p>");
        holds(&said, &expected)?;
    }
    let printed = folder.path().join("printed.pdf");
    let print = format!("--print-to-pdf={}", printed.display());
    browse(&[&print, "--no-pdf-header-footer"], &page)?;
    on_every_sheet(&printed)
}

fn on_every_sheet(printed: &Path) -> Result<(), Failed> {
    let pdf = Document::load(printed)?;
    let pages: Vec<u32> = pdf.get_pages().into_keys().collect();
    if pages.len() < 4 {
        return Err(format!("{} pages", pages.len()).into());
    }
    for page in pages {
        let text: String = pdf.extract_text(&[page])?.split_whitespace().collect();
        for expected in ["Report", "Inventeddata", "Resultsrelateonly"] {
            holds(&text, expected)?;
        }
    }
    Ok(())
}

/// Runs Chromium on a file, with a profile of its own and without a network.
fn browse(arguments: &[&str], page: &Path) -> Result<String, Failed> {
    let profile = TempDir::new()?;
    let profile = format!("--user-data-dir={}", profile.path().display());
    let quiet = [
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        &profile,
    ];
    let arguments = quiet.iter().chain(arguments).map(OsStr::new);
    let all: Vec<&OsStr> = arguments.chain([page.as_os_str()]).collect();
    output("chromium", &all)
}
