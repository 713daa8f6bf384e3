/** The session for somebody's own page: what is copied there. */
import { language, say } from "../text/say.js";
import { pageIn } from "../text/spoken.js";

/** By its link; a session too large for one stands as a file beside the page. */
export function snippetOf(link: string | null): string {
  const site = new URL("./", location.href).href.replace(/[?#].*/, "");
  const shots = link === null ? 'csv="./shots.csv"' : `link="${link.slice(link.indexOf("#") + 1)}"`;
  const spoken = language() === "en" ? "" : ` lang="${language()}"`;
  return [
    `<script src="${site}embed.js" async></script>`,
    `<straight-answer ${shots}${spoken}><a href="${link ?? pageIn()}">${say("share-embed-fallback")}</a></straight-answer>`,
  ].join("\n");
}
