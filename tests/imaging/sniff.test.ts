import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { sniff } from '../../server/imaging/sniff.ts';
import { sign } from './some-pictures.ts';

const bytes = (text: string): Uint8Array => Buffer.from(text, 'latin1');
const box = (brand: string, ...compatible: string[]): Uint8Array =>
  bytes(`\0\0\0${String.fromCharCode(16 + 4 * compatible.length)}ftyp${brand}\0\0\0\0${compatible.join('')}`);

describe('the kind of a file by its content', () => {
  it.each(['jpeg', 'png', 'webp', 'tiff', 'avif'] as const)('knows %s as sharp writes it', async (format) => {
    const file = await sign(16, 16).toFormat(format).toBuffer();
    expect(sniff(file)).toEqual({ kind: 'photo', mediaType: `image/${format}` });
  });

  it('knows a GIF as sharp writes it', async () => {
    expect(
      sniff(
        await sharp(await sign(16, 16).png().toBuffer())
          .gif()
          .toBuffer(),
      ),
    ).toMatchObject({ found: 'GIF' });
  });

  it.each([
    [box('heic', 'mif1', 'heic'), 'image/heic'],
    [box('mif1', 'mif1', 'heic', 'hevc'), 'image/heic'],
    [box('mif1', 'avif', 'miaf'), 'image/avif'],
    [box('avif', 'mif1'), 'image/avif'],
    [box('mif1'), 'image/heic'],
    [box('hevc'), 'image/heic'],
  ])('reads the brands of a HEIF file: %#', (head, mediaType) => {
    expect(sniff(head)).toEqual({ kind: 'photo', mediaType });
  });

  it.each([
    ['<svg xmlns="http://www.w3.org/2000/svg"/>', 'other-image', 'SVG'],
    ['\xef\xbb\xbf  <?xml version="1.0"?>\n<!-- x -->\n<svg\nwidth="1">', 'other-image', 'SVG'],
    ['<!DOCTYPE html><title>x</title>', 'no-image', 'HTML'],
    ['<?xml version="1.0"?><a/>', 'no-image', 'XML'],
    ['BM\x00\x00', 'other-image', 'BMP'],
    ['%PDF-1.7', 'no-image', 'PDF'],
    ['PK\x03\x04', 'no-image', 'ZIP'],
    ['RIFF\0\0\0\0WAVE', 'no-image', 'WAV'],
    ['Mark;Kind\n\xe3\x81\x84;nuki', 'no-image', 'text'],
    ['Mark;Kind\r\nI3;nuki', 'no-image', 'text'],
    ['\0\x01\x02\x03', 'no-image', 'data'],
    ['', 'no-image', 'data'],
  ])('says what %j is instead', (text, kind, found) => {
    expect(sniff(bytes(text))).toEqual({ kind, found });
  });

  it('tells video from photo by its brand', () => {
    expect(sniff(box('mp42', 'isom'))).toEqual({ kind: 'no-image', found: 'MP4' });
    expect(sniff(box('qt  '))).toEqual({ kind: 'no-image', found: 'QuickTime' });
  });

  it('is not led astray by a length of the brand box beyond the file', () => {
    expect(sniff(bytes('\xff\xff\xff\xffftypheic'))).toEqual({ kind: 'photo', mediaType: 'image/heic' });
  });
});
