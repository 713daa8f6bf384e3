/**
 * What crosses between a host page and the frame with the checker, and how each side knows it for what it is. Pure.
 *
 * Neither side trusts the other: a message must come from the very window and origin that is expected (that is
 * checked where it arrives), and must have one of these shapes; anything else is passed over in silence.
 */

/** What every message carries: the version of this list. */
const MARK = 1;

/** Characters of the longest text a host may hand in; the page itself takes no more from a file. */
export const LONGEST_TEXT = 10_000_000;

/** From the host to the frame. */
export type ToFrame =
  /** Says that the host listens; its origin is the event's own. */
  | { type: "hello" }
  /** Shots as text, from the host's own origin. */
  | { type: "open"; text: string; name: string };

/** From the frame to the host. */
export type ToHost =
  | { type: "ready" }
  | { type: "resize"; height: number }
  /** Only after the visitor agreed. */
  | { type: "answer"; answer: HostAnswer }
  | { type: "error"; message: string };

/** What a host hears of an answer. */
export interface HostAnswer {
  decision: object;
  estimate: object | null;
  words: object;
  asked: object;
}

/** A message as it is sent. */
export const marked = <T extends ToFrame | ToHost>(message: T): T & { straight_answer: number } => ({
  straight_answer: MARK,
  ...message,
});

/** The message to the frame that this is, null for anything else. */
export function toFrame(data: unknown): ToFrame | null {
  if (!isMarked(data)) return null;
  if (data.type === "hello") return { type: "hello" };
  const { text, name } = data;
  const isText = typeof text === "string" && text.length <= LONGEST_TEXT && typeof name === "string";
  return data.type === "open" && isText ? { type: "open", text, name: name.slice(0, 200) } : null;
}

/** The message to the host that this is, null for anything else. */
export function toHost(data: unknown): ToHost | null {
  if (!isMarked(data)) return null;
  switch (data.type) {
    case "ready":
      return { type: "ready" };
    case "resize":
      return isHeight(data.height) ? { type: "resize", height: data.height } : null;
    case "answer":
      return isAnswer(data.answer) ? { type: "answer", answer: data.answer } : null;
    case "error":
      return typeof data.message === "string" ? { type: "error", message: data.message.slice(0, 500) } : null;
    default:
      return null;
  }
}

const isObject = (data: unknown): data is Record<string, unknown> => typeof data === "object" && data !== null;

const isMarked = (data: unknown): data is Record<string, unknown> => isObject(data) && data.straight_answer === MARK;

/** A host page is not made to grow without end. */
const isHeight = (height: unknown): height is number => typeof height === "number" && height > 0 && height <= 100_000;

function isAnswer(answer: unknown): answer is HostAnswer {
  if (!isObject(answer)) return false;
  const { decision, estimate, words, asked } = answer;
  return [decision, words, asked].every(isObject) && (estimate === null || isObject(estimate));
}
