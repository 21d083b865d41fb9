import { useState } from 'react';
import { addressOf } from '../../api/address.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Checkbox } from '../../parts/checkbox.tsx';

/** The ways by which a picture leaves the record: told apart by what they tell. */
export function HandOn({ photo }: { photo: string }) {
  const { t } = useWords();
  const [position, setPosition] = useState(false);
  const [serial, setSerial] = useState(false);
  const query = { position: position ? '1' : '0', serial: serial ? '1' : '0' } as const;
  return (
    <section className="section">
      <h2>{t('handOn.title')}</h2>
      <p>
        <a className="alone" href={addressOf('photoCopy', { photo }, query)} download>
          {t(copyWords(position, serial))}
        </a>
      </p>
      <Checkbox isSelected={position} onChange={setPosition}>
        {t('handOn.position')}
      </Checkbox>
      <Checkbox isSelected={serial} onChange={setSerial}>
        {t('handOn.serial')}
      </Checkbox>
      <p>
        <a className="alone" href={addressOf('photoOriginal', { photo })} target="_blank" rel="noreferrer">
          {t('handOn.original')}
        </a>
        <br />
        <span className="soft">{t('handOn.caution')}</span>
      </p>
    </section>
  );
}

function copyWords(position: boolean, serial: boolean) {
  if (position && serial) return 'handOn.copyWithBoth';
  if (position) return 'handOn.copyWithPosition';
  return serial ? 'handOn.copyWithSerial' : 'handOn.copy';
}
