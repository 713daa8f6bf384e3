/** One's own session on its way to another language or other units: not to be taken for one that somebody shared. */

/** What tells the page that it opens its own session and nobody else's; it is taken out of the address at once. */
const OWN = "own";

export const asOwn = (address: string): string => {
  const marked = new URL(address);
  marked.searchParams.set(OWN, "");
  return marked.href;
};

/** Whether the session in the address is the page's own; kept with the entry of the history, so that a reload knows it too. */
export function isOwnSession(): boolean {
  const address = new URL(location.href);
  if (address.searchParams.has(OWN)) {
    address.searchParams.delete(OWN);
    history.replaceState({ own: true }, "", address);
  }
  return (history.state as { own?: boolean } | null)?.own === true;
}
