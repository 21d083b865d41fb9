import { Fragment, memo, useId, type ReactNode, type SVGProps } from 'react';
import type { Sheet } from '#domain/frame/drawing/sheet';
import { InkPatterns } from './ink-patterns.tsx';
import { INKS, polyline, type Paths } from './ink.ts';
import { SheetRules } from './sheet-rules.tsx';
import { seenIn, viewBoxOf, type SheetWindow, type Size } from './sheet-window.ts';
import { zoneLabels } from './zone-labels.ts';
import type { ZoneLook } from './zone-look.ts';

export interface SheetDrawingProps extends Omit<SVGProps<SVGSVGElement>, 'children'> {
  readonly sheet: Sheet;
  readonly paths: Paths;
  readonly window: SheetWindow;
  readonly size: Size;
  readonly label: string;
  readonly zoneOf: (covering: string) => ZoneLook;
  readonly children?: ReactNode;
}

/** One sheet as SVG: rules of the grid, zones, ink, labels. Only paths change from day to day. */
export function SheetDrawing({
  sheet,
  paths,
  window,
  size,
  label,
  zoneOf,
  children,
  ...rest
}: SheetDrawingProps) {
  const id = useId();
  const { unit } = window;
  return (
    <svg {...rest} className="frame-sheet" role="img" aria-label={label} viewBox={viewBoxOf(window, size)}>
      <InkPatterns id={id} unit={unit} />
      <SheetRules sheet={sheet} window={window} size={size} part="rules" />
      <Zones id={id} sheet={sheet} zoneOf={zoneOf} />
      <SheetInk id={id} paths={paths} />
      <g fontSize={13 * unit} className="frame-zone-labels">
        {zoneLabels(sheet.zones, zoneOf, unit, seenIn(window, size)).map(
          ({ covering, text, u, v, width, height }) => (
            <g key={covering}>
              <rect {...{ x: u, y: v, width, height }} />
              <text x={u + width / 2} y={v + height * 0.7} textAnchor="middle">
                {text}
              </text>
            </g>
          ),
        )}
      </g>
      {children}
      <SheetRules sheet={sheet} window={window} size={size} part="labels" />
    </svg>
  );
}

const STAGES_HATCHED: ReadonlySet<string> = new Set(['cut', 'raised', 'pegged', 'lath-on']);

const SheetInk = memo(function SheetInk({ id, paths }: { id: string; paths: Paths }) {
  return (
    <g className="frame-inks">
      {INKS.map((ink) => {
        const fill = STAGES_HATCHED.has(ink) ? { fill: `url(#${id}-${ink})` } : {};
        return (
          <Fragment key={ink}>
            {ink === 'held' ? <path className="frame-ink frame-ink-held-edge" d={paths.held} /> : null}
            <path className={`frame-ink frame-ink-${ink}`} {...fill} d={paths[ink]} />
          </Fragment>
        );
      })}
    </g>
  );
});

function Zones({ id, sheet, zoneOf }: { id: string; sheet: Sheet; zoneOf: (covering: string) => ZoneLook }) {
  return (
    <g>
      {sheet.zones.map(({ covering, corners }) => {
        const { isClosed } = zoneOf(covering);
        return (
          <path
            key={covering}
            className={`frame-ink frame-zone frame-zone-${isClosed ? 'closed' : 'open'}`}
            {...(isClosed ? { fill: `url(#${id}-plaster)` } : {})}
            d={`${polyline(corners)}Z`}
          />
        );
      })}
    </g>
  );
}
