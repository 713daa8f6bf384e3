/** What the book keeps on the screen, and what its views may ask of it. */
import type { Measure, Report } from "../core/engine.js";
import type { TogetherPair } from "../core/planner.js";
import type { Meta } from "./book.js";
import type { Contents, Preview } from "./merge.js";
import type { Kept, VisitData } from "./records.js";
import type { Counts, Row } from "./shelf.js";

/** A visit of a season: its day, and what its shots say. */
export interface SeasonDay {
  visit: Kept<"visit"> | null;
  report: Report;
  /** Which of the session's clubs is the one asked about. */
  candidate: number;
}

export interface Season {
  days: readonly SeasonDay[];
  pair: TogetherPair | null;
  measure: string;
  /** The clubs that all of it is about. */
  clubs: readonly [string, string];
}

export interface Opened {
  person: Kept<"person"> | null;
  rows: readonly Row[];
  season: Season | null;
  /** Claims with what the latest retest says to each. */
  claims: readonly { visit: Kept<"visit"> | null; said: string }[];
}

export interface BookState {
  /** Why nothing can be shown; empty when there is no reason. */
  trouble: "" | "newer";
  measures: readonly Measure[];
  where: "device" | "memory";
  counts: Counts | null;
  meta: Meta | null;
  bytes: number | null;
  /** What was typed into the search. */
  text: string;
  rows: readonly Row[];
  /** How many rows are drawn at most. */
  most: number;
  underWay: readonly { test: Kept<"test">; name: string }[];
  /** The row that is open, by its record. */
  open: string | null;
  /** The person whose page it is. */
  person: Opened | null;
  deleted: readonly { gone: number; kept: readonly Kept[] }[];
  /** What was just done, to be seen and heard; and what takes it back. */
  done: string;
  undo: number | null;
  /** A copy that was opened: asked for its passphrase, or shown before anything is taken over. */
  copy: { isWrong: boolean } | { preview: Preview; from: Contents } | null;
  forgetting: boolean;
  /** Whether the newest visit is in no copy. */
  isCopyOld: boolean;
}

export interface BookActions {
  search: (text: string) => void;
  showMore: () => void;
  toggle: (id: string) => void;
  openAnswer: (row: Row) => void;
  goOn: (test: string) => void;
  saveRaw: (raw: unknown) => void;
  tellVisit: (id: string, patch: Partial<VisitData>) => void;
  /** One visit as a file, for another device. */
  saveVisit: (id: string) => void;
  showPerson: (id: string | null) => void;
  rename: (id: string, name: string) => void;
  nextVisit: (row: Row) => void;
  remove: (id: string, what: string) => void;
  takeBack: (gone: number) => void;
  saveCopy: (passphrase: string) => void;
  openCopy: (file: File) => void;
  unlock: (passphrase: string) => void;
  takeOver: () => void;
  leaveCopy: () => void;
  askToForget: (is: boolean) => void;
  forget: () => void;
}

/** Rows drawn at first, and with every more. */
export const ROWS = 20;

/** Before the store was looked into. */
export const atFirst: BookState = {
  trouble: "",
  measures: [],
  where: "device",
  counts: null,
  meta: null,
  bytes: null,
  text: "",
  rows: [],
  most: ROWS,
  underWay: [],
  open: null,
  person: null,
  deleted: [],
  done: "",
  undo: null,
  copy: null,
  forgetting: false,
  isCopyOld: false,
};
