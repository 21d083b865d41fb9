import type { HouseFacts } from '#domain/contract/shapes';
import type { LatLon } from '#domain/place/geodesic';

/** What stands in the form of a house, as typed. */
export interface HouseDraft {
  readonly name: string;
  readonly zone: string | null;
  readonly firstDay: string;
  readonly site: string;
  /** Metres; says nothing without a position. */
  readonly radius: string;
}

export type HouseDraftProblem = 'name' | 'zone' | 'site' | 'radius';

/** As the contract has it, which is not loaded here: the browser needs no schema library. */
const USUAL_RADIUS_M = 100;
const RADIUS_RANGE = { min: 10, max: 10_000 };

export function draftOf(facts: HouseFacts): HouseDraft {
  const { name, zone, firstDay, site } = facts;
  return {
    ...{ name, zone, firstDay: firstDay ?? '' },
    ...{ site: site ? `${site.lat}, ${site.lon}` : '', radius: String(site?.radiusM ?? USUAL_RADIUS_M) },
  };
}

export function emptyDraft(zone: string | null): HouseDraft {
  return { name: '', zone, firstDay: '', site: '', radius: String(USUAL_RADIUS_M) };
}

/** Whether anything was typed into a form that began empty; the zone was proposed. */
export function isBegun({ name, firstDay, site }: HouseDraft): boolean {
  return [name, firstDay, site].some((text) => text.trim() !== '');
}

/** The facts that a draft states, or which of its fields stand in the way. */
export function readDraft(draft: HouseDraft): { facts: HouseFacts } | { wrong: HouseDraftProblem[] } {
  const position = readPosition(draft.site);
  const radiusM = readRadius(draft.radius);
  const name = draft.name.trim();
  const wrong: HouseDraftProblem[] = [];
  if (name === '') wrong.push('name');
  if (draft.zone === null) wrong.push('zone');
  if (position === undefined) wrong.push('site');
  if (position && radiusM === undefined) wrong.push('radius');
  if (wrong.length > 0 || draft.zone === null) return { wrong };
  const site = position && radiusM !== undefined ? { ...position, radiusM } : null;
  return { facts: { name, zone: draft.zone, firstDay: draft.firstDay === '' ? null : draft.firstDay, site } };
}

/** Whether the draft says something else than these facts, however it is written. */
export function isChanged(draft: HouseDraft, facts: HouseFacts): boolean {
  const read = readDraft(draft);
  if ('wrong' in read) return true;
  const { name, zone, firstDay, site } = read.facts;
  const [now, was] = [site, facts.site];
  return (
    name !== facts.name ||
    zone !== facts.zone ||
    firstDay !== facts.firstDay ||
    now?.lat !== was?.lat ||
    now?.lon !== was?.lon ||
    now?.radiusM !== was?.radiusM
  );
}

/** Whether a position that stands would be taken away. */
export function emptiesSite(draft: Pick<HouseDraft, 'site'>, facts: Pick<HouseFacts, 'site'>): boolean {
  return facts.site !== null && readPosition(draft.site) === null;
}

/** "35.0116, 135.7681" → degrees; null for nothing; undefined for what is no position. Full-width digits count. */
export function readPosition(text: string): LatLon | null | undefined {
  const plain = text
    .normalize('NFKC')
    .replace(/^\s*\(|\)\s*$/g, '')
    .replace(/[、−]/g, (sign) => (sign === '−' ? '-' : ','))
    .trim();
  if (plain === '') return null;
  const match = /^([+-]?\d+(?:\.\d+)?)°?\s*[,\s]\s*([+-]?\d+(?:\.\d+)?)°?$/.exec(plain);
  if (!match) return undefined;
  const [lat, lon] = [Number(match[1]), Number(match[2])];
  return Math.abs(lat) <= 90 && Math.abs(lon) <= 180 ? { lat, lon } : undefined;
}

/** "100", "１２０ m" → metres; undefined for what is none, or none that a site could have. */
export function readRadius(text: string): number | undefined {
  const match = /^(\d+(?:\.\d+)?)\s*m?$/i.exec(text.normalize('NFKC').trim());
  const metres = match ? Number(match[1]) : NaN;
  return metres >= RADIUS_RANGE.min && metres <= RADIUS_RANGE.max ? metres : undefined;
}
