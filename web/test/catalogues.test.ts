/** The page's texts: every language says the same things, everything said is known where it is said, nothing is left over. */
import { describe, expect, test } from "vitest";
import { allMessages, catalogue, filesOf, messagesOf, types } from "../catalogues.mjs";
import { LANGUAGES } from "../src/text/spoken.js";

const code = import.meta.glob<string>("../src/**/*.ts", { query: "?raw", import: "default", eager: true });
const pages = import.meta.glob<string>("../*.html", { query: "?raw", import: "default", eager: true });
const sources = new Map(
  Object.entries(code)
    .map(([path, text]) => [path.replace("../src/", ""), text])
    .filter(([path]) => path !== "text/messages.ts") as [string, string][],
);
const english = allMessages("en");
const fileOf = new Map(
  filesOf("en").flatMap((file) =>
    [...messagesOf(catalogue("en", file), file).keys()].map((id) => [id, file.replace(".ftl", "")] as const),
  ),
);

const told = (of: ReturnType<typeof allMessages>) =>
  Object.fromEntries([...of].map(([id, message]) => [id, [...message.told.keys()].sort()]));

describe.each(Object.keys(LANGUAGES))("%s", (language) => {
  test("has every message in its file, told the same things", () => {
    expect(filesOf(language)).toEqual(filesOf("en"));
    for (const file of filesOf("en")) {
      const ids = (of: string) => [...messagesOf(catalogue(of, file), `${of}/${file}`).keys()];
      expect(ids(language), file).toEqual(ids("en"));
    }
    expect(told(allMessages(language))).toEqual(told(english));
  });
});

test("the types are those of the catalogues (`npm run texts`)", () =>
  expect(code["../src/text/messages.ts"]).toBe(types()));

/** Ids that a text of code names: in quotes, or made of a beginning, a choice and an end. */
function idsIn(text: string): string[] {
  const quoted = [...text.matchAll(/"([a-z][\w-]*)"/g)].map(([, id]) => id!).filter((id) => english.has(id));
  const made = [...text.matchAll(/(?:say|sayAround)\(`([^`]+)`/g)].flatMap(([, template]) => {
    const pattern = new RegExp(`^${template!.replace(/\$\{[^}]+\}/g, "\\w+")}$`);
    return [...english.keys()].filter((id) => pattern.test(id));
  });
  return [...quoted, ...made];
}

test("nothing is written that is never said", () => {
  const said = new Set([...sources.values(), ...Object.values(pages)].flatMap(idsIn));
  const within = new Set([...english.values()].flatMap(({ uses }) => [...uses]));
  expect([...english.keys()].filter((id) => !said.has(id) && !within.has(id))).toEqual([]);
});

describe("the page's own files", () => {
  const marked = Object.values(pages).flatMap((page) => [...page.matchAll(/data-text="([^"]+)">([^<]*)</g)]);

  test("say in English what the catalogue says", () => {
    expect(marked.length).toBeGreaterThan(15);
    for (const [, id, text] of marked) expect(catalogue("en", `${fileOf.get(id!)}.ftl`)).toContain(`${id} = ${text}\n`);
  });
});

describe("a text is known where it is said", () => {
  const at = (from: string, to: string) => new URL(to, `file:///${from}`).pathname.slice(1).replace(/\.js$/, ".ts");
  const imports = (path: string) =>
    [...sources.get(path)!.matchAll(/^(?:import|export) (?!type )[^;]*?"(\.[^"?]+\.js)";/gms)]
      .map(([, to]) => at(path, to!))
      .filter((to) => sources.has(to));
  const reached = (path: string, found = new Set<string>()): Set<string> => {
    if (found.has(path)) return found;
    found.add(path);
    for (const next of imports(path)) reached(next, found);
    return found;
  };
  const learned = (paths: Iterable<string>) =>
    new Set(
      [...paths].flatMap((path) =>
        [...sources.get(path)!.matchAll(/text\/en\/(\w+)\.ftl\?raw/g)].map(([, name]) => name!),
      ),
    );
  const first = reached("main.ts");
  const parts = [...sources].flatMap(([path, text]) =>
    [...text.matchAll(/withTexts\(\[([^\]]+)\], \(\) => import\("([^"]+)"\)/g)].map(([, names, to]) => ({
      part: at(path, to!),
      names: [...names!.matchAll(/"(\w+)"/g)].map(([, name]) => name!),
    })),
  );

  test("at first, out of the page's own catalogue", () => {
    expect([...learned(first)]).toEqual(["page"]);
    for (const path of first)
      for (const id of idsIn(sources.get(path)!)) expect(fileOf.get(id), `${id} in ${path}`).toBe("page");
  });

  test.each(parts)("behind a door: $part", ({ part, names }) => {
    const own = [...reached(part)].filter((path) => !first.has(path));
    // What is loaded in another language is what comes along in English.
    expect([...learned(own)].sort()).toEqual([...names].sort());
    for (const path of own)
      for (const id of idsIn(sources.get(path)!))
        expect(["page", ...names], `${id} in ${path}`).toContain(fileOf.get(id));
  });

  test("every part that says something is among them, or says only what the page's own catalogue has", () => {
    const known = new Set([...first, ...parts.flatMap(({ part }) => [...reached(part)]), ...reached("embed/frame.ts")]);
    const silent = [...sources]
      .filter(([path, text]) => !known.has(path) && /\bsay(?:Around)?\(/.test(text) && path !== "text/say.ts")
      .map(([path]) => path);
    expect(silent).toEqual(["core/workbook.ts", "entry/sheets.ts", "page/offline.ts", "page/other-ways.ts"]);
    for (const path of silent)
      for (const id of idsIn(sources.get(path)!)) expect(fileOf.get(id), `${id} in ${path}`).toBe("page");
  });
});
