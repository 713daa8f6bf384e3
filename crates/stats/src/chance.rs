//! Seeded chance: the same seed gives the same numbers on every machine.
//!
//! PCG-32 (one 64-bit multiplication a number, which WebAssembly has too), by the rand_pcg crate.
//! Source: M. E. O'Neill, Harvey Mudd College report HMC-CS-2014-0905 (2014).

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
}
