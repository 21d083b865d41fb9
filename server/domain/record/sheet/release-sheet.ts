import type { Capture } from '../../contract/capture.ts';
import type { ReleasedMember } from '../../contract/hold.ts';
import type { EvidenceTagView, ReleaseChangeView, ReleaseView } from '../../contract/review-views.ts';
import type { CoveringKind, Person } from '../../contract/shapes.ts';
import type { Stage } from '../../frame/stage.ts';
import type { Stretch } from '../stretches.ts';
import type { Sheet, SheetChange, SheetFact, SheetMember, SheetRecord, SheetWaiver } from './sheet.ts';
import type { SheetWords } from './sheet-words.ts';
import { SHEET_WORDS_EN } from './sheet-words-en.ts';
import { SHEET_WORDS_JA } from './sheet-words-ja.ts';

const SHEET_WORDS = { en: SHEET_WORDS_EN, ja: SHEET_WORDS_JA };

/** How whoever draws the sheet says what stands elsewhere, too. */
export interface SheetSpeech {
  readonly lang: 'en' | 'ja';
  /** A UTC instant in the zone of the house. */
  readonly when: (instant: string) => string;
  readonly stage: (stage: Stage) => string;
  readonly kind: (kind: CoveringKind) => string;
}

interface Telling extends SheetSpeech {
  readonly words: SheetWords;
  readonly evidence: ReadonlyMap<string, EvidenceTagView>;
}

/** Pictures of one member: the best records come first. */
const PICTURED = 4;

/** The release in words, in the order in which it is read; `asOf`: the UTC instant that the rest is told of. */
export function releaseSheet(release: ReleaseView, speech: SheetSpeech, asOf: string): Sheet {
  const words = SHEET_WORDS[speech.lang];
  const evidence = new Map(release.evidence.map((one) => [one.tag.id, one]));
  const telling: Telling = { ...speech, words, evidence };
  const { hides, head, seq, covering, withdrawn } = release;
  const waivers = waiversOf(telling, release);
  return {
    title: words.title(covering.name),
    withdrawn: withdrawn && words.withdrawn({ ...saidOf(telling, withdrawn), reason: withdrawn.reason }),
    facts: factsOf(telling, release),
    proof: {
      entry: { name: words.fact.entry, text: words.entry(seq, head.size) },
      head: { name: words.fact.head, text: release.headAfter },
      check: words.check,
    },
    caution: words.caution,
    waived: {
      heading: words.waived.heading,
      lead: waivers.length === 0 ? words.waived.none : words.waived.lead(nameOf(telling, release.by)),
      items: waivers,
    },
    members: {
      heading: words.members.heading(hides.length),
      lead: words.members.lead,
      items: hides.map((member) => memberOf(telling, member)),
    },
    later: laterOf(telling, release, asOf),
  };
}

function factsOf(
  telling: Telling,
  { house, covering, fourEyes, note, ...release }: ReleaseView,
): SheetFact[] {
  const { words, kind } = telling;
  const fact = (name: keyof SheetWords['fact'], text: string) => ({ name: words.fact[name], text });
  return [
    fact('house', house.name),
    fact('covering', words.covering(covering.name, kind(covering.kind))),
    fact('released', words.said(saidOf(telling, release))),
    fact('times', words.zone(house.zone)),
    fact('rule', fourEyes ? words.fourEyes : words.twoEyes),
    fact('note', note.trim() === '' ? words.noNote : note.trim()),
  ];
}

function waiversOf({ words }: Telling, { hides, waived }: ReleaseView): SheetWaiver[] {
  const members = new Map<string, ReleasedMember>(hides.map((member) => [member.mark, member]));
  return waived.map(({ mark, reason }) => ({
    mark,
    lines: [missingWords(words, members.get(mark)?.missing ?? []), words.reason(reason)],
  }));
}

function missingWords(words: SheetWords, missing: readonly Stretch[]): string {
  return missing.length === 0
    ? words.missingAll
    : words.missing(missing.map((stretch) => stretchWords(words, stretch)));
}

/** To the centimetre, as lengths of a frame are told. */
function stretchWords({ part }: SheetWords, { from, to }: Stretch): string {
  const metres = (mm: number) => (mm / 1000).toFixed(2);
  return part(metres(from), metres(to));
}

function memberOf(
  telling: Telling,
  { mark, least, views, stretch, state, tags }: ReleasedMember,
): SheetMember {
  const { words, stage } = telling;
  const hidden = stretch === null ? words.whole : words.hidden(stretchWords(words, stretch));
  return {
    mark,
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
        ...timeLines(telling, capture),
        words.taggedBy(saidOf(telling, tag)),
      ],
    },
  ];
}

function timeLines(telling: Telling, capture: Capture): string[] {
  const { words, when } = telling;
  if (capture.state === 'undated') return [words.undated];
  const { instant, uncertaintyS, correction, byHand } = capture;
  return [
    words.taken(when(instant), uncertaintyS < 1 ? '' : words.within(uncertaintyS)),
    ...(correction ? [words.corrected] : []),
    ...(byHand ? [words.byHand(nameOf(telling, byHand.by))] : []),
  ];
}

function laterOf(telling: Telling, release: ReleaseView, asOf: string): Sheet['later'] {
  const { words, when } = telling;
  const { withdrawn, since } = release;
  return {
    heading: words.later.heading,
    lead: words.later.lead(when(asOf)),
    facts: [
      {
        name: words.later.stands,
        text: withdrawn
          ? words.withdrawn({ ...saidOf(telling, withdrawn), reason: withdrawn.reason })
          : words.later.standing,
      },
      { name: words.later.closing, text: closingWords(telling, release) },
      { name: words.later.changes, text: since.length === 0 ? words.later.unchanged : words.later.changed },
    ],
    items: since.map((change) => changeOf(telling, change)),
  };
}

function closingWords({ words, when }: Telling, { id, covering }: ReleaseView): string {
  const { closedAt, closedUnder } = covering;
  if (closedAt === null) return words.later.open;
  return closedUnder === id
    ? words.later.closedUnder(when(closedAt))
    : words.later.closedElse(when(closedAt));
}

function changeOf(telling: Telling, { mark, what, gone, come }: ReleaseChangeView): SheetChange {
  const { later } = telling.words;
  return {
    mark,
    lines: [
      later.what[what],
      ...gone.map((tag) => later.gone(inOneLine(telling, tag, fateOf(telling, tag)))),
      ...come.map((tag) => later.come(inOneLine(telling, tag, []))),
    ],
  };
}

function inOneLine(telling: Telling, tag: string, more: readonly string[]): string {
  const lines = recordOf(telling, tag, false).flatMap((record) => record.lines);
  return [...lines, ...more].join(telling.words.and);
}

/** What became of a tag, where somebody did something to it. */
function fateOf(telling: Telling, id: string): string[] {
  const tag = telling.evidence.get(id)?.tag;
  const { ended } = telling.words.later;
  if (tag?.ended && tag.state !== 'standing') return [ended[tag.state](saidOf(telling, tag.ended))];
  return tag?.disputed ? [ended.disputed(saidOf(telling, tag.disputed))] : [];
}

function saidOf(telling: Telling, { at, by }: { at: string; by: Person | null }) {
  return { who: nameOf(telling, by), when: telling.when(at) };
}

function nameOf({ words }: Telling, by: Person | null): string {
  return by?.name ?? words.nobody;
}
