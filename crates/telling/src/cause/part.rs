//! One part of a gap in words, one number of the delivery, one source of spin.

use super::told::Part;
use crate::format::Subject;
use crate::phrases::phrase_for;
use judging::cause::{CauseFacts, Factor, MovedFacts, PartFacts, Span, SpinSourceFacts};
use session::known::Known;
use session::measure::MeasureId;
use session::names::short_name;
use session::{Order, Session};
use text::Voice;
use text::names::title;
use text::{case, cause as say};

/// Whoever speaks of a gap, with the names that its sentences use.
pub(super) struct Speech<'a> {
    pub(super) voice: &'a Voice,
    pub(super) session: &'a Session,
    pub(super) facts: &'a CauseFacts,
    pub(super) carry: Subject<'a>,
    /// Shortened.
    pub(super) candidate: String,
    /// Shortened.
    pub(super) baseline: String,
    /// Of these two.
    pub(super) order: Order,
}

impl<'a> Speech<'a> {
    pub(super) fn of(session: &'a Session, facts: &'a CauseFacts, voice: &'a Voice) -> Self {
        let name = |build: usize| session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
        Self {
            voice,
            session,
            carry: Subject::of(&Known::Carry.into(), session, voice),
            candidate: name(facts.split.candidate),
            baseline: name(facts.split.baseline),
            order: order_of(session, [facts.split.baseline, facts.split.candidate]),
            facts,
        }
    }

    pub(super) fn part(&self, part: &PartFacts) -> Part {
        let (voice, yards) = (self.voice, &part.yards);
        let worth = if yards.is_clear() {
            say::part_of_carry(voice, &self.carry.signed(yards.value), &span(&self.carry, yards))
        } else {
            say::no_clear_part(voice, &span(&self.carry, yards))
        };
        let differed = part.factor.measure().zip(part.differed).map(|(known, change)| {
            let (size, way) = self.size_and_way(&known.into(), &change);
            case::gap(voice, &size, &way)
        });
        Part {
            name: name_of(part.factor, voice),
            words: match differed {
                Some(differed) => say::part_differed(voice, &differed, &worth),
                None => say::part(voice, &worth),
            },
            facts: *part,
        }
    }

    pub(super) fn moved(&self, moved: &MovedFacts) -> String {
        let subject = self.subject(&moved.measure);
        let name = moved.measure.known().map(|known| title(known, self.voice)).unwrap_or_default();
        let between = span(&subject, &moved.change);
        if !moved.is_clear {
            return say::not_moved(self.voice, &name, &between);
        }
        let (size, way) = self.size_and_way(&moved.measure, &moved.change);
        say::moved(self.voice, &name, &size, &way, &between)
    }

    pub(super) fn source(&self, source: &SpinSourceFacts) -> String {
        let subject = self.subject(&source.of);
        let (size, way) = self.size_and_way(&source.from, &source.change);
        say::worth(
            self.voice,
            &size,
            &way,
            &self.subject(&source.from).name,
            &subject.signed(source.effect.value),
            source.effect.is_clear(),
            &span(&subject, &source.effect),
        )
    }

    fn subject(&self, measure: &MeasureId) -> Subject<'a> {
        Subject::of(measure, self.session, self.voice)
    }

    /// `200 rpm`, `less`.
    fn size_and_way(&self, measure: &MeasureId, change: &Span) -> (String, String) {
        let phrase = phrase_for(measure, self.voice);
        let way = if change.value > 0.0 { phrase.more } else { phrase.less };
        (self.subject(measure).amount(change.value), way)
    }
}

/// An interval by its ends, each with its sign.
pub(super) fn span(subject: &Subject<'_>, sized: &Span) -> String {
    say::from_to(subject.voice, &subject.end(sized.low, &[0.0]), &subject.end(sized.high, &[0.0]))
}

pub(super) fn name_of(factor: Factor, voice: &Voice) -> String {
    match factor {
        Factor::BallSpeed => say::ball_speed(voice),
        Factor::LaunchAngle => say::launch_angle(voice),
        Factor::SpinRate => say::spin(voice),
        Factor::LaunchDirection => say::direction(voice),
        Factor::SpinAxis => say::curve(voice),
        Factor::Rest => say::rest(voice),
        Factor::ClubSpeed => say::club_speed(voice),
        Factor::Smash => say::smash(voice),
    }
}

/// In turn over all clubs, but not for these two, is one after the other for them.
fn order_of(session: &Session, [one, other]: [usize; 2]) -> Order {
    let rounds = |club: usize| session.shots.iter().filter(move |s| s.build == club).filter_map(|s| s.round);
    match session.order {
        Order::Unknown => Order::Unknown,
        _ if rounds(one).any(|round| rounds(other).any(|there| there == round)) => Order::Interleaved,
        _ => Order::Blocked,
    }
}
