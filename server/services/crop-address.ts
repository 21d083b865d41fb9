/** Address of the picture around the region of a tag. */
export function cropAddress(tag: { id: string; photo: string }): string {
  return `/api/v1/photos/${tag.photo}/crop?tag=${tag.id}`;
}
