/** How things stood before each step, so that it can be taken back. Pure. */
import type { State } from "./state.js";

/** What can be taken back: how things stood, and what was done to them. */
export interface Past extends Pick<State, "given" | "read" | "order" | "setAside" | "question" | "seen" | "sent"> {
  done: string;
}

/** How many steps can be taken back. */
const STEPS = 30;

export const standing = ({ given, read, order, setAside, question, seen, sent }: State, done: string): Past => ({
  done,
  given,
  read,
  order,
  setAside,
  question,
  seen,
  sent,
});

export const remembered = (state: State, done: string): State => ({
  ...state,
  past: [...state.past.slice(-STEPS), standing(state, done)],
  ahead: [],
  notAdded: null,
});
