/**
 * What a reload must not lose of a page in this tab: texts with what was said of them, what is typed into a form. Pure.
 *
 * A link and an example come again from their address; a test that is logged, and what was opened from the book, lie there.
 */
import type { Question } from "../core/engine.js";
import type { Entry, State } from "./state.js";
import { hintsFor, type NewText } from "./texts.js";

export interface Draft {
  texts: NewText[];
  question: Question | null;
  entry: Extract<Entry, { at: number | null }> | null;
  /** What stands in the field for shots and was not read yet. */
  typed: string;
  /** The address it belongs to: another one opens something else. */
  at: string;
}

const COMES_AGAIN = ["link", "example", "logged"];

/** Null where nothing would be lost. `asShown`: shots with what was said of each by hand, as the tool's own CSV. */
export function draftOf(
  { given, question, entry }: Pick<State, "given" | "question" | "entry">,
  { asShown, typed, draft, at }: { asShown: string | null; typed: string; draft: unknown; at: string },
): Draft | null {
  const isSafe = given.every(({ source }) => COMES_AGAIN.includes(source.kind)) && given.length <= 1;
  const first = given[0]?.source;
  const texts = isSafe
    ? []
    : asShown !== null && first
      ? [{ source: { kind: first.kind, name: first.name, text: asShown } }]
      : given.map((one) => ({ source: one.source, hints: hintsFor(one) }));
  const form = entry && "at" in entry && draft !== undefined ? { kind: entry.kind, at: entry.at, draft } : null;
  if (texts.length === 0 && form === null && typed.trim() === "") return null;
  return { texts, question: texts.length > 0 ? question : null, entry: form, typed, at };
}

/** A draft out of the store; null for anything else. */
export function draftIn(text: string | null, at: string): Draft | null {
  try {
    const draft = JSON.parse(text ?? "null") as Partial<Draft> | null;
    return draft && draft.at === at && Array.isArray(draft.texts) && typeof draft.typed === "string"
      ? (draft as Draft)
      : null;
  } catch {
    return null;
  }
}
