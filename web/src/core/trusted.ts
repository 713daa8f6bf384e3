/**
 * The one place where an address becomes a script: the page's policy requires Trusted Types, and this one lets
 * nothing through but files of the page's own origin.
 */

import { browserLanguages, tagOf } from "../text/region.js";
import { language } from "../text/say.js";
import { manner } from "../text/units.js";

interface Policies {
  createPolicy(
    name: string,
    rules: { createScriptURL: (address: string) => string },
  ): { createScriptURL(address: string): unknown };
}

const own = (address: string): string => {
  if (new URL(address, location.href).origin !== location.origin) throw new TypeError("not a script of this page");
  return address;
};

const policies = (globalThis as { trustedTypes?: Policies }).trustedTypes;
const policy = policies?.createPolicy("straight-answer", { createScriptURL: own });

/** The address of a script of the page; browsers without Trusted Types take the address itself. */
export const scriptAddress = (address: string): string => (policy?.createScriptURL(address) ?? own(address)) as string;

/** Whether the page may start workers at all: not in a frame that was given no origin. */
export const hasOwnOrigin = (): boolean => globalThis.origin !== "null";

/** How the core is to speak. */
export const mannerOf = (spoken = language()): string => manner(tagOf(spoken, browserLanguages()));

/** A worker from a file of the page, named after how it is to speak. */
export const startWorker = (address: string, spoken = language()): Worker =>
  new Worker(scriptAddress(address), { type: "module", name: mannerOf(spoken) });
