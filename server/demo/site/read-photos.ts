import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { writeFacts } from '../render/facts/write-facts.ts';
import { readTruth } from '../render/truth/truth-file.ts';
import type { PhotoRow, StoryPhoto } from '../story/photo.ts';

export interface DemoPhoto extends StoryPhoto {
  readonly jpeg: Uint8Array;
}

/** The pictures of a folder with their truth, as if the frame had been raised on that day. Throws where one is missing. */
export function readPhotos(folder: string, rows: readonly PhotoRow[], raising: string): Promise<DemoPhoto[]> {
  return Promise.all(
    rows.map(async (row) => {
      const [jpeg, truth] = await Promise.all([
        readFile(path.join(folder, `${row.name}.jpg`)),
        readFile(path.join(folder, `${row.shot}.json`), 'utf8'),
      ]);
      return { ...row, truth: readTruth(truth), jpeg: await writeFacts(jpeg, row.facts, raising) };
    }),
  );
}
