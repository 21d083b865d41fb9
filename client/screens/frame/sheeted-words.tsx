import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { sheetedOn, type FrameModel } from './frame-model.ts';

/** What lay over a member on a day, and since when. */
export function SheetedWords({ model, mark, day }: { model: FrameModel; mark: string; day: string }) {
  const { t, lang } = useWords();
  return sheetedOn(model, mark, day).map(({ protection: { id, name, laidDay } }) => (
    <span key={id} className="frame-tree-missing">
      {t('protection.frame.row', { name, day: formatDay(laidDay, lang) })}
    </span>
  ));
}
