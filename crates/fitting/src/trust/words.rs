//! Trust findings in words: what was seen, why it matters, what to do.

use super::{Seen, TrustFinding, Weight};
use crate::question::Question;
use crate::session::{Order, Session};
use crate::words::{Subject, count_of, short_name, shots};

/// The finding with its sentences.
pub(super) fn say(session: &Session, question: &Question, seen: Seen) -> TrustFinding {
    let subject = Subject::of(&question.measure, session);
    let name = |build: usize| session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
    let (weight, what, why, next) = match &seen {
        Seen::Order { order: Order::Interleaved, rounds } => (
            Weight::Good,
            format!("The clubs were hit in turn, in {rounds} rounds."),
            "Warming up, tiring and a change of wind meet all clubs alike.".to_owned(),
            "Keep hitting them in turn.".to_owned(),
        ),
        Seen::Order { order: Order::Blocked, .. } => (
            Weight::Serious,
            "One club was hit after the other.".to_owned(),
            "Whatever changed between the two, warming up, tiring, a tip from the side, counts as the club.".to_owned(),
            "Next time hit them in turn: three with one, three with the other, again and again.".to_owned(),
        ),
        Seen::Order { order: Order::Unknown, .. } => (
            Weight::Serious,
            "The order in which the shots were hit is not known.".to_owned(),
            "One club may have had the cold shots, the other the warm ones.".to_owned(),
            "If you know the order, say so where your shots are shown.".to_owned(),
        ),
        Seen::LongTurns { shots: turn } => (
            Weight::Serious,
            format!("The clubs changed hands only every {} shots or so.", crate::digits::rounded(*turn, 0)),
            "Within such a turn warming up and tiring count as the club, so only whole rounds are taken as evidence: \
             the answer is much less sure than the number of shots suggests."
                .to_owned(),
            "Change clubs every three shots.".to_owned(),
        ),
        Seen::ColdStart { build, shots: n, head_start } => (
            Weight::Serious,
            format!("{} was hit first, with {} before the other club came into play.", name(*build), shots(*n)),
            head_start.map_or_else(
                || "The first shots of a session are rarely the best.".to_owned(),
                |gain| {
                    format!(
                        "Warming up alone usually gives the later club about {} of {}.",
                        subject.amount(gain),
                        subject.name
                    )
                },
            ),
            "Hit ten or so shots to warm up before any of them count.".to_owned(),
        ),
        Seen::UnequalCounts { fewer, few, more, many } => (
            Weight::Note,
            format!("{} has {}, {} only {}.", name(*more), shots(*many), name(*fewer), count_of(*few)),
            "The answer is only as sure as the smaller number allows, and one bad shot weighs more there.".to_owned(),
            "Give every club the same number of shots.".to_owned(),
        ),
        Seen::Drift { change, low, high } => (
            Weight::Note,
            format!(
                "Over the session {} went {} by about {}, whichever club was in hand.",
                subject.name,
                if *change > 0.0 { "up" } else { "down" },
                subject.amount(*change)
            ),
            format!("Allowing for luck, by {}. Clubs hit in turn share it; clubs hit one after the other do not.", {
                subject.span(*low, *high, None)
            }),
            "Warm up before the first shot that counts, and rest between sets.".to_owned(),
        ),
        Seen::NumbersMissing { missing, first } => (
            Weight::Serious,
            format!(
                "{} missing: the numbers jump, first at number {first}.",
                if *missing == 1 { "1 shot is".to_owned() } else { format!("{} shots are", count_of(*missing)) }
            ),
            "If somebody took out the bad ones, the averages belong to chosen shots.".to_owned(),
            "Ask for every shot that was hit.".to_owned(),
        ),
        Seen::SummaryDisagrees { build, measure, printed, of_shots, n, claimed } => {
            let subject = Subject::of(measure, session);
            let claimed = claimed.map_or_else(String::new, |c| format!(" over {}", shots(c as usize)));
            (
                Weight::Serious,
                format!("The average {} printed for {} is not that of its shots.", subject.name, name(*build)),
                format!(
                    "Printed is {}{claimed}; the {} here average {}.",
                    subject.value(*printed),
                    shots(*n),
                    subject.value(*of_shots)
                ),
                "Ask which shots the printed average stands for.".to_owned(),
            )
        }
        Seen::LeftOut { by_build } => {
            let counts: Vec<String> = by_build
                .iter()
                .enumerate()
                .filter(|(_, n)| **n > 0)
                .map(|(build, n)| format!("{} of {}", count_of(*n), name(build)))
                .collect();
            (
                Weight::Note,
                format!("Shots were left out: {}.", counts.join(", ")),
                "Leaving out the worst two of one club alone can make two equal clubs look different in 1 of 10 \
                 sessions. They still count in the answer."
                    .to_owned(),
                "Keep every shot. A mishit belongs to the club too.".to_owned(),
            )
        }
        Seen::FarShots { count: 1, build } => (
            Weight::Note,
            format!("1 shot with {} lies far from the rest.", name(*build)),
            "It counts. A single one can move an average by yards.".to_owned(),
            "Look at the typical shot in the numbers as well.".to_owned(),
        ),
        Seen::FarShots { count, build } => (
            Weight::Note,
            format!("{} shots lie far from the rest, most of them with {}.", count_of(*count), name(*build)),
            "They count. Whether a club makes more of them is part of the question.".to_owned(),
            "Look at the typical shot in the numbers as well.".to_owned(),
        ),
        Seen::FewShotsDecide { shots: few } => (
            Weight::Note,
            format!("Taking out {} would change the answer.", if *few == 1 {
                "a single shot".to_owned()
            } else {
                format!("{} well-chosen shots", count_of(*few))
            }),
            "An answer that a few shots can turn around rests on little.".to_owned(),
            "Leave none out, and hit more before you decide.".to_owned(),
        ),
        Seen::NotFixed => (
            Weight::Note,
            "Nobody said how many shots were planned.".to_owned(),
            "Two equal clubs that are watched until one looks better will differ in about 2 of 10 sessions. The answer \
             is held to a stricter level for that."
                .to_owned(),
            "Fix the number before the first shot.".to_owned(),
        ),
        Seen::PlannedLooks { round, planned } => (
            Weight::Good,
            format!("{round} of {planned} planned rounds were hit."),
            "Looking on the way was planned, and the answer takes it into account.".to_owned(),
            "Stop where the plan says.".to_owned(),
        ),
        Seen::NoSwingOrStrike { club_speed, strike } => (
            Weight::Note,
            match (club_speed, strike) {
                (false, false) => "Neither club speed nor the place of the strike was measured.",
                (true, _) => "The place of the strike on the face was not measured.",
                (false, true) => "Club speed was not measured.",
            }
            .to_owned(),
            format!(
                "Without {} nobody can say whether the club or the swing made a difference.",
                if *club_speed || *strike { "it" } else { "them" }
            ),
            "Ask for club speed, and mark the face to see where the ball was struck.".to_owned(),
        ),
        Seen::AveragesOnly => (
            Weight::Serious,
            "Only averages are here.".to_owned(),
            "Cold shots, left-out shots and the order of hitting cannot be seen in an average.".to_owned(),
            "Ask for every shot.".to_owned(),
        ),
    };
    TrustFinding { seen, weight, what, why, next }
}
