import { createHash } from 'node:crypto';
import type { Readable } from 'node:stream';
import type { PhotoFacts } from '#domain/contract/shapes';
import type { AccountView, PhotoView } from '#domain/contract/views';
import { speaker, type Context } from './context.ts';
import { Failure } from './failure.ts';
import type { Incoming } from './photo-files.ts';

export const PHOTO_MAX_BYTES = 100 * 1024 * 1024;
const MB = 1024 * 1024;

export interface Ingested {
  readonly outcome: 'added' | 'already-here';
  readonly photo: PhotoView;
}

/**
 * Takes one file in: one pass to disk, a look at what it is, its name by content, then the statement.
 * Only then may the client hear 'accepted'. Throws Failure where the file cannot be taken; then
 * nothing of it stays.
 */
export async function ingestPhoto(
  context: Context,
  account: AccountView,
  house: string,
  file: { readonly name: string; readonly content: Readable },
): Promise<Ingested> {
  const incoming = await context.files.receive(file.content, PHOTO_MAX_BYTES);
  try {
    return await take(context, account, house, cleanName(file.name), incoming);
  } finally {
    await context.files.discard(incoming);
  }
}

async function take(
  context: Context,
  account: AccountView,
  house: string,
  fileName: string,
  incoming: Incoming,
): Promise<Ingested> {
  if (incoming.tooLarge) throw new Failure('file-too-large', { file: fileName, limit: PHOTO_MAX_BYTES / MB });
  if (incoming.bytes === 0) throw new Failure('photo-empty', { file: fileName });
  const known = await context.store.read.photoByContent(house, incoming.sha256);
  if (known) return { outcome: 'already-here', photo: known };
  const facts = await inspect(context, fileName, incoming);
  await context.files.keep(incoming);
  return context.store.write(house, speaker(account), async (writing) => {
    const meanwhile = await writing.photoByContent(house, incoming.sha256);
    if (meanwhile) return { outcome: 'already-here', photo: meanwhile };
    const photo = photoId(house, incoming.sha256);
    await writing.say({ kind: 'photo.added', version: 2, payload: { ...facts, photo } });
    await writing.requestPictures(photo);
    return { outcome: 'added', photo: (await writing.photo(photo)) as PhotoView };
  });
}

async function inspect(context: Context, fileName: string, incoming: Incoming): Promise<PhotoFacts> {
  const inspection = await context.imaging.inspect(incoming.path);
  if (!inspection.ok) throw new Failure(inspection.code, { ...inspection.params, file: fileName });
  const { mediaType, width, height, readings } = inspection;
  return { sha256: incoming.sha256, bytes: incoming.bytes, fileName, mediaType, width, height, readings };
}

/** The same file in the same house is the same photo: its id follows from both (UUID version 8, RFC 9562 §5.8). */
export function photoId(house: string, sha256: string): string {
  const bytes = createHash('sha256').update(`arakabe photo ${house} ${sha256}`).digest().subarray(0, 16);
  bytes[6] = ((bytes[6] as number) & 0x0f) | 0x80;
  bytes[8] = ((bytes[8] as number) & 0x3f) | 0x80;
  return bytes.toString('hex').replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

/** The last part of the name, without what could steer a terminal or reverse the reading order; at most 255 characters. */
export function cleanName(name: string): string {
  const last = name.split(/[/\\]/).at(-1) ?? '';
  const clean = last
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Cs}\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu, '')
    .trim();
  if (clean === '') return 'photo';
  // Between characters: half of one is no text.
  const cut = clean.slice(0, 255);
  return /[\ud800-\udbff]$/.test(cut) ? cut.slice(0, -1) : cut;
}
