/** Types of `catalogues.mjs`. */
import type { Plugin } from "vite";

export interface Message {
  /** What it has to be told, by name: the type as it stands in `src/text/messages.ts`. */
  told: Map<string, string>;
  /** Messages that it is made of. */
  uses: Set<string>;
}

export function filesOf(language: string): string[];
export function catalogue(language: string, file: string): string;
export function messagesOf(text: string, name: string): Map<string, Message>;
export function allMessages(language: string): Map<string, Message>;
export function types(): string;
export function bareCatalogues(): Plugin;
