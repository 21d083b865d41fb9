import type { ProtectionView } from '#domain/contract/protection';
import type { BodyInput } from '#domain/contract/routes';
import type { LengthUnit } from '#domain/frame/length';
import { dayIn, formatTime } from '../../i18n/format.ts';
import { whenFault, type When } from '../coverings/closing-preview.ts';
import {
  EMPTY_DRAFT,
  factsOfDraft,
  isChanged as isOtherwiseOver,
  reduceCovering,
  type CoveringDraft,
  type CoveringEvent,
} from '../coverings/covering-draft.ts';
import { zoneDraft } from '../coverings/zone-draft.ts';

/**
 * Protection as it is being said. What it lies over is picked as for a covering of the kind 'other', which
 * hides every kind; its planned day is that of the lifting, and the stages of its members are nobody's question.
 */
export interface ProtectionDraft {
  readonly what: string;
  readonly when: When;
  readonly over: CoveringDraft;
}

export type ProtectionEvent =
  CoveringEvent | { type: 'write-what'; text: string } | { type: 'choose-when'; when: When };

export const NOTHING_LAID: ProtectionDraft = {
  what: '',
  when: { is: 'now' },
  over: { ...EMPTY_DRAFT, kind: 'other' },
};

export function draftOfProtection(laid: ProtectionView, unit: LengthUnit, zone: string): ProtectionDraft {
  const { name, what, note, liftingDay, laidAt, except, hides } = laid;
  const listed = hides.filter(({ byZone }) => !byZone);
  const text = `${dayIn(zone, new Date(laidAt))}T${formatTime(laidAt, zone, 'en')}`;
  return {
    what,
    // To the millisecond, as long as nobody touches it.
    when: { is: 'earlier', text, time: { instant: laidAt, hour: 'plain' } },
    over: {
      ...{ name, note, kind: 'other', plannedDay: liftingDay ?? '' },
      zone: zoneDraft(laid.zone, unit),
      except: new Set(except),
      hides: new Map(listed.map(({ mark }) => [mark, { stage: 'raised', isChosen: true }])),
    },
  };
}

export function reduceProtection(draft: ProtectionDraft, event: ProtectionEvent): ProtectionDraft {
  if (event.type === 'write-what') return { ...draft, what: event.text };
  if (event.type === 'choose-when') return { ...draft, when: event.when };
  return { ...draft, over: reduceCovering(draft.over, event) };
}

export function isChanged(draft: ProtectionDraft, start: ProtectionDraft): boolean {
  const isSaidOtherwise = draft.what !== start.what || textOf(draft.when) !== textOf(start.when);
  return isSaidOtherwise || isOtherwiseOver(draft.over, start.over);
}

const textOf = (when: When) => (when.is === 'now' ? null : when.text);

/** What is wrong with the time of laying; `liftedAt`: it was lifted already. */
export function laidFault(
  when: When,
  now: Date,
  liftedAt: string | null,
): 'badTime' | 'future' | 'afterLifting' | null {
  const fault = whenFault(when, now);
  if (fault !== null || liftedAt === null) return fault;
  return (instantOf(when) ?? now.toISOString()) > liftedAt ? 'afterLifting' : null;
}

/** What is wrong with the time of lifting. */
export function liftedFault(
  when: When,
  now: Date,
  laidAt: string,
): 'badTime' | 'future' | 'beforeLaying' | null {
  const fault = whenFault(when, now);
  if (fault !== null) return fault;
  return (instantOf(when) ?? now.toISOString()) < laidAt ? 'beforeLaying' : null;
}

/** null: now, by the server's clock. */
export function instantOf(when: When): string | null {
  return when.is === 'now' ? null : (when.time?.instant ?? null);
}

/** What is no zone yet must not come here. */
export function factsOfProtection(
  draft: ProtectionDraft,
  unit: LengthUnit,
): Omit<BodyInput<'changeProtection'>, 'laidAt'> & { laidAt: string | null } {
  const { kind: _, hides, plannedDay = null, ...facts } = factsOfDraft(draft.over, unit);
  void _;
  const said = { what: draft.what.trim(), liftingDay: plannedDay, laidAt: instantOf(draft.when) };
  return { ...facts, ...said, hides: hides.map(({ mark }) => mark) };
}
