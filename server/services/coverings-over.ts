import type { WaiverView } from '#domain/contract/report-views';
import type { CoveringView, MemberHistoryView, MemberView } from '#domain/contract/views';
import { axisOf } from '#domain/frame/axis-of';
import { gridReader, type GridReader } from '#domain/frame/grid-reader';
import { lexiconOf } from '#domain/lexicon/lexicon';
import { usualLie } from '#domain/lexicon/usual-lie';
import { layersOf } from '#domain/record/layers';
import { WHOLE } from '#domain/record/shown-parts';
import type { Stretch } from '#domain/record/stretches';
import { acceptingRelease, isInTime, type WaivedMember } from '#domain/record/waived';
import type { RecordReader } from './record-store.ts';

/** The coverings that hide a member, each with when it was out of sight there. */
export async function coveringsOver(
  read: RecordReader,
  house: string,
  member: MemberView,
): Promise<MemberHistoryView['coverings']> {
  const { mark } = member;
  const over = (await read.coverings(house)).filter(({ hides }) =>
    hides.some((hidden) => hidden.mark === mark),
  );
  if (over.length === 0) return [];
  const grid = await read.grid(house);
  const reader = grid && gridReader(grid);
  const whole = (reader && (await wholeOf(read, house, member, reader))) ?? WHOLE;
  const layers = over.map(({ closed, ...covering }) => ({
    ...covering,
    closedAt: closed && closed.at,
    closedDay: null,
  }));
  const decided = layersOf(layers, reader);
  const waived = await read.waived(over.flatMap(acceptingRelease));
  return layers.flatMap((layer, i) => {
    const { hides: _, ...covering } = over[i] as CoveringView;
    return layer.hides
      .filter((one) => one.mark === mark)
      .map(({ least, stretch }) => ({
        ...covering,
        least,
        waiver: waiverOf(waived.get(covering.id), mark, layer.closedAt),
        hiddenAt: decided.hidden(layer, mark, stretch ?? whole).since,
      }));
  });
}

function waiverOf(
  waived: readonly WaivedMember[] = [],
  mark: string,
  closedAt: string | null,
): WaiverView | null {
  const waiver = waived.find((one) => one.mark === mark)?.waiver;
  return waiver && isInTime(waiver, closedAt) ? waiver : null;
}

/** Listed by hand it is hidden from end to end. */
async function wholeOf(
  read: RecordReader,
  house: string,
  { setOut, kind }: MemberView,
  reader: GridReader,
): Promise<Stretch | null> {
  if (setOut === null) return null;
  const axis = axisOf(setOut, usualLie(kind, lexiconOf(await read.terms(house))), reader);
  return axis.ok ? { from: 0, to: axis.axis.length } : null;
}
