//! The parts that sentences are made of: names, values, sizes, chances, all from one judgment.

use crate::ends::{level_text, lines};
use crate::format::{Subject, chance, count_of, shots};
use crate::phrases::{Phrase, does, phrase_for};
use crate::words::{Next, sentences};
use judging::Judgment;
use judging::analysis::{Estimate, Group, MoreShots};
use judging::choice::{Choice, Meant};
use judging::facts::{AllowsFor, HowHit, OrderAllowance, RestsOn};
use judging::next_to_nothing::widest;
use judging::trust::has_value_in_doubt;
use judging::verdict::{DecisionKind, Direction};
use session::Session;
use session::known::Known;
use session::measure::{Margin, MeasureId};
use session::names::short_name;
use text::answer as say_choose;
use text::case as say;
use text::case::{Hit, Room};
use text::{Voice, capital};

/// Above this many shots a number tells less than words.
const MOST_SHOTS_NAMED: u32 = 500;

/// One judgment with the names that its sentences use.
#[derive(Debug)]
pub(crate) struct Case<'a> {
    pub(crate) voice: &'a Voice,
    pub(crate) judgment: &'a Judgment,
    pub(crate) subject: Subject<'a>,
    /// Shortened.
    pub(crate) baseline: String,
    /// Shortened.
    pub(crate) candidate: String,
    pub(crate) session: &'a Session,
    phrase: Phrase,
}

/// `carry, ball speed and spin rate`.
pub(crate) fn listed(voice: &Voice, names: &[String]) -> String {
    match names {
        [rest @ .., last] if !rest.is_empty() => say::last_of_several(voice, &rest.join(", "), last),
        names => names.join(", "),
    }
}

impl<'a> Case<'a> {
    pub(crate) fn of(session: &'a Session, judgment: &'a Judgment, voice: &'a Voice) -> Self {
        let name = |build: usize| session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
        Self {
            voice,
            judgment,
            subject: Subject::of(&judgment.measure, session, voice),
            baseline: name(judgment.baseline),
            candidate: name(judgment.candidate),
            phrase: phrase_for(&judgment.measure, voice),
            session,
        }
    }

    /// `Driver B carries farther`.
    pub(crate) fn does(&self, direction: Direction) -> String {
        does(&self.subject, &self.candidate, direction)
    }

    /// `more` or `less`, `farther right` or `farther left`.
    pub(crate) fn more(&self, direction: Direction) -> &str {
        if direction == Direction::Higher { &self.phrase.more } else { &self.phrase.less }
    }

    /// A value with its side where the measure has sides: `4 yd right`.
    fn value(&self, subject: &Subject<'_>, x: f64) -> String {
        match &self.phrase.sides {
            Some(_) if subject.prints_as_zero(x) && subject.id == Known::Offline => {
                say::on_line(self.voice, &subject.amount(0.0))
            }
            Some(_) if subject.prints_as_zero(x) => subject.amount(0.0),
            Some(sides) => sides.of(subject, x),
            None => subject.value(x),
        }
    }

    /// Two averages with the digits it takes that their printed difference is the gap that is printed.
    fn values(&self, candidate: f64, baseline: f64) -> [String; 2] {
        if self.subject.adds_up(candidate, baseline) {
            return [candidate, baseline].map(|x| self.value(&self.subject, x));
        }
        let closer = self.subject.with_one_digit_more();
        [candidate, baseline].map(|x| self.value(&closer, x))
    }

    /// `Driver B averaged 262 yd over 15 shots, Own driver 254 yd over 15.`
    pub(crate) fn averages(&self) -> String {
        let numbers = &self.judgment.pair.numbers;
        if let Some(compared) = &self.judgment.pair.compared {
            let [candidate, baseline] = self.values(compared.candidate, compared.baseline);
            return say::averages_compared(
                self.voice,
                &compared.rounds.to_string(),
                &self.candidate,
                &candidate,
                &shots(self.voice, compared.n.candidate),
                &self.baseline,
                &baseline,
                &count_of(self.voice, compared.n.baseline),
            );
        }
        let (Some(candidate), Some(baseline)) = (numbers.candidate, numbers.baseline) else {
            return String::new();
        };
        let [candidate_mean, baseline_mean] = self.values(candidate.mean, baseline.mean);
        say::averages(
            self.voice,
            &self.candidate,
            &candidate_mean,
            &shots(self.voice, candidate.n),
            &self.baseline,
            &baseline_mean,
            &count_of(self.voice, baseline.n),
        )
    }

    /// How many shots each build has.
    pub(crate) fn counts(&self) -> String {
        let of = |build: usize, group: Option<Group>| {
            let (read, hit) = (group.map_or(0, |group| group.n), self.hit_with(build));
            if read < hit {
                say::measured_on(self.voice, &count_of(self.voice, read), &shots(self.voice, hit))
            } else {
                shots(self.voice, read)
            }
        };
        let Judgment { baseline, candidate, pair, .. } = self.judgment;
        let [of_baseline, of_candidate] =
            [of(*baseline, pair.numbers.baseline), of(*candidate, pair.numbers.candidate)];
        say::counts(self.voice, &self.baseline, &of_baseline, &self.candidate, &of_candidate)
    }

    /// How often luck alone does this.
    pub(crate) fn luck(&self, estimate: &Estimate) -> String {
        // Beside an interval that holds no difference, a chance as small as its tails would say the opposite.
        let cannot_tell = self.judgment.decision.kind == DecisionKind::CannotTell;
        if cannot_tell && estimate.chance_if_same < 1.0 - estimate.decided_by.level {
            return String::new();
        }
        say::luck(self.voice, self.order_of_luck(), &chance(self.voice, estimate.chance_if_same))
    }

    /// `Allowing for luck, the true difference may lie anywhere from 5 yd less to 11 yd more (95 % interval).`
    pub(crate) fn between(&self, estimate: &Estimate) -> String {
        if self.says_next_to_nothing() {
            return self.no_limits();
        }
        if self.judgment.facts.says_next_to_nothing {
            let widest = widest(&self.judgment.measure).unwrap_or(f64::INFINITY);
            return say::no_limits_in_doubt(self.voice, &self.subject.chosen(widest));
        }
        let (low, high) = self.ends(estimate);
        let level = level_text(self.voice, estimate.decided_by.level);
        say::between(self.voice, self.room(), &low, &high, &level)
    }

    /// `Cannot tell: anything between 5 yd less and 11 yd more.`
    pub(crate) fn cannot_tell_in_short(&self, estimate: &Estimate) -> String {
        if self.says_next_to_nothing() {
            return say::no_limits_in_short(self.voice);
        }
        if self.judgment.facts.says_next_to_nothing {
            return say::in_doubt_in_short(self.voice);
        }
        let (low, high) = self.ends(estimate);
        say::cannot_tell_in_short(self.voice, &low, &high)
    }

    /// That the interval is too wide to say anything, and how wide that is.
    fn no_limits(&self) -> String {
        let widest = widest(&self.judgment.measure).unwrap_or(f64::INFINITY);
        say::no_limits(self.voice, &self.subject.chosen(widest))
    }

    /// Whether the answer is that these shots say next to nothing. One value that cannot be makes any interval wide, and is
    /// asked about where it stands.
    pub(crate) fn says_next_to_nothing(&self) -> bool {
        self.judgment.facts.says_next_to_nothing && !self.has_a_slip()
    }

    /// Whether it rests on averages, so that nobody speaks of these shots.
    pub(crate) fn is_of_averages(&self) -> bool {
        self.judgment.facts.rests_on == RestsOn::Averages
    }

    /// Whether a value of the two is outside what the measure can be, or ten times off the others.
    pub(crate) fn has_a_slip(&self) -> bool {
        let Judgment { baseline, candidate, measure, .. } = self.judgment;
        has_value_in_doubt(self.session, measure, [*baseline, *candidate])
    }

    /// Whether the interval leaves room for warming up and tiring.
    pub(crate) fn order_is_allowed_for(&self) -> bool {
        self.judgment.facts.order_allowance == OrderAllowance::Included
    }

    /// What a chance of luck holds of the order.
    fn order_of_luck(&self) -> Hit {
        let facts = &self.judgment.facts;
        match (facts.order_allowance, facts.order) {
            (OrderAllowance::NotNeeded, _) => Hit::Alike,
            (OrderAllowance::StartOfLaps, _) => Hit::SameOneFirst,
            (OrderAllowance::SizeNotKnown, _) if self.nothing_is_allowed_for_order() => Hit::LuckAlone,
            (_, HowHit::OneAfterTheOther) => Hit::InThisOrder,
            (_, HowHit::InTurnNotCompared) => Hit::NotCompared,
            (OrderAllowance::Included | OrderAllowance::SizeNotKnown, _) => Hit::InWhateverOrder,
        }
    }

    /// What has to be done first where the order is mixed up.
    fn first(&self) -> String {
        let facts = &self.judgment.facts;
        match facts.order {
            _ if !facts.order_is_mixed_up() => String::new(),
            HowHit::InTurnNotCompared => say::first_read_every_shot(self.voice, &self.subject.the()),
            _ => say::first_in_turn(self.voice),
        }
    }

    /// What has to be done first, and why.
    fn first_and_why(&self) -> Next {
        let facts = &self.judgment.facts;
        let in_turn = facts.order_is_mixed_up() && facts.order != HowHit::InTurnNotCompared;
        let why = if in_turn { say::why_in_turn(self.voice) } else { String::new() };
        Next::step(self.first()).and(why)
    }

    /// Both ends of the interval that decided: `5 yd less`, `11 yd more`.
    fn ends(&self, estimate: &Estimate) -> (String, String) {
        (self.end(estimate.decided_by.low), self.end(estimate.decided_by.high))
    }

    /// An end of an interval, on its own side of no difference and of the margin: `5 yd less`.
    pub(crate) fn end(&self, x: f64) -> String {
        let lines = lines(self.judgment.margin.map(Margin::value));
        if self.subject.is_nothing(x, &lines) {
            return say::no_difference(self.voice);
        }
        let direction = if x > 0.0 { Direction::Higher } else { Direction::Lower };
        say::gap(self.voice, &self.subject.end_amount(x, &lines), self.more(direction))
    }

    /// What to choose by where this measure does not decide.
    pub(crate) fn choose(&self, choice: &Choice) -> String {
        if self.has_a_slip() {
            return say::check_the_value(self.voice);
        }
        let (voice, measure) = (self.voice, capital(&self.subject.name));
        let name = |id: &MeasureId| Subject::of(id, self.session, voice).the();
        let meant = |meant: &Meant| {
            let name = name(&meant.measure);
            if meant.is_scatter { say::scatter_of(voice, &name) } else { name }
        };
        match choice {
            Choice::Freely { open } => sentences(&[
                say_choose::choose_freely(voice),
                open.as_ref().map_or_else(String::new, |open| say_choose::stays_open(voice, &name(open))),
            ]),
            Choice::After { others, is_hint } => {
                let names: Vec<String> = others.iter().map(meant).collect();
                say_choose::choose_after(voice, &measure, *is_hint, &listed(voice, &names))
            }
            Choice::NotSettled { open } => say_choose::choose_not_yet(voice, &measure, &meant(open)),
            Choice::GoOn { rounds } => say::go_on(voice, *rounds as usize),
            Choice::LookAt { build } => {
                let club = self.session.builds.get(*build).map_or_else(String::new, |b| short_name(&b.name));
                say_choose::choose_after_the_other_club(voice, &measure, &club)
            }
            Choice::AfterACheck { shots, asked, rounds_to_go: Some(rounds) } => {
                say_choose::choose_after_the_last_laps(voice, *rounds as usize, *shots, &name(asked))
            }
            Choice::AfterACheck { shots, asked, rounds_to_go: None } => {
                say_choose::choose_after_a_check(voice, *shots, &name(asked))
            }
            Choice::AfterALook => say::look_at_the_value(voice),
        }
    }

    /// Whether no more than a guess is allowed for the order, which is mixed up with the clubs: nobody knows how far it
    /// moves the measure.
    pub(crate) fn a_guess_is_allowed_for_order(&self) -> bool {
        self.judgment.facts.order_allowance == OrderAllowance::SizeNotKnown
    }

    /// Whether not even a guess is: averages have no shots to guess from.
    fn nothing_is_allowed_for_order(&self) -> bool {
        let allowed = |estimate: &Estimate| estimate.order_allowance > 0.0;
        self.a_guess_is_allowed_for_order() && !self.judgment.estimate.as_ref().is_some_and(allowed)
    }

    /// What an interval leaves room for.
    fn room(&self) -> Room {
        let allowance = self.judgment.estimate.as_ref().map_or(0.0, |estimate| estimate.order_allowance);
        match self.judgment.facts.allows_for(allowance) {
            AllowsFor::Luck => Room::Luck,
            AllowsFor::LuckAlone => Room::LuckAlone,
            AllowsFor::LuckAndOrder => Room::LuckAndOrder,
            AllowsFor::LuckAndAGuess => Room::LuckAndAGuess,
            AllowsFor::LuckAndStarts => Room::LuckAndStarts,
        }
    }

    /// What more shots would do.
    pub(crate) fn more_shots(&self, estimate: &Estimate) -> Next {
        let voice = self.voice;
        if self.has_a_slip() {
            return Next::step(say::check_the_value_first(voice));
        }
        if let Some(rounds) = self.judgment.facts.rounds_to_go() {
            return Next::step(say::go_on(voice, rounds as usize));
        }
        let mixed_up = self.judgment.facts.order_is_mixed_up();
        let first = self.first_and_why();
        if self.is_half_unread() {
            let name = &self.subject.the();
            return if mixed_up && self.judgment.facts.order != HowHit::InTurnNotCompared {
                first.and_step(say::have_it_measured(voice, name))
            } else {
                Next::step(say::first_read_every_shot(voice, name))
            };
        }
        if let Some(few) = self.judgment.facts.only_whole_laps {
            return Next::step(say::shorter_turns(voice, &few.longest_turn.to_string()));
        }
        let each = |shots: u32| count_of(voice, shots as usize);
        let assumed = self.judgment.facts.scatter_is_assumed;
        match estimate.more_shots {
            None if mixed_up => first.and_step(say::would_find(
                voice,
                assumed,
                &self.subject.amount(estimate.detectable_in_turn()),
            )),
            None => Next::step(say::shows_at_best(voice, &self.subject.amount(estimate.detectable))),
            Some(MoreShots::Tell { shots }) if mixed_up => {
                first.and_step(say::would_then_tell(voice, assumed, &each(shots), &self.margin()))
            }
            Some(MoreShots::Tell { shots }) => {
                let told = Next::step(say::would_tell(voice, &each(shots), &self.margin()));
                if estimate.three_visits_hold(shots) { told.and(say::another_day(voice)) } else { told }
            }
            Some(MoreShots::WereHitNotFixed { shots }) => {
                let level = level_text(voice, estimate.level);
                Next::step(say::fixed_would_tell(voice, &each(shots), &self.margin(), &level))
            }
            Some(MoreShots::TooMany { shots: shots @ ..=MOST_SHOTS_NAMED }) => first
                .and(say::more_than_a_visit(voice, assumed, &each(shots), &self.margin()))
                .and_step(say::other_days(voice)),
            Some(MoreShots::TooMany { .. }) => first.and_step(say::more_than_can_be_hit(voice, assumed)),
            Some(MoreShots::WereHit) => {
                let same_first = self.judgment.facts.order_allowance == OrderAllowance::StartOfLaps;
                Next::step(say::usually_tells(voice, same_first, &self.margin()))
            }
            Some(MoreShots::Narrow { shots, half_width }) => {
                // Below what it narrows: half of the interval that decided.
                let present = 0.5 * (estimate.high - estimate.low);
                let size = self.subject.at_most_beside(half_width, present);
                Next::step(say::narrows(voice, &each(shots), &size)).and(say::near_it(voice, &self.margin()))
            }
            Some(MoreShots::HardlyNarrow) => {
                Next::step(say::hardly_narrows(voice)).and(say::near_it(voice, &self.margin()))
            }
        }
    }

    /// How many shots in turn tell the club from the order; where that is too many for a visit, who says it.
    pub(crate) fn shots_in_turn(&self, estimate: &Estimate) -> Next {
        if self.has_a_slip() {
            return Next::step(say::check_the_value_first(self.voice));
        }
        if let Some(rounds) = self.judgment.facts.rounds_to_go() {
            return Next::step(say::go_on(self.voice, rounds as usize));
        }
        if self.judgment.facts.order == HowHit::InTurnNotCompared {
            return Next::step(self.first());
        }
        let how_many = match estimate.more_shots {
            Some(MoreShots::Tell { shots }) => {
                let assumed = self.judgment.facts.scatter_is_assumed;
                let shots = count_of(self.voice, shots as usize);
                say::in_turn_would_tell(self.voice, assumed, &shots, &self.margin())
            }
            _ => say::plan_says_how_many(self.voice),
        };
        Next::step(say::in_turn_settles_order(self.voice)).and(how_many)
    }

    /// The margin in words, empty without one.
    pub(crate) fn margin(&self) -> String {
        self.judgment.margin.map(|m| self.subject.chosen(m.value())).unwrap_or_default()
    }
}
