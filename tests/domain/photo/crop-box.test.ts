import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cropOf } from '#domain/photo/crop-box';
import { boundingBox, type Region } from '#domain/photo/region';

const PHOTO = { width: 1600, height: 1200 };
const rectangle = (x: number, y: number, w: number, h: number): Region => ({
  shape: 'rectangle',
  x,
  y,
  w,
  h,
});

describe('what is cut out around a region', () => {
  it('has a margin of an eighth on each side', () => {
    const { box, outline } = cropOf(rectangle(0.4, 0.4, 0.16, 0.16), PHOTO);
    expect([box.x, box.y, box.w, box.h].map((v) => v.toFixed(3))).toEqual([
      '0.380',
      '0.380',
      '0.200',
      '0.200',
    ]);
    expect(outline).toBeUndefined();
  });

  it('has as much beside a long rail as makes three to one of it, in pixels', () => {
    // 1000 by 48 px with its margins, so 1000 by 333.
    const rail = rectangle(0.25, 0.5, 0.5, 0.032);
    const { box, outline } = cropOf(rail, PHOTO);
    expect(outline).toBe(rail);
    expect((box.w * PHOTO.width) / (box.h * PHOTO.height)).toBeCloseTo(3, 9);
    expect(box.y + box.h / 2).toBeCloseTo(0.516, 9);
  });

  it('is moved into the photo at its edge, and does the same of a post', () => {
    const post = rectangle(0, 0, 0.02, 1);
    const { box, outline } = cropOf(post, PHOTO);
    expect(outline).toBe(post);
    expect(box).toMatchObject({ x: 0, y: 0, h: 1 });
    expect(box.w * PHOTO.width).toBeCloseTo(1200 / 3, 9);
  });

  it('holds the region, stays in the photo, and is no strip where the photo is none', () => {
    const side = fc.integer({ min: 1, max: 1000 });
    fc.assert(
      fc.property(
        ...[side, side, side, side],
        fc.integer({ min: 100, max: 9000 }),
        fc.integer({ min: 100, max: 9000 }),
        (left, top, across, down, width, height) => {
          const [x, y] = [left / 1001, top / 1001];
          const region = rectangle(x, y, ((1 - x) * across) / 1000, ((1 - y) * down) / 1000);
          const seen = boundingBox(region);
          const { box } = cropOf(region, { width, height });
          const noise = 1e-9;
          expect(box.x).toBeLessThanOrEqual(seen.x + noise);
          expect(box.y).toBeLessThanOrEqual(seen.y + noise);
          expect(box.x + box.w).toBeGreaterThanOrEqual(seen.x + seen.w - noise);
          expect(box.y + box.h).toBeGreaterThanOrEqual(seen.y + seen.h - noise);
          expect(Math.min(box.x, box.y)).toBeGreaterThanOrEqual(0);
          expect(Math.max(box.x + box.w, box.y + box.h)).toBeLessThanOrEqual(1 + noise);
          const [wide, high] = [box.w * width, box.h * height];
          if (Math.max(width, height) <= 3 * Math.min(width, height))
            expect(Math.max(wide, high) / Math.min(wide, high)).toBeLessThanOrEqual(3 + noise);
        },
      ),
    );
  });
});
