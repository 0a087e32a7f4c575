//! What `simmerline new` writes: a commented campaign file and an empty log.

use super::kinds::RunKind;

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
