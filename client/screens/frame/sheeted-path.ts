import type { DrawnMember, Sheet } from '#domain/frame/drawing/sheet';
import type { Flat } from '#domain/frame/drawing/flat';
import type { Stretch } from '#domain/record/stretches';
import { sheetedOn, type FrameModel } from './frame-model.ts';
import { polyline } from './ink.ts';

/** A fold along each member that lies under protection on a day; `unit`: millimetres a pixel. */
export function sheetedPath(sheet: Sheet, model: FrameModel, day: string, unit: number): string {
  return sheet.members
    .flatMap((drawn) =>
      sheetedOn(model, drawn.mark, day).map(({ stretch }) => {
        const part = partOf(drawn, stretch);
        return part === null ? '' : polyline(zigzag(drawn, part, unit));
      }),
    )
    .join('');
}

/** From where to where along what is drawn, as shares; null: the part does not reach this sheet. */
function partOf({ cutAt, length }: DrawnMember, stretch: Stretch | null): [number, number] | null {
  if (stretch === null) return [0, 1];
  if (cutAt === null) return [stretch.from / length, stretch.to / length];
  return stretch.from <= cutAt && cutAt <= stretch.to ? [0, 1] : null;
}

const STEP_PX = 9;
const HIGH_PX = 6;
/** However long or near: finer is a grey band. */
const MOST_STEPS = 400;

function zigzag({ from, to }: DrawnMember, [start, end]: [number, number], unit: number): Flat[] {
  const [du, dv] = [to.u - from.u, to.v - from.v];
  const long = Math.hypot(du, dv);
  const steps = Math.min(MOST_STEPS, Math.max(2, Math.round((long * (end - start)) / (STEP_PX * unit))));
  const [acrossU, acrossV] = long === 0 ? [0, 1] : [-dv / long, du / long];
  return Array.from({ length: steps + 1 }, (_, i) => {
    const share = start + ((end - start) * i) / steps;
    const side = (i % 2 === 0 ? 1 : -1) * HIGH_PX * unit;
    return { u: from.u + du * share + acrossU * side, v: from.v + dv * share + acrossV * side };
  });
}
