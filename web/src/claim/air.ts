/** Days with different weather, each brought to standard air before they are put together. */
import type { Question, Refusal, Session } from "../core/engine.js";
import { type Conditions, flights, type InStandardAir } from "../core/flights.js";
import { asRefusal } from "../core/refusal.js";
import { askedInStandardAir, STANDARD_AIR_CARRY } from "../core/standard-air.js";
import { say } from "../text/say.js";

/** Only carry can be brought to standard air. */
export const canBeBrought = (measure: string): boolean => measure === "carry" || measure === STANDARD_AIR_CARRY;

export type InOneAir = { sessions: Session[]; question: Question; told: InStandardAir[] } | { refusal: Refusal };

/** A day whose weather nobody told is taken as it is: in standard air. One that cannot be flown stops the rest. */
export async function inOneAir(
  days: readonly { session: Session; weather: Conditions }[],
  question: Question,
): Promise<InOneAir> {
  const told: InStandardAir[] = [];
  for (const [at, { session, weather }] of days.entries()) {
    try {
      told.push(await (await flights()).inStandardAir({ session, conditions: weather }));
    } catch (thrown) {
      return { refusal: { ...asRefusal(thrown), place: say("day-n", { day: at + 1 }) } };
    }
  }
  const [first] = told;
  if (!first)
    return { refusal: { kind: "no_session", place: "", message: say("no-session"), remedy: say("no-session-remedy") } };
  return { sessions: told.map(({ session }) => session), question: askedInStandardAir(question, first), told };
}
