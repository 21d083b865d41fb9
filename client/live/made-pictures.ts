type Hear = () => void;

/** Who waits for the pictures of which photo, in this page. */
const waiting = new Map<string, Set<Hear>>();

/** Hears that the server has made the pictures of a photo, until the answer is called. */
export function whenMade(photo: string, hear: Hear): () => void {
  const all = waiting.get(photo) ?? new Set();
  waiting.set(photo, all.add(hear));
  return () => {
    all.delete(hear);
    if (all.size === 0 && waiting.get(photo) === all) waiting.delete(photo);
  };
}

/** `photo` null: it may be of any. */
export function tellMade(photo: string | null): void {
  const told = photo === null ? [...waiting.values()] : [waiting.get(photo) ?? []];
  for (const hear of told.flatMap((all) => [...all])) hear();
}
