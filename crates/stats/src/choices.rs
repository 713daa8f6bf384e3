//! Every constant in this crate that is a choice of the project and not of a textbook.
//!
//! They were picked by simulating sessions with the drift, warm-up and pick-up between sets that golfers
//! show, then confirmed on fresh seeds; `cargo xtask calibrate` measures them again. A textbook result
//! never uses them: they enter only where a `CautiousDifference` is made, and where shots are planned for one.

/// Factor on the standard error of every headline difference.
///
/// Three shots in a row with one club are not independent: the fixed-effects interval of rounds of three
/// misses in 6 to 9 % of sessions where it promises 5 % (typical and hard sessions, 6 to 30 shots a build).
/// Times 1.10 it misses in 2 to 6 %, at the price of a tenth more width; the paired interval, always exact,
/// is useless below five rounds. Welch gets the same factor, so that more rounds never mean less caution.
pub const WIDENING: f64 = 1.10;

/// What every shot more in a turn than three adds to the square of that factor.
///
/// It was measured on turns of three; the more shots in a row, the more of them lean on each other. On equal builds in
/// two rounds of turns of five it errs in up to 10 % of hard sessions without, in up to 7 % with it, at the price of a
/// twentieth more width there.
pub const WIDENING_PER_SHOT: f64 = 0.07;

/// What following the seen memory costs in width on average where shots do not lean on each other, as a share, times the
/// neighbors within rounds that it is read from: few of them often seem to lean. Plans count on it.
///
/// Invented sessions without drift, turns of three: 7 % at 15 neighbors, 4.5 % at 25, 2 % at 50.
pub const LEANING_COST: f64 = 1.1;

/// Below this p of the build × round interaction, the round comparison falls back to pairs of rounds.
///
/// The widening covers ordinary pick-up between sets (1 to 1.5 yd). When sets of one club differ from each
/// other far more than shots within them (4 yd was simulated), only rounds count as independent. Tests at
/// 0.25 or always pairing cost power without lowering the error further.
pub const INTERACTION_P: f64 = 0.05;

/// Turns longer than this, in shots with one build on average, make rounds that are blocks in small: whole
/// rounds then count as the unit, whatever the interaction says.
///
/// The widening was measured on turns of three. On equal builds in turns of five the headline errs in up to 6 %
/// of typical sessions and 10 % of hard ones; in turns of seven to fifteen without this rule in 7 to 17 % and 11
/// to 29 % (ball speed, which drifts most).
pub const LONGEST_TURN: f64 = 5.0;

/// Where one build has more shots than the other by more than this, its scatter may not stand for both: the error within
/// rounds is also worked out with each build's own, as Welch does, and the wider one counts.
///
/// With 5 shots of a build that scatters 1.7 times as far against 30 of the other the pooled error errs in up to 8 %.
pub const UNEQUAL_SHOTS: f64 = 1.25;

/// Shots needed with the widening are those of ideal theory times its square.
pub const SHOTS_FACTOR: f64 = WIDENING * WIDENING;

/// Power that plans aim for, and for which the detectable difference is quoted: 8 sessions in 10.
pub const PLANNED_POWER: f64 = 0.80;

/// How far builds usually differ, as a share of a single shot's standard deviation (4 yd of 11.5 for carry).
pub const PRIOR_SHARE: f64 = 0.35;

/// Factor on the standard error of a typical shot's difference (Huber's estimate in the model of laps).
///
/// It weighs stray shots less, so that little of what scatters covers for shots that lean on each other: with the
/// factor of averages, 1.10, its interval misses in 5 to 9 % of typical and hard sessions of 15 and 30 shots each, with 1.25 in
/// 3 to 6 %, with 1.40 in 2 to 4 % at the price of an eighth more width.
pub const TYPICAL_WIDENING: f64 = 1.25;
