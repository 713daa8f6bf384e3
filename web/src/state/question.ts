/** The question the page asks before the golfer has said anything, and what of it survives a new reading. Pure. */
import type { Goal, Measure, Question, ReadResult, Report, Session } from "../core/engine.js";
import { isSpread } from "../format/margin.js";
import type { MeasureView } from "../format/values.js";
import { patched } from "./patch.js";

/** The measure asked about when the session has it: what a fitting is mostly about. */
const USUAL_MEASURE = "carry";

/** A question to begin with, of what is known; nobody has said that the number of shots was fixed. */
export function opened(said: Partial<Question>, session: Session, measures: readonly Measure[]): Question {
  const question: Question = { baseline: 0, measure: USUAL_MEASURE, stopping: "unknown", ...said };
  return withOffered(settled(question, session, measures), measures);
}

/** What was asked, where the one text that was given says it: the page's own file does. */
export const questionIn = (results: readonly ReadResult[]): Partial<Question> =>
  (results.length === 1 && results[0]!.question) || {};

/**
 * The question with the margin that the page offers, where that is not the usual one itself: a round number of meters is a
 * choice, made before the question is asked, and goes along in it. What was asked elsewhere keeps what it was asked with.
 */
export function withOffered<Asked extends Pick<Question, "measure" | "goal" | "margin">>(
  asked: Asked,
  measures: readonly Measure[],
): Asked {
  const known = measures.find(({ id }) => id === asked.measure);
  const isOffered = known && known.offered_margin !== known.margin;
  if (!isOffered || asked.margin !== undefined || isSpread(asked)) return asked;
  return { ...asked, margin: known.offered_margin };
}

/** The question as far as it still fits this session; what no longer fits goes back to where it began. */
export function settled(question: Question, session: Session, measures: readonly Measure[]): Question {
  const { candidate, goal, margin, first_margin, ...kept } = question;
  const exists = (build: number | undefined) => build !== undefined && build < session.builds.length;
  const baseline = exists(kept.baseline) ? kept.baseline : 0;
  const measure = session.measures.includes(kept.measure) ? kept.measure : firstMeasure(session, measures);
  const fitting: Question = {
    ...kept,
    baseline,
    measure,
    ...(exists(candidate) && candidate !== baseline ? { candidate: candidate! } : {}),
  };
  // Goal and margin belong to a measure.
  if (measure !== kept.measure) return withOffered(fitting, measures);
  return patched(fitting, { goal, margin, first_margin });
}

/** The session's measures in the order the trade's list shows them, the golfer's own columns last. */
export function measuresInOrder(session: Session, measures: readonly Measure[]): string[] {
  const known = measures.map((measure) => measure.id).filter((id) => session.measures.includes(id));
  return [...known, ...session.measures.filter((id) => !known.includes(id))];
}

function firstMeasure(session: Session, measures: readonly Measure[]): string {
  const inOrder = measuresInOrder(session, measures);
  return inOrder.includes(USUAL_MEASURE) ? USUAL_MEASURE : (inOrder[0] ?? USUAL_MEASURE);
}

/** What was asked where the question says nothing: the report knows it, and before there is one the measure; of scatter no measure does. */
export function marginAsked(
  report: Report | null,
  measure: Pick<MeasureView, "id" | "margin">,
  question: Question,
): number | null {
  const said = report?.asked;
  const isOfIt = said?.measure === question.measure && isSpread(said) === isSpread(question) && said.margin_is_default;
  if (isOfIt) return said.margin;
  return isSpread(question) ? null : measure.margin;
}

/** What was meant by better, as the question or its answer has it. */
export const goalAsked = (report: Report | null, { goal }: Question): Goal | undefined => goal ?? report?.asked.goal;
