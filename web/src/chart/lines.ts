/** Writing in a picture, which breaks no lines by itself: broken between words so that none is wider than it may be. Pure. */

/** A word longer than a line has one of its own. */
export function linesOf(text: string, letters: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= letters) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
