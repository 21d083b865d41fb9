import type { DevicePosition } from '#domain/contract/place';
import type { CoveringFacts, Site } from '#domain/contract/shapes';
import { lengthWords, pairWords } from '../place/length-words.ts';
import type { FindingKind } from '#domain/record/findings/kinds';
import type { LedgerEntryView } from '#domain/contract/views';
import { formatDay, formatInstant, formatList } from '../../i18n/format.ts';
import type { Statement, StatementOf } from '#domain/ledger/statements';
import { cameraName } from '../../i18n/camera-name.ts';
import { kindLabel, nameOfKind } from '../../i18n/kind-label.ts';
import { BUILT_IN } from '#domain/lexicon/lexicon';
import { withinSpan } from '../../i18n/span-words.ts';
import type { Language } from '../../i18n/language.ts';
import type { Words } from '../../i18n/words.ts';
import { holdSentence, withNote } from './hold-sentence.ts';
import { withReason, type Telling } from './telling.ts';

/** What an entry says, as a person would. An entry newer than this program is named by its kind. */
export function statementSentence(
  telling: Telling,
  entry: Pick<LedgerEntryView, 'kind' | 'payload'>,
): string {
  const unknown = telling.t('ledger.unknown', { kind: entry.kind });
  try {
    return sentence(telling, entry as Statement) ?? unknown;
  } catch {
    return unknown;
  }
}

function sentence(telling: Telling, statement: Statement): string | undefined {
  const { t } = telling;
  const { kind, payload } = statement;
  switch (kind) {
    case 'house.created':
    case 'house.changed':
      return houseSentence(telling, statement);
    case 'grid.stated': {
      const span = (lines: readonly { label: string }[]) =>
        `${lines[0]?.label ?? ''}–${lines.at(-1)?.label ?? ''}`;
      const levels = formatList(
        payload.levels.map(({ label }) => label),
        telling.lang,
      );
      const lines = { first: span(payload.first.lines), second: span(payload.second.lines) };
      return t('ledger.say.grid.stated', { ...lines, levels });
    }
    case 'requirements.stated':
      return t('ledger.say.requirements.stated', { count: payload.rows.length });
    case 'head.stamped':
      return t('ledger.say.head.stamped', {
        count: payload.size,
        by: payload.by,
        when: formatInstant(payload.at, telling.zone, telling.lang),
      });
    case 'role.granted':
      return t('ledger.say.role.granted', {
        person: payload.person.name,
        role: t(`common.role.${payload.role}`),
      });
    case 'role.withdrawn':
      return t('ledger.say.role.withdrawn', { person: payload.person.name });
    case 'guest.admitted':
    case 'guest.ended':
    case 'password.link-made':
    case 'password.renewed':
      return linkSentence(telling, statement);
    case 'schedule.imported':
      return t('ledger.say.schedule.imported', {
        file: payload.source.fileName,
        added: payload.added.length,
        changed: payload.changed.length,
        retired: payload.retired.length,
        badRows: payload.badRows,
      });
    case 'member.entered':
      return t('ledger.say.member.entered', { mark: payload.mark, kind: kindWords(telling, payload.kind) });
    case 'member.retired':
    case 'member.removed':
      return t(`ledger.say.${kind}`, { mark: payload.mark });
    case 'photo.added':
      return t('ledger.say.photo.added', { file: payload.fileName });
    case 'photo.position-added':
      return devicePositionSentence(telling, payload);
    case 'photo.dated':
    case 'photo.dating-withdrawn':
    case 'clock.marked':
    case 'clock.withdrawn':
      return timeSentence(telling, statement);
    case 'tag.placed':
      return withPart(
        t,
        t('ledger.say.tag.placed', { mark: payload.mark, stage: t(`common.stage.${payload.stage}`) }),
        payload.stretch,
      );
    case 'tag.superseded':
      return withPart(
        t,
        t('ledger.say.tag.superseded', {
          was: payload.was,
          mark: payload.mark,
          stage: t(`common.stage.${payload.stage}`),
        }),
        payload.stretch,
      );
    case 'tag.withdrawn':
      return withReason(t, t('ledger.say.tag.withdrawn', { mark: payload.mark }), payload.reason);
    case 'tag.disputed':
      return withReason(t, t('hold.say.disputed', { mark: payload.mark }), payload.reason);
    case 'release-rule.stated': {
      const said = t(payload.fourEyes ? 'hold.say.fourEyes' : 'hold.say.twoEyes');
      return withReason(t, said, payload.reason);
    }
    case 'covering.ready':
    case 'covering.ready-withdrawn':
    case 'covering.refused':
    case 'covering.released':
    case 'release.withdrawn':
      return holdSentence(telling, statement);
    case 'covering.planned':
    case 'covering.changed':
    case 'covering.closed':
    case 'covering.reopened':
      return coveringSentence(telling, statement);
    case 'protection.laid':
    case 'protection.changed':
    case 'protection.lifted':
    case 'protection.lifting-withdrawn':
    case 'protection.withdrawn':
      return protectionSentence(telling, statement);
    case 'findings.accepted':
      if (payload.findings.every(({ kind }) => kind === 'disputed'))
        return withReason(
          t,
          t('ledger.say.findings.answered', { marks: marksOf(telling, payload.findings) }),
          payload.reason,
        );
      return t('ledger.reason', {
        sentence: t('ledger.say.findings.accepted', {
          count: payload.findings.length,
          what: kindsOf(telling, payload.findings),
        }),
        reason: payload.reason,
      });
    case 'finding.reopened':
      return withReason(
        t,
        t('ledger.say.finding.reopened', { what: kindsOf(telling, [payload]) }),
        payload.reason,
      );
    case 'term.entered':
      return termSentence(telling, payload);
    case 'term.removed':
      return withReason(t, t('ledger.say.term.removed', { name: payload.was }), payload.reason);
    case 'note.written':
      return t('ledger.say.note.written', { day: formatDay(payload.day, telling.lang) });
    default:
      return undefined;
  }
}

/** All that stands in the details: what was emptied or moved can be read only so. */
function houseSentence(
  { t, lang }: Telling,
  { kind, payload: { name, zone, firstDay, site } }: StatementOf<'house.created' | 'house.changed'>,
): string {
  const day =
    firstDay === null ? t('ledger.noFirstDay') : t('ledger.firstDay', { day: formatDay(firstDay, lang) });
  const where = site ? siteWords(t, lang, site) : t('ledger.noSite');
  return t(`ledger.say.${kind}`, { name, zone, day, where });
}

function siteWords(t: Words, lang: Language, site: Site): string {
  const value = { ...pairWords(site), radius: lengthWords(t, lang, site.radiusM) };
  return t('ledger.site', { where: t('place.settings.value', value) });
}

type CoveringStatement = StatementOf<
  'covering.planned' | 'covering.changed' | 'covering.closed' | 'covering.reopened'
>;

/** With the part of a member that a tag shows, where it is not all of it. */
function withPart(t: Words, sentence: string, part: { from: string; to: string } | null | undefined): string {
  // Entries of the first version know of no parts.
  return part ? t('ledger.say.tag.part', { sentence, from: part.from, to: part.to }) : sentence;
}

function coveringSentence(telling: Telling, { kind, payload }: CoveringStatement): string {
  const { t, lang, zone } = telling;
  const known = telling.coverings.get(payload.covering) ?? t('ledger.aCovering');
  switch (kind) {
    case 'covering.closed': {
      const said = { name: known, when: formatInstant(payload.closedAt, zone, lang) };
      if (payload.release !== null) return withNote(t, t('hold.say.closed', said), payload.note);
      const sentence = t('ledger.say.covering.closed', said);
      const whole =
        payload.without === null ? sentence : t('hold.say.without', { sentence, reason: payload.without });
      return withNote(t, whole, payload.note);
    }
    case 'covering.reopened':
      return withReason(t, t('ledger.say.covering.reopened', { name: known }), payload.reason);
    case 'covering.planned':
    case 'covering.changed': {
      const values = {
        name: payload.name,
        kind: t(`common.coveringKind.${payload.kind}`),
        day: payload.plannedDay === null ? t('ledger.noDay') : formatDay(payload.plannedDay, lang),
        hidden: hiddenWords(t, payload),
      };
      return t(`ledger.say.${kind}`, values);
    }
  }
}

/** What a zone hides is worked out, not said: the ledger names no number of it. */
function hiddenWords(t: Words, { zone, hides }: Pick<CoveringFacts, 'zone' | 'hides'>): string {
  const listed = t('common.count.members', { count: hides.length });
  if (zone === null) return listed;
  return hides.length === 0 ? t('ledger.say.covering.inZone') : t('ledger.say.covering.withZone', { listed });
}

type ProtectionStatement = Extract<Statement, { kind: `protection.${string}` }>;

function protectionSentence(telling: Telling, { kind, payload }: ProtectionStatement): string {
  const { t, lang, zone } = telling;
  const name = telling.protections?.get(payload.protection) ?? t('protection.unnamed');
  switch (kind) {
    case 'protection.laid':
    case 'protection.changed': {
      const said = {
        name: payload.name,
        what: payload.what,
        when: formatInstant(payload.laidAt, zone, lang),
      };
      return t(kind === 'protection.laid' ? 'protection.say.laid' : 'protection.say.changed', said);
    }
    case 'protection.lifted':
      return t('protection.say.lifted', { name, when: formatInstant(payload.liftedAt, zone, lang) });
    case 'protection.lifting-withdrawn':
      return withReason(t, t('protection.say.lifting-withdrawn', { name }), payload.reason);
    case 'protection.withdrawn':
      return withReason(t, t('protection.say.withdrawn', { name }), payload.reason);
  }
}

type LinkStatement = StatementOf<
  'guest.admitted' | 'guest.ended' | 'password.link-made' | 'password.renewed'
>;

/** Of what can be done without signing in. */
function linkSentence(telling: Telling, { kind, payload }: LinkStatement): string {
  const { t, lang, zone } = telling;
  switch (kind) {
    case 'guest.admitted': {
      const { shows, label } = payload;
      const covering = 'covering' in shows ? telling.coverings.get(shows.covering) : undefined;
      const what = 'mark' in shows ? shows.mark : (covering ?? t('ledger.aCovering'));
      return t('ledger.say.guest.admitted', { label, what, when: formatInstant(payload.until, zone, lang) });
    }
    case 'guest.ended':
      return withReason(t, t('ledger.say.guest.ended'), payload.reason);
    case 'password.link-made': {
      const when = formatInstant(payload.until, zone, lang);
      return t('ledger.say.password.link-made', { person: payload.person.name, when });
    }
    case 'password.renewed': {
      const by = payload.linkBy?.name ?? t('ledger.theProgram');
      return t('ledger.say.password.renewed', { person: payload.person.name, by });
    }
  }
}

/** What the findings are about, each kind once, with the marks where they are few. */
function marksOf({ t, lang }: Telling, findings: readonly { marks: readonly string[] }[]): string {
  const marks = [...new Set(findings.flatMap((finding) => finding.marks))];
  return marks.length > 3 ? t('common.count.members', { count: marks.length }) : formatList(marks, lang);
}

function kindsOf(
  { t, lang }: Telling,
  findings: readonly { kind: FindingKind; marks: readonly string[] }[],
): string {
  const kinds = [...new Set(findings.map(({ kind }) => t(`findings.kind.${kind}`)))];
  const marks = [...new Set(findings.flatMap((finding) => finding.marks))];
  const what = formatList(kinds, lang);
  if (marks.length === 0 || marks.length > 3) return what;
  return t('ledger.ofMarks', { what, marks: formatList(marks, lang) });
}

/** With the names the kind had before, where it comes with the program. */
function termSentence({ t, lang }: Telling, payload: StatementOf<'term.entered'>['payload']): string {
  const name = nameOfKind({ ...payload, id: payload.term }, lang);
  const track = t(`common.track.${payload.track}`);
  const was = BUILT_IN.byId.get(payload.term);
  return was
    ? t('ledger.say.term.renamed', { name, track, was: nameOfKind(was, lang) })
    : t('ledger.say.term.entered', { name, track });
}

function devicePositionSentence({ t, lang, zone }: Telling, position: DevicePosition): string {
  return t('place.statement', {
    ...pairWords(position),
    error: lengthWords(t, lang, position.errorM),
    when: formatInstant(position.measuredAt, zone, lang),
  });
}

type TimeStatement = StatementOf<
  'photo.dated' | 'photo.dating-withdrawn' | 'clock.marked' | 'clock.withdrawn'
>;
function timeSentence({ t, lang, zone }: Telling, { kind, payload }: TimeStatement): string {
  switch (kind) {
    case 'photo.dated': {
      const when = formatInstant(payload.taken, zone, lang);
      const span = withinSpan(t, payload.withinS);
      return withReason(t, t('ledger.say.photo.dated', { when, span }), payload.reason);
    }
    case 'photo.dating-withdrawn':
      return withReason(t, t('ledger.say.photo.dating-withdrawn'), payload.reason);
    case 'clock.marked': {
      const camera = cameraName(payload.camera) ?? t('clock.unknownCamera');
      const clock = payload.shown.wallTime.slice(0, 19).replace('T', ' ');
      const when = formatInstant(payload.trueTime, zone, lang);
      return t('ledger.say.clock.marked', { camera, clock, when });
    }
    case 'clock.withdrawn': {
      const camera = cameraName(payload.camera) ?? t('clock.unknownCamera');
      return withReason(t, t('ledger.say.clock.withdrawn', { camera }), payload.reason);
    }
  }
}

function kindWords({ t, lang, lexicon }: Telling, kind: string): string {
  return kind === '' ? t('ledger.noKind') : kindLabel(kind, lang, lexicon ?? BUILT_IN);
}
