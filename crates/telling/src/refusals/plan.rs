//! What is no plan, in words.

use judging::plan::{PlanPart, PlanRefused};
use session::plan::MOST_PLANNED_BUILDS;
use session::refusal::Refusal;
use text::Voice;
use text::plan::Part;
use text::{check, plan as say};

/// A plan that cannot be made.
#[must_use]
pub fn refused(refused: &PlanRefused, voice: &Voice) -> Refusal {
    let name_of_build;
    let (kind, place, message, remedy) = match refused {
        PlanRefused::NoName { build } => {
            name_of_build = format!("builds.{build}");
            ("no_name", name_of_build.as_str(), say::no_name(voice), say::no_name_remedy(voice))
        }
        PlanRefused::NumberOfBuilds { got } => (
            "number_of_builds",
            "builds",
            say::how_many_clubs(voice, &MOST_PLANNED_BUILDS.to_string(), &got.to_string()),
            say::how_many_clubs_remedy(voice),
        ),
        PlanRefused::SameName => {
            ("same_name", "builds", say::same_name_twice(voice), say::same_name_twice_remedy(voice))
        }
        PlanRefused::NoSuchMeasure => {
            ("no_such_measure", "measure", say::no_such_measure(voice), say::no_such_measure_remedy(voice))
        }
        PlanRefused::OutOfRange { part, least, most, got } => {
            let (place, part) = match part {
                PlanPart::Set => ("set", Part::Set),
                PlanPart::Rounds => ("rounds", Part::Rounds),
                PlanPart::WarmUp => ("warm_up", Part::WarmUp),
            };
            let (least, most, got) = (least.to_string(), most.to_string(), got.to_string());
            let message = say::out_of_range(voice, &least, &most, part, &got);
            ("out_of_range", place, message, say::out_of_range_remedy(voice))
        }
        PlanRefused::NotAMargin => {
            ("not_a_margin", "margin", say::not_a_margin(voice), check::not_a_margin_remedy(voice))
        }
        PlanRefused::NotALook { rounds } => (
            "not_a_look",
            "looks",
            say::look_out_of_range(voice, &rounds.to_string()),
            say::look_out_of_range_remedy(voice),
        ),
        PlanRefused::NotASpread => {
            ("not_a_spread", "spread", say::not_a_scatter(voice), say::not_a_scatter_remedy(voice))
        }
    };
    Refusal::new(kind, place, &message, &remedy)
}
