import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseMediaFragment } from '#domain/photo/media-fragment';
import { boundingBox } from '#domain/photo/region';

const HD = { width: 1280, height: 720 };

/** In pixels of the image, rounded, to compare with the published cases. */
function pixels(text: string, image = HD): number[] | null {
  const box = parseMediaFragment(text, image);
  return (
    box &&
    [box.x * image.width, box.y * image.height, box.w * image.width, box.h * image.height].map(Math.round)
  );
}

/**
 * Test cases of the W3C Media Fragments working group (ids TC00nn), as kept in
 * tomayac/Media-Fragments-URI, test_resources/testcases.tsv, on a 1280×720 image.
 */
describe('xywh of Media Fragments URI 1.0', () => {
  it.each([
    ['TC0045', '200,100,200,200', [200, 100, 200, 200]],
    ['TC0046, pixel: said aloud', 'pixel:200,100,200,200', [200, 100, 200, 200]],
    ['TC0047', 'percent:0,0,50,50', [0, 0, 640, 360]],
    ['TC0048, no area', '0,0,0,0', null],
    ['TC0049, negative', '-200,100,200,200', null],
    ['TC0050, past 100 %', 'percent:0,0,150,50', null],
    ['TC0098, begins outside', '1300,0,10,10', null],
  ] as const)('%s: %s', (_, text, expected) => {
    expect(pixels(text)).toEqual(expected);
  });

  it('cuts a pixel box at the right edge (TC0095: the width of a 1280 px frame gives 1080)', () => {
    expect(pixels('200,100,2000,200')).toEqual([200, 100, 1080, 200]);
  });

  it('takes decimals of percent (KitaitiMakoto/media-fragment: 25.3,25.5,50.456,50 of 1000² begins at 253,255)', () => {
    expect(pixels('percent:25.3,25.5,50.456,50', { width: 1000, height: 1000 })).toEqual([
      253, 255, 505, 500,
    ]);
  });

  it.each([
    '',
    'xywh=0,0,1,1',
    'percent:1,2,3',
    'percent:a,b,c,d',
    '1e1,0,1,1',
    'percent:0,0,10,10;x',
    ' 0,0,1,1',
  ])('refuses %j', (text) => {
    expect(parseMediaFragment(text, HD)).toBeNull();
  });

  it('the IPTC reference photo: its rectangle .31 .18 .127 .385 is percent 31,18,12.7,38.5 and 620,180,254,385 px', () => {
    // IPTC PhotometadataRef Std2021.1, region persltr2, 2000×1000.
    const image = { width: 2000, height: 1000 };
    expect(pixels('percent:31,18,12.7,38.5', image)).toEqual([620, 180, 254, 385]);
    const box = boundingBox({ shape: 'rectangle', x: 0.31, y: 0.18, w: 0.127, h: 0.385 });
    expect([box.x + box.w / 2, box.y + box.h / 2].map((v) => Number(v.toFixed(6)))).toEqual([0.3735, 0.3725]);
  });

  it('never gives a box that leaves the image', () => {
    const part = fc.double({ min: 0, max: 120, noNaN: true }).map((v) => v.toFixed(3));
    fc.assert(
      fc.property(part, part, part, part, fc.boolean(), (x, y, w, h, percent) => {
        const box = parseMediaFragment(`${percent ? 'percent:' : ''}${x},${y},${w},${h}`, {
          width: 100,
          height: 80,
        });
        if (!box) return;
        expect(Math.min(box.x, box.y)).toBeGreaterThanOrEqual(0);
        expect(Math.min(box.w, box.h)).toBeGreaterThan(0);
        expect(Math.max(box.x + box.w, box.y + box.h)).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
  });
});
