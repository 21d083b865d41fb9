import { useState } from 'react';
import type { JournalView } from '#domain/contract/journal-views';
import { useSession } from '../../api/use-session.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { useHouse, useMay } from '../../shell/use-house.ts';
import { StepLink } from './step-link.tsx';
import { endTour, noteStep, readTour } from './tour-seen.ts';
import { tourSteps, type TourStep } from './tour-steps.ts';

/** Three things to look at, on the first visit of a person to a house at work. */
export function Tour({ journal }: { journal: JournalView }) {
  const me = useSession().data?.account?.id;
  // Whoever keeps the record may review, too, but hardly what they recorded themselves.
  const steps = tourSteps(journal, useHouse().role === 'inspector');
  return me && steps.length > 0 ? <Steps me={me} today={journal.today.day} steps={steps} /> : null;
}

function Steps({ me, today, steps }: { me: string; today: string; steps: readonly TourStep[] }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const mayRecord = useMay('record');
  const [seen, setSeen] = useState(() => readTour(me, today, steps.length));
  if (seen === null) return null;
  const end = () => {
    endTour(me);
    setSeen(null);
  };
  const next = steps.find(({ word }) => !seen.includes(word));
  return (
    <section className="section tour" aria-label={t('days.tour.title')}>
      <h2>{t('days.tour.title')}</h2>
      <ol className="first-steps">
        {steps.map((step) => (
          <li key={step.word}>
            <StepLink
              isNext={step === next}
              to={`/houses/${house}/${step.path}`}
              why={whyOf(step)}
              onClick={() => noteStep(me, today, [...new Set([...seen, step.word])])}
            >
              {titleOf(step)}
            </StepLink>
          </li>
        ))}
      </ol>
      <div className="row">
        <Button look="quiet" onPress={end}>
          {t('days.tour.end')}
        </Button>
      </div>
    </section>
  );

  function titleOf({ word }: TourStep): string {
    if (word === 'report' || word === 'frame') return t(`common.nav.${word}`);
    return t(`days.tour.${word}`);
  }

  function whyOf({ word }: TourStep): string {
    if (word === 'report' || word === 'frame') return t(`days.tour.${word}`);
    return t(word === 'photo' && !mayRecord ? 'days.tour.photoLook' : `days.tour.${word}Why`);
  }
}
