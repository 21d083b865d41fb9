import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import type { Sheet } from '#domain/frame/drawing/sheet';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { PageMargins } from '../report/page-margins.tsx';
import { FrameLegend } from './frame-legend.tsx';
import type { FrameModel } from './frame-model.ts';
import { useSheetLabel } from './frame-sheet.tsx';
import { inkOf } from './ink.ts';
import { SheetedMarks } from './sheeted-marks.tsx';
import { SheetDrawing } from './sheet-drawing.tsx';
import { fitted } from './sheet-window.ts';
import { zoneLook } from './zone-look.ts';

export interface FramePrintProps {
  readonly model: FrameModel;
  readonly houseName: string;
  readonly day: string;
  readonly gaps: ReadonlySet<string>;
}

/** Every sheet on a page of A3, made only while the page is printed. */
export function FramePrint(props: FramePrintProps) {
  const { t, lang } = useWords();
  const isPrinting = useIsPrinting();
  if (!isPrinting) return null;
  return (
    <div className="frame-paper">
      {/* Only now: another rule makes the browser look at every element of the page again. */}
      <PageMargins left={props.houseName} right={formatDay(props.day, lang)} />
      {props.model.sheets.map((sheet) => (
        <section key={sheet.key} className="frame-page">
          <PrintedSheet {...props} sheet={sheet} />
          <FrameLegend />
          <p className="frame-page-caution">{t('frame.caution')}</p>
        </section>
      ))}
    </div>
  );
}

/** Of an A3 sheet between its margins, at four pixels a millimetre: letters of 13 are 3 mm high. */
const PAPER = { width: 1580, height: 880 };

function PrintedSheet({ model, sheet, day, gaps }: FramePrintProps & { sheet: Sheet }) {
  const { t, lang } = useWords();
  const label = useSheetLabel(sheet, day, gaps);
  const window = fitted(sheet.bounds, PAPER);
  return (
    <>
      <h2>{label}</h2>
      <SheetDrawing
        sheet={sheet}
        paths={inkOf(sheet, model, day)}
        window={window}
        size={PAPER}
        label={label}
        zoneOf={(covering) => zoneLook(t, lang, model, day, covering, sheet.seenFrom)}
      >
        <SheetedMarks {...{ sheet, model, day }} unit={window.unit} />
      </SheetDrawing>
    </>
  );
}

function useIsPrinting(): boolean {
  const [isPrinting, setIsPrinting] = useState(false);
  useEffect(() => {
    const paper = window.matchMedia('print');
    // The browser takes the page as it stands when this returns.
    const begin = () => flushSync(() => setIsPrinting(true));
    const end = () => setIsPrinting(false);
    const turn = () => (paper.matches ? begin() : end());
    window.addEventListener('beforeprint', begin);
    window.addEventListener('afterprint', end);
    paper.addEventListener('change', turn);
    return () => {
      window.removeEventListener('beforeprint', begin);
      window.removeEventListener('afterprint', end);
      paper.removeEventListener('change', turn);
    };
  }, []);
  return isPrinting;
}
