//! What a few values of a sample could show, against listing every choice by hand.
#![expect(clippy::unwrap_used, reason = "tests")]

use stats::Sample;
use stats::subsets::{Figure, Subsets, Taken, chance_gaps, deals, picks, runs, share_of_pairs};

const FIGURES: [Figure; 2] = [Figure::Mean, Figure::DistanceFromZero];

/// Invented carries in the order hit, with ties and a mishit.
const ONE: [f64; 9] = [251.0, 247.0, 255.0, 254.0, 250.0, 228.0, 257.0, 252.0, 252.0];
const OTHER: [f64; 8] = [258.0, 262.0, 249.0, 266.0, 259.0, 261.0, 263.0, 241.0];
/// Invented offline values on both sides of the line.
const SIDES: [f64; 9] = [-14.0, 3.5, 22.0, -2.25, 8.0, -31.0, 12.0, 0.5, -6.0];

fn sample(values: &[f64]) -> Sample {
    Sample::new(values.to_vec()).unwrap()
}

/// The figures of every set of `n` values, by going through all sets of bits.
fn by_bits(values: &[f64], n: usize, figure: Figure) -> Vec<f64> {
    let sets = (0_u32..1 << values.len()).filter(|set| set.count_ones() as usize == n);
    let chosen = |set: u32| -> Vec<f64> {
        (0..values.len()).filter(|i| set & (1 << i) != 0).map(|i| values[i]).collect()
    };
    sorted(sets.map(|set| figure.of(&chosen(set))).collect())
}

fn sorted(mut values: Vec<f64>) -> Vec<f64> {
    values.sort_unstable_by(f64::total_cmp);
    values
}

fn alike(one: &[f64], other: &[f64]) -> bool {
    one.len() == other.len() && one.iter().zip(other).all(|(a, b)| (a - b).abs() < 1e-9)
}

/// Every pair in turn.
fn share_by_hand(above: &Subsets, below: &Subsets, at_least: f64) -> f64 {
    let gaps = above.figures.iter().flat_map(|a| below.figures.iter().map(move |b| a - b));
    let reached = |gap: &f64| if at_least > 0.0 { *gap > at_least - 1e-7 } else { *gap > 1e-7 };
    let pairs = above.figures.len() * below.figures.len();
    gaps.filter(reached).count() as f64 / pairs as f64
}

#[test]
fn every_run_is_there_once() {
    for figure in FIGURES {
        for n in 1..=ONE.len() {
            let shown = runs(&sample(&ONE), n, figure).unwrap();
            let by_hand: Vec<f64> =
                (0..=ONE.len() - n).map(|start| figure.of(&ONE[start..start + n])).collect();
            assert!(alike(&shown.figures, &sorted(by_hand)), "{figure:?} {n}");
            assert_eq!((shown.least, shown.most), (shown.figures[0], *shown.figures.last().unwrap()));
        }
        assert_eq!(runs(&sample(&ONE), 10, figure), None);
        assert_eq!(runs(&sample(&ONE), 0, figure), None);
    }
}

#[test]
fn few_picks_are_listed_and_none_is_missing() {
    for values in [&ONE[..], &OTHER, &SIDES] {
        for figure in FIGURES {
            for n in 1..=values.len() {
                let shown = picks(&sample(values), n, figure, 126, 1).unwrap();
                assert_eq!(shown.taken, Taken::Listed, "at most 126 choices of 9");
                assert!(alike(&shown.figures, &by_bits(values, n, figure)), "{figure:?} {n}");
            }
        }
    }
}

#[test]
fn many_picks_are_drawn_and_their_extremes_are_still_those_of_all() {
    for values in [&ONE[..], &OTHER, &SIDES] {
        for figure in FIGURES {
            for n in 2..values.len() - 1 {
                let shown = picks(&sample(values), n, figure, 25, 7).unwrap();
                assert_eq!(shown.taken, Taken::Drawn { seed: 7 });
                assert_eq!(shown.figures.len(), 25);
                let all = by_bits(values, n, figure);
                assert!((shown.most - all.last().unwrap()).abs() < 1e-9);
                // The least distance from zero is promised to half the largest step over n; a mean exactly.
                let slack = match figure {
                    Figure::Mean => 1e-9,
                    Figure::DistanceFromZero => 8.5 / n as f64 + 1e-9,
                };
                assert!((all[0] - 1e-9..=all[0] + slack).contains(&shown.least), "{values:?} {n}");
            }
        }
    }
}

#[test]
fn distances_on_one_side_of_zero_are_exact() {
    for side in [1.0, -1.0] {
        let values: Vec<f64> = ONE.iter().map(|x| side * x).collect();
        let shown = picks(&sample(&values), 4, Figure::DistanceFromZero, 10, 3).unwrap();
        let all = by_bits(&values, 4, Figure::DistanceFromZero);
        assert!((shown.least - all[0]).abs() < 1e-9 && (shown.most - all[125]).abs() < 1e-9);
    }
}

#[test]
fn drawn_picks_are_as_likely_as_listed_ones() {
    let (one, other) = (sample(&ONE), sample(&OTHER));
    let share = |draws, at_least| {
        let show = |sample, seed| picks(sample, 4, Figure::Mean, draws, seed).unwrap();
        share_of_pairs(&show(&other, 11), &show(&one, 12), at_least)
    };
    for at_least in [0.0, 5.0, 10.0] {
        // 20,000 choices are more than the 126 and 70 there are: listed. 69 are drawn, so pool many seeds.
        let exact = share(20_000, at_least);
        let drawn: f64 = (0..400)
            .map(|seed| {
                let show = |sample, seed| picks(sample, 4, Figure::Mean, 69, seed).unwrap();
                share_of_pairs(&show(&other, 2 * seed), &show(&one, 2 * seed + 1), at_least)
            })
            .sum::<f64>()
            / 400.0;
        // One share of 69 × 69 pairs has a standard error of about 0.05: 0.0025 for 400 of them.
        assert!((drawn - exact).abs() < 0.01, "{at_least}: {drawn} of {exact}");
    }
}

#[test]
fn shares_count_every_pair() {
    for figure in FIGURES {
        for n in [1, 3, 5] {
            let (above, below) =
                (runs(&sample(&OTHER), n, figure).unwrap(), runs(&sample(&ONE), n, figure).unwrap());
            for at_least in [0.0, 1.0, 5.0, 6.2, 40.0] {
                for (a, b) in [(&above, &below), (&below, &above), (&above, &above)] {
                    let share = share_of_pairs(a, b, at_least);
                    assert!((share - share_by_hand(a, b, at_least)).abs() < 1e-12, "{n} {at_least}");
                }
            }
        }
    }
    let same = runs(&sample(&[250.0; 6]), 3, Figure::Mean).unwrap();
    assert!(share_of_pairs(&same, &same, 0.0).abs() < 1e-12, "no gap is above zero");
}

#[test]
fn a_gap_of_just_the_size_counts_whatever_rounding_makes_of_it() {
    let (tenths, more) = ([0.1, 0.2, 0.3], [0.4, 0.5, 0.6]);
    let show = |values: &[f64]| runs(&sample(values), 3, Figure::Mean).unwrap();
    assert!((share_of_pairs(&show(&more), &show(&tenths), 0.3) - 1.0).abs() < 1e-12);
}

#[test]
fn chance_gaps_scatter_as_theory_says_and_repeat() {
    let (one, other) = (sample(&ONE), sample(&OTHER));
    for n in [3, 5, 15] {
        let gaps = chance_gaps(&one, &other, n, Figure::Mean, 40_000, 5).unwrap();
        assert_eq!(gaps, chance_gaps(&one, &other, n, Figure::Mean, 40_000, 5).unwrap());
        assert_eq!(
            gaps,
            chance_gaps(&other, &one, n, Figure::Mean, 40_000, 5).unwrap(),
            "no order of naming"
        );
        let second = gaps.sizes.iter().map(|size| size * size).sum::<f64>() / 40_000.0;
        let pooled = (9.0 * one.variance() + 8.0 * other.variance()) / 17.0;
        let expected = 2.0 * pooled / n as f64;
        // A squared normal gap has a deviation of 1.41 of its mean; these tails are a little longer.
        assert!((second / expected - 1.0).abs() < 0.04, "{n}: {second} of {expected}");
    }
    let other_seed = chance_gaps(&one, &other, 5, Figure::Mean, 1000, 6).unwrap();
    assert_ne!(other_seed, chance_gaps(&one, &other, 5, Figure::Mean, 1000, 5).unwrap());
}

#[test]
fn chance_gaps_know_no_place_but_distances_do() {
    let moved = |by: f64| sample(&ONE.iter().map(|x| x + by).collect::<Vec<f64>>());
    let gaps = |by, figure| chance_gaps(&moved(by), &sample(&OTHER), 5, figure, 500, 9).unwrap().sizes;
    assert!(alike(&gaps(0.0, Figure::Mean), &gaps(64.0, Figure::Mean)));
    // Far from zero a distance is the value itself.
    assert!(alike(&gaps(0.0, Figure::Mean), &gaps(0.0, Figure::DistanceFromZero)));
    let line = sample(&SIDES);
    let near = chance_gaps(&line, &line, 5, Figure::DistanceFromZero, 500, 9).unwrap();
    let plain = chance_gaps(&line, &line, 5, Figure::Mean, 500, 9).unwrap();
    assert!(near.sizes.last() < plain.sizes.last(), "on both sides of zero distances differ by less");
}

#[test]
fn shares_of_chance_gaps_go_down_from_one() {
    let gaps = chance_gaps(&sample(&ONE), &sample(&OTHER), 5, Figure::Mean, 2000, 1).unwrap();
    assert!((gaps.share_at_least(0.0) - 1.0).abs() < 1e-12);
    let shares: Vec<f64> = (0..40).map(|size| gaps.share_at_least(f64::from(size))).collect();
    assert!(shares.windows(2).all(|pair| pair[0] >= pair[1]));
    assert!(gaps.share_at_least(gaps.sizes[1999]) > 0.0 && gaps.share_at_least(1e6).abs() < 1e-12);
}

/// Values of both samples around their averages: −1 twice and 2 once, widened by √(3/2); n = 1.
#[test]
fn a_distance_by_chance_starts_from_the_middle_of_both() {
    let around = |center: f64| sample(&[center - 1.0, center - 1.0, center + 2.0]);
    let largest = |one: f64, other: f64| {
        let gaps = chance_gaps(&around(one), &around(other), 1, Figure::DistanceFromZero, 2000, 5).unwrap();
        *gaps.sizes.last().unwrap()
    };
    let widen = 1.5_f64.sqrt();
    for (one, other) in [(1.5, 1.5), (4.0, -1.0), (-20.0, 23.0)] {
        let (near, far) = ((1.5 - widen).abs(), 1.5 + 2.0 * widen);
        assert!((largest(one, other) - (far - near)).abs() < 1e-9, "{one} {other}");
    }
    // The other way round the long tail points to zero.
    let (near, far) = ((2.0 * widen - 1.5).abs(), 1.5 + widen);
    assert!((largest(-1.5, -1.5) - (far - near)).abs() < 1e-9);
}

#[test]
fn a_gap_as_large_as_asked_for_counts_but_for_rounding() {
    let gaps = chance_gaps(&sample(&ONE), &sample(&OTHER), 2, Figure::Mean, 500, 5).unwrap();
    for place in [0, 250, 499] {
        let (size, most) = (gaps.sizes[place], *gaps.sizes.last().unwrap());
        let reaching = gaps.sizes.iter().filter(|other| **other > size - 1e-6).count() as f64 / 500.0;
        for asked in [size, size + 0.9e-9 * most] {
            assert_eq!(gaps.share_at_least(asked).to_bits(), reaching.to_bits(), "{place}");
        }
    }
    let most = *gaps.sizes.last().unwrap();
    assert_eq!(gaps.share_at_least(most * (1.0 + 1.2e-9)).to_bits(), 0.0_f64.to_bits());
    let still = chance_gaps(&sample(&[3.0; 4]), &sample(&[3.0; 4]), 2, Figure::Mean, 50, 5).unwrap();
    assert_eq!(still.share_at_least(0.0).to_bits(), 1.0_f64.to_bits());
}

#[test]
fn picks_are_listed_up_to_the_number_that_would_be_drawn() {
    let ten = sample(&[1.0, 2.0, 4.0, 8.0, 16.0, 32.0, 64.0, 128.0, 256.0, 512.0]);
    for n in [3, 7] {
        let listed = picks(&ten, n, Figure::Mean, 120, 1).unwrap();
        assert_eq!((listed.figures.len(), listed.taken), (120, Taken::Listed));
        let drawn = picks(&ten, n, Figure::Mean, 119, 1).unwrap();
        assert_eq!((drawn.figures.len(), drawn.taken), (119, Taken::Drawn { seed: 1 }));
    }
}

/// Each deal is one of the choices there are, every one comes up, and the same seed deals the same.
#[test]
fn deals_are_choices_in_the_order_drawn() {
    let dealt = deals(&sample(&ONE), 3, Figure::Mean, 3000, 5).unwrap();
    let every = by_bits(&ONE, 3, Figure::Mean);
    assert!(dealt.iter().all(|figure| every.iter().any(|one| (one - figure).abs() < 1e-9)));
    assert!(every.iter().all(|one| dealt.iter().any(|figure| (one - figure).abs() < 1e-9)));
    assert_ne!(sorted(dealt.clone()), dealt, "as drawn, not sorted");
    assert_eq!(deals(&sample(&ONE), 3, Figure::Mean, 40, 5).unwrap()[..], dealt[..40]);
    let all = deals(&sample(&ONE), ONE.len(), Figure::Mean, 2, 1).unwrap();
    assert!(all.iter().all(|figure| (figure - Figure::Mean.of(&ONE)).abs() < 1e-9));
    for (n, draws) in [(0, 5), (ONE.len() + 1, 5), (3, 0)] {
        assert_eq!(deals(&sample(&ONE), n, Figure::Mean, draws, 1), None);
    }
}
