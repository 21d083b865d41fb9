import { dot } from '#domain/frame/clip';
import { layered, ramp } from '../noise.ts';
import type { Colour } from '../surface/surface.ts';
import type { Vec } from '../vec.ts';

/**
 * What lights the picture. Light is counted so that a white card which sees nothing but a sky of radiance 1 has
 * radiance 1; the sun's power is what it adds to a white card square to it.
 */
export type SkyKind =
  | { readonly kind: 'even'; readonly radiance: number }
  | { readonly kind: 'day'; readonly sun: Vec; readonly clouds: number };

export interface Sun {
  readonly direction: Vec;
  readonly power: Colour;
  /** Of its disc seen from here, as a tangent. */
  readonly radius: number;
}

/** The sun's disc is half a degree wide. A little more, for haze. */
const SUN_RADIUS = 0.0062;
const SUN_POWER: Colour = [5.5, 5.07, 4.4];

const ZENITH: Colour = [0.14, 0.29, 0.64];
const LOW: Colour = [0.6, 0.73, 0.92];
const HORIZON: Colour = [0.86, 0.9, 0.94];
const BELOW: Colour = [0.26, 0.24, 0.21];

export function sunOf(sky: SkyKind): Sun | null {
  return sky.kind === 'day' ? { direction: sky.sun, power: SUN_POWER, radius: SUN_RADIUS } : null;
}

export class Sky {
  red = 0;
  green = 0;
  blue = 0;
  private readonly kind: SkyKind;

  constructor(kind: SkyKind) {
    this.kind = kind;
  }

  /** Looks in a direction; clouds are drawn only where somebody sees them. */
  look(x: number, y: number, z: number, isSeen: boolean): void {
    const { kind } = this;
    if (kind.kind === 'even') this.set([kind.radiance, kind.radiance, kind.radiance]);
    else if (z < 0) this.set(BELOW);
    else {
      this.set(LOW);
      this.mix(ZENITH, Math.sqrt(z));
      this.mix(HORIZON, 0.75 * Math.exp(-z * 11));
      const towardsSun = Math.max(0, dot([x, y, z], kind.sun));
      this.glow(towardsSun);
      this.cloud(x, y, z, { towardsSun, clouds: kind.clouds, isSeen });
    }
  }

  private glow(towardsSun: number): void {
    const glow = 0.5 * towardsSun ** 6 + 1.1 * towardsSun ** 48;
    this.red += glow;
    this.green += glow * 0.93;
    this.blue += glow * 0.8;
  }

  private cloud(
    x: number,
    y: number,
    z: number,
    { towardsSun, clouds, isSeen }: { towardsSun: number; clouds: number; isSeen: boolean },
  ): void {
    const far = 1 / (z + 0.13);
    const thickness = isSeen ? layered(x * far * 0.75 + 3, y * far * 0.75 + clouds * 7, 1.7, 7) : 0.45;
    const cover = isSeen ? 0.92 * ramp(thickness, 0.43, 0.6) * (0.25 + 0.75 * ramp(z, 0, 0.16)) : 0.3;
    const light = 1.72 - 0.6 * ramp(thickness, 0.47, 0.72) + 0.5 * towardsSun ** 3;
    this.mix([light * 0.99, light, light * 1.015], cover);
  }

  private set([red, green, blue]: Colour): void {
    this.red = red;
    this.green = green;
    this.blue = blue;
  }

  private mix([red, green, blue]: Colour, share: number): void {
    this.red += (red - this.red) * share;
    this.green += (green - this.green) * share;
    this.blue += (blue - this.blue) * share;
  }
}
