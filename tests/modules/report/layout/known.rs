//! What breaches a rule today, how often exactly, and why. The list only ever shrinks.

/// A rule that is breached, how often over all documents, and why that is left so.
pub struct Known {
    pub rule: &'static str,
    pub count: usize,
    pub reason: &'static str,
}

pub const KNOWN: &[Known] = &[
    Known {
        rule: "page_one_tells_its_facts",
        count: 6,
        reason: "Swahili on Letter: longer sentences than any other language, on the lower paper",
    },
    Known {
        rule: "no_sentence_is_parted_from_its_table",
        count: 1,
        reason: "the end mark of eleven campaigns on Letter stands alone behind the hashes",
    },
];
