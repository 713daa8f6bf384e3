/** What was copied, as a text to read: a table's markup where plain text has lost its form. */

/** Where cells reach over several rows or columns, or plain text has none apart, the markup says more. */
export function copied(plain: string, markup: string): string {
  if (!/<table[\s>]/i.test(markup)) return plain;
  const spans = /\s(?:row|col)span\s*=/i.test(markup);
  return spans || !plain.includes("\t") ? markup : plain;
}

/** The clipboard as the browser hands it over when it is asked. */
export async function fromClipboard(clipboard: Clipboard): Promise<string> {
  if (typeof clipboard.read !== "function") return clipboard.readText();
  const parts = await Promise.all((await clipboard.read()).map(textsOf));
  return copied(parts.map(([plain]) => plain).join("\n"), parts.map(([, markup]) => markup).join("\n"));
}

const textsOf = (item: ClipboardItem): Promise<string[]> =>
  Promise.all(
    ["text/plain", "text/html"].map(async (type) =>
      item.types.includes(type) ? (await item.getType(type)).text() : "",
    ),
  );
