//! What a ball speed could carry, and carry in standard air: held against single flights.

use crate::dice::Dice;
use crate::support::empty;
use judging::flying::{Launch, StandardAir, fly};
use session::refusal::Refusal;
use session::{Conditions, Session, Shot, TemperatureUnit};
use telling::flying::AirRequest;
use telling::potential::{Potential, PotentialRequest};
use text::Voice;

fn potential(request: &PotentialRequest) -> Result<Potential, Refusal> {
    telling::potential::potential(request, &Voice::english())
}

fn in_standard_air(request: &AirRequest) -> Result<StandardAir, Refusal> {
    telling::flying::in_standard_air(request, &Voice::english()).map(|air| air.facts)
}

/// Shots around one launch; carry is the model's times `ratio`.
fn session(seed: u64, n: usize, around: Launch, ratio: f64) -> Session {
    let mut dice = Dice::seeded(seed);
    let mut session = empty("carry", 2);
    session.measures = ["carry", "ball_speed", "launch_angle", "spin_rate"].map(Into::into).to_vec();
    for shot in 0..n {
        let launch = Launch {
            ball_speed: around.ball_speed + 2.0 * dice.normal(),
            launch_angle: (around.launch_angle + dice.normal()).max(2.0),
            spin_rate: around.spin_rate * (0.08 * dice.normal()).exp(),
            ..around
        };
        let values = [ratio * carry(launch), launch.ball_speed, launch.launch_angle, launch.spin_rate]
            .map(Some)
            .to_vec();
        session.shots.push(Shot { build: shot % 2, round: None, number: None, values, ..Shot::default() });
    }
    session
}

fn carry(launch: Launch) -> f64 {
    fly(&launch, &Conditions::default()).expect("a ball that flies").carry
}

const LOW_AND_SPINNY: Launch = Launch {
    ball_speed: 150.0,
    launch_angle: 9.0,
    spin_rate: 3_600.0,
    launch_direction: 0.0,
    spin_axis: 0.0,
};

fn found(session: &Session) -> Potential {
    potential(&PotentialRequest { session: session.clone(), baseline: 0, map_for: None })
        .expect("can be flown")
}

#[test]
fn gains_are_those_of_single_flights() {
    let found = found(&session(1, 30, LOW_AND_SPINNY, 0.96));
    assert_eq!(found.groups.len(), 3);
    for group in found.groups.iter().map(|group| &group.facts) {
        let now = carry(group.launch);
        let scale = group.carry / now;
        let higher = carry(Launch { launch_angle: group.best_launch.at, ..group.launch });
        let quieter = carry(Launch { spin_rate: group.best_spin.at, ..group.launch });
        assert!((group.best_launch.gain - scale * (higher - now)).abs() < 0.01, "{group:?}");
        assert!((group.best_spin.gain - scale * (quieter - now)).abs() < 0.01, "{group:?}");
        assert!(group.best_launch.gain > 5.0 && group.best_spin.gain >= 0.0);
        // Both at once is at least as good as either, and no single change within the window beats it.
        assert!(group.best.gain >= group.best_launch.gain.max(group.best_spin.gain) - 0.05);
        for launch_angle in [8.0, 12.0, 16.0, 17.0] {
            for spin_rate in [1_500.0, 2_000.0, 2_500.0, 4_000.0] {
                let other = carry(Launch { launch_angle, spin_rate, ..group.launch });
                assert!(scale * (other - now) <= group.best.gain + 0.05, "{launch_angle} {spin_rate}");
            }
        }
    }
}

#[test]
fn the_best_third_is_the_third_that_flew_farthest() {
    let session = session(2, 31, LOW_AND_SPINNY, 1.0);
    let group = found(&session).groups.pop().expect("three groups").facts;
    let mut carries: Vec<f64> = session.shots.iter().filter_map(|shot| shot.values[0]).collect();
    carries.sort_by(|a, b| b.total_cmp(a));
    assert_eq!((group.build, group.n), (None, 11));
    assert!((group.carry - carries[..11].iter().sum::<f64>() / 11.0).abs() < 1e-9);
}

#[test]
fn the_map_is_made_of_flights_in_the_sessions_own_measure() {
    let (plain, longer) =
        (found(&session(3, 20, LOW_AND_SPINNY, 1.0)), found(&session(3, 20, LOW_AND_SPINNY, 1.05)));
    let map = &plain.map;
    assert_eq!(map.carries.len(), map.launches.len() * map.spins.len());
    for (row, column) in [(0, 0), (12, 20), (24, 32)] {
        let launch = Launch {
            ball_speed: map.ball_speed,
            launch_angle: map.launches[column],
            spin_rate: map.spins[row],
            ..LOW_AND_SPINNY
        };
        let at = map.carries[row * map.launches.len() + column];
        // Maps are flown in coarser steps.
        assert!((at - carry(launch)).abs() < 0.01, "{at} {}", carry(launch));
    }
    for (one, other) in map.carries.iter().zip(&longer.map.carries) {
        assert!((1.05 * one - other).abs() < 1e-6);
    }
    assert!(map.lines.windows(2).all(|pair| pair[0] < pair[1]) && map.lines.len() >= 4);
    assert_eq!(map.shots.len(), 20);
}

#[test]
fn an_iron_is_not_told_to_fly_farther() {
    let iron = Launch {
        ball_speed: 120.0,
        launch_angle: 16.3,
        spin_rate: 7_100.0,
        launch_direction: 0.0,
        spin_axis: 0.0,
    };
    let found = found(&session(4, 20, iron, 1.0));
    assert!(found.is_iron);
    assert!(found.words.detail.contains("not as a goal"));
}

#[test]
fn what_is_said_in_full() {
    let found = found(&session(1, 30, LOW_AND_SPINNY, 0.96));
    let of_groups: Vec<_> = found.groups.iter().map(|group| &group.words).collect();
    insta::assert_debug_snapshot!("potential", (&found.words, of_groups));
}

#[test]
fn standard_air_changes_only_the_air() {
    let session = session(5, 12, LOW_AND_SPINNY, 0.97);
    let brought =
        |conditions| in_standard_air(&AirRequest { session: session.clone(), conditions }).expect("flies");
    let same = brought(Conditions::default());
    assert!(same.average_change.abs() < 1e-9);
    let place = same.session.measure_index(&same.measure).expect("added");
    assert!(
        same.session
            .shots
            .iter()
            // To a tenth of a yard.
            .all(|shot| (shot.values[place].unwrap() - shot.values[0].unwrap()).abs() < 0.051)
    );
    let high = brought(Conditions { altitude_ft: Some(5_000.0), ..Conditions::default() });
    let into_wind = brought(Conditions { wind_helping_mph: Some(-10.0), ..Conditions::default() });
    assert!(high.average_change < -5.0 && into_wind.average_change > 8.0);
    // 10 mph in the face costs this ball some 12 yd: FLIGHT's own table has 11 at 140 mph and 17 at 167.
    assert!(into_wind.average_change < 25.0);
    let celsius = brought(Conditions { temperature: Some(35.0), ..Conditions::default() });
    let fahrenheit = brought(Conditions {
        temperature: Some(95.0),
        temperature_unit: TemperatureUnit::Fahrenheit,
        ..Conditions::default()
    });
    assert!(
        (celsius.average_change - fahrenheit.average_change).abs() < 1e-9 && celsius.average_change < 0.0
    );
    // Asked again, it takes the place of the first.
    let again =
        in_standard_air(&AirRequest { session: high.session.clone(), conditions: Conditions::default() })
            .expect("flies");
    assert_eq!(again.session.measures.len(), high.session.measures.len());
    assert_eq!(again.session.custom.len(), 1);
}

#[test]
fn what_cannot_be_flown_is_refused_with_a_remedy() {
    let good = session(6, 12, LOW_AND_SPINNY, 1.0);
    let refused = |request| potential(&request).unwrap_err();
    let ask = |session: Session| PotentialRequest { session, baseline: 0, map_for: None };
    assert_eq!(refused(ask(empty("carry", 2))).kind, "cannot_fly");
    assert_eq!(refused(PotentialRequest { baseline: 9, ..ask(good.clone()) }).kind, "no_such_build");
    assert_eq!(refused(PotentialRequest { map_for: Some(9), ..ask(good.clone()) }).kind, "no_such_group");
    let conditions = Conditions { temperature: Some(400.0), ..Conditions::default() };
    let refusal = in_standard_air(&AirRequest { session: good, conditions }).unwrap_err();
    assert_eq!((refusal.kind.as_str(), refusal.place.as_str()), ("not_conditions", "conditions.temperature"));
}

#[test]
fn no_gain_is_named_where_the_search_ends() {
    // A driver's carry still rises with the launch where the window ends.
    let driver = Launch { ball_speed: 160.0, launch_angle: 11.0, spin_rate: 1_900.0, ..LOW_AND_SPINNY };
    let found = found(&session(3, 20, driver, 1.0));
    let own = found.groups.iter().find(|group| group.facts.build == Some(0)).expect("the baseline");
    assert!(own.facts.best_launch.at_edge && own.facts.best.at_edge, "{own:?}");
    for said in [&found.words.headline, &own.words.launch, &own.words.best] {
        assert!(!said.contains("more."), "{said}");
    }
    assert!(
        found.words.headline.contains("a higher launch alone would carry farther"),
        "{}",
        found.words.headline
    );
    assert!(found.words.headline.contains("no gain is named"), "{}", found.words.headline);
}
