//! How far a call has come with its campaigns.

use std::io::IsTerminal;

use indicatif::{ProgressBar, ProgressStyle};

/// A bar on standard error; none where nobody looks at it.
pub fn progress_bar(campaigns: usize, is_quiet: bool) -> ProgressBar {
    if is_quiet || !std::io::stderr().is_terminal() {
        return ProgressBar::hidden();
    }
    let style = ProgressStyle::with_template("{pos} of {len}  {bar:24}  {msg}")
        .unwrap_or_else(|_| ProgressStyle::default_bar());
    ProgressBar::new(campaigns as u64).with_style(style)
}
