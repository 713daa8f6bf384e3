/** The whole core out of the script itself. There is no abridged one here: it would only come twice. */

import packed from "plain-core";
import type { Voice } from "../pkg/straight_answer.js";
import * as core from "../pkg/straight_answer.js";
import type { Core, Cores } from "../src/core/core.js";
import { voiceOf } from "./core-language.js";

let opening: Promise<Core> | null = null;

export function openWhole(): Promise<Core> {
  opening ??= open();
  return opening;
}

async function open(): Promise<Core> {
  const bytes = Uint8Array.from(atob(packed), (letter) => letter.charCodeAt(0));
  const unpacked = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  const module = await WebAssembly.compile(await new Response(unpacked).arrayBuffer());
  await core.default({ module_or_path: module });
  return core;
}

export async function openCores(manner: string): Promise<Cores> {
  const [voice, whole] = await Promise.all([voiceOf(manner), openWhole()]);
  const call = async <T>(ask: (core: Core, voice: Voice) => T): Promise<T> => ask(whole, voice);
  return { soon: call as Cores["soon"], later: call };
}
