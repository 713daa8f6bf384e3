// The fonts of drawn screens: free ones out of packages, and those of the machine.
import { existsSync, realpathSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const MODULES = fileURLToPath(new URL("node_modules", import.meta.url));

/** By family: the package it comes from (none: the machine), its weights, and how often it is drawn. */
const FONTS = [
  { family: "Inter", pkg: "inter", weights: [200, 300, 400, 500, 700], p: 3 },
  { family: "Roboto", pkg: "roboto", weights: [100, 300, 400, 500, 700], p: 3 },
  { family: "Lato", pkg: "lato", weights: [100, 300, 400, 700], p: 2 },
  { family: "Roboto Condensed", pkg: "roboto-condensed", weights: [300, 400, 700], p: 2 },
  { family: "Barlow Condensed", pkg: "barlow-condensed", weights: [200, 300, 400, 500, 700], p: 2 },
  { family: "Oswald", pkg: "oswald", weights: [200, 300, 400, 500], p: 1.5 },
  { family: "Open Sans", pkg: "open-sans", weights: [300, 400, 700], p: 2 },
  { family: "IBM Plex Sans", pkg: "ibm-plex-sans", weights: [300, 400, 600], p: 2 },
  { family: "Montserrat", pkg: "montserrat", weights: [300, 400, 600], p: 1.5 },
  { family: "Rubik", pkg: "rubik", weights: [300, 400, 600], p: 1.5 },
  { family: "DejaVu Sans", weights: [400, 700], p: 1 },
  { family: "Liberation Sans", weights: [400, 700], p: 2 },
  { family: "Liberation Sans Narrow", weights: [400, 700], p: 1 },
  { family: "Liberation Serif", weights: [400, 700], p: 0.7 },
  { family: "DejaVu Sans Mono", weights: [400, 700], p: 0.8 },
  { family: "DSEG7", seg: true, weights: [400, 700], p: 1.4 },
];
export function fontCss(f) {
  if (f.pkg)
    return f.weights
      .map(
        (w) =>
          `@font-face{font-family:"${f.family}";font-weight:${w};src:url("file://${realpathSync(join(MODULES, "@fontsource", f.pkg, "files", `${f.pkg}-latin-${w}-normal.woff2`))}")}`,
      )
      .join("\n");
  if (f.seg) {
    const dir = join(MODULES, "dseg", "fonts");
    const find = (n) => [join(dir, "DSEG7-Classic", n), join(dir, n)].find(existsSync);
    return `@font-face{font-family:"DSEG7";font-weight:400;src:url("file://${find("DSEG7Classic-Regular.woff2")}")}
@font-face{font-family:"DSEG7";font-weight:700;src:url("file://${find("DSEG7Classic-Bold.woff2")}")}`;
  }
  return "";
}
export function pickFont(r, allowSeg) {
  const fs = FONTS.filter((f) => allowSeg || !f.seg);
  let t = r.u() * fs.reduce((s, f) => s + f.p, 0);
  for (const f of fs) {
    t -= f.p;
    if (t <= 0) return f;
  }
  return fs[0];
}
