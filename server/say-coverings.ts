import { SHEET_WORDS_EN } from '#domain/record/sheet/sheet-words-en';
import type { Said, SaidClosing, SaidRefusal, TagWord } from '#domain/verify/replay/state';
import type { ToldCovering, ToldRelease } from '#domain/verify/told-coverings';
import { shakenIn, type ToldRecord } from '#domain/verify/told-since';
import { REPORT_WORDS } from './services/report-words.ts';

const ROLES = new Map<string, string>(Object.entries(SHEET_WORDS_EN.role));
const STAGES = new Map<string, string>(Object.entries(REPORT_WORDS.en.stage));

export interface Speech {
  readonly when: (instant: string) => string;
  /** The release that a paper names. */
  readonly named: string | null;
}

/** Releases, refusals and closings of a covering, in the order in which they were said. */
export function sayCovering(speech: Speech, covering: ToldCovering): string[] {
  const { name, releases, refusals, closings } = covering;
  const said = [
    ...releases.map((one) => ({ seq: one.seq, lines: sayRelease(speech, one, name) })),
    ...refusals.map((one) => ({ seq: one.seq, lines: sayRefusal(speech, one, name) })),
    ...closings.map((one) => ({ seq: one.seq, lines: sayClosing(speech, one, covering) })),
  ].sort((one, other) => one.seq - other.seq);
  return [
    '',
    `“${name}”`,
    ...said.flatMap(({ lines: [first = '', ...more] }) => [`  ${first}`, ...more.map(deeper)]),
  ];
}

const deeper = (line: string) => `    ${line}`;

function sayRelease(speech: Speech, release: ToldRelease, now: string): string[] {
  const { members, accepted, note, since } = release;
  return [
    `Released ${saidWhen(speech, release)}; release ${release.release}`,
    ...(release.release === speech.named ? ['This is the release that the paper names.'] : []),
    ...calledThen(release, now),
    ...sayFate(speech, release),
    ...since.flatMap((record) => sayRecord(speech, record)),
    ...accepted.map(({ mark, reason }) => `Accepted without a record: ${mark}: ${reason}`),
    `It hides ${counted(members.length, 'member')}: ${members.map(sayMember).join(', ')}`,
    ...(note === '' ? [] : [`Note: ${note}`]),
  ];
}

function sayFate(speech: Speech, release: ToldRelease): string[] {
  const { takenBack, ended } = release;
  if (!takenBack && !ended) return sayStanding(release);
  return [
    ...(ended ? [`It ended: ready for inspection was said anew ${saidWhen(speech, ended)}`] : []),
    ...(takenBack ? [`Taken back ${saidWhen(speech, takenBack)}: ${takenBack.reason}`] : []),
  ];
}

/** Of a release that was not taken back: with what was said since of the records that it rests on. */
function sayStanding({ members, since }: ToldRelease): string[] {
  const all = counted(new Set(members.flatMap(({ tags }) => tags)).size, 'record');
  const shaken = shakenIn(since);
  if (shaken.length > 0)
    return [
      `It stands, but of the ${all} that it rests on, ${sayStates(shaken)} since.`,
      'Whether other records do in their place is not told here; where none do, that is to be inspected anew before it is hidden.',
    ];
  if (since.length === 0) return ['It stands.'];
  const answered = since.length === 1 ? 'the doubt was answered' : 'the doubts were answered';
  return [`It stands; of the ${all} that it rests on, ${sayStates(since)} since, and ${answered}.`];
}

const STATES = [
  ['doubted', (one: boolean) => `${one ? 'is' : 'are'} doubted`],
  ['withdrawn', (one: boolean) => `${one ? 'was' : 'were'} withdrawn`],
  ['superseded', (one: boolean) => `${one ? 'was' : 'were'} replaced`],
  ['answered', (one: boolean) => `${one ? 'was' : 'were'} doubted`],
] as const;

function sayStates(records: readonly ToldRecord[]): string {
  const told = STATES.flatMap(([state, say]) => {
    const { length } = records.filter((record) => record.state === state);
    return length === 0 ? [] : [`${length} ${say(length === 1)}`];
  });
  return new Intl.ListFormat('en-GB').format(told);
}

const sayRecord = (speech: Speech, { mark, said }: ToldRecord) =>
  said.map(
    (word) => `Record of ${mark}: ${TAG_WORDS[word.what]} ${saidWhen(speech, word)}${sayReason(word)}`,
  );

const TAG_WORDS: Readonly<Record<TagWord['what'], string>> = {
  doubted: 'doubted',
  answered: 'doubt answered',
  reopened: 'answer taken back',
  withdrawn: 'withdrawn',
  superseded: 'replaced',
};

function sayReason(word: TagWord): string {
  if (word.what === 'superseded') return `: now ${word.mark}, ${STAGES.get(word.stage) ?? word.stage}`;
  return word.reason === '' ? '' : `: ${word.reason}`;
}

const sayMember = ({ mark, tags, isHiddenBefore }: ToldRelease['members'][number]) =>
  `${mark} (${isHiddenBefore ? 'hidden before by another layer' : counted(tags.length, 'record')})`;

function sayRefusal(speech: Speech, refusal: SaidRefusal, now: string): string[] {
  const { lacking, note } = refusal;
  return [
    `Refused ${saidWhen(speech, refusal)}`,
    ...calledThen(refusal, now),
    ...lacking.map((one) => `Missing: ${one.mark}${one.note === '' ? '' : `: ${one.note}`}`),
    ...(note === '' ? [] : [`Note: ${note}`]),
  ];
}

function sayClosing(speech: Speech, closing: SaidClosing, covering: ToldCovering): string[] {
  const { closedAt, note, takenBack } = closing;
  return [
    `Closed on ${speech.when(closedAt)}, said ${saidWhen(speech, closing)}`,
    ...calledThen(closing, covering.name),
    sayUnder(closing, covering),
    ...(takenBack === null ? [] : [`Closing taken back ${saidWhen(speech, takenBack)}: ${takenBack.reason}`]),
    ...(note === '' ? [] : [`Note: ${note}`]),
  ];
}

function sayUnder({ release, without }: SaidClosing, { releases }: ToldCovering): string {
  if (release === null)
    return `Without release${without === null ? ', and nobody said why' : `: ${without}`}`;
  const given = releases.find((one) => one.release === release);
  return `Under the release ${release}${given?.takenBack ? ', which was taken back' : ''}`;
}

const calledThen = (said: { readonly name: string }, now: string) =>
  said.name === now ? [] : [`The covering was called “${said.name}” then.`];

const saidWhen = ({ when }: Speech, said: Said) =>
  `on ${when(said.at)} by ${personOf(said)}, ledger entry No. ${said.seq + 1}`;

export function personOf({ by, role }: Said): string {
  if (by === null) return 'the program itself';
  return `${by} (${role === null ? 'no role in the house' : (ROLES.get(role) ?? role)})`;
}

export const counted = (count: number, thing: string, things = `${thing}s`) =>
  `${count} ${count === 1 ? thing : things}`;
