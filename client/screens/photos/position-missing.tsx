import { useMutation } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Notice, ProblemNotice } from '../../parts/notice.tsx';
import {
  DEVICE_WAIT_S,
  DevicePositionError,
  hopeless,
  readDevicePosition,
} from '../../upload/device-position.ts';
import type { Uploads } from '../../upload/upload-driver.ts';
import type { UploadItem } from '../../upload/upload-queue.ts';
import { lengthWords } from '../place/length-words.ts';

/** How many files came without a position, why, and the device's own to stand beside them. */
export function PositionMissing({ items, uploads }: { items: readonly UploadItem[]; uploads: Uploads }) {
  const { t, lang } = useWords();
  const lacking = items.flatMap(({ state }) =>
    state.is === 'added' && state.position === 'none' ? state.photo : [],
  );
  const add = useMutation({
    mutationFn: async (photos: readonly string[]) => {
      const body = await readDevicePosition();
      for (const photo of photos) {
        await call('addDevicePosition', { params: { photo }, body });
        uploads.tell({ type: 'device-position', photo });
      }
      return { count: photos.length, errorM: body.errorM };
    },
  });
  const trouble = hopeless();
  return (
    <>
      {lacking.length > 0 ? (
        <Notice
          actions={
            trouble ? null : (
              <Button isPending={add.isPending} onPress={() => add.mutate(lacking)}>
                {t('place.upload.button', { count: lacking.length })}
              </Button>
            )
          }
        >
          <p>{t('place.upload.lead', { count: lacking.length })}</p>
          <p className="soft">{t(trouble ? `place.upload.${trouble}` : 'place.upload.offer')}</p>
        </Notice>
      ) : null}
      <DeviceProblem error={add.error} />
      {add.data ? (
        <Notice tone="done">
          {t('place.upload.done', {
            count: add.data.count,
            error: lengthWords(t, lang, add.data.errorM),
          })}
        </Notice>
      ) : null}
    </>
  );
}

function DeviceProblem({ error }: { error: Error | null }) {
  const { t } = useWords();
  if (!(error instanceof DevicePositionError)) return <ProblemNotice error={error} />;
  return <Notice tone="problem">{t(`place.upload.${error.trouble}`, { seconds: DEVICE_WAIT_S })}</Notice>;
}
