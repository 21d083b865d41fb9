import { outline } from '#domain/photo/region';
import { originalPath } from './archive-files.ts';
import type { ArchivedPhoto, ArchivedTag } from './archive-material.ts';
import { html, type Html } from './html.ts';
import type { Telling } from './telling.ts';

/** A photo with the outlines of its tags over it, and what each shows. */
export function photoFigure(telling: Telling, photo: ArchivedPhoto): Html {
  const { material, words, local, who, tagsOn } = telling;
  const tags = tagsOn.get(photo.photo) ?? [];
  const capture = material.captures.get(photo.photo);
  const when = capture?.state === 'dated' ? local(capture.instant) : words.undated;
  return html`<figure id="p-${photo.photo}">
    ${picture(photo, tags)}
    <figcaption>
      ${when} · ${photo.fileName} · ${words.addedAt} ${who(photo.addedBy)}
      <ul>
        ${tags.map((tag) => tagWords(telling, tag))}
      </ul>
    </figcaption>
  </figure> `;
}

/** Types that every browser draws; room is kept for those only, of others there may be no more than the name. */
const DRAWN = ['image/jpeg', 'image/png', 'image/webp', 'image/avif'];
const TALLEST_REM = 40;

function picture(photo: ArchivedPhoto, tags: readonly ArchivedTag[]): Html {
  const { mediaType, width, height, fileName } = photo;
  const path = originalPath(photo);
  if (!DRAWN.includes(mediaType))
    return html`<a href="${path}"><img src="${path}" loading="lazy" alt="${fileName}" /></a>`;
  const widest = Math.round((TALLEST_REM * width) / height);
  return html`<a class="photo" style="max-width:min(100%,${widest}rem)" href="${path}"
    ><img src="${path}" loading="lazy" width="${width}" height="${height}" alt="${fileName}" />
    <svg viewBox="0 0 1 1" preserveAspectRatio="none" aria-hidden="true">${tags.map(tagOutline)}</svg></a
  >`;
}

function tagOutline({ region }: ArchivedTag): Html {
  const points = outline(region).map(([x, y]) => `${x},${y}`);
  return html`<polygon points="${points.join(' ')}" />`;
}

function tagWords({ report, who, words }: Telling, { mark, stage: at, note, saidBy }: ArchivedTag): Html {
  const more = note === '' ? '' : ` · ${note}`;
  return html`<li>
    <a href="#m-${encodeURIComponent(mark)}">${mark}</a
    >${words.colon}${report.stage[at]}${words.and}${who(saidBy)}${more}
  </li> `;
}
