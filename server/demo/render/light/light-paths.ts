import { cross } from '#domain/frame/clip';
import { UP, unit, type Vec } from '../vec.ts';
import { Bvh } from './bvh.ts';
import { Place } from './place.ts';
import { Ray } from './ray.ts';
import { DIMENSIONS, Samples } from './samples.ts';
import type { Scene } from './scene.ts';
import { Sky, sunOf, type Sun } from './sky.ts';

export const FARTHEST_MM = 5e6;
/** Nothing outside this shades the site. */
const SHADE_MM = 4e5;
/** A ray that leaves a surface starts so far before it. */
export const OFF_MM = 0.5;
/** Of light that comes through a leaf. */
const THROUGH = 0.55;
/** A single path that finds the sun in a mirror of a mirror would be a white speck. */
const BRIGHTEST = 14;

/**
 * Finds the light at a place by following it backward: J. Kajiya, "The rendering equation", SIGGRAPH 1986. At each
 * place the sun is asked for directly; the sky and all that is lit is found by the next ray, sent the more often the
 * squarer.
 */
export class LightPaths {
  readonly ray = new Ray();
  readonly place: Place;
  readonly samples = new Samples();
  readonly sky: Sky;
  readonly bvh: Bvh;
  /** What fell on the place, and what of the sun it threw to the eye at a glance. */
  readonly found = [0, 0, 0] as [number, number, number];
  readonly glint = [0, 0, 0] as [number, number, number];
  private readonly eye: Vec;
  private readonly bounces: number;
  private readonly sun: Sun | null;
  private readonly sunSides: readonly [Vec, Vec];
  private readonly shadow = new Ray();
  /** Of what is found further on, so much arrives. */
  private readonly passed = [1, 1, 1] as [number, number, number];
  /** Towards the sun, a little about its middle. */
  private readonly sunward = [0, 0, 0] as [number, number, number];
  private roughness = 1;

  constructor({ mesh, bvh, sky }: Scene, eye: Vec, bounces: number) {
    this.eye = eye;
    this.bounces = bounces;
    this.bvh = new Bvh(bvh);
    this.place = new Place(mesh, bvh);
    this.sky = new Sky(sky);
    this.sun = sunOf(sky);
    const towards = this.sun?.direction ?? UP;
    const one = unit(cross([0.6, 0.8, 0], towards));
    this.sunSides = [one, cross(towards, one)];
  }

  /** All light that falls on where the ray has met something. */
  gather(gloss: number, roughness = 1): void {
    this.found.fill(0);
    this.glint.fill(0);
    this.roughness = roughness;
    this.follow(gloss);
    for (let k = 0; k < 3; k += 1) this.found[k] = Math.min(this.found[k]!, BRIGHTEST);
  }

  private follow(gloss: number): void {
    const { ray, place, found, passed, sky } = this;
    passed.fill(1);
    for (let bounce = 0; ; bounce += 1) {
      this.addSun(bounce, bounce === 0 ? gloss : 0);
      if (!this.leave(bounce)) return;
      if (!this.bvh.nearest(ray)) {
        sky.look(ray.dx, ray.dy, ray.dz, false);
        found[0] += passed[0] * sky.red;
        found[1] += passed[1] * sky.green;
        found[2] += passed[2] * sky.blue;
        return;
      }
      if (bounce >= this.bounces) return;
      place.find(ray, 1);
      this.pass();
    }
  }

  private pass(): void {
    const { place, passed } = this;
    const { mean, toned } = place.material;
    const own = toned ? 2 * place.spot.tone : 1;
    for (let k = 0; k < 3; k += 1) passed[k]! *= mean[k]! * own;
  }

  private addSun(bounce: number, gloss: number): void {
    const { sun, place, found, passed } = this;
    if (!sun) return;
    this.aimAtSun(sun, bounce);
    const [x, y, z] = this.sunward;
    const facing = place.nx * x + place.ny * y + place.nz * z;
    const lit = this.litShare(facing);
    if (lit <= 0) return;
    for (let k = 0; k < 3; k += 1) found[k]! += passed[k]! * sun.power[k]! * lit;
    if (gloss > 0 && facing > 0) this.addGloss(sun, gloss * facing);
  }

  private aimAtSun({ direction, radius }: Sun, bounce: number): void {
    const { samples, sunSides, sunward } = this;
    const far = radius * Math.sqrt(bounce === 0 ? samples.even(DIMENSIONS.sunFar) : samples.plain());
    const turn = 2 * Math.PI * (bounce === 0 ? samples.even(DIMENSIONS.sunTurn) : samples.plain());
    const [one, other] = [Math.cos(turn) * far, Math.sin(turn) * far];
    for (let k = 0; k < 3; k += 1)
      sunward[k] = direction[k]! + sunSides[0][k]! * one + sunSides[1][k]! * other;
  }

  /** How much of the sun a place gets that faces it so. */
  private litShare(facing: number): number {
    const { place } = this;
    const [x, y, z] = this.sunward;
    const behind = place.gx * x + place.gy * y + place.gz * z <= 0;
    const isThin = place.material.thin === true;
    if (!isThin && (behind || facing <= 0)) return 0;
    const side = behind ? -OFF_MM : OFF_MM;
    const { shadow } = this;
    shadow.from(place.x + place.gx * side, place.y + place.gy * side, place.z + place.gz * side);
    shadow.towards(x, y, z).far = SHADE_MM;
    if (this.bvh.blocked(shadow)) return 0;
    return facing > 0 && !behind ? facing : Math.abs(facing) * THROUGH;
  }

  /** Microfacets as B. Walter et al., "Microfacet models for refraction", EGSR 2007 (GGX), without shadowing. */
  private addGloss({ power }: Sun, amount: number): void {
    const { place, sunward, glint } = this;
    const away = unit([this.eye[0] - place.x, this.eye[1] - place.y, this.eye[2] - place.z]);
    const half = unit([sunward[0] + away[0], sunward[1] + away[1], sunward[2] + away[2]]);
    const square = Math.max(0, place.nx * half[0] + place.ny * half[1] + place.nz * half[2]);
    const slant = Math.max(0, away[0] * half[0] + away[1] * half[1] + away[2] * half[2]);
    const width = this.roughness ** 4;
    const peak = width / (square * square * (width - 1) + 1) ** 2;
    const strength = Math.min(6, peak * schlick(slant) * 0.25 * amount);
    for (let k = 0; k < 3; k += 1) glint[k]! += strength * power[k]!;
  }

  /** Sends the ray on from the place, the likelier the squarer; false where it would go into it. */
  private leave(bounce: number): boolean {
    const { samples, place, ray } = this;
    const far = bounce === 0 ? samples.even(DIMENSIONS.bounceFar) : samples.plain();
    const turn = 2 * Math.PI * (bounce === 0 ? samples.even(DIMENSIONS.bounceTurn) : samples.plain());
    const { nx, ny, nz } = place;
    // Two directions square to the normal: T. Duff et al., "Building an orthonormal basis, revisited", JCGT 2017.
    const sign = nz >= 0 ? 1 : -1;
    const a = -1 / (sign + nz);
    const b = nx * ny * a;
    const one = Math.cos(turn) * Math.sqrt(far);
    const other = Math.sin(turn) * Math.sqrt(far);
    const up = Math.sqrt(1 - far);
    const x = (1 + sign * nx * nx * a) * one + b * other + nx * up;
    const y = sign * b * one + (sign + ny * ny * a) * other + ny * up;
    const z = -sign * nx * one - ny * other + nz * up;
    if (x * place.gx + y * place.gy + z * place.gz <= 0) return false;
    ray.from(place.x + place.gx * OFF_MM, place.y + place.gy * OFF_MM, place.z + place.gz * OFF_MM);
    ray.towards(x, y, z).far = FARTHEST_MM;
    return true;
  }
}

/** What a surface of water, glass or varnish throws back: C. Schlick, Eurographics 1994. */
export function schlick(facing: number): number {
  return 0.03 + 0.97 * (1 - Math.min(1, facing)) ** 5;
}
