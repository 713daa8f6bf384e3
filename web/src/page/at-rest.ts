/** What comes once the first answer stands, on the page's own site: drafts, the day without a network, what arrived, what is kept. */
import { isAnythingKept } from "../state/under-way.js";
import { withTexts } from "../text/spoken.js";
import { keepDraft } from "./draft.js";
import { keepOffline } from "./offline.js";
import type { StraightAnswerPage } from "./page.js";

export function atRest(page: StraightAnswerPage): void {
  keepDraft(page);
  keepOffline();
  void withTexts(["arrived"], () => import("./arrived.js"))
    .then(({ askAboutArrivals }) => askAboutArrivals(page))
    .catch(() => undefined);
  void isAnythingKept()
    .then(async (is) => is && (await import("./kept.js")).lookInside())
    .catch(() => undefined);
}
