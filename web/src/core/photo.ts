/** Photos, read in a worker of their own with a package of their own: both come when a photo does, and go after it. */

import type { PhotoReading } from "../../pkg/straight_answer_photo.js";
import type { Asked, PhotoFailure, Step, Told } from "./photo-worker.js";
import address from "./photo-worker.ts?worker&url";
import { hasOwnOrigin, startWorker } from "./trusted.js";

export type { PhotoCell, PhotoColumn, PhotoDoubt, PhotoReading } from "../../pkg/straight_answer_photo.js";
export type { PhotoFailure, Step } from "./photo-worker.js";

export type Photographed = { reading: PhotoReading } | { failure: PhotoFailure | "old_browser" };

export interface PhotoReader {
  /** Reads one photo; `tell` hears what is being done. One at a time. */
  read(file: Blob, tell: (step: Step) => void): Promise<Photographed>;
  /** Ends the worker, whatever it does. */
  end(): void;
}

/** Vectors, in the smallest program that has one. */
const VECTORS = [
  0, 97, 115, 109, 1, 0, 0, 0, 1, 5, 1, 96, 0, 1, 123, 3, 2, 1, 0, 10, 10, 1, 8, 0, 65, 0, 253, 15, 253, 98, 11,
];

/** A device with no more gigabytes than this is given less to hold. */
const SMALL_MEMORY = 2;

const canRead = (): boolean =>
  WebAssembly.validate(new Uint8Array(VECTORS)) &&
  typeof OffscreenCanvas === "function" &&
  typeof DecompressionStream === "function";

export function openPhotos(): PhotoReader {
  if (!canRead() || !hasOwnOrigin()) return { read: async () => ({ failure: "old_browser" }), end: () => undefined };
  const worker = startWorker(address);
  const small = ((navigator as { deviceMemory?: number }).deviceMemory ?? SMALL_MEMORY + 1) <= SMALL_MEMORY;
  return {
    read: (file, tell) =>
      new Promise((resolve) => {
        worker.onmessage = ({ data }: MessageEvent<Told>) => ("step" in data ? tell(data.step) : resolve(data));
        worker.onerror = () => resolve({ failure: "failed" });
        worker.postMessage({ file, small } satisfies Asked);
      }),
    end: () => worker.terminate(),
  };
}
