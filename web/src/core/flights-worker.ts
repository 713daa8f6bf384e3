/** The worker's side of `flights.ts`; the only other file that touches wasm. */
import init, * as core from "../../pkg/straight_answer_flight.js";
import { loadedIn } from "./core-language.js";
import { type Call, replyTo } from "./port.js";

// A worker is named after how it is to speak (`trusted.ts`).
const loading = init({ module_or_path: new URL("../../pkg/straight_answer_flight_bg.wasm", import.meta.url) });
const ready = loadedIn(self.name, core, loading);

self.onmessage = async ({ data }: MessageEvent<Call>) => {
  await ready.catch(() => undefined);
  self.postMessage(await replyTo(core, data));
};
