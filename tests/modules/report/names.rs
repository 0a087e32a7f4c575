//! Names that are odd.

use lopdf::Document;
use simmerline::assess_folder;
use simmerline::report::outputs;

use crate::report::campaigns::*;
use crate::report::pdf::{pages, squeezed};

#[test]
fn markup_characters_print_as_they_are_written() {
    let odd =
        "*bold* _it_ #set $x^2$ [a](b) <tag> &amp; \"q\" \\n ~ @ref `raw` // -- --- ... = + 1/2";
    let quoted = odd.replace('\\', "\\\\").replace('"', "\\\"");
    let copy = Copy::new()
        .with_one_run()
        .replace(
            "name = \"Saltbush octagon\"",
            &format!("name = \"{quoted}\""),
        )
        .replace(
            "title = \"Saltbush octagon, bare pot\"",
            &format!("title = \"Title {quoted}\""),
        )
        .replace(
            "tester = \"A. Sample (invented)\"",
            &format!("tester = \"Tester {quoted}\""),
        )
        .replace(
            "report_number = \"DEMO-1\"",
            "report_number = \"1 *b* _i_ #set $x$ <t> &amp; @ref `r`\"",
        )
        .replace(
            "notes = \"Aimed by hand",
            &format!("notes = \"Notes {quoted} Aimed by hand"),
        )
        .replace(
            "notes = \"Set up early",
            &format!("notes = \"Run {quoted} Set up early"),
        )
        .replace(
            "name = \"Drymere flats (invented)\"",
            &format!("name = \"Site {quoted}\""),
        );
    let assessment = copy.assess();
    let pdf = Document::load_mem(&pdf_of(&assessment)).unwrap();
    let text = pages(&pdf).concat();
    let number = squeezed("Report 1 *b* _i_ #set $x$ <t> &amp; @ref `r`");
    assert!(text.contains(&number), "no {number} in {text}");
    for lead in ["Name", "Title ", "Tester ", "Notes ", "Run ", "Site "] {
        let expected = squeezed(&format!("{lead}{odd}"));
        assert!(text.contains(&expected), "no {expected} in {text}");
    }
}

#[test]
fn a_name_in_letters_that_the_fonts_lack_is_refused_by_name() {
    let copy = Copy::new().replace("name = \"Saltbush octagon\"", "name = \"太陽 dish\"");
    let error = copy.fails();
    assert_eq!(error.exit_code(), 4);
    let text = error.to_string();
    for part in ["campaign.toml", "\"太\"", "\"陽\"", "hint: "] {
        assert!(text.contains(part), "no {part} in {text}");
    }
}

#[test]
fn the_place_of_a_letter_that_the_fonts_lack_is_the_campaign_file_as_the_user_names_it() {
    let copy = Copy::new().replace("name = \"Saltbush octagon\"", "name = \"太陽 dish\"");
    let file = copy.root.path().join("campaign.toml").display().to_string();
    let text = copy.fails().to_string();
    assert!(text.contains(&file), "{text}");
}

#[test]
fn greek_cyrillic_and_accented_names_are_printed() {
    for name in [
        "Ηλιακή κουζίνα",
        "Солнечная печь",
        "Crème brûlée à l'ombre — été",
        "Çiğköfte ölçüsü",
    ] {
        let copy = Copy::new()
            .with_one_run()
            .replace("name = \"Saltbush octagon\"", &format!("name = \"{name}\""));
        let pdf = Document::load_mem(&pdf_of(&copy.assess())).unwrap();
        let text = pages(&pdf).concat();
        assert!(text.contains(&squeezed(name)), "{name}");
    }
}

#[test]
fn control_and_invisible_characters_print_or_are_refused_and_are_no_fault_of_ours() {
    let mut wrong = Vec::new();
    for odd in [
        "\\u0007",
        "\\n",
        "\\t",
        "\\r",
        "\\u001B[31m",
        "\\u200B",
        "\\u00AD",
        "\\uFEFF",
        "\\uE000",
        "\\uFFFE",
        "\\u202E",
        "e\\u0301",
        "\\U0001F525",
    ] {
        let copy = Copy::new()
            .with_one_run()
            .replace(
                "name = \"Saltbush octagon\"",
                &format!("name = \"Saltbush{odd}octagon\""),
            )
            .replace(
                "title = \"Saltbush octagon, bare pot\"",
                &format!("title = \"Saltbush{odd}octagon\""),
            );
        let made =
            assess_folder(copy.root.path()).and_then(|assessment| outputs(&assessment, &edition()));
        match made {
            Ok(made) => assert!(Document::load_mem(&made[0].bytes).is_ok(), "{odd}"),
            Err(error) if error.exit_code() == 4 => {}
            Err(error) => wrong.push(format!("{odd}: {error}")),
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn names_of_200_characters_with_and_without_spaces_are_printed_whole() {
    let spaced = "very long name of a cooker ".repeat(8)[..200]
        .trim()
        .to_owned();
    for name in [spaced, "W".repeat(200), "Octagon-".repeat(25)] {
        let copy = Copy::new()
            .with_one_run()
            .replace("name = \"Saltbush octagon\"", &format!("name = \"{name}\""))
            .replace(
                "title = \"Saltbush octagon, bare pot\"",
                &format!("title = \"{name}\""),
            )
            .replace(
                "report_number = \"DEMO-1\"",
                &format!("report_number = \"{}\"", &name[..40]),
            );
        let pdf = Document::load_mem(&pdf_of(&copy.assess())).unwrap();
        let pages = pages(&pdf);
        assert!((4..20).contains(&pages.len()), "{} pages", pages.len());
        assert!(pages[0].contains(&squeezed(&name)), "{name}");
    }
}
