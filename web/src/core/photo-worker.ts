/** The worker's side of `photo.ts`: photos one after the other, then it is ended. The only file that touches the package for photos. */
import init, { PhotoReader, type PhotoReading, type PhotoRefusal } from "../../pkg/straight_answer_photo.js";
import { HEAD, looked, type Unfit } from "./photo-head.js";

/** What is asked: a photo, and whether memory is small. */
export interface Asked {
  file: Blob;
  small: boolean;
}

/** What is being done, and how much of it. */
export interface Step {
  doing: "loading" | "finding" | "reading";
  done: number;
  of: number;
}

/** Why there is no reading. */
export type PhotoFailure = Unfit | PhotoRefusal["kind"] | "not_loaded" | "failed";

/** What is sent back. */
export type Told = { step: Step } | { reading: PhotoReading } | { failure: PhotoFailure };

/** No side of what is looked at is longer. */
const LONGEST = 3000;

let reader: Promise<PhotoReader> | undefined;

const tell = (told: Told, moved: Transferable[] = []): void => self.postMessage(told, { transfer: moved });
const doing = (step: Step["doing"], done = 0, of = 0): void => tell({ step: { doing: step, done, of } });

self.onmessage = async ({ data: { file, small } }: MessageEvent<Asked>) => {
  const head = looked(new Uint8Array(await file.slice(0, HEAD).arrayBuffer()));
  if (typeof head === "string") return tell({ failure: head });
  const pixels = await unpacked(file);
  if (!pixels) return tell({ failure: "damaged" });
  reader ??= loaded();
  const ready = await reader.catch(() => undefined);
  if (!ready) {
    reader = undefined;
    return tell({ failure: "not_loaded" });
  }
  try {
    const { width, height, data } = pixels;
    const bytes = new Uint8Array(data.buffer, data.byteOffset, data.byteLength);
    const progress = (done: number, of: number) => (of === 0 ? doing("finding") : doing("reading", done, of));
    const reading = ready.read(bytes, width, height, small, progress);
    return tell({ reading }, [reading.cuts.buffer]);
  } catch (thrown) {
    // A trap inside the package is no refusal: let it end the worker.
    if (typeof thrown === "object" && thrown !== null && "kind" in thrown)
      return tell({ failure: (thrown as PhotoRefusal).kind });
    throw thrown;
  }
};

/** Pixels as the photo is held, made smaller; nothing when the browser cannot unpack it. */
async function unpacked(file: Blob): Promise<ImageData | null> {
  try {
    const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
    const scale = Math.min(1, LONGEST / Math.max(picture.width, picture.height));
    const [width, height] = [picture.width, picture.height].map((side) => Math.max(1, Math.round(side * scale)));
    const surface = new OffscreenCanvas(width!, height!).getContext("2d", { willReadFrequently: true })!;
    surface.imageSmoothingQuality = "high";
    surface.drawImage(picture, 0, 0, width!, height!);
    picture.close();
    return surface.getImageData(0, 0, width!, height!);
  } catch {
    return null;
  }
}

/** Program and models, which are packed by gzip whatever the host does. */
async function loaded(): Promise<PhotoReader> {
  doing("loading");
  const program = new URL("../../pkg/straight_answer_photo_bg.wasm", import.meta.url);
  const models = new URL("../../pkg/straight_answer_photo_models.bin", import.meta.url);
  const [, bytes] = await Promise.all([init({ module_or_path: program }), unzipped(models)]);
  return new PhotoReader(bytes);
}

async function unzipped(address: URL): Promise<Uint8Array> {
  const response = await fetch(address);
  if (!response.ok || !response.body) throw new Error(`${response.status} for the models`);
  const of = Number(response.headers.get("content-length") ?? 0);
  let done = 0;
  const counted = new TransformStream<Uint8Array<ArrayBuffer>, Uint8Array<ArrayBuffer>>({
    transform(part, along) {
      done += part.byteLength;
      doing("loading", done, Math.max(of, done));
      along.enqueue(part);
    },
  });
  const plain = response.body.pipeThrough(counted).pipeThrough(new DecompressionStream("gzip"));
  return new Uint8Array(await new Response(plain).arrayBuffer());
}

// What is thrown in an asynchronous handler reaches nobody unless it is thrown again outside of it.
self.onunhandledrejection = (event: PromiseRejectionEvent) => {
  setTimeout(() => {
    throw event.reason;
  });
};
