import { useState } from 'react';
import type { ProtectionView } from '#domain/contract/protection';
import { daysBetween } from '#domain/record/days-between';
import { dayIn, formatDay, formatInstant } from '../../i18n/format.ts';
import { joinWords } from '../../i18n/join-words.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button, LinkButton } from '../../parts/button.tsx';
import { IfMay } from '../../shell/if-may.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { LiftDialog } from './lift-dialog.tsx';
import { TakeBackDialog } from './take-back-dialog.tsx';

/** Marks that are named before the rest is counted. */
const NAMED = 12;

/** One piece of protection: what lies where, since when or until when, and what can be said of it. */
export function ProtectionItem({ protection }: { protection: ProtectionView }) {
  const { t } = useWords();
  const { id: house, zone } = useHouse();
  const [asks, setAsks] = useState<'lift' | 'back' | 'mistake' | null>(null);
  const { id, name, what, note, lifted } = protection;
  const close = () => setAsks(null);
  return (
    <li className="protection-item">
      <p>
        <strong>{name}</strong> <span className="soft">{what}</span>
      </p>
      <When protection={protection} />
      <Over protection={protection} />
      {note === '' ? null : <p className="protection-note">{note}</p>}
      {lifted && lifted.note !== '' ? <p className="protection-note">{lifted.note}</p> : null}
      <IfMay act="record">
        <div className="row">
          {lifted ? (
            <Button aria-label={t('protection.backNamed', { name })} onPress={() => setAsks('back')}>
              {t('protection.back')}
            </Button>
          ) : (
            <Button
              look={isDue(protection.liftingDay, zone) ? 'act' : 'plain'}
              aria-label={t('protection.liftNamed', { name })}
              onPress={() => setAsks('lift')}
            >
              {t('protection.lift')}
            </Button>
          )}
          <LinkButton
            to={`/houses/${house}/protection/${id}`}
            aria-label={t('protection.changeNamed', { name })}
          >
            {t('protection.change')}
          </LinkButton>
          <Button
            look="quiet"
            aria-label={t('protection.mistakeNamed', { name })}
            onPress={() => setAsks('mistake')}
          >
            {t('protection.mistake')}
          </Button>
        </div>
      </IfMay>
      {asks === 'lift' ? <LiftDialog protection={protection} onClose={close} /> : null}
      {asks === 'back' ? <TakeBackDialog protection={protection} what="takeBack" onClose={close} /> : null}
      {asks === 'mistake' ? <TakeBackDialog protection={protection} what="withdraw" onClose={close} /> : null}
    </li>
  );
}

const isDue = (liftingDay: string | null, zone: string) =>
  liftingDay !== null && daysBetween(dayIn(zone, new Date()), liftingDay) <= 0;

function When({ protection: { laidAt, laidBy, lifted, liftingDay } }: { protection: ProtectionView }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const said = (by: ProtectionView['laidBy']) => ({ who: by?.name ?? t('common.nobody') });
  const from = formatInstant(laidAt, zone, lang);
  if (lifted) {
    const to = formatInstant(lifted.at, zone, lang);
    return <p>{t('protection.periodBy', { from, to, ...said(lifted.by) })}</p>;
  }
  return (
    <>
      <p>{t('protection.since', { when: from, ...said(laidBy) })}</p>
      {liftingDay === null ? null : (
        <p className={isDue(liftingDay, zone) ? 'act-text' : undefined}>
          {t('protection.untilDay', { day: formatDay(liftingDay, lang) })}
        </p>
      )}
    </>
  );
}

function Over({ protection: { hides } }: { protection: ProtectionView }) {
  const { t, lang } = useWords();
  if (hides.length === 0) return <p className="soft">{t('protection.overNothing')}</p>;
  const marks = hides.slice(0, NAMED).map(({ mark }) => mark);
  const more = hides.length - marks.length;
  const named = joinWords([...marks, more > 0 ? t('coverings.andMore', { count: more }) : null], lang);
  return <p>{t('protection.over', { count: hides.length, marks: named })}</p>;
}
