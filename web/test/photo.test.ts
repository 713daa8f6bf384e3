/** Photos: what a file's first bytes say, checking by hand, and the texts that come of it. */
import { describe, expect, test } from "vitest";
import type { PhotoReading } from "../src/core/photo.js";
import { looked } from "../src/core/photo-head.js";
import { begun, doubtful, openIn, withSaid } from "../src/photo/checked.js";
import { joined, textsOf, tileText } from "../src/photo/table.js";
import { arePhotos } from "../src/state/photos.js";

const quad: PhotoReading["cells"][number]["quad"] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

/** A reading of rows; a mark behind a text makes it doubtful. */
function reading(headings: string[], rows: string[][], more: Partial<PhotoReading> = {}): PhotoReading {
  const cells = rows.flatMap((row, at) =>
    row.map((text, column) => ({
      row: at,
      column,
      text: text.replace(/[?!]$/, ""),
      other: null,
      doubts: text.endsWith("?")
        ? (["unsure"] as const).slice()
        : text.endsWith("!")
          ? (["sign"] as const).slice()
          : [],
      quad,
      cut: { from: 0, width: 1 },
    })),
  );
  const columns = headings.map((heading) => ({ heading, is_number: true, has_signs: false }));
  const rest = { is_tiles: false, above: [], below: [], cuts: new Uint8Array(48), cut_height: 48 };
  return { ...rest, columns, rows: rows.length, cells, ...more };
}

describe("the first bytes", () => {
  const jpeg = (width: number, height: number) =>
    new Uint8Array([
      ...[0xff, 0xd8, 0xff, 0xe1, 0, 6, 1, 2, 3, 4, 0xff, 0xc2, 0, 17, 8],
      ...[height >> 8, height & 255, width >> 8, width & 255, 3],
      ...new Array(30).fill(0),
    ]);
  const png = (width: number, height: number, more = "") => {
    const bytes = new Uint8Array(64);
    bytes.set([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52]);
    new DataView(bytes.buffer).setUint32(16, width);
    new DataView(bytes.buffer).setUint32(20, height);
    bytes.set(new TextEncoder().encode(more), 40);
    return bytes;
  };
  const text = (written: string) => new TextEncoder().encode(written.padEnd(64));

  test("tell a photo and its size", () => {
    expect(looked(jpeg(4000, 3000))).toEqual({ width: 4000, height: 3000 });
    expect(looked(png(1170, 2532))).toEqual({ width: 1170, height: 2532 });
  });

  test.each([
    ["one pixel", png(1, 1), "too_small"],
    ["a line", png(50_000, 1), "too_small"],
    ["what would fill the memory", png(30_000, 30_000), "too_large"],
    ["a JPEG that ends early", jpeg(4000, 3000).slice(0, 12), "damaged"],
    ["nothing", new Uint8Array(0), "damaged"],
    ["a drawing", text('<svg xmlns="http://www.w3.org/2000/svg">'), "no_photo"],
    ["moving pictures", text("GIF89a"), "animated"],
    ["a moving PNG", png(400, 400, "acTL"), "animated"],
    ["HEIC", text("\0\0\0\x18ftypheic"), "heic"],
  ])("tell %s", (_, bytes, why) => expect(looked(bytes)).toBe(why));

  test("files are photos when all of them are", () => {
    const file = (name: string, type = "") => ({ name, type });
    expect(arePhotos([file("a.jpg", "image/jpeg"), file("b.HEIC")])).toBe(true);
    expect(arePhotos([file("a.jpg", "image/jpeg"), file("b.csv", "text/csv")])).toBe(false);
    expect(arePhotos([])).toBe(false);
  });
});

describe("checking", () => {
  test("goes from the lost sign to the others, and ends when each was said", () => {
    let photo = begun("p", reading(["Carry"], [["231?"], ["229"], ["4!"]]));
    expect(doubtful(photo)).toEqual([2, 0]);
    photo = withSaid(withSaid(photo, 2, " -4 "), 0, "231");
    expect(openIn(photo)).toBe(0);
    expect(textsOf([photo])[0]!.source.text).toBe("Carry\n231\n229\n-4\n");
  });
});

describe("texts", () => {
  test("of photos of one table are one, and what both show stands once", () => {
    const first = begun(
      "a.jpg",
      reading(
        ["#", "Carry (yd)"],
        [
          ["1", "231"],
          ["2", "229"],
          ["3", "235"],
        ],
      ),
    );
    const next = begun(
      "b.jpg",
      reading(
        ["#", "CARRY (YD)"],
        [
          ["3", "235"],
          ["4", "228"],
        ],
      ),
    );
    const [one, ...others] = textsOf([first, next]);
    expect(others).toEqual([]);
    expect(one!.source).toEqual({
      kind: "photo",
      name: "a.jpg, b.jpg",
      text: "#\tCarry (yd)\n1\t231\n2\t229\n3\t235\n4\t228\n",
    });
  });

  test("of other tables are others, with what stands above", () => {
    const first = begun("a.jpg", reading(["Carry"], [["231"]], { above: ["7 iron"] }));
    const next = begun("b.jpg", reading(["Total"], [["250"]]));
    expect(textsOf([first, next]).map(({ source }) => source.text)).toEqual(["7 iron\nCarry\n231\n", "Total\n250\n"]);
  });

  test("rows without a seam in common all stay", () => {
    expect(joined([["1"], ["2"]], [["2"], ["2"]])).toEqual([["1"], ["2"], ["2"]]);
    expect(joined([["1"]], [["2"]])).toEqual([["1"], ["2"]]);
  });

  test("of big numbers are a row under its headings", () => {
    expect(tileText(begun("a", reading(["Carry (yd)", "Spin"], [["164.2", "6120"]], { is_tiles: true })))).toBe(
      "Carry (yd)\tSpin\n164.2\t6120\n",
    );
  });
});
