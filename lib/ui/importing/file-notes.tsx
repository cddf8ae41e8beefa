import { getLocale, getTranslations } from 'next-intl/server';
import type { IntakeView } from '@/lib/intake/table/view-file';
import { formatDate } from '../format/date-text';
import { columnName } from './column-name';
import { columnsLeftOut } from './columns-left-out';
import { givenWords } from './given-fields';

const mostLines = 10;

/** What a person should know of a table before its rows are added: what was chosen, what no column holds, what stays out. */
export async function FileNotes({ file }: { file: IntakeView }) {
  const t = await getTranslations('import');
  const locale = await getLocale();
  const list = new Intl.ListFormat(locale, { type: 'conjunction' });
  const { layout, counts, missing, asked, totals, doubtfulDate } = file;
  const given = await givenWords(file);
  const open = asked.filter(({ name }) => !layout.given[name] && !missing.includes(name));
  const leftOut = columnsLeftOut(file).map((index) =>
    t('understood.quoted', {
      cell: columnName(layout.headers, index, (letter) => t('understood.unnamed', { letter })),
    }),
  );
  const ahead = counts.added === 0;
  return (
    <>
      {given.length > 0 ? <p>{t('given.said', { list: list.format(given) })}</p> : null}
      {ahead && open.length > 0 ? (
        <p>
          {t('given.open', { fields: list.format(open.map(({ name }) => t(`fields.${name as 'batch'}`))) })}
        </p>
      ) : null}
      {ahead && open.some(({ name }) => name === 'moistureSource') ? <p>{t('given.moisture')}</p> : null}
      {ahead && doubtfulDate !== undefined ? (
        <p>
          {t('file.dates', {
            cell: t('understood.quoted', { cell: doubtfulDate.cell }),
            date: formatDate(doubtfulDate.date, locale),
          })}
        </p>
      ) : null}
      {totals.length > 0 ? (
        <p>
          {t('file.totals', {
            count: totals.length,
            lines: list.format(totals.slice(0, mostLines).map(String)),
          })}
        </p>
      ) : null}
      {leftOut.length > 0 ? <p>{t('file.leftOut', { columns: list.format(leftOut) })}</p> : null}
    </>
  );
}
