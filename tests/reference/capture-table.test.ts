import { describe, expect, it } from 'vitest';
import { HAS_SAMPLES, sampleJson, saySoWithoutSamples } from '../support/samples.ts';
import { captureRow, countVerdicts, NOT_READ_FILES, tableOf, type CaptureRow } from './capture-table.ts';
import { zoneOfPlace, type TagsOfFile } from './capture-truth.ts';

/** The house of pictures that do not say where they were taken, and a house far from most of those that do. */
const JAPANESE_HOUSE = 'Asia/Tokyo';

const SETS = ['exif_real', 'timezones', 'heic', 'orientation', 'buildings'];
const isDated = (tags: TagsOfFile) =>
  ['DateTimeOriginal', 'CreateDate', 'GPSDateTime'].some((name) => tags[name] !== undefined);

function samples(): [set: string, tags: TagsOfFile][] {
  const of = (set: string) =>
    (sampleJson(set, 'truth.json') as TagsOfFile[]).map((tags) => [set, tags] as const);
  const made = of('damaged').filter(([, tags]) => tags.SourceFile.startsWith('made/') && isDated(tags));
  return [...SETS.flatMap(of), ...made].map(([set, tags]) => [set, tags]);
}

async function rowsAt(house: (tags: TagsOfFile) => string): Promise<CaptureRow[]> {
  const rows: CaptureRow[] = [];
  for (const [set, tags] of samples()) rows.push(await captureRow(set, tags, house(tags)));
  return rows;
}

const isSettled = ({ truth }: CaptureRow) => truth !== null && !truth.basis.startsWith('zone');
const wrong = (rows: readonly CaptureRow[]) => rows.filter(({ verdict }) => verdict === 'WRONG');

describe('the capture time of every sample', () => {
  saySoWithoutSamples();

  it.runIf(HAS_SAMPLES)('is right, flagged or rightly missing at a house where it was taken', async () => {
    const rows = await rowsAt((tags) => zoneOfPlace(tags) ?? JAPANESE_HOUSE);
    const assumed = rows.filter((row) => row.truth?.basis === 'zone of the house').length;
    const table = await tableOf(rows);
    if (process.env['npm_lifecycle_event'] === 'capture-table') console.log(table);
    console.log(
      `${rows.length} samples: ${countVerdicts(rows)}; of ${assumed} only the house's zone says the offset.`,
    );
    expect(wrong(rows)).toEqual([]);
    // Both ways: a listed file that is read by now fails as well.
    const notRead = rows.filter(({ verdict }) => verdict === 'not read').map(({ file }) => file);
    expect(notRead.toSorted()).toEqual(NOT_READ_FILES.toSorted());
    await expect(table).toMatchFileSnapshot('./capture-table.md');
  });

  // The house's zone is wrong for most of them, so that only offset and satellites can put them right.
  it.runIf(HAS_SAMPLES)(
    'is right or flagged at a Japanese house, where the file itself settles it',
    async () => {
      const rows = (await rowsAt(() => JAPANESE_HOUSE)).filter(isSettled);
      console.log(`${rows.length} of them at a house in ${JAPANESE_HOUSE}: ${countVerdicts(rows)}.`);
      expect(rows.length).toBeGreaterThan(60);
      expect(wrong(rows)).toEqual([]);
    },
  );
});
