import { lazy, Suspense, useState } from 'react';
import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { useHouse } from '../../shell/use-house.ts';

export interface OnFrameProps {
  /** What stands in the field: its drawing is opened. */
  readonly mark: string;
  readonly onPick: (mark: string) => void;
}

/** Only who opens it fetches how a frame is drawn. */
const PickOnFrame = lazy(async () => ({ default: (await import('./pick-on-frame.tsx')).PickOnFrame }));

/** The way to point at a member in the frame instead of typing its mark; only where the house has a grid. */
export function OnFrame({ mark, onPick }: OnFrameProps) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const [isOpen, setIsOpen] = useState(false);
  const { data } = useQuery({
    queryKey: keys.grid(house),
    meta: { isAside: true },
    queryFn: ({ signal }) => call('readGrid', { params: { house }, signal }),
  });
  if (!data?.grid) return null;
  return (
    <div className="bench-on-frame">
      <Button onPress={() => setIsOpen(true)}>{t('frame.pick.open')}</Button>
      {isOpen ? (
        <Suspense fallback={null}>
          <PickOnFrame
            mark={mark}
            onClose={() => setIsOpen(false)}
            onPick={(picked) => {
              setIsOpen(false);
              onPick(picked);
            }}
          />
        </Suspense>
      ) : null}
    </div>
  );
}
