/** The worker's side of `workbook.ts`: one workbook, then it is done. The only file that touches the package for workbooks. */
import init, { type Refusal, type Sheet, sheets } from "../../pkg/straight_answer_workbook.js";
import { voiceOf } from "./core-language.js";

/** What is sent back. */
export type Opened = { sheets: Sheet[] } | { refusal: Refusal };

self.onmessage = async ({ data }: MessageEvent<Uint8Array>) => {
  // A worker is named after how it is to speak (`trusted.ts`).
  const address = new URL("../../pkg/straight_answer_workbook_bg.wasm", import.meta.url);
  const [voice] = await Promise.all([voiceOf(self.name), init({ module_or_path: address })]);
  self.postMessage(opened(data, voice.table));
};

function opened(bytes: Uint8Array, table: string | null | undefined): Opened {
  try {
    return { sheets: sheets(bytes, table) };
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
