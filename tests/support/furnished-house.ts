import { randomUUID } from 'node:crypto';
import type { ReviewView } from '#domain/contract/review-views';
import type { UploadOutcome } from '#domain/contract/views';
import { makeJpeg, takenAt } from './pictures.ts';
import { newHouse, type Client } from './server.ts';

export interface FurnishedHouse {
  readonly house: string;
  /** A thing of each sort that an address of the API can name, by the name of the path's parameter. */
  readonly things: Readonly<Record<string, string>>;
  /** SHA-256 of its photo. */
  readonly content: string;
}

const NAILER = { kanji: '胴縁木', en: 'nailer', family: 'floor', track: 'floor', lies: 'level' };

/** A house of this day with one member, photo, tag, released covering, protection, clock mark, term and guest, and one person invited. */
export async function furnishHouse(owner: Client, mark: string, day: string): Promise<FurnishedHouse> {
  const noon = `${day}T03:00:00.000Z`;
  const { id: house } = await newHouse(owner, `House of ${mark}`);
  const [tag, covering, protection, clockMark] = [randomUUID(), randomUUID(), randomUUID(), randomUUID()];
  const [term, release] = [randomUUID(), randomUUID()];
  await owner.put(`/houses/${house}/members/${encodeURIComponent(mark)}`, { kind: '柱' });
  const bytes = await makeJpeg(71, takenAt(`${day}T09:30:00`), { width: 96, height: 64 });
  const { results } = await owner.upload<{ results: UploadOutcome[] }>(house, [{ name: 'a.jpg', bytes }]);
  const [outcome] = results;
  if (!outcome || outcome.outcome === 'refused') throw new Error('The photo was refused.');
  const { id: photo, sha256: content } = outcome.photo;
  const region = { shape: 'rectangle', x: 0.1, y: 0.2, w: 0.3, h: 0.4 };
  await owner.post(`/photos/${photo}/tags`, { id: tag, mark, stage: 'raised', region });
  await owner.post(`/photos/${photo}/clock-mark`, { id: clockMark, trueTime: noon });
  await owner.post(`/houses/${house}/coverings`, {
    ...{ id: covering, name: 'North wall', kind: 'plaster', plannedDay: '2026-05-01' },
    hides: [{ mark, least: 'raised' }],
  });
  await owner.put(`/houses/${house}/release-rule`, { fourEyes: false, reason: 'One person.' });
  await owner.post(`/coverings/${covering}/ready`, {});
  const { lines } = await owner.get<ReviewView>(`/coverings/${covering}/review`);
  await owner.post(`/coverings/${covering}/releases`, {
    id: release,
    members: lines.map((line) => ({ mark: line.mark, basis: line.basis, waived: 'Seen on site.' })),
  });
  await owner.post(`/houses/${house}/protections`, {
    ...{ id: protection, name: 'Sill', what: 'boards', hides: [mark], laidAt: noon },
  });
  await owner.put(`/houses/${house}/terms/${term}`, NAILER);
  const { link } = await owner.post<{ link: string }>(`/houses/${house}/people`, {
    email: `${house}@example.org`,
    role: 'builder',
  });
  const guest = randomUUID();
  const { secret } = await owner.post<{ secret: string }>(`/houses/${house}/guests`, {
    ...{ id: guest, shows: { mark }, label: 'Family Ota' },
  });
  const invitation = randomUUID();
  const { secret: calendar } = await owner.post<{ secret: string }>(`/houses/${house}/calendar-link`, {
    lang: 'en',
  });
  const things = {
    ...{ house, photo, tag, covering, release, protection, clockMark, term, kind: term },
    ...{ guest, secret, invitation, calendar },
  };
  return { house, content, things: { ...things, mark: encodeURIComponent(mark), date: day, link } };
}
