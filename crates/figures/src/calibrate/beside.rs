//! Target 31: what a plan says of the typical shot and of two visits put together is what tests of invented shots find, and the
//! typical shot is as much sharper than the average as the facts of its measure say.

use super::effort::{Effort, seed, sessions};
use super::plans::{Planned, SHOT_SD, Wanted, in_words};
use super::rate::{Limit, Row, rate, values};
use super::sessions::{BALL_SPEED, CARRY, Kind, OFFLINE, fixed};
use crate::simulate::model::{NONE, Parameters, TYPICAL};
use crate::simulate::{Effects, MEASURES, random};
use judging::analysis::{Basis, Include, typical_gap};
use judging::together::together;
use judging::typical::typical;
use judging::verdict::DecisionKind;
use judging::{judge, settle};
use rand_distr::{Distribution, StandardNormal};
use session::Session;
use session::known::Known;
use session::plan::LookWord;
use stats::Level;

/// How far measured may lie from promised.
const POINTS: f64 = 0.05;
/// How far the measured sharpness of typical shots may lie from the fact of the measure.
const SHARPNESS: f64 = 0.04;
/// Rows start here, since others were looked at when the facts were chosen.
const FRESH: usize = 100;
/// The median of what a gap is taken to vary by from day to day, in smallest differences that usually matter.
const DAYS: f64 = 0.674_489_750_196_081_7;

pub(super) fn rows(effort: Effort) -> Vec<Row> {
    let mut rows = Vec::new();
    sharpness(&mut rows, effort);
    typical_shots(&mut rows, effort);
    visits(&mut rows, effort);
    rows
}

fn sharpness(rows: &mut Vec<Row>, effort: Effort) {
    for (measure, id) in MEASURES.into_iter().enumerate() {
        let Some(fact) = Known::of(id).and_then(|known| known.facts().typical_sharpness) else { continue };
        for each in [15, 30] {
            let kind = Kind::in_turn(TYPICAL, each, seed(31, FRESH + rows.len()));
            let found = values(sessions(2_000, effort), |number| sharper(&kind, number, measure));
            let n = found.len() as f64;
            let (mean, squares) = (stats::describe::mean(&found), stats::describe::sum_of_squares(&found));
            let name = Known::of(id).map_or(id, |known| known.facts().name).to_lowercase();
            let what = format!(
                "in turn, typical, {each} each, {name}: interval of averages over that of typical shots"
            );
            let measured = (mean, (squares / (n - 1.0) / n).sqrt());
            let limit = Limit::Between(fact - SHARPNESS, fact + SHARPNESS);
            rows.push(Row::of_value(31, what, measured, found.len() as u64, limit, effort).in_unit("times"));
        }
    }
}

/// The half-width of the average's careful interval over that of the typical shot's.
fn sharper(kind: &Kind, number: u64, measure: usize) -> Option<f64> {
    let (session, question) = (kind.session(number, &[measure]), fixed(measure));
    let judged = judge(settle(&question, &session).ok()?);
    let headline = judged.headline()?;
    let comparison = headline.comparison()?;
    let Basis::Difference(plain) = comparison.basis else { return None };
    let measured = judged.settled.table.measured(&headline.measure, Include::All);
    let gap =
        typical_gap(&measured, headline.baseline, headline.candidate, comparison.method, &plain)?.careful;
    Some(plain.half_width(Level::P95) / gap.half_width(Level::P95))
}

/// A plan of clubs that are truly apart.
fn apart(wanted: &Wanted, level: Parameters, difference: f64, row: usize) -> Planned {
    let mut planned = Planned::new(wanted, level, seed(31, FRESH + row));
    planned.effects = vec![Effects::default(); wanted.builds];
    planned.with_shift(difference)
}

fn typical_shots(rows: &mut Vec<Row>, effort: Effort) {
    let designs = [
        (5, 3, LookWord::AtEnd),
        (6, 3, LookWord::AtEnd),
        (10, 3, LookWord::Halfway),
        (8, 2, LookWord::AtEnd),
        (6, 5, LookWord::Halfway),
    ];
    for (i, (rounds, set, looks)) in designs.into_iter().enumerate() {
        for (j, size) in [0.6, 1.0].into_iter().enumerate() {
            let (measure, sd) = SHOT_SD[(i + 3 * j) % SHOT_SD.len()];
            let (name, level) = [("no drift", NONE), ("typical", TYPICAL)][(i + j) % 2];
            let difference = size * sd;
            let wanted =
                Wanted { builds: 2, measure, rounds, set, looks, spread: Some(sd), margin: Some(difference) };
            let planned = apart(&wanted, level, difference, rows.len());
            let promised = planned.plan.power.as_ref().and_then(|power| power.seen[0].facts.typical);
            let found = rate(sessions(8_000, effort), |number| finds_typical_shots(&planned, number));
            let (measure, unit) = in_words(measure);
            let looks = planned.plan.facts.looks.len();
            let what = format!(
                "plan of {rounds} laps of {set}, looks: {looks}, {name}, {measure} {difference:.1} {unit} apart: typical shots found"
            );
            rows.push(held(what, promised, found, effort));
        }
    }
}

fn held(what: String, promised: Option<f64>, found: super::rate::Rate, effort: Effort) -> Row {
    // As it is printed.
    let promised = (promised.unwrap_or(f64::NAN) * 100.0).round() / 100.0;
    let limit = Limit::Between(promised - POINTS, promised + POINTS);
    Row::of_rate(31, what, found, limit, effort).promised_found(promised)
}

fn finds_typical_shots(planned: &Planned, number: u64) -> bool {
    planned.asked_at_looks(number, &planned.own_looks(), false, 0.0).any(|(session, question)| {
        let Ok(settled) = settle(&question, &session) else { return false };
        typical(&judge(settled)).is_ok_and(|typical| typical.decision.kind == DecisionKind::Different)
    })
}

fn visits(rows: &mut Vec<Row>, effort: Effort) {
    let designs = [
        (2, 4, 3, CARRY, 11.48, NONE, "no drift", [10.0, 18.0]),
        (2, 8, 3, CARRY, 11.48, TYPICAL, "typical", [8.0, 12.0]),
        (3, 6, 3, CARRY, 11.48, NONE, "no drift", [10.0, 15.0]),
        (2, 10, 3, BALL_SPEED, 3.0, NONE, "no drift", [2.0, 3.0]),
        (2, 6, 5, OFFLINE, 15.65, TYPICAL, "typical", [8.0, 14.0]),
        (2, 12, 1, OFFLINE, 15.65, NONE, "no drift", [12.0, 20.0]),
    ];
    for (builds, rounds, set, measure, sd, level, name, differences) in designs {
        for difference in differences {
            let wanted = Wanted {
                builds,
                measure,
                rounds,
                set,
                looks: LookWord::AtEnd,
                spread: Some(sd),
                margin: Some(difference),
            };
            let planned = apart(&wanted, level, difference, rows.len());
            let promised = planned.plan.power.as_ref().and_then(|power| power.seen[0].facts.two_visits);
            let usual = Known::of(MEASURES[measure]).map_or(f64::NAN, |known| known.facts().margin) * DAYS;
            let found = rate(sessions(8_000, effort), |number| finds_on_two_days(&planned, usual, number));
            let (measure, unit) = in_words(measure);
            let what = format!(
                "two visits to a plan of {builds} clubs, {rounds} laps of {set}, {name}, {measure} {difference} {unit} apart, {usual:.1} {unit} from day to day: found together"
            );
            rows.push(held(what, promised, found, effort));
        }
    }
}

/// Whether two days, each with its own true gap, are called different when put together.
fn finds_on_two_days(planned: &Planned, usual: f64, number: u64) -> bool {
    let mut chance = random(planned.seed + 500_000, number);
    let rounds = planned.plan.facts.rounds;
    let mut asked = None;
    let days: Vec<Session> = (0..2)
        .filter_map(|day| {
            let deviate: f64 = StandardNormal.sample(&mut chance);
            let whole = planned.asked_at_looks(2 * number + day, &[rounds], false, usual * deviate).next();
            let (session, question) = whole?;
            asked = Some(question);
            Some(session)
        })
        .collect();
    let last = planned.plan.builds.len() - 1;
    asked.is_some_and(|question| {
        together(&days, &question).is_ok_and(|pairs| {
            pairs.iter().any(|pair| {
                pair.candidate == last
                    && pair.decision.is_some_and(|decision| decision.kind == DecisionKind::Different)
            })
        })
    })
}
