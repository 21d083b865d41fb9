import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import type { FindingsView } from '#domain/contract/findings';
import type { FrameView } from '#domain/contract/frame-views';
import type { JournalView } from '#domain/contract/journal-views';
import type { ClosingReportView } from '#domain/contract/report-views';
import type { ReleaseView, ReviewLineView, ReviewView } from '#domain/contract/review-views';
import type {
  CoveringView,
  HouseView,
  MemberHistoryView,
  TagView,
  UploadOutcome,
} from '#domain/contract/views';
import { describeOverBothDatabases, type PlaceForDatabase } from '../support/databases.ts';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { addPhoto } from '../support/release.ts';
import { codeOf, newHouse, startServer, type Client, type TestServer } from '../support/server.ts';

const REGION = { shape: 'rectangle', x: 0.1, y: 0.1, w: 0.4, h: 0.4 };
const MARKS = ['い一', 'い二', 'い三'] as const;

describeOverBothDatabases('the hold before a covering closes', (make) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  let owner: Client;
  let carpenter: Client;
  let inspector: Client;
  let house: HouseView;
  let photo: string;
  let covering: string;

  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
    owner = server.owner;
    house = await newHouse(owner, '谷の舟小屋');
    carpenter = await server.join(house.id, 'haru@example.org');
    inspector = await server.join(house.id, 'sato@example.org', 'inspector');
    for (const mark of MARKS)
      await owner.put(`/houses/${house.id}/members/${encodeURIComponent(mark)}`, { kind: '柱' });
    const bytes = await makeJpeg(61, takenAt('2026-04-01T09:30:00'));
    const { results } = await carpenter.upload<{ results: UploadOutcome[] }>(house.id, [
      { name: 'north.jpg', bytes },
    ]);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error('refused');
    photo = outcome.photo.id;
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
  });

  const plan = async (marks: readonly string[]) => {
    const id = randomUUID();
    const hides = marks.map((mark) => ({ mark, least: 'raised' }));
    const facts = { name: 'North wall', kind: 'plaster', plannedDay: '2099-05-01', hides };
    await owner.post(`/houses/${house.id}/coverings`, { id, ...facts });
    return id;
  };
  /** Once its region is measured: what a machine finds out later is news to whoever reviews. */
  const tag = async (who: Client, mark: string, stage = 'raised') => {
    const placed = await who.post<TagView>(`/photos/${photo}/tags`, {
      ...{ id: randomUUID(), mark, stage, region: REGION },
    });
    const verdict = async () => {
      const { allTags } = await owner.get<{ allTags: TagView[] }>(`/photos/${photo}`);
      return allTags.find(({ id }) => id === placed.id)?.legibility.verdict;
    };
    await expect.poll(verdict, { timeout: 20_000, interval: 30 }).not.toBeNull();
    return placed;
  };
  const ready = (id = covering) => carpenter.post<CoveringView>(`/coverings/${id}/ready`, {});
  const review = (who = inspector, id = covering) => who.get<ReviewView>(`/coverings/${id}/review`);
  const asSeen = (lines: readonly ReviewLineView[], waived: Record<string, string> = {}) =>
    lines.map(({ mark, basis }) => ({ mark, basis, waived: waived[mark] ?? null }));
  const release = (who: Client, members: unknown, id: string = randomUUID(), of = covering) =>
    who.post<ReleaseView>(`/coverings/${of}/releases`, { id, members });
  const read = async (id = covering) =>
    (await owner.get<{ coverings: CoveringView[] }>(`/houses/${house.id}/coverings`)).coverings.find(
      (one) => one.id === id,
    );
  const standing = async (id = covering) => {
    const { days } = await owner.get<ClosingReportView>(`/houses/${house.id}/closing-report`);
    return days.flatMap(({ coverings }) => coverings).find((one) => one.id === id)?.standing;
  };
  const withdrawAll = async () => {
    const { allTags } = await owner.get<{ allTags: TagView[] }>(`/photos/${photo}`);
    for (const { id, state } of allTags) if (state === 'standing') await owner.delete(`/tags/${id}`);
  };

  beforeEach(async () => {
    await withdrawAll();
    covering = await plan(MARKS);
  });

  it('goes from planned over ready to released, and closes under the release', async () => {
    const tags = [];
    for (const mark of MARKS) tags.push((await tag(carpenter, mark)).id);
    expect((await read())?.hold).toMatchObject({ state: 'planned', said: null, release: null });
    expect(await codeOf(release(inspector, []))).toBe('not-ready');
    expect((await ready()).hold).toMatchObject({ state: 'ready', said: { by: { name: 'haru' } } });
    const { lines, evidence } = await review();
    expect(lines.map(({ mark, state, own }) => [mark, state, own])).toEqual(
      MARKS.map((mark) => [mark, 'on-record', false]),
    );
    expect(evidence.map((one) => [one.tag.id, one.fileName]).sort()).toEqual(
      tags.map((id) => [id, 'north.jpg']).sort(),
    );
    const { size, head } = await owner.get<{ size: number; head: string }>(`/houses/${house.id}/ledger`);
    const released = await release(inspector, asSeen(lines));
    expect(released).toMatchObject({
      head: { size, hash: head },
      seq: size,
      by: { name: 'sato' },
      since: [],
    });
    expect(released.hides.flatMap((member) => member.tags).sort()).toEqual([...tags].sort());
    const closed = await carpenter.post<CoveringView>(`/coverings/${covering}/close`, {});
    expect(closed.closed).toMatchObject({ release: released.id, without: null });
    expect(await findings('closed-without-release')).toEqual([]);
  });

  const findings = async (kind: string) =>
    (await owner.get<FindingsView>(`/houses/${house.id}/findings?kind=${kind}`)).findings.filter(
      (found) => found.covering === covering || found.tags.some(({ photo: on }) => on === photo),
    );

  it('closes without release only with a reason, which stays on record and is a finding', async () => {
    expect(await codeOf(carpenter.post(`/coverings/${covering}/close`, {}))).toBe('not-released');
    expect((await read())?.closed).toBeNull();
    const closed = await carpenter.post<CoveringView>(`/coverings/${covering}/close`, {
      withoutRelease: 'Rain was coming.',
    });
    expect(closed.closed).toMatchObject({ release: null, without: 'Rain was coming.' });
    expect(await findings('closed-without-release')).toMatchObject([{ facts: { why: 'Rain was coming.' } }]);
  });

  it('is not released by a word of later than the closing, nor is anything accepted by it', async () => {
    for (const mark of MARKS.slice(1)) await tag(carpenter, mark);
    await ready();
    const late = await release(inspector, asSeen((await review()).lines, { い一: 'seen on site' }));
    expect(await standing()).toMatchObject({ phase: 'released' });
    const close = (withoutRelease: string | null) =>
      carpenter.post<CoveringView>(`/coverings/${covering}/close`, {
        closedAt: '2026-04-02T03:00:00.000Z',
        withoutRelease,
      });
    expect(await codeOf(close(null))).toBe('not-released');
    expect((await close('The plasterers were early.')).closed).toMatchObject({ release: null });
    expect(await standing()).toMatchObject({
      phase: 'without-release',
      without: 'The plasterers were early.',
    });
    expect((await read())?.hold.release).toBe(late.id);
    const { days } = await owner.get<ClosingReportView>(`/houses/${house.id}/closing-report`);
    const found = days.flatMap(({ coverings }) => coverings).find(({ id }) => id === covering);
    expect(found?.lines.find(({ mark }) => mark === 'い一')).toMatchObject({ state: 'lost', waiver: null });
    const { coverings } = await owner.get<MemberHistoryView>(`/houses/${house.id}/members/い一`);
    expect(coverings.find(({ id }) => id === covering)?.waiver).toBeNull();
  });

  it('is refused with what is missing, and released once that is there or waived by name', async () => {
    await tag(carpenter, 'い一');
    await ready();
    const refusal = { lacking: [{ mark: 'い二', note: 'no photo of the peg' }], note: 'See い二.' };
    expect(await codeOf(inspector.post(`/coverings/${covering}/refusal`, { lacking: [] }))).toBe(
      'invalid-request',
    );
    const other = { lacking: [{ mark: 'へ九', note: '' }] };
    expect(await codeOf(inspector.post(`/coverings/${covering}/refusal`, other))).toBe('not-hidden');
    const waiting = async () =>
      (await carpenter.get<JournalView>(`/houses/${house.id}/journal`)).holds
        .filter(({ id }) => id === covering)
        .map(({ state }) => state);
    expect(await waiting()).toEqual(['ready']);
    const refused = await inspector.post<CoveringView>(`/coverings/${covering}/refusal`, refusal);
    expect(await waiting()).toEqual(['refused']);
    expect(refused.hold).toMatchObject({ state: 'refused', lacking: refusal.lacking });
    await tag(carpenter, 'い二');
    await ready();
    const { lines } = await review();
    expect(await codeOf(release(inspector, asSeen(lines).slice(1)))).toBe('not-reviewed');
    expect(await codeOf(release(inspector, asSeen(lines)))).toBe('not-waived');
    const waived = { い三: 'Seen on site, stands dry.', い一: 'not needed' };
    const { waived: kept, hides } = await release(inspector, asSeen(lines, waived));
    expect(kept).toEqual([{ mark: 'い三', reason: 'Seen on site, stands dry.' }]);
    expect(hides.map(({ mark, state }) => [mark, state]).sort()).toEqual([
      ['い一', 'on-record'],
      ['い三', 'waived'],
      ['い二', 'on-record'],
    ]);
  });

  it('calls what was waived accepted by name and reason wherever it is told of, until the release is taken back', async () => {
    for (const mark of ['い一', 'い二']) await tag(carpenter, mark);
    await ready();
    const reason = 'Seen on site, stands dry.';
    const released = await release(inspector, asSeen((await review()).lines, { い三: reason }));
    const waiver = { release: released.id, at: released.at, by: released.by, reason, takenBack: null };
    const reported = async () => {
      const { days } = await owner.get<ClosingReportView>(`/houses/${house.id}/closing-report`);
      const found = days.flatMap(({ coverings }) => coverings).find(({ id }) => id === covering);
      const line = found?.lines.find(({ mark }) => mark === 'い三');
      return { ...found?.counts, standing: found?.standing, line };
    };
    expect(await reported()).toMatchObject({ hidden: 3, onRecord: 2, gaps: 0, lost: 0, waived: 1 });
    expect((await reported()).line).toMatchObject({ state: 'waived', waiver });
    await carpenter.post(`/coverings/${covering}/close`, {});
    expect((await reported()).line).toMatchObject({ state: 'waived', waiver });
    expect(await findings('closed-with-gaps')).toEqual([]);
    const { coverings } = await owner.get<MemberHistoryView>(`/houses/${house.id}/members/い三`);
    expect(coverings.find(({ id }) => id === covering)?.waiver).toEqual(waiver);
    const { coverings: drawn } = await owner.get<FrameView>(`/houses/${house.id}/frame`);
    const onFrame = drawn.find(({ id }) => id === covering)?.hides.find(({ mark }) => mark === 'い三');
    expect(onFrame).toMatchObject({ state: 'waived', waivedDay: expect.any(String) as string });

    await inspector.delete(
      `/releases/${released.id}?reason=${encodeURIComponent('It was い四 that I saw.')}`,
    );
    const takenBack = { by: { name: 'sato' }, reason: 'It was い四 that I saw.' };
    expect(await reported()).toMatchObject({
      ...{ lost: 1, waived: 0, standing: { phase: 'under-taken-back', takenBack } },
      line: { state: 'lost', waiver: { reason, takenBack } },
    });
    expect((await read())?.closed).toMatchObject({ release: released.id, takenBack });
    const history = await owner.get<MemberHistoryView>(`/houses/${house.id}/members/い三`);
    expect(history.statements.at(-1)).toMatchObject({ kind: 'release.withdrawn' });
    const { coverings: after } = history;
    expect(after.find(({ id }) => id === covering)?.waiver).toMatchObject({ takenBack });
    const sheet = await owner.raw('GET', `/houses/${house.id}/closing-report?format=csv&lang=en`);
    const rows = (await sheet.text()).split('\r\n').filter((row) => row.includes('taken back since'));
    expect(rows).toHaveLength(3);
    expect(rows.find((row) => row.includes('い三'))).toMatch(
      /accepted by sato on .*: Seen on site, stands dry\.; release taken back by sato on .*: It was い四 that I saw\./u,
    );
    expect(await findings('closed-with-gaps')).toMatchObject([{ facts: { count: 1 } }]);
    expect(await findings('release-taken-back')).toMatchObject([
      { facts: { by: 'sato', reason: 'It was い四 that I saw.' } },
    ]);
  });

  it('wants whoever releases to have seen what speaks for a member as it stands', async () => {
    for (const mark of MARKS) await tag(carpenter, mark);
    await ready();
    const { lines } = await review();
    await tag(carpenter, 'い二');
    expect(await codeOf(release(inspector, asSeen(lines)))).toBe('evidence-changed');
    await release(inspector, asSeen((await review()).lines));
  });

  it('lets nobody release what they alone recorded, until the keeper says otherwise', async () => {
    for (const mark of MARKS) await tag(mark === 'い二' ? owner : carpenter, mark);
    await ready();
    const { lines } = await review(owner);
    expect(lines.filter(({ own }) => own).map(({ mark }) => mark)).toEqual(['い二']);
    expect(await codeOf(release(owner, asSeen(lines)))).toBe('four-eyes');
    expect(await codeOf(carpenter.put(`/houses/${house.id}/release-rule`, rule(false)))).toBe(
      'not-permitted',
    );
    await owner.put(`/houses/${house.id}/release-rule`, rule(false));
    expect((await release(owner, asSeen(lines))).fourEyes).toBe(false);
    await owner.put(`/houses/${house.id}/release-rule`, rule(true));
  });

  it('lets nobody release what they said themselves to be ready, until the keeper says otherwise', async () => {
    for (const mark of MARKS) await tag(carpenter, mark);
    await owner.post(`/coverings/${covering}/ready`, {});
    const { lines, ownReady } = await review(owner);
    expect(ownReady).toBe(true);
    expect(await codeOf(release(owner, asSeen(lines)))).toBe('ready-by-oneself');
    expect((await review()).ownReady).toBe(false);
    await release(inspector, asSeen((await review()).lines));
  });
  const rule = (fourEyes: boolean) => ({ fourEyes, reason: 'I build alone.' });

  it('lets carpenters release nothing, and inspectors record nothing', async () => {
    await ready();
    expect(await codeOf(release(carpenter, []))).toBe('not-permitted');
    expect(await codeOf(tag(inspector, 'い一'))).toBe('not-permitted');
    const placed = await tag(carpenter, 'い一');
    expect(await codeOf(carpenter.post(`/tags/${placed.id}/dispute`, { reason: 'no' }))).toBe(
      'not-permitted',
    );
    expect(await codeOf(inspector.post(`/coverings/${covering}/close`, {}))).toBe('not-permitted');
  });

  it('does not count a disputed tag until somebody answers', async () => {
    const placed = await tag(carpenter, 'い一');
    const lineOf = async () => (await review()).lines.find(({ mark }) => mark === 'い一');
    expect((await lineOf())?.state).toBe('on-record');
    const disputed = await inspector.post<TagView>(`/tags/${placed.id}/dispute`, { reason: 'This is い二.' });
    expect(disputed.disputed).toMatchObject({ by: { name: 'sato' }, reason: 'This is い二.' });
    expect(await lineOf()).toMatchObject({ state: 'gap', nearestMiss: { reasons: ['disputed'] } });
    const [found] = await findings('disputed');
    const answer = { findings: [{ key: found?.key, basis: found?.basis }], reason: 'The ink mark is い一.' };
    expect(found?.taggedBy).toMatchObject({ name: 'haru' });
    // Whoever said the tag is not the one who answers for it.
    expect(await codeOf(carpenter.post(`/houses/${house.id}/findings/accept`, answer))).toBe(
      'doubt-of-own-tag',
    );
    expect((await lineOf())?.state).toBe('gap');
    await owner.post(`/houses/${house.id}/findings/accept`, answer);
    const line = await lineOf();
    expect(line?.state).toBe('on-record');
    expect(line?.records[0]?.findings).toEqual([
      {
        kind: 'disputed',
        accepted: { by: 'owner', reason: 'The ink mark is い一.' },
        doubt: { by: 'sato', reason: 'This is い二.' },
      },
    ]);
    const report = await owner.raw('GET', `/houses/${house.id}/closing-report?format=csv&lang=en`);
    expect(await report.text()).toContain(
      'doubted by sato: This is い二.; answered by owner: The ink mark is い一.',
    );
    // Doubted anew, in the same words, it is another doubt.
    await inspector.post(`/tags/${placed.id}/dispute`, { reason: 'This is い二.' });
    expect((await lineOf())?.state).toBe('gap');
    // Alone on a house, one may.
    await owner.put(`/houses/${house.id}/release-rule`, { fourEyes: false, reason: 'I build alone.' });
    const [again] = await findings('disputed');
    const own = { findings: [{ key: again?.key, basis: again?.basis }], reason: 'It is い一.' };
    await carpenter.post(`/houses/${house.id}/findings/accept`, own);
    expect((await lineOf())?.state).toBe('on-record');
    await owner.put(`/houses/${house.id}/release-rule`, { fourEyes: true, reason: 'Not any more.' });
    await owner.delete(`/tags/${placed.id}`);
    expect(await codeOf(inspector.post(`/tags/${placed.id}/dispute`, { reason: 'no' }))).toBe(
      'tag-not-standing',
    );
    expect(await findings('disputed')).toEqual([]);
  });

  it('keeps a release as it was said, and shows beside it what has changed', async () => {
    const first = await tag(carpenter, 'い一');
    const others = [await tag(carpenter, 'い二'), await tag(carpenter, 'い三')];
    await ready();
    const released = await release(inspector, asSeen((await review()).lines));
    const better = await carpenter.put<TagView>(`/tags/${first.id}`, {
      ...{ id: randomUUID(), mark: 'い一', stage: 'pegged', region: REGION },
    });
    const now = await inspector.get<ReleaseView>(`/releases/${released.id}`);
    const { since: _, evidence: __, ...said } = now;
    const { since: ___, evidence: ____, ...before } = released;
    expect(said).toEqual(before);
    expect(now.since).toEqual([{ mark: 'い一', what: 'records', gone: [first.id], come: [better.id] }]);
    expect(now.evidence.map((one) => [one.tag.id, one.tag.state]).sort()).toEqual(
      [[first.id, 'superseded'], [better.id, 'standing'], ...others.map(({ id }) => [id, 'standing'])].sort(),
    );
  });

  it('does not close under a release of less than it hides', async () => {
    for (const mark of MARKS) await tag(carpenter, mark);
    const id = await plan(['い一', 'い二']);
    await ready(id);
    const { id: given } = await release(
      inspector,
      asSeen((await review(inspector, id)).lines),
      undefined,
      id,
    );
    const hides = MARKS.map((mark) => ({ mark, least: 'raised' }));
    await owner.put(`/coverings/${id}`, { name: 'North wall', kind: 'plaster', hides });
    expect((await owner.get<ReleaseView>(`/releases/${given}`)).since).toMatchObject([
      { mark: 'い三', what: 'hidden-since' },
    ]);
    const refused = await owner.raw('POST', `/coverings/${id}/close`, {
      body: '{}',
      headers: { 'content-type': 'application/json' },
    });
    expect(await refused.json()).toMatchObject({ code: 'released-for-less', params: { marks: 'い三' } });
  });

  it('is outrun by a doubt: it is ready anew, or closes only with a reason', async () => {
    const tags = [];
    for (const mark of MARKS) tags.push((await tag(carpenter, mark)).id);
    await ready();
    const first = await release(inspector, asSeen((await review()).lines, {}));
    await inspector.post(`/tags/${tags[0]}/dispute`, { reason: 'This is い四.' });
    expect(await standing()).toMatchObject({ phase: 'outrun', beyond: ['い一'] });
    expect((await review()).standing).toMatchObject({ phase: 'outrun' });
    const sheet = await owner.get<ReleaseView>(`/releases/${first.id}`);
    expect(sheet).toMatchObject({
      beyond: ['い一'],
      doubtsSince: [{ mark: 'い一', what: 'doubted', by: { name: 'sato' }, reason: 'This is い四.' }],
    });
    // An answer would give the release back its word: that is for whoever gave it.
    const [found] = await findings('disputed');
    const answer = { findings: [{ key: found?.key, basis: found?.basis }], reason: 'It is い一.' };
    expect(await codeOf(owner.post(`/houses/${house.id}/findings/accept`, answer))).toBe(
      'doubt-under-release',
    );
    await inspector.post(`/houses/${house.id}/findings/accept`, answer);
    expect(await standing()).toMatchObject({ phase: 'released', beyond: [] });
    const after = await owner.get<ReleaseView>(`/releases/${first.id}`);
    expect(after.beyond).toEqual([]);
    expect(after.doubtsSince.map(({ what, by }) => [what, by?.name])).toEqual([
      ['doubted', 'sato'],
      ['answered', 'sato'],
    ]);
    await inspector.post(`/tags/${tags[0]}/dispute`, { reason: 'It is い四 after all.' });
    const { holds } = await owner.get<JournalView>(`/houses/${house.id}/journal`);
    expect(holds).toContainEqual({ id: covering, name: 'North wall', state: 'outrun' });
    expect(await codeOf(carpenter.post(`/coverings/${covering}/close`, {}))).toBe('released-for-less');

    expect((await ready()).hold).toMatchObject({ state: 'ready', release: null });
    await inspector.post(`/coverings/${covering}/refusal`, { lacking: [{ mark: 'い一' }] });
    await ready();
    const { lines, lastRefusal } = await review();
    expect(lastRefusal).toMatchObject({ takenBack: false, lacking: [{ mark: 'い一' }] });
    const second = await release(inspector, asSeen(lines, { い一: 'seen on site' }));
    expect(await standing()).toMatchObject({ phase: 'released', beyond: [] });
    const closed = await carpenter.post<CoveringView>(`/coverings/${covering}/close`, {});
    expect(closed.closed).toMatchObject({ release: second.id, without: null });
    expect(first.ended).toBeNull();
    expect(await owner.get<ReleaseView>(`/releases/${first.id}`)).toMatchObject({
      ...{ withdrawn: null, ended: { by: { name: 'haru' } } },
    });
    expect((await owner.get<ReleaseView>(`/releases/${second.id}`)).ended).toBeNull();
    const { today } = await owner.get<JournalView>(`/houses/${house.id}/journal`);
    const said = today.inspected.map(({ what }) => what);
    expect(today.inspected).toEqual(
      expect.arrayContaining([
        { what: 'ready', names: ['North wall'], count: 1 },
        { what: 'refused', names: ['North wall'], count: 1 },
        { what: 'released', names: ['North wall'], count: 1 },
        { what: 'doubted', names: ['い一'], count: 1 },
        { what: 'answered', names: ['い一'], count: 1 },
      ]),
    );
    // As it went: nobody answers a doubt that was not said yet.
    expect(said.indexOf('doubted')).toBeLessThan(said.indexOf('answered'));
    expect(said.indexOf('ready')).toBeLessThan(said.indexOf('released'));
  });

  it('closes on an outrun release with a reason, as one that closed without', async () => {
    const placed = await tag(carpenter, 'い一');
    const id = await plan(['い一']);
    await ready(id);
    await release(inspector, asSeen((await review(inspector, id)).lines), undefined, id);
    await inspector.post(`/tags/${placed.id}/dispute`, { reason: 'This is い四.' });
    const closed = await carpenter.post<CoveringView>(`/coverings/${id}/close`, {
      withoutRelease: 'The plasterers had begun.',
    });
    expect(closed.closed).toMatchObject({ release: null, without: 'The plasterers had begun.' });
    expect(await standing(id)).toMatchObject({ phase: 'without-release', beyond: [] });
  });

  it('takes a release back with a reason; it stays on record', async () => {
    for (const mark of MARKS) await tag(carpenter, mark);
    await ready();
    const { id } = await release(inspector, asSeen((await review()).lines));
    expect(await codeOf(ready())).toBe('already-released');
    const reason = encodeURIComponent('The wrong wall.');
    expect(await codeOf(carpenter.delete(`/releases/${id}?reason=${reason}`))).toBe('not-permitted');
    const back = await inspector.delete<ReleaseView>(`/releases/${id}?reason=${reason}`);
    expect(back.withdrawn).toMatchObject({ reason: 'The wrong wall.', by: { name: 'sato' } });
    expect((await read())?.hold).toMatchObject({
      state: 'refused',
      said: { note: 'The wrong wall.' },
      release: null,
    });
    expect(await codeOf(carpenter.post(`/coverings/${covering}/close`, {}))).toBe('not-released');
    // Ready after that, it is not what ended it.
    await ready();
    expect((await inspector.get<ReleaseView>(`/releases/${id}`)).ended).toBeNull();
  });

  it('says in the next review what was refused last, by whom and why, and whether anything was said since', async () => {
    for (const mark of MARKS.slice(0, 2)) await tag(carpenter, mark);
    await ready();
    expect(await review()).toMatchObject({ lastRefusal: null, lastWaived: null });
    const lacking = [
      { mark: 'い三', note: 'another photo' },
      { mark: 'い二', note: '' },
    ];
    await inspector.post(`/coverings/${covering}/refusal`, { lacking, note: 'Come back on Monday.' });
    await tag(carpenter, 'い三');
    await ready();
    const said = { by: { name: 'sato' }, note: 'Come back on Monday.', takenBack: false };
    expect((await review()).lastRefusal).toMatchObject({
      ...said,
      lacking: [
        { mark: 'い三', note: 'another photo', saidSince: true },
        { mark: 'い二', note: '', saidSince: false },
      ],
    });
    await owner.delete(`/coverings/${covering}/ready?reason=${encodeURIComponent('Not yet.')}`);
    await ready();
    expect((await review()).lastRefusal).toMatchObject(said);
  });

  it('says that the evidence of a refused member was dated since', async () => {
    const undated = await addPhoto(carpenter, house.id, 'no-date.jpg', await makeJpeg(62));
    const facts = { id: randomUUID(), mark: 'い一', stage: 'raised', region: REGION };
    const { id } = await carpenter.post<TagView>(`/photos/${undated}/tags`, facts);
    await ready();
    await inspector.post(`/coverings/${covering}/refusal`, { lacking: [{ mark: 'い一' }] });
    const saidSince = async () => (await review()).lastRefusal?.lacking.map((one) => one.saidSince);
    expect(await saidSince()).toEqual([false]);
    const dating = { taken: '2026-04-02T01:00:00.000Z', withinS: 60, reason: 'From the diary.' };
    await owner.put(`/photos/${undated}/date`, dating);
    expect(await saidSince()).toEqual([true]);
    await owner.delete(`/tags/${id}`);
  });

  it('says in the next review that a release was taken back, and what it had accepted', async () => {
    for (const mark of MARKS.slice(1)) await tag(carpenter, mark);
    await ready();
    const { lines } = await review();
    const { id } = await release(inspector, asSeen(lines, { い一: 'seen on site' }));
    expect(await review()).toMatchObject({ lastRefusal: null, lastWaived: null });
    await inspector.delete(`/releases/${id}?reason=${encodeURIComponent('The wrong wall.')}`);
    await ready();
    expect(await review()).toMatchObject({
      lastRefusal: { by: { name: 'sato' }, note: 'The wrong wall.', takenBack: true, lacking: [] },
      lastWaived: { by: { name: 'sato' }, waived: [{ mark: 'い一', reason: 'seen on site' }] },
    });
    // A later refusal is the last one; what was accepted is still offered.
    await inspector.post(`/coverings/${covering}/refusal`, { lacking: [{ mark: 'い二' }] });
    await ready();
    expect(await review()).toMatchObject({
      lastRefusal: { takenBack: false, lacking: [{ mark: 'い二' }] },
      lastWaived: { waived: [{ mark: 'い一' }] },
    });
  });

  it('repeats nothing that comes twice, and refuses an id with another content', async () => {
    for (const mark of MARKS) await tag(carpenter, mark);
    await ready();
    await ready();
    const { lines } = await review();
    const id = randomUUID();
    const once = await release(inspector, asSeen(lines), id);
    const twice = await release(inspector, asSeen(lines), id);
    expect(twice).toEqual(once);
    const other = inspector.post(`/coverings/${covering}/releases`, {
      id,
      members: asSeen(lines),
      note: 'x',
    });
    expect(await codeOf(other)).toBe('id-used-for-something-else');
    expect(await codeOf(release(inspector, asSeen(lines)))).toBe('already-released');
    const { entries } = await owner.get<{ entries: { kind: string; payload: { covering?: string } }[] }>(
      `/houses/${house.id}/ledger?limit=500`,
    );
    const said = entries.filter(({ payload }) => payload.covering === covering).map(({ kind }) => kind);
    expect(said).toEqual(['covering.planned', 'covering.ready', 'covering.released']);
  });
});
