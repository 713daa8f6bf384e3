//! Where they land, in words: which miss is the golfer's, what aiming would do, what the club does.
//!
//! What is true was decided by the intervals; it is read here.

use crate::ends::level_text;
use crate::format::{Subject, chance, number, shots};
use crate::hand::Hand;
use crate::words::sentences;
use judging::landing::{BuildFacts, FEWEST_FOR_OVALS, InHundred, LandingFacts, LandingFinding, LandingPair};
use serde::Serialize;
use session::known::Known;
use session::names::short_name;
use session::{Order, Session};
use text::{Voice, capital};
use text::{landing as say, luck};

/// Sentences about one build.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct BuildWords {
    /// What its dots show; empty for too few shots.
    pub dots: String,
    /// Its average miss.
    pub miss: String,
    /// What was counted at this aim, and what the curve says, each with its interval.
    pub chance: String,
    /// What the best aim would do.
    pub best: String,
}

/// Sentences about where they land.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct LandingWords {
    /// What was counted with the two asked about and whether it settles anything, short enough to stand in the answer.
    pub line: String,
    /// The finding in one sentence.
    pub headline: String,
    /// What stands behind it.
    pub detail: String,
    /// How far the centers lie apart, and whether luck does that.
    pub centers: String,
    /// Said of the aim as it stands.
    pub aim: String,
    /// What the ovals are, and why a club has none.
    pub ovals: String,
    /// How chances and intervals were made, and what they do not know.
    pub note: String,
    /// The picture for those who hear it.
    pub alternative: String,
}

/// Of each build, and of all.
pub(super) fn words(
    session: &Session,
    hand: Option<Hand>,
    facts: &LandingFacts,
    voice: &Voice,
) -> (Vec<BuildWords>, LandingWords) {
    let offline = Subject::of(&Known::Offline.into(), session, voice);
    let speech = Speech { voice, session, hand, offline, facts };
    let of_builds: Vec<BuildWords> = facts.builds.iter().map(|build| speech.of_build(build)).collect();
    let words = LandingWords {
        line: speech.line(),
        headline: speech.headline(),
        detail: speech.detail(),
        centers: facts.ground.pair.map_or_else(String::new, |pair| speech.centers(&pair)),
        aim: speech.aimed(),
        ovals: speech.ovals(),
        note: speech.note(),
        alternative: speech.alternative(&of_builds),
    };
    (of_builds, words)
}

struct Speech<'a> {
    voice: &'a Voice,
    session: &'a Session,
    hand: Option<Hand>,
    offline: Subject<'a>,
    facts: &'a LandingFacts,
}

impl Speech<'_> {
    fn name(&self, build: usize) -> String {
        self.session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name))
    }

    fn yards(&self, x: f64) -> String {
        self.offline.amount(x)
    }

    fn strip(&self) -> String {
        say::strip(self.voice, &self.offline.chosen(self.facts.ground.fairway))
    }

    /// Whether warming up or tiring may have a part in what the two clubs did.
    fn is_hint(&self) -> bool {
        self.facts.ground.order != Order::Interleaved || self.facts.ground.long_turns
    }

    fn is_aimed_off(&self) -> bool {
        self.facts.ground.aim.abs() > 0.0
    }

    /// `20 yd right`, with the golfer's own name for that side when the hand is known.
    fn side(&self, x: f64) -> String {
        if self.offline.prints_as_zero(x) {
            return say::in_the_middle(self.voice);
        }
        let (right, size) = (x > 0.0, self.yards(x));
        match self.hand {
            None => say::side(self.voice, &size, right),
            Some(hand) => say::side_and_shape(self.voice, &size, right, right == (hand == Hand::Right)),
        }
    }

    /// `20 yd left`, without naming the shape.
    fn plain_side(&self, x: f64) -> String {
        say::side(self.voice, &self.yards(x), x >= 0.0)
    }

    /// A chance as shots of a hundred, never none and never all.
    fn of_100(&self, chance: f64) -> String {
        luck::of_100(self.voice, &hundredths(chance))
    }

    /// A gain in chance, in hundredths: `12 more`.
    fn more_or_fewer(&self, gain: f64) -> String {
        let size = 100.0 * gain.abs();
        // What is not zero is not printed as zero: a decision may hang on its side.
        let printed = match size {
            0.0 => return say::no_gain(self.voice),
            ..0.5 => number(self.voice, size.max(0.1), 1),
            _ => format!("{size:.0}"),
        };
        say::more_or_fewer(self.voice, &printed, gain > 0.0)
    }

    fn of_build(&self, build: &BuildFacts) -> BuildWords {
        let voice = self.voice;
        let counted = say::counted(voice, build.counted, &shots(voice, build.n), self.is_aimed_off());
        let chance = match build.at_aim {
            Some(curve) => {
                let share = build.counted_share;
                let (low, high) = (hundredths(share.low), hundredths(share.high));
                let (from, to) = (hundredths(curve.low), hundredths(curve.high));
                [
                    counted,
                    say::counted_share(voice, &self.of_100(share.value), &low, &high),
                    say::chance(voice, &self.of_100(curve.value), &from, &to),
                ]
            }
            None => [counted, say::too_few_for_a_chance(voice), String::new()],
        };
        let dots = build.of_100.map(|InHundred { on, low, high }| {
            let on = luck::of_100(voice, &on.to_string());
            say::dots(voice, &on, &low.to_string(), &high.to_string())
        });
        BuildWords {
            dots: dots.unwrap_or_default(),
            miss: capital(&self.miss(build)),
            chance: sentences(&chance),
            best: self.best_aim(build),
        }
    }

    /// The average miss; of fewer shots than were hit it says of how many, since the answer's averages may be of more.
    fn miss(&self, build: &BuildFacts) -> String {
        let hit = self.session.shots.iter().filter(|shot| shot.build == build.build).count();
        let (side, carry) = (self.side(build.center.offline), self.yards(build.center.carry));
        say::miss(self.voice, &side, build.n < hit, &shots(self.voice, build.n), &carry)
    }

    fn best_aim(&self, build: &BuildFacts) -> String {
        let Some(best) = build.best else { return String::new() };
        if build.was_aimed_best() {
            return say::no_better_aim(self.voice);
        }
        let (value, low, high) =
            (self.of_100(best.chance.value), hundredths(best.chance.low), hundredths(best.chance.high));
        if self.offline.prints_as_zero(best.aim) {
            say::best_at_the_middle(self.voice, &value, &low, &high)
        } else {
            say::best_aimed(self.voice, &self.plain_side(best.aim), &value, &low, &high)
        }
    }

    fn headline(&self) -> String {
        let Some((finding, base)) = self.facts.finding() else { return self.alone() };
        match finding {
            LandingFinding::AimOverClub => {
                let (side, club) = (self.side(base.center.offline), self.name(base.build));
                say::aim_over_club(self.voice, &side, &club, self.is_hint())
            }
            LandingFinding::HitsMoreOften { better, worse } => {
                let (better, worse) = (self.name(better), self.name(worse));
                say::hits_more_often(self.voice, &better, &self.strip(), &worse, self.is_hint())
            }
            LandingFinding::NotSettled => say::not_settled(self.voice, &self.strip()),
        }
    }

    /// With nothing to hold a build against.
    fn alone(&self) -> String {
        let most = self.facts.most_hit();
        match most {
            Some(build) => {
                let counted = self.of_100(build.counted_as_aimed);
                say::alone(self.voice, &self.name(build.build), &counted, &self.strip())
            }
            None => say::too_few(self.voice),
        }
    }

    fn line(&self) -> String {
        let voice = self.voice;
        let Some((finding, _)) = self.facts.finding() else { return self.alone() };
        let sentence = match finding {
            LandingFinding::AimOverClub => self.headline(),
            LandingFinding::HitsMoreOften { better, .. } => {
                say::line_more_often(voice, &self.name(better), self.is_hint())
            }
            LandingFinding::NotSettled => say::line_not_settled(voice),
        };
        // As many counted of both beside one that hits more often would read as a contradiction: the room tells how.
        let is_settled = matches!(finding, LandingFinding::HitsMoreOften { .. });
        if is_settled && self.facts.counted_even() {
            return self.headline();
        }
        let counted = self.facts.ground.pair.and_then(|pair| {
            let share = |build: usize| Some(self.of_100(self.facts.build(build)?.counted_as_aimed));
            let (own, other) = (share(pair.candidate)?, share(pair.baseline)?);
            let (candidate, baseline) = (self.name(pair.candidate), self.name(pair.baseline));
            Some(say::line_counted(voice, &own, &candidate, &self.strip(), &other, &baseline))
        });
        sentences(&[counted.unwrap_or_default(), sentence])
    }

    /// What stands behind the figures that are there.
    fn note(&self) -> String {
        let builds = &self.facts.builds;
        let or_nothing = |is_there: bool, note: String| if is_there { note } else { String::new() };
        sentences(&[
            say::note(self.voice),
            or_nothing(builds.iter().any(|build| build.at_aim.is_some()), say::note_curve(self.voice)),
            or_nothing(builds.iter().any(|build| build.best.is_some()), say::note_aim(self.voice)),
        ])
    }

    fn ovals(&self) -> String {
        let (with, without): (Vec<_>, Vec<_>) =
            self.facts.builds.iter().partition(|build| !build.ovals.is_empty());
        if let Some(id) = &self.facts.ground.no_scatter {
            let measure = Subject::of(id, self.session, self.voice).name;
            return say::no_scatter_for_ovals(self.voice, &measure);
        }
        let drawn = if with.is_empty() { String::new() } else { say::ovals(self.voice) };
        let none = without.iter().map(|build| {
            let fewest = FEWEST_FOR_OVALS.to_string();
            say::no_oval(self.voice, &self.name(build.build), &shots(self.voice, build.n), &fewest)
        });
        sentences(&std::iter::once(drawn).chain(none).collect::<Vec<_>>())
    }

    fn detail(&self) -> String {
        let Some(pair) = self.facts.ground.pair else { return String::new() };
        let builds = self.facts.build(pair.baseline).zip(self.facts.build(pair.candidate));
        let Some((base, cand)) = builds else { return String::new() };
        let (Some(of_base), Some(of_cand), Some(best)) = (base.as_aimed, cand.as_aimed, base.best) else {
            return String::new();
        };
        let (own, other) = (self.name(pair.baseline), self.name(pair.candidate));
        let as_aimed = say::as_aimed(
            self.voice,
            &self.of_100(of_base.value),
            &own,
            &self.of_100(of_cand.value),
            &other,
            &self.more_or_fewer(pair.gain_of_club.low),
            &self.more_or_fewer(pair.gain_of_club.high),
            &level_text(self.voice, self.facts.ground.level),
            match self.facts.ground.order {
                Order::Interleaved if self.facts.ground.long_turns => say::Order::LongTurns,
                Order::Interleaved => say::Order::InTurn,
                Order::Blocked => say::Order::OneAfterTheOther,
                Order::Unknown => say::Order::NotKnown,
            },
        );
        let against = self.facts.counted_against_the_curve().map(|favored| {
            let other = if favored == pair.baseline { pair.candidate } else { pair.baseline };
            say::counted_against_the_curve(self.voice, &self.name(favored), &self.name(other))
        });
        let would_hit = if best.surely_gains() {
            say::would_hit(self.voice, &self.plain_side(best.aim), &own, &self.of_100(best.chance.value))
        } else {
            String::new()
        };
        sentences(&[as_aimed, against.unwrap_or_default(), would_hit])
    }

    fn centers(&self, pair: &LandingPair) -> String {
        let voice = self.voice;
        let apart = say::centers(
            voice,
            &self.name(pair.candidate),
            &self.yards(pair.carry),
            pair.carry > 0.0,
            self.offline.prints_as_zero(pair.offline),
            &self.plain_side(pair.offline),
            &self.name(pair.baseline),
        );
        let by_luck = pair.chance_if_same.map(|p| say::centers_by_luck(voice, &chance(voice, p)));
        let order = match self.facts.ground.order {
            Order::Blocked => say::order_may_move(voice),
            Order::Unknown => say::order_not_known(voice),
            Order::Interleaved if self.facts.ground.long_turns => say::long_turns_may_move(voice),
            Order::Interleaved => String::new(),
        };
        sentences(&[apart, by_luck.unwrap_or_default(), order])
    }

    fn aimed(&self) -> String {
        if self.is_aimed_off() {
            say::aimed_off(self.voice, &self.plain_side(self.facts.ground.aim))
        } else {
            say::aimed_as_on_the_day(self.voice)
        }
    }

    fn alternative(&self, of_builds: &[BuildWords]) -> String {
        let voice = self.voice;
        let each = self.facts.builds.iter().zip(of_builds).map(|(build, words)| {
            let said = say::build_said(voice, &self.name(build.build), &self.miss(build), &words.chance);
            let oval = build.ovals.last().map(|oval| {
                let (long, wide) = (2.0 * oval.major, 2.0 * oval.minor);
                // What prints as no width is none that anybody reads.
                if self.offline.prints_as_zero(wide) {
                    say::line_of_landings(voice, &self.yards(long))
                } else {
                    say::oval(voice, &self.yards(long), &self.yards(wide))
                }
            });
            sentences(&[said, oval.unwrap_or_default()])
        });
        let from_above = say::from_above(voice, &self.strip(), &self.aimed());
        let all: Vec<String> = std::iter::once(from_above).chain(each).collect();
        all.join(" ")
    }
}

fn hundredths(chance: f64) -> String {
    judging::landing::hundredths(chance).to_string()
}
