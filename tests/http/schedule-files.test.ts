import { afterAll, beforeAll, expect, it } from 'vitest';
import type { HouseView } from '#domain/contract/views';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { newHouse, startServer, type TestServer } from '../support/server.ts';

describeOverEitherDatabase('schedule files over HTTP', (make) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  let house: HouseView;
  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
    house = await newHouse(server.owner);
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
  });

  const send = async (body: Uint8Array | string, query = '', type = 'text/csv') => {
    const init = {
      body: typeof body === 'string' ? body : Uint8Array.from(body),
      headers: { 'content-type': type },
    };
    const response = await server.owner.raw('POST', `/houses/${house.id}/schedule?${query}`, init);
    return { status: response.status, value: (await response.json()) as { code?: string; detail?: string } };
  };

  it.each([
    ['a PDF', Buffer.from('%PDF-1.7\n...'), /PDF/],
    ['an old workbook', Buffer.from('d0cf11e0a1b11ae10000000000000000', 'hex'), /\.xls/],
    ['nothing', Buffer.from(''), /empty/],
    ['half a workbook', Buffer.from('504b03041400000008000000', 'hex'), /damaged/],
    ['an open quotation mark', Buffer.from('mark,kind\r\n"い一,柱\r\n'), /quotation mark opened in line 2/],
  ])('refuses %s and says what to do', async (_, bytes, sentence) => {
    const { status, value } = await send(bytes);
    expect([status, value.code]).toEqual([422, 'schedule-unreadable']);
    expect(value.detail).toMatch(sentence);
  });

  it('refuses a file that is too large, a form, and a mapping that is none', async () => {
    expect((await send(Buffer.alloc(11 * 1024 * 1024, 0x61))).value.code).toBe('request-too-large');
    expect((await send('{}', '', 'application/json')).value.code).toBe('unsupported-media-type');
    expect((await send('mark\r\nい一', 'mapping=nonsense')).value.code).toBe('invalid-request');
  });

  it('asks which column holds the marks where none is recognised, and takes it by hand', async () => {
    const sheet = 'ひとつ,ふたつ\r\nい一,柱\r\nい二,柱\r\n';
    expect((await send(sheet)).value.code).toBe('schedule-has-no-mark-column');
    const mapping = encodeURIComponent(JSON.stringify({ 0: 'mark', 1: 'kind' }));
    expect((await send(sheet, `mapping=${mapping}`)).value).toMatchObject({ added: 2 });
  });

  it('imports 5,000 members at once', async () => {
    const rows = Array.from({ length: 5000 }, (_, i) => `M${i},柱`).join('\r\n');
    expect((await send(`mark,kind\r\n${rows}`)).value).toMatchObject({ added: 5000 });
  });
});
