import { existsSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { HeicDecoder } from '../../server/imaging/heic-decoder.ts';
import { put, sign, useImaging } from './some-pictures.ts';

const { imaging, file } = useImaging();
const open: HeicDecoder[] = [];
afterEach(async () => {
  await Promise.all(open.splice(0).map((decoder) => decoder.close()));
});

/** A decoder over a worker of a few lines, which sees `path` and answers as the real one would. */
async function decoderOver(name: string, onMessage: string): Promise<HeicDecoder> {
  const script = `import { parentPort } from 'node:worker_threads';
    import { existsSync, writeFileSync } from 'node:fs';
    let asked = 0;
    const answer = (value) => parentPort.postMessage(
      { ok: true, width: 1, height: 1, data: new Uint8Array([value, 0, 0, 255]).buffer });
    parentPort.on('message', ({ path }) => { asked += 1; ${onMessage} });`;
  const decoder = new HeicDecoder(await put(file(`${name}.mjs`), Buffer.from(script)));
  open.push(decoder);
  return decoder;
}

describe('the HEIC worker', () => {
  it('gets one file at a time', async () => {
    const decoder = await decoderOver(
      'slow',
      `const mine = asked; setTimeout(() => answer(mine === asked ? 1 : 9), 30)`,
    );
    const all = await Promise.all(['a', 'b', 'c'].map((path) => decoder.decode(path)));
    expect(all.map((pixels) => pixels?.data[0])).toEqual([1, 1, 1]);
  });

  it('is not asked again for the file that it decoded last', async () => {
    const decoder = await decoderOver('count', 'answer(asked)');
    const values = [];
    for (const path of ['a', 'a', 'b', 'a']) values.push((await decoder.decode(path))?.data[0]);
    expect(values).toEqual([1, 1, 2, 3]);
  });

  it.each(['process.exit(1)', 'throw new Error("x")', 'setTimeout(async () => { throw new Error("x") })'])(
    'is replaced after it died by %s',
    async (death) => {
      const mark = JSON.stringify(file(`died-${death.length}`));
      const decoder = await decoderOver(
        `dying-${death.length}`,
        `if (!existsSync(${mark})) { writeFileSync(${mark}, ''); ${death} } else answer(5)`,
      );
      expect(await decoder.decode('a')).toBeNull();
      expect(existsSync(JSON.parse(mark) as string)).toBe(true);
      expect((await decoder.decode('a'))?.data[0]).toBe(5);
    },
  );

  it('answers null after it was closed, and where its file is missing', async () => {
    const decoder = await decoderOver('closed', 'answer(1)');
    await decoder.close();
    expect(await decoder.decode('a')).toBeNull();
    const lost = new HeicDecoder(file('no-such-worker.mjs'));
    open.push(lost);
    expect(await lost.decode('a')).toBeNull();
  });

  it('makes nothing of a file that is no HEIC', async () => {
    const path = await put(file('really.jpg'), await sign(16, 16).jpeg().toBuffer());
    const to = { thumb: file('t.jpg'), preview: file('p.jpg') };
    expect((await imaging().makePictures(path, 'image/heic', to)).state).toBe('unreadable');
  });
});
