/** What tabs of the page tell each other: that something in the book has changed, or that all of it is gone. */

export type Told = { kind: "changed" } | { kind: "emptied" };

const CHANNEL = "straight-answer-book";

let channel: BroadcastChannel | null | undefined;
const listeners = new Set<(told: Told) => void>();

function opened(): BroadcastChannel | null {
  if (channel === undefined) {
    channel = typeof BroadcastChannel === "undefined" ? null : new BroadcastChannel(CHANNEL);
    channel?.addEventListener("message", ({ data }: MessageEvent<Told>) => {
      for (const listener of listeners) listener(data);
    });
    // A unit test is over when it is over: Node would wait for the channel.
    (channel as { unref?: () => void } | null)?.unref?.();
  }
  return channel;
}

/** Tells the other tabs; this one knows. */
export const tell = (told: Told): void => opened()?.postMessage(told);

/** Listens to the other tabs until it is called off. */
export function onTold(listener: (told: Told) => void): () => void {
  opened();
  listeners.add(listener);
  return () => listeners.delete(listener);
}
