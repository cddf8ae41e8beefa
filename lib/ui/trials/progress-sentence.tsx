import { getTranslations } from 'next-intl/server';
import type { TrialView } from '@/lib/records/trial/get-trial.query';

/** How far the list is, and that outcomes wait for its end. */
export async function ProgressSentence({ trial }: { trial: TrialView }) {
  const t = await getTranslations('trials.progress');
  const { slots } = trial;
  return (
    <>
      <p className={trial.state === 'running' ? 'answer-sentence' : undefined}>
        {t('sentence', {
          planned: slots.length,
          made: slots.filter(({ batch }) => batch !== null).length,
          missing: slots.filter(({ missing }) => missing).length,
          departed: slots.filter(({ departures }) => departures.length > 0).length,
        })}
      </p>
      {trial.state === 'running' ? <p>{t('blind')}</p> : null}
    </>
  );
}
