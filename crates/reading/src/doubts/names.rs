//! Doubts about builds: too many, one name written in two ways, a single shot, a name that is none; and shots set aside.

use crate::doubt::{Doubt, DoubtKind, Settled};
use crate::doubts::asked::{choice, doubt, first_lines, said};
use crate::doubts::plain::spelled;
use crate::lexicon::heading::{edits, understand};
use crate::lexicon::number::{Cell, scan};
use crate::lexicon::word::Word;
use crate::outcome::Role;
use crate::take::ctx::Ctx;
use crate::trim::shortened;
use crate::understand::column::Column;
use session::MOST_BUILDS;
use session::few::{Map, Set};
use text::doubts as say;

/// Of a build with fewer shots than this nothing is said beside one with a single shot.
const SEVERAL: usize = 3;

/// More builds than a session has: another column names them, perhaps.
pub(crate) fn too_many(ctx: &Ctx<'_>, columns: &[&Column<'_>], found: &mut Vec<Doubt>) {
    let voice = ctx.talk.voice();
    let told = tried(&ctx.hints.settled);
    let few = |c: &&&Column<'_>| {
        let distinct = c.profile.distinct.len();
        c.role != Role::Build
            && !told.contains(&c.index)
            && !c.profile.many
            && (2..=MOST_BUILDS).contains(&distinct)
            && c.profile.texts > 0
    };
    let choices = columns.iter().filter(few).map(|c| {
        let names: Vec<String> = c.profile.distinct.iter().take(3).map(|name| shortened(name)).collect();
        let label = say::by_column(voice, &shortened(&c.heading), &names.join(", "));
        choice(Settled::Column(c.index), label)
    });
    let question = say::many_clubs(voice, &ctx.draft.session.builds.len().to_string());
    // A column that was said may turn out to hold too many names as well: what is asked then is another question.
    let key = if told.is_empty() { "many_clubs".into() } else { format!("many_clubs:{}", told.len()) };
    found.push(doubt(DoubtKind::ManyClubs, key, question, choices.collect()));
}

/// The columns that were said to name the clubs, the last said at the end.
pub(crate) fn tried(settled: &Map<String, Settled>) -> Vec<usize> {
    let column = |(key, said): (&String, &Settled)| match said {
        Settled::Column(at) if key.starts_with("many_clubs") => Some(*at),
        _ => None,
    };
    settled.iter().filter_map(column).collect()
}

/// Makes the builds one that are said to be one: before anything is asked, because it changes the places of the builds
/// behind them, which questions name, and what a build's shots are held against.
pub(crate) fn join(ctx: &mut Ctx<'_>) {
    while let Some(group) =
        alike(ctx).into_iter().find(|group| said(ctx, &group.key) == Some(&Settled::OneClub))
    {
        if let Some(other) = group.elsewhere {
            ctx.draft.session.builds[group.builds[0]].name.clone_from(other);
        }
        ctx.draft.become_one(&group.builds);
    }
    for build in singles(ctx).into_iter().rev() {
        let Some(line) = line_of(ctx, build) else { continue };
        if let (Some(Settled::OneClub), Some(near)) = (said(ctx, &one_row_key(line)), nearest(ctx, build)) {
            ctx.draft.become_one(&[near, build]);
        }
    }
}

/// Names that differ by what says nothing, case, spaces, signs: here, or from that of a build in another text.
pub(crate) fn same(ctx: &Ctx<'_>, found: &mut Vec<Doubt>) {
    for Alike { key, builds, elsewhere } in alike(ctx) {
        if said(ctx, &key).is_some() {
            continue;
        }
        let names = list(ctx, &builds, elsewhere);
        let voice = ctx.talk.voice();
        let choices = vec![
            choice(Settled::OneClub, say::one_club(voice)),
            choice(Settled::Right, say::different_clubs(voice)),
        ];
        let asked = doubt(DoubtKind::SameName, key, say::same_name(voice, &names), choices);
        found.push(Doubt { builds, ..asked });
    }
}

/// Builds whose names differ by what says nothing.
struct Alike<'a> {
    /// The name of the question.
    key: String,
    builds: Vec<usize>,
    /// How a build of another text is spelled, where none here is spelled so.
    elsewhere: Option<&'a String>,
}

fn alike<'a>(ctx: &Ctx<'a>) -> Vec<Alike<'a>> {
    let builds = &ctx.draft.session.builds;
    let mut groups: Vec<(String, Vec<usize>)> = Vec::new();
    for (at, name) in builds.iter().map(|build| plain(&build.name)).enumerate() {
        match groups.iter_mut().find(|(of, _)| *of == name) {
            Some((_, group)) => group.push(at),
            None => groups.push((name, vec![at])),
        }
    }
    let others = &ctx.hints.others;
    let of_group = |(name, builds_alike): (String, Vec<usize>)| {
        let mut spelled = others.iter().filter(|other| plain(other) == name);
        let is_here = |other: &String| builds_alike.iter().any(|&at| builds[at].name == *other);
        let elsewhere = if spelled.clone().any(is_here) { None } else { spelled.next() };
        Alike { key: format!("same_name:{name}"), builds: builds_alike, elsewhere }
    };
    let asked = |group: &Alike<'_>| group.builds.len() > 1 || group.elsewhere.is_some();
    groups.into_iter().map(of_group).filter(asked).collect()
}

/// A name as it is spelled, or as it is where nothing is left of it.
fn plain(name: &str) -> String {
    let plain: String = spelled(name).collect();
    if plain.is_empty() { name.to_owned() } else { plain }
}

fn list(ctx: &Ctx<'_>, builds: &[usize], other: Option<&String>) -> String {
    let named = builds.iter().filter_map(|&at| ctx.draft.session.builds.get(at)).map(|build| &build.name);
    other
        .into_iter()
        .chain(named)
        .take(6)
        .map(|name| format!("“{}”", shortened(name)))
        .collect::<Vec<_>>()
        .join(", ")
}

/// A build with a single shot among builds with several: a slip of the pen, or a row that belongs elsewhere.
pub(crate) fn one_row(ctx: &Ctx<'_>, found: &mut Vec<Doubt>) {
    let two = ctx.draft.session.builds.len() == 2;
    let asked: Vec<usize> = found
        .iter()
        .filter(|doubt| doubt.kind == DoubtKind::SameName)
        .flat_map(|doubt| doubt.builds.iter().copied())
        .collect();
    for build in singles(ctx).into_iter().rev().filter(|build| !asked.contains(build)) {
        let Some(line) = line_of(ctx, build) else { continue };
        let key = one_row_key(line);
        let near = nearest(ctx, build);
        // Beside one other club a single shot gives no verdict anyway.
        if two && near.is_none() || said(ctx, &key).is_some() {
            continue;
        }
        let voice = ctx.talk.voice();
        let name = |at: usize| ctx.draft.session.builds.get(at).map_or(String::new(), |b| shortened(&b.name));
        let mut choices = vec![
            choice(Settled::Right, say::own_club(voice)),
            choice(Settled::LeaveOut, say::leave_shot_out(voice)),
        ];
        if let Some(near) = near {
            choices.insert(0, choice(Settled::OneClub, say::belongs_to(voice, &name(near))));
        }
        let builds = std::iter::once(build).chain(near).collect();
        let asked = doubt(DoubtKind::OneRow, key, say::one_row(voice, &name(build)), choices);
        found.push(Doubt { builds, lines: vec![line], ..asked });
    }
}

/// Builds with a single shot, where another has several.
fn singles(ctx: &Ctx<'_>) -> Vec<usize> {
    let session = &ctx.draft.session;
    let mut counts = vec![0_usize; session.builds.len()];
    session.shots.iter().for_each(|shot| counts[shot.build] += 1);
    session.summaries.iter().for_each(|summary| counts[summary.build] += SEVERAL);
    if !counts.iter().any(|&count| count >= SEVERAL) {
        return Vec::new();
    }
    (0..counts.len()).filter(|&build| counts[build] == 1).collect()
}

/// The line of a build's first shot.
fn line_of(ctx: &Ctx<'_>, build: usize) -> Option<u32> {
    let shot = ctx.draft.session.shots.iter().position(|shot| shot.build == build)?;
    Some(ctx.draft.lines.get(shot).copied().unwrap_or(0))
}

fn one_row_key(line: u32) -> String {
    format!("one_row:{line}")
}

/// The build whose name is a slip of the pen away.
fn nearest(ctx: &Ctx<'_>, build: usize) -> Option<usize> {
    let builds = &ctx.draft.session.builds;
    let name = plain(&builds.get(build)?.name);
    let near = |other: &usize| {
        let there = plain(&builds[*other].name);
        let far = edits(name.as_bytes(), there.as_bytes());
        *other != build && name.len() >= 4 && there.len() <= 60 && name.len() <= 60 && far <= 2
    };
    (0..builds.len()).find(near)
}

/// Builds named by a number, or by the word for a measure.
pub(crate) fn odd(ctx: &mut Ctx<'_>, columns: &[&Column<'_>], found: &mut Vec<Doubt>) {
    let Some(column) = columns.iter().find(|c| c.role == Role::Build) else { return };
    let builds = &ctx.draft.session.builds;
    let is_number = |name: &str| matches!(scan(name), Cell::Figure(_));
    let all_numbers = builds.len() > 1 && builds.iter().all(|build| is_number(&build.name));
    if all_numbers {
        let key = format!("odd_name:{}", column.index);
        ask_odd(ctx, key, (0..ctx.draft.session.builds.len()).collect(), found);
        return;
    }
    let is_heading = |name: &str| {
        let heading = understand(name);
        matches!(heading.word, Some(Word::Measure(_)))
            && heading.beside.is_none()
            && heading.statistic.is_none()
    };
    let odd: Vec<usize> =
        (0..builds.len()).filter(|&at| is_heading(&builds[at].name) || is_number(&builds[at].name)).collect();
    if odd.is_empty() || odd.len() == builds.len() {
        return;
    }
    let key = "odd_name:some";
    if said(ctx, key) == Some(&Settled::LeaveOut) {
        let names: Vec<String> = builds.iter().map(|build| shortened(&build.name)).collect();
        let voice = ctx.talk.voice().clone();
        for shot in ctx.draft.session.shots.iter_mut().filter(|shot| odd.contains(&shot.build)) {
            shot.left_out = Some(say::named_like_no_club(&voice, &names[shot.build]));
        }
        return;
    }
    ask_odd(ctx, key.to_owned(), odd, found);
}

fn ask_odd(ctx: &Ctx<'_>, key: String, builds: Vec<usize>, found: &mut Vec<Doubt>) {
    if said(ctx, &key).is_some() {
        return;
    }
    let voice = ctx.talk.voice();
    let question = say::odd_name(voice, &list(ctx, &builds, None));
    let choices = vec![
        choice(Settled::Right, say::are_clubs(voice)),
        choice(Settled::LeaveOut, say::are_no_clubs(voice)),
    ];
    found.push(Doubt { builds, ..doubt(DoubtKind::OddName, key, question, choices) });
}

/// Shots that are marked as not counting, by a mark that is no reason.
pub(crate) fn left_out(ctx: &mut Ctx<'_>, columns: &[&Column<'_>], found: &mut Vec<Doubt>) {
    if ctx.unexplained.is_empty() {
        return;
    }
    let column = columns.iter().find(|c| c.role == Role::LeftOut).map_or(0, |c| c.index);
    let key = format!("left_out_why:{column}");
    match said(ctx, &key) {
        Some(Settled::Reason(why)) => {
            for &at in &ctx.unexplained {
                if let Some(shot) = ctx.draft.session.shots.get_mut(at) {
                    shot.left_out = Some(why.clone());
                }
            }
        }
        Some(_) => {}
        None => {
            let voice = ctx.talk.voice();
            let count = ctx.unexplained.len();
            let choices = vec![
                choice(Settled::Reason(say::mishit(voice)), say::mishits(voice)),
                choice(Settled::Reason(say::measured_wrongly(voice)), say::misread(voice)),
                choice(Settled::Count, say::count_them(voice)),
            ];
            let question = say::left_out_why(voice, &count.to_string(), count);
            let of = |at: &usize| ctx.draft.session.shots.get(*at).map(|shot| shot.build);
            let builds: Set<usize> = ctx.unexplained.iter().filter_map(of).collect();
            let lines =
                first_lines(ctx.unexplained.iter().filter_map(|&at| ctx.draft.lines.get(at).copied()));
            let asked = doubt(DoubtKind::LeftOutWhy, key, question, choices);
            found.push(Doubt { builds: builds.into_iter().collect(), lines, ..asked });
        }
    }
}
