//! Club or swing, in words: through which number the gap came, whose doing that is, and what was not measured.

use super::delivery::span;
use super::{Belongs, Cause, CauseRequest, Factor, Part, Span, difference};
use crate::flying::Columns;
use crate::landing::Hand;
use crate::measure::MeasureId;
use crate::session::{Order, Session};
use crate::words::{Subject, phrase_for, sentences, short_name, shots};
use serde::Serialize;
use text::cause as say;

/// Sentences about where a gap comes from.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct CauseWords {
    /// The finding in one sentence.
    pub headline: String,
    /// What the swing did that day; what belongs to both.
    pub detail: String,
    /// What could not be attributed, and what measuring it would settle; one sentence each.
    pub unmeasured: Vec<String>,
    /// What the split is good for, and what it does not say.
    pub note: String,
    /// The picture for those who hear it.
    pub alternative: String,
}

fn name_of(factor: Factor) -> String {
    match factor {
        Factor::BallSpeed => say::ball_speed(),
        Factor::LaunchAngle => say::launch_angle(),
        Factor::SpinRate => say::spin(),
        Factor::LaunchDirection => say::direction(),
        Factor::SpinAxis => say::curve(),
        Factor::Rest => say::rest(),
        Factor::ClubSpeed => say::club_speed(),
        Factor::Smash => say::smash(),
    }
}

fn measure_of(factor: Factor) -> Option<&'static str> {
    Some(match factor {
        Factor::BallSpeed => "ball_speed",
        Factor::LaunchAngle => "launch_angle",
        Factor::SpinRate => "spin_rate",
        Factor::LaunchDirection => "launch_direction",
        Factor::SpinAxis => "spin_axis",
        Factor::ClubSpeed => "club_speed",
        Factor::Smash => "smash",
        Factor::Rest => return None,
    })
}

/// One part with its words.
pub(super) fn part(
    session: &Session,
    request: &CauseRequest,
    factor: Factor,
    belongs: Belongs,
    yards: Span,
) -> Part {
    let carry = Subject::of(&"carry".into(), session);
    let worth = if yards.is_clear() {
        say::part_of_carry(&carry.signed(yards.value), &span(&carry, &yards))
    } else {
        say::no_clear_part(&span(&carry, &yards))
    };
    let differed = measure_of(factor).and_then(|id| {
        let change = difference(session, id, request.baseline, request.candidate)?;
        let (id, subject) = (MeasureId::from(id), Subject::of(&id.into(), session));
        let phrase = phrase_for(&id);
        let way = if change.value > 0.0 { &phrase.more } else { &phrase.less };
        Some(text::case::gap(&subject.amount(change.value), way))
    });
    Part {
        factor,
        yards,
        is_sure: false,
        belongs,
        name: name_of(factor),
        words: match differed {
            Some(differed) => say::part_differed(&differed, &worth),
            None => say::part(&worth),
        },
    }
}

pub(super) fn words(request: &CauseRequest, columns: &Columns, cause: &Cause) -> CauseWords {
    let session = &request.session;
    let name = |build: usize| session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
    let speech = Speech {
        session,
        carry: Subject::of(&"carry".into(), session),
        candidate: name(cause.candidate),
        baseline: name(cause.baseline),
        cause,
    };
    CauseWords {
        headline: speech.headline(),
        detail: speech.detail(request.hand),
        unmeasured: speech.unmeasured(columns),
        note: speech.note(),
        alternative: speech.alternative(),
    }
}

struct Speech<'a> {
    session: &'a Session,
    carry: Subject,
    candidate: String,
    baseline: String,
    cause: &'a Cause,
}

impl Speech<'_> {
    fn part(&self, factor: Factor) -> Option<&Part> {
        self.cause.parts.iter().chain(&self.cause.ball_speed).find(|part| part.factor == factor)
    }

    fn headline(&self) -> String {
        let Self { candidate, baseline, cause, .. } = self;
        let gap = self.carry.amount(cause.gap);
        if self.carry.prints_as_zero(cause.gap) {
            return sentences(&[say::no_gap(candidate, baseline), self.against()]);
        }
        let farther = cause.gap > 0.0;
        let Some(main) = cause.main.and_then(|factor| self.part(factor)) else {
            let carried = match self.rest() {
                Some(rest) => {
                    say::carried_by_rest(candidate, &gap, farther, &self.carry.amount(rest.yards.value))
                }
                None => say::carried_by_nothing_clear(candidate, &gap, farther),
            };
            return sentences(&[carried, self.against()]);
        };
        let most = if main.yards.value.abs() > 1.05 * cause.gap.abs() {
            "more"
        } else if main.yards.value.abs() > 0.95 * cause.gap.abs() {
            "all"
        } else {
            "largest"
        };
        let (size, through) = (self.carry.signed(main.yards.value), self.named(main.factor));
        let rest = self.rest().map(|rest| say::lie_in_rest(&self.carry.amount(rest.yards.value)));
        sentences(&[
            say::carried_through(candidate, &gap, farther, most, &size, &through),
            self.against(),
            rest.unwrap_or_default(),
        ])
    }

    /// What the model does not explain, where that is sure and goes the way of the gap.
    fn rest(&self) -> Option<&Part> {
        self.part(Factor::Rest).filter(|rest| rest.is_sure && rest.yards.value * self.cause.gap > 0.0)
    }

    /// `more ball speed`, `a higher launch`: by what differed, not by what it was worth.
    fn named(&self, factor: Factor) -> String {
        let change = measure_of(factor)
            .and_then(|id| difference(self.session, id, self.cause.baseline, self.cause.candidate));
        let up = change.is_some_and(|change| change.value > 0.0);
        match factor {
            Factor::BallSpeed => say::through_ball_speed(up),
            Factor::LaunchAngle => say::through_launch(up),
            Factor::SpinRate => say::through_spin(up),
            Factor::LaunchDirection => say::through_direction(),
            Factor::SpinAxis => say::through_curve(),
            Factor::ClubSpeed => say::through_club_speed(up),
            Factor::Smash => say::through_smash(up),
            Factor::Rest => say::through_rest(),
        }
    }

    /// A clear part that worked the other way.
    fn against(&self) -> String {
        let other = self.cause.parts.iter().find(|part| {
            part.factor != Factor::Rest && part.is_sure && part.yards.value * self.cause.gap < 0.0
        });
        other.map_or_else(String::new, |part| {
            let (value, how) = (self.carry.signed(part.yards.value), self.named(part.factor));
            say::against(&how, &value)
        })
    }

    fn detail(&self, hand: Option<Hand>) -> String {
        let clear = |belongs: Belongs| -> Vec<String> {
            let own = self.cause.swing.iter().filter(|moved| moved.belongs == belongs && moved.is_clear);
            own.map(|moved| moved.words.clone()).collect()
        };
        let swing = clear(Belongs::Swing);
        let measured_swing = self.cause.swing.iter().any(|moved| moved.belongs == Belongs::Swing);
        let that_day = match (swing.is_empty(), measured_swing) {
            (false, _) => {
                let path = self.cause.swing.iter().find(|m| m.measure.0 == "club_path" && m.is_clear);
                let shape = path.zip(hand).map_or_else(String::new, |(path, hand)| {
                    say::path((path.change.value > 0.0) == (hand == Hand::Right))
                });
                sentences(&[say::swing_differed(&swing.join(" ")), shape])
            }
            (true, true) => say::swing_did_not_differ(),
            (true, false) => say::swing_not_measured(),
        };
        let both = clear(Belongs::Both);
        let both = if both.is_empty() { String::new() } else { say::belongs_to_both(&both.join(" ")) };
        let parts = self.part(Factor::ClubSpeed).zip(self.part(Factor::Smash));
        let club = parts.map_or_else(String::new, |(club, smash)| {
            say::within_ball_speed(
                &self.carry.signed(club.yards.value),
                &self.carry.signed(smash.yards.value),
            )
        });
        sentences(&[club, that_day, both])
    }

    fn unmeasured(&self, columns: &Columns) -> Vec<String> {
        let has = |id: &str| self.session.measure_index(&MeasureId::from(id)).is_some();
        let lacks = [
            (!columns.has(3) || !columns.has(4), say::no_direction()),
            (!columns.has_club_speed(), say::no_club_speed()),
            (!(has("spin_loft") || has("dynamic_loft") && has("attack_angle")), say::no_loft()),
            (!has("strike_height"), say::no_strike()),
        ];
        lacks.into_iter().filter(|(missing, _)| *missing).map(|(_, said)| said).collect()
    }

    fn note(&self) -> String {
        let in_turn = self.session.order == Order::Interleaved;
        let skipped = self.cause.not_flown;
        sentences(&[
            say::note(&shots(self.cause.candidate_shots), &shots(self.cause.baseline_shots)),
            if skipped > 0 { say::not_flown(&shots(skipped)) } else { String::new() },
            if in_turn { String::new() } else { say::not_in_turn() },
            say::needs_turns(),
        ])
    }

    fn alternative(&self) -> String {
        let one = |part: &Part| {
            say::bar(&part.name, &self.carry.signed(part.yards.value), &span(&self.carry, &part.yards))
        };
        let parts: Vec<String> = self.cause.parts.iter().map(one).collect();
        let deeper: Vec<String> = self.cause.ball_speed.iter().map(one).collect();
        let bars = say::bars(&self.carry.signed(self.cause.gap), &self.candidate, &parts.join(" "));
        sentences(&[
            bars,
            if deeper.is_empty() { String::new() } else { say::bars_within(&deeper.join(" ")) },
        ])
    }
}
