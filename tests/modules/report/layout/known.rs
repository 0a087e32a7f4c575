//! What breaches a rule today, how often exactly, and why. The list only ever shrinks.

/// A rule that is breached, how often over all documents, and why that is left so.
pub struct Known {
    pub rule: &'static str,
    pub count: usize,
    pub reason: &'static str,
}

pub const KNOWN: &[Known] = &[];
