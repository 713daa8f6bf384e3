//! Club or swing, in words: through which number the gap came, whose doing that is, and what was not measured.

use super::delivery::span;
use super::{Belongs, Cause, CauseRequest, Factor, Part, Span, difference};
use crate::flying::Columns;
use crate::landing::Hand;
use crate::measure::MeasureId;
use crate::session::{Order, Session};
use crate::words::{Subject, phrase_for, sentences, short_name, shots};
use serde::Serialize;

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

fn name_of(factor: Factor) -> &'static str {
    match factor {
        Factor::BallSpeed => "Ball speed",
        Factor::LaunchAngle => "Launch angle",
        Factor::SpinRate => "Spin",
        Factor::LaunchDirection => "Direction",
        Factor::SpinAxis => "Curve",
        Factor::Rest => "Not explained",
        Factor::ClubSpeed => "Club speed",
        Factor::Smash => "Smash factor",
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
        format!("{} of carry ({})", carry.signed(yards.value), span(&carry, &yards))
    } else {
        format!("no clear part of the gap ({})", span(&carry, &yards))
    };
    let differed = measure_of(factor).and_then(|id| {
        let change = difference(session, id, request.baseline, request.candidate)?;
        let (id, subject) = (MeasureId::from(id), Subject::of(&id.into(), session));
        let phrase = phrase_for(&id);
        let way = if change.value > 0.0 { phrase.more } else { phrase.less };
        Some(format!("{} {way}: ", subject.amount(change.value)))
    });
    let differed = differed.unwrap_or_default();
    Part {
        factor,
        yards,
        is_sure: false,
        belongs,
        name: name_of(factor).to_owned(),
        words: format!("{differed}{worth}."),
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
            return format!(
                "{candidate} and {baseline} carried the same, so there is no gap to explain.{}",
                self.against()
            );
        }
        let way = if cause.gap > 0.0 { "farther" } else { "less far" };
        let Some(main) = cause.main.and_then(|factor| self.part(factor)) else {
            let how = self.rest().map_or_else(
                || "nothing in how the ball was launched clearly accounts for it".to_owned(),
                |rest| {
                    let size = self.carry.amount(rest.yards.value);
                    format!("about {size} of that lie in ball, wind, luck or how carry was measured, not in the launch")
                },
            );
            return format!("{candidate} carried {gap} {way} in these shots: {how}.{}", self.against());
        };
        let most = if main.yards.value.abs() > 1.05 * cause.gap.abs() {
            "more than all of it"
        } else if main.yards.value.abs() > 0.95 * cause.gap.abs() {
            "all of it"
        } else {
            "the largest clear part"
        };
        format!(
            "{candidate} carried {gap} {way} in these shots: {most}, {}, came through {}.{}",
            self.carry.signed(main.yards.value),
            self.named(main.factor),
            self.aside()
        )
    }

    /// What the model does not explain, where that is sure and goes the way of the gap.
    fn rest(&self) -> Option<&Part> {
        self.part(Factor::Rest).filter(|rest| rest.is_sure && rest.yards.value * self.cause.gap > 0.0)
    }

    fn aside(&self) -> String {
        let rest = self.rest().map_or_else(String::new, |rest| {
            format!(
                " About {} lie in ball, wind, luck or how carry was measured, not in the launch.",
                self.carry.amount(rest.yards.value)
            )
        });
        format!("{}{rest}", self.against())
    }

    /// `more ball speed`, `a higher launch`: by what differed, not by what it was worth.
    fn named(&self, factor: Factor) -> String {
        let change = measure_of(factor)
            .and_then(|id| difference(self.session, id, self.cause.baseline, self.cause.candidate));
        let up = change.is_some_and(|change| change.value > 0.0);
        match factor {
            Factor::BallSpeed if up => "more ball speed",
            Factor::BallSpeed => "less ball speed",
            Factor::LaunchAngle if up => "a higher launch",
            Factor::LaunchAngle => "a lower launch",
            Factor::SpinRate if up => "more spin",
            Factor::SpinRate => "less spin",
            Factor::LaunchDirection => "where the ball started",
            Factor::SpinAxis => "how the ball curved",
            Factor::ClubSpeed if up => "more club speed",
            Factor::ClubSpeed => "less club speed",
            Factor::Smash if up => "a better smash factor",
            Factor::Smash => "a worse smash factor",
            Factor::Rest => "what the flight model does not explain",
        }
        .to_owned()
    }

    /// A clear part that worked the other way.
    fn against(&self) -> String {
        let other = self.cause.parts.iter().find(|part| {
            part.factor != Factor::Rest && part.is_sure && part.yards.value * self.cause.gap < 0.0
        });
        other.map_or_else(String::new, |part| {
            let (value, how) = (self.carry.signed(part.yards.value), self.named(part.factor));
            format!(" Against it worked {how}: {value}.")
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
                    let outward = (path.change.value > 0.0) == (hand == Hand::Right);
                    format!(
                        " The path went more {}.",
                        if outward { "from in to out" } else { "from out to in" }
                    )
                });
                format!("The swing that day differed: {}{shape}", swing.join(" "))
            }
            (true, true) => {
                "Nothing that was measured of the swing clearly differed between the two.".to_owned()
            }
            (true, false) => "Nothing was measured of the swing.".to_owned(),
        };
        let both = clear(Belongs::Both);
        let both = if both.is_empty() {
            String::new()
        } else {
            format!("To club and swing together belongs: {}", both.join(" "))
        };
        let club = self.part(Factor::ClubSpeed).zip(self.part(Factor::Smash)).map_or_else(String::new, |(club, smash)| {
            format!(
                "Of the part of ball speed, {} is how fast the club was swung and {} how much of that reached the ball.",
                self.carry.signed(club.yards.value),
                self.carry.signed(smash.yards.value)
            )
        });
        sentences(&[club, that_day, both])
    }

    fn unmeasured(&self, columns: &Columns) -> Vec<String> {
        let has = |id: &str| self.session.measure_index(&MeasureId::from(id)).is_some();
        let mut said = Vec::new();
        let mut say = |missing: bool, text: &str| {
            if missing {
                said.push(text.to_owned());
            }
        };
        say(
            !columns.has(3) || !columns.has(4),
            "Launch direction or spin axis was not measured: what starting or curving off line cost is part of what is not explained.",
        );
        say(
            !columns.has_club_speed(),
            "Club speed was not measured: it would tell whether ball speed came from a faster swing or a better strike.",
        );
        say(
            !(has("spin_loft") || has("dynamic_loft") && has("attack_angle")),
            "Loft and attack angle at impact were not measured: with both, a change of spin can be held against how the club arrived.",
        );
        say(
            !has("strike_height"),
            "Where on the face the ball was struck was not measured. With a driver 5 mm higher is about 700 rpm less spin, so no difference in spin can be put down to the club without it.",
        );
        said
    }

    fn note(&self) -> String {
        let order = if self.session.order == Order::Interleaved {
            ""
        } else {
            "The clubs were not hit in turn, so warming up or tiring is in these parts too."
        };
        let skipped = if self.cause.not_flown > 0 {
            format!(
                "{} without all these numbers, or that did not fly, are not in it.",
                shots(self.cause.not_flown)
            )
        } else {
            String::new()
        };
        sentences(&[
            format!(
                "Split over a model of the flight, shot against shot of the same rank, {} and {}; the model is good to about 3 % of carry, and to less than that for a difference.",
                shots(self.cause.candidate_shots),
                shots(self.cause.baseline_shots)
            ),
            skipped,
            order.to_owned(),
            "It says through which number the gap came, not that the club made that number: that needs the clubs hit in turn.".to_owned(),
        ])
    }

    fn alternative(&self) -> String {
        let one = |part: &Part| {
            format!(
                "{}: {}, from {}.",
                part.name,
                self.carry.signed(part.yards.value),
                span(&self.carry, &part.yards)
            )
        };
        let parts: Vec<String> = self.cause.parts.iter().map(one).collect();
        let deeper: Vec<String> = self.cause.ball_speed.iter().map(one).collect();
        let deeper = if deeper.is_empty() {
            String::new()
        } else {
            format!(" Within ball speed: {}", deeper.join(" "))
        };
        format!(
            "Bars from left, shorter, to right, longer, that add up to {} of carry with {}. {}{deeper}",
            self.carry.signed(self.cause.gap),
            self.candidate,
            parts.join(" ")
        )
    }
}
