//! What is no claim, in words.

use judging::claim::ClaimRefused;
use session::refusal::Refusal;
use text::Voice;
use text::claim as say;

/// A claim that cannot be held against a retest.
#[must_use]
pub fn refused(refused: ClaimRefused, voice: &Voice) -> Refusal {
    let (kind, place, message, remedy) = match refused {
        ClaimRefused::Scatter => {
            ("scatter", "question.goal", say::scatter(voice), say::scatter_remedy(voice))
        }
        ClaimRefused::NotANumber => {
            ("not_a_number", "claimed", say::not_a_number(voice), say::not_a_number_remedy(voice))
        }
        ClaimRefused::AveragesNeeded => (
            "averages_needed",
            "claimed.gain",
            say::averages_needed(voice),
            say::averages_needed_remedy(voice),
        ),
        ClaimRefused::NoClaim => ("no_claim", "claimed", say::no_claim(voice), say::no_claim_remedy(voice)),
        ClaimRefused::NoChange => {
            ("no_claim", "claimed", say::no_change(voice), say::no_change_remedy(voice))
        }
    };
    Refusal::new(kind, place, &message, &remedy)
}
