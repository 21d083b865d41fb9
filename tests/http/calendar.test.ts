import ICAL from 'ical.js';
import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import type { ReviewView } from '#domain/contract/review-views';
import type { HouseView } from '#domain/contract/views';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { newHouse, startServer, type Client, type TestServer } from '../support/server.ts';

const BOARDS = '北側の下屋、野地板張り（二枚目）; "い通り", 継手は\\の字𠮷野杉';

describeOverEitherDatabase('closings as a calendar', (make) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  let house: HouseView;
  let clock = Date.parse('2026-04-01T00:00:00.000Z');
  beforeAll(async () => {
    place = await make();
    server = await startServer(place, { now: () => new Date(clock) });
  });
  beforeEach(async () => {
    house = await newHouse(server.owner, '谷の舟小屋');
    for (const mark of ['い一', 'い二', 'い三'])
      await server.owner.put(`/houses/${house.id}/members/${encodeURIComponent(mark)}`, { kind: '柱' });
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
  });

  const link = async (client: Client = server.owner, lang = 'en') =>
    (await client.post<{ secret: string }>(`/houses/${house.id}/calendar-link`, { lang })).secret;
  const get = (secret: string) => server.anonymous().raw('GET', `/calendar/${secret}`);
  const text = async (secret: string) => (await get(secret)).text();
  const events = async (secret: string) =>
    new ICAL.Component(ICAL.parse(await text(secret)) as unknown[])
      .getAllSubcomponents('vevent')
      .map((component) => new ICAL.Event(component));
  const covering = (plannedDay: string | null, marks: readonly string[], name = BOARDS) => ({
    name,
    kind: 'roof-boards',
    plannedDay,
    hides: marks.map((mark) => ({ mark, least: 'raised' })),
  });
  const plan = async (...args: Parameters<typeof covering>): Promise<string> => {
    const id = randomUUID();
    await server.owner.post(`/houses/${house.id}/coverings`, { id, ...covering(...args) });
    return id;
  };

  it('is read by another library as what was planned, an event a covering with a day', async () => {
    const id = await plan('2026-04-20', ['い一', 'い二', 'い三']);
    await plan(null, ['い一'], 'Without a day');
    const secret = await link();
    const [event, ...others] = await events(secret);
    expect(others).toEqual([]);
    // Reference: ical.js 2, the parser of Mozilla's calendar.
    expect(event?.summary).toBe(`${BOARDS}: 3 gaps`);
    expect(event?.uid).toBe(id);
    expect(event?.startDate.toString()).toBe('2026-04-20');
    expect(event?.startDate.isDate).toBe(true);
    expect(event?.duration.toString()).toBe('P1D');
    expect(event?.description.split('\n')).toEqual([
      'Members hidden: 3. On record: 0. Gaps: 3. Lost: 0.',
      'Without a record: い一 (柱), い二 (柱), い三 (柱).',
      `${server.running.origin}/houses/${house.id}/coverings/${id}`,
    ]);
    const property = (name: string): unknown => event?.component.getFirstPropertyValue(name);
    expect(property('status')).toBe('TENTATIVE');
    expect(property('categories')).toBe('roof boards');
    expect(property('sequence')).toBe(0);
    expect(property('url')).toContain(id);
  });

  it('folds at 75 octets within no character, ends each line in CRLF, and bears the name of the house', async () => {
    await plan('2026-04-20', ['い一', 'い二', 'い三']);
    const response = await get(await link(server.owner, 'ja'));
    expect(response.headers.get('content-type')).toBe('text/calendar; charset=utf-8');
    const bytes = Buffer.from(await response.arrayBuffer());
    const lines = bytes.toString('latin1').split('\r\n');
    // RFC 5545 §3.1: lines of text of no more than 75 octets without the break, each delimited by CRLF.
    expect(lines.pop()).toBe('');
    expect(lines.some((line) => line.startsWith(' '))).toBe(true);
    for (const line of lines) {
      expect(line).not.toMatch(/[\r\n]/);
      expect(line.length).toBeLessThanOrEqual(75);
      const characters = new TextDecoder('utf-8', { fatal: true });
      expect(() => characters.decode(Buffer.from(line, 'latin1'))).not.toThrow();
    }
    const whole = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    expect(whole).toMatch(/^BEGIN:VCALENDAR\r\nVERSION:2\.0\r\nPRODID:/);
    expect(whole).toContain('X-WR-CALNAME:谷の舟小屋：ふさぎ工事\r\n');
    // §3.3.11: backslash, semicolon and comma are escaped, a colon and a quotation mark are not.
    expect(whole.replaceAll('\r\n ', '')).toContain(
      'SUMMARY:北側の下屋、野地板張り（二枚目）\\; "い通り"\\, 継手は\\\\の字𠮷野杉：未記録3本\r\n',
    );
  });

  it('revises an entry when it says something else, and only then', async () => {
    const id = await plan('2026-04-20', ['い一', 'い二']);
    const secret = await link();
    const stamps = async () => {
      const [event] = await events(secret);
      const of = (name: string) => String(event?.component.getFirstPropertyValue(name));
      // §3.8.7.2: without a method, DTSTAMP is when the information was last revised.
      expect(of('dtstamp')).toBe(of('last-modified'));
      return { at: of('last-modified'), sequence: of('sequence'), title: event?.summary };
    };
    clock += 60_000;
    const first = await stamps();
    clock += 60_000;
    await server.owner.put(`/houses/${house.id}/days/2026-04-01/note`, { text: 'Rain.' });
    expect(await stamps()).toEqual(first);
    await server.owner.put(`/coverings/${id}`, covering('2026-04-21', ['い一']));
    const second = await stamps();
    expect(second).toEqual({
      at: new Date(clock).toISOString().slice(0, 19) + 'Z',
      sequence: '1',
      title: `${BOARDS}: 1 gap`,
    });
    await server.owner.post(`/coverings/${id}/ready`, {});
    expect(await stamps()).toMatchObject({ title: `${BOARDS}: 1 gap, ready for inspection`, sequence: '2' });
    clock += 60_000;
    await server.owner.post(`/coverings/${id}/close`, {
      closedAt: null,
      withoutRelease: 'Nobody was there.',
    });
    expect(await stamps()).toMatchObject({
      sequence: '3',
      title: `${BOARDS}: closed, 1 lost, without release`,
    });
    expect((await text(secret)).includes('STATUS:CONFIRMED')).toBe(true);
  });

  it('stands on the day on site on which it closed, and is cancelled when its day is taken out', async () => {
    const closed = await plan('2026-03-20', [], 'Floor');
    const moved = await plan('2026-04-20', ['い一'], 'Wall');
    // 23:30 on 31 March in UTC is the morning of 1 April at this site.
    await server.owner.post(`/coverings/${closed}/close`, {
      closedAt: '2026-03-31T23:30:00.000Z',
      withoutRelease: 'Nobody was there.',
    });
    const secret = await link();
    const days = async () =>
      Object.fromEntries(
        (await events(secret)).map((event) => [
          event.summary,
          `${event.startDate.toString()} ${String(event.component.getFirstPropertyValue('status'))}`,
        ]),
      );
    expect(await days()).toEqual({
      'Floor: closed, without release': '2026-04-01 CONFIRMED',
      'Wall: 1 gap': '2026-04-20 TENTATIVE',
    });
    await server.owner.put(`/coverings/${moved}`, covering(null, ['い一'], 'Wall'));
    expect(await days()).toEqual({
      'Floor: closed, without release': '2026-04-01 CONFIRMED',
      'Wall: no closing day any more': '2026-04-20 CANCELLED',
    });
  });

  it('is each person’s own: made anew it replaces the old, ended it opens nothing, and it ends with the role', async () => {
    await plan('2026-04-20', ['い一']);
    const carpenter = await server.join(house.id, `${randomUUID()}@example.org`, 'builder');
    const [old, own] = [await link(carpenter), await link()];
    const secret = await link(carpenter, 'ja');
    expect((await get(old)).status).toBe(404);
    expect((await get(secret)).status).toBe(200);
    expect(await carpenter.get(`/houses/${house.id}/calendar-link`)).toMatchObject({
      link: { lang: 'ja', lastReadAt: new Date(clock).toISOString() },
    });
    const { account } = await carpenter.get<{ account: { id: string; email: string } }>('/session');
    clock += 1000;
    await server.owner.delete(`/houses/${house.id}/people/${account.id}`);
    expect((await get(secret)).status).toBe(404);
    const again = { email: account.email, role: 'builder' };
    await server.owner.post(`/houses/${house.id}/people`, again);
    expect((await get(secret)).status).toBe(404);
    expect(await carpenter.get(`/houses/${house.id}/calendar-link`)).toEqual({ link: null });
    expect((await get(own)).status).toBe(200);
    await server.owner.delete(`/houses/${house.id}/calendar-link`);
    const refused = await get(own);
    expect(refused.status).toBe(404);
    expect(await refused.json()).toMatchObject({ code: 'not-found', params: { what: 'calendar' } });
  });

  // OWASP ASVS 4.0.3, 3.3.3 (from memory): whoever changes a password can end all else that was open.
  it('ends with the password and with all sessions of whoever made the address, of nobody else', async () => {
    const other = await link();
    const carpenter = await server.join(house.id, 'leaves@example.org');
    const first = await link(carpenter);
    clock += 60_000;
    await carpenter.delete('/sessions?tokens=0');
    expect((await get(first)).status).toBe(404);
    expect((await get(other)).status).toBe(200);
  });

  it('keeps in the title of what has closed how many gaps were accepted', async () => {
    const id = await plan('2026-04-20', ['い一', 'い二'], 'Floor');
    const inspector = await server.join(house.id, 'looks@example.org', 'inspector');
    const secret = await link();
    await server.owner.post(`/coverings/${id}/ready`, {});
    const { lines } = await inspector.get<ReviewView>(`/coverings/${id}/review`);
    const members = lines.map(({ mark, basis }) => ({ mark, basis, waived: 'Seen on site.' }));
    await inspector.post(`/coverings/${id}/releases`, { id: randomUUID(), members });
    clock += 60_000;
    await server.owner.post(`/coverings/${id}/close`, { closedAt: null });
    expect((await events(secret)).map(({ summary }) => summary)).toEqual([
      'Floor: closed, 2 accepted without a record, under release',
    ]);
  });

  it('refuses whoever tries many secrets for a while, and then answers again', async () => {
    const secret = await link();
    for (let i = 0; i < 10; i++) await get(randomUUID());
    const refused = await get(randomUUID());
    expect(refused.status).toBe(429);
    expect(await refused.json()).toMatchObject({ code: 'too-many-attempts' });
    clock += 15 * 60_000;
    expect((await get(secret)).status).toBe(200);
  });
});
