import { useEffect, useMemo, useRef, useState, type PointerEvent, type ReactNode } from 'react';
import type { Flat } from '#domain/frame/drawing/flat';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../i18n/use-words.ts';
import { SheetDrawing, type SheetDrawingProps } from './sheet-drawing.tsx';
import { EMPTY_HAND, handDown, handMove, handUp, type HandDeed, type Spot } from './sheet-hand.ts';
import { fitted, moved, pointUnder, zoomed, type SheetWindow } from './sheet-window.ts';
import { useSize } from './use-size.ts';

/** How near a pointer must come to a member, in pixels. */
const MOUSE_REACH = 5;
const FINGER_REACH = 16;
const STEP = 1.5;

export interface SheetPoint {
  readonly at: Flat;
  /** How far from it is still meant, in mm. */
  readonly reach: number;
  readonly isFinger: boolean;
}

export interface SheetViewProps extends Pick<SheetDrawingProps, 'sheet' | 'paths' | 'label' | 'zoneOf'> {
  /** The pointer is over this point; null: it left. */
  readonly onHover?: (point: SheetPoint | null) => void;
  readonly onPress?: (point: SheetPoint) => void;
  /** Given, a drag draws from one point to another instead of moving the sheet. */
  readonly onDraw?: (from: Flat, to: Flat, isDone: boolean) => void;
  readonly children?: (unit: number) => ReactNode;
}

/** A sheet that one can come closer to: by buttons, wheel and two fingers. */
export function SheetView({ onHover, onPress, onDraw, children, ...drawing }: SheetViewProps) {
  const { sheet } = drawing;
  const frame = useRef<HTMLDivElement>(null);
  const hand = useRef(EMPTY_HAND);
  const drawnFrom = useRef<Flat | null>(null);
  const size = useSize(frame);
  const whole = useMemo(() => fitted(sheet.bounds, size), [sheet.bounds, size]);
  const [near, setNear] = useState<{ key: string; window: SheetWindow } | null>(null);
  const window = near?.key === sheet.key ? near.window : whole;
  const isWhole = window.unit >= whole.unit;
  const look = (next: SheetWindow) => setNear(next === whole ? null : { key: sheet.key, window: next });
  const spotOf = ({ clientX, clientY }: { clientX: number; clientY: number }): Spot => {
    const box = frame.current?.getBoundingClientRect();
    return { x: clientX - (box?.left ?? 0), y: clientY - (box?.top ?? 0) };
  };
  const under = ({ x, y }: Spot) => pointUnder(window, size, x, y);
  const pointOf = (spot: Spot, type: string): SheetPoint => {
    const isFinger = type !== 'mouse';
    return { at: under(spot), reach: (isFinger ? FINGER_REACH : MOUSE_REACH) * window.unit, isFinger };
  };
  const obey = (deed: HandDeed, type: string) => {
    if (deed.kind === 'move' && !isWhole) look(moved(window, deed.dx, deed.dy, sheet.bounds));
    else if (deed.kind === 'pinch') look(zoomed(window, whole, deed.factor, under(deed.about)));
    else if (deed.kind === 'press') onPress?.(pointOf(deed.at, type));
  };
  const onPointerDown = (event: PointerEvent) => {
    if (event.button !== 0) return;
    hand.current = handDown(hand.current, event.pointerId, spotOf(event));
    drawnFrom.current = onDraw && hand.current.down.size === 1 ? under(spotOf(event)) : null;
    if (onDraw) event.currentTarget.setPointerCapture(event.pointerId);
  };
  const onPointerMove = (event: PointerEvent) => {
    const spot = spotOf(event);
    if (hand.current.down.size === 0) onHover?.(pointOf(spot, event.pointerType));
    if (drawnFrom.current) onDraw?.(drawnFrom.current, under(spot), false);
    else {
      const [next, deed] = handMove(hand.current, event.pointerId, spot);
      hand.current = next;
      obey(deed, event.pointerType);
    }
  };
  const onPointerUp = (event: PointerEvent) => {
    const [next, deed] = handUp(hand.current, event.pointerId);
    hand.current = next;
    if (drawnFrom.current) onDraw?.(drawnFrom.current, under(spotOf(event)), true);
    else obey(deed, event.pointerType);
    drawnFrom.current = null;
  };
  const onLost = (event: PointerEvent) => {
    hand.current = handUp(hand.current, event.pointerId)[0];
    drawnFrom.current = null;
    onHover?.(null);
  };
  const wheel = useRef<(event: WheelEvent) => void>(() => undefined);
  useEffect(() => {
    wheel.current = (event) => {
      // The page goes on scrolling over a sheet that is seen whole.
      if (isWhole && !event.ctrlKey && !event.metaKey) return;
      event.preventDefault();
      look(zoomed(window, whole, Math.exp(-event.deltaY / 300), under(spotOf(event))));
    };
  });
  useEffect(() => {
    const { current } = frame;
    const turn = (event: WheelEvent) => wheel.current(event);
    current?.addEventListener('wheel', turn, { passive: false });
    return () => current?.removeEventListener('wheel', turn);
  }, []);
  return (
    <div className="frame-view">
      <div ref={frame} className={`frame-window${isWhole && !onDraw ? '' : ' frame-window-near'}`}>
        <SheetDrawing
          {...drawing}
          {...{ window, size, onPointerDown, onPointerMove, onPointerUp }}
          onPointerCancel={onLost}
          onPointerLeave={onLost}
        >
          {children?.(window.unit)}
        </SheetDrawing>
      </div>
      <ZoomButtons
        isWhole={isWhole}
        onZoom={(factor) => look(factor === 0 ? whole : zoomed(window, whole, factor, window.middle))}
      />
    </div>
  );
}

function ZoomButtons({ isWhole, onZoom }: { isWhole: boolean; onZoom: (factor: number) => void }) {
  const { t } = useWords();
  return (
    <div className="frame-zoom no-print">
      <Button aria-label={t('frame.zoom.in')} onPress={() => onZoom(STEP)}>
        <ZoomSign d="M12 5v14M5 12h14" />
      </Button>
      <Button aria-label={t('frame.zoom.out')} isDisabled={isWhole} onPress={() => onZoom(1 / STEP)}>
        <ZoomSign d="M5 12h14" />
      </Button>
      <Button aria-label={t('frame.zoom.whole')} isDisabled={isWhole} onPress={() => onZoom(0)}>
        <ZoomSign d="M5 10V5h5M19 14v5h-5M5 14v5h5M19 10V5h-5" />
      </Button>
    </div>
  );
}

function ZoomSign({ d }: { d: string }) {
  return (
    <svg className="frame-sign" viewBox="0 0 24 24" aria-hidden="true">
      <path d={d} />
    </svg>
  );
}
