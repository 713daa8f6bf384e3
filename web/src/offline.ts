/**
 * The page without a network: a service worker keeps every file of the site after the first visit.
 *
 * A new version is fetched in the background and waits until the page is closed, so that no session is lost to it;
 * whoever wants it at once says so. Loaded when the page is at rest, so that it never stands before the answer.
 */
import { scriptAddress } from "./trusted.js";

declare const APP_VERSION: string;

export function keepOffline(): void {
  const version = document.querySelector("#version");
  if (version) version.textContent = `Version ${APP_VERSION}.`;
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  void start(version).catch(() => undefined);
}

async function start(version: Element | null): Promise<void> {
  const registration = await navigator.serviceWorker.register(scriptAddress(new URL("./sw.js", document.baseURI).href));
  const say = (text: string) => {
    if (version) version.textContent = `Version ${APP_VERSION}. ${text}`;
  };
  await navigator.serviceWorker.ready;
  say("Works without a network.");
  const tell = () => {
    if (registration.waiting) say("A new version is here; it is used the next time you open the page.");
  };
  tell();
  registration.addEventListener("updatefound", () => {
    registration.installing?.addEventListener("statechange", tell);
  });
}
