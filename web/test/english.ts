/** Every English text, for tests of whatever says one. */
import { learn } from "../src/text/say.js";

const catalogues = import.meta.glob<string>("../src/text/en/*.ftl", { query: "?raw", import: "default", eager: true });
for (const catalogue of Object.values(catalogues)) learn(catalogue);
