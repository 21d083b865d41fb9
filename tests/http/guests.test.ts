import { randomUUID } from 'node:crypto';
import { ExifTool } from 'exiftool-vendored';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Answer } from '#domain/contract/routes';
import type { GuestPageView, GuestShows } from '#domain/contract/guests';
import type { HouseView, LedgerEntryView, TagView, UploadOutcome } from '#domain/contract/views';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { saidOfItself, talkative } from '../support/said-of-itself.ts';
import { makeSquares, takenAt } from '../support/pictures.ts';
import {
  HttpProblem,
  OWNER,
  newHouse,
  startServer,
  type Client,
  type TestServer,
} from '../support/server.ts';

const REGION = { shape: 'rectangle', x: 0.1, y: 0.2, w: 0.3, h: 0.4 };
const DAY_MS = 24 * 60 * 60 * 1000;

describeOverEitherDatabase('guests', (make) => {
  const exiftool = new ExifTool();
  const covering = randomUUID();
  let place: PlaceForDatabase;
  let server: TestServer;
  let house: HouseView;
  let carpenter: Client;
  let shown: TagView;
  let other: TagView;
  let later = 0;
  beforeAll(async () => {
    place = await make();
    server = await startServer(place, { now: () => new Date(Date.now() + later) });
    house = await newHouse(server.owner);
    carpenter = await server.join(house.id, 'joiner@example.org');
    await server.owner.raw('POST', `/houses/${house.id}/schedule?fileName=a.csv`, {
      body: '番付,部材,位置\nい一,柱,corner\nい二,柱,door\nい三,柱,stair',
      headers: { 'content-type': 'text/csv' },
    });
    const hides = ['い一', 'い二'].map((mark) => ({ mark, least: 'raised' }));
    const facts = { name: 'North wall', kind: 'plaster', plannedDay: '2099-04-20', hides };
    await server.owner.post(`/houses/${house.id}/coverings`, { id: covering, ...facts });
    const bytes = await talkative(exiftool, 1);
    shown = await tag(await add('secret-name.jpg', bytes), 'い一');
    other = await tag(await add('b.jpg', await makeSquares(2, takenAt('2026-04-02T09:30:00'))), 'い三');
  });
  afterAll(async () => {
    await exiftool.end();
    await server.close();
    await place.remove();
  });

  const add = async (name: string, bytes: Uint8Array): Promise<string> => {
    const { results } = await carpenter.upload<{ results: UploadOutcome[] }>(house.id, [{ name, bytes }]);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error(JSON.stringify(outcome));
    return outcome.photo.id;
  };
  const tag = (photo: string, mark: string) =>
    carpenter.post<TagView>(`/photos/${photo}/tags`, {
      ...{ id: randomUUID(), mark, stage: 'raised', region: REGION },
      note: 'only for the crew',
    });
  const admit = (shows: object, more: object = {}, client = server.owner) =>
    client.post<Answer<'admitGuest'>>(`/houses/${house.id}/guests`, {
      ...{ id: randomUUID(), shows: shows as GuestShows, label: 'Family Ota' },
      ...more,
    });
  const list = async () =>
    (await server.owner.get<Answer<'listGuests'>>(`/houses/${house.id}/guests`)).guests;
  const open = (secret: string) => server.anonymous().get<GuestPageView>(`/guest/${secret}`);
  const picture = (secret: string, { photo, id }: TagView, whole = false) =>
    server.anonymous().raw('GET', `/guest/${secret}/photos/${photo}/picture${whole ? '' : `?tag=${id}`}`);
  const refusal = async (secret: string) => {
    const response = await server.anonymous().raw('GET', `/guest/${secret}`);
    return { status: response.status, body: (await response.json()) as unknown };
  };

  it('shows one covering to whoever has the link, and says of it in the ledger to whom', async () => {
    const { guest, secret } = await admit({ covering });
    const { page, ...facts } = await open(secret);
    expect(facts).toEqual({
      ...{ house: 'Boathouse', zone: 'Asia/Tokyo', label: 'Family Ota', until: guest.until },
    });
    expect(page).toMatchObject({
      ...{ shows: 'covering', name: 'North wall', plannedDay: '2099-04-20', closedAt: null },
      standing: { phase: 'planned', without: null, takenBack: null },
      counts: { hidden: 2, onRecord: 1, gaps: 1, lost: 0, waived: 0 },
      lines: [
        { mark: 'い二', state: 'gap', pictures: [] },
        { mark: 'い一', state: 'on-record', pictures: [{ photo: shown.photo, tag: shown.id }] },
      ],
    });
    const { entries } = await carpenter.get<{ entries: LedgerEntryView[] }>(`/houses/${house.id}/ledger`);
    expect(entries.at(-1)).toMatchObject({
      kind: 'guest.admitted',
      by: { name: 'owner' },
      payload: { guest: guest.id, shows: { covering }, label: 'Family Ota', until: guest.until },
    });
    expect(JSON.stringify(entries)).not.toContain(secret);
    expect((await list()).find(({ id }) => id === guest.id)).toMatchObject({
      ...{ name: 'North wall', by: 'owner', lastUsedAt: expect.any(String) as string },
    });
  });

  it('shows one member by its stages', async () => {
    const { secret } = await admit({ mark: 'い一' });
    const { page } = await open(secret);
    if (page.shows !== 'member') throw new Error(page.shows);
    const raised = page.stages.find(({ stage }) => stage === 'raised');
    expect(raised?.pictures.map(({ tag: id }) => id)).toEqual([shown.id]);
    expect(page.coverings).toEqual([
      { name: 'North wall', kind: 'plaster', plannedDay: '2099-04-20', closedAt: null },
    ]);
  });

  it('hands out pictures of its own page only, and they say nothing of themselves', async () => {
    const { secret } = await admit({ covering });
    for (const whole of [true, false]) {
      const response = await picture(secret, shown, whole);
      expect([response.status, response.headers.get('content-type')]).toEqual([200, 'image/jpeg']);
      expect(response.headers.get('x-content-type-options')).toBe('nosniff');
      // The page of a link that has ended must not come from a cache.
      expect(response.headers.get('cache-control')).toBe('no-store');
      expect(await saidOfItself(exiftool, Buffer.from(await response.arrayBuffer()))).toEqual({});
      expect((await picture(secret, other, whole)).status).toBe(404);
    }
    const strange = await picture(secret, { ...shown, id: other.id });
    expect(strange.status).toBe(404);
    const { secret: ofOther } = await admit({ mark: 'い三' });
    expect((await picture(ofOther, shown)).status).toBe(404);
  });

  it('tells nothing else of the house: no person, place, note, name of a file, and no way further', async () => {
    for (const shows of [{ covering }, { mark: 'い一' }]) {
      const { secret } = await admit(shows);
      const said = JSON.stringify(await open(secret));
      expect(said).not.toMatch(/@|joiner|owner|secret-name|crew|"lat"|"lon"|い三/);
      for (const address of [
        `/houses/${house.id}`,
        `/photos/${shown.photo}/original`,
        `/photos/${shown.photo}`,
      ])
        expect((await server.anonymous().withToken(secret).raw('GET', address)).status).toBe(401);
    }
  });

  it('keeps the address to itself: no referrer, no list of a search engine', async () => {
    const { secret } = await admit({ covering });
    for (const base of [`${server.running.origin}/api/v1/guest/`, `${server.running.origin}/guest/`]) {
      const { headers } = await fetch(base + secret);
      expect(headers.get('referrer-policy')).toBe('no-referrer');
      expect(headers.get('x-robots-tag')).toContain('noindex');
    }
  });

  it('answers alike whether a link is wrong, too old, ended, or of somebody who keeps the record no more', async () => {
    const wrong = await refusal('never-made');
    expect(wrong).toMatchObject({ status: 404, body: { code: 'not-found' } });

    const ended = await admit({ covering });
    const short = await admit({ covering }, { days: 1 });
    await server.owner.delete(`/houses/${house.id}/guests/${ended.guest.id}?reason=sent%20on`);
    const { entries } = await carpenter.get<{ entries: LedgerEntryView[] }>(`/houses/${house.id}/ledger`);
    expect(entries.at(-1)).toMatchObject({
      kind: 'guest.ended',
      payload: { guest: ended.guest.id, reason: 'sent on' },
    });
    expect(await refusal(ended.secret)).toEqual(wrong);
    expect((await picture(ended.secret, shown)).status).toBe(404);

    await open(short.secret);
    later = DAY_MS + 1000;
    expect(await refusal(short.secret)).toEqual(wrong);
    expect((await list()).some(({ id }) => id === short.guest.id)).toBe(false);
    later = 0;

    const person = { email: 'joiner@example.org' };
    await server.owner.post(`/houses/${house.id}/people`, { ...person, role: 'owner' });
    const theirs = await admit({ covering }, {}, carpenter);
    await open(theirs.secret);
    await server.owner.post(`/houses/${house.id}/people`, { ...person, role: 'carpenter' });
    expect(await refusal(theirs.secret)).toEqual(wrong);
    expect((await list()).some(({ id }) => id === theirs.guest.id)).toBe(false);
  });

  it('is admitted by the keeper of the record alone, for ninety days at most, to what there is', async () => {
    const codeOf = (work: Promise<unknown>) =>
      work.then(
        () => 'no problem',
        (error: unknown) => (error instanceof HttpProblem ? error.problem.code : String(error)),
      );
    expect(await codeOf(admit({ covering }, {}, carpenter))).toBe('not-permitted');
    expect(await codeOf(carpenter.get(`/houses/${house.id}/guests`))).toBe('not-permitted');
    expect(await codeOf(admit({ covering }, { days: 91 }))).toBe('invalid-request');
    expect(await codeOf(admit({ covering: randomUUID() }))).toBe('not-found');
    expect(await codeOf(admit({ mark: 'ろ九' }))).toBe('not-found');
    expect(await codeOf(admit({ mark: 'い一', covering }))).toBe('invalid-request');
    // Sent again it is the same guest, with a secret of its own; all end together.
    const id = randomUUID();
    const [first, again] = [await admit({ covering }, { id }), await admit({ covering }, { id })];
    expect(again.guest).toEqual(first.guest);
    await open(again.secret);
    expect(await codeOf(admit({ mark: 'い一' }, { id }))).toBe('id-used-for-something-else');
    const elsewhere = await newHouse(server.owner, 'Shed');
    expect(await codeOf(server.owner.delete(`/houses/${elsewhere.id}/guests/${id}`))).toBe('not-found');
    await server.owner.delete(`/houses/${house.id}/guests/${id}`);
    for (const { secret } of [first, again]) expect((await refusal(secret)).status).toBe(404);
    expect(await codeOf(admit({ covering }, { id }))).toBe('id-used-for-something-else');
  });

  it('hands out each picture that the page shows, and of the same member none that it does not', async () => {
    const tags: TagView[] = [];
    for (const n of [3, 4, 5, 6])
      tags.push(
        await tag(await add(`${n}.jpg`, await makeSquares(n, takenAt(`2026-04-0${n}T09:30:00`))), 'い二'),
      );
    const { secret } = await admit({ covering });
    const { page } = await open(secret);
    const ids =
      page.shows === 'covering' ? page.lines.flatMap(({ pictures }) => pictures.map((p) => p.tag)) : [];
    const ofDoor = tags.filter(({ id }) => ids.includes(id));
    expect(ofDoor).toHaveLength(3);
    for (const one of [...tags, shown])
      for (const whole of [true, false])
        expect((await picture(secret, one, whole)).status).toBe(ids.includes(one.id) ? 200 : 404);
    const [first] = ofDoor;
    if (!first) throw new Error('Nothing is shown.');
    await carpenter.delete(`/tags/${first.id}?reason=wrong`);
    expect((await picture(secret, first)).status).toBe(404);
    const { secret: ofMember } = await admit({ mark: 'い二' });
    expect((await picture(ofMember, first)).status).toBe(404);
    for (const one of tags.filter(({ id }) => id !== first.id))
      expect((await picture(ofMember, one)).status).toBe(200);
  });

  it('slows down who tries one address after the other, and not who opens a dead one again', async () => {
    // Only a proxy on this machine may say for whom it asks: here each tries from an address of its own.
    // Addresses for documentation, RFC 5737.
    const from = (ip: string, secret: string) =>
      server.anonymous().raw('GET', `/guest/${secret}`, { headers: { 'x-forwarded-for': ip } });
    const { secret } = await admit({ covering });
    for (let i = 0; i < 12; i++) expect((await from('192.0.2.1', 'dead')).status).toBe(404);
    expect((await from('192.0.2.1', secret)).status).toBe(200);
    for (let i = 0; i < 10; i++) expect((await from('192.0.2.2', `guess-${i}`)).status).toBe(404);
    expect((await from('192.0.2.2', 'guess-10')).status).toBe(429);
    expect((await from('192.0.2.2', secret)).status).toBe(429);
    expect((await from('192.0.2.3', secret)).status).toBe(200);
    // Signing in from there is another matter.
    const response = await server.anonymous().raw('POST', '/session', {
      body: JSON.stringify(OWNER),
      headers: { 'content-type': 'application/json', 'x-forwarded-for': '192.0.2.2' },
    });
    expect(response.status).toBe(200);
  });
});
