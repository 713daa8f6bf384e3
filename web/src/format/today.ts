/** The day it is, in full, for what is given away or printed. */
import { language } from "../text/say.js";

export const today = (): string =>
  new Date().toLocaleDateString(language(), { year: "numeric", month: "long", day: "numeric" });
