/**
 * What came from elsewhere: by the share sheet, or opened from a folder. It waits at the top of the page until somebody
 * says what is to be done with it.
 */
import { html, nothing, render, type TemplateResult } from "lit";
import { foreign } from "../pieces/pieces.js";
import { SHELF } from "../state/shelf-name.js";
import english from "../text/en/arrived.ftl?raw";
import { learn, say, sayAround } from "../text/say.js";
import type { StraightAnswerPage } from "./page.js";

learn(english);

interface LaunchQueue {
  setConsumer(take: (launched: { files?: readonly FileSystemFileHandle[] }) => void): void;
}

/** Asks about what lies on the worker's shelf, and about every file that is opened with the page from here on. */
export async function askAboutArrivals(page: StraightAnswerPage): Promise<void> {
  (window as { launchQueue?: LaunchQueue }).launchQueue?.setConsumer(({ files = [] }) => {
    if (files.length > 0) void Promise.all(files.map((one) => one.getFile())).then((opened) => ask(page, opened));
  });
  const shared = await onShelf();
  if (shared.length > 0) ask(page, shared);
}

async function onShelf(): Promise<File[]> {
  if (typeof caches === "undefined" || !(await caches.has(SHELF))) return [];
  const shelf = await caches.open(SHELF);
  const files: File[] = [];
  for (const request of await shelf.keys()) {
    const found = await shelf.match(request);
    const name = decodeURIComponent(new URL(request.url).pathname.split("/").at(-1) ?? "");
    const type = found?.headers.get("content-type") ?? "";
    if (found) files.push(new File([await found.blob()], name || say("arrived-text"), { type }));
  }
  return files;
}

function ask(page: StraightAnswerPage, files: readonly File[]): void {
  const place = document.createElement("div");
  document.querySelector("main")?.prepend(place);
  const done = (act: () => void) => () => {
    place.remove();
    void caches.delete(SHELF).catch(() => undefined);
    history.replaceState(history.state, "", withoutMark());
    act();
  };
  const give = (adding: boolean) => done(() => page.takeUp({}, files, adding));
  render(view(files, page.current !== null, give, done), place);
  place.scrollIntoView({ block: "start" });
}

const view = (
  files: readonly File[],
  hasShots: boolean,
  give: (adding: boolean) => () => void,
  done: (act: () => void) => () => void,
): TemplateResult => html`
  <div class="card arrived" role="region" aria-label=${say("arrived-title")}>
    <p><strong>${sayAround("arrived-files", { name: foreign(files[0]!.name), more: files.length - 1 })}</strong></p>
    <div class="buttons">
      <button type="button" class="primary" @click=${give(false)}>${say(hasShots ? "arrived-instead" : "arrived-read")}</button>
      ${hasShots ? html`<button type="button" @click=${give(true)}>${say("arrived-add")}</button>` : nothing}
      <button type="button" @click=${done(() => undefined)}>${say("arrived-leave")}</button>
    </div>
  </div>`;

function withoutMark(): URL {
  const address = new URL(location.href);
  address.searchParams.delete("shared");
  return address;
}
