import type { ReleaseFacts } from '#domain/contract/hold';
import type { StoryEntry } from './archive-material.ts';
import { html, type Html } from './html.ts';
import type { Telling } from './telling.ts';

type OfCovering = Exclude<StoryEntry, { kind: 'tag.disputed' | 'findings.accepted' | 'finding.reopened' }>;

/** What was said of a covering, and of doubts about the members that it hides, in order. */
export function coveringStory(telling: Telling, covering: string): Html | null {
  const { material, doubts, words } = telling;
  const hidden = new Set((material.hidden.get(covering) ?? []).map(({ mark }) => mark));
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
    case 'release.withdrawn':
      return saidLine(telling, entry, told, [entry.payload.reason]);
    case 'covering.refused':
      return saidLine(telling, entry, told, [entry.payload.note], entry.payload.lacking.map(marked));
    case 'covering.released': {
      const { release, note, waived } = entry.payload;
      const gaps = waived.length === 0 ? [] : [html`<li>${words.waived}:</li>`, ...waived.map(waiver)];
      return saidLine(telling, entry, told, [note], gaps, `r-${release}`);
    }
    case 'covering.closed': {
      const { closedAt, release, without, note } = entry.payload;
      const under = release === null ? words.without(without) : words.under;
      return saidLine(telling, entry, `${told} ${local(closedAt)}`, [under, note]);
    }
  }
}

const marked = ({ mark, note }: { mark: string; note: string }) =>
  html`<li>${[mark, note].filter((part) => part !== '').join(': ')}</li> `;
const waiver = ({ mark, reason }: ReleaseFacts['waived'][number]) => html`<li>${mark}: ${reason}</li> `;

function saidLine(
  { local, who, words }: Telling,
  { at, by }: Pick<StoryEntry, 'at' | 'by'>,
  what: string,
  texts: readonly string[],
  items: readonly Html[] = [],
  id?: string,
): Html {
  const more = texts.filter((text) => text !== '').map((text) => ` · ${text}`);
  const head = html`${local(at)} ${what}${words.and}${who(by)}${more}`;
  const list =
    items.length === 0
      ? null
      : html`<ul>
          ${items}
        </ul>`;
  return id === undefined ? html`<li>${head}${list}</li> ` : html`<li id="${id}">${head}${list}</li> `;
}
