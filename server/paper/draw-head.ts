import { create } from 'qrcode';
import { qrOutline, qrSide } from '#domain/record/sheet/qr-outline';
import type { Sheet, SheetFact } from '#domain/record/sheet/sheet';
import { HAIRLINE, INK, LINE_WIDTH, MARGIN, SOFT, VERMILION, keepTogether, type Pdf } from './page.ts';

const NAME_WIDTH = 104;
/** Points: modules of a symbol of version 10 are 0.5 mm then. */
const QR_SIDE = 96;

/** Title, whether it stands, facts with the code beside them, the place in the ledger, the caution. */
export function drawHead(pdf: Pdf, { title, notice, facts, proof, caution }: Sheet, check: string): void {
  pdf.font('strong').fontSize(17).text(title, { width: LINE_WIDTH });
  if (notice !== null) drawNotice(pdf, notice);
  pdf.moveDown(0.4);
  const top = pdf.y;
  drawQr(pdf, check, MARGIN.left + LINE_WIDTH - QR_SIDE, top);
  drawFacts(pdf, facts, LINE_WIDTH - QR_SIDE - 14);
  pdf.y = Math.max(pdf.y, top + QR_SIDE + 4);
  drawFacts(pdf, [proof.number, proof.entry, proof.head], LINE_WIDTH);
  pdf.font('plain').fontSize(7.5).fillColor(SOFT);
  pdf.text(proof.check, MARGIN.left, pdf.y, { width: LINE_WIDTH });
  pdf.text(check, { width: LINE_WIDTH, link: check });
  drawCaution(pdf, caution);
}

function drawNotice(pdf: Pdf, text: string): void {
  pdf.moveDown(0.3);
  pdf.font('strong').fontSize(10.5).fillColor(VERMILION).text(text, { width: LINE_WIDTH });
  pdf.fillColor(INK);
}

/** Names in one column, what they are in the other. */
export function drawFacts(pdf: Pdf, facts: readonly SheetFact[], width: number): void {
  const wide = { width: width - NAME_WIDTH };
  for (const { name, text } of facts) {
    pdf.font('plain').fontSize(9);
    keepTogether(pdf, Math.min(pdf.heightOfString(text, wide), 60));
    const { y } = pdf;
    pdf.fillColor(SOFT).text(name, MARGIN.left, y, { width: NAME_WIDTH - 8 });
    const below = pdf.y;
    pdf.fillColor(INK).text(text, MARGIN.left + NAME_WIDTH, y, wide);
    pdf.x = MARGIN.left;
    pdf.y = Math.max(pdf.y, below) + 2;
  }
}

function drawCaution(pdf: Pdf, caution: string): void {
  const inside = LINE_WIDTH - 20;
  pdf.font('plain').fontSize(8.5);
  const height = pdf.heightOfString(caution, { width: inside }) + 14;
  pdf.y += 6;
  keepTogether(pdf, height);
  const { y } = pdf;
  pdf.rect(MARGIN.left, y, LINE_WIDTH, height).lineWidth(0.7).strokeColor(HAIRLINE).stroke();
  pdf.fillColor(INK).text(caution, MARGIN.left + 10, y + 7, { width: inside });
  pdf.x = MARGIN.left;
  pdf.y = y + height + 6;
}

/** As vectors; its quiet zone is the paper. */
function drawQr(pdf: Pdf, text: string, x: number, y: number): void {
  const { modules } = create(text, { errorCorrectionLevel: 'M' });
  pdf.save().translate(x, y);
  pdf.scale(QR_SIDE / qrSide(modules));
  pdf.path(qrOutline(modules)).fill('#000000');
  pdf.restore();
}
