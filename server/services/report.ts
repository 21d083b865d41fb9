import type { ClosingReportView } from '#domain/contract/report-views';
import { reportClosings } from '#domain/record/closing-report';
import { dayOf } from '#domain/record/zoned-day';
import type { Context } from './context.ts';
import type { ReportMaterial } from './record-store.ts';

/** 'open': only coverings that have not closed; its `unhidden` then says nothing of the house. */
export async function readClosingReport(
  context: Context,
  house: string,
  part: 'all' | 'open' = 'all',
): Promise<ClosingReportView> {
  const zone = await context.store.read.zone(house);
  return reportOf(context, await context.store.read.reportMaterial(house, part), zone);
}

/** The report of what has been read; `zone` is the house's. */
export function reportOf(
  context: Context,
  { members, coverings, tags, reader }: ReportMaterial,
  zone: string,
): ClosingReportView {
  const asOf = context.now().toISOString();
  return reportClosings({
    members,
    coverings: coverings.map(({ closed, ...covering }) => ({
      ...covering,
      closedAt: closed && closed.at,
      closedDay: closed && dayOf(closed.at, zone),
    })),
    tags,
    asOf,
    today: dayOf(asOf, zone),
    reader,
  });
}
