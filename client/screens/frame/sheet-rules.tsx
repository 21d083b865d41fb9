import type { Sheet } from '#domain/frame/drawing/sheet';
import { formatNumber } from '../../i18n/format.ts';
import type { Language } from '../../i18n/language.ts';
import { useWords } from '../../i18n/use-words.ts';
import type { Words } from '../../i18n/words.ts';
import type { SheetWindow, Size } from './sheet-window.ts';
import { widthOf } from './zone-labels.ts';

interface SheetRulesProps {
  readonly sheet: Sheet;
  readonly window: SheetWindow;
  readonly size: Size;
  readonly part: 'rules' | 'labels';
}

/** Labels that would lie over each other are left out, in pixels. */
const LEAST_APART = 26;

/** The lines of the grid and the levels; their labels stay at the edge of the picture however near one looks. */
export function SheetRules({ sheet, window, size, part }: SheetRulesProps) {
  const { t, lang } = useWords();
  const { unit, middle } = window;
  const [wide, high] = [size.width * unit, size.height * unit];
  const [left, top] = [middle.u - wide / 2, middle.v - high / 2];
  if (part === 'rules') {
    const upright = sheet.upright.map(({ at }) => `M${at} ${top + 22 * unit}V${top + high}`);
    const level = sheet.level.map(({ at }) => `M${left} ${at}H${left + wide}`);
    return <path className="frame-ink frame-rule" d={[...upright, ...level].join('')} />;
  }
  const isPlan = sheet.subject.kind === 'plan';
  const shown = apart(sheet.upright, unit).filter(({ at }) => at > left && at < left + wide);
  const rows = apart(sheet.level, unit).filter(({ at }) => at > top + 30 * unit && at < top + high);
  return (
    <g className="frame-labels" fontSize={13 * unit}>
      {shown.map(({ label, at }) => (
        <Bubble
          key={label}
          u={insideBy(bubbleWidth(label, unit) / 2 + unit, at, left, left + wide)}
          v={top + 20 * unit}
          label={label}
          unit={unit}
        />
      ))}
      {rows.map(({ label, at, stated }) =>
        isPlan ? (
          <Bubble
            key={label}
            u={left + Math.max(20 * unit, bubbleWidth(label, unit) / 2 + unit)}
            v={insideBy(13 * unit, at, top, top + high)}
            label={label}
            unit={unit}
          />
        ) : (
          <g key={label}>
            <text x={left + 4 * unit} y={at - 5 * unit} strokeWidth={4 * unit} className="frame-level">
              {label}
            </text>
            <text
              x={left + 4 * unit}
              y={Math.min(at + 13 * unit, top + high - 4 * unit)}
              strokeWidth={4 * unit}
              className="frame-level-height"
              fontSize={11 * unit}
            >
              {heightText(t, lang, stated)}
            </text>
          </g>
        ),
      )}
    </g>
  );
}

interface BubbleProps {
  readonly u: number;
  readonly v: number;
  readonly label: string;
  readonly unit: number;
}

const bubbleWidth = (label: string, unit: number) => Math.max(24, widthOf(label) + 12) * unit;

/** So far from both edges, or as near to that as the window allows: a label at the edge is not cut. */
const insideBy = (room: number, at: number, from: number, to: number) =>
  Math.max(from + room, Math.min(at, to - room));

/** The name of a line in a circle, longer ones in a rounded box. */
function Bubble({ u, v, label, unit }: BubbleProps) {
  const wide = bubbleWidth(label, unit);
  return (
    <g>
      <rect
        className="frame-ink frame-bubble"
        {...{ x: u - wide / 2, y: v - 12 * unit, width: wide, height: 24 * unit, rx: 12 * unit }}
      />
      <text x={u} y={v + 4.8 * unit} textAnchor="middle">
        {label}
      </text>
    </g>
  );
}

function heightText(t: Words, lang: Language, mm: number): string {
  const size = formatNumber(Math.abs(Math.round(mm)), lang);
  return t(mm < 0 ? 'frame.below' : 'frame.height', { mm: size });
}

function apart<R extends { readonly at: number }>(rules: readonly R[], unit: number): R[] {
  const kept: R[] = [];
  for (const rule of rules) {
    const last = kept.at(-1);
    if (!last || Math.abs(rule.at - last.at) >= LEAST_APART * unit) kept.push(rule);
  }
  return kept;
}
