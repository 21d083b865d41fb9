import type { Sheet } from '#domain/frame/drawing/sheet';
import { isClosedOn } from '#domain/frame/drawing/state-on';
import { daysBetween } from '#domain/record/days-between';
import { formatDay } from '../../i18n/format.ts';
import type { Language } from '../../i18n/language.ts';
import type { Words } from '../../i18n/words.ts';
import { LAYER_WORDS } from '../coverings/layer-words.ts';
import type { FrameModel } from './frame-model.ts';

export interface ZoneLook {
  readonly name: string;
  /** The name with how long it stays open, or when it closed. */
  readonly text: string;
  readonly isClosed: boolean;
}

/**
 * How a covering's zone stood on a day: closed, or how long its members can still be photographed. A wall that
 * is closed on one face is drawn so from that side alone.
 */
export function zoneLook(
  t: Words,
  lang: Language,
  model: FrameModel,
  day: string,
  id: string,
  seenFrom: Sheet['seenFrom'],
): ZoneLook {
  const covering = model.coverings.get(id);
  if (!covering) return { name: '', text: '', isClosed: false };
  const { name, plannedDay, closedDay, zone } = covering;
  if (closedDay !== null && isClosedOn(covering, day)) {
    const isBehind = zone?.shape === 'wall' && zone.face !== 'both' && seenFrom === OTHER[zone.face];
    const closed = t('frame.zone.closed', { name, day: formatDay(closedDay, lang) });
    const text = isBehind ? LAYER_WORDS[lang].behind(closed) : closed;
    return { name, text, isClosed: !isBehind };
  }
  const left = plannedDay === null ? t('coverings.noDay') : leftWords(t, daysBetween(day, plannedDay));
  return { name, text: t('frame.zone.open', { name, left }), isClosed: false };
}

const OTHER = { lower: 'higher', higher: 'lower' } as const;

function leftWords(t: Words, days: number): string {
  if (days === 0) return t('coverings.left.today');
  return days < 0 ? t('coverings.left.past', { count: -days }) : t('coverings.left.days', { count: days });
}
