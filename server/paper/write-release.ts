import { once } from 'node:events';
import type { Writable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { SheetMember, SheetRecord } from '#domain/record/sheet/sheet';
import type { PaperPicture, PaperWish } from '../services/ports.ts';
import { drawHead } from './draw-head.ts';
import { drawHeading, drawLater, drawMember, drawRefused, drawWaived, heightOfMember } from './draw-part.ts';
import { drawRow, heightOfRow, rowsOf, type Pictured } from './draw-records.ts';
import { newPaper, numberPages, type Pdf } from './page.ts';

export async function writeRelease(wish: PaperWish, to: Writable): Promise<void> {
  const { sheet, lang, at } = wish;
  const pdf = newPaper({ title: sheet.title, lang, at });
  const sent = pipeline(pdf, to);
  try {
    await Promise.race([draw(pdf, wish, to), sent]);
  } catch (error) {
    pdf.destroy();
    // Whatever ends the one ends the other; the first of them says why.
    await sent.catch(() => undefined);
    throw error;
  }
  await sent;
}

async function draw(pdf: Pdf, wish: PaperWish, to: Writable): Promise<void> {
  const { sheet, check } = wish;
  drawHead(pdf, sheet, check);
  drawWaived(pdf, sheet.waived);
  drawRefused(pdf, sheet.refused);
  const [first] = sheet.members.items;
  drawHeading(pdf, sheet.members, first ? heightOfMember(pdf, first) + firstRow(pdf, first) : 0);
  const waived = new Set(sheet.waived.items.map(({ mark }) => mark));
  for (const member of sheet.members.items) {
    await drawWhole(pdf, member, waived.has(member.mark), wish);
    // What nobody takes fills the memory.
    if (to.writableNeedDrain) await once(to, 'drain');
    if (pdf.destroyed) return;
  }
  drawLater(pdf, sheet.later);
  numberPages(pdf, sheet.title);
  pdf.end();
}

function firstRow(pdf: Pdf, { records }: SheetMember): number {
  return heightOfRow(pdf, rowsOf(records)[0] ?? []);
}

async function drawWhole(pdf: Pdf, member: SheetMember, isWaived: boolean, wish: PaperWish): Promise<void> {
  drawMember(pdf, { ...member, isWaived }, firstRow(pdf, member));
  for (const records of rowsOf(member.records)) {
    const row: Pictured[] = [];
    for (const record of records) row.push({ record, picture: await pictureOf(record, wish) });
    drawRow(pdf, row);
  }
}

async function pictureOf(record: SheetRecord, { picture }: PaperWish): Promise<PaperPicture | null> {
  return record.isPictured ? picture(record) : null;
}
