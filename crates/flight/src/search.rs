//! The highest point of a smooth function of one variable with one hump, and where it has fallen by
//! a given amount.
//!
//! A coarse scan finds the hump, parabolas guarded by golden sections narrow it; the ends of the
//! range are candidates. Source: R. P. Brent, Algorithms for Minimization without Derivatives (1973),
//! ch. 5 (from memory).

/// A place, the value there, and what was made there.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Found<T> {
    pub(crate) at: f64,
    pub(crate) value: f64,
    pub(crate) made: T,
}

/// The highest point of `make` within `low..=high`, to `tolerance` in place, after a scan of `SCAN` points.
///
/// `make` gives the value and what belongs to it; a value that is no number never wins. Stops after
/// a bounded number of probes whatever the function does: `SCAN` + 6 to 10 on a smooth hump, `SCAN` + 1 at an end.
/// Requires: `low < high`; `SCAN` of 3 or more; one hump, or a highest one that the scan does not miss.
pub(crate) fn highest<const SCAN: usize, T: Copy, E>(
    low: f64,
    high: f64,
    tolerance: f64,
    mut make: impl FnMut(f64) -> Result<(f64, T), E>,
) -> Result<Found<T>, E> {
    let mut probe = |at: f64| {
        make(at).map(|(value, made)| {
            let value = if value.is_nan() { f64::NEG_INFINITY } else { value };
            Found { at, value, made }
        })
    };
    let spacing = (high - low) / (SCAN - 1) as f64;
    let mut scanned = [probe(low)?; SCAN];
    let mut top = 0;
    for index in 1..SCAN {
        let at = if index == SCAN - 1 { high } else { low + spacing * index as f64 };
        scanned[index] = probe(at)?;
        if scanned[index].value > scanned[top].value {
            top = index;
        }
    }
    if top > 0 && top < SCAN - 1 {
        return narrow(scanned[top - 1], scanned[top], scanned[top + 1], tolerance, probe);
    }
    let (end, neighbor) = if top == 0 { (scanned[0], scanned[1]) } else { (scanned[top], scanned[top - 1]) };
    // One step inward tells a slope that ends on the edge from a hump next to it.
    let inward = probe(end.at + tolerance.copysign(neighbor.at - end.at))?;
    if inward.value <= end.value {
        return Ok(end);
    }
    let (left, right) = if top == 0 { (end, neighbor) } else { (neighbor, end) };
    narrow(left, inward, right, tolerance, probe)
}

/// Closes in on the hump between `left` and `right`, of which `best` is the highest point known.
fn narrow<T: Copy, E>(
    left: Found<T>,
    best: Found<T>,
    right: Found<T>,
    tolerance: f64,
    mut probe: impl FnMut(f64) -> Result<Found<T>, E>,
) -> Result<Found<T>, E> {
    let golden = 0.5 * (3.0 - 5.0_f64.sqrt());
    let (mut low, mut high) = (left.at, right.at);
    let mut best = best;
    let (mut second, mut third) = if left.value >= right.value { (left, right) } else { (right, left) };
    // The step before the last: a parabola may only be trusted while steps shrink.
    let (mut last_step, mut earlier_step) = (high - low, high - low);
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if (best.at - middle).abs() <= 2.0 * tolerance - 0.5 * (high - low) {
            break;
        }
        let vertex = parabola_step(&best, &second, &third);
        let inside = best.at + vertex > low && best.at + vertex < high;
        let step = if inside && vertex.abs() < 0.5 * earlier_step.abs() {
            earlier_step = last_step;
            let near_end =
                best.at + vertex - low < 2.0 * tolerance || high - best.at - vertex < 2.0 * tolerance;
            if near_end { tolerance.copysign(middle - best.at) } else { vertex }
        } else {
            earlier_step = if best.at >= middle { low - best.at } else { high - best.at };
            golden * earlier_step
        };
        last_step = step;
        let step = if step.abs() >= tolerance { step } else { tolerance.copysign(step) };
        let found = probe(best.at + step)?;
        if found.value >= best.value {
            if step > 0.0 {
                low = best.at
            } else {
                high = best.at
            }
            (best, second, third) = (found, best, second);
        } else {
            if step > 0.0 {
                high = found.at
            } else {
                low = found.at
            }
            if found.value >= second.value {
                (second, third) = (found, second);
            } else if found.value >= third.value {
                third = found;
            }
        }
    }
    Ok(best)
}

/// From the first point to the vertex of the parabola through three; no number when there is none.
fn parabola_step<T>(best: &Found<T>, second: &Found<T>, third: &Found<T>) -> f64 {
    let r = (best.at - second.at) * (best.value - third.value);
    let q = (best.at - third.at) * (best.value - second.value);
    let top = (best.at - third.at) * q - (best.at - second.at) * r;
    -0.5 * top / (q - r)
}

/// The place nearest to `edge`, on the way from `inside` to `edge`, where `make` still reaches `floor`.
///
/// Sixteen halvings of the distance. Requires: the value at `inside` reaches `floor`, and falls towards `edge`.
pub(crate) fn reach<E>(
    inside: f64,
    edge: f64,
    floor: f64,
    mut make: impl FnMut(f64) -> Result<f64, E>,
) -> Result<f64, E> {
    if make(edge)? >= floor {
        return Ok(edge);
    }
    let (mut good, mut bad) = (inside, edge);
    for _ in 0..16 {
        let middle = 0.5 * (good + bad);
        if make(middle)? >= floor {
            good = middle;
        } else {
            bad = middle;
        }
    }
    Ok(good)
}

#[cfg(test)]
mod tests {
    use super::{highest, reach};
    use libm::log as ln;
    use std::convert::Infallible;

    fn top(low: f64, high: f64, f: impl Fn(f64) -> f64) -> f64 {
        highest::<5, _, _>(low, high, 1e-9, |x| Ok::<_, Infallible>((f(x), ())))
            .map(|found| found.at)
            .unwrap()
    }

    #[test]
    fn a_hump_is_found_wherever_it_lies() {
        for peak in [-3.0, -2.99, -0.4, 0.0, 1.7, 4.9, 5.0] {
            let found = top(-3.0, 5.0, |x| 7.0 - (x - peak) * (x - peak));
            assert!((found - peak).abs() < 1e-7, "{found} for {peak}");
        }
    }

    #[test]
    fn a_slope_ends_on_the_edge_itself() {
        assert_eq!(top(1.0, 2.0, |x| x).to_bits(), 2.0_f64.to_bits());
        assert_eq!(top(1.0, 2.0, |x| -x).to_bits(), 1.0_f64.to_bits());
    }

    /// Crooked humps, whose vertex no single parabola finds, and a kink, where none helps.
    #[test]
    fn few_probes_are_enough() {
        for peak in [0.11, 0.37, 0.5, 0.83] {
            let smooth = |x: f64| ln(x / peak) - x / peak;
            let kinked = |x: f64| -(x - peak).abs();
            for (f, most) in [(&smooth as &dyn Fn(f64) -> f64, 15), (&kinked, 30)] {
                let mut probes = 0;
                let found = highest::<5, _, _>(0.01, 1.0, 1e-3, |x| {
                    probes += 1;
                    Ok::<_, Infallible>((f(x), ()))
                });
                assert!((found.unwrap().at - peak).abs() < 3e-3, "{peak}");
                assert!(probes <= most, "{probes} probes for a hump at {peak}");
            }
        }
    }

    #[test]
    fn the_scan_is_even_and_ends_on_the_end_itself() {
        let mut probes = Vec::new();
        let _ = highest::<5, _, _>(0.3, 0.9, 1e-3, |x| {
            probes.push(x);
            Ok::<_, Infallible>((x, ()))
        });
        for (index, probe) in probes.iter().take(4).enumerate() {
            assert!((probe - (0.3 + 0.15 * index as f64)).abs() < 1e-15, "{probes:?}");
        }
        assert_eq!(probes[4].to_bits(), 0.9_f64.to_bits(), "0.3 + 4 · 0.15 is not quite that");
        assert_eq!(probes.len(), 6, "one step inward and no more");
    }

    #[test]
    fn the_first_of_equals_wins() {
        assert_eq!(top(1.0, 2.0, |_| 3.0).to_bits(), 1.0_f64.to_bits());
    }

    /// What a search costs, in flights: a change of the method changes these numbers knowingly.
    #[test]
    fn a_search_costs_what_it_did() {
        let cost = |f: &dyn Fn(f64, f64) -> f64| {
            let (mut all, mut most) = (0, 0);
            for peak in (1..200).map(|place| 0.005 * f64::from(place)) {
                let mut probes = 0;
                let found = highest::<5, _, _>(0.0, 1.0, 1e-4, |x| {
                    probes += 1;
                    Ok::<_, Infallible>((f(x, peak), ()))
                });
                assert!((found.unwrap().at - peak).abs() < 3e-4, "{peak}");
                (all, most) = (all + probes, most.max(probes));
            }
            [all, most]
        };
        let smooth = cost(&|x, peak| ln((x + 0.1) / (peak + 0.1)) - (x + 0.1) / (peak + 0.1));
        let kinked = cost(&|x, peak| -(x - peak).abs());
        let lopsided = cost(&|x, peak| if x < peak { 5.0 * (x - peak) } else { (peak - x) * (x - peak) });
        assert_eq!([smooth, kinked, lopsided], [[2293, 15], [3045, 20], [2257, 16]]);
    }

    #[test]
    fn no_number_never_wins_and_never_hangs() {
        let found = top(0.0, 1.0, |x| if x < 0.5 { f64::NAN } else { 2.0 - x });
        assert!((found - 0.5).abs() < 0.1);
        assert!(top(0.0, 1.0, |_| f64::NAN).is_finite());
    }

    #[test]
    fn reach_stops_where_the_floor_is_crossed() {
        let f = |x: f64| Ok::<_, Infallible>(1.0 - x * x);
        assert!((reach(0.0, 2.0, 0.75, f).unwrap() - 0.5).abs() < 1e-4);
        assert!((reach(0.0, 0.3, 0.75, f).unwrap() - 0.3).abs() < 1e-15);
    }
}
