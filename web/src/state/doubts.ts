/** Which doubts of the readings the answer waits for: the core says what each one holds. Pure. */
import type { Question, ReadingDoubt } from "../core/engine.js";
import type { Given } from "./texts.js";

/** A doubt and the text it is about. */
export interface Held {
  doubt: ReadingDoubt;
  at: number;
}

/** The doubts that hold the answer to a question, in the order of the texts. */
export function holding(given: readonly Given[], question: Question | null): Held[] {
  const holds = ({ holds }: ReadingDoubt): boolean =>
    holds.length === 0 || (question !== null && holds.includes(question.measure));
  return given.flatMap(({ result }, at) => (result?.doubts ?? []).filter(holds).map((doubt) => ({ doubt, at })));
}

/** Whether a text names so many clubs that no list of them is drawn. */
export const namesTooMany = (given: readonly Given[]): boolean =>
  given.some(({ result }) => result?.doubts.some(({ kind }) => kind === "many_clubs"));
