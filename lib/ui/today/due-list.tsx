import type { Route } from 'next';
import Link from 'next/link';
import { getLocale, getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import type { DueLine } from '@/lib/records/today/list-due.query';
import { formatDayMonth } from '../format/date-text';

function addressOf(line: DueLine): Route {
  switch (line.kind) {
    case 'treatment-running':
      return `/treatments/${line.runId}` as Route;
    case 'look':
      return `/batches/${line.batchId}/looks/new` as Route;
    case 'first-harvest':
    case 'next-flush':
      return `/weighings/new?batch=${line.batchId}` as Route;
    case 'quiet':
      return `/batches/${line.batchId}/close` as Route;
  }
}

const mostShown = 60;

/** What is due, each line leading straight to the one form it needs. */
export async function DueList({ lines, language }: { lines: readonly DueLine[]; language: Language }) {
  const t = await getTranslations('today');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
  return (
    <>
      <ul className="due-list">
        {lines.slice(0, mostShown).map((line) => {
          const what =
            line.kind === 'treatment-running'
              ? words(`methodKind.${line.method}`)
              : t('batchOf', {
                  species: language === 'es' ? line.speciesEs : line.speciesEn,
                  container: words(`containerKind.${line.container}`).toLocaleLowerCase(),
                  day: line.dayNumber,
                });
          return (
            <li key={`${line.kind} ${line.code}`}>
              <Link href={addressOf(line)}>{t(`kind.${line.kind}`, { code: line.code })}</Link>
              <span className="quiet">
                {' '}
                {what}, {line.siteName},{' '}
                {t('since', { date: formatDayMonth(line.on, locale), days: line.overdueDays })}
              </span>
            </li>
          );
        })}
      </ul>
      {lines.length > mostShown ? (
        <p className="quiet">{t('more', { count: lines.length - mostShown })}</p>
      ) : null}
    </>
  );
}
