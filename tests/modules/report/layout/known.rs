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
        most: 684,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_document_is_too_long",
        most: 156,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_line_ends_within_a_value",
        most: 358,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_page_but_the_last_is_a_quarter_empty",
        most: 340,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_row_of_a_table_is_alone_or_torn",
        most: 198,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_code_is_printed",
        most: 4315,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_text_is_outside_its_margins_or_its_figure",
        most: 48,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_sentence_is_parted_from_its_table",
        most: 121,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_two_lines_overlap",
        most: 1329,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "no_type_is_under_seven_points",
        most: 103494,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "probabilities_are_numbers",
        most: 52,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "sections_are_linked",
        most: 180,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "the_outline_leads_to_each_section_once",
        most: 5808,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "the_title_is_read_first",
        most: 204,
        reason: "pages of version 0.3, which are being set anew",
    },
    Known {
        rule: "numbers_are_rounded",
        most: 156,
        reason: "pages of version 0.3, which are being set anew",
    },
];
