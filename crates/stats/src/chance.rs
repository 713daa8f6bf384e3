//! Seeded chance: the same seed gives the same numbers on every machine.
//!
//! PCG-32 (one 64-bit multiplication a number, which WebAssembly has too), by the rand_pcg crate.
//! Source: M. E. O'Neill, Harvey Mudd College report HMC-CS-2014-0905 (2014).

use crate::real::{ln, sincos};
use rand_pcg::Pcg32;
use rand_pcg::rand_core::{Rng, SeedableRng};

/// A seeded source of whole numbers.
#[derive(Debug, Clone)]
pub(crate) struct Chance(Pcg32);

impl Chance {
    pub(crate) fn seeded(seed: u64) -> Chance {
        Chance(Pcg32::seed_from_u64(seed))
    }

    /// A number below `bound`, each as likely up to one part in 2³²/bound.
    ///
    /// Source: multiplication instead of division, Lemire, ACM Transactions on Modeling and Computer Simulation 29
    /// (2019), without the rejection step: samples here are far smaller than 2³².
    #[inline]
    pub(crate) fn below(&mut self, bound: u32) -> usize {
        ((u64::from(self.0.next_u32()) * u64::from(bound)) >> 32) as usize
    }

    /// A number between 0 and 1, neither of them.
    fn between(&mut self) -> f64 {
        (f64::from(self.0.next_u32()) + 0.5) / 4_294_967_296.0
    }

    /// Two independent standard normal numbers.
    ///
    /// Source: Box and Muller, Annals of Mathematical Statistics 29 (1958).
    pub(crate) fn normal_pair(&mut self) -> (f64, f64) {
        let (sin, cos) = sincos(std::f64::consts::TAU * self.between());
        let length = (-2.0 * ln(self.between())).sqrt();
        (length * sin, length * cos)
    }
}

/// Orders of `items` things, `rounds` of them, each as likely as any other; the same seed gives the same orders.
#[must_use]
pub fn drawn_orders(items: usize, rounds: usize, seed: u64) -> Vec<Vec<usize>> {
    let mut chance = Chance::seeded(seed);
    let mut order = |_| {
        let mut order: Vec<usize> = (0..items).collect();
        for last in (1..items).rev() {
            order.swap(last, chance.below(u32::try_from(last + 1).unwrap_or(u32::MAX)));
        }
        order
    };
    (0..rounds).map(&mut order).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::real::square;

    #[test]
    fn drawn_orders_repeat_by_their_seed_and_hold_everything_once() {
        assert_eq!(drawn_orders(5, 40, 3), drawn_orders(5, 40, 3));
        assert_ne!(drawn_orders(5, 40, 3), drawn_orders(5, 40, 4));
        for mut order in drawn_orders(5, 40, 3) {
            order.sort_unstable();
            assert_eq!(order, [0, 1, 2, 3, 4]);
        }
    }

    #[test]
    fn normal_numbers_have_their_moments_and_their_tails() {
        let mut chance = Chance::seeded(1);
        let pairs: Vec<(f64, f64)> = (0..40_000).map(|_| chance.normal_pair()).collect();
        let mean =
            |of: &dyn Fn(f64, f64) -> f64| pairs.iter().map(|&(a, b)| of(a, b)).sum::<f64>() / 40_000.0;
        // Four standard errors and more.
        assert!(
            mean(&|a, _| a).abs() < 0.02 && mean(&|_, b| b).abs() < 0.02 && mean(&|a, b| a * b).abs() < 0.02
        );
        assert!((mean(&|a, _| square(a)) - 1.0).abs() < 0.03 && (mean(&|_, b| square(b)) - 1.0).abs() < 0.03);
        let beyond = mean(&|a, b| f64::from(u8::from(a > 1.96)) + f64::from(u8::from(b < -1.96)));
        assert!((beyond - 0.05).abs() < 0.005, "{beyond}");
    }

    #[test]
    fn every_order_of_three_comes_as_often_as_any_other() {
        let orders = drawn_orders(3, 6_000, 1);
        for first in [[0, 1, 2], [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0]] {
            let n = orders.iter().filter(|order| ***order == first).count();
            // 1,000 expected; five standard deviations are 144.
            assert!(n.abs_diff(1_000) < 144, "{first:?}: {n}");
        }
    }
}
