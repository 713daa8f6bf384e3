/** Handing things to the device: its clipboard, its share sheet, its folder of downloads. */

/** Puts text onto the clipboard; false when the device does not let it. */
export async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** Saves a file where the browser puts downloads. */
export function save(file: File): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement("a");
  link.href = address;
  link.download = file.name;
  link.click();
  // The browser has begun to read it by then.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** A table as a file. By the mark at its beginning a spreadsheet knows how names are written. */
export const tableFile = (csv: string, name: string): File => new File([`\uFEFF${csv}`], name, { type: "text/csv" });

/** Words as the name of a file, and the day: what no system refuses. */
export function fileName(words: readonly string[], ending: string): string {
  const plain = words.map((word) =>
    word
      .normalize("NFC")
      .replace(/[^\p{L}\p{N}._-]+/gu, "-")
      .replace(/^[-.]+|[-.]+$/g, ""),
  );
  const now = new Date();
  const day = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, "0"));
  return `${[...plain.filter(Boolean).map((word) => word.slice(0, 40)), day.join("-")].join("-")}.${ending}`;
}

/** Whether the device can share what is given. */
export const canShare = (data: ShareData): boolean =>
  typeof navigator.share === "function" && (navigator.canShare?.(data) ?? true);

/** Opens the device's share sheet; closing it without choosing is no failure. */
export async function openShareSheet(data: ShareData): Promise<void> {
  try {
    await navigator.share(data);
  } catch (thrown) {
    if (!(thrown instanceof DOMException && thrown.name === "AbortError")) throw thrown;
  }
}
