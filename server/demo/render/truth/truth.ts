import type { Camera } from '../camera.ts';
import { NOBODY } from '../mesh/mesh.ts';
import type { OrientedBox } from '../oriented-box.ts';
import { areaOf, inPicture } from './polygon.ts';
import { silhouetteOf } from './silhouette.ts';

/** A member as the truth knows it. */
export interface Known {
  readonly mark: string;
  readonly kind: string | null;
  readonly stage: string;
  readonly box: OrientedBox;
}

/** What a picture shows of one member. */
export interface Shown {
  readonly mark: string;
  readonly kind: string | null;
  readonly stage: string;
  /** Pixels at whose middle it is the first thing. */
  readonly pixels: number;
  /** These as a share of its outline, all of it and what of it lies in the picture; 4 digits. */
  readonly ofWhole: number;
  readonly ofPicture: number;
  /** About its pixels: left, top, right, bottom; null where it has none. */
  readonly bounds: readonly [number, number, number, number] | null;
  /** Of its box if nothing stood before it, cut at the picture's edge: x and y in turn, to a tenth of a pixel. */
  readonly outline: readonly number[];
}

export interface Truth {
  readonly width: number;
  readonly height: number;
  readonly camera: Pick<Camera, 'position' | 'right' | 'down' | 'forward' | 'focalPx'>;
  /** In the order of the house; those whose outline lies wholly outside the picture are left out. */
  readonly members: readonly Shown[];
}

export function truthOf(camera: Camera, members: readonly Known[], seen: Int32Array): Truth {
  const counts = countsOf(seen, camera.width, members.length);
  const { width, height, position, right, down, forward, focalPx } = camera;
  return {
    ...{ width, height, camera: { position, right, down, forward, focalPx } },
    members: members.flatMap((member, i) => shownOf(camera, member, counts[i]!) ?? []),
  };
}

interface Count {
  pixels: number;
  left: number;
  top: number;
  right: number;
  bottom: number;
}

function countsOf(seen: Int32Array, width: number, members: number): Count[] {
  const counts = Array.from({ length: members }, (): Count => {
    return { pixels: 0, left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  });
  for (const [pixel, member] of seen.entries()) {
    if (member === NOBODY) continue;
    const count = counts[member]!;
    const [x, y] = [pixel % width, Math.floor(pixel / width)];
    count.pixels += 1;
    count.left = Math.min(count.left, x);
    count.top = Math.min(count.top, y);
    count.right = Math.max(count.right, x + 1);
    count.bottom = Math.max(count.bottom, y + 1);
  }
  return counts;
}

function shownOf(camera: Camera, { mark, kind, stage, box }: Known, count: Count): Shown | null {
  const whole = silhouetteOf(box, camera);
  const outline = inPicture(whole, camera.width, camera.height);
  if (outline.length < 3) return null;
  const { pixels, left, top, right, bottom } = count;
  return {
    ...{ mark, kind, stage, pixels },
    ofWhole: share(pixels, areaOf(whole)),
    ofPicture: share(pixels, areaOf(outline)),
    bounds: pixels === 0 ? null : [left, top, right, bottom],
    outline: outline.flatMap(([x, y]) => [tenth(x), tenth(y)]),
  };
}

const share = (pixels: number, area: number) =>
  area === 0 ? 0 : Math.round(Math.min(1, pixels / area) * 1e4) / 1e4;
const tenth = (value: number) => Math.round(value * 10) / 10;
