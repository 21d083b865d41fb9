import type { ArchivedCovering } from './archive-material.ts';
import { coveringStory } from './covering-story.ts';
import { html, type Html } from './html.ts';
import type { Telling } from './telling.ts';

/** A covering with how its hold stands, what was said of it, and what it hides. */
export function coveringSection(telling: Telling, covering: ArchivedCovering): Html {
  const { material, words, kind, stage, tagsOf } = telling;
  const hidden = material.hidden.get(covering.covering) ?? [];
  const marks = hidden.map(
    ({ mark, least }) =>
      html`<li>
        <a href="#m-${encodeURIComponent(mark)}">${mark}</a> (${stage[least]}):
        ${tagsOf.get(mark)?.length ?? words.noRecord}
      </li> `,
  );
  return html`<h3 id="c-${covering.covering}">${covering.name}</h3>
    <table>
      ${row(kind[covering.kind], covering.note)} ${row(words.planned, covering.plannedDay ?? words.none)}
      ${row(words.closed, closing(telling, covering))} ${row(words.hold, standing(telling, covering))}
    </table>
    ${coveringStory(telling, covering.covering)}
    <details>
      <summary>${words.hides}: ${hidden.length}</summary>
      <ul>
        ${marks}
      </ul>
    </details> `;
}

const row = (name: string, value: string) =>
  html`<tr>
    <th>${name}</th>
    <td>${value}</td>
  </tr>`;

function closing(
  { words, local, who }: Telling,
  { closedAt, closedBy, closeNote }: ArchivedCovering,
): string {
  if (closedAt === null) return words.open;
  return [`${local(closedAt)}${words.and}${who(closedBy)}`, closeNote ?? '']
    .filter((part) => part !== '')
    .join(' · ');
}

/** Of what has closed: under which release, or why without one. */
function standing(
  { material, words }: Telling,
  { closedAt, release, without, hold }: ArchivedCovering,
): string {
  if (closedAt === null) return hold ? (words.standing[hold.said] ?? hold.said) : words.planOnly;
  if (release === null) return words.without(typeof without === 'string' ? without : null);
  const given = material.tables.releases.find((one) => one.release === release);
  return given?.withdrawn ? words.underTakenBack : words.under;
}
