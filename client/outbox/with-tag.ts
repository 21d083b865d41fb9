import type { TagView } from '#domain/contract/views';

/** A detail answer with a tag that the server has just accepted, in place of asking for all again. */
export function withTag(tags: readonly TagView[], accepted: TagView): TagView[] {
  const others = tags
    .filter((tag) => tag.id !== accepted.id)
    .map((tag) =>
      tag.id === accepted.supersedes && tag.state === 'standing' ? superseded(tag, accepted) : tag,
    );
  return [...others, accepted];
}

function superseded(tag: TagView, by: TagView): TagView {
  return { ...tag, state: 'superseded', ended: { at: by.at, by: by.by, reason: '' } };
}
