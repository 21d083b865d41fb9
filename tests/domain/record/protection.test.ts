import { describe, expect, it } from 'vitest';
import { clearOf, liesAt, sheetedAt } from '#domain/record/protection';

const day = (n: number, hour = 3) =>
  `2026-04-${String(n).padStart(2, '0')}T${String(hour).padStart(2, '0')}:00:00.000Z`;
const HOUR = 3600;
/** Sheets over a sill from the 4th to the 6th. */
const sheets = { stretch: null, laidAt: day(4), liftedAt: day(6) };
const lay = (instant: string, uncertaintyS: number, over = sheets) =>
  sheetedAt(instant, uncertaintyS, [over]).map(({ isSure }) => (isSure ? 'surely' : 'perhaps'));

describe('sheets over a sill, and a photo', () => {
  it.each([
    ['of the day before', day(3), 0, []],
    ['as they are laid', day(4), 0, ['surely']],
    ['while they lie', day(5), 12 * HOUR, ['surely']],
    ['as they are lifted', day(6), 0, []],
    ['of an hour before the lifting, to the hour', day(6, 2), HOUR, ['surely']],
    ['of an hour before the lifting, less sure', day(6, 2), HOUR + 1, ['perhaps']],
    ['of an hour after the lifting, to the hour', day(6, 4), HOUR, []],
    ['of an hour after the lifting, less sure', day(6, 4), HOUR + 1, ['perhaps']],
    ['of an hour before the laying, to the hour', day(4, 2), HOUR, []],
    ['known to a week', day(5), 7 * 24 * HOUR, ['perhaps']],
  ])('%s', (_, instant, within, expected) => expect(lay(instant, within)).toEqual(expected));

  it('lies on while nobody has lifted it', () =>
    expect(sheetedAt(day(30), 0, [{ ...sheets, liftedAt: null }])).toEqual([
      { stretch: null, isSure: true },
    ]));
  it('never lay there when it was lifted as it was laid', () =>
    expect(lay(day(4), 24 * HOUR, { ...sheets, liftedAt: day(4) })).toEqual([]));
});

describe('what of a sill of 3640 mm stays bare', () => {
  const shown = { from: 0, to: 3640 };
  const over = (...stretches: ({ from: number; to: number } | null)[]) =>
    clearOf(
      shown,
      stretches.map((stretch) => ({ stretch, isSure: true })),
    );
  it('all of it beside nothing', () => expect(over()).toEqual([shown]));
  it('nothing under what lies over all', () => expect(over({ from: 0, to: 910 }, null)).toEqual([]));
  it('what lies between two sheets', () =>
    expect(over({ from: 0, to: 910 }, { from: 1820, to: 3640 })).toEqual([{ from: 910, to: 1820 }]));
  it('no sliver that nobody sets out by', () => expect(over({ from: 4, to: 3640 })).toEqual([]));
});

it('lies there from the laying on and no more from the lifting on', () => {
  expect([day(4), day(5)].map((at) => liesAt(sheets, at))).toEqual([true, true]);
  expect([day(3), day(6)].map((at) => liesAt(sheets, at))).toEqual([false, false]);
});
