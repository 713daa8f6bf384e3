/** The worker's side of `remote.ts`: one engine, one call after the other. */
import { asRefusal, openLocal, type Engine } from "./engine.js";
import type { Call, Reply } from "./remote.js";

const engine = openLocal();

self.onmessage = async ({ data }: MessageEvent<Call>) => {
  self.postMessage(await answer(await engine, data));
};

async function answer(engine: Engine, { id, name, parameters }: Call): Promise<Reply> {
  try {
    const call = engine[name] as (...parameters: unknown[]) => Promise<unknown>;
    return { id, value: await call(...parameters) };
  } catch (thrown) {
    return { id, refusal: asRefusal(thrown) };
  }
}
