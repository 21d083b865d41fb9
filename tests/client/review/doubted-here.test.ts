import { describe, expect, test } from 'vitest';
import type { ReviewView } from '#domain/contract/review-views';
import { doubtedHere } from '../../../client/screens/review/doubted-here.ts';
import { NOTHING_SAID, takeUp } from '../../../client/screens/review/review-draft.ts';

const READY = '2026-11-27T09:00:00.000Z';

interface Doubt {
  readonly at: string;
  readonly by: string;
  readonly isAnswered?: boolean;
}

/** A review of い一, whose one tag was doubted so; without a doubt no tag is named. */
function reviewWith(doubt: Doubt | null): ReviewView {
  const disputed = doubt && { at: doubt.at, by: { id: doubt.by, name: '' }, reason: 'at the photo' };
  const findings = doubt ? [{ kind: 'disputed', accepted: doubt.isAnswered ? {} : null }] : [];
  return {
    covering: { hold: { said: { at: READY } } },
    lines: [{ mark: 'い一', records: doubt ? [{ tag: 't', findings }] : [], nearestMiss: null }],
    evidence: doubt ? [{ tag: { id: 't', mark: 'い一', state: 'standing', disputed } }] : [],
  } as unknown as ReviewView;
}

const here = { ...NOTHING_SAID, doubts: { い一: { tag: 't', reason: 'here' } } };
const LATER = '2026-11-27T10:00:00.000Z';

describe('what was doubted in a review', () => {
  test.each([
    ['nothing', NOTHING_SAID, null, []],
    ['a doubt that was said at the photo since', NOTHING_SAID, { at: LATER, by: 'sato' }, ['at the photo']],
    ['none of somebody else', NOTHING_SAID, { at: LATER, by: 'mio' }, []],
    ['none from before it was ready', NOTHING_SAID, { at: '2026-11-27T08:00:00.000Z', by: 'sato' }, []],
    ['a doubt that was said here, once its tag is no evidence any more', here, null, ['here']],
    ['a doubt that was said here, as long as nobody answers', here, { at: LATER, by: 'sato' }, ['here']],
    ['none that was answered', here, { at: LATER, by: 'sato', isAnswered: true }, []],
  ])('%s', (_, draft, doubt, reasons) => {
    const found = doubtedHere(reviewWith(doubt), draft, 'sato');
    expect(found).toEqual(reasons.map((reason) => ({ mark: 'い一', reason })));
  });
  test('none of the review before', () => {
    expect(doubtedHere(reviewWith(null), takeUp(here, { at: LATER, lacking: [] }), 'sato')).toEqual([]);
  });
});
