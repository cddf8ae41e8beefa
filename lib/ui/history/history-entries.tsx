import { getLocale, getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import type { HistoryView } from '@/lib/records/history/list-history.query';
import { formatInstant } from '../format/instant-text';
import { dynamicWords } from '../i18n/dynamic-words';
import { getReaderUnits } from '../i18n/reader-units';
import type { TimelineEntry } from '../page/timeline';
import { historyValue } from './history-value';

/** What tells a reader nothing: keys of other records, and what the program keeps for itself. */
export function isToldInHistory(column: string): boolean {
  return !/(^|_)id$|^(created_at|origin|revision|entered|content|key|request_hash|image|thumbnail)$/.test(
    column,
  );
}

/** The lines of a record's history in words: who, when, why, and each value before and after. */
export async function historyEntries(
  lines: readonly HistoryView[],
  timeZone: string,
  language: Language,
): Promise<TimelineEntry[]> {
  const t = await getTranslations('common.history');
  const locale = await getLocale();
  const words = await dynamicWords();
  const reader = { words, language, locale, units: await getReaderUnits(), timeZone };
  const label = (name: string) => {
    const key = `history.column.${name}`;
    return words(words.has(key) ? key : 'history.other');
  };
  return lines.map((line) => {
    const names = Object.keys(line.newValues).filter(isToldInHistory);
    const who = line.who ?? t(line.byFormerMember ? 'formerMember' : 'someone');
    const shown = (values: HistoryView['newValues'], name: string) =>
      historyValue(line.tableName, name, values[name], reader);
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
                <dt>{label(name)}</dt>
                <dd>
                  {line.action === 'created' ? (
                    shown(line.newValues, name)
                  ) : (
                    <>
                      <del>{shown(line.oldValues, name)}</del> <ins>{shown(line.newValues, name)}</ins>
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
