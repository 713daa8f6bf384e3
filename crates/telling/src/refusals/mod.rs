//! Every refusal in words, in one place: what is wrong, where, and what to do about it. One file for each operation.

mod claim;
mod feel;
mod flying;
mod follow;
mod luck;
mod many;
mod plan;
mod second;
mod together;

pub use claim::refused as claim;
pub use feel::refused as feel;
pub use flying::{cause, consistency, fly, landing, potential, standard_air};
pub use follow::refused as follow;
pub use luck::refused as luck;
pub use many::{piles_differ, refused as many};
pub use plan::refused as plan;
pub use second::refused as second;
pub use together::refused as together;

use session::MOST_BUILDS;
use session::names::short_name;
use session::question::{BuildPlace, MOST_PLANNED_ROUNDS, MarginPlace, Misfit};
use session::refusal::Refusal;
use text::Voice;
use text::check as say;

/// A question that cannot be asked of its session.
#[must_use]
pub fn misfit(misfit: &Misfit, voice: &Voice) -> Refusal {
    let (kind, place, message, remedy) = match misfit {
        Misfit::TooManyBuilds { got } => (
            "too_many_builds",
            "session.builds",
            say::too_many_builds(voice, &got.to_string(), &MOST_BUILDS.to_string()),
            say::too_many_builds_remedy(voice),
        ),
        Misfit::NoSuchBuild { place, got, builds } => (
            "no_such_build",
            match place {
                BuildPlace::Baseline => "question.baseline",
                BuildPlace::Candidate => "question.candidate",
            },
            say::no_such_build(voice, &got.to_string(), &builds.to_string()),
            say::no_such_build_remedy(voice),
        ),
        Misfit::SameBuildTwice => (
            "same_build_twice",
            "question.candidate",
            say::same_build_twice(voice),
            say::same_build_twice_remedy(voice),
        ),
        Misfit::NoSuchMeasure { measure } => (
            "no_such_measure",
            "question.measure",
            say::no_such_measure(voice, &short_name(measure.as_str())),
            say::no_such_measure_remedy(voice),
        ),
        Misfit::NotAMargin { place } => {
            ("not_a_margin", at(*place), say::not_a_margin(voice), say::not_a_margin_remedy(voice))
        }
        Misfit::NotARatio { place } => {
            ("not_a_ratio", at(*place), say::not_a_ratio(voice), say::not_a_ratio_remedy(voice))
        }
        Misfit::NotAPlan { got } => (
            "not_a_plan",
            "question.stopping.planned_rounds",
            say::not_a_plan(voice, &MOST_PLANNED_ROUNDS.to_string(), &got.to_string()),
            say::not_a_plan_remedy(voice),
        ),
    };
    Refusal::new(kind, place, &message, &remedy)
}

const fn at(place: MarginPlace) -> &'static str {
    match place {
        MarginPlace::Margin => "question.margin",
        MarginPlace::FirstMargin => "question.first_margin",
    }
}
