import { createRequire } from 'node:module';
import PDFDocument from 'pdfkit';

/** Points: 1/72 inch. */
export const A4 = { width: 595.28, height: 841.89 } as const;
export const MARGIN = { left: 48, right: 48, top: 48, bottom: 60 } as const;
export const LINE_WIDTH = A4.width - MARGIN.left - MARGIN.right;
export const BOTTOM = A4.height - MARGIN.bottom;

export const INK = '#1f1a14';
export const SOFT = '#5a5044';
export const HAIRLINE = '#b9ab93';
export const VERMILION = '#a92f17';

export type Pdf = PDFKit.PDFDocument;

/** Noto Sans JP, SIL Open Font License 1.1; only the signs that are used are put into a file. */
const require = createRequire(import.meta.url);
const font = (name: string) => require.resolve(`@expo-google-fonts/noto-sans-jp/${name}`);
const PLAIN = font('400Regular/NotoSansJP_400Regular.ttf');
const STRONG = font('700Bold/NotoSansJP_700Bold.ttf');

export interface PaperFacts {
  readonly title: string;
  readonly lang: 'en' | 'ja';
  readonly at: Date;
}

/** Pages stay until the end, for their numbers; pictures are written as they come. */
export function newPaper({ title, lang, at }: PaperFacts): Pdf {
  const pdf = new PDFDocument({
    size: 'A4',
    margins: MARGIN,
    bufferPages: true,
    autoFirstPage: true,
    pdfVersion: '1.7',
    lang: lang === 'ja' ? 'ja-JP' : 'en-GB',
    displayTitle: true,
    info: { Title: title, Creator: 'Arakabe', Producer: 'Arakabe', CreationDate: at },
  });
  pdf.registerFont('plain', PLAIN);
  pdf.registerFont('strong', STRONG);
  return pdf.font('plain').fillColor(INK).fontSize(9);
}

/** Starts another page where less than `height` is left on this one, and a whole one has more. */
export function keepTogether(pdf: Pdf, height: number): void {
  if (pdf.y > MARGIN.top && pdf.y + Math.min(height, BOTTOM - MARGIN.top) > BOTTOM) pdf.addPage();
}

/** Below every page: what it is, and which of how many. */
export function numberPages(pdf: Pdf, title: string): void {
  const { start, count } = pdf.bufferedPageRange();
  for (let n = start; n < start + count; n++) {
    pdf.switchToPage(n);
    // Below the margin, where a text would otherwise start another page.
    pdf.page.margins.bottom = 0;
    const y = BOTTOM + 18;
    pdf.font('plain').fontSize(7.5).fillColor(SOFT);
    pdf.text(title, MARGIN.left, y, { width: LINE_WIDTH - 60, height: 10, ellipsis: true, lineBreak: false });
    pdf.text(`${n + 1} / ${count}`, MARGIN.left, y, { width: LINE_WIDTH, align: 'right', lineBreak: false });
  }
}
