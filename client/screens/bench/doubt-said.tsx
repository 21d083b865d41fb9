import type { PhotoDetailView } from '#domain/contract/views';
import { useFindingsAbout } from '../findings/use-findings.ts';
import type { BenchTag } from './bench-tags.ts';
import { DoubtWords } from './doubt-words.tsx';

/** What somebody has said against a tag, and whether it is answered. */
export function DoubtSaid({ tag, photo }: { tag: BenchTag; photo: PhotoDetailView }) {
  const findings = useFindingsAbout(photo.house, { photo: photo.id }).data?.findings;
  const doubt = findings?.find(({ key }) => key === `disputed:${tag.id}`);
  return <DoubtWords tag={tag} isAnswered={doubt?.answer?.stands === true} />;
}
