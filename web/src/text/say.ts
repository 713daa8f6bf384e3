/**
 * What the page says, in the golfer's language: each message by its id, out of the catalogues beside this file.
 *
 * English comes with the part that says it; every other language is loaded before the part is (`spoken.ts`).
 */
import { FluentBundle, FluentResource, type FluentVariable } from "@fluent/bundle";
import type { Messages } from "./messages.js";
import { browserLanguages, tagOf } from "./region.js";

export type Language = "en" | "es";

/** The id of a message. */
export type MessageId = keyof Messages;
/** The id of one that has to be told nothing. */
export type PlainId = { [Id in MessageId]: Messages[Id] extends null ? Id : never }[MessageId];
/** What a message has to be told, where it has to be told anything. */
type Told<Id extends MessageId> = Messages[Id] extends null ? [] : [Messages[Id]];

// Isolating marks around what is set in would be characters nobody expects in a copied text.
const emptyBundle = (language: Language): FluentBundle => new FluentBundle(language, { useIsolating: false });

let bundle = emptyBundle("en");

/** The language the page speaks, as `Intl` takes it. */
export const language = (): Language => bundle.locales[0] as Language;

/** The tag by which `Intl` writes numbers in it: that of the golfer's region, where the browser says one. */
export const numberTag = (): string => tagOf(language(), browserLanguages());

/** Speaks another language from here on, of which it knows nothing yet. */
export function turnTo(next: Language): void {
  bundle = emptyBundle(next);
}

/** Learns a catalogue; one of a language that is not spoken is passed over, and one that is known changes nothing. */
export function learn(catalogue: string, of: Language = "en"): void {
  if (of === language()) bundle.addResource(new FluentResource(catalogue));
}

/** A message as text. */
export function say<Id extends MessageId>(id: Id, ...[told]: Told<Id>): string {
  const pattern = bundle.getMessage(id)?.value;
  // Unit tests hold every id against the catalogues; what is missing all the same is better seen than blank.
  return pattern ? bundle.formatPattern(pattern, told as Record<string, FluentVariable> | undefined, []) : id;
}

/** Stands where a piece of the page goes. */
const HOLE = "\u0000";

/** A message with pieces of the page in it, in the order in which the language says them. */
export function sayAround<Id extends MessageId>(id: Id, told: { [Name in keyof Messages[Id]]: unknown }): unknown[] {
  const pieces = new Map(Object.entries(told).filter(([, value]) => typeof value === "object"));
  const holes = Object.keys(told).map((name) => [
    name,
    pieces.has(name) ? HOLE + name + HOLE : told[name as keyof typeof told],
  ]);
  const text = say(id, ...([Object.fromEntries(holes)] as unknown as Told<Id>));
  return text.split(HOLE).map((part, at) => (at % 2 === 1 ? pieces.get(part) : part));
}
