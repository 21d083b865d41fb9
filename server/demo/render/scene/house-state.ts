import { axisOf } from '#domain/frame/axis-of';
import { gridReader, type GridReader } from '#domain/frame/grid-reader';
import type { InventedHouse, InventedMember } from '#domain/frame/invented/invented-house';
import type { Axis } from '#domain/frame/set-out';
import type { Stage } from '#domain/frame/stage';
import type { Zone } from '#domain/frame/zone';
import { lexiconOf } from '#domain/lexicon/lexicon';
import { findKind } from '#domain/lexicon/track-of-kind';
import { usualLie } from '#domain/lexicon/usual-lie';

/** A member that stands in the house. */
export interface StandingMember {
  readonly mark: string;
  /** Of the lexicon; null where it does not know the word. */
  readonly kind: string | null;
  readonly axis: Axis;
  readonly stage: Stage;
}

export type WallZone = Extract<Zone, { shape: 'wall' }>;

/** Of one bay: bamboo lath; the rough coat on both sides; the coat up to half of the height, lath above; boards. */
export interface Infill {
  readonly zone: WallZone;
  readonly infill: 'lath' | 'half' | 'rough' | 'boarded';
  /** How far up the level lath is tied on, 0 to 1. */
  readonly laid?: number;
}

/** A floor or a roof's boarding, as far as it is laid. */
export interface Boards {
  readonly zone: Extract<Zone, { shape: 'flat' | 'slope' }>;
  /** Of its underside over the zone's upper surface, mm. */
  readonly lift: number;
  readonly thick: number;
  /** Along which axis of the house the boards of a floor lie; those of a roof lie along its eaves. */
  readonly along: 'x' | 'y';
  /** From the first line or the eaves, 0 to 1. */
  readonly laid: number;
}

/** What stood at the moment of a picture. */
export interface HouseState {
  readonly reader: GridReader;
  readonly members: readonly StandingMember[];
  /** Of all that will stand on stones: they are set first. */
  readonly stones: readonly Axis[];
  readonly walls: readonly Infill[];
  readonly boards: readonly Boards[];
  /** Marks of members over which a blue sheet hangs. */
  readonly sheets: readonly string[];
}

export interface Progress extends Partial<Pick<HouseState, 'walls' | 'boards' | 'sheets'>> {
  /** Of each member; null where it does not stand yet. */
  readonly stageOf: (member: InventedMember) => Stage | null;
}

/** Throws RangeError where a member of the house cannot be. */
export function stateOf(house: InventedHouse, { stageOf, walls, boards, sheets }: Progress): HouseState {
  const lexicon = lexiconOf([]);
  const reader = gridReader(house.grid);
  const placed = house.members.map((member) => {
    const read = axisOf(member.setOut, usualLie(member.kind, lexicon), reader);
    if (!read.ok) throw new RangeError(`${member.mark} cannot be: ${read.problem.reason}.`);
    return { member, axis: read.axis };
  });
  const members = placed.flatMap(({ member, axis }) => {
    const stage = stageOf(member);
    if (stage === null || stage === 'cut') return [];
    return [{ mark: member.mark, kind: findKind(member.kind, lexicon)?.id ?? null, axis, stage }];
  });
  const stones = placed.map(({ axis }) => axis).filter(standsOnStone);
  return { reader, members, stones, walls: walls ?? [], boards: boards ?? [], sheets: sheets ?? [] };
}

/** What ends so far above the ground ends on a stone. */
const STONE_MM = 300;

const standsOnStone = ({ runs, start }: Axis) => runs === 'upright' && start.z < STONE_MM;
