//! Club or swing, in words: through which number the gap came, whose doing that is, and what was not measured.

use super::part::{Speech, name_of, span};
use super::told::Moved;
use crate::format::shots;
use crate::hand::Hand;
use crate::words::sentences;
use judging::cause::{Belongs, Covers, Factor, PartFacts, Unmeasured};
use serde::Serialize;
use session::Order;
use session::known::Known;
use text::cause as say;

/// Sentences about where a gap comes from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct CauseWords {
    /// The finding in one sentence.
    pub headline: String,
    /// What the swing did that day; what belongs to both.
    pub detail: String,
    /// What to take to a coach, by the number through which the gap came; empty where none is named.
    pub next: String,
    /// What could not be attributed, and what measuring it would settle; one sentence each.
    pub unmeasured: Vec<String>,
    /// What the split is good for, and what it does not say.
    pub note: String,
    /// The picture for those who hear it.
    pub alternative: String,
}

pub(super) fn words(speech: &Speech<'_>, moved: &[Moved], hand: Option<Hand>) -> CauseWords {
    CauseWords {
        headline: headline(speech),
        detail: sentences(&[within_ball_speed(speech), that_day(speech, moved, hand), both(speech, moved)]),
        next: next(speech),
        unmeasured: unmeasured(speech),
        note: note(speech),
        alternative: alternative(speech),
    }
}

fn headline(speech: &Speech<'_>) -> String {
    let Speech { voice, candidate, baseline, facts, carry, .. } = speech;
    let gap = facts.split.gap;
    let hint = if facts.turns_too_long { say::hint_long_turns(voice) } else { String::new() };
    let against = facts.against().map(|part| {
        let (size, how) = (carry.signed(part.yards.value), named(speech, part));
        say::against(voice, &how, &size)
    });
    let against = against.unwrap_or_default();
    if carry.prints_as_zero(gap) {
        return sentences(&[say::no_gap(voice, candidate, baseline), against]);
    }
    let (farther, size) = (gap > 0.0, carry.amount(gap));
    let rest = facts.sure_rest().map(|rest| carry.amount(rest.yards.value));
    let Some((main, covers)) = facts.main() else {
        let carried = match rest {
            Some(rest) => say::carried_by_rest(voice, candidate, &size, farther, &rest),
            None => say::carried_by_nothing_clear(voice, candidate, &size, farther),
        };
        return sentences(&[carried, against]);
    };
    let most = match covers {
        // More by so little that both print alike.
        Covers::More if carry.amount(main.yards.value) == size => say::Most::All,
        Covers::More => say::Most::More,
        Covers::All => say::Most::All,
        Covers::Some => say::Most::Largest,
    };
    let (part, through) = (carry.signed(main.yards.value), named(speech, main));
    let carried = say::carried_through(voice, candidate, &size, farther, most, &part, &through);
    let rest = rest.map(|rest| say::lie_in_rest(voice, &rest));
    sentences(&[carried, against, rest.unwrap_or_default(), hint])
}

/// `more ball speed`, `a higher launch`.
fn named(speech: &Speech<'_>, part: &PartFacts) -> String {
    let voice = speech.voice;
    // More speed always carries farther; what launch and spin are worth does not say which way they differed.
    let up = part.yards.value > 0.0;
    let differed = part.differed.map(|change| change.value > 0.0);
    match part.factor {
        Factor::BallSpeed => say::through_ball_speed(voice, up),
        Factor::LaunchAngle => say::through_launch(
            voice,
            match differed {
                Some(true) => say::Launched::Higher,
                Some(false) => say::Launched::Lower,
                None => say::Launched::Somehow,
            },
        ),
        Factor::SpinRate => say::through_spin(
            voice,
            match differed {
                Some(true) => say::Spun::More,
                Some(false) => say::Spun::Less,
                None => say::Spun::Somehow,
            },
        ),
        Factor::LaunchDirection => say::through_direction(voice),
        Factor::SpinAxis => say::through_curve(voice),
        Factor::ClubSpeed => say::through_club_speed(voice, up),
        Factor::Smash => say::through_smash(voice, up),
        Factor::Rest => say::through_rest(voice),
    }
}

/// The step after the finding; never a club to buy.
fn next(speech: &Speech<'_>) -> String {
    let Speech { voice, facts, .. } = speech;
    let Some((main, _)) = facts.main() else { return String::new() };
    match main.factor {
        Factor::BallSpeed => through_speed(speech),
        Factor::ClubSpeed => say::next_club_speed(voice),
        Factor::Smash => say::next_smash(voice),
        Factor::LaunchAngle | Factor::SpinRate => say::next_launch_or_spin(voice),
        Factor::LaunchDirection | Factor::SpinAxis => say::next_start_or_curve(voice),
        Factor::Rest => String::new(),
    }
}

/// Whether the club was swung faster or struck better, where club speed says it.
fn through_speed(Speech { voice, facts, .. }: &Speech<'_>) -> String {
    let [club, smash] = [Factor::ClubSpeed, Factor::Smash].map(|factor| {
        facts.part(factor).filter(|part| part.yards.is_clear()).map_or(0.0, |part| part.yards.value.abs())
    });
    if club > smash {
        say::next_club_speed(voice)
    } else if smash > 0.0 {
        say::next_smash(voice)
    } else {
        say::next_ball_speed(voice)
    }
}

fn within_ball_speed(speech: &Speech<'_>) -> String {
    let Speech { voice, facts, carry, .. } = speech;
    let parts = facts.part(Factor::ClubSpeed).zip(facts.part(Factor::Smash));
    parts.map_or_else(String::new, |(club, smash)| {
        say::within_ball_speed(
            voice,
            &carry.signed(club.yards.value),
            club.is_sure,
            &carry.signed(smash.yards.value),
            smash.is_sure,
        )
    })
}

/// What the swing did that day.
fn that_day(speech: &Speech<'_>, moved: &[Moved], hand: Option<Hand>) -> String {
    let voice = speech.voice;
    let swing = clear(moved, Belongs::Swing);
    if !swing.is_empty() {
        let path = moved.iter().find(|m| m.facts.measure == Known::ClubPath && m.facts.is_clear);
        let shape = path
            .zip(hand)
            .map(|(path, hand)| say::path(voice, (path.facts.change.value > 0.0) == (hand == Hand::Right)));
        return sentences(&[say::swing_differed(voice, &swing), shape.unwrap_or_default()]);
    }
    if moved.iter().any(|moved| moved.facts.belongs == Belongs::Swing) {
        say::swing_did_not_differ(voice)
    } else {
        say::swing_not_measured(voice)
    }
}

fn both(speech: &Speech<'_>, moved: &[Moved]) -> String {
    let both = clear(moved, Belongs::Both);
    if both.is_empty() { both } else { say::belongs_to_both(speech.voice, &both) }
}

/// Whatever clearly moved and belongs there.
fn clear(moved: &[Moved], belongs: Belongs) -> String {
    let clear = moved.iter().filter(|moved| moved.facts.belongs == belongs && moved.facts.is_clear);
    clear.map(|moved| moved.words.as_str()).collect::<Vec<_>>().join(" ")
}

fn unmeasured(speech: &Speech<'_>) -> Vec<String> {
    let voice = speech.voice;
    let said = |what: &Unmeasured| match what {
        Unmeasured::Direction => say::no_direction(voice),
        Unmeasured::ClubSpeed => say::no_club_speed(voice),
        Unmeasured::Loft => say::no_loft(voice),
        Unmeasured::Strike => say::no_strike(voice),
    };
    speech.facts.unmeasured.iter().map(said).collect()
}

fn note(speech: &Speech<'_>) -> String {
    let (voice, split) = (speech.voice, &speech.facts.split);
    let order = speech.order;
    let not_flown = split.not_flown;
    sentences(&[
        say::note(voice, &shots(voice, split.candidate_shots), &shots(voice, split.baseline_shots)),
        if not_flown > 0 { say::not_flown(voice, &shots(voice, not_flown)) } else { String::new() },
        match order {
            Order::Interleaved if speech.facts.turns_too_long => {
                sentences(&[say::long_turns(voice), say::through_which(voice)])
            }
            Order::Interleaved => say::through_which(voice),
            Order::Blocked => sentences(&[say::not_in_turn(voice), say::needs_turns(voice)]),
            Order::Unknown => sentences(&[say::order_not_known(voice), say::needs_turns(voice)]),
        },
    ])
}

fn alternative(speech: &Speech<'_>) -> String {
    let Speech { voice, candidate, facts, carry, .. } = speech;
    let one = |part: &PartFacts| {
        let name = name_of(part.factor, voice);
        say::bar(voice, &name, &carry.signed(part.yards.value), &span(carry, &part.yards))
    };
    let all = |parts: &[PartFacts]| parts.iter().map(one).collect::<Vec<_>>().join(" ");
    let bars = say::bars(voice, &carry.signed(facts.split.gap), candidate, &all(&facts.parts));
    if facts.ball_speed.is_empty() {
        return bars;
    }
    sentences(&[bars, say::bars_within(voice, &all(&facts.ball_speed))])
}
