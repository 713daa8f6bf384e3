/** How things stood before each step, so that it can be taken back. Pure. */

type Kept = "given" | "read" | "order" | "setAside" | "question" | "seen" | "sent";

/** What can be taken back: how things stood, and what was done to them. */
export type Past<State> = Pick<State, Kept & keyof State> & { done: string };

interface Remembering extends Record<Kept, unknown> {
  past: readonly unknown[];
  ahead: readonly unknown[];
  notAdded: unknown;
}

/** How many steps can be taken back. */
const STEPS = 30;

export const standing = <State extends Record<Kept, unknown>>(state: State, done: string): Past<State> => {
  const { given, read, order, setAside, question, seen, sent } = state;
  return { done, given, read, order, setAside, question, seen, sent } as Past<State>;
};

export const remembered = <State extends Remembering>(state: State, done: string): State => ({
  ...state,
  past: [...state.past.slice(-STEPS), standing(state, done)],
  ahead: [],
  notAdded: null,
});
