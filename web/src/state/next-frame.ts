/** In a turn of its own: what is waiting, a tap among it, comes first. */
export const nextTurn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/**
 * Once what was just drawn is on the screen: work that takes a while begins then, so a tap is seen to have arrived.
 *
 * A page that is not looked at draws nothing; there it is settled after a tenth of a second.
 */
export const nextFrame = (): Promise<void> =>
  new Promise((resolve) => {
    const late = setTimeout(resolve, 100);
    requestAnimationFrame(() => {
      clearTimeout(late);
      setTimeout(resolve);
    });
  });
