import { useMutation } from '@tanstack/react-query';
import type { PersonInHouseView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { CopyLine } from '../../parts/copy-line.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { useHouse } from '../../shell/use-house.ts';

/** Says first what such a link can do, and that the ledger tells of it. */
export function PasswordLink({ person, onClose }: { person: PersonInHouseView; onClose: () => void }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const { id, name } = person;
  const make = useMutation({
    mutationFn: () => call('makePasswordLink', { params: { house, person: id } }),
  });
  return (
    <Dialog title={t('people.password.title', { name })} isOpen onClose={onClose}>
      <p>{t(make.data ? 'people.password.made' : 'people.password.text', { name })}</p>
      {make.data ? (
        <CopyLine
          label={t('people.password.link')}
          text={`${window.location.origin}/link/${make.data.link}`}
        />
      ) : null}
      <ProblemNotice error={make.error} />
      <div className="row">
        {make.data ? null : (
          <Button look="act" isPending={make.isPending} onPress={() => make.mutate()}>
            {t('people.password.make')}
          </Button>
        )}
        <Button onPress={onClose}>{t(make.data ? 'people.password.done' : 'common.cancel')}</Button>
      </div>
    </Dialog>
  );
}
