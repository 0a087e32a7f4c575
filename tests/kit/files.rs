//! Files of a test in a folder of its own.

use std::fs;
use std::path::Path;

/// Writes a file below a folder, and the folders on the way to it.
pub fn write(folder: &Path, name: &str, content: impl AsRef<[u8]>) {
    let path = folder.join(name);
    fs::create_dir_all(path.parent().unwrap()).unwrap();
    fs::write(path, content).unwrap();
}

/// Replaces text of a file that must be there; the number of the last new line.
pub fn replace(folder: &Path, name: &str, from: &str, to: &str) -> usize {
    let text = fs::read_to_string(folder.join(name)).unwrap();
    let start = text
        .find(from)
        .unwrap_or_else(|| panic!("{name} does not hold {from:?}"));
    write(folder, name, text.replacen(from, to, 1));
    1 + text[..start].matches('\n').count() + to.matches('\n').count()
}

/// Copies a folder and what is below it.
pub fn copy(from: &Path, to: &Path) {
    fs::create_dir_all(to).unwrap();
    for entry in fs::read_dir(from).unwrap() {
        let entry = entry.unwrap();
        let target = to.join(entry.file_name());
        if entry.file_type().unwrap().is_dir() {
            copy(&entry.path(), &target);
        } else {
            fs::copy(entry.path(), target).unwrap();
        }
    }
}
