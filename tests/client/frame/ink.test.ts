import { describe, expect, it } from 'vitest';
import { inkOf } from '../../../client/screens/frame/ink.ts';
import { zoneLabels } from '../../../client/screens/frame/zone-labels.ts';
import { plaster, someFrame, TODAY } from './some-frame.ts';

const model = someFrame();
const [sheet] = model.sheets;
const inkOn = (day: string, of = model, fits: ((mark: string) => boolean) | null = null) =>
  inkOf(of.sheets[0] ?? sheet!, of, day, fits);

describe('the ink of a sheet', () => {
  it('puts each member into the path of its stage on that day', () => {
    const early = inkOn('2026-04-03');
    expect(early.raised).toBe('M-3580 -450L-3580 -3250L-3700 -3250L-3700 -450Z');
    expect(early.pegged).toBe('');
    expect(inkOn(TODAY).pegged).not.toBe('');
    expect(inkOn('2026-04-01').none.match(/Z/g)).toHaveLength(2);
  });

  it('draws what is missing along exactly that stretch, and what is on record along the rest', () => {
    const { gap, held } = inkOn(TODAY);
    // From 二 at 1820 mm to 四 at 5460, leftward; 105 mm high about 1250 mm.
    expect(gap).toBe('M-1820 -1302L-5460 -1302L-5460 -1197L-1820 -1197Z');
    expect(held).toBe('M0 -1250L-1820 -1250');
  });

  it('says nothing of single parts on a day of the past, but that all was missing before any photo', () => {
    expect(inkOn('2026-04-20')).toMatchObject({ held: '' });
    expect(inkOn('2026-04-09').gap).toContain('L-5460');
    expect(inkOn('2026-04-09').gap).toMatch(/^M-?0 /);
  });

  it('tells lost from a gap once the covering has closed, and later record from none', () => {
    const closed = someFrame([], [plaster({ closedDay: '2026-04-25' })]);
    expect(inkOn('2026-04-25', closed)).toMatchObject({ gap: '' });
    expect(inkOn('2026-04-25', closed).lost).not.toBe('');
    // Struck out: an outline with two strokes.
    expect(inkOn('2026-04-25', closed).lost.match(/M/g)?.length).toBe(3);
    const since = { state: 'on-record', missing: [], onRecordSince: '2026-04-10' };
    const complete = someFrame([], [plaster({}, since)]);
    expect(inkOn('2026-04-09', complete)['not-yet']).not.toBe('');
    expect(inkOn('2026-04-10', complete)).toMatchObject({ 'not-yet': '', held: 'M0 -1250L-5460 -1250' });
  });

  it('shows what goes through lightly, and what does not fit pale', () => {
    expect(inkOn(TODAY).through.match(/Z/g)).toHaveLength(1);
    const narrowed = inkOn(TODAY, model, (mark) => mark === 'い三');
    expect(narrowed.pale.match(/Z/g)).toHaveLength(2);
    expect(narrowed).toMatchObject({ gap: '', through: '' });
  });
});

describe('the names of zones', () => {
  const corners = [
    { u: 0, v: 0 },
    { u: 1000, v: 0 },
    { u: 1000, v: 800 },
    { u: 0, v: 800 },
  ];
  const zones = [
    { covering: 'a', corners },
    { covering: 'b', corners },
  ];

  const look = (name: string) => ({ name, text: `${name}、あと3日` });

  it('stay within the window, where their zones reach out of it', () => {
    const seen = { left: 800, right: 1600, top: -400, bottom: 300 };
    const [label] = zoneLabels(zones.slice(0, 1), () => look('北の壁'), 2, seen);
    expect(label?.u).toBeGreaterThanOrEqual(seen.left);
    expect((label?.v ?? 0) + (label?.height ?? 0)).toBeLessThanOrEqual(seen.bottom);
  });

  it('go up where there is no room further down, and the first keep theirs where there is none at all', () => {
    const seen = { left: -400, right: 1600, top: 335, bottom: 425 };
    const found = zoneLabels([...zones, { covering: 'c', corners }], (id) => look(id), 2, seen);
    // Two rows of 40 mm in a window of 90.
    expect(found.map(({ covering }) => covering)).toEqual(['a', 'b']);
    for (const { v, height } of found) {
      expect(v).toBeGreaterThanOrEqual(seen.top);
      expect(v + height).toBeLessThanOrEqual(seen.bottom);
    }
  });

  it('are written across a wall that is long and thin in plan', () => {
    const wall = [
      { u: 0, v: 0 },
      { u: 150, v: 0 },
      { u: 150, v: 7000 },
      { u: 0, v: 7000 },
    ];
    expect(zoneLabels([{ covering: 'w', corners: wall }], () => look('西の壁'), 10)).toMatchObject([
      { text: '西の壁、あと3日' },
    ]);
  });

  it('do not lie over each other', () => {
    const [a, b] = zoneLabels(zones, (id) => look(`wall ${id}`), 2);
    expect(Math.abs(a!.v - b!.v)).toBeGreaterThanOrEqual(a!.height);
  });

  it('are cut to the width of their zone, and left out where nothing of them fits', () => {
    const texts = (unit: number) =>
      zoneLabels(zones, () => look('北の壁 荒壁 裏返し前'), unit).map(({ text }) => text);
    expect(texts(2)[0]).toBe('北の壁 荒壁 裏返し前、あと3日');
    expect(texts(6)[0]).toBe('北の壁 荒壁 裏返し前');
    expect(texts(10)[0]).toMatch(/^北の.*…$/);
    expect(texts(50)).toEqual([]);
  });
});
