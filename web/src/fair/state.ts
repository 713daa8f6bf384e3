/** What the fair test keeps on the screen, and what its views may ask of it. */
import type { Measure, Refusal } from "../core/engine.js";
import type { Hand } from "../core/flights.js";
import type { Feel, OwnSay, Plan, PlanRequest, Progress } from "../core/planner.js";
import type { Current } from "../state/page-port.js";
import type { Patch } from "../state/patch.js";
import type { Entry } from "./entry.js";
import type { TestLog } from "./log.js";

/** What of the part is on the screen. */
export type Mode = "plan" | "log" | "feel" | "answer" | "paused";

export interface FairState {
  mode: Mode;
  measures: readonly Measure[];
  current: Current | null;
  request: PlanRequest;
  plan: Plan | null;
  /** Measures to write down for each shot. */
  record: readonly string[];
  log: TestLog | null;
  progress: Progress | null;
  entry: Entry;
  feel: Feel | null;
  refusal: Refusal | null;
  /** What went wrong with a pasted shot; empty when nothing did. */
  pasteTrouble: string;
  /** Whether the device keeps the test: null before it was asked to. */
  isKept: boolean | null;
  /** Shots that are on the device for certain. */
  keptShots: number;
  /** What is worth knowing about the link that the plan came with; null when it came with none. */
  sent: readonly string[] | null;
  /** Whether a plan in the address waits because a test is under way. */
  waits: boolean;
  /** What was just handed over, to be seen and heard. */
  done: string;
}

export interface FairActions {
  change: (patch: Patch<PlanRequest>) => void;
  changeRecord: (record: readonly string[]) => void;
  start: () => void;
  print: () => void;
  copyLink: () => void;
  /** Null where the device has no share sheet. */
  shareLink: (() => void) | null;
  /** Which hand the golfer plays with, as said in any part of the page. */
  hand: () => Hand | null;
  chooseHand: (hand: Hand) => void;
  warmedUp: () => void;
  enter: (entry: Partial<Entry>) => void;
  save: () => void;
  paste: (text: string) => void;
  pasteFromClipboard: () => void;
  undo: () => void;
  mishit: (mishit: boolean) => void;
  endSet: () => void;
  look: () => void;
  say: (say: OwnSay) => void;
  goOn: () => void;
  pause: () => void;
  exportCsv: () => void;
  forget: () => void;
}
