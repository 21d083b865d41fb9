import { useState } from 'react';
import type { CoveringView } from '#domain/contract/views';
import { useWords } from '../../i18n/use-words.ts';
import { Select } from '../../parts/select.tsx';
import { useHouse } from '../../shell/use-house.ts';
import type { CoveringEvent } from './covering-draft.ts';
import { LAYER_WORDS } from './layer-words.ts';
import { placesAfter, zoneAfter } from './next-layer.ts';
import { zoneDraft } from './zone-draft.ts';

interface NextLayerPartProps {
  over: CoveringView;
  tell: (event: CoveringEvent) => void;
}

/** Where the next layer lies, over the one that it follows. */
export function NextLayerPart({ over, tell }: NextLayerPartProps) {
  const { lang } = useWords();
  const { unit } = useHouse();
  const places = placesAfter(over);
  const [place, setPlace] = useState(places[0] ?? 'same');
  const words = LAYER_WORDS[lang];
  return (
    <div className="form">
      {places.length > 1 ? (
        <Select
          label={words.where}
          value={place}
          choices={places.map((value) => ({ value, label: words.place[value] }))}
          onChange={(next) => {
            setPlace(next);
            tell({ type: 'draw-zone', zone: zoneAfter(zoneDraft(over.zone, unit), next) });
          }}
        />
      ) : null}
      <p className="soft">{words.over(over.name)}</p>
    </div>
  );
}
