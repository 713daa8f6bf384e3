/**
 * The core as a page loads it: abridged to what first answers run, and whole once something else is asked.
 *
 * Both are the same build. The core keeps nothing between calls, so one that runs into what the abridged core leaves
 * out, where it traps, is made again by the whole. What that is, nothing here knows.
 */
import type { Voice } from "../../pkg/straight_answer.js";
import initFirst, { check, decode, measures, read_in_columns, unpack } from "../../pkg/straight_answer_first.js";
import { voiceOf } from "./core-language.js";

/** The functions of the core, see `straight_answer.d.ts`. */
export type Core = typeof import("../../pkg/straight_answer.js");

/** What a first answer may call. */
const first = { check, decode, measures, read_in_columns, unpack };

/** The core on this thread. */
export interface Cores {
  /** A call that a first answer may well make. */
  soon<T>(call: (core: typeof first, voice: Voice) => T): Promise<T>;
  /** A call that no first answer makes: it loads the whole core, if that is not there. A failed attempt is made again at the next. */
  later<T>(call: (core: Core, voice: Voice) => T): Promise<T>;
}

/** Starts the abridged core, to answer in a manner. */
export async function openCores(manner: string, abridged: WebAssembly.Module): Promise<Cores> {
  const [voice] = await Promise.all([voiceOf(manner), initFirst({ module_or_path: abridged })]);
  let loading: Promise<Core> | null = null;
  let loaded: Core | null = null;
  /** Where the abridged core broke off, nothing in its memory can be trusted. */
  let isBroken = false;

  const whole = (): Promise<Core> =>
    (loading ??= openWhole().then(
      (core) => (loaded = core),
      (failed: unknown) => {
        loading = null;
        throw failed;
      },
    ));

  async function soon<T>(call: (core: typeof first, voice: Voice) => T): Promise<T> {
    if (loaded || isBroken) return call(await whole(), voice);
    try {
      return call(first, voice);
    } catch (thrown) {
      if (!(thrown instanceof WebAssembly.RuntimeError)) throw thrown;
      isBroken = true;
      return call(await whole(), voice);
    }
  }

  return { soon, later: async (call) => call(await whole(), voice) };
}

/** The whole core on this thread. */
export async function openWhole(): Promise<Core> {
  const core = await import("../../pkg/straight_answer.js");
  await core.default({ module_or_path: new URL("../../pkg/straight_answer_bg.wasm", import.meta.url) });
  return core;
}
