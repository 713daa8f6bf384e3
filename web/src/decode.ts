/**
 * Bytes of a chosen file into text: UTF-8 with or without a mark, UTF-16 with one, else Windows-1252.
 *
 * Workbooks are only recognized here (`workbook.ts` opens them); pictures are refused with what to do instead.
 */
import type { Refusal } from "./engine.js";

/** The text, that it is a workbook, or why there is none. */
export type Decoded = { text: string } | { workbook: true } | { refusal: Refusal };

/** Files larger than this are refused before they are read: far beyond any session, and a phone's memory is small. */
export const LARGEST_FILE = 50_000_000;

export function decode(bytes: Uint8Array, name: string): Decoded {
  // Packed files, and the file systems that older workbooks and locked ones are.
  if (startsWith(bytes, 0x50, 0x4b, 0x03, 0x04) || startsWith(bytes, 0xd0, 0xcf, 0x11, 0xe0)) return { workbook: true };
  if (looksBinary(bytes)) {
    return refused("not_text", name, "This file holds no text.",
      "A photo can be read by your phone: select its text, copy it, and paste it here.");
  }
  if (startsWith(bytes, 0xff, 0xfe)) return { text: new TextDecoder("utf-16le").decode(bytes) };
  if (startsWith(bytes, 0xfe, 0xff)) return { text: new TextDecoder("utf-16be").decode(bytes) };
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
  } catch {
    return { text: new TextDecoder("windows-1252").decode(bytes) };
  }
}

/** A refusal for a file that is too large to be a session. */
export function tooLarge(name: string): Refusal {
  return refused("too_large", name, "This file is larger than 50 MB.",
    "Keep only the columns and rows of this session, or paste them here.").refusal;
}

function refused(kind: string, place: string, message: string, remedy: string): { refusal: Refusal } {
  return { refusal: { kind, place, message, remedy } };
}

function startsWith(bytes: Uint8Array, ...mark: number[]): boolean {
  return mark.every((byte, at) => bytes[at] === byte);
}

/** Text holds no zero byte, unless it is UTF-16 and says so by its mark. */
function looksBinary(bytes: Uint8Array): boolean {
  const marked = startsWith(bytes, 0xff, 0xfe) || startsWith(bytes, 0xfe, 0xff);
  return !marked && bytes.subarray(0, 4096).includes(0);
}
