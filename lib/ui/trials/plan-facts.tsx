import { getLocale, getTranslations } from 'next-intl/server';
import type { Actor } from '@/lib/access/actor';
import type { TrialView } from '@/lib/records/trial/get-trial.query';
import { formatDate } from '../format/date-text';
import { formatInstant } from '../format/instant-text';
import { formatNumber } from '../format/number-text';
import { DefinitionList } from '../page/definition-list';

/** The plan of a trial, every number of it. */
export async function PlanFacts({ trial, actor }: { trial: TrialView; actor: Actor }) {
  const t = await getTranslations('trials.plan');
  const all = await getTranslations('trials');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
  const number = (value: number) => formatNumber(value, locale, Number.isInteger(value) ? 0 : 2);
  const { blocks, arms, sites, likeness, runSpreadPoints } = trial;
  const rests = {
    expected: number(trial.expectedPercent),
    difference: number(trial.differencePoints),
  };
  const runs = (blocks ?? 0) * arms.length * sites.length;
  const whole = actor.role === 'coordinator';
  return (
    <DefinitionList
      items={[
        { label: t('outcome'), value: all(`outcome.${trial.outcome}`) },
        {
          label: t('grown'),
          value: t('grownValue', {
            species: trial.species[actor.language],
            container: words(`containerKind.${trial.containerKind}`).toLowerCase(),
            units: trial.unitsPerRun,
          }),
        },
        { label: t('arms'), value: arms.map(({ said }) => said).join(' · ') },
        { label: t('sites'), value: sites.map(({ name }) => name).join(', ') || '–' },
        ...(whole
          ? [
              {
                label: t('size'),
                value:
                  blocks === null
                    ? t('sizeOpen')
                    : t('sizeValue', { blocks, runs, units: runs * trial.unitsPerRun }),
              },
            ]
          : []),
        {
          label: t('days'),
          value: t('daysValue', {
            date: formatDate(trial.startsOn, locale),
            days: trial.daysBetweenBlocks,
            late: trial.lateAfterDays,
          }),
        },
        {
          label: t('rests'),
          value:
            trial.outcome === 'contamination'
              ? t('restsContamination', { ...rests, likeness: number(likeness ?? 0) })
              : t('restsYield', { ...rests, spread: number(runSpreadPoints ?? 0) }),
        },
        { label: t('analysis'), value: t('analysisValue') },
        ...(trial.seed === null || trial.startedAt === null
          ? []
          : [
              {
                label: t('drawn'),
                value: t('drawnValue', {
                  seed: trial.seed,
                  when: formatInstant(new Date(trial.startedAt), actor.networkTimeZone, locale),
                }),
              },
            ]),
      ]}
    />
  );
}
