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
