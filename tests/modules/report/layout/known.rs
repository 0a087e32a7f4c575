//! What breaches a rule today. The list only ever shrinks.

/// A rule that is breached, how often over all documents, and why that is left so.
pub struct Known {
    pub rule: &'static str,
    pub most: usize,
    pub reason: &'static str,
}

pub const KNOWN: &[Known] = &[
    Known {
        rule: "no_code_is_printed",
        most: 8,
        reason: "pages that are still being set",
    },
    Known {
        rule: "no_document_is_too_long",
        most: 101,
        reason: "pages that are still being set",
    },
    Known {
        rule: "no_line_ends_within_a_value",
        most: 55,
        reason: "pages that are still being set",
    },
    Known {
        rule: "no_page_but_the_last_is_a_quarter_empty",
        most: 136,
        reason: "pages that are still being set",
    },
    Known {
        rule: "no_row_of_a_table_is_alone_or_torn",
        most: 60,
        reason: "pages that are still being set",
    },
    Known {
        rule: "no_sentence_is_parted_from_its_table",
        most: 91,
        reason: "pages that are still being set",
    },
    Known {
        rule: "no_text_is_outside_its_margins_or_its_figure",
        most: 10,
        reason: "pages that are still being set",
    },
    Known {
        rule: "no_two_lines_overlap",
        most: 84,
        reason: "pages that are still being set",
    },
    Known {
        rule: "no_type_is_under_seven_points",
        most: 1340,
        reason: "pages that are still being set",
    },
];
