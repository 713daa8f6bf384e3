//! The order in which the shots were hit, and the rounds in it.

use crate::remarks::NoticeKind;
use crate::take::draft::Draft;
use crate::talk::{Talk, place};
use crate::trim::shortened;
use session::{Order, Session, Shot, infer_rounds};
use text::Voice;
use text::reading as say;

/// Puts the shots in the order hit where times or numbers tell it, works out rounds where none
/// are given, and says how builds and time lie.
///
/// `in_rows` says that the file has one row for each shot, so that its own order means something;
/// `told` is the golfer's word, which settles it.
pub(crate) fn settle(draft: &mut Draft, in_rows: bool, told: Option<Order>, talk: &mut Talk) {
    let in_turn = told == Some(Order::Interleaved);
    find(draft, in_rows || in_turn, told, talk);
    if in_turn && draft.session.order != Order::Interleaved && draft.session.builds.len() > 1 {
        take_in_turn(draft);
    }
    if let Some(order) = told {
        draft.session.order = order;
    }
}

/// For builds listed one after the other that were hit in turn: the n-th shots of all builds are round n.
fn take_in_turn(draft: &mut Draft) {
    let mut seen = vec![0; draft.session.builds.len()];
    for shot in &mut draft.session.shots {
        if let Some(count) = seen.get_mut(shot.build) {
            *count += 1;
            shot.round = Some(*count);
        }
    }
    let shots = &draft.session.shots;
    let order = arrange::positions(shots.len(), &|a, b| shots[a].round.cmp(&shots[b].round));
    rearrange(draft, &order);
}

fn find(draft: &mut Draft, in_rows: bool, told: Option<Order>, talk: &mut Talk) {
    let sorted = sort_by_time(draft, talk) || sort_by_number(draft, talk);
    let session = &mut draft.session;
    if session.builds.len() < 2 || session.shots.is_empty() {
        session.order = Order::Unknown;
        return;
    }
    if session.shots.iter().any(|shot| shot.round.is_some()) {
        session.order = of_given_rounds(session, in_rows || sorted);
        return;
    }
    if !in_rows && !sorted {
        session.order = Order::Unknown;
        return;
    }
    let builds: Vec<usize> = session.shots.iter().map(|shot| shot.build).collect();
    let rounds = infer_rounds(&builds);
    session.order = order_of_rounds(session, &rounds);
    if session.order == Order::Interleaved && told.is_none_or(|t| t == Order::Interleaved) {
        let count = rounds.last().copied().unwrap_or(0);
        for (shot, round) in session.shots.iter_mut().zip(rounds) {
            shot.round = Some(round);
        }
        let message = say::rounds_inferred(talk.voice(), &count.to_string());
        talk.notice(NoticeKind::RoundsInferred, place(0, ""), message);
    }
}

/// With rounds from the file: in turn when two rounds hold two builds or more.
fn of_given_rounds(session: &Session, ordered: bool) -> Order {
    let rounds: Vec<u32> = session.shots.iter().map(|s| s.round.unwrap_or(0)).collect();
    match order_of_rounds(session, &rounds) {
        Order::Blocked if !ordered => Order::Unknown,
        order => order,
    }
}

/// In turn when at least two rounds hold two builds or more, else one build after the other.
fn order_of_rounds(session: &Session, rounds: &[u32]) -> Order {
    let counted = session.shots.iter().zip(rounds).filter(|(_, r)| **r > 0);
    let pairs = arrange::distinct(counted.map(|(s, &r)| (r, s.build)));
    let all: Vec<u32> = pairs.into_iter().map(|(round, _)| round).collect();
    let mixed = all.chunk_by(|a, b| a == b).filter(|round| round.len() > 1).count();
    if mixed >= 2 { Order::Interleaved } else { Order::Blocked }
}

fn sort_by_time(draft: &mut Draft, talk: &mut Talk) -> bool {
    let shots = draft.session.shots.len();
    if shots < 2 || draft.moments.len() != shots {
        return false;
    }
    let moments = &draft.moments;
    let mut order: Vec<usize> = (0..shots).collect();
    // Newest first: shots of the same minute stand newest first as well.
    if moments.is_sorted_by(|a, b| a >= b) && moments.first() != moments.last() {
        order.reverse();
    }
    arrange::sort_by_key(&mut order, |&at| moments[at]);
    let told = moments.first() != moments.last() || moments.iter().any(|m| Some(m) != moments.first());
    apply(draft, &order, NoticeKind::OrderedByTime, say::ordered_by_time, talk);
    told
}

fn sort_by_number(draft: &mut Draft, talk: &mut Talk) -> bool {
    let numbers: Option<Vec<u32>> = draft.session.shots.iter().map(|s| s.number).collect();
    let Some(numbers) = numbers.filter(|n| n.len() > 1) else { return false };
    if arrange::distinct(numbers.iter().copied()).len() != numbers.len() {
        return false;
    }
    let order = arrange::positions(numbers.len(), &|a, b| numbers[a].cmp(&numbers[b]));
    apply(draft, &order, NoticeKind::OrderedByNumber, say::ordered_by_number, talk);
    true
}

fn apply(
    draft: &mut Draft,
    order: &[usize],
    kind: NoticeKind,
    message: fn(&Voice) -> String,
    talk: &mut Talk,
) {
    if order.is_sorted() {
        return;
    }
    rearrange(draft, order);
    talk.notice(kind, place(0, ""), message(talk.voice()));
}

fn rearrange(draft: &mut Draft, order: &[usize]) {
    let mut shots: Vec<Option<Shot>> =
        std::mem::take(&mut draft.session.shots).into_iter().map(Some).collect();
    draft.session.shots = order.iter().filter_map(|&at| shots.get_mut(at)?.take()).collect();
    draft.lines = order.iter().filter_map(|&at| draft.lines.get(at).copied()).collect();
}

/// Says which shot numbers are missing or there twice.
pub(crate) fn check_numbers(session: &Session, talk: &mut Talk) {
    let key = |scope: u8, s: &Shot| match scope {
        0 => (0, 0),
        1 => (s.build + 1, 0),
        _ => (s.build + 1, s.round.unwrap_or(0)),
    };
    let numbered: Vec<&Shot> = session.shots.iter().filter(|s| s.number.is_some()).collect();
    if numbered.len() < 2 {
        return;
    }
    // The narrowest count that has every number once: the session's, a build's, a set's.
    for scope in 0..3 {
        let mut all: Vec<((usize, u32), u32)> =
            numbered.iter().filter_map(|s| Some((key(scope, s), s.number?))).collect();
        arrange::sort(&mut all);
        let unique = all.windows(2).all(|pair| pair[0] != pair[1]);
        if unique {
            for group in all.chunk_by(|a, b| a.0 == b.0) {
                let numbers: Vec<u32> = group.iter().map(|(_, n)| *n).collect();
                let build = group[0].0.0.checked_sub(1).and_then(|b| session.builds.get(b));
                note_missing(&numbers, build.map(|b| b.name.as_str()), talk);
            }
            return;
        }
    }
    talk.notice(NoticeKind::NumbersRepeated, place(0, ""), say::numbers_repeated(talk.voice()));
}

fn note_missing(numbers: &[u32], build: Option<&str>, talk: &mut Talk) {
    let (Some(&first), Some(&last)) = (numbers.first(), numbers.last()) else { return };
    // A count of shots starts near one; other numbers are marks of something else.
    let start = if first <= 10 { 1.min(first) } else { first };
    let span = (last - start) as usize + 1;
    let missing = span - numbers.len();
    if missing == 0 || span > 4 * numbers.len() {
        return;
    }
    let mut pieces = Vec::new();
    let mut expected = start;
    for &number in numbers {
        match number - expected {
            0 => {}
            1 => pieces.push(expected.to_string()),
            _ => pieces.push(say::numbers_from_to(
                talk.voice(),
                &expected.to_string(),
                &(number - 1).to_string(),
            )),
        }
        expected = number + 1;
    }
    let listed = pieces.iter().take(6).cloned().collect::<Vec<_>>().join(", ");
    let of = build.map(shortened);
    let message = say::numbers_missing(
        talk.voice(),
        &missing.to_string(),
        missing,
        of.is_some(),
        of.as_deref().unwrap_or_default(),
        &listed,
        pieces.len() > 6,
    );
    talk.notice(NoticeKind::NumbersMissing, place(0, ""), message);
}
