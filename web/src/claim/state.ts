/** What checking a claim keeps on the screen, and what its views may ask of it. */
import type { Measure, Problem, Question, Refusal, Session } from "../core/engine.js";
import type { Conditions, InStandardAir } from "../core/flights.js";
import type { Claimed, ClaimReport, TogetherPair } from "../core/planner.js";
import type { Current } from "../state/page-port.js";
import type { Patch } from "../state/patch.js";

/** A session of another day, with what of it was not understood. */
export interface Day {
  session: Session;
  problems: readonly Problem[];
}

export interface ClaimState {
  measures: readonly Measure[];
  current: Current | null;
  /** What is asked where nothing is on the page. */
  question: Question;
  claimed: Claimed;
  report: ClaimReport | null;
  days: readonly Day[];
  /** Whether carry is brought to standard air first. */
  inAir: boolean;
  /** Weather told here, by day; the one on the page is day 0. Without it the session's own holds. */
  weather: Readonly<Record<number, Conditions>>;
  /** What standard air did to each day; empty where it was not asked for. */
  air: readonly InStandardAir[];
  pairs: readonly TogetherPair[];
  /** What became of the wish to keep the claim; empty before it. */
  kept: string;
  refusal: Refusal | null;
  daysRefusal: Refusal | null;
}

export interface ClaimActions {
  change: (patch: Patch<Claimed>) => void;
  ask: (measure: string) => void;
  /** Keeps what was claimed in the book, of somebody or of nobody. */
  keep: (name: string) => void;
  /** Whether it became a day. */
  addText: (text: string) => Promise<boolean>;
  addFiles: (files: readonly File[]) => void;
  dropDay: (index: number) => void;
  bringToAir: (wanted: boolean) => void;
  tellWeather: (day: number, conditions: Conditions) => void;
}

/** The weather of a day as far as anybody told it. */
export const weatherOf = ({ current, days, weather }: ClaimState, day: number): Conditions =>
  weather[day] ?? (day === 0 ? current?.session : days[day - 1]?.session)?.weather ?? { temperature_unit: "celsius" };
