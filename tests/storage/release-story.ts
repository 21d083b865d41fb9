/** What the ledger says of one covering, told by a reader of its own: it shares nothing with the program. */
export interface Entry {
  readonly seq: number;
  readonly kind: string;
  readonly payload: Payload;
}

interface Payload {
  readonly covering?: string;
  readonly tag?: string;
  readonly mark?: string;
  readonly release?: string | null;
  readonly without?: string | null;
  readonly head?: { readonly size: number; readonly hash: string };
  readonly hides?: readonly {
    readonly mark: string;
    readonly state: string;
    readonly tags: readonly string[];
  }[];
  readonly waived?: readonly { readonly mark: string; readonly reason: string }[];
}

/** Tags that stand before an entry, by mark. In these races each shows its member whole, at the stage asked for. */
export class Standing {
  readonly #byMark = new Map<string, Set<string>>();

  hear({ kind, payload: { tag = '', mark = '' } }: Entry): void {
    const tags = this.#byMark.get(mark) ?? new Set();
    if (kind === 'tag.placed') this.#byMark.set(mark, tags.add(tag));
    if (kind === 'tag.withdrawn') tags.delete(tag);
  }

  of(mark: string): string[] {
    return [...(this.#byMark.get(mark) ?? [])].sort();
  }
}

/** All that contradicts one story in a ledger, a sentence each; `headOf`: the tree head over the first entries. */
export function contradictions(entries: readonly Entry[], headOf: (size: number) => string): string[] {
  const found: string[] = [];
  const standing = new Standing();
  const released = new Map<string, Payload>();
  const closed = new Set<string>();
  for (const entry of entries) {
    const { seq, kind, payload } = entry;
    const { covering = '', release = null, without = null } = payload;
    const say = (what: string) => found.push(`entry ${seq}: ${what}`);
    if (kind === 'covering.released') {
      if (released.has(covering)) say('a second release stands');
      if (closed.has(covering)) say('released after it had closed');
      if (payload.head?.size !== seq) say('the head is not of the entries before it');
      if (payload.head?.hash !== headOf(seq)) say('the head is another one');
      found.push(...wronglyReleased(entry, standing).map((what) => `entry ${seq}: ${what}`));
      released.set(covering, payload);
    }
    if (kind === 'covering.closed') {
      if (closed.has(covering)) say('closed twice');
      const stands = released.get(covering);
      const under = stands && isStillTrue(stands, standing) ? stands.release : null;
      if (under !== release) say('closed under another release than covers it');
      if ((release === null) !== (without !== null)) say('a closing has either a release or a reason');
      closed.add(covering);
    }
    standing.hear(entry);
  }
  return found;
}

/** Whether what a release says is on record is so still: a tag may have been withdrawn since. */
function isStillTrue({ hides = [] }: Payload, standing: Standing): boolean {
  return hides.every(({ mark, state }) => state === 'waived' || standing.of(mark).length > 0);
}

function wronglyReleased({ payload: { hides = [], waived = [] } }: Entry, standing: Standing): string[] {
  const reasons = new Set(waived.map(({ mark }) => mark));
  const wrong = hides.flatMap(({ mark, state, tags }) => {
    const counting = standing.of(mark);
    const isSame = JSON.stringify([...tags].sort()) === JSON.stringify(counting);
    return [
      ...(isSame ? [] : [`${mark} names other tags than counted`]),
      ...((state === 'on-record') === counting.length > 0 ? [] : [`${mark} is ${state}`]),
      ...((state === 'waived') === reasons.has(mark) ? [] : [`${mark} has a reason or none, wrongly`]),
    ];
  });
  return hides.length === 3 ? wrong : [...wrong, 'it does not speak of all three'];
}
