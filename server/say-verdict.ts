import { SHEET_WORDS_EN } from '#domain/record/sheet/sheet-words-en';
import { toldZone } from '#domain/record/sheet/told-zone';
import type { Said, SaidClosing } from '#domain/verify/replay/state';
import type { ToldCovering, ToldRelease } from '#domain/verify/told-coverings';
import type { Verdict } from '#domain/verify/verify-archive';
import { toldTime } from './services/told-time.ts';

const ROLES = new Map<string, string>(Object.entries(SHEET_WORDS_EN.role));
/** What would move the cursor, colour the text or turn its direction, and so make other lines of it. */
const UNPRINTABLE = /[\p{Cc}\u2028\u2029\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu;

interface Speech {
  readonly when: (instant: string) => string;
  /** The release that a paper names. */
  readonly named: string | null;
}

/** What `npm run verify` prints of an archive in which nothing is wrong: what was checked, and what its ledger says. */
export function sayVerdict(verdict: Verdict): string[] {
  const { told, zone, madeAt, paper } = verdict;
  const speech = { when: (at: string) => toldTime(at, zone, 'en'), named: paper?.release ?? null };
  const { name, offset } = toldZone(zone, 'en', madeAt);
  const lines = [
    ...sayChecked(verdict),
    '',
    told.length === 0
      ? 'The ledger says of no covering that it was released or closed.'
      : `What the ledger says of releases and closings, in the time of the house, ${name} (${offset}):`,
    ...told.flatMap((covering) => sayCovering(speech, covering)),
    '',
    'Read this here, and not in index.html or check.html of the archive: nothing vouches for those two pages.',
    'Their hashes in the manifest find damage only, and whoever alters a page can alter its hash.',
  ];
  return lines.map(printable);
}

function sayChecked({ house, name, entries, head, madeAt, originals, bytes, ...verdict }: Verdict): string[] {
  const { records, releases, takenBack, back, paper } = verdict;
  const stand =
    takenBack === 0 ? '' : `, of which ${takenBack} ${takenBack === 1 ? 'was' : 'were'} taken back`;
  return [
    `Nothing is wrong with this archive of “${name}” (house ${house}), made at ${madeAt}.`,
    `${counted(entries, 'entry', 'entries')} of the ledger, each with its hash and its tree head.`,
    `${counted(originals, 'original')}, ${bytes} bytes; ${counted(records, 'tag')} standing; ${counted(releases, 'release')}${stand}.`,
    ...(back.length === 0
      ? []
      : [
          `Not in the order of their times: ${counted(back.length, 'entry', 'entries')}, first on line ${(back[0] ?? 0) + 1}.`,
        ]),
    `Tree head: ${head}`,
    ...(paper === null
      ? [
          'Compare it with what was noted elsewhere, e.g. on a release sheet: only that shows that nothing was written anew.',
        ]
      : sayPaper(paper)),
  ];
}

function sayPaper({
  size,
  release,
  includesRelease,
  withdrawn,
  ended,
}: NonNullable<Verdict['paper']>): string[] {
  const same = `It is the archive that the paper speaks of: the head over its first ${size} entries is the same.`;
  if (release === null) return [same];
  return [
    same,
    includesRelease
      ? `The release ${release} lies under that head.`
      : `The release ${release} is in it and rests on that head; its own words stand behind it.`,
    ...(ended
      ? [`It stands no more: ${personOf(ended)} said at ${ended.at} that the covering is ready anew.`]
      : []),
    ...(withdrawn
      ? [`It stands no more: ${personOf(withdrawn)} took it back at ${withdrawn.at}: ${withdrawn.reason}`]
      : []),
  ];
}

function sayCovering(speech: Speech, { name, releases, closings }: ToldCovering): string[] {
  const said = [
    ...releases.map((one) => ({ seq: one.seq, lines: sayRelease(speech, one, name) })),
    ...closings.map((one) => ({ seq: one.seq, lines: sayClosing(speech, one, name) })),
  ].sort((one, other) => one.seq - other.seq);
  return [
    '',
    `“${name}”`,
    ...said.flatMap(({ lines: [first = '', ...more] }) => [`  ${first}`, ...more.map(deeper)]),
  ];
}

const deeper = (line: string) => `    ${line}`;

function sayRelease(speech: Speech, release: ToldRelease, now: string): string[] {
  const { members, accepted, note } = release;
  return [
    `Released ${saidWhen(speech, release)}; release ${release.release}`,
    ...(release.release === speech.named ? ['This is the release that the paper names.'] : []),
    ...calledThen(release, now),
    ...sayFate(speech, release),
    ...accepted.map(({ mark, reason }) => `Accepted without a record: ${mark}: ${reason}`),
    `It hides ${counted(members.length, 'member')}: ${members.map(sayMember).join(', ')}`,
    ...(note === '' ? [] : [`Note: ${note}`]),
  ];
}

function sayFate(speech: Speech, { takenBack, ended }: ToldRelease): string[] {
  if (!takenBack && !ended) return ['It stands.'];
  return [
    ...(ended ? [`It ended: ready for inspection was said anew ${saidWhen(speech, ended)}`] : []),
    ...(takenBack ? [`Taken back ${saidWhen(speech, takenBack)}: ${takenBack.reason}`] : []),
  ];
}

const sayMember = ({ mark, records, isHiddenBefore }: ToldRelease['members'][number]) =>
  `${mark} (${isHiddenBefore ? 'hidden before by another layer' : counted(records, 'record')})`;

function sayClosing(speech: Speech, closing: SaidClosing, now: string): string[] {
  const { closedAt, release, without, note, takenBack } = closing;
  return [
    `Closed on ${speech.when(closedAt)}, said ${saidWhen(speech, closing)}`,
    ...calledThen(closing, now),
    release === null
      ? `Without release${without === null ? ', and nobody said why' : `: ${without}`}`
      : `Under the release ${release}`,
    ...(takenBack === null ? [] : [`Closing taken back ${saidWhen(speech, takenBack)}: ${takenBack.reason}`]),
    ...(note === '' ? [] : [`Note: ${note}`]),
  ];
}

const calledThen = (said: { readonly name: string }, now: string) =>
  said.name === now ? [] : [`The covering was called “${said.name}” then.`];

const saidWhen = ({ when }: Speech, said: Said) =>
  `on ${when(said.at)} by ${personOf(said)}, ledger entry No. ${said.seq + 1}`;

function personOf({ by, role }: Said): string {
  if (by === null) return 'the program itself';
  return `${by} (${role === null ? 'no role in the house' : (ROLES.get(role) ?? role)})`;
}

const counted = (count: number, thing: string, things = `${thing}s`) =>
  `${count} ${count === 1 ? thing : things}`;

/** Whoever made the ledger may have put signs into it that this program never would. */
const printable = (line: string) =>
  line.replace(UNPRINTABLE, (sign) => (sign === '\n' ? ' / ' : `<U+${codeOf(sign)}>`));
const codeOf = (sign: string) => (sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
