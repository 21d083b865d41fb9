import type { Lacking } from '#domain/contract/hold';
import type { LastRefusalView, ReviewView } from '#domain/contract/review-views';
import type { CoveringView } from '#domain/contract/views';
import type { Entry, StatementKind, StatementOf } from '#domain/ledger/statements';
import { coveringSubject, memberSubject, photoSubject } from '#domain/ledger/subjects';
import type { RecordReader, Sighting } from './record-store.ts';

type Refusing = Entry<StatementOf<'covering.refused' | 'release.withdrawn'>>;
type Concluding = Refusing | Entry<StatementOf<'covering.released'>>;

/** What is said of the tags of a member, whether or not it alters what counts. */
const OF_TAGS: readonly StatementKind[] = [
  ...(['tag.placed', 'tag.superseded', 'tag.withdrawn', 'tag.disputed'] as const),
  ...(['findings.accepted', 'finding.reopened'] as const),
];
const OF_DATES: readonly StatementKind[] = ['photo.dated', 'photo.dating-withdrawn'];

interface Reviewed {
  readonly house: string;
  readonly covering: CoveringView;
  readonly evidence: readonly Sighting[];
}

/** What earlier reviews of a covering came to that did not let it close. */
export async function readSaidBefore(
  read: RecordReader,
  reviewed: Reviewed,
): Promise<Pick<ReviewView, 'lastRefusal' | 'lastWaived'>> {
  const { covering } = reviewed;
  if (covering.closed || covering.hold.state === 'released') return { lastRefusal: null, lastWaived: null };
  const [last, released] = [
    await lastOf(read, reviewed, ['covering.refused', 'covering.released', 'release.withdrawn']),
    await lastOf(read, reviewed, ['covering.released']),
  ];
  const release =
    released?.kind === 'covering.released' ? await read.release(released.payload.release) : undefined;
  return {
    // What was refused before a release has been answered by it.
    lastRefusal: last && last.kind !== 'covering.released' ? await toRefusal(read, reviewed, last) : null,
    lastWaived: release ? { at: release.at, by: release.by, waived: release.facts.waived } : null,
  };
}

async function lastOf(
  read: RecordReader,
  { house, covering }: Reviewed,
  kinds: readonly Concluding['kind'][],
): Promise<Concluding | undefined> {
  const found = await read.lastAbout(house, coveringSubject(covering.id), kinds);
  return found && isConcluding(found) ? found : undefined;
}

function isConcluding(entry: Entry): entry is Concluding {
  return ['covering.refused', 'covering.released', 'release.withdrawn'].includes(entry.kind);
}

async function toRefusal(
  read: RecordReader,
  reviewed: Reviewed,
  refusal: Refusing,
): Promise<LastRefusalView> {
  const { at, by, seq } = refusal;
  if (refusal.kind === 'release.withdrawn')
    return { at, by, note: refusal.payload.reason, takenBack: true, lacking: [] };
  const { note, lacking } = refusal.payload;
  const isNews = await newsSince(read, reviewed, { lacking, after: seq });
  return {
    ...{ at, by, note, takenBack: false },
    lacking: lacking.map((one) => ({ ...one, saidSince: isNews(one.mark) })),
  };
}

async function newsSince(
  read: RecordReader,
  { house, evidence }: Reviewed,
  { lacking, after }: { lacking: readonly Lacking[]; after: number },
): Promise<(mark: string) => boolean> {
  const marks = new Set<string>(lacking.map(({ mark }) => mark));
  const photosOf = (mark: string) =>
    evidence.filter(({ tag }) => tag.mark === mark).map(({ tag }) => photoSubject(tag.photo));
  const photos = new Set([...marks].flatMap(photosOf));
  const said = new Set([
    ...(await read.subjectsAfter(house, [...marks].map(memberSubject), { kinds: OF_TAGS, after })),
    ...(await read.subjectsAfter(house, [...photos], { kinds: OF_DATES, after })),
  ]);
  return (mark) => said.has(memberSubject(mark)) || photosOf(mark).some((photo) => said.has(photo));
}
