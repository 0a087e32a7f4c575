//! The language in which a command speaks.

use crate::campaign::wishes::ReportWishes;
use crate::language::{Language, UnitSystem, Words};

/// In the language that was asked for, else in the one that all campaigns ask for, else in
/// English.
pub fn words_for(asked: Option<Language>, wished: impl IntoIterator<Item = Language>) -> Words {
    let language = asked.or_else(|| shared(wished));
    Words::new(language.unwrap_or(Language::ENGLISH), UnitSystem::Si)
}

/// In the language that was asked for, else in the one that a campaign asks for; in its units.
pub fn words_for_one(asked: Option<Language>, wishes: &ReportWishes) -> Words {
    Words::new(asked.unwrap_or(wishes.language), wishes.units)
}

/// The language of all, where they agree.
fn shared(wished: impl IntoIterator<Item = Language>) -> Option<Language> {
    let mut wished = wished.into_iter();
    let first = wished.next()?;
    wished.all(|language| language == first).then_some(first)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_language_asked_for_counts_else_that_of_all_campaigns_else_english() {
        let [english, spanish, french] =
            ["en", "es", "fr"].map(|code| Language::of_code(code).unwrap());
        let code = |asked, wished: &[Language]| words_for(asked, wished.to_vec()).language.code;
        assert_eq!(code(Some(french), &[spanish]), "fr");
        assert_eq!(code(None, &[spanish, spanish]), "es");
        assert_eq!(code(None, &[spanish, english]), "en");
        assert_eq!(code(None, &[]), "en");
    }
}
