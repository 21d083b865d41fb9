import { createHash } from 'node:crypto';
import type { EvidenceTagView, ReviewLineView, ReviewView } from '#domain/contract/review-views';
import type { Standing } from '#domain/contract/hold';
import type { AccountView } from '#domain/contract/views';
import { canonicalJson } from '#domain/ledger/canonical-json';
import type { Axis } from '#domain/frame/set-out';
import { recordedAlone } from '#domain/record/release';
import type { ReportLine } from '#domain/record/report-line';
import type { Context } from './context.ts';
import { readCoveringLines } from './covering-lines.ts';
import { cropAddress } from './crop-address.ts';
import { Failure } from './failure.ts';
import type { RecordReader, Sighting } from './record-store.ts';
import { readSaidBefore } from './said-before.ts';

/** What a covering hides, as it is reviewed. */
export interface Reviewable {
  readonly today: string;
  readonly standing: Standing;
  readonly lines: ReviewLineView[];
  /** Every tag that the lines name. */
  readonly evidence: Sighting[];
}

export async function readReview(
  context: Context,
  account: AccountView,
  house: string,
  covering: string,
): Promise<ReviewView> {
  const { read } = context.store;
  const [view, facts] = [await read.covering(covering), await read.house(house, account.id)];
  if (!view || !facts) throw new Failure('not-found', { what: 'covering' });
  const place = { house, covering };
  const { today, standing, lines, evidence } = await reviewable(context, read, place, account.id);
  const { hides: _, ...rest } = view;
  return {
    covering: rest,
    today,
    standing,
    fourEyes: facts.fourEyes,
    ownReady: view.hold.state === 'ready' && view.hold.said?.by?.id === account.id,
    ...(await readSaidBefore(read, { house, covering: view, evidence })),
    lines,
    evidence: evidence.map(toEvidence),
  };
}

/** `person`: whose own records are told from those of others. Inside a write it sees what was said so far. */
export async function reviewable(
  context: Context,
  read: RecordReader,
  place: { house: string; covering: string },
  person: string,
): Promise<Reviewable> {
  const { today, standing, lines, members, without } = await readCoveringLines(context, read, place);
  const axes = new Map(members.map(({ mark, axis }) => [mark, axis ?? null]));
  const named = new Set(lines.flatMap((line) => evidenceOf(line)));
  const evidence = await read.sightingsOf([...named]);
  const own = new Set(evidence.filter(({ tag }) => tag.by?.id === person).map(({ tag }) => tag.id));
  const alone = own.size === 0 ? [] : recordedAlone(lines, without(own));
  const isOwn = new Set(alone);
  return {
    today,
    standing,
    lines: lines.map((line) => ({
      ...line,
      basis: basisOf(line),
      whole: isWhole(line.hidden, axes.get(line.mark) ?? null),
      own: isOwn.has(line.mark),
    })),
    evidence,
  };
}

export function toEvidence({ tag, fileName, capture }: Sighting): EvidenceTagView {
  return { tag, fileName, capture, crop: cropAddress(tag.id) };
}

/** To the millimetre. */
function isWhole(hidden: ReportLine['hidden'], axis: Axis | null): boolean {
  return hidden === null || (axis !== null && hidden.from < 1 && hidden.to > axis.length - 1);
}

function evidenceOf({ records, nearestMiss }: ReportLine): string[] {
  return [...records, ...(nearestMiss?.tag ? [nearestMiss.tag] : [])].map(({ tag }) => tag);
}

/**
 * All that speaks for and against a line; the names of its parts and other layers are no evidence. That a
 * region turns out to be clear is no news to whoever has looked at it.
 */
function basisOf(line: ReportLine): string {
  const { mark, least, views, state, hidden, missing } = line;
  const records = line.records.map(({ legibility, ...record }) => ({
    ...record,
    weak: legibility === 'weak',
  }));
  const part = (stretch: { from: number; to: number }) => ({ from: stretch.from, to: stretch.to });
  const said = {
    mark,
    least,
    views,
    state,
    hidden: hidden && part(hidden),
    missing: missing.map(part),
    records,
  };
  return createHash('sha256').update(canonicalJson(said)).digest('hex');
}
