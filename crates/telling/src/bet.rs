//! What to bet, in words: chances as ranges in tens, the gap as it is most likely, and why nothing is bet. It speaks of no
//! decision.

use crate::case::Case;
use crate::check::{self, CheckRequest};
use crate::format::{count_of, shots};
use crate::words::sentences;
use judging::bet::{self, BetFacts, BetRestsOn, ChanceRange, NoBet, Tens};
use judging::facts::HowHit;
use judging::verdict::Direction;
use judging::{Judged, Judgment};
use serde::Serialize;
use session::refusal::Refusal;
use text::Voice;
use text::bet as say;
use text::case;

/// What to bet, told.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Bet {
    /// The figures; null where nothing is bet.
    pub facts: Option<BetFacts>,
    /// Why nothing is bet; null where something is.
    pub why: Option<NoBet>,
    /// Sentences.
    pub words: BetWords,
}

/// Sentences of a bet; empty where there is nothing to say.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct BetWords {
    /// The one line that stands below a verdict.
    pub line: String,
    /// Beside its dots: the chance of any difference.
    pub at_all: String,
    /// Beside its dots: the chance of one that matters.
    pub by_margin: String,
    /// Beside its dots: one shot against one shot.
    pub pairs: String,
    /// The gap as the shots show it, and as it is most likely.
    pub gap: String,
    /// What is taken for usual.
    pub usual: String,
    /// What else belongs to it, and why nothing is bet.
    pub note: String,
}

/// What to bet on the candidate that the answer speaks of.
///
/// # Errors
/// A [`Refusal`] as [`crate::check::check`] gives. Where nothing is bet that is no error: the words say why.
pub fn bet(request: &CheckRequest, voice: &Voice) -> Result<Bet, Refusal> {
    check::of_the_measure(request, voice, of_judged)
}

/// What to bet on what was judged.
#[must_use]
pub(crate) fn of_judged(judged: &Judged<'_>, voice: &Voice) -> Bet {
    told(judged, bet::bet(judged), voice)
}

/// What was found to bet on what was judged, told.
#[must_use]
pub(crate) fn told(judged: &Judged<'_>, found: Result<BetFacts, NoBet>, voice: &Voice) -> Bet {
    let session = judged.settled.session;
    match (found, judged.headline()) {
        (Ok(facts), Some(headline)) => {
            let words = words(&facts, &Case::of(session, headline, voice));
            Bet { facts: Some(facts), why: None, words }
        }
        (bet, headline) => {
            let why = bet.err().unwrap_or(NoBet::NothingCompared);
            let note = match headline {
                Some(headline) if why == NoBet::OrderUnknown => {
                    let measure = Case::of(session, headline, voice).subject.the();
                    say::no_order(voice, order(headline), &measure)
                }
                _ => nothing_bet(why, voice),
            };
            Bet { facts: None, why: Some(why), words: BetWords { note, ..BetWords::default() } }
        }
    }
}

fn words(bet: &BetFacts, case: &Case<'_>) -> BetWords {
    let voice = case.voice;
    let (does, at_all) = (case.does(bet.toward), chance(voice, bet.at_all.of_ten));
    let by_margin = bet.by_margin.map(|ChanceRange { of_ten, .. }| chance(voice, of_ten));
    let is_none = case.subject.prints_as_zero(bet.gap.value);
    let most_likely = say::most_likely(voice, is_none, &gap(case, bet.gap.value));
    let line = match &by_margin {
        Some(of_margin) => {
            say::line_with_margin(voice, &does, &at_all, &case.margin(), of_margin, &most_likely)
        }
        None => say::line(voice, &does, &at_all, &most_likely),
    };
    let usual = bet.usual_for;
    // A choice has the digits it was made with, a share of the scatter those of the measure.
    let is_chosen = bet.measure.usual().is_some();
    let size = |usual: f64| if is_chosen { case.subject.chosen(usual) } else { case.subject.amount(usual) };
    let over = match bet.differs {
        Some(_) => say::over_what_was_said(voice),
        None => say::over_all_three(voice),
    };
    let range = &bet.gap.interval;
    BetWords {
        line,
        at_all: say::at_all(voice, &does, &at_all),
        by_margin: by_margin
            .map_or_else(String::new, |chance| say::by_margin(voice, &case.margin(), &chance)),
        pairs: say::pairs(
            voice,
            &does,
            &chance(voice, Tens { low: bet.pairs.of_ten, high: bet.pairs.of_ten }),
            &chance(voice, bet.pairs.range_of_ten),
        ),
        gap: if case.subject.prints_as_zero(bet.gap.shown) {
            say::no_gap(voice, &case.end(range.low), &case.end(range.high))
        } else {
            say::gap(
                voice,
                &gap(case, bet.gap.shown),
                is_none,
                &gap(case, bet.gap.value),
                &case.end(range.low),
                &case.end(range.high),
            )
        },
        usual: sentences(&[
            say::usual(
                voice,
                &case.subject.the(),
                &size(usual.shaft),
                &size(usual.head),
                &size(usual.old_club),
            ),
            over,
        ]),
        note: sentences(&[
            bet.rests_on.map_or_else(String::new, |rests_on| of_fewer(&rests_on, case)),
            if bet.drift_points_there { say::drift_points_there(voice, &does) } else { String::new() },
            if bet.order_in_it {
                say::order_in_it(voice, order(case.judgment), &case.subject.name)
            } else {
                String::new()
            },
            say::decides_nothing(voice),
        ]),
    }
}

/// What the chances rest on, where that is not every shot hit.
fn of_fewer(rests_on: &BetRestsOn, case: &Case<'_>) -> String {
    let (voice, n) = (case.voice, rests_on.n);
    let laps = rests_on.laps.unwrap_or(0) as usize;
    let of_candidate = shots(voice, n.candidate);
    say::rests_on(voice, laps, &of_candidate, &case.candidate, &count_of(voice, n.baseline), &case.baseline)
}

/// `6 yd more`, `no difference`.
fn gap(case: &Case<'_>, size: f64) -> String {
    if case.subject.prints_as_zero(size) {
        return case::no_difference(case.voice);
    }
    let direction = if size > 0.0 { Direction::Higher } else { Direction::Lower };
    case::gap(case.voice, &case.subject.amount(size), case.more(direction))
}

/// `6 to 8 of 10`; what rounds to none or to all is neither.
pub(crate) fn chance(voice: &Voice, Tens { low, high }: Tens) -> String {
    match (low, high) {
        (_, 0) => say::none_of_ten(voice),
        (10, _) => say::all_of_ten(voice),
        (0, 10) => say::any_of_ten(voice),
        (low, high) if low == high => say::about_of_ten(voice, &low.to_string()),
        (0, high) => say::up_to_of_ten(voice, &high.to_string()),
        (low, 10) => say::from_of_ten(voice, &low.to_string()),
        (low, high) => say::range_of_ten(voice, &low.to_string(), &high.to_string()),
    }
}

/// How the two were hit, where they were not compared in turn.
fn order(judgment: &Judgment) -> say::Order {
    match judgment.facts.order {
        HowHit::OneAfterTheOther => say::Order::OneAfterTheOther,
        HowHit::NotKnown => say::Order::NotKnown,
        HowHit::InTurn | HowHit::InTurnNotCompared => say::Order::NotCompared,
    }
}

fn nothing_bet(why: NoBet, voice: &Voice) -> String {
    match why {
        NoBet::NothingCompared | NoBet::OrderUnknown => say::nothing_compared(voice),
        NoBet::Scatter => say::no_scatter(voice),
        NoBet::NearerZero => say::no_nearer_zero(voice),
        NoBet::Averages => say::no_averages(voice),
        NoBet::DependsOnLeftOut => say::no_left_out(voice),
        NoBet::ValueInDoubt => say::no_value_in_doubt(voice),
        NoBet::NextToNothing => say::no_next_to_nothing(voice),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ranges_in_tens_are_never_none_or_all() {
        let rows = [
            ((0, 0), "fewer than 1 of 10"),
            ((10, 10), "more than 9 of 10"),
            ((8, 8), "about 8 of 10"),
            ((0, 3), "up to 3 of 10"),
            ((9, 10), "9 of 10 or more"),
            ((6, 8), "6 to 8 of 10"),
            ((0, 10), "anything is possible, so no bet can be made"),
        ];
        for ((low, high), words) in rows {
            assert_eq!(chance(&Voice::english(), Tens { low, high }), words);
        }
    }
}
