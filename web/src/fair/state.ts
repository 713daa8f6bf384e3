/** What the fair test keeps on the screen, and what its views may ask of it. */
import type { Measure, Refusal } from "../core/engine.js";
import type { Hand } from "../core/flights.js";
import type { Feel, OwnSay, Plan, PlanRequest, Progress } from "../core/planner.js";
import type { Current } from "../state/page-port.js";
import type { Patch } from "../state/patch.js";
import { say } from "../text/say.js";
import { type Entry, emptyEntry, type Key } from "./entry.js";
import type { Odd } from "./keeping.js";
import type { TestLog, Values } from "./log.js";

/** What of the part is on the screen. */
export type Mode = "plan" | "log" | "feel" | "answer" | "paused";

/** Shots with a value that is asked about before they are kept, in the units shown. */
export interface Asking extends Odd {
  rows: readonly Values[];
  mishit: boolean;
}

export interface FairState {
  mode: Mode;
  measures: readonly Measure[];
  current: Current | null;
  request: PlanRequest;
  plan: Plan | null;
  /** Whether the plan is the one that is asked for. */
  isPlanned: boolean;
  /** Whether the whole page is on the device. */
  worksOffline: boolean;
  /** Measures to write down for each shot. */
  record: readonly string[];
  log: TestLog | null;
  progress: Progress | null;
  entry: Entry;
  asking: Asking | null;
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

/** A plan that can be started as it stands. */
export const atFirst = (): FairState => ({
  mode: "plan",
  measures: [],
  current: null,
  request: { builds: [say("fair-my-driver"), say("fair-new-driver")], measure: "carry", same_club: false },
  plan: null,
  isPlanned: false,
  worksOffline: false,
  record: ["carry"],
  log: null,
  progress: null,
  entry: emptyEntry(["carry"]),
  asking: null,
  feel: null,
  refusal: null,
  pasteTrouble: "",
  isKept: null,
  keptShots: 0,
  sent: null,
  waits: false,
  done: "",
});

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
  press: (key: Key) => void;
  save: () => void;
  /** What is asked about is right, or it is typed again. */
  keepAsked: () => void;
  typeAgain: () => void;
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
