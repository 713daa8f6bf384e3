//! What cannot be asked of many sessions, in words.

use judging::many::{ManyRefused, PilesDiffer};
use session::refusal::Refusal;
use text::Voice;
use text::many as say;

/// A question that no pile can answer.
#[must_use]
pub fn refused(refused: &ManyRefused, voice: &Voice) -> Refusal {
    let (kind, place, message, remedy) = match refused {
        ManyRefused::Scatter => {
            ("scatter", "question.goal", say::no_scatter_asked(voice), say::ask_average(voice))
        }
        ManyRefused::NearerZero => {
            ("nearer_zero", "question.goal", say::no_nearer_zero(voice), say::ask_average(voice))
        }
        ManyRefused::NotAMargin { .. } => {
            ("not_a_margin", "question.margin", say::not_a_margin(voice), say::not_a_margin_remedy(voice))
        }
        ManyRefused::NotARate { .. } => {
            ("not_a_rate", "question.rate", say::not_a_rate(voice), say::not_a_rate_remedy(voice))
        }
    };
    Refusal::new(kind, place, &message, &remedy)
}

/// Piles that were asked different things.
#[must_use]
pub fn piles_differ(_: PilesDiffer, voice: &Voice) -> Refusal {
    let (message, remedy) = (say::piles_differ(voice), say::piles_differ_remedy(voice));
    Refusal::new("piles_differ", "question", &message, &remedy)
}
