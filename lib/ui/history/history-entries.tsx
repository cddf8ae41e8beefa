import { getLocale, getTranslations } from 'next-intl/server';
import type { HistoryView } from '@/lib/records/history/list-history.query';
import { formatInstant } from '../format/instant-text';
import type { TimelineEntry } from '../page/timeline';

const unsaid = new Set([
  'network_id',
  'id',
  'created_at',
  'created_by_id',
  'origin',
  'revision',
  'entered',
  'site_id',
]);

function shown(value: unknown): string {
  if (value === null || value === undefined) return '–';
  return typeof value === 'object' ? JSON.stringify(value) : String(value);
}

/** The lines of a record's history in words: who, when, why, and each value before and after. */
export async function historyEntries(
  lines: readonly HistoryView[],
  timeZone: string,
): Promise<TimelineEntry[]> {
  const t = await getTranslations('common.history');
  const locale = await getLocale();
  return lines.map((line) => {
    const names = Object.keys(line.newValues).filter((name) => !unsaid.has(name));
    const who = line.who ?? t('someone');
    return {
      key: line.id,
      dateTime: line.at,
      when: formatInstant(new Date(line.at), timeZone, locale),
      title: line.action === 'created' ? t('created', { who }) : t('changed', { who }),
      detail: (
        <>
          {line.reason === null ? null : <p>{t('reason', { reason: line.reason })}</p>}
          <dl className="definitions">
            {names.map((name) => (
              <div key={name}>
                <dt>{name.replaceAll('_', ' ')}</dt>
                <dd>
                  {line.action === 'created' ? (
                    shown(line.newValues[name])
                  ) : (
                    <>
                      <del>{shown(line.oldValues[name])}</del> <ins>{shown(line.newValues[name])}</ins>
                    </>
                  )}
                </dd>
              </div>
            ))}
          </dl>
        </>
      ),
    };
  });
}
