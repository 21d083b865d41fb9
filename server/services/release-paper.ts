import type { Writable } from 'node:stream';
import type { PhotoView } from '#domain/contract/views';
import { lexiconOf, type Lexicon } from '#domain/lexicon/lexicon';
import { kindIn } from '#domain/lexicon/make-lexicon';
import { nameOfKind } from '#domain/lexicon/name-of-kind';
import { cropOf } from '#domain/photo/crop-box';
import { checkAddress } from '#domain/record/sheet/check-address';
import { releaseSheet, type SheetSpeech } from '#domain/record/sheet/release-sheet';
import type { SheetRecord } from '#domain/record/sheet/sheet';
import type { Context } from './context.ts';
import type { PaperPicture } from './ports.ts';
import { readRelease } from './release.ts';
import { REPORT_WORDS } from './report-words.ts';
import { safeFileName } from './safe-file-name.ts';
import { toldTime } from './told-time.ts';

export interface ReleasePaper {
  /** A file name that is safe on every system. */
  readonly name: string;
  readonly write: (to: Writable) => Promise<void>;
}

/** A release as a PDF; `origin`: where its code leads to. Nothing is written before `write` is called. */
export async function releasePaper(
  context: Context,
  release: string,
  lang: 'en' | 'ja',
  origin: string,
): Promise<ReleasePaper> {
  const view = await readRelease(context, release);
  const at = context.now();
  const sheet = releaseSheet(
    view,
    speechOf(lang, view.house.zone, lexiconOf(await context.store.read.terms(view.house.id))),
    at.toISOString(),
  );
  return {
    name: safeFileName(sheet.title, 'pdf', 'release'),
    write: (to) =>
      context.paper.writeRelease(
        {
          sheet,
          lang,
          at,
          check: checkAddress(origin, view),
          picture: (record) => pictureOf(context, record),
        },
        to,
      ),
  };
}

function speechOf(lang: 'en' | 'ja', zone: string, lexicon: Lexicon): SheetSpeech {
  const words = REPORT_WORDS[lang];
  return {
    lang,
    when: (instant) => toldTime(instant, zone, lang),
    stage: (stage) => words.stage[stage],
    kind: (kind) => words.kind[kind],
    member: (kind) => {
      const known = kindIn(lexicon, kind);
      return known ? nameOfKind(known, lang) : kind;
    },
  };
}

/** Pixels of the longer side: 86 mm, half the text's width, at 200 dots to the inch. */
const SIDE = 680;

/** Of the small picture where that has as many pixels: it is there, and whole originals take long to decode. */
async function pictureOf(
  { store, files, imaging }: Context,
  record: SheetRecord,
): Promise<PaperPicture | null> {
  const photo = await store.read.photo(record.photo);
  if (!photo || photo.pictures === 'unreadable') return null;
  const { box, outline } = cropOf(record.region, photo);
  const aspect = (box.w * photo.width) / (box.h * photo.height);
  const width = Math.max(1, Math.round(SIDE * Math.min(1, aspect)));
  const cut = (file: string, type: PhotoView['mediaType']) => imaging.crop(file, type, box, width, outline);
  const original = () => cut(files.original(photo.sha256), photo.mediaType);
  const preview = () => cut(files.picture(photo.sha256, 'preview'), 'image/jpeg');
  const ways = hasEnough(photo, box, width) ? [preview, original] : [original];
  for (const way of ways) {
    const jpeg = await way().catch(() => null);
    if (jpeg) return { jpeg, aspect };
  }
  return null;
}

/** Previews are 1600 pixels at their longer side, or as large as the original. */
function hasEnough({ width, height, pictures }: PhotoView, box: { w: number }, wanted: number): boolean {
  if (pictures === 'pending') return false;
  return box.w * width * Math.min(1, 1600 / Math.max(width, height)) >= wanted;
}
