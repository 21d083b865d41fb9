import type { ArchivedCovering } from './archive-material.ts';
import { coveringStory } from './covering-story.ts';
import { html, type Html } from './html.ts';
import { lineWords } from './line-words.ts';
import type { Line, Telling } from './telling.ts';

/** A covering with how its hold stands, what was said of it, and what it hides. */
export function coveringSection(telling: Telling, covering: ArchivedCovering): Html {
  const { words, report, dayWords, linesOf } = telling;
  const { plannedDay } = covering;
  const lines = linesOf.get(covering.covering) ?? [];
  return html`<h3 id="c-${covering.covering}">${covering.name}</h3>
    <table>
      ${row(report.kind[covering.kind], covering.note)}
      ${row(words.planned, plannedDay === null ? words.none : dayWords(plannedDay))}
      ${row(words.closed, closing(telling, covering))} ${row(words.hold, standing(telling, covering))}
    </table>
    ${coveringStory(telling, covering.covering)}
    <details>
      <summary>${words.hides}${words.colon}${lines.length}</summary>
      <ul>
        ${lines.map((line) => hiddenMember(telling, line))}
      </ul>
    </details> `;
}

function hiddenMember(telling: Telling, line: Line): Html {
  const { words, report } = telling;
  const { mark, least } = line;
  const told = [words.and, words.least(report.stage[least]), words.colon, lineWords(telling, line)];
  return html`<li><a href="#m-${encodeURIComponent(mark)}">${mark}</a>${told}</li> `;
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

/** Of what has closed: under which release, or why without one; of an outrun release what it does not cover. */
function standing(
  { material, words, report, standingOf }: Telling,
  { covering, closedAt, release, without, hold }: ArchivedCovering,
): string {
  const now = standingOf.get(covering);
  if (now?.phase === 'outrun') return words.outrun(report.phase.outrun, now.beyond);
  if (closedAt === null) return hold ? (words.standing[hold.said] ?? hold.said) : words.planOnly;
  if (typeof release !== 'string') return words.without(typeof without === 'string' ? without : null);
  const given = material.tables.releases.find((one) => one.release === release);
  return given?.withdrawn ? words.underTakenBack(release) : words.under(release);
}
