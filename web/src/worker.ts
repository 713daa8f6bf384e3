/** The worker's side of `remote.ts`: one engine, one call after the other. */
import { openLocal } from "./engine.js";
import { replyTo, type Call } from "./port.js";

// A worker is named after the language it speaks (`trusted.ts`).
const engine = openLocal(self.name);

self.onmessage = async ({ data }: MessageEvent<Call>) => {
  self.postMessage(await replyTo(await engine, data));
};
