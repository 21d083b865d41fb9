import type { ClosingReportView } from '#domain/contract/views';
import { reportClosings } from '#domain/record/closing-report';
import { dayOf } from '#domain/record/zoned-day';
import type { Context } from './context.ts';

export async function readClosingReport(context: Context, house: string): Promise<ClosingReportView> {
  const zone = await context.store.read.zone(house);
  const { members, coverings, tags } = await context.store.read.reportMaterial(house);
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
  });
}
