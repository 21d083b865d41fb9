import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { put, sign, useImaging } from './some-pictures.ts';

const { imaging, file } = useImaging();

describe('looking at a file', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])('gives the upright size for orientation %i', async (orientation) => {
    const path = await put(
      file(`o${orientation}.jpg`),
      await sign().withMetadata({ orientation }).jpeg().toBuffer(),
    );
    const size = orientation < 5 ? { width: 400, height: 300 } : { width: 300, height: 400 };
    expect(await imaging().inspect(path)).toMatchObject({ ok: true, ...size, readings: { orientation } });
  });

  it.each(['jpeg', 'png', 'webp', 'tiff', 'avif'] as const)('takes %s under any name', async (format) => {
    const path = await put(file(`${format}.txt`), await sign().toFormat(format).toBuffer());
    expect(await imaging().inspect(path)).toMatchObject({
      ok: true,
      mediaType: `image/${format}`,
      width: 400,
    });
  });

  it('reads Exif out of JPEG, PNG, WebP and AVIF alike', async () => {
    const exif = { IFD0: { Make: 'Kamera' }, IFD2: { DateTimeOriginal: '2026:04:01 09:30:00' } };
    for (const format of ['jpeg', 'png', 'webp', 'avif'] as const) {
      const path = await put(file(`exif-${format}`), await sign().withExif(exif).toFormat(format).toBuffer());
      const { readings } = (await imaging().inspect(path)) as { readings: object };
      expect([format, readings]).toMatchObject([format, { make: 'Kamera', wallTime: '2026-04-01T09:30:00' }]);
    }
  });

  it.each([
    ['empty', '', 'photo-empty', {}],
    ['drawing', '<svg xmlns="http://www.w3.org/2000/svg"/>', 'photo-type-not-supported', { found: 'SVG' }],
    ['paper', '%PDF-1.4', 'photo-not-an-image', { found: 'PDF' }],
    ['start only', '\xff\xd8\xff\xe0', 'photo-damaged', {}],
  ])('refuses: %s', async (name, content, code, params) => {
    const path = await put(file(`${name}.jpg`), Buffer.from(content, 'latin1'));
    expect(await imaging().inspect(path)).toEqual({ ok: false, code, params });
  });

  it('takes 100 megapixels and refuses one row more', async () => {
    const white = { channels: 3 as const, background: '#ffffff' };
    const picture = (height: number) =>
      sharp({ create: { width: 10_000, height, ...white }, limitInputPixels: false })
        .jpeg({ quality: 20 })
        .toBuffer();
    const fits = await put(file('fits.jpg'), await picture(10_000));
    const over = await put(file('over.jpg'), await picture(10_001));
    expect(await imaging().inspect(fits)).toMatchObject({ ok: true, width: 10_000 });
    expect(await imaging().inspect(over)).toMatchObject({ ok: false, code: 'photo-too-many-pixels' });
  });

  it('refuses a size that only the header claims, without decoding', async () => {
    const png = await sign(16, 16).png().toBuffer();
    png.writeUInt32BE(0x7fffffff, 16);
    png.writeUInt32BE(0x7fffffff, 20);
    const result = await imaging().inspect(await put(file('huge.png'), png));
    expect(result).toMatchObject({ ok: false, code: 'photo-too-many-pixels', params: { limit: '100 MP' } });
  });
});

describe('a file that lost a part', () => {
  const noisy = () =>
    sharp({
      create: {
        width: 800,
        height: 600,
        channels: 3,
        background: '#888',
        noise: { type: 'gaussian', mean: 128, sigma: 40 },
      },
    });

  it('is taken when some rows decode, refused when none do', async () => {
    const whole = await noisy().jpeg().toBuffer();
    const scan = whole.indexOf(Buffer.from([0xff, 0xda]));
    const half = await put(file('half.jpg'), whole.subarray(0, whole.length / 2));
    const some = await put(file('some.jpg'), whole.subarray(0, scan + 3000));
    const none = await put(file('none.jpg'), whole.subarray(0, scan + 14));
    expect(await imaging().inspect(half)).toMatchObject({ ok: true });
    expect(await imaging().inspect(some)).toMatchObject({ ok: true });
    expect(await imaging().inspect(none)).toEqual({ ok: false, code: 'photo-damaged', params: {} });
  });

  it.each(['webp', 'avif'] as const)(
    'is refused as %s, which decodes as a whole or not at all',
    async (format) => {
      const whole = await noisy().resize(200).toFormat(format, { effort: 0 }).toBuffer();
      const path = await put(file(`half.${format}`), whole.subarray(0, Math.floor(whole.length / 2)));
      expect(await imaging().inspect(path)).toMatchObject({ ok: false, code: 'photo-damaged' });
    },
  );
});
