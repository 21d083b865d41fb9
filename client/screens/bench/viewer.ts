import OpenSeadragon from 'openseadragon';
import type { UnitPoint } from '#domain/photo/region';
import { leastRatio } from './least-ratio.ts';

export interface ViewerLevel {
  readonly url: string;
  readonly width: number;
  readonly height: number;
}

/** Where the picture lies on the screen: its top left corner, and its width, in CSS pixels of the viewer. */
export interface View {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

export interface Viewer {
  /** Lies over the picture and moves with nothing: what is drawn there follows `onView`. */
  readonly surface: HTMLElement;
  readonly view: () => View;
  /** What is drawn of the picture at the moment. */
  readonly canvas: () => HTMLCanvasElement | null;
  readonly toUnit: (clientX: number, clientY: number) => UnitPoint;
  readonly zoom: (by: 'in' | 'out' | 'all') => void;
  /** In unit lengths of the picture. */
  readonly pan: (by: UnitPoint) => void;
  readonly pinch: (
    centre: readonly [number, number],
    factor: number,
    moved: readonly [number, number],
  ) => void;
  readonly destroy: () => void;
}

export interface ViewerOptions {
  readonly levels: readonly ViewerLevel[];
  /** Height by width of the upright image. */
  readonly tallness: number;
  readonly isStill: boolean;
  readonly onView: (view: View) => void;
  /** Something of the picture is drawn. */
  readonly onSeen: () => void;
}

const NO_CLICKS = { clickToZoom: false, dblClickToZoom: false, flickEnabled: false };

/** On a weak network a picture comes late or at the third try; left to itself the viewer gives up at the first. */
const PATIENCE = { timeout: 120_000, tileRetryMax: 1000, tileRetryDelay: 2000 };

/** How wide the picture is when all of it is seen. */
const shownWhole = ({ clientWidth, clientHeight }: HTMLElement, tallness: number) =>
  Math.min(clientWidth, clientHeight / tallness);

/** The picture, to be moved and zoomed; everything that is drawn on it is our own. */
export function createViewer(
  element: HTMLElement,
  { levels, tallness, isStill, onView, onSeen }: ViewerOptions,
): Viewer {
  const viewer = new OpenSeadragon.Viewer({
    element,
    drawer: 'canvas',
    tileSources: { type: 'legacy-image-pyramid', levels: [...levels] },
    showNavigationControl: false,
    gestureSettingsMouse: NO_CLICKS,
    gestureSettingsTouch: NO_CLICKS,
    gestureSettingsPen: NO_CLICKS,
    visibilityRatio: 0.4,
    minZoomImageRatio: 0.8,
    maxZoomPixelRatio: 4,
    minPixelRatio: leastRatio(levels, shownWhole(element, tallness), window.devicePixelRatio),
    animationTime: isStill ? 0 : 0.3,
    immediateRender: true,
    ...PATIENCE,
  });
  viewer.canvas.tabIndex = -1;
  // The viewer takes the focus at each press, which scrolls the page under the hand.
  viewer.canvas.focus = () => element.parentElement?.focus({ preventScroll: true });
  // A layer of our own within: what it keeps to itself the viewer does not hear.
  const surface = document.createElement('div');
  surface.className = 'bench-surface';
  viewer.canvas.append(surface);
  viewer.addHandler('canvas-key', (event) => {
    event.preventDefaultAction = true;
  });
  const point = (x: number, y: number) => new OpenSeadragon.Point(x, y);
  const view = (): View => {
    const corner = viewer.viewport.pixelFromPoint(point(0, 0), true);
    const right = viewer.viewport.pixelFromPoint(point(1, 0), true);
    return { x: corner.x, y: corner.y, width: right.x - corner.x };
  };
  const atPixel = (clientX: number, clientY: number) => {
    const box = viewer.canvas.getBoundingClientRect();
    return viewer.viewport.pointFromPixel(point(clientX - box.left, clientY - box.top), true);
  };
  const tell = () => onView(view());
  viewer.addHandler('update-viewport', tell);
  viewer.addHandler('open', tell);
  viewer.addOnceHandler('tile-loaded', onSeen);
  // A picture that failed at first counts as settled: when it does come it would wait for the next movement.
  viewer.addHandler('tile-loaded', ({ tiledImage }) => tiledImage.setClip(null));
  return {
    surface,
    view,
    canvas: () => viewer.canvas.querySelector('canvas'),
    toUnit(clientX, clientY) {
      const { x, y } = atPixel(clientX, clientY);
      return [x, y / tallness];
    },
    zoom(by) {
      if (by === 'all') viewer.viewport.goHome();
      else viewer.viewport.zoomBy(by === 'in' ? 1.4 : 1 / 1.4);
      viewer.viewport.applyConstraints();
    },
    pan([x, y]) {
      viewer.viewport.panBy(point(x, y * tallness));
      viewer.viewport.applyConstraints();
    },
    pinch([clientX, clientY], factor, [dx, dy]) {
      viewer.viewport.panBy(viewer.viewport.deltaPointsFromPixels(point(-dx, -dy), true), true);
      viewer.viewport.zoomBy(factor, atPixel(clientX, clientY), true);
      viewer.viewport.applyConstraints(true);
    },
    destroy: () => viewer.destroy(),
  };
}
