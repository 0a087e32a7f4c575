//! What a log holds, as a message quotes it.

/// A header in quotes.
pub fn in_quotes(header: &str) -> String {
    format!("\"{header}\"")
}

/// Headers in quotes, separated by commas.
pub fn quoted(headers: &[String]) -> String {
    let quoted: Vec<String> = headers.iter().map(|header| in_quotes(header)).collect();
    quoted.join(", ")
}

/// A cell as it is quoted in a message.
pub fn shortened(text: &str) -> String {
    const LONGEST: usize = 40;
    match text.char_indices().nth(LONGEST) {
        Some((end, _)) => format!("{}…", text[..end].escape_debug()),
        None => text.escape_debug().to_string(),
    }
}
