import { toldZone } from '#domain/record/sheet/told-zone';
import { shakenIn } from '#domain/verify/told-since';
import type { Verdict } from '#domain/verify/verify-archive';
import { counted, personOf, sayCovering } from './say-coverings.ts';
import { toldTime } from './services/told-time.ts';

/** What would move the cursor, colour the text or turn its direction, and so make other lines of it. */
const UNPRINTABLE = /[\p{Cc}\u2028\u2029\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu;

const SINCE = [
  'Of what came after a release, this tells what was said of the records that it rests on, and not whether more is',
  'hidden now than it speaks of.',
];

/** What `npm run verify` prints of an archive in which nothing is wrong: what was checked, and what its ledger says. */
export function sayVerdict(verdict: Verdict): string[] {
  const { told, zone, madeAt, paper } = verdict;
  const speech = { when: (at: string) => toldTime(at, zone, 'en'), named: paper?.release ?? null };
  const { name, offset } = toldZone(zone, 'en', madeAt);
  const lines = [
    ...sayChecked(verdict),
    '',
    told.length === 0
      ? 'The ledger says of no covering that it was released, refused or closed.'
      : `What the ledger says of releases, refusals and closings, in the time of the house, ${name} (${offset}):`,
    ...told.flatMap((covering) => sayCovering(speech, covering)),
    '',
    ...(told.some(({ releases }) => releases.length > 0) ? SINCE : []),
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

function sayPaper({ size, release, includesRelease, ...later }: NonNullable<Verdict['paper']>): string[] {
  const { withdrawn, ended } = later;
  const shaken = shakenIn(later.since).length;
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
    ...(shaken > 0
      ? [
          `Since it was given, ${counted(shaken, 'record')} that it rests on ${shaken === 1 ? 'is' : 'are'} doubted, withdrawn or replaced; see below.`,
        ]
      : []),
  ];
}

/** Whoever made the ledger may have put signs into it that this program never would. */
const printable = (line: string) =>
  line.replace(UNPRINTABLE, (sign) => (sign === '\n' ? ' / ' : `<U+${codeOf(sign)}>`));
const codeOf = (sign: string) => (sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
