//! A row of whole numbers, one for each shot, some of them missing, in few bits.
//!
//! Each number is foretold from those before it, and what it differs by is written in Rice's code: the high bits as
//! a row of ones, the lowest `k` bits as they are. How to foretell and `k` are tried out and the shortest taken; a
//! row that is foretold without a fault takes no bits at all.
//! Source of the code: R. F. Rice, "Some practical universal noiseless coding techniques", JPL Publication 79-22 (1979).

use super::bytes::{Broken, Reader, Writer, folded, unfolded};

/// How the next number is foretold. Its code stands in links: never change one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Foretold {
    /// The same as the one before.
    Before = 0,
    /// One more than the one before: shot numbers.
    OneMore = 1,
    /// The same as the one before with this build.
    BeforeOfBuild = 2,
    /// One more than the one before with this build.
    OneMoreOfBuild = 3,
    /// The middle value of this build, which stands in front.
    Middle = 4,
}

const WAYS: [Foretold; 5] = [
    Foretold::Before,
    Foretold::OneMore,
    Foretold::BeforeOfBuild,
    Foretold::OneMoreOfBuild,
    Foretold::Middle,
];

/// All foretold without a fault.
const NO_BITS: u8 = 255;

/// Most low bits.
const MOST_LOW: u8 = 48;

/// After so many ones the number follows with all its bits.
const LONGEST_RUN: u64 = 24;

/// Which numbers are there.
const ALL: u8 = 0;
const NONE: u8 = 1;
const SOME: u8 = 2;

/// Writes the numbers of shots hit with these builds, of which there are `kinds`.
pub(crate) fn write(out: &mut Writer, values: &[Option<i64>], builds: &[usize], kinds: usize) {
    let there: Vec<(usize, i64)> = values
        .iter()
        .enumerate()
        .filter_map(|(at, value)| Some((builds.get(at).copied().unwrap_or(0), (*value)?)))
        .collect();
    let presence = match there.len() {
        n if n == values.len() => ALL,
        0 => NONE,
        _ => SOME,
    };
    if presence == NONE {
        return out.byte(NONE);
    }
    let tries = WAYS.iter().map(|&way| Try::new(way, &there, kinds.max(1)));
    let Some(best) = tries.min_by_key(|t| t.bits) else { return };
    out.byte(presence | (best.way as u8) << 2);
    out.byte(best.low);
    let mut before = 0;
    for &middle in &best.middles {
        out.whole(folded(middle.wrapping_sub(before)));
        before = middle;
    }
    let mut bits = BitWriter::default();
    if presence == SOME {
        values.iter().for_each(|value| bits.push(u64::from(value.is_some()), 1));
    }
    if best.low != NO_BITS {
        best.faults.iter().for_each(|&fault| bits.rice(fault, best.low));
    }
    out.0.extend(bits.bytes);
}

/// Reads as many numbers as there are builds of shots.
pub(crate) fn read(
    input: &mut Reader<'_>,
    builds: &[usize],
    kinds: usize,
) -> Result<Vec<Option<i64>>, Broken> {
    let head = input.byte()?;
    if head == NONE {
        return Ok(vec![None; builds.len()]);
    }
    let way = *WAYS.get(usize::from(head >> 2)).ok_or(Broken)?;
    let low = input.byte()?;
    if head & 3 == 3 || (low > MOST_LOW && low != NO_BITS) {
        return Err(Broken);
    }
    let mut past = Past { before: 0, of_build: vec![0; kinds.max(1)] };
    if way == Foretold::Middle {
        let mut before = 0_i64;
        for middle in &mut past.of_build {
            before = before.wrapping_add(unfolded(input.whole()?));
            *middle = before;
        }
    }
    let mut bits = BitReader { input, byte: 0, left: 0 };
    let mut values = Vec::with_capacity(builds.len());
    for _ in builds {
        let is_there = head & 3 == ALL || bits.take(1)? == 1;
        values.push(is_there.then_some(0));
    }
    for (value, &build) in values.iter_mut().zip(builds) {
        let Some(value) = value else { continue };
        let fault = if low == NO_BITS { 0 } else { bits.rice(low)? };
        *value = past.foretold(way, build).wrapping_add(unfolded(fault));
        past.note(way, build, *value);
    }
    Ok(values)
}

/// What foretelling remembers.
struct Past {
    before: i64,
    /// By build, the number before, or the middle.
    of_build: Vec<i64>,
}

impl Past {
    fn foretold(&self, way: Foretold, build: usize) -> i64 {
        let of_build = self.of_build.get(build).copied().unwrap_or(0);
        match way {
            Foretold::Before => self.before,
            Foretold::OneMore => self.before.wrapping_add(1),
            Foretold::BeforeOfBuild | Foretold::Middle => of_build,
            Foretold::OneMoreOfBuild => of_build.wrapping_add(1),
        }
    }

    fn note(&mut self, way: Foretold, build: usize, value: i64) {
        self.before = value;
        if way != Foretold::Middle
            && let Some(before) = self.of_build.get_mut(build)
        {
            *before = value;
        }
    }
}

/// One way of foretelling, tried out.
struct Try {
    way: Foretold,
    middles: Vec<i64>,
    faults: Vec<u64>,
    low: u8,
    bits: u64,
}

impl Try {
    fn new(way: Foretold, there: &[(usize, i64)], kinds: usize) -> Self {
        let middles = if way == Foretold::Middle { middles(there, kinds) } else { Vec::new() };
        let of_build = if middles.is_empty() { vec![0; kinds] } else { middles.clone() };
        let mut past = Past { before: 0, of_build };
        let faults: Vec<u64> = there
            .iter()
            .map(|&(build, value)| {
                let fault = folded(value.wrapping_sub(past.foretold(way, build)));
                past.note(way, build, value);
                fault
            })
            .collect();
        let in_front = middles.len() as u64 * 16;
        if faults.iter().all(|&fault| fault == 0) {
            return Self { way, middles, faults, low: NO_BITS, bits: in_front };
        }
        let cost = |low: u8| faults.iter().map(|&fault| rice_bits(fault, low)).sum::<u64>();
        let low = (0..=MOST_LOW).min_by_key(|&low| cost(low)).unwrap_or(0);
        let bits = in_front + cost(low);
        Self { way, middles, faults, low, bits }
    }
}

/// The middle value of every build, zero for a build without one.
fn middles(there: &[(usize, i64)], kinds: usize) -> Vec<i64> {
    let mut by_build = vec![Vec::new(); kinds];
    for &(build, value) in there {
        if let Some(values) = by_build.get_mut(build) {
            values.push(value);
        }
    }
    let middle = |mut values: Vec<i64>| {
        values.sort_unstable();
        values.get(values.len() / 2).copied().unwrap_or(0)
    };
    by_build.into_iter().map(middle).collect()
}

fn rice_bits(fault: u64, low: u8) -> u64 {
    let run = fault >> low;
    if run < LONGEST_RUN { run + 1 + u64::from(low) } else { LONGEST_RUN + 64 }
}

/// Bits being written, the highest first.
#[derive(Default)]
struct BitWriter {
    bytes: Vec<u8>,
    /// Bits still free in the last byte.
    free: u32,
}

impl BitWriter {
    /// The lowest `count` bits of a value.
    fn push(&mut self, value: u64, count: u32) {
        for position in (0..count).rev() {
            if self.free == 0 {
                self.bytes.push(0);
                self.free = 8;
            }
            self.free -= 1;
            if let Some(last) = self.bytes.last_mut() {
                *last |= u8::from((value >> position) & 1 == 1) << self.free;
            }
        }
    }

    fn rice(&mut self, fault: u64, low: u8) {
        let run = fault >> low;
        for _ in 0..run.min(LONGEST_RUN) {
            self.push(1, 1);
        }
        if run < LONGEST_RUN {
            self.push(0, 1);
            self.push(fault, u32::from(low));
        } else {
            self.push(fault, 64);
        }
    }
}

/// Bits being read, the highest first.
struct BitReader<'r, 'a> {
    input: &'r mut Reader<'a>,
    byte: u8,
    /// Bits of it not yet taken.
    left: u32,
}

impl BitReader<'_, '_> {
    fn take(&mut self, count: u32) -> Result<u64, Broken> {
        let mut value = 0;
        for _ in 0..count {
            if self.left == 0 {
                self.byte = self.input.byte()?;
                self.left = 8;
            }
            self.left -= 1;
            value = value << 1 | u64::from((self.byte >> self.left) & 1);
        }
        Ok(value)
    }

    fn rice(&mut self, low: u8) -> Result<u64, Broken> {
        let mut run = 0;
        while self.take(1)? == 1 {
            run += 1;
            if run == LONGEST_RUN {
                return self.take(64);
            }
        }
        Ok(run << low | self.take(u32::from(low))?)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn bytes_of(values: &[Option<i64>], builds: &[usize]) -> usize {
        let mut out = Writer::default();
        write(&mut out, values, builds, 2);
        let mut input = Reader(&out.0);
        assert_eq!(read(&mut input, builds, 2).as_deref(), Ok(values));
        assert!(input.is_empty());
        for cut in 0..out.0.len() {
            assert_eq!(read(&mut Reader(&out.0[..cut]), builds, 2), Err(Broken), "cut after {cut}");
        }
        out.0.len()
    }

    #[test]
    fn what_can_be_foretold_takes_no_room() {
        let builds = [0, 0, 1, 1, 0, 0];
        assert_eq!(bytes_of(&[1, 2, 3, 4, 5, 6].map(Some), &builds), 2);
        assert_eq!(bytes_of(&[1, 2, 1, 2, 3, 4].map(Some), &builds), 2);
        assert_eq!(bytes_of(&[0; 6].map(Some), &builds), 2);
        assert_eq!(bytes_of(&[None; 6], &builds), 1);
        assert_eq!(bytes_of(&[], &[]), 2);
        assert_eq!(
            bytes_of(&[900, 900, 950, 950, 900, 900].map(Some), &builds),
            5,
            "two middles of two bytes and one"
        );
    }

    #[test]
    fn scatter_around_two_builds_takes_little_more_than_its_own_bits() {
        let builds: Vec<usize> = (0..60).map(|at| at / 3 % 2).collect();
        let values: Vec<Option<i64>> =
            (0..60_i64).map(|at| Some(2500 + at / 3 % 2 * 120 + at * 37 % 61 - 30)).collect();
        assert!(bytes_of(&values, &builds) <= 60 * 7 / 8 + 8);
    }

    #[test]
    fn gaps_and_numbers_of_any_size_come_back() {
        let values = [Some(i64::MAX), None, Some(i64::MIN), Some(-1), None, Some(0), Some(1 << 50)];
        bytes_of(&values, &[0, 1, 0, 1, 0, 1, 1]);
    }
}
