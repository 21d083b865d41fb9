import type { Film } from '../light/film.ts';

/** Weights of a cubic spline over five places. */
const KERNEL = [0.0625, 0.25, 0.375, 0.25, 0.0625] as const;
/** Farther than this (m) is sky, which has no noise. */
const SKY_M = 5000;

type Noisy = Pick<Film, 'light' | 'variance'>;

/**
 * What is seen, three numbers a pixel. The light is smoothed, not the pattern that it falls on, and not across edges
 * of things: H. Dammertz et al., "Edge-avoiding À-Trous wavelet transform for fast global illumination filtering",
 * HPG 2010, with the variance as in C. Schied et al., "Spatiotemporal variance-guided filtering", HPG 2017.
 */
export function smoothed(film: Film, passes: number): Float32Array {
  let noisy: Noisy = film;
  const normals = straightNormals(film);
  for (let pass = 0; pass < passes; pass += 1) {
    const next = new Pass(film, normals, noisy, 1 << pass);
    next.run();
    noisy = next;
  }
  return noisy.light.map((value, i) => value * film.colour[i]! + film.shine[i]!);
}

function straightNormals({ guide }: Film): Float32Array {
  const normals = Float32Array.from(guide);
  for (let p = 0; p < normals.length; p += 4) {
    const size = Math.hypot(normals[p]!, normals[p + 1]!, normals[p + 2]!) || 1;
    for (let k = 0; k < 3; k += 1) normals[p + k]! /= size;
  }
  return normals;
}

const greyAt = (light: Float32Array, p: number) =>
  0.3 * light[3 * p]! + 0.6 * light[3 * p + 1]! + 0.1 * light[3 * p + 2]!;

/** One pass over places that lie `step` pixels apart. */
class Pass {
  readonly light: Float32Array;
  readonly variance: Float32Array;
  private readonly width: number;
  private readonly height: number;
  private readonly normals: Float32Array;
  private readonly from: Float32Array;
  private readonly spread: Float32Array;
  private readonly step: number;

  constructor({ width, height }: Film, normals: Float32Array, { light, variance }: Noisy, step: number) {
    this.width = width;
    this.height = height;
    this.normals = normals;
    this.from = light;
    this.spread = variance;
    this.step = step;
    this.light = Float32Array.from(light);
    this.variance = Float32Array.from(variance);
  }

  run(): void {
    for (let y = 0; y < this.height; y += 1)
      for (let x = 0; x < this.width; x += 1)
        if (this.normals[4 * (y * this.width + x) + 3]! < SKY_M) this.pixel(x, y);
  }

  private pixel(x: number, y: number): void {
    const { from, spread, step, width } = this;
    const p = y * width + x;
    const perLight = 1 / (2.2 * Math.sqrt(this.noiseAbout(x, y)) + 0.008);
    const perMetre = 1 / (0.012 * this.normals[4 * p + 3]! * step + 0.004);
    let [sum, red, green, blue, noise] = [0, 0, 0, 0, 0];
    for (let j = -2; j <= 2; j += 1)
      for (let i = -2; i <= 2; i += 1) {
        const [qx, qy] = [x + i * step, y + j * step];
        if (qx < 0 || qy < 0 || qx >= width || qy >= this.height) continue;
        const q = qy * width + qx;
        const weight =
          KERNEL[i + 2]! * KERNEL[j + 2]! * (p === q ? 1 : this.likeness(p, q, perLight, perMetre));
        sum += weight;
        red += weight * from[3 * q]!;
        green += weight * from[3 * q + 1]!;
        blue += weight * from[3 * q + 2]!;
        noise += weight * weight * spread[q]!;
      }
    this.light.set([red / sum, green / sum, blue / sum], 3 * p);
    this.variance[p] = noise / (sum * sum);
  }

  private noiseAbout(x: number, y: number): number {
    let [sum, weights] = [0, 0];
    for (let j = Math.max(0, y - 1); j <= Math.min(this.height - 1, y + 1); j += 1)
      for (let i = Math.max(0, x - 1); i <= Math.min(this.width - 1, x + 1); i += 1) {
        const weight = (i === x ? 2 : 1) * (j === y ? 2 : 1);
        sum += weight * this.spread[j * this.width + i]!;
        weights += weight;
      }
    return sum / weights;
  }

  /** 1 for a place of the same surface in the same light, 0 for another. */
  private likeness(p: number, q: number, perLight: number, perMetre: number): number {
    const n = this.normals;
    const facing = n[4 * p]! * n[4 * q]! + n[4 * p + 1]! * n[4 * q + 1]! + n[4 * p + 2]! * n[4 * q + 2]!;
    if (facing < 0.5) return 0;
    const far = Math.abs(n[4 * p + 3]! - n[4 * q + 3]!) * perMetre;
    if (far > 4) return 0;
    const unlike = Math.abs(greyAt(this.from, p) - greyAt(this.from, q)) * perLight;
    return unlike > 6 ? 0 : Math.min(1, facing) ** 16 * Math.exp(-far - unlike);
  }
}
