//! Who is hit when: orders in which no build is favored by its place in the round.
//!
//! Over a full cycle every build comes first, last and in every place between equally often, and follows every
//! other one equally often; every second round is the one before it turned round (AB BA), so that a test that stops
//! early is nearly fair too. Source: E. J. Williams, Australian Journal of Scientific Research A 2 (1949), 149–168;
//! the pairing of rounds is our own arrangement of its rows.

use super::settled::SettledPlan;
use serde::Serialize;

/// One set: a build, a few shots in a row.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Turn {
    /// Index of the build.
    pub build: usize,
    /// The pass through the builds, from 1.
    pub round: u32,
    /// Shots of the set.
    pub shots: u32,
}

/// The sets of a plan in the order of hitting.
pub(super) fn turns(settled: &SettledPlan) -> Vec<Turn> {
    let (builds, rounds) = (settled.builds(), settled.rounds as usize);
    let orders = match settled.seed {
        Some(seed) => stats::drawn_orders(builds, rounds, u64::from(seed)),
        None => balanced(builds, rounds),
    };
    let set = |(round, order): (u32, Vec<usize>)| {
        order.into_iter().map(move |build| Turn { build, round, shots: settled.set })
    };
    (1..=settled.rounds).zip(orders).flat_map(set).collect()
}

/// Rounds after which the places are balanced: `builds` when even, twice that when odd.
#[must_use]
pub fn cycle(builds: usize) -> usize {
    if builds.is_multiple_of(2) { builds } else { 2 * builds }
}

/// The builds in the order of hitting, for each of `rounds` rounds, from the balanced cycle begun anew when it ends.
#[must_use]
pub fn balanced(builds: usize, rounds: usize) -> Vec<Vec<usize>> {
    let first = zigzag(builds);
    let row = |round: usize| {
        let pair = (round % cycle(builds)) / 2;
        let mut row: Vec<usize> = first.iter().map(|place| (place + pair) % builds).collect();
        if round % 2 == 1 {
            row.reverse();
        }
        row
    };
    (0..rounds).map(row).collect()
}

/// k, 1, k−1, 2, k−2, ..., all to be taken modulo k: neighbors at every distance from each other once.
fn zigzag(builds: usize) -> Vec<usize> {
    let place = |i: usize| if i % 2 == 1 { i.div_ceil(2) } else { builds - i / 2 };
    (0..builds).map(place).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn two_builds_are_hit_ab_ba_ab_ba() {
        assert_eq!(balanced(2, 4), [[0, 1], [1, 0], [0, 1], [1, 0]]);
    }

    proptest! {
        #[test]
        fn every_build_has_every_place_equally_often(builds in 2_usize..=8, cycles in 1_usize..4) {
            let rounds = balanced(builds, cycles * cycle(builds));
            let mut places = vec![vec![0; builds]; builds];
            for round in &rounds {
                for (place, &build) in round.iter().enumerate() {
                    places[build][place] += 1;
                }
            }
            let each = rounds.len() / builds;
            prop_assert!(places.iter().flatten().all(|&n| n == each), "{places:?}");
        }

        #[test]
        fn every_build_follows_every_other_equally_often(builds in 2_usize..=8) {
            let mut after = vec![vec![0; builds]; builds];
            for round in balanced(builds, cycle(builds)) {
                round.windows(2).for_each(|pair| after[pair[0]][pair[1]] += 1);
            }
            let each = cycle(builds) / builds;
            for (one, follows) in after.iter().enumerate() {
                let expected = |other| if other == one { 0 } else { each };
                let fair = follows.iter().enumerate().all(|(other, &n)| n == expected(other));
                prop_assert!(fair, "{after:?}");
            }
        }

        #[test]
        fn every_round_holds_every_build_once_and_every_second_is_turned_round(
            builds in 2_usize..=8, rounds in 1_usize..60,
        ) {
            let orders = balanced(builds, rounds);
            prop_assert_eq!(orders.len(), rounds);
            for pair in orders.chunks(2) {
                let mut sorted = pair[0].clone();
                sorted.sort_unstable();
                prop_assert!(sorted.into_iter().eq(0..builds));
                if let [there, back] = pair {
                    prop_assert!(there.iter().eq(back.iter().rev()));
                }
            }
        }
    }
}
