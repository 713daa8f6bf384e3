//! The whole pile read once: what a fitting here brings, how many leads were luck, and what became of what was promised.

use super::answer::{ClaimsFound, Findings, Many, NotPooledCount, OneOfMany, ValueFound};
use super::both::{Both, Effects};
use super::line::Gap;
use super::not_pooled::NotPooled;
use super::pile::{Kept, Pile};
use crate::interval::Interval;
use crate::verdict::{DecisionKind, Direction};
use stats::ratio_of_means::{Found, ratio_of_means};
use stats::{Level, false_discovery_rates};
use std::collections::BTreeMap;

/// Reads the pile.
#[must_use]
pub fn many(pile: &Pile) -> Many {
    let question = pile.question();
    let (toward, margin) = (question.toward(), question.margin());
    let kept: Vec<&Kept> = pile.kept().collect();
    let pooled: Vec<(usize, Gap)> = (0..kept.len())
        .filter_map(|at| Some((at, kept[at].line.gap.filter(|_| kept[at].line.not_pooled.is_none())?)))
        .collect();
    let effects = Effects::of(pooled.iter().map(|(_, gap)| *gap).collect());
    let both = effects.both();
    let rates = false_discovery_rates(&pooled.iter().map(|(_, gap)| gap.p).collect::<Vec<_>>());
    let mut each: Vec<OneOfMany> = kept.iter().map(|kept| one(kept)).collect();
    for (place, ((at, _), rate)) in pooled.iter().zip(&rates).enumerate() {
        each[*at].listed_from = Some(*rate);
        each[*at].is_listed = *rate <= question.rate;
        each[*at].pulled = both.as_ref().map(|both| both.pulled(place));
    }
    let findings = findings(&each, toward, question.rate);
    let claims = claims(&kept, &pooled, both.as_ref());
    arrange::sort_by_key(&mut each, |one| one.places.first().cloned());
    Many {
        measure: question.measure.clone(),
        goal: question.goal(),
        toward,
        margin,
        sent: question.sent,
        sessions: kept.len(),
        pooled: pooled.len(),
        copies: kept.iter().map(|kept| kept.places.len().saturating_sub(1)).sum(),
        brings: both.as_ref().map(|both| both.brings(toward, margin)),
        findings,
        claims,
        not_pooled: counted(&kept),
        names: open_names(&kept),
        each,
    }
}

fn one(kept: &Kept) -> OneOfMany {
    let line = &kept.line;
    OneOfMany {
        places: kept.places.clone(),
        baseline: line.baseline.clone(),
        candidate: line.candidate.clone(),
        decision: line.decision,
        gap: line.gap.map(|gap| ValueFound { value: gap.value, interval: gap.interval }),
        pulled: None,
        listed_from: None,
        is_listed: false,
        claimed: line.claimed,
        not_pooled: line.not_pooled,
    }
}

fn findings(each: &[OneOfMany], toward: Direction, rate: f64) -> Findings {
    let pooled = || each.iter().filter(|one| one.listed_from.is_some());
    let different = || {
        pooled().filter_map(|one| one.decision.filter(|decision| decision.kind == DecisionKind::Different))
    };
    let better = different().filter(|decision| decision.direction == Some(toward)).count();
    let count = different().count();
    Findings {
        different: count,
        better,
        worse: count - better,
        by_luck_alone: Level::P95.alpha() * pooled().count() as f64,
        rate,
        listed: each.iter().filter(|one| one.is_listed).count(),
    }
}

/// Weighted as the sessions are in the mean, so that a short retest counts less; what the order adds to all of them is in the
/// interval here too.
fn claims(kept: &[&Kept], pooled: &[(usize, Gap)], both: Option<&Both<'_>>) -> Option<ClaimsFound> {
    let claim = |place: usize| kept[pooled[place].0].line.claimed;
    let claimed = |place: usize| {
        let weight = both.map_or(1.0, |both| both.weight(place));
        Some(Found { found: pooled[place].1.value, of: claim(place)?, weight })
    };
    let all: Vec<Found> = (0..pooled.len()).filter_map(claimed).collect();
    let total: f64 = all.iter().map(|one| one.weight).sum();
    let mean = |of: fn(&Found) -> f64| all.iter().map(|one| one.weight * of(one)).sum::<f64>() / total;
    let promised = mean(|one| one.of);
    let ratio = ratio_of_means(&all, Level::P95).ok();
    let allowance = both.map_or(0.0, |both| both.allowance(|place| claim(place).is_some()));
    let interval = ratio.and_then(|ratio| ratio.interval).map(|ends| Interval {
        low: ends.low - allowance / promised.abs(),
        high: ends.high + allowance / promised.abs(),
        level: ends.level.coverage(),
    });
    (!all.is_empty()).then(|| ClaimsFound {
        claims: all.len(),
        promised,
        found: mean(|one| one.found),
        share: ratio.map(|ratio| ratio.ratio),
        interval,
    })
}

fn counted(kept: &[&Kept]) -> Vec<NotPooledCount> {
    let mut counts: BTreeMap<NotPooled, usize> = BTreeMap::new();
    for why in kept.iter().filter_map(|kept| kept.line.not_pooled) {
        *counts.entry(why).or_default() += 1;
    }
    counts.into_iter().map(|(why, sessions)| NotPooledCount { why, sessions }).collect()
}

fn open_names(kept: &[&Kept]) -> BTreeMap<String, usize> {
    let mut names = BTreeMap::new();
    let open = kept.iter().filter(|kept| kept.line.not_pooled == Some(NotPooled::SeveralClubs));
    for name in open.flat_map(|kept| &kept.line.names) {
        *names.entry(name.clone()).or_default() += 1;
    }
    names
}
