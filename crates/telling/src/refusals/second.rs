//! Why build and condition cannot be held side by side, in words.

use super::misfit;
use judging::second::SecondRefused;
use session::question::BuildPlace;
use session::refusal::Refusal;
use text::Voice;
use text::flying as say;

/// Before and after that cannot be compared.
#[must_use]
pub fn refused(refused: &SecondRefused, voice: &Voice) -> Refusal {
    let (kind, place, message, remedy) = match *refused {
        SecondRefused::NoSuchBuild { place, got, builds } => (
            "no_such_build",
            match place {
                BuildPlace::Baseline => "question.baseline",
                BuildPlace::Candidate => "question.candidate",
            },
            say::no_such_build(voice, &got.to_string(), &builds.to_string()),
            say::no_such_build_remedy(voice),
        ),
        SecondRefused::NoCandidate => {
            ("no_candidate", "question.candidate", say::no_candidate(voice), say::no_candidate_remedy(voice))
        }
        SecondRefused::TooFewShots => (
            "too_few_shots",
            "is_second",
            say::too_few_on_a_side(voice),
            say::too_few_on_a_side_remedy(voice),
        ),
        SecondRefused::Misfit(ref why) => return misfit(why, voice),
        // What the answer says of it is told with its measure, by who asks for it.
        SecondRefused::NoScatter | SecondRefused::NoAnswer(_) => {
            ("no_scatter", "session.shots", say::no_scatter(voice), say::no_scatter_remedy(voice))
        }
    };
    Refusal::new(kind, place, &message, &remedy)
}
