/** The worker's side of `remote.ts`: it is handed the compiled core first; then one call after the other. */
import { type Engine, openLocal } from "./engine.js";
import { type Call, replyTo } from "./port.js";

let engine: Promise<Engine>;

self.onmessage = async ({ data }: MessageEvent<Call | WebAssembly.Module>) => {
  // A worker is named after how it is to speak (`trusted.ts`).
  if (data instanceof WebAssembly.Module) engine = openLocal(self.name, data);
  else self.postMessage(await replyTo(engine, data));
};
