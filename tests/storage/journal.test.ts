import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { MarkShape } from '#domain/contract/shapes';
import type { Stage } from '#domain/frame/stage';
import { closeCovering, planCovering, reopenCovering } from '../../server/services/coverings.ts';
import { writeNote } from '../../server/services/days.ts';
import { createHouse } from '../../server/services/houses.ts';
import { readEarlierDays, readJournal } from '../../server/services/journal.ts';
import { putMember } from '../../server/services/members.ts';
import { placeTag, supersedeTag, withdrawTag } from '../../server/services/tags.ts';
import { describeOverBothDatabases, type PlaceForDatabase } from '../support/databases.ts';
import { AKI, HARU, addPhoto, openRecord, type TestRecord } from '../support/record.ts';

const REGION = { shape: 'rectangle' as const, x: 0.1, y: 0.1, w: 0.2, h: 0.2 };

describeOverBothDatabases('the journal of a house', (make) => {
  let place: PlaceForDatabase;
  let record: TestRecord;
  let house: string;
  let seed = 1;
  beforeAll(async () => {
    place = await make();
    record = await openRecord(place.config);
  });
  afterAll(async () => {
    await record.close();
    await place.remove();
  });
  beforeEach(async () => {
    house = randomUUID();
    record.at('2026-04-01T00:00:00.000Z');
    const facts = { name: 'Boathouse', zone: 'Asia/Tokyo', firstDay: '2026-04-01', site: null };
    await createHouse(record.context, HARU, house, facts);
  });

  const photo = (wallTime: string | null) => addPhoto(record.context, house, seed++, { wallTime });
  const member = (mark: string, where = '北の壁') =>
    putMember(record.context, HARU, house, {
      mark: MarkShape.parse(mark),
      kind: '貫',
      name: '',
      place: where,
      track: null,
      note: '',
      other: {},
      setOut: null,
    });
  const tag = async (on: string, mark: string, stage: Stage) => {
    const id = randomUUID();
    const facts = { mark: MarkShape.parse(mark), stage, region: REGION, stretch: null, note: '' };
    await placeTag(record.context, HARU, { house, photo: on, tag: id }, facts);
    return id;
  };
  const plan = async (name: string, plannedDay: string | null, marks: string[]) => {
    const covering = randomUUID();
    const hides = marks.map((mark) => ({ mark: MarkShape.parse(mark), least: 'pegged' as const }));
    const facts = { name, kind: 'plaster' as const, plannedDay, hides, zone: null, except: [], note: '' };
    await planCovering(record.context, HARU, { house, covering }, facts);
    return covering;
  };
  const journal = () => readJournal(record.context, house);

  it('tells today and the last day with anything on it, in the zone of the house', async () => {
    record.at('2026-04-03T06:00:00.000Z');
    await member('い一');
    const early = await photo('2026-04-03T09:00:00');
    record.at('2026-04-05T06:00:00.000Z');
    await tag(early, 'い一', 'pegged');
    // 15:30 UTC is the next day in Tokyo.
    record.at('2026-04-06T15:30:00.000Z');
    const { today, lastDay, earlier } = await journal();
    expect(today).toMatchObject({ day: '2026-04-07', photos: 0, statements: 0, addedBy: [], taggedBy: [] });
    expect(lastDay).toMatchObject({ day: '2026-04-05', photos: 0, tags: 1, tagsElsewhere: 1 });
    expect(earlier.days.map(({ day }) => day)).toEqual(['2026-04-03', '2026-04-01']);
    expect(earlier.days[0]).toMatchObject({
      photos: 1,
      tags: 0,
      shown: [{ stage: 'pegged', members: 1, marks: ['い一'] }],
      addedBy: [HARU.name],
      taggedBy: [HARU.name],
    });
    expect(earlier.days[0]?.pictures).toMatchObject([
      { id: early, tags: 1, pictures: 'pending', instant: '2026-04-03T00:00:00.000Z' },
    ]);
  });

  it('counts what the photos of a day show once a member and stage, by the tags that stand', async () => {
    record.at('2026-04-03T06:00:00.000Z');
    const [one, two] = [await photo('2026-04-03T09:00:00'), await photo('2026-04-03T10:00:00')];
    await tag(one, 'い十', 'pegged');
    await tag(two, 'い十', 'pegged');
    await tag(two, 'い二', 'pegged');
    await tag(two, 'ろ一', 'raised');
    const wrong = await tag(two, 'は一', 'raised');
    await withdrawTag(record.context, HARU, { house, tag: wrong }, 'another one');
    const { today } = await journal();
    // In the order of marks, not of text: 二 before 十.
    expect(today.shown).toEqual([
      { stage: 'raised', members: 1, marks: ['ろ一'] },
      { stage: 'pegged', members: 2, marks: ['い二', 'い十'] },
    ]);
    expect(today).toMatchObject({ photos: 2, tags: 4, tagsElsewhere: 0 });
    expect(today.pictures.map(({ id }) => id)).toEqual([one, two]);
  });

  it('counts no tag twice that was undone or said anew, and names for tags who said them', async () => {
    record.at('2026-04-03T06:00:00.000Z');
    const added = await photo('2026-04-03T09:00:00');
    const place = { house, photo: added };
    const facts = {
      mark: MarkShape.parse('い三'),
      stage: 'pegged' as const,
      region: REGION,
      stretch: null,
      note: '',
    };
    const [first, second, undone] = [randomUUID(), randomUUID(), randomUUID()];
    await placeTag(record.context, AKI, { ...place, tag: first }, facts);
    await placeTag(
      record.context,
      AKI,
      { ...place, tag: undone },
      { ...facts, mark: MarkShape.parse('い四') },
    );
    await withdrawTag(record.context, HARU, { house, tag: undone }, '');
    record.at('2026-04-04T06:00:00.000Z');
    await supersedeTag(record.context, AKI, { house, tag: second, supersedes: first }, facts);
    await member('い九');
    const { today, lastDay } = await journal();
    expect(lastDay).toMatchObject({ tags: 0, addedBy: [HARU.name], taggedBy: [AKI.name] });
    // Who entered a member tagged nothing.
    expect(today).toMatchObject({ tags: 1, tagsElsewhere: 1, addedBy: [], taggedBy: [AKI.name] });
  });

  it('keeps photos of impossible date out of the days, and tells them apart', async () => {
    record.at('2026-04-03T06:00:00.000Z');
    const before = await photo('2002-02-24T13:00:00');
    const future = await photo('2027-01-01T13:00:00');
    await tag(before, 'い一', 'pegged');
    await photo(null);
    const { today, lastDay, earlier, waiting } = await journal();
    expect([today.day, lastDay?.day, earlier.days]).toEqual(['2026-04-03', '2026-04-01', []]);
    expect(today).toMatchObject({ photos: 0, tags: 1, tagsElsewhere: 1, shown: [] });
    expect(waiting).toMatchObject({ undated: 1, untagged: 2, impossible: { photos: 2 } });
    expect(
      waiting.impossible.days.map(({ day, doubt, photos, pictures }) => [
        day,
        doubt,
        photos,
        pictures[0]?.id,
      ]),
    ).toEqual([
      ['2027-01-01', 'after-upload', 1, future],
      ['2002-02-24', 'before-first-day', 1, before],
    ]);
  });

  it('pages backwards through every day once', async () => {
    for (let day = 1; day <= 9; day++) {
      record.at(`2026-04-0${day}T03:00:00.000Z`);
      await photo(`2026-04-0${day}T10:00:00`);
    }
    const pages: string[][] = [];
    let before: string | null = '2026-04-10';
    while (before !== null) {
      const page: { days: { day: string }[]; next: string | null } = await readEarlierDays(
        record.context,
        house,
        before,
        4,
      );
      pages.push(page.days.map(({ day }) => day.slice(-2)));
      before = page.next;
    }
    expect(pages).toEqual([['09', '08', '07', '06'], ['05', '04', '03', '02'], ['01']]);
  });

  it('tells notes: whole today, cut on other days, and those of days to come', async () => {
    const long = '栓'.repeat(2000);
    await writeNote(record.context, AKI, house, '2026-04-02', long);
    await writeNote(record.context, AKI, house, '2026-04-03', long);
    await writeNote(record.context, HARU, house, '2026-04-03', '');
    await writeNote(record.context, AKI, house, '2026-04-09', 'Crane at eight.');
    record.at('2026-04-03T03:00:00.000Z');
    const { today, lastDay, ahead } = await journal();
    expect(today.notes).toMatchObject([{ text: long, cut: false, by: { id: AKI.id } }]);
    expect(lastDay).toMatchObject({ day: '2026-04-02', statements: 0 });
    expect(lastDay?.notes[0]?.cut).toBe(true);
    expect(lastDay?.notes[0]?.text.length).toBeLessThan(2000);
    expect(ahead).toMatchObject([{ day: '2026-04-09', notes: [{ text: 'Crane at eight.' }] }]);
  });

  it('tells what closes next, and what has closed on its day', async () => {
    for (const mark of ['い一', 'い二', 'い三']) await member(mark);
    await tag(await photo('2026-04-01T08:30:00'), 'い一', 'pegged');
    await tag(await photo('2026-04-01T08:30:00'), 'い二', 'raised');
    await plan('Loft floor', null, ['い三']);
    await plan('North wall', '2026-04-10', ['い一', 'い二', 'い三']);
    const shut = await plan('South wall', '2026-04-02', ['い三']);
    record.at('2026-04-04T03:00:00.000Z');
    await closeCovering(
      record.context,
      HARU,
      { house, covering: shut },
      { closedAt: '2026-04-02T03:00:00.000Z', note: '', withoutRelease: 'Nobody inspects this house.' },
    );
    const { next, openCoverings, earlier } = await journal();
    expect(openCoverings).toBe(2);
    expect(next.gaps.map(({ name, daysLeft }) => [name, daysLeft])).toEqual([['North wall', 6]]);
    expect(next.later.coverings.map(({ name, daysLeft }) => [name, daysLeft])).toEqual([
      ['Loft floor', null],
    ]);
    expect(next.gaps[0]).toMatchObject({ counts: { hidden: 3, onRecord: 1, gaps: 2 }, more: 0 });
    expect(next.gaps[0]?.missing.map(({ mark, nearestMiss }) => [mark, nearestMiss?.reasons])).toEqual([
      ['い二', ['before-stage']],
      ['い三', ['no-photo']],
    ]);
    const days = [(await journal()).lastDay, ...earlier.days];
    expect(days.find((day) => day?.day === '2026-04-02')?.closed).toEqual([
      { id: shut, name: 'South wall', phase: 'without-release' },
    ]);
  });

  it('says of a covering that it changed when it closed and when that was taken back', async () => {
    await member('い一');
    const covering = await plan('North wall', null, ['い一']);
    const changedAt = async () => (await record.context.store.read.covering(covering))?.changedAt;
    record.at('2026-04-05T00:00:00.000Z');
    await closeCovering(
      record.context,
      HARU,
      { house, covering },
      { closedAt: null, note: '', withoutRelease: 'Nobody inspects this house.' },
    );
    expect((await changedAt())?.slice(0, 10)).toBe('2026-04-05');
    record.at('2026-04-06T00:00:00.000Z');
    await reopenCovering(record.context, HARU, { house, covering }, 'said too early');
    expect((await changedAt())?.slice(0, 10)).toBe('2026-04-06');
  });
});
