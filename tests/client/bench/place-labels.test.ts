import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { labelSize, placeLabels, type Labelled } from '../../../client/screens/bench/place-labels.ts';

const box = (x: number, y: number, w: number, h: number) => ({ shape: 'rectangle', x, y, w, h }) as const;
const tag = (id: string, mark: string, region: Labelled['region']): Labelled => ({ id, mark, region });

/** The labels as they lie on the screen. */
function drawn(tags: readonly Labelled[], width: number, tallness: number) {
  const at = placeLabels(tags, width, tallness);
  return tags.map(({ id, mark, region }) => {
    if (region.shape !== 'rectangle') throw new Error('Boxes only.');
    const [dx, dy] = at.get(id) ?? [NaN, NaN];
    return { x: region.x * width + dx, y: region.y * width * tallness + dy, ...labelSize(mark) };
  });
}

describe('labels on the picture', () => {
  test('stand at the corner of their region where nothing is in the way', () => {
    const tags = [tag('a', 'い一', box(0.1, 0.1, 0.2, 0.2)), tag('b', 'い二', box(0.6, 0.1, 0.2, 0.2))];
    expect([...placeLabels(tags, 1000, 0.75)]).toEqual([
      ['a', [0, 0]],
      ['b', [0, 0]],
    ]);
  });
  test('of two members in one region go to two of its corners', () => {
    const both = box(0.1, 0.1, 0.2, 0.2);
    const at = placeLabels([tag('a', 'い一', both), tag('b', 'い二', both)], 1000, 0.75);
    expect(at.get('a')).toEqual([0, 0]);
    const [dx, dy] = at.get('b') ?? [NaN, NaN];
    expect(dx).toBeCloseTo(200 - labelSize('い二').width);
    expect(dy).toBe(0);
  });
  test('spread when the picture is seen small and go home when it is near', () => {
    const tags = [tag('a', 'い一', box(0.1, 0.1, 0.05, 0.2)), tag('b', 'い二', box(0.12, 0.1, 0.05, 0.2))];
    expect(placeLabels(tags, 300, 0.75).get('b')).not.toEqual([0, 0]);
    expect(placeLabels(tags, 6000, 0.75).get('b')).toEqual([0, 0]);
  });
  test('are wider for kanji than for as many Latin letters', () =>
    expect(labelSize('通柱').width).toBeGreaterThan(labelSize('AB').width));

  const unit = fc.double({ min: 0, max: 0.8, noNaN: true });
  const side = fc.double({ min: 0.004, max: 0.2, noNaN: true });
  const mark = fc.constantFrom('い一', 'ろ又二', 'A-12', 'は又五通り東側小屋組二重梁上束');
  const some = fc.array(fc.tuple(mark, unit, unit, side, side), { maxLength: 25 });
  test('are whole at the right edge of the picture', () => {
    fc.assert(
      fc.property(some, fc.integer({ min: 300, max: 4000 }), (drafts, width) => {
        const tags = drafts.map(([name, x, y, w, h], i) => tag(String(i), name, box(x, y, w, h)));
        for (const label of drawn(tags, width, 0.75)) {
          expect(label.x).toBeGreaterThanOrEqual(-1e-9);
          expect(label.x + label.width).toBeLessThanOrEqual(width + 1e-9);
        }
      }),
    );
  });
  test('never lie on each other', () => {
    fc.assert(
      fc.property(some, fc.integer({ min: 200, max: 4000 }), (drafts, width) => {
        const tags = drafts.map(([name, x, y, w, h], i) => tag(String(i), name, box(x, y, w, h)));
        const labels = drawn(tags, width, 0.75);
        for (const [i, a] of labels.entries())
          for (const b of labels.slice(i + 1)) {
            const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
            const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
            // As two sums of the same lengths may differ in their last digits.
            expect(Math.min(across, down)).toBeLessThan(1e-6);
          }
      }),
    );
  });
  test('stay where they are whatever the order of the tags', () => {
    fc.assert(
      fc.property(some, (drafts) => {
        const tags = drafts.map(([name, x, y, w, h], i) => tag(String(i), name, box(x, y, w, h)));
        const [one, two] = [placeLabels(tags, 800, 0.75), placeLabels([...tags].reverse(), 800, 0.75)];
        for (const { id } of tags) expect(one.get(id)).toEqual(two.get(id));
      }),
    );
  });
});
