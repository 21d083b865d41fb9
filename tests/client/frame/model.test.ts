import { describe, expect, it } from 'vitest';
import { dayAfter, dayWithin, nextChange } from '../../../client/screens/frame/day-steps.ts';
import { fitsIn, NO_FILTER } from '../../../client/screens/frame/frame-filter.ts';
import {
  addressOf,
  countGaps,
  frameModel,
  gapsOn,
  marksIn,
  sheetOf,
} from '../../../client/screens/frame/frame-model.ts';
import { hiddenWords } from '../../../client/screens/frame/hidden-words.ts';
import { zoneLook } from '../../../client/screens/frame/zone-look.ts';
import { mirrored } from '#domain/frame/drawing/mirrored';
import { axisBetween, BAY } from '../../support/some-grid.ts';
import { wordsOf } from '../words.ts';
import { plaster, someFrame, TODAY, wall } from './some-frame.ts';

const model = someFrame();
const [first] = model.sheets;

describe('the frame of a house', () => {
  it('has its drawings in the order of the grid, then the plans', () => {
    expect(model.sheets.map(({ key }) => key)).toEqual([
      ...['first:い', 'second:三'],
      ...['level:1F', 'level:2F', 'level:軒'],
    ]);
    expect(model.unplaced.map(({ mark }) => mark)).toEqual(['無']);
    expect(model.days).toEqual(['2026-04-02', '2026-04-10']);
  });

  it('leaves out what is retired', () => {
    const axis = axisBetween([BAY, 0, 450], [BAY, 0, 3250]);
    const { sheets } = someFrame([{ mark: 'ろ一', axis, retired: true }]);
    expect(sheets.map(({ key }) => key)).not.toContain('first:ろ');
  });

  it('keeps its drawings after a tag, and makes them anew once something has moved', () => {
    const { frame } = model;
    const members = frame.members.map((member) => ({ ...member, seen: [] }));
    expect(frameModel({ ...frame, members }).sheets).toBe(model.sheets);
    const moved = members.map((member) => ({ ...member, axis: member.axis && { ...member.axis } }));
    expect(frameModel({ ...frame, members: moved }).sheets).not.toBe(model.sheets);
    const again = frameModel(frame).sheets;
    const zoneless = frame.coverings.map((covering) => ({ ...covering, zone: null }));
    expect(frameModel({ ...frame, coverings: zoneless }).sheets).not.toBe(again);
    expect(frameModel({ ...frame, members: members.slice(1) }).sheets).not.toBe(again);
  });

  it('lists what a sheet tells in the order of the grid, not of characters', () => {
    const at = (mark: string, y: number) => ({ mark, axis: axisBetween([0, y, 0], [0, y, 3000]) });
    const posts = [at('い四', 3 * BAY), at('い二', BAY), at('い又二', 1.5 * BAY)];
    const [elevation] = someFrame(posts).sheets;
    if (!elevation) throw new Error('no sheet');
    const marks = marksIn(elevation).filter((mark) => /^い又?[二三四]$/u.test(mark));
    expect(marks).toEqual(['い二', 'い又二', 'い三', 'い四']);
  });

  it('counts the gaps of a sheet, not of what only goes through it', () => {
    const gaps = gapsOn(model, TODAY);
    expect(model.sheets.map((sheet) => countGaps(sheet, gaps))).toEqual([1, 0, 0, 0, 0]);
    const closed = someFrame([], [plaster({ closedDay: '2026-04-25' })]);
    expect([...gapsOn(closed, '2026-04-24')]).toEqual(['い貫']);
    expect([...gapsOn(closed, '2026-04-25')]).toEqual([]);
  });

  it('finds the sheet that an address says, and else shows the first', () => {
    expect(sheetOf(model.sheets, '三', null)?.key).toBe('second:三');
    expect(sheetOf(model.sheets, null, '2F')?.key).toBe('level:2F');
    expect(sheetOf(model.sheets, 'ん', null)).toBe(first);
    for (const sheet of model.sheets) {
      const address = addressOf(model.sheets, sheet);
      const line = 'line' in address ? address.line : null;
      expect(sheetOf(model.sheets, line, 'level' in address ? address.level : null)).toBe(sheet);
    }
  });

  it('shows only what fits all that was asked for', () => {
    expect(fitsIn(NO_FILTER, model, TODAY)).toBeNull();
    const fits = fitsIn({ ...NO_FILTER, stage: 'raised' }, model, TODAY);
    expect(['い三', 'い貫', '三梁'].map((mark) => fits?.(mark))).toEqual([true, false, false]);
    const none = fitsIn({ ...NO_FILTER, stage: 'none', kind: '柱' }, model, '2026-04-01');
    expect(['い三', 'い貫'].map((mark) => none?.(mark))).toEqual([true, true]);
  });
});

describe('what is missing of a member', () => {
  const wordsOn = async (day: string, lang: 'en' | 'ja' = 'en', of = model) => {
    const [hides] = of.hides.get('い貫') ?? [];
    return hides ? hiddenWords(await wordsOf(lang), lang, of, hides, day) : '';
  };

  it('is named by its lines and measured: two of three bays of 1820 mm', async () => {
    expect(await wordsOn(TODAY)).toBe('North wall: a gap, missing from 二 to 四, 3.64 m of 5.46 m');
    expect(await wordsOn(TODAY, 'ja')).toContain('二〜四の記録がない（5.46 m のうち 3.64 m）');
  });

  it('is all of it before any photo showed the least stage', async () => {
    expect(await wordsOn('2026-04-09')).toContain('from 一 to 四, 5.46 m of 5.46 m');
  });

  it('says no parts of what is missing whole and has no lines to be named by', async () => {
    const short = [{ from: 0, to: 400 }];
    const of = { ...someFrame([], [plaster({}, { stretches: short, missing: short })]), reader: null };
    expect(await wordsOn(TODAY, 'en', of)).toBe('North wall: a gap');
    const half = { stretches: short, missing: [{ from: 0, to: 200 }] };
    const some = { ...someFrame([], [plaster({}, half)]), reader: null };
    expect(await wordsOn(TODAY, 'en', some)).toContain('0.20 m of 0.40 m');
  });

  it('says since when it is on record', async () => {
    const state = { state: 'on-record', missing: [], onRecordSince: '2026-04-10' };
    const complete = someFrame([], [plaster({}, state)]);
    expect(await wordsOn(TODAY, 'en', complete)).toBe('North wall: on record since Fri, 10 Apr 2026');
    expect(await wordsOn('2026-04-09', 'en', complete)).toBe('North wall: not on record on that day');
  });
});

describe('a zone on a day', () => {
  it('tells how long its members can still be photographed, then that it closed', async () => {
    const t = await wordsOf('en');
    const of = someFrame([], [plaster({ plannedDay: '2026-04-20', closedDay: '2026-04-25' })]);
    const on = (day: string) => zoneLook(t, 'en', of, day, 'c', 'lower');
    expect(on('2026-04-18')).toMatchObject({ text: 'North wall, 2 days left', isClosed: false });
    expect(on('2026-04-20').text).toBe('North wall, today');
    expect(on('2026-04-21').text).toBe('North wall, 1 day past its planned day');
    expect(on('2026-04-25')).toMatchObject({ text: 'North wall, closed Sat, 25 Apr 2026', isClosed: true });
  });

  it('that closed on one face is drawn so from that side alone', async () => {
    const zone = { ...wall, face: 'higher' };
    const of = someFrame([], [plaster({ zone, closedDay: '2026-04-25' })]);
    const t = await wordsOf('ja');
    const from = (side: 'lower' | 'higher' | null, day = '2026-04-25') =>
      zoneLook(t, 'ja', of, day, 'c', side);
    expect(from('higher')).toMatchObject({ isClosed: true, text: expect.not.stringContaining('裏側') });
    expect(from('lower')).toMatchObject({ isClosed: false, text: expect.stringContaining('裏側') });
    // From above both faces are edges.
    expect(from(null)).toMatchObject({ isClosed: true });
    expect(from('lower', '2026-04-24').text).not.toContain('裏側');
    // Lines that count leftward: an elevation is seen from the right of the plan, where the first of them stand.
    const [sheet] = of.sheets;
    expect(sheet && [sheet.seenFrom, mirrored(sheet).seenFrom]).toEqual(['lower', 'higher']);
  });
});

describe('the days', () => {
  it('are counted over the end of a month and a leap day', () => {
    expect(dayAfter('2028-02-28', 1)).toBe('2028-02-29');
    expect(dayAfter('2026-12-31', 1)).toBe('2027-01-01');
  });

  it('are kept between the first photo and today', () => {
    const within = (asked: string | null) => dayWithin(asked, '2026-04-02', TODAY);
    expect([null, 'soon', '2026-99-99', '2020-01-01', '2030-01-01', '2026-04-05'].map(within)).toEqual([
      ...[TODAY, TODAY, TODAY, '2026-04-02', TODAY, '2026-04-05'],
    ]);
  });

  it('are stepped through from change to change, today last', () => {
    const step = (day: string, way: 1 | -1) => nextChange(model.days, TODAY, day, way);
    expect(step(TODAY, -1)).toBe('2026-04-10');
    expect(step('2026-04-05', -1)).toBe('2026-04-02');
    expect(step('2026-04-02', -1)).toBeNull();
    expect(step('2026-04-10', 1)).toBe(TODAY);
    expect(step(TODAY, 1)).toBeNull();
  });
});
