import type { ReleaseFacts } from '#domain/contract/hold';
import type { OfCovering, StoryEntry } from './archive-material.ts';
import { html, type Html } from './html.ts';
import type { Telling } from './telling.ts';

/** What was said of a covering, and of doubts about the members that it hides, in order. */
export function coveringStory(telling: Telling, covering: string): Html | null {
  const { material, linesOf, doubts, words } = telling;
  const hidden = new Set<string>((linesOf.get(covering) ?? []).map(({ mark }) => mark));
  const said = material.story.flatMap((entry) =>
    isOfCovering(entry) && entry.payload.covering === covering
      ? [{ seq: entry.seq, line: lineOf(telling, entry) }]
      : [],
  );
  const doubted = doubts
    .filter(({ mark }) => hidden.has(mark))
    .map((doubt) => ({
      seq: doubt.seq,
      line: saidLine(telling, doubt, words.doubts[doubt.what](doubt.mark), [doubt.reason]),
    }));
  const lines = [...said, ...doubted].sort((one, other) => one.seq - other.seq);
  if (lines.length === 0) return null;
  return html`<p>${words.story}</p>
    <ol>
      ${lines.map(({ line }) => line)}
    </ol>`;
}

function isOfCovering(entry: StoryEntry): entry is OfCovering {
  return 'covering' in entry.payload;
}

function lineOf(telling: Telling, entry: OfCovering): Html {
  const { words, local } = telling;
  const told = words.holds[entry.kind];
  switch (entry.kind) {
    case 'covering.ready':
      return saidLine(telling, entry, told, [entry.payload.note]);
    case 'covering.ready-withdrawn':
    case 'covering.reopened':
      return saidLine(telling, entry, told, [entry.payload.reason]);
    case 'release.withdrawn': {
      const { release, reason } = entry.payload;
      return saidLine(telling, entry, told, [words.release(release), reason]);
    }
    case 'covering.refused':
      return saidLine(
        telling,
        entry,
        told,
        [entry.payload.note],
        entry.payload.lacking.map((one) => marked(telling, one)),
      );
    case 'covering.released': {
      const { release, note, waived } = entry.payload;
      const gaps = waived.map(
        (gap) => html`<li>${words.waived}${words.colon}${gapWords(telling, gap)}</li> `,
      );
      return saidLine(telling, entry, told, [words.release(release), note], gaps, `r-${release}`);
    }
    case 'covering.closed': {
      const { closedAt, release, without, note } = entry.payload;
      const under = release === null ? words.without(without) : words.under(release);
      return saidLine(telling, entry, `${told} ${local(closedAt)}`, [under, note]);
    }
  }
}

const marked = ({ words }: Telling, { mark, note }: { mark: string; note: string }) =>
  html`<li>${[mark, note].filter((part) => part !== '').join(words.colon)}</li> `;
const gapWords = ({ words }: Telling, { mark, reason }: ReleaseFacts['waived'][number]) =>
  `${mark}${words.colon}${reason}`;

function saidLine(
  { local, speaker, words }: Telling,
  said: Pick<StoryEntry, 'seq' | 'at' | 'by'>,
  what: string,
  texts: readonly string[],
  items: readonly Html[] = [],
  id?: string,
): Html {
  const more = [words.entry(said.seq), ...texts].filter((text) => text !== '').map((text) => ` · ${text}`);
  const head = html`${local(said.at)} ${what}${words.and}${speaker(said)}${more}`;
  const list =
    items.length === 0
      ? null
      : html`<ul>
          ${items}
        </ul>`;
  return id === undefined ? html`<li>${head}${list}</li> ` : html`<li id="${id}">${head}${list}</li> `;
}
