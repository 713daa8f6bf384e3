//! Numbers and texts into bytes and back: whole numbers in groups of seven bits, the lowest first, a set high bit
//! saying that more follow; signed ones folded so that small sizes stay short.
//!
//! Reading never trusts a length: it is held against a limit and against what is left before anything is set aside.

/// Why bytes do not hold what they should: they end early, or a value is beyond its limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Broken;

/// Powers of ten that a float holds exactly and that decimals are counted in.
const TENS: [f64; 10] = [1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9];

/// Says that a number stands with all its bits, not as decimals.
const ALL_BITS: u8 = 15;

/// Largest whole number that a float counts up to without a gap.
const WHOLE: f64 = 9_007_199_254_740_992.0;

/// 0, −1, 1, −2, 2 ... as 0, 1, 2, 3, 4 ...
pub(crate) fn folded(value: i64) -> u64 {
    ((value << 1) ^ (value >> 63)).cast_unsigned()
}

/// The number that [`folded`] folded.
pub(crate) fn unfolded(value: u64) -> i64 {
    (value >> 1).cast_signed() ^ -(value & 1).cast_signed()
}

/// A value as a whole number of units in the given decimal place, `None` when that is not the very same value.
pub(crate) fn exact_decimals(value: f64, decimals: u8) -> Option<i64> {
    let whole = scaled(value, decimals)?;
    same(from_decimals(whole, decimals), value).then_some(whole)
}

/// A value rounded to a whole number of units in the given decimal place, `None` beyond what a float counts.
#[expect(clippy::cast_possible_truncation, reason = "below 2⁵³ every whole float is a whole number")]
pub(crate) fn scaled(value: f64, decimals: u8) -> Option<i64> {
    let scaled = (value * TENS.get(usize::from(decimals))?).round();
    (scaled.abs() < WHOLE).then_some(scaled as i64)
}

/// The value of a whole number of units in the given decimal place; beyond the table, of whole units.
#[expect(
    clippy::cast_precision_loss,
    reason = "what was scaled lies below 2⁵³; a forged number may be rounded"
)]
pub(crate) fn from_decimals(whole: i64, decimals: u8) -> f64 {
    whole as f64 / TENS.get(usize::from(decimals)).unwrap_or(&1.0)
}

/// Whether two values are the same, zero being zero with either sign.
pub(crate) fn same(a: f64, b: f64) -> bool {
    (a + 0.0).to_bits() == (b + 0.0).to_bits()
}

/// Check sum of 32 bits: finds every burst of up to 32 flipped bits, and of other faults all but 1 in 4 × 10⁹.
///
/// The polynomial 0xEDB88320, bits reversed. Source: ISO 3309 (1991), annex A.
pub(crate) fn check_sum(bytes: &[u8]) -> [u8; 4] {
    let mut sum = u32::MAX;
    for &byte in bytes {
        sum ^= u32::from(byte);
        for _ in 0..8 {
            sum = (sum >> 1) ^ (0xEDB8_8320 & (sum & 1).wrapping_neg());
        }
    }
    (!sum).to_le_bytes()
}

/// Bytes being written.
#[derive(Debug, Default)]
pub(crate) struct Writer(pub(crate) Vec<u8>);

impl Writer {
    pub(crate) fn byte(&mut self, byte: u8) {
        self.0.push(byte);
    }

    pub(crate) fn whole(&mut self, mut value: u64) {
        while value > 0x7f {
            self.0.push(0x80 | (value & 0x7f) as u8);
            value >>= 7;
        }
        self.0.push((value & 0x7f) as u8);
    }

    pub(crate) fn length(&mut self, length: usize) {
        self.whole(length as u64);
    }

    /// A whole number or none.
    pub(crate) fn maybe(&mut self, value: Option<u32>) {
        self.whole(value.map_or(0, |v| u64::from(v) + 1));
    }

    pub(crate) fn text(&mut self, text: &str) {
        self.length(text.len());
        self.0.extend_from_slice(text.as_bytes());
    }

    /// A number to its last bit, short when it has few decimals.
    pub(crate) fn number(&mut self, value: f64) {
        let short = (0..10).find_map(|decimals| Some((decimals, exact_decimals(value, decimals)?)));
        match short {
            Some((decimals, whole)) => {
                self.byte(decimals);
                self.whole(folded(whole));
            }
            None => {
                self.byte(ALL_BITS);
                self.0.extend_from_slice(&value.to_le_bytes());
            }
        }
    }

    pub(crate) fn maybe_number(&mut self, value: Option<f64>) {
        self.byte(u8::from(value.is_some()));
        if let Some(value) = value {
            self.number(value);
        }
    }

    /// A tagged section; an empty one is left away.
    pub(crate) fn section(&mut self, tag: u64, content: Self) {
        if !content.0.is_empty() {
            self.whole(tag);
            self.length(content.0.len());
            self.0.extend(content.0);
        }
    }
}

/// Bytes being read, from the front.
#[derive(Debug, Clone)]
pub(crate) struct Reader<'a>(pub(crate) &'a [u8]);

impl<'a> Reader<'a> {
    pub(crate) fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    pub(crate) fn take(&mut self, length: usize) -> Result<&'a [u8], Broken> {
        let (taken, rest) = self.0.split_at_checked(length).ok_or(Broken)?;
        self.0 = rest;
        Ok(taken)
    }

    pub(crate) fn byte(&mut self) -> Result<u8, Broken> {
        self.take(1).map(|taken| taken[0])
    }

    pub(crate) fn whole(&mut self) -> Result<u64, Broken> {
        let mut value = 0;
        for position in 0..10 {
            let byte = self.byte()?;
            let bits = u64::from(byte & 0x7f);
            let shifted = bits << (7 * position);
            if shifted >> (7 * position) != bits {
                return Err(Broken);
            }
            value |= shifted;
            if byte & 0x80 == 0 {
                return Ok(value);
            }
        }
        Err(Broken)
    }

    /// A length or a position of at most `most`.
    pub(crate) fn length(&mut self, most: usize) -> Result<usize, Broken> {
        usize::try_from(self.whole()?).ok().filter(|&length| length <= most).ok_or(Broken)
    }

    pub(crate) fn maybe(&mut self) -> Result<Option<u32>, Broken> {
        match self.whole()? {
            0 => Ok(None),
            more => u32::try_from(more - 1).map(Some).map_err(|_| Broken),
        }
    }

    pub(crate) fn text(&mut self) -> Result<String, Broken> {
        let length = self.length(self.0.len())?;
        std::str::from_utf8(self.take(length)?).map(str::to_owned).map_err(|_| Broken)
    }

    pub(crate) fn number(&mut self) -> Result<f64, Broken> {
        let value = match self.byte()? {
            ALL_BITS => f64::from_le_bytes(self.array()?),
            decimals if usize::from(decimals) < TENS.len() => {
                from_decimals(unfolded(self.whole()?), decimals)
            }
            _ => return Err(Broken),
        };
        if value.is_finite() { Ok(value) } else { Err(Broken) }
    }

    pub(crate) fn maybe_number(&mut self) -> Result<Option<f64>, Broken> {
        if self.byte()? == 0 { Ok(None) } else { self.number().map(Some) }
    }

    pub(crate) fn array<const N: usize>(&mut self) -> Result<[u8; N], Broken> {
        self.take(N)?.try_into().map_err(|_| Broken)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_check_sum_is_the_standard_one() {
        assert_eq!(u32::from_le_bytes(check_sum(b"123456789")), 0xCBF4_3926);
    }

    #[test]
    fn whole_numbers_of_every_length_come_back() {
        let values =
            [0, 1, 127, 128, 16_383, 16_384, u64::from(u32::MAX), i64::MAX.cast_unsigned(), u64::MAX];
        let mut out = Writer::default();
        values.iter().for_each(|&v| out.whole(v));
        let mut input = Reader(&out.0);
        assert!(values.iter().all(|&v| input.whole() == Ok(v)) && input.is_empty());
        assert_eq!(Reader(&[0xff; 9]).whole(), Err(Broken), "ends early");
        assert_eq!(
            Reader(&[0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0x02]).whole(),
            Err(Broken)
        );
    }

    #[test]
    fn folding_keeps_small_sizes_small() {
        let folds = [0, -1, 1, -2, 2, i64::MAX, i64::MIN].map(folded);
        assert_eq!(folds, [0, 1, 2, 3, 4, u64::MAX - 1, u64::MAX]);
        assert_eq!(folds.map(unfolded), [0, -1, 1, -2, 2, i64::MAX, i64::MIN]);
    }

    #[test]
    fn numbers_come_back_to_the_last_bit_and_endless_ones_are_refused() {
        for value in [0.0, 5.0, -1.25, 0.1, 251.7, 1e300, -1e-9, 1.0 / 3.0, 230.5 / 0.9144] {
            let mut out = Writer::default();
            out.number(value);
            assert_eq!(Reader(&out.0).number().map(f64::to_bits), Ok(value.to_bits()), "{value}");
        }
        let mut out = Writer::default();
        out.number(f64::NAN);
        assert_eq!(Reader(&out.0).number(), Err(Broken));
    }
}
