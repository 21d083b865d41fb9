import prettier from 'prettier';
import type { Capture } from '#domain/contract/capture';
import { decideCapture } from '#domain/photo/capture-time';
import { readExif } from '../../server/imaging/read-exif.ts';
import { readHead } from '../../server/imaging/read-head.ts';
import { sniff } from '../../server/imaging/sniff.ts';
import { sample } from '../support/samples.ts';
import { captureTruth, type CaptureTruth, type TagsOfFile } from './capture-truth.ts';

export const VERDICTS = ['right', 'flagged', 'undated rightly', 'not read', 'WRONG'] as const;

export interface CaptureRow {
  readonly file: string;
  readonly zone: string;
  readonly capture: Capture;
  readonly truth: CaptureTruth | null;
  readonly verdict: (typeof VERDICTS)[number];
}

/** What ExifTool finds and we do not look for, and why. */
const NOT_READ: Record<string, string> = {
  'damaged/made/only_createdate.jpg': 'only when it was digitised, which may be a scan',
  'timezones/nom_exif-legacy-app1.png': 'Exif in a text chunk; PNG has had eXIf since 2017',
  'timezones/nom_exif-legacy.png': 'Exif in a text chunk; PNG has had eXIf since 2017',
};
export const NOT_READ_FILES = Object.keys(NOT_READ);

/** One sample at a house in `zone`, as the server would read and date it. */
export async function captureRow(set: string, tags: TagsOfFile, zone: string): Promise<CaptureRow> {
  const path = sample(set, tags.SourceFile);
  const sniffed = sniff(await readHead(path, 1024));
  const file = `${set}/${tags.SourceFile}`;
  if (sniffed.kind !== 'photo') throw new Error(`${file} is ${sniffed.found}.`);
  const capture = decideCapture(await readExif(path, sniffed.mediaType), zone);
  const truth = captureTruth(tags, zone);
  return { file, zone, capture, truth, verdict: verdictOf(file, capture, truth) };
}

/** Right is only what its own uncertainty makes true of every instant that could be the true one. */
export function verdictOf(file: string, capture: Capture, truth: CaptureTruth | null): CaptureRow['verdict'] {
  if (capture.state === 'undated' && !truth) return 'undated rightly';
  if (isWithin(capture, truth)) return 'right';
  if (file in NOT_READ) return 'not read';
  return capture.state === 'dated' && capture.flags.length > 0 ? 'flagged' : 'WRONG';
}

function isWithin(capture: Capture, truth: CaptureTruth | null): boolean {
  if (capture.state === 'undated' || !truth) return false;
  const ms = Date.parse(capture.instant);
  return truth.instants.every((instant) => Math.abs(ms - instant) <= capture.uncertaintyS * 1000);
}

export function tableOf(rows: readonly CaptureRow[]): Promise<string> {
  const head = ['file', 'instant', 'source', '±', 'flags', 'truth', 'truth by', 'house in', 'verdict'];
  const lines = [head, head.map(() => '---'), ...rows.map(cells)];
  return prettier.format(lines.map((line) => `| ${line.join(' | ')} |`).join('\n'), { parser: 'markdown' });
}

function cells({ file, zone, capture, truth, verdict }: CaptureRow): string[] {
  const ours =
    capture.state === 'dated'
      ? [capture.instant, capture.source, `${capture.uncertaintyS} s`, capture.flags.join(', ')]
      : ['', 'undated', '', ''];
  const instants = truth?.instants.map((ms) => new Date(ms).toISOString()).join(' or ') ?? '';
  const saying = verdict === 'not read' ? `not read: ${NOT_READ[file]}` : verdict;
  return [`\`${file}\``, ...ours, instants, truth?.basis ?? '', zone, saying];
}

/** How many of each verdict, in the order of the list. */
export function countVerdicts(rows: readonly CaptureRow[]): string {
  const count = (verdict: string) => rows.filter((row) => row.verdict === verdict).length;
  return VERDICTS.map((verdict) => `${count(verdict)} ${verdict}`).join(', ');
}
