/** Links that hold a session: what they look like, and whether their settings were changed since. Pure. */
import type { Question, Session } from "../core/engine.js";
import { say } from "../text/say.js";
import type { State } from "./state.js";

/** Whether a fragment is meant to hold a session: a version, a point, letters. The core says whether it does. */
export const isLink = (fragment: string): boolean => /^#?\d{1,3}\./.test(fragment);

/** Whether the reader asks something else than the sender did, or counts other shots. */
export function isChanged({ sent, question, setAside }: State): boolean {
  if (!sent || !question) return false;
  return Object.keys(setAside).length > 0 || asked(sent.question) !== asked(question);
}

const asked = ({ baseline, candidate, measure, goal, margin, stopping }: Question): string =>
  JSON.stringify([baseline, candidate, measure, goal, margin, stopping]);

/** The session with letters for the clubs' names, for those who would rather not give them away. */
export function withoutNames(session: Session): Session {
  return {
    ...session,
    builds: session.builds.map((_, index) => ({ name: say("club-letter", { letter: letter(index) }) })),
  };
}

/** A, B ... Z, AA, AB ... */
function letter(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letter(Math.floor(index / 26) - 1) + last;
}
