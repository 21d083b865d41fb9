import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { ProtectionView } from '#domain/contract/protection';
import type { ShotListView } from '#domain/contract/shot-views';
import type { CoveringView, HouseView, UploadOutcome } from '#domain/contract/views';
import type { WallFiguresView } from '#domain/contract/wall-views';
import { dayAfter } from '#domain/frame/invented/invented-house';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { newHouse, startServer, type Client, type TestServer } from '../support/server.ts';

const lines = (labels: readonly string[]) => labels.map((label, i) => ({ label, at: i * 1820 }));
const GRID = {
  first: { lines: lines(['い', 'ろ']), runs: 'leftward' },
  second: { lines: lines(['一', '二', '三']), runs: 'downward' },
  levels: [{ label: '1F', height: 450 }],
  unit: 'mm',
};
/** Two rails of a wall of two bays, one too narrow; lath of which nobody says where it is. */
const SCHEDULE = [
  '番付,種類,場所,始点,終点,階,下端,断面',
  'い通り貫,貫,西の壁,い一,い三,1F,900,15×105',
  'い通り上の貫,貫,西の壁,い一,い三,1F,1700,15×90',
  '西の小舞,小舞,西の壁,,,,,',
].join('\n');
const WALL = { shape: 'wall', family: 'first', line: 'い', from: '一', to: '三', bottom: 450, top: 3250 };
const BOTH = { ...WALL, face: 'both', over: 'between-posts' };
let pictures = 7000;

describeOverEitherDatabase('what somebody on site asks, over HTTP', (make) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  let owner: Client;
  let house: HouseView;
  let today: string;
  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
    owner = server.owner;
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
  });
  beforeEach(async () => {
    house = await newHouse(owner, '谷の納屋');
    await owner.put(`/houses/${house.id}/grid`, GRID);
    await schedule();
    ({ today } = await list());
  });

  const schedule = () =>
    owner.raw('POST', `/houses/${house.id}/schedule?fileName=frame.csv`, {
      body: SCHEDULE,
      headers: { 'content-type': 'text/csv' },
    });
  const list = (query = '') => owner.get<ShotListView>(`/houses/${house.id}/shot-list${query}`);
  const plan = (name: string, days: number | null, more: object = {}) =>
    owner.post<CoveringView>(`/houses/${house.id}/coverings`, {
      ...{ id: randomUUID(), name, kind: 'plaster', hides: [], zone: BOTH, ...more },
      plannedDay: days === null ? null : dayAfter(today, days),
    });
  const show = async (mark: string, stretch: object | null) => {
    const bytes = await makeJpeg(pictures++, takenAt('2026-04-01T09:30:00'));
    const { results } = await owner.upload<{ results: UploadOutcome[] }>(house.id, [
      { name: 'a.jpg', bytes },
    ]);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error('refused');
    await owner.post(`/photos/${outcome.photo.id}/tags`, {
      ...{ id: randomUUID(), mark, stage: 'pegged', stretch },
      region: { shape: 'rectangle', x: 0.1, y: 0.2, w: 0.3, h: 0.4 },
    });
  };
  const shots = ({ places }: ShotListView) =>
    places.flatMap(({ turns }) => turns.flatMap((turn) => turn.shots));
  const told = (answer: ShotListView) =>
    shots(answer).map(({ mark, stretches }) => [
      mark,
      ...stretches.map(({ fromMark, toMark }) => `${fromMark}–${toMark}`),
    ]);

  describe('the shot list', () => {
    it('says where to stand, which way to look, and what to take, until it is on record', async () => {
      const { id } = await plan('West', 3);
      const answer = await list();
      expect(answer.coverings).toEqual([
        { id, name: 'West', kind: 'plaster', plannedDay: dayAfter(today, 3), daysLeft: 3 },
      ]);
      expect(told(answer).sort()).toEqual([
        ['い通り上の貫', '一–三'],
        ['い通り貫', '一–三'],
      ]);
      expect(answer).toMatchObject({ unseen: [], placeless: [], later: 0 });
      for (const { level, footing, closes, turns } of answer.places) {
        expect({ level, footing, closes }).toEqual({
          ...{ level: '1F', footing: 'ground', closes: dayAfter(today, 3) },
        });
        expect(turns.map(({ look }) => look)).toEqual([{ family: 'first', line: 'い' }]);
      }
      expect(shots(answer)[0]).toMatchObject({
        ...{ kind: '貫', place: '西の壁', coverings: [id], least: 'pegged', views: 1 },
        nearestMiss: 'no-photo',
      });

      await show('い通り上の貫', null);
      await show('い通り貫', { from: '一', to: '二' });
      const [left, ...others] = shots(await list());
      expect(others).toEqual([]);
      expect(left).toMatchObject({
        ...{ mark: 'い通り貫', nearestMiss: 'part-only' },
        stretches: [{ fromMark: '二', toMark: '三', start: { x: 0, y: 1820 }, end: { x: 0, y: 3640 } }],
      });
      await show('い通り貫', { from: '二', to: '三' });
      expect(await list()).toMatchObject({ coverings: [], places: [], unseen: [], placeless: [] });
    });

    it('is of the next seven days where nothing else is said', async () => {
      await plan('Next week', 7);
      await plan('Later', 8);
      await plan('Some day', null);
      const names = async (query = '') => (await list(query)).coverings.map(({ name }) => name);
      expect(await names()).toEqual(['Next week']);
      expect((await list()).later).toBe(4);
      expect(await names('?days=8')).toEqual(['Next week', 'Later']);
      expect(await names('?days=0')).toEqual([]);
      expect(await names('?days=all')).toEqual(['Next week', 'Later', 'Some day']);
      for (const days of ['soon', '-1', '1.5'])
        await expect(list(`?days=${days}`)).rejects.toMatchObject({ problem: { code: 'invalid-request' } });
    });

    it('does not see through a wall that has closed', async () => {
      const higher = await plan('Coat towards ろ', 2, { zone: { ...BOTH, face: 'higher' } });
      const lower = await plan('Coat outside', -1, { zone: { ...BOTH, face: 'lower' } });
      const sides = async () => (await list()).places.map(({ eye }) => Math.sign(eye.x));
      // What lies on the line い, at 0, is seen from the open face alone.
      await owner.post(`/coverings/${lower.id}/close`, { withoutRelease: 'Nobody inspects this house.' });
      expect(new Set(await sides())).toEqual(new Set([1]));
      await owner.post(`/coverings/${lower.id}/reopen`, { reason: 'said by mistake' });
      await owner.post(`/coverings/${higher.id}/close`, { withoutRelease: 'Nobody inspects this house.' });
      expect(new Set(await sides())).toEqual(new Set([-1]));
    });

    it('tells what closed without a record from what is on record, and from what nobody asks for', async () => {
      const { id } = await plan('West', 3);
      const later = await plan('Ceiling', 30, {
        zone: null,
        hides: [{ mark: '西の小舞', least: 'lath-on' }],
      });
      await show('い通り上の貫', null);
      await show('い通り貫', { from: '一', to: '二' });
      await owner.post(`/coverings/${id}/close`, { withoutRelease: 'Nobody inspects this house.' });
      // What closes in a month is told, too, though a week is asked for.
      const { asked, places, coverings } = await list();
      expect([places, coverings]).toEqual([[], []]);
      const all = { hidden: { from: 0, to: 3640 }, lostBefore: [] };
      const lost = [{ from: 1820, to: 3640 }];
      const told = Object.fromEntries(asked.map((one) => [one.id, one]));
      expect(told[id]).toMatchObject({ name: 'West', hasClosed: true });
      expect(told[id]?.lines.toSorted((a, b) => (a.mark < b.mark ? -1 : 1))).toEqual([
        { mark: 'い通り上の貫', state: 'on-record', missing: [], ...all },
        { mark: 'い通り貫', state: 'lost', missing: lost, ...all },
      ]);
      expect(told[later.id]).toMatchObject({
        hasClosed: false,
        lines: [{ mark: '西の小舞', state: 'gap', hidden: null, missing: [] }],
      });
      await owner.post(`/coverings/${id}/reopen`, { reason: 'said by mistake' });
      await owner.delete(`/houses/${house.id}/members/${encodeURIComponent('い通り貫')}`);
      const west = (await list()).asked.find((one) => one.id === id);
      expect(west?.lines.filter(({ mark }) => mark === 'い通り貫')).toMatchObject([{ state: 'retired' }]);
    });

    it('names what an earlier layer hid without a record, where a later one asks for it as well', async () => {
      const part = await plan('Skirting', 1, { zone: { ...BOTH, to: '二' } });
      const { id } = await plan('West', 3);
      await show('い通り貫', { from: '二', to: '三' });
      await owner.post(`/coverings/${part.id}/close`, { withoutRelease: 'Nobody inspects this house.' });
      const west = (await list()).asked.find((one) => one.id === id);
      expect(west?.lines.find(({ mark }) => mark === 'い通り貫')).toMatchObject({
        ...{ state: 'on-record', missing: [], lostBefore: [{ from: 0, to: 1820 }] },
      });
    });

    it('is one shot where two coverings ask for the same, and says what lies over it', async () => {
      const late = await plan('Finish', 5);
      const soon = await plan('West', 2);
      const sheets = await owner.post<ProtectionView>(`/houses/${house.id}/protections`, {
        ...{ id: randomUUID(), name: 'Sheets', what: 'sheet, boards', hides: ['い通り貫'] },
        laidAt: '2026-04-03T23:00:00.000Z',
      });
      const answer = await list();
      expect(told(answer).sort()).toEqual([
        ['い通り上の貫', '一–三'],
        ['い通り貫', '一–三'],
      ]);
      for (const { coverings } of shots(answer)) expect(coverings).toEqual([soon.id, late.id]);
      for (const { closes } of answer.places) expect(closes).toBe(dayAfter(today, 2));
      expect(answer.lying).toMatchObject([{ id: sheets.id, name: 'Sheets', mark: 'い通り貫' }]);
    });

    it('lists apart what has no place, and all of it without a grid', async () => {
      await plan('West', 1, { hides: [{ mark: '西の小舞', least: 'lath-on' }] });
      const { placeless, places } = await list();
      expect(placeless).toMatchObject([{ mark: '西の小舞', place: '西の壁', stretches: [] }]);
      expect(places.length).toBeGreaterThan(0);
      house = await newHouse(owner, '通り芯のない家');
      await schedule();
      await plan('West', 1, { zone: null, hides: [{ mark: 'い通り貫', least: 'pegged' }] });
      expect(await list()).toMatchObject({ grid: null, places: [], placeless: [{ mark: 'い通り貫' }] });
    });

    it('is for people of the house', async () => {
      const { id } = await plan('West', 3);
      const elsewhere = await newHouse(owner, '別の家');
      const stranger = await server.join(elsewhere.id, `${randomUUID()}@example.org`);
      const hidden = { problem: { code: 'not-found' } };
      await expect(stranger.get(`/houses/${house.id}/shot-list`)).rejects.toMatchObject(hidden);
      await expect(stranger.get(`/coverings/${id}/wall-figures`)).rejects.toMatchObject(hidden);
    });
  });

  describe('published figures beside a wall', () => {
    const figures = ({ id }: CoveringView) => owner.get<WallFiguresView>(`/coverings/${id}/wall-figures`);

    it('say what the schedule says, what is published and where, and what cannot be told', async () => {
      const answer = await figures(await plan('West', 3));
      if (!answer.told) throw new Error(answer.because);
      const row = (rule: string) => answer.results.find((one) => one.rule === rule);
      expect(answer.caution).toMatch(/never an approval/u);
      expect(answer.ruleSet.source).toMatch(/Notification 1100/u);
      // 15 × 90: a rail of 100 mm at least is published (source beside tests/domain/frame/wall-check).
      expect(row('rail-width')).toMatchObject({
        ...{ measured: 90, verdict: 'differs', differing: ['い通り上の貫'] },
        figure: { at: 'least', limit: 100, unit: 'mm', read: 'summary' },
      });
      expect(row('rail-thickness')).toMatchObject({ measured: 15, verdict: 'as published' });
      expect(row('rail-spacing')).toMatchObject({ measured: 800, verdict: 'as published' });
      expect(row('rail-count')).toMatchObject({ measured: 2, verdict: 'differs' });
      expect(row('lath-size')).toMatchObject({ verdict: 'cannot be told', because: 'place-unknown' });
      expect(row('carrier-size')).toMatchObject({ verdict: 'cannot be told', because: 'none-in-schedule' });
    });

    it('do not count what is retired, and follow what the crew calls a rail', async () => {
      const west = await plan('West', 3);
      await owner.delete(`/houses/${house.id}/members/${encodeURIComponent('い通り上の貫')}`);
      const answer = await figures(west);
      if (!answer.told) throw new Error(answer.because);
      expect(answer.results.find(({ rule }) => rule === 'rail-count')?.measured).toBe(1);
    });

    it('are not for what is no wall, nor where its lines are not known', async () => {
      expect(await figures(await plan('By hand', 1, { zone: null }))).toEqual({
        ...{ told: false, because: 'no-wall' },
      });
      const flat = { shape: 'flat', corners: ['い一', 'ろ三'], bottom: 400, top: 460 };
      const floor = await plan('Floor', 1, { kind: 'floor', zone: flat });
      expect(await figures(floor)).toEqual({ told: false, because: 'no-wall' });
      const west = await plan('West', 1);
      await owner.put(`/houses/${house.id}/grid`, {
        ...GRID,
        first: { lines: lines(['X', 'Y']), runs: 'leftward' },
      });
      expect(await figures(west)).toEqual({ told: false, because: 'zone-impossible' });
    });
  });
});
