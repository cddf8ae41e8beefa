import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { NextRun } from '@/lib/records/trial/list-next-runs.query';
import type { TrialBehind } from '@/lib/records/trial/list-trials-behind.query';
import { formatDate } from '../format/date-text';
import { Link } from '../page/link';
import { startAddress, treatmentAddress } from './start-address';

type Props = { readonly runs: readonly NextRun[]; readonly behind: readonly TrialBehind[] };

/** On the page of the day: what a trial has drawn to be made now, and which trials wait for somebody. */
export async function TrialsToday({ runs, behind }: Props) {
  if (runs.length + behind.length === 0) return null;
  const t = await getTranslations('trials');
  const locale = await getLocale();
  return (
    <section aria-labelledby="trials-today">
      <h2 id="trials-today">{t('today.heading')}</h2>
      <ul className="plain-list">
        {runs.map((run) => {
          const treatment = treatmentAddress(run);
          const { title, arm, siteName } = run;
          return (
            <li key={run.slotId}>
              <Link href={startAddress(run)}>
                <strong>{t('today.start', { title, arm })}</strong>
              </Link>
              <p className="quiet">
                {t('today.planned', { date: formatDate(run.plannedOn, locale), site: siteName })}
                {treatment === null ? null : (
                  <>
                    {' · '}
                    <Link href={treatment}>
                      {t('next.treatment')}
                      <span className="visually-hidden">{`: ${arm}, ${siteName}`}</span>
                    </Link>
                  </>
                )}
              </p>
            </li>
          );
        })}
        {behind.map(({ id, title, late, unlooked }) => (
          <li key={id}>
            <Link href={`/trials/${id}` as Route}>
              <strong>{title}</strong>
            </Link>
            <p className="quiet">
              {late === 0 ? null : t('today.late', { count: late })}
              {late === 0 || unlooked === 0 ? null : ' '}
              {unlooked === 0 ? null : t('today.unlooked', { count: unlooked })}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
