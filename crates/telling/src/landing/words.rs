//! Where they land, in words: which miss is the golfer's, what aiming would do, what the club does.
//!
//! What is true was decided by the intervals; nothing here compares more than their ends with zero.

use super::{BuildLanding, Hand, Landing, LandingPair, LandingRequest};
use crate::session::{Order, Session};
use crate::words::{Subject, capital, chance, sentences, short_name, shots};
use serde::Serialize;
use text::landing as say;

/// Sentences about one build.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct BuildWords {
    /// Its average miss.
    pub miss: String,
    /// HitChance at this aim, with its interval and the count.
    pub chance: String,
    /// What the best aim would do.
    pub best: String,
}

/// Sentences about where they land.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct LandingWords {
    /// The finding in one sentence.
    pub headline: String,
    /// What stands behind it.
    pub detail: String,
    /// How far the centers lie apart, and whether luck does that.
    pub centers: String,
    /// Said of the aim as it stands.
    pub aim: String,
    /// How chances and intervals were made, and what they do not know.
    pub note: String,
    /// The picture for those who hear it.
    pub alternative: String,
}

pub(super) fn fill(request: &LandingRequest, landing: &mut Landing) {
    let speech =
        Speech { session: &request.session, hand: request.hand, fairway: landing.fairway, aim: landing.aim };
    for build in &mut landing.builds {
        build.words = speech.of_build(build);
    }
    landing.words = LandingWords {
        headline: speech.headline(landing),
        detail: speech.detail(landing),
        centers: landing.pair.map_or_else(String::new, |pair| speech.centers(&pair)),
        aim: speech.aimed(),
        note: say::note(),
        alternative: speech.alternative(landing),
    };
}

struct Speech<'a> {
    session: &'a Session,
    hand: Option<Hand>,
    fairway: f64,
    aim: f64,
}

impl Speech<'_> {
    fn name(&self, build: usize) -> String {
        self.session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name))
    }

    fn yards(&self, x: f64) -> String {
        Subject::of(&"offline".into(), self.session).amount(x)
    }

    fn strip(&self) -> String {
        say::strip(&Subject::of(&"offline".into(), self.session).chosen(self.fairway))
    }

    fn in_the_middle(&self, x: f64) -> bool {
        Subject::of(&"offline".into(), self.session).prints_as_zero(x)
    }

    /// `20 yd right`, with the golfer's own name for that side when the hand is known.
    fn side(&self, x: f64) -> String {
        if self.in_the_middle(x) {
            return say::in_the_middle();
        }
        let (right, size) = (x > 0.0, self.yards(x));
        match self.hand {
            None => say::side(&size, right),
            Some(hand) => say::side_and_shape(&size, right, right == (hand == Hand::Right)),
        }
    }

    /// `20 yd left`, without naming the shape.
    fn plain_side(&self, x: f64) -> String {
        say::side(&self.yards(x), x >= 0.0)
    }

    fn of_build(&self, build: &BuildLanding) -> BuildWords {
        let miss = say::miss(&capital(&self.side(build.center.offline)), &self.yards(build.center.carry));
        let counted = say::counted(build.counted, &shots(build.n), self.aim.abs() > 0.0);
        let chance = build.at_aim.map_or_else(say::too_few_for_a_chance, |chance| {
            say::chance(&of_100(chance.value), &hundredths(chance.low), &hundredths(chance.high))
        });
        let chance = sentences(&if build.at_aim.is_some() { [chance, counted] } else { [counted, chance] });
        let best = build.best.map_or_else(String::new, |best| {
            // The chance at the best aim is what is left of it in shots that did not choose the aim.
            if build.as_aimed.is_some_and(|as_aimed| as_aimed.value >= best.chance.value) {
                return say::no_better_aim();
            }
            let (value, low, high) =
                (of_100(best.chance.value), hundredths(best.chance.low), hundredths(best.chance.high));
            if self.in_the_middle(best.aim) {
                say::best_at_the_middle(&value, &low, &high)
            } else {
                say::best_aimed(&self.plain_side(best.aim), &value, &low, &high)
            }
        });
        BuildWords { miss, chance, best }
    }

    fn headline(&self, landing: &Landing) -> String {
        let base = landing.pair.and_then(|pair| build_of(landing, pair.baseline).map(|base| (pair, base)));
        let Some((pair, base)) = base else { return self.alone(landing) };
        let (own, other) = (self.name(pair.baseline), self.name(pair.candidate));
        if pair.aim_over_club.low > 0.0 && base.best.is_some_and(|best| best.gain.low > 0.0) {
            return say::aim_over_club(&self.side(base.center.offline), &own);
        }
        let strip = self.strip();
        if pair.gain_of_club.low > 0.0 || pair.gain_of_club.high < 0.0 {
            let (better, worse) = if pair.gain_of_club.low > 0.0 { (other, own) } else { (own, other) };
            return say::hits_more_often(&better, &strip, &worse);
        }
        say::not_settled(&strip)
    }

    /// With nothing to hold a build against.
    fn alone(&self, landing: &Landing) -> String {
        let most = landing.builds.iter().filter(|build| build.as_aimed.is_some()).max_by_key(|build| build.n);
        match most.and_then(|build| build.as_aimed.map(|chance| (build, chance))) {
            Some((build, chance)) => {
                say::alone(&self.name(build.build), &of_100(chance.value), &self.strip())
            }
            None => say::too_few(),
        }
    }

    fn detail(&self, landing: &Landing) -> String {
        let Some(pair) = landing.pair else { return String::new() };
        let builds = build_of(landing, pair.baseline).zip(build_of(landing, pair.candidate));
        let Some((base, cand)) = builds else { return String::new() };
        let (Some(of_base), Some(of_cand), Some(best)) = (base.as_aimed, cand.as_aimed, base.best) else {
            return String::new();
        };
        let (own, other) = (self.name(pair.baseline), self.name(pair.candidate));
        let as_aimed = say::as_aimed(
            &of_100(of_base.value),
            &own,
            &of_100(of_cand.value),
            &other,
            &more_or_fewer(pair.gain_of_club.low),
            &more_or_fewer(pair.gain_of_club.high),
        );
        let aimed = if best.gain.low > 0.0 {
            say::would_hit(&self.plain_side(best.aim), &own, &of_100(best.chance.value))
        } else {
            String::new()
        };
        sentences(&[as_aimed, aimed])
    }

    fn centers(&self, pair: &LandingPair) -> String {
        let apart = say::centers(
            &self.name(pair.candidate),
            &self.yards(pair.carry),
            pair.carry > 0.0,
            &self.plain_side(pair.offline),
            &self.name(pair.baseline),
        );
        let luck = pair.chance_if_same.map_or_else(String::new, |p| say::centers_by_luck(&chance(p)));
        let order = match self.session.order {
            Order::Blocked => say::order_may_move(),
            _ => String::new(),
        };
        sentences(&[apart, luck, order])
    }

    fn aimed(&self) -> String {
        if self.aim.abs() > 0.0 {
            say::aimed_off(&self.plain_side(self.aim))
        } else {
            say::aimed_as_on_the_day()
        }
    }

    fn alternative(&self, landing: &Landing) -> String {
        let each = landing.builds.iter().map(|build| {
            let said = say::build_said(&self.name(build.build), &build.words.miss, &build.words.chance);
            let oval = build.ovals.last().map_or_else(String::new, |oval| {
                say::oval(&self.yards(2.0 * oval.major), &self.yards(2.0 * oval.minor))
            });
            sentences(&[said, oval])
        });
        let from_above = say::from_above(&self.strip(), &self.aimed());
        let all: Vec<String> = std::iter::once(from_above).chain(each).collect();
        all.join(" ")
    }
}

fn build_of(landing: &Landing, build: usize) -> Option<&BuildLanding> {
    landing.builds.iter().find(|one| one.build == build)
}

/// A chance as shots of a hundred, never none and never all.
fn of_100(chance: f64) -> String {
    text::luck::of_100(&hundredths(chance))
}

fn hundredths(chance: f64) -> String {
    format!("{:.0}", (100.0 * chance).round().clamp(1.0, 99.0))
}

/// A gain in chance: `12 more of 100`.
fn more_or_fewer(gain: f64) -> String {
    let size = (100.0 * gain.abs()).round();
    if size < 1.0 {
        return text::luck::none();
    }
    say::more_or_fewer(&format!("{size:.0}"), gain > 0.0)
}
