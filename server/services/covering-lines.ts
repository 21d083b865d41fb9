import type { ReportLine } from '#domain/record/report-line';
import type { Standing } from '#domain/contract/hold';
import type { Context } from './context.ts';
import { Failure } from './failure.ts';
import type { RecordReader, ReportMaterial } from './record-store.ts';
import { reportOf } from './report.ts';

export interface CoveringLines {
  readonly today: string;
  readonly standing: Standing;
  readonly lines: ReportLine[];
  readonly members: ReportMaterial['members'];
  /** The same lines as they would be with other tags alone. */
  readonly without: (tags: ReadonlySet<string>) => ReportLine[];
}

/** The lines of the closing report of one covering; inside a write, of what was said so far. */
export async function readCoveringLines(
  context: Context,
  read: RecordReader,
  { house, covering }: { house: string; covering: string },
): Promise<CoveringLines> {
  const zone = await read.zone(house);
  const material = await read.reportMaterial(house, { coverings: [covering] });
  const linesOf = (part: ReportMaterial) => {
    const { today, days } = reportOf(context, part, zone);
    const [found] = days.flatMap(({ coverings }) => coverings);
    if (!found) throw new Failure('not-found', { what: 'covering' });
    return { today, standing: found.standing, lines: found.lines };
  };
  return {
    ...linesOf(material),
    members: material.members,
    without: (tags) => linesOf({ ...material, tags: material.tags.filter(({ id }) => !tags.has(id)) }).lines,
  };
}
