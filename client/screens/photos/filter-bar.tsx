import { useState } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { FilterControls } from './filter-controls.tsx';
import { isFiltered, without, type FilterProps } from './photo-filter.ts';
import { useFilterWords } from './use-filter-words.ts';

/** One line that says what the list is narrowed to and takes it back, word by word; the controls fold away. */
export function FilterBar({ house, filter, onChange }: FilterProps) {
  const { t } = useWords();
  const words = useFilterWords(house, filter);
  const [isOpen, setIsOpen] = useState(() => window.matchMedia('(width >= 60rem)').matches);
  return (
    <section className="photos-filter" aria-label={t('photos.filter.title')}>
      <details
        className="disclosure"
        open={isOpen}
        onToggle={({ currentTarget }) => setIsOpen(currentTarget.open)}
      >
        <summary>{t('photos.filter.title')}</summary>
        {isOpen ? <FilterControls house={house} filter={filter} onChange={onChange} /> : null}
      </details>
      {isFiltered(filter) ? (
        <div className="row photos-words">
          {words.map(({ key, word }) => (
            <Button
              key={key}
              aria-label={t('photos.filter.remove', { word })}
              onPress={() => onChange(without(filter, key))}
            >
              {word}
              <svg className="photos-word-end" viewBox="0 0 12 12" aria-hidden="true">
                <path d="M2 2l8 8M10 2l-8 8" />
              </svg>
            </Button>
          ))}
          <Button look="quiet" onPress={() => onChange({})}>
            {t('photos.filter.all')}
          </Button>
        </div>
      ) : null}
    </section>
  );
}
