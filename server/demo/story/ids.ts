/** The names of things in the record: the same for the same day. */
export interface Ids {
  readonly house: string;
  readonly covering: (name: string) => string;
  readonly next: () => string;
}

/** UUIDs of version 8 (RFC 9562 §5.8), whose digits are ours: the day of the raising and a count. */
export function idsOf(raising: string): Ids {
  const coverings = new Map<string, string>();
  let count = 0;
  const next = () => {
    count += 1;
    return `${raising.replaceAll('-', '')}-0000-8000-8000-${count.toString(16).padStart(12, '0')}`;
  };
  return {
    house: next(),
    next,
    covering: (name) => {
      const id = coverings.get(name) ?? next();
      coverings.set(name, id);
      return id;
    },
  };
}
