import type { FindingView } from '../../contract/findings.ts';
import type { Stage } from '../../frame/stage.ts';
import { isOfPhotos, type FindingKind } from './kinds.ts';

/** A contradiction or a doubt that a person must look at (design 3.5). Nothing is silently fixed. */
export type Finding = Pick<FindingView, 'kind' | 'photos' | 'tags' | 'marks' | 'covering' | 'facts' | 'key'>;
export type FindingTag = Finding['tags'][number];

/** A tag that stands, as findings see it. */
export interface SeenTag {
  readonly tag: string;
  readonly photo: string;
  readonly mark: string;
  readonly stage: Stage;
}

/** `about` names it: the same kind about the same things is the same finding. */
export function finding(
  kind: FindingKind,
  about: readonly string[],
  {
    tags = [],
    photos = [],
    marks = [],
    covering = null,
    facts = {},
  }: {
    readonly tags?: readonly SeenTag[];
    readonly photos?: readonly string[];
    readonly marks?: readonly string[];
    readonly covering?: string | null;
    readonly facts?: Finding['facts'];
  },
): Finding {
  return {
    key: [kind, ...about].join(':'),
    kind,
    photos: once([...photos, ...tags.map(({ photo }) => photo)]),
    tags: tags.map(({ tag, photo, mark, stage }) => ({
      tag,
      photo,
      mark: mark as FindingTag['mark'],
      stage,
    })),
    marks: once([...marks, ...tags.map(({ mark }) => mark)]) as Finding['marks'],
    covering,
    facts,
  };
}

/**
 * What an answer rests on. Of a whole photo or a pair of them it is about what they are, and stands whatever
 * is tagged on them later; of tags it is about these tags.
 */
export function basisOf(finding: Finding): Partial<Finding> {
  if (!isOfPhotos(finding.kind)) return finding;
  const { tags: _, marks: __, ...about } = finding;
  return about;
}

const once = (texts: readonly string[]): string[] => [...new Set(texts)];
