import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Answer } from '#domain/contract/routes';
import type { TermFacts, TermView } from '#domain/contract/terms';
import type { HouseView, LedgerEntryView, MemberView, UploadOutcome } from '#domain/contract/views';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { newHouse, startServer, type Client, type TestServer } from '../support/server.ts';

const LATTICE: TermFacts = {
  ...{ kanji: '面格子', kana: 'めんごうし', romaji: 'mengōshi', en: 'lattice panel', also: ['grid'] },
  ...{ family: 'lath', track: 'lath', lies: 'none', section: null },
  hiddenBy: ['plaster-over-posts'],
  does: 'Stiffens a bay without closing it.',
};
const RAIL: TermFacts = {
  ...{ kanji: '横貫', kana: 'よこぬき', romaji: 'yokonuki', en: 'cross rail', also: [] },
  ...{ family: 'rail', track: 'timber', lies: 'level', section: [18, 120] },
  hiddenBy: [],
  does: '',
};

describeOverEitherDatabase('the words of a crew', (make) => {
  let where: PlaceForDatabase;
  let server: TestServer;
  let owner: Client;
  let house: HouseView;
  beforeAll(async () => {
    where = await make();
    server = await startServer(where);
    owner = server.owner;
    house = await newHouse(owner);
    await owner.raw('POST', `/houses/${house.id}/schedule?fileName=a.csv`, {
      body: '番付,部材\nい一,貫\nい二,Grid\nい三,柱\nい四,謎\nい五,tie rail',
      headers: { 'content-type': 'text/csv' },
    });
  });
  afterAll(async () => {
    await server.close();
    await where.remove();
  });

  const at = (term: string) => `/houses/${house.id}/terms/${term}`;
  const list = async () => (await owner.get<{ terms: TermView[] }>(`/houses/${house.id}/terms`)).terms;
  const trackOf = async (mark: string) =>
    (await owner.get<{ members: MemberView[] }>(`/houses/${house.id}/members`)).members.find(
      (member) => member.mark === mark,
    )?.track;
  const remove = (term: string, reason = 'nobody says so') =>
    owner.delete(`${at(term)}?reason=${encodeURIComponent(reason)}`);
  const said = async (kind: string) =>
    (await owner.get<{ entries: LedgerEntryView[] }>(`/houses/${house.id}/ledger`)).entries.filter(
      (entry) => entry.kind === kind,
    );

  it('are entered, said once, and decide the stages of their members', async () => {
    const term = randomUUID();
    expect(await trackOf('い二')).toBe('wall');
    const answer = await owner.put<TermView>(at(term), LATTICE);
    expect(answer).toMatchObject({ ...LATTICE, id: term, by: { name: expect.any(String) } });
    await owner.put(at(term), LATTICE);
    expect(await said('term.entered')).toHaveLength(1);
    expect(await trackOf('い二')).toBe('lath');
    await owner.put(at(term), { ...LATTICE, track: 'timber' });
    expect(await trackOf('い二')).toBe('timber');
    await remove(term);
    expect(await list()).toEqual([]);
    expect(await trackOf('い二')).toBe('wall');
    expect((await said('term.removed'))[0]?.payload).toEqual({
      ...{ term, was: '面格子', reason: 'nobody says so' },
    });
  });

  it('rename a kind of the program, which is still found under its old names', async () => {
    await owner.put(at('nuki'), RAIL);
    expect([await trackOf('い一'), await trackOf('い五'), await trackOf('い三')]).toEqual([
      'timber',
      'timber',
      'wall',
    ]);
    expect(await list()).toMatchObject([{ id: 'nuki', kanji: '横貫', section: [18, 120] }]);
    await remove('nuki');
    expect(await trackOf('い一')).toBe('wall');
  });

  it('name one kind each: a spelling that is taken is refused with the other’s name', async () => {
    const [term, other] = [randomUUID(), randomUUID()];
    const taken = { status: 409, problem: { code: 'term-spelling-taken' } };
    await expect(owner.put(at(term), { ...LATTICE, also: ['ＲＡＦＴＥＲ'] })).rejects.toMatchObject({
      ...taken,
      problem: { params: { spelling: 'ＲＡＦＴＥＲ', other: '垂木, rafter' } },
    });
    await owner.put(at(term), LATTICE);
    await expect(owner.put(at(other), { ...LATTICE, kanji: '格子', kana: '' })).rejects.toMatchObject({
      ...taken,
      problem: { detail: expect.stringContaining('面格子, lattice panel') },
    });
    await expect(owner.put(at('taruki'), { ...RAIL, also: ['Grid'] })).rejects.toMatchObject(taken);
    // Its own old names may be kept, and are no other kind's.
    await owner.put(at('nuki'), { ...RAIL, also: ['貫'] });
    await remove('nuki');
    await remove(term);
  });

  it('touch what is to be looked at about their members', async () => {
    const bytes = await makeJpeg(7, takenAt('2026-04-01T09:30:00'));
    const { results } = await owner.upload<{ results: UploadOutcome[] }>(house.id, [
      { name: 'a.jpg', bytes },
    ]);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error(JSON.stringify(outcome));
    const region = { shape: 'rectangle', x: 0.1, y: 0.2, w: 0.3, h: 0.4 };
    const tag = { id: randomUUID(), mark: 'い一', stage: 'plastered', region };
    await owner.post(`/photos/${outcome.photo.id}/tags`, tag);
    const kinds = async () =>
      (await owner.get<Answer<'listFindings'>>(`/houses/${house.id}/findings`)).findings.map(
        ({ kind }) => kind,
      );
    const before = await kinds();
    await owner.put(at('nuki'), RAIL);
    expect((await kinds()).length).toBe(before.length + 1);
    await remove('nuki');
    expect(await kinds()).toEqual(before);
    const seen = await owner.get<Answer<'kindSightings'>>(`/houses/${house.id}/kinds/nuki/photos`);
    expect(seen).toMatchObject({ total: 1, sightings: [{ tag: tag.id, mark: 'い一', fileName: 'a.jpg' }] });
    const crop = await owner.raw('GET', (seen.sightings[0]?.crop ?? '').replace('/api/v1', ''));
    expect(crop.status).toBe(200);
    const none = await owner.get<Answer<'kindSightings'>>(`/houses/${house.id}/kinds/hashira/photos`);
    expect(none).toEqual({ sightings: [], total: 0 });
  });

  it.each([
    ['no name', { kanji: ' ', en: '' }, 422],
    ['a family of its own', { family: 'tower' }, 400],
    ['a section of nothing', { section: [0, 100] }, 400],
    ['a section of one number', { section: [15] }, 400],
    ['a bar within a name', { en: 'a|b' }, 400],
    ['two lines in a name', { kanji: '貫\n梁' }, 400],
    ['a name without end', { en: 'x'.repeat(61) }, 400],
    ['a word too many', { colour: 'red' }, 400],
  ])('refuse %s', async (_name, change, status) => {
    await expect(owner.put(at(randomUUID()), { ...LATTICE, ...change })).rejects.toMatchObject({ status });
    expect(await list()).toEqual([]);
  });

  it.each(['nukii', 'NUKI', '貫', '..', 'a'.repeat(41)])('have no id like %s', async (id) => {
    await expect(owner.put(at(encodeURIComponent(id)), LATTICE)).rejects.toMatchObject({ status: 404 });
  });

  it('cannot be removed where there are none, or without a reason', async () => {
    await expect(remove('nuki')).rejects.toMatchObject({ status: 404 });
    await expect(owner.delete(at('nuki'))).rejects.toMatchObject({ status: 400 });
  });

  it('are nobody else’s business', async () => {
    const stranger = await server.join((await newHouse(owner, 'Tea house')).id, 'ren@example.org');
    for (const ask of [
      () => stranger.get(`/houses/${house.id}/terms`),
      () => stranger.put(at(randomUUID()), LATTICE),
      () => stranger.get(`/houses/${house.id}/kinds/nuki/photos`),
    ])
      await expect(ask()).rejects.toMatchObject({ status: 404 });
  });
});
