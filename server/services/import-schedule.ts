import { createHash } from 'node:crypto';
import type { AccountView } from '#domain/contract/views';
import type { ScheduleImportView, SchedulePreviewView } from '#domain/contract/schedule-views';
import type { StatedGrid } from '#domain/contract/frame-shapes';
import { axisOf } from '#domain/frame/axis-of';
import { facesOf, isPlausibleDepth } from '#domain/frame/faces-of';
import { gridReader } from '#domain/frame/grid-reader';
import { lexiconOf, type Lexicon } from '#domain/lexicon/lexicon';
import { usualLie } from '#domain/lexicon/usual-lie';
import { diffSchedule, type ScheduleDiff } from '#domain/frame/schedule-diff';
import { readSchedule, type ReadSchedule } from '#domain/frame/schedule';
import type { ColumnMapping } from '#domain/frame/schedule-headings';
import { canonicalJson } from '#domain/ledger/canonical-json';
import { speaker, type Context } from './context.ts';
import { Failure } from './failure.ts';
import { cleanName } from './ingest-photo.ts';
import type { Sheet } from './read-sheet.ts';
import type { RecordReader } from './record-store.ts';

export interface ScheduleFile {
  readonly bytes: Uint8Array;
  readonly contentType: string;
  readonly fileName: string;
}

export interface ImportChoices {
  readonly mapping: ColumnMapping;
  /** What becomes of standing members that the sheet does not name. */
  readonly missing: 'retire' | 'keep';
  readonly badRows: 'refuse' | 'skip';
  /** The digest of the preview that the person has seen. */
  readonly agree?: string | undefined;
}

const SAMPLE_ROWS = 8;

/** What importing the file would do. Changes nothing. */
export async function previewSchedule(
  context: Context,
  house: string,
  file: ScheduleFile,
  choices: ImportChoices,
): Promise<SchedulePreviewView> {
  const sheet = await readFile(context, file);
  const grid = await context.store.read.grid(house);
  const read = readSchedule(sheet.rows, choices.mapping, grid?.unit);
  const { diff, tags } = await compare(context.store.read, house, read, choices);
  const lexicon = lexiconOf(await context.store.read.terms(house));
  return {
    columns: read.columns.map(({ index, header, field }) => ({ index, header, field })),
    rows: read.rows,
    encoding: sheet.encoding,
    sample: sheet.rows.slice(0, read.headingLine + SAMPLE_ROWS).map((row) => [...row]),
    problems: [...read.problems],
    added: [...diff.added],
    changed: diff.changed.map((change) => ({ ...change })),
    retired: diff.retired.map((mark) => ({ mark, tags: tags.get(mark) ?? 0 })),
    unchanged: diff.unchanged,
    ...placesOf(diff, read, grid, lexicon),
    doubtfulHeights: doubtfulHeights(diff, read, lexicon),
    digest: digestOf(diff),
  };
}

/** Imports the file as one statement; a file that changes nothing says nothing. */
export async function importSchedule(
  context: Context,
  account: AccountView,
  house: string,
  file: ScheduleFile,
  choices: ImportChoices,
): Promise<ScheduleImportView> {
  const sheet = await readFile(context, file);
  const unit = (await context.store.read.grid(house))?.unit;
  const read = readSchedule(sheet.rows, choices.mapping, unit);
  if (!read.hasMarkColumn) throw new Failure('schedule-has-no-mark-column');
  const badRows = new Set(read.problems.map(({ line }) => line)).size;
  if (badRows > 0 && choices.badRows === 'refuse')
    throw new Failure('schedule-has-bad-rows', { count: badRows });
  return context.store.write(house, speaker(account), async (writing) => {
    const { diff } = await compare(writing, house, read, choices);
    if (choices.agree !== undefined && choices.agree !== digestOf(diff))
      throw new Failure('schedule-changed-since-preview');
    const counts = {
      added: diff.added.length,
      changed: diff.changed.length,
      retired: diff.retired.length,
      unchanged: diff.unchanged,
      badRows,
    };
    if (counts.added + counts.changed + counts.retired === 0) return { ...counts, seq: null };
    const source = { fileName: cleanName(file.fileName), sha256: sha256Hex(file.bytes) };
    const entry = await writing.say({
      kind: 'schedule.imported',
      version: 2,
      payload: {
        source,
        added: [...diff.added],
        changed: diff.changed.map(({ after }) => after),
        retired: [...diff.retired],
        badRows,
      },
    });
    return { ...counts, seq: entry.seq };
  });
}

async function readFile(
  { sheets }: Context,
  { bytes, contentType }: ScheduleFile,
): Promise<Extract<Sheet, { ok: true }>> {
  const sheet = await sheets.read(bytes, contentType);
  if (!sheet.ok) throw new Failure(sheet.code, sheet.params);
  return sheet;
}

async function compare(
  reader: RecordReader,
  house: string,
  read: ReadSchedule,
  { missing }: ImportChoices,
): Promise<{ diff: ScheduleDiff; tags: Map<string, number> }> {
  const current = await reader.schedule(house);
  return {
    diff: diffSchedule(current, read, missing),
    tags: new Map(current.map(({ facts, tags }) => [facts.mark, tags])),
  };
}

const saidBy = ({ added, changed }: ScheduleDiff) => [...added, ...changed.map(({ after }) => after)];

/** Level members whose two heights are no faces of one piece, as where they are meant for its ends. */
function doubtfulHeights(
  diff: ScheduleDiff,
  { mentioned }: ReadSchedule,
  lexicon: Lexicon,
): SchedulePreviewView['doubtfulHeights'] {
  return saidBy(diff).flatMap(({ mark, kind, setOut }) => {
    const faces = setOut && facesOf(setOut, usualLie(kind, lexicon));
    if (!faces || isPlausibleDepth(faces, setOut.depth)) return [];
    return [{ line: mentioned.get(mark) ?? 0, mark, ...faces, depth: setOut.depth }];
  });
}

/** What of the stated places cannot be: those members are imported all the same, and have none. */
function placesOf(
  diff: ScheduleDiff,
  { mentioned }: ReadSchedule,
  grid: StatedGrid | null,
  lexicon: Lexicon,
): Pick<SchedulePreviewView, 'outOfFrame' | 'lacksGrid'> {
  const placed = saidBy(diff).filter(({ setOut }) => setOut?.from);
  if (grid === null) return { outOfFrame: [], lacksGrid: placed.length > 0 };
  const reader = gridReader(grid);
  const outOfFrame = placed.flatMap(({ mark, kind, setOut }) => {
    const read = setOut && axisOf(setOut, usualLie(kind, lexicon), reader);
    if (!read || read.ok) return [];
    const { reason, field } = read.problem;
    return [{ line: mentioned.get(mark) ?? 0, mark, reason, field, value: String(setOut[field] ?? '') }];
  });
  return { outOfFrame, lacksGrid: false };
}

/** Stands for exactly what would be said: the same digest, the same statement. */
function digestOf({ added, changed, retired }: ScheduleDiff): string {
  return sha256Hex(canonicalJson({ added, changed: changed.map(({ after }) => after), retired }));
}

function sha256Hex(content: Uint8Array | string): string {
  return createHash('sha256').update(content).digest('hex');
}
