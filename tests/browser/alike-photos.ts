import sharp from 'sharp';
import { randomUUID } from 'node:crypto';
import type { UploadOutcome } from '#domain/contract/views';
import { takenAt } from '../support/pictures.ts';
import type { Site } from './site.ts';
import { sitePhotos } from './site-photos.ts';

/** Two of one house within two seconds, the second one sharp; tagged large and blurred, and as a thread. */
export async function addAlike({ client, house }: Pick<Site, 'client' | 'house'>): Promise<string> {
  const { house: picture } = await sitePhotos();
  const ids: string[] = [];
  for (const [second, blur] of [
    ['00', 8],
    ['02', 0.3],
  ] as const) {
    const bytes = await sharp(picture.buffer)
      .blur(blur)
      .jpeg({ quality: 85 })
      .withExif({ IFD0: { Make: 'Test', Model: 'Bars' }, IFD2: takenAt(`2002-02-25T13:50:${second}`) })
      .toBuffer();
    const files = [{ name: `in-one-go-${second}.jpg`, bytes }];
    const { results } = await client.upload<{ results: UploadOutcome[] }>(house.id, files);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error('An alike photo was refused.');
    ids.push(outcome.photo.id);
  }
  const [photo = ''] = ids;
  const tag = (mark: string, region: object) =>
    client.post(`/photos/${photo}/tags`, { id: randomUUID(), mark, stage: 'pegged', region });
  await tag('い一', { shape: 'rectangle', x: 0.1, y: 0.35, w: 0.2, h: 0.1 });
  await tag('い二', { shape: 'rectangle', x: 0.4, y: 0.5, w: 0.4, h: 0.012 });
  return photo;
}
