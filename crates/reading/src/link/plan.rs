//! A plan as a link: what was decided before the first ball, opened on another phone ready to hit.
//!
//! Every choice that was left open is written out beside a mark that says so. Should what is usual ever change, the
//! link still opens as the plan it was made from; until then the open choices stay open.

use super::bytes::{Broken, Reader, Writer};
use super::codes::{self, GOALS};
use super::error::{LinkError, TooLarge};
use super::limits::MOST_MEASURES;
use super::notice::{LinkNotice, skipped};
use super::sealed::{Sections, bytes_of, sealed};
use super::tag;
use serde::{Deserialize, Serialize};
use session::known::Known;
use session::measure::MeasureId;
use session::plan::{LookAfter, LookWord, MOST_PLANNED_BUILDS, PlanRequest};
use text::Voice;

/// What stands in an address before the text of a plan, so that no page takes it for a session.
pub const PLAN_PREFIX: &str = "plan=";

/// Usual choices of looks; rounds that were named stand behind them.
const LOOKS: [LookWord; 3] = [LookWord::AtEnd, LookWord::Halfway, LookWord::EveryRound];

/// A plan to give away.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
#[serde(deny_unknown_fields)]
pub struct PlanToShare {
    /// The plan, as it was asked for. An earlier session in it gives its scatter and stays behind.
    pub plan: PlanRequest,
    /// Measures to write down for each shot, in the order of the keys.
    #[serde(default)]
    #[cfg_attr(feature = "typescript", ts(optional, as = "Option<Vec<MeasureId>>"))]
    pub record: Vec<MeasureId>,
}

/// What the link of a plan holds.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct SharedPlan {
    /// The plan, to ask `plan` for.
    pub plan: PlanRequest,
    /// Measures to write down for each shot.
    pub record: Vec<MeasureId>,
    /// What is worth knowing about the link.
    pub notices: Vec<LinkNotice>,
}

/// A plan as a text for the part of an address that no server sees: `plan=` and letters that addresses keep.
///
/// `written_out` is the same plan with every choice that was left open filled. An earlier session stays behind: what it
/// says of the scatter must stand in the plan already.
///
/// # Errors
/// [`TooLarge`] for names that no address could hold.
pub fn pack_plan(request: &PlanToShare, written_out: &PlanRequest) -> Result<String, TooLarge> {
    let PlanToShare { plan, record } = request;
    let mut section = Writer::default();
    write_plan(&mut section, plan, written_out);
    section.length(record.len().min(MOST_MEASURES));
    record.iter().take(MOST_MEASURES).for_each(|id| write_measure(&mut section, id));
    let mut out = Writer::default();
    out.section(tag::PLAN, section);
    let text = sealed(out).ok_or(TooLarge::Names)?;
    Ok(format!("{PLAN_PREFIX}{text}"))
}

/// What the text of a plan holds. A whole address and the blanks and line ends that mail puts in are taken too.
///
/// `write_out` says what is usual now for the choices that were left open.
///
/// # Errors
/// A [`LinkError`] that says whether the text is no link, was cut or changed on its way, or needs a later version.
pub fn unpack_plan(text: &str, write_out: &WriteOut<'_>, voice: &Voice) -> Result<SharedPlan, LinkError> {
    let (_, link) = text.rsplit_once(PLAN_PREFIX).ok_or(LinkError::NotALink)?;
    let bytes = bytes_of(link)?;
    let sections = Sections::of(&bytes)?;
    let mut section = sections.section(tag::PLAN).ok_or(LinkError::Inconsistent)?;
    let (plan, record) = read(&mut section, write_out).map_err(|Broken| LinkError::Inconsistent)?;
    Ok(SharedPlan { plan, record, notices: skipped(sections.unknown, voice) })
}

/// Fills every choice of a plan that was left open; `None` for a plan that is none.
pub type WriteOut<'a> = dyn Fn(&PlanRequest) -> Option<PlanRequest> + 'a;

/// Choices that may be left open, a bit each.
type Choice = fn(&mut PlanRequest, &PlanRequest);
const CHOICES: [(u64, Choice); 7] = [
    (1, |to, from| to.goal = from.goal),
    (1 << 1, |to, from| to.margin = from.margin),
    (1 << 2, |to, from| to.spread = from.spread),
    (1 << 3, |to, from| to.set = from.set),
    (1 << 4, |to, from| to.rounds = from.rounds),
    (1 << 5, |to, from| to.warm_up = from.warm_up),
    (1 << 6, |to, from| to.looks.clone_from(&from.looks)),
];
const SAME_CLUB: u64 = 1 << 7;

/// The bits of the choices that are open in a request: those that another one could fill.
fn open_choices(request: &PlanRequest) -> u64 {
    let mut empty = request.clone();
    let nothing = PlanRequest::of(Vec::new(), request.measure.clone());
    let is_open = |&(bit, take): &(u64, Choice)| {
        take(&mut empty, &nothing);
        let is_open = empty == *request;
        take(&mut empty, request);
        is_open.then_some(bit)
    };
    CHOICES.iter().filter_map(is_open).sum()
}

fn write_plan(out: &mut Writer, asked: &PlanRequest, written: &PlanRequest) {
    out.whole(open_choices(asked) | if asked.same_club { SAME_CLUB } else { 0 });
    out.length(written.builds.len());
    written.builds.iter().for_each(|name| out.text(name));
    write_measure(out, &written.measure);
    out.byte(written.goal.and_then(|goal| codes::code(&GOALS, &goal)).map_or(0, |code| code + 1));
    out.maybe_number(written.margin);
    out.maybe_number(written.spread);
    for count in [written.set, written.rounds, written.seed, written.warm_up] {
        out.maybe(count);
    }
    match &written.looks {
        None => out.byte(0),
        Some(LookAfter::Word(word)) => out.byte(codes::code(&LOOKS, word).map_or(0, |code| code + 2)),
        Some(LookAfter::Rounds(rounds)) => {
            out.byte(1);
            out.length(rounds.len());
            rounds.iter().for_each(|&round| out.whole(u64::from(round)));
        }
    }
}

fn read(input: &mut Reader<'_>, write_out: &WriteOut<'_>) -> Result<(PlanRequest, Vec<MeasureId>), Broken> {
    let marks = input.whole()?;
    let mut builds = Vec::new();
    for _ in 0..input.length(MOST_PLANNED_BUILDS)? {
        builds.push(input.text()?);
    }
    let mut written = PlanRequest::of(builds, read_measure(input)?);
    written.same_club = marks & SAME_CLUB != 0;
    written.goal = match usize::from(input.byte()?).checked_sub(1) {
        Some(at) => Some(*GOALS.get(at).ok_or(Broken)?),
        None => None,
    };
    (written.margin, written.spread) = (input.maybe_number()?, input.maybe_number()?);
    (written.set, written.rounds) = (input.maybe()?, input.maybe()?);
    (written.seed, written.warm_up) = (input.maybe()?, input.maybe()?);
    written.looks = match usize::from(input.byte()?) {
        0 => None,
        1 => {
            let mut rounds = Vec::new();
            for _ in 0..input.length(input.0.len())? {
                rounds.push(u32::try_from(input.whole()?).map_err(|_| Broken)?);
            }
            Some(LookAfter::Rounds(rounds))
        }
        word => Some(LookAfter::Word(*LOOKS.get(word - 2).ok_or(Broken)?)),
    };
    let mut record = Vec::new();
    for _ in 0..input.length(MOST_MEASURES)? {
        record.push(read_measure(input)?);
    }
    Ok((with_open_choices(written, marks, write_out).ok_or(Broken)?, record))
}

/// The request with the marked choices open again, save those that would be filled otherwise today.
fn with_open_choices(written: PlanRequest, marks: u64, write_out: &WriteOut<'_>) -> Option<PlanRequest> {
    let meant = write_out(&written)?;
    let mut open = written.clone();
    let nothing = PlanRequest::of(Vec::new(), written.measure.clone());
    let marked = || CHOICES.iter().filter(|(bit, _)| marks & bit != 0);
    marked().for_each(|(_, take)| take(&mut open, &nothing));
    // One choice that is filled again may change what is usual for another.
    for _ in CHOICES {
        let now = write_out(&open)?;
        if now == meant {
            break;
        }
        for (_, take) in marked() {
            let mut other = now.clone();
            take(&mut other, &meant);
            if other != now {
                take(&mut open, &written);
            }
        }
    }
    Some(open)
}

/// A measure by its code from 1, or by its id behind a zero.
fn write_measure(out: &mut Writer, id: &MeasureId) {
    match id.known() {
        Some(known) => out.length(1 + usize::from(known.facts().link_code)),
        None => {
            out.length(0);
            out.text(id.as_str());
        }
    }
}

fn read_measure(input: &mut Reader<'_>) -> Result<MeasureId, Broken> {
    match input.length(Known::ALL.len())? {
        0 => input.text().map(MeasureId::from),
        at => Ok(codes::measure(at - 1)?.into()),
    }
}
