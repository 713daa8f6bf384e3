/** The engine on the page's own thread, where no worker may start. */
import { type Engine, openLocal } from "../src/core/engine.js";
import { mannerOf } from "../src/core/trusted.js";
import { languageIn } from "../src/text/spoken.js";

let opened: Promise<Engine> | null = null;

export function openEngine(): Promise<Engine> {
  opened ??= openLocal(mannerOf(languageIn(location.search)), undefined as never);
  return opened;
}

export const engineOfPage = (): Promise<Engine> => openEngine();
