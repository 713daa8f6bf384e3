//! Permutation tests: how often would names dealt out at random have shown as much?
//!
//! Names are dealt anew only within a stratum: the whole session, a round, or a pair of shots. Exact where the
//! deals can be listed, otherwise sampled from a seed. Shots in a row are not exchangeable when sets differ, so
//! no verdict rests on this alone; it shows a golfer what luck can do.
//! Sources: R. A. Fisher, The Design of Experiments (1935); Phipson and Smyth, Statistical Applications in
//! Genetics and Molecular Biology 9 (2010), for (1 + more)/(1 + draws).

use crate::chance::Chance;
use crate::describe::mean;
use crate::difference::Refusal;
use crate::sample::check_value;

/// Deals that are listed at most.
pub const MOST_LISTED: u64 = 2_000_000;

/// Two deals closer than this share of the values' scatter are the same but for rounding.
const SLACK: f64 = 1e-9;

/// Shots among which names may be dealt anew.
#[derive(Debug, Clone, PartialEq)]
pub struct Stratum {
    /// Values of the candidate.
    pub candidate: Vec<f64>,
    /// Values of the baseline.
    pub baseline: Vec<f64>,
}

/// How strata weigh in the difference.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StratumWeights {
    /// By information nm/(n + m): the difference of the fixed-effects model.
    Information,
    /// Alike.
    Equal,
}

/// Strata ready for dealing.
#[derive(Debug, Clone, PartialEq)]
pub struct Deals {
    /// Values less their stratum's mean, scaled so that the statistic is the sum of the candidate's.
    flat: Vec<f64>,
    strata: Vec<Place>,
    /// Observed sum.
    observed: f64,
    /// Turns a sum into a difference of means.
    per_sum: f64,
    slack: f64,
}

#[derive(Debug, Clone, PartialEq)]
struct Place {
    start: usize,
    n: u32,
    dealt: u32,
}

/// How a permutation test was done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Dealing {
    /// Every deal was listed once, the observed one among them.
    Listed,
    /// Deals were drawn from this seed.
    Drawn {
        /// The seed.
        seed: u64,
    },
}

/// Counts of deals against the observed difference.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Permutation {
    /// Observed difference, candidate − baseline.
    pub difference: f64,
    /// Deals listed or drawn.
    pub deals: u64,
    /// Those with a difference at least as large.
    pub at_least: u64,
    /// Those with one at most as large.
    pub at_most: u64,
    /// Those at least as far from zero.
    pub as_far: u64,
    /// How they were made.
    pub dealing: Dealing,
}

impl Permutation {
    /// Two-sided p, never zero.
    #[must_use]
    pub fn p_value(&self) -> f64 {
        self.share(self.as_far)
    }

    /// One-sided p for a larger difference.
    #[must_use]
    pub fn p_greater(&self) -> f64 {
        self.share(self.at_least)
    }

    /// One-sided p for a smaller difference.
    #[must_use]
    pub fn p_less(&self) -> f64 {
        self.share(self.at_most)
    }

    fn share(&self, count: u64) -> f64 {
        match self.dealing {
            Dealing::Listed => count as f64 / self.deals as f64,
            Dealing::Drawn { .. } => (count + 1) as f64 / (self.deals + 1) as f64,
        }
    }
}

impl Deals {
    /// Takes strata; those with only one build cannot be dealt and are left out.
    ///
    /// # Errors
    /// A value that is not usable, or no stratum with both builds.
    pub fn new(strata: &[Stratum], weights: StratumWeights) -> Result<Deals, Refusal> {
        let mixed = strata.iter().filter(|s| !s.candidate.is_empty() && !s.baseline.is_empty());
        let mixed: Vec<&Stratum> = mixed.collect();
        let (mut flat, mut places, mut observed, mut information) = (Vec::new(), Vec::new(), 0.0, 0.0);
        for stratum in &mixed {
            let values = [&stratum.candidate[..], &stratum.baseline[..]].concat();
            for (index, &value) in values.iter().enumerate() {
                check_value(index, value).map_err(|_| Refusal::Argument { got: value })?;
            }
            let (n, m) = (stratum.candidate.len() as f64, stratum.baseline.len() as f64);
            information += n * m / (n + m);
            let scale = match weights {
                StratumWeights::Information => 1.0,
                StratumWeights::Equal => 1.0 / n + 1.0 / m,
            };
            let center = mean(&values);
            let start = flat.len();
            flat.extend(values.iter().map(|value| (value - center) * scale));
            observed += flat.iter().skip(start).take(stratum.candidate.len()).sum::<f64>();
            let count = |length| u32::try_from(length).map_err(|_| Refusal::OutOfRange);
            places.push(Place { start, n: count(values.len())?, dealt: count(stratum.candidate.len())? });
        }
        if mixed.is_empty() {
            return Err(Refusal::TooFewRounds { got: 0, need: 1 });
        }
        let per_sum = match weights {
            StratumWeights::Information => 1.0 / information,
            StratumWeights::Equal => 1.0 / mixed.len() as f64,
        };
        let largest = flat.iter().fold(0.0f64, |most, x| most.max(x.abs()));
        Ok(Deals { flat, strata: places, observed, per_sum, slack: SLACK * largest })
    }

    /// One stratum: names dealt over the whole session.
    ///
    /// # Errors
    /// As `new`.
    pub fn of_two(candidate: &[f64], baseline: &[f64]) -> Result<Deals, Refusal> {
        let all = Stratum { candidate: candidate.to_vec(), baseline: baseline.to_vec() };
        Deals::new(&[all], StratumWeights::Information)
    }

    /// Pairs: the sign of each difference is dealt.
    ///
    /// # Errors
    /// As `new`.
    pub fn of_pairs(differences: &[f64]) -> Result<Deals, Refusal> {
        let pair = |&d: &f64| Stratum { candidate: vec![d], baseline: vec![0.0] };
        let pairs: Vec<Stratum> = differences.iter().map(pair).collect();
        Deals::new(&pairs, StratumWeights::Equal)
    }

    /// Number of different deals; `None` beyond what a whole number holds.
    #[must_use]
    pub fn count(&self) -> Option<u64> {
        self.strata.iter().try_fold(1u64, |all, place| all.checked_mul(choose(place.n, place.dealt)?))
    }

    /// Lists every deal; `None` beyond `MOST_LISTED`.
    #[must_use]
    pub fn list(&self) -> Option<Permutation> {
        let deals = self.count().filter(|&deals| deals <= MOST_LISTED)?;
        let mut tally = Tally::default();
        // Sums of the strata so far; the last stratum is counted against them without being stored.
        let mut sums = vec![0.0];
        let (last, others) = self.strata.split_last()?;
        for place in others {
            let own = self.sums_of(place);
            sums = sums.iter().flat_map(|so_far| own.iter().map(move |sum| so_far + sum)).collect();
        }
        for own in self.sums_of(last) {
            for so_far in &sums {
                tally.add(so_far + own, self);
            }
        }
        Some(self.result(deals, tally, Dealing::Listed))
    }

    /// Draws deals from a seed.
    ///
    /// A partial Fisher–Yates shuffle of one flat buffer, the smaller side dealt, nothing allocated.
    #[must_use]
    pub fn draw(&self, draws: u32, seed: u64) -> Permutation {
        let mut chance = Chance::seeded(seed);
        let mut flat = self.flat.clone();
        let mut tally = Tally::default();
        for _ in 0..draws {
            let mut sum = 0.0;
            for place in &self.strata {
                // Values in a stratum add up to zero: the other side's sum is this one's with the other sign.
                let other = place.n - place.dealt;
                let smaller = place.dealt.min(other);
                let Some(values) = flat.get_mut(place.start..place.start + place.n as usize) else {
                    continue;
                };
                let dealt = deal(values, smaller, &mut chance);
                sum += if smaller == place.dealt { dealt } else { -dealt };
            }
            tally.add(sum, self);
        }
        self.result(u64::from(draws), tally, Dealing::Drawn { seed })
    }

    /// Lists where there are no more deals than `draws`, draws otherwise.
    #[must_use]
    pub fn list_or_draw(&self, draws: u32, seed: u64) -> Permutation {
        let few = self.count().is_some_and(|deals| deals <= u64::from(draws));
        few.then(|| self.list()).flatten().unwrap_or_else(|| self.draw(draws, seed))
    }

    fn result(&self, deals: u64, tally: Tally, dealing: Dealing) -> Permutation {
        let Tally { at_least, at_most, as_far } = tally;
        Permutation { difference: self.observed * self.per_sum, deals, at_least, at_most, as_far, dealing }
    }

    /// Sums of every choice of the candidate's shots from a stratum.
    fn sums_of(&self, place: &Place) -> Vec<f64> {
        let values = &self.flat[place.start..place.start + place.n as usize];
        let mut sums = Vec::new();
        choices(values, place.dealt as usize, 0.0, &mut sums);
        sums
    }
}

#[derive(Default)]
struct Tally {
    at_least: u64,
    at_most: u64,
    as_far: u64,
}

impl Tally {
    #[inline]
    fn add(&mut self, sum: f64, deals: &Deals) {
        self.at_least += u64::from(sum >= deals.observed - deals.slack);
        self.at_most += u64::from(sum <= deals.observed + deals.slack);
        self.as_far += u64::from(sum.abs() >= deals.observed.abs() - deals.slack);
    }
}

/// Moves `count` values chosen at random to the front and returns their sum.
#[inline]
fn deal(values: &mut [f64], count: u32, chance: &mut Chance) -> f64 {
    let mut sum = 0.0;
    let mut rest = values;
    for _ in 0..count {
        // The slice is far shorter than 2³².
        let other = chance.below(u32::try_from(rest.len()).unwrap_or(u32::MAX));
        rest.swap(0, other);
        let Some((first, tail)) = rest.split_first_mut() else { break };
        sum += *first;
        rest = tail;
    }
    sum
}

fn choices(values: &[f64], count: usize, so_far: f64, sums: &mut Vec<f64>) {
    if count == 0 {
        sums.push(so_far);
        return;
    }
    for first in 0..=values.len().saturating_sub(count) {
        if let Some((value, rest)) = values.get(first..).and_then(<[f64]>::split_first) {
            choices(rest, count - 1, so_far + value, sums);
        }
    }
}

/// n over k, if it fits.
fn choose(n: u32, k: u32) -> Option<u64> {
    let k = k.min(n - k);
    (0..k).try_fold(1u64, |all, i| Some(all.checked_mul(u64::from(n - i))? / u64::from(i + 1)))
}
