/** What the fair test asks of the device: paper, a place to put a link, and whether the page needs a network. */
import { copy, openShareSheet } from "../share/device.js";
import { say } from "../text/say.js";

/** Copies the address of a plan; gives what is to be said of it. */
export async function copied(address: string): Promise<string> {
  return (await copy(address)) ? say("fair-link-copied") : say("fair-link-by-hand", { address });
}

/** Hands the address of a plan to the device; closing its sheet is no failure. */
export async function shared(address: string): Promise<string> {
  try {
    await openShareSheet({ title: say("fair-share-title"), url: address });
    return "";
  } catch {
    return say("fair-not-taken");
  }
}

/** The sheet goes to paper, whatever else stands on the page. */
export function printSheet(): void {
  document.body.dataset["print"] = "sheet";
  window.addEventListener("afterprint", () => delete document.body.dataset["print"], { once: true });
  window.print();
}

/** Settled once the whole page is on the device; never where it is not kept, as inside somebody else's page. */
export async function worksOffline(): Promise<void> {
  try {
    await navigator.serviceWorker.ready;
  } catch {
    await new Promise(() => undefined);
  }
}
