/**
 * Measures of a boathouse, in mm. One shaku is 10/33 m (Japan's Weights and Measures Act of 1891), ten
 * sun a shaku. Where no source stands beside a figure it is common practice of timber framing with 4-sun posts.
 */
const SUN_MM = 1000 / 33;
export const sun = (count: number): number => Math.round(count * SUN_MM);

export interface BoathouseSize {
  /** Bays along the ridge and across it; even across, so that the ridge lies over a line. */
  readonly bays: readonly [along: number, across: number];
  /** Of a bay: six in most houses, six and a half where mats decide. */
  readonly shaku: number;
  /** Two with a loft to live in; one is a shed for the boat and no more. */
  readonly storeys: 1 | 2;
  /** Fall of the roof in sun to the shaku: 4 to 5 under tiles, 3 to 4 under metal. */
  readonly pitch: number;
}

export const USUAL_SIZE: BoathouseSize = { bays: [4, 4], storeys: 2, shaku: 6, pitch: 4.5 };

/** Width and depth as a schedule states them. */
export const SECTIONS = {
  post: [sun(4), sun(4)],
  stud: [45, sun(4)],
  footTie: [sun(4), sun(6)],
  // Thickness and width that count for an earthen wall: see wall-rules.
  rail: [15, 105],
  beam: [sun(4), sun(8)],
  plate: [sun(4), sun(6)],
  strut: [sun(3.5), sun(3.5)],
  purlin: [sun(3.5), sun(3.5)],
  ridge: [sun(4), sun(5)],
  // At three shaku, under boards of an inch.
  rafter: [60, 90],
  joist: [90, 105],
  bearer: [sun(3.5), sun(3.5)],
  angle: [sun(3.5), sun(3.5)],
  brace: [45, 90],
  knee: [sun(3.5), sun(3.5)],
  lintel: [sun(3.5), sun(3.5)],
  edge: [24, 105],
} as const satisfies Record<string, readonly [number, number]>;

/** Stones stand so high out of the ground, which is the datum. */
export const STONE_MM = 160;
const FLOOR_MM = sun(15);
const STOREY_MM = sun(90);
const KNEE_WALL_MM = sun(50);
const BOARD_MM = 30;

const LOFT_MM = FLOOR_MM + STOREY_MM;

export interface Levels {
  readonly '1F': number;
  /** Undefined: there is no loft. */
  readonly '2F'?: number;
  readonly 軒: number;
}

/** Above the ground. */
export function levelsOf({ storeys }: Pick<BoathouseSize, 'storeys'>): Levels {
  if (storeys === 1) return { '1F': FLOOR_MM, 軒: LOFT_MM };
  return { '1F': FLOOR_MM, '2F': LOFT_MM, 軒: LOFT_MM + KNEE_WALL_MM };
}

const half = (section: readonly [number, number]) => section[1] / 2;
const joistTop = -BOARD_MM;
/** Upper side of the beams that bear a floor, below its level. */
const beamTop = joistTop - SECTIONS.joist[1];

/** A roof beam is let down over the plate by a third of its height. */
const roofBeam = half(SECTIONS.beam) - SECTIONS.beam[1] / 3;
const underPlate = KNEE_WALL_MM - SECTIONS.plate[1];

/** Heights of axes above the level that each hangs from; of what stands, its foot and head. */
export const HEIGHTS = {
  footTie: joistTop - SECTIONS.joist[1] - half(SECTIONS.footTie),
  joist: joistTop - half(SECTIONS.joist),
  bearer: joistTop - SECTIONS.joist[1] - half(SECTIONS.bearer),
  floorBeam: beamTop - half(SECTIONS.beam),
  /** Of the ground floor's posts, which stand on stones. */
  foot: STONE_MM - FLOOR_MM,
  /** Of the loft's posts, which stand on its beams and bear plates under the eaves, roof beams within. */
  upperFoot: beamTop,
  upperPostUnderEaves: underPlate,
  upperPostWithin: KNEE_WALL_MM + roofBeam - half(SECTIONS.beam),
  plate: -half(SECTIONS.plate),
  roofBeam,
  upperWall: underPlate,
};

export interface GroundFloor {
  /** Floor to the underside of what lies over its walls. */
  readonly wall: number;
  /** Heads of its posts: under the eaves, and within. */
  readonly postUnderEaves: number;
  readonly postWithin: number;
}

/** Under the beams of a loft all is of one height; without one, the roof beams lie higher than the plates. */
export function groundFloorOf({ storeys }: Pick<BoathouseSize, 'storeys'>): GroundFloor {
  const underBeams = STOREY_MM + beamTop - SECTIONS.beam[1];
  if (storeys === 2) return { wall: underBeams, postUnderEaves: underBeams, postWithin: underBeams };
  const underPlates = STOREY_MM - SECTIONS.plate[1];
  const underRoofBeams = STOREY_MM + HEIGHTS.roofBeam - half(SECTIONS.beam);
  return { wall: underPlates, postUnderEaves: underPlates, postWithin: underRoofBeams };
}

export interface RoofMeasures {
  readonly halfBay: number;
  /** Above the eaves level, so many half bays in from the eaves. */
  readonly rafter: (halfBays: number) => number;
  readonly under: (halfBays: number, depth: number) => number;
}

export function roofMeasures({ shaku, pitch }: BoathouseSize): RoofMeasures {
  const halfBay = sun(shaku * 5);
  const slope = pitch / 10;
  /** What half a rafter measures plumb, less the birdsmouth over the plate. */
  const seat = half(SECTIONS.rafter) * Math.sqrt(1 + slope ** 2);
  const rafter = (halfBays: number) => seat - 10 + halfBays * halfBay * slope;
  return {
    halfBay,
    rafter: (halfBays) => Math.round(rafter(halfBays)),
    under: (halfBays, depth) => Math.round(rafter(halfBays) - seat - depth / 2),
  };
}

/** Least number of rails in so high a wall, evenly spaced by at most 910 mm, and their heights above its foot. */
export function railHeights(wallMm: number, least: number): number[] {
  const count = Math.max(least, Math.ceil(wallMm / 910) - 1);
  return Array.from({ length: count }, (_, i) => Math.round(((i + 1) * wallMm) / (count + 1)));
}
