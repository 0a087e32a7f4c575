//! The web page in Chromium: on a phone, on a desk, on paper.

use std::ffi::{OsStr, OsString};
use std::fs;
use std::path::Path;
use std::process::Command;
use std::sync::Arc;

use libtest_mimic::{Failed, Trial};
use lopdf::Document;
use tempfile::TempDir;

use super::kit::samples::sample_folder;
use super::{Made, holds, is_there, output};

/// Widths of a phone and of a desk, CSS pixels.
const WIDTHS: [u32; 2] = [360, 1280];

/// Opens the page at each width in a frame, as a window cannot be made so narrow. Says of each
/// frame how wide it is and what is amiss: what reaches beyond it outside a box that scrolls,
/// cells and paragraphs that are narrower than what they hold, figures that are there twice or
/// not at all, beyond the screen or too small to read, texts in them that touch, a mark at
/// 50 K that is not in sight, marks of the page that scroll away, and texts that are small or
/// faint.
const LOOK: &str = r#"
// Relative luminance and contrast: WCAG 2.2, section 6, of colours as "rgb(1, 2, 3)".
function luminance(colour) {
  const [r, g, b] = colour.match(/[\d.]+/g).map((part) => {
    const share = Number(part) / 255;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(one, other) {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}
function groundOf(element, view) {
  for (let at = element; at; at = at.parentElement) {
    const ground = view.getComputedStyle(at).backgroundColor;
    if (!/, 0\)$/.test(ground)) return ground;
  }
  return "rgb(255, 255, 255)";
}
// Texts under 11.5 px, and those whose contrast is below 4.5 (WCAG 2.2, criterion 1.4.3).
function lookAtTexts(page, view, isShown) {
  const amiss = [];
  const texts = page.createTreeWalker(page.body, NodeFilter.SHOW_TEXT);
  while (texts.nextNode()) {
    const said = texts.currentNode.textContent.trim(), element = texts.currentNode.parentElement;
    if (!said || element.closest("style, script") || !isShown(element)) continue;
    const style = view.getComputedStyle(element), isDrawn = element.closest("svg");
    if (!isDrawn && parseFloat(style.fontSize) < 11.5)
      amiss.push("small, " + style.fontSize + ": " + said.slice(0, 40));
    const found = contrast(isDrawn ? style.fill : style.color, groundOf(element, view));
    if (found < 4.5) amiss.push("faint, " + found.toFixed(1) + ": " + said.slice(0, 40));
  }
  return amiss;
}
const px = (value) => Math.round(value * 10) / 10;
function lookAt(frame) {
  const page = frame.contentDocument, view = frame.contentWindow;
  const root = page.documentElement, width = root.clientWidth, amiss = [];
  const box = (element) => element.getBoundingClientRect();
  const isShown = (element) => box(element).width > 0 && !element.closest(".unseen, .cards thead, .matrix thead, .times thead");
  const start = (element) => element.outerHTML.slice(0, 90);
  if (root.scrollWidth > width) amiss.push("overflows");
  amiss.push(...lookAtTexts(page, view, isShown));
  for (const element of page.querySelectorAll("body *"))
    if (!element.closest(".scroll *, svg *") && box(element).right > width + 0.5)
      amiss.push("beyond: " + start(element));
  for (const element of page.querySelectorAll("p, th, td, dt, dd, li, h1, h2, h3, figcaption"))
    if (isShown(element) && element.scrollWidth > element.clientWidth + 1 && element.clientWidth)
      amiss.push("overfull: " + start(element));
  for (const scroll of page.querySelectorAll(".scroll"))
    if (scroll.scrollWidth > scroll.clientWidth + 1) amiss.push("scrolls: " + start(scroll));
  for (const figure of page.querySelectorAll("[role=img]")) {
    const shown = [...figure.querySelectorAll("svg")].filter(isShown);
    if (shown.length !== 1) { amiss.push(shown.length + " of " + start(figure)); continue; }
    amiss.push(...lookAtFigure(shown[0], width));
  }
  const front = page.querySelector(".front"), has = front ? front.classList : null;
  if (has && !["no-rating", "not-valid", "verdict"].some((one) => has.contains(one))) {
    const texts = [...front.querySelectorAll("figure text")].filter(isShown);
    const marks = texts.filter((text) => /50\sK$/.test(text.textContent.trim()));
    if (!marks.some((mark) => box(mark).left >= 0 && box(mark).right <= width))
      amiss.push("no mark at 50 K in sight");
  }
  const stays = () => {
    const at = box(page.querySelector(".top .marks"));
    return at.top >= 0 && at.bottom < 120 && at.height > 0;
  };
  const atTop = stays();
  view.scrollTo(0, root.scrollHeight);
  if (!atTop || !stays() || view.scrollY < 500) amiss.push("marks out of sight");
  return view.innerWidth + "; " + (amiss.join(" | ") || "all well");
}
function lookAtFigure(svg, width) {
  const amiss = [], frame = svg.getBoundingClientRect();
  if (frame.left < 0 || frame.right > width) amiss.push("figure beyond");
  const scale = frame.width / svg.viewBox.baseVal.width;
  const texts = [...svg.querySelectorAll("text")].filter((text) => text.textContent.trim());
  const boxes = texts.map((text) => {
    const size = parseFloat(getComputedStyle(text).fontSize) * scale;
    if (size < 9) amiss.push("small, " + px(size) + ": " + text.textContent.trim());
    const { left, right, top, bottom } = text.getBoundingClientRect();
    // What is above and below the letters of a line may touch, and be cut.
    const slack = text.hasAttribute("transform") ? [size * 0.3, 0.5] : [0.5, size * 0.3];
    const seen = { text, left: left + slack[0], right: right - slack[0], top: top + slack[1], bottom: bottom - slack[1] };
    if (seen.left < frame.left || seen.right > frame.right || seen.top < frame.top || seen.bottom > frame.bottom)
      amiss.push("cut: " + text.textContent.trim());
    return seen;
  });
  boxes.forEach((one, place) => boxes.slice(place + 1).forEach((other) => {
    if (one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom)
      amiss.push("touch: " + one.text.textContent.trim() + " / " + other.text.textContent.trim());
  }));
  return amiss;
}
addEventListener("load", () => {
  const found = [...document.querySelectorAll("iframe")].map(lookAt);
  document.body.replaceChildren(...found.map((line) => {
    const element = document.createElement("p");
    element.textContent = line;
    return element;
  }));
});
"#;

/// Nothing of a report is wider than a phone or unreadable, its marks stay in sight, and they
/// are on every sheet of paper.
pub fn chromium(made: &Made, name: &str) -> Result<(), Failed> {
    let page = made.path(name, "html");
    look(&page)?;
    let folder = TempDir::new()?;
    let printed = folder.path().join("printed.pdf");
    let print = format!("--print-to-pdf={}", printed.display());
    browse(&[&print, "--no-pdf-header-footer"], &page)?;
    on_every_sheet(&printed)
}

/// The same of the other pages, and of reports in every language.
pub fn trials(made: &Arc<Made>) -> Vec<Trial> {
    let index = {
        let made = Arc::clone(made);
        Trial::test("chromium_shows_the_page_that_leads_to_reports", move || {
            look(&made.path("index", "html"))
        })
    };
    let dark = {
        let made = Arc::clone(made);
        Trial::test("chromium_shows_pages_in_the_dark", move || {
            ["open-dish", "index"].iter().try_for_each(|name| {
                let page = fs::read_to_string(made.path(name, "html"))?;
                // Chromium without a window has no wish for dark colours.
                let wish = "@media screen and (prefers-color-scheme: dark)";
                holds(&page, wish)?;
                let folder = TempDir::new()?;
                let dark = folder.path().join("dark.html");
                fs::write(&dark, page.replace(wish, "@media screen"))?;
                look(&dark).map_err(|failed| named(name, failed))
            })
        })
    };
    let sheets = Trial::test("chromium_shows_field_sheets", || {
        let day = ["--date", "2026-09-20"];
        for (name, more) in [
            ("open-dish", [].as_slice()),
            ("dry-pot", &[]),
            ("dish-cooling", &["--kind", "cooling"]),
        ] {
            each_language("plan", name, &[&day, more].concat())?;
        }
        Ok(())
    });
    let comparisons = Trial::test("chromium_shows_comparisons_in_every_language", || {
        for names in [["open-dish", "open-dish-skirt"].as_slice(), &["."]] {
            for language in ["en", "es", "fr", "pt", "sw"] {
                let folders = names.iter().map(|name| sample_folder(name));
                let mut arguments: Vec<OsString> = vec!["compare".into(), "--allow-mixed".into()];
                arguments.extend(folders.map(OsString::from));
                look_at_all(&arguments, language).map_err(|failed| named(language, failed))?;
            }
        }
        Ok(())
    });
    let reports = ["open-dish", "panel-cloudy", "box-figures", "tube-area-slip"].map(|name| {
        Trial::test(
            format!("chromium_shows_{name}_in_every_language"),
            move || each_language("report", name, &[]),
        )
    });
    let trials = reports
        .into_iter()
        .chain([index, dark, sheets, comparisons]);
    let is_there = is_there("chromium");
    trials
        .map(|trial| trial.with_ignored_flag(!is_there))
        .collect()
}

/// Looks at the page that a command writes for a sample in each language but English.
fn each_language(command: &str, name: &str, more: &[&str]) -> Result<(), Failed> {
    let mut arguments: Vec<OsString> = vec![command.into(), sample_folder(name).into()];
    arguments.extend(more.iter().map(OsString::from));
    for language in ["es", "fr", "pt", "sw"] {
        look_at_all(&arguments, language)
            .map_err(|failed| named(&format!("{name}, {language}"), failed))?;
    }
    Ok(())
}

/// Looks at every page that a command writes in a language.
fn look_at_all(arguments: &[OsString], language: &str) -> Result<(), Failed> {
    let folder = TempDir::new()?;
    let mut call = Command::new(env!("CARGO_BIN_EXE_simmerline"));
    call.args(arguments);
    call.args(["--language", language, "--format", "html", "--out"]);
    let done = call.arg(folder.path()).output()?;
    if !done.status.success() {
        return Err(String::from_utf8_lossy(&done.stderr).into_owned().into());
    }
    let mut looked_at = 0;
    for file in fs::read_dir(folder.path())? {
        let file = file?.path();
        if file.extension().is_some_and(|ending| ending == "html") {
            look(&file)?;
            looked_at += 1;
        }
    }
    match looked_at {
        0 => Err("no page was written".into()),
        _ => Ok(()),
    }
}

fn named(page: &str, failed: Failed) -> Failed {
    let said = failed.message().unwrap_or_default();
    format!("{page}: {said}").into()
}

/// Opens a page at each width, and fails with all that is amiss.
fn look(page: &Path) -> Result<(), Failed> {
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
    let found = said
        .rsplit_once("</script>")
        .map_or(said.as_str(), |parts| parts.1);
    for width in WIDTHS {
        holds(found, &format!("<p>{width}; all well</p>"))?;
    }
    Ok(())
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
