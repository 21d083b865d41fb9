import type { ShotListView } from '#domain/contract/shot-views';
import { shotsOfReport } from '#domain/record/shots-of-report';
import type { Context } from './context.ts';
import { reportOf } from './report.ts';

/** Where to stand for what is missing of the coverings that close within so many days. */
export async function readShotList(
  context: Context,
  house: string,
  days: number | 'all',
): Promise<ShotListView> {
  const { read } = context.store;
  const zone = await read.zone(house);
  const material = await read.reportMaterial(house);
  return shotsOfReport({
    report: reportOf(context, material, zone),
    members: await read.frameMembers(house, zone),
    coverings: material.coverings,
    protection: material.protection,
    reader: material.reader,
    days,
  });
}
