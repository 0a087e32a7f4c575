//! Changes that hide: in front of the number, above the pages, beside what is drawn.

use lopdf::Object;

use crate::bench::*;

#[test]
fn a_digit_in_front_of_the_number() {
    let pdf = redrawn(|content| {
        // "131" becomes "3131".
        let codes = codes_of_number(content);
        let three = [codes[2], codes[3]];
        codes.splice(0..0, three);
    });
    differs(
        &pdf,
        &["headline", "pages"],
        &["page 1 does not print \"131 ± 10 W (95 %)\""],
    );
}

#[test]
fn what_pages_inherit() {
    let crop: Vec<Object> = vec![0.into(), 150.into(), 595.into(), 842.into()];
    for (key, value) in [
        ("CropBox", Object::Array(crop)),
        ("Rotate", Object::Integer(180)),
    ] {
        let pdf = open_dish(|document| {
            let catalog = document.catalog().unwrap();
            let pages = catalog.get(b"Pages").unwrap().as_reference().unwrap();
            let pages = document.get_dictionary_mut(pages).unwrap();
            pages.set(key, value);
        });
        differs(&pdf, &["pages"], &["is drawn otherwise"]);
    }
}

#[test]
fn a_key_or_a_column_that_stands_twice() {
    let pdf = open_dish(|document| {
        replace_in(
            document,
            RATING,
            "\"ps50_w\": ",
            "\"ps50_w\": 999.0, \"ps50_w\": ",
        );
    });
    differs(&pdf, &["rating"], &["the key \"ps50_w\" stands twice"]);
    let name = "open-dish.intervals.csv";
    let pdf = open_dish(|document| {
        let text = attached_text(document, name);
        let rows = text.lines().enumerate().map(|(index, row)| {
            let first = match index {
                0 => "standardised_power_w",
                _ => "999",
            };
            format!("{first},{row}\n")
        });
        let rows: String = rows.collect();
        attach_instead(document, name, rows.as_bytes());
    });
    differs(
        &pdf,
        &["intervals"],
        &["the column \"standardised_power_w\" stands twice"],
    );
}

#[test]
fn the_words_for_who_cannot_see_a_figure() {
    let pdf = open_dish(|document| {
        let objects = document.objects.values_mut();
        let mut dictionaries = objects.filter_map(|object| object.as_dict_mut().ok());
        let figure = dictionaries.find(|one| one.has(b"Alt")).unwrap();
        figure.set("Alt", Object::string_literal("164 W, all is well"));
    });
    differs(
        &pdf,
        &["document"],
        &["what a screen reader says is not as issued"],
    );
}
