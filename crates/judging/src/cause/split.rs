//! A gap of average carry split over ball speed, launch, spin, direction and curve, without a rest of its own.
//!
//! Each shot of one build is held against the shot of the same rank, by carry, of the other; the gap of the two modeled
//! flights is split by Shapley's value over the numbers in which the launches differ. Between builds with unequal
//! counts a shot is shared out over its neighbors in rank, so that every shot weighs the same.
//! Sources: L. S. Shapley, Contributions to the Theory of Games II (1953), 307–317; pairing by rank is the coupling of
//! two distributions on a line that moves least.

use crate::flying::{Flown, VALUES};

/// Two shots held against each other, and the weight of the pair; weights add to 1.
#[derive(Debug, Clone, Copy)]
pub(super) struct Pairing {
    pub(super) from: usize,
    pub(super) to: usize,
    pub(super) weight: f64,
}

/// Pairs places 0..n with places 0..m in order, each place with the same total weight.
pub(super) fn pair_by_rank(n: usize, m: usize) -> Vec<Pairing> {
    let mut pairs = Vec::with_capacity(n + m);
    let (mut from, mut to, mut at) = (0, 0, 0);
    // In units of 1/(n·m): a place of the first list reaches m of them, one of the second n.
    while from < n && to < m {
        let (end_from, end_to) = ((from + 1) * m, (to + 1) * n);
        let end = end_from.min(end_to);
        pairs.push(Pairing { from, to, weight: (end - at) as f64 / (n * m) as f64 });
        at = end;
        from += usize::from(end == end_from);
        to += usize::from(end == end_to);
    }
    pairs
}

/// Order of shots by carry, and by the rest where that is equal: which shot is called first must not matter.
pub(super) fn ranked(shots: &[Flown]) -> Vec<Flown> {
    let mut sorted = shots.to_vec();
    let key = |shot: &Flown| {
        let mut key = [shot.carry, shot.modeled, shot.club_speed.unwrap_or(0.0), 0.0, 0.0, 0.0, 0.0, 0.0];
        key.iter_mut().skip(3).zip(shot.values).for_each(|(to, value)| *to = value);
        key
    };
    arrange::sort_by(&mut sorted, |a, b| {
        let pairs = key(a).into_iter().zip(key(b));
        pairs.fold(std::cmp::Ordering::Equal, |order, (a, b)| order.then(a.total_cmp(&b)))
    });
    sorted
}

/// Shapley's value of each number for one pair: what it adds on average over all orders of exchange.
///
/// φᵢ = Σ over S without i of |S|!(k − |S| − 1)!/k! · (f(S with i) − f(S)), f(S) with the numbers in S taken from `to`.
/// Sums to f(to) − f(from); turns its sign with the pair. `None` where a mixture does not fly.
pub(super) fn shapley(
    from: &[f64; VALUES],
    to: &[f64; VALUES],
    mut fly: impl FnMut(&[f64; VALUES]) -> Option<f64>,
) -> Option<[f64; VALUES]> {
    let players: Vec<usize> = (0..VALUES).filter(|&i| from[i].to_bits() != to[i].to_bits()).collect();
    let k = players.len();
    let mut worth = Vec::with_capacity(1 << k);
    for set in 0..1_usize << k {
        let mut mixed = *from;
        for (_, &i) in players.iter().enumerate().filter(|(bit, _)| set >> bit & 1 == 1) {
            mixed[i] = to[i];
        }
        worth.push(fly(&mixed)?);
    }
    let mut parts = [0.0; VALUES];
    for (bit, &i) in players.iter().enumerate() {
        for (set, without) in worth.iter().enumerate().filter(|(set, _)| set >> bit & 1 == 0) {
            let with = worth.get(set | 1 << bit).copied().unwrap_or(*without);
            parts[i] += order_weight(k, set.count_ones() as usize) * (with - without);
        }
    }
    Some(parts)
}

/// |S|!(k − |S| − 1)!/k! = 1/(k · C(k − 1, |S|)).
fn order_weight(k: usize, size: usize) -> f64 {
    let mut choose = 1.0;
    for i in 0..size {
        choose *= (k - 1 - i) as f64 / (i + 1) as f64;
    }
    1.0 / (k as f64 * choose)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_shot_weighs_the_same() {
        for (n, m) in [(1, 1), (3, 3), (3, 7), (30, 12), (17, 30)] {
            let pairs = pair_by_rank(n, m);
            for i in 0..n {
                let weight: f64 = pairs.iter().filter(|p| p.from == i).map(|p| p.weight).sum();
                assert!((weight - 1.0 / n as f64).abs() < 1e-12);
            }
            for j in 0..m {
                let weight: f64 = pairs.iter().filter(|p| p.to == j).map(|p| p.weight).sum();
                assert!((weight - 1.0 / m as f64).abs() < 1e-12);
            }
        }
        assert!(pair_by_rank(0, 3).is_empty());
    }

    /// For a product the textbook splits evenly; for a sum each keeps its own.
    #[test]
    fn shapley_by_hand() {
        let from = [1.0, 2.0, 5.0, 0.0, 0.0];
        let to = [3.0, 4.0, 5.0, 0.0, 1.0];
        let parts = shapley(&from, &to, |x| Some(x[0] * x[1] + 7.0 * x[4])).unwrap();
        // x₀: ½[(3−1)·2 + (3−1)·4] = 6; x₁: ½[1·2 + 3·2] = 4.
        for (part, by_hand) in parts.iter().zip([6.0, 4.0, 0.0, 0.0, 7.0]) {
            assert!((part - by_hand).abs() < 1e-12, "{parts:?}");
        }
        let back = shapley(&to, &from, |x| Some(x[0] * x[1] + 7.0 * x[4])).unwrap();
        assert!(parts.iter().zip(back).all(|(a, b)| (a + b).abs() < 1e-12));
        assert_eq!(shapley(&from, &from, |_| Some(3.0)), Some([0.0; VALUES]));
        assert_eq!(shapley(&from, &to, |_| None), None);
    }
}
