//! What a ball speed could carry, in words: now, with another launch, with another spin; and what not to read into it.

use super::{Improvement, Potential, SpeedGroup};
use crate::session::Session;
use crate::words::{Subject, sentences, short_name, shots};
use serde::Serialize;
use text::potential as say;

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
        let name = group.build.map_or_else(say::best_third, |build| {
            session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name))
        });
        let best = &group.best;
        let band = say::band(
            self.launch.value(best.launch_low).trim_end_matches('°'),
            &self.launch.value(best.launch_high),
            self.rough_spin(best.spin_low).trim_end_matches("rpm").trim_end(),
            &self.rough_spin(best.spin_high),
        );
        let more = |better: &Improvement| self.carry.amount(better.gain);
        GroupWords {
            name,
            now: say::now(
                &self.carry.amount(group.carry),
                &self.speed.value(group.launch.ball_speed),
                &self.launch.value(group.launch.launch_angle),
                &self.spin.value(group.launch.spin_rate),
                &shots(group.n),
            ),
            launch: match &group.best_launch {
                better if better.gain < NOTHING => say::no_better_launch(&self.carry.amount(NOTHING)),
                better => say::better_launch(&self.launch.value(better.at), better.at_edge, &more(better)),
            },
            spin: match &group.best_spin {
                better if better.gain < NOTHING => say::no_better_spin(&self.carry.amount(NOTHING)),
                better => say::better_spin(&self.rough_spin(better.at), better.at_edge, &more(better)),
            },
            best: if best.gain < NOTHING {
                say::already_best(&band, &self.carry.amount(NOTHING))
            } else {
                say::both_at_their_best(&band, &self.carry.amount(best.gain))
            },
        }
    }

    /// To fifty: the best is flat, and more digits would promise too much.
    fn rough_spin(&self, rpm: f64) -> String {
        self.spin.value((rpm / 50.0).round() * 50.0)
    }

    fn headline(&self, own: &SpeedGroup, largest_change: Option<f64>) -> String {
        let unused = own.best_launch.gain.max(own.best_spin.gain);
        let name = &own.words.name;
        let clubs = largest_change.map(|change| say::clubs_changed(&self.carry.amount(change)));
        let left = if unused < NOTHING {
            say::nothing_unused(name)
        } else {
            let in_launch = own.best_launch.gain >= own.best_spin.gain;
            say::unused(name, &self.carry.amount(unused), in_launch)
        };
        sentences(&[left, clubs.unwrap_or_default()])
    }

    fn detail(&self, own: &SpeedGroup, is_iron: bool) -> String {
        if is_iron {
            return say::looks_like_an_iron();
        }
        if own.best.gain < NOTHING {
            return String::new();
        }
        say::ask_a_coach()
    }

    fn alternative(&self, found: &Potential, shown: &SpeedGroup) -> String {
        let map = &found.map;
        let top = map.carries.iter().copied().fold(0.0, f64::max);
        sentences(&[
            say::map(
                &self.speed.value(map.ball_speed),
                &self.launch.value(map.launches.first().copied().unwrap_or_default()),
                &self.launch.value(map.launches.last().copied().unwrap_or_default()),
                &self.rough_spin(map.spins.first().copied().unwrap_or_default()),
                &self.rough_spin(map.spins.last().copied().unwrap_or_default()),
                &self.carry.amount(top),
            ),
            say::group_said(
                &shown.words.name,
                &shown.words.now,
                &shown.words.launch,
                &shown.words.spin,
                &shown.words.best,
            ),
        ])
    }
}

fn cautions(is_iron: bool) -> Vec<String> {
    let mut said =
        vec![say::caution_modeled(), say::caution_together(), say::caution_flat(), say::caution_flattered()];
    if !is_iron {
        said.push(say::caution_not_all());
    }
    said
}
