import type { StatementOf } from '#domain/ledger/statements';
import { formatList } from '../../i18n/format.ts';
import type { Words } from '../../i18n/words.ts';
import { withReason, type Telling } from './telling.ts';

type HoldStatement = StatementOf<
  | 'covering.ready'
  | 'covering.ready-withdrawn'
  | 'covering.refused'
  | 'covering.released'
  | 'release.withdrawn'
>;

/** What is said of the hold before a covering closes. */
export function holdSentence({ t, lang, coverings }: Telling, { kind, payload }: HoldStatement): string {
  const name = coverings.get(payload.covering) ?? t('ledger.aCovering');
  switch (kind) {
    case 'covering.ready':
      return withNote(t, t('hold.say.ready', { name }), payload.note);
    case 'covering.ready-withdrawn':
      return withReason(t, t('hold.say.ready-withdrawn', { name }), payload.reason);
    case 'covering.refused': {
      const marks = formatList(
        payload.lacking.map(({ mark, note }) => (note === '' ? mark : t('hold.say.lacks', { mark, note }))),
        lang,
      );
      const said = marks === '' ? t('hold.say.refused', { name }) : t('hold.say.lacking', { name, marks });
      return withNote(t, said, payload.note);
    }
    case 'covering.released': {
      const sentence = t('hold.say.released', { name });
      const marks = formatList(
        payload.waived.map(({ mark, reason }) => t('hold.say.lacks', { mark, note: reason })),
        lang,
      );
      const said = marks === '' ? sentence : t('hold.say.waived', { sentence, marks });
      return withNote(t, said, payload.note);
    }
    case 'release.withdrawn':
      return withReason(t, t('hold.say.release-withdrawn', { name }), payload.reason);
  }
}

export function withNote(t: Words, sentence: string, note: string): string {
  return note.trim() === '' ? sentence : t('hold.say.note', { sentence, note });
}
