import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { FrameOfPhotoView, FrameView } from '#domain/contract/frame-views';
import type { ClosingReportView, ReportOfPhotoView } from '#domain/contract/report-views';
import type { HouseView, PhotoDetailView, TagView, UploadOutcome } from '#domain/contract/views';
import { STAGES } from '#domain/frame/stage';
import { amendFrame } from '../../client/screens/frame/amend-frame.ts';
import { amendReport } from '../../client/screens/report/amend-report.ts';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { releaseAsSeen } from '../support/release.ts';
import { oneOf, seeded } from '../support/seeded.ts';
import { newHouse, startServer, type Client, type TestServer } from '../support/server.ts';

const GRID = {
  first: { lines: ['い', 'ろ'].map((label, i) => ({ label, at: i * 1820 })), runs: 'leftward' },
  second: { lines: ['一', '二', '三'].map((label, i) => ({ label, at: i * 1820 })), runs: 'downward' },
  levels: [
    { label: '1F', height: 450 },
    { label: '軒', height: 3250 },
  ],
  unit: 'mm',
};
const MARKS = ['い一', 'い二', 'い三', 'い通り貫', '西の小舞', '無名'];
const SCHEDULE = [
  '番付,種類,始点,終点,階,下端',
  'い一,柱,い一,,1F,',
  'い二,柱,い二,,1F,',
  'い三,柱,い三,,1F,',
  'い通り貫,貫,い一,い三,1F,1350',
  '西の小舞,小舞,,,,',
].join('\n');
const WALL = { shape: 'wall', family: 'first', line: 'い', bottom: 450, top: 3250, face: 'both' };
const DAYS = ['2026-04-01', '2026-04-03', '2026-04-08', '2099-01-01'];

describeOverEitherDatabase(
  'a report and a frame of which only what a photo touches is read again',
  (make) => {
    let place: PlaceForDatabase;
    let server: TestServer;
    let owner: Client;
    let inspector: Client;
    let house: HouseView;
    const photos: string[] = [];
    let west: string;
    beforeAll(async () => {
      place = await make();
      server = await startServer(place);
      owner = server.owner;
      house = await newHouse(owner, '谷の舟小屋');
      inspector = await server.join(house.id, 'sato@example.org', 'inspector');
      await owner.put(`/houses/${house.id}/release-rule`, { fourEyes: false, reason: 'I build alone.' });
      await owner.put(`/houses/${house.id}/grid`, GRID);
      await owner.raw('POST', `/houses/${house.id}/schedule?fileName=frame.csv`, {
        body: SCHEDULE,
        headers: { 'content-type': 'text/csv' },
      });
      const plan = (name: string, facts: object) => {
        const id = randomUUID();
        const common = { id, name, kind: 'plaster', zone: null, hides: [], plannedDay: '2026-05-01' };
        return owner.post(`/houses/${house.id}/coverings`, { ...common, ...facts }).then(() => id);
      };
      west = await plan('West', { zone: { ...WALL, from: '一', to: '二', over: 'between-posts' } });
      await plan('North', { zone: { ...WALL, from: '二', to: '三', over: 'over-posts' } });
      const outer = await plan('Outer face', {
        zone: { ...WALL, face: 'lower', from: '一', to: '三', over: 'between-posts' },
      });
      await owner.post(`/coverings/${outer}/close`, {
        withoutRelease: 'Nobody inspects this house.',
        closedAt: '2026-04-02T03:00:00.000Z',
      });
      await plan('Lath', { hides: [{ mark: '西の小舞', least: 'lath-on' }], plannedDay: null });
      const closed = await plan('Closed', { hides: [{ mark: 'い一', least: 'pegged' }] });
      await owner.post(`/coverings/${closed}/close`, {
        withoutRelease: 'Nobody inspects this house.',
        closedAt: '2026-04-05T03:00:00.000Z',
      });
      for (const [i, day] of DAYS.entries()) {
        const bytes = await makeJpeg(7100 + i, takenAt(`${day}T09:30:00`));
        const { results } = await owner.upload<{ results: UploadOutcome[] }>(house.id, [
          { name: `${day}.jpg`, bytes },
        ]);
        const [outcome] = results;
        if (!outcome || outcome.outcome === 'refused') throw new Error('refused');
        photos.push(outcome.photo.id);
      }
    });
    afterAll(async () => {
      await server.close();
      await place.remove();
    });

    /** Of what is released, gaps and all: from then on a tag can take something from under the release. */
    const releaseWest = async () => {
      await owner.post(`/coverings/${west}/ready`, {});
      const waived = Object.fromEntries(MARKS.map((mark) => [mark, 'seen on site']));
      await releaseAsSeen(inspector, west, waived);
    };
    const standing = ({ days }: ClosingReportView) =>
      days.flatMap(({ coverings }) => coverings).find(({ id }) => id === west)?.standing.phase;
    const readReport = () => owner.get<ClosingReportView>(`/houses/${house.id}/closing-report`);
    const readFrame = () => owner.get<FrameView>(`/houses/${house.id}/frame`);
    const withoutTime = (report: ClosingReportView | null) => report && { ...report, asOf: '' };

    /** Legibility is measured by and by; a report read meanwhile would differ by that alone. */
    const measured = async (photo: string) => {
      const unmeasured = async () => {
        const { allTags } = await owner.get<PhotoDetailView>(`/photos/${photo}`);
        return allTags.filter(({ state, legibility }) => state === 'standing' && legibility.verdict === null)
          .length;
      };
      await expect.poll(unmeasured, { timeout: 20_000 }).toBe(0);
    };

    it('are what they are when read whole, after any act upon tags and dates', async () => {
      const chance = seeded(5);
      const pick = <T>(all: readonly T[]): T => oneOf(chance, all);
      const said: { tag: string; photo: string }[] = [];
      const words = () => {
        const mark = pick(MARKS);
        const stretch =
          mark === 'い通り貫' && chance() < 0.6 ? { from: 'い一', to: pick(['い二', 'い三']) } : null;
        const region = { shape: 'rectangle', x: chance() * 0.5, y: 0.2, w: 0.3, h: 0.4 };
        return { id: randomUUID(), mark, stage: pick(STAGES), stretch, region };
      };
      const acts: Record<string, () => Promise<string>> = {
        place: async () => {
          const photo = pick(photos);
          const { id: tag } = await owner.post<TagView>(`/photos/${photo}/tags`, words());
          said.push({ tag, photo });
          return photo;
        },
        supersede: async () => {
          const one = said.shift();
          if (!one) return acts['place']?.() ?? '';
          const { id: tag } = await owner.put<TagView>(`/tags/${one.tag}`, words());
          said.push({ tag, photo: one.photo });
          return one.photo;
        },
        withdraw: async () => {
          const one = said.shift();
          if (!one) return acts['place']?.() ?? '';
          await owner.delete(`/tags/${one.tag}`);
          return one.photo;
        },
        date: async () => {
          const photo = photos[3] ?? '';
          const date = { taken: `2026-04-0${pick([2, 4, 6])}T03:00:00.000Z`, withinS: 60, reason: 'diary' };
          await owner.put(`/photos/${photo}/date`, date);
          return photo;
        },
      };
      let [report, frame] = [await readReport(), await readFrame()];
      let changes = 0;
      let [whole, released] = [0, false];
      for (let i = 0; i < 60; i++) {
        if (i === 20 || (released && standing(report) === 'outrun')) {
          await releaseWest();
          [report, frame, released] = [await readReport(), await readFrame(), true];
        }
        const kind = pick(['place', 'place', 'place', 'supersede', 'withdraw', 'date']);
        const photo = (await acts[kind]?.()) ?? '';
        await measured(photo);
        const before = JSON.stringify([withoutTime(report), frame]);
        const amended = amendReport(
          report,
          await owner.get<ReportOfPhotoView>(`/photos/${photo}/closing-report`),
        );
        const drawn = amendFrame(frame, await owner.get<FrameOfPhotoView>(`/photos/${photo}/frame`));
        const phase = standing(report);
        [report, frame] = [await readReport(), await readFrame()];
        if (amended === null) expect([phase, standing(report)]).toContain('released');
        if (amended === null) whole += 1;
        else expect(withoutTime(amended), `${kind}, act ${String(i)}`).toEqual(withoutTime(report));
        expect(drawn, `${kind}, act ${String(i)}`).toEqual(frame);
        if (JSON.stringify([withoutTime(report), frame]) !== before) changes += 1;
      }
      expect(changes).toBeGreaterThan(20);
      // Only what can be outrun has to be read whole, and that not at every tag.
      expect(whole).toBeGreaterThan(0);
      expect(whole).toBeLessThan(15);
    });

    it('does not fit what it was not made of', async () => {
      const [report, frame] = [await readReport(), await readFrame()];
      const tag = {
        ...{ id: randomUUID(), mark: 'い一', stage: 'raised' },
        region: { shape: 'rectangle', x: 0, y: 0, w: 1, h: 1 },
      };
      await owner.post(`/photos/${photos[0]}/tags`, tag);
      const part = await owner.get<ReportOfPhotoView>(`/photos/${photos[0]}/closing-report`);
      const drawn = await owner.get<FrameOfPhotoView>(`/photos/${photos[0]}/frame`);
      expect(amendReport({ ...report, days: [] }, part)).toBeNull();
      expect(amendReport(report, { ...part, today: '2020-01-01' })).toBeNull();
      expect(amendFrame({ ...frame, members: [] }, drawn)).toBeNull();
      expect(amendFrame({ ...frame, coverings: [] }, drawn)).toBeNull();
      expect(amendFrame(frame, { ...drawn, today: '2020-01-01' })).toBeNull();
    });
  },
);
