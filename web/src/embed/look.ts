/** How the frame looks, as the host asks: colors, scheme, parts. By the style sheets' own rules, never by inline style. */
import { readable, type Settings, WHITE } from "./settings.js";

export function look({ accent, scheme, parts }: Settings): void {
  const root = document.documentElement;
  if (scheme !== "auto") force(scheme);
  if (parts) root.dataset["parts"] = parts.join(" ");
  if (accent) {
    paint(accent);
    matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => paint(accent));
  }
}

/** Makes the rules for the dark scheme hold always or never. */
function force(scheme: "light" | "dark"): void {
  document.documentElement.style.colorScheme = scheme;
  for (const sheet of document.styleSheets) {
    for (const rule of sheet.cssRules) {
      if (rule instanceof CSSMediaRule && /prefers-color-scheme:\s*dark/.test(rule.conditionText)) {
        rule.media.mediaText = scheme === "dark" ? "all" : "not all";
      }
    }
  }
}

function paint(wanted: string): void {
  const { style } = document.documentElement;
  const ground = getComputedStyle(document.documentElement).getPropertyValue("--card").trim();
  const { accent, on } = readable(wanted, /^#[0-9a-f]{6}$/i.test(ground) ? ground : WHITE);
  style.setProperty("--accent", accent);
  style.setProperty("--on-accent", on);
  style.setProperty("--accent-soft", `color-mix(in srgb, ${accent} 12%, var(--card))`);
}
