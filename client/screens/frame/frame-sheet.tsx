import { useMemo } from 'react';
import { memberAt } from '#domain/frame/drawing/member-at';
import type { Sheet } from '#domain/frame/drawing/sheet';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { countGaps, toldOf, type FrameModel } from './frame-model.ts';
import { Highlight } from './highlight.tsx';
import { inkOf } from './ink.ts';
import { sheetName } from './sheet-name.ts';
import { SheetedMarks } from './sheeted-marks.tsx';
import { SheetView } from './sheet-view.tsx';
import { zoneLook } from './zone-look.ts';

export interface FrameSheetProps {
  readonly model: FrameModel;
  readonly sheet: Sheet;
  readonly day: string;
  readonly gaps: ReadonlySet<string>;
  readonly fits: ((mark: string) => boolean) | null;
  readonly chosen: string | null;
  readonly onChoose: (mark: string) => void;
  readonly onPress: (mark: string, isFinger: boolean) => void;
}

/** One sheet on a day, with the member that is pointed at. */
export function FrameSheet({ model, sheet, day, gaps, fits, chosen, onChoose, onPress }: FrameSheetProps) {
  const { t, lang } = useWords();
  const paths = useMemo(() => inkOf(sheet, model, day, fits), [sheet, model, day, fits]);
  return (
    <SheetView
      sheet={sheet}
      paths={paths}
      label={useSheetLabel(sheet, day, gaps)}
      zoneOf={(covering) => zoneLook(t, lang, model, day, covering, sheet.seenFrom)}
      onHover={(point) => {
        const over = point && memberAt(sheet.members, point.at, point.reach);
        // What was told of stays told: the way to it leads over empty paper.
        if (over && over.mark !== chosen) onChoose(over.mark);
      }}
      onPress={({ at, reach, isFinger }) => {
        const pressed = memberAt(sheet.members, at, reach);
        if (pressed) onPress(pressed.mark, isFinger);
      }}
    >
      {(unit) => (
        <>
          <SheetedMarks {...{ sheet, model, day, unit }} />
          <Highlight sheet={sheet} mark={chosen} unit={unit} />
        </>
      )}
    </SheetView>
  );
}

/** The drawing in a sentence, for who cannot see it. */
export function useSheetLabel(sheet: Sheet, day: string, gaps: ReadonlySet<string>): string {
  const { t, lang } = useWords();
  const count = countGaps(sheet, gaps);
  return t('frame.drawing', {
    sheet: sheetName(t, sheet),
    day: formatDay(day, lang),
    members: t('frame.members', { count: toldOf(sheet).length }),
    missing: count === 0 ? t('frame.noGaps') : t('frame.gaps', { count }),
  });
}
