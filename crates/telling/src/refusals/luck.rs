//! Why luck cannot be shown, in words.

use crate::format::Subject;
use judging::luck::{FEWEST_SHOWN, LuckRefused};
use session::Session;
use session::measure::MeasureId;
use session::names::short_name;
use session::refusal::Refusal;
use text::Voice;
use text::{answer, luck_limits as say};

/// Luck that cannot be shown.
#[must_use]
pub fn refused(refused: &LuckRefused, measure: &MeasureId, session: &Session, voice: &Voice) -> Refusal {
    let name = |build: usize| session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
    let add = || say::add_single_shots(voice, &FEWEST_SHOWN.to_string());
    let (kind, place, message, remedy) = match *refused {
        LuckRefused::OneBuild => {
            ("one_build", "session.builds", answer::one_club(voice), answer::one_club_next(voice))
        }
        LuckRefused::Scatter => (
            "scatter_not_shown",
            "question.goal",
            say::not_for_scatter(voice),
            say::not_for_scatter_remedy(voice),
        ),
        LuckRefused::TooFewShots { build, n: 0 } => {
            ("too_few_shots", "session.shots", say::no_single_shots(voice, &name(build)), add())
        }
        LuckRefused::TooFewShots { build, n } => {
            ("too_few_shots", "session.shots", say::only_so_many(voice, n, &name(build)), add())
        }
        LuckRefused::NoScatter { build } => {
            let measure = Subject::of(measure, session, voice).name;
            let remedy = answer::no_scatter_next(voice, &measure);
            ("no_scatter", "session.shots", say::no_scatter(voice, &name(build), &measure), remedy)
        }
        LuckRefused::NoScatterInRounds => {
            let measure = Subject::of(measure, session, voice).name;
            let (message, remedy) =
                (answer::no_scatter_in_rounds(voice, &measure), answer::no_scatter_next(voice, &measure));
            ("no_scatter", "session.shots", message, remedy)
        }
        LuckRefused::NoUsableNumber { build } => {
            ("too_few_shots", "session.shots", say::no_usable_number(voice, &name(build)), add())
        }
        LuckRefused::CannotShow { shown, limits } => (
            "cannot_show_as_many",
            "shown",
            say::cannot_show(voice, shown as usize),
            if limits.fewest == limits.most {
                say::ask_for(voice, &limits.most.to_string())
            } else {
                say::ask_for_between(voice, &limits.fewest.to_string(), &limits.most.to_string())
            },
        ),
    };
    Refusal::new(kind, place, &message, &remedy)
}
