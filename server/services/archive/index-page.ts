import type { ClosingReportView } from '#domain/contract/report-views';
import { compareText } from '#domain/frame/mark-order';
import { groupBy } from '#domain/group-by';
import { toldZone } from '#domain/record/sheet/told-zone';
import type { ArchiveMaterial, ArchivedCovering, ArchivedPhoto, ArchivedTag } from './archive-material.ts';
import { coveringSection } from './covering-section.ts';
import { html, type Html } from './html.ts';
import { acceptedWords } from './line-words.ts';
import { peopleSection } from './people-section.ts';
import { photoFigure } from './photo-figure.ts';
import { tell, type Telling } from './telling.ts';

export interface PageOf {
  readonly house: string;
  readonly lang: 'en' | 'ja';
  readonly madeAt: Date;
  /** What is hidden and on record, as that is worked out today. */
  readonly report: ClosingReportView;
}

/** Without signs that would be escaped. */
const STYLE = `
body{font:16px/1.6 system-ui,sans-serif;overflow-wrap:anywhere;word-break:auto-phrase;margin:2rem auto;max-width:60rem;padding:0 1rem;color:#26221c;background:#faf7f0}
h1,h2,h3{line-height:1.3}
h2{margin-top:3rem;border-bottom:1px solid #b9ad98}
table{border-collapse:collapse}
th,td{text-align:left;vertical-align:top;padding:.2rem .8rem .2rem 0}
figure{margin:1rem 0;break-inside:avoid}
.photo{position:relative;display:block}
figure img{max-width:100%}
.photo img{display:block;width:100%;height:auto}
.photo svg{position:absolute;inset:0;width:100%;height:100%}
.photo polygon{fill:none;stroke:#c8371b;stroke-width:2;vector-effect:non-scaling-stroke}
th{white-space:nowrap}
ul,ol{padding-inline-start:1.5rem}
.caution{border:1px solid #b9ad98;padding:.5rem 1rem}
@media (max-width:40rem){th,td{display:block;padding-right:0}th{white-space:normal;padding-bottom:0}td{padding-top:0}}
@media screen and (prefers-color-scheme:dark){:root{color-scheme:dark}body{color:#ece6da;background:#1c1a16}h2,.caution{border-color:#6b6252}.photo polygon{stroke:#ff7a5c}}
@media print{body{margin:0;max-width:none}}`;

/**
 * All of a house as one page of plain HTML: no script, nothing from elsewhere, pictures by relative address. It must
 * still open when no server and no program of today is left.
 */
export function indexPage(material: ArchiveMaterial, page: PageOf): string {
  const telling = tell(material, page.report, page.lang);
  const { words, local, dayWords } = telling;
  const madeAt = page.madeAt.toISOString();
  const { house, ledger, tables } = material;
  return html`<!doctype html>
    <html lang="${page.lang}">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta
          http-equiv="content-security-policy"
          content="default-src 'none'; img-src 'self' file:; style-src 'unsafe-inline'"
        />
        <title>${words.title(house.name)}</title>
        <style>
          ${STYLE}
        </style>
      </head>
      <body>
        <h1>${words.title(house.name)}</h1>
        <p>${words.lead(local(madeAt))} ${words.times(toldZone(house.zone, page.lang, madeAt))}</p>
        <p>
          ${words.firstDay}${words.colon}${house.firstDay === null ? words.none : dayWords(house.firstDay)} ·
          <code>${page.house}</code>
        </p>
        <p>${words.entries(ledger.size, ledger.head)}</p>
        <p class="caution">${words.check}</p>
        <p class="caution">${words.caution}</p>
        <nav>
          <a href="#coverings">${words.coverings}</a> · <a href="#members">${words.members}</a> ·
          <a href="#days">${words.days}</a> · <a href="#people">${words.people}</a>
        </nav>
        <h2 id="coverings">${words.coverings}</h2>
        ${byDay(telling).map((covering) => coveringSection(telling, covering))}
        <h2 id="members">${words.members}</h2>
        ${tables.members.map((member) => memberSection(telling, member))}
        <h2 id="days">${words.days}</h2>
        ${daySections(telling)}
        <h2 id="people">${words.people}</h2>
        ${peopleSection(telling)}
      </body>
    </html> `.text;
}

/** By the day of closing, else the planned one; those without a day last. */
function byDay({ material, day }: Telling): ArchivedCovering[] {
  const dayOf = ({ closedAt, plannedDay }: ArchivedCovering) =>
    closedAt === null ? (plannedDay ?? '~') : day(closedAt);
  return [...material.tables.coverings].sort(
    (one, other) => compareText(dayOf(one), dayOf(other)) || compareText(one.name, other.name),
  );
}

function memberSection(telling: Telling, member: ArchiveMaterial['tables']['members'][number]): Html {
  const { words, tagsOf, memberKind } = telling;
  const { mark, kind, name, place, retired, note } = member;
  const facts = [memberKind(kind), name, place, retired ? words.retired : '', note].filter(
    (fact) => fact !== '',
  );
  const tags = tagsOf.get(mark) ?? [];
  const accepted = acceptedLines(telling, mark);
  return html`<h3 id="m-${encodeURIComponent(mark)}">${mark}</h3>
    <p>${facts.join(' · ')}</p>
    ${
      tags.length + accepted.length === 0
        ? html`<p>${words.noRecord}</p>`
        : html`<ul>
            ${tags.map((tag) => tagLine(telling, tag))} ${accepted}
          </ul>`
    } `;
}

/** Under which coverings it may go without a record. */
function acceptedLines(telling: Telling, mark: string): Html[] {
  return (telling.acceptedOf.get(mark) ?? []).map(({ covering, name, waiver }) => {
    const told = [telling.words.colon, acceptedWords(telling, waiver)];
    return html`<li><a href="#c-${covering}">${name}</a>${told}</li> `;
  });
}

function tagLine(telling: Telling, { tag, photo, stage: at, note, saidBy }: ArchivedTag): Html {
  const { material, words, report, local, speaker, who, doubtsOf } = telling;
  const capture = material.captures.get(photo);
  const when = capture?.state === 'dated' ? local(capture.instant) : '';
  const more = note === '' ? '' : ` · ${note}`;
  const doubts = (doubtsOf.get(tag) ?? []).map(
    (one) =>
      ` · ${local(one.at)} ${words.doubts[one.what](one.mark)}${words.and}${speaker(one)}${words.colon}${one.reason}`,
  );
  return html`<li><a href="#p-${photo}">${report.stage[at]}</a> ${when} ${who(saidBy)}${more}${doubts}</li> `;
}

function daySections(telling: Telling): Html[] {
  const { material, words, dayWords } = telling;
  const dayOfPhoto = ({ photo }: ArchivedPhoto) => {
    const capture = material.captures.get(photo);
    return capture?.state === 'dated' ? capture.day : '';
  };
  const timeOf = ({ photo, addedAt }: ArchivedPhoto) => {
    const capture = material.captures.get(photo);
    return capture?.state === 'dated' ? capture.instant : addedAt;
  };
  const days = groupBy(material.tables.photos, dayOfPhoto);
  return [...days.keys()].sort().map((day) => {
    const photos = [...(days.get(day) ?? [])].sort((a, b) => (timeOf(a) < timeOf(b) ? -1 : 1));
    return html`<h3>${day === '' ? words.undated : dayWords(day)}</h3>
      ${photos.map((photo) => photoFigure(telling, photo))}`;
  });
}
