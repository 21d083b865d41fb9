import { randomUUID } from 'node:crypto';
import { afterAll, beforeEach, expect, it } from 'vitest';
import { MarkShape } from '#domain/contract/shapes';
import type { Stage } from '#domain/frame/stage';
import { closeCovering, planCovering, reopenCovering } from '../../server/services/coverings.ts';
import { acceptFindings, listFindings, reopenFinding } from '../../server/services/findings.ts';
import { changeHouse, createHouse } from '../../server/services/houses.ts';
import { putMember } from '../../server/services/members.ts';
import { readClosingReport } from '../../server/services/report.ts';
import { placeTag, withdrawTag } from '../../server/services/tags.ts';
import { describeOverBothDatabases, type PlaceForDatabase } from '../support/databases.ts';
import { AKI, HARU, addPhoto, openRecord, type TestRecord } from '../support/record.ts';

const region = { shape: 'rectangle' as const, x: 0.1, y: 0.1, w: 0.3, h: 0.3 };
const mark = (text: string) => MarkShape.parse(text);

describeOverBothDatabases('findings', (make) => {
  let place: PlaceForDatabase | undefined;
  let record: TestRecord;
  let house: string;
  let seed = 0;

  beforeEach(async () => {
    if (!place) {
      place = await make();
      record = await openRecord(place.config);
    }
    record.at('2026-05-01T00:00:00.000Z');
    house = randomUUID();
    const facts = { name: 'Boathouse', zone: 'Asia/Tokyo', firstDay: '2026-03-01', site: null };
    await createHouse(record.context, HARU, house, facts);
    for (const text of ['い一', 'い二'])
      await putMember(record.context, HARU, house, {
        ...{
          mark: mark(text),
          kind: 'nuki',
          name: '',
          place: '',
          track: null,
          note: '',
          other: {},
          setOut: null,
        },
      });
  });
  afterAll(async () => {
    await record.close();
    await place?.remove();
  });

  const photo = (wallTime: string | null) => addPhoto(record.context, house, ++seed, { wallTime });
  const tag = async (on: string, text: string, stage: Stage) => {
    const id = randomUUID();
    const where = { house, photo: on, tag: id };
    await placeTag(record.context, HARU, where, { mark: mark(text), stage, region, stretch: null, note: '' });
    return id;
  };
  const all = (filter = {}) => listFindings(record.context, house, { offset: 0, limit: 50, ...filter });
  const kinds = async () => (await all()).findings.map(({ kind }) => kind);
  const state = async (text: string) => {
    const { days } = await readClosingReport(record.context, house);
    const line = days.flatMap((d) => d.coverings.flatMap((c) => c.lines)).find((l) => l.mark === text);
    return [line?.state, line?.nearestMiss?.reasons];
  };
  const plan = async (marks: readonly string[]) => {
    const covering = randomUUID();
    const hides = marks.map((text) => ({ mark: mark(text), least: 'pegged' as const }));
    const plain = { name: 'North wall', kind: 'plaster' as const, plannedDay: '2026-05-09', note: '' };
    const facts = { ...plain, hides, zone: null, except: [] };
    await planCovering(record.context, HARU, { house, covering }, facts);
    return { house, covering };
  };

  it('come with the tag that contradicts, stop both from counting, and go with it', async () => {
    await plan(['い一']);
    await tag(await photo('2026-04-01T09:00:00'), 'い一', 'pegged');
    expect(await state('い一')).toEqual(['on-record', undefined]);
    const wrong = await tag(await photo('2026-04-02T09:00:00'), 'い一', 'cut');
    expect(await kinds()).toEqual(['stage-goes-back']);
    expect(await state('い一')).toEqual(['gap', ['contradicted']]);
    await withdrawTag(record.context, HARU, { house, tag: wrong }, 'another rail');
    expect(await kinds()).toEqual([]);
    expect(await state('い一')).toEqual(['on-record', undefined]);
  });

  it('can be accepted by name, count then, and come up again when what they rest on changes', async () => {
    await plan(['い一']);
    await tag(await photo('2026-04-01T09:00:00'), 'い一', 'pegged');
    await tag(await photo('2026-04-02T09:00:00'), 'い一', 'cut');
    const [finding] = (await all()).findings;
    if (!finding) throw new Error('No finding.');
    const answer = { findings: [finding], reason: 'a test piece' };
    await acceptFindings(record.context, AKI, house, answer);
    await acceptFindings(record.context, AKI, house, answer);
    expect((await all()).counts).toEqual([{ kind: 'stage-goes-back', open: 0, accepted: 1 }]);
    expect((await all({ state: 'accepted' })).findings).toMatchObject([
      { answer: { by: { name: AKI.name }, reason: 'a test piece', stands: true } },
    ]);
    expect(await state('い一')).toEqual(['on-record', undefined]);
    const about = await record.context.store.read.entriesAbout(house, 'member:い一');
    expect(about.filter(({ kind }) => kind === 'findings.accepted')).toHaveLength(1);

    await tag(await photo('2026-04-03T09:00:00'), 'い一', 'raised');
    const [again] = (await all({ state: 'open' })).findings;
    expect(again).toMatchObject({ answer: { stands: false }, tags: { length: 3 } });
    expect(await state('い一')).toEqual(['gap', ['contradicted']]);
    await expect(acceptFindings(record.context, AKI, house, answer)).rejects.toMatchObject({
      code: 'finding-changed',
    });
  });

  it('can be taken up again, and then stop the record again', async () => {
    await plan(['い一']);
    await tag(await photo('2026-04-01T09:00:00'), 'い一', 'pegged');
    await tag(await photo('2026-04-02T09:00:00'), 'い一', 'cut');
    const { findings } = await all();
    await acceptFindings(record.context, AKI, house, { findings, reason: 'as it is' });
    const reopened = await reopenFinding(record.context, HARU, house, {
      key: findings[0]?.key ?? '',
      reason: 'looked again',
    });
    expect(reopened.answer).toBeNull();
    expect(await state('い一')).toEqual(['gap', ['contradicted']]);
  });

  it('of a closed covering follow its members, the schedule and the closing', async () => {
    const covering = await plan(['い一', 'い二']);
    await tag(await photo('2026-04-01T09:00:00'), 'い一', 'pegged');
    await closeCovering(record.context, HARU, covering, {
      closedAt: '2026-04-20T03:00:00.000Z',
      note: '',
      withoutRelease: 'Nobody inspects this house.',
    });
    const unreleased = { kind: 'closed-without-release', facts: { why: 'Nobody inspects this house.' } };
    expect((await all()).findings).toMatchObject([{ kind: 'closed-with-gaps', marks: ['い二'] }, unreleased]);
    // A photo from before the closing that turns up later is a record all the same.
    await tag(await photo('2026-04-02T09:00:00'), 'い二', 'pegged');
    expect(await kinds()).toEqual(['closed-without-release']);
    await tag(await photo('2026-04-25T09:00:00'), 'い二', 'pegged');
    expect((await all()).findings).toMatchObject([
      { kind: 'shown-after-closing', marks: ['い二'] },
      unreleased,
    ]);
    await reopenCovering(record.context, HARU, covering, 'said too early');
    expect(await kinds()).toEqual([]);
  });

  it('of unknown marks go when the schedule has them; those of dates when the house is corrected', async () => {
    await tag(await photo('2026-02-01T09:00:00'), 'ほ九', 'pegged');
    await photo(null);
    expect(await kinds()).toEqual(['before-first-day', 'no-date', 'unknown-mark']);
    await putMember(record.context, HARU, house, {
      ...{
        mark: mark('ほ九'),
        kind: 'nuki',
        name: '',
        place: '',
        track: null,
        note: '',
        other: {},
        setOut: null,
      },
    });
    await changeHouse(record.context, HARU, house, { firstDay: '2026-01-01' });
    expect(await kinds()).toEqual(['no-date']);
  });

  it('are listed by kind, page by page, and by what they are about', async () => {
    const undated = [await photo(null), await photo(null), await photo(null)];
    const page = await all({ limit: 2 });
    expect([page.findings.length, page.next]).toEqual([2, 2]);
    expect((await all({ offset: 2, limit: 2 })).next).toBeNull();
    expect((await all({ photo: undated[1] })).findings).toMatchObject([
      { photos: [undated[1]], shown: [{ id: undated[1] }] },
    ]);
    expect((await all({ mark: 'い一' })).findings).toEqual([]);
    expect((await all({ kind: 'unreadable' })).findings).toEqual([]);
  });

  it('of another house cannot be answered here', async () => {
    await photo(null);
    const { findings } = await all();
    const other = randomUUID();
    const facts = { name: 'Shed', zone: 'Asia/Tokyo', firstDay: null, site: null };
    await createHouse(record.context, HARU, other, facts);
    const answer = { findings, reason: 'not mine' };
    await expect(acceptFindings(record.context, HARU, other, answer)).rejects.toMatchObject({
      code: 'finding-changed',
    });
  });
});
