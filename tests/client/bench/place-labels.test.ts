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
  test('of two members in one region too thin for both lie on it, one after the other', () => {
    const thin = box(0.5, 0.1, 0.01, 0.5);
    const labels = drawn(
      [tag('a', 'い一', thin), tag('b', 'い二', thin), tag('c', 'い三', thin)],
      1000,
      0.75,
    );
    for (const { x, y, width, height } of labels) {
      expect(x).toBeLessThan(510);
      expect(x + width).toBeGreaterThan(500);
      expect(y + height).toBeGreaterThanOrEqual(75);
      expect(y).toBeLessThanOrEqual(450);
    }
  });
  test('lie on what they name, not in the empty corner of its box: a rail that runs away from the camera', () => {
    const region: Labelled['region'] = {
      shape: 'polygon',
      points: [
        [0.1, 0.78],
        [0.1, 0.7],
        [0.6, 0.2],
        [0.6, 0.21],
      ],
    };
    const [dx, dy] = placeLabels([tag('a', 'い通り腰貫', region)], 1000, 1).get('a') ?? [NaN, NaN];
    const { width, height } = labelSize('い通り腰貫');
    const [x, y] = [100 + dx + width / 2, 200 + dy + height / 2];
    // Between its lower edge, y = 780 − 1.14 (x − 100), and its upper one, y = 700 − (x − 100); at the near end.
    expect(y).toBeGreaterThan(700 - (x - 100));
    expect(y).toBeLessThan(780 - 1.14 * (x - 100));
    expect(x).toBeLessThan(350);
  });
  test('are wider for kanji than for as many Latin letters', () =>
    expect(labelSize('通柱').width).toBeGreaterThan(labelSize('AB').width));

  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const outline = fc.array(fc.tuple(share, share), { minLength: 3, maxLength: 8 });
  test('of outlines never lie on each other either, however those cross themselves', () => {
    fc.assert(
      fc.property(
        fc.array(outline, { maxLength: 15 }),
        fc.integer({ min: 300, max: 2000 }),
        (outlines, width) => {
          const tags = outlines.map((points, i) => tag(String(i), 'い一', { shape: 'polygon', points }));
          const at = placeLabels(tags, width, 0.75);
          const labels = outlines.map((points, i) => {
            const [dx, dy] = at.get(String(i)) ?? [NaN, NaN];
            const left = Math.min(...points.map(([x]) => x)) * width + dx;
            return { x: left, y: Math.min(...points.map(([, y]) => y)) * width * 0.75 + dy };
          });
          const { width: wide, height: high } = labelSize('い一');
          for (const [i, a] of labels.entries())
            for (const b of labels.slice(i + 1))
              expect(Math.min(wide - Math.abs(a.x - b.x), high - Math.abs(a.y - b.y))).toBeLessThan(1e-6);
        },
      ),
    );
  });

  const unit = fc.double({ min: 0, max: 0.8, noNaN: true });
  const side = fc.double({ min: 0.004, max: 0.2, noNaN: true });
  const mark = fc.constantFrom('い一', 'ろ又二', 'A-12', 'は又五通り東側小屋組二重梁上束');
  const some = fc.array(fc.tuple(mark, unit, unit, side, side), { maxLength: 25 });
  test('are whole in the picture', () => {
    fc.assert(
      fc.property(some, fc.integer({ min: 300, max: 4000 }), (drafts, width) => {
        const tags = drafts.map(([name, x, y, w, h], i) => tag(String(i), name, box(x, y, w, h)));
        for (const label of drawn(tags, width, 0.75)) {
          expect(label.x).toBeGreaterThanOrEqual(-1e-9);
          expect(label.x + label.width).toBeLessThanOrEqual(width + 1e-9);
          expect(label.y).toBeGreaterThanOrEqual(-1e-9);
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
