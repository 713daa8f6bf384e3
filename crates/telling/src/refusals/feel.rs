//! A say about a build that is not there, in words.

use judging::feel::FeelRefused;
use session::refusal::Refusal;
use text::Voice;
use text::{check, feel as say};

/// A say that cannot be set beside the shots.
#[must_use]
pub fn refused(refused: FeelRefused, voice: &Voice) -> Refusal {
    let FeelRefused::NoSuchBuild { got } = refused;
    let message = say::no_such_build(voice, &got.to_string());
    Refusal::new("no_such_build", "say", &message, &check::no_such_build_remedy(voice))
}
