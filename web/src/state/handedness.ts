/** Which hand the golfer plays with, said once for all parts; kept in this page only. */
import type { Hand } from "../core/flights.js";

let chosen: Hand | null = null;
const listeners = new Set<() => void>();

export const hand = (): Hand | null => chosen;

export function setHand(next: Hand): void {
  chosen = next;
  for (const listener of listeners) listener();
}

/** Calls `listener` after every change, until the returned function is called. */
export function onHand(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
