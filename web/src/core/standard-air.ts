/** The question that goes to shots brought to standard air: what matters of carry matters of carry there too. */
import type { Question } from "./engine.js";
import type { InStandardAir } from "./flights.js";

/** The measure that the core adds to a session whose weather is known. */
export const STANDARD_AIR_CARRY = "carry_standard_air";

export function askedInStandardAir(question: Question, air: Pick<InStandardAir, "measure" | "margin">): Question {
  const { baseline, candidate, stopping, measure } = question;
  const isCarry = measure === "carry" || measure === air.measure;
  const whose = { baseline, ...(candidate === undefined ? {} : { candidate }), measure: air.measure, stopping };
  // Another measure has another goal, and its smallest difference that matters is no yards of carry.
  return {
    ...whose,
    goal: (isCarry ? question.goal : undefined) ?? "higher",
    margin: (isCarry ? question.margin : undefined) ?? air.margin,
  };
}
