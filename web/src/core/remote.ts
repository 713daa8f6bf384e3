/** The engine in a worker, behind the same interface: whatever it works out, the page goes on answering to the hand. */
import type { Engine } from "./engine.js";
import { type Port, remote } from "./port.js";

let opened: Promise<Engine> | null = null;

/** The abridged core is compiled while the worker starts, and handed to it. */
export function openEngine(start: () => Port): Promise<Engine> {
  opened = open(start);
  return opened;
}

/** The engine of the page, for what loads later: there is one, and one worker. */
export function engineOfPage(): Promise<Engine> {
  return opened ?? Promise.reject(new Error("no engine was opened"));
}

async function open(start: () => Port): Promise<Engine> {
  const worker = start();
  worker.postMessage(await compiled(new URL("../../pkg/straight_answer_first_bg.wasm", import.meta.url)));
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
