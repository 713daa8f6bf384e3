//! Rounds read off the order in which the builds were hit.

/// The round of every shot, from 1, given the builds in the order hit.
///
/// Shots in a row with one build are cut into sets of the session's usual set size, since in the
/// order AB BA AB the last set of one round and the first of the next are the same build. A round
/// then takes one set of each build and ends when a build comes up again.
#[must_use]
pub fn infer_rounds(builds: &[usize]) -> Vec<u32> {
    let runs: Vec<&[usize]> = builds.chunk_by(|a, b| a == b).collect();
    let set = usual_set_size(&runs);
    let mut rounds = Vec::with_capacity(builds.len());
    let mut round = 1;
    let mut seen = crate::few::Set::default();
    for run in runs {
        let sets = sets_in(run.len(), set);
        for s in 0..sets {
            if !seen.insert(run[0]) {
                round += 1;
                seen.clear();
                seen.insert(run[0]);
            }
            // Equal parts, the remainder spread over the first ones.
            let size = run.len() / sets + usize::from(s < run.len() % sets);
            rounds.extend(std::iter::repeat_n(round, size));
        }
    }
    rounds
}

/// How many sets a run holds: two where the end of one round meets the start of the next, else one, however long.
fn sets_in(run: usize, set: usize) -> usize {
    if (run + (set - 1) / 2) / set == 2 { 2 } else { 1 }
}

/// The size of a set: the first run is always one set and so is the last, unless the session stopped within it.
/// Of the two, the one whose multiples fit the other runs better.
fn usual_set_size(runs: &[&[usize]]) -> usize {
    let (Some(first), Some(last)) = (runs.first().map(|r| r.len()), runs.last().map(|r| r.len())) else {
        return 1;
    };
    let misfit =
        |set: usize| -> usize { runs.iter().map(|r| r.len().abs_diff(sets_in(r.len(), set) * set)).sum() };
    if 2 * last >= first && misfit(last) < misfit(first) { last } else { first }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rounds(order: &str) -> String {
        let builds: Vec<usize> = order.bytes().map(|b| usize::from(b - b'A')).collect();
        infer_rounds(&builds).iter().map(ToString::to_string).collect()
    }

    #[test]
    fn rounds_follow_the_sets() {
        let cases = [
            ("", ""),
            ("AAAA", "1111"),
            ("AAABBB", "111111"),
            ("AAABBBAAABBB", "111111222222"),
            // Turned round every second time.
            ("AAABBBBBBAAAAAABBBBBBAAA", "111111222222333333444444"),
            // Single shots in turn.
            ("ABBABAAB", "11223344"),
            // Three builds.
            ("AABBCCCCBBAA", "111111222222"),
            // One shot too few is a slip, not a new way of hitting.
            ("AAABBAAABBB", "11111222222"),
            // Sets that wander in size, and a session that stopped within its last set.
            ("AAAAABBBBAAABBBBBAAAAAB", "11111111122222222333333"),
            ("AAABBBBBBAAAAAABBBBBBA", "1111112222223333334444"),
            // One block each.
            ("AAAAABBBBBBBBBBBBBBBBBBBB", "1111111111111111111111111"),
        ];
        for (order, expected) in cases {
            assert_eq!(rounds(order), expected, "{order}");
        }
    }
}
