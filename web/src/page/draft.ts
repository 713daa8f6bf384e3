/** What was given and typed survives a reload and the way back, in this tab alone; starting again throws it away. */
import type { Question, Session } from "../core/engine.js";
import type { EntryElement } from "../entry/element.js";
import { isSessionLink } from "../fair/mark.js";
import { draftIn, draftOf } from "../state/draft.js";
import { DRAFT } from "../state/draft-key.js";
import type { StraightAnswerPage } from "./page.js";

/** Takes up what a reload has left. */
export async function restore(page: StraightAnswerPage): Promise<void> {
  const draft = draftIn(sessionStorage.getItem(DRAFT), location.hash);
  if (!draft) return;
  // What the address holds comes first: the draft is that, and more.
  if (isSessionLink()) await page.standing;
  page.takeUp(draft);
  if (draft.typed === "") return;
  void page.updateComplete.then(() => {
    const field = page.querySelector<HTMLTextAreaElement>("#text");
    if (field && field.value === "") field.value = draft.typed;
  });
}

/** Keeps it from here on, whenever it changes and when the page is left: a phone closes what is out of sight. */
export function keepDraft(page: StraightAnswerPage): void {
  const now = () => void keep(page);
  document.addEventListener("straight-answer", now);
  page.addEventListener("change", now);
  document.addEventListener("visibilitychange", now);
  addEventListener("pagehide", now);
  now();
}

/** The text of shots whose like was written before is that: a field that changes elsewhere writes none anew. */
let written: { of: readonly [unknown, unknown]; text: Promise<string> } | null = null;

async function asShown(page: StraightAnswerPage, session: Session, question: Question | null): Promise<string> {
  if (written?.of[0] !== session || written.of[1] !== question) {
    const text = page.engine.then((engine) => engine.writeCsv(session, question ?? undefined));
    written = { of: [session, question], text };
    text.catch(() => (written = null));
  }
  return written.text;
}

async function keep(page: StraightAnswerPage): Promise<void> {
  const { given, question, entry, setAside, order, read } = page.underHand;
  // What was said of single shots by hand stands in no text.
  const hasLink = given.length > 1 && given.some(({ source }) => source.kind === "link");
  const isSaid = Object.keys(setAside).length > 0 || (order !== null && given.length > 1) || hasLink;
  const form = page.querySelector<EntryElement<unknown>>("straight-answer-grid, straight-answer-averages");
  const typed = page.querySelector<HTMLTextAreaElement>("#text")?.value ?? "";
  const write = async (shown: string | null) => {
    const draft = draftOf(
      { given, question, entry },
      { asShown: shown, typed, draft: form?.underHand, at: location.hash },
    );
    if (draft) sessionStorage.setItem(DRAFT, JSON.stringify(draft));
    else sessionStorage.removeItem(DRAFT);
  };
  try {
    // At once first: the page may be gone before the core has written.
    await write(null);
    if (isSaid && read) await write(await asShown(page, read.session, question));
  } catch {
    // A tab without a store, or a text beyond its size: it stays on the page.
  }
}
