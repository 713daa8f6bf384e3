/** Workbooks, opened in a worker of their own with a package of their own: both come when such a file does, and go after it. */

import type { Refusal } from "../../pkg/straight_answer_workbook.js";
import { say } from "../text/say.js";
import { hasOwnOrigin, startWorker } from "./trusted.js";
import type { Opened } from "./workbook-worker.js";
import address from "./workbook-worker.ts?worker&url";

export type { Sheet } from "../../pkg/straight_answer_workbook.js";

/** The largest workbook that is read takes a phone a fraction of this, in milliseconds. */
const LONGEST_WAIT = 60_000;

/** The sheets of a workbook, or why there are none. A file that no memory or no patience holds ends the worker, not the page. */
export function openWorkbook(bytes: Uint8Array, name: string): Promise<Opened> {
  // A frame without an origin of its own starts none.
  if (!hasOwnOrigin()) return Promise.resolve({ refusal: failed(name) });
  const worker = startWorker(address);
  return new Promise<Opened>((resolve) => {
    worker.onmessage = ({ data }: MessageEvent<Opened>) => resolve(data);
    worker.onerror = () => resolve({ refusal: failed(name) });
    setTimeout(() => resolve({ refusal: failed(name) }), LONGEST_WAIT);
    worker.postMessage(bytes, [bytes.buffer]);
  }).finally(() => worker.terminate());
}

const failed = (place: string): Refusal => ({
  kind: "not_opened",
  place,
  message: say("workbook-not-opened"),
  remedy: say("workbook-not-opened-remedy"),
});
