// Generated from the Rust structs by `cargo xtask types`. Do not edit.

/**
 * How a feeling and the shots lie.
 */
export type Agreement = "shown" | "opposite" | "same" | "not_shown" | "not_measured";

/**
 * What [`in_standard_air`] is asked.
 */
export type AirRequest = {
  /**
   * The shots.
   */
  session: Session,
  /**
   * Air and wind of the session.
   */
  conditions: Conditions,
};

/**
 * What the interval that decided allows for what a session does to its shots.
 */
export type AllowedFor = { "kind": "up_to",
/**
 * In the unit of the measure asked for.
 */
size: number, } | { "kind": "nothing" } | { "kind": "not_said" };

/**
 * The answer to the question asked.
 */
export type Answer = {
  /**
   * The candidate it speaks of; null when there is none.
   */
  candidate: number | null,
  /**
   * What was decided.
   */
  decision: Decision,
  /**
   * Null when nothing can be estimated.
   */
  estimate: Estimate | null,
  /**
   * Sentences for it.
   */
  words: Words,
  /**
   * What is known of how it came about; null when there is no candidate.
   */
  facts: PairFacts | null,
};

/**
 * What only the golfer knows, and a tap can say.
 */
export type Ask = { "about": "number_of_shots" } | { "about": "order" } | { "about": "shot",
/**
 * Its place in the session, from 0.
 */
shot: number, };

/**
 * The question with every default filled in, so that a link opened later says the same.
 */
export type Asked = {
  /**
   * Index of the baseline.
   */
  baseline: number,
  /**
   * Index of the candidate, null when there is none.
   */
  candidate: number | null,
  /**
   * The measure.
   */
  measure: MeasureId,
  /**
   * What better means.
   */
  goal: Goal,
  /**
   * The smallest difference that matters, null for a measure without a default.
   */
  margin: number | null,
  /**
   * Whether the margin is the measure's default.
   */
  margin_is_default: boolean,
  /**
   * How it was decided when to stop.
   */
  stopping: Stopping,
};

/**
 * The averages of one build.
 */
export type AveragesRow = {
  /**
   * The build, as the sentence names it.
   */
  name: string,
  /**
   * The number of shots, null when it is not said.
   */
  n: number | null,
  /**
   * Averages as written, by measure.
   */
  values: { [key in string]: number },
};

/**
 * Whose doing a part is.
 */
export type Belongs = "swing" | "both" | "unexplained";

/**
 * The typical shot beside the average.
 */
export type Beside = "agree" | "only_typical" | "only_average" | "same_gap_less_surely" | "opposite" | "one_is_the_same";

/**
 * The aim that would hit most.
 */
export type BestAim = {
  /**
   * Yd right of where it was aimed; negative is left.
   */
  aim: number,
  /**
   * Chance with that aim. Where the center truly lies is not known, which the chance includes.
   */
  chance: HitChance,
  /**
   * What it adds to the chance as aimed.
   */
  gain: HitChance,
};

/**
 * Launches and spins that carry as far as the best of the window, to 2 yd.
 */
export type BestBand = {
  /**
   * Lowest launch, deg.
   */
  launch_low: number,
  /**
   * Highest launch, deg.
   */
  launch_high: number,
  /**
   * Lowest spin, rpm.
   */
  spin_low: number,
  /**
   * Highest spin, rpm.
   */
  spin_high: number,
  /**
   * What it would add, yd; never below zero.
   */
  gain: number,
  /**
   * Whether the window set it, not the flight.
   */
  at_edge: boolean,
};

/**
 * What to bet, told.
 */
export type Bet = {
  /**
   * The figures; null where nothing is bet.
   */
  facts: BetFacts | null,
  /**
   * Why nothing is bet; null where something is.
   */
  why: NoBet | null,
  /**
   * Sentences.
   */
  words: BetWords,
};

/**
 * A bet on one candidate. Gaps are candidate − baseline, in the unit of the measure.
 */
export type BetFacts = {
  /**
   * Index of the baseline.
   */
  baseline: number,
  /**
   * Index of the candidate.
   */
  candidate: number,
  /**
   * The measure.
   */
  measure: MeasureId,
  /**
   * Unit of every gap here.
   */
  unit: string,
  /**
   * Which way the chances are counted: the one that the shots point.
   */
  toward: Direction,
  /**
   * The smallest difference that matters; null without one.
   */
  margin: number | null,
  /**
   * What differs, as far as it was said; null where nobody did.
   */
  differs: Differs | null,
  /**
   * How far such builds are taken to differ, as standard deviations of true gaps: over this the chances range.
   */
  usual: Range,
  /**
   * The same for each kind of change.
   */
  usual_for: UsualFor,
  /**
   * The gap that is bet on.
   */
  gap: PulledGap,
  /**
   * Chance of any difference that way.
   */
  at_all: ChanceRange,
  /**
   * Chance of one of the margin or more; null without a margin above zero.
   */
  by_margin: ChanceRange | null,
  /**
   * Of ten pairs of shots.
   */
  pairs: PairsOfShots,
  /**
   * What the chances of a gap rest on, where that is less than the shots hit; null elsewhere.
   */
  rests_on: BetRestsOn | null,
  /**
   * Whether the error holds what warming up and tiring may do.
   */
  order_in_it: boolean,
  /**
   * Whether a drift that these shots show pushes the gap the way they point.
   */
  drift_points_there: boolean,
};

/**
 * What is bet on, where it is less than all the shots hit.
 */
export type BetRestsOn = {
  /**
   * The laps that hold both clubs, where they were compared lap by lap.
   */
  laps: number | null,
  /**
   * The shots with this measure that count.
   */
  n: Counts,
};

/**
 * Sentences of a bet; empty where there is nothing to say.
 */
export type BetWords = {
  /**
   * The one line that stands below a verdict.
   */
  line: string,
  /**
   * Beside its dots: the chance of any difference.
   */
  at_all: string,
  /**
   * Beside its dots: the chance of one that matters.
   */
  by_margin: string,
  /**
   * Beside its dots: one shot against one shot.
   */
  pairs: string,
  /**
   * The gap as the shots show it, and as it is most likely.
   */
  gap: string,
  /**
   * What is taken for usual.
   */
  usual: string,
  /**
   * What else belongs to it, and why nothing is bet.
   */
  note: string,
};

/**
 * Which way of a measure is usually wanted.
 */
export type Better = "higher" | "lower" | "nearer_zero" | "depends";

/**
 * One bar.
 */
export type Bin = {
  /**
   * Left edge, in the measure's unit, candidate − baseline.
   */
  low: number,
  /**
   * Right edge.
   */
  high: number,
  /**
   * Gaps in it.
   */
  count: number,
};

/**
 * Both answers where shots were set aside and something can be estimated with and without them.
 */
export type BothWays = {
  /**
   * With every shot.
   */
  every: Way,
  /**
   * Without those set aside.
   */
  without: Way,
};

/**
 * A club as assembled: head, loft, shaft, length, weight. Known here by its name only.
 */
export type Build = {
  /**
   * As the golfer wrote it. May hold anything: it is text, never markup.
   */
  name: string,
};

/**
 * One build on the ground.
 */
export type BuildLanding = {
  /**
   * Sentences.
   */
  words: BuildWords,
  /**
   * Index of the build.
   */
  build: number,
  /**
   * Shots with carry and offline.
   */
  n: number,
  /**
   * Average place, as hit.
   */
  center: Spot,
  /**
   * Where the next shots would fall, half of them and nine tenths; empty for too few shots.
   */
  ovals: Array<Oval>,
  /**
   * Shots on the fairway at this aim, counted.
   */
  counted: number,
  /**
   * The same as a share, 0 to 1, with its interval.
   */
  counted_share: HitChance,
  /**
   * The same as it is told and drawn, in whole shots of a hundred; null for too few shots.
   */
  of_100: InHundred | null,
  /**
   * Share counted on the fairway as aimed on the day.
   */
  counted_as_aimed: number,
  /**
   * Chance at this aim; null for too few shots.
   */
  at_aim: HitChance | null,
  /**
   * Chance as aimed on the day; null for too few shots.
   */
  as_aimed: HitChance | null,
  /**
   * The aim that would hit most; null for too few shots.
   */
  best: BestAim | null,
};

/**
 * Sentences about one build.
 */
export type BuildWords = {
  /**
   * What its dots show; empty for too few shots.
   */
  dots: string,
  /**
   * Its average miss.
   */
  miss: string,
  /**
   * What was counted at this aim, and what the curve says, each with its interval.
   */
  chance: string,
  /**
   * What the best aim would do.
   */
  best: string,
};

/**
 * The lines of a picture of the answer.
 */
export type CardWords = {
  /**
   * What was compared.
   */
  title: string,
  /**
   * The answer.
   */
  headline: string,
  /**
   * How large and how sure; empty when nothing can be estimated.
   */
  difference: string,
  /**
   * Shots of each build and how they were hit.
   */
  counts: string,
  /**
   * How many were left out and why; says so when none was.
   */
  left_out: string,
  /**
   * What else stands over the answer, one line each.
   */
  warnings: Array<string>,
  /**
   * All of it for those who cannot see the picture.
   */
  alternative: string,
};

/**
 * Carry on a grid of launches and spins.
 */
export type CarryMap = {
  /**
   * Ball speed it was flown at, mph.
   */
  ball_speed: number,
  /**
   * Launches of the columns, deg, ascending.
   */
  launches: Array<number>,
  /**
   * Spins of the rows, rpm, ascending.
   */
  spins: Array<number>,
  /**
   * Carry, yd, row after row.
   */
  carries: Array<number>,
  /**
   * Carries at which a line is drawn, yd, ascending.
   */
  lines: Array<number>,
  /**
   * The shots that can be flown, at their own launch and spin.
   */
  shots: Array<OnMap>,
};

/**
 * What carries may have been in, read as yards.
 */
export type CarryUnit = "meters" | "feet";

/**
 * A gap in carry and where it comes from.
 */
export type Cause = {
  /**
   * Adds up to the gap; the rest is last.
   */
  parts: Array<Part>,
  /**
   * The part of ball speed once more, as club speed and smash; empty without club speed.
   */
  ball_speed: Array<Part>,
  /**
   * What the club did on its way to the ball, where that was measured.
   */
  swing: Array<Moved>,
  /**
   * What of a difference in spin or curve the delivery explains, roughly.
   */
  spin: Array<SpinSource>,
  /**
   * Sentences.
   */
  words: CauseWords,
  /**
   * Index of the baseline.
   */
  baseline: number,
  /**
   * Index of the candidate.
   */
  candidate: number,
  /**
   * Gap in measured carry of the shots that can be flown, yd.
   */
  gap: number,
  /**
   * Shots with the baseline that can be flown.
   */
  baseline_shots: number,
  /**
   * Shots with the candidate that can be flown.
   */
  candidate_shots: number,
  /**
   * Shots of the two that cannot.
   */
  not_flown: number,
  /**
   * The clear part that goes the way of the gap and is largest; null when none is.
   */
  main: Factor | null,
  /**
   * Resamples behind each interval.
   */
  draws: number,
  /**
   * Seed they were drawn from.
   */
  seed: number,
};

/**
 * What [`cause`] is asked.
 */
export type CauseRequest = {
  /**
   * The shots.
   */
  session: Session,
  /**
   * Index of the baseline.
   */
  baseline: number,
  /**
   * Index of the candidate.
   */
  candidate: number,
  /**
   * Which hand the golfer plays with.
   */
  hand?: Hand,
};

/**
 * Sentences about where a gap comes from.
 */
export type CauseWords = {
  /**
   * The finding in one sentence.
   */
  headline: string,
  /**
   * What the swing did that day; what belongs to both.
   */
  detail: string,
  /**
   * What to take to a coach, by the number through which the gap came; empty where none is named.
   */
  next: string,
  /**
   * What could not be attributed, and what measuring it would settle; one sentence each.
   */
  unmeasured: Array<string>,
  /**
   * What the split is good for, and what it does not say.
   */
  note: string,
  /**
   * The picture for those who hear it.
   */
  alternative: string,
};

/**
 * One of the four cells.
 */
export type Cell = {
  /**
   * Index of the build.
   */
  build: number,
  /**
   * Whether it is the second condition.
   */
  is_second: boolean,
  /**
   * Shots.
   */
  n: number,
  /**
   * Their average.
   */
  mean: number,
};

/**
 * Gaps that chance alone gives between two equal clubs.
 *
 * Both are one club here: the shots of both builds, each less its build's average, are one pool that n and n are
 * drawn from, with replacement; see [`chance_gaps`].
 */
export type Chance = {
  /**
   * Every drawn gap counted to both sides.
   */
  histogram: Histogram,
  /**
   * Pairs of averages drawn.
   */
  draws: number,
  /**
   * Seed they were drawn from.
   */
  seed: number,
  /**
   * Half of all gaps are smaller than this.
   */
  usual: number,
  /**
   * Share of gaps that reach the margin, to either side; null without a margin.
   */
  beyond_margin: number | null,
};

/**
 * A chance over what is usual.
 */
export type ChanceRange = {
  /**
   * Between 0 and 1.
   */
  chance: Range,
  /**
   * As it is told.
   */
  of_ten: Tens,
};

/**
 * What [`check`] is asked.
 */
export type CheckRequest = {
  /**
   * The shots.
   */
  session: Session,
  /**
   * What is asked of them.
   */
  question: Question,
};

/**
 * One tap that settles a doubt.
 */
export type Choice = {
  /**
   * What it says.
   */
  says: Settled,
  /**
   * On its button.
   */
  label: string,
};

/**
 * What to believe of a claim alone: pulled toward what clubs usually differ by, as every bet is.
 */
export type ClaimBet = {
  /**
   * The gap, candidate − own.
   */
  gap: PulledGap,
  /**
   * The chance of any such gain.
   */
  at_all: ChanceRange,
  /**
   * The smallest difference that matters; null without one.
   */
  margin: number | null,
  /**
   * The chance of a gain of that or more; null without one above zero.
   */
  by_margin: ChanceRange | null,
};

/**
 * How claim and retest lie.
 */
export type ClaimKind = "supported" | "at_least" | "too_small" | "contradicted" | "not_settled" | "no_retest";

/**
 * What luck alone does with as many shots as the claim rested on.
 */
export type ClaimLuck = {
  /**
   * Scatter of single shots that was taken: the retest's, or what is usual.
   */
  shot_sd: number,
  /**
   * Whether it is the retest's.
   */
  from_retest: boolean,
  /**
   * Size of the gap that luck sets between two equal clubs on average.
   */
  usual_gap: number,
  /**
   * Share of fittings of equal clubs whose best one would show at least the claimed gap.
   */
  chance: number,
  /**
   * Lead of the best of as many equal clubs as were tried, on average; 0 for one.
   */
  best_of: number,
  /**
   * What to believe of the claim alone; null where nothing is bet: how far the order of a fitting moves the measure is not
   * known, or an average nearer to zero is asked for.
   */
  bet: ClaimBet | null,
  /**
   * Half-width, at 95 %, of what the claim's own shots could know.
   */
  error_95: number,
  /**
   * What warming up and tiring can add where clubs are not hit in turn.
   */
  order_allowance: number,
};

/**
 * Why a claim is not settled, where that is not the width of the interval.
 */
export type ClaimOpen = "value_in_doubt" | "order_unknown" | "next_to_nothing";

/**
 * A claim held against a retest.
 */
export type ClaimReport = {
  /**
   * The retest's own answer; null without one.
   */
  answer?: Answer,
  /**
   * The retest's difference, as it is printed in the picture; null without one.
   */
  printed?: Printed,
  /**
   * In words.
   */
  words: ClaimWords,
  /**
   * How they lie.
   */
  kind: ClaimKind,
  /**
   * Why it is not settled, where that is not the width of the interval; absent elsewhere.
   */
  open?: ClaimOpen,
  /**
   * The claimed difference, new − own.
   */
  claimed: number,
  /**
   * The candidate of the retest; null without one.
   */
  candidate?: number,
  /**
   * Whether shots or averages of both clubs are there to hold it against.
   */
  is_hit_again: boolean,
  /**
   * The retest's difference, by the interval that decided; null without one.
   */
  retest?: Interval,
  /**
   * Claim − retest, by the interval that decided.
   */
  difference?: Interval,
  /**
   * Whether the luck of the claim's own shots, and the order they were hit in, are enough to explain the distance
   * between both; null where the shots are not known.
   */
  luck_explains?: boolean,
  /**
   * What luck and picking would produce; null where the claim's shots or their scatter are not known.
   */
  luck?: ClaimLuck,
  /**
   * What each unit of gain costs; null without a price or a retest.
   */
  price?: Price,
};

/**
 * What [`claim`] is asked.
 */
export type ClaimRequest = {
  /**
   * What the fitting said.
   */
  claimed: Claimed,
  /**
   * The retest; one without shots leaves only what luck does.
   */
  session: Session,
  /**
   * What is asked of it.
   */
  question: Question,
};

/**
 * Sentences about a claim.
 */
export type ClaimWords = {
  /**
   * The outcome in one sentence.
   */
  headline: string,
  /**
   * What the retest showed.
   */
  detail: string,
  /**
   * What luck and picking would have produced.
   */
  luck: string,
  /**
   * What each unit costs; empty without a price.
   */
  price: string,
  /**
   * What to do.
   */
  next: string,
};

/**
 * What was claimed, and on what it rested.
 */
export type Claimed = {
  /**
   * Average with the golfer's own club.
   */
  before?: number,
  /**
   * Average with the new one.
   */
  after?: number,
  /**
   * The promised gain toward the goal, without a sign, where no averages were given.
   */
  gain?: number,
  /**
   * Shots behind `before`.
   */
  shots_before?: number,
  /**
   * Shots behind `after`.
   */
  shots_after?: number,
  /**
   * New clubs that were tried before this one was named; 1 when left open.
   */
  tried?: number,
  /**
   * What it costs, in any currency.
   */
  price?: number,
  /**
   * How the currency is written.
   */
  currency?: string,
};

/**
 * One number for each shot; where a shot has none, something that is no number.
 */
export type Column = Float64Array | Array<number | null>;

/**
 * One column as it was understood.
 */
export type ColumnReading = {
  /**
   * Position in the text, from 0; the key for [`crate::Hints::columns`] and its like.
   */
  index: number,
  /**
   * Heading as written; empty when there is none.
   */
  heading: string,
  /**
   * What it was taken for.
   */
  role: Role,
  /**
   * Unit it was read in, as shown to the golfer; empty for none.
   */
  unit: string,
  /**
   * Where the unit comes from.
   */
  unit_source: UnitSource,
  /**
   * Decimal mark of its numbers, "." or ","; empty when no number has one.
   */
  decimal_mark: string,
  /**
   * The build that this column's values belong to, when the layout gives each its own columns.
   */
  build: string | null,
  /**
   * `false` when the reading needs the golfer's eye.
   */
  sure: boolean,
  /**
   * Other readings worth offering, best first.
   */
  alternatives: Array<Role>,
  /**
   * Other units worth offering.
   */
  units: Array<string>,
  /**
   * The unit in which the whole column would make sense, when it makes none in its own.
   */
  unit_question: string | null,
};

/**
 * The shots of a session, a column for each thing that is known of them, in the order hit.
 */
export type Columns = {
  /**
   * Index into the session's builds; every shot has one.
   */
  build: Column,
  /**
   * The pass through the builds, from 1; empty when no shot has one.
   */
  round: Column,
  /**
   * The shot's own number; empty when no shot has one.
   */
  number: Column,
  /**
   * Index into the values of the session's second factor; empty when no shot has one.
   */
  second: Column,
  /**
   * Canonical units, by measure id.
   */
  values: { [key in MeasureId]: Column },
  /**
   * Positions of shots that were set aside, each with its reason.
   */
  left_out: Array<[number, string]>,
  /**
   * Positions of shots with a note, each with it.
   */
  notes: Array<[number, string]>,
};

/**
 * Sessions combined on one pair.
 */
export type CombinedDays = {
  /**
   * Candidate − baseline.
   */
  value: number,
  /**
   * The interval that decides 'different'.
   */
  different: Interval,
  /**
   * The interval that decides 'same'.
   */
  same: Interval,
  /**
   * Days in it.
   */
  days: number,
  /**
   * The spread of the true difference from day to day that is assumed beforehand: the scale of a half-normal distribution
   * of its standard deviation.
   */
  assumed: number,
  /**
   * That standard deviation as the days alone show it; 0 where their shots explain all.
   */
  between: number,
  /**
   * How far apart the days lie.
   */
  lie: DaysLie,
  /**
   * What warming up and tiring may do.
   */
  order: OrderOverDays,
  /**
   * Part of each half-width that stands for that.
   */
  order_allowance: number,
  /**
   * Half of the width of the interval that decides 'different'.
   */
  half_width: number,
  /**
   * What that is to be expected to become with one more day of both clubs, as exact as these.
   */
  with_one_more: number,
  /**
   * Whether that is worth a day.
   */
  one_more: OneMoreDay,
};

/**
 * What is compared of the shots shown.
 */
export type Compared = "average" | "distance_from_zero";

/**
 * Air and wind. Everything left open is as in standard air: 15 °C at sea level, dry, calm.
 */
export type Conditions = {
  /**
   * Temperature of the air.
   */
  temperature?: number,
  /**
   * Its unit.
   */
  temperature_unit: TemperatureUnit,
  /**
   * Feet above sea level.
   */
  altitude_ft?: number,
  /**
   * Relative humidity, percent.
   */
  humidity_percent?: number,
  /**
   * Wind toward the target, mph; a wind in the face is negative.
   */
  wind_helping_mph?: number,
  /**
   * Wind blowing to the right, mph.
   */
  wind_to_right_mph?: number,
};

/**
 * Whether carry and launch belong together.
 */
export type Consistency = {
  /**
   * Rows that do not fit the others.
   */
  doubts: Array<Doubt>,
  /**
   * Sentences.
   */
  words: ConsistencyWords,
  /**
   * Rows that could be looked at.
   */
  rows: number,
  /**
   * Middle ratio of measured to modeled carry.
   */
  middle_ratio: number,
  /**
   * How far that is off as a whole.
   */
  fit: Fit,
  /**
   * Unit mistakes that would explain the whole session.
   */
  stories: Array<UnitStory>,
  /**
   * Whether the carries follow their launches too closely to have been seen.
   */
  is_computed: boolean,
};

/**
 * What [`consistency`] is asked.
 */
export type ConsistencyRequest = {
  /**
   * The shots.
   */
  session: Session,
};

/**
 * Sentences about whether carry and launch belong together.
 */
export type ConsistencyWords = {
  /**
   * The finding in one sentence.
   */
  headline: string,
  /**
   * Of the session as a whole.
   */
  session: string,
  /**
   * Whether the carry was seen.
   */
  computed: string,
  /**
   * What to do.
   */
  next: string,
};

/**
 * Number of shots behind an estimate.
 */
export type Counts = {
  /**
   * Shots with the baseline.
   */
  baseline: number,
  /**
   * Shots with the candidate.
   */
  candidate: number,
};

/**
 * A column that is no measure of the trade's list, kept under its own heading.
 */
export type CustomMeasure = {
  /**
   * Id made from the heading.
   */
  id: MeasureId,
  /**
   * The heading as written.
   */
  name: string,
  /**
   * Unit as written, empty when none was given.
   */
  unit: string,
};

/**
 * One session's part.
 */
export type Day = {
  /**
   * Index of the session.
   */
  session: number,
  /**
   * Its own answer on the pair; null when it does not hold both builds.
   */
  answer: Answer | null,
  /**
   * The build that the one it holds was held against, where it counts through that; null elsewhere.
   */
  through: string | null,
  /**
   * Share of the combined answer that it makes, 0 to 1.
   */
  weight: number,
};

/**
 * How far apart days lie, seen beside what is assumed.
 */
export type DaysLie = "not_seen" | "near" | "apart" | "far_apart";

/**
 * A decision with its reasons.
 */
export type Decision = {
  /**
   * What was decided.
   */
  kind: DecisionKind,
  /**
   * For `different` with a margin: is it large enough?
   */
  matters?: Matters,
  /**
   * For `different`: which way.
   */
  direction?: Direction,
  /**
   * For `cannot_answer`, and for `cannot_tell` with a special cause.
   */
  why?: Why,
  /**
   * For `different` where nearer to zero is better: which of the two is.
   */
  nearer?: Nearer,
};

/**
 * What was decided, once, from the interval and the smallest difference that matters.
 */
export type DecisionKind = "different" | "same" | "cannot_tell" | "cannot_answer";

/**
 * How cells are set apart.
 */
export type Delimiter = "comma" | "tab" | "semicolon" | "pipe" | "spaces" | "lines" | "html" | "json";

/**
 * Which of the two did more.
 */
export type DidMore = "change" | "club" | "not_settled";

/**
 * What differs between two builds, as far as the golfer says it: how far apart such builds usually lie. A bet needs it, the
 * verdict never reads it.
 */
export type Differs = "shaft" | "head" | "old_club";

/**
 * Which way the candidate differs from the baseline.
 */
export type Direction = "higher" | "lower";

/**
 * A row whose numbers do not belong together.
 */
export type Doubt = {
  /**
   * In words.
   */
  words: string,
  /**
   * Place of the shot in the session.
   */
  shot: number,
  /**
   * Index of its build.
   */
  build: number,
  /**
   * Carry as read, yd.
   */
  carry: number,
  /**
   * Carry of its own launch, brought to this session's ball and device, yd.
   */
  expected: number,
  /**
   * How far off.
   */
  fit: Fit,
  /**
   * Unit mistakes that would explain it, the likeliest first.
   */
  stories: Array<UnitStory>,
};

/**
 * What a doubt is about.
 */
export type DoubtKind = "many_clubs" | "measure_guessed" | "unknown_heading" | "headed_alike" | "unit" | "unit_of_club" | "units_mixed" | "out_of_range" | "point_slipped" | "above_total" | "plus_minus" | "odd_spread" | "same_name" | "one_row" | "odd_name" | "left_out_why";

/**
 * How two builds share what a session does to its shots.
 */
export type DriftShared = "alike" | "in_part" | "not";

/**
 * An effect, told.
 */
export type Effect = {
  /**
   * Its interval as it is printed.
   */
  printed: Printed,
  /**
   * In words.
   */
  words: string,
  /**
   * Its size, in the measure's unit.
   */
  value: number,
  /**
   * The interval that decided: for 'the same' the one that lies inside the margin.
   */
  range: Interval,
  /**
   * What was decided.
   */
  decision: Decision,
  /**
   * Whether it cannot be told because the interval is wider than the measure can plausibly differ by.
   */
  says_next_to_nothing: boolean,
  /**
   * Part of each half-width that stands for warming up and tiring.
   */
  order_allowance: number,
  /**
   * As a textbook prints it: standard error, degrees of freedom, two-sided p.
   */
  se: number,
  /**
   * Degrees of freedom.
   */
  df: number,
  /**
   * Two-sided p, unwidened.
   */
  p: number,
};

/**
 * The headline difference, candidate − baseline, as the decision saw it: widened, with its allowance.
 */
export type Estimate = {
  /**
   * Difference of averages (or ratio of spreads).
   */
  value: number,
  /**
   * Lower end of the interval that decides `different`.
   */
  low: number,
  /**
   * Upper end of it.
   */
  high: number,
  /**
   * Its level.
   */
  level: number,
  /**
   * The interval that decides `same`.
   */
  equivalence: Interval,
  /**
   * Which of the two decided, and is told: that of `same` where the answer is that or 'too small to matter'.
   */
  decided_by: Interval,
  /**
   * Unit of all of them, empty for a plain ratio.
   */
  unit: string,
  /**
   * Shots behind it.
   */
  n: Counts,
  /**
   * How it was made.
   */
  method: Method,
  /**
   * Part of each half-width that stands for warming up and tiring, 0 when hit in turn.
   */
  order_allowance: number,
  /**
   * How often two identical builds would show a gap at least this large in a session like this.
   */
  chance_if_same: number,
  /**
   * Smallest true difference that a session like this shows in 8 of 10 cases.
   */
  detectable: number,
  /**
   * Shots with each build with which 8 of 10 planned tests in turns tell, whatever is true: different or the same.
   */
  shots_to_settle?: number,
  /**
   * What more shots would do for this answer; null where they are not called for, and without a margin.
   */
  more_shots?: MoreShots,
};

/**
 * Through what a part of the gap came.
 */
export type Factor = "ball_speed" | "launch_angle" | "spin_rate" | "launch_direction" | "spin_axis" | "rest" | "club_speed" | "smash";

/**
 * The golfer's say beside the verdict.
 */
export type Feel = {
  /**
   * One for each thing felt.
   */
  felt: Array<Felt>,
  /**
   * How to choose where the shots leave it open; empty where they do not.
   */
  choose: string,
};

/**
 * What [`feel`] is asked.
 */
export type FeelRequest = {
  /**
   * The shots.
   */
  session: Session,
  /**
   * What is asked of them.
   */
  question: Question,
  /**
   * What was felt.
   */
  say: OwnSay,
};

/**
 * One feeling beside the shots.
 */
export type Felt = {
  /**
   * The build it was said of.
   */
  build: number,
  /**
   * How it lies with the shots.
   */
  agreement: Agreement,
  /**
   * In one sentence.
   */
  words: string,
};

/**
 * One pair on one measure: decision, size, words and the numbers behind them.
 */
export type Finding = {
  /**
   * Index of the build the candidate is held against.
   */
  baseline: number,
  /**
   * Index of the build in question.
   */
  candidate: number,
  /**
   * The measure.
   */
  measure: MeasureId,
  /**
   * What was decided.
   */
  decision: Decision,
  /**
   * Null when nothing can be estimated.
   */
  estimate: Estimate | null,
  /**
   * The interval that decided, as it is printed; null as `estimate`.
   */
  printed: Printed | null,
  /**
   * Both answers where shots were set aside; null otherwise.
   */
  both_ways: BothWays | null,
  /**
   * Sentences for it.
   */
  words: Words,
  /**
   * Textbook results.
   */
  numbers: Numbers,
  /**
   * What is known of how it came about.
   */
  facts: PairFacts,
};

/**
 * How far a ratio of carries lies from 1.
 */
export type Fit = "fits" | "doubtful" | "does_not_fit";

/**
 * What a fitting can show and what it cannot.
 */
export type FittingReport = {
  /**
   * What its gap can be put down to.
   */
  gap: GapOf,
  /**
   * The same in one sentence.
   */
  headline: string,
  /**
   * What it can show, a sentence for each line that holds.
   */
  shows: Array<string>,
  /**
   * What it cannot show, a sentence for each line that does not hold.
   */
  cannot: Array<string>,
  /**
   * What would matter and is not known, to stand in a list.
   */
  not_known: Array<string>,
  /**
   * What to do next.
   */
  next: string,
};

/**
 * What is said of each line; `None` where nobody knows, or nobody said.
 */
export type FittingSeen = {
  /**
   * [`Line::OwnClub`].
   */
  own_club: boolean | null,
  /**
   * [`Line::AsOften`].
   */
  as_often: boolean | null,
  /**
   * [`Line::AsWarm`].
   */
  as_warm: boolean | null,
  /**
   * [`Line::InTurn`].
   */
  in_turn: boolean | null,
  /**
   * [`Line::Alike`].
   */
  alike: boolean | null,
  /**
   * [`Line::EveryShot`].
   */
  every_shot: boolean | null,
  /**
   * [`Line::NumberSaid`].
   */
  number_said: boolean | null,
  /**
   * [`Line::HitAgain`].
   */
  hit_again: boolean | null,
  /**
   * [`Line::Measured`].
   */
  measured: boolean | null,
  /**
   * [`Line::TakenHome`].
   */
  taken_home: boolean | null,
};

/**
 * What became of a launch, as the model flies it over level ground.
 */
export type FlightOf = {
  /**
   * Carry along the target line, yd.
   */
  carry: number,
  /**
   * Landing right of the target line, yd.
   */
  offline: number,
  /**
   * Landing right of the line on which the ball started, yd.
   */
  curve: number,
  /**
   * Peak height, yd.
   */
  apex: number,
  /**
   * Degrees at landing; 3 to 4 degrees biased.
   */
  descent_angle: number,
  /**
   * Seconds in the air.
   */
  hang_time: number,
  /**
   * Speed at landing, mph.
   */
  landing_speed: number,
  /**
   * Spin at landing, rpm.
   */
  landing_spin: number,
  /**
   * True where the coefficients were never compared with measurements.
   */
  extrapolated: boolean,
};

/**
 * What [`fly`] is asked.
 */
export type FlyRequest = {
  /**
   * The launch.
   */
  launch: Launch,
  /**
   * Air and wind; left open, standard still air.
   */
  conditions?: Conditions,
};

/**
 * What [`follow`] is asked.
 */
export type FollowRequest = {
  /**
   * The plan, as it was asked for.
   */
  plan: PlanRequest,
  /**
   * The shots in the order hit.
   */
  shots: Array<LoggedShot>,
  /**
   * Sets ended before their last shot.
   */
  ended: Array<number>,
  /**
   * Looks at the answer, in their order.
   */
  looks: Array<LookTaken>,
};

/**
 * Sentences for the card.
 */
export type FollowWords = {
  /**
   * `Set 2 of 6, Driver A, shot 1 of 3`, or that all is hit.
   */
  place: string,
  /**
   * Why the answer is covered, or that it may be looked at.
   */
  look: string,
  /**
   * What looking at this moment would do.
   */
  early: string,
  /**
   * How strict the answer is, once a look was taken that the plan did not hold; else empty.
   */
  stricter: string,
  /**
   * Notes on shots, by build; empty when there are none.
   */
  notes: string,
};

/**
 * What choosing could do for one build. Gaps are candidate − baseline, whichever build it is for.
 */
export type ForBuild = {
  /**
   * Index of the build.
   */
  build: number,
  /**
   * Its best choice against the other's worst.
   */
  best: number,
  /**
   * Its best choice against all shots of the other.
   */
  against_all: number,
  /**
   * Share of all pairs of choices that speak for it by the margin or more; without a margin, at all.
   */
  share: number,
};

/**
 * Figures found in sentences, as the forms of the page hold them.
 */
export type Form = { "kind": "averages", "rows": Array<AveragesRow> } | { "kind": "list", "rows": Array<ListRow> };

/**
 * How often a test like this finds a true difference of some size.
 */
export type Found = {
  /**
   * In words: `10 yd: 5 times in 10`.
   */
  words: string,
  /**
   * The true difference, in the measure's unit; a ratio for the goal `tighter`.
   */
  difference: number,
  /**
   * Share of tests that call it different at one of the looks, 0 to 1.
   */
  chance: number,
  /**
   * Share of tests that call typical shots this far apart different at one of the looks; null where that is not known.
   */
  typical: number | null,
  /**
   * Share of pairs of such visits on two days, each hit to its end, that are called different when put together; null where
   * that is not known.
   */
  two_visits: number | null,
};

/**
 * What a group could carry more, as far as a size is named: from what one change alone brings to what both do.
 */
export type Gain = { "kind": "nothing" } | { "kind": "not_named" } | { "kind": "alone",
/**
 * Yd.
 */
size: number, } | { "kind": "both",
/**
 * Yd.
 */
size: number, } | { "kind": "range",
/**
 * The better single change, yd.
 */
low: number,
/**
 * Both at their best, yd.
 */
high: number, };

/**
 * What the gap of a fitting can be put down to.
 */
export type GapOf = "the_clubs" | "something_else_too" | "choosing" | "both" | "no_own_club" | "own_club_not_known" | "not_all_known";

/**
 * What 'better' means on the chosen measure.
 */
export type Goal = "higher" | "lower" | "nearer_zero" | "tighter" | "different";

/**
 * Average and spread of one build on one measure; all its shots.
 */
export type Group = {
  /**
   * Number of shots.
   */
  n: number,
  /**
   * Average.
   */
  mean: number,
  /**
   * Standard deviation, null with fewer than two shots.
   */
  sd: number | null,
};

/**
 * Sentences about one group.
 */
export type GroupWords = {
  /**
   * Its name.
   */
  name: string,
  /**
   * What it could carry more, beside its bar.
   */
  gain: string,
  /**
   * What it does now.
   */
  now: string,
  /**
   * What another launch would do.
   */
  launch: string,
  /**
   * What another spin would do.
   */
  spin: string,
  /**
   * What the best of the window would do.
   */
  best: string,
};

/**
 * Which hand the golfer plays with, for the words.
 */
export type Hand = "right" | "left";

/**
 * What the golfer says about the text; overrules every guess. All of it may be left out.
 */
export type Hints = {
  /**
   * How cells are set apart.
   */
  delimiter?: Delimiter,
  /**
   * How shots lie in the text.
   */
  layout?: Layout,
  /**
   * "." or ",", for every column that `decimal_marks` does not name.
   */
  decimal_mark?: string,
  /**
   * "." or "," by column position.
   */
  decimal_marks?: { [key in number]: string },
  /**
   * What columns hold, by position.
   */
  columns?: { [key in number]: Role },
  /**
   * Units by column position, in the words of `ColumnReading.units`.
   */
  units?: { [key in number]: string },
  /**
   * What lines are, by line number.
   */
  lines?: { [key in number]: LineIs },
  /**
   * Name of the build that all shots without one belong to.
   */
  build?: string,
  /**
   * Other names for builds, by the name as read; two builds given one name become one.
   */
  names?: { [key in string]: string },
  /**
   * The measure of a table with one column for each build.
   */
  single_measure?: MeasureId,
  /**
   * How the shots were hit, when the golfer knows.
   */
  order?: Order,
  /**
   * The weather, for carry in standard air; an empty one takes back what the text says.
   */
  weather?: Conditions,
  /**
   * Read the letters O, l, I, S and B in numbers as the digits 0, 1, 1, 5 and 8.
   */
  letters_as_digits?: boolean,
  /**
   * Names of the builds of the texts that this one will be joined to: one spelled otherwise here is asked about.
   */
  others?: Array<string>,
  /**
   * What was said to doubts, by their keys.
   */
  settled?: { [key in string]: Settled },
};

/**
 * Bars from left to right without holes between them.
 */
export type Histogram = {
  /**
   * From the most negative gap to the most positive.
   */
  bins: Array<Bin>,
  /**
   * Gaps in all bins: every one drawn, to both sides.
   */
  total: number,
};

/**
 * A chance or a share, 0 to 1, with its interval: 95 % for one build, what is gained at the level of the ground.
 */
export type HitChance = {
  /**
   * As counted, or of a normal scatter like this one.
   */
  value: number,
  /**
   * Lower end.
   */
  low: number,
  /**
   * Upper end.
   */
  high: number,
};

/**
 * What is left of the shown lead of the candidate spoken of, and what luck alone would show.
 */
export type HonestLead = {
  /**
   * Candidates held against the baseline.
   */
  candidates: number,
  /**
   * Candidate − baseline as the shots show it.
   */
  shown: number,
  /**
   * What to expect of it: pulled toward what clubs usually differ by.
   */
  honest: number,
  /**
   * The lead over the baseline that the best of as many equal clubs would show on average; 0 for one.
   */
  by_luck: number,
};

/**
 * What is known of the order in which two clubs were hit, and whether it could be used.
 */
export type HowHit = "in_turn" | "in_turn_not_compared" | "one_after_the_other" | "not_known";

/**
 * One way to carry farther at the same ball speed.
 */
export type Improvement = {
  /**
   * Where: degrees for a launch, rpm for a spin.
   */
  at: number,
  /**
   * What it would add, yd; never below zero.
   */
  gain: number,
  /**
   * Whether the window set it, not the flight.
   */
  at_edge: boolean,
};

/**
 * What was counted, in whole shots of a hundred: what a golfer reads, and as many dots as are filled.
 */
export type InHundred = {
  /**
   * On the fairway, 1 to 99.
   */
  on: number,
  /**
   * Lower end of the interval.
   */
  low: number,
  /**
   * Upper end.
   */
  high: number,
};

/**
 * A session with the carry in standard air as one more measure.
 */
export type InStandardAir = {
  /**
   * In words.
   */
  words: string,
  /**
   * What that is worth.
   */
  note: string,
  /**
   * The session with the measure added, where it could be modeled.
   */
  session: Session,
  /**
   * Id of the added measure.
   */
  measure: MeasureId,
  /**
   * The smallest difference of it that usually matters: that of carry, yd.
   */
  margin: number,
  /**
   * Shots that got it.
   */
  shots: number,
  /**
   * What it does to an average shot, yd.
   */
  average_change: number,
};

/**
 * Two ends at a level.
 */
export type Interval = {
  /**
   * Lower end.
   */
  low: number,
  /**
   * Upper end.
   */
  high: number,
  /**
   * Coverage it is made for, between 0 and 1.
   */
  level: number,
};

/**
 * A shot on the ground, as hit.
 */
export type Landed = {
  /**
   * Its place in the session.
   */
  shot: number,
  /**
   * Index of its build.
   */
  build: number,
  /**
   * Where it landed.
   */
  place: Spot,
  /**
   * Whether it was set aside; it counts all the same.
   */
  left_out: boolean,
};

/**
 * Where they land.
 */
export type Landing = {
  /**
   * Builds that have such shots.
   */
  builds: Array<BuildLanding>,
  /**
   * Sentences.
   */
  words: LandingWords,
  /**
   * Width of the fairway, yd.
   */
  fairway: number,
  /**
   * Aim, yd right of its middle.
   */
  aim: number,
  /**
   * What can be asked for.
   */
  limits: LandingLimits,
  /**
   * Every shot with carry and offline, in the order hit.
   */
  shots: Array<Landed>,
  /**
   * The two builds asked about; null when one of them has too few shots.
   */
  pair: LandingPair | null,
  /**
   * Level of the intervals of what is gained, by aiming or by the other build: as strict as the answer.
   */
  level: number,
  /**
   * How the two builds were hit: no interval here leaves room for an order that is not in turn.
   */
  order: Order,
  /**
   * Whether turns were so long that each is a small block: no interval here leaves room for that either.
   */
  long_turns: boolean,
  /**
   * Which of the two numbers of these builds shows no scatter: nothing says then where the next shot would fall, nor what
   * luck does; null where both do.
   */
  no_scatter: MeasureId | null,
  /**
   * Resamples behind each interval.
   */
  draws: number,
  /**
   * Seed they were drawn from.
   */
  seed: number,
};

/**
 * What can be asked for.
 */
export type LandingLimits = {
  /**
   * Narrowest fairway, yd.
   */
  narrowest: number,
  /**
   * Widest fairway, yd.
   */
  widest: number,
  /**
   * Farthest aim to either side, yd.
   */
  farthest_aim: number,
};

/**
 * Candidate held against baseline, as both were aimed on the day.
 */
export type LandingPair = {
  /**
   * Index of the baseline.
   */
  baseline: number,
  /**
   * Index of the candidate.
   */
  candidate: number,
  /**
   * Candidate's center − baseline's, sideways, yd.
   */
  offline: number,
  /**
   * The same, long, yd.
   */
  carry: number,
  /**
   * How often two equal builds would show centers at least this far apart (Hotelling); null without scatter.
   */
  chance_if_same: number | null,
  /**
   * Candidate's chance − baseline's.
   */
  gain_of_club: HitChance,
  /**
   * What the best aim adds with the baseline, less what the candidate adds as aimed.
   */
  aim_over_club: HitChance,
};

/**
 * What [`landing`] is asked.
 */
export type LandingRequest = {
  /**
   * The shots.
   */
  session: Session,
  /**
   * Index of the baseline.
   */
  baseline: number,
  /**
   * Index of the build held against it; left open, none is.
   */
  candidate?: number,
  /**
   * Width of the fairway, yd; left open, a usual one.
   */
  fairway?: number,
  /**
   * Aim, yd right of the middle of the fairway; left open, as aimed.
   */
  aim?: number,
  /**
   * How it was decided when to stop; left open, it is not known, and the strictest level decides.
   */
  stopping?: Stopping,
  /**
   * Which hand the golfer plays with.
   */
  hand?: Hand,
};

/**
 * Sentences about where they land.
 */
export type LandingWords = {
  /**
   * What was counted with the two asked about and whether it settles anything, short enough to stand in the answer.
   */
  line: string,
  /**
   * The finding in one sentence.
   */
  headline: string,
  /**
   * What stands behind it.
   */
  detail: string,
  /**
   * How far the centers lie apart, and whether luck does that.
   */
  centers: string,
  /**
   * Said of the aim as it stands.
   */
  aim: string,
  /**
   * What the ovals are, and why a club has none.
   */
  ovals: string,
  /**
   * How chances and intervals were made, and what they do not know.
   */
  note: string,
  /**
   * The picture for those who hear it.
   */
  alternative: string,
};

/**
 * How a ball leaves the club, in the units of the measures.
 */
export type Launch = {
  /**
   * mph.
   */
  ball_speed: number,
  /**
   * Degrees above the ground.
   */
  launch_angle: number,
  /**
   * rpm, back and side spin together.
   */
  spin_rate: number,
  /**
   * Degrees right of the target.
   */
  launch_direction: number,
  /**
   * Degrees; positive curves to the right.
   */
  spin_axis: number,
};

/**
 * How shots lie in the text.
 */
export type Layout = "rows" | "blocks" | "column_per_build" | "row_per_build" | "side_by_side" | "column_after_column" | "averages" | "measures_down";

/**
 * The least and the most of a count.
 */
export type LeastAndMost = {
  /**
   * The least.
   */
  least: number,
  /**
   * The most.
   */
  most: number,
};

/**
 * One length of a test.
 */
export type Length = {
  /**
   * Passes through the builds.
   */
  rounds: number,
  /**
   * Balls with the warm-up.
   */
  balls: number,
  /**
   * About so many minutes.
   */
  minutes: number,
  /**
   * Share of tests that find a difference of the margin; null where the spread is not known.
   */
  margin_found: number | null,
  /**
   * The same for twice the margin; for the goal `tighter` its square.
   */
  double_found: number | null,
  /**
   * Share of tests that call equal builds the same.
   */
  same: number | null,
  /**
   * Whether it is the plan's own length.
   */
  is_plan: boolean,
};

/**
 * What a line was taken for.
 */
export type LineIs = "shot" | "summary" | "headings" | "units" | "build" | "text" | "problem";

/**
 * A line that is no shot, and what it was taken for.
 */
export type LineReading = {
  /**
   * Line, from 1; the key for [`crate::Hints::lines`].
   */
  line: number,
  /**
   * What it was taken for.
   */
  is: LineIs,
  /**
   * Its beginning.
   */
  text: string,
};

/**
 * Something about a link worth knowing that keeps it from nothing.
 */
export type LinkNotice = { "kind": "rounded",
/**
 * The measure.
 */
measure: MeasureId,
/**
 * In plain words.
 */
message: string, } | { "kind": "skipped",
/**
 * In plain words.
 */
message: string, };

/**
 * The shots of one build.
 */
export type ListRow = {
  /**
   * The build, as the sentence names it.
   */
  name: string,
  /**
   * Shots as written.
   */
  shots: Array<number>,
};

/**
 * One shot as it was written down in the bay.
 */
export type LoggedShot = {
  /**
   * Index of the set it belongs to, in the plan's order.
   */
  turn: number,
  /**
   * In canonical units; null or absent where nothing was read.
   */
  values: { [key in MeasureId]: number | null },
  /**
   * What the golfer said of it, such as `mishit`. It counts all the same.
   */
  note: string | null,
};

/**
 * After which rounds the answer may be looked at.
 */
export type LookAfter = LookWord | Array<number>;

/**
 * A look that was taken.
 */
export type LookTaken = {
  /**
   * Rounds that were complete.
   */
  after_round: number,
  /**
   * Whether shots of the next round were in already.
   */
  within_a_round: boolean,
};

/**
 * Usual choices of looks.
 */
export type LookWord = "at_end" | "halfway" | "every_round";

/**
 * When the numbers were looked at on the way.
 */
export type LookedAfter = number | Array<number>;

/**
 * How far luck reaches with these shots, told.
 */
export type Luck = {
  /**
   * What all shots say, as `check` answers.
   */
  answer: Answer,
  /**
   * Sentences.
   */
  words: LuckWords,
  /**
   * Index of the baseline.
   */
  baseline: number,
  /**
   * Index of the candidate.
   */
  candidate: number,
  /**
   * The measure.
   */
  measure: MeasureId,
  /**
   * Unit of every gap here.
   */
  unit: string,
  /**
   * The margin that shares are counted by; null for a measure without one.
   */
  margin: number | null,
  /**
   * What better means.
   */
  goal: Goal,
  /**
   * What is compared.
   */
  compared: Compared,
  /**
   * Which way a gap speaks for the candidate.
   */
  toward: Direction,
  /**
   * Shots shown of each build.
   */
  shown: number,
  /**
   * How few and how many could be.
   */
  limits: ShownLimits,
  /**
   * How they were chosen.
   */
  showing: Showing,
  /**
   * What chance alone does.
   */
  chance: Chance,
  /**
   * What choosing could do for the candidate.
   */
  for_candidate: ForBuild,
  /**
   * What choosing could do for the baseline.
   */
  for_baseline: ForBuild,
  /**
   * The choices that the shares are of.
   */
  pairs: Pairs,
  /**
   * Gaps of shots dealt blindly, as many as shown of each build, in the order dealt.
   */
  deals: Array<number>,
  /**
   * Gap between the averages of all shots.
   */
  gap: number,
  /**
   * Shots behind it.
   */
  n: Counts,
};

/**
 * What [`luck()`] is asked.
 */
export type LuckRequest = {
  /**
   * The shots.
   */
  session: Session,
  /**
   * What is asked of them.
   */
  question: Question,
  /**
   * Shots shown of each build; left open, five, or as many as there are.
   */
  shown?: number,
  /**
   * How they were chosen.
   */
  showing: Showing,
};

/**
 * Sentences about luck.
 */
export type LuckWords = {
  /**
   * Which share of all choices speaks for which build.
   */
  headline: string,
  /**
   * What the best choice shows for the candidate.
   */
  for_candidate: string,
  /**
   * What it shows for the baseline.
   */
  for_baseline: string,
  /**
   * What chance alone gives.
   */
  chance: string,
  /**
   * What all shots say of the gap; the answer's own words belong after it.
   */
  whole: string,
  /**
   * What each deal shows, in the order dealt.
   */
  deals: Array<string>,
  /**
   * Where the shares come from, and that nobody needs to mean it.
   */
  note: string,
  /**
   * The picture for those who hear it.
   */
  alternative: string,
};

/**
 * Whether a real difference is as large as the golfer asked for.
 */
export type Matters = "yes" | "maybe" | "no";

/**
 * One measure of the trade, in the language and the units of a voice.
 */
export type Measure = {
  /**
   * Stable id.
   */
  id: string,
  /**
   * The trade's name.
   */
  name: string,
  /**
   * Canonical unit.
   */
  unit: Unit,
  /**
   * Digits after the point that are worth showing.
   */
  decimals: number,
  /**
   * Which way is usually wanted.
   */
  better: Better,
  /**
   * Values outside are questioned, never removed.
   */
  plausible: Plausible,
  /**
   * Smallest difference that usually matters, in the canonical unit: what is decided by when nobody says another.
   */
  margin: number,
  /**
   * What a form offers in its place before the question is asked: in the canonical unit, and a round number in the
   * units shown. The same as `margin` in yards; in meters it is the golfer's own once the question holds it.
   */
  offered_margin: number,
  /**
   * Why that margin.
   */
  margin_why: string,
};

/**
 * The id of a measure: one of the trade's list, or made from the heading of a column of the golfer's own.
 */
export type MeasureId = string;

/**
 * How an estimate was made.
 */
export type Method = "rounds" | "welch_with_allowance" | "summary_with_allowance" | "summary_assumed_spread" | "spread_ratio";

/**
 * Shots of one club that fell far short of its typical one.
 */
export type MishitRate = {
  /**
   * How many.
   */
  found: number,
  /**
   * Of so many.
   */
  of: number,
  /**
   * Between which shares the club's own rate lies.
   */
  share: Interval,
};

/**
 * Mishits of both clubs.
 */
export type Mishits = {
  /**
   * Of the baseline.
   */
  baseline: MishitRate,
  /**
   * Of the candidate.
   */
  candidate: MishitRate,
  /**
   * Which of the two had the larger share here.
   */
  more: MoreMishits,
  /**
   * Whether that is more than luck.
   */
  told_apart: boolean,
  /**
   * A shot this far below the typical one counts as one.
   */
  below: number,
};

/**
 * Which of the two was mishit more often in these shots.
 */
export type MoreMishits = "candidate" | "baseline" | "alike";

/**
 * What more shots would do.
 */
export type MoreShots = { "kind": "tell",
/**
 * Shots with each build.
 */
shots: number, } | { "kind": "too_many",
/**
 * Shots with each build.
 */
shots: number, } | { "kind": "were_hit" } | { "kind": "were_hit_not_fixed",
/**
 * Shots with each build.
 */
shots: number, } | { "kind": "narrow",
/**
 * Shots with each build.
 */
shots: number,
/**
 * Half of the 95 % interval that such a test leaves, in the unit of the measure.
 */
half_width: number, } | { "kind": "hardly_narrow" };

/**
 * A number of the delivery that was measured with both builds.
 */
export type Moved = {
  /**
   * In words.
   */
  words: string,
  /**
   * Which.
   */
  measure: MeasureId,
  /**
   * Candidate − baseline.
   */
  change: Span,
  /**
   * Whether the interval excludes no difference.
   */
  is_clear: boolean,
  /**
   * Whose doing.
   */
  belongs: Belongs,
};

/**
 * Which of two builds is nearer to zero, where nearer is better.
 */
export type Nearer = "candidate" | "baseline" | "not_settled";

/**
 * Why nothing is bet.
 */
export type NoBet = "nothing_compared" | "scatter" | "nearer_zero" | "averages" | "order_unknown" | "depends_on_left_out" | "value_in_doubt" | "next_to_nothing";

/**
 * Why nothing is said of the typical shot.
 */
export type NoTypical = "nothing_compared" | "scatter" | "averages" | "value_in_doubt" | "cannot_be_fitted";

/**
 * Something understood by a guess, or worth knowing, that costs no row.
 */
export type Notice = {
  /**
   * Which kind.
   */
  kind: NoticeKind,
  /**
   * Where.
   */
  place: Place,
  /**
   * In plain words.
   */
  message: string,
};

/**
 * What a notice is about.
 */
export type NoticeKind = "build_assumed" | "build_column_guessed" | "build_carried_down" | "no_headings" | "column_unsure" | "column_repeated" | "measure_guessed" | "unit_assumed" | "unit_question" | "implausible" | "letters_read" | "ordered_by_number" | "ordered_by_time" | "rounds_inferred" | "numbers_missing" | "numbers_repeated" | "summary_disagrees" | "summary_agrees" | "too_many_summaries" | "deviation_missing" | "count_missing" | "chosen_shots" | "perhaps_averages" | "text_passed_over" | "quotes_ignored" | "marked_values" | "column_too_sparse" | "second_mixed_up" | "something_changed" | "more";

/**
 * Whose turn it is.
 */
export type NowTurn = {
  /**
   * Index of the set in the plan.
   */
  index: number,
  /**
   * Index of the build.
   */
  build: number,
  /**
   * The round, from 1.
   */
  round: number,
  /**
   * The shot of the set that is next, from 1.
   */
  shot: number,
  /**
   * Shots of the set.
   */
  of: number,
  /**
   * Whether a club is taken in hand for this shot.
   */
  change: boolean,
  /**
   * Whether a rest is due before it.
   */
  rest: boolean,
};

/**
 * What was said of the number of shots.
 */
export type NumberOfShots = "said_fixed" | "said_not_fixed" | "not_said" | { "planned": {
  /**
   * Rounds that were hit.
   */
  round: number,
  /**
   * Rounds that were planned.
   */
  planned: number, } } | { "not_of_the_plan": {
  /**
   * Rounds that hold both clubs.
   */
  rounds: number,
  /**
   * Rounds that were planned.
   */
  planned: number, } };

/**
 * The numbers behind a finding, as a textbook would print them: no widening, no allowance.
 */
export type Numbers = {
  /**
   * The baseline's shots.
   */
  baseline: Group | null,
  /**
   * The candidate's shots.
   */
  candidate: Group | null,
  /**
   * Welch's comparison of the averages.
   */
  welch?: TextbookTest,
  /**
   * The comparison within rounds, where rounds exist.
   */
  round?: TextbookTest,
  /**
   * The comparison of the spreads, from five shots with each build.
   */
  spread?: RatioTest,
};

/**
 * Why a value is asked about.
 */
export type Odd = { "kind": "out_of_range",
/**
 * The least it can be.
 */
low: number,
/**
 * The most.
 */
high: number, } | { "kind": "point_slipped",
/**
 * The middle one of them.
 */
usual: number, } | { "kind": "moves_the_answer",
/**
 * By how much.
 */
by: number,
/**
 * What matters.
 */
margin: number, };

/**
 * A shot's place on the map.
 */
export type OnMap = {
  /**
   * Place of the shot in the session.
   */
  shot: number,
  /**
   * Index of its build.
   */
  build: number,
  /**
   * Launch angle, deg.
   */
  launch: number,
  /**
   * Spin, rpm.
   */
  spin: number,
};

/**
 * What one more day would do to the interval.
 */
export type OneMoreDay = "narrows" | "hardly_narrows";

/**
 * Turns so long that only whole laps count: their length, and not the number of shots, is what another test has to change.
 */
export type OnlyWholeLaps = {
  /**
   * Laps that hold both clubs.
   */
  laps: number,
  /**
   * Shots of the longest turn.
   */
  longest_turn: number,
};

/**
 * How builds and time lie in the session.
 */
export type Order = "interleaved" | "blocked" | "unknown";

/**
 * Whether the interval leaves room for what warming up and tiring can do.
 */
export type OrderAllowance = "not_needed" | "included" | "size_not_known" | "start_of_laps";

/**
 * What warming up and tiring may do to days together.
 */
export type OrderOverDays = "not_needed" | "same_each_time" | "changes" | "not_known";

/**
 * Where the next shot falls with this chance, when middle and scatter are known from these shots alone.
 */
export type Oval = {
  /**
   * Chance that the next shot falls inside, 0 to 1.
   */
  share: number,
  /**
   * Half the longer axis, yd.
   */
  major: number,
  /**
   * Half the shorter axis, yd.
   */
  minor: number,
  /**
   * Angle of the longer axis, degrees from 'to the right' toward 'away from the tee'.
   */
  angle: number,
};

/**
 * A plain warning beside the verdict.
 */
export type Overlay = {
  /**
   * Which one.
   */
  kind: OverlayKind,
  /**
   * One line.
   */
  headline: string,
  /**
   * What it means for this session, in its own numbers.
   */
  detail: string,
  /**
   * What the golfer can say to it; null when there is nothing to say.
   */
  asks: Ask | null,
};

/**
 * What stands over a verdict and changes how it must be read.
 */
export type OverlayKind = "odd_value" | "moved" | "order_mixed_up" | "left_out" | "several_builds" | "looked_at_before" | "margin_changed" | "averages_only";

/**
 * Which build it was for each question; null where the golfer felt no difference or did not say.
 */
export type OwnSay = {
  /**
   * Felt straighter.
   */
  straighter: number | null,
  /**
   * Felt longer.
   */
  longer: number | null,
  /**
   * Felt easier to hit.
   */
  easier: number | null,
  /**
   * Its look is liked best.
   */
  look: number | null,
  /**
   * Its sound is liked best.
   */
  sound: number | null,
};

/**
 * What [`pack`] is asked.
 */
export type PackRequest = {
  /**
   * The shots.
   */
  session: Session,
  /**
   * What is asked of them.
   */
  question: Question,
  /**
   * How it was looked at; may be left out.
   */
  view?: View,
};

/**
 * The facts of one comparison.
 */
export type PairFacts = {
  /**
   * How the two were hit.
   */
  order: HowHit,
  /**
   * Whether the interval leaves room for it.
   */
  order_allowance: OrderAllowance,
  /**
   * What was said of the number of shots.
   */
  number: NumberOfShots,
  /**
   * What it rests on.
   */
  rests_on: RestsOn,
  /**
   * Whether averages came without a deviation, so that the scatter of single shots is assumed.
   */
  scatter_is_assumed: boolean,
  /**
   * Whether it cannot be told because the interval is wider than the measure can plausibly differ by.
   */
  says_next_to_nothing: boolean,
  /**
   * The laps that count, where the turns are so long that only whole laps do.
   */
  only_whole_laps?: OnlyWholeLaps,
  /**
   * The other measures on which the same two differ, by enough to matter or perhaps so.
   */
  differs_on: Array<MeasureId>,
  /**
   * What learning the candidate can have cost on this measure, where it is the worse and that could be why.
   */
  learning_costs?: number,
  /**
   * What was set aside; absent when nothing was.
   */
  set_aside?: SetAside,
};

/**
 * How the choices behind the shares came about.
 */
export type Pairs = {
  /**
   * Choices of the baseline.
   */
  baseline: number,
  /**
   * Choices of the candidate.
   */
  candidate: number,
  /**
   * Whether these are all there are, of both.
   */
  all: boolean,
};

/**
 * Of pairs of shots, one with each club, in how many the candidate goes farther that way.
 */
export type PairsOfShots = {
  /**
   * The share of all pairs of this session.
   */
  share: number,
  /**
   * In how many pairs of all shots these two clubs would be hit with.
   */
  interval: Interval,
  /**
   * The share in tens.
   */
  of_ten: number,
  /**
   * The interval in tens.
   */
  range_of_ten: Tens,
};

/**
 * One part of the gap.
 */
export type Part = {
  /**
   * Short name for the picture.
   */
  name: string,
  /**
   * What differed, in its own unit, and what it was worth.
   */
  words: string,
  /**
   * Through what.
   */
  factor: Factor,
  /**
   * Carry, yd.
   */
  yards: Span,
  /**
   * Whether its interval lies to one side of zero.
   */
  is_sure: boolean,
  /**
   * Whose doing.
   */
  belongs: Belongs,
};

/**
 * So many shots of so many.
 */
export type PartOf = {
  /**
   * How many.
   */
  shots: number,
  /**
   * Of all of this club.
   */
  of: number,
};

/**
 * The answer in the styles that people paste.
 */
export type PasteWords = {
  /**
   * What was compared, for a subject line.
   */
  title: string,
  /**
   * Without any marks.
   */
  plain: string,
  /**
   * Markdown.
   */
  markdown: string,
  /**
   * Bold and links in square brackets, as many forums write them.
   */
  brackets: string,
};

/**
 * Where in the text a problem or notice sits.
 */
export type Place = {
  /**
   * Line, from 1; 0 when it is the text as a whole.
   */
  line: number,
  /**
   * Column heading, or null.
   */
  column: string | null,
};

/**
 * Everything that is decided before the first ball.
 */
export type Plan = {
  /**
   * Names of the builds; the first is the one the others are held against.
   */
  builds: Array<string>,
  /**
   * What the test will show; null where the spread is not known.
   */
  power: PlanPower | null,
  /**
   * What to write down.
   */
  record: Array<ToRecord>,
  /**
   * What to mind.
   */
  cautions: Array<string>,
  /**
   * The plan in words.
   */
  words: PlanWords,
  /**
   * What will be asked of the shots.
   */
  question: Question,
  /**
   * The measure.
   */
  measure: MeasureId,
  /**
   * What better means.
   */
  goal: Goal,
  /**
   * The smallest difference that matters.
   */
  margin: number,
  /**
   * Whether that is the usual one.
   */
  margin_is_default: boolean,
  /**
   * How far single shots scatter; null where nobody knows.
   */
  spread: PlanSpread | null,
  /**
   * Shots in a row.
   */
  set: number,
  /**
   * Passes through the builds.
   */
  rounds: number,
  /**
   * Seed of a drawn order; null for the balanced one.
   */
  seed: number | null,
  /**
   * Shots before the first that counts.
   */
  warm_up: number,
  /**
   * The sets in the order of hitting.
   */
  turns: Array<Turn>,
  /**
   * Rounds after which to rest.
   */
  rests: Array<number>,
  /**
   * When the answer may be looked at.
   */
  looks: Array<PlannedLook>,
  /**
   * Balls with the warm-up.
   */
  balls: number,
  /**
   * About so many minutes.
   */
  minutes: number,
  /**
   * What shorter and longer tests would show.
   */
  lengths: Array<Length>,
  /**
   * One build under two labels.
   */
  same_club: boolean,
};

/**
 * What a plan may be.
 */
export type PlanLimits = {
  /**
   * Builds that are different clubs.
   */
  builds: LeastAndMost,
  /**
   * Passes through the builds.
   */
  rounds: LeastAndMost,
  /**
   * Shots with one build in a row.
   */
  set: LeastAndMost,
  /**
   * Shots before the first that counts.
   */
  warm_up: LeastAndMost,
  /**
   * Shots in a row when nothing else is said.
   */
  usual_set: number,
  /**
   * Shots before the first that counts when nothing else is said.
   */
  usual_warm_up: number,
};

/**
 * What a plan will show.
 */
export type PlanPower = {
  /**
   * For the margin, twice and three times as much.
   */
  seen: Array<Found>,
  /**
   * Share of tests of truly equal builds that call them the same; null where that is not known.
   */
  same: number | null,
  /**
   * The true difference found in 8 of 10 tests; null when there is none of any sense.
   */
  detectable: number | null,
  /**
   * Rounds hit on average, if one stops when the margin is found at a planned look.
   */
  average_rounds: number,
};

/**
 * What a plan is asked for.
 */
export type PlanRequest = {
  /**
   * Names of the builds, the golfer's own first; 2 to 8, or one that is hit under two labels.
   */
  builds: Array<string>,
  /**
   * The measure named before the numbers.
   */
  measure: MeasureId,
  /**
   * What better means; left open, the measure's own.
   */
  goal?: Goal,
  /**
   * Smallest difference that would matter; left open, the usual one. A ratio above 1 for the goal `tighter`.
   */
  margin?: number,
  /**
   * Standard deviation of the golfer's shots with one build; left open, that of the earlier session or what is
   * usual.
   */
  spread?: number,
  /**
   * A session that shows how far this golfer's shots scatter.
   */
  earlier?: Session,
  /**
   * Shots with one build in a row, 1 to 5.
   */
  set?: number,
  /**
   * Passes through the builds; left open, what about an hour holds.
   */
  rounds?: number,
  /**
   * Draws the order within rounds from this seed; left open, the balanced order.
   */
  seed?: number,
  /**
   * Shots before the first that counts.
   */
  warm_up?: number,
  /**
   * When the answer may be looked at; left open, halfway and at the end.
   */
  looks?: LookAfter,
  /**
   * One build under two labels, to see what no difference looks like.
   */
  same_club: boolean,
};

/**
 * How far single shots with one build scatter.
 */
export type PlanSpread = {
  /**
   * Standard deviation.
   */
  value: number,
  /**
   * Where it comes from.
   */
  from: SpreadFrom,
};

/**
 * A plan to give away.
 */
export type PlanToShare = {
  /**
   * The plan, as it was asked for. An earlier session in it gives its scatter and stays behind.
   */
  plan: PlanRequest,
  /**
   * Measures to write down for each shot, in the order of the keys.
   */
  record?: Array<MeasureId>,
};

/**
 * Sentences about a plan.
 */
export type PlanWords = {
  /**
   * What the test is, in one sentence.
   */
  headline: string,
  /**
   * What it will show.
   */
  power: string,
  /**
   * What it will show of the typical shot, and two such visits put together; empty where that is not known.
   */
  beside: string,
  /**
   * How often equal builds will be called the same.
   */
  same: string,
  /**
   * Where the spread comes from, and what it means.
   */
  spread: string,
  /**
   * How the builds follow each other, and why.
   */
  order: string,
  /**
   * When the answer may be looked at, and what an early look costs.
   */
  looks: string,
  /**
   * For the same club twice: what to expect; empty otherwise.
   */
  same_club: string,
};

/**
 * One look of a plan.
 */
export type PlannedLook = {
  /**
   * The look comes when this round is complete.
   */
  after_round: number,
  /**
   * Level of the interval that must exclude zero.
   */
  level: number,
  /**
   * The same as the two-sided p below which the answer may be 'different'.
   */
  nominal_p: number,
};

/**
 * The values a measure can take on a range.
 */
export type Plausible = {
  /**
   * Lowest plausible value.
   */
  low: number,
  /**
   * Highest plausible value.
   */
  high: number,
};

/**
 * What a ball speed could carry.
 */
export type Potential = {
  /**
   * Each build, then the best third.
   */
  groups: Array<SpeedGroup>,
  /**
   * The largest gap in average carry that any build made to the baseline, yd; null with one build.
   */
  largest_change: number | null,
  /**
   * Whether this looks like an iron, where carry is not everything.
   */
  is_iron: boolean,
  /**
   * Carry over launch and spin.
   */
  map: CarryMap,
  /**
   * Sentences.
   */
  words: PotentialWords,
};

/**
 * What [`potential`] is asked.
 */
export type PotentialRequest = {
  /**
   * The shots.
   */
  session: Session,
  /**
   * Index of the baseline.
   */
  baseline: number,
  /**
   * Place of the group whose ball speed the map is drawn for; left open, that of the baseline.
   */
  map_for?: number,
};

/**
 * Sentences about what a ball speed could carry.
 */
export type PotentialWords = {
  /**
   * What is left unused, beside what the clubs changed.
   */
  headline: string,
  /**
   * What to make of it.
   */
  detail: string,
  /**
   * What not to read into it; one sentence each.
   */
  cautions: Array<string>,
  /**
   * The map for those who hear it.
   */
  alternative: string,
};

/**
 * What each unit of gain costs, by the retest.
 */
export type Price = {
  /**
   * If the gain is the largest the retest allows; null when it allows none.
   */
  least: number | null,
  /**
   * If it is the smallest; null when that may be nothing, so that there is no limit.
   */
  most: number | null,
};

/**
 * An estimate with the interval that decided, as texts.
 */
export type Printed = {
  /**
   * The difference, or how much more or less the candidate scatters.
   */
  value: string,
  /**
   * Lower end.
   */
  low: string,
  /**
   * Upper end.
   */
  high: string,
  /**
   * Its level: `95 %`.
   */
  level: string,
};

/**
 * A row or cell that could not be used.
 */
export type Problem = {
  /**
   * Which kind.
   */
  kind: ProblemKind,
  /**
   * Where.
   */
  place: Place,
  /**
   * What was found there, shortened.
   */
  found: string,
  /**
   * What is wrong, in plain words.
   */
  message: string,
  /**
   * What to do about it.
   */
  remedy: string,
  /**
   * What the cell probably should say, where that can be told.
   */
  suggestion: string | null,
};

/**
 * Why a row, a cell or a whole text could not be used.
 */
export type ProblemKind = "empty_text" | "no_numbers" | "too_long" | "not_a_number" | "letter_for_digit" | "other_decimal_mark" | "other_unit" | "too_many_cells" | "no_number_in_row" | "no_build" | "uneven_columns" | "more";

/**
 * Where a test stands.
 */
export type Progress = {
  /**
   * The shots, for `check`.
   */
  session: Session,
  /**
   * In words.
   */
  words: FollowWords,
  /**
   * What is next; null when all is hit.
   */
  turn: NowTurn | null,
  /**
   * Shots that count so far.
   */
  hit: number,
  /**
   * Shots of the whole plan.
   */
  of: number,
  /**
   * Shots so far with each build.
   */
  by_build: Array<number>,
  /**
   * Rounds that are complete.
   */
  rounds_complete: number,
  /**
   * Whether a look that the plan holds is due now and not taken yet.
   */
  look_due: boolean,
  /**
   * The next round after which the plan holds a look; null when none is left.
   */
  next_look: number | null,
  /**
   * The look that would be taken now.
   */
  look_now: LookTaken,
  /**
   * Whether a look was taken that the plan did not hold.
   */
  looked_early: boolean,
  /**
   * What is asked of the shots, with the looks taken so far.
   */
  question: Question,
};

/**
 * What to believe of the gap.
 */
export type PulledGap = {
  /**
   * As the shots show it.
   */
  shown: number,
  /**
   * The one to expect, with all that may be usual counted alike.
   */
  value: number,
  /**
   * Where it lies, whatever of that is usual: the outermost ends.
   */
  interval: Interval,
};

/**
 * What a drift that builds do not share does to their gap.
 */
export type Pushes = {
  /**
   * The candidate.
   */
  build: number,
  /**
   * Which way it would differ by the drift alone.
   */
  toward: Direction,
  /**
   * By how much.
   */
  by: number,
  /**
   * Whether that is the way of a gap that was found, and as much as would leave the rest of it to luck.
   */
  leaves_luck: boolean,
};

/**
 * The question: does the candidate differ from the baseline on this measure, by enough to matter?
 */
export type Question = {
  /**
   * Index of the build the others are held against, usually the golfer's own club.
   */
  baseline: number,
  /**
   * Index of the build in question; left open, the one that leads towards the goal.
   */
  candidate?: number,
  /**
   * The measure named before the numbers.
   */
  measure: MeasureId,
  /**
   * What better means; left open, the measure's own.
   */
  goal?: Goal,
  /**
   * Smallest difference that would matter, in the measure's unit; left open, the measure's own. For the goal
   * `tighter` it is a ratio of scatters above 1.
   */
  margin?: number,
  /**
   * The margin under which the answer was first shown, when it was changed since.
   */
  first_margin?: number,
  /**
   * How it was decided when to stop.
   */
  stopping: Stopping,
  /**
   * What differs between the two; left open, nobody said.
   */
  differs?: Differs,
};

/**
 * The least and the most that something may be.
 */
export type Range = {
  /**
   * The least.
   */
  low: number,
  /**
   * The most.
   */
  high: number,
};

/**
 * A comparison of two spreads: Bonett's interval with the iterated kurtosis, unwidened.
 */
export type RatioTest = {
  /**
   * Candidate's standard deviation / baseline's.
   */
  ratio: number,
  /**
   * Two-sided.
   */
  p: number,
  /**
   * Lower end of the 95 % interval.
   */
  low: number,
  /**
   * Upper end of it.
   */
  high: number,
};

/**
 * The outcome of reading.
 */
export type ReadResult = {
  /**
   * The good rows.
   */
  session: Session,
  /**
   * The rows and cells that could not be used.
   */
  problems: Array<Problem>,
  /**
   * Guesses and things worth knowing.
   */
  notices: Array<Notice>,
  /**
   * What was understood.
   */
  reading: Reading,
  /**
   * Figures in the file that cannot come from its shots.
   */
  gaps: Array<SummaryGap>,
  /**
   * What only the golfer can say, most urgent first; the answer waits for it.
   */
  doubts: Array<ReadingDoubt>,
  /**
   * What was found in sentences, for a form that opens filled in.
   */
  form: Form | null,
  /**
   * What was asked, where the text says it: only the tool's own CSV does.
   */
  question?: Question,
};

/**
 * What was understood of the text, each part of it open to correction through [`crate::Hints`].
 */
export type Reading = {
  /**
   * How cells are set apart.
   */
  delimiter: Delimiter,
  /**
   * The decimal mark most columns use, "." or ",".
   */
  decimal_mark: string,
  /**
   * How shots lie in the text.
   */
  layout: Layout,
  /**
   * Every column.
   */
  columns: Array<ColumnReading>,
  /**
   * Every row, counted.
   */
  rows: RowCounts,
  /**
   * The first lines that are no shots, with what each was taken for.
   */
  lines: Array<LineReading>,
  /**
   * The measure of a table with one column for each build.
   */
  single_measure: MeasureId | null,
};

/**
 * Something about the reading that only the golfer can say.
 */
export type ReadingDoubt = {
  /**
   * Its name in [`crate::Hints::settled`].
   */
  key: string,
  /**
   * What it is about.
   */
  kind: DoubtKind,
  /**
   * The measure, null where it is about no single one.
   */
  measure: MeasureId | null,
  /**
   * Builds it touches, by index.
   */
  builds: Array<number>,
  /**
   * Lines it touches, the first ones; empty when it is about a whole column or build.
   */
  lines: Array<number>,
  /**
   * The measures whose answer waits for it; empty: every answer waits.
   */
  holds: Array<MeasureId>,
  /**
   * What is asked, in plain words.
   */
  question: string,
  /**
   * What can be said to it, the likeliest first.
   */
  choices: Array<Choice>,
  /**
   * Some shots of each build, as they were read.
   */
  samples: Array<Sample>,
};

/**
 * Why a request cannot be worked on at all.
 */
export type Refusal = {
  /**
   * Stable name of the kind, `snake_case`.
   */
  kind: string,
  /**
   * Path into the request, such as `question.baseline`.
   */
  place: string,
  /**
   * What is wrong, in plain words.
   */
  message: string,
  /**
   * What to do about it.
   */
  remedy: string,
};

/**
 * Everything the page shows.
 */
export type Report = {
  /**
   * The question with its defaults.
   */
  asked: Asked,
  /**
   * How builds and time lie, as the analysis took it.
   */
  order: Order,
  /**
   * Rounds that hold two builds or more.
   */
  rounds: number,
  /**
   * The headline.
   */
  answer: Answer,
  /**
   * What stands over it.
   */
  overlays: Array<Overlay>,
  /**
   * What to expect of the lead when several candidates were tried; null for one.
   */
  honest_lead: HonestLead | null,
  /**
   * The fewest shots whose removal would change the answer, if three or fewer would.
   */
  removals_to_flip: number | null,
  /**
   * What makes this session more or less worth trusting, the most serious first.
   */
  trust: Array<TrustFinding>,
  /**
   * Every candidate on every measure.
   */
  findings: Array<Finding>,
};

/**
 * A report with what it was made from, as a file for programs.
 */
export type ReportFile = {
  /**
   * Always `straight-answer-report`.
   */
  format: string,
  /**
   * The version of the format.
   */
  version: number,
  /**
   * The shots.
   */
  session: Session,
  /**
   * What was asked of them.
   */
  question: Question,
  /**
   * The answer, as `check` gives it.
   */
  report: Report,
  /**
   * What to bet, as `bet` gives it.
   */
  bet: Bet,
  /**
   * The typical shot, as `typical` gives it.
   */
  typical: Typical,
};

/**
 * What a comparison rests on.
 */
export type RestsOn = "shots" | "averages";

/**
 * What a column holds.
 */
export type Role = "build" | "round" | "number" | "time" | "count" | "left_out" | { "measure": MeasureId } | { "deviation": MeasureId } | { "low": MeasureId } | { "high": MeasureId } | "second" | "ignored";

/**
 * How the rows were sorted.
 *
 * `shots + summaries + headings + problems` is every row that holds more than spaces and
 * delimiters. A row is a line, save where a quoted cell spans lines, in HTML and JSON (where it is a table row or an object),
 * and for columns that stand one below the other (where it is a shot).
 */
export type RowCounts = {
  /**
   * Rows read as shots; in a layout with builds side by side one row holds several.
   */
  shots: number,
  /**
   * Rows read as averages and the like.
   */
  summaries: number,
  /**
   * Headings, unit rows, titles, text.
   */
  headings: number,
  /**
   * Rows that could not be used; each has a problem.
   */
  problems: number,
};

/**
 * Some shots of a build, in words, to see whether they were understood.
 */
export type Sample = {
  /**
   * Index of the build.
   */
  build: number,
  /**
   * Its first shots, one text each.
   */
  shots: Array<string>,
};

/**
 * Build and condition side by side, told.
 */
export type Second = {
  /**
   * The measure.
   */
  measure: MeasureId,
  /**
   * Names of the conditions.
   */
  names: [string, string],
  /**
   * Baseline and candidate, each in both conditions.
   */
  cells: Array<Cell>,
  /**
   * Candidate − baseline, as the answer has it.
   */
  build: Effect,
  /**
   * Second − first condition, averaged over both builds.
   */
  condition: Effect,
  /**
   * How much more the candidate gains on the baseline in the second condition than in the first.
   */
  interaction: Effect,
  /**
   * Which of the two did more.
   */
  did_more: DidMore,
  /**
   * Sentences.
   */
  words: SecondWords,
};

/**
 * A second thing that changed during the session, beside the build: a lesson, another ball, another tee.
 *
 * Each shot names the value it was hit under, [`crate::Shot::second`].
 */
export type SecondFactor = {
  /**
   * What changed, as the source's heading has it.
   */
  name: string,
  /**
   * What it was: before and after, one ball and another. The first is what the others are held against.
   */
  values: Array<string>,
};

/**
 * What [`second`] is asked.
 */
export type SecondRequest = {
  /**
   * The shots.
   */
  session: Session,
  /**
   * Builds, measure and margin; the candidate must be named.
   */
  question: Question,
  /**
   * For every shot in order, whether it belongs to the second condition; null where that is not known.
   */
  is_second: Array<boolean | null>,
  /**
   * What the two conditions are called; left open, before and after.
   */
  names?: [string, string],
};

/**
 * Sentences about build and condition.
 */
export type SecondWords = {
  /**
   * Which of the two did more, or that it is not settled.
   */
  headline: string,
  /**
   * What it rests on.
   */
  detail: string,
  /**
   * What to keep in mind.
   */
  note: string,
};

/**
 * What was seen.
 */
export type Seen = { "kind": "order",
/**
 * As the analysis took it.
 */
order: Order,
/**
 * Rounds that hold both builds.
 */
rounds: number,
/**
 * The one of the two that was hit first in every round.
 */
always_first: number | null, } | { "kind": "not_compared",
/**
 * Rounds that hold both builds.
 */
rounds: number, } | { "kind": "odd_value",
/**
 * Its shot, from 0; null for an average.
 */
shot: number | null,
/**
 * Index of the build.
 */
build: number,
/**
 * The measure.
 */
measure: MeasureId,
/**
 * The value.
 */
value: number,
/**
 * Why it is asked about.
 */
because: Odd,
/**
 * How many more values of this measure are like it.
 */
others: number, } | { "kind": "moved",
/**
 * Index of the build.
 */
build: number,
/**
 * What stood before the change, and what after it.
 */
names: [string, string],
/**
 * Its average before.
 */
before: number,
/**
 * Its average after.
 */
after: number,
/**
 * After − before: the interval that decided.
 */
change: Interval, } | { "kind": "learning",
/**
 * Index of the build that gained.
 */
build: number,
/**
 * Index of the other.
 */
other: number,
/**
 * Whether that is the baseline, on which warming up may have fallen.
 */
is_the_baseline: boolean,
/**
 * How much it made up since its first shot, in the measure's unit.
 */
gained: number,
/**
 * Whether that may be off by so much that only its least is told.
 */
is_rough: boolean,
/**
 * Lower end of its interval.
 */
low: number,
/**
 * Upper end of it.
 */
high: number,
/**
 * Where it stands to the other once nothing is left to learn.
 */
then: number,
/**
 * The interval of that.
 */
then_range: Interval, } | { "kind": "long_turns",
/**
 * Shots of the longest turn.
 */
longest: number, } | { "kind": "in_streaks",
/**
 * Of what a shot is off by, the share that goes on in the next, 0.5 to 0.8.
 */
memory: number,
/**
 * The interval's width over what it would be with what is usual.
 */
widened: number, } | { "kind": "cold_start",
/**
 * Index of the build that was hit cold.
 */
build: number,
/**
 * Its shots before any other build was touched.
 */
shots: number,
/**
 * Head start that ordinary warming up gives the other build, in the unit of the measure asked for.
 */
head_start: number | null,
/**
 * What the answer allows for it.
 */
allowed: AllowedFor, } | { "kind": "unequal_counts",
/**
 * Build with fewer shots.
 */
fewer: number,
/**
 * Its shots.
 */
few: number,
/**
 * Build with more shots.
 */
more: number,
/**
 * Its shots.
 */
many: number, } | { "kind": "drift",
/**
 * Change from the first shot to the last, in the measure's unit.
 */
change: number,
/**
 * Lower end of its interval.
 */
low: number,
/**
 * Upper end of it.
 */
high: number,
/**
 * How the builds share it.
 */
shared: DriftShared,
/**
 * Which way it pushes the gap, where they do not share it and one of them was hit later.
 */
pushes?: Pushes, } | { "kind": "numbers_missing",
/**
 * How many are missing.
 */
missing: number,
/**
 * The first missing number.
 */
first: number, } | { "kind": "summary_disagrees",
/**
 * Index of the build.
 */
build: number,
/**
 * The measure.
 */
measure: MeasureId,
/**
 * The average as printed.
 */
printed: number,
/**
 * The average of the shots.
 */
of_shots: number,
/**
 * Number of shots that were read.
 */
n: number,
/**
 * Number of shots the source claims.
 */
claimed: number | null, } | { "kind": "left_out",
/**
 * How many of how many, by build index.
 */
by_build: Array<PartOf>, } | { "kind": "far_shots",
/**
 * How many, of both builds.
 */
count: number,
/**
 * Index of the build with the most of them.
 */
build: number,
/**
 * How many of them are of the other build.
 */
others: number,
/**
 * Index of the other build.
 */
other: number,
/**
 * Whether the typical shot, which they hardly move, is told of these two.
 */
typical_told: boolean, } | { "kind": "few_shots_decide",
/**
 * How many.
 */
shots: number,
/**
 * Rounds of a plan that are still to be hit; null without a plan, and at its end.
 */
rounds_to_go: number | null, } | { "kind": "not_fixed" } | { "kind": "fixed_not_said" } | { "kind": "not_of_the_plan",
/**
 * Rounds that hold both builds.
 */
rounds: number,
/**
 * Rounds planned.
 */
planned: number, } | { "kind": "planned_looks",
/**
 * Rounds hit.
 */
round: number,
/**
 * Rounds planned.
 */
planned: number,
/**
 * Whether the last of them is only begun.
 */
is_unfinished: boolean,
/**
 * Whether anybody looked before the last of them.
 */
looked: boolean, } | { "kind": "no_swing_or_strike",
/**
 * Whether the speed of the club was measured.
 */
club_speed: boolean,
/**
 * Whether the place of the strike was measured.
 */
strike: boolean, } | { "kind": "averages_only" };

/**
 * A session as plain data.
 */
export type Session = {
  /**
   * In order of first appearance.
   */
  builds: Array<Build>,
  /**
   * Measure ids present.
   */
  measures: Array<MeasureId>,
  /**
   * Measures outside the trade's list.
   */
  custom: Array<CustomMeasure>,
  /**
   * In the order hit.
   */
  shots: Array<Shot>,
  /**
   * The same as columns, in the place of `shots`.
   */
  columns?: Columns,
  /**
   * Averages.
   */
  summaries: Array<Summary>,
  /**
   * How builds and time lie.
   */
  order: Order,
  /**
   * What else changed during the session.
   */
  second?: SecondFactor,
  /**
   * The weather.
   */
  weather?: Conditions,
};

/**
 * What was set aside of two clubs, and the answer without it.
 */
export type SetAside = {
  /**
   * Of the baseline.
   */
  baseline: PartOf,
  /**
   * Of the candidate.
   */
  candidate: PartOf,
  /**
   * Values of this measure among them that cannot be, and count in neither answer.
   */
  slips: number,
  /**
   * What every shot decides.
   */
  with_all: Decision,
  /**
   * What the others decide.
   */
  without: Decision,
  /**
   * Size and uncertainty from the others; absent where nothing can be estimated.
   */
  estimate_without?: Estimate,
};

/**
 * What the golfer can say to a doubt.
 */
export type Settled = "right" | "leave_out" | "one_club" | "second" | "count" | { "unit": string } | { "measure": MeasureId } | { "column": number } | { "reason": string };

/**
 * What [`share`] is asked.
 */
export type ShareRequest = {
  /**
   * The shots.
   */
  session: Session,
  /**
   * What is asked of them.
   */
  question: Question,
  /**
   * How it was looked at; may be left out.
   */
  view?: View,
  /**
   * Where the page stands that opens links, without a fragment: `https://example.org/club/`.
   */
  address: string,
};

/**
 * Everything to give away.
 */
export type Shared = {
  /**
   * The address that holds the session; null when the session is too large for any.
   */
  link: string | null,
  /**
   * Whether forums and messengers commonly let an address of that length pass.
   */
  fits_forums: boolean,
  /**
   * The answer as text.
   */
  words: PasteWords,
  /**
   * The answer as lines of a picture.
   */
  card: CardWords,
  /**
   * The report as a file.
   */
  file: ReportFile,
};

/**
 * What the link of a plan holds.
 */
export type SharedPlan = {
  /**
   * The plan, to ask `plan` for.
   */
  plan: PlanRequest,
  /**
   * Measures to write down for each shot.
   */
  record: Array<MeasureId>,
  /**
   * What is worth knowing about the link.
   */
  notices: Array<LinkNotice>,
};

/**
 * A shot with its values keyed by measure id.
 */
export type Shot = {
  /**
   * Index into the session's builds.
   */
  build: number,
  /**
   * The pass through the builds, from 1.
   */
  round: number | null,
  /**
   * The shot's own number.
   */
  number: number | null,
  /**
   * Canonical units; null where nothing was read.
   */
  values: { [key in MeasureId]: number | null },
  /**
   * Why it was set aside, null when it counts.
   */
  left_out: string | null,
  /**
   * What the golfer noted of it, such as `mishit`; it counts all the same.
   */
  note?: string,
  /**
   * Index into the values of the session's second factor.
   */
  second?: number,
};

/**
 * How the shots shown were chosen.
 */
export type Showing = "in_a_row" | "picked";

/**
 * How few and how many shots can be shown of each build.
 */
export type ShownLimits = {
  /**
   * Fewest.
   */
  fewest: number,
  /**
   * Most: no build can show more shots than it has.
   */
  most: number,
};

/**
 * A size with its interval, at 99 %.
 */
export type Span = {
  /**
   * Candidate − baseline.
   */
  value: number,
  /**
   * Lower end.
   */
  low: number,
  /**
   * Upper end.
   */
  high: number,
};

/**
 * Shots that are looked at together.
 */
export type SpeedGroup = {
  /**
   * What of it is named, and drawn.
   */
  gain: Gain,
  /**
   * Sentences.
   */
  words: GroupWords,
  /**
   * Index of the build; null for the golfer's best third of all shots.
   */
  build: number | null,
  /**
   * Shots in it.
   */
  n: number,
  /**
   * Average launch.
   */
  launch: Launch,
  /**
   * Average carry as measured, yd.
   */
  carry: number,
  /**
   * The best launch at its own spin.
   */
  best_launch: Improvement,
  /**
   * The best spin at its own launch.
   */
  best_spin: Improvement,
  /**
   * The best of the window.
   */
  best: BestBand,
};

/**
 * What ball speeds may have been in, read as mph.
 */
export type SpeedUnit = "m/s" | "km/h";

/**
 * What one number of the delivery does to spin (rpm) or to the tilt of its axis (deg), roughly.
 */
export type SpinSource = {
  /**
   * In words.
   */
  words: string,
  /**
   * What is explained: `spin_rate` or `spin_axis`.
   */
  of: MeasureId,
  /**
   * By what.
   */
  from: MeasureId,
  /**
   * Candidate − baseline, with the error of the picture of impact in it.
   */
  effect: Span,
};

/**
 * A place on the ground.
 */
export type Spot = {
  /**
   * Right of the target line, yd.
   */
  offline: number,
  /**
   * From the tee, yd.
   */
  carry: number,
};

/**
 * Where the spread of a plan comes from.
 */
export type SpreadFrom = "given" | "earlier" | "usual";

/**
 * Which figure of a summary.
 */
export type Statistic = "mean" | "median" | "deviation" | "low" | "high" | "range" | "count";

/**
 * How it was decided when to stop.
 */
export type Stopping = StoppingWord | {
  /**
   * The largest number of rounds, fixed before the first shot.
   */
  planned_rounds: number,
  /**
   * The looks taken so far.
   */
  looked_after: LookedAfter,
};

/**
 * Plain stopping rules, without a plan.
 */
export type StoppingWord = "fixed" | "not_fixed" | "unknown";

/**
 * Averages that a source gave for one build.
 */
export type Summary = {
  /**
   * Index into [`Session::builds`].
   */
  build: number,
  /**
   * Number of shots behind the averages, `None` when not said.
   */
  n: number | null,
  /**
   * Which shots they stand for.
   */
  of: SummaryOf,
  /**
   * By measure id.
   */
  values: { [key in MeasureId]: SummaryValue },
  /**
   * Line in the source where it stood, from 1; `None` when typed in.
   */
  line: number | null,
};

/**
 * A figure in the file that cannot come from the shots it stands with.
 */
export type SummaryGap = {
  /**
   * Line of the figure.
   */
  line: number,
  /**
   * Index of the build, null when the figure stands for all shots.
   */
  build: number | null,
  /**
   * The measure, null for a number of shots.
   */
  measure: MeasureId | null,
  /**
   * Which figure.
   */
  statistic: Statistic,
  /**
   * As the file has it, in the canonical unit.
   */
  printed: number,
  /**
   * As the rows give it.
   */
  from_rows: number,
  /**
   * The number of shots it was worked out from.
   */
  n: number,
};

/**
 * Which shots an average stands for.
 */
export type SummaryOf = "all" | "best" | "chosen";

/**
 * What is known of one measure of one build when the shots themselves are not.
 */
export type SummaryValue = {
  /**
   * Average, in the measure's canonical unit.
   */
  mean: number | null,
  /**
   * Standard deviation.
   */
  sd: number | null,
  /**
   * Smallest value.
   */
  low: number | null,
  /**
   * Largest value.
   */
  high: number | null,
};

/**
 * Unit of a temperature.
 */
export type TemperatureUnit = "celsius" | "fahrenheit";

/**
 * A chance as it is told: in tens, so many of ten to so many.
 */
export type Tens = {
  /**
   * The least, 0 to 10.
   */
  low: number,
  /**
   * The most, 0 to 10.
   */
  high: number,
};

/**
 * A textbook comparison of two groups, unwidened.
 */
export type TextbookTest = {
  /**
   * Candidate − baseline.
   */
  diff: number,
  /**
   * Standard error.
   */
  se: number,
  /**
   * diff / se.
   */
  t: number,
  /**
   * Degrees of freedom.
   */
  df: number,
  /**
   * Two-sided.
   */
  p: number,
  /**
   * Lower end of the 95 % interval.
   */
  low: number,
  /**
   * Upper end of it.
   */
  high: number,
};

/**
 * One thing to write down.
 */
export type ToRecord = {
  /**
   * The measure.
   */
  measure: MeasureId,
  /**
   * Its name.
   */
  name: string,
  /**
   * Why it is worth the trouble.
   */
  why: string,
  /**
   * Whether there is no answer without it.
   */
  needed: boolean,
};

/**
 * A candidate over all sessions.
 */
export type TogetherPair = {
  /**
   * Index of the candidate in the first session; one that only later sessions hold counts on from there.
   */
  candidate: number,
  /**
   * Its name.
   */
  name: string,
  /**
   * Every session.
   */
  days: Array<Day>,
  /**
   * Null with fewer than two usable days.
   */
  combined: CombinedDays | null,
  /**
   * What was decided; null as `combined`.
   */
  decision: Decision | null,
  /**
   * The answer in one sentence.
   */
  headline: string,
  /**
   * What is assumed of days, how far apart these lie, and what one more would add.
   */
  detail: string,
};

/**
 * What [`together`] is asked.
 */
export type TogetherRequest = {
  /**
   * The sessions, in any order; builds and measures are those of the first.
   */
  sessions: Array<Session>,
  /**
   * What is asked, with the builds of the first session.
   */
  question: Question,
};

/**
 * One thing worth knowing about the session.
 */
export type TrustFinding = {
  /**
   * What was seen, with its numbers.
   */
  seen: Seen,
  /**
   * How much it speaks against the session.
   */
  weight: Weight,
  /**
   * What was seen, in words.
   */
  what: string,
  /**
   * Why it matters, in the measure's own unit where that is known.
   */
  why: string,
  /**
   * What to do about it.
   */
  next: string,
};

/**
 * One set: a build, a few shots in a row.
 */
export type Turn = {
  /**
   * Index of the build.
   */
  build: number,
  /**
   * The pass through the builds, from 1.
   */
  round: number,
  /**
   * Shots of the set.
   */
  shots: number,
};

/**
 * The typical shot, told.
 */
export type Typical = {
  /**
   * The figures; null where nothing is said of it.
   */
  facts: TypicalFacts | null,
  /**
   * Why nothing is said of it; null where something is.
   */
  why: NoTypical | null,
  /**
   * Sentences.
   */
  words: TypicalWords,
};

/**
 * The gap between the typical shots. Candidate − baseline, in the unit of the measure.
 */
export type TypicalEstimate = {
  /**
   * The gap.
   */
  value: number,
  /**
   * The interval that decided.
   */
  decided_by: Interval,
  /**
   * Part of its half-width that stands for warming up and tiring.
   */
  order_allowance: number,
};

/**
 * The typical shot of the candidate that the headline speaks of.
 */
export type TypicalFacts = {
  /**
   * Index of the baseline.
   */
  baseline: number,
  /**
   * Index of the candidate.
   */
  candidate: number,
  /**
   * The measure.
   */
  measure: MeasureId,
  /**
   * Unit of every gap here.
   */
  unit: string,
  /**
   * What was decided of the typical shots.
   */
  decision: Decision,
  /**
   * Whether they cannot be told apart because the interval is wider than the measure can plausibly differ by.
   */
  says_next_to_nothing: boolean,
  /**
   * How large and how sure.
   */
  estimate: TypicalEstimate,
  /**
   * How it stands to the answer.
   */
  beside: Beside,
  /**
   * Whether part of a gap that only the averages show may lie in the bad shots: it matters, or may, and the shorter club was
   * mishit more often by more than luck.
   */
  in_the_bad_shots: boolean,
  /**
   * Mishits, where more is wanted of the measure; null elsewhere.
   */
  mishits: Mishits | null,
};

/**
 * Sentences on the typical shot; empty where there is nothing to say.
 */
export type TypicalWords = {
  /**
   * What was decided of it.
   */
  headline: string,
  /**
   * How it stands to the average, where they do not say the same.
   */
  beside: string,
  /**
   * How often each club was mishit.
   */
  mishits: string,
  /**
   * What else belongs to it, and why nothing is said.
   */
  note: string,
};

/**
 * The canonical unit of a measure.
 */
export type Unit = "yd" | "mph" | "rpm" | "deg" | "s" | "mm" | "";

/**
 * Where a column's unit comes from.
 */
export type UnitSource = "heading" | "units_row" | "values" | "hint" | "assumed" | "none";

/**
 * A unit mistake that would make the numbers fit.
 */
export type UnitStory = {
  /**
   * What the ball speed would be in; null for as read.
   */
  speed: SpeedUnit | null,
  /**
   * What the carry would be in; null for as read.
   */
  carry: CarryUnit | null,
};

/**
 * What a link holds.
 */
export type Unpacked = {
  /**
   * The shots.
   */
  session: Session,
  /**
   * What the sender asked of them.
   */
  question: Question,
  /**
   * How the sender looked at it.
   */
  view: View,
  /**
   * What is worth knowing about the link.
   */
  notices: Array<LinkNotice>,
};

/**
 * Standard deviations of true gaps of a measure by what differs, in its unit.
 */
export type UsualFor = {
  /**
   * Another shaft in the same head.
   */
  shaft: number,
  /**
   * Another head.
   */
  head: number,
  /**
   * A new club against an old one.
   */
  old_club: number,
};

/**
 * How the sender of a link looked at it.
 */
export type View = {
  /**
   * A line that the sender gave along: a name, a day, a place.
   */
  note?: string,
};

/**
 * One of the two answers, to be drawn.
 */
export type Way = {
  /**
   * Which shots it counts: `every shot`.
   */
  name: string,
  /**
   * The difference.
   */
  value: number,
  /**
   * The interval that decided it.
   */
  interval: Interval,
  /**
   * Part of each half-width that stands for warming up and tiring.
   */
  allowance: number,
  /**
   * The same as texts.
   */
  printed: Printed,
};

/**
 * How much a finding speaks against the session.
 */
export type Weight = "serious" | "note" | "good";

/**
 * Why there is no plain answer.
 */
export type Why = "no_shots" | "one_build" | "too_few_shots" | "not_measured" | "counts_missing" | "only_the_best" | "spread_missing" | "only_averages" | "no_scatter" | "no_scatter_in_rounds" | "depends_on_left_out" | "order_not_allowed_for";

/**
 * Sentences for the golfer.
 */
export type Words = {
  /**
   * The answer in one sentence.
   */
  headline: string,
  /**
   * The same in a few words, for a list of measures.
   */
  line: string,
  /**
   * How large, how sure, from how many shots.
   */
  detail: string,
  /**
   * What to do, or what would settle it.
   */
  next: string,
  /**
   * Of `detail` the sentence that is not to be missed: what a small screen shows.
   */
  lead: string,
  /**
   * Of `next` the step itself: what a small screen shows.
   */
  step: string,
};
