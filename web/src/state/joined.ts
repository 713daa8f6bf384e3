/** The session of all texts together, and whether texts read again hold the same shots. Pure. */
import type { Session } from "../core/engine.js";
import { buildOf, numberOf, type SetAside, shotCount, withReasons } from "./shots.js";

export interface Joined {
  session: Session;
  texts: number;
}

/**
 * Texts read again, in another unit say, may hold the same shots or quite others; of texts added or removed
 * at the end the shots before them stay the same.
 */
export function isSameShots(now: Joined, before: Joined | null): boolean {
  const [shots, others] = [shotCount(now.session), before ? shotCount(before.session) : 0];
  const length = now.texts === before?.texts ? Math.max(shots, others) : Math.min(shots, others);
  if (length > Math.min(shots, others)) return false;
  const same = (at: number) =>
    numberOf(now.session, at) === numberOf(before!.session, at) &&
    buildOf(now.session, at) === buildOf(before!.session, at);
  return Array.from({ length }).every((_, at) => same(at));
}

/** What was said by hand goes before what stands in the text. */
export const joinedWith = ({ session, texts }: Joined, setAside: SetAside): Joined => ({
  session: withReasons(session, setAside),
  texts,
});
