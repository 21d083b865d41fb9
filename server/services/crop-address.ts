/** Address of the picture around the region of a tag. */
export function cropAddress(tag: string): string {
  return `/api/v1/tags/${tag}/crop`;
}
