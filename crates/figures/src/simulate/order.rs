//! Who is hit when: the builds of a session in the order of the shots.

use super::Random;
use rand_distr::{Distribution, Uniform};

/// One shot's place in the session, all counted from 0.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Turn {
    /// The build in hand.
    pub(crate) build: usize,
    /// The pass through the builds.
    pub(crate) round: usize,
    /// The pick-up of a club: it changes whenever another build is taken in hand, or a round begins.
    pub(crate) pick_up: usize,
}

/// In which order the builds are hit within a round.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Turns {
    /// AB AB AB.
    Fixed,
    /// AB BA AB: reversed every second round.
    Reversed,
    /// Drawn anew for every round.
    Drawn,
}

/// Builds hit in turn: `each` shots per build in all, `set` of them at a time.
pub(crate) fn in_turns(
    builds: usize,
    each: usize,
    set: usize,
    turns: Turns,
    random: &mut Random,
) -> Vec<Turn> {
    let mut order = Vec::with_capacity(builds * each);
    let mut sequence: Vec<usize> = (0..builds).collect();
    let mut pick_up = 0;
    for (round, first) in (0..each).step_by(set.max(1)).enumerate() {
        match turns {
            Turns::Fixed => {}
            Turns::Reversed if round > 0 => sequence.reverse(),
            Turns::Reversed => {}
            Turns::Drawn => shuffle(&mut sequence, random),
        }
        for &build in &sequence {
            let shots = set.min(each - first);
            order.extend(std::iter::repeat_n(Turn { build, round, pick_up }, shots));
            pick_up += 1;
        }
    }
    order
}

/// Builds hit in turn, each in sets of its own size: `sets[0]` shots of build 0 in every round, ...
pub(crate) fn in_laps(sets: &[usize], laps: usize, turns: Turns, random: &mut Random) -> Vec<Turn> {
    let one_each = in_turns(sets.len(), laps, 1, turns, random);
    one_each.into_iter().flat_map(|turn| std::iter::repeat_n(turn, sets[turn.build])).collect()
}

/// One build after the other: `counts[0]` shots of build 0, then `counts[1]` of build 1, ...
pub(crate) fn blocked(counts: &[usize]) -> Vec<Turn> {
    let block = |(build, &count)| std::iter::repeat_n(Turn { build, round: 0, pick_up: build }, count);
    counts.iter().enumerate().flat_map(block).collect()
}

/// Fisher–Yates.
fn shuffle(sequence: &mut [usize], random: &mut Random) {
    for last in (1..sequence.len()).rev() {
        if let Ok(places) = Uniform::new_inclusive(0, last) {
            sequence.swap(last, places.sample(random));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::simulate::random;

    fn builds(order: &[Turn]) -> String {
        order.iter().map(|turn| char::from(b'A' + u8::try_from(turn.build).unwrap())).collect()
    }

    #[test]
    fn turns_are_as_their_names_say() {
        let mut chance = random(1, 0);
        assert_eq!(builds(&in_turns(2, 4, 2, Turns::Fixed, &mut chance)), "AABBAABB");
        assert_eq!(builds(&in_turns(2, 6, 2, Turns::Reversed, &mut chance)), "AABBBBAAAABB");
        assert_eq!(builds(&in_turns(3, 3, 2, Turns::Reversed, &mut chance)), "AABBCCCBA");
        assert_eq!(builds(&blocked(&[2, 3])), "AABBB");
        assert_eq!(builds(&in_laps(&[1, 2], 2, Turns::Fixed, &mut chance)), "ABBABB");
        assert_eq!(builds(&in_laps(&[1, 2], 2, Turns::Reversed, &mut chance)), "ABBBBA");
    }

    #[test]
    fn drawn_turns_give_every_build_its_shots_and_every_order_its_chance() {
        let mut chance = random(2, 0);
        let order = in_turns(2, 3000, 3, Turns::Drawn, &mut chance);
        assert_eq!(order.iter().filter(|turn| turn.build == 0).count(), 3000);
        let first = order.chunks(6).filter(|round| round[0].build == 0).count();
        // 1000 fair coins: 5 standard deviations are 79.
        assert!((421..=579).contains(&first), "{first}");
    }

    #[test]
    fn every_pick_up_is_one_build_in_one_round() {
        let order = in_turns(3, 7, 3, Turns::Reversed, &mut random(3, 0));
        for pair in order.windows(2) {
            let same = pair[0].build == pair[1].build && pair[0].round == pair[1].round;
            assert_eq!(same, pair[0].pick_up == pair[1].pick_up);
        }
    }
}
