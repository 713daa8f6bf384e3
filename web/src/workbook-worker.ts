/** The worker's side of `workbook.ts`: one workbook, then it is done. The only file that touches the package for workbooks. */
import init, { sheets, speak } from "../pkg/straight_answer_workbook.js";
import { voiceOf } from "./core-language.js";
import type { Opened } from "./workbook.js";

self.onmessage = async ({ data }: MessageEvent<Uint8Array>) => {
  // A worker is named after how it is to speak (`trusted.ts`).
  const address = new URL("../pkg/straight_answer_workbook_bg.wasm", import.meta.url);
  const [voice] = await Promise.all([voiceOf(self.name), init({ module_or_path: address })]);
  voice({ speak });
  self.postMessage(opened(data));
};

function opened(bytes: Uint8Array): Opened {
  try {
    return { sheets: sheets(bytes) };
  } catch (thrown) {
    // A trap inside the package is no refusal: let it end the worker.
    if (typeof thrown === "object" && thrown !== null && "remedy" in thrown) return { refusal: thrown as never };
    throw thrown;
  }
}

// What is thrown in an asynchronous handler reaches nobody unless it is thrown again outside of it.
self.onunhandledrejection = (event: PromiseRejectionEvent) => {
  setTimeout(() => {
    throw event.reason;
  });
};
