//! Words as they are compared.

use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

/// Lower case without accents; ß as ss.
pub fn fold(text: &str) -> String {
    if text.is_ascii() {
        return text.to_ascii_lowercase();
    }
    let lower = text.to_lowercase().replace('ß', "ss");
    lower.nfd().filter(|c| !is_combining_mark(*c)).collect()
}
