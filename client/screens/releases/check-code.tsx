import { create } from 'qrcode';
import { qrOutline, qrSide } from '#domain/record/sheet/qr-outline';
import { useWords } from '../../i18n/use-words.ts';

/** The same symbol as on the PDF: dark on light, whatever the colours of the screen. */
export function CheckCode({ address }: { address: string }) {
  const { t } = useWords();
  const { modules } = create(address, { errorCorrectionLevel: 'M' });
  const side = qrSide(modules);
  return (
    <svg className="release-code" viewBox={`0 0 ${side} ${side}`} role="img" aria-label={t('releases.code')}>
      <rect width={side} height={side} fill="#fff" />
      <path d={qrOutline(modules)} fill="#000" shapeRendering="crispEdges" />
    </svg>
  );
}
