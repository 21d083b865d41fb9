import type { ClosingReportView } from '#domain/contract/report-views';

type Records = ClosingReportView['days'][number]['coverings'][number]['lines'][number]['records'];

/** Two tags of one stage on one photo prove the same and read the same: the better one speaks. */
export function eachPhotoOnce(records: Records): Records {
  const said = new Set<string>();
  return records.filter(({ photo, stage }) => {
    const proof = `${photo} ${stage}`;
    if (said.has(proof)) return false;
    said.add(proof);
    return true;
  });
}
