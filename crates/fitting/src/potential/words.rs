//! What a ball speed could carry, in words: now, with another launch, with another spin; and what not to read into it.

use super::{Improvement, Potential, SpeedGroup};
use crate::session::Session;
use crate::words::{Subject, sentences, short_name, shots};
use serde::Serialize;

/// A gain below this is none, yd: the band within which launches and spins carry the same.
const NOTHING: f64 = 2.0;

/// Sentences about one group.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct GroupWords {
    /// Its name.
    pub name: String,
    /// What it does now.
    pub now: String,
    /// What another launch would do.
    pub launch: String,
    /// What another spin would do.
    pub spin: String,
    /// What the best of the window would do.
    pub best: String,
}

/// Sentences about what a ball speed could carry.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PotentialWords {
    /// What is left unused, beside what the clubs changed.
    pub headline: String,
    /// What to make of it.
    pub detail: String,
    /// What not to read into it; one sentence each.
    pub cautions: Vec<String>,
    /// The map for those who hear it.
    pub alternative: String,
}

pub(super) fn fill(session: &Session, own: usize, shown: usize, found: &mut Potential) {
    let speech = Speech::of(session);
    for group in &mut found.groups {
        group.words = speech.of_group(session, group);
    }
    let (own, shown) = (&found.groups[own], &found.groups[shown]);
    found.words = PotentialWords {
        headline: speech.headline(own, found.largest_change),
        detail: speech.detail(own, found.is_iron),
        cautions: cautions(found.is_iron),
        alternative: speech.alternative(found, shown),
    };
}

struct Speech {
    carry: Subject,
    speed: Subject,
    launch: Subject,
    spin: Subject,
}

impl Speech {
    fn of(session: &Session) -> Self {
        let subject = |id: &str| Subject::of(&id.into(), session);
        Self {
            carry: subject("carry"),
            speed: subject("ball_speed"),
            launch: subject("launch_angle"),
            spin: subject("spin_rate"),
        }
    }

    fn of_group(&self, session: &Session, group: &SpeedGroup) -> GroupWords {
        let name = group.build.map_or_else(
            || "Your best third".to_owned(),
            |build| session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name)),
        );
        let best = &group.best;
        let band = format!(
            "launch {} to {}, spin {} to {}",
            self.launch.value(best.launch_low).trim_end_matches('°'),
            self.launch.value(best.launch_high),
            self.rough_spin(best.spin_low).trim_end_matches(" rpm"),
            self.rough_spin(best.spin_high)
        );
        GroupWords {
            name,
            now: format!(
                "Carries {} at {}, {} and {} ({}).",
                self.carry.amount(group.carry),
                self.speed.value(group.launch.ball_speed),
                self.launch.value(group.launch.launch_angle),
                self.spin.value(group.launch.spin_rate),
                shots(group.n)
            ),
            launch: self.one(
                &group.best_launch,
                |at| self.launch.value(at),
                "Launched at",
                "with its own spin",
                "Launch",
            ),
            spin: self.one(&group.best_spin, |at| self.rough_spin(at), "With", "at its own launch", "Spin"),
            best: if best.gain < NOTHING {
                format!("Already as far as this ball speed goes ({band}), to 2 yd.")
            } else {
                format!("Both at their best ({band}): about {} more.", self.carry.amount(best.gain))
            },
        }
    }

    /// To fifty: the best is flat, and more digits would promise too much.
    fn rough_spin(&self, rpm: f64) -> String {
        self.spin.value((rpm / 50.0).round() * 50.0)
    }

    fn one(
        &self,
        better: &Improvement,
        at: impl Fn(f64) -> String,
        how: &str,
        own: &str,
        what: &str,
    ) -> String {
        if better.gain < NOTHING {
            return format!("{what}: nothing to gain; it is within 2 yd of the best.");
        }
        let edge = if better.at_edge { ", as far as this page looks," } else { "" };
        format!("{how} {}{edge} {own}: about {} more.", at(better.at), self.carry.amount(better.gain))
    }

    fn headline(&self, own: &SpeedGroup, largest_change: Option<f64>) -> String {
        let unused = own.best_launch.gain.max(own.best_spin.gain);
        let name = &own.words.name;
        let clubs = largest_change.map_or_else(String::new, |change| {
            format!(
                " The clubs in this session changed average carry by at most {}.",
                self.carry.amount(change)
            )
        });
        if unused < NOTHING {
            return format!(
                "With {name} this ball speed already carries about as far as its launch and spin allow.{clubs}"
            );
        }
        let by = if own.best_launch.gain >= own.best_spin.gain { "launch" } else { "spin" };
        format!(
            "With {name} about {} of carry lie unused in the {by} alone.{clubs}",
            self.carry.amount(unused)
        )
    }

    fn detail(&self, own: &SpeedGroup, is_iron: bool) -> String {
        if is_iron {
            return "This looks like an iron or a wedge, where height and stopping count as much as carry: read it as \
                    physics, not as a goal."
                .to_owned();
        }
        if own.best.gain < NOTHING {
            return String::new();
        }
        "Launch and spin come from the club and from how it arrives: tee height, where on the face it strikes, attack angle. \
         Ask a coach before buying for it."
            .to_owned()
    }

    fn alternative(&self, found: &Potential, shown: &SpeedGroup) -> String {
        let map = &found.map;
        let top = map.carries.iter().copied().fold(0.0, f64::max);
        sentences(&[
            format!(
                "A map of carry at {}: launch from {} to {} across, spin from {} to {} upward. Lines of equal carry up to {}.",
                self.speed.value(map.ball_speed),
                self.launch.value(map.launches.first().copied().unwrap_or_default()),
                self.launch.value(map.launches.last().copied().unwrap_or_default()),
                self.rough_spin(map.spins.first().copied().unwrap_or_default()),
                self.rough_spin(map.spins.last().copied().unwrap_or_default()),
                self.carry.amount(top)
            ),
            format!(
                "{}: {} {} {} {}",
                shown.words.name, shown.words.now, shown.words.launch, shown.words.spin, shown.words.best
            ),
        ])
    }
}

fn cautions(is_iron: bool) -> Vec<String> {
    let mut said = vec![
        "Modeled, to about 3 % of carry: a gain of a few yards is a direction, not a promise.".to_owned(),
        "Launch and spin do not change alone: more loft gives both, and costs a little ball speed."
            .to_owned(),
        "The best is flat: anything in the band is as good.".to_owned(),
        "The best third were chosen because they flew far, so what they carry now is flattered.".to_owned(),
    ];
    if !is_iron {
        said.push(
            "Farther is not all: a higher flight suffers more in the wind, and less spin stops later."
                .to_owned(),
        );
    }
    said
}
