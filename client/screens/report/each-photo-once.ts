import type { Line } from './line-row.tsx';

/** Two tags of one stage on one photo prove the same and read the same: the better one speaks. */
export function eachPhotoOnce(records: Line['records']): Line['records'] {
  const said = new Set<string>();
  return records.filter(({ photo, stage }) => {
    const proof = `${photo} ${stage}`;
    if (said.has(proof)) return false;
    said.add(proof);
    return true;
  });
}
