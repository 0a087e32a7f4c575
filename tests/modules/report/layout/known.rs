//! What breaches a rule today. The list only ever shrinks.

/// A rule that is breached, how often over all documents, and why that is left so.
pub struct Known {
    pub rule: &'static str,
    pub most: usize,
    pub reason: &'static str,
}

pub const KNOWN: &[Known] = &[
    Known {
        rule: "every_ink_of_text_stands_out",
        most: 34,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_code_is_printed",
        most: 225,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_document_is_too_long",
        most: 142,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_line_ends_within_a_value",
        most: 16,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_page_but_the_last_is_a_quarter_empty",
        most: 188,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_row_of_a_table_is_alone_or_torn",
        most: 111,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_sentence_is_parted_from_its_table",
        most: 82,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_text_is_outside_its_margins_or_its_figure",
        most: 23,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_two_lines_overlap",
        most: 1115,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_type_is_under_seven_points",
        most: 3317,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "numbers_are_rounded",
        most: 92,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "sections_are_linked",
        most: 34,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "the_title_is_read_first",
        most: 57,
        reason: "pages of version 0.3, which are being set anew",
    },
];
