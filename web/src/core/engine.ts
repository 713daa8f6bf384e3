/**
 * The statistics core behind one asynchronous interface; the only file that touches the wasm packages.
 *
 * Every call is stateless. A refused call rejects with a `Refused` that carries the place and the remedy.
 * A small package answers first: it reads plain tables and checks them. The complete one is loaded when something
 * else is asked for; both are built from the same source and give the same results.
 */

import type {
  CheckRequest,
  Hints,
  Luck,
  LuckRequest,
  Measure,
  Order,
  ReadResult,
  Report,
  Session,
  Shared,
  ShareRequest,
  Unpacked,
} from "../../pkg/straight_answer.js";
import init, * as first from "../../pkg/straight_answer_first.js";
import { loadedIn } from "./core-language.js";
import { asking } from "./refusal.js";

export type {
  Answer,
  Build,
  CheckRequest,
  ColumnReading,
  Conditions,
  CustomMeasure,
  Decision,
  Delimiter,
  Estimate,
  Finding,
  Goal,
  Group,
  Hints,
  Layout,
  LineIs,
  LineReading,
  LinkNotice,
  Luck,
  LuckRequest,
  Measure,
  Notice,
  Numbers,
  Order,
  Overlay,
  Problem,
  Question,
  Reading,
  ReadResult,
  Refusal,
  Report,
  Role,
  RowCounts,
  Session,
  Shared,
  ShareRequest,
  Shot,
  Showing,
  Stopping,
  TextbookTest,
  TrustFinding,
  Unpacked,
  View,
} from "../../pkg/straight_answer.js";

/** What the page asks of the core; a worker answers to the same functions (see `remote.ts`). */
export type Engine = Awaited<ReturnType<typeof openLocal>>;

type Complete = typeof import("../../pkg/straight_answer.js");

let loading: Promise<Complete> | undefined;

/** The complete package, loaded when first asked for; a failed attempt is tried again at the next call. */
function complete(manner: string): Promise<Complete> {
  loading ??= loadComplete(manner).catch((error: unknown) => {
    loading = undefined;
    throw error;
  });
  return loading;
}

async function loadComplete(manner: string): Promise<Complete> {
  const core = await import("../../pkg/straight_answer.js");
  await loadedIn(
    manner,
    core,
    core.default({ module_or_path: new URL("../../pkg/straight_answer_bg.wasm", import.meta.url) }),
  );
  return core;
}

/** The core on this thread, to answer in a manner. Every function that the page has of it is named here and nowhere else. */
export async function openLocal(manner: string, core: WebAssembly.Module) {
  await loadedIn(manner, first, init({ module_or_path: core }));
  return {
    /** The measures of the trade, with their usual smallest difference that matters. */
    measures: async (): Promise<Measure[]> => first.measures(),
    /** The text of a file; nothing when it is a workbook, and refused when it is neither. */
    decode: (bytes: Uint8Array, name: string): Promise<string | undefined> => asking(() => first.decode(bytes, name)),
    /** Reads shots from text; never refuses text, only hints of the wrong type. */
    read: (text: string, hints: Hints): Promise<ReadResult> =>
      asking(async () => readPlain(text, hints) ?? (await complete(manner)).read(text, hints)),
    /** Joins sessions of texts given one after another; `order` is how the clubs were hit, when that is known. */
    join: (sessions: readonly Session[], order: Order | null): Promise<Session> =>
      asking(async () => (await complete(manner)).join([...sessions], order)),
    /** Answers a question from a session's shots. */
    check: (request: CheckRequest): Promise<Report> => asking(() => first.check(request)),
    /** Shows how far luck reaches on a session's own shots. */
    luck: (request: LuckRequest): Promise<Luck> => asking(async () => (await complete(manner)).luck(request)),
    /** What a link holds; anything else is refused. */
    unpack: (link: string): Promise<Unpacked> => asking(async () => (await complete(manner)).unpack(link)),
    /** The answer made ready to give away: link, words, lines of a card, the report as a file. */
    share: (request: ShareRequest): Promise<Shared> => asking(async () => (await complete(manner)).share(request)),
    /** The session as the tool's own CSV, which reads back identical. */
    writeCsv: (session: Session): Promise<string> => asking(async () => (await complete(manner)).write_csv(session)),
  };
}

/** Longer than any fitting: the first package is built small, the complete one reads three times as fast. */
const LONG = 200_000;

/** What the first package can read by itself: a plain table about which nothing was said. */
function readPlain(text: string, hints: Hints): ReadResult | undefined {
  return text.length <= LONG && Object.keys(hints).length === 0 ? first.read_plain(text) : undefined;
}
