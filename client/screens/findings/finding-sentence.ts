import type { FindingView } from '#domain/contract/findings';
import type { HouseView } from '#domain/contract/views';
import { formatDay, formatInstant, formatList } from '../../i18n/format.ts';
import type { Language } from '../../i18n/language.ts';
import type { Words } from '../../i18n/words.ts';
import { RIVAL_FIELDS, rivalSentence } from '../bench/unread-words.ts';

/** What a finding says, in one sentence. */
export function findingSentence(
  t: Words,
  lang: Language,
  { zone, firstDay }: Pick<HouseView, 'zone' | 'firstDay'>,
  finding: FindingView,
): string {
  const { kind, facts, marks, tags } = finding;
  const [mark = ''] = marks;
  const when = (fact: string) => formatInstant(String(facts[fact]), zone, lang);
  switch (kind) {
    case 'stage-goes-back':
    case 'unknown-mark':
      return t(`findings.say.${kind}`, { mark });
    case 'stages-at-once': {
      const stages = [...new Set(tags.map(({ stage }) => t(`common.stage.${stage}`)))];
      return t('findings.say.stages-at-once', { mark, stages: formatList(stages, lang) });
    }
    case 'places-at-once':
      return t('findings.say.places-at-once', { mark, distance: Number(facts['distance']) });
    case 'stage-outside-track': {
      const stage = tags[0] ? t(`common.stage.${tags[0].stage}`) : '';
      return t('findings.say.stage-outside-track', { mark, stage });
    }
    case 'off-site':
      return t('findings.say.off-site', {
        distance: Number(facts['distance']),
        error: Number(facts['error']),
      });
    case 'readers-differ':
      return [t('findings.say.readers-differ'), ...rivalSentences(t, facts)].join(lang === 'ja' ? '' : ' ');
    case 'unreadable':
      return t('findings.say.unreadable', { mark, why: whyUnreadable(t, lang, facts['why']) });
    case 'clock-disagrees':
      return t(`findings.say.clock-disagrees.${facts['why'] as ClockWhy}`);
    case 'time-unsure':
      return t(`findings.say.time-unsure.${facts['why'] as UnsureWhy}`, {
        within: spanOf(t, Number(facts['within'])),
      });
    case 'before-first-day':
      return t('findings.say.before-first-day', {
        taken: when('taken'),
        first: firstDay === null ? t('common.none') : formatDay(firstDay, lang),
      });
    case 'after-upload':
      return t('findings.say.after-upload', { taken: when('taken') });
    case 'disputed': {
      const said = { by: String(facts['by']), why: String(facts['reason']) };
      return t('findings.say.disputed', { mark, when: when('at'), ...said });
    }
    case 'closed-without-release': {
      const [name, why] = [String(facts['name']), String(facts['why'])];
      return why === ''
        ? t('findings.say.closed-without-release.unsaid', { name })
        : t('findings.say.closed-without-release.said', { name, why });
    }
    case 'release-taken-back': {
      const said = { name: String(facts['name']), by: String(facts['by']), why: String(facts['reason']) };
      return t('findings.say.release-taken-back', { when: when('at'), ...said });
    }
    case 'shown-after-closing':
      return t('findings.say.shown-after-closing', {
        mark,
        name: String(facts['name']),
        closed: when('closed'),
      });
    case 'closed-with-gaps':
      return t('findings.say.closed-with-gaps', {
        name: String(facts['name']),
        count: Number(facts['count']),
      });
    case 'same-picture':
      return samePicture(t, lang, zone, facts);
    case 'no-date':
      return t(`findings.say.no-date.${facts['why'] as DatelessWhy}`);
  }
}

type DatelessWhy = 'none' | 'implausible-year';
type ClockWhy = 'gps-disagrees' | 'camera-not-in-house-zone';
type UnsureWhy = 'ambiguous-hour' | 'skipped-hour' | 'zone-not-read' | 'clock-set-between-marks';

const WHY = ['too-small', 'blurred', 'too-dark', 'too-bright'] as const;
/** Codes divided by spaces, as words. A code of a later version is shown as it is. */
function whyUnreadable(t: Words, lang: Language, codes: unknown): string {
  const words = WHY.filter((code) => String(codes).split(' ').includes(code));
  return formatList(
    words.map((code) => t(`findings.why.${code}`)),
    lang,
  );
}

/** Both values of each field that the file gives two of. */
function rivalSentences(t: Words, facts: FindingView['facts']): string[] {
  return RIVAL_FIELDS.flatMap((field) => {
    const [first, second] = [facts[`${field}.first`], facts[`${field}.second`]];
    if (first === undefined || second === undefined) return [];
    return [rivalSentence(t, { field, first: String(first), second: String(second) })];
  });
}

function samePicture(t: Words, lang: Language, zone: string, { one, other }: FindingView['facts']): string {
  const times = [one, other].filter((time) => typeof time === 'string').toSorted();
  const [first, second] = times.map((instant) => formatInstant(instant, zone, lang));
  if (first === undefined) return t('findings.say.same-picture.unknown');
  if (second === undefined) return t('findings.say.same-picture.one', { first });
  return t('findings.say.same-picture.two', { first, second });
}

/** A length of time in the largest unit that fits it. */
function spanOf(t: Words, seconds: number): string {
  if (seconds < 90) return t('findings.span.seconds', { count: seconds });
  if (seconds < 5400) return t('findings.span.minutes', { count: Math.round(seconds / 60) });
  return t('findings.span.hours', { count: Math.round(seconds / 3600) });
}
