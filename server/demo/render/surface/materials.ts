import { ground, plaster, stone } from './earth.ts';
import { bamboo, board, bucket, rope, sack, steel, tarp } from './site.ts';
import { bark, glass, grass, hill, houseWall, leaf, tile, water } from './surroundings.ts';
import type { Colour, Look } from './surface.ts';
import { freshWood, oldWood } from './wood.ts';

export interface Material {
  /** On average: what light that comes from it to other things has of its colour. */
  readonly mean: Colour;
  readonly look: Look;
  /** Light comes through it from behind. */
  readonly thin?: true;
  /** Shows what stands before it. */
  readonly mirrors?: true;
  /** Its tone says how much of twice its mean it throws back. */
  readonly toned?: true;
}

const material = (mean: Colour, look: Look, more: Partial<Material> = {}): Material => ({
  mean,
  look,
  ...more,
});

const MATERIALS = {
  /** One tone and nothing else: its tone is the share of light that it throws back. */
  card: material([0.5, 0.5, 0.5], ({ tone }, on) => on.plain([tone, tone, tone]), { toned: true }),
  wood: material([0.31, 0.25, 0.165], freshWood),
  oldWood: material([0.19, 0.155, 0.115], oldWood),
  ground: material([0.17, 0.145, 0.115], ground),
  stone: material([0.23, 0.225, 0.21], stone),
  plaster: material([0.15, 0.12, 0.085], plaster),
  bamboo: material([0.25, 0.205, 0.115], bamboo),
  rope: material([0.3, 0.24, 0.13], rope),
  steel: material([0.25, 0.26, 0.26], steel),
  tarp: material([0.05, 0.09, 0.22], tarp),
  bucket: material([0.09, 0.07, 0.07], bucket),
  board: material([0.29, 0.23, 0.145], board),
  sack: material([0.42, 0.41, 0.36], sack),
  leaf: material([0.08, 0.105, 0.042], leaf, { thin: true }),
  grass: material([0.1, 0.11, 0.045], grass, { thin: true }),
  bark: material([0.07, 0.055, 0.045], bark),
  houseWall: material([0.25, 0.23, 0.2], houseWall),
  tile: material([0.08, 0.085, 0.09], tile),
  hill: material([0.06, 0.08, 0.045], hill),
  glass: material([0.012, 0.015, 0.018], glass, { mirrors: true }),
  water: material([0.03, 0.04, 0.036], water, { mirrors: true }),
} as const;

export type MaterialName = keyof typeof MATERIALS;

const NAMES = Object.keys(MATERIALS);

export const materialIndex = (name: MaterialName): number => NAMES.indexOf(name);

/** By index. */
export const MATERIAL_LIST: readonly Material[] = Object.values(MATERIALS);
