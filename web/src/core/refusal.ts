/** Requests that a core would not work on, and calls that failed, as one kind of error. */
import type { Refusal } from "../../pkg/straight_answer.js";
import { say } from "../text/say.js";

/** A failure that has no words yet. */
const FAILED = "failed, not worded";

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
    throw new Refused(carried(thrown));
  }
}

/** Whatever was thrown, as a refusal: the core's own, or a plain account of the failure. */
export function asRefusal(thrown: unknown): Refusal {
  const refusal = carried(thrown);
  if (refusal.kind !== FAILED) return refusal;
  return {
    ...refusal,
    kind: "failed",
    message: say("stopped"),
    remedy: say("stopped-remedy", { why: refusal.remedy }),
  };
}

/** The same where nobody speaks to the golfer, in a worker: what failed is worded by the page. */
export function carried(thrown: unknown): Refusal {
  if (thrown instanceof Refused) return thrown.refusal;
  if (isRefusal(thrown)) return thrown;
  return { kind: FAILED, place: "", message: "", remedy: thrown instanceof Error ? thrown.message : String(thrown) };
}

function isRefusal(thrown: unknown): thrown is Refusal {
  return typeof thrown === "object" && thrown !== null && "kind" in thrown && "remedy" in thrown;
}
