import { hiddenOn, missingOn } from '#domain/frame/drawing/state-on';
import { nameStretch } from '#domain/frame/name-stretch';
import { lengthOf } from '#domain/record/stretches';
import { formatDay, formatList } from '../../i18n/format.ts';
import type { Language } from '../../i18n/language.ts';
import type { Words } from '../../i18n/words.ts';
import type { FrameModel, HidesMember } from './frame-model.ts';

/** How one covering stood with a member on a day: "on record since …", "a gap: missing from 二 to 三 …". */
export function hiddenWords(
  t: Words,
  lang: Language,
  model: FrameModel,
  hides: HidesMember,
  day: string,
): string {
  const { covering, hidden } = hides;
  const state = hiddenOn(hidden, day);
  const word = t(`frame.state.${state}`);
  const since = hidden.onRecordSince;
  const said =
    state === 'on-record' && since !== null
      ? t('frame.tell.since', { state: word, day: formatDay(since, lang) })
      : word;
  const isMissing = state === 'gap' || state === 'lost' || state === 'waived';
  const missing = isMissing ? missingWords(t, lang, model, hides, day) : '';
  const whole = missing === '' ? said : lang === 'ja' ? `${said}。${missing}` : `${said}, ${missing}`;
  return t('frame.tell.hidden', { covering: covering.name, state: whole });
}

/** Which parts of it, and how much: "missing from 二 to 三, 1.82 m of 5.46 m". Empty for a whole member. */
export function missingWords(
  t: Words,
  lang: Language,
  model: FrameModel,
  { hidden }: HidesMember,
  day: string,
): string {
  const { stretches } = hidden;
  const member = model.members.get(hidden.mark);
  const missing = missingOn(hidden, member ?? { seen: [] }, day);
  if (!missing || !stretches || missing.length === 0) return '';
  const axis = member?.axis ?? null;
  const names = missing.map((stretch) => nameStretch(stretch, axis, model.reader));
  // All of it, and nothing to name it by: that it is missing says as much.
  const isUnnamed = names.some(({ fromMark, toMark }) => fromMark === null || toMark === null);
  if (isUnnamed && lengthOf(missing) >= lengthOf(stretches)) return '';
  const parts = names.map(({ fromMark, toMark }) => {
    return fromMark !== null && toMark !== null
      ? t('frame.tell.part', { from: fromMark, to: toMark })
      : t('frame.tell.somewhere');
  });
  return t('frame.tell.missing', {
    parts: formatList([...new Set(parts)], lang),
    missing: metres(lengthOf(missing)),
    hidden: metres(lengthOf(stretches)),
  });
}

const metres = (mm: number) => (mm / 1000).toFixed(2);
