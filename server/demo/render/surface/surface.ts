/** Linear light, 0 to 1 in red, green and blue. */
export type Colour = readonly [red: number, green: number, blue: number];

/** From a colour as screens write it; nearly sRGB's curve. */
export function linear(hex: number): Colour {
  const part = (shift: number) => (((hex >> shift) & 255) / 255) ** 2.2;
  return [part(16), part(8), part(0)];
}

/** Where a ray met a thing; metres. */
export interface Spot {
  /** On the thing: along its grain, across and upward. */
  lx: number;
  ly: number;
  lz: number;
  /** In the house. */
  x: number;
  y: number;
  z: number;
  tone: number;
  /** What a pixel measures there: finer than that nothing is drawn. */
  spread: number;
}

/** What a thing looks like at a spot; one object is painted again and again. */
export class Surface {
  red = 0;
  green = 0;
  blue = 0;
  /** 0 like a mirror to 1 like chalk. */
  roughness = 0.8;
  /** How much of the sun it throws back at a glance. */
  gloss = 0;
  /** By how much its normal is bent, towards x, y and z. */
  bendX = 0;
  bendY = 0;
  bendZ = 0;

  plain(colour: Colour): void {
    [this.red, this.green, this.blue] = colour;
    this.roughness = 0.8;
    this.gloss = 0;
    this.bendX = 0;
    this.bendY = 0;
    this.bendZ = 0;
  }

  mix(colour: Colour, share: number): void {
    this.red += (colour[0] - this.red) * share;
    this.green += (colour[1] - this.green) * share;
    this.blue += (colour[2] - this.blue) * share;
  }

  dim(red: number, green = red, blue = red): void {
    this.red *= red;
    this.green *= green;
    this.blue *= blue;
  }

  shine(gloss: number, roughness: number): void {
    this.gloss = gloss;
    this.roughness = roughness;
  }
}

/** Paints what is seen at a spot. */
export type Look = (spot: Spot, on: Surface) => void;

/** Bends the normal down the slope of a height above the surface, m. Returns the height. */
export function relief(
  { x, y, z }: Pick<Spot, 'x' | 'y' | 'z'>,
  height: (x: number, y: number, z: number) => number,
  step: number,
  on: Surface,
): number {
  const here = height(x, y, z);
  on.bendX = (height(x + step, y, z) - here) / step;
  on.bendY = (height(x, y + step, z) - here) / step;
  on.bendZ = (height(x, y, z + step) - here) / step;
  return here;
}
