import type { Stretch } from '../record/stretches.ts';
import { clipAxis, type Convex } from './clip.ts';
import type { GridReader } from './grid-reader.ts';
import type { Axis } from './set-out.ts';
import { carrierSize, leastSection, type Finding, type InWall } from './wall-sections.ts';
import { countInBays, widestSpacing } from './wall-spacing.ts';
import {
  WALL_CHECK_CAUTION,
  WALL_RULE_SETS,
  WALL_RULES,
  type WallFigure,
  type WallRule,
  type WallRuleSet,
} from './wall-rules.ts';
import { WALL_REACH_MM, type Zone, type ZoneProblem } from './zone.ts';
import { zoneBody } from './zone-body.ts';

export interface WallMember {
  readonly mark: string;
  /** null: the schedule does not say where it lies. */
  readonly axis: Axis | null;
}

export interface WallResult {
  readonly rule: WallRule;
  readonly figure: WallFigure;
  /** The worst that was found, in the figure's unit; null where nothing can be measured. */
  readonly measured: number | null;
  readonly verdict: 'as published' | 'differs' | 'cannot be told';
  /**
   * Why it cannot be told: none of the kind lies in the wall by the schedule; one of the kind has no place or
   * no height, or no section of its own; a spacing is within the limit between edges but not between middles.
   */
  readonly because: 'none-in-schedule' | 'place-unknown' | 'section-assumed' | 'reading' | null;
  /** Members that were looked at, and of these the ones that differ. */
  readonly looked: readonly string[];
  readonly differing: readonly string[];
}

export type WallCheck =
  | {
      readonly ok: true;
      readonly ruleSet: WallRuleSet;
      readonly caution: string;
      readonly results: readonly WallResult[];
    }
  | { readonly ok: false; readonly problem: ZoneProblem };

type Wall = Extract<Zone, { shape: 'wall' }>;
type Role = 'rail' | 'carrier' | 'lath';

/** What a kind, by its id in the lexicon, is to an earthen wall. */
export const ROLES: Readonly<Record<string, Role>> = {
  nuki: 'rail',
  jinuki: 'rail',
  koshinuki: 'rail',
  uchinorinuki: 'rail',
  tenjonuki: 'rail',
  mawatashidake: 'carrier',
  komai: 'lath',
};

/**
 * What the schedule says of an earthen wall beside the published figures (frame/wall-rules), or what is wrong with
 * its zone. `kindOf` gives the lexicon's id of a member's kind. Lengths in mm. Information, never approval.
 */
export function wallCheck(
  zone: Wall,
  members: readonly WallMember[],
  kindOf: (mark: string) => string | null,
  reader: GridReader,
  ruleSet: WallRuleSet = WALL_RULE_SETS[0],
): WallCheck {
  const read = zoneBody(zone, reader);
  if (!read.ok) return { ok: false, problem: read.problem };
  const found: Record<Role, InWall[]> = { rail: [], carrier: [], lath: [] };
  const placeless: Record<Role, string[]> = { rail: [], carrier: [], lath: [] };
  for (const { mark, axis } of members) {
    const role = ROLES[kindOf(mark) ?? ''];
    if (!role) continue;
    if (!axis) placeless[role].push(mark);
    else {
      const stretch = stretchIn(axis, zone, read.body, reader);
      if (stretch) found[role].push({ mark, axis, stretch });
    }
  }
  const findings = findingsOf(zone, found, reader, ruleSet);
  return {
    ok: true,
    ruleSet,
    caution: WALL_CHECK_CAUTION,
    results: WALL_RULES.map((rule) => {
      const role = rule.startsWith('rail') ? 'rail' : rule.startsWith('carrier') ? 'carrier' : 'lath';
      return resultOf(rule, findings[rule], placeless[role].length > 0);
    }),
  };
}

/** What only ends in the wall or crosses it is not of it. */
const SHORTEST_MM = 2 * WALL_REACH_MM + 1;

/** What lies at no stated height lies somewhere on its storey. */
function stretchIn(axis: Axis, zone: Wall, body: Convex, reader: GridReader): Stretch | null {
  const isAnywhere = axis.runs === 'level' && axis.assumed.includes('base');
  const within = isAnywhere ? body.filter(({ normal }) => normal[2] === 0) : body;
  const stretch = clipAxis(axis, within);
  if (!stretch || stretch.to - stretch.from < SHORTEST_MM) return null;
  return isAnywhere && !isOnStorey(axis, zone, reader) ? null : stretch;
}

function isOnStorey({ start }: Axis, zone: Wall, { grid }: GridReader): boolean {
  const ceiling = grid.levels.find(({ height }) => height > start.z)?.height ?? Infinity;
  return zone.bottom < ceiling && zone.top > start.z;
}

function findingsOf(
  zone: Wall,
  { rail, carrier, lath }: Readonly<Record<Role, readonly InWall[]>>,
  reader: GridReader,
  { figures, roundCarrier }: WallRuleSet,
): Readonly<Record<WallRule, Finding>> {
  const rails = rail.filter(({ axis }) => axis.runs === 'level');
  return {
    'rail-thickness': leastSection(rails, figures['rail-thickness'], Math.min),
    'rail-width': leastSection(rails, figures['rail-width'], Math.max),
    'rail-spacing': widestSpacing(rails, zone, figures['rail-spacing'], reader),
    'rail-count': countInBays(rails, zone, figures['rail-count'], reader),
    'carrier-size': carrierSize(carrier, figures['carrier-size'], roundCarrier),
    'lath-size': leastSection(lath, figures['lath-size'], Math.max),
    'lath-spacing': widestSpacing(lath, zone, figures['lath-spacing'], reader),
  };
}

/**
 * A member of unknown place could lie in this wall: enough stay enough and too thin stays too thin, all else may
 * only seem so.
 */
function resultOf(rule: WallRule, finding: Finding, isOneMissing: boolean): WallResult {
  const { because, differing } = finding;
  const told = (verdict: WallResult['verdict'], why: WallResult['because'], differs = differing) => ({
    rule,
    figure: finding.figure,
    measured: finding.measured,
    verdict,
    because: why,
    looked: finding.looked,
    differing: differs,
  });
  const isCertain =
    rule === 'rail-count' ? finding.isWithin : !rule.endsWith('spacing') && differing.length > 0;
  if (isOneMissing && !isCertain) return told('cannot be told', 'place-unknown', []);
  if (because) return told('cannot be told', because, []);
  return finding.isWithin ? told('as published', null) : told('differs', null);
}
