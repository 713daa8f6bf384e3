/** Work that is done once, however often it is asked for; what failed is tried again. */
export function once(work: () => Promise<void>): () => Promise<void> {
  let doing: Promise<void> | undefined;
  return () => {
    doing ??= work().catch((failed: unknown) => {
      doing = undefined;
      throw failed;
    });
    return doing;
  };
}
