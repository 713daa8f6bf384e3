//! Seeded chance for invented shots (splitmix64 and the polar method): the same seed gives the same shots.

/// A seeded source of numbers.
pub(crate) struct Dice(u64);

impl Dice {
    pub(crate) fn seeded(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) ^ 0x5DEE_CE66)
    }

    /// Evenly between 0 and 1.
    pub(crate) fn even(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// Normal with mean 0 and deviation 1.
    pub(crate) fn normal(&mut self) -> f64 {
        loop {
            let (x, y) = (2.0 * self.even() - 1.0, 2.0 * self.even() - 1.0);
            let square = x * x + y * y;
            if square > 0.0 && square < 1.0 {
                return x * (-2.0 * square.ln() / square).sqrt();
            }
        }
    }
}
