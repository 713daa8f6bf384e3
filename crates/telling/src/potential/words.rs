//! What a ball speed could carry, in words: now, with another launch, with another spin; and what not to read into it.

use crate::format::{Subject, shots};
use crate::words::sentences;
use judging::potential::{Change, Gain, GroupFacts, NOTHING, PotentialFacts, Unused};
use serde::Serialize;
use session::Session;
use session::known::Known;
use session::names::short_name;
use text::Voice;
use text::potential as say;
use text::potential::Direction;

/// Sentences about one group.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct GroupWords {
    /// Its name.
    pub name: String,
    /// What it could carry more, beside its bar.
    pub gain: String,
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
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
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

/// Of each group, and of all.
pub(super) fn words(
    session: &Session,
    facts: &PotentialFacts,
    voice: &Voice,
) -> (Vec<GroupWords>, PotentialWords) {
    let speech = Speech::of(session, voice);
    let of_groups: Vec<GroupWords> = facts.groups.iter().map(|group| speech.of_group(group)).collect();
    let (own, shown) = (&facts.groups[facts.own], &of_groups[facts.shown]);
    let words = PotentialWords {
        headline: speech.headline(own, &of_groups[facts.own].name, facts.largest_change),
        detail: speech.detail(own, facts.is_iron),
        cautions: cautions(facts.is_iron, voice),
        alternative: speech.alternative(facts, shown),
    };
    (of_groups, words)
}

struct Speech<'a> {
    voice: &'a Voice,
    session: &'a Session,
    carry: Subject<'a>,
    speed: Subject<'a>,
    launch: Subject<'a>,
    spin: Subject<'a>,
}

impl<'a> Speech<'a> {
    fn of(session: &'a Session, voice: &'a Voice) -> Self {
        let subject = |known: Known| Subject::of(&known.into(), session, voice);
        Self {
            voice,
            session,
            carry: subject(Known::Carry),
            speed: subject(Known::BallSpeed),
            launch: subject(Known::LaunchAngle),
            spin: subject(Known::SpinRate),
        }
    }

    fn of_group(&self, group: &GroupFacts) -> GroupWords {
        let (voice, launch) = (self.voice, &group.launch);
        let name =
            |build: usize| self.session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
        GroupWords {
            name: group.build.map_or_else(|| say::best_third(voice), name),
            gain: self.gain(group),
            now: say::now(
                voice,
                &self.carry.amount(group.carry),
                &self.speed.value(launch.ball_speed),
                &self.launch.value(launch.launch_angle),
                &self.spin.value(launch.spin_rate),
                &shots(voice, group.n),
            ),
            launch: self.other_launch(group),
            spin: self.other_spin(group),
            best: self.both_at_their_best(group),
        }
    }

    fn gain(&self, group: &GroupFacts) -> String {
        let size = |yd: f64| self.carry.amount(yd);
        match group.gain() {
            Gain::Nothing => say::gain_none(self.voice),
            Gain::NotNamed => say::gain_not_named(self.voice),
            Gain::Alone { size: alone } => say::gain_alone(self.voice, &size(alone)),
            Gain::Both { size: both } => say::gain_both(self.voice, &size(both)),
            Gain::Range { low, high } if size(low) == size(high) => say::gain_alone(self.voice, &size(high)),
            Gain::Range { low, high } => say::gain_range(self.voice, &size(low), &size(high)),
        }
    }

    fn other_launch(&self, group: &GroupFacts) -> String {
        let better = &group.best_launch;
        if better.is_nothing() {
            return say::no_better_launch(self.voice, &self.carry.amount(NOTHING));
        }
        let (at, gain) = (self.launch.value(better.at), self.carry.amount(better.gain));
        if better.at_edge {
            return say::edge_of_launch(self.voice, group.launch_change() == Change::HigherLaunch, &at);
        }
        say::better_launch(self.voice, &at, &gain)
    }

    fn other_spin(&self, group: &GroupFacts) -> String {
        let better = &group.best_spin;
        if better.is_nothing() {
            return say::no_better_spin(self.voice, &self.carry.amount(NOTHING));
        }
        let (at, gain) = (self.rough_spin(better.at), self.carry.amount(better.gain));
        if better.at_edge {
            return say::edge_of_spin(self.voice, group.spin_change() == Change::MoreSpin, &at);
        }
        say::better_spin(self.voice, &at, &gain)
    }

    fn both_at_their_best(&self, group: &GroupFacts) -> String {
        let best = &group.best;
        let band = say::band(
            self.voice,
            self.launch.value(best.launch_low).trim_end_matches('°'),
            &self.launch.value(best.launch_high),
            self.rough_spin(best.spin_low).trim_end_matches("rpm").trim_end(),
            &self.rough_spin(best.spin_high),
        );
        if best.is_nothing() {
            say::already_best(self.voice, &band, &self.carry.amount(NOTHING))
        } else if best.at_edge {
            say::edge_of_both(self.voice, &band)
        } else {
            say::both_at_their_best(self.voice, &band, &self.carry.amount(best.gain))
        }
    }

    /// To fifty: the best is flat, and more digits would promise too much.
    fn rough_spin(&self, rpm: f64) -> String {
        self.spin.value((rpm / 50.0).round() * 50.0)
    }

    fn headline(&self, own: &GroupFacts, name: &str, largest_change: Option<f64>) -> String {
        let voice = self.voice;
        let left = match own.unused() {
            Unused::Nothing => say::nothing_unused(voice, name),
            Unused::InLaunch(gain) => say::unused(voice, name, &self.carry.amount(gain), true),
            Unused::InSpin(gain) => say::unused(voice, name, &self.carry.amount(gain), false),
            Unused::AtTheEdge(change) => say::unused_at_edge(voice, name, direction(change)),
        };
        let clubs = largest_change.map(|change| say::clubs_changed(voice, &self.carry.amount(change)));
        sentences(&[left, clubs.unwrap_or_default()])
    }

    fn detail(&self, own: &GroupFacts, is_iron: bool) -> String {
        match is_iron {
            true => say::looks_like_an_iron(self.voice),
            false if own.best.is_nothing() => String::new(),
            false => say::ask_a_coach(self.voice),
        }
    }

    fn alternative(&self, facts: &PotentialFacts, shown: &GroupWords) -> String {
        let map = &facts.map;
        let top = map.carries.iter().copied().fold(0.0, f64::max);
        let GroupWords { name, now, launch, spin, best, gain: _ } = shown;
        sentences(&[
            say::map(
                self.voice,
                &self.speed.value(map.ball_speed),
                &self.launch.value(map.launches.first().copied().unwrap_or_default()),
                &self.launch.value(map.launches.last().copied().unwrap_or_default()),
                &self.rough_spin(map.spins.first().copied().unwrap_or_default()),
                &self.rough_spin(map.spins.last().copied().unwrap_or_default()),
                &self.carry.amount(top),
            ),
            say::group_said(self.voice, name, now, launch, spin, best),
        ])
    }
}

fn direction(change: Change) -> Direction {
    match change {
        Change::HigherLaunch => Direction::HigherLaunch,
        Change::LowerLaunch => Direction::LowerLaunch,
        Change::MoreSpin => Direction::MoreSpin,
        Change::LessSpin => Direction::LessSpin,
    }
}

fn cautions(is_iron: bool, voice: &Voice) -> Vec<String> {
    let mut said = vec![
        say::caution_modeled(voice),
        say::caution_together(voice),
        say::caution_flat(voice),
        say::caution_flattered(voice),
    ];
    if !is_iron {
        said.push(say::caution_not_all(voice));
    }
    said
}
