//! One of the texts that a campaign is read from, and where in it something stands.

use std::path::{Path, PathBuf};

/// A campaign file, or a file of keys that campaigns share.
pub struct Source<'t> {
    pub file: PathBuf,
    pub text: &'t str,
    /// Where it begins among the texts of a campaign, laid end to end.
    pub start: usize,
    /// Where each line begins, counted from its own beginning.
    line_starts: Vec<usize>,
}

impl<'t> Source<'t> {
    /// A text that begins at a place among all of them.
    pub fn new(file: &Path, text: &'t str, start: usize) -> Self {
        Source {
            file: file.to_path_buf(),
            text,
            start,
            line_starts: std::iter::once(0)
                .chain(text.match_indices('\n').map(|(end, _)| end + 1))
                .collect(),
        }
    }

    /// Where the next text may begin.
    pub fn end(&self) -> usize {
        self.start + self.text.len() + 1
    }

    /// Line (from 1) of an offset from its own beginning.
    pub fn line_at(&self, offset: usize) -> u64 {
        self.line_starts.partition_point(|&start| start <= offset) as u64
    }

    /// Table and key at an offset from its own beginning, as a person reads them.
    pub fn item_at(&self, offset: usize) -> Option<String> {
        let end = self.text[offset..]
            .find('\n')
            .map_or(self.text.len(), |end| offset + end);
        let upto = &self.text[..end];
        let header = upto
            .lines()
            .rev()
            .map(str::trim)
            .find(|line| line.starts_with('['));
        let header = header.and_then(|line| line.rfind(']').map(|end| &line[..=end]));
        let key = upto
            .lines()
            .next_back()
            .and_then(|line| line.split_once('='));
        let key = key
            .map(|(key, _)| key.trim())
            .filter(|key| !key.starts_with(['#', '[']));
        match (header, key) {
            (Some(header), Some(key)) => Some(format!("{header} {key}")),
            (header, key) => header.or(key).map(str::to_owned),
        }
    }

    /// Line (from 1) on which a key of a table stands behind a `#`, as in a file that is to be
    /// filled in.
    pub fn line_behind_remark(&self, table_line: u64, key: &str) -> Option<u64> {
        let below = self.text.lines().enumerate().skip(table_line as usize);
        let mut of_table = below.take_while(|(_, line)| !line.trim_start().starts_with('['));
        let is_key = |line: &str| {
            let bare = line.trim_start().strip_prefix('#')?.trim_start();
            let rest = bare.strip_prefix(key)?.trim_start();
            rest.starts_with('=').then_some(())
        };
        let found = of_table.find(|(_, line)| is_key(line).is_some());
        found.map(|(index, _)| index as u64 + 1)
    }
}
