//! The language in which a command speaks.

use crate::campaign::wishes::ReportWishes;
use crate::language::{Language, UnitSystem, Words};

/// In the language that was asked for, else in the one that all campaigns ask for, else in
/// English; in the units that all ask for, else in those of the SI alone.
pub fn words_for(
    asked: Option<Language>,
    wished: impl IntoIterator<Item = (Language, UnitSystem)>,
) -> Words {
    let (languages, units): (Vec<Language>, Vec<UnitSystem>) = wished.into_iter().unzip();
    let language = asked.or_else(|| shared(languages));
    Words::new(
        language.unwrap_or(Language::ENGLISH),
        shared(units).unwrap_or(UnitSystem::Si),
    )
}

/// In the language that was asked for, else in the one that a campaign asks for; in its units.
pub fn words_for_one(asked: Option<Language>, wishes: &ReportWishes) -> Words {
    Words::new(asked.unwrap_or(wishes.language), wishes.units)
}

/// What all wish for, where they agree.
fn shared<T: PartialEq>(wished: Vec<T>) -> Option<T> {
    let mut wished = wished.into_iter();
    let first = wished.next()?;
    wished.all(|other| other == first).then_some(first)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_language_asked_for_counts_else_that_of_all_campaigns_else_english() {
        let [english, spanish, french] =
            ["en", "es", "fr"].map(|code| Language::of_code(code).unwrap());
        let words = |asked, wished: &[Language]| {
            let wished = wished.iter().map(|&language| (language, UnitSystem::Us));
            words_for(asked, wished)
        };
        let code = |asked, wished: &[Language]| words(asked, wished).language.code;
        assert_eq!(code(Some(french), &[spanish]), "fr");
        assert_eq!(code(None, &[spanish, spanish]), "es");
        assert_eq!(code(None, &[spanish, english]), "en");
        assert_eq!(code(None, &[]), "en");
        assert_eq!(words(None, &[spanish, english]).units, UnitSystem::Us);
        assert_eq!(words(None, &[]).units, UnitSystem::Si);
    }
}
