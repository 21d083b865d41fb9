import type { WallFiguresView, WallResultView } from '#domain/contract/wall-views';
import { formatNumber } from '../../i18n/format.ts';
import type { Language } from '../../i18n/language.ts';
import type { Words } from '../../i18n/words.ts';

type RuleSet = Extract<WallFiguresView, { told: true }>['ruleSet'];

export function publishedWords(t: Words, lang: Language, { figure }: WallResultView): string {
  const { at, limit, unit } = figure;
  return t(`walls.at.${at}`, { value: t(`walls.unit.${unit}`, { value: formatNumber(limit, lang) }) });
}

/** The worst that the schedule says: of what must be wide enough the least, of distances the most. */
export function scheduleWords(t: Words, lang: Language, { figure, measured }: WallResultView): string {
  if (measured === null) return t('walls.nothing');
  const value = t(`walls.unit.${figure.unit}`, { value: formatNumber(Math.round(measured), lang) });
  return t(`walls.measured.${figure.at}`, { value });
}

const KNOWN_SET = 'moc-1100-1981/2003';

/** Which text the figures are from; of one that this catalog does not know yet in the words of the server. */
export function sourceWords(t: Words, set: RuleSet): string[] {
  if (set.id !== KNOWN_SET)
    return [`${set.source}, ${set.edition}`, set.unconfirmed.join(' '), set.notLookedAt.join('; ')];
  return [
    [t(`walls.set.${KNOWN_SET}.source`), t(`walls.set.${KNOWN_SET}.edition`)].join(t('walls.comma')),
    t(`walls.set.${KNOWN_SET}.unconfirmed`),
    t(`walls.set.${KNOWN_SET}.notLookedAt`),
  ];
}
