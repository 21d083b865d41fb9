import type { CameraView } from '#domain/contract/clock';
import { cameraName } from '../../i18n/camera-name.ts';
import { formatDay } from '../../i18n/format.ts';
import { signedSpan, withinSpan } from '../../i18n/span-words.ts';
import { useWords } from '../../i18n/use-words.ts';
import { ClockMarkTable } from './clock-mark-table.tsx';

/** One camera: its photos, its clock now, its marks. */
export function CameraPart({ camera }: { camera: CameraView }) {
  const { t, lang } = useWords();
  const { serial, photos, firstDay, lastDay, corrected, marks } = camera;
  const name = cameraName(camera) ?? t('clock.unknownCamera');
  const days =
    firstDay === null || lastDay === null
      ? t('clock.noDays')
      : t(firstDay === lastDay ? 'clock.oneDay' : 'clock.days', {
          first: formatDay(firstDay, lang),
          last: formatDay(lastDay, lang),
        });
  return (
    <section className="section">
      <h2>{name}</h2>
      <p className="soft">{serial === null ? t('clock.noSerial') : t('clock.serial', { serial })}</p>
      <p>
        {t('common.count.photos', { count: photos })} · {days}
      </p>
      <p>
        {marks.length === 0 ? t('clock.noMarks') : <ClockNow now={camera.now} />}{' '}
        {corrected > 0 ? t('clock.corrected', { count: corrected }) : null}
      </p>
      {marks.length > 0 ? <ClockMarkTable camera={camera} name={name} /> : null}
    </section>
  );
}

function ClockNow({ now }: Pick<CameraView, 'now'>) {
  const { t, lang } = useWords();
  if (!now) return null;
  const within = withinSpan(t, now.uncertaintyS);
  if (Math.abs(now.seconds) <= now.uncertaintyS) return t('clock.nowRight', { within });
  return t('clock.nowOff', { span: signedSpan(t, lang, now.seconds), within });
}
