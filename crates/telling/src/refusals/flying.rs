//! Refusals of whatever rests on flights: weather, launches, shots that lack a number, builds that are not there.

use crate::format::Subject;
use judging::cause::CauseRefused;
use judging::consistency::ConsistencyRefused;
use judging::flying::{AirRefused, FlyRefused, NoSuchBuild, NotConditions, WeatherFigure};
use judging::landing::{LandingRefused, StripPlace};
use judging::potential::PotentialRefused;
use session::Session;
use session::known::Known;
use session::question::BuildPlace;
use session::refusal::Refusal;
use text::Voice;
use text::flying as say;
use text::names::spoken;

/// A launch that is not flown.
#[must_use]
pub fn fly(refused: FlyRefused, voice: &Voice) -> Refusal {
    let (known, message) = match refused {
        FlyRefused::Conditions(refused) => return conditions(refused, voice),
        FlyRefused::NotANumber(known) => (known, say::no_number(voice)),
        FlyRefused::Outside(known) => (known, say::no_launch(voice)),
        FlyRefused::DoesNotFly => (Known::LaunchAngle, say::no_flight(voice)),
    };
    let place = format!("launch.{}", known.id());
    Refusal::new("not_a_launch", &place, &message, &say::no_launch_remedy(voice))
}

/// Carries that are not brought to standard air.
#[must_use]
pub fn standard_air(refused: AirRefused, voice: &Voice) -> Refusal {
    match refused {
        AirRefused::Conditions(refused) => conditions(refused, voice),
        AirRefused::NothingToBring { needed } => cannot_fly(
            &say::nothing_to_bring(voice, &listed(&needed, voice)),
            &say::nothing_to_bring_remedy(voice),
        ),
    }
}

/// Shots that are not shown where they land.
#[must_use]
pub fn landing(refused: LandingRefused, voice: &Voice) -> Refusal {
    match refused {
        LandingRefused::NoSuchBuild(refused) => no_such_build(refused, voice),
        LandingRefused::Outside { place, low, high } => {
            let yards = Subject::of(&Known::Offline.into(), &Session::default(), voice);
            let (place, said) = match place {
                StripPlace::Fairway => ("fairway", say::Place::Fairway),
                StripPlace::Aim => ("aim", say::Place::Aim),
            };
            let remedy = say::cannot_be_shown_remedy(voice, &yards.value(low), &yards.value(high));
            Refusal::new("outside", place, &say::cannot_be_shown(voice, said), &remedy)
        }
        LandingRefused::NothingLanded => Refusal::new(
            "not_measured",
            "session.shots",
            &say::nothing_landed(voice),
            &say::nothing_landed_remedy(voice),
        ),
    }
}

/// A gap that is not split.
#[must_use]
pub fn cause(refused: CauseRefused, voice: &Voice) -> Refusal {
    match refused {
        CauseRefused::NoSuchBuild(refused) => no_such_build(refused, voice),
        CauseRefused::SameBuildTwice => Refusal::new(
            "same_build_twice",
            "candidate",
            &say::same_build_twice(voice),
            &say::same_build_twice_remedy(voice),
        ),
        CauseRefused::TooFew { fewest } => cannot_fly(
            &say::too_few_to_split(voice, &fewest.to_string()),
            &say::too_few_to_split_remedy(voice),
        ),
        CauseRefused::SameCarry => same_carry(voice),
        CauseRefused::NotMeasured { missing } => {
            cannot_fly(&say::not_measured(voice, &listed(&missing, voice)), &say::add_columns(voice))
        }
    }
}

/// Ball speeds of which nobody can say what they could carry.
#[must_use]
pub fn potential(refused: PotentialRefused, voice: &Voice) -> Refusal {
    match refused {
        PotentialRefused::NoSuchBuild(refused) => no_such_build(refused, voice),
        PotentialRefused::NoSuchGroup { got, groups } => Refusal::new(
            "no_such_group",
            "map_for",
            &say::no_such_group(voice, &got.to_string(), &groups.to_string()),
            &say::no_such_group_remedy(voice),
        ),
        PotentialRefused::TooFew { fewest } => {
            cannot_fly(&say::nothing_to_map(voice, &fewest.to_string()), &say::add_columns(voice))
        }
    }
}

/// Carries that cannot be held against launches.
#[must_use]
pub fn consistency(refused: ConsistencyRefused, voice: &Voice) -> Refusal {
    match refused {
        ConsistencyRefused::NothingToHold => {
            cannot_fly(&say::nothing_to_hold(voice), &say::nothing_to_hold_remedy(voice))
        }
        ConsistencyRefused::SameCarry => same_carry(voice),
    }
}

/// Carries that are all alike, which nobody saw.
fn same_carry(voice: &Voice) -> Refusal {
    Refusal::new("no_scatter", "session.shots", &say::same_carry(voice), &say::same_carry_remedy(voice))
}

fn conditions(refused: NotConditions, voice: &Voice) -> Refusal {
    let (field, what) = match refused {
        NotConditions::Unusable => {
            return cannot_fly(&say::no_conditions(voice), &say::no_conditions_remedy(voice));
        }
        NotConditions::Outside(WeatherFigure::Temperature) => ("temperature", say::Condition::Temperature),
        NotConditions::Outside(WeatherFigure::Humidity) => ("humidity_percent", say::Condition::Humidity),
        NotConditions::Outside(WeatherFigure::Wind) => ("wind", say::Condition::Wind),
        NotConditions::Outside(WeatherFigure::Altitude) => ("altitude_ft", say::Condition::Altitude),
    };
    let place = format!("conditions.{field}");
    let remedy = say::not_conditions_remedy(voice, what);
    Refusal::new("not_conditions", &place, &say::not_conditions(voice), &remedy)
}

fn cannot_fly(message: &str, remedy: &str) -> Refusal {
    Refusal::new("cannot_fly", "session.shots", message, remedy)
}

fn no_such_build(refused: NoSuchBuild, voice: &Voice) -> Refusal {
    let NoSuchBuild { place, got, builds } = refused;
    let place = match place {
        BuildPlace::Baseline => "baseline",
        BuildPlace::Candidate => "candidate",
    };
    let message = say::no_such_build(voice, &got.to_string(), &builds.to_string());
    Refusal::new("no_such_build", place, &message, &say::no_such_build_remedy(voice))
}

fn listed(measures: &[Known], voice: &Voice) -> String {
    measures.iter().map(|known| spoken(*known, voice)).collect::<Vec<_>>().join(", ")
}
