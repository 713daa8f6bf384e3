/** How much the book takes of the device, where the browser says it apart from the page's own files. */

export async function bytesOf(isKept: boolean): Promise<number | null> {
  if (!isKept || typeof navigator.storage?.estimate !== "function") return null;
  try {
    const { usageDetails } = (await navigator.storage.estimate()) as { usageDetails?: { indexedDB?: number } };
    return usageDetails?.indexedDB ?? null;
  } catch {
    return null;
  }
}
