//! A file of keys that campaigns share, as it was read.

use std::path::PathBuf;

/// A file of keys that campaigns share.
#[derive(Debug, Clone)]
pub struct SharedFile {
    /// Its name among the inputs.
    pub name: String,
    /// As the user would name it.
    pub path: PathBuf,
    /// So many folders above the campaign's own; of an attached one 0.
    pub levels_above: usize,
    pub text: String,
    /// Lower-case hex.
    pub sha256: String,
    /// Length of the file.
    pub bytes: u64,
    /// Those of its keys that hold for the campaign, such as `site.name`, in order.
    pub holding: Vec<String>,
}

impl SharedFile {
    /// The keys that hold, by their tables, as a person reads them: `[site] name, latitude_deg`.
    pub fn spoken_keys(&self) -> String {
        let mut tables: Vec<(&str, Vec<&str>)> = Vec::new();
        for held in &self.holding {
            let (table, key) = held.rsplit_once('.').unwrap_or(("", held));
            match tables.iter_mut().find(|(other, _)| *other == table) {
                Some((_, keys)) => keys.push(key),
                None => tables.push((table, vec![key])),
            }
        }
        let spoken = tables.iter().map(|(table, keys)| match *table {
            "" => format!("[[{}]]", keys.join("]], [[")),
            table => format!("[{table}] {}", keys.join(", ")),
        });
        spoken.collect::<Vec<_>>().join("; ")
    }
}
