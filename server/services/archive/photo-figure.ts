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
  const path = originalPath(photo);
  return html`<figure id="p-${photo.photo}">
    <a class="photo" href="${path}"
      ><img
        src="${path}"
        loading="lazy"
        width="${photo.width}"
        height="${photo.height}"
        alt="${photo.fileName}"
      />
      <svg viewBox="0 0 1 1" preserveAspectRatio="none" aria-hidden="true">${tags.map(tagOutline)}</svg></a
    >
    <figcaption>
      ${when} · ${photo.fileName} · ${words.addedAt} ${who(photo.addedBy)}
      <ul>
        ${tags.map((tag) => tagWords(telling, tag))}
      </ul>
    </figcaption>
  </figure> `;
}

function tagOutline({ region }: ArchivedTag): Html {
  const points = outline(region).map(([x, y]) => `${x},${y}`);
  return html`<polygon points="${points.join(' ')}" />`;
}

function tagWords({ stage, who }: Telling, { mark, stage: at, note, saidBy }: ArchivedTag): Html {
  const more = note === '' ? '' : ` · ${note}`;
  return html`<li>
    <a href="#m-${encodeURIComponent(mark)}">${mark}</a>: ${stage[at]}, ${who(saidBy)}${more}
  </li> `;
}
