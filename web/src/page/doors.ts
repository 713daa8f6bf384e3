/**
 * The parts that stand closed beside the page: the fair test and the claim. What is behind a door loads when it is
 * opened; a test that is under way on this device, or a plan in the address, opens its own door.
 */
import { isPlanLink, isUnderWay } from "../fair/mark.js";
import type { PagePort } from "../state/page-port.js";
import { say } from "../text/say.js";
import { withTexts } from "../text/spoken.js";

const LOADERS: Record<string, () => Promise<unknown>> = {
  fair: () => withTexts(["fair", "flight"], () => import("../fair/part.js")),
  claim: () => withTexts(["claim", "flight"], () => import("../claim/part.js")),
};

export function hangDoors(page: PagePort): void {
  for (const [id, load] of Object.entries(LOADERS)) {
    const door = document.querySelector<HTMLDetailsElement>(`#${id} > details`);
    const part = door?.querySelector<HTMLElement & { page?: PagePort }>(`straight-answer-${id}`);
    if (!door || !part) continue;
    part.page = page;
    door.addEventListener("toggle", () => {
      if (!door.open) return;
      load().catch(() => {
        const text = part.querySelector("p");
        if (text) text.textContent = say("not-loaded-door");
      });
    });
    if (door.open) void load();
    if (id !== "fair") continue;
    const openItself = () => {
      if (isPlanLink()) door.open = true;
    };
    openItself();
    void isUnderWay().then((is) => {
      if (is) door.open = true;
    });
    window.addEventListener("hashchange", openItself);
  }
}
