import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { readTruth, type Kept } from '../../server/demo/render/truth/truth-file.ts';
import { ROOT } from './project-files.ts';

export async function truthOf({ shot }: { shot: string }): Promise<Kept> {
  return readTruth(await readFile(path.join(ROOT, 'server/demo/photos', `${shot}.json`), 'utf8'));
}
