/** Requests that a core would not work on, and calls that failed, as one kind of error. */
import type { Refusal } from "../pkg/straight_answer.js";

/** A request the core would not work on. */
export class Refused extends Error {
  constructor(readonly refusal: Refusal) {
    super(refusal.message);
  }
}

/** A call into a core, perhaps after loading it; what it throws becomes a `Refused`. */
export async function asking<T>(call: () => T | Promise<T>): Promise<T> {
  try {
    return await call();
  } catch (thrown) {
    throw new Refused(asRefusal(thrown));
  }
}

/** Whatever was thrown, as a refusal: the core's own, or a plain account of the failure. */
export function asRefusal(thrown: unknown): Refusal {
  if (thrown instanceof Refused) return thrown.refusal;
  if (isRefusal(thrown)) return thrown;
  return {
    kind: "failed",
    place: "",
    message: "The calculation stopped on this device.",
    remedy: `Reload the page and try again. (${thrown instanceof Error ? thrown.message : String(thrown)})`,
  };
}

function isRefusal(thrown: unknown): thrown is Refusal {
  return typeof thrown === "object" && thrown !== null && "kind" in thrown && "remedy" in thrown;
}
