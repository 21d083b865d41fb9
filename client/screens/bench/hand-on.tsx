import { useId, useState } from 'react';
import { addressOf } from '../../api/address.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Checkbox } from '../../parts/checkbox.tsx';

/** The ways by which a picture leaves the record: told apart by what they tell. */
export function HandOn({ photo }: { photo: string }) {
  const { t } = useWords();
  const [position, setPosition] = useState(false);
  const [serial, setSerial] = useState(false);
  const caution = useId();
  const query = { position: position ? '1' : '0', serial: serial ? '1' : '0' } as const;
  return (
    <section className="section">
      <h2>{t('handOn.title')}</h2>
      <Checkbox isSelected={position} onChange={setPosition}>
        {t('handOn.position')}
      </Checkbox>
      <Checkbox isSelected={serial} onChange={setSerial}>
        {t('handOn.serial')}
      </Checkbox>
      <p>
        <a className="alone" href={addressOf('photoCopy', { photo }, query)} download>
          {t(copyWords(position, serial))}
        </a>
      </p>
      <div className="hand-on-original">
        <p className="act-text" id={caution}>
          {t('handOn.caution')}
        </p>
        <a
          className="alone"
          href={addressOf('photoOriginal', { photo })}
          target="_blank"
          rel="noreferrer"
          aria-describedby={caution}
        >
          {t('handOn.original')}
        </a>
      </div>
    </section>
  );
}

function copyWords(position: boolean, serial: boolean) {
  if (position && serial) return 'handOn.copyWithBoth';
  if (position) return 'handOn.copyWithPosition';
  return serial ? 'handOn.copyWithSerial' : 'handOn.copy';
}
