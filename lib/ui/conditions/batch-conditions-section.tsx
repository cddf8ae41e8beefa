import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { StoryEntry } from '@/lib/records/batch/batch-story';
import type { BatchConditions } from '@/lib/records/condition/get-batch-conditions.query';
import { formatDate } from '../format/date-text';
import type { TemperatureUnit } from '../format/temperature-text';
import { Link } from '../page/link';
import { ConditionCharts } from './condition-charts';
import { usualRange } from './usual-range';

type Props = {
  readonly conditions: BatchConditions;
  readonly story: readonly StoryEntry[];
  readonly temperatureUnit: TemperatureUnit;
};

/** Whether pins or a harvest were seen: from then on it is grown at the temperatures for fruiting. */
const fruits = (story: readonly StoryEntry[]) =>
  story.some(
    (entry) =>
      entry.voidReason === null &&
      (entry.kind === 'weighing' || (entry.kind === 'check' && entry.what === 'pins_seen')),
  );

/** Where a batch stands and has stood, and what was read there meanwhile. */
export async function BatchConditionsSection({ conditions, story, temperatureUnit }: Props) {
  const t = await getTranslations('conditions');
  const common = await getTranslations('common');
  const locale = await getLocale();
  const { batchId, siteId, stays, days, open } = conditions;
  const usual = await usualRange(
    conditions.speciesCode,
    conditions.secondLife || fruits(story),
    temperatureUnit,
  );
  if (stays.length === 0 && !open) return null;
  return (
    <section>
      <h2>{t('batchHeading')}</h2>
      {stays.length === 0 ? (
        <p>{t('nowhere')}</p>
      ) : (
        <ul>
          {stays.map(({ placementId, placeId, placeName, from }) => (
            <li key={placementId}>
              <Link href={`/sites/${siteId}/places/${placeId}` as Route}>{placeName}</Link>{' '}
              {t('since', { date: formatDate(from, locale) })}{' '}
              <Link
                className="no-print"
                href={`/void/placement/${placementId}?back=/batches/${batchId}` as Route}
              >
                {common('void')}
                <span className="visually-hidden">: {placeName}</span>
              </Link>
            </li>
          ))}
        </ul>
      )}
      {stays.length === 0 ? null : (
        <ConditionCharts
          days={days}
          temperatureUnit={temperatureUnit}
          {...(usual === undefined ? {} : { usual })}
        />
      )}
      {open ? (
        <p className="record-links">
          <Link href={`/batches/${batchId}/place` as Route}>
            {t(stays.length === 0 ? 'putSomewhere' : 'moved')}
          </Link>
        </p>
      ) : null}
    </section>
  );
}
