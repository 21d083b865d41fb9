import { useWords } from '../../i18n/use-words.ts';
import { useHouse, useHouseCounts } from '../../shell/use-house.ts';
import { firstSteps, type FirstStep } from './first-steps.ts';
import { StepLink } from './step-link.tsx';

/** A fresh house: what to do, in order; what is done stands there as done. */
export function FirstSteps() {
  const { t } = useWords();
  const house = useHouse();
  const counts = useHouseCounts();
  const steps = firstSteps({ ...house, counts });
  const next = steps.find(({ isDone }) => !isDone);
  if (!next) return null;
  return (
    <section className="section" aria-label={t('days.first.title')}>
      <h2>{t('days.first.title')}</h2>
      <ol className="first-steps">
        {steps.map((step) => (
          <li key={step.word} className={step.isDone ? 'soft' : undefined}>
            <Step step={step} isNext={step === next} house={house.id} />
          </li>
        ))}
      </ol>
    </section>
  );
}

function Step({ step, isNext, house }: { step: FirstStep; isNext: boolean; house: string }) {
  const { t } = useWords();
  if (step.isDone) return t('days.first.done', { step: t(`days.first.${step.word}.do`) });
  return (
    <StepLink isNext={isNext} to={`/houses/${house}/${step.path}`} why={t(`days.first.${step.word}.why`)}>
      {t(`days.first.${step.word}.do`)}
    </StepLink>
  );
}
