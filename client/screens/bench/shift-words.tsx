import { useQuery } from '@tanstack/react-query';
import type { Camera } from '#domain/contract/clock';
import { cameraKey } from '#domain/photo/camera-key';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Checkbox } from '../../parts/checkbox.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { isFarOff, shiftSentences } from './clock-shift.ts';

export interface ShiftWordsProps {
  camera: Camera;
  /** Null until a time is typed. */
  seconds: number | null;
  isAgreed: boolean;
  isMissed: boolean;
  onAgree: (isAgreed: boolean) => void;
}

/** What a clock mark will do, before it is made; of a day or more only after a tick. */
export function ShiftWords({ camera, seconds, isAgreed, isMissed, onAgree }: ShiftWordsProps) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const { data } = useQuery({
    queryKey: keys.cameras(house),
    queryFn: ({ signal }) => call('listCameras', { params: { house }, signal }),
  });
  const key = cameraKey(camera);
  const known = data?.cameras.find((other) => cameraKey(other) === key);
  return (
    <>
      <p role="status">
        {seconds === null ? null : shiftSentences(t, lang, seconds, known).join(lang === 'ja' ? '' : ' ')}
      </p>
      {isFarOff(seconds) ? (
        <div>
          <Checkbox isSelected={isAgreed} onChange={onAgree} isInvalid={isMissed}>
            {t('clock.mark.farOff')}
          </Checkbox>
          {isMissed ? (
            <p className="field-error" role="alert">
              {t('clock.mark.needFarOff')}
            </p>
          ) : null}
        </div>
      ) : null}
    </>
  );
}
