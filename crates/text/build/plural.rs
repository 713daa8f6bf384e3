//! The plural forms of a language's counts, asked of a library once and for all counts, so that nothing of it needs to be
//! carried along.

use intl_pluralrules::{PluralCategory, PluralRuleType, PluralRules};

/// Far beyond what a session, or a page, can hold.
const MOST: u32 = 1_000_000;

/// `one 1 1`: each form other than `other` with the first and last count of a run of counts that have it, by `;`.
pub(crate) fn forms(language: &str) -> String {
    let identifier: unic_langid::LanguageIdentifier = language.parse().expect("a language");
    let rules = PluralRules::create(identifier, PluralRuleType::CARDINAL).expect("rules for the language");
    let mut runs: Vec<(&str, u32, u32)> = Vec::new();
    for count in 0..=MOST {
        let form = match rules.select(count).expect("a form for every count") {
            PluralCategory::OTHER => continue,
            PluralCategory::ZERO => "zero",
            PluralCategory::ONE => "one",
            PluralCategory::TWO => "two",
            PluralCategory::FEW => "few",
            PluralCategory::MANY => "many",
        };
        match runs.last_mut() {
            Some((last, _, end)) if *last == form && *end + 1 == count => *end = count,
            _ => runs.push((form, count, count)),
        }
    }
    let runs: Vec<String> = runs.iter().map(|(form, from, to)| format!("{form} {from} {to}")).collect();
    runs.join(";")
}
