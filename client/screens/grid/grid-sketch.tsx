import type { StatedGrid } from '#domain/contract/frame-shapes';
import { useWords } from '../../i18n/use-words.ts';

const SIZE = 1000;
const EDGE = 120;

/** The lines as they run on the plan, with their labels, to be compared with the drawing on the wall. */
export function GridSketch({ grid }: { grid: StatedGrid }) {
  const { t } = useWords();
  const { first, second } = grid;
  const width = Math.max(1, first.lines.at(-1)?.at ?? 1);
  const height = Math.max(1, second.lines.at(-1)?.at ?? 1);
  const scale = (SIZE - 2 * EDGE) / Math.max(width, height);
  const [w, h] = [width * scale, height * scale];
  const x = (at: number) => EDGE + (first.runs === 'rightward' ? at * scale : w - at * scale);
  const y = (at: number) => EDGE + (second.runs === 'downward' ? at * scale : h - at * scale);
  return (
    <svg
      className="grid-sketch"
      viewBox={`0 0 ${String(w + 2 * EDGE)} ${String(h + 2 * EDGE)}`}
      role="img"
      aria-label={t('grid.sketch', {
        first: first.lines.map(({ label }) => label).join(' '),
        second: second.lines.map(({ label }) => label).join(' '),
      })}
    >
      {first.lines.map(({ label, at }) => (
        <g key={label}>
          <line x1={x(at)} x2={x(at)} y1={EDGE * 0.6} y2={EDGE + h + EDGE * 0.4} />
          <text x={x(at)} y={EDGE * 0.45}>
            {label}
          </text>
        </g>
      ))}
      {second.lines.map(({ label, at }) => (
        <g key={label}>
          <line y1={y(at)} y2={y(at)} x1={EDGE * 0.6} x2={EDGE + w + EDGE * 0.4} />
          <text
            x={second.lines.length > 0 && first.runs === 'leftward' ? EDGE + w + EDGE * 0.65 : EDGE * 0.35}
            y={y(at) + 12}
          >
            {label}
          </text>
        </g>
      ))}
    </svg>
  );
}
