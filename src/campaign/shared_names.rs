//! What files of shared keys are called.

/// Name of a file of keys that the campaigns in its folder and below share.
pub const SHARED_FILE: &str = "shared.toml";

/// Most of them that hold for one campaign: one in its folder and in each of six above.
pub const MOST: usize = 7;

/// The name among the inputs of the nearest (0), the next further up (1), and so on: it does not
/// depend on where the folders are, nor on what they are called. Under these names, side by
/// side with the campaign file, they mean the same as where they came from.
pub fn shared_name(rank: usize) -> String {
    match rank {
        0 => SHARED_FILE.to_owned(),
        rank => format!("shared-{}.toml", rank + 1),
    }
}

/// Whether a name is one of theirs, on any computer.
pub fn is_shared_name(name: &str) -> bool {
    let mut parts = name
        .split(['/', '\\'])
        .filter(|part| !matches!(*part, "" | "."));
    let (first, rest) = (parts.next().unwrap_or_default(), parts.next());
    let is_ours = |rank| shared_name(rank).eq_ignore_ascii_case(first);
    rest.is_none() && (0..MOST).any(is_ours)
}
