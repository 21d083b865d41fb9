import type { Capture, CaptureFlag } from '../../contract/capture.ts';
import type { Rival } from '../../contract/shapes.ts';
import { doubtOf } from '../../photo/capture-doubt.ts';
import { finding, type Finding, type SeenTag } from './finding.ts';

export interface PhotoEvidence {
  readonly photo: string;
  readonly capture: Capture;
  readonly rivals: readonly Rival[];
  /** null where the photo or the house has no position. Metres. */
  readonly site: {
    readonly verdict: 'on-site' | 'off-site' | 'cannot-tell';
    readonly distanceM: number;
    readonly errorM: number;
  } | null;
  /** The tags that stand on it. */
  readonly tags: readonly (SeenTag & {
    /** Why a stranger could not read the member there; null where it can be read, or was not measured. */
    readonly unreadable: readonly string[] | null;
  })[];
}

/** What speaks against a clock although the photo keeps its time. */
const CLOCK_FLAGS: readonly CaptureFlag[] = ['gps-disagrees', 'camera-not-in-house-zone'];
/** What leaves open which of two times it was. */
const UNSURE_FLAGS: readonly CaptureFlag[] = [
  'ambiguous-hour',
  'skipped-hour',
  'zone-not-read',
  'clock-set-between-marks',
];

/** What a photo by itself leaves to be looked at: its time, its place, what can be read in its regions. */
export function findingsOfPhoto(evidence: PhotoEvidence): Finding[] {
  const { photo, capture, tags, rivals, site } = evidence;
  const found = timeFindings(photo, capture, tags);
  if (rivals.length > 0) {
    const values: Record<string, string> = {};
    for (const { field, first, second } of rivals)
      Object.assign(values, { [`${field}.first`]: first, [`${field}.second`]: second });
    found.push(finding('readers-differ', [photo], about(evidence, values)));
  }
  if (site?.verdict === 'off-site')
    found.push(
      finding(
        'off-site',
        [photo],
        about(evidence, { distance: Math.round(site.distanceM), error: Math.round(site.errorM) }),
      ),
    );
  for (const tag of tags)
    if (tag.unreadable !== null)
      found.push(finding('unreadable', [tag.tag], { tags: [tag], facts: { why: tag.unreadable.join(' ') } }));
  return found;
}

function timeFindings(photo: string, capture: Capture, tags: readonly SeenTag[]): Finding[] {
  if (capture.state === 'undated') {
    const why = capture.rejected.some((candidate) => candidate.why === 'implausible-year')
      ? 'implausible-year'
      : 'none';
    return [finding('no-date', [photo], { photos: [photo], tags, facts: { why } })];
  }
  const { instant, flags } = capture;
  const facts = { taken: instant };
  const found: Finding[] = [];
  const doubt = doubtOf(capture);
  if (doubt) found.push(finding(doubt, [photo], { photos: [photo], tags, facts }));
  const clock = CLOCK_FLAGS.find((flag) => flags.includes(flag));
  if (clock)
    found.push(
      finding('clock-disagrees', [photo], { photos: [photo], tags, facts: { ...facts, why: clock } }),
    );
  const unsure = UNSURE_FLAGS.find((flag) => flags.includes(flag));
  if (unsure)
    found.push(
      finding('time-unsure', [photo], {
        photos: [photo],
        tags,
        facts: { ...facts, why: unsure, within: Math.round(capture.uncertaintyS) },
      }),
    );
  return found;
}

function about({ photo, tags }: PhotoEvidence, facts: Finding['facts']) {
  return { photos: [photo], tags, facts };
}
