import type { ArchivedCovering, ArchivedRelease } from './archive-material.ts';
import { html, type Html } from './html.ts';
import type { Telling } from './telling.ts';

/** A covering with what it hides, how its hold stands, and every release that was given. */
export function coveringSection(telling: Telling, covering: ArchivedCovering): Html {
  const { material, words, kind, stage, tagsOf } = telling;
  const hidden = material.hidden.get(covering.covering) ?? [];
  const releases = material.tables.releases.filter((one) => one.covering === covering.covering);
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
      ${row(words.closed, closing(telling, covering))}
      ${row(words.hold, covering.hold ? (words.holds[covering.hold.said] ?? covering.hold.said) : words.none)}
    </table>
    ${releases.map((release) => releaseLines(telling, release))}
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

function closing({ words, local, who }: Telling, covering: ArchivedCovering): string {
  const { closedAt, closedBy, closeNote, without } = covering;
  if (closedAt === null) return words.none;
  const why = typeof without === 'string' ? words.without(without) : '';
  return [`${local(closedAt)}, ${who(closedBy)}`, closeNote ?? '', why]
    .filter((part) => part !== '')
    .join(' · ');
}

function releaseLines({ words, local, who }: Telling, release: ArchivedRelease): Html {
  const { at, by, note, withdrawn, waived } = release;
  const given = [words.released(local(at), who(by)), note].filter((part) => part !== '').join(' · ');
  const gaps = (Array.isArray(waived) ? waived : []).map(
    (gap: { mark?: string; reason?: string }) => html`<li>${gap.mark ?? ''}: ${gap.reason ?? ''}</li>`,
  );
  return html`<p id="r-${release.release}">
      ${given}${
        withdrawn
          ? html`<br />${words.withdrawn(local(withdrawn.at), who(withdrawn.by), withdrawn.reason)}`
          : null
      }
    </p>
    ${
      gaps.length > 0
        ? html`<p>${words.waived}:</p>
            <ul>
              ${gaps}
            </ul>`
        : null
    } `;
}
