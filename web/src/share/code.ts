/** A square code to scan for a link, as rows of dark and light; null when it would be too fine to scan from a screen. */
import qrcode from "qrcode-generator";

/** Characters that a code of a card's size holds and a phone still reads: about 120 modules across. */
export const MOST_CODED = 1_200;

/** Rows of dark and light modules. */
export type Code = boolean[][];

export function code(link: string): Code | null {
  if (link.length > MOST_CODED) return null;
  // The least correction: a screen has no dirt, and fewer modules are larger ones.
  const made = qrcode(0, "L");
  made.addData(link, "Byte");
  made.make();
  const across = Array.from({ length: made.getModuleCount() }, (_, at) => at);
  return across.map((row) => across.map((column) => made.isDark(row, column)));
}
