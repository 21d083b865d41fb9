import type { Capture } from '../../contract/capture.ts';
import type { NamedStretch } from '../../contract/report-views.ts';
import type {
  EvidenceTagView,
  ReleaseChangeView,
  ReleasedMemberView,
  ReleaseView,
  TagDoubtView,
} from '../../contract/review-views.ts';
import type { CoveringKind, Person } from '../../contract/shapes.ts';
import type { Stage } from '../../frame/stage.ts';
import { groupBy } from '../../group-by.ts';
import { withOneStop, withoutStop } from '../../one-stop.ts';
import type { Sheet, SheetChange, SheetFact, SheetMember, SheetRecord, SheetWaiver } from './sheet.ts';
import type { SheetWords } from './sheet-words.ts';
import { SHEET_WORDS_EN } from './sheet-words-en.ts';
import { SHEET_WORDS_JA } from './sheet-words-ja.ts';
import { toldZone } from './told-zone.ts';

const SHEET_WORDS = { en: SHEET_WORDS_EN, ja: SHEET_WORDS_JA };

/** How whoever draws the sheet says what stands elsewhere, too. */
export interface SheetSpeech {
  readonly lang: 'en' | 'ja';
  /** A UTC instant in the zone of the house. */
  readonly when: (instant: string) => string;
  readonly stage: (stage: Stage) => string;
  readonly kind: (kind: CoveringKind) => string;
  /** What a member is. */
  readonly member: (kind: string) => string;
}

interface Telling extends SheetSpeech {
  readonly words: SheetWords;
  readonly evidence: ReadonlyMap<string, EvidenceTagView>;
  /** By tag. */
  readonly doubts: ReadonlyMap<string, readonly TagDoubtView[]>;
  readonly roles: ReleaseView['roles'];
}

/** Pictures of one member: the best records come first. */
const PICTURED = 4;

/** The release in words, in the order in which it is read; `asOf`: the UTC instant that the rest is told of. */
export function releaseSheet(release: ReleaseView, speech: SheetSpeech, asOf: string): Sheet {
  const words = SHEET_WORDS[speech.lang];
  const evidence = new Map(release.evidence.map((one) => [one.tag.id, one]));
  const doubts = groupBy(release.doubts, ({ tag }) => tag);
  const telling: Telling = { ...speech, words, evidence, doubts, roles: release.roles };
  const { hides, head, seq, covering } = release;
  const waivers = waiversOf(telling, release);
  return {
    title: words.title(covering.name),
    notice: noticeOf(telling, release, asOf),
    facts: factsOf(telling, release),
    proof: {
      number: { name: words.fact.number, text: release.id },
      entry: { name: words.fact.entry, text: words.entry(seq, head.size) },
      head: { name: words.fact.head, text: release.headAfter },
      check: words.check,
    },
    caution: words.caution,
    waived: {
      heading: words.waived.heading,
      lead: waivers.length === 0 ? words.waived.none : words.waived.lead(nameOf(telling, release)),
      items: waivers,
    },
    refused: refusedOf(telling, release),
    members: {
      heading: words.members.heading(hides.length),
      lead: words.members.lead,
      items: hides.map((member) => memberOf(telling, member)),
    },
    later: laterOf(telling, release, asOf),
  };
}

/** What has to be known before anything else of it is read: that it stands no more, or not for all. */
function noticeOf(telling: Telling, release: ReleaseView, asOf: string): string | null {
  const { words, when } = telling;
  const fallen = fallenWords(telling, release);
  if (fallen !== null || release.beyond.length === 0) return fallen;
  return words.notForAll({ marks: release.beyond, when: when(asOf) });
}

/** That it does not stand any more, and by whose word; null while it does. */
function fallenWords(telling: Telling, { withdrawn, ended }: ReleaseView): string | null {
  const { words } = telling;
  if (withdrawn) return words.withdrawn(reasonedOf(telling, withdrawn));
  return ended && words.ended(saidOf(telling, ended));
}

function factsOf(
  telling: Telling,
  { house, covering, fourEyes, note, ...release }: ReleaseView,
): SheetFact[] {
  const { words, kind, lang } = telling;
  const fact = (name: keyof SheetWords['fact'], text: string) => ({ name: words.fact[name], text });
  return [
    fact('house', house.name),
    fact('covering', words.covering(covering.name, kind(covering.kind))),
    fact('released', words.said(saidOf(telling, release))),
    fact('keeper', keepersAt(telling, release.at).join(words.and) || words.noNote),
    fact('times', words.zone(toldZone(house.zone, lang, release.at))),
    fact('rule', fourEyes ? words.fourEyes : words.twoEyes),
    fact('note', note.trim() === '' ? words.noNote : note.trim()),
  ];
}

function waiversOf({ words }: Telling, { hides, waived }: ReleaseView): SheetWaiver[] {
  const members = new Map<string, ReleasedMemberView>(hides.map((member) => [member.mark, member]));
  return waived.map(({ mark, reason }) => ({
    mark,
    lines: [missingWords(words, members.get(mark)), words.reason(reason)],
  }));
}

function refusedOf(telling: Telling, { refusals }: ReleaseView): Sheet['refused'] {
  const { heading, lead, lacks } = telling.words.refused;
  if (refusals.length === 0) return null;
  const items = refusals.map(({ note, lacking, ...saying }) => ({
    said: telling.words.said(saidOf(telling, saying)),
    lines: [...(note.trim() === '' ? [] : [note.trim()]), ...lacking.map((one) => lacks(one.mark, one.note))],
  }));
  return { heading, lead, items };
}

function missingWords(words: SheetWords, member: ReleasedMemberView | undefined): string {
  if (!member || member.missing.length === 0) return words.missingAll;
  return words.missing(member.missing.map((part) => partWords(words, part, member.isUpright)));
}

/** From one line of the grid to another; where none is near, in metres to the centimetre. */
function partWords({ part }: SheetWords, stretch: NamedStretch, isUpright: boolean): string {
  const { from, to, fromMark, toMark } = stretch;
  if (fromMark !== null && toMark !== null && fromMark !== toMark) return part.named(fromMark, toMark);
  const metres = (mm: number) => (mm / 1000).toFixed(2);
  return part[isUpright ? 'fromFoot' : 'fromEnd'](metres(from), metres(to));
}

function memberOf(telling: Telling, member: ReleasedMemberView): SheetMember {
  const { words, stage } = telling;
  const { mark, least, views, stretch, state, tags, isWhole, isUpright } = member;
  const hidden =
    stretch === null || isWhole ? words.whole : words.hidden(partWords(words, stretch, isUpright));
  return {
    mark,
    kind: member.kind === null ? '' : telling.member(member.kind),
    state: words.state[state],
    text: [words.least(stage(least), views), hidden].join(words.and),
    records: tags.flatMap((tag, n) => recordOf(telling, tag, n < PICTURED)),
  };
}

function recordOf(telling: Telling, id: string, isPictured: boolean): SheetRecord[] {
  const found = telling.evidence.get(id);
  if (!found) return [];
  const { tag, fileName, crop, capture } = found;
  const { words, stage } = telling;
  return [
    {
      tag: id,
      photo: tag.photo,
      crop,
      region: tag.region,
      shows: words.shows(tag.mark, stage(tag.stage), fileName),
      isPictured,
      lines: [
        fileName,
        words.stage(stage(tag.stage)),
        ...(tag.stretch ? [words.part.shown(tag.stretch.from, tag.stretch.to)] : []),
        ...timeLines(telling, capture),
        words.taggedBy(saidOf(telling, tag)),
        ...doubtLines(telling, id),
      ],
    },
  ];
}

function doubtLines(telling: Telling, tag: string): string[] {
  const { words, doubts } = telling;
  const said = doubts.get(tag);
  if (!said) return [];
  const told = said.map((one) => words.doubt[one.what](reasonedOf(telling, one)));
  return [withOneStop(words.doubts(told), told)];
}

function timeLines(telling: Telling, capture: Capture): string[] {
  const { words, when } = telling;
  if (capture.state === 'undated') return [words.undated];
  const { instant, uncertaintyS, correction, byHand } = capture;
  return [
    words.taken(when(instant), uncertaintyS < 1 ? '' : words.within(uncertaintyS)),
    ...(correction ? [words.corrected] : []),
    ...(byHand ? [byHandWords(words, nameOf(telling, byHand))] : []),
  ];
}

const byHandWords = (words: SheetWords, who: string) => withOneStop(words.byHand(who), [who]);

function laterOf(telling: Telling, release: ReleaseView, asOf: string): Sheet['later'] {
  const { words, when } = telling;
  const { since, doubtsSince } = release;
  return {
    heading: words.later.heading,
    lead: words.later.lead(when(asOf)),
    facts: [
      {
        name: words.later.stands,
        text: fallenWords(telling, release) ?? standingWords(telling, release),
      },
      { name: words.later.closing, text: closingWords(telling, release) },
      {
        name: words.later.changes,
        text: since.length + doubtsSince.length === 0 ? words.later.unchanged : words.later.changed,
      },
    ],
    items: eachMarkOnce([
      ...since.map((change) => changeOf(telling, change, new Set(doubtsSince.map(({ at }) => at)))),
      ...doubtedSince(telling, release),
    ]),
  };
}

function standingWords({ words }: Telling, { beyond }: ReleaseView): string {
  return beyond.length === 0 ? words.later.standing : words.later.notFor(beyond);
}

function eachMarkOnce(items: readonly SheetChange[]): SheetChange[] {
  return [...groupBy(items, ({ mark }) => mark)].map(([mark, same]) => ({
    mark,
    lines: same.flatMap(({ lines }) => lines),
  }));
}

function doubtedSince(telling: Telling, { doubtsSince }: ReleaseView): SheetChange[] {
  const said = groupBy(doubtsSince, ({ mark }) => mark);
  return [...said].map(([mark, doubts]) => ({
    mark,
    lines: doubts.map((one) => telling.words.doubt[one.what](reasonedOf(telling, one))),
  }));
}

function closingWords({ words, when }: Telling, { id, covering }: ReleaseView): string {
  const { closedAt, closedUnder } = covering;
  if (closedAt === null) return words.later.open;
  return closedUnder === id
    ? words.later.closedUnder(when(closedAt))
    : words.later.closedElse(when(closedAt));
}

/** `toldBelow`: when those doubts were said that are told by themselves. */
function changeOf(
  telling: Telling,
  { mark, what, gone, come }: ReleaseChangeView,
  toldBelow: ReadonlySet<string>,
): SheetChange {
  const { later } = telling.words;
  const fate = (tag: string) =>
    toldBelow.has(telling.evidence.get(tag)?.tag.disputed?.at ?? '') ? [] : fateOf(telling, tag);
  return {
    mark,
    lines: [
      ofRecords(what, gone.length, come.length) ?? later.what[what],
      ...gone.map((tag) => later.gone(inOneLine(telling, tag, fate(tag)))),
      ...come.map((tag) => later.come(inOneLine(telling, tag, []))),
    ],
  };

  function ofRecords(kind: ReleaseChangeView['what'], less: number, more: number): string | null {
    if (kind !== 'records' || (less > 0 && more > 0)) return null;
    return more === 0 ? later.fewer : later.more;
  }
}

function inOneLine(telling: Telling, tag: string, more: readonly string[]): string {
  const lines = recordOf(telling, tag, false).flatMap((record) => record.lines);
  return [...lines, ...more].map(withoutStop).join(telling.words.and);
}

/** What became of a tag, where somebody did something to it. */
function fateOf(telling: Telling, id: string): string[] {
  const tag = telling.evidence.get(id)?.tag;
  const { ended } = telling.words.later;
  if (tag?.ended && tag.state !== 'standing') return [ended[tag.state](reasonedOf(telling, tag.ended))];
  return tag?.disputed ? [ended.disputed(reasonedOf(telling, tag.disputed))] : [];
}

interface Saying {
  readonly at: string;
  readonly by: Person | null;
}

function saidOf(telling: Telling, saying: Saying) {
  return { who: nameOf(telling, saying), when: telling.when(saying.at) };
}

function reasonedOf(telling: Telling, saying: Saying & { readonly reason: string }) {
  return { ...saidOf(telling, saying), reason: saying.reason };
}

/** With the role that they had when they said it: whoever reads the paper does not know the people. */
function nameOf({ words, roles }: Telling, { at, by }: Saying): string {
  if (by === null) return words.nobody;
  const held = roles.findLast(({ person, since }) => person.id === by.id && since <= at);
  return held?.role ? words.person(by.name, words.role[held.role]) : by.name;
}

/** Whom to ask for the record: whoever kept it when the covering was released, by the names that they had then. */
function keepersAt({ roles }: Telling, at: string): string[] {
  const held = new Map(roles.filter(({ since }) => since <= at).map((one) => [one.person.id, one]));
  return [...held.values()].flatMap(({ person, role }) => (role === 'owner' ? [person.name] : []));
}
