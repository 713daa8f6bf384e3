// The built package for photos in Node, as the page's worker runs it: JPEGs unpacked, turned, made smaller, read.
import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { gunzipSync } from "node:zlib";

const fromWeb = createRequire(new URL("../../web/package.json", import.meta.url));
const jpeg = fromWeb("jpeg-js");
const PACKAGE = new URL("../../web/pkg/", import.meta.url);
const MODELS = new URL("straight_answer_photo_models.bin", PACKAGE);

/** As the page has it. */
const LONGEST = 3000;

/** Whether this machine could have the models. */
export const hasModels = existsSync(MODELS);

/** A reader, and how many bytes its memory holds. */
export async function openReader() {
  const { default: init, PhotoReader } = await import(new URL("straight_answer_photo.js", PACKAGE));
  const { memory } = await init({ module_or_path: readFileSync(new URL("straight_answer_photo_bg.wasm", PACKAGE)) });
  const reader = new PhotoReader(gunzipSync(readFileSync(MODELS)));
  const read = ({ data, width, height }, tell = () => undefined) => reader.read(data, width, height, false, tell);
  return { read, bytes: () => memory.buffer.byteLength };
}

/** The pixels of a JPEG as they are held, no side longer than the page lets it be; `scale` is how much smaller they are. */
export function unpacked(bytes, orientation = 1) {
  const picture = jpeg.decode(bytes, { useTArray: true, maxMemoryUsageInMB: 2000 });
  const held = orientation === 6 ? turned(picture) : picture;
  const scale = Math.min(1, LONGEST / Math.max(held.width, held.height));
  return { ...(scale < 1 ? smaller(held, scale) : held), scale };
}

/** A quarter turn with the hands of a clock. */
function turned({ data, width, height }) {
  const from = new Uint32Array(data.buffer, data.byteOffset, width * height);
  const to = new Uint32Array(width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) to[x * height + height - 1 - y] = from[y * width + x];
  return { data: new Uint8Array(to.buffer), width: height, height: width };
}

/** Each pixel the average of those whose middle it covers. */
function smaller({ data, width, height }, scale) {
  const [across, down] = [Math.round(width * scale), Math.round(height * scale)];
  const sums = new Float32Array(4 * across * down);
  const counts = new Uint16Array(across * down);
  for (let y = 0; y < height; y++) {
    const row = Math.floor(((y + 0.5) * down) / height) * across;
    for (let x = 0; x < width; x++) {
      const to = row + Math.floor(((x + 0.5) * across) / width);
      counts[to]++;
      for (let color = 0; color < 4; color++) sums[4 * to + color] += data[4 * (y * width + x) + color];
    }
  }
  return { data: Uint8Array.from(sums, (sum, at) => Math.round(sum / counts[at >> 2])), width: across, height: down };
}
