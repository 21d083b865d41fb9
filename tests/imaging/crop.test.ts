import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { pixelBox } from '../../server/imaging/crop-picture.ts';
import { colourAt, colourName, put, sign, useImaging } from './some-pictures.ts';

const { imaging, file } = useImaging();
const FULL = { x: 0, y: 0, w: 1, h: 1 };

async function signFile(orientation = 1): Promise<string> {
  const bytes = await sign(1000, 800).withMetadata({ orientation }).jpeg({ quality: 100 }).toBuffer();
  return put(file(`sign${orientation}.jpg`), bytes);
}

describe('a crop of the original', () => {
  it('has the pixels of the box and is never enlarged', async () => {
    const bytes = await imaging().crop(
      await signFile(),
      'image/jpeg',
      { x: 0.6, y: 0.1, w: 0.25, h: 0.5 },
      4000,
    );
    expect(await sharp(bytes).metadata()).toMatchObject({ format: 'jpeg', width: 250, height: 400 });
    expect(colourName(await colourAt(bytes, 0.5, 0.5))).toBe('blue');
  });

  it('is at most as wide as asked', async () => {
    const bytes = await imaging().crop(await signFile(), 'image/jpeg', FULL, 100);
    expect(await sharp(bytes).metadata()).toMatchObject({ width: 100, height: 80 });
  });

  it('is cut from the upright picture', async () => {
    // Orientation 6: stored red (left) comes to the top right, stored green (bottom) to the left.
    const path = await signFile(6);
    const left = await imaging().crop(path, 'image/jpeg', { x: 0, y: 0, w: 0.2, h: 1 }, 200);
    const topRight = await imaging().crop(path, 'image/jpeg', { x: 0.5, y: 0, w: 0.4, h: 0.4 }, 200);
    expect(colourName(await colourAt(left, 0.5, 0.5))).toBe('green');
    expect(colourName(await colourAt(topRight, 0.5, 0.5))).toBe('red');
    expect(await sharp(topRight).metadata()).toMatchObject({ width: 200, height: 250 });
  });

  it('draws the outline where the region is', async () => {
    const region = { shape: 'rectangle', x: 0.2, y: 0.2, w: 0.2, h: 0.2 } as const;
    const bytes = await imaging().crop(await signFile(), 'image/jpeg', FULL, 500, region);
    const [red = 0, green = 0, blue = 0] = await colourAt(bytes, 0.2, 0.3);
    // Vermilion c8401f within what JPEG does to a line of 3 px.
    expect([Math.abs(red - 0xc8), Math.abs(green - 0x40), Math.abs(blue - 0x1f)].every((d) => d < 50)).toBe(
      true,
    );
    expect(colourName(await colourAt(bytes, 0.3, 0.3))).toBe('red');
    const plain = await imaging().crop(await signFile(), 'image/jpeg', FULL, 500);
    expect(Buffer.compare(Buffer.from(plain), Buffer.from(bytes))).not.toBe(0);
  });

  it('draws the outline in its place within a part', async () => {
    const region = { shape: 'rectangle', x: 0.6, y: 0.2, w: 0.2, h: 0.2 } as const;
    const bytes = await imaging().crop(
      await signFile(),
      'image/jpeg',
      { x: 0.5, y: 0.1, w: 0.4, h: 0.4 },
      400,
      region,
    );
    // 0.6 of the picture is a quarter of the part's width; all around it is blue.
    const [red = 0, , blue = 0] = await colourAt(bytes, 0.25, 0.5);
    expect(red).toBeGreaterThan(blue);
    expect(colourName(await colourAt(bytes, 0.5, 0.5))).toBe('blue');
  });

  it('takes polygons', async () => {
    const points = [
      [0.6, 0.1],
      [0.9, 0.1],
      [0.75, 0.5],
    ] as const;
    const bytes = await imaging().crop(await signFile(), 'image/jpeg', FULL, 500, {
      shape: 'polygon',
      points,
    });
    const [red = 0, , blue = 0] = await colourAt(bytes, 0.75, 0.1);
    expect(red).toBeGreaterThan(blue);
  });

  it('gives at least one pixel', async () => {
    const bytes = await imaging().crop(await signFile(), 'image/jpeg', { x: 1, y: 1, w: 1e-9, h: 1e-9 }, 100);
    expect(await sharp(bytes).metadata()).toMatchObject({ width: 1, height: 1 });
  });

  it('rejects where nothing decodes', async () => {
    const path = await put(file('broken.jpg'), Buffer.from('\xff\xd8\xff\xe0', 'latin1'));
    await expect(imaging().crop(path, 'image/jpeg', FULL, 100)).rejects.toThrow();
  });

  it('always lies inside the picture, holds the box, and wastes less than a pixel a side', () => {
    const unit = fc.double({ min: 0, max: 1, noNaN: true });
    const side = fc.integer({ min: 1, max: 20_000 });
    fc.assert(
      fc.property(unit, unit, unit, unit, side, side, (x, y, w, h, width, height) => {
        const box = { x, y, w: w * (1 - x), h: h * (1 - y) };
        const part = pixelBox(box, { width, height });
        expect(part.width >= 1 && part.height >= 1 && part.left >= 0 && part.top >= 0).toBe(true);
        expect(part.left + part.width <= width && part.top + part.height <= height).toBe(true);
        if (x * width < width - 1) expect(part.left).toBeLessThanOrEqual(x * width + 1e-5);
        expect(part.left + part.width).toBeGreaterThanOrEqual((x + box.w) * width - 1e-5);
        expect(part.width).toBeLessThanOrEqual(box.w * width + 2);
      }),
    );
  });
});
