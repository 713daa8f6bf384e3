/** What the book asks the fair test to go on with, also before that part is loaded. */
import type { PlanRequest } from "../core/planner.js";

/** A test that waits, or a plan for somebody's next visit. */
export type Wanted = { test: string } | { plan: PlanRequest; name: string };

let wanted: Wanted | null = null;

/** What is told to a fair test that is there already. */
export const WANTED = "straight-answer-go-on";

export function goOnWith(what: Wanted): void {
  wanted = what;
  document.dispatchEvent(new Event(WANTED));
}

/** What is asked for, once. */
export function takeWanted(): Wanted | null {
  const what = wanted;
  wanted = null;
  return what;
}
