import type { FindingKind, FindingView } from '../../contract/findings.ts';
import type { Stage } from '../../frame/stage.ts';

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

/**
 * Kinds that say of a tag that it cannot be true as it stands: nothing may contradict a record
 * (design 3.4), so such tags count for no covering until somebody corrects or accepts it by name. The
 * others either stop nothing, or what they say stops a record by a rule of its own.
 */
const STOPPING: ReadonlySet<FindingKind> = new Set<FindingKind>([
  'stage-goes-back',
  'stages-at-once',
  'places-at-once',
  'stage-outside-track',
  'same-picture',
  'off-site',
  'readers-differ',
]);

export function stopsRecords(kind: FindingKind): boolean {
  return STOPPING.has(kind);
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

const once = (texts: readonly string[]): string[] => [...new Set(texts)];
