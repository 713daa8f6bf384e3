/** The first bytes of a picture: what it is and how large, before anything unpacks it. Pure. */

/** Why a file is not unpacked. */
export type Unfit = "heic" | "no_photo" | "animated" | "too_small" | "too_large" | "damaged";

export interface Size {
  width: number;
  height: number;
}

/** As much of a file as has to be looked at. */
export const HEAD = 1_000_000;

/** Narrower than this, in pixels, holds no table. */
const NARROWEST = 48;
/** Four bytes each have to fit into a phone's memory. */
const MOST_PIXELS = 64_000_000;
const LONGEST = 20_000;

/** The size of a JPEG, PNG or WebP picture, as its head says it; otherwise why it is not taken. */
export function looked(bytes: Uint8Array): Size | Unfit {
  const found = sizeOf(bytes);
  if (typeof found === "string") return found;
  const { width, height } = found;
  if (width > LONGEST || height > LONGEST || width * height > MOST_PIXELS)
    return Math.min(width, height) < NARROWEST ? "too_small" : "too_large";
  return Math.min(width, height) < NARROWEST ? "too_small" : found;
}

function sizeOf(bytes: Uint8Array): Size | Unfit {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const text = (at: number, length: number) => String.fromCharCode(...bytes.subarray(at, at + length));
  if (text(4, 4) === "ftyp") return /^(?:hei[cxms]|hev[cx]|mif1|msf1)/.test(text(8, 4)) ? "heic" : "no_photo";
  if (text(0, 3) === "GIF") return "animated";
  if (bytes.length < 32) return "damaged";
  if (bytes[0] === 0xff && bytes[1] === 0xd8) return ofJpeg(view);
  if (text(1, 3) === "PNG") {
    // What moves says so before its first picture.
    if (text(0, Math.min(bytes.length, 4096)).includes("acTL")) return "animated";
    return { width: view.getUint32(16), height: view.getUint32(20) };
  }
  if (text(0, 4) === "RIFF" && text(8, 4) === "WEBP") return ofWebp(view, text(12, 4));
  return "no_photo";
}

/** Segment by segment, to the one that says the size. */
function ofJpeg(view: DataView): Size | Unfit {
  let at = 2;
  while (at + 9 < view.byteLength) {
    if (view.getUint8(at) !== 0xff) return "damaged";
    const kind = view.getUint8(at + 1);
    if (kind === 0xff) {
      at++;
      continue;
    }
    const isFrame = kind >= 0xc0 && kind <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(kind);
    if (isFrame) return { height: view.getUint16(at + 5), width: view.getUint16(at + 7) };
    const isAlone = kind === 0x01 || (kind >= 0xd0 && kind <= 0xd8);
    if (kind === 0xd9 || kind === 0xda) return "damaged";
    at += isAlone ? 2 : 2 + view.getUint16(at + 2);
  }
  return "damaged";
}

function ofWebp(view: DataView, kind: string): Size | Unfit {
  if (kind === "VP8X") {
    const side = (at: number) => 1 + view.getUint16(at, true) + (view.getUint8(at + 2) << 16);
    return (view.getUint8(20) & 2) !== 0 ? "animated" : { width: side(24), height: side(27) };
  }
  if (kind === "VP8L") {
    const bits = view.getUint32(21, true);
    return { width: 1 + (bits & 0x3fff), height: 1 + ((bits >>> 14) & 0x3fff) };
  }
  if (kind === "VP8 ") return { width: view.getUint16(26, true) & 0x3fff, height: view.getUint16(28, true) & 0x3fff };
  return "damaged";
}
