import type { ShownStretch } from '#domain/contract/frame-shapes';
import { STAGES, type Stage } from '#domain/frame/stage';
import type { KeyValueStorage } from '../../outbox/browser-storage.ts';
import { regionProblem, type Region, type UnitPoint } from '#domain/photo/region';
import type { Work } from './bench-model.ts';

/** What was begun at a photo but not placed: kept in the window's own storage, so that a reload loses nothing. */
export interface Begun {
  readonly work: Work;
  readonly mark: string;
  readonly stage: Stage | null;
  readonly note: string;
  readonly stretch?: ShownStretch | 'all';
}

const PREFIX = 'arakabe.begun.';

export function keepBegun(storage: KeyValueStorage | null, photo: string, begun: Begun | null): void {
  try {
    if (begun) storage?.setItem(PREFIX + photo, JSON.stringify(begun));
    else storage?.removeItem(PREFIX + photo);
  } catch {
    // Full or forbidden: the drawing then lasts until the window is closed, as on paper.
  }
}

export function readBegun(storage: KeyValueStorage | null, photo: string): Begun | null {
  try {
    return parseBegun(JSON.parse(storage?.getItem(PREFIX + photo) ?? 'null'));
  } catch {
    return null;
  }
}

/** Anything may have written there, an older version of this program among others. */
export function parseBegun(value: unknown): Begun | null {
  if (!isRecord(value) || !isRecord(value['work'])) return null;
  const draft = value['work']['draft'];
  const corners: unknown = value['work']['corners'];
  const waiting: unknown = value['work']['waiting'] ?? [];
  const stage = STAGES.find((s) => s === value['stage']) ?? null;
  if (!Array.isArray(corners) || !corners.every(isPoint)) return null;
  if (!Array.isArray(waiting) || !waiting.every(isRegion)) return null;
  if (draft !== null && !isDraft(draft)) return null;
  const stretch = parseStretch(value['stretch']);
  return {
    work: { draft, corners, waiting },
    ...{ mark: text(value['mark']), stage, note: text(value['note']) },
    ...(stretch === undefined ? {} : { stretch }),
  };
}

function parseStretch(value: unknown): ShownStretch | 'all' | undefined {
  if (value === 'all') return 'all';
  if (!isRecord(value) || typeof value['from'] !== 'string' || typeof value['to'] !== 'string')
    return undefined;
  return { from: value['from'], to: value['to'] };
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;
const text = (value: unknown) => (typeof value === 'string' ? value : '');

function isPoint(value: unknown): value is UnitPoint {
  return (
    Array.isArray(value) &&
    value.length === 2 &&
    value.every((n) => typeof n === 'number' && n >= 0 && n <= 1)
  );
}

function isDraft(value: unknown): value is Work['draft'] & object {
  if (!isRecord(value) || !isRegion(value['region'])) return false;
  return value['replaces'] === null || typeof value['replaces'] === 'string';
}

function isRegion(value: unknown): value is Region {
  if (!isRecord(value)) return false;
  const sides = ['x', 'y', 'w', 'h'].map((side) => value[side]);
  const isBox = value['shape'] === 'rectangle' && sides.every((side) => typeof side === 'number');
  const isOutline =
    value['shape'] === 'polygon' && Array.isArray(value['points']) && value['points'].every(isPoint);
  return (isBox || isOutline) && regionProblem(value as unknown as Region) === null;
}
