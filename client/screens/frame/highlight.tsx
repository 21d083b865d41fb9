import { cornersOf } from '#domain/frame/drawing/flat';
import type { Sheet } from '#domain/frame/drawing/sheet';
import { polyline } from './ink.ts';
import { widthOf } from './zone-labels.ts';

/** The member that is told of, ringed in the drawing with its mark. */
export function Highlight({ sheet, mark, unit }: { sheet: Sheet; mark: string | null; unit: number }) {
  const drawn = sheet.members.find((member) => member.mark === mark);
  if (!drawn) return null;
  const ring = `${polyline(cornersOf({ ...drawn, half: drawn.half + 4 * unit }))}Z`;
  const middle = { u: (drawn.from.u + drawn.to.u) / 2, v: (drawn.from.v + drawn.to.v) / 2 };
  const [wide, high] = [(widthOf(drawn.mark) * 1.15 + 14) * unit, 24 * unit];
  const top = middle.v - drawn.half - high - 10 * unit;
  return (
    <g>
      <path className="frame-ink frame-highlight-edge" d={ring} />
      <path className="frame-ink frame-highlight" d={ring} />
      <g className="frame-highlight-mark">
        <rect x={middle.u - wide / 2} y={top} width={wide} height={high} />
        <text x={middle.u} y={top + high * 0.7} fontSize={15 * unit} textAnchor="middle">
          {drawn.mark}
        </text>
      </g>
    </g>
  );
}
