/** What the fair test keeps on the screen, and what its views may ask of it. */
import type { Counts } from "../book/shelf.js";
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
  /** Who hits, or nobody in particular; and the people that are in the book. */
  name: string;
  names: readonly string[];
  /** Whether a newer page has the store, so that this one may not write to it. */
  isNewer: boolean;
  /** Whether the browser promised not to clear the store by itself; null where it was not asked. */
  isPersistent: boolean | null;
  /** Another tab went on with the test: its shots are shown, a number came back into the hand, or it was forgotten there. */
  overtaken: "shown" | "back" | "gone" | null;
  /** What would go, while it is asked whether everything is to be forgotten. */
  forgetting: Counts | null;
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
  name: "",
  names: [],
  isNewer: false,
  isPersistent: null,
  overtaken: null,
  forgetting: null,
});

/** No test is on the screen any more; the plan stands as it was. */
export const nothingLogged = (record: readonly string[]) =>
  ({
    mode: "plan",
    log: null,
    progress: null,
    feel: null,
    isKept: null,
    keptShots: 0,
    waits: false,
    overtaken: null,
    forgetting: null,
    refusal: null,
    entry: emptyEntry(record),
  }) satisfies Partial<FairState>;

export interface FairActions {
  change: (patch: Patch<PlanRequest>) => void;
  changeRecord: (record: readonly string[]) => void;
  callTester: (name: string) => void;
  start: () => void;
  /** The same plan for the next person. */
  nextPerson: () => void;
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
  /** Asks what would go before everything is forgotten. */
  askToForget: () => void;
  forget: () => void;
}
