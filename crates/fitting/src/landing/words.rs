//! Where they land, in words: which miss is the golfer's, what aiming would do, what the club does.
//!
//! What is true was decided by the intervals; nothing here compares more than their ends with zero.

use super::{BuildLanding, Hand, HitChance, Landing, LandingPair, LandingRequest};
use crate::session::{Order, Session};
use crate::words::{Subject, capital, chance, sentences, short_name, shots};
use serde::Serialize;

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
        note: speech.note(),
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
        format!(
            "a {} fairway",
            Subject::of(&"offline".into(), self.session).chosen(self.fairway).replace(' ', "-")
        )
    }

    /// `20 yd right`, with the golfer's own name for that side when the hand is known.
    fn side(&self, x: f64) -> String {
        let subject = Subject::of(&"offline".into(), self.session);
        if subject.prints_as_zero(x) {
            return "in the middle".to_owned();
        }
        let right = x > 0.0;
        let way = if right { "right" } else { "left" };
        let named = match self.hand {
            None => "",
            Some(hand) if right == (hand == Hand::Right) => ", the fade side",
            Some(_) => ", the draw side",
        };
        format!("{} {way}{named}", subject.amount(x))
    }

    fn of_build(&self, build: &BuildLanding) -> BuildWords {
        let miss = format!(
            "{} on average, {} from the tee.",
            capital(&self.side(build.center.offline)),
            self.yards(build.center.carry)
        );
        let landed = if self.aim.abs() > 0.0 { "would have landed" } else { "landed" };
        let counted = format!("{} of {} {landed} on it.", build.counted, shots(build.n));
        let chance = build.at_aim.map_or_else(
            || format!("{counted} Too few shots for a chance."),
            |chance| format!("About {} ({}). {counted}", of_100(chance.value), self.reach(&chance)),
        );
        let best = build.best.map_or_else(String::new, |best| {
            // The chance at the best aim is what is left of it in shots that did not choose the aim.
            if build.as_aimed.is_some_and(|as_aimed| as_aimed.value >= best.chance.value) {
                return "No other aim did better than that of the day.".to_owned();
            }
            let subject = Subject::of(&"offline".into(), self.session);
            let aim = if subject.prints_as_zero(best.aim) {
                "at the middle".to_owned()
            } else {
                plain_side(self, best.aim)
            };
            format!("Best aimed {aim}: about {} ({}).", of_100(best.chance.value), self.reach(&best.chance))
        });
        BuildWords { miss, chance, best }
    }

    fn reach(&self, chance: &HitChance) -> String {
        format!("{} to {}", hundredths(chance.low), hundredths(chance.high))
    }

    fn headline(&self, landing: &Landing) -> String {
        let base = landing.pair.and_then(|pair| build_of(landing, pair.baseline).map(|base| (pair, base)));
        let Some((pair, base)) = base else { return self.alone(landing) };
        let (own, other) = (self.name(pair.baseline), self.name(pair.candidate));
        if pair.aim_over_club.low > 0.0 && base.best.is_some_and(|best| best.gain.low > 0.0) {
            return format!(
                "You miss {} on average with {own}: aiming off would fix more than the club does.",
                self.side(base.center.offline)
            );
        }
        let strip = self.strip();
        if pair.gain_of_club.low > 0.0 || pair.gain_of_club.high < 0.0 {
            let (better, worse) = if pair.gain_of_club.low > 0.0 { (other, own) } else { (own, other) };
            return format!("As aimed, {better} hits {strip} more often than {worse}.");
        }
        format!("These shots do not settle which of the two hits {strip} more often.")
    }

    /// With nothing to hold a build against.
    fn alone(&self, landing: &Landing) -> String {
        let most = landing.builds.iter().filter(|build| build.as_aimed.is_some()).max_by_key(|build| build.n);
        match most.and_then(|build| build.as_aimed.map(|chance| (build, chance))) {
            Some((build, chance)) => format!(
                "With {} about {} hit {}.",
                self.name(build.build),
                of_100(chance.value),
                self.strip()
            ),
            None => "Too few shots to say how often a fairway would be hit.".to_owned(),
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
        let aimed = if best.gain.low > 0.0 {
            format!(
                " Aimed {}, {own} would hit about {}.",
                plain_side(self, best.aim),
                of_100(best.chance.value)
            )
        } else {
            String::new()
        };
        format!(
            "As aimed: about {} with {own}, {} with {other}; the true gap may lie from {} to {}.{aimed}",
            of_100(of_base.value),
            of_100(of_cand.value),
            more_or_fewer(pair.gain_of_club.low),
            more_or_fewer(pair.gain_of_club.high),
        )
    }

    fn centers(&self, pair: &LandingPair) -> String {
        let long = if pair.carry > 0.0 { "longer" } else { "shorter" };
        let apart = format!(
            "The middle of {} lies {} {long} and {} of that of {}.",
            self.name(pair.candidate),
            self.yards(pair.carry),
            plain_side(self, pair.offline),
            self.name(pair.baseline)
        );
        let luck = pair.chance_if_same.map_or_else(String::new, |p| {
            format!("Two identical clubs would show middles that far apart in {}.", chance(p))
        });
        let order = match self.session.order {
            Order::Blocked => {
                "One club was hit after the other, so warming up or tiring may have moved a middle."
            }
            _ => "",
        };
        sentences(&[apart, luck, order.to_owned()])
    }

    fn aimed(&self) -> String {
        if self.aim.abs() > 0.0 {
            format!("Aimed {} of where it was aimed.", plain_side(self, self.aim))
        } else {
            "Aimed as on the day.".to_owned()
        }
    }

    fn note(&self) -> String {
        "Where balls land, not where they roll to. A chance is that of shots that scatter like these around the same \
         middle; its range is what other sessions of this size could have shown. The best aim supposes that the middle \
         of your shots stays where it is."
            .to_owned()
    }

    fn alternative(&self, landing: &Landing) -> String {
        let each = landing.builds.iter().map(|build| {
            let oval = build.ovals.last().map_or_else(String::new, |oval| {
                format!(
                    " Nine in ten lie in an oval {} by {}.",
                    self.yards(2.0 * oval.major),
                    self.yards(2.0 * oval.minor)
                )
            });
            format!("{}: {} {}{oval}", self.name(build.build), build.words.miss, build.words.chance)
        });
        let all: Vec<String> = std::iter::once(format!(
            "The landings from above, the target straight ahead, with {}. {}",
            self.strip(),
            self.aimed()
        ))
        .chain(each)
        .collect();
        all.join(" ")
    }
}

fn build_of(landing: &Landing, build: usize) -> Option<&BuildLanding> {
    landing.builds.iter().find(|one| one.build == build)
}

/// `20 yd left`, without naming the shape.
fn plain_side(speech: &Speech, x: f64) -> String {
    format!("{} {}", speech.yards(x), if x < 0.0 { "left" } else { "right" })
}

/// A chance as shots of a hundred, never none and never all.
fn of_100(chance: f64) -> String {
    format!("{} of 100", hundredths(chance))
}

fn hundredths(chance: f64) -> String {
    format!("{:.0}", (100.0 * chance).round().clamp(1.0, 99.0))
}

/// A gain in chance: `12 more of 100`.
fn more_or_fewer(gain: f64) -> String {
    let size = (100.0 * gain.abs()).round();
    if size < 1.0 {
        return "none".to_owned();
    }
    format!("{size:.0} {} of 100", if gain > 0.0 { "more" } else { "fewer" })
}
