/** Bytes of files into text, and the examples an address opens. */
import { describe, expect, test } from "vitest";
import { decode } from "../src/decode.js";
import { EXAMPLES, exampleIn } from "../src/examples.js";

const bytes = (...values: number[]) => Uint8Array.from(values);
const text = (given: Uint8Array) => decode(given, "f");

describe("files into text", () => {
  test("UTF-8, with or without a mark", () => {
    expect(text(new TextEncoder().encode("Häuser"))).toEqual({ text: "Häuser" });
    expect(text(bytes(0xef, 0xbb, 0xbf, 0x61))).toEqual({ text: "a" });
  });

  test("UTF-16 both ways", () => {
    expect(text(bytes(0xff, 0xfe, 0x61, 0x00))).toEqual({ text: "a" });
    expect(text(bytes(0xfe, 0xff, 0x00, 0x61))).toEqual({ text: "a" });
  });

  test("Windows-1252 when it is no UTF-8", () => expect(text(bytes(0x48, 0xe4))).toEqual({ text: "Hä" }));

  test("workbooks are known by their first bytes, locked ones too", () => {
    expect(decode(bytes(0x50, 0x4b, 0x03, 0x04, 0x14), "a.xlsx")).toEqual({ workbook: true });
    expect(decode(bytes(0xd0, 0xcf, 0x11, 0xe0), "a.xlsx")).toEqual({ workbook: true });
  });

  test("a picture is refused with what to do instead", () => {
    const picture = bytes(0x89, 0x50, 0x4e, 0x47, 0x00, 0x01);
    expect(decode(picture, "session.bin")).toMatchObject({ refusal: { place: "session.bin", remedy: expect.stringMatching(/paste/) as string } });
  });
});

test("an address opens an example by its name and nothing else", () => {
  expect(exampleIn("#example=twelve")?.id).toBe("twelve");
  expect(exampleIn("#answer")).toBeUndefined();
  expect(exampleIn("#example=__proto__")).toBeUndefined();
});

test("every example is there and holds shots", async () => {
  for (const example of EXAMPLES) {
    const rows = (await example.text()).trim().split("\n").filter((line) => /^\d/.test(line));
    expect(rows.length, example.id).toBeGreaterThan(20);
  }
});
