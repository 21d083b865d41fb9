/** Prints once every picture is there: those that were never in sight have not been fetched. */
export async function printWhole(): Promise<void> {
  const images = Array.from(document.images);
  for (const image of images) image.loading = 'eager';
  await Promise.all(images.map((image) => image.decode().catch(() => undefined)));
  window.print();
}
