import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from 'react-router';
import type { ReviewLineView, ReviewView } from '#domain/contract/review-views';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useStableId } from '../../api/use-stable-id.ts';
import { useHouse } from '../../shell/use-house.ts';
import { answerOf, type Outcome, type ReviewDraft } from './review-draft.ts';

/** Says what a review has come to. What the server refuses is read again, and every answer stays. */
export function useConclusion(
  { covering: { id: covering }, lines }: ReviewView,
  draft: ReviewDraft,
  { missing }: Outcome<ReviewLineView>,
  onSaid: { released: () => void; refused: () => void },
) {
  const { id: house } = useHouse();
  const client = useQueryClient();
  const navigate = useNavigate();
  const stableId = useStableId();
  const { note } = draft;
  const readAgain = () =>
    Promise.all(
      [keys.coverings(house), keys.report(house)].map((queryKey) => client.invalidateQueries({ queryKey })),
    );
  const leave = async () => {
    await readAgain();
    await navigate(`/houses/${house}/coverings/${covering}`);
  };
  const onError = () => void readAgain();
  const release = useMutation({
    mutationFn: () => {
      const members = lines.map((line) => {
        const answer = answerOf(draft, line);
        return { mark: line.mark, basis: line.basis, waived: answer?.is === 'waived' ? answer.reason : null };
      });
      const id = stableId({ members, note });
      return call('releaseCovering', { params: { covering }, body: { id, members, note } });
    },
    onSuccess: () => {
      onSaid.released();
      return leave();
    },
    onError,
  });
  const refuse = useMutation({
    mutationFn: () => {
      const lacking = missing.map(({ line, note: what }) => ({ mark: line.mark, note: what }));
      return call('refuseCovering', { params: { covering }, body: { lacking, note } });
    },
    onSuccess: () => {
      onSaid.refused();
      return leave();
    },
    onError,
  });
  return { release, refuse };
}
