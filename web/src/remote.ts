/** The engine in a worker, behind the same interface: whatever it works out, the page goes on answering to the hand. */
import type { Engine } from "./engine.js";
import { caller, type Port } from "./port.js";

/** The engine that answers through `port`. */
export function openRemote(port: Port): Engine {
  const call = caller(port);
  return {
    measures: () => call("measures"),
    decode: (bytes, name) => call("decode", bytes, name),
    read: (text, hints) => call("read", text, hints),
    join: (sessions, order) => call("join", sessions, order),
    check: (request) => call("check", request),
    luck: (request) => call("luck", request),
    unpack: (link) => call("unpack", link),
    share: (request) => call("share", request),
    writeCsv: (session) => call("writeCsv", session),
    landing: (request) => call("landing", request),
    cause: (request) => call("cause", request),
    potential: (request) => call("potential", request),
    consistency: (request) => call("consistency", request),
    second: (request) => call("second", request),
    inStandardAir: (request) => call("inStandardAir", request),
  };
}

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
  worker.postMessage(await compiled(new URL("../pkg/straight_answer_first_bg.wasm", import.meta.url)));
  return openRemote(worker);
}

/** Compiled as it arrives; by hosts that do not say what kind of file it is, once it is there. */
async function compiled(address: URL): Promise<WebAssembly.Module> {
  try {
    return await WebAssembly.compileStreaming(fetch(address));
  } catch {
    return WebAssembly.compile(await (await fetch(address)).arrayBuffer());
  }
}
