/**
 * The parts that stand for themselves beside the page: the fair test, the claim, the fitting to come. What is behind a door
 * loads when it is opened; the address opens one, and so does a test that is under way on this device.
 */
import type { PagePort } from "../state/page-port.js";
import { isUnderWay } from "../state/under-way.js";
import { say } from "../text/say.js";
import { withTexts } from "../text/spoken.js";
import { DOORS, type Door, placeIn } from "./place.js";

const LOADERS: Record<Door, () => Promise<unknown>> = {
  fair: () => withTexts(["fair", "flight", "kept"], () => import("../fair/part.js")),
  claim: () => withTexts(["claim", "flight"], () => import("../claim/part.js")),
  fitting: () => withTexts(["fitting", "start"], () => import("../fitting/part.js")),
  book: () => withTexts(["book", "kept"], () => import("../book/part.js")),
};

export function hangDoors(page: PagePort): void {
  for (const id of DOORS) {
    const door = document.querySelector<HTMLDetailsElement>(`#${id} > details`);
    const part = door?.querySelector<HTMLElement & { page?: PagePort }>(`straight-answer-${id}`);
    if (!door || !part) continue;
    part.page = page;
    const opened = () => {
      if (!door.open) return leave(id, page);
      LOADERS[id]().catch(() => {
        const text = part.querySelector("p");
        if (text) text.textContent = say("not-loaded-door");
      });
    };
    door.addEventListener("toggle", opened);
    const openItself = () => {
      if (placeIn(location.hash) !== id) return;
      door.open = true;
      // It was not there yet when the browser went to it. A test begins on the first screen.
      if (id === "fair") requestAnimationFrame(() => door.scrollIntoView());
    };
    openItself();
    window.addEventListener("hashchange", openItself);
  }
  void isUnderWay().then((is) => is === "yes" && goOn());
}

/** Whoever comes back to a test that is under way comes to go on with it. */
export function goOn(): void {
  if (location.hash === "") location.replace("#fair");
  else document.querySelector<HTMLDetailsElement>("#fair > details")!.open = true;
}

/** A door that is closed while nothing else is shown leads back to where it was opened. */
function leave(id: Door, page: PagePort): void {
  if (page.current() === null && placeIn(location.hash) === id) location.hash = "start";
}
