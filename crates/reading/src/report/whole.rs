//! What is said of the session as a whole: its order and rounds, and what averages lack.

use crate::remarks::NoticeKind;
use crate::report::order;
use crate::take::ctx::Ctx;
use crate::talk::{Talk, place};
use crate::trim::shortened;
use session::{Session, Summary, SummaryOf};
use text::names::title;
use text::reading as say;

/// Order and rounds, and what the session as a whole lacks.
pub(crate) fn settle(ctx: &mut Ctx<'_>, rows_are_in_order: bool) {
    let hints = ctx.hints;
    order::settle(&mut ctx.draft, rows_are_in_order, hints.order, &mut ctx.talk);
    order::check_numbers(&ctx.draft.session, &mut ctx.talk);
    note_lacking(&ctx.draft.session, &mut ctx.talk);
    if hints.layout.is_none() {
        ask_for_averages(&ctx.draft.session, &mut ctx.talk);
    }
}

/// Asks whether one row for each build holds averages rather than shots.
pub(crate) fn ask_for_averages(session: &Session, talk: &mut Talk) {
    let mut builds: Vec<usize> = session.shots.iter().map(|s| s.build).collect();
    arrange::sort(&mut builds);
    let once = builds.windows(2).all(|pair| pair[0] != pair[1]);
    let told = session.shots.iter().any(|s| s.number.is_some() || s.round.is_some());
    if builds.len() > 1 && once && !told && session.summaries.is_empty() {
        talk.notice(NoticeKind::PerhapsAverages, place(0, ""), say::perhaps_averages(talk.voice()));
    }
}

/// Says what averages alone lack.
pub(crate) fn note_lacking(session: &Session, talk: &mut Talk) {
    if !session.shots.is_empty() || session.summaries.is_empty() {
        return;
    }
    let names = |pick: &dyn Fn(&Summary) -> bool| {
        let found: Vec<String> = session
            .summaries
            .iter()
            .filter(|s| pick(s))
            .filter_map(|s| session.builds.get(s.build))
            .map(|b| shortened(&b.name))
            .collect();
        if found.is_empty() { None } else { Some(found.join(", ")) }
    };
    if let Some(names) = names(&|s| s.n.is_none()) {
        talk.notice(NoticeKind::CountMissing, place(0, ""), say::count_missing(talk.voice(), &names));
    }
    if let Some(names) = names(&|s| s.of != SummaryOf::All) {
        talk.notice(NoticeKind::ChosenShots, place(0, ""), say::chosen_shots(talk.voice(), &names));
    }
    let mut without: Vec<String> = Vec::new();
    for id in &session.measures {
        let has = |s: &&Summary, sd: bool| {
            s.values.get(id).is_some_and(|v| v.mean.is_some() && v.sd.is_some() == sd)
        };
        let lacking: Vec<&Summary> = session.summaries.iter().filter(|s| has(s, false)).collect();
        if lacking.is_empty() {
            continue;
        }
        let name = id.known().map_or_else(|| id.to_string(), |known| title(known, talk.voice()));
        if session.summaries.iter().any(|s| has(&s, true)) {
            // One club has it: the golfer may take the other's for a guess.
            let named =
                lacking.iter().filter_map(|s| session.builds.get(s.build)).map(|b| shortened(&b.name));
            let names = named.collect::<Vec<_>>().join(", ");
            let message = say::deviation_of_some_missing(talk.voice(), &name, &names);
            talk.notice(NoticeKind::DeviationMissing, place(0, ""), message);
        } else {
            without.push(name);
        }
    }
    if !without.is_empty() {
        let message = say::deviation_missing(talk.voice(), &without.join(", "));
        talk.notice(NoticeKind::DeviationMissing, place(0, ""), message);
    }
}
