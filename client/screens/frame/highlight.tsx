import { cornersOf } from '#domain/frame/drawing/flat';
import type { Sheet } from '#domain/frame/drawing/sheet';
import { polyline } from './ink.ts';

/** The member that is told of, ringed in the drawing with its mark. */
export function Highlight({ sheet, mark, unit }: { sheet: Sheet; mark: string | null; unit: number }) {
  const drawn = sheet.members.find((member) => member.mark === mark);
  if (!drawn) return null;
  const wide = { ...drawn, half: drawn.half + 4 * unit };
  const [a, , c] = cornersOf(drawn);
  return (
    <g>
      <path className="frame-ink frame-highlight-edge" d={`${polyline(cornersOf(wide))}Z`} />
      <path className="frame-ink frame-highlight" d={`${polyline(cornersOf(wide))}Z`} />
      {a && c ? (
        <text
          className="frame-highlight-mark"
          fontSize={15 * unit}
          strokeWidth={5 * unit}
          x={(drawn.from.u + drawn.to.u) / 2 + drawn.half + 8 * unit}
          y={(a.v + c.v) / 2 - drawn.half - 8 * unit}
        >
          {drawn.mark}
        </text>
      ) : null}
    </g>
  );
}
