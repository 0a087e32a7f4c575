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
        most: 627,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_code_is_printed",
        most: 3955,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_document_is_too_long",
        most: 147,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_line_ends_within_a_value",
        most: 15,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_page_but_the_last_is_a_quarter_empty",
        most: 288,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_row_of_a_table_is_alone_or_torn",
        most: 106,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_sentence_is_parted_from_its_table",
        most: 67,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_text_is_outside_its_margins_or_its_figure",
        most: 22,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_two_lines_overlap",
        most: 1067,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_type_is_under_seven_points",
        most: 96327,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "numbers_are_rounded",
        most: 88,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "sections_are_linked",
        most: 33,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "the_title_is_read_first",
        most: 55,
        reason: "pages of version 0.3, which are being set anew",
    },
];
