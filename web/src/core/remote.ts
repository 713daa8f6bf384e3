/** The engine in a worker, behind the same interface: whatever it works out, the page goes on answering to the hand. */
import type { Engine } from "./engine.js";
import { type Port, remote } from "./port.js";
import { hasOwnOrigin } from "./trusted.js";

let opened: Promise<Engine> | null = null;

/**
 * The abridged core is compiled while the worker starts, and handed to it. Where none may start, as in a frame without
 * an origin of its own, `here` answers on the page's own thread.
 */
export function openEngine(
  start: () => Port,
  here: (abridged: WebAssembly.Module) => Promise<Engine>,
): Promise<Engine> {
  opened = open(start, here);
  return opened;
}

/** The engine of the page, for what loads later: there is one, and one worker. */
export function engineOfPage(): Promise<Engine> {
  return opened ?? Promise.reject(new Error("no engine was opened"));
}

async function open(start: () => Port, here: (abridged: WebAssembly.Module) => Promise<Engine>): Promise<Engine> {
  const worker = hasOwnOrigin() ? start() : null;
  const abridged = await compiled(new URL("../../pkg/straight_answer_first_bg.wasm", import.meta.url));
  if (!worker) return here(abridged);
  worker.postMessage(abridged);
  return remote<Engine>(worker);
}

/** Compiled as it arrives; by hosts that do not say what kind of file it is, once it is there. */
async function compiled(address: URL): Promise<WebAssembly.Module> {
  try {
    return await WebAssembly.compileStreaming(fetch(address));
  } catch {
    return WebAssembly.compile(await (await fetch(address)).arrayBuffer());
  }
}
