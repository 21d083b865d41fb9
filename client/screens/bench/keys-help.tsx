import { useWords } from '../../i18n/use-words.ts';

const KEYS = [
  'path',
  'middle',
  'look',
  'box',
  'polygon',
  'tap',
  'split',
  'same',
  'tab',
  'arrows',
  'grow',
  'stage',
  'enter',
  'remove',
  'escape',
  'undo',
  'zoom',
  'turn',
  'sharpest',
] as const;

/** Those that move nothing but the picture. */
const LOOKING = ['zoom', 'turn', 'sharpest'] as const;

export function KeysHelp({ isLooking = false }: { isLooking?: boolean }) {
  const { t } = useWords();
  return (
    <details className="bench-keys">
      <summary>{t('bench.keys.title')}</summary>
      <ul>
        {(isLooking ? LOOKING : KEYS).map((key) => (
          <li key={key}>{t(`bench.keys.list.${key}`)}</li>
        ))}
      </ul>
    </details>
  );
}
