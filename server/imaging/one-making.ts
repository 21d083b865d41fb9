/** Whoever asks for what is being made already waits for that, instead of making it once more. */
export function oneMaking(): (what: string, make: () => Promise<void>) => Promise<void> {
  const underWay = new Map<string, Promise<void>>();
  return (what, make) => {
    const found = underWay.get(what);
    if (found) return found;
    const making = make().finally(() => underWay.delete(what));
    underWay.set(what, making);
    return making;
  };
}
