//! `report --format html` on several campaigns: the page that leads to their reports.

use roxmltree::{Document, ParsingOptions};

use crate::bench::Bench;

const PAGE: &str = "reports/index.html";

/// Two campaigns, of which the second says that it is invented or real, and has a title.
fn bench() -> Bench {
    let bench = Bench::new();
    bench.add_campaign("wattle");
    bench
}

fn both(bench: &Bench, more: &[&str]) -> crate::bench::Ended {
    let arguments = ["report", "mallee", "wattle", "--format", "html,pdf"];
    bench.run(&[&arguments, more].concat())
}

/// What the links of the page lead to.
fn links(page: &str) -> Vec<String> {
    let options = ParsingOptions {
        allow_dtd: true,
        ..ParsingOptions::default()
    };
    let page = Document::parse_with_options(page, options).unwrap();
    let links = page.descendants().filter(|node| node.has_tag_name("a"));
    links
        .map(|link| link.attribute("href").unwrap().to_owned())
        .collect()
}

#[test]
fn several_web_pages_have_a_page_that_ranks_and_leads_to_them() {
    let bench = bench();
    both(&bench, &[]).exits(0).prints(&["reports/index.html"]);
    let page = bench.read(PAGE);
    let links = links(&page);
    for name in ["mallee", "wattle"] {
        let times = |file: &str| links.iter().filter(|link| *link == file).count();
        // From the ranking, and from the list of files.
        assert_eq!(times(&format!("./{name}.html")), 2, "{links:?}");
        for ending in ["pdf", "rating.json", "intervals.csv"] {
            assert_eq!(times(&format!("./{name}.{ending}")), 1, "{links:?}");
        }
    }
    for link in &links {
        let file = link.trim_start_matches("./");
        assert!(bench.path("reports").join(file).is_file(), "{file}");
    }
    for said in [
        "Invented data",
        "simmerline compare",
        "2 solar cooker test reports",
        "Before you cook",
    ] {
        assert!(page.contains(said), "{said}");
    }
    assert!(!page.contains("No report was written"));
}

#[test]
fn a_single_web_page_or_none_has_no_such_page() {
    let bench = bench();
    bench
        .run(&["report", "mallee", "--format", "html"])
        .exits(0);
    bench.run(&["report", "mallee", "wattle"]).exits(0);
    assert!(!bench.path(PAGE).exists());
}

#[test]
fn what_could_not_be_read_is_named_on_the_page() {
    let bench = bench();
    bench.replace("wattle/campaign.toml", "water_kg = 7.0", "water_kg = -7.0");
    both(&bench, &["--quiet"]).exits(4);
    let page = bench.read(PAGE);
    assert!(
        page.contains("No report was written on one campaign: wattle."),
        "{page}"
    );
    assert!(links(&page).iter().all(|link| !link.contains("wattle")));
}

#[test]
fn where_every_campaign_fails_an_older_page_stays() {
    let bench = bench();
    both(&bench, &["--quiet"]).exits(0);
    let older = bench.read(PAGE);
    for name in ["mallee", "wattle"] {
        bench.replace(
            &format!("{name}/campaign.toml"),
            "water_kg = 7.0",
            "water_kg = -7.0",
        );
    }
    both(&bench, &["--quiet"]).exits(4);
    assert_eq!(bench.read(PAGE), older);
}

#[test]
fn a_page_that_is_not_ours_is_never_replaced() {
    let bench = bench();
    bench.write(PAGE, "<html>my own</html>");
    let ended = both(&bench, &[]).exits(2);
    ended.says(&["index.html", "was not written by simmerline", "--out"]);
    assert_eq!(bench.read(PAGE), "<html>my own</html>");
    assert_eq!(bench.names("reports"), ["index.html"]);
    bench.write("reports/index.html", "");
    both(&bench, &[]).exits(2);
}

#[test]
fn a_campaign_may_not_have_the_name_of_the_page() {
    let bench = Bench::new();
    bench.add_campaign("Index");
    let ended = bench.run(&["report", "Index", "--format", "html"]).exits(2);
    ended.says(&["Index", "index.html", "rename the folder"]);
    bench.run(&["report", "Index", "--format", "pdf"]).exits(0);
}

#[test]
fn an_older_page_that_a_call_leaves_as_it_is_is_told() {
    let bench = bench();
    both(&bench, &[]).exits(0);
    let ended = bench
        .run(&["report", "mallee", "--format", "html"])
        .exits(0);
    ended.says(&["index.html", "an earlier call"]);
    let ended = bench.run(&["report", "mallee", "--format", "html", "--quiet"]);
    assert_eq!((ended.code, ended.err.as_str()), (0, ""));
    // All together again: the older page is ours, and replaced.
    both(&bench, &[]).exits(0);
}

#[test]
fn real_and_invented_data_are_told_apart() {
    let bench = bench();
    bench.replace(
        "wattle/campaign.toml",
        "demonstration = true",
        "demonstration = false",
    );
    both(&bench, &["--quiet"]).exits(0);
    let page = bench.read(PAGE);
    assert!(page.contains("Some of the data are invented"));
    assert!(page.contains("(invented data)"));
    bench.replace(
        "mallee/campaign.toml",
        "demonstration = true",
        "demonstration = false",
    );
    both(&bench, &["--quiet"]).exits(0);
    assert!(!bench.read(PAGE).contains("nvented"));
}

#[test]
fn the_page_speaks_the_language_of_the_call() {
    let bench = bench();
    for language in ["en", "es", "fr", "pt", "sw"] {
        both(&bench, &["--quiet", "--language", language]).exits(0);
        let page = bench.read(PAGE);
        assert!(
            page.contains(&format!("<html lang=\"{language}\">")),
            "{language}"
        );
    }
}

#[test]
fn the_caution_and_a_link_to_the_reports_stand_before_a_long_ranking() {
    let bench = Bench::empty();
    for number in 0..21 {
        bench.add_campaign(&format!("all/c{number:02}"));
    }
    let told = ["report", "all", "--format", "html"];
    bench.run(&told).exits(0);
    let page = bench.read(PAGE);
    assert_eq!(page.matches("Before you cook").count(), 1);
    let place = |said: &str| place_of(&page, said);
    let ranking = place("c00.html");
    assert!(place("Before you cook") < ranking && place("href=\"#reports\"") < ranking);
    assert!(place("<h2 id=\"reports\">") > ranking);
    // Of few campaigns the ranking comes first.
    let page = {
        let bench = self::bench();
        both(&bench, &[]).exits(0);
        bench.read(PAGE)
    };
    assert!(place_of(&page, "Before you cook") > place_of(&page, "mallee.html"));
    assert!(!page.contains("#reports"));
}

fn place_of(page: &str, said: &str) -> usize {
    page.find(said)
        .unwrap_or_else(|| panic!("{said} is not on the page"))
}
