//! What breaches a rule today, how often exactly, and why. The list only ever shrinks.

/// A rule that is breached, how often over all documents, and why that is left so.
pub struct Known {
    pub rule: &'static str,
    pub count: usize,
    pub reason: &'static str,
}

pub const KNOWN: &[Known] = &[
    Known {
        rule: "no_document_is_too_long",
        count: 58,
        reason: "four runs are nine pages in languages longer than English and on Letter, and \
            nine long runs, whose 180 intervals fill three pages, ten or eleven",
    },
    Known {
        rule: "no_page_but_the_last_is_a_quarter_empty",
        count: 4,
        reason: "what comes next is a figure with its text, or two runs side by side, that have \
            no room below",
    },
    Known {
        rule: "no_sentence_is_parted_from_its_table",
        count: 24,
        reason: "a procedure's figure and the text beside it go to the next page where both do \
            not fit below its values",
    },
    Known {
        rule: "no_two_lines_overlap",
        count: 10,
        reason: "letters of the name along the axis of page one's figure, by less than a point",
    },
];
