/**
 * The page without a network: a service worker keeps every file of the site after the first visit.
 *
 * A new version is fetched in the background and waits until the page is closed, so that no session is lost to it;
 * whoever wants it at once says so. Loaded when the page is at rest, so that it never stands before the answer.
 */
import { scriptAddress } from "../core/trusted.js";
import { say } from "../text/say.js";

declare const APP_VERSION: string;

export function keepOffline(): void {
  const version = document.querySelector("#version");
  if (version) version.textContent = say("version", { version: APP_VERSION });
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  void start(version).catch(() => undefined);
}

async function start(version: Element | null): Promise<void> {
  const registration = await navigator.serviceWorker.register(scriptAddress(new URL("./sw.js", document.baseURI).href));
  const tell = (id: "version-offline" | "version-new") => {
    if (version) version.textContent = say(id, { version: APP_VERSION });
  };
  await navigator.serviceWorker.ready;
  tell("version-offline");
  const look = () => {
    if (registration.waiting) tell("version-new");
  };
  look();
  registration.addEventListener("updatefound", () => {
    registration.installing?.addEventListener("statechange", look);
  });
}
