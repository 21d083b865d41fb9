import type { ClosingReportView, ReportOfPhotoView } from '#domain/contract/report-views';
import { reportClosings } from '#domain/record/closing-report';
import { dayOf } from '#domain/record/zoned-day';
import type { Context } from './context.ts';
import type { LayerMaterial, ReportMaterial } from './record-store.ts';

/** 'open': only coverings that have not closed; its `unhidden` then says nothing of the house. */
export async function readClosingReport(
  context: Context,
  house: string,
  part: 'all' | 'open' = 'all',
): Promise<ClosingReportView> {
  const zone = await context.store.read.zone(house);
  return reportOf(context, await context.store.read.reportMaterial(house, part), zone);
}

/** The lines that a tag on this photo can change. */
export async function readReportOfPhoto(
  context: Context,
  house: string,
  photo: string,
): Promise<ReportOfPhotoView> {
  const zone = await context.store.read.zone(house);
  const material = await context.store.read.reportMaterial(house, { photo });
  const { today, days } = reportOf(context, material, zone);
  return {
    today,
    coverings: days.flatMap(({ coverings }) => coverings.map(({ id, lines }) => ({ id, lines }))),
  };
}

/** The report of what has been read; `zone` is the house's. */
export function reportOf(
  context: Context,
  { members, coverings, beside, tags, protection, reader }: ReportMaterial,
  zone: string,
): ClosingReportView {
  const asOf = context.now().toISOString();
  const inTime = <T extends LayerMaterial>({ closed, ...covering }: T) => ({
    ...covering,
    closedAt: closed && closed.at,
    closedDay: closed && dayOf(closed.at, zone),
  });
  return reportClosings({
    members,
    coverings: coverings.map((covering) => {
      const { hold, closed, released } = covering;
      return { ...inTime(covering), held: { hold, closed, released } };
    }),
    beside: beside.map(inTime),
    tags,
    protection,
    asOf,
    today: dayOf(asOf, zone),
    reader,
  });
}
