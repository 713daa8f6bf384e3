/** The catalogues of the page's texts: what each message has to be told, and the types that say so (`npm run texts`). */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { parse } from "@fluent/syntax";

const TEXTS = new URL("./src/text/", import.meta.url);
/** Keys that `Intl.PluralRules` gives: what is chosen by them is a number. */
const PLURALS = ["zero", "one", "two", "few", "many", "other"];

/** What any text or figure can stand for. */
const ANY = "string | number";

/** The files of a language. */
export const filesOf = (language) =>
  readdirSync(new URL(`${language}/`, TEXTS))
    .filter((file) => file.endsWith(".ftl"))
    .sort();

export const catalogue = (language, file) => readFileSync(new URL(`${language}/${file}`, TEXTS), "utf8");

/** Messages of a file by their ids: what each is told by name, and the messages it is made of. Throws at what does not parse. */
export function messagesOf(text, name) {
  const { body } = parse(text, { withSpans: false });
  const found = new Map();
  for (const entry of body) {
    if (entry.type === "Junk")
      throw new Error(`${name}: ${entry.annotations.map(({ message }) => message).join(" ")}\n${entry.content}`);
    if (entry.type !== "Message") continue;
    const {
      id: { name: id },
    } = entry;
    if (found.has(id)) throw new Error(`${name}: ${id} is there twice`);
    const message = { told: new Map(), uses: new Set() };
    walk(entry.value, message);
    found.set(id, message);
  }
  return found;
}

function walk(node, message) {
  if (Array.isArray(node)) for (const one of node) walk(one, message);
  if (typeof node !== "object" || node === null) return;
  if (node.type === "VariableReference" && !message.told.has(node.id.name)) message.told.set(node.id.name, ANY);
  if (node.type === "MessageReference") message.uses.add(node.id.name);
  if (node.type === "SelectExpression" && node.selector.type === "VariableReference") {
    const keys = node.variants.map(({ key }) => (key.type === "Identifier" ? key.name : "number"));
    const isNumber = keys.every((key) => key === "number" || PLURALS.includes(key));
    message.told.set(
      node.selector.id.name,
      isNumber
        ? "number"
        : keys
            .map((key) => JSON.stringify(key))
            .sort()
            .join(" | "),
    );
  }
  for (const value of Object.values(node)) walk(value, message);
}

/** All messages of a language; what a message has to be told includes what the messages in it do. */
export function allMessages(language) {
  const all = new Map(
    filesOf(language).flatMap((file) => [...messagesOf(catalogue(language, file), `${language}/${file}`)]),
  );
  const toldTo = (id) => {
    const { told, uses } = all.get(id) ?? { told: new Map(), uses: new Set() };
    return new Map([...[...uses].flatMap((used) => [...toldTo(used)]), ...told]);
  };
  return new Map([...all.keys()].map((id) => [id, { told: toldTo(id), uses: all.get(id).uses }]));
}

/** The types of all messages, as they stand in `src/text/messages.ts`. */
export function types() {
  const languages = readdirSync(TEXTS, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => allMessages(name));
  // What one language chooses a form by is a number in all of them.
  const typeOf = (id, name) =>
    languages.map((all) => all.get(id)?.told.get(name)).find((type) => type !== undefined && type !== ANY) ?? ANY;
  const lines = [...allMessages("en")].map(([id, { told }]) => {
    const names = [...told.keys()].map((name) => `${name}: ${typeOf(id, name)}`);
    return `  ${JSON.stringify(id)}: ${names.length > 0 ? `{ ${names.join("; ")} }` : "null"};`;
  });
  return `/** Every message and what it has to be told. Made from the catalogues by \`npm run texts\`. */\nexport interface Messages {\n${lines.join("\n")}\n}\n`;
}

/**
 * Catalogues go out without their comments, and without the blank lines between messages.
 * @returns {import("vite").Plugin}
 */
export const bareCatalogues = () => ({
  name: "bare-catalogues",
  enforce: "pre",
  load(id) {
    if (!id.endsWith(".ftl?raw")) return null;
    const text = readFileSync(id.replace("?raw", ""), "utf8").replace(/^#.*\n|^\n(?=\S)/gm, "");
    return `export default ${JSON.stringify(text)};`;
  },
});

if (process.argv[1] === new URL(import.meta.url).pathname) writeFileSync(new URL("messages.ts", TEXTS), types());
