/** What of the tour a person has seen in this browser: it is shown on one day, and never again. */
interface Seen {
  readonly day: string;
  readonly words: readonly string[];
}

const keyOf = (account: string) => `arakabe.tour.${account}`;

/** Words of the steps that were taken; null where the tour is over, or nothing can be kept. */
export function readTour(account: string, today: string, of: number): readonly string[] | null {
  try {
    const kept = localStorage.getItem(keyOf(account));
    if (kept === null) return write(account, { day: today, words: [] });
    const { day, words } = JSON.parse(kept) as Seen;
    return day === today && words.length < of ? words : null;
  } catch {
    return null;
  }
}

export function noteStep(account: string, today: string, words: readonly string[]): void {
  try {
    write(account, { day: today, words });
  } catch {
    // Then it was not shown, either.
  }
}

export function endTour(account: string): void {
  noteStep(account, '', []);
}

function write(account: string, seen: Seen): readonly string[] {
  localStorage.setItem(keyOf(account), JSON.stringify(seen));
  return seen.words;
}
