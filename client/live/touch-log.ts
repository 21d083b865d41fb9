/**
 * What may have changed in a house's report, in the order in which it was heard: the tags of one photo, or
 * anything. Whoever has read the report up to some place in it need read only what came after.
 */
export interface TouchLog {
  readonly size: () => number;
  /** `photo` null: anything may have changed. */
  readonly note: (photo: string | null) => void;
  /** The photos noted from a place on; null where anything may have changed since, or nothing was heard. */
  readonly photosFrom: (from: number) => readonly string[] | null;
}

/** What lies farther back is forgotten: whoever has read no more than that reads everything. */
const KEPT = 200;

export function createTouchLog(): TouchLog {
  let forgotten = 0;
  const heard: (string | null)[] = [];
  return {
    size: () => forgotten + heard.length,
    note(photo) {
      heard.push(photo);
      if (heard.length > KEPT) forgotten += heard.splice(0, heard.length - KEPT).length;
    },
    photosFrom(from) {
      if (from < forgotten || from >= forgotten + heard.length) return null;
      const photos = heard.slice(from - forgotten);
      const named = photos.filter((photo) => photo !== null);
      return named.length === photos.length ? [...new Set(named)] : null;
    },
  };
}
