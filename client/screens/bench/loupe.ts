import type { UnitPoint } from '#domain/photo/region';
import type { BenchState } from './bench-model.ts';
import { boxInHand, cutInHand } from './gestures.ts';
import { SHEET, linePath, regionPath } from './region-shape.ts';
import type { Viewer } from './viewer.ts';

/** A round piece of the picture, enlarged, beside the finger that hides it. */
export interface Loupe {
  /** Where the finger is, in pixels of the window. */
  readonly show: (clientX: number, clientY: number) => void;
  readonly hide: () => void;
  readonly destroy: () => void;
}

export interface LoupeParts {
  readonly stage: HTMLElement;
  readonly viewer: Viewer;
  readonly tallness: number;
  readonly bench: () => BenchState;
}

const SIZE = 132;
const ZOOM = 2;
/** From the finger's middle: a thumb is about 20 mm wide, at 160 px an inch 126 px. */
const ABOVE = 64;

export function createLoupe({ stage, viewer, tallness, bench }: LoupeParts): Loupe {
  const canvas = document.createElement('canvas');
  canvas.className = 'bench-loupe';
  canvas.setAttribute('aria-hidden', 'true');
  canvas.hidden = true;
  stage.append(canvas);
  const pen = canvas.getContext('2d');
  return {
    show(clientX, clientY) {
      const { left, top, width } = stage.getBoundingClientRect();
      const finger: UnitPoint = [clientX - left, clientY - top];
      const [x, y] = loupePlace(finger, width);
      canvas.style.transform = `translate(${x}px, ${y}px)`;
      canvas.hidden = false;
      if (pen) drawUnder(pen, finger, { viewer, tallness, bench });
    },
    hide() {
      canvas.hidden = true;
    },
    destroy: () => canvas.remove(),
  };
}

/** Top left corner of the loupe on the stage: above the finger, or at its inner side where there is no room. */
export function loupePlace([x, y]: UnitPoint, stageWidth: number): [number, number] {
  const across = Math.min(Math.max(0, x - SIZE / 2), Math.max(0, stageWidth - SIZE));
  const up = y - ABOVE - SIZE;
  if (up >= 0) return [across, up];
  const beside = x > stageWidth / 2 ? x - ABOVE - SIZE : x + ABOVE;
  return [Math.min(Math.max(0, beside), Math.max(0, stageWidth - SIZE)), Math.max(0, y - SIZE / 2)];
}

function drawUnder(
  pen: CanvasRenderingContext2D,
  [x, y]: UnitPoint,
  { viewer, tallness, bench }: Omit<LoupeParts, 'stage'>,
): void {
  const density = window.devicePixelRatio;
  const { canvas } = pen;
  if (canvas.width !== SIZE * density) canvas.width = canvas.height = SIZE * density;
  const side = SIZE / ZOOM;
  pen.setTransform(density, 0, 0, density, 0, 0);
  pen.fillStyle = '#1f1a14';
  pen.fillRect(0, 0, SIZE, SIZE);
  const picture = viewer.canvas();
  if (picture && picture.clientWidth > 0) {
    const scale = picture.width / picture.clientWidth;
    const from = [(x - side / 2) * scale, (y - side / 2) * scale] as const;
    pen.drawImage(picture, ...from, side * scale, side * scale, 0, 0, SIZE, SIZE);
  }
  drawLines(
    pen,
    inHand(bench(), tallness),
    (view) => {
      const scale = (view.width / SHEET) * ZOOM;
      const shift = (corner: number, finger: number) => (corner - finger) * ZOOM + SIZE / 2;
      pen.transform(scale, 0, 0, scale, shift(view.x, x), shift(view.y, y));
      return scale;
    },
    viewer,
  );
  drawCross(pen, density);
}

/** What is being drawn, as an SVG path in sheet units. */
function inHand(state: BenchState, tallness: number): string {
  const region = boxInHand(state) ?? state.work.draft?.region;
  const line = cutInHand(state) ?? state.work.corners;
  return (region ? regionPath(region, tallness) : '') + (line.length > 0 ? linePath(line, tallness) : '');
}

function drawLines(
  pen: CanvasRenderingContext2D,
  path: string,
  toSheet: (view: ReturnType<Viewer['view']>) => number,
  viewer: Viewer,
): void {
  const scale = toSheet(viewer.view());
  const lines = new Path2D(path);
  for (const [colour, width] of [
    ['#fdfaf3', 4],
    ['#d23c1b', 2],
  ] as const) {
    pen.strokeStyle = colour;
    pen.lineWidth = width / scale;
    pen.stroke(lines);
  }
}

function drawCross(pen: CanvasRenderingContext2D, density: number): void {
  pen.setTransform(density, 0, 0, density, 0, 0);
  const middle = SIZE / 2;
  for (const [colour, width] of [
    ['#fdfaf3', 3],
    ['#1f1a14', 1],
  ] as const) {
    pen.strokeStyle = colour;
    pen.lineWidth = width;
    pen.stroke(new Path2D(`M${middle - 9} ${middle}h18M${middle} ${middle - 9}v18`));
  }
}
