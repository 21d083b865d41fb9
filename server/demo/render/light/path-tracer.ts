import { directionThrough, type Camera } from '../camera.ts';
import { NOBODY } from '../mesh/mesh.ts';
import { Surface } from '../surface/surface.ts';
import type { Film } from './film.ts';
import { FARTHEST_MM, LightPaths, OFF_MM, schlick } from './light-paths.ts';
import { DIMENSIONS, tent } from './samples.ts';
import type { Scene, Settings } from './scene.ts';

/** What lies behind so much air is half air, or nearly. */
const HAZE_MM = 1.6e6;
const HAZE = [0.66, 0.75, 0.86] as const;
/** How far the sky is, to whoever smooths the picture. */
const SKY_M = 1e4;
/** A pixel sees so far about its middle. */
const TENT_PX = 0.75;

type Sum = [number, number, number];

/** Running sums of a pixel; the fields are those of the film. */
class Sums {
  readonly light: Sum = [0, 0, 0];
  readonly colour: Sum = [0, 0, 0];
  readonly shine: Sum = [0, 0, 0];
  readonly normal: Sum = [0, 0, 0];
  metres = 0;
  grey = 0;
  greySquares = 0;

  clear(): void {
    for (const sum of [this.light, this.colour, this.shine, this.normal]) sum.fill(0);
    this.metres = 0;
    this.grey = 0;
    this.greySquares = 0;
  }
}

function addTo(
  sum: Sum,
  by: number,
  { red, green, blue }: { red: number; green: number; blue: number },
): void {
  sum[0] += by * red;
  sum[1] += by * green;
  sum[2] += by * blue;
}

/** Exposes a film, row by row; each pixel for itself. */
export class PathTracer {
  private readonly camera: Camera;
  private readonly settings: Settings;
  private readonly paths: LightPaths;
  private readonly surface = new Surface();
  private readonly sums = new Sums();
  private readonly spreadPerMm: number;

  constructor(scene: Scene, camera: Camera, settings: Settings) {
    this.camera = camera;
    this.settings = settings;
    this.paths = new LightPaths(scene, camera.position, settings.bounces);
    this.spreadPerMm = 1 / camera.focalPx;
  }

  row(film: Film, y: number): void {
    for (let x = 0; x < film.width; x += 1) this.pixel(film, x, y);
  }

  /** The member that the ray through a point of the picture meets first, or NOBODY. */
  memberAt(x: number, y: number): number {
    const { paths } = this;
    this.aim(x, y);
    if (!paths.bvh.nearest(paths.ray)) return NOBODY;
    paths.place.find(paths.ray, this.spreadPerMm);
    return paths.place.member;
  }

  private pixel(film: Film, x: number, y: number): void {
    const { samples } = this.paths;
    const pixel = y * film.width + x;
    film.member[pixel] = this.memberAt(x + 0.5, y + 0.5);
    this.sums.clear();
    samples.begin(pixel, this.settings.seed);
    for (let i = 0; i < this.settings.samples; i += 1) {
      samples.next(i);
      const dx = TENT_PX * tent(samples.even(DIMENSIONS.pixelX));
      const dy = TENT_PX * tent(samples.even(DIMENSIONS.pixelY));
      this.sample(x + 0.5 + dx, y + 0.5 + dy);
    }
    this.expose(film, pixel);
  }

  private aim(x: number, y: number): void {
    const { ray } = this.paths;
    const [px, py, pz] = this.camera.position;
    const [dx, dy, dz] = directionThrough(this.camera, x, y);
    ray.from(px, py, pz).towards(dx, dy, dz).far = FARTHEST_MM;
  }

  private sample(x: number, y: number): void {
    const { sums, surface } = this;
    const { ray, place, bvh } = this.paths;
    this.aim(x, y);
    if (!bvh.nearest(ray)) return this.seeSky();
    const far = ray.far;
    place.find(ray, this.spreadPerMm);
    place.material.look(place.spot, surface);
    place.bend(surface);
    addTo(sums.normal, 1, { red: place.nx, green: place.ny, blue: place.nz });
    sums.metres += far / 1000;
    const clear = Math.exp(-far / HAZE_MM);
    addTo(sums.shine, 1 - clear, { red: HAZE[0], green: HAZE[1], blue: HAZE[2] });
    if (place.material.mirrors) this.mirror(clear);
    else this.matt(clear);
  }

  private seeSky(): void {
    const { ray, sky } = this.paths;
    sky.look(ray.dx, ray.dy, ray.dz, true);
    addTo(this.sums.shine, 1, sky);
    this.sums.metres += SKY_M;
  }

  private matt(clear: number): void {
    const { surface, sums, paths } = this;
    const own = [surface.red * clear, surface.green * clear, surface.blue * clear] as const;
    paths.gather(paths.place.material.thin ? 0 : surface.gloss * clear, surface.roughness);
    const { found, glint } = paths;
    for (let k = 0; k < 3; k += 1) {
      sums.colour[k]! += own[k]!;
      sums.light[k]! += own[k]! * found[k]!;
      sums.shine[k]! += glint[k]!;
    }
    const grey = 0.3 * found[0] + 0.6 * found[1] + 0.1 * found[2];
    sums.grey += grey;
    sums.greySquares += grey * grey;
  }

  /** Water and window panes: what stands before them, the more the flatter they are looked at. */
  private mirror(clear: number): void {
    const { sums, paths, surface } = this;
    const { ray, place, bvh, sky, found } = paths;
    addTo(sums.shine, clear, surface);
    const share = this.turnBack() * clear;
    if (bvh.nearest(ray)) {
      place.find(ray, this.spreadPerMm);
      const { mean } = place.material;
      paths.gather(0);
      for (let k = 0; k < 3; k += 1) sums.shine[k]! += share * mean[k]! * found[k]!;
    } else {
      sky.look(ray.dx, ray.dy, ray.dz, true);
      addTo(sums.shine, share, sky);
    }
  }

  /** Sends the ray back from a mirror; how much of the light goes that way. */
  private turnBack(): number {
    const { ray, place } = this.paths;
    const inward = place.nx * ray.dx + place.ny * ray.dy + place.nz * ray.dz;
    const [x, y, z] = [
      ray.dx - 2 * inward * place.nx,
      ray.dy - 2 * inward * place.ny,
      ray.dz - 2 * inward * place.nz,
    ];
    // A wave that leans away would mirror what lies under it.
    const under = Math.min(0, x * place.gx + y * place.gy + z * place.gz) * 2;
    ray.from(place.x + place.gx * OFF_MM, place.y + place.gy * OFF_MM, place.z + place.gz * OFF_MM);
    ray.towards(x - under * place.gx, y - under * place.gy, z - under * place.gz).far = FARTHEST_MM;
    return schlick(Math.abs(inward));
  }

  private expose(film: Film, pixel: number): void {
    const { light, colour, shine, normal, metres, grey, greySquares } = this.sums;
    const count = this.settings.samples;
    for (let k = 0; k < 3; k += 1) {
      film.light[3 * pixel + k] = colour[k]! > 0 ? light[k]! / colour[k]! : 0;
      film.colour[3 * pixel + k] = colour[k]! / count;
      film.shine[3 * pixel + k] = shine[k]! / count;
      film.guide[4 * pixel + k] = normal[k]! / count;
    }
    film.guide[4 * pixel + 3] = metres / count;
    // Of few samples the mean lies nearer to them than it should: one less is counted (F. W. Bessel).
    film.variance[pixel] = Math.max(0, greySquares / count - (grey / count) ** 2) / Math.max(1, count - 1);
  }
}
