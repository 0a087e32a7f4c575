//! What `simmerline new` writes: a commented campaign file and an empty log.

use super::kinds::RunKind;
use super::merge::set_aside_by;
use super::shared_file::SharedFile;
use super::shared_names::SHARED_FILE;

/// Header of the canonical log.
pub const CANONICAL_HEADER: &str = "time,water_c,ambient_c,irradiance_w_m2,wind_m_s";

/// A campaign file that shows every key, with values to replace.
pub const CAMPAIGN_TEMPLATE: &str = include_str!("../../templates/campaign.toml");

/// Name of the empty log that goes with it.
pub const LOG_NAME: &str = "run-1.csv";

/// The template's remark on the kind of its run, up to what it says of it.
const KIND_LINE: &str = "# kind = \"dry\"                    #";
/// The template's line of the water.
const WATER_LINE: &str =
    "# water_kg = 6.65                 # FILL IN: 7 kg of water for each m² of intercept area\n";
/// The same where no run has any.
const NO_WATER_LINE: &str =
    "# water_kg = 6.65                 # not needed: a dry run has no water\n";

/// Where remarks begin behind a key that is one itself, and how long lines of them are.
const REMARK_COLUMN: usize = 32;
const REMARK_WIDTH: usize = 100;

/// Header of the canonical log of a kind of run.
pub fn header_of(kind: RunKind) -> &'static str {
    match kind {
        RunKind::Water => CANONICAL_HEADER,
        RunKind::Cooling => "time,water_c,ambient_c,wind_m_s",
        RunKind::Dry => "time,vessel_c,ambient_c,irradiance_w_m2,wind_m_s",
    }
}

/// The template with a run of a kind.
pub fn template_of(kind: RunKind) -> String {
    let said = match kind {
        RunKind::Water => return CAMPAIGN_TEMPLATE.to_owned(),
        RunKind::Cooling | RunKind::Dry => format!("kind = \"{}\"", kind.word()),
    };
    let width = KIND_LINE.len() - 1;
    let text = CAMPAIGN_TEMPLATE.replace(KIND_LINE, &format!("{said:<width$}#"));
    match kind.has_water() {
        true => text,
        false => text.replace(WATER_LINE, NO_WATER_LINE),
    }
}

/// A run of a log that is there already.
pub struct FoundRun {
    pub log: String,
    pub kind: RunKind,
    /// Its readings are of several days.
    pub has_days: bool,
    /// When it was read, for a remark.
    pub when: String,
    /// How it was read, for whoever chooses.
    pub understood: String,
    /// It has irradiance.
    pub has_irradiance: bool,
    /// Its irradiance can only be that of a sensor that lies flat.
    pub is_horizontal: bool,
}

/// The template with a run of each log in the place of that of the empty one.
pub fn with_found(text: &str, runs: &[FoundRun]) -> String {
    let Some((first, others)) = runs.split_first() else {
        return text.to_owned();
    };
    let mut text = text.replacen(&format!("log = \"{LOG_NAME}\"\n"), &lines_of(first), 1);
    for run in others {
        text += &format!("\n[[run]]\n{}", lines_of(run));
    }
    text
}

fn lines_of(run: &FoundRun) -> String {
    let log = format!("log = {}", toml::Value::String(run.log.clone()));
    let mut lines = format!("{log:<width$}# {}\n", run.when, width = REMARK_COLUMN + 2);
    if run.kind != RunKind::default() {
        lines += &format!("kind = \"{}\"\n", run.kind.word());
    }
    if run.has_days {
        lines += "split = \"daily\"\n";
    }
    lines
}

/// The template without what files of shared keys give: those keys stand in remarks, and a
/// remark at its head says who gives them.
pub fn without_shared(text: &str, shared: &[SharedFile]) -> String {
    if shared.is_empty() {
        return text.to_owned();
    }
    let giver = |key: &str| {
        shared
            .iter()
            .find(|one| one.holding.iter().any(|held| held == key))
    };
    let mut table = String::new();
    let mut head = true;
    let mut lines = Vec::new();
    for line in text.lines() {
        if head && !line.starts_with('#') {
            head = false;
            lines.extend(shared.iter().flat_map(remark_on));
        }
        let bare = line.strip_prefix("# ").unwrap_or(line);
        if let Some(header) = bare.strip_prefix('[') {
            table = header.split(']').next().unwrap_or_default().to_owned();
        }
        let key = bare
            .split_once(" = ")
            .map(|(key, _)| format!("{table}.{key}"));
        let others = key.iter().flat_map(|key| set_aside_by(key));
        let given_by = key.as_deref().and_then(giver).or_else(|| {
            // Stated here, it would take away what is given.
            let mut others = others.filter(|_| !line.starts_with('#'));
            others.find_map(giver)
        });
        lines.push(match given_by {
            None => line.to_owned(),
            Some(one) => {
                // The value is an example's, and not what is given.
                let code = bare.split(" =").next().unwrap_or(bare).trim_end();
                format!("# {code:<REMARK_COLUMN$}# given by {}", spoken_place(one))
            }
        });
    }
    lines.join("\n") + "\n"
}

/// What a file of shared keys gives, in remarks.
fn remark_on(shared: &SharedFile) -> Vec<String> {
    let said = match shared.spoken_keys() {
        keys if keys.is_empty() => return Vec::new(),
        keys => format!("{} gives: {keys}.", spoken_place(shared)),
    };
    let mut lines = vec!["#".to_owned()];
    let rest = "A key that is written below holds in its place.";
    for word in said.split(' ').chain(rest.split(' ')) {
        let last = lines.last_mut().expect("there is one");
        if last.len() + 1 + word.len() > REMARK_WIDTH {
            lines.push(format!("# {word}"));
        } else {
            last.push(' ');
            last.push_str(word);
        }
    }
    lines
}

/// Where it lies, as seen from the campaign's folder.
fn spoken_place(shared: &SharedFile) -> String {
    match shared.levels_above {
        0 => shared.name.clone(),
        levels => "../".repeat(levels) + SHARED_FILE,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_template_says_the_kind_and_asks_for_no_water_that_is_not_there() {
        let stated = |kind: RunKind| {
            let text = template_of(kind);
            let file: toml::Value = toml::from_str(&text).unwrap();
            let run = &file["run"][0];
            let word = run
                .get("kind")
                .and_then(|kind| kind.as_str().map(str::to_owned));
            (word, text.contains("7 kg of water for each m²"))
        };
        assert_eq!(stated(RunKind::Water), (None, true));
        assert_eq!(stated(RunKind::Cooling), (Some("cooling".to_owned()), true));
        assert_eq!(stated(RunKind::Dry), (Some("dry".to_owned()), false));
        assert_eq!(template_of(RunKind::Water), CAMPAIGN_TEMPLATE);
    }
}
