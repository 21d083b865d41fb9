import type { StatedGrid } from '#domain/contract/frame-shapes';
import type {
  FrameCoveringView,
  FrameHiddenView,
  FrameOfPhotoView,
  FrameProtectionView,
  FrameView,
} from '#domain/contract/frame-views';
import type { ProtectionView } from '#domain/contract/protection';
import type { RequirementsView } from '#domain/contract/requirements';
import type { AccountView } from '#domain/contract/views';
import { compareText } from '#domain/frame/mark-order';
import { gridProblem } from '#domain/frame/grid-problem';
import { KINDS } from '#domain/lexicon/kinds';
import { dayOf } from '#domain/record/zoned-day';
import type { ClosingReport } from '#domain/record/closing-report';
import { speaker, type Context } from './context.ts';
import { Failure } from './failure.ts';
import type { FramePart } from './record-store.ts';
import { reportOf } from './report.ts';
import { sameContent } from './same-content.ts';

/** States where the lines and levels of a house lie; every zone and member is put in place by it anew. */
export async function stateGrid(
  context: Context,
  account: AccountView,
  house: string,
  grid: StatedGrid,
): Promise<StatedGrid> {
  const problem = gridProblem(grid);
  if (problem) throw new Failure('grid-impossible', { ...problem });
  return context.store.write(house, speaker(account), async (writing) => {
    const before = await writing.grid(house);
    if (before === null || !sameContent(before, grid))
      await writing.say({ kind: 'grid.stated', version: 1, payload: grid });
    return grid;
  });
}

/** What the house asks for otherwise than is common. */
export async function stateRequirements(
  context: Context,
  account: AccountView,
  house: string,
  { rows }: RequirementsView,
): Promise<RequirementsView> {
  const known = new Set([...KINDS, ...(await context.store.read.terms(house))].map(({ id }) => id));
  const unknown = [...new Set(rows.map(({ kind }) => kind))].filter((kind) => !known.has(kind));
  if (unknown.length > 0) throw new Failure('unknown-kinds', { kinds: unknown.slice(0, 20).join(', ') });
  return context.store.write(house, speaker(account), async (writing) => {
    const before = await writing.requirements(house);
    if (!sameContent({ rows: before }, { rows }))
      await writing.say({ kind: 'requirements.stated', version: 1, payload: { rows } });
    return { rows };
  });
}

/** The whole frame, as it stands and stood on record. */
export async function readFrame(context: Context, house: string): Promise<FrameView> {
  const { material, zone, ...frame } = await readFramePart(context, house, 'all');
  const protections = await context.store.read.protections(house);
  const grid = material.reader?.grid ?? null;
  return {
    ...frame,
    grid: grid && { first: grid.first, second: grid.second, levels: grid.levels },
    protections: protections.map((protection) => toFrameProtection(protection, zone)),
  };
}

/** What of the frame a tag on this photo can change. */
export async function readFrameOfPhoto(
  context: Context,
  house: string,
  photo: string,
): Promise<FrameOfPhotoView> {
  const { today, members, coverings } = await readFramePart(context, house, { photo });
  return { today, members, coverings: coverings.map(({ id, hides }) => ({ id, hides })) };
}

async function readFramePart(context: Context, house: string, part: FramePart) {
  const { read } = context.store;
  const zone = await read.zone(house);
  const material = await read.reportMaterial(house, part);
  const report = reportOf(context, material, zone);
  const zones = new Map(material.coverings.map((covering) => [covering.id, covering.zone]));
  return {
    ...{ material, zone },
    today: report.today,
    members: await read.frameMembers(house, zone, part),
    coverings: report.days
      .flatMap(({ coverings }) => coverings)
      .map((covering) => toFrameCovering(covering, zones.get(covering.id) ?? null, zone)),
  };
}

type CoveringReport = ClosingReport['days'][number]['coverings'][number];

function toFrameCovering(
  { id, name, kind, plannedDay, closedAt, lines }: CoveringReport,
  zone: FrameCoveringView['zone'],
  timeZone: string,
): FrameCoveringView {
  const closedDay = closedAt === null ? null : dayOf(closedAt, timeZone);
  return {
    ...{ id, name, kind, zone, plannedDay, closedDay },
    // In an order that does not change with what is on record.
    hides: lines.map((line) => toFrameHidden(line, timeZone)).sort((a, b) => compareText(a.mark, b.mark)),
  };
}

function toFrameProtection(
  { id, name, laidAt, lifted, hides }: ProtectionView,
  timeZone: string,
): FrameProtectionView {
  return {
    ...{ id, name },
    laidDay: dayOf(laidAt, timeZone),
    liftedDay: lifted && dayOf(lifted.at, timeZone),
    hides: hides.map(({ mark, stretch }) => ({ mark, stretch })),
  };
}

function toFrameHidden(line: CoveringReport['lines'][number], timeZone: string): FrameHiddenView {
  const { mark, least, state, hidden, missing, completeAt, hiddenAt, waiver } = line;
  const bare = ({ from, to }: { from: number; to: number }) => ({ from, to });
  const isMissing = state === 'gap' || state === 'lost' || state === 'waived';
  return {
    ...{ mark, least, state },
    stretches: hidden && [bare(hidden)],
    missing: hidden ? (missing.length > 0 ? missing.map(bare) : isMissing ? [bare(hidden)] : []) : null,
    hiddenDay: hiddenAt && dayOf(hiddenAt, timeZone),
    onRecordSince: completeAt && dayOf(completeAt, timeZone),
    waivedDay: state === 'waived' && waiver ? dayOf(waiver.at, timeZone) : null,
  };
}
