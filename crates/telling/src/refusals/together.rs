//! What cannot be put together, in words.

use super::misfit;
use judging::together::TogetherRefused;
use session::refusal::Refusal;
use text::Voice;
use text::together as say;

/// Sessions that cannot be put together.
#[must_use]
pub fn refused(refused: &TogetherRefused, voice: &Voice) -> Refusal {
    match refused {
        TogetherRefused::NumberOfSessions { .. } => Refusal::new(
            "number_of_sessions",
            "sessions",
            &say::how_many_sessions(voice),
            &say::how_many_sessions_remedy(voice),
        ),
        TogetherRefused::Scatter => {
            Refusal::new("scatter", "question.goal", &say::no_scatter(voice), &say::no_scatter_remedy(voice))
        }
        TogetherRefused::Misfit(why) => misfit(why, voice),
    }
}
