import { getLocale, getTranslations } from 'next-intl/server';
import type { NextRun } from '@/lib/records/trial/list-next-runs.query';
import { formatDate } from '../format/date-text';
import { Link } from '../page/link';
import { startAddress, treatmentAddress } from './start-address';

/** What is drawn to be made next at each site, with the forms to begin it. */
export async function NextRuns({ runs }: { runs: readonly NextRun[] }) {
  const t = await getTranslations('trials.next');
  const locale = await getLocale();
  if (runs.length === 0) return null;
  return (
    <section className="no-print">
      <h2>{t('heading')}</h2>
      <ul className="plain-list">
        {runs.map((run) => {
          const treatment = treatmentAddress(run);
          return (
            <li key={run.slotId}>
              <p>
                {t('line', { site: run.siteName, arm: run.arm, date: formatDate(run.plannedOn, locale) })}
              </p>
              <p className="chips">
                {treatment === null ? null : (
                  <Link className="button button-plain" href={treatment}>
                    {t('treatment')}
                    <span className="visually-hidden">{`: ${run.arm}, ${run.siteName}`}</span>
                  </Link>
                )}
                <Link className="button button-plain" href={startAddress(run)}>
                  {t('batch')}
                  <span className="visually-hidden">{`: ${run.arm}, ${run.siteName}`}</span>
                </Link>
              </p>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
