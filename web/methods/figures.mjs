/**
 * What was counted, said in another language: the tests write it down in English. A language's `figures.json` has
 * descriptions with their numbers and some words in braces, each beside the same in that language, and those words.
 */

/** @import { Figures } from "./fill.mjs" */

/** What stands in braces and is no list of words. */
const NUMBER = String.raw`\d+(?:\.\d+)?`;

/**
 * Tells the description of a figure in another language; throws at one it does not know, so that none stays English.
 * @param {Figures} figures
 * @param {(figure: string) => string} number writes a number as the language does
 */
export function describedBy({ words, figures }, number) {
  const known = figures.map(([english, said]) => ({ english: patternOf(english, words), said }));
  return (text) => {
    for (const { english, said } of known) {
      const found = english.exec(text);
      const slots = found?.groups ?? {};
      if (found) return said.replace(/\{(\w+)\}/g, (_, slot) => words[slot]?.[slots[slot]] ?? number(slots[slot]));
    }
    throw new Error(`no words for "${text}"`);
  };
}

/** The pattern of a description; what stands in it twice has to be the same. */
function patternOf(english, words) {
  const seen = new Set();
  const pattern = english.replace(/[.()]/g, "\\$&").replace(/\{(\w+)\}/g, (_, slot) => {
    if (seen.has(slot)) return `\\k<${slot}>`;
    seen.add(slot);
    return `(?<${slot}>${words[slot] ? Object.keys(words[slot]).join("|") : NUMBER})`;
  });
  return new RegExp(`^${pattern}$`);
}
